//! Walking, moving together, singing, saying goodbye, asking for help.

use super::body::{Bottom, Figure, Z, arm, leg};
use super::geom::{P, Path, p, polar};
use super::hair::{Hair, Style};
use super::hands::{Hand, Hold, hand};
use super::head::{Eyes, Mouth, SKIN, SKIN_DARK, SKIN_LIGHT, Wear};
use super::limb::Limb;
use super::paint::{Group, Scene, ink};
use super::props;

/// The drawings of this file.
pub fn symbols() -> Vec<(&'static str, String)> {
    vec![
        ("song", song().svg("song", "Song")),
        ("warm_up", warm_up().svg("warm_up", "Warm up")),
        ("copy_me", copy_me().svg("copy_me", "Copy me")),
        (
            "welcome_circle",
            welcome_circle().zoom(0.96).svg("welcome_circle", "Circle"),
        ),
        (
            "walk_to_water",
            walk_to_water().svg("walk_to_water", "Walk to the water"),
        ),
        (
            "out_of_water",
            out_of_water().svg("out_of_water", "Out of the water"),
        ),
        (
            "walk_with_helper",
            walk_with_helper().svg("walk_with_helper", "Walk"),
        ),
        ("bye", bye().svg("bye", "Bye")),
        ("help", help().svg("help", "Help")),
    ]
}

/// Part of a circle round `c` from one direction to another.
fn arc(c: P, r: f64, from: f64, to: f64) -> Path {
    let pts: Vec<P> = (0..=6)
        .map(|i| c + polar(from + (to - from) * f64::from(i) / 6.0, r))
        .collect();
    Path::smooth(&pts, false)
}

fn song() -> Scene {
    let mut s = Scene::default();
    let one = |x: f64, y: f64, yaw: f64| {
        let mut c = Figure::child(1.42, p(x, y)).bust(42.0);
        c.look = [yaw, -14.0, yaw * 0.15];
        c.mouth = Mouth::Sing;
        c.eyes = Eyes::Glad;
        for a in &mut c.arms {
            a.hold = Hold::Stub;
        }
        c
    };
    s.group(5.2, |g| {
        let mut c = one(152.0, 228.0, 32.0);
        c.hair = Hair(Style::Plaits, ink::HAIR_BROWN);
        c.skin = SKIN_LIGHT;
        c.top.0 = ink::TEAL;
        c.draw(g);
    });
    s.group(5.2, |g| {
        let mut c = one(88.0, 236.0, -32.0);
        c.hair = Hair(Style::Crop, ink::HAIR_DARK);
        c.draw(g);
    });
    s.group(0.0, |g| {
        for (x, y, dir) in [(88.0, 236.0, 176.0), (152.0, 228.0, 4.0)] {
            let at = one(x, y, if dir > 90.0 { -32.0 } else { 32.0 }).head().at;
            for (r, half) in [(54.0, 24.0), (69.0, 30.0)] {
                g.mark(arc(at, r, dir - half, dir + half), ink::CORAL, 7.0);
            }
        }
    });
    s
}

fn warm_up() -> Scene {
    let mut s = Scene::default();
    let kids = [
        (
            46.0,
            SKIN_DARK,
            Hair(Style::Puffs, ink::HAIR_DARK),
            ink::SUN,
            ink::TEAL,
        ),
        (
            116.0,
            SKIN,
            Hair(Style::Crop, ink::HAIR_BROWN),
            ink::CORAL,
            ink::NAVY,
        ),
        (
            186.0,
            SKIN_LIGHT,
            Hair(Style::Bob, ink::HAIR_FAIR),
            ink::TEAL,
            ink::CHARCOAL,
        ),
    ];
    for (x, skin, hair, top, bottom) in kids {
        s.group(4.4, |g| {
            let k = 0.86;
            let mut c = Figure::child(k, p(x, 142.0));
            c.skin = skin;
            c.hair = hair;
            c.top.0 = top;
            c.bottom = Bottom::Legs(bottom, 0.5);
            c.lean = 14.0;
            c.look = [0.0, 0.0, 12.0];
            c = c.stand();
            c.legs[0] = leg(x - 16.0, 203.0, 1.0, -0.7);
            c.legs[1] = leg(x + 16.0, 203.0, -1.0, 0.7);
            c.arms[0] = arm(x + 2.7, 45.4, 1.0, Z::Behind, Hold::Rest).aim(10.0);
            c.arms[1] = arm(x + 19.0, 138.0, 1.0, Z::Front, Hold::None);
            c.draw(g);
        });
    }
    s
}

