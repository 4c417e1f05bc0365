//! Faces and what is felt.

use super::body::{Arm, Figure, Z, arm, leg};
use super::cast;
use super::faces::{brow, tear};
use super::geom::{P, Path, p, polar};
use super::hands::{Hand, Hold, arm_and_hand};
use super::head::{Eyes, Mouth};
use super::limb::Limb;
use super::paint::{Group, SEAM, Scene, ink};

/// The drawings of this file.
pub fn symbols() -> Vec<(&'static str, String)> {
    vec![
        ("happy", happy().svg("happy", "Happy")),
        ("sad", sad().svg("sad", "Sad")),
        ("scared", scared().zoom(1.05).svg("scared", "Scared")),
        ("hot", hot().svg("hot", "Hot")),
        ("not_sure", not_sure().svg("not_sure", "Not sure")),
        (
            "i_dont_like_it",
            dislike().svg("i_dont_like_it", "I don't like it"),
        ),
        ("too_loud", too_loud().svg("too_loud", "Too loud")),
        ("hurt", hurt().zoom(1.09).svg("hurt", "It hurts")),
        ("cold", cold().svg("cold", "Cold")),
        ("my_turn", my_turn().svg("my_turn", "My turn")),
        ("your_turn", your_turn().svg("your_turn", "Your turn")),
        (
            "need_grown_up",
            need_grown_up().svg("need_grown_up", "I need my grown-up"),
        ),
    ]
}

/// Head and shoulders of the main child.
fn portrait(k: f64, at: P, torso: f64) -> Figure {
    cast::main_child(k, at).bust(torso).stubs()
}

/// A sun with rays: middle and radius of the disc.
pub fn sun(g: &mut Group, at: P, r: f64) {
    g.fill(Path::circle(at, r), ink::SUN);
    for i in 0..8 {
        let d = f64::from(i) * 45.0 + 10.0;
        let ray = Path::poly(&[at + polar(d, r * 1.55), at + polar(d, r * 1.9)], false);
        g.bar(ray, ink::SUN, r * 0.32);
    }
}

fn happy() -> Scene {
    let mut s = Scene::default();
    s.group(5.6, |g| {
        let mut c = portrait(2.4, p(120.0, 234.0), 36.0);
        c.eyes = Eyes::Glad;
        c.mouth = Mouth::Grin;
        c.draw(g);
    });
    s
}

fn sad() -> Scene {
    let mut s = Scene::default();
    s.group(5.6, |g| {
        let mut c = portrait(2.4, p(120.0, 234.0), 36.0);
        c.look = [0.0, 6.0, 7.0];
        c.worry = true;
        c.mouth = Mouth::Frown;
        c.draw(g);
        let h = c.head();
        tear(g, h.spot(44.0, 0.42, 1.0, false).0, 10.0, 4.0);
    });
    s
}

fn scared() -> Scene {
    let mut s = Scene::default();
    s.group(5.4, |g| {
        let mut c = cast::main_child(2.0, p(120.0, 234.0)).bust(48.0);
        c.lean = -6.0;
        c.look = [12.0, 0.0, -6.0];
        c.eyes = Eyes::Wide;
        c.mouth = Mouth::Wail;
        c.worry = true;
        let m = c.head().spot(0.0, 0.8, 1.0, false).0;
        for a in &mut c.arms {
            a.z = Z::Gone;
        }
        c.draw(g);
        for d in [-1.0, 1.0] {
            let wrist = m + p(d * 23.0, 34.0);
            folded_arm(&c, g, d, wrist, -90.0 - d * 14.0);
        }
    });
    s
}

/// An arm bent so far that the forearm lies in front of the sleeve: `d` is -1
/// for the arm on the left of the picture.
fn folded_arm(c: &Figure, g: &mut Group, d: f64, wrist: P, aim: f64) {
    let (b, k) = (c.build, c.k);
    let i = usize::from(d > 0.0);
    let bones = b.arm.map(|v| v * k);
    let reach = |bend: f64| {
        let w = b.arm_w.map(|v| v * k);
        Limb::reach(c.shoulder(i), wrist, bones, w, bend)
    };
    // Whichever way the arm lies, its elbow hangs down.
    let limb = if reach(1.0).pts[1].y > reach(-1.0).pts[1].y {
        reach(1.0)
    } else {
        reach(-1.0)
    };
    let [_, elbow, end] = limb.pts;
    let below = g.depth();
    let upper = limb.cut(0.52, 0.0);
    g.part(upper.outline(), c.skin.0, upper.edge(0.4), below);
    let sleeve = limb.cut(c.top.1, 1.2 * k);
    g.part(sleeve.outline(), c.top.0, sleeve.edge(0.4), below);
    g.band(sleeve.across(), ink::WHITE, SEAM);
    let fore = Limb {
        pts: [elbow, elbow.to(end, 0.5), end],
        w: [b.arm_w[1] * k, b.arm_w[1] * k * 0.93, b.arm_w[2] * k],
        flat: false,
    };
    let h = Hand {
        wrist: end,
        deg: aim,
        len: b.ends[1] * k,
        flip: d < 0.0,
        hold: Hold::Flat,
    };
    let n = g.depth();
    arm_and_hand(g, &fore, h, c.skin, n);
}

