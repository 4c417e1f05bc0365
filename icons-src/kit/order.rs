//! What comes when, as a walk along the cards; and blowing the nose.

use super::body::{Figure, Z, arm, leg};
use super::cast::{main_child, main_girl};
use super::geom::{P, Path, p};
use super::hands::Hold;
use super::head::{Eyes, Mouth};
use super::paint::{Group, Scene, ink};

/// The drawings of this file.
pub fn symbols() -> Vec<(&'static str, String)> {
    vec![
        ("first", first().svg("first", "First")),
        ("then", then().svg("then", "Then")),
        ("next", next().svg("next", "Next")),
        ("last", last().svg("last", "Last")),
        ("tissue", tissue().svg("tissue", "Tissue")),
    ]
}

/// Ground of the cards: their upper edge.
const TOP: f64 = 168.0;

/// How a card lies on the way.
#[derive(Clone, Copy, PartialEq)]
enum Card {
    /// Its turn: sun colour with so many dots.
    Now(usize),
    /// Still to come.
    Pale,
    /// Turned over, done.
    Done,
}

/// A card in the row, its middle at `x`.
fn card(s: &mut Scene, x: f64, w: f64, kind: Card) {
    let mid = p(x, TOP + 28.0);
    let (edge, face) = match kind {
        Card::Now(_) => (5.4, ink::SUN),
        Card::Pale => (0.0, ink::GREY_LIGHT),
        Card::Done => (0.0, ink::GREY),
    };
    s.group(edge, |g| {
        g.fill(Path::block(mid, w, 54.0, 11.0, 0.0), face);
        match kind {
            Card::Now(n) => {
                for i in 0..n {
                    let side = (i as f64 - (n as f64 - 1.0) / 2.0) * 26.0;
                    g.dot(Path::circle(mid + p(side, 0.0), 9.5), ink::INK);
                }
            }
            Card::Pale => g.dot(Path::block(mid, w - 13.0, 41.0, 7.0, 0.0), ink::WHITE),
            Card::Done => {
                for i in -1..2 {
                    let at = mid + p(f64::from(i) * 17.0, 0.0);
                    let bar = [at + p(-9.0, 17.0), at + p(9.0, -17.0)];
                    g.mark(Path::poly(&bar, false), ink::GREY_LIGHT, 6.0);
                }
            }
        }
    });
}

/// An arched arrow from `a` to `b`, as high as `rise`.
fn hop(s: &mut Scene, a: P, b: P, rise: f64) {
    let q = a.to(b, 0.5) - p(0.0, rise);
    let c = b.to(q, 0.16);
    s.group(0.0, |g| {
        g.mark(
            Path::smooth(
                &[
                    a,
                    a.to(b, 0.22) - p(0.0, rise * 0.72),
                    q,
                    a.to(b, 0.8) - p(0.0, rise * 0.7),
                    c,
                ],
                false,
            ),
            ink::CORAL,
            9.0,
        );
        let d = (b - c).unit();
        let n = d.left();
        g.dot(
            Path::poly(
                &[
                    b + d * 8.0,
                    b - d * 15.0 + n * 16.0,
                    b - d * 15.0 - n * 16.0,
                ],
                true,
            ),
            ink::CORAL,
        );
    });
}

/// The child on the way, seen a little from the side.
fn walker(x: f64, rise: f64) -> Figure {
    let mut c = main_child(1.12, p(x, TOP - 58.0 - rise));
    c.turn = 32.0;
    c.look = [34.0, 4.0, 0.0];
    c.stand()
}

fn step(c: &mut Figure, back: P, front: P) {
    c.legs[0] = leg(back.x, back.y, -1.0, 1.0);
    c.legs[1] = leg(front.x, front.y, -1.0, 1.0);
}

fn first() -> Scene {
    let mut s = Scene::default();
    card(&mut s, 134.0, 54.0, Card::Pale);
    card(&mut s, 199.0, 54.0, Card::Pale);
    card(&mut s, 54.0, 80.0, Card::Now(1));
    s.group(5.2, |g| {
        let mut c = walker(50.0, 0.0);
        step(&mut c, p(40.0, TOP - 11.0), p(64.0, TOP - 11.0));
        c.arms[1] = arm(98.0, 96.0, 1.0, Z::Behind, Hold::Rest);
        c.draw(g);
    });
    s
}

