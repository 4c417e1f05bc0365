//! Settings and things the people use: sand, water, mat, chair, bottle and so on.

use super::geom::{P, Path, Seg, p};
use super::paint::{Group, SEAM, Scene, ink};

/// Dotted sand: a flat patch from `x0` to `x1`, its middle at `y`.
pub fn sand(s: &mut Scene, x0: f64, x1: f64, y: f64, half: f64) {
    s.group(0.0, |g| {
        let mid = (x0 + x1) / 2.0;
        g.dot(
            Path::ellipse(p(mid, y), (x1 - x0) / 2.0, half, 0.0),
            ink::SAND,
        );
        let spots = [
            (-0.86, 0.1),
            (-0.66, 0.55),
            (-0.38, 0.8),
            (0.3, 0.78),
            (0.62, 0.6),
            (0.84, 0.05),
        ];
        for (u, v) in spots {
            grain(g, p(mid + u * (x1 - x0) / 2.0, y + v * half * 0.86));
        }
    });
}

/// One grain of the sand pattern.
pub fn grain(g: &mut Group, at: P) {
    g.dot(Path::circle(at, 2.2), ink::HAIR_FAIR);
}

/// The wave line all water shares, from `x0` to `x1` at height `y`.
pub fn wave(x0: f64, x1: f64, y: f64, amp: f64) -> Path {
    let n = ((x1 - x0) / 38.0).round().max(1.0);
    let w = (x1 - x0) / n;
    let mut s = vec![Seg::M(p(x0, y))];
    for i in 0..n as i32 {
        let x = x0 + w * f64::from(i);
        s.push(Seg::C(
            p(x + w * 0.2, y - amp),
            p(x + w * 0.36, y - amp),
            p(x + w * 0.5, y),
        ));
        s.push(Seg::C(
            p(x + w * 0.64, y + amp),
            p(x + w * 0.8, y + amp),
            p(x + w, y),
        ));
    }
    Path(s)
}

/// Water seen from the side: a band with the first wave line as its upper edge
/// and the second one white inside it.
pub fn water(s: &mut Scene, x0: f64, x1: f64, y: f64, deep: f64) {
    far_water(s, x0, x1, y, deep);
    s.group(0.0, |g| {
        g.mark(
            wave(x0 + 20.0, x1 - 20.0, y + deep * 0.5, 6.0),
            ink::WHITE,
            4.4,
        );
    });
}

/// The band alone, for water behind what floats in it.
pub fn far_water(s: &mut Scene, x0: f64, x1: f64, y: f64, deep: f64) {
    s.group(0.0, |g| {
        let top = wave(x0, x1, y, 7.0);
        let r = (deep * 0.5).min(22.0);
        let band = top.clone().then(
            Path(vec![
                Seg::M(p(x1, y + deep - r)),
                Seg::Q(p(x1, y + deep), p(x1 - r, y + deep)),
                Seg::L(p(x0 + r, y + deep)),
                Seg::Q(p(x0, y + deep), p(x0, y + deep - r)),
                Seg::Z,
            ]),
            true,
        );
        g.mark(top, ink::WHITE, SEAM * 2.0);
        g.dot(band, ink::WATER);
    });
}

/// A round mat on the ground.
pub fn mat(s: &mut Scene, at: P, rx: f64, ry: f64, colour: &'static str) {
    s.group(0.0, |g| {
        g.dot(Path::ellipse(at, rx, ry, 0.0), colour);
        g.mark(Path::ellipse(at, rx - 6.0, ry - 4.0, 0.0), ink::WHITE, SEAM);
    });
}

/// An hourglass standing at `at` (middle of its foot), `h` high.
pub fn hourglass(g: &mut Group, at: P, h: f64) {
    let u = |x: f64, y: f64| at + p(x * h, (y - 1.0) * h);
    let glass = "M-.24.1L.24.1C.26.34.06.42.06.5C.06.58.26.66.24.9L-.24.9\
                 C-.26.66-.06.58-.06.5C-.06.42-.26.34-.24.1Z";
    g.fill(Path::read(glass).map(|q| u(q.x, q.y)), ink::WHITE);
    let top = "M-.19.26L.19.26C.15.36.04.42.02.5L-.02.5C-.04.42-.15.36-.19.26Z";
    let low = "M-.24.88C-.2.74-.06.7 0 .66C.06.7.2.74.24.88Z";
    g.dot(Path::read(top).map(|q| u(q.x, q.y)), ink::SUN);
    g.dot(Path::read(low).map(|q| u(q.x, q.y)), ink::SUN);
    g.mark(
        Path::poly(&[u(0.0, 0.48), u(0.0, 0.7)], false),
        ink::SUN,
        3.0,
    );
    for y in [0.05, 0.95] {
        g.over(
            Path::block(u(0.0, y), h * 0.64, h * 0.12, h * 0.05, 0.0),
            ink::CORAL,
        );
    }
}

/// A cushion pressed in at its waist by the arms round it.
pub fn squeezed(at: P, w: f64, h: f64) -> Path {
    let d = "M-.42-.5C-.2-.56.2-.56.42-.5C.62-.44.42-.18.38 0C.42.2.64.46.44.52\
             C.2.56-.2.56-.44.52C-.64.46-.42.2-.38 0C-.42-.18-.62-.44-.42-.5Z";
    Path::read(d).map(|q| at + p(q.x * w, q.y * h))
}

