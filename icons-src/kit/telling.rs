//! What a child tells others: whose turn it is, too loud, not that, my
//! grown-up.

use super::body::{Z, arm, leg};
use super::cast;
use super::geom::{P, Path, p, polar};
use super::hands::Hold;
use super::head::{Eyes, Mouth};
use super::paint::{Group, Scene, ink};
use super::props;

/// The drawings of this file.
pub fn symbols() -> Vec<(&'static str, String)> {
    vec![
        ("more", more().svg("more", "More")),
        (
            "i_dont_like_it",
            dislike().svg("i_dont_like_it", "I don’t like it"),
        ),
        ("too_loud", too_loud().svg("too_loud", "Too loud")),
        ("my_turn", my_turn().svg("my_turn", "My turn")),
        (
            "your_turn",
            your_turn().mirrored().svg("your_turn", "Your turn"),
        ),
        (
            "need_grown_up",
            need_grown_up().svg("need_grown_up", "I need my grown-up"),
        ),
    ]
}

/// A plate with green food seen a little from above.
fn plate(g: &mut Group, at: P) {
    g.fill(Path::ellipse(at, 46.0, 22.0, 0.0), ink::WHITE);
    g.mark(Path::ellipse(at, 32.0, 13.0, 0.0), ink::GREY, 2.8);
    g.over(
        Path::block(at + p(11.0, -12.0), 15.0, 26.0, 6.0, 0.0),
        ink::LEAF,
    );
    let d = "M-26-12C-36-20-30-36-18-34C-16-48 4-50 8-40C22-46 34-30 24-20C22-8-14-4-26-12Z";
    g.over(
        Path::read(d).put(at + p(12.0, -14.0), 1.0, 0.0, false),
        ink::LEAF,
    );
}

fn dislike() -> Scene {
    let mut s = Scene::default();
    s.group(5.4, |g| plate(g, p(180.0, 202.0)));
    s.group(5.4, |g| {
        let mut c = cast::main_child(1.75, p(70.0, 236.0)).bust(52.0).stubs();
        c.look = [-34.0, 0.0, -10.0];
        c.eyes = Eyes::Tight;
        c.mouth = Mouth::Yuck;
        c.arms[1] = arm(122.0, 186.0, 0.5, Z::Front, Hold::Flat).aim(-30.0);
        c.draw(g);
    });
    s
}

/// A loudspeaker whose mouth is at `at` and points along `deg`.
fn horn(g: &mut Group, at: P, deg: f64) {
    let put = |d: &str| Path::read(d).put(at, 1.0, deg, false);
    g.fill(put("M-50 6L-38 4L-34 26L-46 28Z"), ink::CHARCOAL);
    g.over(
        put("M-62-9C-44-10-20-16-2-36L-2 36C-20 16-44 10-62 9Z"),
        ink::SUN,
    );
    g.over(Path::ellipse(at, 10.0, 37.0, deg), ink::CORAL);
    g.dot(Path::ellipse(at, 5.0, 27.0, deg), ink::INK);
}

fn arcs(g: &mut Group, c: P, deg: f64, radii: &[f64]) {
    for r in radii {
        let pts: Vec<P> = (-3..=3)
            .map(|i| c + polar(deg + f64::from(i) * 10.0, *r))
            .collect();
        g.mark(Path::smooth(&pts, false), ink::CORAL, 7.0);
    }
}

fn too_loud() -> Scene {
    let mut s = Scene::default();
    s.group(5.0, |g| horn(g, p(76.0, 66.0), 24.0));
    s.group(0.0, |g| arcs(g, p(36.0, 48.0), 24.0, &[70.0, 87.0]));
    s.group(5.4, |g| {
        let mut c = cast::main_child(1.5, p(150.0, 230.0)).bust(42.0);
        c.eyes = Eyes::Tight;
        c.mouth = Mouth::Frown;
        c.worry = true;
        c.look = [0.0, 0.0, 8.0];
        let h = c.head();
        for (i, d) in [(0, -1.0), (1, 1.0)] {
            let ear = h.spot(90.0 * d, 0.12, 1.0, false).0;
            c.arms[i] =
                arm(ear.x + d * 13.0, ear.y + 21.0, d, Z::Over, Hold::Flat).aim(-90.0 - d * 16.0);
            if i == 0 {
                c.arms[i] = c.arms[i].flip();
            }
        }
        c.draw(g);
    });
    s
}

/// A beach ball in three colours.
fn ball(g: &mut Group, at: P, r: f64) {
    g.over(Path::circle(at, r), ink::SUN);
    let put = |d: &str| Path::read(d).put(at, r, 0.0, false);
    g.dot(put("M0-.98C-.5-.5-.5.5 0 .98C.5.5.5-.5 0-.98Z"), ink::WHITE);
    g.mark(
        put("M0-.95C-.5-.5-.5.5 0 .95M0-.95C.5-.5.5.5 0 .95"),
        ink::INK,
        2.6,
    );
}

/// A curved arrow along these points.
fn arrow(g: &mut Group, pts: &[P]) {
    g.mark(Path::smooth(pts, false), ink::CORAL, 8.0);
    let (end, from) = (pts[pts.len() - 1], pts[pts.len() - 2]);
    let u = (from - end).unit();
    let tips = [end + u.rot(42.0) * 18.0, end, end + u.rot(-42.0) * 18.0];
    g.mark(Path::poly(&tips, false), ink::CORAL, 8.0);
}

