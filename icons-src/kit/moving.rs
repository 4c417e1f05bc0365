//! Moving on land: marching, running, jumping, stopping.

use super::body::{Arm, Figure, Leg, Z, arm, leg};
use super::cast;
use super::geom::{P, Path, p, polar};
use super::hands::{Hand, Hold, hand};
use super::head::{Eyes, Mouth, SKIN, SKIN_LIGHT};
use super::paint::{Group, Scene, ink};
use super::props;

/// The drawings of this file.
pub fn symbols() -> Vec<(&'static str, String)> {
    vec![
        ("march", march().svg("march", "March")),
        ("jump", jump().svg("jump", "Jump")),
        ("run", run().svg("run", "Run")),
        ("crab_walk", crab_walk().svg("crab_walk", "Crab walk")),
        ("shake", shake().svg("shake", "Shake")),
        ("freeze", freeze().svg("freeze", "Freeze")),
    ]
}

/// An arm whose wrist is given from the hip, in body units.
pub fn arm_at(f: &Figure, d: P, bend: f64, z: Z, hold: Hold) -> Arm {
    let to = f.hip + d * f.k;
    arm(to.x, to.y, bend, z, hold)
}

/// A leg whose ankle is given from the hip, in body units.
pub fn leg_at(f: &Figure, d: P, bend: f64, face: f64) -> Leg {
    let to = f.hip + d * f.k;
    leg(to.x, to.y, bend, face)
}

/// A soft cone standing at `at` (middle of its foot), `h` high.
pub fn cone(g: &mut Group, at: P, h: f64) {
    let put = |d: &str| Path::read(d).put(at, h, 0.0, false);
    g.fill(
        put("M-.1-.94C-.09-1.02.09-1.02.1-.94L.3-.1L-.3-.1Z"),
        ink::SUN,
    );
    g.dot(put("M-.18-.6L.18-.6L.236-.36L-.236-.36Z"), ink::WHITE);
    g.over(
        put("M-.42-.14L.42-.14C.48-.14.48 0 .42 0L-.42 0C-.48 0-.48-.14-.42-.14Z"),
        ink::SUN,
    );
}

/// Short curved lines beside a hand or foot that moves.
pub fn wiggle(g: &mut Group, c: P, r: f64, dir: f64, half: f64) {
    let pts: Vec<P> = (0..=4)
        .map(|i| c + polar(dir - half + half * f64::from(i) / 2.0, r))
        .collect();
    g.mark(Path::smooth(&pts, false), ink::CORAL, 6.0);
}

fn marcher(mut c: Figure) -> Figure {
    c.turn = 62.0;
    c.look = [62.0, -6.0, 0.0];
    c.shoes = Some(ink::WHITE);
    c.lean = -3.0;
    c = c.stand();
    let knee = c.hip + p(40.0, -10.0) * c.k;
    c.legs[0] = leg_at(&c, p(37.0, 24.0), -1.0, 1.0)
        .knee(knee.x, knee.y)
        .tilt(14.0);
    c.legs[1] = leg_at(&c, p(-3.0, 73.0), -1.0, 1.0).z(Z::Behind);
    c.arms[1] = arm_at(&c, p(39.0, -64.0), 1.0, Z::Behind, Hold::Grip).aim(-80.0);
    c.arms[0] = arm_at(&c, p(-38.0, -10.0), 1.0, Z::Front, Hold::Grip);
    c
}

fn march() -> Scene {
    let mut s = Scene::default();
    s.group(0.0, |g| {
        g.dot(
            Path::block(p(122.0, 216.0), 204.0, 12.0, 6.0, 0.0),
            ink::GREY_LIGHT,
        );
    });
    s.group(4.8, |g| {
        let mut c = cast::puffs(0.96, p(66.0, 136.0));
        c.top.1 = 0.5;
        marcher(c).draw(g);
    });
    s.group(4.8, |g| {
        marcher(cast::main_child(0.96, p(166.0, 136.0))).draw(g);
    });
    s
}

fn jump() -> Scene {
    let mut s = Scene::default();
    props::sand(&mut s, 40.0, 200.0, 212.0, 16.0);
    s.group(0.0, |g| {
        g.dot(
            Path::ellipse(p(120.0, 212.0), 40.0, 7.0, 0.0),
            ink::HAIR_FAIR,
        );
    });
    s.group(5.0, |g| {
        let mut c = cast::main_child(1.0, p(120.0, 118.0));
        c.eyes = Eyes::Glad;
        c = c.stand();
        c.arms[0] = arm_at(&c, p(-56.0, -88.0), -1.0, Z::Behind, Hold::Open).aim(-120.0);
        c.arms[1] = arm_at(&c, p(56.0, -88.0), 1.0, Z::Behind, Hold::Open)
            .aim(-60.0)
            .flip();
        for (i, s) in [(0, -1.0), (1, 1.0)] {
            let knee = c.hip + p(s * 36.0, 22.0) * c.k;
            c.legs[i] = leg_at(&c, p(s * 20.0, 52.0), 1.0, s * 0.8)
                .knee(knee.x, knee.y)
                .tilt(s * 24.0);
        }
        c.draw(g);
    });
    s
}

