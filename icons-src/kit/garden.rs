//! Outdoors: growing, looking, feeding, sitting round a fire.

use super::big_hands::{FLAT, at};
use super::body::{Z, arm};
use super::cast;
use super::geom::{P, Path, p};
use super::hands::Hold;
use super::head::SKIN;
use super::limb::Limb;
use super::paint::{Group, Scene, ink};
use super::people_b::seated;

/// The drawings of this file.
pub fn symbols() -> Vec<(&'static str, String)> {
    vec![
        ("plant", plant().svg("plant", "Plant")),
        (
            "water_plants",
            water_plants().svg("water_plants", "Water the plants"),
        ),
        (
            "look_closely",
            look_closely().svg("look_closely", "Look closely"),
        ),
        (
            "feed_animals",
            feed_animals().svg("feed_animals", "Feed the animals"),
        ),
        (
            "camp_fire_circle",
            camp_fire_circle()
                .zoom(0.97)
                .svg("camp_fire_circle", "Fire circle"),
        ),
    ]
}

/// A leaf from its stalk at `from` to its tip.
fn leaf(from: P, tip: P) -> Path {
    let d = "M0 0C.2-.36.7-.36 1 0C.7.36.2.36 0 0Z";
    let v = tip - from;
    Path::read(d).put(from, v.len(), v.deg(), false)
}

fn leaf_pair(g: &mut Group, from: P, tips: [P; 2]) {
    for t in tips {
        g.over(leaf(from, t), ink::LEAF);
        g.mark(
            Path::poly(&[from.to(t, 0.2), from.to(t, 0.72)], false),
            ink::WHITE,
            2.6,
        );
    }
}

fn plant() -> Scene {
    let mut s = Scene::default();
    s.group(0.0, |g| {
        g.dot(
            Path::read(
                "M14 190C40 178 70 174 90 166C106 158 134 158 150 166C170 174 200 178 226 190\
                        L226 214C226 220 222 224 216 224L24 224C18 224 14 220 14 214Z",
            ),
            ink::HAIR_BROWN,
        );
        for (x, y) in [
            (40.0, 206.0),
            (88.0, 212.0),
            (120.0, 204.0),
            (156.0, 214.0),
            (200.0, 206.0),
        ] {
            g.dot(Path::circle(p(x, y), 3.0), ink::HAIR_FAIR);
        }
    });
    s.group(5.2, |g| {
        g.bar(
            Path::read("M120 168C122 130 118 110 120 84"),
            ink::LEAF,
            8.0,
        );
        leaf_pair(g, p(120.0, 112.0), [p(56.0, 84.0), p(184.0, 84.0)]);
        leaf_pair(g, p(120.0, 86.0), [p(86.0, 22.0), p(154.0, 22.0)]);
    });
    for flip in [false, true] {
        s.group(5.2, |g| {
            let x = if flip { 134.0 } else { 106.0 };
            FLAT.draw(
                g,
                at(x, 174.0, 0.96, if flip { 4.0 } else { -4.0 }, flip),
                SKIN,
                ink::CORAL,
            );
        });
    }
    s
}

fn can(g: &mut Group) {
    g.bar(Path::read("M112 118C110 86 146 84 148 112"), ink::SUN, 8.0);
    g.fill(Path::read("M146 142L190 108L194 116L150 160Z"), ink::SUN);
    g.over(Path::read("M186 98L206 122L198 128L180 106Z"), ink::CORAL);
    g.over(Path::read("M104 116L152 116L156 164L100 164Z"), ink::SUN);
    g.mark(Path::read("M106 130L150 130"), ink::WHITE, 4.0);
}

fn sprouts(g: &mut Group) {
    for (x, h) in [(160.0, 30.0), (190.0, 40.0), (218.0, 28.0)] {
        g.bar(
            Path::poly(&[p(x, 212.0), p(x, 212.0 - h)], false),
            ink::LEAF,
            6.0,
        );
        let top = p(x, 214.0 - h);
        for dx in [-15.0, 15.0] {
            g.fill(leaf(top, top + p(dx, -13.0)), ink::LEAF);
        }
    }
}

