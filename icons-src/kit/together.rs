//! People who belong together.

use super::body::{Bottom, Figure, Z, arm, leg};
use super::cast::{
    Member, bob, curls, helper, helper_dark, main_child, main_girl, muffs, parent, puffs,
};
use super::geom::{P, Path, p, polar};
use super::hands::{Hand, Hold, hand};
use super::head::{Eyes, SKIN};
use super::paint::{Group, Scene, ink};
use super::props;

/// The drawings of this file.
pub fn symbols() -> Vec<(&'static str, String)> {
    vec![
        ("favourite", favourite().svg("favourite", "My best bit")),
        (
            "carry_gear",
            carry_gear().svg("carry_gear", "Carry together"),
        ),
        ("well_done", well_done().svg("well_done", "Well done")),
        (
            "stay_together",
            stay_together().svg("stay_together", "Stay together"),
        ),
        ("grown_up", grown_up().svg("grown_up", "My grown-up")),
        ("friend", friend().svg("friend", "Friend")),
        ("group", group().svg("group", "My group")),
        ("line_up", line_up().svg("line_up", "Line up")),
        ("partner", partner().svg("partner", "Find a partner")),
    ]
}

/// A heart around its middle, about two units wide.
fn heart(at: P, k: f64) -> Path {
    Path::read(
        "M0 .95C-.5 .55-1.05 .15-1.05-.35C-1.05-.75-.75-1-.45-1\
        C-.22-1-.06-.86 0-.68C.06-.86 .22-1 .45-1C.75-1 1.05-.75 1.05-.35\
        C1.05 .15 .5 .55 0 .95Z",
    )
    .put(at, k, 0.0, false)
}

fn favourite() -> Scene {
    let mut s = Scene::default();
    s.group(5.4, |g| {
        let mut c = main_child(1.6, p(92.0, 236.0)).bust(50.0);
        c.look = [16.0, -6.0, 4.0];
        c.eyes = Eyes::Glad;
        let at = p(184.0, 70.0);
        let wrist = p(178.0, 122.0);
        c.arms[0] = arm(96.0, 196.0, 1.0, Z::Over, Hold::Flat).aim(-14.0);
        c.arms[1] = arm(wrist.x, wrist.y, -1.0, Z::Front, Hold::None);
        c.draw(g);
        g.over(Path::block(at, 84.0, 84.0, 12.0, 4.0), ink::WHITE);
        g.dot(heart(at + p(0.0, 0.0), 27.0), ink::CORAL);
        let h = Hand {
            wrist,
            deg: -88.0,
            len: 36.0,
            flip: false,
            hold: Hold::Grip,
        };
        hand(g, h, SKIN);
    });
    s
}

fn carry_gear() -> Scene {
    let mut s = Scene::default();
    props::sand(&mut s, 14.0, 226.0, 212.0, 12.0);
    let two = |who: fn(f64, P) -> Figure, d: f64| {
        let mut c = who(1.0, p(120.0 - d * 72.0, 138.0));
        c.turn = 50.0 * d;
        c.look = [46.0 * d, 6.0, 0.0];
        c.lean = -5.0 * d;
        c = c.stand();
        let (near, far) = if d > 0.0 { (0, 1) } else { (1, 0) };
        let x = |v: f64| 120.0 - d * v;
        c.arms[far] = arm(x(42.0), 126.0, -d, Z::Front, Hold::Grip);
        c.arms[near] = arm(x(47.0), 134.0, d, Z::Gone, Hold::Grip);
        c.legs[near] = leg(x(90.0), 206.0, -d, 0.9 * d).tilt(10.0 * d);
        c.legs[far] = leg(x(56.0), 208.0, -d, 0.9 * d).z(Z::Behind);
        c
    };
    let (a, b) = (two(main_child, 1.0), two(bob, -1.0));
    s.group(4.8, |g| {
        a.draw(g);
        b.draw(g);
    });
    s.group(4.8, |g| {
        g.fill(Path::circle(p(106.0, 104.0), 20.0), ink::WHITE);
        g.dot(
            Path::read("M101 85C92 94 92 114 101 124L113 124C104 112 104 96 113 85Z"),
            ink::CORAL,
        );
        props::spade(g, p(142.0, 70.0), p(132.0, 140.0), 0.85);
        g.over(
            Path::read("M80 124L160 124L156 172C156 176 84 176 84 172Z"),
            ink::SUN,
        );
        g.over(Path::block(p(120.0, 124.0), 90.0, 14.0, 6.0, 0.0), ink::SUN);
        g.mark(
            Path::read("M98 142L142 142M100 156L140 156"),
            ink::WHITE,
            4.0,
        );
    });
    s.group(4.8, |g| {
        a.draw_arm(0, g);
        b.draw_arm(1, g);
    });
    s
}

