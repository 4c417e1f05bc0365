//! At the edge of the sea: waves great and small, watching them, the shower.

use super::body::{Bottom, Figure, Z, arm, leg};
use super::cast;
use super::geom::{P, Path, p};
use super::hands::Hold;
use super::head::{Eyes, Mouth, Wear};
use super::in_water::swim;
use super::paint::{Group, Scene, ink};
use super::props;

/// The drawings of this file.
pub fn symbols() -> Vec<(&'static str, String)> {
    vec![
        (
            "watch_waves",
            watch_waves().svg("watch_waves", "Watch the waves"),
        ),
        (
            "little_waves",
            little_waves().svg("little_waves", "Little waves"),
        ),
        ("big_waves", big_waves().svg("big_waves", "Big waves")),
        ("shower", shower().svg("shower", "Shower")),
    ]
}

/// Two curling waves, 136 wide and 44 high, their left foot at the origin.
fn curls() -> Path {
    let d = "M136 0L0 0C20 0 32-8 32-20C32-26 26-28 21-26C28-38 46-38 54-22C58-16 64-14 72-16\
             C78-19 80-22 78-28C76-32 72-33 68-31C74-44 94-44 102-28C107-20 118-16 136-20Z";
    Path::read(d)
}

/// Seated on the sand, seen from behind.
fn from_behind(mut f: Figure, seat: P) -> Figure {
    let k = f.k;
    f.hip = seat - p(0.0, 12.0 * k);
    f.turn = 180.0;
    f.look = [180.0, 0.0, 0.0];
    f = f.stand();
    for i in 0..2 {
        let d = if i == 0 { 1.0 } else { -1.0 };
        let l = f.build.leg[0] * k;
        f.legs[i] = leg(seat.x - d * 6.0 * k, seat.y - 20.0 * k, 1.0, d * 0.8)
            .knee(seat.x + d * l, seat.y - 14.0 * k)
            .z(Z::Behind);
        let out = f.build.wide[0] + 12.0;
        f.arms[i] = arm(
            seat.x + d * out * k,
            seat.y - 6.0 * k,
            -d,
            Z::Front,
            Hold::Rest,
        )
        .aim(90.0 - d * 30.0);
    }
    f
}

/// The seat lies on the ground below the hem of the top.
fn draw_seated(f: &Figure, g: &mut Group) {
    f.draw_back(g);
    if let Bottom::Legs(c, _) = f.bottom {
        let (w, h) = (f.half(2) * 2.2, 30.0 * f.k);
        let at = f.hip + p(0.0, -4.0 * f.k);
        g.fill(Path::block(at, w, h, 10.0 * f.k, 0.0), c);
    }
    f.draw_mid(g);
    f.draw_front(g);
}

fn watch_waves() -> Scene {
    let mut s = Scene::default();
    s.group(5.2, |g| {
        let put = |q: P| p(14.0 + q.x * 1.56, 118.0 + q.y * 2.2);
        g.fill(curls().map(put), ink::WATER);
        g.mark(
            Path::read("M88 76C96 96 108 104 124 106M164 62C172 86 186 96 206 100"),
            ink::WHITE,
            5.0,
        );
    });
    props::sand(&mut s, 14.0, 226.0, 204.0, 20.0);
    s.group(4.8, |g| {
        let a = from_behind(cast::helper(0.92, p(0.0, 0.0)), p(160.0, 206.0));
        draw_seated(&a, g);
    });
    s.group(4.8, |g| {
        let mut c = from_behind(cast::main_child(0.98, p(0.0, 0.0)), p(76.0, 208.0));
        c.wear = Wear::Muffs(ink::SUN);
        draw_seated(&c, g);
    });
    s
}

fn little_waves() -> Scene {
    let mut s = Scene::default();
    props::sand(&mut s, 14.0, 130.0, 212.0, 13.0);
    s.group(5.2, |g| {
        let mut c = swim(cast::main_child(1.04, p(64.0, 124.0)));
        c.turn = 30.0;
        c.look = [36.0, 8.0, 2.0];
        c = c.stand();
        c.draw(g);
    });
    s.group(4.8, |g| {
        let put = |q: P| p(100.0 + q.x * 0.92, 224.0 + q.y * 0.52);
        g.fill(curls().map(put), ink::WATER);
    });
    s
}

fn big_waves() -> Scene {
    let mut s = Scene::default();
    s.group(5.2, |g| {
        let wave = "M228 224L84 224C114 214 142 186 140 148C138 122 120 108 102 112C90 114 84 124 86 134\
                    C60 116 58 76 90 46C130 8 206 16 228 84Z";
        let body = "M228 224L84 224C114 214 142 186 140 148C138 122 120 108 102 112C96 113 92 118 90 126\
                    C74 108 80 82 106 64C140 36 198 46 228 108Z";
        g.fill(Path::read(wave), ink::WHITE);
        g.dot(Path::read(body), ink::WATER);
        for d in [
            "M118 84C150 74 176 104 176 144C176 178 160 206 140 222",
            "M156 66C190 78 208 118 206 152C204 186 194 208 184 222",
        ] {
            g.mark(Path::read(d), ink::WHITE, 5.0);
        }
    });
    props::sand(&mut s, 12.0, 112.0, 214.0, 12.0);
    s.group(4.4, |g| {
        let mut c = swim(cast::main_child(0.5, p(48.0, 170.0)));
        c.turn = 35.0;
        c.look = [50.0, -14.0, 0.0];
        c.mouth = Mouth::Calm;
        c = c.stand();
        c.draw(g);
    });
    s
}

fn shower() -> Scene {
    let mut s = Scene::default();
    s.group(5.2, |g| {
        g.bar(
            Path::read("M206 212L206 40C206 22 194 16 180 16L150 16C132 16 124 22 124 34"),
            ink::GREY,
            9.0,
        );
        g.over(
            Path::read("M112 32L130 32C142 36 152 44 154 54L86 54C88 44 98 36 112 32Z"),
            ink::GREY,
        );
    });
    s.group(0.0, |g| {
        for (x, a, b) in [
            (94.0, -1.0, 104.0),
            (108.0, -0.5, 86.0),
            (132.0, 0.5, 86.0),
            (146.0, 1.0, 104.0),
        ] {
            let from = p(x, 66.0);
            g.mark(
                Path::poly(&[from, p(x + a * (b - 66.0) * 0.3, b)], false),
                ink::WATER,
                6.0,
            );
        }
    });
    s.group(5.2, |g| {
        let mut c = swim(cast::main_child(1.36, p(118.0, 238.0))).bust(57.0);
        c.eyes = Eyes::Shut;
        c = c.bust(57.0);
        let h = c.head();
        for (i, d) in [(0, -1.0), (1, 1.0)] {
            let at = h.place(p(d * 1.06, -0.5));
            c.arms[i] =
                arm(at.x + d * 12.0, at.y + 8.0, d, Z::Over, Hold::Rest).aim(-90.0 - d * 55.0);
            c.arms[i].flip = d < 0.0;
        }
        c.draw(g);
    });
    s
}
