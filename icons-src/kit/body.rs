//! Figures: a build (child or adult), a dress and a pose become layers of a
//! group. Limbs are aimed: the pose says where hands and feet are, the kit
//! bends elbows and knees.

use super::geom::{Limb, P, Path, p, polar};
use super::hair::{Hair, Style};
use super::hands::{self, Hand, Hold};
use super::head::{Eyes, Head, Mouth, SKIN, Skin, Wear};
use super::paint::{Group, SEAM, ink};

/// Lengths of a body at scale 1 (canvas units).
#[derive(Clone, Copy, Debug)]
pub struct Build {
    /// Head height without hair.
    pub head: f64,
    /// Visible neck.
    pub neck: f64,
    /// Hip joint to base of neck.
    pub torso: f64,
    /// Half widths: shoulders, waist, hips, depth seen from the side.
    pub wide: [f64; 4],
    /// Upper and lower arm.
    pub arm: [f64; 2],
    /// Half thickness of shoulder, elbow, wrist.
    pub arm_w: [f64; 3],
    /// Thigh and shin.
    pub leg: [f64; 2],
    /// Half thickness of thigh, knee, ankle.
    pub leg_w: [f64; 3],
    /// Length of foot and hand.
    pub ends: [f64; 2],
}

/// About 3.9 heads tall.
pub const CHILD: Build = Build {
    head: 50.0,
    neck: 3.0,
    torso: 57.0,
    wide: [23.0, 19.0, 20.0, 16.0],
    arm: [29.0, 27.0],
    arm_w: [8.0, 7.0, 6.0],
    leg: [38.0, 36.0],
    leg_w: [11.0, 9.0, 7.0],
    ends: [22.0, 18.5],
};

/// About 4.8 heads tall.
pub const ADULT: Build = Build {
    head: 52.0,
    neck: 6.0,
    torso: 76.0,
    wide: [31.0, 25.0, 25.0, 20.0],
    arm: [41.0, 38.0],
    arm_w: [10.0, 8.6, 7.0],
    leg: [53.0, 51.0],
    leg_w: [14.0, 11.0, 8.4],
    ends: [28.0, 22.5],
};

