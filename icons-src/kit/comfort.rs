//! What comforts, warms and calms.

use super::body::{Z, arm, leg};
use super::cast;
use super::feelings::sun;
use super::geom::{P, Path, p, polar};
use super::hands::{Hold, foot};
use super::head::{Eyes, Head};
use super::paint::{Group, Scene, ink};
use super::people_c::swing;

/// The drawings of this file.
pub fn symbols() -> Vec<(&'static str, String)> {
    vec![
        ("sunglasses", sunglasses().svg("sunglasses", "Sunglasses")),
        ("get_warm", get_warm().svg("get_warm", "Get warm")),
        ("wrap_up", wrap_up().svg("wrap_up", "Wrap up")),
        ("rock", rock().zoom(0.94).svg("rock", "Rock")),
    ]
}

/// Dark glasses with a bright frame.
fn dark_glasses(h: &Head, g: &mut Group) {
    let bar = |a: f64, v: f64, b: f64, w: f64| {
        Path::smooth(
            &[
                h.spot(a, v, 1.03, false).0,
                h.spot((a + b) / 2.0, (v + w) / 2.0, 1.03, false).0,
                h.spot(b, w, 1.03, false).0,
            ],
            false,
        )
    };
    for d in [-1.0, 1.0] {
        g.mark(bar(40.0 * d, -0.04, 88.0 * d, 0.0), ink::INK, h.k(0.07));
    }
    g.mark(bar(-14.0, 0.0, 14.0, 0.0), ink::INK, h.k(0.08));
    for d in [-1.0, 1.0] {
        let (at, z) = h.spot(29.0 * d, 0.06, 1.0, false);
        let w = 0.4 + 0.6 * z;
        let lens = Path::block(at, h.k(0.36) * w, h.k(0.31), h.k(0.12), h.roll);
        g.mark(lens.clone(), ink::INK, h.k(0.13));
        g.mark(lens.clone(), ink::SUN, h.k(0.075));
        g.dot(lens, ink::INK);
        let u = |x: f64, y: f64| at + p(h.k(x) * w, h.k(y)).rot(h.roll);
        g.mark(
            Path::poly(&[u(-0.09, 0.04), u(0.0, -0.08)], false),
            ink::WHITE,
            h.k(0.045),
        );
    }
}

fn sunglasses() -> Scene {
    let mut s = Scene::default();
    s.group(0.0, |g| sun(g, p(204.0, 40.0), 18.0));
    s.group(5.6, |g| {
        let c = cast::main_girl(2.2, p(100.0, 234.0)).bust(36.0).stubs();
        c.draw(g);
        dark_glasses(&c.head(), g);
    });
    s
}

/// A line of steam rising from `at`.
fn steam(g: &mut Group, at: P, h: f64) {
    let pts: Vec<P> = (0..=4)
        .map(|i| {
            let t = f64::from(i) / 4.0;
            at + p(if i % 2 == 0 { -4.0 } else { 5.0 }, -h * t)
        })
        .collect();
    g.mark(Path::smooth(&pts, false), ink::GREY, 6.0);
}

fn get_warm() -> Scene {
    let mut s = Scene::default();
    s.group(0.0, |g| {
        for (x, y, h) in [
            (170.0, 104.0, 46.0),
            (192.0, 98.0, 62.0),
            (214.0, 104.0, 46.0),
        ] {
            steam(g, p(x, y), h);
        }
    });
    s.group(5.4, |g| {
        let mut c = cast::main_child(1.75, p(84.0, 236.0)).bust(54.0);
        c.turn = 20.0;
        c.look = [20.0, 6.0, 4.0];
        c.eyes = Eyes::Glad;
        c.top = (ink::NAVY, 0.97);
        c.build.arm_w = [12.0, 11.0, 9.0];
        let h = c.head();
        let put = |d: &str| Path::read(d).map(|q| h.place(q));
        g.fill(
            put("M-1.2 1.3C-1.8.5-1.8-.8-1.1-1.4C-.6-1.7.3-1.66.8-1.3C1.4-.8 1.5.5 1.1 1.3Z"),
            ink::NAVY,
        );
        c.arms[0] = arm(160.0, 184.0, 1.0, Z::Over, Hold::Rest).aim(-14.0);
        c.arms[1].z = Z::Gone;
        let mut body = c;
        body.arms[0].z = Z::Gone;
        body.draw(g);
        let rim = "M0-1.2C.7-1.2 1.08-.6 1.06 .06C1.04.8.6 1.16 0 1.16C-.6 1.16-1.06.8-1.1.06\
                   C-1.12-.6-.7-1.2 0-1.2Z";
        g.bar(put(rim), ink::WHITE, 12.0);
        g.mark(put("M.05 1.2L.1 1.9"), ink::WHITE, 8.0);
        g.bar(
            Path::read("M208 146C230 142 230 180 206 176"),
            ink::SUN,
            8.0,
        );
        g.over(
            Path::read("M160 124L212 124L209 184C208 194 164 194 163 184Z"),
            ink::SUN,
        );
        c.draw_arm(0, g);
    });
    s
}

