//! The gym hall: mat, beam, trampoline, wall bars, bar, board on wheels.

use super::body::{Figure, Z, arm, leg};
use super::cast;
use super::geom::{P, Path, p, polar};
use super::hands::{Hand, Hold, arm_and_hand, foot};
use super::head::{Head, SKIN, Wear};
use super::limb::Limb;
use super::paint::{Group, Scene, ink};

/// The drawings of this file.
pub fn symbols() -> Vec<(&'static str, String)> {
    vec![
        ("gym_mat", gym_mat().svg("gym_mat", "Mat")),
        (
            "balance_beam",
            balance_beam().svg("balance_beam", "Balance"),
        ),
        ("bounce", bounce().svg("bounce", "Bounce")),
        ("climb", climb().svg("climb", "Climb")),
        ("hang", hang().svg("hang", "Hang")),
        ("roll_over", roll_over().svg("roll_over", "Roll")),
        (
            "scooter_board",
            scooter_board().svg("scooter_board", "Roll on a board"),
        ),
    ]
}

/// A soft shadow on the floor: tells what is in the air from what stands.
pub fn shadow(s: &mut Scene, x: f64, y: f64, rx: f64, ry: f64) {
    s.group(0.0, |g| {
        g.dot(Path::ellipse(p(x, y), rx, ry, 0.0), ink::GREY_LIGHT);
    });
}

/// A straight bar of the silhouette.
pub fn rail(g: &mut Group, a: P, b: P, colour: &'static str, w: f64) {
    g.bar(Path::poly(&[a, b], false), colour, w);
}

/// A thick mat lying in front of the viewer: top and front side.
fn thick_mat(g: &mut Group, x0: f64, x1: f64, y: f64, deep: f64, thick: f64) {
    let c = 12.0;
    let front = [
        p(x0, y + deep),
        p(x1, y + deep),
        p(x1, y + deep + thick),
        p(x0, y + deep + thick),
    ];
    let top = [p(x0 + c, y), p(x1 - c, y), p(x1, y + deep), p(x0, y + deep)];
    g.fill(Path::poly(&front, true), ink::HAIR_FAIR);
    g.over(Path::poly(&top, true), ink::SUN);
    for t in [0.25, 0.5, 0.75] {
        let (a, b) = (x0 + c + (x1 - x0 - 2.0 * c) * t, x0 + (x1 - x0) * t);
        g.band(
            Path::poly(&[p(a, y), p(b, y + deep)], false),
            ink::WHITE,
            2.6,
        );
    }
    for t in [0.25, 0.5, 0.75] {
        let x = x0 + (x1 - x0) * t;
        g.band(
            Path::poly(&[p(x, y + deep), p(x, y + deep + thick)], false),
            ink::WHITE,
            2.6,
        );
    }
}

fn gym_mat() -> Scene {
    let mut s = Scene::default();
    s.group(5.2, |g| thick_mat(g, 14.0, 226.0, 118.0, 84.0, 24.0));
    s.group(5.2, |g| {
        let mut c = cast::main_child(1.08, p(140.0, 158.0));
        c.turn = 90.0;
        c.lean = -90.0;
        c.look = [62.0, 0.0, -88.0];
        c = c.stand();
        c.arms[0] = arm(140.0, 174.0, 1.0, Z::Front, Hold::Rest).aim(4.0);
        c.arms[1].z = Z::Gone;
        c.legs[0] = leg(180.0, 178.0, -1.0, 1.0);
        c.legs[1] = leg(198.0, 168.0, -1.0, 1.0).z(Z::Behind);
        c.draw(g);
    });
    s
}

fn balance_beam() -> Scene {
    let mut s = Scene::default();
    s.group(5.2, |g| {
        for x in [46.0, 194.0] {
            let legs = [
                p(x - 8.0, 196.0),
                p(x + 8.0, 196.0),
                p(x + 18.0, 226.0),
                p(x - 18.0, 226.0),
            ];
            g.fill(Path::poly(&legs, true), ink::HAIR_FAIR);
        }
        g.over(
            Path::block(p(120.0, 192.0), 212.0, 13.0, 2.0, 0.0),
            ink::SUN,
        );
    });
    s.group(5.2, |g| {
        let mut c = cast::main_girl(0.94, p(112.0, 114.0));
        c.turn = 34.0;
        c.look = [46.0, 8.0, 0.0];
        c = c.stand();
        c.arms[0] = arm(46.0, 66.0, 1.0, Z::Front, Hold::Flat).aim(188.0);
        c.arms[1] = arm(177.0, 56.0, -1.0, Z::Behind, Hold::Flat).aim(-8.0);
        c.legs[0] = leg(88.0, 177.0, -1.0, 0.9);
        c.legs[1] = leg(134.0, 177.0, -1.0, 0.9);
        c.draw(g);
    });
    s
}

