//! Flags, lines, and stopping.

use super::body::{Bottom, Figure, Z, arm, leg};
use super::cast::{helper, helper_dark, main_child, main_girl, parent};
use super::geom::{P, Path, p};
use super::hands::{Hand, Hold, hand};
use super::head::{Eyes, SKIN};
use super::limb::Limb;
use super::paint::{Group, Scene, ink};
use super::props;

/// The drawings of this file.
pub fn symbols() -> Vec<(&'static str, String)> {
    vec![
        (
            "between_flags",
            between_flags().svg("between_flags", "In the flags"),
        ),
        ("yellow_flag", yellow_flag().svg("yellow_flag", "Take care")),
        (
            "craft_zone",
            craft_zone().svg("craft_zone", "Boards and boats here"),
        ),
        (
            "helper_in_water",
            helper_in_water().svg("helper_in_water", "Someone with me"),
        ),
        (
            "small_holes",
            small_holes().svg("small_holes", "Small holes only"),
        ),
        ("sharp", sharp().svg("sharp", "Sharp")),
        (
            "meeting_spot",
            meeting_spot().svg("meeting_spot", "Meeting spot"),
        ),
    ]
}

/// A flag in the wind, its upper corner on the pole at `at`; `u` and `v` run
/// from 0 to 1 across and down it.
fn cloth(at: P, w: f64, h: f64, u: [f64; 2], v: [f64; 2]) -> Path {
    let q = |u: f64, v: f64| {
        let wave = (u * std::f64::consts::TAU).sin() * h * 0.07;
        at + p(u * w, v * h - wave + u * h * 0.04)
    };
    let n = 8;
    let step = |i: i32| u[0] + (u[1] - u[0]) * f64::from(i) / f64::from(n);
    let top: Vec<P> = (0..=n).map(|i| q(step(i), v[0])).collect();
    let low: Vec<P> = (0..=n).rev().map(|i| q(step(i), v[1])).collect();
    Path::smooth(&top, false)
        .then(Path::smooth(&low, false), true)
        .close()
}

/// A pole from `top` down to `foot`.
fn pole(g: &mut Group, x: f64, top: f64, foot: f64, w: f64) {
    g.bar(Path::poly(&[p(x, top), p(x, foot)], false), ink::WHITE, w);
    g.over(Path::circle(p(x, top - 2.0), w * 0.8), ink::CHARCOAL);
}

/// Legs of somebody standing in water, ending at `y` below its surface.
fn wade(f: &mut Figure, y: f64) {
    for i in 0..2 {
        let h = f.hip_joint(i);
        let x = h.x + (h.x - f.hip.x) * 0.3;
        f.legs[i] = leg(x, y, 1.0, if i == 0 { -0.7 } else { 0.7 }).knee(x, (h.y + y) / 2.0);
    }
}

fn between_flags() -> Scene {
    let mut s = Scene::default();
    for x in [20.0, 176.0] {
        s.group(4.8, |g| {
            pole(g, x, 24.0, 196.0, 6.0);
            let at = p(x + 4.0, 28.0);
            g.over(cloth(at, 48.0, 44.0, [0.0, 1.0], [0.0, 1.0]), ink::FLAG_RED);
            g.dot(cloth(at, 48.0, 44.0, [0.0, 1.01], [0.5, 1.01]), ink::SUN);
        });
    }
    s.group(4.8, |g| {
        let mut a = helper(0.72, p(86.0, 156.0));
        a.look = [10.0, 4.0, 0.0];
        a.bottom = Bottom::Legs(ink::CHARCOAL, 0.4);
        a = a.stand();
        a.arms[1] = arm(114.0, 156.0, -1.0, Z::Front, Hold::Grip);
        let mut c = main_child(0.8, p(142.0, 164.0));
        c.look = [-10.0, 0.0, 0.0];
        c = c.stand();
        c.arms[0] = arm(116.0, 155.0, 1.0, Z::Front, Hold::Grip);
        for f in [&mut a, &mut c] {
            wade(f, 206.0);
            f.draw(g);
        }
    });
    props::water(&mut s, 12.0, 228.0, 188.0, 40.0);
    s
}

