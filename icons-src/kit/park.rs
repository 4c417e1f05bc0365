//! The park and the playground.

use super::body::{Figure, Z, arm, leg};
use super::cast;
use super::geom::{P, Path, p, polar};
use super::hall::rail;
use super::hands::Hold;
use super::paint::{Group, Scene, ink};

/// The drawings of this file.
pub fn symbols() -> Vec<(&'static str, String)> {
    vec![
        ("swing", swing().svg("swing", "Swing")),
        ("slide", slide().svg("slide", "Slide")),
        ("path_walk", path_walk().svg("path_walk", "Path walk")),
        ("bench", bench().svg("bench", "Bench")),
        ("see_saw", see_saw().svg("see_saw", "See-saw")),
        (
            "climbing_frame",
            climbing_frame().svg("climbing_frame", "Climbing frame"),
        ),
    ]
}

fn grass(s: &mut Scene, x0: f64, x1: f64, y: f64, half: f64) {
    s.group(0.0, |g| {
        g.dot(
            Path::ellipse(p((x0 + x1) / 2.0, y), (x1 - x0) / 2.0, half, 0.0),
            ink::LEAF,
        );
    });
}

fn swing() -> Scene {
    let mut s = Scene::default();
    let top = p(94.0, 24.0);
    let seat = top + polar(66.0, 152.0);
    s.group(0.0, |g| {
        for x in [22.0, 166.0] {
            g.mark(Path::poly(&[top, p(x, 222.0)], false), ink::GREY, 11.0);
        }
        g.dot(Path::circle(top, 12.0), ink::GREY);
    });
    let along = (seat - top).unit();
    let grip = top + along * 92.0;
    s.group(4.6, |g| {
        let mut c = cast::main_girl(0.94, seat + p(-10.0, -12.0));
        c.turn = 80.0;
        c.lean = -44.0;
        c.look = [74.0, -4.0, -24.0];
        c = c.stand();
        c.arms[0] = arm(grip.x - 8.0, grip.y + 4.0, 1.0, Z::Over, Hold::Grip).aim(-20.0);
        c.arms[1].z = Z::Gone;
        let h = c.hip;
        c.legs[0] = leg(h.x + 64.0, h.y - 6.0, -1.0, 1.0).tilt(-60.0);
        c.legs[1] = leg(h.x + 60.0, h.y + 8.0, -1.0, 1.0)
            .tilt(-50.0)
            .z(Z::Behind);
        c.draw_back(g);
        c.draw_mid(g);
        let n = along.left();
        rail(g, seat - n * 22.0, seat + n * 22.0, ink::SUN, 10.0);
        rail(g, top, seat, ink::SUN, 5.0);
        c.draw_front(g);
    });
    s
}

fn slide() -> Scene {
    let mut s = Scene::default();
    s.group(5.0, |g| {
        rail(g, p(78.0, 120.0), p(62.0, 222.0), ink::CHARCOAL, 9.0);
        rail(g, p(38.0, 96.0), p(22.0, 222.0), ink::CHARCOAL, 9.0);
        for i in 0..4 {
            let y = 134.0 + f64::from(i) * 25.0;
            let x = 33.0 - (y - 134.0) * 0.12;
            rail(g, p(x, y), p(x + 42.0, y), ink::CHARCOAL, 7.0);
        }
        rail(g, p(150.0, 178.0), p(150.0, 222.0), ink::CHARCOAL, 9.0);
    });
    let mut c = cast::main_child(0.8, p(74.0, 106.0));
    c.turn = 76.0;
    c.lean = -6.0;
    c.look = [62.0, 6.0, 0.0];
    c = c.stand();
    c.arms[0] = arm(100.0, 108.0, 1.0, Z::Front, Hold::Grip).aim(40.0);
    c.arms[1] = arm(112.0, 98.0, 1.0, Z::Behind, Hold::Grip).aim(40.0);
    c.legs[0] = leg(126.0, 130.0, -1.0, 1.0).tilt(-20.0);
    c.legs[1] = leg(132.0, 126.0, -1.0, 1.0).tilt(-20.0).z(Z::Behind);
    s.group(5.0, |g| {
        let chute = "M30 112L88 112C116 112 150 196 190 202L226 202L226 220L184 220\
                     C138 214 112 132 84 130L30 130Z";
        c.draw_back(g);
        c.draw_mid(g);
        g.over(Path::read(chute), ink::SUN);
        c.draw_front(g);
    });
    s
}

