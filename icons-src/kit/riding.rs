//! Riding and grooming: a pony built of the same limbs as people.

use super::body::{Bottom, Figure, Z, arm, leg};
use super::cast;
use super::clubs::helmet;
use super::geom::{P, Path, p};
use super::hands::Hold;
use super::limb::Limb;
use super::paint::{Group, Scene, ink};

/// The drawings of this file.
pub fn symbols() -> Vec<(&'static str, String)> {
    vec![
        ("ride_pony", ride_pony().svg("ride_pony", "Ride a pony")),
        (
            "brush_pony",
            brush_pony().svg("brush_pony", "Brush the pony"),
        ),
    ]
}

/// A pony seen from the side, facing right; `at` is the middle of its barrel.
#[derive(Clone, Copy, Debug)]
struct Pony {
    at: P,
    k: f64,
    coat: &'static str,
    mane: &'static str,
}

impl Pony {
    fn u(&self, x: f64, y: f64) -> P {
        self.at + p(x, y) * self.k
    }
    fn limb(&self, q: [(f64, f64); 3], w: [f64; 3]) -> Path {
        Limb {
            pts: q.map(|(x, y)| self.u(x, y)),
            w: w.map(|v| v * self.k),
            flat: false,
        }
        .outline()
    }
    fn read(&self, d: &str) -> Path {
        Path::read(d).map(|q| self.u(q.x, q.y))
    }
    fn leg(&self, g: &mut Group, q: [(f64, f64); 3], far: bool) {
        let path = self.limb(q, [14.0, 8.5, 7.5]);
        if far {
            g.fill(path, self.coat);
        } else {
            let n = g.depth();
            let edge = Path::poly(&[self.u(q[1].0, q[1].1), self.u(q[2].0, q[2].1)], false);
            g.part(path, self.coat, edge, n.min(1));
        }
        let (x, y) = q[2];
        g.over(
            self.read(&format!(
                "M{} {}L{} {}L{} {}L{} {}Z",
                x - 8.0,
                y - 3.0,
                x + 8.0,
                y - 3.0,
                x + 12.0,
                y + 12.0,
                x - 9.0,
                y + 12.0
            )),
            ink::CHARCOAL,
        );
    }
    fn draw(&self, g: &mut Group) {
        g.fill(
            self.limb(
                [(-52.0, -14.0), (-71.0, 8.0), (-66.0, 54.0)],
                [7.0, 12.0, 5.0],
            ),
            self.mane,
        );
        self.leg(g, [(22.0, 8.0), (24.0, 40.0), (20.0, 68.0)], true);
        self.leg(g, [(-28.0, 6.0), (-28.0, 40.0), (-26.0, 68.0)], true);
        g.fill(
            self.read(
                "M-60-4C-60-28-38-32-18-27C0-23 14-24 24-32C36-46 46-60 56-72C66-80 82-74 84-62\
                 C72-46 66-20 58 4C50 24 30 28 8 27C-10 27-20 28-34 24C-52 22-60 12-60-4Z",
            ),
            self.coat,
        );
        self.leg(g, [(42.0, 2.0), (45.0, 40.0), (43.0, 68.0)], false);
        self.leg(g, [(-46.0, 2.0), (-52.0, 38.0), (-49.0, 68.0)], false);
        self.head(g);
    }
    fn head(&self, g: &mut Group) {
        for x in [58.0, 70.0] {
            g.fill(
                self.read(&format!(
                    "M{} -66C{} -82 {} -90 {} -94C{} -88 {} -78 {} -66Z",
                    x - 6.0,
                    x - 7.0,
                    x - 2.0,
                    x + 3.0,
                    x + 9.0,
                    x + 10.0,
                    x + 8.0
                )),
                self.coat,
            );
        }
        g.fill(
            self.limb(
                [(70.0, -60.0), (88.0, -42.0), (102.0, -26.0)],
                [19.0, 16.0, 13.0],
            ),
            self.coat,
        );
        let n = g.depth();
        let mane = self.read(
            "M62-82C50-80 34-60 24-44C18-36 10-30 4-26C12-18 26-18 34-28C44-32 50-44 58-52\
             C64-60 72-62 78-58C80-70 74-84 62-82Z",
        );
        let edge = self.read("M4-26C12-18 26-18 34-28C44-32 50-44 58-52C64-60 72-62 78-58");
        g.part(mane, self.mane, edge, n);
        g.dot(Path::circle(self.u(84.0, -54.0), 4.6 * self.k), ink::INK);
        g.dot(Path::circle(self.u(107.0, -26.0), 3.2 * self.k), ink::INK);
        g.mark(self.read("M102-16C98-15 95-17 93-20"), ink::INK, 3.0);
        g.mark(self.read("M84-28L101-44"), ink::CORAL, 6.0);
        g.mark(self.read("M88-32C78-36 70-42 64-48"), ink::CORAL, 5.0);
    }
}

