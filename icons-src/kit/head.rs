//! Heads: one ball-like head seen from any side, with face, hair and aids.
//!
//! Features sit at an angle round the head (`az`, 0 at the nose, 90 at the
//! person's left ear) and a height (`v`, -1 crown, 1 chin); turning the head
//! moves all of them together, so front, three-quarter, profile and back views
//! come from the same description.

use super::faces;
use super::geom::{P, Path, p};
use super::hair::{self, Hair};
use super::paint::{Group, ink};

/// Skin colour with the colour of the marks drawn on it.
#[derive(Clone, Copy, Debug)]
pub struct Skin(pub &'static str, pub &'static str);

/// The one replaceable skin.
pub const SKIN: Skin = Skin("#D99A6C", "#8F5230");
/// A second person, dark.
pub const SKIN_DARK: Skin = Skin("#8D5A3B", "#4A2A18");
/// A third person, light.
pub const SKIN_LIGHT: Skin = Skin("#F0C7A2", "#A86B45");

/// What the mouth does.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Mouth {
    /// A friendly curve.
    Smile,
    /// Closed and easy.
    Calm,
    /// A straight line.
    Flat,
    /// Wide open, singing.
    Sing,
    /// Small round, blowing out.
    Blow,
    /// Corners down.
    Sad,
    /// Wide open, laughing.
    Grin,
    /// Corners far down, large enough for a portrait.
    Frown,
    /// Open with the corners down: pain, fright.
    Wail,
    /// Teeth that chatter.
    Chatter,
    /// One corner up, undecided.
    Skew,
    /// Corners down and the tongue out.
    Yuck,
    /// None (hidden, or a back view).
    None,
}

/// What the eyes do.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Eyes {
    /// Dots.
    Open,
    /// Closed, resting.
    Shut,
    /// Closed with joy.
    Glad,
    /// Wide open with white round them.
    Wide,
    /// Pressed shut.
    Tight,
}

/// Things worn on the head.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Wear {
    /// Nothing.
    Bare,
    /// Glasses.
    Glasses,
    /// Ear defenders of this colour.
    Muffs(&'static str),
}

/// A head in one view.
#[derive(Clone, Copy, Debug)]
pub struct Head {
    /// Middle.
    pub at: P,
    /// Height from chin to crown without hair.
    pub size: f64,
    /// Turn: 0 to the viewer, 90 to the right, -90 to the left, 180 away.
    pub yaw: f64,
    /// Nod: positive looks down.
    pub pitch: f64,
    /// Tilt: clockwise.
    pub roll: f64,
    /// Mouth.
    pub mouth: Mouth,
    /// Eyes.
    pub eyes: Eyes,
    /// Skin.
    pub skin: Skin,
    /// Hair.
    pub hair: Hair,
    /// Aids.
    pub wear: Wear,
    /// Brows raised in the middle (asking, worried).
    pub worry: bool,
    /// Round red cheeks.
    pub cheeks: bool,
}

/// The face outline in units of half width and half height.
const FACE: &str = "M0-1C.6-1 1.02-.62 1.02-.06C1.02.56.6 1 0 1C-.6 1-1.02.56-1.02-.06\
                    C-1.02-.62-.6-1 0-1Z";

