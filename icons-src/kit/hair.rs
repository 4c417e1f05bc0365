//! Hair: a cap above a hairline that runs right round the head, plus what
//! hangs from it. One description serves every view.

use super::geom::{P, Path, p};
use super::head::Head;
use super::limb::Limb;
use super::paint::{Group, ink};

/// The ways hair is worn in the set.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Style {
    /// Short, parted at the side.
    Crop,
    /// Very short.
    Buzz,
    /// To the chin with a fringe.
    Bob,
    /// Round and curly.
    Curly,
    /// Gathered on top.
    Bun,
    /// Two round bunches.
    Puffs,
    /// One tail at the back.
    Tail,
    /// Two plaits.
    Plaits,
    /// Below the shoulders.
    Long,
    /// A head scarf, no hair seen.
    Scarf,
}

/// Style and colour.
#[derive(Clone, Copy, Debug)]
pub struct Hair(pub Style, pub &'static str);

impl Hair {
    /// Covers the ears.
    pub fn hides_ears(self) -> bool {
        matches!(
            self.0,
            Style::Bob | Style::Long | Style::Scarf | Style::Curly
        )
    }
    /// Hangs straight down instead of following the head.
    fn hangs(self) -> bool {
        matches!(self.0, Style::Bob | Style::Long | Style::Scarf)
    }
    /// Leaves the forehead free enough for brows.
    pub fn shows_brows(self) -> bool {
        matches!(
            self.0,
            Style::Buzz | Style::Bun | Style::Puffs | Style::Tail | Style::Plaits
        )
    }
    /// Colour of the brows.
    pub fn colour_brow(self) -> &'static str {
        if self.0 == Style::Scarf {
            ink::HAIR_DARK
        } else {
            self.1
        }
    }
    /// Stands high above the crown.
    pub fn tall(self) -> bool {
        self.0 == Style::Curly
    }
    /// How far it stands off the head, as a share.
    fn volume(self) -> f64 {
        match self.0 {
            Style::Buzz => 0.04,
            Style::Curly => 0.24,
            Style::Bob | Style::Long | Style::Scarf => 0.13,
            _ => 0.08,
        }
    }
    /// Height of the hairline at an angle round the head.
    fn line(self, az: f64) -> f64 {
        let a = az.abs();
        let ramp = |pts: &[(f64, f64)]| {
            let mut v = pts[0].1;
            for w in pts.windows(2) {
                let ((a0, v0), (a1, v1)) = (w[0], w[1]);
                if a >= a0 {
                    let t = ((a - a0) / (a1 - a0)).clamp(0.0, 1.0);
                    v = v0 + (v1 - v0) * (t * t * (3.0 - 2.0 * t));
                }
            }
            v
        };
        match self.0 {
            Style::Crop => {
                let side = 0.16 * (az * 2.2 + 30.0).to_radians().sin() * (1.0 - a / 180.0);
                ramp(&[
                    (0.0, -0.42),
                    (48.0, -0.4),
                    (72.0, 0.02),
                    (100.0, 0.1),
                    (180.0, 0.6),
                ]) + side
            }
            Style::Buzz => ramp(&[
                (0.0, -0.5),
                (52.0, -0.48),
                (70.0, -0.08),
                (100.0, 0.0),
                (180.0, 0.5),
            ]),
            Style::Bob => ramp(&[(0.0, -0.3), (50.0, -0.28), (74.0, 0.7), (180.0, 0.86)]),
            Style::Long => {
                let part = 0.2 * (az + 10.0).to_radians().cos();
                ramp(&[(0.0, -0.42), (44.0, -0.22), (74.0, 0.9), (180.0, 1.0)]) - part * 0.3
            }
            Style::Curly => ramp(&[(0.0, -0.4), (50.0, -0.3), (72.0, 0.22), (180.0, 0.6)]),
            Style::Scarf => ramp(&[
                (0.0, -0.56),
                (44.0, -0.4),
                (66.0, 0.2),
                (74.0, 0.8),
                (180.0, 1.0),
            ]),
            Style::Puffs => ramp(&[(0.0, -0.56), (50.0, -0.42), (80.0, -0.02), (180.0, 0.5)]),
            _ => ramp(&[(0.0, -0.6), (50.0, -0.42), (78.0, 0.0), (180.0, 0.55)]),
        }
    }
}