fn rider() -> Figure {
    let mut c = cast::main_child(0.9, p(74.0, 119.0));
    c.turn = 60.0;
    c.look = [44.0, 0.0, 0.0];
    c.shoes = Some(ink::CHARCOAL);
    c.bottom = Bottom::Legs(ink::NAVY, 0.95);
    c = c.stand();
    c.legs[1].z = Z::Gone;
    c.legs[0] = leg(84.0, 170.0, -1.0, 1.0).knee(94.0, 140.0);
    c.arms[1].z = Z::Gone;
    c.arms[0] = arm(106.0, 108.0, 1.0, Z::Front, Hold::Grip).aim(0.0);
    c
}

fn ride_pony() -> Scene {
    let mut s = Scene::default();
    s.group(4.8, |g| {
        let mut a = cast::helper(0.84, p(198.0, 124.0));
        a.turn = -40.0;
        a.look = [-30.0, 0.0, 0.0];
        a = a.stand();
        a.arms[0] = arm(178.0, 138.0, 1.0, Z::Gone, Hold::Grip);
        a.draw(g);
    });
    let pony = Pony {
        at: p(80.0, 154.0),
        k: 0.83,
        coat: ink::HAIR_FAIR,
        mane: ink::HAIR_BROWN,
    };
    let c = rider();
    s.group(4.8, |g| {
        pony.draw(g);
        g.over(
            Path::read("M52 126C66 133 84 133 98 127L102 148C86 154 64 154 50 148Z"),
            ink::TEAL,
        );
        g.mark(
            Path::read("M150 128C138 130 124 120 110 110"),
            ink::INK,
            3.4,
        );
        c.draw_mid(g);
        c.draw_front(g);
        helmet(g, &c.head(), ink::SUN);
    });
    s.group(4.8, |g| {
        let mut a = cast::helper(0.84, p(198.0, 124.0));
        a.turn = -40.0;
        a = a.stand();
        g.mark(
            Path::read("M158 130C164 144 170 148 178 148"),
            ink::CORAL,
            5.0,
        );
        a.arms[0] = arm(182.0, 142.0, 1.0, Z::Over, Hold::Grip).aim(150.0);
        a.draw_arm(0, g);
    });
    s
}

fn brush_pony() -> Scene {
    let mut s = Scene::default();
    let pony = Pony {
        at: p(108.0, 134.0),
        k: 1.08,
        coat: ink::HAIR_FAIR,
        mane: ink::HAIR_BROWN,
    };
    s.group(5.0, |g| pony.draw(g));
    s.group(5.0, |g| {
        let mut c = cast::main_girl(0.94, p(72.0, 146.0));
        c.turn = 60.0;
        c.look = [56.0, -4.0, 0.0];
        c.lean = 4.0;
        c.shoes = Some(ink::CHARCOAL);
        c.bottom = Bottom::Legs(ink::NAVY, 0.95);
        c = c.stand();
        c.legs[0] = leg(60.0, 211.0, -1.0, 1.0);
        c.legs[1] = leg(88.0, 211.0, -1.0, 1.0).z(Z::Behind);
        c.arms[0] = arm(112.0, 118.0, -1.0, Z::Over, Hold::Grip).aim(-24.0);
        c.arms[1].z = Z::Gone;
        c.draw_back(g);
        c.draw_mid(g);
        g.over(
            Path::block(p(134.0, 122.0), 12.0, 36.0, 3.0, 14.0),
            ink::CHARCOAL,
        );
        g.over(
            Path::block(p(124.0, 120.0), 16.0, 38.0, 7.0, 14.0),
            ink::SUN,
        );
        c.draw_front(g);
    });
    s
}