fn bounce() -> Scene {
    let mut s = Scene::default();
    let at = p(120.0, 190.0);
    s.group(5.2, |g| {
        for (x, y) in [(36.0, 216.0), (88.0, 224.0), (152.0, 224.0), (204.0, 216.0)] {
            rail(g, p(x, 196.0), p(x, y), ink::GREY, 8.0);
        }
        g.over(Path::ellipse(at, 102.0, 24.0, 0.0), ink::SUN);
        g.dot(Path::ellipse(at, 85.0, 15.0, 0.0), ink::CHARCOAL);
    });
    s.group(5.0, |g| {
        let mut c = cast::main_child(0.82, p(120.0, 98.0));
        c.look = [0.0, -6.0, 0.0];
        c.wear = Wear::Muffs(ink::SUN);
        c = c.stand();
        c.arms[0] = arm(68.0, 38.0, 1.0, Z::Front, Hold::Open)
            .aim(-128.0)
            .flip();
        c.arms[1] = arm(172.0, 38.0, -1.0, Z::Front, Hold::Open).aim(-52.0);
        c.legs[0] = leg(82.0, 142.0, 1.0, -0.8).tilt(20.0);
        c.legs[1] = leg(158.0, 142.0, -1.0, 0.8).tilt(-20.0);
        c.draw(g);
    });
    s
}

fn climb() -> Scene {
    let mut s = Scene::default();
    s.group(4.2, |g| {
        for i in 0..6 {
            let y = 36.0 + 34.0 * f64::from(i);
            rail(g, p(40.0, y), p(200.0, y), ink::SUN, 7.0);
        }
        for x in [36.0, 204.0] {
            g.over(
                Path::block(p(x, 120.0), 17.0, 212.0, 4.0, 0.0),
                ink::HAIR_FAIR,
            );
        }
    });
    s.group(5.0, |g| {
        let mut c = cast::main_child(0.96, p(116.0, 140.0));
        c.turn = 150.0;
        c.lean = 4.0;
        c.look = [118.0, -14.0, 4.0];
        c = c.stand();
        c.arms[0] = arm(166.0, 46.0, 1.0, Z::Front, Hold::Grip).aim(-84.0);
        c.arms[1] = arm(76.0, 78.0, -1.0, Z::Front, Hold::Grip).aim(-96.0);
        c.legs[0] = leg(150.0, 162.0, -1.0, 0.7).knee(158.0, 128.0);
        c.legs[1] = leg(98.0, 196.0, 1.0, -0.7);
        c.draw(g);
    });
    s
}

fn hang() -> Scene {
    let mut s = Scene::default();
    s.group(0.0, |g| {
        g.dot(Path::ellipse(p(120.0, 217.0), 70.0, 9.0, 0.0), ink::LEAF);
    });
    s.group(5.0, |g| {
        for x in [32.0, 208.0] {
            rail(g, p(x, 20.0), p(x, 220.0), ink::CHARCOAL, 11.0);
        }
        rail(g, p(24.0, 23.0), p(216.0, 23.0), ink::SUN, 9.0);
    });
    s.group(5.0, |g| {
        let mut c = cast::main_child(0.86, p(120.0, 126.0));
        c.lean = 3.0;
        c.look = [8.0, -4.0, 0.0];
        c = c.stand();
        c.arms[0] = arm(92.0, 37.0, -1.0, Z::Front, Hold::Grip)
            .aim(-90.0)
            .flip();
        c.arms[1] = arm(150.0, 37.0, 1.0, Z::Front, Hold::Grip).aim(-90.0);
        c.legs[0] = leg(98.0, 184.0, 1.0, -0.7).tilt(-46.0);
        c.legs[1] = leg(120.0, 182.0, 1.0, -0.7).tilt(-46.0);
        c.draw(g);
    });
    s
}

/// Part of a circle with an arrow head at its end.
pub fn bow(g: &mut Group, c: P, r: f64, from: f64, to: f64) {
    let pts: Vec<P> = (0..=8)
        .map(|i| c + polar(from + (to - from) * f64::from(i) / 8.0, r))
        .collect();
    g.mark(Path::smooth(&pts, false), ink::CORAL, 7.5);
    let (end, u) = (pts[8], (pts[7] - pts[8]).unit());
    let tips = [end + u.rot(42.0) * 17.0, end, end + u.rot(-42.0) * 17.0];
    g.mark(Path::poly(&tips, false), ink::CORAL, 7.5);
}