fn tree(g: &mut Group, foot: P, h: f64, r: f64) {
    rail(g, foot, foot - p(0.0, h * 0.6), ink::HAIR_BROWN, r * 0.4);
    let c = foot - p(0.0, h - r);
    let crown = "M-.5.9C-1 1-1.3.3-.9-.1C-1-.8-.3-1.2.1-.9C.7-1.1 1.2-.5.9 0C1.3.4.9 1 .4.9C.1 1.1-.3 1.1-.5.9Z";
    g.over(Path::read(crown).put(c, r, 0.0, false), ink::LEAF);
}

fn path_walk() -> Scene {
    let mut s = Scene::default();
    s.group(0.0, |g| {
        g.dot(Path::read("M14 136C60 122 180 122 226 136L226 216C226 224 220 228 212 228L28 228C20 228 14 224 14 216Z"), ink::LEAF);
        let way = "M44 228C44 196 156 186 164 166C170 152 132 146 138 127L158 127C160 144 222 146 220 170C218 196 196 204 200 228Z";
        g.mark(Path::read(way), ink::WHITE, 5.0);
        g.dot(Path::read(way), ink::GREY_LIGHT);
    });
    s.group(4.8, |g| tree(g, p(42.0, 162.0), 146.0, 32.0));
    s.group(4.8, |g| tree(g, p(196.0, 140.0), 122.0, 27.0));
    s.group(4.8, |g| {
        let mut a = cast::parent(0.76, p(96.0, 118.0));
        a.turn = 40.0;
        a.look = [40.0, 8.0, 0.0];
        a = a.stand();
        a.legs[0] = leg(80.0, 196.0, -1.0, 0.9);
        a.legs[1] = leg(112.0, 198.0, -1.0, 0.9).z(Z::Behind);
        a.arms[1] = arm(132.0, 124.0, -1.0, Z::Behind, Hold::Rest);
        a.draw(g);
        let mut c = cast::main_child(0.82, p(158.0, 150.0));
        c.turn = 40.0;
        c.look = [10.0, -6.0, 0.0];
        c = c.stand();
        c.arms[0] = arm(136.0, 132.0, 1.0, Z::Front, Hold::Rest).aim(200.0);
        c.arms[1] = arm(185.0, 144.0, -1.0, Z::Behind, Hold::Rest);
        c.legs[0] = leg(144.0, 209.0, -1.0, 0.9);
        c.legs[1] = leg(174.0, 208.0, -1.0, 0.9);
        c.draw(g);
    });
    s
}

fn bench() -> Scene {
    let mut s = Scene::default();
    s.group(5.2, |g| {
        for x in [36.0, 204.0] {
            rail(g, p(x, 90.0), p(x, 222.0), ink::CHARCOAL, 10.0);
        }
        for y in [98.0, 122.0] {
            g.over(
                Path::block(p(120.0, y), 212.0, 16.0, 5.0, 0.0),
                ink::HAIR_FAIR,
            );
        }
        g.over(
            Path::block(p(120.0, 164.0), 212.0, 20.0, 5.0, 0.0),
            ink::HAIR_FAIR,
        );
    });
    s.group(5.2, |g| {
        let mut c = cast::main_girl(1.02, p(68.0, 142.0));
        c.turn = 52.0;
        c.look = [34.0, 2.0, 0.0];
        c = c.stand();
        c.arms[0] = arm(96.0, 138.0, 1.0, Z::Front, Hold::Rest).aim(30.0);
        c.arms[1] = arm(110.0, 134.0, 1.0, Z::Behind, Hold::Rest).aim(30.0);
        c.legs[0] = leg(100.0, 206.0, -1.0, 0.8).knee(101.0, 158.0);
        c.legs[1] = leg(124.0, 203.0, -1.0, 0.8).knee(121.0, 154.0);
        c.draw(g);
    });
    s.group(5.2, |g| {
        g.bar(Path::read("M162 108C162 86 194 86 194 108"), ink::TEAL, 6.0);
        g.over(
            Path::read("M152 116C152 100 204 100 204 116L208 158C208 164 148 164 148 158Z"),
            ink::SUN,
        );
        g.dot(
            Path::block(p(178.0, 142.0), 36.0, 24.0, 6.0, 0.0),
            ink::CORAL,
        );
    });
    s
}

