//! Making, cooking, eating and reading together.

use super::big_hands::{PINCH, at};
use super::body::{Bottom, Figure, Z, arm, leg};
use super::cast;
use super::geom::{P, Path, p};
use super::hands::Hold;
use super::head::SKIN;
use super::paint::{Group, Scene, ink};
use super::people_b::seated;

/// The drawings of this file.
pub fn symbols() -> Vec<(&'static str, String)> {
    vec![
        ("paint", paint().svg("paint", "Paint")),
        (
            "cut_and_stick",
            cut_and_stick().svg("cut_and_stick", "Cut and stick"),
        ),
        ("thread_beads", thread_beads().svg("thread_beads", "Beads")),
        ("puzzle", puzzle().svg("puzzle", "Puzzle")),
        ("cook", cook().svg("cook", "Cook")),
        (
            "eat_together",
            eat_together().svg("eat_together", "Eat together"),
        ),
        ("story_time", story_time().svg("story_time", "Story")),
    ]
}

fn paint() -> Scene {
    let mut s = Scene::default();
    s.group(5.2, |g| {
        g.fill(Path::read("M30 112L168 112L196 222L14 222Z"), ink::WHITE);
        g.mark(
            Path::read("M42 196C60 150 82 150 84 176C86 204 112 200 116 166"),
            ink::CORAL,
            19.0,
        );
    });
    s.group(5.2, |g| {
        g.bar(
            Path::poly(&[p(130.0, 128.0), p(164.0, 20.0)], false),
            ink::HAIR_BROWN,
            9.0,
        );
        g.over(Path::read("M121 128L137 133L133 146L116 141Z"), ink::GREY);
        g.over(
            Path::read("M116 141L133 146C132 158 124 166 112 170C110 160 112 150 116 141Z"),
            ink::CORAL,
        );
    });
    s.group(5.2, |g| {
        PINCH.draw(g, at(136.0, 112.0, 0.74, 4.0, false), SKIN, ink::CORAL);
    });
    s
}

fn scissors(g: &mut Group) {
    g.fill(
        Path::read("M60 76C90 76 136 88 168 106L160 118C128 110 90 96 60 76Z"),
        ink::GREY_LIGHT,
    );
    g.fill(
        Path::read("M60 126C90 126 136 114 168 96L160 84C128 92 90 106 60 126Z"),
        ink::GREY_LIGHT,
    );
    for y in [74.0, 128.0] {
        g.bar(
            Path::ellipse(
                p(190.0, y),
                25.0,
                17.0,
                if y < 100.0 { -24.0 } else { 24.0 },
            ),
            ink::CORAL,
            11.0,
        );
    }
    g.dot(Path::circle(p(146.0, 101.0), 4.5), ink::INK);
}

fn glue_stick(g: &mut Group) {
    g.fill(
        Path::block(p(120.0, 196.0), 84.0, 38.0, 6.0, -12.0),
        ink::TEAL,
    );
    g.fill(
        Path::block(p(168.0, 186.0), 20.0, 30.0, 3.0, -12.0),
        ink::GREY_LIGHT,
    );
    g.over(
        Path::block(p(182.0, 183.0), 18.0, 24.0, 7.0, -12.0),
        ink::WHITE,
    );
    g.band(
        Path::poly(&[p(100.0, 181.0), p(107.0, 219.0)], false),
        ink::WHITE,
        5.0,
    );
}

fn cut_and_stick() -> Scene {
    let mut s = Scene::default();
    s.group(5.2, |g| {
        g.fill(
            Path::read("M16 24L146 24L146 97L66 99L66 103L146 105L146 172L16 172Z"),
            ink::SUN,
        );
        g.dot(Path::circle(p(50.0, 54.0), 20.0), ink::WHITE);
        g.dot(Path::read("M32 162L52 134L72 162Z"), ink::TEAL);
    });
    s.group(5.2, scissors);
    s.group(5.2, glue_stick);
    s
}

fn bead(g: &mut Group, at: P, r: f64, colour: &'static str) {
    g.over(Path::circle(at, r), colour);
    g.mark(
        Path::smooth(
            &[
                at + p(-r * 0.5, -r * 0.1),
                at + p(-r * 0.3, -r * 0.5),
                at + p(r * 0.1, -r * 0.6),
            ],
            false,
        ),
        ink::WHITE,
        3.4,
    );
}

fn thread_beads() -> Scene {
    let mut s = Scene::default();
    s.group(5.0, |g| {
        g.bar(
            Path::read("M84 104C30 110 24 176 72 196C120 212 172 190 190 150C200 124 180 104 152 104L110 104"),
            ink::HAIR_BROWN,
            6.0,
        );
        bead(g, p(32.0, 140.0), 17.0, ink::CORAL);
        bead(g, p(46.0, 176.0), 19.0, ink::TEAL);
        bead(g, p(82.0, 199.0), 20.0, ink::SUN);
        bead(g, p(124.0, 202.0), 20.0, ink::NAVY);
        bead(g, p(160.0, 184.0), 18.0, ink::CORAL);
    });
    s.group(5.2, |g| bead(g, p(110.0, 104.0), 28.0, ink::SUN));
    s.group(5.2, |g| {
        PINCH.draw(g, at(152.0, 100.0, 0.6, -4.0, false), SKIN, ink::CORAL);
    });
    s.group(5.2, |g| {
        PINCH.draw(g, at(84.0, 96.0, 0.6, 8.0, true), SKIN, ink::CORAL);
    });
    s
}

