//! Small boats and boards, an adult always at hand.

use super::body::{Z, arm, leg};
use super::cast;
use super::clubs::vest;
use super::geom::{P, Path, p};
use super::hands::Hold;
use super::paint::{Group, Scene, ink};
use super::props;

/// The drawings of this file.
pub fn symbols() -> Vec<(&'static str, String)> {
    vec![
        (
            "stand_up_board",
            stand_up_board().svg("stand_up_board", "Stand up and paddle"),
        ),
        ("kayak", kayak().svg("kayak", "Kayak")),
        (
            "get_in_boat",
            get_in_boat().svg("get_in_boat", "Get in the boat"),
        ),
        ("steer", steer().svg("steer", "Steer")),
    ]
}

/// A paddle with a blade at its lower end and a crutch on top.
fn paddle(g: &mut Group, top: P, tip: P) {
    let u = (tip - top).unit();
    g.bar(
        Path::poly(&[top, tip - u * 20.0], false),
        ink::HAIR_BROWN,
        6.5,
    );
    g.bar(
        Path::poly(&[top + u.left() * 7.0, top - u.left() * 7.0], false),
        ink::HAIR_BROWN,
        6.5,
    );
    blade(g, tip, u);
}

fn blade(g: &mut Group, tip: P, u: P) {
    g.over(
        Path::block(tip - u * 16.0, 38.0, 20.0, 8.0, u.deg()),
        ink::WHITE,
    );
}

fn wide_board(g: &mut Group) {
    let board = "M12 167C22 160 60 160 140 160C156 160 168 158 178 154C180 164 168 178 150 180L36 180\
                 C20 180 8 174 12 167Z";
    g.fill(Path::read(board), ink::SUN);
    g.mark(Path::read("M26 171L150 171"), ink::CORAL, 4.5);
}

fn stand_up_board() -> Scene {
    let mut s = Scene::default();
    s.group(4.8, |g| {
        let mut a = cast::helper(0.86, p(197.0, 190.0)).bust(90.0);
        a.turn = -50.0;
        a.look = [-42.0, -8.0, 0.0];
        a.top.1 = 0.94;
        a.lean = -6.0;
        a.arms[1].z = Z::Gone;
        a.arms[0] = arm(150.0, 150.0, -1.0, Z::Behind, Hold::Rest).aim(160.0);
        a.draw(g);
    });
    s.group(5.2, wide_board);
    s.group(4.8, |g| {
        let mut a = cast::helper(0.86, p(197.0, 190.0)).bust(90.0);
        a.turn = -50.0;
        a.lean = -6.0;
        a.top.1 = 0.8;
        a.arms[1] = arm(166.0, 152.0, -1.0, Z::Front, Hold::Rest).aim(164.0);
        a.draw_arm(1, g);
    });
    s.group(4.8, |g| {
        let mut c = cast::main_child(0.82, p(76.0, 106.0));
        c.turn = 50.0;
        c.look = [50.0, 4.0, 0.0];
        c.top.1 = 0.94;
        c.lean = 4.0;
        c = c.stand();
        c.legs[0] = leg(56.0, 158.0, -1.0, 0.9);
        c.legs[1] = leg(92.0, 157.0, -1.0, 0.9).z(Z::Behind);
        let (top, tip) = (p(121.0, 40.0), p(107.0, 194.0));
        c.arms[1] = arm(113.0, 58.0, 1.0, Z::Behind, Hold::Grip).aim(-30.0);
        c.arms[0] = arm(108.0, 98.0, -1.0, Z::Over, Hold::Grip).aim(10.0);
        c.draw_back(g);
        c.draw_mid(g);
        vest(&c, g, ink::SUN, ink::CORAL);
        paddle(g, top, tip);
        c.draw_front(g);
    });
    props::water(&mut s, 12.0, 228.0, 182.0, 42.0);
    s
}

/// A paddle with a blade at both ends.
fn double_paddle(g: &mut Group, up: P, low: P) {
    let u = (low - up).unit();
    let shaft = Path::poly(&[up + u * 24.0, low - u * 24.0], false);
    g.bar(shaft, ink::HAIR_BROWN, 6.5);
    blade(g, low, u);
    blade(g, up, u * -1.0);
}

fn kayak_hull(g: &mut Group) {
    let hull = "M54 164C86 152 108 148 126 148L178 148C198 149 216 154 230 166C216 184 198 194 176 196\
                    L112 196C86 194 66 184 54 164Z";
    g.fill(Path::read(hull), ink::SUN);
    g.mark(
        Path::read("M66 169C110 178 184 178 220 170"),
        ink::CORAL,
        6.0,
    );
    g.mark(
        Path::read("M118 155C132 161 170 161 184 155"),
        ink::INK,
        7.0,
    );
}