/// Flies the other way than the red flag, so that the two are told apart without colour.
fn yellow_flag() -> Scene {
    let mut s = Scene::default();
    props::water(&mut s, 14.0, 226.0, 172.0, 48.0);
    props::sand(&mut s, 14.0, 128.0, 212.0, 16.0);
    s.group(5.4, |g| {
        pole(g, 56.0, 24.0, 206.0, 9.0);
        g.over(
            cloth(p(62.0, 30.0), 156.0, 104.0, [0.0, 1.0], [0.0, 1.0]),
            ink::SUN,
        );
    });
    s.mirrored()
}

fn craft_zone() -> Scene {
    let mut s = Scene::default();
    props::sand(&mut s, 12.0, 228.0, 204.0, 20.0);
    s.group(5.4, |g| {
        pole(g, 42.0, 24.0, 204.0, 9.0);
        let at = p(48.0, 30.0);
        let c = |u: [f64; 2], v: [f64; 2]| cloth(at, 156.0, 104.0, u, v);
        g.over(c([0.0, 1.0], [0.0, 1.0]), ink::WHITE);
        // A little beyond the edge, so that no white hair shows along the line.
        g.dot(c([0.0, 0.5], [-0.012, 0.5]), ink::INK);
        g.dot(c([0.5, 1.01], [0.5, 1.012]), ink::INK);
    });
    s.group(5.4, |g| {
        let board = "M66 192C90 164 160 158 222 182C227 185 227 193 222 196C160 222 88 220 66 192Z";
        g.fill(Path::read(board), ink::SUN);
        g.dot(
            Path::read("M96 174C90 184 90 198 97 208L112 211C104 200 104 182 111 169Z"),
            ink::CORAL,
        );
        g.mark(Path::read("M126 190L212 189"), ink::WHITE, 4.0);
    });
    s
}

fn helper_in_water() -> Scene {
    let mut s = Scene::default();
    let mut a = parent(0.94, p(70.0, 142.0));
    a.lean = 5.0;
    a.look = [28.0, 12.0, 6.0];
    a.top.1 = 0.92;
    a.bottom = Bottom::Skirt(ink::CHARCOAL, 0.36);
    a = a.stand();
    let mut c = main_child(1.06, p(158.0, 160.0));
    c.look = [-22.0, -4.0, -4.0];
    c.eyes = Eyes::Glad;
    c.top.1 = 0.92;
    c = c.stand();
    let pit = c.shoulder(0) + p(-8.0, 19.0);
    a.arms[1] = arm(pit.x - 8.0, pit.y + 5.0, -1.0, Z::Gone, Hold::Flat).aim(-6.0);
    c.arms[0] = arm(pit.x - 32.0, pit.y + 2.0, 1.0, Z::Over, Hold::Rest);
    c.arms[1] = arm(
        c.shoulder(1).x + 34.0,
        c.shoulder(1).y + 34.0,
        -1.0,
        Z::Front,
        Hold::Open,
    );
    wade(&mut a, 208.0);
    wade(&mut c, 208.0);
    s.group(4.8, |g| {
        a.draw(g);
        c.draw_back(g);
        c.draw_mid(g);
        a.draw_arm(1, g);
        c.draw_front(g);
    });
    props::water(&mut s, 14.0, 226.0, 194.0, 36.0);
    s
}

fn small_holes() -> Scene {
    let mut s = Scene::default();
    // The far wall of the hole, so that its edge and depth are seen.
    s.group(0.0, |g| {
        g.dot(
            Path::read("M52 180L158 180L138 206L126 214L84 214L72 206Z"),
            ink::HAIR_FAIR,
        );
    });
    s.group(5.0, |g| {
        let mut c = main_girl(0.98, p(104.0, 128.0));
        c.look = [14.0, 8.0, 0.0];
        c = c.stand();
        c.draw(g);
    });
    s.group(5.0, |g| {
        props::spade(g, p(192.0, 90.0), p(186.0, 192.0), 1.0)
    });
    s.group(0.0, |g| {
        let ground = "M12 178L54 178C62 178 66 182 68 188L74 204C76 208 80 210 86 210L124 210\
                      C130 210 134 208 136 204L142 188C144 182 148 178 156 178L228 178L228 218\
                      C228 224 224 228 218 228L22 228C16 228 12 224 12 218Z";
        g.dot(Path::read(ground), ink::SAND);
        let spots = [
            (28.0, 194.0),
            (50.0, 212.0),
            (172.0, 208.0),
            (208.0, 198.0),
            (104.0, 220.0),
        ];
        for (x, y) in spots {
            props::grain(g, p(x, y));
        }
    });
    s
}

