//! Figures: a build (child or adult), a dress and a pose become layers of a
//! group. Limbs are aimed: the pose says where hands and feet are, the kit
//! bends elbows and knees.

use super::age;
use super::geom::{P, p, polar};
use super::hair::{Hair, Style};
use super::hands::Hold;
use super::head::{Eyes, Head, Mouth, SKIN, Skin, Wear};
use super::paint::ink;

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
            build: age::build(),
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
    /// Along the trunk, from hips to neck.
    pub fn up(&self) -> P {
        polar(self.lean - 90.0, 1.0)
    }
    /// Across the trunk.
    pub fn across(&self) -> P {
        polar(self.lean, 1.0)
    }
    /// Half width seen of shoulders (0), waist (1) or hips (2).
    pub fn half(&self, i: usize) -> f64 {
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
            cheeks: age::now() == age::Age::Child,
        }
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
}