/// The cap in this view.
fn cap(h: &Head) -> (Path, Path) {
    let hair = h.hair;
    let mut seen: Vec<(f64, P)> = Vec::new();
    for i in -45..45 {
        // Walk from the left edge of the view to its right edge.
        let view = f64::from(i) * 2.0;
        let az = (view - h.yaw + 540.0).rem_euclid(360.0) - 180.0;
        let (q, z) = h.spot(az, hair.line(az), 1.01, hair.hangs());
        if z > -0.02 && i % 7 == 0 {
            seen.push((view, q));
        }
    }
    let vol = hair.volume();
    let edge = |deg: f64| {
        let (s, c) = deg.to_radians().sin_cos();
        let pw = |v: f64| v.signum() * v.abs().powf(2.0 / 2.25);
        let top = if s < 0.0 { 1.0 + vol } else { 1.0 };
        h.place(p(pw(c) * (1.03 + vol * 0.8), pw(s) * top))
    };
    let angle = |q: P| {
        let l = (q - h.at).rot(-h.roll).over(h.rx(), h.ry());
        l.deg()
    };
    if seen.len() < 2 {
        return (Path::circle(h.at, h.rx()), Path::default());
    }
    let a_right = angle(seen[seen.len() - 1].1);
    let mut a_left = angle(seen[0].1);
    while a_left > a_right - 60.0 {
        a_left -= 360.0;
    }
    let steps = ((a_right - a_left) / 24.0).ceil().max(3.0) as i32;
    let over: Vec<P> = (0..=steps)
        .map(|i| edge(a_right + (a_left - a_right) * f64::from(i) / f64::from(steps)))
        .collect();
    let line: Vec<P> = seen.iter().map(|s| s.1).collect();
    let lower = Path::smooth(&line, false);
    // The seam follows the hairline only where it meets the face.
    let shown: Vec<P> = if hair.hides_ears() && hair.0 != Style::Curly {
        let near = |v: f64| ((v - h.yaw + 540.0).rem_euclid(360.0) - 180.0).abs() < 80.0;
        seen.iter().filter(|s| near(s.0)).map(|s| s.1).collect()
    } else {
        line
    };
    let edge = if shown.len() > 1 {
        Path::smooth(&shown, false)
    } else {
        Path::default()
    };
    let top = if hair.0 == Style::Curly {
        scallop(&over, h.k(0.11))
    } else {
        Path::smooth(&over, false)
    };
    (lower.then(top, true).close(), edge)
}

/// The same run of points as round curls.
fn scallop(pts: &[P], r: f64) -> Path {
    let total: f64 = pts.windows(2).map(|w| (w[1] - w[0]).len()).sum();
    let n = (total / (r * 1.9)).round().max(2.0) as usize;
    let at = |s: f64| {
        let mut left = s;
        for w in pts.windows(2) {
            let l = (w[1] - w[0]).len();
            if left <= l {
                return w[0].to(w[1], left / l);
            }
            left -= l;
        }
        pts[pts.len() - 1]
    };
    let mut path = Path(vec![super::geom::Seg::M(pts[0])]);
    for i in 0..n {
        let (a, b) = (
            at(total * i as f64 / n as f64),
            at(total * (i + 1) as f64 / n as f64),
        );
        let out = (b - a).left() * -1.0;
        let bulge = if i % 2 == 0 { 0.5 } else { 0.42 };
        path.0.push(super::geom::Seg::C(
            a + out * bulge + (b - a) * 0.05,
            b + out * bulge - (b - a) * 0.05,
            b,
        ));
    }
    path
}

/// A round bunch sitting off the head.
fn bunch(h: &Head, az: f64, v: f64, out: f64, r: f64) -> (Path, f64) {
    let (q, z) = h.spot(az, v, out, false);
    (Path::circle(q, h.k(r)), z)
}