fn hot() -> Scene {
    let mut s = Scene::default();
    s.group(0.0, |g| sun(g, p(48.0, 52.0), 22.0));
    s.group(5.4, |g| {
        let mut c = cast::main_child(1.85, p(140.0, 236.0)).bust(44.0).stubs();
        c.look = [6.0, 0.0, 5.0];
        c.mouth = Mouth::Sing;
        c.worry = true;
        let h = c.head();
        let f = h.spot(-52.0, -0.3, 1.0, false).0;
        c.arms[0] = arm(f.x - 20.0, f.y + 4.0, -1.0, Z::Over, Hold::Flat).aim(-20.0);
        let mut body = c;
        body.arms[0].z = Z::Gone;
        body.draw(g);
        for side in [-42.0, 42.0] {
            let at = h.spot(side, 0.44, 0.98, false).0;
            g.dot(
                Path::ellipse(at, h.k(0.11), h.k(0.09), h.roll),
                ink::FLAG_RED,
            );
        }
        c.draw_arm(0, g);
        tear(g, h.spot(64.0, -0.1, 1.0, false).0, 8.0, 0.0);
    });
    s.group(0.0, |g| {
        tear(g, p(216.0, 84.0), 8.0, -20.0);
        tear(g, p(212.0, 130.0), 8.0, 0.0);
    });
    s
}

fn not_sure() -> Scene {
    let mut s = Scene::default();
    s.group(5.4, |g| {
        let mut c = cast::main_child(1.8, p(120.0, 236.0)).bust(50.0);
        c.look = [0.0, 0.0, 12.0];
        c.mouth = Mouth::Skew;
        c.build.neck = -1.0;
        c.arms[0] = arm(46.0, 184.0, -1.0, Z::Front, Hold::Open).aim(-140.0);
        c.arms[1] = arm(194.0, 184.0, 1.0, Z::Front, Hold::Open)
            .aim(-40.0)
            .flip();
        c.draw(g);
        let h = c.head();
        brow(&h, g, -25.0, -0.24, -0.28);
    });
    s
}

/// A plate with green food seen a little from above.
fn plate(g: &mut Group, at: P) {
    g.fill(Path::ellipse(at, 46.0, 22.0, 0.0), ink::WHITE);
    g.mark(Path::ellipse(at, 32.0, 13.0, 0.0), ink::GREY, 2.8);
    g.over(
        Path::block(at + p(11.0, -12.0), 15.0, 26.0, 6.0, 0.0),
        ink::LEAF,
    );
    let d = "M-26-12C-36-20-30-36-18-34C-16-48 4-50 8-40C22-46 34-30 24-20C22-8-14-4-26-12Z";
    g.over(
        Path::read(d).put(at + p(12.0, -14.0), 1.0, 0.0, false),
        ink::LEAF,
    );
}

fn dislike() -> Scene {
    let mut s = Scene::default();
    s.group(5.4, |g| plate(g, p(180.0, 202.0)));
    s.group(5.4, |g| {
        let mut c = cast::main_child(1.75, p(70.0, 236.0)).bust(52.0).stubs();
        c.look = [-34.0, 0.0, -10.0];
        c.eyes = Eyes::Tight;
        c.mouth = Mouth::Yuck;
        c.arms[1] = arm(122.0, 186.0, 0.5, Z::Front, Hold::Flat).aim(-30.0);
        c.draw(g);
    });
    s
}

/// A loudspeaker whose mouth is at `at` and points along `deg`.
fn horn(g: &mut Group, at: P, deg: f64) {
    let put = |d: &str| Path::read(d).put(at, 1.0, deg, false);
    g.fill(put("M-50 6L-38 4L-34 26L-46 28Z"), ink::CHARCOAL);
    g.over(
        put("M-62-9C-44-10-20-16-2-36L-2 36C-20 16-44 10-62 9Z"),
        ink::SUN,
    );
    g.over(Path::ellipse(at, 10.0, 37.0, deg), ink::CORAL);
    g.dot(Path::ellipse(at, 5.0, 27.0, deg), ink::INK);
}

