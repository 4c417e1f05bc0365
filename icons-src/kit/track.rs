//! The track, the course and games with large things: start line, long jump,
//! tunnel, parachute, sitting down and standing up.

use super::body::{Figure, Z, arm, leg};
use super::cast;
use super::geom::{P, Path, Seg, p};
use super::hall::{bow, rail};
use super::hands::{Hand, Hold, hand};
use super::paint::{Group, Scene, ink};
use super::props;

/// The drawings of this file.
pub fn symbols() -> Vec<(&'static str, String)> {
    vec![
        ("start_line", start_line().svg("start_line", "Start line")),
        ("long_jump", long_jump().svg("long_jump", "Long jump")),
        ("tunnel", tunnel().svg("tunnel", "Tunnel")),
        (
            "obstacle_course",
            obstacle_course()
                .zoom(0.91)
                .svg("obstacle_course", "Course"),
        ),
        (
            "parachute",
            parachute().zoom(0.97).svg("parachute", "Parachute"),
        ),
        ("sit_down", sit_down().svg("sit_down", "Sit down")),
        ("stand_up", stand_up().svg("stand_up", "Stand up")),
    ]
}

/// A child's own view: the shoes at the line, the lanes ahead.
fn start_line() -> Scene {
    let mut s = Scene::default();
    s.group(0.0, |g| {
        g.dot(Path::read("M24 14L216 14C223 14 228 19 228 26L228 214C228 221 223 226 216 226L24 226C17 226 12 221 12 214L12 26C12 19 17 14 24 14Z"), ink::CORAL);
        for (a, b) in [(62.0, 30.0), (101.0, 90.0), (139.0, 150.0), (178.0, 210.0)] {
            let d = Path::poly(&[p(a, 14.0), p(b, 226.0)], false);
            g.band(d, ink::WHITE, 6.0);
        }
        g.dot(Path::read("M10 74L230 74L230 97L10 97Z"), ink::WHITE);
    });
    for x in [80.0, 160.0] {
        s.group(5.4, |g| shoe(g, p(x, 152.0)));
    }
    s
}

/// A shoe seen from above with the leg that stands in it.
fn shoe(g: &mut Group, at: P) {
    let put = |d: &str| Path::read(d).put(at, 1.0, 0.0, false);
    g.fill(
        put("M-28 28C-34-4-30-34-18-48C-8-56 8-56 18-48C30-34 34-4 28 28C26 42-26 42-28 28Z"),
        ink::SUN,
    );
    g.dot(
        put("M-27-32C-24-54 24-54 27-32C16-40-16-40-27-32Z"),
        ink::WHITE,
    );
    for y in [-22.0, -10.0] {
        g.mark(
            Path::poly(&[at + p(-13.0, y), at + p(13.0, y)], false),
            ink::INK,
            4.6,
        );
    }
    g.over(
        put("M-19 16C-18 2 18 2 19 16L25 70L-25 70Z"),
        super::head::SKIN.0,
    );
    g.over(put("M-19 16C-18 2 18 2 19 16L21 34L-21 34Z"), ink::WHITE);
}

fn long_jump() -> Scene {
    let mut s = Scene::default();
    s.group(0.0, |g| {
        g.dot(Path::read("M24 190L78 190L72 220L14 220Z"), ink::CORAL);
        g.dot(Path::read("M60 190L70 190L64 220L54 220Z"), ink::WHITE);
        g.dot(Path::read("M82 190L216 190L228 220L76 220Z"), ink::SAND);
        for (x, y) in [
            (98.0, 210.0),
            (120.0, 198.0),
            (176.0, 213.0),
            (204.0, 198.0),
        ] {
            props::grain(g, p(x, y));
        }
    });
    s.group(0.0, |g| {
        for (x, y) in [(60.0, 176.0), (62.0, 158.0), (67.0, 141.0)] {
            g.dot(Path::circle(p(x, y), 4.2), ink::CHARCOAL);
        }
        g.dot(
            Path::ellipse(p(148.0, 204.0), 34.0, 5.0, 0.0),
            ink::HAIR_FAIR,
        );
    });
    s.group(5.2, |g| {
        let mut c = cast::main_child(1.04, p(112.0, 122.0));
        c.turn = 74.0;
        c.lean = 16.0;
        c.look = [66.0, 2.0, 0.0];
        c = c.stand();
        c.arms[0] = arm(178.0, 70.0, 1.0, Z::Front, Hold::Flat).aim(-20.0);
        c.arms[1] = arm(172.0, 48.0, 1.0, Z::Behind, Hold::Flat).aim(-44.0);
        c.legs[0] = leg(184.0, 150.0, -1.0, 1.0).tilt(-50.0);
        c.legs[1] = leg(190.0, 136.0, -1.0, 1.0).tilt(-50.0).z(Z::Behind);
        c.draw(g);
    });
    s
}

