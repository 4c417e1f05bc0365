//! Vests, helmets and wheels.

use super::big_hands::{PINCH, at};
use super::body::{Bottom, Figure, Z, arm, leg};
use super::cast;
use super::geom::{P, Path, p, polar};
use super::hands::Hold;
use super::head::{Head, SKIN_DARK, SKIN_LIGHT};
use super::paint::{Group, Scene, ink};

/// The drawings of this file.
pub fn symbols() -> Vec<(&'static str, String)> {
    vec![
        (
            "life_jacket_on",
            life_jacket_on().svg("life_jacket_on", "Life jacket on"),
        ),
        (
            "helmet_on",
            helmet_on().zoom(1.1).svg("helmet_on", "Helmet on"),
        ),
        (
            "ride_trike",
            ride_trike().zoom(1.14).svg("ride_trike", "Trike"),
        ),
    ]
}

/// A buoyancy vest over the trunk, with one bright belt.
pub fn vest(f: &Figure, g: &mut Group, cloth: &'static str, belt: &'static str) {
    let t = f.build.torso * f.k;
    let (sh, ww, hw) = (f.half(0), f.half(1), f.half(2));
    let at = |x: f64, y: f64| f.hip + f.across() * x + f.up() * (y * t);
    let v = Path::smooth(
        &[
            at(-sh * 0.42, 1.04),
            at(-sh * 0.78, 1.0),
            at(-sh * 0.86, 0.8),
            at(-ww * 1.14, 0.5),
            at(-hw * 1.12, 0.18),
            at(-hw * 0.9, 0.11),
            at(0.0, 0.08),
            at(hw * 0.9, 0.11),
            at(hw * 1.12, 0.18),
            at(ww * 1.14, 0.5),
            at(sh * 0.86, 0.8),
            at(sh * 0.78, 1.0),
            at(sh * 0.42, 1.04),
            at(0.0, 0.78),
        ],
        true,
    );
    g.over(v, cloth);
    let strip = [
        at(-ww * 1.13, 0.46),
        at(ww * 1.13, 0.46),
        at(hw * 1.1, 0.3),
        at(-hw * 1.1, 0.3),
    ];
    g.dot(Path::poly(&strip, true), belt);
}

/// A helmet on this head, with vents and a strap under the chin.
pub fn helmet(g: &mut Group, h: &Head, cloth: &'static str) {
    let side = if h.yaw.abs() > 30.0 {
        vec![-70.0 * h.yaw.signum()]
    } else {
        vec![-74.0, 74.0]
    };
    for az in side {
        let from = h.spot(az, -0.1, 1.02, false).0;
        let mid = h.spot(az * 0.82, 0.62, 1.0, false).0;
        let chin = h.spot(az * 0.1, 1.0, 1.0, false).0 + (h.place(p(0.0, 0.98)) - h.at) * 0.0;
        let under = h.place(p(0.0, 1.0));
        let end = if chin.y > under.y { under } else { chin };
        g.mark(
            Path::smooth(&[from, mid, end.to(under, 0.6)], false),
            ink::CHARCOAL,
            h.k(0.065).max(2.6),
        );
    }
    let lean = h.yaw.to_radians().sin() * 0.1;
    let dome = "M-1.2-.12C-1.3-1-.76-1.42 0-1.42C.76-1.42 1.3-1 1.2-.12C1.14.02.98.02.86-.1\
                C.5-.34-.5-.34-.86-.1C-.98.02-1.14.02-1.2-.12Z";
    g.over(
        Path::read(dome).map(|q| h.place(p(q.x, q.y + q.x * lean * -1.2))),
        cloth,
    );
    for x in [-0.56, 0.0, 0.56] {
        let vent = [h.place(p(x * 1.05, -0.62)), h.place(p(x * 0.72, -1.08))];
        g.mark(Path::poly(&vent, false), ink::WHITE, h.k(0.1).max(3.0));
    }
}

fn life_jacket_on() -> Scene {
    let mut s = Scene::default();
    s.group(5.2, |g| {
        let mut c = cast::main_child(1.66, p(120.0, 222.0)).bust(62.0);
        c.look = [0.0, 14.0, 0.0];
        c.top.1 = 0.94;
        c = c.stubs();
        c.draw_back(g);
        c.draw_mid(g);
        for i in 0..2 {
            c.draw_arm(i, g);
        }
        wide_vest(g);
        c.head().draw(g);
    });
    s.group(5.2, |g| {
        g.fill(
            Path::block(p(99.0, 198.0), 30.0, 26.0, 5.0, 0.0),
            ink::WHITE,
        );
        g.fill(
            Path::read("M128 192L136 192L136 186L154 186L154 210L136 210L136 204L128 204Z"),
            ink::WHITE,
        );
    });
    for flip in [false, true] {
        s.group(5.2, |g| {
            let x = if flip { 84.0 } else { 156.0 };
            let turn = if flip { -52.0 } else { 52.0 };
            PINCH.draw(g, at(x, 202.0, 0.5, turn, flip), SKIN_DARK, ink::TEAL);
        });
    }
    s
}