/// A square piece; a side is 1 with a knob out, -1 with one cut in, 0 straight
/// (top, right, bottom, left).
fn piece(c: P, half: f64, sides: [f64; 4], deg: f64) -> Path {
    let mut d = String::from("M-1-1");
    let turn = |q: P, i: usize| q.rot(90.0 * i as f64);
    for (i, k) in sides.iter().enumerate() {
        let mut c3 = |a: P, b: P, e: P| {
            let [a, b, e] = [a, b, e].map(|q| turn(q, i));
            d.push_str(&format!(
                "C{:.3} {:.3} {:.3} {:.3} {:.3} {:.3}",
                a.x, a.y, b.x, b.y, e.x, e.y
            ));
        };
        if *k != 0.0 {
            let y = |v: f64| -1.0 - v * k;
            c3(p(-0.6, -1.0), p(-0.4, -1.0), p(-0.16, -1.0));
            c3(p(-0.5, y(0.52)), p(0.5, y(0.52)), p(0.16, -1.0));
        }
        c3(p(0.4, -1.0), p(0.7, -1.0), p(1.0, -1.0));
    }
    d.push('Z');
    Path::read(&d).put(c, half, deg, false)
}

fn puzzle() -> Scene {
    let mut s = Scene::default();
    let h = 38.0;
    s.group(5.2, |g| {
        g.fill(
            piece(p(58.0, 106.0), h, [0.0, 1.0, 1.0, 0.0], 0.0),
            ink::TEAL,
        );
        g.over(
            piece(p(58.0, 182.0), h, [-1.0, -1.0, 0.0, 0.0], 0.0),
            ink::SUN,
        );
        g.over(
            piece(p(134.0, 182.0), h, [1.0, 0.0, 0.0, 1.0], 0.0),
            ink::NAVY,
        );
    });
    s.group(5.2, |g| {
        g.fill(
            piece(p(150.0, 92.0), h, [0.0, 0.0, -1.0, -1.0], 9.0),
            ink::CORAL,
        );
    });
    s.group(5.2, |g| {
        PINCH.draw(g, at(162.0, 76.0, 0.64, -10.0, false), SKIN, ink::TEAL);
    });
    s
}

fn table(s: &mut Scene, y: f64, cloth: &'static str) {
    s.group(5.2, |g| {
        g.fill(
            Path::block(p(120.0, y + 21.0), 206.0, 42.0, 8.0, 0.0),
            cloth,
        );
    });
}

fn cook() -> Scene {
    let mut s = Scene::default();
    s.group(4.8, |g| {
        let mut a = cast::helper_dark(1.02, p(184.0, 196.0)).bust(76.0);
        a.turn = -30.0;
        a.look = [-40.0, 12.0, 0.0];
        a.arms[1].z = Z::Gone;
        a.arms[0].z = Z::Gone;
        a.draw(g);
    });
    let mut c = cast::main_child(1.24, p(72.0, 196.0)).bust(57.0);
    c.turn = 30.0;
    c.look = [40.0, 14.0, 0.0];
    c.arms[0] = arm(92.0, 172.0, 1.0, Z::Gone, Hold::Rest);
    c.arms[1] = arm(120.0, 142.0, -1.0, Z::Gone, Hold::Grip).aim(-20.0);
    s.group(4.8, |g| c.draw(g));
    table(&mut s, 200.0, ink::HAIR_FAIR);
    s.group(5.0, |g| {
        g.bar(
            Path::poly(&[p(138.0, 112.0), p(126.0, 176.0)], false),
            ink::HAIR_BROWN,
            9.0,
        );
    });
    s.group(5.2, |g| {
        g.fill(
            Path::read("M82 156L182 156C182 186 164 212 150 212L114 212C100 212 82 186 82 156Z"),
            ink::SUN,
        );
        g.mark(Path::read("M87 170L177 170"), ink::WHITE, 5.0);
    });
    s.group(4.8, |g| {
        let mut near = c;
        near.arms[1] = arm(120.0, 130.0, 1.0, Z::Front, Hold::Grip).aim(-14.0);
        near.draw_arm(1, g);
        near.arms[0] = arm(74.0, 184.0, 1.0, Z::Front, Hold::Rest).aim(-20.0);
        near.draw_arm(0, g);
        let mut a = cast::helper_dark(1.02, p(184.0, 196.0)).bust(76.0);
        a.turn = -30.0;
        a.arms[0] = arm(192.0, 184.0, -1.0, Z::Front, Hold::Rest).aim(190.0);
        a.draw_arm(0, g);
    });
    s
}

