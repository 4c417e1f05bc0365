//! The swimming pool: the pool itself, its steps, its chair, the flat board.

use super::body::{Z, arm, leg};
use super::cast;
use super::geom::{Path, p};
use super::hands::Hold;
use super::head::Eyes;
use super::in_water::swim;
use super::paint::{Group, SEAM, Scene, ink};
use super::props;

/// The drawings of this file.
pub fn symbols() -> Vec<(&'static str, String)> {
    vec![
        ("pool", pool().svg("pool", "Pool")),
        ("pool_steps", pool_steps().svg("pool_steps", "Steps in")),
        ("pool_hoist", pool_hoist().svg("pool_hoist", "Pool chair")),
        (
            "kickboard",
            kickboard().mirrored().svg("kickboard", "Kickboard"),
        ),
    ]
}

/// A rail of metal through points.
fn rail(g: &mut Group, d: &str) {
    g.bar(Path::read(d), ink::GREY, 7.0);
}

fn pool() -> Scene {
    let mut s = Scene::default();
    s.group(5.4, |g| {
        g.fill(
            Path::read("M58 52L182 52L228 206C228 210 226 212 222 212L18 212C14 212 12 210 12 206Z"),
            ink::GREY_LIGHT,
        );
        g.mark(
            Path::read("M36 124L60 124M26 164L50 164M204 124L180 124M214 164L190 164M120 212L120 196M70 212L72 196M170 212L168 196M120 52L120 66"),
            ink::WHITE,
            SEAM,
        );
        g.over(Path::read("M70 66L170 66L204 194L36 194Z"), ink::WATER);
    });
    s.group(0.0, |g| {
        g.mark(props::wave(114.0, 174.0, 116.0, 6.0), ink::WHITE, 4.4);
    });
    s.group(0.0, |g| {
        for i in 0..6 {
            let t = f64::from(i) / 5.0;
            let at = p(100.0 - 19.0 * t, 74.0 + 112.0 * t);
            let c = if i % 2 == 0 { ink::CORAL } else { ink::WHITE };
            g.dot(Path::ellipse(at, 7.0 + 3.0 * t, 9.0 + 3.0 * t, 0.0), c);
        }
    });
    s.group(5.0, |g| {
        for x in [138.0, 184.0] {
            g.bar(
                Path::poly(&[p(x, 216.0), p(x, 170.0)], false),
                ink::GREY,
                7.0,
            );
        }
        rail(g, "M136 220L136 156C136 132 148 128 150 146L150 176");
        rail(g, "M182 220L182 156C182 132 194 128 196 146L196 176");
    });
    s
}

/// Three wide steps of stone that go down to the right.
fn steps(s: &mut Scene) {
    s.group(0.0, |g| {
        for (x, y) in [(14.0, 134.0), (62.0, 162.0), (110.0, 190.0)] {
            let deep = 222.0 - y;
            g.dot(
                Path::block(p(x + 26.0, y + deep / 2.0), 52.0, deep, 3.0, 0.0),
                ink::GREY,
            );
            g.dot(
                Path::block(p(x + 26.0, y + 5.0), 54.0, 10.0, 3.0, 0.0),
                ink::GREY_LIGHT,
            );
            let joint = [p(x, y + 11.0), p(x + 52.0, y + 11.0)];
            g.mark(Path::poly(&joint, false), ink::WHITE, SEAM);
        }
    });
}

fn pool_steps() -> Scene {
    let mut s = Scene::default();
    steps(&mut s);
    s.group(4.8, |g| {
        let mut a = swim(cast::helper_dark(0.88, p(196.0, 188.0))).bust(76.0);
        a.turn = -50.0;
        a.look = [-44.0, -6.0, 0.0];
        a = a.bust(76.0);
        a.top.1 = 0.4;
        a.arms[0].z = Z::Gone;
        a.arms[1] = arm(168.0, 168.0, -1.0, Z::Front, Hold::Rest);
        a.draw(g);
    });
    s.group(4.8, |g| {
        let mut c = swim(cast::main_child(0.9, p(80.0, 96.0)));
        c.turn = 55.0;
        c.lean = 4.0;
        c.look = [58.0, 12.0, 0.0];
        c = c.stand();
        c.legs[0] = leg(84.0, 152.0, -1.0, 0.9);
        c.legs[1] = leg(122.0, 158.0, -1.0, 0.9).tilt(16.0).z(Z::Behind);
        c.arms[1] = arm(122.0, 94.0, 1.0, Z::Gone, Hold::Grip).aim(40.0);
        c.arms[0] = arm(56.0, 98.0, 1.0, Z::Front, Hold::Rest);
        rail(
            g,
            "M28 128L28 58C28 46 40 46 46 50L148 118C154 122 156 128 156 134L156 190",
        );
        c.draw(g);
        c.draw_arm(1, g);
        c.draw_mid(g);
        c.draw_front(g);
    });
    props::water(&mut s, 138.0, 226.0, 174.0, 50.0);
    s
}

