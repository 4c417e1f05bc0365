//! Arriving, getting ready, being called.

use super::body::{Figure, Z, arm};
use super::cast;
use super::geom::{P, Path, p};
use super::hair::{Hair, Style};
use super::hands::{Hand, Hold, arm_and_hand, hand};
use super::head::{SKIN, SKIN_DARK};
use super::limb::Limb;
use super::paint::{Group, Scene, ink};
use super::props;

/// The drawings of this file.
pub fn symbols() -> Vec<(&'static str, String)> {
    vec![
        (
            "swim_top_on",
            swim_top_on().svg("swim_top_on", "Swim top on"),
        ),
        ("roll_call", roll_call().svg("roll_call", "Who is here")),
        ("name_mark", name_mark().svg("name_mark", "My name")),
        (
            "bright_vest",
            bright_vest().svg("bright_vest", "Bright vest"),
        ),
        (
            "look_at_plan",
            look_at_plan().svg("look_at_plan", "Look at my plan"),
        ),
    ]
}

/// A clipboard with rows of a dot and a bar: middle, width, tilt.
fn clipboard(g: &mut Group, at: P, w: f64, deg: f64) {
    let h = w * 1.3;
    let u = |x: f64, y: f64| at + p(x * w, y * h).rot(deg);
    g.over(Path::block(at, w, h, w * 0.1, deg), ink::HAIR_FAIR);
    g.dot(
        Path::block(u(0.0, 0.04), w * 0.8, h * 0.8, w * 0.04, deg),
        ink::WHITE,
    );
    for y in [-0.18, 0.06, 0.3] {
        g.dot(Path::circle(u(-0.23, y), w * 0.09), ink::CORAL);
        g.mark(
            Path::poly(&[u(-0.02, y), u(0.26, y)], false),
            ink::CHARCOAL,
            w * 0.09,
        );
    }
    g.over(
        Path::block(u(0.0, -0.48), w * 0.44, h * 0.14, w * 0.06, deg),
        ink::CHARCOAL,
    );
}

fn roll_call() -> Scene {
    let mut s = Scene::default();
    s.group(5.0, |g| {
        let mut a = cast::helper_dark(1.06, p(66.0, 226.0)).bust(92.0);
        a.turn = 36.0;
        a.look = [44.0, 10.0, 0.0];
        a = a.bust(92.0);
        a.arms[1] = arm(112.0, 178.0, 1.0, Z::Behind, Hold::Grip).aim(-20.0);
        a.arms[0] = arm(72.0, 196.0, 1.0, Z::Over, Hold::Grip).aim(-10.0);
        a.draw_back(g);
        a.draw_mid(g);
        clipboard(g, p(98.0, 172.0), 64.0, 8.0);
        a.draw_front(g);
    });
    s.group(5.0, |g| {
        let mut c = cast::main_girl(1.16, p(186.0, 226.0));
        c.turn = -38.0;
        c.look = [-48.0, -14.0, 0.0];
        c = c.bust(57.0);
        c.build.arm = [32.0, 31.0];
        c.arms[0].z = Z::Gone;
        c.arms[1] = arm(219.0, 106.0, 0.5, Z::Over, Hold::Open).aim(-92.0);
        c.draw(g);
    });
    s
}

fn name_mark() -> Scene {
    let mut s = Scene::default();
    s.group(5.4, |g| {
        let mut c = cast::main_child(1.86, p(120.0, 232.0)).bust(56.0);
        c.look = [0.0, 10.0, 0.0];
        for a in &mut c.arms {
            a.hold = Hold::Stub;
        }
        c.arms[0].z = Z::Gone;
        c.draw(g);
        let side = Path::block(c.chest() + p(-41.0, 60.0), 36.0, 56.0, 10.0, 0.0);
        g.fill(side, ink::CORAL);
        let at = c.chest() + p(3.0, 49.0);
        c.build.arm = [30.0, 24.0];
        let wrist = at + p(-60.0, 42.0);
        c.arms[0] = arm(wrist.x, wrist.y, 1.0, Z::Over, Hold::Point).aim(-30.0);
        c.draw_arm(0, g);
        name_tag(g, at);
        let h = Hand {
            wrist,
            deg: -30.0,
            len: c.build.ends[1] * c.k,
            flip: false,
            hold: Hold::Point,
        };
        hand(g, h, SKIN);
    });
    s
}