fn kayak() -> Scene {
    let mut s = Scene::default();
    s.group(4.8, |g| {
        let mut a = cast::helper_dark(0.98, p(42.0, 200.0)).bust(94.0);
        a.turn = 50.0;
        a.look = [48.0, 6.0, 0.0];
        a.top.1 = 0.94;
        a.arms[0] = arm(66.0, 152.0, 1.0, Z::Gone, Hold::Rest);
        a.arms[1].z = Z::Gone;
        a.draw(g);
    });
    let mut c = cast::main_girl(1.08, p(150.0, 172.0)).bust(57.0);
    c.turn = 40.0;
    c.look = [46.0, 0.0, 0.0];
    c.top.1 = 0.94;
    c.lean = 4.0;
    c.arms[1] = arm(186.0, 105.0, 1.0, Z::Front, Hold::Grip).aim(-40.0);
    c.arms[0] = arm(137.0, 146.0, 1.0, Z::Over, Hold::Grip).aim(40.0);
    s.group(4.8, |g| {
        let mut far = c;
        for a in &mut far.arms {
            a.z = Z::Gone;
        }
        far.draw_back(g);
        far.draw_mid(g);
        vest(&c, g, ink::SUN, ink::CORAL);
        far.draw_front(g);
    });
    s.group(5.2, kayak_hull);
    s.group(4.8, |g| {
        let mut a = cast::helper_dark(0.98, p(42.0, 200.0)).bust(94.0);
        a.turn = 50.0;
        a.top.1 = 0.84;
        a.arms[0] = arm(74.0, 158.0, 1.0, Z::Front, Hold::Rest).aim(24.0);
        a.draw_arm(0, g);
    });
    s.group(4.8, |g| {
        double_paddle(g, p(222.0, 60.0), p(98.0, 198.0));
        for i in [1, 0] {
            c.draw_arm(i, g);
        }
    });
    props::water(&mut s, 12.0, 228.0, 188.0, 36.0);
    s
}

fn get_in_boat() -> Scene {
    let mut s = Scene::default();
    props::sand(&mut s, 12.0, 120.0, 208.0, 15.0);
    s.group(4.8, |g| {
        let mut a = cast::helper(0.88, p(190.0, 174.0)).bust(76.0);
        a.turn = -40.0;
        a.look = [-44.0, 6.0, 0.0];
        a.lean = -4.0;
        a.arms[1] = arm(206.0, 150.0, -1.0, Z::Front, Hold::Rest).aim(110.0);
        a.arms[0] = arm(124.0, 112.0, -1.0, Z::Front, Hold::Grip).aim(170.0);
        a.draw(g);
    });
    s.group(4.8, |g| {
        let mut c = cast::main_child(0.92, p(64.0, 132.0));
        c.turn = 60.0;
        c.look = [54.0, 6.0, 0.0];
        c.lean = 8.0;
        c.top.1 = 0.94;
        c = c.stand();
        c.legs[0] = leg(54.0, 197.0, -1.0, 0.9);
        c.legs[1] = leg(118.0, 158.0, -1.0, 0.9).z(Z::Behind).knee(106.0, 130.0);
        c.arms[1] = arm(112.0, 112.0, 1.0, Z::Behind, Hold::Grip).aim(-6.0);
        c.arms[0] = arm(42.0, 140.0, -1.0, Z::Front, Hold::Rest);
        c.draw_back(g);
        c.draw_mid(g);
        vest(&c, g, ink::SUN, ink::CORAL);
        c.draw_front(g);
    });
    s.group(5.2, |g| {
        let hull = "M82 146C100 158 130 160 160 160C190 160 212 158 228 144C232 176 214 200 190 202\
                    L116 202C94 198 80 176 82 146Z";
        g.fill(Path::read(hull), ink::SUN);
        g.mark(
            Path::read("M86 160C104 172 130 173 160 173C190 173 212 170 226 158"),
            ink::CORAL,
            6.0,
        );
    });
    props::water(&mut s, 80.0, 228.0, 190.0, 34.0);
    s
}

/// The rudder with its tiller.
fn rudder(g: &mut Group) {
    g.fill(
        Path::read("M34 138L54 138L58 176C58 196 50 210 32 214C24 206 22 190 24 176Z"),
        ink::CORAL,
    );
    g.bar(
        Path::poly(&[p(42.0, 140.0), p(102.0, 138.0)], false),
        ink::SUN,
        10.0,
    );
}

fn steer() -> Scene {
    let mut s = Scene::default();
    s.group(4.8, |g| {
        let mut a = cast::helper(0.98, p(178.0, 200.0)).bust(94.0);
        a.turn = -40.0;
        a.look = [-44.0, 6.0, 0.0];
        a.top.1 = 0.94;
        a.arms[0].z = Z::Gone;
        a.arms[1] = arm(196.0, 172.0, -1.0, Z::Front, Hold::Rest);
        a.draw_back(g);
        a.draw_mid(g);
        vest(&a, g, ink::SUN, ink::CORAL);
        a.draw_front(g);
    });
    let mut c = cast::main_child(1.1, p(118.0, 178.0)).bust(57.0);
    c.turn = -50.0;
    c.look = [-50.0, 4.0, 0.0];
    c.top.1 = 0.94;
    c.arms[1] = arm(94.0, 140.0, -1.0, Z::Over, Hold::Grip).aim(176.0);
    c.arms[0] = arm(90.0, 140.0, -1.0, Z::Gone, Hold::Grip).aim(180.0);
    s.group(4.8, |g| {
        let mut far = c;
        far.arms[1].z = Z::Gone;
        far.draw_back(g);
        far.draw_mid(g);
        vest(&c, g, ink::SUN, ink::CORAL);
        far.draw_front(g);
    });
    s.group(5.2, |g| {
        g.fill(
            Path::read("M56 158C120 160 176 158 228 146C228 174 206 200 182 204L72 204C64 204 60 196 58 188Z"),
            ink::WHITE,
        );
        g.mark(Path::read("M60 172C120 174 176 172 222 162"), ink::TEAL, 6.0);
    });
    props::water(&mut s, 12.0, 228.0, 188.0, 38.0);
    s.group(5.2, rudder);
    s.group(4.8, |g| c.draw_arm(1, g));
    s
}
