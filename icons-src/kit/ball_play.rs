//! Games with a ball and a rope.

use super::body::{Figure, Z, arm, leg};
use super::cast;
use super::geom::{P, Path, p, polar};
use super::hall::{rail, shadow};
use super::hands::Hold;
use super::head::Wear;
use super::paint::{Group, Scene, ink};
use super::props::Wheelchair;

/// The drawings of this file.
pub fn symbols() -> Vec<(&'static str, String)> {
    vec![
        ("throw_far", throw_far().svg("throw_far", "Throw far")),
        ("roll_ball", roll_ball().svg("roll_ball", "Roll the ball")),
        ("kick_ball", kick_ball().svg("kick_ball", "Kick the ball")),
        ("catch_ball", catch_ball().svg("catch_ball", "Catch")),
        ("hit_ball", hit_ball().svg("hit_ball", "Hit")),
        ("basket", basket().svg("basket", "Shoot")),
        (
            "skipping_rope",
            skipping_rope().svg("skipping_rope", "Skip"),
        ),
    ]
}

/// A yellow ball with one coral stripe.
fn ball(g: &mut Group, at: P, r: f64) {
    g.fill(Path::circle(at, r), ink::SUN);
    let stripe =
        "M-.92-.3C-.4-.02.4-.02.92-.3C.98-.1.98.1.92.3C.4.56-.4.56-.92.3C-.98.1-.98-.1-.92-.3Z";
    g.dot(
        Path::read(stripe).put(at, r * 0.99, -24.0, false),
        ink::CORAL,
    );
}

/// Lines behind something that flies in direction `deg`.
fn flight(g: &mut Group, at: P, r: f64, deg: f64, len: f64) {
    for d in [-34.0, 0.0, 34.0] {
        let n = polar(deg + 90.0, r * d / 45.0);
        let from = at + n + polar(deg + 180.0, r + 10.0 + f64::abs(d) * -0.1);
        let l = if d == 0.0 { len } else { len * 0.7 };
        g.mark(
            Path::poly(&[from, from + polar(deg + 180.0, l)], false),
            ink::CHARCOAL,
            5.0,
        );
    }
}

fn throw_far() -> Scene {
    let mut s = Scene::default();
    s.group(0.0, |g| {
        for (x, y) in [(128.0, 50.0), (143.0, 41.0), (159.0, 35.0), (176.0, 33.0)] {
            g.dot(Path::circle(p(x, y), 4.2), ink::CHARCOAL);
        }
    });
    s.group(5.0, |g| {
        let mut c = cast::main_girl(0.94, p(66.0, 146.0));
        c.turn = 62.0;
        c.lean = 12.0;
        c.look = [56.0, -12.0, 0.0];
        c.wear = Wear::Glasses;
        c = c.stand();
        c.arms[0] = arm(124.0, 78.0, 1.0, Z::Over, Hold::Open).aim(-30.0);
        c.arms[1] = arm(28.0, 124.0, 1.0, Z::Behind, Hold::Rest);
        c.legs[0] = leg(34.0, 204.0, -1.0, 1.0).tilt(20.0);
        c.legs[1] = leg(100.0, 207.0, -1.0, 1.0).z(Z::Behind);
        c.draw(g);
    });
    s.group(5.0, |g| ball(g, p(206.0, 44.0), 19.0));
    s
}

fn in_chair(mut c: Figure, chair: &Wheelchair, lean: f64) -> Figure {
    c.hip = chair.hip();
    c.turn = 66.0;
    c.lean = lean;
    c.look = [58.0, 4.0, 0.0];
    c = c.stand();
    let a = chair.ankle();
    c.legs[0] = leg(a.x, a.y, -1.0, 1.0);
    c.legs[1] = leg(a.x + 6.0, a.y - 1.0, -1.0, 1.0).z(Z::Behind);
    c
}

