//! Boats: the sail boat, its rope and its swinging pole, the paddle.

use super::body::{Figure, Z, arm};
use super::cast;
use super::geom::{P, Path, p, polar};
use super::hands::Hold;
use super::head::{SKIN, Wear};
use super::in_water::Forearm;
use super::paint::{Group, Scene, ink};
use super::people_b::arrow;
use super::props;

/// The drawings of this file.
pub fn symbols() -> Vec<(&'static str, String)> {
    vec![
        ("sail_boat", sail_boat().svg("sail_boat", "Sail boat")),
        ("pull_rope", pull_rope().svg("pull_rope", "Pull")),
        ("heads_down", heads_down().svg("heads_down", "Heads down")),
        ("paddle", paddle().svg("paddle", "Paddle")),
    ]
}

fn seat(mut f: Figure, look: f64) -> Figure {
    f = f.bust(f.build.torso);
    f.turn = look;
    f.look = [look, 0.0, 0.0];
    f.bust(f.build.torso)
}

fn sail_boat() -> Scene {
    let mut s = Scene::default();
    s.group(5.2, |g| {
        g.bar(Path::read("M64 20L64 176"), ink::HAIR_BROWN, 8.0);
        g.over(Path::read("M74 16C120 40 176 78 216 116L74 116Z"), ink::SUN);
        g.dot(
            Path::read("M74 58L147 58C158 66 168 74 178 82L74 82Z"),
            ink::CORAL,
        );
        g.bar(Path::read("M64 118L218 118"), ink::HAIR_BROWN, 6.0);
    });
    s.group(4.8, |g| {
        let mut a = seat(cast::helper(0.74, p(174.0, 216.0)), -42.0);
        a.arms[1] = arm(190.0, 174.0, -1.0, Z::Front, Hold::Grip);
        a.arms[0].z = Z::Gone;
        a.draw(g);
        let mut c = seat(cast::main_child(0.76, p(110.0, 206.0)), -42.0);
        c.arms[1] = arm(94.0, 176.0, -1.0, Z::Front, Hold::Grip);
        c.arms[0].z = Z::Gone;
        c.draw(g);
    });
    s.group(5.2, |g| {
        let hull =
            "M14 166C60 176 150 178 224 172C222 192 212 206 196 210L66 210C40 206 22 190 14 166Z";
        g.fill(Path::read(hull), ink::WHITE);
        g.mark(
            Path::read("M24 180C70 188 150 190 220 185"),
            ink::CORAL,
            7.0,
        );
    });
    props::water(&mut s, 14.0, 226.0, 198.0, 30.0);
    s
}

/// A rope with its twist.
fn rope(g: &mut Group, line: &[P]) {
    g.bar(Path::smooth(line, false), ink::SUN, 15.0);
    for w in line.windows(2) {
        let u = (w[1] - w[0]).unit();
        let n = ((w[1] - w[0]).len() / 14.0).round();
        for i in 0..n as i32 {
            let c = w[0].to(w[1], (f64::from(i) + 0.5) / n);
            let d = polar(u.deg() - 55.0, 8.0);
            g.mark(Path::poly(&[c - d, c + d], false), ink::HAIR_BROWN, 3.0);
        }
    }
}

fn fist(g: &mut Group, from: P, wrist: P, len: f64) {
    let f = Forearm {
        from,
        to: wrist,
        w: len * 0.32,
        sleeve: (ink::CORAL, 0.55),
        skin: SKIN,
    };
    f.draw(g, Hold::Grip, len, (wrist - from).deg(), false);
}

fn pull_rope() -> Scene {
    let mut s = Scene::default();
    s.group(5.2, |g| {
        g.over(
            Path::block(p(206.0, 92.0), 32.0, 120.0, 8.0, 0.0),
            ink::NAVY,
        );
        rope(
            g,
            &[
                p(180.0, 92.0),
                p(186.0, 110.0),
                p(176.0, 150.0),
                p(182.0, 196.0),
            ],
        );
        g.bar(
            Path::ellipse(p(178.0, 92.0), 18.0, 24.0, 0.0),
            ink::GREY,
            9.0,
        );
        rope(g, &[p(16.0, 92.0), p(80.0, 92.0), p(178.0, 92.0)]);
        fist(g, p(34.0, 200.0), p(50.0, 122.0), 52.0);
        fist(g, p(94.0, 200.0), p(110.0, 122.0), 52.0);
    });
    s.group(0.0, |g| arrow(g, p(120.0, 38.0), p(40.0, 38.0)));
    s
}

