//! The swimming pool: the pool itself, its steps, its chair, the flat board.

use super::body::{Z, arm, leg};
use super::cast;
use super::geom::{P, Path, p};
use super::hands::Hold;
use super::head::{Eyes, SKIN_DARK};
use super::in_water::{Forearm, swim};
use super::paint::{Group, SEAM, Scene, ink};
use super::props;

/// The drawings of this file.
pub fn symbols() -> Vec<(&'static str, String)> {
    vec![
        ("pool", pool().svg("pool", "Pool")),
        ("pool_steps", pool_steps().svg("pool_steps", "Steps in")),
        ("pool_hoist", pool_hoist().svg("pool_hoist", "Pool chair")),
        ("kickboard", kickboard().svg("kickboard", "Float board")),
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
        g.mark(props::wave(112.0, 166.0, 100.0, 6.0), ink::WHITE, 4.4);
        g.mark(props::wave(120.0, 180.0, 148.0, 6.0), ink::WHITE, 4.4);
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
        let d = "M14 138L64 138L64 164L106 164L106 190L148 190L148 222L22 222C17 222 14 219 14 214Z";
        g.dot(Path::read(d), ink::GREY_LIGHT);
        g.mark(
            Path::read("M14 138L64 138M64 164L106 164M106 190L148 190"),
            ink::GREY,
            6.0,
        );
    });
}

fn pool_steps() -> Scene {
    let mut s = Scene::default();
    steps(&mut s);
    s.group(4.8, |g| {
        let mut a = swim(cast::helper_dark(0.86, p(194.0, 178.0))).bust(76.0);
        a.turn = -50.0;
        a.look = [-48.0, -4.0, 0.0];
        a = a.bust(76.0);
        a.top.1 = 0.4;
        a.arms[0] = arm(146.0, 130.0, -1.0, Z::Behind, Hold::Open).aim(-150.0);
        a.arms[1] = arm(176.0, 166.0, -1.0, Z::Front, Hold::Rest);
        a.draw(g);
    });
    s.group(4.8, |g| {
        let mut c = swim(cast::main_child(0.84, p(76.0, 98.0)));
        c.turn = 55.0;
        c.lean = 4.0;
        c.look = [52.0, 12.0, 0.0];
        c = c.stand();
        c.legs[0] = leg(76.0, 154.0, -1.0, 0.9);
        c.legs[1] = leg(116.0, 168.0, -1.0, 0.9).tilt(14.0).z(Z::Behind);
        c.arms[0] = arm(104.0, 98.0, 1.0, Z::Front, Hold::Grip);
        c.arms[1].z = Z::Gone;
        c.draw_back(g);
        c.draw_mid(g);
        c.head().draw(g);
        rail(g, "M32 130L32 62C32 54 38 54 44 58L138 122L138 172");
        rail(g, "M86 140L86 88");
        c.draw_arm(0, g);
    });
    props::water(&mut s, 108.0, 226.0, 172.0, 50.0);
    s
}

fn pool_hoist() -> Scene {
    let mut s = Scene::default();
    s.group(0.0, |g| {
        g.dot(
            Path::read("M14 190L78 190L78 222L22 222C17 222 14 219 14 214Z"),
            ink::GREY_LIGHT,
        );
        g.mark(Path::read("M14 190L78 190"), ink::GREY, 6.0);
    });
    s.group(4.8, |g| {
        let mut a = swim(cast::helper(0.82, p(200.0, 184.0))).bust(76.0);
        a.turn = -50.0;
        a.look = [-48.0, -6.0, 0.0];
        a = a.bust(76.0);
        a.top.1 = 0.4;
        a.arms[0] = arm(166.0, 140.0, -1.0, Z::Behind, Hold::Grip);
        a.arms[1] = arm(170.0, 168.0, -1.0, Z::Front, Hold::Rest);
        a.draw(g);
    });
    s.group(4.8, |g| {
        g.bar(Path::read("M42 186L42 36"), ink::GREY, 12.0);
        g.bar(Path::read("M30 188L56 188"), ink::CHARCOAL, 8.0);
        g.bar(Path::read("M42 62L42 30C42 20 50 18 58 18L104 18C112 18 114 22 114 30L114 40"), ink::GREY, 9.0);
        rail(g, "M114 38C92 60 90 90 94 136");
        let mut c = swim(cast::puffs(0.84, p(114.0, 120.0)));
        c.skin = super::head::SKIN;
        c.top.0 = ink::CORAL;
        c.turn = 60.0;
        c.look = [50.0, 4.0, 0.0];
        c = c.stand();
        c.legs[0] = leg(150.0, 158.0, -1.0, 1.0).knee(146.0, 126.0);
        c.legs[1].z = Z::Gone;
        c.arms[0] = arm(140.0, 116.0, 1.0, Z::Front, Hold::Rest);
        c.arms[1] = arm(156.0, 108.0, 1.0, Z::Behind, Hold::Grip);
        c.draw_back(g);
        c.draw_mid(g);
        g.over(Path::read("M88 82C96 78 100 84 100 92L104 128L140 130C150 131 150 144 140 144L100 144C92 144 88 138 88 130Z"), ink::SUN);
        c.draw_front(g);
    });
    props::water(&mut s, 84.0, 226.0, 174.0, 48.0);
    s
}

fn kickboard() -> Scene {
    let mut s = Scene::default();
    props::far_water(&mut s, 14.0, 226.0, 112.0, 108.0);
    s.group(5.2, |g| {
        let mut c = swim(cast::main_child(1.5, p(112.0, 186.0))).bust(57.0);
        c.look = [0.0, 6.0, 0.0];
        c.eyes = Eyes::Glad;
        c = c.bust(57.0);
        c.arms[0].z = Z::Gone;
        c.arms[1].z = Z::Gone;
        c.draw(g);
        board(g);
        c.arms[0] = arm(58.0, 152.0, 1.0, Z::Over, Hold::Grip).aim(62.0);
        c.arms[1] = arm(166.0, 152.0, -1.0, Z::Over, Hold::Grip).aim(118.0).flip();
        for i in 0..2 {
            c.draw_arm(i, g);
        }
        let grown = Forearm {
            from: p(226.0, 96.0),
            to: p(204.0, 152.0),
            w: 14.0,
            sleeve: (ink::TEAL, 0.55),
            skin: SKIN_DARK,
        };
        grown.draw(g, Hold::Grip, 44.0, 122.0, true);
    });
    s
}

/// The flat board, its round end toward the viewer.
fn board(g: &mut Group) {
    let at = |x: f64, y: f64| -> P { p(112.0 + x, y) };
    let edge = Path(vec![
        super::geom::Seg::M(at(-50.0, 122.0)),
        super::geom::Seg::L(at(50.0, 122.0)),
        super::geom::Seg::C(at(62.0, 150.0), at(72.0, 176.0), at(72.0, 186.0)),
        super::geom::Seg::C(at(72.0, 208.0), at(-72.0, 208.0), at(-72.0, 186.0)),
        super::geom::Seg::C(at(-72.0, 176.0), at(-62.0, 150.0), at(-50.0, 122.0)),
        super::geom::Seg::Z,
    ]);
    g.over(edge, ink::SUN);
    g.mark(
        Path::read("M50 182C70 196 154 196 174 182"),
        ink::CORAL,
        7.0,
    );
}
