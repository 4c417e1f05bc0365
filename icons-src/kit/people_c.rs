//! Sitting, resting, being in and on the water, nodding and shaking the head.

use super::body::{Bottom, Figure, Z, arm, leg};
use super::geom::{P, Path, p, polar};
use super::hair::{Hair, Style};
use super::hands::Hold;
use super::head::{Eyes, Mouth, SKIN_DARK, SKIN_LIGHT, Wear};
use super::paint::{Group, Scene, ink};
use super::people_b::seated;
use super::props;

/// The drawings of this file.
pub fn symbols() -> Vec<(&'static str, String)> {
    vec![
        (
            "sit_at_edge",
            sit_at_edge().svg("sit_at_edge", "Sit at the edge"),
        ),
        ("float", float().svg("float", "Float")),
        ("canoe", canoe().svg("canoe", "Boat")),
        ("dry", dry().zoom(1.1).svg("dry", "Dry")),
        ("break", rest().svg("break", "Break")),
        ("wait", wait().svg("wait", "Wait")),
        ("my_helper", my_helper().svg("my_helper", "My helper")),
        ("breathe", breathe().svg("breathe", "Breathe")),
        ("yes", yes().zoom(1.12).svg("yes", "Yes")),
        ("no", no().svg("no", "No")),
    ]
}

fn sit_at_edge() -> Scene {
    let mut s = Scene::default();
    props::sand(&mut s, 14.0, 186.0, 202.0, 17.0);
    s.group(5.2, |g| {
        let mut c = Figure::child(1.08, p(72.0, 178.0));
        c.turn = 65.0;
        c.lean = -10.0;
        c.look = [60.0, 4.0, 0.0];
        c.hair = Hair(Style::Puffs, ink::HAIR_DARK);
        c = c.stand();
        c.arms[0] = arm(34.0, 176.0, -1.0, Z::Front, Hold::Rest).aim(112.0);
        c.arms[1] = arm(112.0, 162.0, 1.0, Z::Behind, Hold::Rest).aim(30.0);
        c.legs[0] = leg(140.0, 190.0, -1.0, 1.0).tilt(-58.0);
        c.legs[1] = leg(146.0, 189.0, -1.0, 1.0).tilt(-58.0).z(Z::Behind);
        c.draw(g);
    });
    props::water(&mut s, 144.0, 228.0, 194.0, 30.0);
    s
}

fn float() -> Scene {
    let mut s = Scene::default();
    props::far_water(&mut s, 14.0, 226.0, 150.0, 50.0);
    s.group(4.8, |g| {
        let mut a = Figure::adult(0.92, p(104.0, 152.0)).bust(76.0);
        a.look = [-14.0, 24.0, 0.0];
        a.hair = Hair(Style::Crop, ink::HAIR_BROWN);
        a.skin = SKIN_LIGHT;
        a.lean = -2.0;
        a.arms[0] = arm(62.0, 144.0, 1.0, Z::Front, Hold::Flat).aim(84.0);
        a.arms[1] = arm(138.0, 144.0, -1.0, Z::Front, Hold::Flat)
            .aim(98.0)
            .flip();
        a.draw(g);
    });
    s.group(4.8, |g| {
        let mut c = Figure::child(0.96, p(122.0, 142.0));
        c.turn = 90.0;
        c.lean = -90.0;
        c.look = [78.0, 0.0, -88.0];
        c.hair = Hair(Style::Crop, ink::HAIR_DARK);
        c = c.stand();
        c.arms[0] = arm(116.0, 152.0, 1.0, Z::Front, Hold::Rest);
        c.arms[1].z = Z::Gone;
        c.legs[0] = leg(190.0, 146.0, -1.0, 1.0).tilt(-90.0);
        c.legs[1] = leg(192.0, 140.0, -1.0, 1.0).tilt(-90.0).z(Z::Behind);
        c.draw(g);
    });
    props::water(&mut s, 14.0, 226.0, 172.0, 48.0);
    s
}

