//! Drawing a posed figure: trunk, limbs and dress as layers of a group.

use super::body::{Bottom, Figure, Z};
use super::geom::{
    Path,
    Seg::{C, L, M, Q, Z as Close},
};
use super::hands::{self, Hand, Hold};
use super::limb::Limb;
use super::paint::{Group, SEAM, ink};

impl Figure {
    /// Everything in the usual order.
    pub fn draw(&self, g: &mut Group) {
        self.draw_back(g);
        self.draw_mid(g);
        self.draw_front(g);
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
            M(at(-ww, -u)),
            L(at(ww, -u)),
            Q(at(hw * 1.05, 0.0), at(f, drop)),
            Q(at(0.0, drop * 1.14), at(-f, drop)),
            Q(at(-hw * 1.05, 0.0), at(-ww, -u)),
            Close,
        ])
    }
    fn pelvis(&self, g: &mut Group) {
        let c = match self.bottom {
            Bottom::Legs(c, _) | Bottom::Skirt(c, _) => c,
        };
        let (hw, lw) = (self.half(2), self.build.leg_w[0] * self.k);
        let u = self.build.torso * self.k * 0.3;
        let at = |x: f64, y: f64| self.hip + self.across() * x - self.up() * y;
        let path = Path(vec![
            M(at(-hw * 0.95, -u)),
            L(at(hw * 0.95, -u)),
            Q(at(hw * 1.02, lw * 0.9), at(hw * 0.55, lw * 0.95)),
            Q(at(0.0, lw * 0.8), at(-hw * 0.55, lw * 0.95)),
            Q(at(-hw * 1.02, lw * 0.9), at(-hw * 0.95, -u)),
            Close,
        ]);
        g.fill(path, c);
    }
    fn trunk(&self, g: &mut Group) {
        let t = self.build.torso * self.k;
        let (sh, ww, hw) = (self.half(0), self.half(1), self.half(2));
        let at = |x: f64, y: f64| self.hip + self.across() * x + self.up() * y;
        let hem = t * 0.16;
        let nk = self.build.head * self.k * (0.11 + 0.07 * self.turn.to_radians().cos().abs());
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
            Close,
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
            Close,
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
            let [from, _, to] = limb.pts;
            let straight = Limb {
                pts: [from, from.to(to, 0.5), to],
                ..limb
            };
            let sleeve = straight.cut(self.top.1, 1.2 * k);
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
