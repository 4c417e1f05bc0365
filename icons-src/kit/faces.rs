//! Strong feelings in a face: mouths and eyes large enough to be told apart at
//! 20 mm, where the friendly everyday ones are only a small curve.

use super::geom::{P, Path, p};
use super::head::{Eyes, Head, Mouth};
use super::paint::{Group, ink};

/// A mouth around the angle `mid`.
pub fn mouth(h: &Head, g: &mut Group, mouth: Mouth, mid: f64) {
    let lw = h.k(0.062).max(2.8);
    // Heights of a row of points, given as angle and height.
    let line = |pts: &[(f64, f64)]| {
        let at: Vec<(f64, f64)> = pts.iter().map(|q| (mid + q.0, q.1)).collect();
        h.curve(&at)
    };
    match mouth {
        Mouth::Grin => {
            let top = line(&[
                (-27.0, 0.43),
                (-14.0, 0.49),
                (0.0, 0.51),
                (14.0, 0.49),
                (27.0, 0.43),
            ]);
            let low = line(&[
                (27.0, 0.43),
                (22.0, 0.7),
                (0.0, 0.86),
                (-22.0, 0.7),
                (-27.0, 0.43),
            ]);
            g.dot(top.then(low, true).close(), ink::INK);
            let teeth = line(&[
                (-22.0, 0.5),
                (-12.0, 0.54),
                (0.0, 0.56),
                (12.0, 0.54),
                (22.0, 0.5),
            ]);
            g.mark(teeth, ink::WHITE, h.k(0.07));
            tongue(h, g, p(mid, 0.77), 0.085);
        }
        Mouth::Frown => g.mark(
            line(&[
                (-24.0, 0.74),
                (-16.0, 0.61),
                (0.0, 0.54),
                (16.0, 0.61),
                (24.0, 0.74),
            ]),
            ink::INK,
            lw * 1.15,
        ),
        Mouth::Wail => {
            let top = line(&[
                (-22.0, 0.76),
                (-17.0, 0.56),
                (0.0, 0.44),
                (17.0, 0.56),
                (22.0, 0.76),
            ]);
            let low = line(&[
                (22.0, 0.76),
                (12.0, 0.72),
                (0.0, 0.7),
                (-12.0, 0.72),
                (-22.0, 0.76),
            ]);
            let whole = top.then(low, true).close();
            g.mark(whole.clone(), ink::INK, lw * 0.7);
            g.dot(whole, ink::INK);
            tongue(h, g, p(mid, 0.66), 0.07);
        }
        Mouth::Chatter => chatter(h, g, mid),
        Mouth::Skew => g.mark(
            line(&[(-20.0, 0.62), (-8.0, 0.68), (4.0, 0.62), (20.0, 0.46)]),
            ink::INK,
            lw * 1.1,
        ),
        Mouth::Yuck => yuck(h, g, mid, lw),
        _ => {}
    }
}

fn tongue(h: &Head, g: &mut Group, at: P, half: f64) {
    let (q, z) = h.spot(at.x, at.y, 0.98, false);
    g.dot(
        Path::ellipse(
            q,
            h.k(half) * (0.5 + 0.5 * z.max(0.0)),
            h.k(half * 0.55),
            h.roll,
        ),
        ink::CORAL,
    );
}

/// Two rows of teeth pressed together.
fn chatter(h: &Head, g: &mut Group, mid: f64) {
    let row = |v: f64| -> Vec<P> {
        (-3..=3)
            .map(|i| h.spot(mid + f64::from(i) * 8.0, v, 1.0, false).0)
            .collect()
    };
    let (top, low) = (row(0.5), row(0.74));
    let mut ring = top.clone();
    ring.extend(low.iter().rev());
    let lw = h.k(0.045).max(2.6);
    let frame = Path::poly(&ring, true);
    g.dot(frame.clone(), ink::WHITE);
    let zigzag: Vec<P> = (0..7)
        .map(|i| top[i].to(low[i], if i % 2 == 0 { 0.36 } else { 0.64 }))
        .collect();
    g.mark(Path::poly(&zigzag, false), ink::INK, lw * 0.8);
    g.mark(frame, ink::INK, lw);
}

fn yuck(h: &Head, g: &mut Group, mid: f64, lw: f64) {
    let at = |a: f64, v: f64| h.spot(mid + a, v, 1.0, false).0;
    let tip = [
        at(-6.0, 0.56),
        at(-8.0, 0.74),
        at(-4.0, 0.9),
        at(7.0, 0.9),
        at(11.0, 0.74),
        at(9.0, 0.57),
    ];
    let t = Path::smooth(&tip, true);
    g.mark(t.clone(), ink::INK, lw * 0.9);
    g.dot(t, ink::CORAL);
    let arc = h.curve(&[
        (mid - 24.0, 0.7),
        (mid - 14.0, 0.58),
        (mid, 0.54),
        (mid + 14.0, 0.58),
        (mid + 24.0, 0.7),
    ]);
    g.mark(arc, ink::INK, lw * 1.1);
}

/// An eye at the angle `side`.
pub fn eye(h: &Head, g: &mut Group, side: f64) {
    let (at, z) = h.spot(side, 0.06, 0.95, false);
    if h.eyes == Eyes::Wide {
        let w = 0.5 + 0.5 * z;
        let ring = Path::ellipse(at, h.k(0.115) * w, h.k(0.135), h.roll);
        g.mark(ring.clone(), ink::INK, h.k(0.07).max(2.6));
        g.dot(ring, ink::WHITE);
        g.dot(
            Path::ellipse(at, h.k(0.05) * w, h.k(0.056), h.roll),
            ink::INK,
        );
        return;
    }
    let s = side.signum();
    let spot = |a: f64, v: f64| h.spot(a, v, 0.97, false).0;
    let chevron = [
        spot(side + 9.0 * s, -0.06),
        spot(side - 8.0 * s, 0.08),
        spot(side + 9.0 * s, 0.2),
    ];
    g.mark(Path::poly(&chevron, false), ink::INK, h.k(0.06).max(2.6));
}

/// A brow from its inner to its outer end, heights on the head.
pub fn brow(h: &Head, g: &mut Group, side: f64, inner: f64, outer: f64) {
    let s = side.signum();
    let mid = (inner + outer) / 2.0 - 0.03;
    let line = h.curve(&[
        (side - 10.0 * s, inner),
        (side, mid),
        (side + 10.0 * s, outer),
    ]);
    g.mark(line, ink::HAIR_DARK, h.k(0.055).max(2.6));
}

/// A drop of water with its own dark line, so that it is seen on skin in grey.
pub fn tear(g: &mut Group, at: P, r: f64, deg: f64) {
    let d = "M0-1.7C.5-.8 1-.3 1 .25C1 .8.55 1.2 0 1.2C-.55 1.2-1 .8-1 .25C-1-.3-.5-.8 0-1.7Z";
    let path = Path::read(d).put(at, r, deg, false);
    g.mark(path.clone(), ink::INK, 7.0);
    g.dot(path, ink::WATER_LIGHT);
}
