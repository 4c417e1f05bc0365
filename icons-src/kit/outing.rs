//! Outings: a rock pool, a den.

use super::body::{Bottom, Z, arm, leg};
use super::cast;
use super::geom::{P, Path, p};
use super::hands::Hold;
use super::paint::{Group, Scene, ink};
use super::people_b::seated;

/// The drawings of this file.
pub fn symbols() -> Vec<(&'static str, String)> {
    vec![
        ("rock_pool", rock_pool().svg("rock_pool", "Rock pool")),
        ("build_den", build_den().svg("build_den", "Den")),
    ]
}

fn crab(g: &mut Group, c: P) {
    let u = |x: f64, y: f64| c + p(x, y) * 0.88;
    for s in [-1.0, 1.0] {
        for (x, y) in [(34.0, 2.0), (34.0, 11.0), (29.0, 19.0)] {
            let leg = [
                u(s * 16.0, 6.0),
                u(s * x * 0.85, y - 5.0),
                u(s * x, y + 3.0),
            ];
            g.bar(Path::smooth(&leg, false), ink::CORAL, 4.5);
        }
        let arm = [u(s * 17.0, -2.0), u(s * 31.0, -8.0), u(s * 28.0, -20.0)];
        g.bar(Path::smooth(&arm, false), ink::CORAL, 5.0);
        g.fill(
            Path::read("M0 6C-10 2-11-10-4-17C-3-10 0-7 2-6C3-10 6-14 10-15C13-6 8 4 0 6Z")
                .map(|q| u(s * (28.0 + q.x), q.y - 20.0)),
            ink::CORAL,
        );
    }
    g.fill(Path::ellipse(u(0.0, 4.0), 24.0, 16.0, 0.0), ink::CORAL);
    for x in [-8.0, 8.0] {
        g.dot(Path::circle(u(x, -2.0), 5.5), ink::WHITE);
        g.dot(Path::circle(u(x, -2.0), 3.0), ink::INK);
    }
}

fn rock_pool() -> Scene {
    let mut s = Scene::default();
    s.group(4.6, |g| {
        let mut a = cast::helper_dark(0.86, p(202.0, 164.0));
        a.turn = -60.0;
        a.look = [-50.0, 20.0, 0.0];
        a.lean = -16.0;
        a.bottom = Bottom::Legs(ink::CHARCOAL, 0.97);
        a = a.stand();
        a.legs[1] = leg(190.0, 200.0, 1.0, -1.0).knee(164.0, 156.0);
        a.legs[0] = leg(182.0, 198.0, 1.0, -1.0).knee(156.0, 156.0).z(Z::Behind);
        a.arms[1] = arm(160.0, 150.0, -1.0, Z::Front, Hold::Rest).aim(150.0);
        a.arms[0].z = Z::Gone;
        a.draw(g);
    });
    s.group(4.6, |g| {
        let mut c = cast::main_child(0.96, p(42.0, 166.0));
        c.turn = 60.0;
        c.look = [56.0, 24.0, 0.0];
        c.lean = 20.0;
        c = c.stand();
        c.legs[0] = leg(44.0, 202.0, -1.0, 1.0).knee(76.0, 168.0);
        c.legs[1] = leg(52.0, 200.0, -1.0, 1.0).knee(84.0, 164.0).z(Z::Behind);
        c.arms[0] = arm(98.0, 152.0, 1.0, Z::Over, Hold::Point).aim(24.0);
        c.arms[1].z = Z::Gone;
        c.draw(g);
    });
    s.group(5.0, |g| {
        for (x, y, rx, ry) in [(58.0, 208.0, 26.0, 15.0), (184.0, 208.0, 28.0, 16.0), (90.0, 218.0, 26.0, 11.0), (150.0, 219.0, 30.0, 11.0)] {
            g.over(Path::ellipse(p(x, y), rx, ry, 0.0), ink::GREY);
        }
        g.over(Path::ellipse(p(120.0, 200.0), 66.0, 21.0, 0.0), ink::WATER);
        g.mark(Path::read("M66 200C72 195 78 195 84 200M156 200C162 195 168 195 174 200M108 216C114 212 126 212 132 216"), ink::WHITE, 3.4);
    });
    s.group(4.0, |g| crab(g, p(120.0, 190.0)));
    s
}

fn build_den() -> Scene {
    let mut s = Scene::default();
    s.group(5.0, |g| {
        for (a, b) in [(p(126.0, 24.0), p(226.0, 216.0)), (p(150.0, 20.0), p(176.0, 218.0)), (p(166.0, 24.0), p(86.0, 218.0)), (p(134.0, 16.0), p(130.0, 120.0))] {
            g.bar(Path::poly(&[a, b], false), ink::HAIR_BROWN, 9.0);
        }
        g.over(
            Path::read("M148 52C160 50 168 60 176 76C192 106 206 140 220 180C208 190 196 182 184 190C176 196 168 188 160 192\
                        C162 150 158 100 140 70Z"),
            ink::SUN,
        );
        for (x, y) in [(164.0, 84.0), (180.0, 120.0), (172.0, 154.0), (200.0, 160.0)] {
            g.dot(Path::circle(p(x, y), 6.0), ink::CORAL);
        }
    });
    s.group(4.6, |g| {
        let mut c = seated(0.74, p(138.0, 210.0), -14.0);
        let f = cast::curls(1.0, p(0.0, 0.0));
        c.hair = f.hair;
        c.skin = f.skin;
        c.top.0 = ink::TEAL;
        c.draw(g);
    });
    s.group(4.8, |g| {
        let mut c = cast::main_child(0.98, p(48.0, 142.0));
        c.turn = 55.0;
        c.look = [50.0, -12.0, 0.0];
        c.lean = 6.0;
        c.shoes = Some(ink::WHITE);
        c = c.stand();
        c.legs[0] = leg(34.0, 208.0, -1.0, 0.9);
        c.legs[1] = leg(64.0, 210.0, -1.0, 0.9).z(Z::Behind);
        c.arms[1] = arm(106.0, 94.0, 1.0, Z::Front, Hold::Grip).aim(-40.0);
        c.arms[0] = arm(84.0, 128.0, 1.0, Z::Over, Hold::Grip).aim(-20.0);
        c.draw_back(g);
        c.draw_mid(g);
        g.bar(
            Path::poly(&[p(80.0, 150.0), p(142.0, 40.0)], false),
            ink::HAIR_BROWN,
            9.0,
        );
        c.draw_front(g);
    });
    s
}