fn copy_me() -> Scene {
    let mut s = Scene::default();
    s.group(4.8, |g| {
        let mut c = Figure::child(0.9, p(62.0, 136.0));
        c.turn = 55.0;
        c.look = [58.0, -8.0, 0.0];
        c.hair = Hair(Style::Tail, ink::HAIR_DARK);
        c = c.stand();
        c.arms[1] = arm(108.0, 64.0, -1.0, Z::Behind, Hold::Open).aim(-52.0);
        c.arms[0] = arm(31.0, 126.0, -1.0, Z::Front, Hold::Rest);
        c.legs[0] = leg(58.0, 205.0, -1.0, 0.9);
        c.legs[1] = leg(92.0, 172.0, -1.0, 0.9).tilt(14.0);
        c.draw(g);
    });
    s.group(4.8, |g| {
        let mut a = Figure::adult(0.82, p(156.0, 112.0));
        a.turn = 55.0;
        a.look = [24.0, 0.0, 0.0];
        a.hair = Hair(Style::Crop, ink::GREY);
        a.skin = SKIN_LIGHT;
        a.wear = Wear::Glasses;
        a = a.stand();
        a.arms[1] = arm(206.0, 28.0, -1.0, Z::Behind, Hold::Open).aim(-52.0);
        a.arms[0] = arm(120.0, 106.0, -1.0, Z::Front, Hold::Rest);
        a.legs[0] = leg(150.0, 202.0, -1.0, 0.9);
        a.legs[1] = leg(194.0, 166.0, -1.0, 0.9).tilt(14.0);
        a.draw(g);
    });
    s
}

/// A child sitting cross-legged at `seat` (the ground under the hips).
pub fn seated(k: f64, seat: P, yaw: f64) -> Figure {
    let mut c = Figure::child(k, seat - p(0.0, 12.0 * k));
    c.turn = yaw * 0.7;
    c.look = [yaw, 6.0, 0.0];
    c = c.stand();
    let back = yaw.abs() > 120.0;
    for i in 0..2 {
        let s = if i == 0 { -1.0 } else { 1.0 };
        let d = if back { -s } else { s };
        let z = if back { Z::Behind } else { Z::Front };
        let knee = seat + p(d * 36.0, -4.0) * k;
        let down = if back { -8.0 } else { 6.0 };
        c.legs[i] = leg(seat.x - d * 11.0 * k, seat.y + down * k, 1.0, -d * 0.8)
            .knee(knee.x, knee.y)
            .z(z);
        c.arms[i] = arm(seat.x + d * 15.0 * k, seat.y - 12.0 * k, -d, z, Hold::Rest);
    }
    c
}

fn welcome_circle() -> Scene {
    let mut s = Scene::default();
    let ring = [
        (-61.0, ink::HAIR_DARK, Style::Puffs, SKIN_DARK, ink::SUN),
        (-119.0, ink::HAIR_BROWN, Style::Crop, SKIN_LIGHT, ink::TEAL),
        (-4.0, ink::HAIR_FAIR, Style::Bob, SKIN_LIGHT, ink::NAVY),
        (184.0, ink::HAIR_DARK, Style::Tail, SKIN, ink::CORAL),
        (50.0, ink::HAIR_BROWN, Style::Curly, SKIN_DARK, ink::CORAL),
        (130.0, ink::HAIR_DARK, Style::Bun, SKIN, ink::TEAL),
    ];
    for (deg, hair, style, skin, top) in ring {
        let q = polar(deg, 1.0);
        let seat = p(120.0 + q.x * 84.0, 140.0 + q.y * 80.0);
        s.group(0.0, |g| {
            g.dot(
                Path::ellipse(seat + p(0.0, 2.0), 37.0, 14.0, 0.0),
                ink::LEAF,
            );
        });
        s.group(4.0, |g| {
            let yaw = if q.y > 0.5 {
                q.x.signum() * -150.0
            } else {
                q.x * -52.0
            };
            let mut c = seated(0.64, seat, yaw);
            c.hair = Hair(style, hair);
            c.skin = skin;
            c.top.0 = top;
            c.bottom = Bottom::Legs(
                if top == ink::NAVY {
                    ink::CHARCOAL
                } else {
                    ink::NAVY
                },
                0.9,
            );
            c.draw(g);
        });
    }
    s
}

/// An arrow for something that really moves.
pub fn arrow(g: &mut Group, from: P, to: P) {
    let u = (from - to).unit();
    g.mark(Path::poly(&[from, to], false), ink::CORAL, 7.5);
    let tips = [to + u.rot(42.0) * 17.0, to, to + u.rot(-42.0) * 17.0];
    g.mark(Path::poly(&tips, false), ink::CORAL, 7.5);
}

