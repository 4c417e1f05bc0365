//! Arriving, greeting, warming up, and the close-ups of one child.

use super::body::{Bottom, Figure, Z, arm, leg};
use super::geom::{P, Path, p};
use super::hair::{Hair, Style};
use super::hands::{Hand, Hold, hand};
use super::head::{Eyes, Mouth, SKIN, SKIN_DARK, Wear};
use super::paint::{Group, Scene, ink};
use super::props;

/// The drawings of this file.
pub fn symbols() -> Vec<(&'static str, String)> {
    vec![
        ("arrive", arrive().svg("arrive", "Arrive")),
        ("say_hello", say_hello().svg("say_hello", "Hello")),
        ("hat_on", hat_on().svg("hat_on", "Hat on")),
        ("stretch_up", stretch_up().svg("stretch_up", "Stretch")),
        ("dig", dig().svg("dig", "Dig")),
        ("drink", drink().svg("drink", "Drink")),
        (
            "ear_defenders",
            ear_defenders().svg("ear_defenders", "Ear muffs"),
        ),
        ("squeeze", squeeze().svg("squeeze", "Squeeze")),
    ]
}

fn arrive() -> Scene {
    let mut s = Scene::default();
    s.group(0.0, |g| {
        g.dot(
            Path::read("M14 196L112 196L104 222L14 222C8 222 8 196 14 196Z"),
            ink::GREY,
        );
        for x in [46.0, 80.0] {
            g.mark(
                Path::poly(&[p(x, 196.0), p(x - 6.0, 222.0)], false),
                ink::WHITE,
                2.6,
            );
        }
        g.dot(
            Path::read("M116 196L222 196C230 196 230 222 222 222L108 222Z"),
            ink::SAND,
        );
        for (x, y) in [
            (126.0, 214.0),
            (140.0, 202.0),
            (172.0, 216.0),
            (196.0, 203.0),
            (210.0, 214.0),
        ] {
            props::grain(g, p(x, y));
        }
    });
    s.group(4.8, |g| {
        let mut a = Figure::adult(0.82, p(78.0, 108.0));
        a.turn = 40.0;
        a.look = [48.0, 6.0, 0.0];
        a.skin = SKIN_DARK;
        a.hair = Hair(Style::Buzz, ink::HAIR_DARK);
        a.top = (ink::TEAL, 0.42);
        a.lean = 3.0;
        a = a.stand();
        a.arms[0] = arm(50.0, 118.0, 1.0, Z::Front, Hold::Rest);
        a.arms[1] = arm(124.0, 122.0, -1.0, Z::Front, Hold::Grip);
        a.legs[0] = leg(52.0, 192.0, -1.0, 0.9).tilt(14.0);
        a.legs[1] = leg(100.0, 194.0, -1.0, 0.9).z(Z::Behind);
        let mut c = Figure::child(0.86, p(166.0, 135.0));
        c.turn = 45.0;
        c.look = [42.0, 0.0, 0.0];
        c.hair = Hair(Style::Tail, ink::HAIR_DARK);
        c.lean = 4.0;
        c = c.stand();
        c.arms[0] = arm(133.0, 124.0, -1.0, Z::Front, Hold::Grip);
        c.arms[1] = arm(196.0, 122.0, -1.0, Z::Behind, Hold::Rest);
        c.legs[0] = leg(144.0, 194.0, -1.0, 0.9).tilt(16.0);
        c.legs[1] = leg(188.0, 195.0, -1.0, 0.9).z(Z::Behind);
        a.draw(g);
        c.draw(g);
    });
    s
}