/// A tag with a small person and a line, no writing.
fn name_tag(g: &mut Group, at: P) {
    g.over(Path::block(at, 76.0, 50.0, 9.0, 0.0), ink::SUN);
    g.dot(Path::block(at, 64.0, 38.0, 5.0, 0.0), ink::WHITE);
    g.dot(Path::circle(at + p(-15.0, -7.0), 7.5), ink::TEAL);
    g.dot(
        Path::read("M-27 15C-27 5-22 2-15 2C-8 2-3 5-3 15Z").map(|q| at + q),
        ink::TEAL,
    );
    for (y, x) in [(-5.0, 25.0), (7.0, 20.0)] {
        g.mark(
            Path::poly(&[at + p(7.0, y), at + p(x, y)], false),
            ink::CHARCOAL,
            5.0,
        );
    }
}

fn bright_vest() -> Scene {
    let mut s = Scene::default();
    s.group(5.4, |g| {
        let mut c = cast::main_child(1.6, p(120.0, 228.0)).bust(68.0);
        c.top.1 = 0.46;
        c.look = [0.0, 14.0, 0.0];
        c.build.arm = [31.0, 29.0];
        let chest = c.chest();
        let wrists = [chest + p(-24.0, 100.0), chest + p(27.0, 54.0)];
        c.arms[0] = arm(wrists[0].x, wrists[0].y, 1.0, Z::Front, Hold::None);
        c.arms[1] = arm(wrists[1].x, wrists[1].y, -1.0, Z::Front, Hold::None);
        c.draw_back(g);
        c.draw_mid(g);
        for i in 0..2 {
            c.draw_arm(i, g);
        }
        vest(g, chest);
        forearm(g, &c, 0, -8.0, false);
        forearm(g, &c, 1, 188.0, true);
        c.head().draw(g);
    });
    s
}

/// The forearm once more, over what is worn, with its hand.
fn forearm(g: &mut Group, c: &Figure, i: usize, deg: f64, flip: bool) {
    let bones = c.build.arm.map(|v| v * c.k);
    let w = c.build.arm_w.map(|v| v * c.k);
    let limb = Limb::reach(c.shoulder(i), c.arms[i].to, bones, w, c.arms[i].bend);
    let [_, elbow, wrist] = limb.pts;
    let low = Limb {
        pts: [elbow.to(wrist, 0.1), elbow.to(wrist, 0.5), wrist],
        w: [w[1], (w[1] + w[2]) / 2.0, w[2]],
        flat: false,
    };
    let h = Hand {
        wrist,
        deg,
        len: 31.0,
        flip,
        hold: Hold::Grip,
    };
    let n = g.depth();
    arm_and_hand(g, &low, h, c.skin, n);
}

/// The open part above the slider shows the top.
fn vest(g: &mut Group, chest: P) {
    for s in [-1.0, 1.0] {
        let put = |d: &str| Path::read(d).map(|q| chest + p(q.x * s, q.y));
        g.over(
            put("M13 0L31-1C30 16 33 30 42 38L46 112L1.5 112L1.5 50Z"),
            ink::SUN,
        );
        for d in ["M19-1L28-1L28 66L19 66Z", "M1.5 66L43.6 66L44.5 84L1.5 84Z"] {
            g.dot(put(d), ink::GREY);
        }
        for d in ["M19 2L19 66L2 66M28 2L28 66L43 66", "M2 84L44 84"] {
            g.mark(put(d), ink::WHITE, 2.6);
        }
    }
    g.mark(
        Path::poly(&[chest + p(0.0, 52.0), chest + p(0.0, 110.0)], false),
        ink::CHARCOAL,
        4.4,
    );
}

fn look_at_plan() -> Scene {
    let mut s = Scene::default();
    s.group(5.2, |g| {
        let at = p(205.0, 195.0);
        let limb = Limb {
            pts: [p(210.0, 202.0), p(208.0, 199.0), at],
            w: [12.0, 12.0, 11.0],
            flat: false,
        };
        plan(g, p(164.0, 116.0));
        g.fill(limb.outline(), SKIN_DARK.0);
        g.over(Path::read("M196 214L219 195L232 212L209 232Z"), ink::TEAL);
        let h = Hand {
            wrist: at,
            deg: 214.0,
            len: 38.0,
            flip: false,
            hold: Hold::Grip,
        };
        hand(g, h, SKIN_DARK);
    });
    s.group(5.2, |g| {
        let mut c = cast::main_girl(1.36, p(66.0, 222.0)).bust(72.0);
        c.turn = 40.0;
        c.look = [50.0, 0.0, 0.0];
        c = c.bust(72.0);
        c.arms[1].z = Z::Gone;
        c.arms[0] = arm(112.0, 142.0, 1.0, Z::Over, Hold::Point).aim(-16.0);
        c.draw(g);
    });
    s
}