fn run() -> Scene {
    let mut s = Scene::default();
    props::sand(&mut s, 14.0, 226.0, 212.0, 14.0);
    s.group(4.8, |g| cone(g, p(32.0, 214.0), 48.0));
    s.group(4.8, |g| cone(g, p(208.0, 214.0), 48.0));
    s.group(5.0, |g| {
        let mut c = cast::main_girl(1.0, p(120.0, 120.0));
        c.turn = 66.0;
        c.look = [66.0, 0.0, 6.0];
        c.lean = 18.0;
        c.shoes = Some(ink::WHITE);
        c.mouth = Mouth::Smile;
        c = c.stand();
        c.legs[1] = leg_at(&c, p(44.0, 46.0), -1.0, 1.0)
            .z(Z::Behind)
            .tilt(-16.0);
        c.legs[0] = leg_at(&c, p(-52.0, 42.0), -1.0, 1.0).tilt(62.0);
        c.arms[1] = arm_at(&c, p(-38.0, -30.0), 1.0, Z::Behind, Hold::Grip);
        c.arms[0] = arm_at(&c, p(56.0, -44.0), 1.0, Z::Front, Hold::Grip).aim(-50.0);
        c.draw(g);
    });
    s
}

fn crab_walk() -> Scene {
    let mut s = Scene::default();
    props::sand(&mut s, 16.0, 224.0, 198.0, 16.0);
    s.group(5.2, |g| {
        let mut c = cast::main_child(1.16, p(130.0, 146.0));
        c.turn = 86.0;
        c.lean = -66.0;
        c.look = [62.0, 0.0, -58.0];
        c.build.neck = 7.0;
        // Arms seen a little from the front look shorter than shins.
        c.build.arm = [29.0, 27.0];
        c.build.leg = [42.0, 47.0];
        c = c.stand();
        c.arms[1] = arm(96.0, 178.0, 1.0, Z::Behind, Hold::Rest).aim(60.0);
        c.arms[0] = arm(64.0, 184.0, 1.0, Z::Front, Hold::Rest).aim(120.0);
        c.legs[1] = leg(198.0, 168.0, -1.0, 1.0).z(Z::Behind).tilt(-14.0);
        c.legs[0] = leg(166.0, 186.0, -1.0, 1.0);
        c.draw_back(g);
        c.draw_mid(g);
        // The collar would peep out behind the chin.
        g.dot(Path::circle(c.chest() - c.up() * 5.0, 8.0), ink::CORAL);
        c.draw_front(g);
    });
    s
}

fn shake() -> Scene {
    let mut s = Scene::default();
    let mut c = cast::main_child(1.5, p(120.0, 226.0)).bust(70.0);
    c.eyes = Eyes::Glad;
    let wrists = [c.hip + p(-62.0, -56.0), c.hip + p(62.0, -56.0)];
    s.group(5.2, |g| {
        c.arms[0] = arm(wrists[0].x, wrists[0].y, 1.0, Z::Front, Hold::None);
        c.arms[1] = arm(wrists[1].x, wrists[1].y, -1.0, Z::Front, Hold::None);
        c.draw(g);
        for (i, deg) in [(0, 100.0), (1, 80.0)] {
            let h = Hand {
                wrist: wrists[i],
                deg,
                len: 40.0,
                flip: i == 1,
                hold: Hold::Open,
            };
            hand(g, h, SKIN);
        }
    });
    s.group(0.0, |g| {
        for (w, deg, s) in [(wrists[0], 100.0, -1.0), (wrists[1], 80.0, 1.0)] {
            let m = w + polar(deg, 20.0);
            for (side, r) in [(-90.0, 35.0), (-90.0, 46.0), (0.0, 38.0), (0.0, 49.0)] {
                wiggle(g, m, r, deg + side * s, 24.0);
            }
        }
    });
    s
}

fn freeze() -> Scene {
    let mut s = Scene::default();
    s.group(0.0, |g| {
        g.dot(
            Path::block(p(170.0, 221.0), 100.0, 10.0, 5.0, 0.0),
            ink::CHARCOAL,
        );
    });
    s.group(5.0, |g| {
        let mut c = cast::main_child(1.02, p(170.0, 138.0));
        c.mouth = Mouth::Flat;
        c.shoes = Some(ink::WHITE);
        c = c.stand();
        c.legs[0] = leg_at(&c, p(-13.0, 73.0), 1.0, -0.7);
        c.legs[1] = leg_at(&c, p(13.0, 73.0), -1.0, 0.7);
        c.draw(g);
    });
    s.group(5.0, |g| {
        let h = Hand {
            wrist: p(58.0, 176.0),
            deg: -90.0,
            len: 84.0,
            flip: false,
            hold: Hold::Open,
        };
        hand(g, h, SKIN_LIGHT);
        g.over(Path::read("M34 172L81 172L86 224L29 224Z"), ink::TEAL);
    });
    s
}