fn say_hello() -> Scene {
    let mut s = Scene::default();
    s.group(4.8, |g| {
        let mut c = Figure::child(0.98, p(66.0, 142.0));
        c.turn = 45.0;
        c.look = [58.0, 0.0, 0.0];
        c.hair = Hair(Style::Crop, ink::HAIR_DARK);
        c = c.stand();
        c.arms[1] = arm(116.0, 60.0, -1.0, Z::Front, Hold::Open).aim(-80.0);
        c.arms[0] = arm(40.0, 148.0, 1.0, Z::Front, Hold::Rest);
        c.draw(g);
    });
    s.group(4.8, |g| {
        let w = props::Wheelchair {
            at: p(202.0, 166.0),
            dir: -1.0,
            k: 0.98,
        };
        w.frame(g);
        let mut f = Figure::child(0.98, w.hip());
        f.turn = -70.0;
        f.look = [-60.0, 0.0, 0.0];
        f.skin = SKIN_DARK;
        f.hair = Hair(Style::Puffs, ink::HAIR_DARK);
        f.top = (ink::SUN, 0.4);
        f.bottom = Bottom::Legs(ink::TEAL, 0.95);
        f.shoes = Some(ink::WHITE);
        f = f.stand();
        let a = w.ankle();
        f.legs[0] = leg(a.x, a.y, 1.0, -1.0).z(Z::Behind);
        f.legs[1] = leg(a.x + 3.0, a.y, 1.0, -1.0);
        f.arms[0].z = Z::Gone;
        f.arms[1] = arm(168.0, 146.0, -1.0, Z::Front, Hold::Rest);
        f.draw(g);
        w.wheel(g);
    });
    s
}

fn hat_on() -> Scene {
    let mut s = Scene::default();
    s.group(5.4, |g| {
        let mut c = Figure::child(1.5, p(120.0, 236.0)).bust(34.0);
        c.hair = Hair(Style::Bob, ink::HAIR_BROWN);
        c.top = (ink::TEAL, 0.4);
        c.look = [0.0, -12.0, 0.0];
        // The hat is seen from below, so its opening waits for the crown.
        let brim = c.head().at - p(0.0, c.head().size * 0.74);
        let side = c.head().size * 0.86;
        hat_from_below(g, brim, side);
        c.build.arm = [32.0, 29.0];
        for (i, s) in [(0, -1.0), (1, 1.0)] {
            let at = brim + p(s * (side + 4.0), 26.0);
            c.arms[i] = arm(at.x, at.y, s, Z::Over, Hold::None);
        }
        c.draw(g);
        for (s, flip) in [(-1.0, true), (1.0, false)] {
            let h = Hand {
                wrist: brim + p(s * (side + 4.0), 26.0),
                deg: -90.0 - s * 24.0,
                len: 36.0,
                flip,
                hold: Hold::Grip,
            };
            hand(g, h, SKIN);
        }
    });
    s
}

/// A wide-brimmed hat above the eye: crown, brim and its dark opening.
fn hat_from_below(g: &mut Group, brim: P, half: f64) {
    let put = |d: &str| Path::read(d).put(brim, half, 0.0, false);
    g.fill(
        put("M-.56 .02C-.56-.4-.5-.74-.26-.82C-.1-.87 .1-.87 .26-.82C.5-.74 .56-.4 .56 .02Z"),
        ink::SUN,
    );
    g.dot(
        put("M-.56 .02C-.56-.14-.555-.26-.54-.36C-.3-.47 .3-.47 .54-.36C.555-.26 .56-.14 .56 .02Z"),
        ink::CORAL,
    );
    g.over(Path::ellipse(brim, half, half * 0.24, 0.0), ink::SUN);
    g.dot(
        Path::ellipse(brim + p(0.0, 2.0), half * 0.56, half * 0.13, 0.0),
        ink::CHARCOAL,
    );
}

fn stretch_up() -> Scene {
    let mut s = Scene::default();
    props::sand(&mut s, 60.0, 180.0, 216.0, 9.0);
    s.group(5.0, |g| {
        let mut c = Figure::child(0.94, p(114.0, 132.0));
        c.hair = Hair(Style::Bob, ink::HAIR_FAIR);
        c.turn = 35.0;
        c.look = [30.0, -20.0, -4.0];
        c = c.stand();
        c.arms[0] = arm(90.0, 36.0, -1.0, Z::Behind, Hold::Open).aim(-94.0);
        c.arms[1] = arm(146.0, 36.0, 1.0, Z::Behind, Hold::Open)
            .aim(-84.0)
            .flip();
        c.legs[0] = leg(105.0, 201.0, -1.0, 0.9).tilt(32.0);
        c.legs[1] = leg(126.0, 200.0, -1.0, 0.9).tilt(32.0);
        c.draw(g);
    });
    s
}

