//! Places, buildings and weather with people.

use super::body::{Bottom, Z, arm, leg};
use super::cast;
use super::geom::{P, Path, p};
use super::hands::Hold;
use super::head::{Head, Mouth};
use super::limb::Limb;
use super::paint::{Group, Scene, ink};
use super::props;

/// The drawings of this file.
pub fn symbols() -> Vec<(&'static str, String)> {
    vec![
        (
            "cold_day",
            cold_day().zoom(1.06).svg("cold_day", "Cold day"),
        ),
        ("ramp_mat", ramp_mat().svg("ramp_mat", "Ramp")),
    ]
}

/// A child wrapped up warmly whose breath shows in the air.
fn cold_day() -> Scene {
    let mut s = Scene::default();
    s.group(5.4, |g| {
        let mut c = cast::main_child(1.5, p(104.0, 252.0)).bust(57.0);
        c.turn = 24.0;
        c.look = [38.0, 0.0, 0.0];
        c.mouth = Mouth::Blow;
        c.top.0 = ink::NAVY;
        for a in &mut c.arms {
            a.z = Z::Gone;
        }
        let head = c.head();
        c.draw(g);
        // The coat is wide, so that no gap opens between it and the sleeves.
        g.fill(Path::read("M66 188L60 228L148 228L144 188Z"), ink::NAVY);
        for (i, elbow, wrist) in [
            (1, p(150.0, 218.0), p(124.0, 214.0)),
            (0, p(54.0, 219.0), p(88.0, 214.0)),
        ] {
            let below = g.depth();
            let sleeve = Limb {
                pts: [c.shoulder(i), elbow, wrist],
                w: [15.0, 17.0, 15.0],
                flat: true,
            };
            g.part(sleeve.outline(), ink::NAVY, sleeve.edge(0.3), below);
        }
        scarf(g, &head);
        woolly_hat(g, &head);
        mitten(g, p(121.0, 212.0), -1.0);
        mitten(g, p(93.0, 212.0), 1.0);
    });
    s.group(0.0, |g| {
        for d in [
            "M168 150C180 141 190 158 204 149C212 144 218 146 224 149",
            "M166 168C178 160 186 175 200 167",
        ] {
            g.mark(Path::read(d), ink::WATER, 7.0);
        }
    });
    s
}

/// A knitted hat with a turned-up rim and a bobble, pulled over the hair.
fn woolly_hat(g: &mut Group, h: &Head) {
    let put = |d: &str| Path::read(d).map(|q| h.place(q));
    g.over(
        Path::circle(h.place(p(-0.04, -1.62)), h.k(0.16)),
        ink::WHITE,
    );
    let cap = "M-1.12-.38C-1.2-1.1-.66-1.5 0-1.5C.66-1.5 1.2-1.1 1.12-.38Z";
    g.over(put(cap), ink::CORAL);
    let rim = "M-1.14-.64C-.5-.86.5-.86 1.14-.64C1.26-.58 1.28-.26 1.16-.14\
               C.5-.36-.5-.36-1.16-.14C-1.28-.26-1.26-.58-1.14-.64Z";
    g.over(put(rim), ink::SUN);
    for x in [-0.78, -0.4, 0.0, 0.4, 0.78] {
        let (a, b) = (p(x, -0.7 + x * x * 0.1), p(x, -0.42 + x * x * 0.14));
        g.mark(
            Path::poly(&[h.place(a), h.place(b)], false),
            ink::WHITE,
            3.4,
        );
    }
}

/// A scarf round the neck with one end hanging down.
fn scarf(g: &mut Group, h: &Head) {
    let put = |d: &str| Path::read(d).map(|q| h.place(q));
    let wrap = "M-.92 .78C-.6 1.06.5 1.1.9 .8C1.1.9 1.12 1.24.96 1.36\
                C.4 1.6-.5 1.58-.96 1.3C-1.12 1.16-1.1.86-.92 .78Z";
    g.over(put(wrap), ink::SUN);
    for x in [-0.56, 0.08, 0.66] {
        let a = h.place(p(x, 1.1 - x * x * 0.12));
        let b = h.place(p(x - 0.06, 1.42 - x * x * 0.16));
        g.mark(Path::poly(&[a, b], false), ink::CORAL, 8.0);
    }
}

/// A mitten in front of the chest, its thumb up; `dir` says where it points.
fn mitten(g: &mut Group, at: P, dir: f64) {
    let d = "M-12-14C-8-20-2-32 7-29C14-26 9-18 8-14C17-13 22-6 21 3C20 14 10 18-12 15Z";
    g.over(Path::read(d).map(|q| at + p(q.x * dir, q.y)), ink::CORAL);
}

/// A child who uses a wheelchair rolls down a mat from the paving to the sand.
fn ramp_mat() -> Scene {
    let mut s = Scene::default();
    s.group(0.0, |g| {
        g.dot(
            Path::read("M80 178L226 206L226 209C226 214 222 216 214 216L80 216Z"),
            ink::SAND,
        );
        for (x, y) in [
            (114.0, 198.0),
            (150.0, 208.0),
            (178.0, 206.0),
            (204.0, 211.0),
        ] {
            props::grain(g, p(x, y));
        }
        g.dot(
            Path::read("M14 178L88 178L88 216L26 216C18 216 14 212 14 204Z"),
            ink::GREY,
        );
        for d in ["M50 176L50 218", "M12 198L88 198"] {
            g.mark(Path::read(d), ink::WHITE, 2.6);
        }
    });
    s.group(4.8, |g| {
        let mat = "M18 168L84 168L222 194L222 205L82 179L18 179Z";
        g.fill(Path::read(mat), ink::SUN);
    });
    let mut g = Group::new(4.8);
    rider(&mut g);
    let on = p(118.0, 170.0);
    s.add(g.map(|q| on + (q - on).rot(10.7)));
    s
}

/// The child in the wheelchair, on level ground.
fn rider(g: &mut Group) {
    let w = props::Wheelchair {
        at: p(100.0, 116.5),
        dir: 1.0,
        k: 0.96,
    };
    w.frame(g);
    let mut f = cast::main_child(0.96, w.hip());
    f.turn = 70.0;
    f.lean = -7.0;
    f.look = [48.0, 0.0, -6.0];
    f.bottom = Bottom::Legs(ink::NAVY, 0.95);
    f.shoes = Some(ink::WHITE);
    f = f.stand();
    let a = w.ankle();
    f.legs[1] = leg(a.x, a.y, -1.0, 1.0).z(Z::Behind);
    f.legs[0] = leg(a.x - 3.0, a.y, -1.0, 1.0);
    f.arms[1].z = Z::Gone;
    f.arms[0] = arm(122.0, 110.0, 1.0, Z::Front, Hold::Rest);
    f.draw(g);
    w.wheel(g);
}