fn heads_down() -> Scene {
    let mut s = Scene::default();
    s.group(5.2, |g| {
        g.bar(Path::read("M208 16L208 190"), ink::HAIR_BROWN, 10.0);
        g.over(
            Path::read("M198 14L198 52L18 52C40 40 60 26 74 14Z"),
            ink::WHITE,
        );
        g.mark(Path::read("M60 33L198 33"), ink::CORAL, 9.0);
        g.bar(Path::read("M208 64L18 64"), ink::SUN, 13.0);
    });
    s.group(4.8, |g| {
        let mut a = cast::helper(0.92, p(212.0, 204.0)).bust(76.0);
        a.turn = -60.0;
        a.lean = -50.0;
        a.look = [-44.0, 14.0, -14.0];
        a.wear = Wear::Glasses;
        a = a.bust(76.0);
        a.arms[0].z = Z::Gone;
        a.arms[1] = arm(150.0, 186.0, 1.0, Z::Front, Hold::None);
        a.draw(g);
    });
    s.group(4.8, |g| {
        let mut c = cast::main_child(1.12, p(104.0, 208.0)).bust(57.0);
        c.turn = -60.0;
        c.lean = -34.0;
        c.look = [-58.0, 20.0, -20.0];
        c = c.bust(57.0);
        let h = c.head();
        let to = h.place(p(0.5, -0.8));
        c.arms[0].z = Z::Gone;
        c.arms[1] = arm(to.x + 13.0, to.y - 1.0, 1.0, Z::Over, Hold::Rest).aim(196.0);
        c.draw(g);
    });
    s.group(5.2, |g| {
        let hull = "M12 176L228 176C226 194 216 208 204 212L36 212C24 208 14 194 12 176Z";
        g.fill(Path::read(hull), ink::NAVY);
        g.mark(Path::read("M18 188L222 188"), ink::WHITE, 5.0);
    });
    props::water(&mut s, 14.0, 226.0, 202.0, 24.0);
    s
}

fn paddle() -> Scene {
    let mut s = Scene::default();
    let (a, b) = (p(44.0, 212.0), p(202.0, 118.0));
    let u = (b - a).unit();
    s.group(5.2, |g| {
        let mut c = cast::main_child(1.32, p(108.0, 224.0)).bust(57.0);
        c.look = [22.0, 4.0, 0.0];
        let mut body = c;
        body.arms[0].z = Z::Gone;
        body.arms[1].z = Z::Gone;
        body.draw(g);
        g.bar(Path::poly(&[a, b], false), ink::CHARCOAL, 10.0);
        let blade = "M-26-7C-18-10-12-22 4-26C20-29 36-26 42-18C48-8 48 10 42 20C36 27 20 28 4 25\
                     C-12 22-18 10-26 7Z";
        for (at, deg) in [(b, u.deg()), (a, u.deg() + 180.0)] {
            let v = polar(deg, 1.0);
            g.over(
                Path::read(blade).put(at - v * 18.0, 1.0, deg, false),
                ink::SUN,
            );
            g.mark(
                Path::poly(&[at - v * 34.0, at + v * 8.0], false),
                ink::WHITE,
                5.0,
            );
        }
        // One hand from above, one from below, so that the shaft stays in view.
        let (l, r) = (a.to(b, 0.33), a.to(b, 0.7));
        c.arms[0] = arm(l.x - 3.0, l.y - 13.0, 1.0, Z::Over, Hold::Grip).aim(72.0);
        c.arms[1] = arm(r.x + 2.0, r.y + 13.0, 1.0, Z::Over, Hold::Grip).aim(-96.0);
        c.arms[0].flip = true;
        c.arms[1].flip = true;
        for i in 0..2 {
            c.draw_arm(i, g);
        }
    });
    s
}
