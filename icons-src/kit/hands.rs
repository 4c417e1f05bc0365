//! Hands and feet. A hand is given by its wrist, the direction it points and
//! its length; the thumb lies on the left of that direction unless mirrored.

use super::geom::{P, Path, p, polar};
use super::head::Skin;
use super::limb::Limb;
use super::paint::Group;

/// What a hand does.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Hold {
    /// At rest: mitten with a thumb.
    Rest,
    /// Open with spread fingers.
    Open,
    /// Flat, fingers together.
    Flat,
    /// Closed round something.
    Grip,
    /// Pointing with one finger.
    Point,
    /// So many fingers up from the first, the others and the thumb folded in.
    Count(usize),
    /// Not drawn (hidden behind something).
    None,
    /// The arm is only a sleeve (a close-up that ends there).
    Stub,
}

const REST: &str = "M-.1-.28C.1-.34.2-.36.28-.36C.36-.56.56-.66.66-.54C.72-.44.6-.36.54-.28\
                    C.78-.28 1-.2 1 .03C1 .25.8 .34.5 .34C.3 .34.1 .3-.1 .27Z";
const GRIP: &str = "M-.1-.28C.1-.32.2-.4.36-.4C.62-.4.74-.24.74 .02C.74 .28.6 .4.36 .4\
                    C.2 .4.1 .32-.1 .27Z";

/// Draws a bare arm with its hand as one shape, so that no seam crosses the
/// wrist; the seam runs against the lowest `below` layers.
pub fn arm_and_hand(g: &mut Group, limb: &Limb, h: Hand, skin: Skin, below: usize) {
    let (path, slits) = shape(&h);
    let both = limb.outline().then(path.clone(), false).wound();
    g.part(both, skin.0, limb.edge(0.34).then(path, false), below);
    draw_slits(g, &h, slits, skin);
}

/// Draws a hand alone.
pub fn hand(g: &mut Group, h: Hand, skin: Skin) {
    let (path, slits) = shape(&h);
    g.over(path.wound(), skin.0);
    draw_slits(g, &h, slits, skin);
}

fn draw_slits(g: &mut Group, h: &Hand, slits: Vec<Path>, skin: Skin) {
    if h.len > 24.0 {
        for s in slits {
            g.mark(s, skin.1, (h.len * 0.055).clamp(2.4, 4.0));
        }
    }
}

/// The outline of a hand and the lines on it.
fn shape(h: &Hand) -> (Path, Vec<Path>) {
    let put = |d: &str| Path::read(d).put(h.wrist, h.len, h.deg, h.flip);
    match h.hold {
        Hold::None | Hold::Stub => (Path::default(), vec![]),
        Hold::Rest => (put(REST), vec![]),
        Hold::Grip => (put(GRIP), knuckles(h)),
        Hold::Open => (fingers(h, &[-24.0, -8.0, 8.0, 23.0], 0.1), vec![]),
        Hold::Count(n) => (counted(h, n), knuckles(h)[n.saturating_sub(1)..].to_vec()),
        Hold::Flat => {
            let f = fingers(h, &[-4.0, -1.5, 1.5, 4.0], 0.112);
            (f, slits(h))
        }
        Hold::Point => {
            let at = |x: f64, y: f64| place(h, x, y);
            let tip = Limb {
                pts: [at(0.3, -0.22), at(0.7, -0.24), at(1.12, -0.25)],
                w: [h.len * 0.13, h.len * 0.125, h.len * 0.115],
                flat: false,
            };
            (put(GRIP).then(tip.outline(), false), knuckles(h))
        }
    }
}

/// One hand to draw.
#[derive(Clone, Copy, Debug)]
pub struct Hand {
    /// Where it joins the arm.
    pub wrist: P,
    /// Direction of the fingers.
    pub deg: f64,
    /// Length from wrist to finger tip.
    pub len: f64,
    /// Thumb on the other side.
    pub flip: bool,
    /// What it does.
    pub hold: Hold,
}