fn pool_hoist() -> Scene {
    let mut s = Scene::default();
    s.group(0.0, |g| {
        g.dot(
            Path::read("M14 190L74 190L74 222L22 222C17 222 14 219 14 214Z"),
            ink::GREY,
        );
        g.mark(Path::read("M14 190L74 190"), ink::GREY_LIGHT, 7.0);
    });
    s.group(4.8, |g| {
        let mut a = swim(cast::helper(0.84, p(202.0, 190.0))).bust(76.0);
        a.turn = -50.0;
        a.look = [-44.0, -6.0, 0.0];
        a = a.bust(76.0);
        a.top.1 = 0.4;
        a.arms[0].z = Z::Gone;
        a.arms[1] = arm(170.0, 160.0, -1.0, Z::Front, Hold::Rest);
        a.draw(g);
    });
    s.group(4.8, |g| {
        g.bar(Path::read("M42 186L42 36"), ink::GREY, 12.0);
        g.bar(Path::read("M30 188L56 188"), ink::CHARCOAL, 8.0);
        g.bar(
            Path::read("M42 62L42 30C42 20 50 18 58 18L78 18C86 18 90 22 90 30L90 134"),
            ink::GREY,
            9.0,
        );
        let mut c = swim(cast::main_child(0.9, p(116.0, 124.0)));
        c.turn = 60.0;
        c.look = [58.0, 6.0, 0.0];
        c = c.stand();
        c.legs[0] = leg(152.0, 162.0, -1.0, 1.0).knee(150.0, 130.0);
        c.legs[1].z = Z::Gone;
        c.arms[0] = arm(136.0, 122.0, 1.0, Z::Front, Hold::Grip);
        c.arms[1].z = Z::Gone;
        c.draw_back(g);
        c.draw_mid(g);
        let seat = "M86 84C86 76 100 76 101 84L105 130L140 134C150 135 150 148 140 148L100 148\
                    C90 148 86 142 86 134Z";
        g.over(Path::read(seat), ink::SUN);
        c.draw_front(g);
    });
    props::water(&mut s, 80.0, 226.0, 176.0, 46.0);
    s
}

fn kickboard() -> Scene {
    let mut s = Scene::default();
    props::far_water(&mut s, 14.0, 226.0, 150.0, 50.0);
    s.group(4.8, |g| {
        let mut a = swim(cast::helper_dark(0.96, p(44.0, 184.0))).bust(76.0);
        a.turn = 45.0;
        a.look = [42.0, 12.0, 0.0];
        a = a.bust(76.0);
        a.top.1 = 0.4;
        a.arms[0].z = Z::Gone;
        a.arms[1].z = Z::Gone;
        a.draw(g);
        let mut c = swim(cast::main_child(1.22, p(60.0, 188.0)));
        c.turn = 75.0;
        c.lean = 46.0;
        c.look = [58.0, -4.0, 0.0];
        c.eyes = Eyes::Glad;
        c = c.stand();
        c.legs[0].z = Z::Gone;
        c.legs[1].z = Z::Gone;
        c.arms[0].z = Z::Gone;
        c.arms[1].z = Z::Gone;
        c.draw(g);
        let d = "M118 160L196 138C210 134 222 136 225 144C228 154 222 162 210 166L128 190\
                 C112 194 104 164 118 160Z";
        g.over(Path::read(d), ink::SUN);
        g.mark(Path::read("M120 176L216 149"), ink::CORAL, 7.0);
        c.arms[0] = arm(148.0, 160.0, 1.0, Z::Over, Hold::Grip).aim(-16.0);
        a.arms[0] = arm(82.0, 146.0, 1.0, Z::Over, Hold::Flat).aim(24.0);
        c.draw_arm(0, g);
        a.draw_arm(0, g);
    });
    props::water(&mut s, 14.0, 226.0, 178.0, 46.0);
    s
}