fn well_done() -> Scene {
    let mut s = Scene::default();
    let hit = p(120.0, 74.0);
    s.group(5.2, |g| {
        let mut a = helper(1.22, p(182.0, 252.0)).bust(76.0);
        a.turn = -35.0;
        a.look = [-40.0, 8.0, 0.0];
        a.eyes = Eyes::Glad;
        a = a.stubs();
        a.arms[0] = arm(134.0, 102.0, 1.0, Z::Front, Hold::Open).aim(-98.0);
        a.draw(g);
    });
    s.group(5.2, |g| {
        let mut c = main_girl(1.4, p(58.0, 244.0)).bust(54.0);
        c.turn = 40.0;
        c.look = [46.0, -12.0, 0.0];
        c.eyes = Eyes::Glad;
        c = c.stubs();
        c.arms[1] = arm(106.0, 108.0, -1.0, Z::Front, Hold::Open)
            .aim(-80.0)
            .flip();
        c.draw(g);
    });
    s.group(0.0, |g| {
        for d in [-126.0, -90.0, -54.0] {
            let from = hit + polar(d, 34.0);
            g.mark(
                Path::poly(&[from, hit + polar(d, 54.0)], false),
                ink::CORAL,
                7.0,
            );
        }
    });
    s
}

/// A rope along these points, with coral strands wound round it.
fn rope(g: &mut Group, pts: &[P]) {
    let line = Path::smooth(pts, false);
    g.bar(line.clone(), ink::SUN, 7.0);
    let dots = line.sample();
    let mut run = 0.0;
    for w in dots.windows(2) {
        run += (w[1] - w[0]).len();
        if run > 15.0 {
            run = 0.0;
            let u = (w[1] - w[0]).unit().rot(52.0) * 3.5;
            g.mark(Path::poly(&[w[1] - u, w[1] + u], false), ink::CORAL, 3.0);
        }
    }
}

/// Someone who walks to the right, the near hand on the rope.
fn roped(mut f: Figure, hold: P, step: f64, ground: f64) -> Figure {
    f.turn = 42.0;
    f.look = [36.0, 0.0, 0.0];
    f = f.stand();
    f.arms[0] = arm(hold.x, hold.y, -1.0, Z::Front, Hold::Grip).aim(20.0);
    f.arms[1].z = Z::Gone;
    let x = f.hip.x;
    f.legs[0] = leg(x + step, ground, -1.0, 0.9);
    f.legs[1] = leg(x - step, ground - 3.0, -1.0, 0.9)
        .z(Z::Behind)
        .tilt(14.0);
    f
}