fn my_turn() -> Scene {
    let mut s = Scene::default();
    s.group(5.4, |g| {
        let mut c = cast::main_child(1.7, p(110.0, 236.0)).bust(52.0);
        c.build.ends[1] = 21.0;
        c.look = [0.0, 0.0, -4.0];
        c.arms[0] = arm(74.0, 204.0, 0.8, Z::Front, Hold::Point).aim(-24.0);
        c.build.ends[1] = 24.0;
        c.arms[1] = arm(186.0, 176.0, 1.0, Z::Front, Hold::Flat)
            .aim(-50.0)
            .flip();
        c.draw(g);
        ball(g, p(196.0, 136.0), 26.0);
    });
    s
}

/// A child in a wheelchair who reaches for what comes from the left.
fn friend(g: &mut Group) {
    let chair = props::Wheelchair {
        at: p(198.0, 174.0),
        dir: -1.0,
        k: 1.0,
    };
    let mut c = cast::puffs(1.0, chair.hip());
    c.turn = -55.0;
    c.look = [-42.0, 0.0, 0.0];
    c = c.stand();
    let foot = chair.ankle();
    c.legs[1] = leg(foot.x, foot.y, 1.0, -1.0);
    c.legs[0] = leg(foot.x + 3.0, foot.y, 1.0, -1.0).z(Z::Behind);
    c.arms[0].z = Z::Gone;
    let h = c.head().at;
    c.arms[1] = arm(h.x - 34.0, h.y + 36.0, -1.0, Z::Front, Hold::Open).aim(-165.0);
    c.draw_back(g);
    chair.frame(g);
    c.draw_mid(g);
    chair.wheel(g);
    c.draw_front(g);
}

fn your_turn() -> Scene {
    let mut s = Scene::default();
    s.group(4.8, friend);
    s.group(4.8, |g| {
        let mut c = cast::main_child(1.02, p(46.0, 144.0));
        c.turn = 45.0;
        c.look = [42.0, 0.0, 0.0];
        c = c.stand();
        c.arms[1].z = Z::Gone;
        c.arms[0] = arm(82.0, 126.0, -1.0, Z::Front, Hold::Flat).aim(4.0).flip();
        c.draw_back(g);
        c.draw_mid(g);
        ball(g, p(99.0, 102.0), 21.0);
        c.draw_front(g);
    });
    s.group(0.0, |g| {
        let pts = [
            p(92.0, 66.0),
            p(102.0, 54.0),
            p(116.0, 50.0),
            p(130.0, 54.0),
            p(141.0, 68.0),
        ];
        arrow(g, &pts);
    });
    s
}

/// A sad child thinks of the grown-up, who smiles in the bubble.
fn need_grown_up() -> Scene {
    let mut s = Scene::default();
    s.group(5.2, |g| {
        let mut c = cast::main_child(1.46, p(60.0, 234.0)).bust(44.0).stubs();
        c.look = [26.0, -10.0, 8.0];
        c.mouth = Mouth::Sad;
        c.worry = true;
        c.draw(g);
    });
    s.group(5.2, |g| {
        g.fill(Path::circle(p(113.0, 117.0), 7.0), ink::WHITE);
    });
    s.group(5.2, |g| {
        g.fill(Path::ellipse(p(168.0, 62.0), 62.0, 60.0, 0.0), ink::WHITE);
    });
    s.group(4.4, |g| {
        let mut a = cast::parent(1.06, p(168.0, 112.0)).bust(30.0);
        a.look = [-14.0, 6.0, 0.0];
        a.eyes = Eyes::Glad;
        for arm in &mut a.arms {
            arm.z = Z::Gone;
        }
        a.draw(g);
    });
    s
}

/// A little in one bowl, an arrow, a heap in another: more.
fn more() -> Scene {
    let mut s = Scene::default();
    // One in the first bowl, a heap in the second, and an arrow from the one to the other.
    for (bowl, scale, balls) in [
        (p(58.0, 192.0), 0.66, &[(0.0, -20.0)][..]),
        (
            p(168.0, 184.0),
            0.92,
            &[
                (-40.0, -22.0),
                (0.0, -24.0),
                (40.0, -22.0),
                (-20.0, -54.0),
                (20.0, -54.0),
                (0.0, -86.0),
            ][..],
        ),
    ] {
        s.group(5.2, |g| {
            let at = |x: f64, y: f64| bowl + p(x * scale, y * scale);
            for (x, y) in balls.iter().rev() {
                g.over(Path::ellipse(at(*x, *y), 20.0, 20.0, 0.0), ink::CORAL);
            }
            g.over(
                Path::read("M-62-14L62-14C62 20 36 46 18 48L-18 48C-36 46-62 20-62-14Z")
                    .map(|q| at(q.x, q.y)),
                ink::SUN,
            );
        });
    }
    s.group(0.0, |g| {
        let pts = [p(44.0, 136.0), p(50.0, 92.0), p(78.0, 66.0), p(114.0, 66.0)];
        arrow(g, &pts);
    });
    s
}
