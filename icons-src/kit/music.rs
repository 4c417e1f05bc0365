//! Dance and music.

use super::big_hands::{GRIP, SIDE, at};
use super::body::{Bottom, Z, arm, leg};
use super::cast;
use super::geom::{P, Path, Seg, p, polar};
use super::hands::Hold;
use super::head::{Eyes, SKIN};
use super::paint::{Group, Scene, ink};
use super::props::Wheelchair;

/// The drawings of this file.
pub fn symbols() -> Vec<(&'static str, String)> {
    vec![
        ("dance", dance().zoom(0.97).svg("dance", "Dance")),
        ("ribbon", ribbon().zoom(0.97).svg("ribbon", "Ribbon")),
        ("listen_music", listen_music().svg("listen_music", "Music")),
        (
            "shake_maraca",
            shake_maraca().svg("shake_maraca", "Shakers"),
        ),
        ("clap", clap().svg("clap", "Clap")),
    ]
}

/// Part of a circle round `c`.
fn arc(c: P, r: f64, from: f64, to: f64) -> Path {
    let pts: Vec<P> = (0..=6)
        .map(|i| c + polar(from + (to - from) * f64::from(i) / 6.0, r))
        .collect();
    Path::smooth(&pts, false)
}

fn dance() -> Scene {
    let mut s = Scene::default();
    s.group(4.8, |g| {
        let mut c = cast::main_child(0.98, p(66.0, 142.0));
        c.turn = 20.0;
        c.look = [34.0, -6.0, 8.0];
        c.lean = -8.0;
        c.eyes = Eyes::Glad;
        c.shoes = Some(ink::WHITE);
        c = c.stand();
        c.arms[0] = arm(25.0, 57.0, -1.0, Z::Front, Hold::Open).aim(-110.0);
        c.arms[1] = arm(104.0, 104.0, 1.0, Z::Front, Hold::Rest).aim(6.0);
        c.legs[0] = leg(64.0, 212.0, 1.0, -0.7);
        c.legs[1] = leg(112.0, 190.0, -1.0, 0.9).tilt(-24.0);
        c.draw(g);
        let w = Wheelchair {
            at: p(206.0, 166.0),
            dir: -1.0,
            k: 0.98,
        };
        w.frame(g);
        let mut f = cast::bob(0.98, w.hip());
        f.turn = -60.0;
        f.look = [-44.0, -6.0, -6.0];
        f.eyes = Eyes::Glad;
        f.bottom = Bottom::Legs(ink::CHARCOAL, 0.95);
        f.shoes = Some(ink::WHITE);
        f = f.stand();
        let a = w.ankle();
        f.legs[0] = leg(a.x, a.y, 1.0, -1.0).z(Z::Behind);
        f.legs[1] = leg(a.x + 3.0, a.y, 1.0, -1.0);
        f.arms[0] = arm(140.0, 106.0, -1.0, Z::Front, Hold::Rest)
            .aim(176.0)
            .flip();
        f.arms[1] = arm(219.0, 57.0, 1.0, Z::Over, Hold::Open).aim(-70.0);
        f.draw(g);
        w.wheel(g);
    });
    s
}

/// A ribbon falling in folds from `tip`, its two sides in two colours.
fn streamer(g: &mut Group, tip: P) {
    let turns = [
        tip,
        p(206.0, 22.0),
        p(166.0, 62.0),
        p(222.0, 86.0),
        p(158.0, 126.0),
        p(222.0, 150.0),
        p(152.0, 190.0),
    ];
    let fold = |a: P, b: P, from: f64, to: f64| {
        let half = p((b.x - a.x) * 0.5, 0.0);
        let out = p((b.x - a.x).signum() * 9.0, 0.0);
        let (c, d) = (b + p(0.0, to), a + p(0.0, from));
        let (mut near, far) = (a.to(d, 0.5) - out, b.to(c, 0.5) + out);
        if from < to {
            near = near + out;
        }
        Path(vec![
            Seg::M(a),
            Seg::C(a + half, b - half, b),
            Seg::Q(far, c),
            Seg::C(c - half, d + half, d),
            Seg::Q(near, a),
            Seg::Z,
        ])
    };
    for i in [1, 3, 5, 0, 2, 4] {
        let from = if i == 0 { 5.0 } else { 19.0 };
        let colour = if i % 2 == 0 { ink::SUN } else { ink::CORAL };
        g.over(fold(turns[i], turns[i + 1], from, 19.0), colour);
    }
}