fn sharp() -> Scene {
    let mut s = Scene::default();
    props::sand(&mut s, 12.0, 228.0, 208.0, 20.0);
    s.group(5.4, |g| {
        // A bottle lying on its side, broken off, and two splinters.
        let body = "M36 168L58 166C72 164 74 146 94 144L146 144L134 159L160 161L138 176L164 186\
                    L140 194L150 210\
                    L94 210C74 208 72 190 58 188L36 186Z";
        g.fill(Path::read(body), ink::WATER_LIGHT);
        g.over(
            Path::block(p(30.0, 177.0), 16.0, 28.0, 5.0, 0.0),
            ink::WATER_LIGHT,
        );
        g.mark(Path::read("M92 157L118 156"), ink::WHITE, 7.0);
        g.fill(Path::read("M168 217L182 194L200 213Z"), ink::WATER_LIGHT);
        g.fill(Path::read("M206 199L220 187L222 207Z"), ink::WATER_LIGHT);
    });
    s.group(0.0, |g| {
        for (a, b) in [
            ((158.0, 138.0), (164.0, 124.0)),
            ((172.0, 149.0), (187.0, 140.0)),
            ((178.0, 168.0), (195.0, 166.0)),
        ] {
            g.mark(
                Path::poly(&[p(a.0, a.1), p(b.0, b.1)], false),
                ink::CORAL,
                6.0,
            );
        }
    });
    s.group(5.4, |g| {
        let wrist = p(122.0, 50.0);
        let limb = Limb {
            pts: [p(160.0, 40.0), p(141.0, 45.0), wrist],
            w: [15.0, 14.0, 13.0],
            flat: false,
        };
        g.fill(limb.outline(), SKIN.0);
        let h = Hand {
            wrist,
            deg: 186.0,
            len: 70.0,
            flip: false,
            hold: Hold::Open,
        };
        hand(g, h, SKIN);
        g.over(Path::read("M150 20L190 10L196 54L156 62Z"), ink::CORAL);
    });
    s
}

fn meeting_spot() -> Scene {
    let mut s = Scene::default();
    props::sand(&mut s, 14.0, 226.0, 212.0, 14.0);
    s.group(5.4, |g| {
        g.bar(
            Path::poly(&[p(122.0, 90.0), p(122.0, 210.0)], false),
            ink::WHITE,
            11.0,
        );
        for y in [124.0, 152.0, 180.0] {
            g.band(
                Path::poly(&[p(122.0, y), p(122.0, y + 13.0)], false),
                ink::CORAL,
                11.0,
            );
        }
        g.over(Path::circle(p(122.0, 60.0), 44.0), ink::SUN);
        g.dot(Path::circle(p(122.0, 60.0), 23.0), ink::WHITE);
    });
    s.group(4.8, |g| {
        let mut a = helper_dark(0.66, p(48.0, 140.0));
        a.turn = 35.0;
        a.look = [36.0, 8.0, 0.0];
        a = a.stand();
        a.draw(g);
    });
    s.group(4.8, |g| {
        let mut c: Figure = main_child(0.76, p(186.0, 150.0));
        c.turn = -45.0;
        c.look = [-42.0, 0.0, 0.0];
        c = c.stand();
        c.legs[1] = leg(198.0, 206.0, 1.0, -0.9).tilt(-14.0);
        c.legs[0] = leg(172.0, 207.0, 1.0, -0.9).z(Z::Behind);
        c.draw(g);
    });
    s
}
