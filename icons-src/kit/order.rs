//! What comes when, as a walk along the cards; and blowing the nose.

use super::body::{Figure, Z, arm, leg};
use super::cast::{main_child, main_girl};
use super::feelings::folded_arm;
use super::geom::{P, Path, p, polar};
use super::hands::{Hand, Hold, hand};
use super::head::{Eyes, Mouth, SKIN};
use super::limb::Limb;
use super::paint::{Group, Scene, ink};

/// The drawings of this file.
pub fn symbols() -> Vec<(&'static str, String)> {
    vec![
        ("first", first().svg("first", "First")),
        ("then", then().svg("then", "Then")),
        ("next", next().svg("next", "Next")),
        ("last", last().svg("last", "Last")),
        ("countdown", countdown().svg("countdown", "Count down")),
        (
            "nearly_finished",
            nearly_finished().svg("nearly_finished", "Nearly finished"),
        ),
        ("tissue", tissue().zoom(1.09).svg("tissue", "Tissue")),
    ]
}

/// Ground of the cards: their upper edge.
const TOP: f64 = 178.0;

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
    let mid = p(x, TOP + 22.0);
    let (edge, face) = match kind {
        Card::Now(_) => (5.4, ink::SUN),
        Card::Pale => (0.0, ink::GREY_LIGHT),
        Card::Done => (0.0, ink::GREY),
    };
    s.group(edge, |g| {
        g.fill(Path::block(mid, w, 44.0, 10.0, 0.0), face);
        match kind {
            Card::Now(n) => {
                for i in 0..n {
                    let side = (i as f64 - (n as f64 - 1.0) / 2.0) * 26.0;
                    g.dot(Path::circle(mid + p(side, 0.0), 9.5), ink::INK);
                }
            }
            Card::Pale => g.dot(Path::block(mid, w - 12.0, 32.0, 6.0, 0.0), ink::WHITE),
            Card::Done => {
                for i in -1..2 {
                    let at = mid + p(f64::from(i) * 15.0, 0.0);
                    let bar = [at + p(-6.0, 12.0), at + p(6.0, -12.0)];
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
    let mut c = main_child(0.82, p(x, TOP - 68.0 - rise));
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
    card(&mut s, 136.0, 54.0, Card::Pale);
    card(&mut s, 200.0, 54.0, Card::Pale);
    card(&mut s, 56.0, 78.0, Card::Now(1));
    s.group(5.0, |g| {
        let mut c = walker(52.0, 0.0);
        step(&mut c, p(43.0, TOP - 10.0), p(63.0, TOP - 10.0));
        c.arms[1] = arm(92.0, 90.0, 1.0, Z::Behind, Hold::Open);
        c.draw(g);
    });
    s
}

fn then() -> Scene {
    let mut s = Scene::default();
    card(&mut s, 52.0, 72.0, Card::Done);
    card(&mut s, 172.0, 92.0, Card::Now(2));
    hop(&mut s, p(42.0, 160.0), p(122.0, 158.0), 88.0);
    s.group(5.0, |g| {
        let mut c = walker(166.0, 8.0);
        c.lean = 4.0;
        c.legs[0] = leg(150.0, TOP - 22.0, -1.0, 1.0).tilt(20.0);
        c.legs[1] = leg(190.0, TOP - 24.0, -1.0, 1.0);
        c.arms[0] = arm(128.0, 72.0, 1.0, Z::Front, Hold::Open);
        c.arms[1] = arm(210.0, 66.0, 1.0, Z::Behind, Hold::Open);
        c.draw(g);
    });
    s
}

fn next() -> Scene {
    let mut s = Scene::default();
    card(&mut s, 44.0, 58.0, Card::Done);
    card(&mut s, 124.0, 74.0, Card::Now(0));
    card(&mut s, 200.0, 52.0, Card::Pale);
    s.group(5.0, |g| {
        let mut c = walker(62.0, 0.0);
        c.lean = 5.0;
        c.legs[0] = leg(40.0, TOP - 8.0, -1.0, 1.0).tilt(8.0);
        c.legs[1] = leg(100.0, TOP - 18.0, -1.0, 1.0).tilt(-12.0);
        c.arms[1] = arm(106.0, 88.0, 1.0, Z::Behind, Hold::Rest);
        c.arms[0] = arm(36.0, 108.0, 1.0, Z::Front, Hold::Rest);
        c.draw(g);
    });
    hop(&mut s, p(112.0, 62.0), p(150.0, 156.0), 26.0);
    s
}

/// A plan whose tiles are all ticked but one, and a finger on that one.
fn last() -> Scene {
    let mut s = Scene::default();
    s.group(5.2, |g| {
        g.fill(
            Path::block(p(66.0, 120.0), 96.0, 212.0, 12.0, 0.0),
            ink::WHITE,
        );
        for i in 0..3 {
            let at = p(66.0, 38.0 + f64::from(i) * 46.0);
            g.dot(Path::block(at, 74.0, 36.0, 6.0, 0.0), ink::GREY);
            let tick = [at + p(-14.0, -1.0), at + p(-4.0, 9.0), at + p(14.0, -9.0)];
            g.mark(Path::poly(&tick, false), ink::WHITE, 7.0);
        }
        let at = p(66.0, 190.0);
        g.dot(Path::block(at, 78.0, 58.0, 8.0, 0.0), ink::SUN);
        g.mark(Path::block(at, 78.0, 58.0, 8.0, 0.0), ink::INK, 5.0);
        g.dot(Path::circle(at - p(12.0, 0.0), 16.0), ink::CORAL);
    });
    s.group(5.2, |g| pointing(g, p(184.0, 176.0), 166.0, 62.0));
    s
}

/// Three fingers, two, one: counted down along an arrow.
fn countdown() -> Scene {
    let mut s = Scene::default();
    for (n, x, y) in [(3, 42.0, 130.0), (2, 120.0, 150.0), (1, 196.0, 170.0)] {
        s.group(5.2, |g| {
            let wrist = p(x, y);
            let limb = Limb {
                pts: [p(x, y + 34.0), p(x, y + 16.0), wrist],
                w: [18.0, 17.0, 16.0],
                flat: false,
            };
            g.fill(limb.outline(), SKIN.0);
            g.over(Path::block(p(x, y + 38.0), 46.0, 30.0, 6.0, 0.0), ink::TEAL);
            let h = Hand {
                wrist: p(x, y + 4.0),
                deg: -90.0,
                len: 66.0,
                flip: false,
                hold: Hold::Count(n),
            };
            hand(g, h, SKIN);
        });
    }
    s
}

/// An hourglass with its last sand about to run, and a finger on that.
fn nearly_finished() -> Scene {
    let mut s = Scene::default();
    s.group(5.2, |g| {
        let put = |d: &str| Path::read(d).map(|q| p(84.0 + q.x * 210.0, 16.0 + q.y * 210.0));
        g.fill(
            put("M-.24.1L.24.1C.26.34.06.42.06.5C.06.58.26.66.24.9L-.24.9\
                 C-.26.66-.06.58-.06.5C-.06.42-.26.34-.24.1Z"),
            ink::WHITE,
        );
        g.dot(
            put("M-.09.4L.09.4C.06.44.03.47.02.5L-.02.5C-.03.47-.06.44-.09.4Z"),
            ink::SUN,
        );
        g.dot(
            put("M-.22.88C-.24.74-.14.64 0 .62C.14.64.24.74.22.88Z"),
            ink::SUN,
        );
        g.mark(
            Path::poly(&[p(84.0, 118.0), p(84.0, 150.0)], false),
            ink::SUN,
            4.0,
        );
        for y in [26.0, 216.0] {
            g.over(Path::block(p(84.0, y), 134.0, 24.0, 10.0, 0.0), ink::CORAL);
        }
    });
    s.group(5.2, |g| pointing(g, p(184.0, 92.0), 166.0, 66.0));
    s
}

/// A hand that points along `deg`, with its cuff.
fn pointing(g: &mut Group, wrist: P, deg: f64, len: f64) {
    let back = |far: f64| wrist + polar(deg, -far);
    let limb = Limb {
        pts: [back(24.0), back(14.0), wrist],
        w: [19.0, 19.0, 18.0],
        flat: false,
    };
    g.fill(limb.outline(), SKIN.0);
    let cuff = Path::block(back(30.0), 32.0, 46.0, 6.0, deg);
    g.over(cuff, ink::TEAL);
    let h = Hand {
        wrist,
        deg,
        len,
        flip: true,
        hold: Hold::Point,
    };
    hand(g, h, SKIN);
}

/// A hand holds a tissue before the nose; the head from the side.
fn tissue() -> Scene {
    let mut s = Scene::default();
    s.group(5.4, |g| {
        let mut c = main_girl(1.9, p(140.0, 236.0)).bust(46.0);
        c.turn = -58.0;
        c.look = [-64.0, 8.0, 0.0];
        c.eyes = Eyes::Shut;
        c.mouth = Mouth::None;
        let n = c.head().spot(0.0, 0.3, 1.0, false).0;
        for a in &mut c.arms {
            a.z = Z::Gone;
        }
        c.draw(g);
        paper(g, n + p(-3.0, 9.0));
        folded_arm(&c, g, 1.0, n + p(-2.0, 70.0), -96.0);
    });
    s
}

/// The tissue, gathered before the nose at `n` and hanging down.
fn paper(g: &mut Group, n: P) {
    let ring = [
        p(2.0, -16.0),
        p(22.0, 2.0),
        p(28.0, 24.0),
        p(24.0, 52.0),
        p(8.0, 44.0),
        p(-12.0, 60.0),
        p(-26.0, 46.0),
        p(-48.0, 54.0),
        p(-44.0, 24.0),
        p(-50.0, 4.0),
        p(-26.0, -4.0),
    ];
    let edge: Vec<P> = ring.iter().map(|&q| n + q).collect();
    let sheet = Path::smooth(&edge, true);
    g.fill(sheet.clone(), ink::WHITE);
    g.mark(sheet.clone(), ink::INK, 5.4);
    g.dot(sheet, ink::WHITE);
    for x in [-34.0, -20.0] {
        let fold = [n + p(x * 0.7, 8.0), n + p(x, 34.0)];
        g.mark(Path::poly(&fold, false), ink::GREY, 3.4);
    }
}