fn stay_together() -> Scene {
    let mut s = Scene::default();
    let ground = 212.0;
    let mut a = roped(
        helper_dark(0.84, p(180.0, 122.0)),
        p(203.0, 134.0),
        18.0,
        ground,
    );
    a.look = [-34.0, 12.0, 0.0];
    let kids: [(Member, f64, f64); 2] = [(bob, 44.0, 14.0), (main_child, 110.0, 14.0)];
    let kids =
        kids.map(|(who, x, step)| roped(who(1.0, p(x, 140.0)), p(x + 25.0, 133.0), step, ground));
    s.group(4.6, |g| a.draw(g));
    for c in kids.iter().rev() {
        s.group(4.6, |g| c.draw(g));
    }
    s.group(4.6, |g| {
        let mut pts = vec![p(16.0, 158.0), p(44.0, 152.0)];
        for q in kids.iter().chain([&a]).map(|c| c.arms[0].to) {
            pts.push(q + p(7.0, 2.0));
            pts.push(q + p(34.0, 21.0));
        }
        pts.pop();
        pts.push(p(226.0, 143.0));
        rope(g, &pts);
    });
    for c in kids.iter().chain([&a]) {
        s.group(4.6, |g| c.draw_arm(0, g));
    }
    s
}

fn grown_up() -> Scene {
    let mut s = Scene::default();
    let mut a = parent(1.34, p(78.0, 258.0)).bust(94.0);
    a.look = [18.0, 8.0, 6.0];
    a.lean = 4.0;
    let mut c = main_child(1.4, p(158.0, 256.0)).bust(57.0);
    c.look = [-16.0, -8.0, -8.0];
    c.lean = -3.0;
    a = a.stubs();
    c = c.stubs();
    a.arms[1].z = Z::Gone;
    s.group(5.2, |g| a.draw(g));
    s.group(5.2, |g| {
        c.draw(g);
        // The fingers come round from behind the far shoulder.
        let hold = c.shoulder(1) + p(15.0, 12.0);
        for i in 0..4 {
            let y = f64::from(i) * 10.5;
            let inner = hold + p(-20.0 + (f64::from(i) - 1.2).abs() * 3.0, y + 5.0);
            g.bar(
                Path::poly(&[inner, hold + p(-f64::from(i), y)], false),
                a.skin.0,
                9.0,
            );
        }
    });
    s
}

/// A walking frame from the front: middle, half width, grip and ground.
fn frame_front(g: &mut Group, x: f64, half: f64, grip: f64, ground: f64) {
    for d in [-1.0, 1.0] {
        let (top, foot) = (p(x + d * half, grip), p(x + d * (half + 5.0), ground - 4.0));
        g.bar(Path::poly(&[top, foot], false), ink::GREY, 5.0);
        g.over(Path::block(foot, 8.0, 18.0, 4.0, 0.0), ink::CHARCOAL);
    }
    let mid = grip + (ground - grip) * 0.44;
    g.bar(
        Path::poly(&[p(x - half - 2.0, mid), p(x + half + 2.0, mid)], false),
        ink::GREY,
        5.0,
    );
}

fn friend() -> Scene {
    let mut s = Scene::default();
    let mut f = puffs(1.04, p(156.0, 140.0));
    f.look = [-22.0, 0.0, -5.0];
    f.bottom = Bottom::Legs(ink::TEAL, 0.95);
    f.shoes = Some(ink::WHITE);
    f = f.stand();
    for (i, d) in [(0, -1.0), (1, 1.0)] {
        f.arms[i] = arm(156.0 + d * 40.0, 128.0, -d, Z::Front, Hold::Grip).aim(90.0);
    }
    s.group(4.8, |g| {
        let mut c = main_child(1.04, p(74.0, 140.0));
        c.look = [24.0, 0.0, 5.0];
        c = c.stand();
        c.arms[1] = arm(
            f.shoulder(0).x + 5.0,
            f.shoulder(0).y - 3.0,
            -1.0,
            Z::Gone,
            Hold::Rest,
        )
        .aim(20.0);
        c.draw(g);
        f.draw_back(g);
        f.draw_mid(g);
        frame_front(g, 156.0, 40.0, 136.0, 224.0);
        f.draw_front(g);
        c.draw_arm(1, g);
    });
    s
}

