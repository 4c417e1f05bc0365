//! Listening, looking, being quiet, and the grown-ups who lead.

use super::body::{Bottom, Z, arm, leg};
use super::cast::{helper, helper_dark, main_child};
use super::geom::{P, Path, p, polar};
use super::hair::{Hair, Style};
use super::hands::{Hand, Hold, hand};
use super::head::{Head, Mouth, SKIN, Skin};
use super::limb::Limb;
use super::paint::{Group, Scene, ink};
use super::props;

/// The drawings of this file.
pub fn symbols() -> Vec<(&'static str, String)> {
    vec![
        ("listen", listen().svg("listen", "Listen")),
        ("look", look().svg("look", "Look")),
        (
            "quiet_voice",
            quiet_voice().svg("quiet_voice", "Quiet voice"),
        ),
        ("trainer", trainer().svg("trainer", "Trainer")),
        ("lifesaver", lifesaver().svg("lifesaver", "Lifesaver")),
        (
            "whistle_stop",
            whistle_stop().svg("whistle_stop", "Whistle means stop"),
        ),
        ("time_to_go", time_to_go().svg("time_to_go", "Time to go")),
    ]
}

/// Sound lines round `c`, opening toward `deg`.
fn sound(s: &mut Scene, c: P, radii: &[f64], deg: f64, half: f64) {
    s.group(0.0, |g| {
        for &r in radii {
            let pts: Vec<P> = (0..=6)
                .map(|i| c + polar(deg - half + half * f64::from(i) / 3.0, r))
                .collect();
            g.mark(Path::smooth(&pts, false), ink::CORAL, 7.0);
        }
    });
}

fn listen() -> Scene {
    let mut s = Scene::default();
    s.group(5.4, |g| {
        let mut c = main_child(2.05, p(142.0, 240.0)).bust(38.0);
        c.look = [22.0, 0.0, -8.0];
        c = c.stubs();
        let head = c.head();
        let ear = head.spot(-88.0, 0.12, 1.0, false).0;
        let wrist = ear + p(-11.0, 42.0);
        c.arms[0] = arm(wrist.x, wrist.y, 1.0, Z::Front, Hold::None);
        head.draw_behind(g);
        c.draw_mid(g);
        c.draw_arm(1, g);
        c.draw_arm(0, g);
        let h = Hand {
            wrist,
            deg: -98.0,
            len: 66.0,
            flip: true,
            hold: Hold::Flat,
        };
        hand(g, h, SKIN);
        head.draw(g);
    });
    sound(&mut s, p(-14.0, 104.0), &[16.0, 35.0, 54.0], 0.0, 34.0);
    s
}

fn look() -> Scene {
    let mut s = Scene::default();
    s.group(5.4, |g| {
        let mut c = main_child(2.05, p(100.0, 236.0)).bust(40.0);
        c.turn = 25.0;
        c.lean = 10.0;
        c.look = [34.0, 4.0, 2.0];
        c = c.stubs();
        let h = c.head();
        let wrist = h.place(p(-0.86, -0.4));
        let tip = h.place(p(1.1, -0.44));
        c.arms[0] = arm(wrist.x, wrist.y, -1.0, Z::Over, Hold::None);
        c.draw(g);
        // The hand is seen nearly edge on, like the brim of a hat.
        let bone = |a: P, b: P, w: [f64; 3]| Limb {
            pts: [a, a.to(b, 0.5), b],
            w,
            flat: false,
        };
        let palm = bone(wrist, tip, [12.5, 14.0, 7.5]).outline();
        let thumb = bone(wrist + p(6.0, 4.0), wrist + p(27.0, 15.0), [8.0, 7.0, 6.0]).outline();
        g.over(palm.then(thumb, false).wound(), SKIN.0);
        for y in [-5.0, 3.0] {
            let line = [
                wrist.to(tip, 0.5) + p(0.0, y),
                wrist.to(tip, 0.9) + p(0.0, y * 0.5),
            ];
            g.mark(Path::poly(&line, false), SKIN.1, 3.0);
        }
    });
    s
}

fn quiet_voice() -> Scene {
    let mut s = Scene::default();
    s.group(5.4, |g| {
        let mut c = main_child(2.0, p(116.0, 244.0)).bust(52.0);
        c.mouth = Mouth::Smile;
        c.turn = -30.0;
        c.look = [-28.0, 4.0, -8.0];
        c = c.stubs();
        let lips = c.head().spot(0.0, 0.44, 1.0, false).0;
        let len = 50.0;
        let wrist = lips + p(0.25 * len, 1.14 * len);
        c.arms[1] = arm(wrist.x + 1.0, wrist.y + 3.0, -1.0, Z::Over, Hold::None);
        c.draw(g);
        let h = Hand {
            wrist,
            deg: -90.0,
            len,
            flip: false,
            hold: Hold::Point,
        };
        hand(g, h, SKIN);
    });
    s
}