fn arcs(g: &mut Group, c: P, deg: f64, radii: &[f64]) {
    for r in radii {
        let pts: Vec<P> = (-3..=3)
            .map(|i| c + polar(deg + f64::from(i) * 10.0, *r))
            .collect();
        g.mark(Path::smooth(&pts, false), ink::CORAL, 7.0);
    }
}

fn too_loud() -> Scene {
    let mut s = Scene::default();
    s.group(5.0, |g| horn(g, p(76.0, 66.0), 24.0));
    s.group(0.0, |g| arcs(g, p(36.0, 48.0), 24.0, &[70.0, 87.0]));
    s.group(5.4, |g| {
        let mut c = cast::main_child(1.5, p(150.0, 230.0)).bust(42.0);
        c.eyes = Eyes::Tight;
        c.mouth = Mouth::Frown;
        c.worry = true;
        c.look = [0.0, 0.0, 8.0];
        let h = c.head();
        for (i, d) in [(0, -1.0), (1, 1.0)] {
            let ear = h.spot(90.0 * d, 0.12, 1.0, false).0;
            c.arms[i] =
                arm(ear.x + d * 13.0, ear.y + 21.0, d, Z::Over, Hold::Flat).aim(-90.0 - d * 16.0);
            if i == 0 {
                c.arms[i] = c.arms[i].flip();
            }
        }
        c.draw(g);
    });
    s
}

fn hurt() -> Scene {
    let mut s = Scene::default();
    s.group(5.2, |g| {
        let mut c = cast::main_child(1.35, p(70.0, 196.0));
        c.turn = 55.0;
        c.lean = 6.0;
        c.look = [22.0, 0.0, 10.0];
        c.eyes = Eyes::Tight;
        c.mouth = Mouth::Wail;
        c.worry = true;
        c = c.stand();
        let knee = p(140.0, 146.0);
        c.legs[0] = leg(166.0, 206.0, -1.0, 1.0).knee(knee.x, knee.y);
        c.legs[1] = leg(206.0, 210.0, -1.0, 1.0)
            .tilt(-40.0)
            .knee(140.0, 206.0)
            .z(Z::Behind);
        c.bottom = super::body::Bottom::Legs(ink::NAVY, 0.32);
        c.arms[1] = arm(knee.x + 10.0, knee.y + 32.0, 1.0, Z::Behind, Hold::Rest);
        c.arms[0] = arm(knee.x - 22.0, knee.y + 22.0, -1.0, Z::Front, Hold::Rest).aim(10.0);
        c.draw(g);
        g.dot(
            Path::ellipse(knee + p(3.0, -1.0), 9.0, 7.0, 20.0),
            ink::FLAG_RED,
        );
    });
    s.group(0.0, |g| {
        for d in [-100.0, -60.0, -20.0] {
            let c = p(143.0, 146.0);
            g.mark(
                Path::poly(&[c + polar(d, 28.0), c + polar(d, 46.0)], false),
                ink::CORAL,
                7.0,
            );
        }
    });
    s
}

/// A snowflake.
fn flake(g: &mut Group, at: P, r: f64) {
    for i in 0..3 {
        let d = polar(f64::from(i) * 60.0 + 30.0, r);
        g.mark(Path::poly(&[at + d, at - d], false), ink::WATER, r * 0.26);
        for q in [d, d * -1.0] {
            let m = at + q * 0.6;
            let tips = [m + q.rot(48.0) * 0.42, m, m + q.rot(-48.0) * 0.42];
            g.mark(Path::poly(&tips, false), ink::WATER, r * 0.2);
        }
    }
}

fn cold() -> Scene {
    let mut s = Scene::default();
    s.group(5.4, |g| {
        let mut c = cast::main_child(1.85, p(120.0, 238.0)).bust(52.0);
        c.build.neck = -3.0;
        c.mouth = Mouth::Chatter;
        c.worry = true;
        c.arms[0] = arm(142.0, 194.0, 1.0, Z::Front, Hold::Flat).aim(-30.0);
        c.arms[1] = arm(98.0, 194.0, -1.0, Z::Front, Hold::Flat)
            .aim(-150.0)
            .flip();
        c.draw(g);
    });
    s.group(0.0, |g| {
        flake(g, p(38.0, 54.0), 22.0);
        flake(g, p(204.0, 44.0), 26.0);
        for d in [-1.0, 1.0] {
            for x in [78.0, 94.0] {
                let x = 120.0 + d * x;
                let w = 5.0;
                let pts = [
                    p(x - w, 122.0),
                    p(x + w, 132.0),
                    p(x - w, 142.0),
                    p(x + w, 152.0),
                    p(x - w, 162.0),
                ];
                g.mark(Path::poly(&pts, false), ink::CHARCOAL, 5.0);
            }
        }
    });
    s
}