/// A short spade: from the middle of its grip to the tip of its blade.
pub fn spade(g: &mut Group, grip: P, tip: P, k: f64) {
    let u = (tip - grip).unit();
    let l = (tip - grip).len();
    let n = u.left();
    let neck = grip + u * (l - 40.0 * k);
    g.bar(Path::poly(&[grip, neck], false), ink::CORAL, 9.0 * k);
    g.bar(
        Path::poly(&[grip + n * (12.0 * k), grip - n * (12.0 * k)], false),
        ink::CORAL,
        9.0 * k,
    );
    let d = "M-4-22L4-22C12-22 18-18 18-8L17 8C14 18 6 22 0 24C-6 22-14 18-17 8L-18-8C-18-18-12-22-4-22Z";
    let deg = u.deg() - 90.0;
    g.over(
        Path::read(d).put(tip - u * (22.0 * k), k, deg, false),
        ink::SUN,
    );
}

/// A drinking bottle: middle of its foot, direction toward the mouthpiece.
pub fn bottle(g: &mut Group, foot: P, deg: f64, len: f64) {
    let put = |d: &str| Path::read(d).put(foot, len, deg, false);
    g.fill(
        put("M.72-.09L.98-.07C1.02-.06 1.02.06.98.07L.72.09Z"),
        ink::CHARCOAL,
    );
    g.over(put("M.04-.2C.2-.22.5-.22.6-.2C.68-.18.72-.12.72-.08L.72.08C.72.12.68.18.6.2C.5.22.2.22.04.2C-.02.19-.02-.19.04-.2Z"), ink::SUN);
    g.band(put("M.52-.21L.52.21"), ink::WHITE, SEAM);
    g.dot(put("M.12-.21L.24-.215L.24.215L.12.21Z"), ink::CORAL);
}

/// A manual wheelchair seen from the side, drawn in two goes: the frame before
/// the person, the wheel after. `at` is the seat's rear corner, `dir` 1 faces
/// right.
#[derive(Clone, Copy, Debug)]
pub struct Wheelchair {
    /// Rear corner of the seat.
    pub at: P,
    /// Facing.
    pub dir: f64,
    /// Scale, 1 for a child at scale 1.
    pub k: f64,
}

impl Wheelchair {
    fn u(&self, x: f64, y: f64) -> P {
        self.at + p(x * self.dir, y) * self.k
    }
    /// Where the person's hip joint goes.
    pub fn hip(&self) -> P {
        self.u(9.0, -11.0)
    }
    /// Where the ankle goes.
    pub fn ankle(&self) -> P {
        self.u(51.0, 28.0)
    }
    /// Frame, back, small wheel.
    pub fn frame(&self, g: &mut Group) {
        let l = |pts: &[(f64, f64)]| {
            Path::smooth(
                &pts.iter().map(|q| self.u(q.0, q.1)).collect::<Vec<_>>(),
                false,
            )
        };
        let straight = |pts: &[(f64, f64)]| {
            Path::poly(
                &pts.iter().map(|q| self.u(q.0, q.1)).collect::<Vec<_>>(),
                false,
            )
        };
        g.bar(
            straight(&[(-16.0, -44.0), (-5.0, -44.0), (-3.0, 6.0)]),
            ink::GREY,
            5.0 * self.k,
        );
        g.bar(
            l(&[(38.0, 3.0), (43.0, 20.0), (46.0, 38.0), (60.0, 40.0)]),
            ink::GREY,
            5.0 * self.k,
        );
        g.bar(
            straight(&[(-2.0, 4.0), (40.0, 4.0)]),
            ink::NAVY,
            8.0 * self.k,
        );
        g.bar(
            straight(&[(-2.0, -32.0), (-2.0, 0.0)]),
            ink::NAVY,
            8.0 * self.k,
        );
        g.over(
            Path::circle(self.u(40.0, 40.0), 8.0 * self.k),
            ink::CHARCOAL,
        );
    }
    /// The large wheel.
    pub fn wheel(&self, g: &mut Group) {
        let c = self.u(6.0, 20.0);
        let r = 28.0 * self.k;
        let ring = Path::circle(c, r);
        g.bar(ring, ink::CHARCOAL, 6.0 * self.k);
        for i in 0..3 {
            let d = super::geom::polar(f64::from(i) * 60.0 + 15.0, r - 3.0);
            g.mark(Path::poly(&[c + d, c - d], false), ink::GREY, 2.6);
        }
        g.dot(Path::circle(c, 5.0 * self.k), ink::CHARCOAL);
    }
}

/// A walking frame seen from the side: height and place of its hand grip.
pub fn walker(g: &mut Group, grip: P, ground: f64, dir: f64) {
    let x = |v: f64| grip.x + v * dir;
    let line = |g: &mut Group, a: (f64, f64), b: (f64, f64)| {
        g.bar(
            Path::poly(&[p(x(a.0), a.1), p(x(b.0), b.1)], false),
            ink::GREY,
            5.0,
        );
    };
    let mid = ground - 34.0;
    line(g, (-12.0, mid), (24.0, mid));
    line(g, (-12.0, grip.y), (-14.0, ground - 3.0));
    line(g, (22.0, grip.y), (26.0, ground - 10.0));
    line(g, (-12.0, grip.y), (22.0, grip.y));
    g.over(Path::circle(p(x(26.0), ground - 8.0), 8.0), ink::CHARCOAL);
    g.bar(
        Path::poly(&[p(x(-14.0), grip.y), p(x(6.0), grip.y)], false),
        ink::SUN,
        7.0,
    );
}