/// A whistle: the end in the mouth and the way it points.
fn whistle(g: &mut Group, at: P, deg: f64, k: f64) {
    let put = |d: &str| Path::read(d).put(at, k, deg, false);
    g.over(
        put("M0-.2L1-.2C1.5-.3 1.9 .1 1.8 .55C1.7 1 1 1.05 .8 .6C.74 .4 .66 .26 .5 .24L0 .2Z"),
        ink::SUN,
    );
    g.dot(
        Path::circle(at + p(1.3 * k, 0.36 * k).rot(deg), 0.2 * k),
        ink::INK,
    );
}

fn clipboard(g: &mut Group, at: P, w: f64, h: f64, deg: f64) {
    g.over(Path::block(at, w, h, 6.0, deg), ink::CORAL);
    let q = |x: f64, y: f64| at + p(x * w, y * h).rot(deg);
    g.dot(
        Path::block(q(0.0, 0.03), w * 0.78, h * 0.78, 2.0, deg),
        ink::WHITE,
    );
    for y in [-0.16, 0.02, 0.2] {
        g.mark(
            Path::poly(&[q(-0.24, y), q(0.24, y)], false),
            ink::GREY,
            4.0,
        );
    }
    g.over(
        Path::block(q(0.0, -0.46), w * 0.4, h * 0.13, 4.0, deg),
        ink::CHARCOAL,
    );
}

/// Four fingers that come round an edge from behind; `at` is the first one's
/// end on the edge.
fn fingers_round(g: &mut Group, at: P, skin: Skin, w: f64) {
    for i in 0..4 {
        let n = f64::from(i);
        let out = at + p(0.0, n * (w + 1.6));
        let inner = out + p(-w * 2.1 + (n - 1.2).abs() * 2.5, 1.0);
        g.bar(Path::poly(&[inner, out], false), skin.0, w);
    }
}

fn trainer() -> Scene {
    let mut s = Scene::default();
    s.group(5.2, |g| {
        let mut a = helper_dark(1.46, p(96.0, 244.0)).bust(80.0);
        a.hair = Hair(Style::Buzz, ink::HAIR_DARK);
        a.look = [8.0, 0.0, 0.0];
        a = a.stubs();
        a.draw(g);
        let n = a.chest();
        let cord = [
            p(-18.0, 2.0),
            p(-6.0, 44.0),
            p(0.0, 54.0),
            p(6.0, 44.0),
            p(18.0, 2.0),
        ];
        g.mark(Path::smooth(&cord.map(|q| n + q), false), ink::WHITE, 4.5);
        whistle(g, n + p(-16.0, 58.0), 0.0, 21.0);
        let at = p(170.0, 178.0);
        clipboard(g, at, 76.0, 100.0, 6.0);
        fingers_round(g, at + p(38.0, 4.0), a.skin, 10.0);
    });
    s
}

/// A tight swim cap on a head.
fn cap(g: &mut Group, h: &Head, colour: &'static str) {
    let d = "M-1.08-.06C-1.1-.8-.62-1.14 0-1.14C.62-1.14 1.1-.8 1.08-.06\
             C.7-.4.3-.46 0-.46C-.3-.46-.7-.4-1.08-.06Z";
    g.over(Path::read(d).map(|q| h.place(q)), colour);
}