/// A bent leg of the rolled-up child: skin with foot, then the shorts over it.
fn tucked_leg(g: &mut Group, hip: P, knee: P, ankle: P, turn: f64, near: bool) {
    let leg = Limb {
        pts: [hip + p(0.0, 4.0), knee, ankle],
        w: [14.0, 11.5, 8.6],
        flat: false,
    };
    let bare = leg.outline().then(foot(ankle, 25.0, turn, -1.0), false);
    let cloth = leg.cut(0.5, 1.0);
    let n = g.depth();
    if near {
        g.part(bare.wound(), SKIN.0, leg.edge(0.4), n);
        // Closes the fork between the two thighs.
        let fork = [
            hip + p(-6.0, 8.0),
            knee + p(0.0, -2.0),
            knee + p(18.0, 4.0),
            hip + p(6.0, 18.0),
        ];
        g.dot(Path::poly(&fork, true), ink::NAVY);
        g.part(cloth.outline(), ink::NAVY, cloth.edge(0.4), n);
    } else {
        g.fill(bare.wound(), SKIN.0);
        g.fill(cloth.outline(), ink::NAVY);
    }
    g.band(cloth.across(), ink::WHITE, 2.6);
}

/// The arm that leans on the mat.
fn leaning_arm(g: &mut Group, from: P, to: P) {
    let a = Limb::reach(from, to, [30.0, 28.0], [9.0, 8.0, 7.0], -1.0);
    let h = Hand {
        wrist: a.pts[2],
        deg: 10.0,
        len: 20.0,
        flip: false,
        hold: Hold::Rest,
    };
    let n = g.depth();
    arm_and_hand(g, &a, h, SKIN, n);
    let sleeve = a.cut(0.36, 1.2);
    g.part(sleeve.outline(), ink::CORAL, sleeve.edge(0.34), n);
    g.band(sleeve.across(), ink::WHITE, 2.6);
}

/// The rolled-up child is built by hand: the kit's trunk is straight.
fn roll_over() -> Scene {
    let mut s = Scene::default();
    s.group(5.2, |g| thick_mat(g, 14.0, 226.0, 178.0, 26.0, 20.0));
    s.group(5.2, |g| {
        let (hip, mid, neck) = (p(122.0, 88.0), p(158.0, 112.0), p(146.0, 150.0));
        let head = Head {
            at: p(118.0, 164.0),
            size: 56.0,
            yaw: -72.0,
            roll: -118.0,
            ..cast::main_child(1.1, hip).head()
        };
        head.draw_behind(g);
        tucked_leg(g, hip, p(74.0, 103.0), p(40.0, 136.0), 40.0, false);
        let back = Limb {
            pts: [hip, mid, neck],
            w: [21.0, 25.0, 19.0],
            flat: false,
        };
        g.fill(back.outline(), ink::CORAL);
        g.over(Path::ellipse(hip, 23.0, 21.0, 40.0), ink::NAVY);
        tucked_leg(g, hip, p(86.0, 108.0), p(70.0, 150.0), 20.0, true);
        head.draw(g);
        leaning_arm(g, p(148.0, 142.0), p(166.0, 188.0));
    });
    s.group(0.0, |g| bow(g, p(124.0, 130.0), 94.0, -160.0, -22.0));
    s
}

fn scooter_board() -> Scene {
    let mut s = Scene::default();
    shadow(&mut s, 120.0, 190.0, 106.0, 10.0);
    let mut c: Figure = cast::main_child(1.08, p(92.0, 130.0));
    c.turn = 90.0;
    c.lean = 82.0;
    c.look = [76.0, -4.0, 0.0];
    c = c.stand();
    c.arms[0] = arm(164.0, 177.0, -1.0, Z::Front, Hold::Rest).aim(50.0);
    c.arms[1] = arm(192.0, 162.0, -1.0, Z::Behind, Hold::Rest).aim(50.0);
    c.legs[0] = leg(20.0, 124.0, 1.0, 1.0).tilt(112.0);
    c.legs[1] = leg(28.0, 112.0, 1.0, 1.0).tilt(112.0).z(Z::Behind);
    s.group(5.2, |g| {
        c.draw_back(g);
        for x in [84.0, 144.0] {
            g.over(Path::circle(p(x, 180.0), 10.0), ink::CHARCOAL);
            g.dot(Path::circle(p(x, 180.0), 3.6), ink::WHITE);
        }
        g.over(
            Path::block(p(114.0, 160.0), 104.0, 15.0, 6.0, 0.0),
            ink::SUN,
        );
        c.draw_mid(g);
        c.draw_front(g);
    });
    s
}