fn roll_ball() -> Scene {
    let mut s = Scene::default();
    let chair = Wheelchair {
        at: p(36.0, 144.0),
        dir: 1.0,
        k: 1.1,
    };
    s.group(0.0, |g| flight(g, p(171.0, 186.0), 18.0, 0.0, 10.0));
    s.group(5.0, |g| {
        let mut c = in_chair(cast::main_child(1.1, p(0.0, 0.0)), &chair, 26.0);
        c.look = [60.0, 16.0, 0.0];
        let sh = c.shoulder(0);
        c.arms[0] = arm(sh.x + 46.0, sh.y + 38.0, 1.0, Z::Front, Hold::Open).aim(40.0);
        c.arms[1].z = Z::Gone;
        chair.frame(g);
        c.draw_back(g);
        c.draw_mid(g);
        chair.wheel(g);
        c.draw_front(g);
    });
    s.group(5.0, |g| ball(g, p(171.0, 186.0), 18.0));
    s.group(5.0, |g| {
        g.fill(Path::circle(p(217.0, 190.0), 14.0), ink::WHITE)
    });
    s
}

/// A white football with dark patches.
fn football(g: &mut Group, at: P, r: f64) {
    g.fill(Path::circle(at, r), ink::WHITE);
    let star = |c: P, k: f64, turn: f64| {
        let pts: Vec<P> = (0..5)
            .map(|i| c + polar(turn + f64::from(i) * 72.0, k))
            .collect();
        Path::poly(&pts, true)
    };
    g.dot(star(at, r * 0.4, -90.0), ink::CHARCOAL);
    for i in 0..5 {
        let d = -90.0 + f64::from(i) * 72.0;
        g.mark(
            Path::poly(&[at + polar(d, r * 0.4), at + polar(d, r * 0.74)], false),
            ink::CHARCOAL,
            2.8,
        );
        let (a, b) = (
            at + polar(d - 19.0, r * 0.97),
            at + polar(d + 19.0, r * 0.97),
        );
        g.dot(
            Path::poly(&[a, at + polar(d, r * 0.66), b], true),
            ink::CHARCOAL,
        );
    }
}

fn kick_ball() -> Scene {
    let mut s = Scene::default();
    s.group(5.2, |g| {
        let mut c = cast::main_child(1.02, p(92.0, 136.0));
        c.turn = 66.0;
        c.lean = -14.0;
        c.look = [60.0, 14.0, 0.0];
        c.shoes = Some(ink::WHITE);
        c = c.stand();
        c.arms[0] = arm(34.0, 98.0, 1.0, Z::Front, Hold::Rest);
        c.arms[1] = arm(128.0, 100.0, 1.0, Z::Behind, Hold::Rest);
        c.legs[0] = leg(152.0, 176.0, -1.0, 1.0).tilt(-24.0);
        c.legs[1] = leg(84.0, 210.0, -1.0, 1.0).z(Z::Behind);
        c.draw(g);
    });
    s.group(5.2, |g| football(g, p(200.0, 168.0), 25.0));
    s
}

fn catch_ball() -> Scene {
    let mut s = Scene::default();
    s.group(5.4, |g| {
        let mut c = cast::main_child(1.36, p(72.0, 236.0)).bust(57.0);
        c.turn = 40.0;
        c.look = [52.0, -10.0, 0.0];
        c.arms[0] = arm(146.0, 154.0, 1.0, Z::Over, Hold::Open).aim(-30.0);
        c.arms[1] = arm(134.0, 106.0, 1.0, Z::Behind, Hold::Open).aim(-62.0);
        c.draw(g);
    });
    s.group(5.4, |g| ball(g, p(191.0, 70.0), 26.0));
    s.group(0.0, |g| flight(g, p(191.0, 70.0), 26.0, 128.0, 22.0));
    s
}

/// A racket: its grip and the throat of its head.
fn racket(g: &mut Group, grip: P, top: P) {
    let u = (top - grip).unit();
    rail(g, grip - u * 10.0, top + u * 4.0, ink::CHARCOAL, 9.0);
    let c = top + u * 32.0;
    g.fill(Path::ellipse(c, 37.0, 31.0, u.deg()), ink::SUN);
    g.dot(Path::ellipse(c, 29.0, 23.0, u.deg()), ink::WHITE);
    let at = |x: f64, y: f64| c + p(x, y).rot(u.deg());
    for (x, half) in [(-14.0, 20.0), (0.0, 23.0), (14.0, 20.0)] {
        g.band(
            Path::poly(&[at(x, -half), at(x, half)], false),
            ink::CHARCOAL,
            2.8,
        );
    }
    for (y, half) in [(-11.0, 25.5), (0.0, 29.0), (11.0, 25.5)] {
        g.band(
            Path::poly(&[at(-half, y), at(half, y)], false),
            ink::CHARCOAL,
            2.8,
        );
    }
}