impl Head {
    /// Half width.
    pub fn rx(&self) -> f64 {
        self.size * 0.48
    }
    /// Half height.
    pub fn ry(&self) -> f64 {
        self.size * 0.5
    }
    /// Where a feature is seen, and how far it is toward the viewer (-1 to 1).
    /// `out` is the distance from the middle, 1 on the skin; with `tube` the
    /// head does not narrow below the middle (hair hangs straight).
    pub fn spot(&self, az: f64, v: f64, out: f64, tube: bool) -> (P, f64) {
        let vv = if tube { v.min(0.0) } else { v };
        let r = (1.0 - vv.abs().min(1.0).powf(2.3)).max(0.0).powf(1.0 / 2.3) * out;
        let a = (az + self.yaw).to_radians();
        let (x, z) = (r * a.sin(), r * a.cos());
        let (s, c) = self.pitch.to_radians().sin_cos();
        let y = v * if v.abs() < 1.0 { 1.0 } else { out.min(1.0) };
        let (y2, z2) = (y * c + z * s, z * c - y * s);
        (self.place(p(x, y2)), z2)
    }
    /// From units of the head to the canvas.
    pub fn place(&self, q: P) -> P {
        self.at + p(q.x * self.rx(), q.y * self.ry()).rot(self.roll)
    }
    /// Size of a detail given as a share of the head height.
    pub fn k(&self, share: f64) -> f64 {
        self.size * share
    }
    /// Sampled curve of features at height `v` between two angles.
    pub fn curve(&self, pts: &[(f64, f64)]) -> Path {
        let q: Vec<P> = pts
            .iter()
            .map(|&(az, v)| self.spot(az, v, 1.0, false).0)
            .collect();
        Path::smooth(&q, false)
    }
    /// What lies behind the head (and behind the body: long hair).
    pub fn draw_behind(&self, g: &mut Group) {
        hair::behind(self, g);
    }
    /// Head, face, hair, aids.
    pub fn draw(&self, g: &mut Group) {
        let ears = !self.hair.hides_ears() && !matches!(self.wear, Wear::Muffs(_));
        if ears {
            self.ears(g, false);
        }
        hair::under_chin(self, g);
        let n = g.depth();
        let face = Path::read(FACE).map(|q| self.place(q));
        let edge = if self.hair.hides_ears() {
            self.chin()
        } else {
            face.clone()
        };
        g.part(face, self.skin.0, edge, n);
        if (50.0..130.0).contains(&self.yaw.abs()) {
            let nose = self.spot(0.0, 0.26, 0.98, false);
            g.fill(
                Path::ellipse(nose.0, self.k(0.085), self.k(0.07), self.roll),
                self.skin.0,
            );
        }
        if self.yaw.abs() < 130.0 {
            self.face(g);
        }
        hair::front(self, g);
        if ears {
            self.ears(g, true);
        }
        self.aids(g);
    }
    fn chin(&self) -> Path {
        let mut pts = Vec::new();
        for i in 0..=6 {
            let (s, c) = (30.0 + f64::from(i) * 20.0_f64).to_radians().sin_cos();
            pts.push(self.place(p(c * 0.98, s)));
        }
        Path::smooth(&pts, false)
    }
    fn ears(&self, g: &mut Group, front: bool) {
        for side in [-88.0, 88.0] {
            let (at, z) = self.spot(side, 0.12, 1.0, false);
            let near = z > 0.25;
            if near == front {
                let e = Path::ellipse(at, self.k(0.085), self.k(0.12), self.roll);
                if near {
                    g.over(e, self.skin.0);
                    let m = Path::smooth(
                        &[
                            at + p(self.k(0.03), -self.k(0.045)).rot(self.roll),
                            at + p(-self.k(0.02), 0.0).rot(self.roll),
                            at + p(self.k(0.02), self.k(0.05)).rot(self.roll),
                        ],
                        false,
                    );
                    g.mark(m, self.skin.1, self.k(0.05).max(2.4));
                } else {
                    g.fill(e, self.skin.0);
                }
            }
        }
    }
    fn face(&self, g: &mut Group) {
        for side in [-40.0, 40.0] {
            let (at, z) = self.spot(side, 0.36, 0.98, false);
            if z > 0.3 && self.cheeks {
                let w = self.k(0.085) * (0.4 + 0.6 * z);
                g.dot(Path::ellipse(at, w, self.k(0.06), self.roll), ink::BLUSH);
            }
        }
        let eye = 25.0 + (self.yaw.abs() - 50.0).clamp(0.0, 40.0) * 0.3;
        for side in [-eye, eye] {
            self.eye(g, side);
        }
        self.nose(g);
        self.lips(g);
    }
    fn eye(&self, g: &mut Group, side: f64) {
        let (at, z) = self.spot(side, 0.08, 0.95, false);
        let seen = (side + self.yaw).abs();
        if z < 0.3 || seen > 68.0 {
            return;
        }
        let lw = self.k(0.062).max(2.4);
        if matches!(self.eyes, Eyes::Wide | Eyes::Tight) {
            faces::eye(self, g, side);
        } else if self.eyes != Eyes::Open {
            let mid = if self.eyes == Eyes::Shut { 0.14 } else { -0.01 };
            let near = mid + (0.08 - mid) * 0.22;
            let a = [
                (side - 8.5, 0.08),
                (side - 4.5, near),
                (side, mid),
                (side + 4.5, near),
                (side + 8.5, 0.08),
            ];
            g.mark(self.curve(&a), ink::INK, lw);
        } else {
            let w = self.k(0.058) * (0.55 + 0.45 * z);
            g.dot(Path::ellipse(at, w, self.k(0.074), self.roll), ink::INK);
        }
        let s = side.signum();
        let brow = if self.worry {
            [
                (side - 9.0 * s, -0.3),
                (side, -0.25),
                (side + 9.0 * s, -0.13),
            ]
        } else {
            [
                (side - 8.0 * s, -0.17),
                (side, -0.22),
                (side + 9.0 * s, -0.15),
            ]
        };
        if self.worry || self.hair.shows_brows() {
            g.mark(
                self.curve(&brow),
                self.hair.colour_brow(),
                self.k(0.05).max(2.4),
            );
        }
    }
    fn nose(&self, g: &mut Group) {
        if self.yaw.abs() < 55.0 {
            let w = 6.5;
            let a = [
                (-w, 0.25),
                (-w * 0.5, 0.295),
                (0.0, 0.305),
                (w * 0.5, 0.295),
                (w, 0.25),
            ];
            g.mark(self.curve(&a), self.skin.1, self.k(0.055).max(2.4));
        }
    }
    fn lips(&self, g: &mut Group) {
        let lw = self.k(0.068).max(2.8);
        // Turned away, the mouth slips back so that it stays inside the face.
        let half: f64 = 17.0;
        let mid = -(self.yaw.abs() + half - 66.0).max(0.0) * self.yaw.signum();
        let arc = |a: f64, v0: f64, v1: f64| {
            [
                (mid - a, v0),
                (mid - a * 0.5, v1),
                (mid, v1 + (v1 - v0) * 0.28),
                (mid + a * 0.5, v1),
                (mid + a, v0),
            ]
        };
        match self.mouth {
            Mouth::Smile => g.mark(self.curve(&arc(half, 0.5, 0.58)), ink::INK, lw),
            Mouth::Calm => g.mark(self.curve(&arc(half * 0.75, 0.535, 0.585)), ink::INK, lw),
            Mouth::Flat => g.mark(self.curve(&arc(half * 0.7, 0.56, 0.56)), ink::INK, lw),
            Mouth::Sad => g.mark(self.curve(&arc(half * 0.8, 0.6, 0.53)), ink::INK, lw),
            Mouth::Sing => {
                let (at, z) = self.spot(mid, 0.56, 0.98, false);
                let w = self.k(0.1) * (0.5 + 0.5 * z);
                g.dot(Path::ellipse(at, w, self.k(0.105), self.roll), ink::INK);
                let t = self
                    .place((at - self.at).rot(-self.roll).over(self.rx(), self.ry()) + p(0.0, 0.1));
                g.dot(
                    Path::ellipse(t, w * 0.62, self.k(0.042), self.roll),
                    ink::CORAL,
                );
            }
            Mouth::Blow => {
                let (at, _) = self.spot(mid * 0.55, 0.56, 0.98, false);
                g.dot(Path::circle(at, self.k(0.05)), ink::INK);
            }
            Mouth::None => {}
            strong => faces::mouth(self, g, strong, mid),
        }
    }
    fn aids(&self, g: &mut Group) {
        match self.wear {
            Wear::Bare => {}
            Wear::Glasses => {
                let lw = self.k(0.055).max(2.4);
                for side in [-25.0, 25.0] {
                    let (at, z) = self.spot(side, 0.09, 1.0, false);
                    if z > 0.25 {
                        let w = self.k(0.125) * (0.35 + 0.65 * z);
                        g.mark(Path::ellipse(at, w, self.k(0.125), self.roll), ink::INK, lw);
                    }
                }
                g.mark(
                    self.curve(&[(-11.0, 0.06), (0.0, 0.03), (11.0, 0.06)]),
                    ink::INK,
                    lw,
                );
            }
            Wear::Muffs(colour) => self.muffs(g, colour),
        }
    }
    fn muffs(&self, g: &mut Group, colour: &'static str) {
        let mut band = Vec::new();
        for i in -6..=6 {
            let t = f64::from(i) * 15.0;
            let (s, c) = t.to_radians().sin_cos();
            let spread = (self.yaw.to_radians().cos() * 1.0).abs().max(0.06);
            let lift = if self.hair.tall() { 1.34 } else { 1.2 };
            band.push(self.place(p(s * 1.2 * spread, 0.08 - c * lift)));
        }
        g.bar(Path::smooth(&band, false), ink::CHARCOAL, self.k(0.1));
        for side in [-90.0, 90.0] {
            let (at, z) = self.spot(side, 0.12, 1.12, false);
            if z < -0.35 {
                continue;
            }
            let flat = 0.15 + 0.08 * z.max(0.0);
            g.over(
                Path::ellipse(at, self.k(flat), self.k(0.235), self.roll),
                colour,
            );
            if z > 0.5 {
                g.mark(
                    Path::ellipse(at, self.k(0.1), self.k(0.12), 0.0),
                    ink::WHITE,
                    2.6,
                );
            }
        }
    }
}

impl P {
    /// Divided by separate lengths across and down.
    pub fn over(self, w: f64, h: f64) -> P {
        p(self.x / w, self.y / h)
    }
}