fn ribbon() -> Scene {
    let mut s = Scene::default();
    s.group(5.0, |g| {
        let tip = p(138.0, 50.0);
        streamer(g, tip);
        g.bar(
            Path::poly(&[p(104.0, 70.0), tip], false),
            ink::HAIR_BROWN,
            6.0,
        );
        let mut c = cast::main_girl(1.0, p(68.0, 138.0));
        c.turn = 40.0;
        c.look = [48.0, -10.0, 0.0];
        c.lean = -4.0;
        c = c.stand();
        c.arms[1] = arm(102.0, 76.0, 1.0, Z::Front, Hold::Grip).aim(-40.0);
        c.arms[0] = arm(18.0, 108.0, 1.0, Z::Front, Hold::Rest).aim(160.0);
        c.legs[0] = leg(44.0, 208.0, -1.0, 0.9).tilt(12.0);
        c.legs[1] = leg(92.0, 210.0, -1.0, 0.9).z(Z::Behind);
        c.draw(g);
    });
    s
}

fn speaker(g: &mut Group) {
    g.fill(
        Path::block(p(66.0, 142.0), 100.0, 164.0, 12.0, 0.0),
        ink::CHARCOAL,
    );
    for (y, r) in [(94.0, 20.0), (168.0, 38.0)] {
        g.dot(Path::circle(p(66.0, y), r), ink::WHITE);
        g.dot(Path::circle(p(66.0, y), r - 5.0), ink::GREY);
        g.dot(Path::circle(p(66.0, y), r * 0.36), ink::CHARCOAL);
    }
}

fn listen_music() -> Scene {
    let mut s = Scene::default();
    s.group(5.2, speaker);
    s.group(5.2, |g| {
        let mut c = cast::main_child(1.36, p(176.0, 228.0)).bust(57.0);
        c.turn = -35.0;
        c.look = [-38.0, 4.0, -10.0];
        c.eyes = Eyes::Shut;
        c = c.stubs();
        c.arms[0] = arm(122.0, 164.0, 1.0, Z::Front, Hold::Flat).aim(188.0);
        c.draw(g);
    });
    s.group(0.0, |g| {
        for r in [28.0, 44.0] {
            g.mark(arc(p(66.0, 66.0), r, -140.0, -40.0), ink::CORAL, 7.0);
        }
    });
    s
}

fn maraca(g: &mut Group, head: P, end: P) {
    let u = (head - end).unit();
    g.bar(Path::poly(&[head, end], false), ink::HAIR_BROWN, 11.0);
    g.over(Path::ellipse(head, 40.0, 33.0, u.deg()), ink::SUN);
    let at = |x: f64, y: f64| head + u * x + u.left() * y;
    for (x, y) in [(-12.0, 30.5), (8.0, 31.0)] {
        let band = [at(x, y), at(x - 8.0, 0.0), at(x, -y)];
        g.mark(Path::smooth(&band, false), ink::CORAL, 8.0);
    }
}

fn shake_maraca() -> Scene {
    let mut s = Scene::default();
    for flip in [false, true] {
        let x = |v: f64| if flip { 240.0 - v } else { v };
        let dy = if flip { 16.0 } else { 0.0 };
        s.group(5.2, |g| {
            maraca(g, p(x(66.0), 58.0 + dy), p(x(102.0), 178.0 + dy));
        });
        s.group(5.2, |g| {
            let turn = if flip { 54.0 } else { -54.0 };
            GRIP.draw(
                g,
                at(x(93.0), 150.0 + dy, 0.76, turn, !flip),
                SKIN,
                ink::CORAL,
            );
        });
    }
    s.group(0.0, |g| {
        for (c, a, b) in [(p(66.0, 58.0), 120.0, 190.0), (p(174.0, 74.0), -10.0, 60.0)] {
            g.mark(arc(c, 50.0, a, b), ink::CORAL, 6.0);
        }
    });
    s
}

fn clap() -> Scene {
    let mut s = Scene::default();
    for flip in [true, false] {
        s.group(5.2, |g| {
            let x = if flip { 137.0 } else { 103.0 };
            let turn = if flip { 37.0 } else { -37.0 };
            SIDE.draw(g, at(x, 74.0, 0.98, turn, flip), SKIN, ink::CORAL);
        });
    }
    s.group(0.0, |g| {
        let c = p(120.0, 96.0);
        for d in [-126.0, -108.0, -90.0, -72.0, -54.0] {
            g.mark(
                Path::poly(&[c + polar(d, 54.0), c + polar(d, 78.0)], false),
                ink::CORAL,
                7.0,
            );
        }
    });
    s
}