fn wrap_up() -> Scene {
    let mut s = Scene::default();
    s.group(5.4, |g| {
        let mut c = cast::main_child(1.6, p(120.0, 178.0)).bust(48.0).stubs();
        c.eyes = Eyes::Shut;
        c.look = [0.0, 0.0, 7.0];
        for d in [-1.0, 1.0] {
            let at = p(120.0 + d * 21.0, 208.0);
            g.fill(foot(at, 36.0, 0.0, d * 0.7), c.skin.0);
        }
        c.draw(g);
        towel(g);
    });
    s
}

/// A striped towel rolled round a body, its fringed end across the front.
fn towel(g: &mut Group) {
    let under = "M82 108C98 122 142 122 158 108C178 114 186 130 184 152C182 178 176 196 170 208\
                 L70 208C64 196 58 178 56 152C54 130 62 114 82 108Z";
    let flap = "M82 108C98 122 138 122 152 112C152 150 132 184 104 208L70 208\
                C64 196 58 178 56 152C54 130 62 114 82 108Z";
    let fringe = |t: f64| {
        let (a, b, c) = (p(151.0, 118.0), p(150.0, 166.0), p(112.0, 202.0));
        a.to(b, t).to(b.to(c, t), t)
    };
    g.over(Path::read(under), ink::SUN);
    g.band(
        Path::read("M140 150C158 150 172 147 183.5 143"),
        ink::CORAL,
        11.0,
    );
    g.band(
        Path::read("M112 196C140 197 160 194 175 190"),
        ink::CORAL,
        11.0,
    );
    for i in 0..9 {
        let t = f64::from(i) / 8.5 + 0.04;
        let (q, out) = (fringe(t), polar(4.0 + t * 40.0, 12.0));
        g.mark(Path::poly(&[q, q + out], false), ink::WHITE, 4.4);
    }
    g.over(Path::read(flap), ink::SUN);
    g.band(
        Path::read("M57 136C80 150 120 150 147 138"),
        ink::CORAL,
        11.0,
    );
    g.band(
        Path::read("M61 176C80 186 110 186 130 176"),
        ink::CORAL,
        11.0,
    );
}

fn rock() -> Scene {
    let mut s = Scene::default();
    s.group(5.2, |g| {
        let mut c = cast::main_girl(1.5, p(90.0, 168.0));
        c.turn = 70.0;
        c.lean = 4.0;
        c.look = [50.0, 6.0, 4.0];
        c.eyes = Eyes::Shut;
        c = c.stand();
        c.legs[0] = leg(160.0, 180.0, -1.0, 1.0).knee(148.0, 122.0);
        c.legs[1] = leg(168.0, 180.0, -1.0, 1.0).knee(156.0, 122.0).z(Z::Behind);
        c.arms[0] = arm(152.0, 150.0, 1.0, Z::Front, Hold::Grip);
        c.arms[1].z = Z::Gone;
        c.draw(g);
    });
    s.group(0.0, |g| {
        swing(g, p(112.0, 28.0), 206.0, 113.0, 67.0);
        for (from, to) in [(180.0, 200.0), (-40.0, -20.0)] {
            for r in [92.0, 108.0] {
                let pts: Vec<P> = (0..=4)
                    .map(|i| p(112.0, 120.0) + polar(from + (to - from) * f64::from(i) / 4.0, r))
                    .collect();
                g.mark(Path::smooth(&pts, false), ink::CHARCOAL, 5.0);
            }
        }
    });
    s
}