fn then() -> Scene {
    let mut s = Scene::default();
    card(&mut s, 54.0, 80.0, Card::Pale);
    card(&mut s, 174.0, 92.0, Card::Now(2));
    hop(&mut s, p(48.0, 152.0), p(126.0, 150.0), 74.0);
    s.group(5.2, |g| {
        let mut c = walker(168.0, 18.0);
        c.lean = 8.0;
        c.legs[0] = leg(150.0, TOP - 26.0, -1.0, 1.0).tilt(24.0);
        c.legs[1] = leg(192.0, TOP - 22.0, -1.0, 1.0);
        c.arms[0] = arm(134.0, 66.0, 1.0, Z::Front, Hold::Open);
        c.arms[1] = arm(214.0, 62.0, 1.0, Z::Behind, Hold::Open);
        c.draw(g);
    });
    s
}

fn next() -> Scene {
    let mut s = Scene::default();
    card(&mut s, 44.0, 62.0, Card::Done);
    card(&mut s, 122.0, 78.0, Card::Now(0));
    card(&mut s, 198.0, 56.0, Card::Pale);
    s.group(5.2, |g| {
        let mut c = walker(72.0, 0.0);
        c.lean = 6.0;
        c.legs[0] = leg(44.0, TOP - 9.0, -1.0, 1.0).tilt(10.0);
        c.legs[1] = leg(106.0, TOP - 14.0, -1.0, 1.0).tilt(-10.0);
        c.arms[1] = arm(112.0, 100.0, 1.0, Z::Behind, Hold::Rest);
        c.arms[0] = arm(44.0, 110.0, 1.0, Z::Front, Hold::Rest);
        c.draw(g);
    });
    hop(&mut s, p(128.0, 122.0), p(158.0, 152.0), 16.0);
    s
}

fn last() -> Scene {
    let mut s = Scene::default();
    card(&mut s, 38.0, 50.0, Card::Done);
    card(&mut s, 98.0, 50.0, Card::Done);
    card(&mut s, 168.0, 74.0, Card::Now(0));
    end_post(&mut s);
    s.group(5.2, |g| {
        let mut c = walker(164.0, 0.0);
        c.turn = 0.0;
        c.look = [0.0; 3];
        c.mouth = Mouth::Grin;
        step(&mut c, p(152.0, TOP - 11.0), p(176.0, TOP - 11.0));
        c.legs[0].face = -0.4;
        c.legs[1].face = 0.4;
        c.arms[0] = arm(126.0, 58.0, -1.0, Z::Front, Hold::Open);
        c.arms[1] = arm(202.0, 58.0, 1.0, Z::Front, Hold::Open).flip();
        c.draw(g);
    });
    s
}

/// The stop at the end of the row.
fn end_post(s: &mut Scene) {
    s.group(5.2, |g| {
        g.fill(
            Path::block(p(218.0, 172.0), 12.0, 104.0, 6.0, 0.0),
            ink::CORAL,
        );
    });
}

/// Both hands hold a tissue before the nose.
fn tissue() -> Scene {
    let mut s = Scene::default();
    s.group(5.4, |g| {
        let mut c = main_girl(1.85, p(120.0, 236.0)).bust(50.0);
        c.look = [0.0, 6.0, 0.0];
        c.eyes = Eyes::Tight;
        c.mouth = Mouth::None;
        let n = c.head().spot(0.0, 0.3, 1.0, false).0;
        c.arms[0] = arm(n.x - 50.0, n.y + 42.0, -1.0, Z::Over, Hold::Grip).aim(-52.0);
        c.arms[1] = arm(n.x + 50.0, n.y + 42.0, 1.0, Z::Over, Hold::Grip)
            .aim(-128.0)
            .flip();
        let mut body = c;
        for a in &mut body.arms {
            a.z = Z::Gone;
        }
        body.draw(g);
        paper(g, n);
        c.draw_arm(0, g);
        c.draw_arm(1, g);
    });
    s
}

/// The tissue, its upper edge on the nose at `n`.
fn paper(g: &mut Group, n: P) {
    let ring = [
        p(0.0, -12.0),
        p(22.0, -2.0),
        p(40.0, 10.0),
        p(36.0, 30.0),
        p(24.0, 44.0),
        p(10.0, 64.0),
        p(-6.0, 56.0),
        p(-20.0, 66.0),
        p(-28.0, 44.0),
        p(-38.0, 30.0),
        p(-38.0, 10.0),
        p(-22.0, -2.0),
    ];
    let edge: Vec<P> = ring.iter().map(|&q| n + q).collect();
    let sheet = Path::smooth(&edge, true);
    g.mark(sheet.clone(), ink::INK, 7.0);
    g.fill(sheet, ink::WHITE);
    for x in [-9.0, 9.0] {
        let fold = [n + p(x * 0.5, 8.0), n + p(x, 44.0)];
        g.mark(Path::poly(&fold, false), ink::GREY, 3.4);
    }
}