/// A beach ball in three colours.
fn ball(g: &mut Group, at: P, r: f64) {
    g.over(Path::circle(at, r), ink::SUN);
    let put = |d: &str| Path::read(d).put(at, r, 0.0, false);
    g.dot(put("M0-.98C-.5-.5-.5.5 0 .98C.5.5.5-.5 0-.98Z"), ink::WHITE);
    g.mark(
        put("M0-.95C-.5-.5-.5.5 0 .95M0-.95C.5-.5.5.5 0 .95"),
        ink::INK,
        2.6,
    );
}

/// A curved arrow along these points.
fn arrow(g: &mut Group, pts: &[P]) {
    g.mark(Path::smooth(pts, false), ink::CORAL, 8.0);
    let (end, from) = (pts[pts.len() - 1], pts[pts.len() - 2]);
    let u = (from - end).unit();
    let tips = [end + u.rot(42.0) * 18.0, end, end + u.rot(-42.0) * 18.0];
    g.mark(Path::poly(&tips, false), ink::CORAL, 8.0);
}

fn my_turn() -> Scene {
    let mut s = Scene::default();
    s.group(5.4, |g| {
        let mut c = cast::main_child(1.7, p(110.0, 236.0)).bust(52.0);
        c.build.ends[1] = 21.0;
        c.look = [0.0, 0.0, -4.0];
        c.arms[0] = arm(74.0, 204.0, 0.8, Z::Front, Hold::Point).aim(-24.0);
        c.build.ends[1] = 24.0;
        c.arms[1] = arm(186.0, 176.0, 1.0, Z::Front, Hold::Flat)
            .aim(-50.0)
            .flip();
        c.draw(g);
        ball(g, p(196.0, 136.0), 26.0);
    });
    s
}

fn your_turn() -> Scene {
    let mut s = Scene::default();
    s.group(4.8, |g| {
        let mut c = cast::puffs(1.02, p(184.0, 144.0));
        c.turn = -45.0;
        c.look = [-42.0, 0.0, 0.0];
        c = c.stand();
        c.arms[0].z = Z::Gone;
        c.arms[1] = arm(156.0, 124.0, -1.0, Z::Front, Hold::Open).aim(-165.0);
        c.draw(g);
    });
    s.group(4.8, |g| {
        let mut c = cast::main_child(1.02, p(52.0, 144.0));
        c.turn = 45.0;
        c.look = [42.0, 0.0, 0.0];
        c = c.stand();
        c.arms[1].z = Z::Gone;
        c.arms[0] = arm(88.0, 126.0, -1.0, Z::Front, Hold::Flat).aim(4.0).flip();
        c.draw_back(g);
        c.draw_mid(g);
        ball(g, p(104.0, 102.0), 21.0);
        c.draw_front(g);
    });
    s.group(0.0, |g| {
        let pts = [
            p(94.0, 66.0),
            p(104.0, 56.0),
            p(117.0, 52.0),
            p(130.0, 56.0),
            p(140.0, 68.0),
        ];
        arrow(g, &pts);
    });
    s
}

fn need_grown_up() -> Scene {
    let mut s = Scene::default();
    s.group(4.8, |g| {
        let mut a = cast::parent(0.9, p(190.0, 118.0));
        a.turn = -55.0;
        a.lean = -14.0;
        a.look = [-38.0, 18.0, -8.0];
        a = a.stand();
        a.arms[0] = arm(128.0, 104.0, -1.0, Z::Behind, Hold::Open).aim(164.0);
        a.arms[1] = arm(136.0, 120.0, -1.0, Z::Front, Hold::Open).aim(164.0);
        a.legs[0] = leg(168.0, 206.0, 1.0, -0.9).z(Z::Behind);
        a.legs[1] = leg(204.0, 208.0, 1.0, -0.9);
        a.draw(g);
    });
    s.group(4.8, |g| {
        let mut c = cast::main_child(1.06, p(44.0, 140.0));
        c.turn = 50.0;
        c.lean = 3.0;
        c.look = [44.0, -22.0, -16.0];
        c.mouth = Mouth::Wail;
        c.worry = true;
        c = c.stand();
        c.arms[1] = arm(98.0, 50.0, -1.0, Z::Behind, Hold::Open).aim(-52.0);
        c.arms[0] = arm(92.0, 76.0, -1.0, Z::Front, Hold::Open).aim(-36.0);
        c.legs[0] = leg(34.0, 208.0, -1.0, 0.9);
        c.legs[1] = leg(62.0, 210.0, -1.0, 0.9).z(Z::Behind);
        c.draw(g);
    });
    s
}