/// The loose parts of a style with their depth.
fn extras(h: &Head) -> Vec<(Path, f64)> {
    let tail = |az: f64, v: f64, to: P, w: f64| {
        let (q, z) = h.spot(az, v, 1.0, false);
        let end = q + p(to.x * h.rx(), to.y * h.ry()).rot(h.roll);
        let bones = [h.k(0.3), h.k(0.3)];
        let limb = Limb::reach(q, end, bones, [h.k(w), h.k(w * 1.2), h.k(w * 0.55)], 0.25);
        (limb.outline(), z)
    };
    match h.hair.0 {
        Style::Bun => {
            let q = h.place(p(-0.1 * (h.yaw.to_radians().sin()) * 4.0, -1.2));
            vec![(Path::circle(q, h.k(0.19)), -0.1)]
        }
        Style::Puffs => vec![
            bunch(h, -108.0, -0.62, 1.5, 0.24),
            bunch(h, 108.0, -0.62, 1.5, 0.24),
        ],
        Style::Tail => {
            let side = (180.0 + h.yaw).to_radians().sin();
            vec![tail(180.0, -0.35, p(side * 0.85, 1.0), 0.13)]
        }
        Style::Plaits => [-100.0, 100.0]
            .iter()
            .map(|&az| {
                let s = (az + h.yaw).to_radians().sin();
                tail(az, 0.35, p(0.22 * s, 1.05), 0.1)
            })
            .collect(),
        _ => vec![],
    }
}

/// What hangs or sits behind the head.
pub fn behind(h: &Head, g: &mut Group) {
    let c = h.hair.1;
    for (path, z) in extras(h) {
        if z < 0.05 {
            g.fill(path, c);
        }
    }
    let s = h.yaw.to_radians().sin();
    let back = |d: &str| Path::read(d).map(|q| h.place(p(q.x - s * 0.12, q.y)));
    match h.hair.0 {
        Style::Bob if h.yaw.abs() < 120.0 => {
            let d = "M-1.1-.2C-1.2.4-1.16.86-1 .98C-.5 1.06.5 1.06 1 .98C1.16.86 1.2.4 1.1-.2Z";
            g.fill(back(d), c);
        }
        Style::Long if h.yaw.abs() < 120.0 => {
            let d = "M-1.1-.2C-1.2.6-1.22 1.5-1.16 1.95C-.6 2.12.6 2.12 1.16 1.95C1.22 1.5 1.2.6 1.1-.2Z";
            g.fill(back(d), c);
        }
        Style::Scarf => {
            let d = "M-1.1 0C-1.16.7-1.2 1.1-1.5 1.5C-.6 1.8.6 1.8 1.5 1.5C1.2 1.1 1.16.7 1.1 0Z";
            g.fill(back(d), c);
        }
        _ => {}
    }
}

/// What covers the neck in front (a scarf).
pub fn under_chin(h: &Head, g: &mut Group) {
    if h.hair.0 == Style::Scarf && h.yaw.abs() < 130.0 {
        let s = h.yaw.to_radians().sin() * 0.2;
        let d = "M-1 .2C-1 .9-.95 1.2-1.05 1.45C-.5 1.8.5 1.8 1.05 1.45C.95 1.2 1 .9 1 .2Z";
        g.over(
            Path::read(d).map(|q| h.place(p(q.x * 0.92 + s, q.y))),
            h.hair.1,
        );
    }
}

/// The hair seen over the head.
pub fn front(h: &Head, g: &mut Group) {
    let c = h.hair.1;
    if h.hair.0 == Style::Long && h.yaw.abs() > 120.0 {
        let d =
            "M-1.1-.2C-1.2.6-1.22 1.5-1.16 1.95C-.6 2.12.6 2.12 1.16 1.95C1.22 1.5 1.2.6 1.1-.2Z";
        g.over(Path::read(d).map(|q| h.place(q)), c);
    }
    let (path, edge) = cap(h);
    let n = g.depth();
    g.part(path, c, edge, n);
    for (path, z) in extras(h) {
        if z >= 0.05 {
            g.over(path, c);
        }
    }
}