/// A child astride a plank that rises by `deg` toward the outer end.
fn rider(mut c: Figure, seat: P, dir: f64, deg: f64, up: bool) -> Figure {
    c.hip = seat - p(0.0, 13.0);
    c.turn = dir * 78.0;
    c.lean = deg;
    c.look = [dir * 60.0, 0.0, 0.0];
    c = c.stand();
    let (near, far) = if dir > 0.0 { (0, 1) } else { (1, 0) };
    c.arms[near] = arm(
        seat.x + dir * 38.0,
        seat.y - 18.0,
        dir,
        Z::Front,
        Hold::Grip,
    );
    c.arms[far].z = Z::Gone;
    let x = seat.x + dir * if up { 16.0 } else { 26.0 };
    let y = seat.y + if up { 46.0 } else { 28.0 };
    c.legs[near] = leg(x, y, -dir, dir).tilt(if up { dir * 24.0 } else { 0.0 });
    c.legs[far].z = Z::Gone;
    c
}

fn see_saw() -> Scene {
    let mut s = Scene::default();
    let (mid, deg) = (p(120.0, 172.0), -16.0);
    let at = |x: f64| mid + polar(deg, x);
    let kids = [
        rider(cast::main_child(0.82, mid), at(-78.0), 1.0, deg, false),
        rider(cast::puffs(0.82, mid), at(78.0), -1.0, deg, true),
    ];
    s.group(5.0, |g| {
        let base = [p(120.0, 166.0), p(150.0, 222.0), p(90.0, 222.0)];
        g.fill(Path::poly(&base, true), ink::CHARCOAL);
    });
    s.group(5.0, |g| {
        for c in &kids {
            c.draw_back(g);
            c.head();
        }
        rail(g, at(-104.0), at(104.0), ink::SUN, 12.0);
        for x in [-40.0, 40.0] {
            rail(g, at(x), at(x) - p(0.0, 22.0), ink::CHARCOAL, 6.0);
        }
        for c in &kids {
            c.draw_mid(g);
            c.draw_front(g);
        }
    });
    s
}

fn climbing_frame() -> Scene {
    let mut s = Scene::default();
    grass(&mut s, 14.0, 226.0, 216.0, 10.0);
    let (mid, high) = (p(120.0, 216.0), 104.0);
    let ring = |rx: f64| {
        let pts: Vec<P> = (0..=12)
            .map(|i| {
                let q = polar(180.0 + 15.0 * f64::from(i), 1.0);
                mid + p(q.x * rx, q.y * high)
            })
            .collect();
        Path::smooth(&pts, false)
    };
    s.group(4.4, |g| {
        for rx in [0.5, 54.0] {
            g.bar(ring(rx), ink::SUN, 7.0);
        }
        for v in [0.34_f64, 0.7] {
            let half = p((1.0 - v * v).sqrt() * 100.0, 0.0);
            let at = mid - p(0.0, v * high);
            rail(g, at - half, at + half, ink::SUN, 7.0);
        }
        g.bar(ring(100.0), ink::SUN, 8.0);
    });
    s.group(5.0, |g| {
        let mut c = cast::main_girl(0.86, p(120.0, 102.0));
        c = c.stand();
        for i in 0..2 {
            let d = if i == 0 { -1.0 } else { 1.0 };
            c.arms[i] = arm(120.0 + d * 40.0, 106.0, -d, Z::Front, Hold::Grip).aim(90.0);
            c.legs[i] = leg(120.0 + d * 15.0, 156.0, 1.0, d * 0.7).knee(120.0 + d * 17.0, 122.0);
        }
        c.draw(g);
    });
    s
}