fn paddle(g: &mut Group, top: P, tip: P) {
    let u = (tip - top).unit();
    g.bar(
        Path::poly(&[top, tip - u * 20.0], false),
        ink::HAIR_BROWN,
        6.5,
    );
    g.bar(
        Path::poly(&[top + u.left() * 7.0, top - u.left() * 7.0], false),
        ink::HAIR_BROWN,
        6.5,
    );
    g.over(
        Path::block(tip - u * 14.0, 30.0, 17.0, 7.0, u.deg()),
        ink::WHITE,
    );
}

fn canoe() -> Scene {
    let mut s = Scene::default();
    let mut crew = Vec::new();
    for (x, grown) in [(78.0, true), (158.0, false)] {
        let mut f = if grown {
            Figure::adult(0.86, p(x, 160.0)).bust(76.0)
        } else {
            Figure::child(0.98, p(x, 160.0)).bust(57.0)
        };
        f.turn = 60.0;
        f.look = [56.0, 0.0, 0.0];
        f.hair = Hair(Style::Crop, ink::HAIR_DARK);
        if grown {
            f.skin = SKIN_LIGHT;
            f.hair = Hair(Style::Tail, ink::HAIR_FAIR);
        }
        let (hi, lo) = (
            p(x + 46.0, if grown { 88.0 } else { 104.0 }),
            p(x + 34.0, 138.0),
        );
        f.arms[1] = arm(hi.x - 3.0, hi.y + 6.0, 1.0, Z::Behind, Hold::Grip);
        f.arms[0] = arm(lo.x - 6.0, lo.y - 2.0, 1.0, Z::Over, Hold::Grip);
        crew.push((f, hi, hi + (lo - hi) * if grown { 2.2 } else { 2.9 }));
    }
    for (f, _, _) in &crew {
        s.group(4.8, |g| {
            let mut far = *f;
            far.arms[0].z = Z::Gone;
            far.draw(g);
        });
    }
    s.group(5.4, |g| {
        let hull = "M10 126C34 146 60 150 120 150C180 150 206 146 230 126C232 160 214 186 186 190\
                    L54 190C26 186 8 160 10 126Z";
        g.fill(Path::read(hull), ink::SUN);
        g.mark(
            Path::read("M14 141C40 158 70 162 120 162C170 162 200 158 226 141"),
            ink::CORAL,
            7.0,
        );
    });
    for (f, hi, tip) in &crew {
        s.group(4.8, |g| {
            paddle(g, *hi, *tip);
            f.draw_arm(0, g);
        });
    }
    props::water(&mut s, 14.0, 226.0, 184.0, 38.0);
    s
}

fn dry() -> Scene {
    let mut s = Scene::default();
    s.group(5.4, |g| {
        let mut c = Figure::child(1.5, p(82.0, 232.0)).bust(57.0);
        c.turn = 30.0;
        c.look = [34.0, 14.0, 4.0];
        c.hair = Hair(Style::Curly, ink::HAIR_BROWN);
        c.top = (ink::NAVY, 0.3);
        c.arms[1] = arm(190.0, 142.0, -1.0, Z::Front, Hold::Rest).aim(-8.0);
        c.arms[0] = arm(140.0, 156.0, 1.0, Z::Over, Hold::Flat).aim(-32.0);
        let mut body = c;
        body.arms[0].z = Z::Gone;
        body.draw(g);
        let towel = "M126 138C140 126 164 122 176 130C182 140 184 170 186 204C176 212 166 204 156 210C146 216 134 208 124 214C120 190 118 160 126 138Z";
        g.over(Path::read(towel), ink::WHITE);
        g.mark(Path::read("M122 190C134 186 146 192 156 188C166 182 176 188 185 184"), ink::CORAL, 7.0);
        g.mark(Path::read("M122 174C134 170 146 176 156 172C166 166 176 172 184 168"), ink::SUN, 5.0);
        c.draw_arm(0, g);
    });
    s
}