fn group() -> Scene {
    let mut s = Scene::default();
    let rows: [(Member, f64, f64, f64); 5] = [
        (muffs, 46.0, 100.0, 8.0),
        (curls, 120.0, 100.0, 0.0),
        (bob, 194.0, 100.0, -8.0),
        (puffs, 82.0, 48.0, 4.0),
        (main_child, 158.0, 48.0, -4.0),
    ];
    for (who, x, torso, yaw) in rows {
        s.group(4.4, |g| {
            let mut c = who(1.16, p(x, 226.0)).bust(torso);
            c.look = [yaw, 0.0, 0.0];
            c.stubs().draw(g);
        });
    }
    s
}

/// Stands or walks to the right in a row of children.
fn in_line(mut c: Figure) -> Figure {
    c.turn = 66.0;
    c.look = [58.0, 0.0, 0.0];
    c.stand()
}

fn line_up() -> Scene {
    let mut s = Scene::default();
    props::sand(&mut s, 12.0, 228.0, 190.0, 10.0);
    let k = 0.74;
    let feet = 188.0;
    let hip = feet - 78.0 * k;
    s.group(4.2, |g| in_line(main_child(k, p(28.0, hip))).draw(g));
    s.group(4.2, |g| {
        let w = props::Wheelchair {
            at: p(69.0, feet - 48.0 * k),
            dir: 1.0,
            k,
        };
        w.frame(g);
        let mut f = in_line(puffs(k, w.hip()));
        f.bottom = Bottom::Legs(ink::TEAL, 0.95);
        f.shoes = Some(ink::WHITE);
        let a = w.ankle();
        f.legs[1] = leg(a.x, a.y, -1.0, 1.0).z(Z::Behind);
        f.legs[0] = leg(a.x - 2.0, a.y, -1.0, 1.0);
        f.arms[1].z = Z::Gone;
        f.arms[0] = arm(
            w.hip().x + 26.0 * k,
            w.hip().y - 8.0 * k,
            1.0,
            Z::Front,
            Hold::Rest,
        );
        f.draw(g);
        w.wheel(g);
    });
    s.group(4.2, |g| in_line(curls(k, p(135.0, hip))).draw(g));
    s.group(4.2, |g| {
        let mut f = in_line(bob(k, p(177.0, hip)));
        f.lean = 6.0;
        f.arms[0] = arm(203.0, hip - 6.0, 1.0, Z::Front, Hold::Grip);
        f.arms[1].z = Z::Gone;
        f.draw_back(g);
        props::walker(g, p(206.0, hip - 4.0), feet + 4.0, 0.72);
        f.draw_mid(g);
        f.draw_front(g);
    });
    s
}

fn partner() -> Scene {
    let mut s = Scene::default();
    for (i, who) in [main_girl as Member, muffs].into_iter().enumerate() {
        let d = if i == 0 { 1.0 } else { -1.0 };
        s.group(4.8, |g| {
            let mut c = who(1.02, p(120.0 - d * 50.0, 142.0));
            c.turn = 34.0 * d;
            c.look = [40.0 * d, 0.0, 0.0];
            c.eyes = Eyes::Glad;
            c = c.stand();
            // Hand in hand between them, the other hands free and lifted.
            let (far, near) = if i == 0 { (1, 0) } else { (0, 1) };
            c.arms[far] = arm(120.0 - d * 5.0, 138.0, d, Z::Front, Hold::Grip).aim(90.0 - d * 90.0);
            let sh = c.shoulder(near);
            c.arms[near] =
                arm(sh.x - d * 20.0, sh.y - 42.0, -d, Z::Front, Hold::Open).aim(-90.0 - d * 20.0);
            if i == 1 {
                c.arms[far] = c.arms[far].flip();
                c.arms[near] = c.arms[near].flip();
            }
            c.draw(g);
        });
    }
    s
}
