//! Boats: the sail boat, its rope and its swinging pole, the paddle.

use super::body::{Figure, Z, arm};
use super::cast;
use super::geom::{P, Path, p, polar};
use super::hands::Hold;
use super::head::SKIN;
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
        g.bar(Path::read("M136 20L136 170"), ink::HAIR_BROWN, 7.0);
        g.bar(Path::read("M136 134L40 134"), ink::HAIR_BROWN, 6.0);
        g.over(Path::read("M128 20L128 126L30 126C70 100 104 66 128 20Z"), ink::SUN);
        g.dot(Path::read("M108 54C100 66 92 76 84 84L128 84L128 66L128 54Z"), ink::CORAL);
    });
    s.group(4.8, |g| {
        let mut a = seat(cast::helper(0.7, p(74.0, 184.0)), 50.0);
        a.arms[0] = arm(52.0, 160.0, 1.0, Z::Front, Hold::Grip);
        a.arms[1].z = Z::Gone;
        a.draw(g);
        let mut c = seat(cast::main_child(0.74, p(176.0, 176.0)), 50.0);
        c.arms[0] = arm(196.0, 154.0, 1.0, Z::Front, Hold::Grip);
        c.arms[1].z = Z::Gone;
        c.draw(g);
    });
    s.group(5.2, |g| {
        let hull = "M18 160L228 160C222 184 206 202 180 206L62 206C36 204 22 186 18 160Z";
        g.fill(Path::read(hull), ink::WHITE);
        g.mark(Path::read("M24 174L220 174"), ink::CORAL, 7.0);
    });
    props::water(&mut s, 14.0, 226.0, 190.0, 34.0);
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
        g.over(Path::block(p(206.0, 92.0), 32.0, 120.0, 8.0, 0.0), ink::NAVY);
        rope(g, &[p(180.0, 92.0), p(186.0, 110.0), p(176.0, 150.0), p(182.0, 196.0)]);
        g.bar(Path::ellipse(p(178.0, 92.0), 18.0, 24.0, 0.0), ink::GREY, 9.0);
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
        g.bar(Path::read("M212 16L212 190"), ink::HAIR_BROWN, 9.0);
        g.over(Path::read("M202 16L202 68L20 68C90 58 150 40 202 16Z"), ink::WHITE);
        g.bar(Path::read("M212 80L18 80"), ink::SUN, 11.0);
    });
    s.group(4.8, |g| {
        let mut a = cast::helper(0.84, p(184.0, 192.0)).bust(76.0);
        a.turn = -60.0;
        a.lean = -48.0;
        a.look = [-50.0, 20.0, -24.0];
        a = a.bust(76.0);
        a.arms[0].z = Z::Gone;
        a.arms[1] = arm(112.0, 160.0, -1.0, Z::Front, Hold::Rest);
        a.draw(g);
    });
    s.group(4.8, |g| {
        let mut c = cast::main_child(1.0, p(104.0, 196.0)).bust(57.0);
        c.turn = -60.0;
        c.lean = -42.0;
        c.look = [-40.0, 24.0, -26.0];
        c = c.bust(57.0);
        let h = c.head();
        let (l, r) = (h.place(p(-0.55, -0.9)), h.place(p(0.8, -0.7)));
        c.arms[0] = arm(l.x - 6.0, l.y + 4.0, -1.0, Z::Over, Hold::Rest).aim(-20.0);
        c.arms[1] = arm(r.x + 6.0, r.y + 4.0, -1.0, Z::Over, Hold::Rest).aim(-150.0);
        c.draw(g);
    });
    s.group(5.2, |g| {
        let hull = "M12 172L228 172C226 192 216 208 204 212L36 212C24 208 14 192 12 172Z";
        g.fill(Path::read(hull), ink::NAVY);
        g.mark(Path::read("M18 186L222 186"), ink::WHITE, 5.0);
    });
    props::water(&mut s, 14.0, 226.0, 202.0, 24.0);
    s
}

fn paddle() -> Scene {
    let mut s = Scene::default();
    let (a, b) = (p(34.0, 172.0), p(206.0, 60.0));
    let u = (b - a).unit();
    s.group(5.4, |g| {
        g.bar(Path::poly(&[a, b], false), ink::WHITE, 12.0);
        let blade = "M-18-9C-6-12 4-26 22-28C44-30 58-20 58 0C58 20 44 30 22 28C4 26-6 12-18 9Z";
        g.over(Path::read(blade).put(b - u * 22.0, 1.0, u.deg(), false), ink::SUN);
        g.over(Path::read(blade).put(a + u * 22.0, 1.0, u.deg() + 180.0, false), ink::SUN);
        let n = u.left() * -1.0;
        for t in [0.36, 0.64] {
            let at = a.to(b, t);
            fist(g, at + n * 108.0 + u * -6.0, at + n * 26.0, 48.0);
        }
    });
    s
}