fn hit_ball() -> Scene {
    let mut s = Scene::default();
    s.group(5.0, |g| {
        let mut c = cast::main_girl(0.98, p(70.0, 138.0));
        c.turn = 56.0;
        c.lean = 6.0;
        c.look = [56.0, -4.0, 0.0];
        c = c.stand();
        c.arms[0] = arm(124.0, 98.0, 1.0, Z::Over, Hold::Grip).aim(-20.0);
        c.arms[1] = arm(32.0, 114.0, 1.0, Z::Behind, Hold::Rest);
        c.legs[0] = leg(42.0, 205.0, -1.0, 1.0);
        c.legs[1] = leg(102.0, 207.0, -1.0, 1.0).z(Z::Behind);
        let mut body = c;
        body.arms[0].z = Z::Gone;
        body.draw(g);
        racket(g, p(132.0, 95.0), p(152.0, 72.0));
        c.draw_arm(0, g);
    });
    s.group(5.0, |g| ball(g, p(212.0, 84.0), 15.0));
    s
}

fn basket() -> Scene {
    let mut s = Scene::default();
    s.group(5.0, |g| {
        rail(g, p(214.0, 60.0), p(214.0, 218.0), ink::CHARCOAL, 9.0);
        rail(g, p(196.0, 220.0), p(226.0, 220.0), ink::CHARCOAL, 8.0);
        g.over(
            Path::block(p(210.0, 64.0), 14.0, 60.0, 4.0, 0.0),
            ink::WHITE,
        );
    });
    s.group(5.0, |g| ball(g, p(172.0, 44.0), 20.0));
    s.group(5.0, |g| {
        g.fill(Path::read("M148 90L196 90L188 126L158 126Z"), ink::WHITE);
        for d in [
            "M156 92L176 126",
            "M172 92L186 118",
            "M188 92L168 126",
            "M172 92L158 118",
        ] {
            g.mark(Path::read(d), ink::CHARCOAL, 2.8);
        }
        rail(g, p(144.0, 88.0), p(202.0, 88.0), ink::CORAL, 8.0);
    });
    let chair = Wheelchair {
        at: p(46.0, 158.0),
        dir: 1.0,
        k: 1.0,
    };
    s.group(5.0, |g| {
        let mut c = in_chair(cast::main_girl(1.0, p(0.0, 0.0)), &chair, -4.0);
        c.look = [56.0, -16.0, 0.0];
        c.arms[0] = arm(102.0, 70.0, 1.0, Z::Over, Hold::Open).aim(-60.0);
        c.arms[1] = arm(114.0, 62.0, 1.0, Z::Behind, Hold::Open).aim(-50.0);
        chair.frame(g);
        c.draw_back(g);
        c.draw_mid(g);
        chair.wheel(g);
        c.draw_front(g);
    });
    s
}

fn skipping_rope() -> Scene {
    let mut s = Scene::default();
    shadow(&mut s, 120.0, 222.0, 44.0, 6.0);
    s.group(4.6, |g| {
        let rope = "M66 132C18 110 20 14 120 14C220 14 222 110 174 132";
        g.bar(Path::read(rope), ink::SUN, 6.0);
    });
    s.group(5.0, |g| {
        let mut c = cast::main_girl(0.88, p(120.0, 128.0));
        c = c.stand();
        c.arms[0] = arm(80.0, 126.0, 1.0, Z::Front, Hold::Grip).aim(170.0);
        c.arms[1] = arm(160.0, 126.0, -1.0, Z::Front, Hold::Grip).aim(10.0);
        c.legs[0] = leg(108.0, 188.0, 1.0, -0.7).tilt(-24.0);
        c.legs[1] = leg(132.0, 188.0, -1.0, 0.7).tilt(24.0);
        for (a, d) in [(66.0, -1.0), (174.0, 1.0)] {
            rail(g, p(a, 132.0), p(a - d * 8.0, 124.0), ink::CORAL, 9.0);
        }
        c.draw(g);
    });
    s
}