/// A strip of four tiles, each with a plain picture.
fn plan(g: &mut Group, at: P) {
    g.fill(Path::block(at, 62.0, 200.0, 10.0, 0.0), ink::NAVY);
    for i in 0..4 {
        let c = at + p(0.0, f64::from(i) * 43.0 - 72.0);
        g.dot(Path::block(c, 48.0, 36.0, 5.0, 0.0), ink::WHITE);
        let put = |d: &str| Path::read(d).put(c, 1.0, 0.0, false);
        match i {
            0 => g.dot(Path::circle(c, 12.0), ink::SUN),
            1 => g.dot(
                put("M-19 13C-14 0-6-12 0-12C6-12 14 0 19 13Z"),
                ink::HAIR_FAIR,
            ),
            2 => g.mark(
                props::wave(c.x - 18.0, c.x + 18.0, c.y, 7.0),
                ink::WATER,
                8.0,
            ),
            _ => {
                g.dot(put("M-17-1L0-15L17-1Z"), ink::CORAL);
                g.dot(put("M-12 1L12 1L12 14L-12 14Z"), ink::CHARCOAL);
            }
        }
    }
}

fn swim_top_on() -> Scene {
    let mut s = Scene::default();
    s.group(5.4, |g| {
        let mut c = Figure::child(1.5, p(136.0, 220.0)).bust(66.0);
        c.top = (SKIN.0, 0.0);
        c.hair = Hair(Style::Crop, ink::HAIR_DARK);
        c.build.arm = [31.0, 29.0];
        for a in &mut c.arms {
            a.z = Z::Gone;
        }
        c.draw(g);
        let hip = c.hip;
        g.over(
            Path::read("M-30-16C-12-11 12-11 30-16L36 16L-36 16Z").map(|q| hip + q),
            ink::NAVY,
        );
        emerging_arm(g, &c);
        let neck = c.head().place(p(0.0, 0.98));
        let hem = neck + p(60.0, 46.0);
        c.top = (ink::SUN, 0.94);
        c.arms[1] = arm(hem.x, hem.y, -1.0, Z::Over, Hold::None);
        c.draw_arm(1, g);
        let n = g.depth();
        let put = |d: &str| Path::read(d).map(|q| neck + q);
        let trunk = "M-30-12C-14-2 14-2 30-12C30 4 36 10 42 18C46 28 44 42 48 56\
                     C30 66 14 58 2 62C-14 67-30 62-48 56C-44 42-46 28-42 18C-36 10-30 4-30-12Z";
        let edge = "M-30-12C-14-2 14-2 30-12M48 56C30 66 14 58 2 62C-14 67-30 62-48 56";
        g.part(put(trunk), ink::SUN, put(edge), n);
        g.mark(
            put("M-43 43C-28 48-14 54 2 49C14 45 28 52 44 45"),
            ink::CORAL,
            7.5,
        );
        let h = Hand {
            wrist: hem,
            deg: 132.0,
            len: 28.0,
            flip: true,
            hold: Hold::Grip,
        };
        hand(g, h, SKIN);
    });
    s
}

/// An arm pushed through a long sleeve; only the finger tips are out yet.
fn emerging_arm(g: &mut Group, c: &Figure) {
    let wrist = c.chest() + p(-99.0, -14.0);
    // Nearly straight, pushed out through the cloth.
    let half = (wrist - c.shoulder(0)).len() * 0.512;
    let limb = Limb::reach(c.shoulder(0), wrist, [half; 2], [13.0, 12.0, 11.5], -1.0);
    let u = (limb.pts[2] - limb.pts[1]).unit();
    let h = Hand {
        wrist: limb.pts[2],
        deg: u.deg(),
        len: 36.0,
        flip: false,
        hold: Hold::Flat,
    };
    hand(g, h, SKIN);
    let end = limb.pts[2] + u * 23.0;
    let sleeve = Limb {
        pts: [limb.pts[0], limb.pts[1], end],
        w: [14.0, 14.5, 19.0],
        flat: true,
    };
    g.over(sleeve.outline(), ink::SUN);
    let n = u.left();
    let cuff = end - u * 9.0;
    g.band(
        Path::poly(&[cuff + n * 17.6, cuff - n * 17.6], false),
        ink::CORAL,
        7.0,
    );
}
