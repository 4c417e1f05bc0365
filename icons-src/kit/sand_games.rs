//! Games with one thing on the sand: a rope, a stick to step over, a flag, a
//! ball, a bucket.

use super::body::{Bottom, Figure, Z, arm, leg};
use super::cast;
use super::geom::{P, Path, p};
use super::hands::Hold;
use super::moving::{arm_at, cone, leg_at};
use super::paint::{Group, Scene, ink};
use super::people_b::drop;
use super::props;

/// The drawings of this file.
pub fn symbols() -> Vec<(&'static str, String)> {
    vec![
        (
            "follow_rope",
            follow_rope().svg("follow_rope", "Follow the rope"),
        ),
        ("step_over", step_over().svg("step_over", "Step over")),
        (
            "get_the_flag",
            get_the_flag().svg("get_the_flag", "Get the flag"),
        ),
        (
            "throw_catch",
            throw_catch().svg("throw_catch", "Throw and catch"),
        ),
        (
            "carry_water",
            carry_water().svg("carry_water", "Carry water"),
        ),
    ]
}

/// A rope laid along these points: thick, outlined, with its twist marked.
fn rope(g: &mut Group, pts: &[P], w: f64) {
    let line = Path::smooth(pts, false);
    g.bar(line.clone(), ink::SUN, w);
    let q = line.sample();
    let mut run = 0.0;
    for i in 1..q.len() {
        run += (q[i] - q[i - 1]).len();
        if run > 11.0 {
            run = 0.0;
            let u = (q[i] - q[i - 1]).unit();
            let n = (u.left() + u * 0.8) * (w * 0.36);
            g.mark(
                Path::poly(&[q[i] + n, q[i] - n], false),
                ink::HAIR_BROWN,
                2.8,
            );
        }
    }
}

fn follow_rope() -> Scene {
    let mut s = Scene::default();
    props::sand(&mut s, 12.0, 228.0, 184.0, 42.0);
    s.group(4.4, |g| {
        let pts = [
            p(24.0, 186.0),
            p(38.0, 204.0),
            p(76.0, 208.0),
            p(112.0, 200.0),
            p(138.0, 192.0),
            p(168.0, 204.0),
            p(198.0, 202.0),
            p(212.0, 180.0),
            p(194.0, 160.0),
            p(160.0, 160.0),
        ];
        rope(g, &pts, 9.0);
    });
    s.group(4.8, |g| {
        let mut c = cast::main_child(0.96, p(90.0, 122.0));
        c.turn = 55.0;
        c.look = [33.0, 14.0, 5.0];
        c.lean = 6.0;
        c = c.stand();
        c.arms[0] = arm_at(&c, p(-36.0, -18.0), 1.0, Z::Front, Hold::Rest);
        c.arms[1] = arm_at(&c, p(52.0, -26.0), 1.0, Z::Behind, Hold::Rest);
        c.legs[0] = leg_at(&c, p(-28.0, 71.0), -1.0, 1.0).tilt(18.0);
        c.legs[1] = leg_at(&c, p(26.0, 68.0), -1.0, 1.0).z(Z::Behind);
        c.draw(g);
    });
    s
}

fn step_over() -> Scene {
    let mut s = Scene::default();
    s.group(5.0, |g| {
        let mut c = cast::main_girl(1.02, p(104.0, 126.0));
        c.turn = 50.0;
        c.look = [27.0, 12.0, 2.0];
        c.lean = -4.0;
        c.shoes = Some(ink::WHITE);
        c = c.stand();
        c.arms[0] = arm_at(&c, p(-46.0, -26.0), 1.0, Z::Front, Hold::Rest);
        c.arms[1] = arm_at(&c, p(58.0, -44.0), 1.0, Z::Behind, Hold::Rest);
        c.legs[1] = leg_at(&c, p(-14.0, 73.0), -1.0, 0.9).z(Z::Behind);
        c.draw_back(g);
        cone(g, p(40.0, 214.0), 58.0);
        cone(g, p(200.0, 214.0), 58.0);
        g.bar(
            Path::poly(&[p(28.0, 186.0), p(212.0, 186.0)], false),
            ink::CORAL,
            8.0,
        );
        let knee = c.hip + p(38.0, -2.0);
        c.legs[0] = leg_at(&c, p(46.0, 34.0), -1.0, 1.0)
            .knee(knee.x, knee.y)
            .tilt(-8.0);
        c.draw_mid(g);
        c.draw_front(g);
    });
    s
}

fn get_the_flag() -> Scene {
    let mut s = Scene::default();
    props::sand(&mut s, 14.0, 226.0, 208.0, 16.0);
    s.group(4.8, |g| {
        g.bar(
            Path::poly(&[p(188.0, 204.0), p(188.0, 66.0)], false),
            ink::WHITE,
            6.0,
        );
        g.over(Path::read("M191 62L228 84L191 106Z"), ink::SUN);
    });
    s.group(5.0, |g| {
        let mut c = cast::main_child(1.04, p(78.0, 140.0));
        c.turn = 68.0;
        c.look = [66.0, -4.0, 6.0];
        c.lean = 44.0;
        c = c.stand();
        c.arms[1].z = Z::Gone;
        c.arms[0] = arm(162.0, 126.0, 1.0, Z::Front, Hold::Open).aim(-4.0);
        c.legs[1] = leg(124.0, 192.0, -1.0, 1.0).z(Z::Behind);
        c.legs[0] = leg(22.0, 186.0, -1.0, 1.0).tilt(40.0);
        c.draw(g);
    });
    s
}