fn water_plants() -> Scene {
    let mut s = Scene::default();
    s.group(0.0, |g| {
        g.dot(
            Path::read("M132 218C140 204 220 204 230 218C230 224 226 226 220 226L142 226C136 226 132 224 132 218Z"),
            ink::HAIR_BROWN,
        );
    });
    s.group(4.8, sprouts);
    s.group(4.8, |g| {
        let mut c = cast::main_girl(0.98, p(58.0, 140.0));
        c.turn = 50.0;
        c.look = [50.0, 14.0, 0.0];
        c.shoes = Some(ink::CHARCOAL);
        c.lean = 4.0;
        c = c.stand();
        c.arms[1] = arm(112.0, 112.0, -1.0, Z::Behind, Hold::None);
        c.arms[0] = arm(106.0, 102.0, -1.0, Z::Over, Hold::Grip).aim(10.0);
        c.draw_back(g);
        c.draw_mid(g);
        can(g);
        c.draw_front(g);
    });
    s.group(0.0, |g| {
        for (x, y) in [
            (198.0, 142.0),
            (212.0, 134.0),
            (206.0, 158.0),
            (192.0, 162.0),
            (220.0, 152.0),
        ] {
            g.mark(
                Path::poly(&[p(x, y), p(x + 2.0, y + 9.0)], false),
                ink::WATER,
                5.5,
            );
        }
    });
    s
}

fn beetle(g: &mut Group, c: P, k: f64) {
    let u = |x: f64, y: f64| c + p(x, y) * k;
    for y in [-9.0, 2.0, 13.0] {
        g.mark(
            Path::poly(&[u(-25.0, y + 5.0), u(0.0, y), u(25.0, y + 5.0)], false),
            ink::INK,
            3.4,
        );
    }
    g.dot(Path::circle(u(0.0, -19.0), 10.0 * k), ink::INK);
    g.dot(
        Path::ellipse(u(0.0, 3.0), 18.0 * k, 21.0 * k, 0.0),
        ink::CORAL,
    );
    g.mark(
        Path::poly(&[u(0.0, -16.0), u(0.0, 22.0)], false),
        ink::INK,
        3.0,
    );
    for (x, y) in [(-8.0, -3.0), (8.0, -3.0), (-8.0, 11.0), (8.0, 11.0)] {
        g.dot(Path::circle(u(x, y), 3.4 * k), ink::INK);
    }
}

fn look_closely() -> Scene {
    let mut s = Scene::default();
    s.group(5.2, |g| {
        g.fill(leaf(p(92.0, 222.0), p(226.0, 118.0)), ink::LEAF);
        g.mark(
            Path::poly(&[p(104.0, 213.0), p(206.0, 134.0)], false),
            ink::WHITE,
            3.4,
        );
    });
    s.group(5.4, |g| {
        let mut c = cast::main_child(1.5, p(52.0, 246.0)).bust(57.0);
        c.turn = 50.0;
        c.look = [58.0, 20.0, 8.0];
        c.lean = 6.0;
        c = c.stubs();
        c.arms[1].z = Z::Gone;
        c.arms[0] = arm(98.0, 214.0, -1.0, Z::Gone, Hold::Grip).aim(-30.0);
        c.draw(g);
        g.bar(
            Path::poly(&[p(106.0, 204.0), p(134.0, 182.0)], false),
            ink::HAIR_BROWN,
            12.0,
        );
        let lens = p(166.0, 150.0);
        g.bar(Path::circle(lens, 44.0), ink::SUN, 9.0);
        g.dot(Path::circle(lens, 40.0), ink::WHITE);
        beetle(g, lens + p(0.0, 2.0), 1.15);
        c.draw_arm(0, g);
    });
    s
}

fn limb(q: [(f64, f64); 3], w: [f64; 3]) -> Path {
    Limb {
        pts: q.map(|(x, y)| p(x, y)),
        w,
        flat: false,
    }
    .outline()
}

