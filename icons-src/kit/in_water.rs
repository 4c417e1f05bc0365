//! In the water: water time, up to the knees, the wave, bubbles, kicking, the
//! board. Swimwear is a long-sleeved top; a grown-up is always there.

use super::body::{Bottom, Figure, Z, arm, leg};
use super::cast;
use super::geom::{P, Path, p};
use super::hands::{Hand, Hold, arm_and_hand, foot};
use super::head::{Eyes, Mouth, SKIN, SKIN_DARK, SKIN_LIGHT, Skin};
use super::limb::Limb;
use super::paint::{Group, SEAM, Scene, ink};
use super::props;

/// The drawings of this file.
pub fn symbols() -> Vec<(&'static str, String)> {
    vec![
        ("water_time", water_time().svg("water_time", "Water time")),
        ("to_knees", to_knees().svg("to_knees", "Up to knees")),
        ("jump_wave", jump_wave().svg("jump_wave", "Jump the wave")),
        ("bubbles", bubbles().svg("bubbles", "Bubbles")),
        ("kick", kick().svg("kick", "Kick")),
        (
            "ride_board",
            ride_board().svg("ride_board", "Ride the board"),
        ),
    ]
}

/// Dressed for the water: a top with long sleeves, shorts, bare feet.
pub fn swim(mut f: Figure) -> Figure {
    f.top.1 = 0.92;
    f.shoes = None;
    if let Bottom::Legs(c, _) = f.bottom {
        f.bottom = Bottom::Legs(c, 0.46);
    }
    f
}

/// A drop of water, its tip away from where it came from.
pub fn drop(g: &mut Group, at: P, r: f64, deg: f64) {
    let d = "M0-1.8C.5-.8 1-.3 1 .25C1 .8.55 1.2 0 1.2C-.55 1.2-1 .8-1 .25C-1-.3-.5-.8 0-1.8Z";
    g.fill(Path::read(d).put(at, r, deg, false), ink::WATER);
}

