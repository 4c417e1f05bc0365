//! Faces and what is felt.

use super::body::{Figure, Z, arm, leg};
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
        ("hurt", hurt().zoom(1.09).svg("hurt", "Hurt")),
        ("cold", cold().svg("cold", "Cold")),
    ]
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
        let mut c = cast::main_child(1.62, p(120.0, 236.0)).bust(52.0);
        c.eyes = Eyes::Glad;
        c.mouth = Mouth::Grin;
        let chest = c.chest();
        c.arms[0] = arm(chest.x - 76.0, chest.y - 58.0, -1.0, Z::Front, Hold::Open).aim(-104.0);
        c.arms[1] = arm(chest.x + 76.0, chest.y - 58.0, 1.0, Z::Front, Hold::Open)
            .aim(-76.0)
            .flip();
        c.draw(g);
    });
    s
}

fn sad() -> Scene {
    let mut s = Scene::default();
    s.group(5.6, |g| {
        // Bowed to the side, so that the posture says it where the mouth is too small to see.
        let mut c = cast::main_child(2.15, p(112.0, 238.0)).bust(40.0);
        c.build.neck += 6.0;
        c.lean = 6.0;
        c = c.stubs();
        c.look = [4.0, 4.0, 22.0];
        c.worry = true;
        c.mouth = Mouth::Frown;
        c.draw(g);
        let h = c.head();
        tear(g, h.spot(44.0, 0.42, 1.0, false).0, 10.5, 4.0);
        tear(g, h.spot(-42.0, 0.6, 1.0, false).0, 8.5, -4.0);
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
pub fn folded_arm(c: &Figure, g: &mut Group, d: f64, wrist: P, aim: f64) {
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
        g.over(
            Path::ellipse(knee + p(2.0, 0.0), 10.0, 8.0, 20.0),
            ink::CORAL,
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