/// A falling drop.
pub fn drop(at: P, r: f64) -> Path {
    Path::read("M0-1.7C.5-.8 1-.3 1 .25C1 .8.55 1.2 0 1.2C-.55 1.2-1 .8-1 .25C-1-.3-.5-.8 0-1.7Z")
        .put(at, r, 0.0, false)
}

fn shore(s: &mut Scene) {
    s.group(0.0, |g| {
        g.dot(
            Path::read("M20 196L150 196L166 224L20 224C10 224 10 196 20 196Z"),
            ink::SAND,
        );
        for (x, y) in [(30.0, 206.0), (58.0, 216.0), (92.0, 204.0), (122.0, 216.0)] {
            props::grain(g, p(x, y));
        }
    });
}

fn walk_to_water() -> Scene {
    let mut s = Scene::default();
    shore(&mut s);
    props::water(&mut s, 144.0, 226.0, 182.0, 42.0);
    s.group(4.8, |g| {
        let mut a = Figure::adult(0.82, p(42.0, 108.0));
        a.turn = 50.0;
        a.look = [58.0, 8.0, 0.0];
        a.hair = Hair(Style::Scarf, ink::NAVY);
        a.top = (ink::TEAL, 0.9);
        a.bottom = Bottom::Skirt(ink::CHARCOAL, 0.74);
        a.lean = 3.0;
        a = a.stand();
        a.arms[0] = arm(14.0, 118.0, 1.0, Z::Front, Hold::Rest);
        a.arms[1] = arm(84.4, 122.5, -1.0, Z::Front, Hold::Grip);
        a.legs[0] = leg(16.0, 192.0, -1.0, 0.9).tilt(14.0);
        a.legs[1] = leg(64.0, 194.0, -1.0, 0.9).z(Z::Behind);
        let mut c = Figure::child(0.86, p(124.0, 135.0));
        c.turn = 55.0;
        c.look = [62.0, 4.0, 0.0];
        c.hair = Hair(Style::Crop, ink::HAIR_DARK);
        c.lean = 5.0;
        c = c.stand();
        c.arms[0] = arm(93.0, 126.0, -1.0, Z::Front, Hold::Grip);
        c.arms[1] = arm(176.0, 108.0, -1.0, Z::Behind, Hold::Point).aim(16.0);
        c.legs[0] = leg(102.0, 193.0, -1.0, 0.9).tilt(16.0);
        c.legs[1] = leg(146.0, 195.0, -1.0, 0.9).z(Z::Behind);
        a.draw(g);
        c.draw(g);
    });
    s
}

fn out_of_water() -> Scene {
    let mut s = Scene::default();
    shore(&mut s);
    s.group(4.8, |g| {
        let mut a = Figure::adult(0.82, p(186.0, 108.0));
        a.turn = -50.0;
        a.look = [-54.0, 8.0, 0.0];
        a.hair = Hair(Style::Tail, ink::HAIR_BROWN);
        a.skin = SKIN_LIGHT;
        a.bottom = Bottom::Legs(ink::CHARCOAL, 0.5);
        a.shoes = None;
        a.lean = -3.0;
        a = a.stand();
        a.arms[1] = arm(212.0, 120.0, -1.0, Z::Front, Hold::Rest);
        a.arms[0] = arm(142.8, 122.2, 1.0, Z::Front, Hold::Grip);
        a.legs[1] = leg(208.0, 196.0, 1.0, -0.9);
        a.legs[0] = leg(164.0, 200.0, 1.0, -0.9).z(Z::Behind);
        let mut c = Figure::child(0.86, p(100.0, 135.0));
        c.turn = -55.0;
        c.look = [-50.0, 4.0, 0.0];
        c.hair = Hair(Style::Bob, ink::HAIR_DARK);
        c.lean = -5.0;
        c = c.stand();
        c.arms[1] = arm(134.0, 126.0, 1.0, Z::Front, Hold::Grip);
        c.arms[0] = arm(66.0, 120.0, 1.0, Z::Behind, Hold::Rest);
        c.legs[1] = leg(122.0, 193.0, 1.0, -0.9).tilt(-16.0);
        c.legs[0] = leg(78.0, 195.0, 1.0, -0.9).z(Z::Behind);
        a.draw(g);
        c.draw(g);
    });
    s.group(0.0, |g| {
        for (x, y) in [
            (64.0, 152.0),
            (88.0, 172.0),
            (114.0, 168.0),
            (150.0, 150.0),
            (136.0, 170.0),
        ] {
            g.dot(drop(p(x, y), 5.0), ink::WATER);
        }
    });
    props::water(&mut s, 138.0, 226.0, 180.0, 44.0);
    s
}