/// The tube from its dark mouth at `c` to the left: first what lies behind a
/// child who comes out, then what lies before.
fn tube(g: &mut Group, c: P, rx: f64, ry: f64, len: f64, front: bool) {
    let k = super::geom::KAPPA;
    if !front {
        g.fill(Path::ellipse(c, rx, ry, 0.0), ink::CHARCOAL);
        return;
    }
    let wall = |x0: f64, x1: f64| {
        let half = |x: f64, up: bool| {
            let m = p(x - rx, c.y);
            let (a, b) = (p(x, c.y - ry), p(x, c.y + ry));
            let (h, t) = (p(0.0, ry * k), p(rx * k, 0.0));
            let d = vec![Seg::M(a), Seg::C(a - t, m - h, m), Seg::C(m + h, b - t, b)];
            if up { Path(d).reversed() } else { Path(d) }
        };
        half(x1, false).then(half(x0, true), true).close()
    };
    g.over(wall(c.x - len, c.x), ink::TEAL);
    let n = 4.0;
    for i in 0..2 {
        let x = c.x - len + len / n * (f64::from(i) * 2.0 + 1.0);
        g.over(wall(x, x + len / n), ink::SUN);
    }
}

fn crawler(k: f64, hip: P) -> Figure {
    let mut c = cast::main_child(k, hip);
    c.turn = 80.0;
    c.lean = 72.0;
    c.look = [62.0, -4.0, 0.0];
    c = c.stand();
    let at = |x: f64, y: f64| hip + p(x, y) * k;
    let (a, b) = (at(62.0, 46.0), at(86.0, 38.0));
    c.arms[0] = arm(a.x, a.y, -1.0, Z::Front, Hold::Rest).aim(30.0);
    c.arms[1] = arm(b.x, b.y, -1.0, Z::Behind, Hold::Rest).aim(20.0);
    let (knee, ankle) = (at(14.0, 40.0), at(-14.0, 26.0));
    for l in &mut c.legs {
        *l = leg(ankle.x, ankle.y, -1.0, 1.0)
            .tilt(90.0)
            .knee(knee.x, knee.y);
    }
    c.legs[1].z = Z::Behind;
    c
}

fn tunnel() -> Scene {
    let mut s = Scene::default();
    let mouth = p(112.0, 128.0);
    s.group(5.2, |g| tube(g, mouth, 34.0, 84.0, 76.0, false));
    s.group(5.2, |g| crawler(1.14, p(102.0, 144.0)).draw(g));
    s.group(5.2, |g| tube(g, mouth, 34.0, 84.0, 76.0, true));
    s
}

/// A cone for the ground.
fn cone(g: &mut Group, foot: P, h: f64) {
    let at = |x: f64, y: f64| foot + p(x, y) * h;
    g.fill(
        Path::poly(
            &[at(-0.1, -1.0), at(0.1, -1.0), at(0.32, 0.0), at(-0.32, 0.0)],
            true,
        ),
        ink::CORAL,
    );
    g.dot(
        Path::poly(
            &[
                at(-0.17, -0.66),
                at(0.17, -0.66),
                at(0.23, -0.38),
                at(-0.23, -0.38),
            ],
            true,
        ),
        ink::WHITE,
    );
    g.over(Path::block(foot, h * 0.86, h * 0.16, 3.0, 0.0), ink::CORAL);
}

fn obstacle_course() -> Scene {
    let mut s = Scene::default();
    s.group(4.6, |g| {
        for x in [28.0, 98.0] {
            rail(g, p(x, 48.0), p(x, 70.0), ink::CHARCOAL, 8.0);
        }
        g.over(
            Path::block(p(63.0, 44.0), 98.0, 14.0, 4.0, 0.0),
            ink::HAIR_FAIR,
        );
    });
    s.group(4.6, |g| {
        g.bar(
            Path::ellipse(p(178.0, 56.0), 42.0, 17.0, 0.0),
            ink::SUN,
            7.0,
        );
    });
    s.group(4.6, |g| cone(g, p(36.0, 214.0), 60.0));
    let flip = |g: Group| g.map(|q| p(240.0 - q.x, q.y));
    let mouth = p(76.0, 160.0);
    let mut back = Group::new(4.6);
    tube(&mut back, mouth, 24.0, 58.0, 60.0, false);
    let mut child = Group::new(4.6);
    crawler(0.86, p(70.0, 170.0)).draw(&mut child);
    let mut front = Group::new(4.6);
    tube(&mut front, mouth, 24.0, 58.0, 60.0, true);
    for g in [back, child, front] {
        s.add(flip(g));
    }
    s
}