fn place(h: &Hand, x: f64, y: f64) -> P {
    let f = if h.flip { -1.0 } else { 1.0 };
    h.wrist + p(x * h.len, y * h.len * f).rot(h.deg)
}

/// Palm with four fingers at these angles and a thumb.
fn fingers(h: &Hand, angles: &[f64; 4], half: f64) -> Path {
    let at = |x: f64, y: f64| place(h, x, y);
    let palm = Path::read("M-.1-.26C.1-.3.3-.38.5-.36C.62-.3.64.26.5 .34C.36 .4.1 .32-.1 .26Z")
        .put(h.wrist, h.len, h.deg, h.flip);
    let roots = [-0.245, -0.075, 0.095, 0.25];
    let lens = [0.46, 0.54, 0.5, 0.4];
    let mut path = palm;
    for i in 0..4 {
        let a = p(0.44, roots[i]);
        let tip = a + polar(angles[i], lens[i]);
        let mid = a.to(tip, 0.5);
        let w = [h.len * half * 1.05, h.len * half, h.len * half * 0.92];
        let pts = [at(a.x, a.y), at(mid.x, mid.y), at(tip.x, tip.y)];
        path = path.then(
            Limb {
                pts,
                w,
                flat: false,
            }
            .outline(),
            false,
        );
    }
    let spread = angles[0].abs() > 15.0;
    let (k, e) = if spread {
        (p(0.3, -0.42), p(0.46, -0.62))
    } else {
        (p(0.36, -0.4), p(0.58, -0.5))
    };
    let pts = [at(0.12, -0.12), at(k.x, k.y), at(e.x, e.y)];
    let w = [h.len * 0.16, h.len * 0.13, h.len * 0.11];
    path.then(
        Limb {
            pts,
            w,
            flat: false,
        }
        .outline(),
        false,
    )
}

/// A fist with the first `n` fingers up.
fn counted(h: &Hand, n: usize) -> Path {
    let at = |x: f64, y: f64| place(h, x, y);
    let fist = Path::read(GRIP).put(h.wrist, h.len, h.deg, h.flip);
    let up = [(-0.27, -10.0), (-0.06, 0.0), (0.15, 9.0)];
    up.iter().take(n).fold(fist, |path, &(y, deg)| {
        let (a, tip) = (p(0.4, y), p(0.4, y) + polar(deg, 0.82));
        let mid = a.to(tip, 0.5);
        let finger = Limb {
            pts: [at(a.x, a.y), at(mid.x, mid.y), at(tip.x, tip.y)],
            w: [h.len * 0.115, h.len * 0.11, h.len * 0.1],
            flat: false,
        };
        path.then(finger.outline(), false)
    })
}

/// Lines between closed fingers.
fn slits(h: &Hand) -> Vec<Path> {
    [(-0.16, -0.175), (0.01, 0.01), (0.17, 0.19)]
        .iter()
        .map(|&(a, b)| Path::poly(&[place(h, 0.52, a), place(h, 0.88, b)], false))
        .collect()
}

/// Lines between fingers closed round something, and the thumb across.
fn knuckles(h: &Hand) -> Vec<Path> {
    [-0.16, 0.02, 0.2]
        .iter()
        .map(|&y| Path::poly(&[place(h, 0.7, y), place(h, 0.42, y)], false))
        .collect()
}

const FOOT: &str = "M-.34-.34C-.1-.42.1-.42.3-.34C.36-.1.76-.04.78 .24C.79 .38.74 .42.62 .42\
                    L-.26 .42C-.44 .42-.42 .1-.34-.34Z";

/// A foot: ankle, direction of the toes, length; `face` from -1 (toes left)
/// to 1 (toes right) with small values nearly toward the viewer.
pub fn foot(ankle: P, len: f64, tilt: f64, face: f64) -> Path {
    let squeeze = face.abs().max(0.62);
    let s = face.signum();
    Path::read(FOOT).map(|q| ankle + p(q.x * len * squeeze * s, q.y * len).rot(tilt))
}