/// A ball with panels, for throwing.
pub fn ball(g: &mut Group, c: P, r: f64) {
    g.fill(Path::circle(c, r), ink::SUN);
    let put = |d: &str| Path::read(d).put(c, r, 20.0, false);
    g.dot(
        put("M0-1C.5-.5.5.5 0 1C.55 1 1 .55 1 0C1-.55.55-1 0-1Z"),
        ink::CORAL,
    );
    g.mark(put("M0-.96C.5-.5.5.5 0 .96"), ink::WHITE, 2.6);
    g.mark(put("M0-.96C-.5-.5-.5.5 0 .96"), ink::WHITE, 2.6);
}

fn throw_catch() -> Scene {
    let mut s = Scene::default();
    s.group(4.8, |g| {
        let mut c = cast::main_child(0.92, p(46.0, 140.0));
        c.turn = 58.0;
        c.look = [58.0, -8.0, 0.0];
        c.lean = 6.0;
        c.shoes = Some(ink::WHITE);
        c = c.stand();
        c.arms[1] = arm_at(&c, p(46.0, -56.0), 1.0, Z::Behind, Hold::Rest).aim(-40.0);
        c.arms[0] = arm_at(&c, p(44.0, -42.0), 1.0, Z::Front, Hold::Rest).aim(-16.0);
        c.legs[0] = leg_at(&c, p(-22.0, 69.0), -1.0, 1.0).tilt(12.0);
        c.legs[1] = leg_at(&c, p(20.0, 71.0), -1.0, 1.0).z(Z::Behind);
        c.draw(g);
    });
    s.group(4.8, |g| ball(g, p(120.0, 42.0), 22.0));
    s.group(4.8, |g| {
        let w = props::Wheelchair {
            at: p(204.0, 158.0),
            dir: -1.0,
            k: 0.92,
        };
        w.frame(g);
        let mut f = cast::puffs(0.92, w.hip());
        f.turn = -68.0;
        f.look = [-58.0, -10.0, 0.0];
        f.bottom = Bottom::Legs(ink::TEAL, 0.95);
        f.shoes = Some(ink::WHITE);
        f = f.stand();
        let a = w.ankle();
        f.legs[0] = leg(a.x, a.y, 1.0, -1.0).z(Z::Behind);
        f.legs[1] = leg(a.x + 3.0, a.y, 1.0, -1.0);
        f.arms[0] = arm_at(&f, p(-46.0, -58.0), -1.0, Z::Behind, Hold::Rest).flip();
        f.arms[1] = arm_at(&f, p(-44.0, -42.0), -1.0, Z::Front, Hold::Rest).flip();
        f.draw(g);
        w.wheel(g);
    });
    s
}

/// A bucket full to the brim: middle of its rim, half width, height.
fn full_bucket(g: &mut Group, rim: P, r: f64, h: f64) {
    let put = |d: &str| Path::read(d).map(|q| rim + p(q.x * r, q.y * h));
    g.fill(put("M-1 0L1 0L.78.92C.74 1.06-.74 1.06-.78.92Z"), ink::SUN);
    g.dot(put("M-.92.36L.92.36L.86.62L-.86.62Z"), ink::CORAL);
    g.fill(Path::ellipse(rim, r, r * 0.3, 0.0), ink::WHITE);
    g.dot(Path::ellipse(rim, r * 0.84, r * 0.2, 0.0), ink::WATER);
}

fn carry_water() -> Scene {
    let mut s = Scene::default();
    props::sand(&mut s, 20.0, 220.0, 212.0, 14.0);
    s.group(5.0, |g| {
        let mut c = walker();
        c.draw_back(g);
        c.draw_mid(g);
        let rim = p(158.0, 144.0);
        full_bucket(g, rim, 36.0, 50.0);
        g.bar(
            Path::smooth(
                &[
                    rim + p(-34.0, 0.0),
                    p(146.0, 112.0),
                    p(170.0, 112.0),
                    rim + p(34.0, 0.0),
                ],
                false,
            ),
            ink::WHITE,
            5.0,
        );
        c.arms[1] = arm(166.0, 111.0, 1.0, Z::Front, Hold::Grip).aim(20.0);
        c.draw_arm(1, g);
        c.draw_front(g);
    });
    s.group(0.0, |g| {
        for (x, y) in [(203.0, 126.0), (209.0, 146.0)] {
            g.dot(drop(p(x, y), 6.0), ink::WATER);
        }
    });
    s
}

fn walker() -> Figure {
    let mut c = cast::main_girl(1.0, p(96.0, 132.0));
    c.turn = 58.0;
    c.look = [52.0, 10.0, 0.0];
    c.lean = -6.0;
    c = c.stand();
    c.arms[1].z = Z::Gone;
    c.arms[0] = arm(144.0, 112.0, 1.0, Z::Front, Hold::Grip).aim(10.0);
    c.legs[0] = leg_at(&c, p(-26.0, 68.0), -1.0, 1.0).tilt(18.0);
    c.legs[1] = leg_at(&c, p(26.0, 69.0), -1.0, 1.0).z(Z::Behind);
    c
}