fn goat(g: &mut Group) {
    g.fill(
        Path::read("M148 62C138 40 146 22 166 12C160 26 160 42 168 60Z"),
        ink::CHARCOAL,
    );
    g.over(
        Path::read("M168 58C162 32 178 14 206 14C192 24 188 40 192 60Z"),
        ink::CHARCOAL,
    );
    g.fill(
        Path::read("M150 96C196 70 224 108 226 156L228 226L150 226C156 196 158 160 140 140Z"),
        ink::GREY_LIGHT,
    );
    g.fill(
        limb(
            [(142.0, 150.0), (146.0, 170.0), (140.0, 194.0)],
            [10.0, 9.0, 3.0],
        ),
        ink::GREY,
    );
    g.fill(
        limb(
            [(172.0, 78.0), (136.0, 116.0), (112.0, 140.0)],
            [30.0, 26.0, 20.0],
        ),
        ink::GREY_LIGHT,
    );
    g.over(
        limb(
            [(124.0, 128.0), (118.0, 134.0), (112.0, 140.0)],
            [22.0, 21.5, 20.0],
        ),
        ink::WHITE,
    );
    g.over(
        limb(
            [(188.0, 74.0), (208.0, 84.0), (222.0, 104.0)],
            [9.0, 14.0, 6.0],
        ),
        ink::GREY,
    );
    g.dot(Path::ellipse(p(158.0, 82.0), 6.0, 7.5, 0.0), ink::INK);
    g.dot(Path::circle(p(101.0, 130.0), 3.2), ink::INK);
    g.mark(
        Path::read("M100 150C110 156 120 154 126 147"),
        ink::INK,
        4.0,
    );
}

fn feed_animals() -> Scene {
    let mut s = Scene::default();
    s.group(5.2, goat);
    s.group(5.0, |g| {
        for (a, b) in [
            (p(84.0, 178.0), p(76.0, 128.0)),
            (p(92.0, 178.0), p(104.0, 150.0)),
            (p(74.0, 178.0), p(48.0, 144.0)),
        ] {
            g.over(leaf(a, b), ink::LEAF);
        }
    });
    s.group(5.2, |g| {
        let palm = "M14 176L40 172C58 170 84 170 104 178C116 178 128 184 126 192C124 200 112 198 102 200\
                    C84 208 58 212 40 210L14 212Z";
        g.fill(Path::read(palm), SKIN.0);
        g.mark(Path::read("M66 192C82 190 94 190 108 190"), SKIN.1, 3.0);
        g.over(Path::read("M12 166L34 164L34 218L12 220Z"), ink::CORAL);
    });
    s
}

fn fire(g: &mut Group, c: P, k: f64) {
    let u = |d: &str| Path::read(d).put(c, k, 0.0, false);
    g.fill(u("M-2-58C14-40 30-26 28-4C26 12 14 18 0 18C-16 18-28 10-28-6C-28-20-16-26-14-40C-8-36-4-46-2-58Z"), ink::CORAL);
    g.dot(
        u("M2-30C8-20 16-14 14-2C13 8 8 12 0 12C-9 12-14 6-14-3C-14-12-4-18 2-30Z"),
        ink::SUN,
    );
    g.bar(u("M-32 22L30 12"), ink::HAIR_BROWN, 10.0);
    g.bar(u("M32 22L-30 12"), ink::HAIR_BROWN, 10.0);
}

fn camp_fire_circle() -> Scene {
    let mut s = Scene::default();
    s.group(4.2, |g| {
        let mut a = seated(0.62, p(120.0, 96.0), 0.0);
        let h = cast::helper(0.72, p(120.0, 84.0));
        a.build = h.build;
        a.top = h.top;
        a.skin = h.skin;
        a.hair = h.hair;
        a.bottom = h.bottom;
        a.shoes = h.shoes;
        a.k = 0.6;
        a.draw(g);
    });
    let kids = [(40.0, 158.0, 46.0), (200.0, 158.0, -46.0)];
    for (i, (x, y, yaw)) in kids.iter().enumerate() {
        s.group(4.2, |g| {
            let mut c = seated(0.74, p(*x, *y), *yaw);
            let from = if i == 0 {
                cast::main_child(1.0, p(0.0, 0.0))
            } else {
                cast::muffs(1.0, p(0.0, 0.0))
            };
            c.skin = from.skin;
            c.hair = from.hair;
            c.top.0 = from.top.0;
            c.wear = from.wear;
            c.draw(g);
        });
    }
    s.group(5.0, |g| fire(g, p(120.0, 198.0), 0.66));
    s.group(4.2, |g| {
        for x in [-30.0, -15.0, 0.0, 15.0, 30.0] {
            g.over(
                Path::ellipse(p(120.0 + x, 219.0 - x * x * 0.008), 7.0, 5.5, 0.0),
                ink::GREY,
            );
        }
    });
    s
}
