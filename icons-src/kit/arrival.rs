//! Arriving, getting ready, being called.

use super::body::{Figure, Z, arm};
use super::cast;
use super::geom::{P, Path, p};
use super::hands::{Hand, Hold, hand};
use super::head::SKIN_DARK;
use super::limb::Limb;
use super::paint::{Group, Scene, ink};
use super::props;

/// The drawings of this file.
pub fn symbols() -> Vec<(&'static str, String)> {
    vec![
        ("roll_call", roll_call().svg("roll_call", "Who is here")),
        ("name_mark", name_mark().svg("name_mark", "My name")),
        ("bright_vest", bright_vest().svg("bright_vest", "Bright vest")),
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
        let mut c = cast::main_girl(1.16, p(180.0, 226.0));
        c.turn = -38.0;
        c.look = [-48.0, -14.0, 0.0];
        c = c.bust(57.0);
        c.build.arm = [32.0, 31.0];
        c.arms[0] = arm(150.0, 216.0, 1.0, Z::Behind, Hold::Rest);
        c.arms[1] = arm(218.0, 108.0, 1.0, Z::Over, Hold::Open).aim(-92.0);
        c.draw(g);
    });
    s
}

fn name_mark() -> Scene {
    let mut s = Scene::default();
    s.group(5.4, |g| {
        let mut c = cast::main_child(1.72, p(120.0, 226.0)).bust(56.0);
        c.look = [0.0, 8.0, 0.0];
        for a in &mut c.arms {
            a.hold = Hold::Stub;
        }
        c.draw(g);
        g.over(Path::block(p(140.0, 176.0), 72.0, 44.0, 9.0, 0.0), ink::SUN);
        g.dot(Path::block(p(140.0, 176.0), 60.0, 32.0, 5.0, 0.0), ink::WHITE);
        g.dot(Path::circle(p(124.0, 176.0), 10.0), ink::TEAL);
        g.mark(
            Path::poly(&[p(142.0, 176.0), p(162.0, 176.0)], false),
            ink::CHARCOAL,
            6.0,
        );
        c.arms[0] = arm(76.0, 208.0, 1.0, Z::Over, Hold::Point).aim(-30.0);
        c.draw_arm(0, g);
    });
    s
}

fn bright_vest() -> Scene {
    let mut s = Scene::default();
    s.group(5.4, |g| {
        let mut c = cast::main_child(1.5, p(120.0, 222.0)).bust(72.0);
        c.top.1 = 0.5;
        c.look = [0.0, 14.0, 0.0];
        c.build.arm = [33.0, 29.0];
        c.draw_back(g);
        c.draw_mid(g);
        let slider = c.chest() + p(0.0, 46.0);
        vest(g, &c);
        c.arms[0] = arm(94.0, 214.0, 1.0, Z::Front, Hold::Grip).aim(-4.0);
        c.arms[1] = arm(slider.x + 26.0, slider.y + 4.0, -1.0, Z::Front, Hold::Grip)
            .aim(188.0)
            .flip();
        c.draw_front(g);
    });
    s
}

/// The open part above the slider shows the top.
fn vest(g: &mut Group, c: &Figure) {
    let n = c.chest();
    for s in [-1.0, 1.0] {
        let put = |d: &str| Path::read(d).map(|q| n + p(q.x * s, q.y));
        g.over(
            put("M12 0L30-1C31 14 33 28 42 36L46 108L1.5 108L1.5 46Z"),
            ink::SUN,
        );
        g.dot(put("M20-1L28-1L28 60L20 60Z"), ink::GREY_LIGHT);
        g.dot(put("M1.5 60L43.4 60L44.2 76L1.5 76Z"), ink::GREY_LIGHT);
        g.mark(put("M2 60L43 60"), ink::WHITE, 2.6);
        g.mark(put("M2 76L44 76"), ink::WHITE, 2.6);
    }
    g.mark(
        Path::poly(&[n + p(0.0, 48.0), n + p(0.0, 106.0)], false),
        ink::CHARCOAL,
        4.4,
    );
}

fn look_at_plan() -> Scene {
    let mut s = Scene::default();
    s.group(5.2, |g| {
        let at = p(214.0, 190.0);
        let limb = Limb {
            pts: [p(226.0, 214.0), p(220.0, 202.0), at],
            w: [12.0, 12.0, 11.0],
            flat: false,
        };
        plan(g, p(168.0, 118.0));
        g.fill(limb.outline(), SKIN_DARK.0);
        g.over(Path::read("M206 226L236 204L246 228L222 246Z"), ink::TEAL);
        let h = Hand {
            wrist: at,
            deg: 214.0,
            len: 44.0,
            flip: false,
            hold: Hold::Grip,
        };
        hand(g, h, SKIN_DARK);
    });
    s.group(5.2, |g| {
        let mut c = cast::main_girl(1.42, p(66.0, 226.0)).bust(72.0);
        c.turn = 40.0;
        c.look = [50.0, 0.0, 0.0];
        c = c.bust(72.0);
        c.arms[1].z = Z::Gone;
        c.arms[0] = arm(116.0, 150.0, 1.0, Z::Over, Hold::Point).aim(-16.0);
        c.draw(g);
    });
    s
}

/// A strip of four tiles, each with a plain picture.
fn plan(g: &mut Group, at: P) {
    g.fill(Path::block(at, 64.0, 206.0, 10.0, 0.0), ink::NAVY);
    for i in 0..4 {
        let c = at + p(0.0, f64::from(i) * 48.0 - 72.0);
        g.dot(Path::block(c, 50.0, 40.0, 5.0, 0.0), ink::WHITE);
        let put = |d: &str| Path::read(d).put(c, 1.0, 0.0, false);
        match i {
            0 => g.dot(Path::circle(c, 12.0), ink::SUN),
            1 => g.dot(put("M-19 13C-14 0-6-12 0-12C6-12 14 0 19 13Z"), ink::HAIR_FAIR),
            2 => g.mark(props::wave(c.x - 18.0, c.x + 18.0, c.y, 7.0), ink::WATER, 8.0),
            _ => {
                g.dot(put("M-17-1L0-15L17-1Z"), ink::CORAL);
                g.dot(put("M-12 1L12 1L12 14L-12 14Z"), ink::CHARCOAL);
            }
        }
    }
}