/// What covers hips and legs.
#[derive(Clone, Copy, Debug)]
pub enum Bottom {
    /// Shorts down to this share of the leg.
    Legs(&'static str, f64),
    /// Skirt to this share of the leg.
    Skirt(&'static str, f64),
}

/// Before or behind the body.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Z {
    /// Behind the trunk.
    Behind,
    /// In front of the trunk, behind the head.
    Front,
    /// In front of the head.
    Over,
    /// Not there.
    Gone,
}

/// An arm: where the wrist is and how the hand looks.
#[derive(Clone, Copy, Debug)]
pub struct Arm {
    /// The wrist.
    pub to: P,
    /// Side of the elbow, +1 or -1 (smaller values only choose the side).
    pub bend: f64,
    /// Depth.
    pub z: Z,
    /// Hand.
    pub hold: Hold,
    /// Direction of the hand; follows the forearm when absent.
    pub aim: Option<f64>,
    /// Thumb side.
    pub flip: bool,
}

/// A leg: where the ankle is and where the toes point.
#[derive(Clone, Copy, Debug)]
pub struct Leg {
    /// The ankle.
    pub to: P,
    /// Side of the knee.
    pub bend: f64,
    /// Depth.
    pub z: Z,
    /// Toes: -1 left, 1 right, small values toward the viewer.
    pub face: f64,
    /// Turn of the foot.
    pub tilt: f64,
    /// The knee, where foreshortening puts it; otherwise it is bent by itself.
    pub knee: Option<P>,
}

/// A person in a pose. Arm 0 and leg 0 are the person's right ones, on the
/// left of the picture when the person faces the viewer.
#[derive(Clone, Copy, Debug)]
pub struct Figure {
    /// Proportions.
    pub build: Build,
    /// Scale.
    pub k: f64,
    /// Skin.
    pub skin: Skin,
    /// Hair.
    pub hair: Hair,
    /// Colour of the top and how much of the arm its sleeve covers.
    pub top: (&'static str, f64),
    /// Shorts, trousers or skirt.
    pub bottom: Bottom,
    /// Shoes; bare feet when absent.
    pub shoes: Option<&'static str>,
    /// Middle between the hip joints.
    pub hip: P,
    /// Lean of the trunk, clockwise from upright.
    pub lean: f64,
    /// Turn of the trunk: 0 to the viewer, 90 to the right.
    pub turn: f64,
    /// Turn, nod and tilt of the head.
    pub look: [f64; 3],
    /// Mouth.
    pub mouth: Mouth,
    /// Eyes.
    pub eyes: Eyes,
    /// Brows raised.
    pub worry: bool,
    /// Aids on the head.
    pub wear: Wear,
    /// The arms.
    pub arms: [Arm; 2],
    /// The legs.
    pub legs: [Leg; 2],
}

/// An arm that reaches `to`.
pub fn arm(x: f64, y: f64, bend: f64, z: Z, hold: Hold) -> Arm {
    Arm {
        to: p(x, y),
        bend,
        z,
        hold,
        aim: None,
        flip: false,
    }
}
/// A leg whose ankle is at `to`.
pub fn leg(x: f64, y: f64, bend: f64, face: f64) -> Leg {
    Leg {
        to: p(x, y),
        bend,
        z: Z::Front,
        face,
        tilt: 0.0,
        knee: None,
    }
}

impl Arm {
    /// The hand points in this direction.
    pub fn aim(mut self, deg: f64) -> Arm {
        self.aim = Some(deg);
        self
    }
    /// The thumb is on the other side.
    pub fn flip(mut self) -> Arm {
        self.flip = true;
        self
    }
}
impl Leg {
    /// The knee is here.
    pub fn knee(mut self, x: f64, y: f64) -> Leg {
        self.knee = Some(p(x, y));
        self
    }
    /// The foot is turned by `deg`.
    pub fn tilt(mut self, deg: f64) -> Leg {
        self.tilt = deg;
        self
    }
    /// The leg is drawn at this depth.
    pub fn z(mut self, z: Z) -> Leg {
        self.z = z;
        self
    }
}

impl Figure {
    /// A standing child; the main child of a picture.
    pub fn child(k: f64, hip: P) -> Figure {
        Figure {
            build: CHILD,
            k,
            skin: SKIN,
            hair: Hair(Style::Crop, ink::HAIR_DARK),
            top: (ink::CORAL, 0.36),
            bottom: Bottom::Legs(ink::NAVY, 0.5),
            shoes: None,
            hip,
            lean: 0.0,
            turn: 0.0,
            look: [0.0, 0.0, 0.0],
            mouth: Mouth::Smile,
            eyes: Eyes::Open,
            worry: false,
            wear: Wear::Bare,
            arms: [arm(0.0, 0.0, 1.0, Z::Front, Hold::Rest); 2],
            legs: [leg(0.0, 0.0, 1.0, 1.0); 2],
        }
        .stand()
    }
    /// A standing adult.
    pub fn adult(k: f64, hip: P) -> Figure {
        Figure {
            build: ADULT,
            top: (ink::TEAL, 0.4),
            bottom: Bottom::Legs(ink::CHARCOAL, 0.97),
            shoes: Some(ink::WHITE),
            hair: Hair(Style::Bob, ink::HAIR_BROWN),
            ..Figure::child(k, hip)
        }
        .stand()
    }
    /// Arms hanging, legs straight, for the present build, hip and turn.
    pub fn stand(mut self) -> Figure {
        let b = self.build;
        let k = self.k;
        let c = self.turn.to_radians().cos();
        for i in 0..2 {
            let s = if i == 0 { -1.0 } else { 1.0 };
            let sh = self.shoulder(i);
            let reach = (b.arm[0] + b.arm[1]) * k * 0.97;
            let out = polar(90.0 - s * 14.0 * c, reach);
            let near = if self.turn.abs() < 20.0 || (self.turn > 0.0) == (i == 0) {
                Z::Front
            } else {
                Z::Behind
            };
            self.arms[i] = Arm {
                flip: s * c > 0.0,
                ..arm(0.0, 0.0, -s, near, Hold::Rest)
            };
            self.arms[i].to = sh + out;
            let h = self.hip_joint(i);
            let down = (b.leg[0] + b.leg[1]) * k * 0.99;
            let face = if c.abs() > 0.6 {
                s * 0.7 * c.signum()
            } else {
                self.turn.signum()
            };
            let bend = if c.abs() > 0.6 {
                -s * c.signum()
            } else {
                -self.turn.signum()
            };
            self.legs[i] = leg(h.x + s * c * 4.5 * k, h.y + down, bend, face);
        }
        self
    }
    fn up(&self) -> P {
        polar(self.lean - 90.0, 1.0)
    }
    fn across(&self) -> P {
        polar(self.lean, 1.0)
    }
    fn half(&self, i: usize) -> f64 {
        let (s, c) = self.turn.to_radians().sin_cos();
        let depth = self.build.wide[3] * [1.0, 0.95, 1.1][i];
        (self.build.wide[i] * c).hypot(depth * s) * self.k
    }
    /// Base of the neck.
    pub fn chest(&self) -> P {
        self.hip + self.up() * (self.build.torso * self.k)
    }
    /// A shoulder joint.
    pub fn shoulder(&self, i: usize) -> P {
        let s = if i == 0 { -1.0 } else { 1.0 };
        let inset = (self.build.wide[0] - self.build.arm_w[0] * 0.9) * self.k;
        let c = self.turn.to_radians().cos();
        self.chest() - self.up() * (self.build.arm_w[0] * 1.15 * self.k)
            + self.across() * (s * inset * c)
    }
    /// A hip joint.
    pub fn hip_joint(&self, i: usize) -> P {
        let s = if i == 0 { -1.0 } else { 1.0 };
        let c = self.turn.to_radians().cos();
        let half = (self.build.wide[2] - self.build.leg_w[0] * 0.95) * self.k;
        self.hip + self.across() * (s * half * c)
    }
    /// The head in this pose.
    pub fn head(&self) -> Head {
        let b = &self.build;
        let size = b.head * self.k;
        let lying = self.lean.abs() > 60.0;
        let tilt = if lying {
            self.lean
        } else {
            self.lean * 0.7 + self.look[2] * 0.5
        };
        let dir = polar(tilt - 90.0, 1.0);
        Head {
            at: self.chest() + dir * (b.neck * self.k + size * 0.46),
            size,
            yaw: self.look[0],
            pitch: self.look[1],
            roll: self.look[2],
            mouth: self.mouth,
            eyes: self.eyes,
            skin: self.skin,
            hair: self.hair,
            wear: self.wear,
            worry: self.worry,
        }
    }
    /// Everything in the usual order.
    pub fn draw(&self, g: &mut Group) {
        self.draw_back(g);
        self.draw_mid(g);
        self.draw_front(g);
    }
    /// Arms hanging as sleeves only, for a close-up in the present turn.
    pub fn stubs(self) -> Figure {
        let mut f = self.stand();
        for (l, old) in f.legs.iter_mut().zip(self.legs) {
            l.z = old.z;
        }
        for a in &mut f.arms {
            a.hold = Hold::Stub;
        }
        f
    }
    /// Head, trunk and arms only, for close-ups; the trunk ends `torso` units
    /// (at scale 1) below the neck.
    pub fn bust(mut self, torso: f64) -> Figure {
        self.build.torso = torso;
        self = self.stand();
        for l in &mut self.legs {
            l.z = Z::Gone;
        }
        self
    }
    /// Far hair, far limbs.
    pub fn draw_back(&self, g: &mut Group) {
        self.head().draw_behind(g);
        for i in 0..2 {
            if self.arms[i].z == Z::Behind {
                self.draw_arm(i, g);
            }
        }
        for i in 0..2 {
            if self.legs[i].z == Z::Behind {
                self.draw_leg(i, g);
            }
        }
    }
    /// Legs and trunk.
    pub fn draw_mid(&self, g: &mut Group) {
        if self.legs.iter().any(|l| l.z != Z::Gone) {
            self.pelvis(g);
        }
        for i in 0..2 {
            if self.legs[i].z == Z::Front {
                self.draw_leg(i, g);
            }
        }
        if let Bottom::Skirt(c, len) = self.bottom {
            let skirt = self.skirt(len);
            g.over(skirt, c);
        }
        self.trunk(g);
    }
    /// Near arms and head.
    pub fn draw_front(&self, g: &mut Group) {
        for i in 0..2 {
            if self.arms[i].z == Z::Front {
                self.draw_arm(i, g);
            }
        }
        self.head().draw(g);
        for i in 0..2 {
            if self.arms[i].z == Z::Over {
                self.draw_arm(i, g);
            }
        }
    }
    fn skirt(&self, len: f64) -> Path {
        let (hw, ww) = (self.half(2), self.half(1));
        let drop = (self.build.leg[0] + self.build.leg[1]) * self.k * len;
        let u = self.build.torso * self.k * 0.36;
        let at = |x: f64, y: f64| self.hip + self.across() * x - self.up() * y;
        let f = hw * 1.45;
        Path(vec![
            super::geom::Seg::M(at(-ww, -u)),
            super::geom::Seg::L(at(ww, -u)),
            super::geom::Seg::Q(at(hw * 1.05, 0.0), at(f, drop)),
            super::geom::Seg::Q(at(0.0, drop * 1.14), at(-f, drop)),
            super::geom::Seg::Q(at(-hw * 1.05, 0.0), at(-ww, -u)),
            super::geom::Seg::Z,
        ])
    }
    fn pelvis(&self, g: &mut Group) {
        let c = match self.bottom {
            Bottom::Legs(c, _) | Bottom::Skirt(c, _) => c,
        };
        let (hw, lw) = (self.half(2), self.build.leg_w[0] * self.k);
        let u = self.build.torso * self.k * 0.3;
        let at = |x: f64, y: f64| self.hip + self.across() * x - self.up() * y;
        use super::geom::Seg::{M, Q, Z};
        let path = Path(vec![
            M(at(-hw * 0.95, -u)),
            super::geom::Seg::L(at(hw * 0.95, -u)),
            Q(at(hw * 1.02, lw * 0.9), at(hw * 0.55, lw * 0.95)),
            Q(at(0.0, lw * 0.8), at(-hw * 0.55, lw * 0.95)),
            Q(at(-hw * 1.02, lw * 0.9), at(-hw * 0.95, -u)),
            Z,
        ]);
        g.fill(path, c);
    }
    fn trunk(&self, g: &mut Group) {
        let t = self.build.torso * self.k;
        let (sh, ww, hw) = (self.half(0), self.half(1), self.half(2));
        let at = |x: f64, y: f64| self.hip + self.across() * x + self.up() * y;
        let hem = t * 0.16;
        let nk = self.build.head * self.k * (0.11 + 0.07 * self.turn.to_radians().cos().abs());
        use super::geom::Seg::{C, L, M, Q, Z};
        let side = |s: f64| {
            (
                at(s * sh * 0.62, t * 0.985),
                at(s * sh, t * 0.98),
                at(s * sh, t * 0.78),
                at(s * ww, t * 0.5),
                at(s * hw * 1.02, hem),
            )
        };
        let (a, b, c, d, e) = side(1.0);
        let (a2, b2, c2, d2, e2) = side(-1.0);
        let path = Path(vec![
            M(at(nk, t * 1.02)),
            Q(a, b.to(c, 0.3)),
            Q(c, d.to(c, 0.3)),
            C(d, d, e),
            Q(at(0.0, hem - t * 0.05), e2),
            C(d2, d2, d2.to(c2, 0.3)),
            Q(c2, b2.to(c2, 0.3)),
            Q(a2, at(-nk, t * 1.02)),
            Z,
        ]);
        let hem_line = Path(vec![M(e), Q(at(0.0, hem - t * 0.05), e2)]);
        // Neck first, so that the collar overlaps it.
        let head = self.head();
        let neck_w = self.build.head * self.k * 0.15;
        let chest = self.chest();
        let neck = Limb {
            pts: [
                chest - self.up() * 4.0,
                chest.to(head.at, 0.4),
                chest.to(head.at, 0.8),
            ],
            w: [neck_w; 3],
            flat: false,
        };
        g.fill(neck.outline(), self.skin.0);
        let n = g.depth();
        g.part(path, self.top.0, hem_line, n);
        if self.turn.abs() > 120.0 {
            return;
        }
        let dip = Path(vec![
            M(at(nk, t * 1.02)),
            Q(at(0.0, t * 0.86), at(-nk, t * 1.02)),
            L(at(0.0, t * 1.1)),
            Z,
        ]);
        g.dot(dip.clone(), self.skin.0);
        let collar = Path(vec![M(at(nk, t)), Q(at(0.0, t * 0.86), at(-nk, t))]);
        g.band(collar, ink::WHITE, SEAM);
    }
    /// One arm with sleeve and hand.
    pub fn draw_arm(&self, i: usize, g: &mut Group) {
        let a = self.arms[i];
        let b = &self.build;
        let k = self.k;
        let w = b.arm_w.map(|v| v * k);
        let limb = Limb::reach(self.shoulder(i), a.to, b.arm.map(|v| v * k), w, a.bend);
        let below = g.depth();
        let t = 0.34;
        if a.hold == Hold::Stub {
            let sleeve = limb.cut(self.top.1, 1.2 * k);
            g.part(sleeve.outline(), self.top.0, sleeve.edge(t), below);
            return;
        }
        let deg = a.aim.unwrap_or(limb.aim());
        let h = Hand {
            wrist: limb.pts[2],
            deg,
            len: b.ends[1] * k,
            flip: a.flip,
            hold: a.hold,
        };
        hands::arm_and_hand(g, &limb, h, self.skin, below);
        if self.top.1 > 0.02 {
            let sleeve = limb.cut(self.top.1, 1.2 * k);
            g.part(sleeve.outline(), self.top.0, sleeve.edge(t), below);
            self.flat_end(&sleeve, g);
        }
    }
    fn flat_end(&self, l: &Limb, g: &mut Group) {
        g.band(l.across(), ink::WHITE, SEAM);
    }
    /// One leg with trouser and foot.
    pub fn draw_leg(&self, i: usize, g: &mut Group) {
        let l = self.legs[i];
        let b = &self.build;
        let k = self.k;
        let w = b.leg_w.map(|v| v * k);
        let limb = match l.knee {
            Some(knee) => Limb {
                pts: [self.hip_joint(i), knee, l.to],
                w,
                flat: false,
            },
            None => Limb::reach(self.hip_joint(i), l.to, b.leg.map(|v| v * k), w, l.bend),
        };
        let below = g.depth();
        let t = 0.42;
        let foot = hands::foot(limb.pts[2], b.ends[0] * k, l.tilt, l.face);
        let (cloth, share) = match self.bottom {
            Bottom::Legs(c, s) => (c, s),
            Bottom::Skirt(c, _) => (c, 0.0),
        };
        match self.shoes {
            Some(c) => {
                g.part(limb.outline(), self.skin.0, limb.edge(t), below);
                g.over(foot, c);
            }
            None => {
                let bare = limb.outline().then(foot.clone(), false).wound();
                g.part(bare, self.skin.0, limb.edge(t).then(foot, false), below);
            }
        }
        if share > 0.0 {
            let cut = limb.cut(share, 1.0 * k);
            g.part(cut.outline(), cloth, cut.edge(t), below);
            self.flat_end(&cut, g);
        }
    }
}