/// The striped dome of the cloth: top at `top`, rim `half` to each side.
fn dome(g: &mut Group, top: P, half: f64, rim: f64) {
    let colours = [
        ink::CORAL,
        ink::SUN,
        ink::TEAL,
        ink::WHITE,
        ink::TEAL,
        ink::SUN,
        ink::CORAL,
    ];
    let n = colours.len();
    let edge = |i: usize| {
        let u = (180.0 - 180.0 * i as f64 / n as f64).to_radians().cos();
        p(top.x + u * half, rim - (1.0 - u * u) * 3.0)
    };
    for (i, c) in colours.iter().enumerate() {
        let (a, b) = (edge(i), edge(i + 1));
        let bulge = |q: P| p(q.x, top.y + (rim - top.y) * 0.02);
        let wedge = vec![
            Seg::M(top),
            Seg::Q(bulge(a).to(p(top.x, bulge(a).y), 0.06), a),
            Seg::Q(a.to(b, 0.5) + p(0.0, 14.0), b),
            Seg::Q(bulge(b).to(p(top.x, bulge(b).y), 0.06), top),
            Seg::Z,
        ];
        g.fill(Path(wedge), c);
        if i > 0 {
            let seam = vec![
                Seg::M(top),
                Seg::Q(bulge(a).to(p(top.x, bulge(a).y), 0.06), a),
            ];
            g.mark(Path(seam), ink::WHITE, 2.6);
        }
    }
}

fn parachute() -> Scene {
    let mut s = Scene::default();
    type Who = fn(f64, P) -> Figure;
    let kids: [(Who, f64, f64, f64, f64); 4] = [
        (cast::puffs, 0.7, 92.0, 152.0, 0.0),
        (cast::bob, 0.7, 148.0, 152.0, 0.0),
        (cast::main_child, 0.76, 40.0, 158.0, 30.0),
        (cast::muffs, 0.76, 200.0, 158.0, -30.0),
    ];
    for (who, k, x, y, yaw) in kids {
        s.group(4.2, |g| {
            let mut c = who(k, p(x, y));
            c.look = [yaw, -14.0, 0.0];
            c = c.stand();
            for i in 0..2 {
                let d = if i == 0 { -1.0 } else { 1.0 };
                let to = p(x + d * 26.0 * k / 0.72, 78.0);
                c.arms[i] = arm(to.x, to.y, d, Z::Front, Hold::Grip).aim(-90.0);
            }
            c.draw(g);
        });
    }
    s.group(4.8, |g| dome(g, p(120.0, 16.0), 106.0, 68.0));
    s.group(4.2, |g| {
        for (who, k, x, _, _) in kids {
            for d in [-1.0, 1.0] {
                let h = Hand {
                    wrist: p(x + d * 26.0 * k / 0.72, 78.0),
                    deg: -90.0,
                    len: 18.5 * k,
                    flip: d < 0.0,
                    hold: Hold::Grip,
                };
                hand(g, h, who(k, p(x, 0.0)).skin);
            }
        }
    });
    s
}

fn low_bench(s: &mut Scene) {
    s.group(5.0, |g| {
        for x in [30.0, 88.0] {
            rail(g, p(x, 192.0), p(x, 220.0), ink::CHARCOAL, 9.0);
        }
        g.over(Path::block(p(59.0, 192.0), 92.0, 16.0, 5.0, 0.0), ink::SUN);
    });
}

fn on_bench() -> Figure {
    let mut c = cast::main_child(0.96, p(80.0, 172.0));
    c.turn = 78.0;
    c.look = [66.0, 4.0, 0.0];
    c = c.stand();
    c.arms[0] = arm(108.0, 162.0, 1.0, Z::Front, Hold::Rest).aim(20.0);
    c.arms[1].z = Z::Gone;
    c.legs[0] = leg(120.0, 211.0, -1.0, 1.0).knee(117.0, 176.0);
    c.legs[1] = leg(128.0, 209.0, -1.0, 1.0).knee(121.0, 174.0).z(Z::Behind);
    c
}

fn upright() -> Figure {
    let mut c = cast::main_child(0.96, p(150.0, 138.0));
    c.turn = 78.0;
    c.look = [66.0, 4.0, 0.0];
    c = c.stand();
    c.arms[1].z = Z::Gone;
    c
}

fn sit_down() -> Scene {
    let mut s = Scene::default();
    let mut pale = Group::new(5.0);
    upright().draw(&mut pale);
    s.add(pale.ghost());
    low_bench(&mut s);
    s.group(5.2, |g| on_bench().draw(g));
    s.group(0.0, |g| bow(g, p(136.0, 98.0), 82.0, -104.0, -149.0));
    s
}

/// Turned the other way than sitting down, so that the two are told apart at a glance.
fn stand_up() -> Scene {
    let mut s = Scene::default();
    low_bench(&mut s);
    let mut pale = Group::new(5.0);
    on_bench().draw(&mut pale);
    s.add(pale.ghost());
    s.group(5.2, |g| upright().draw(g));
    s.group(0.0, |g| bow(g, p(136.0, 102.0), 82.0, -152.0, -108.0));
    s.mirrored()
}