fn rest() -> Scene {
    let mut s = Scene::default();
    s.group(0.0, |g| {
        g.dot(
            Path::read("M34 192L206 192C216 192 228 218 222 222L18 222C12 218 24 192 34 192Z"),
            ink::LEAF,
        );
        g.mark(
            Path::read("M31 200L210 200M23 214L217 214"),
            ink::WHITE,
            2.6,
        );
    });
    s.group(5.2, |g| {
        let bag = "M22 200C12 160 14 108 34 98C58 88 74 136 96 172C106 190 104 204 96 206L30 206\
                   C25 206 23 204 22 200Z";
        g.fill(Path::read(bag), ink::TEAL);
        let mut c = Figure::child(1.1, p(94.0, 178.0));
        c.turn = 68.0;
        c.lean = -36.0;
        c.look = [50.0, -4.0, -14.0];
        c.eyes = Eyes::Shut;
        c.hair = Hair(Style::Bob, ink::HAIR_BROWN);
        c = c.stand();
        c.arms[1].z = Z::Gone;
        c.arms[0] = arm(98.0, 152.0, -1.0, Z::Front, Hold::Rest).aim(20.0);
        c.legs[0] = leg(162.0, 194.0, -1.0, 1.0).tilt(-46.0);
        c.legs[1] = leg(142.0, 192.0, -1.0, 1.0).z(Z::Behind);
        c.draw(g);
    });
    s.group(5.2, |g| {
        g.bar(
            Path::read("M184 138C184 112 220 112 220 138"),
            ink::WHITE,
            4.0,
        );
        g.fill(
            Path::read("M182 138L222 138L217 178C216 182 188 182 187 178Z"),
            ink::SUN,
        );
        g.dot(
            Path::read("M184.5 156L219.5 156L218.5 166L185.8 166Z"),
            ink::CORAL,
        );
    });
    s.group(5.2, |g| {
        g.bar(
            Path::poly(&[p(126.0, 216.0), p(172.0, 212.0)], false),
            ink::CORAL,
            8.0,
        );
        g.bar(
            Path::poly(&[p(125.0, 208.0), p(127.0, 224.0)], false),
            ink::CORAL,
            7.0,
        );
        g.over(
            Path::read("M172 202C186 198 202 202 212 210C204 220 188 224 173 221Z"),
            ink::NAVY,
        );
    });
    s
}

fn wait() -> Scene {
    let mut s = Scene::default();
    props::mat(&mut s, p(88.0, 204.0), 76.0, 18.0, ink::LEAF);
    s.group(5.2, |g| {
        let mut c = seated(1.24, p(88.0, 198.0), 0.0);
        c.look = [16.0, 4.0, 0.0];
        c.mouth = Mouth::Calm;
        c.hair = Hair(Style::Crop, ink::HAIR_DARK);
        c.bottom = Bottom::Legs(ink::NAVY, 0.9);
        c.arms[0] = arm(74.0, 170.0, 1.0, Z::Front, Hold::Rest).aim(24.0).flip();
        c.arms[1] = arm(102.0, 171.0, -1.0, Z::Front, Hold::Rest).aim(156.0);
        c.draw(g);
    });
    s.group(5.2, |g| props::hourglass(g, p(192.0, 218.0), 110.0));
    s
}

fn my_helper() -> Scene {
    let mut s = Scene::default();
    s.group(4.8, |g| {
        let mut a = Figure::adult(0.94, p(176.0, 148.0));
        a.turn = -50.0;
        a.look = [-46.0, 6.0, -8.0];
        a.hair = Hair(Style::Bun, ink::HAIR_DARK);
        a.skin = SKIN_DARK;
        a.top.0 = ink::SUN;
        a.lean = -6.0;
        a = a.stand();
        a.legs[0] = leg(130.0, 202.0, 1.0, -1.0).z(Z::Behind);
        a.legs[1] = leg(208.0, 198.0, 1.0, -1.0).tilt(-60.0);
        a.arms[0] = arm(122.0, 150.0, -1.0, Z::Behind, Hold::Grip).aim(176.0);
        a.arms[1] = arm(88.0, 96.0, 1.0, Z::Gone, Hold::None);
        a.draw_back(g);
        a.draw_mid(g);
        let mut c = Figure::child(0.98, p(74.0, 144.0));
        c.turn = 40.0;
        c.look = [42.0, -4.0, 6.0];
        c.hair = Hair(Style::Curly, ink::HAIR_DARK);
        c.wear = Wear::Glasses;
        c = c.stand();
        c.arms[1] = arm(112.0, 150.0, 1.0, Z::Behind, Hold::Grip).aim(0.0);
        c.draw(g);
        a.arms[1] = arm(84.0, 104.0, 1.0, Z::Front, Hold::Flat).aim(170.0);
        a.draw_front(g);
    });
    s
}