fn walk_with_helper() -> Scene {
    let mut s = Scene::default();
    s.group(4.8, |g| {
        let mut a = Figure::adult(0.84, p(52.0, 114.0));
        a.turn = 50.0;
        a.look = [48.0, 8.0, 0.0];
        a.skin = SKIN_DARK;
        a.hair = Hair(Style::Curly, ink::HAIR_DARK);
        a = a.stand();
        a.arms[0] = arm(28.0, 122.0, 1.0, Z::Front, Hold::Rest);
        a.arms[1] = arm(84.0, 118.0, -1.0, Z::Behind, Hold::Rest);
        a.legs[0] = leg(26.0, 197.0, -1.0, 0.9).tilt(14.0);
        a.legs[1] = leg(74.0, 200.0, -1.0, 0.9).z(Z::Behind);
        a.draw(g);
    });
    s.group(4.8, |g| {
        let mut c = Figure::child(0.92, p(142.0, 136.0));
        c.turn = 60.0;
        c.look = [48.0, 0.0, 0.0];
        c.hair = Hair(Style::Crop, ink::HAIR_BROWN);
        c.bottom = Bottom::Legs(ink::NAVY, 0.95);
        c.shoes = Some(ink::WHITE);
        c.lean = 8.0;
        c = c.stand();
        c.legs[0] = leg(124.0, 201.0, -1.0, 0.9).tilt(12.0);
        c.legs[1] = leg(164.0, 203.0, -1.0, 0.9).z(Z::Behind);
        c.arms[0] = arm(183.8, 129.8, 1.0, Z::Front, Hold::Grip);
        c.arms[1].z = Z::Gone;
        c.draw_back(g);
        props::walker(g, p(190.0, 132.0), 212.0, 1.0);
        c.draw_mid(g);
        c.draw_front(g);
    });
    s
}

fn bye() -> Scene {
    let mut s = Scene::default();
    s.group(5.2, |g| {
        let mut c = Figure::child(1.06, p(116.0, 136.0));
        c.turn = 110.0;
        c.look = [20.0, 0.0, 0.0];
        c.hair = Hair(Style::Plaits, ink::HAIR_DARK);
        c.lean = 3.0;
        c = c.stand();
        c.arms[0] = arm(172.0, 50.0, -1.0, Z::Over, Hold::Open).aim(-76.0);
        c.arms[1].z = Z::Gone;
        c.legs[0] = leg(88.0, 206.0, -1.0, 1.0).tilt(18.0);
        c.legs[1] = leg(146.0, 208.0, -1.0, 1.0).z(Z::Behind);
        c.shoes = Some(ink::WHITE);
        c.draw_back(g);
        c.draw_mid(g);
        bag(g);
        c.draw_front(g);
    });
    s
}

fn bag(g: &mut Group) {
    g.over(Path::block(p(90.0, 108.0), 48.0, 58.0, 16.0, 3.0), ink::SUN);
    g.over(
        Path::block(p(84.0, 120.0), 26.0, 22.0, 6.0, 3.0),
        ink::CORAL,
    );
    g.mark(
        Path::smooth(
            &[
                p(108.0, 84.0),
                p(124.0, 90.0),
                p(126.0, 112.0),
                p(112.0, 130.0),
            ],
            false,
        ),
        ink::WHITE,
        5.0,
    );
}

fn help() -> Scene {
    let mut s = Scene::default();
    // Fallen down, and a large hand has hold of the small one: helped up.
    let wrist = p(160.0, 70.0);
    s.group(5.2, |g| {
        let mut c = Figure::child(1.24, p(66.0, 190.0));
        c.turn = 55.0;
        c.lean = -8.0;
        c.look = [44.0, -22.0, -10.0];
        c.worry = true;
        c.mouth = Mouth::Calm;
        c.hair = Hair(Style::Crop, ink::HAIR_DARK);
        c = c.stand();
        c.legs[0] = leg(146.0, 208.0, -1.0, 1.0);
        c.legs[1] = leg(168.0, 206.0, -1.0, 1.0).z(Z::Behind);
        c.arms[0] = arm(30.0, 200.0, -1.0, Z::Front, Hold::Rest).aim(100.0);
        c.arms[1] = arm(136.0, 94.0, 1.0, Z::Front, Hold::None);
        c.draw(g);
        let from = p(206.0, 20.0);
        let limb = Limb {
            pts: [from, from.to(wrist, 0.5), wrist],
            w: [12.5, 12.5, 12.0],
            flat: false,
        };
        let h = Hand {
            wrist,
            deg: 134.0,
            len: 46.0,
            flip: true,
            hold: Hold::Grip,
        };
        g.fill(limb.outline(), SKIN_LIGHT.0);
        hand(g, h, SKIN_LIGHT);
        g.over(Path::read("M184 20L208 2L236 32L210 54Z"), ink::TEAL);
    });
    s
}