fn dig() -> Scene {
    let mut s = Scene::default();
    props::sand(&mut s, 14.0, 226.0, 204.0, 20.0);
    s.group(0.0, |g| {
        g.dot(
            Path::ellipse(p(166.0, 204.0), 34.0, 9.0, 0.0),
            ink::HAIR_FAIR,
        );
    });
    s.group(5.0, |g| {
        let mut c = Figure::child(1.06, p(62.0, 152.0));
        c.turn = 70.0;
        c.lean = 24.0;
        c.look = [66.0, 16.0, 8.0];
        c.hair = Hair(Style::Curly, ink::HAIR_BROWN);
        c = c.stand();
        c.legs[0] = leg(44.0, 192.0, -1.0, 1.0).tilt(70.0);
        c.legs[1] = leg(56.0, 190.0, -1.0, 1.0).tilt(70.0).z(Z::Behind);
        c.arms[1] = arm(150.0, 128.0, -1.0, Z::Behind, Hold::Grip);
        c.arms[0] = arm(138.0, 108.0, 1.0, Z::Over, Hold::Grip);
        c.draw_back(g);
        c.draw_mid(g);
        props::spade(g, p(142.0, 96.0), p(172.0, 208.0), 0.95);
        c.draw_front(g);
    });
    s.group(0.0, |g| {
        g.dot(
            Path::read("M150 206C160 198 186 198 196 206C190 216 156 216 150 206Z"),
            ink::SAND,
        );
        props::grain(g, p(164.0, 208.0));
        props::grain(g, p(182.0, 207.0));
    });
    s
}

fn drink() -> Scene {
    let mut s = Scene::default();
    s.group(5.4, |g| {
        let mut c = Figure::child(1.8, p(82.0, 230.0)).bust(40.0);
        c.turn = 60.0;
        c.look = [78.0, 0.0, -24.0];
        c.hair = Hair(Style::Bun, ink::HAIR_DARK);
        c.mouth = Mouth::None;
        c.arms[1].z = Z::Gone;
        c.arms[0] = arm(176.0, 146.0, 1.0, Z::Over, Hold::None);
        let mut body = c;
        body.arms[0].z = Z::Gone;
        body.draw(g);
        let m = c.head().spot(4.0, 0.62, 1.0, false).0;
        let foot = m + super::geom::polar(-26.0, 100.0);
        props::bottle(g, foot, 154.0, 104.0);
        c.draw_arm(0, g);
        let h = Hand {
            wrist: p(176.0, 146.0),
            deg: -108.0,
            len: 42.0,
            flip: true,
            hold: Hold::Grip,
        };
        hand(g, h, SKIN);
    });
    s
}

fn ear_defenders() -> Scene {
    let mut s = Scene::default();
    s.group(5.6, |g| {
        let mut c = Figure::child(2.18, p(120.0, 234.0)).bust(36.0);
        c.wear = Wear::Muffs(ink::SUN);
        c.mouth = Mouth::Calm;
        c.top = (ink::NAVY, 0.42);
        for a in &mut c.arms {
            a.hold = Hold::Stub;
        }
        c.draw(g);
    });
    s
}

fn squeeze() -> Scene {
    let mut s = Scene::default();
    s.group(5.4, |g| {
        let mut c = Figure::child(1.8, p(120.0, 236.0)).bust(57.0);
        c.look = [0.0, 8.0, 8.0];
        c.eyes = Eyes::Shut;
        c.hair = Hair(Style::Tail, ink::HAIR_DARK);
        c.top = (ink::TEAL, 0.42);
        c.draw_back(g);
        c.draw_mid(g);
        g.over(props::squeezed(p(120.0, 196.0), 146.0, 88.0), ink::SUN);
        c.arms[0] = arm(128.0, 184.0, 1.0, Z::Over, Hold::Rest).aim(-4.0);
        c.arms[1] = arm(112.0, 204.0, -1.0, Z::Over, Hold::Rest)
            .aim(184.0)
            .flip();
        c.draw_front(g);
    });
    s
}