/// A child's vest from the front: one belt closed, the lower one still open.
fn wide_vest(g: &mut Group) {
    let d = "M100 122C86 122 78 132 75 146L66 216C65 224 70 228 78 228L162 228C170 228 175 224 174 216\
             L165 146C162 132 154 122 140 122C134 136 128 144 120 148C112 144 106 136 100 122Z";
    g.over(Path::read(d), ink::SUN);
    g.dot(
        Path::read("M73.4 158L166.6 158L168.4 172L71.6 172Z"),
        ink::CORAL,
    );
    g.dot(Path::read("M68.8 192L92 192L92 206L67 206Z"), ink::CORAL);
    g.dot(
        Path::read("M171.2 192L148 192L148 206L173 206Z"),
        ink::CORAL,
    );
    g.mark(Path::read("M120 150L120 226"), ink::WHITE, 3.0);
    g.dot(Path::block(p(120.0, 165.0), 32.0, 22.0, 5.0, 0.0), ink::INK);
    g.dot(
        Path::block(p(120.0, 165.0), 23.0, 13.0, 3.0, 0.0),
        ink::WHITE,
    );
}

fn helmet_on() -> Scene {
    let mut s = Scene::default();
    s.group(5.4, |g| {
        let mut c = cast::main_girl(1.86, p(120.0, 230.0)).bust(34.0);
        c.look = [0.0, -6.0, 0.0];
        for a in &mut c.arms {
            a.z = Z::Gone;
        }
        c.draw(g);
        helmet(g, &c.head(), ink::SUN);
        g.mark(Path::read("M120 158L120 176"), ink::CHARCOAL, 7.0);
    });
    s.group(4.0, |g| {
        g.fill(
            Path::block(p(120.0, 172.0), 24.0, 17.0, 5.0, 0.0),
            ink::WHITE,
        )
    });
    for flip in [false, true] {
        s.group(5.2, |g| {
            let x = if flip { 102.0 } else { 138.0 };
            let turn = if flip { -48.0 } else { 48.0 };
            PINCH.draw(g, at(x, 178.0, 0.54, turn, flip), SKIN_LIGHT, ink::TEAL);
        });
    }
    s
}

fn wheel(g: &mut Group, c: P, r: f64) {
    g.bar(Path::circle(c, r - 4.0), ink::CHARCOAL, 8.0);
    g.dot(Path::circle(c, r - 8.0), ink::WHITE);
    for i in 0..3 {
        let d = polar(f64::from(i) * 60.0 + 15.0, r - 8.0);
        g.mark(Path::poly(&[c + d, c - d], false), ink::GREY, 2.6);
    }
    g.dot(Path::circle(c, 6.0), ink::CHARCOAL);
}

/// Front wheel, frame and the near hind wheel.
fn trike(g: &mut Group) {
    let hub = p(152.0, 174.0);
    wheel(g, hub, 35.0);
    g.bar(
        Path::poly(&[p(72.0, 180.0), p(88.0, 150.0), p(140.0, 132.0)], false),
        ink::SUN,
        9.0,
    );
    g.bar(
        Path::poly(&[hub, p(140.0, 110.0), p(136.0, 98.0)], false),
        ink::SUN,
        8.0,
    );
    g.bar(
        Path::poly(&[p(134.0, 98.0), p(146.0, 96.0)], false),
        ink::CHARCOAL,
        8.0,
    );
    g.bar(
        Path::poly(&[p(132.0, 190.0), p(158.0, 190.0)], false),
        ink::CHARCOAL,
        6.0,
    );
    g.bar(
        Path::poly(&[p(76.0, 144.0), p(106.0, 144.0)], false),
        ink::CHARCOAL,
        10.0,
    );
    wheel(g, p(70.0, 180.0), 30.0);
}

fn ride_trike() -> Scene {
    let mut s = Scene::default();
    s.group(5.0, |g| {
        wheel(g, p(42.0, 172.0), 28.0);
    });
    s.group(5.0, |g| {
        let mut c = cast::main_child(0.96, p(98.0, 132.0));
        c.turn = 65.0;
        c.look = [54.0, 2.0, 0.0];
        c.lean = 6.0;
        c.shoes = Some(ink::CORAL);
        c.bottom = Bottom::Legs(ink::NAVY, 0.62);
        c = c.stand();
        c.legs[1] = leg(160.0, 158.0, -1.0, 1.0).z(Z::Behind);
        c.legs[0] = leg(140.0, 178.0, -1.0, 1.0).tilt(10.0);
        c.arms[1].z = Z::Gone;
        c.arms[0] = arm(134.0, 102.0, 1.0, Z::Over, Hold::Grip).aim(-10.0);
        c.draw_back(g);
        trike(g);
        c.draw_mid(g);
        c.draw_front(g);
        helmet(g, &c.head(), ink::SUN);
    });
    s
}