fn spoon(g: &mut Group, grip: P, tip: P) {
    g.bar(Path::poly(&[grip, tip], false), ink::GREY, 4.0);
    g.over(Path::ellipse(tip, 9.0, 6.0, (tip - grip).deg()), ink::SUN);
}

fn plate(g: &mut Group, x: f64, y: f64) {
    g.over(Path::ellipse(p(x, y), 40.0, 13.0, 0.0), ink::WHITE);
    g.dot(
        Path::ellipse(p(x - 11.0, y - 2.0), 15.0, 8.0, 0.0),
        ink::SUN,
    );
    g.dot(
        Path::ellipse(p(x + 15.0, y - 1.0), 10.0, 6.5, 0.0),
        ink::CORAL,
    );
}

fn eat_together() -> Scene {
    let mut s = Scene::default();
    for side in [-1.0, 1.0] {
        s.group(4.8, |g| {
            let x = 120.0 + side * 60.0;
            let base = if side < 0.0 {
                cast::main_child(1.2, p(x, 178.0))
            } else {
                cast::puffs(1.2, p(x, 178.0))
            };
            let mut c = base.bust(57.0);
            c.turn = -side * 12.0;
            c.look = [-side * 38.0, 4.0, 0.0];
            let (far, near) = if side < 0.0 { (1, 0) } else { (0, 1) };
            c.arms[near] = arm(x + side * 30.0, 176.0, side, Z::Front, Hold::None);
            c.arms[far] =
                arm(x - side * 44.0, 138.0, -side, Z::Over, Hold::Grip).aim(90.0 + side * 150.0);
            let mut body = c;
            body.arms[far].z = Z::Gone;
            body.draw(g);
            let mouth = c.head().spot(0.0, 0.56, 1.0, false).0;
            spoon(g, p(x - side * 44.0, 128.0), mouth + p(-side * 17.0, 8.0));
            c.draw_arm(far, g);
        });
    }
    s.group(5.2, |g| {
        g.fill(Path::read("M26 168L214 168L228 216L12 216Z"), ink::TEAL);
        for x in [70.0, 170.0] {
            plate(g, x, 192.0);
        }
    });
    s
}

fn picture_book(g: &mut Group) {
    let book = "M84 130L88 86C100 78 112 80 120 88C128 78 142 76 154 84L152 130C140 124 128 126 119 134\
                    C110 126 98 124 84 130Z";
    let up = |d: &str| Path::read(d).map(|q| q - p(-4.0, 16.0));
    g.over(up(book), ink::SUN);
    g.mark(up("M120 90L119 130"), ink::WHITE, 3.4);
    g.dot(Path::circle(p(107.0, 88.0), 9.0), ink::CORAL);
    g.dot(up("M128 116L137 98L146 114Z"), ink::TEAL);
}

/// A child of the cast sitting on the floor and looking up.
fn listener(s: &mut Scene, seat: P, yaw: f64, who: fn(f64, P) -> Figure) {
    s.group(4.6, |g| {
        let mut c = seated(0.8, seat, yaw);
        let look = who(1.0, seat);
        c.skin = look.skin;
        c.hair = look.hair;
        c.top.0 = look.top.0;
        c.wear = look.wear;
        c.look[1] = -10.0;
        c.bottom = Bottom::Legs(ink::NAVY, 0.9);
        c.draw(g);
    });
}

fn story_time() -> Scene {
    let mut s = Scene::default();
    s.group(4.8, |g| {
        g.bar(
            Path::poly(&[p(24.0, 160.0), p(24.0, 222.0)], false),
            ink::HAIR_BROWN,
            8.0,
        );
        g.bar(
            Path::poly(&[p(20.0, 162.0), p(78.0, 162.0)], false),
            ink::HAIR_BROWN,
            10.0,
        );
        g.bar(
            Path::poly(&[p(72.0, 162.0), p(72.0, 222.0)], false),
            ink::HAIR_BROWN,
            8.0,
        );
        let mut a = cast::parent(0.9, p(48.0, 140.0));
        a.turn = 50.0;
        a.look = [50.0, 10.0, 0.0];
        a.top.1 = 0.9;
        a = a.stand();
        a.legs[0] = leg(98.0, 208.0, -1.0, 1.0).knee(94.0, 150.0);
        a.legs[1] = leg(108.0, 206.0, -1.0, 1.0).knee(102.0, 150.0).z(Z::Behind);
        a.bottom = Bottom::Legs(ink::CHARCOAL, 0.97);
        a.arms[1] = arm(116.0, 112.0, 1.0, Z::Gone, Hold::Grip).aim(-30.0);
        a.arms[0] = arm(94.0, 112.0, 1.0, Z::Over, Hold::Grip).aim(10.0);
        a.draw_back(g);
        a.draw_mid(g);
        picture_book(g);
        a.draw_front(g);
    });
    listener(&mut s, p(196.0, 204.0), -46.0, cast::main_child);
    listener(&mut s, p(146.0, 214.0), -140.0, cast::curls);
    s
}