fn breathe() -> Scene {
    let mut s = Scene::default();
    s.group(5.4, |g| {
        let mut c = Figure::child(1.55, p(88.0, 240.0)).bust(57.0);
        c.turn = 40.0;
        c.look = [62.0, 0.0, -6.0];
        c.eyes = Eyes::Shut;
        c.mouth = Mouth::Blow;
        c.hair = Hair(Style::Plaits, ink::HAIR_DARK);
        c.top = (ink::TEAL, 0.4);
        c = c.stubs();
        c.arms[0] = arm(78.0, 200.0, 1.0, Z::Over, Hold::Flat).aim(-8.0);
        c.draw(g);
    });
    s.group(0.0, |g| {
        g.mark(
            Path::read("M142 124C158 114 172 132 190 122C204 114 214 120 224 126"),
            ink::WATER,
            7.0,
        );
        g.mark(
            Path::read("M148 142C162 134 174 150 190 141"),
            ink::WATER,
            7.0,
        );
    });
    s
}

/// A curved line with an arrow head at both ends, round `c`.
pub fn swing(g: &mut Group, c: P, r: f64, from: f64, to: f64) {
    let pts: Vec<P> = (0..=8)
        .map(|i| c + polar(from + (to - from) * f64::from(i) / 8.0, r))
        .collect();
    g.mark(Path::smooth(&pts, false), ink::CORAL, 7.5);
    for (end, next) in [(pts[0], pts[1]), (pts[8], pts[7])] {
        let u = (next - end).unit();
        let tips = [end + u.rot(42.0) * 17.0, end, end + u.rot(-42.0) * 17.0];
        g.mark(Path::poly(&tips, false), ink::CORAL, 7.5);
    }
}

fn yes() -> Scene {
    let mut s = Scene::default();
    let mut c = Figure::child(1.5, p(104.0, 222.0)).bust(48.0).stubs();
    c.mouth = Mouth::Grin;
    c.hair = Hair(Style::Crop, ink::HAIR_DARK);
    c.look = [0.0, 13.0, 0.0];
    c.eyes = Eyes::Glad;
    let mut h = c.head();
    h.at.y += 4.0;
    let mut up = h;
    up.at.y -= 50.0;
    up.pitch = -28.0;
    up.eyes = Eyes::Open;
    up.mouth = Mouth::Smile;
    let mut g = Group::new(0.0);
    up.draw(&mut g);
    s.add(g.ghost());
    s.group(5.4, |g| {
        c.draw_mid(g);
        c.draw_arm(0, g);
        c.draw_arm(1, g);
        h.draw(g);
    });
    s.group(0.0, |g| swing(g, p(-16.0, 112.0), 212.0, -24.0, 24.0));
    s
}

fn no() -> Scene {
    let mut s = Scene::default();
    let with = |yaw: f64| {
        let mut c = Figure::child(1.6, p(120.0, 226.0)).bust(40.0).stubs();
        c.look = [yaw, 0.0, 0.0];
        c.mouth = Mouth::Frown;
        c.hair = Hair(Style::Crop, ink::HAIR_DARK);
        c
    };
    for d in [-1.0, 1.0] {
        let mut g = Group::new(0.0);
        let mut h = with(d * 58.0).head();
        h.at.x += d * 58.0;
        h.draw_behind(&mut g);
        h.draw(&mut g);
        s.add(g.ghost());
    }
    s.group(5.4, |g| with(0.0).draw(g));
    s.group(0.0, |g| swing(g, p(120.0, -74.0), 312.0, 108.0, 72.0));
    s
}