fn lifesaver() -> Scene {
    let mut s = Scene::default();
    props::sand(&mut s, 50.0, 190.0, 214.0, 8.0);
    s.group(5.0, |g| {
        let mut a = helper(0.86, p(118.0, 116.0));
        a.hair = Hair(Style::Buzz, ink::HAIR_BROWN);
        a.top = (ink::CORAL, 0.95);
        a.bottom = Bottom::Legs(ink::NAVY, 0.42);
        a.shoes = None;
        a.turn = 25.0;
        a.look = [18.0, 0.0, 0.0];
        a = a.stand();
        a.arms[0] = arm(122.0, 112.0, 1.0, Z::Gone, Hold::Grip);
        a.draw(g);
        cap(g, &a.head(), ink::SUN);
        // A strap runs from the shoulder to the end of the long soft float,
        // which bends over the arm that carries it.
        let strap = [p(133.0, 56.0), p(118.0, 78.0), p(96.0, 104.0)];
        g.mark(Path::smooth(&strap, false), ink::CHARCOAL, 5.0);
        let pts = [
            p(34.0, 130.0),
            p(72.0, 118.0),
            p(118.0, 108.0),
            p(166.0, 102.0),
            p(206.0, 102.0),
        ];
        let cord = [
            pts[0],
            p(20.0, 146.0),
            p(24.0, 168.0),
            p(42.0, 172.0),
            p(60.0, 156.0),
            p(84.0, 122.0),
        ];
        g.bar(Path::smooth(&cord, false), ink::CHARCOAL, 3.4);
        g.bar(Path::smooth(&pts, false), ink::SUN, 32.0);
        for (at, deg) in [(p(48.0, 126.0), 72.0), (p(192.0, 102.0), 89.0)] {
            let n = polar(deg, 16.0);
            g.band(Path::poly(&[at - n, at + n], false), ink::CORAL, 11.0);
        }
        a.draw_arm(0, g);
    });
    s
}

fn whistle_stop() -> Scene {
    let mut s = Scene::default();
    let mut a = helper_dark(1.46, p(130.0, 250.0)).bust(68.0);
    a.hair = Hair(Style::Buzz, ink::HAIR_DARK);
    a.turn = 20.0;
    a.look = [44.0, 0.0, 0.0];
    a.mouth = Mouth::None;
    a = a.stubs();
    let m = a.head().spot(-4.0, 0.56, 1.0, false).0;
    s.group(5.2, |g| {
        a.arms[0] = arm(60.0, 168.0, -1.0, Z::Over, Hold::None);
        a.draw(g);
        whistle(g, m, 0.0, 30.0);
        let h = Hand {
            wrist: p(60.0, 169.0),
            deg: -104.0,
            len: 62.0,
            flip: true,
            hold: Hold::Open,
        };
        hand(g, h, a.skin);
    });
    sound(&mut s, m + p(36.0, 4.0), &[32.0, 48.0], -24.0, 30.0);
    s
}

/// An hourglass whose sand has run through.
fn run_out(g: &mut Group, at: P, h: f64) {
    props::hourglass(g, at, h);
    let u = |x: f64, y: f64| at + p(x * h, (y - 1.0) * h);
    let top = "M-.2.22L.2.22C.16.36.045.42.03.5L.03.68L-.03.68L-.03.5C-.045.42-.16.36-.2.22Z";
    g.dot(Path::read(top).map(|q| u(q.x, q.y)), ink::WHITE);
    let heap = "M-.22.88C-.24.8-.12.64 0 .6C.12.64.24.8.22.88Z";
    g.dot(Path::read(heap).map(|q| u(q.x, q.y)), ink::SUN);
}

fn time_to_go() -> Scene {
    let mut s = Scene::default();
    s.group(5.0, |g| run_out(g, p(38.0, 216.0), 92.0));
    s.group(4.8, |g| {
        let mut a = helper(0.84, p(180.0, 108.0));
        a.turn = 50.0;
        a.look = [50.0, 0.0, 0.0];
        a.lean = 3.0;
        a = a.stand();
        a.arms[0] = arm(146.0, 121.0, 1.0, Z::Front, Hold::Grip);
        a.arms[1] = arm(216.0, 118.0, -1.0, Z::Behind, Hold::Rest);
        a.legs[0] = leg(158.0, 194.0, -1.0, 0.9).tilt(14.0);
        a.legs[1] = leg(204.0, 197.0, -1.0, 0.9).z(Z::Behind);
        let mut c = main_child(0.9, p(104.0, 135.0));
        c.turn = 55.0;
        c.look = [58.0, -8.0, 0.0];
        c.lean = 4.0;
        c = c.stand();
        c.arms[0].z = Z::Gone;
        c.arms[1] = arm(143.0, 122.0, -1.0, Z::Front, Hold::Grip);
        c.legs[0] = leg(84.0, 196.0, -1.0, 0.9).tilt(16.0);
        c.legs[1] = leg(124.0, 199.0, -1.0, 0.9).z(Z::Behind);
        a.draw(g);
        c.draw(g);
        g.over(Path::block(p(80.0, 106.0), 34.0, 48.0, 13.0, 4.0), ink::SUN);
        g.over(
            Path::block(p(76.0, 117.0), 19.0, 18.0, 5.0, 4.0),
            ink::CORAL,
        );
        g.mark(Path::read("M92 88C104 92 108 104 102 118"), ink::WHITE, 4.4);
    });
    s
}