/// A forearm of a close-up that comes in from `from` in a sleeve.
#[derive(Clone, Copy, Debug)]
pub struct Forearm {
    /// Where it is cut off.
    pub from: P,
    /// The wrist.
    pub to: P,
    /// Half width at the wrist.
    pub w: f64,
    /// Colour of the sleeve and how far it goes.
    pub sleeve: (&'static str, f64),
    /// The skin.
    pub skin: Skin,
}

impl Forearm {
    /// Draws it with a hand of length `len` pointing to `deg`.
    pub fn draw(&self, g: &mut Group, hold: Hold, len: f64, deg: f64, flip: bool) {
        let way = self.to - self.from;
        let (u, n) = (way.unit(), way.unit().left());
        // The round start of the limb stays inside the sleeve, cut straight.
        let start = self.from + u * (self.w * 1.4);
        let limb = Limb {
            pts: [start, start.to(self.to, 0.5), self.to],
            w: [self.w * 1.2, self.w * 1.1, self.w],
            flat: false,
        };
        let h = Hand {
            wrist: self.to,
            deg,
            len,
            flip,
            hold,
        };
        let below = g.depth();
        arm_and_hand(g, &limb, h, self.skin, below);
        let end = self.from + way * self.sleeve.1;
        let (a, b) = (n * (self.w * 1.5), n * (self.w * 1.36));
        let cuff = [self.from + a, end + b, end - b, self.from - a];
        g.over(Path::poly(&cuff, true), self.sleeve.0);
    }
}

fn water_time() -> Scene {
    let mut s = Scene::default();
    s.group(4.8, |g| {
        let mut a = swim(cast::helper(0.84, p(164.0, 115.0)));
        a.top.1 = 0.4;
        a.look = [-22.0, 6.0, -4.0];
        a = a.stand();
        a.arms[0] = arm(122.0, 125.0, 1.0, Z::Front, Hold::Grip);
        let mut c = swim(cast::main_child(0.9, p(76.0, 134.0)));
        c.look = [14.0, -4.0, 4.0];
        c.eyes = Eyes::Glad;
        c = c.stand();
        c.arms[1] = arm(112.0, 124.0, -1.0, Z::Front, Hold::Grip);
        c.arms[0] = arm(28.0, 62.0, 1.0, Z::Front, Hold::Open)
            .aim(-112.0)
            .flip();
        a.draw(g);
        c.draw(g);
    });
    props::water(&mut s, 14.0, 226.0, 168.0, 50.0);
    s
}

fn to_knees() -> Scene {
    let mut s = Scene::default();
    let line = 130.0;
    s.group(5.4, |g| {
        let mut c = cast::main_child(1.9, p(84.0, 50.0));
        c.bottom = Bottom::Legs(ink::NAVY, 0.0);
        for (i, x) in [(0, 56.0), (1, 112.0)] {
            c.legs[i] = leg(x, line + 20.0, 1.0, 0.7).knee(x, line);
            c.draw_leg(i, g);
        }
        let shorts = "M42 18L126 18L138 84L90 88L84 66L78 88L30 84Z";
        g.over(Path::read(shorts), ink::NAVY);
        g.mark(Path::read("M40 31L128 31"), ink::WHITE, SEAM);
        for x in [56.0, 112.0] {
            let cap = Path::poly(&[p(x - 9.0, 110.0), p(x, 105.0), p(x + 9.0, 110.0)], false);
            g.mark(Path::smooth(&cap.sample(), false), SKIN.1, 3.4);
        }
    });
    s.group(5.4, |g| {
        let child = Forearm {
            from: p(146.0, 16.0),
            to: p(168.0, 66.0),
            w: 10.5,
            sleeve: (ink::CORAL, 0.6),
            skin: SKIN,
        };
        let grown = Forearm {
            from: p(214.0, 14.0),
            to: p(198.0, 64.0),
            w: 13.0,
            sleeve: (ink::TEAL, 0.5),
            skin: SKIN_DARK,
        };
        child.draw(g, Hold::Grip, 36.0, 54.0, false);
        grown.draw(g, Hold::Grip, 46.0, 128.0, true);
    });
    props::far_water(&mut s, 18.0, 222.0, line, 88.0);
    s.group(0.0, |g| {
        for (x, toe) in [(56.0, -0.8), (112.0, 0.8)] {
            let shin = Limb {
                pts: [p(x, line + 20.0), p(x, 168.0), p(x, 188.0)],
                w: [14.0, 13.0, 11.0],
                flat: false,
            };
            let under = shin
                .outline()
                .then(foot(p(x, 190.0), 38.0, 0.0, toe), false);
            g.dot(under.wound(), ink::WATER_LIGHT);
            // Only the near half of the ripple, or it would cut the leg.
            let c = p(x, line + 4.0);
            let front = Path::ellipse(c, 27.0, 10.0, 0.0).0[..3].to_vec();
            g.mark(Path(front), ink::WHITE, 4.4);
        }
        g.mark(props::wave(156.0, 208.0, 176.0, 6.0), ink::WHITE, 4.4);
    });
    s
}

fn jump_wave() -> Scene {
    let mut s = Scene::default();
    s.group(4.8, |g| {
        let mut a = swim(cast::helper_dark(0.84, p(60.0, 118.0)));
        a.top.1 = 0.4;
        a.turn = 35.0;
        a.look = [44.0, 0.0, 0.0];
        a = a.stand();
        a.arms[1] = arm(108.0, 68.0, 1.0, Z::Front, Hold::Grip);
        a.draw(g);
    });
    s.group(4.8, |g| {
        let mut c = swim(cast::main_child(0.86, p(158.0, 94.0)));
        c.turn = 40.0;
        c.lean = 4.0;
        c.look = [30.0, -4.0, 4.0];
        c.mouth = Mouth::Sing;
        c.eyes = Eyes::Glad;
        c = c.stand();
        c.arms[0] = arm(114.0, 60.0, 1.0, Z::Front, Hold::Grip);
        c.arms[1] = arm(212.0, 34.0, 1.0, Z::Behind, Hold::Open).aim(-58.0);
        c.legs[0] = leg(144.0, 130.0, -1.0, 0.9).tilt(26.0).knee(178.0, 112.0);
        c.legs[1] = leg(172.0, 132.0, -1.0, 0.9)
            .tilt(26.0)
            .knee(198.0, 110.0)
            .z(Z::Behind);
        c.draw(g);
    });
    s.group(4.8, |g| {
        let d = "M210 214L100 214C120 206 126 196 122 186C118 178 108 176 102 182\
                 C102 164 122 154 144 158C172 164 202 178 216 206Z";
        g.fill(Path::read(d), ink::WATER);
        g.mark(
            Path::read("M136 170C142 180 152 184 166 184"),
            ink::WHITE,
            5.0,
        );
    });
    props::water(&mut s, 14.0, 228.0, 194.0, 32.0);
    s
}

fn bubbles() -> Scene {
    let mut s = Scene::default();
    s.group(5.2, |g| {
        let mut c = swim(cast::main_child(2.0, p(80.0, 222.0))).bust(40.0);
        c.turn = 60.0;
        c.look = [60.0, 4.0, 4.0];
        c.mouth = Mouth::Blow;
        c = c.bust(30.0);
        c.arms[0].z = Z::Gone;
        c.arms[1].z = Z::Gone;
        let mut h = c.head();
        h.at = p(80.0, 78.0);
        g.fill(Path::block(p(74.0, 134.0), 40.0, 40.0, 8.0, 0.0), h.skin.0);
        h.draw(g);
        let child = Forearm {
            from: p(128.0, 172.0),
            to: p(160.0, 106.0),
            w: 10.5,
            sleeve: (ink::CORAL, 0.7),
            skin: SKIN,
        };
        let grown = Forearm {
            from: p(218.0, 40.0),
            to: p(192.0, 84.0),
            w: 14.0,
            sleeve: (ink::TEAL, 0.5),
            skin: SKIN_LIGHT,
        };
        child.draw(g, Hold::Grip, 34.0, -44.0, false);
        grown.draw(g, Hold::Grip, 46.0, 134.0, true);
    });
    props::far_water(&mut s, 18.0, 222.0, 128.0, 92.0);
    s.group(4.8, |g| {
        for (x, y, r) in [
            (114.0, 137.0, 6.0),
            (130.0, 152.0, 10.0),
            (156.0, 166.0, 12.0),
            (184.0, 154.0, 9.0),
            (188.0, 188.0, 13.0),
            (152.0, 198.0, 8.0),
        ] {
            g.fill(Path::circle(p(x, y), r), ink::WHITE);
        }
    });
    s.group(0.0, |g| {
        g.mark(props::wave(34.0, 104.0, 186.0, 6.0), ink::WHITE, 4.4);
    });
    s
}

/// A grown-up in water to the waist.
fn wader(mut a: Figure, turn: f64) -> Figure {
    a = swim(a).bust(76.0);
    a.top.1 = 0.4;
    a.turn = turn;
    a.look = [turn * 0.8, 12.0, 0.0];
    a.bust(76.0)
}

/// A child stretched out on the belly, the head to the right and up.
fn prone(mut c: Figure) -> Figure {
    c = swim(c);
    c.turn = 90.0;
    c.lean = 80.0;
    c.look = [64.0, 0.0, 8.0];
    c.stand()
}

fn kick() -> Scene {
    let mut s = Scene::default();
    props::far_water(&mut s, 14.0, 226.0, 148.0, 50.0);
    s.group(0.0, |g| {
        // Water that the feet throw up; without a line, the drops have one.
        let crown = "M22 172C17 152 14 136 16 120C24 126 28 132 32 142C32 124 36 110 44 94\
                     C54 110 58 124 58 140C66 126 76 116 92 108C94 128 92 150 88 172Z";
        g.dot(Path::read(crown), ink::WATER);
    });
    s.group(4.8, |g| {
        let mut a = wader(cast::helper(0.9, p(198.0, 178.0)), -55.0);
        a.lean = -6.0;
        a.arms[0] = arm(170.0, 158.0, -1.0, Z::Behind, Hold::None);
        a.arms[1] = arm(178.0, 164.0, -1.0, Z::Gone, Hold::Grip);
        a.draw(g);
        let mut c = prone(cast::main_girl(0.82, p(90.0, 154.0)));
        c.eyes = Eyes::Glad;
        c.arms[0] = arm(168.0, 166.0, 1.0, Z::Front, Hold::Grip);
        c.arms[1].z = Z::Gone;
        c.legs[0] = leg(36.0, 168.0, 1.0, -1.0).tilt(40.0);
        c.legs[1] = leg(40.0, 130.0, 1.0, -1.0).tilt(60.0).z(Z::Behind);
        c.draw(g);
        a.arms[1].z = Z::Over;
        a.draw_arm(1, g);
    });
    props::water(&mut s, 14.0, 226.0, 172.0, 48.0);
    s.group(4.6, |g| {
        for (x, y, r, deg) in [
            (20.0, 90.0, 7.5, -24.0),
            (42.0, 66.0, 8.5, -4.0),
            (70.0, 86.0, 8.0, 14.0),
            (98.0, 82.0, 7.5, 30.0),
        ] {
            drop(g, p(x, y), r, deg);
        }
    });
    s
}

fn ride_board() -> Scene {
    let mut s = Scene::default();
    props::far_water(&mut s, 14.0, 226.0, 150.0, 50.0);
    s.group(4.8, |g| {
        let mut a = wader(cast::helper_dark(0.92, p(34.0, 178.0)), 55.0);
        a.lean = 6.0;
        a.arms[1].z = Z::Gone;
        a.arms[0].z = Z::Gone;
        a.draw(g);
        let mut c = prone(cast::main_child(0.82, p(126.0, 132.0)));
        c.eyes = Eyes::Glad;
        c.arms[0] = arm(196.0, 148.0, 1.0, Z::Front, Hold::Grip);
        c.arms[1].z = Z::Gone;
        c.legs[0] = leg(70.0, 140.0, 1.0, -1.0).tilt(60.0);
        c.legs[1] = leg(74.0, 128.0, 1.0, -1.0).tilt(60.0).z(Z::Behind);
        c.draw(g);
        let d = "M60 150C100 152 160 150 196 142C212 138 222 132 227 128C230 142 216 160 190 166\
                 C150 174 96 174 62 168C54 166 54 150 60 150Z";
        g.over(Path::read(d), ink::SUN);
        g.mark(
            Path::read("M64 160C110 164 160 162 206 148"),
            ink::CORAL,
            6.0,
        );
        a.arms[0] = arm(66.0, 148.0, 1.0, Z::Over, Hold::Grip).aim(30.0);
        a.draw_arm(0, g);
    });
    props::water(&mut s, 14.0, 226.0, 176.0, 46.0);
    s
}
