//! The strand: the rope that the steps of a day are pegged to. Rope, knots, rings and pegs are the
//! same on every sheet.

use super::ink;
use super::shapes::{Look, circle, rounded, shape};
use super::words::Words;
use crate::page::Item;
use crate::text::Style;
use crate::units::path::{Path, Seg};
use crate::units::{Length, Point, Rect, Size};

/// Radius of a knot.
pub const KNOT: Length = Length::um(2_700);
/// Width and height of a peg.
pub const PEG: Size = Size::new(Length::um(9_000), Length::um(7_000));
/// Letter size of the number on a peg.
const PEG_LETTERS: Length = Length::um(4_939);

/// The rope along a path.
pub fn rope(path: Path<Point>) -> Vec<Item> {
    let light = path.clone();
    vec![
        shape(path, Look::line(ink::ROPE, ink::ROPE_WIDTH)),
        shape(light, Look::line(ink::ROPE_LIGHT, ink::ROPE_LIGHT_WIDTH)),
    ]
}

/// A straight rope.
pub fn straight(from: Point, to: Point) -> Vec<Item> {
    rope(Path {
        segs: vec![Seg::Move(from), Seg::Line(to)],
    })
}

/// The rope through rows that are all read from left to right: after a row it turns wide, runs
/// back empty below the cards and begins the next. `returns` are the heights of the runs back,
/// one fewer than `rows`.
pub fn through_rows(left: Length, right: Length, rows: &[Length], returns: &[Length]) -> Vec<Item> {
    let Some(&first) = rows.first() else {
        return Vec::new();
    };
    let p = Point::new;
    let mut segs = vec![Seg::Move(p(left, first)), Seg::Line(p(right, first))];
    let mut at = first;
    for (&back, &next) in returns.iter().zip(&rows[1..]) {
        turn(&mut segs, right, at, back, 1);
        segs.push(Seg::Line(p(left, back)));
        turn(&mut segs, left, back, next, -1);
        segs.push(Seg::Line(p(right, next)));
        at = next;
    }
    let mut items = rope(Path { segs });
    items.extend(
        returns
            .iter()
            .flat_map(|&y| arrow_left(p((left + right) / 2, y))),
    );
    items
}

/// A half turn at `x` from one height to another, bulging to the right or to the left.
fn turn(segs: &mut Vec<Seg<Point>>, x: Length, from: Length, to: Length, side: i64) {
    let drop = to - from;
    let r = (drop / 2).min(TURN);
    let out = r * side;
    let k = r.scale(0.55) * side;
    let p = Point::new;
    segs.push(Seg::Cubic(
        p(x + k, from),
        p(x + out, from + (r - r.scale(0.55))),
        p(x + out, from + r),
    ));
    segs.push(Seg::Line(p(x + out, to - r)));
    segs.push(Seg::Cubic(
        p(x + out, to - (r - r.scale(0.55))),
        p(x + k, to),
        p(x, to),
    ));
}

/// How far a turn reaches beyond its row.
pub const TURN: Length = Length::um(4_500);

fn arrow_left(tip: Point) -> Vec<Item> {
    let (dx, dy) = (Length::mm(2.6), Length::mm(2.0));
    let path = Path {
        segs: vec![
            Seg::Move(tip.moved(dx, -dy)),
            Seg::Line(tip),
            Seg::Line(tip.moved(dx, dy)),
        ],
    };
    vec![shape(path, Look::line(ink::ROPE, Length::mm(0.9)))]
}

/// An arrowhead to the right: the rope goes on on the next page.
pub fn arrow_right(tip: Point) -> Vec<Item> {
    let (dx, dy) = (Length::mm(2.8), Length::mm(2.2));
    let path = Path {
        segs: vec![
            Seg::Move(tip.moved(-dx, -dy)),
            Seg::Line(tip),
            Seg::Line(tip.moved(-dx, dy)),
        ],
    };
    let mut items = straight(tip.moved(-dx, Length::ZERO), tip);
    items.push(shape(path, Look::line(ink::ROPE, Length::mm(1.1))));
    items
}

/// An arrowhead down: the rope goes on on the next page.
pub fn arrow_down(tip: Point) -> Vec<Item> {
    let (dx, dy) = (Length::mm(2.2), Length::mm(2.8));
    let path = Path {
        segs: vec![
            Seg::Move(tip.moved(-dx, -dy)),
            Seg::Line(tip),
            Seg::Line(tip.moved(dx, -dy)),
        ],
    };
    vec![shape(path, Look::line(ink::ROPE, Length::mm(1.1)))]
}

/// A knot, where a part of the day begins.
pub fn knot(center: Point) -> Vec<Item> {
    let mut items = vec![circle(center, KNOT, Look::filled(ink::ROPE))];
    for shift in [-1.0, 0.0, 1.0] {
        let at = |x: f64, y: f64| {
            let mm = |v: f64| KNOT.scale(v);
            center.moved(mm(x + shift * 0.36), mm(y + shift * 0.36))
        };
        let path = Path {
            segs: vec![
                Seg::Move(at(-0.44, 0.44)),
                Seg::Cubic(at(-0.2, 0.06), at(0.06, -0.2), at(0.44, -0.44)),
            ],
        };
        items.push(shape(path, Look::line(ink::ROPE_LIGHT, Length::mm(0.42))));
    }
    items
}

/// The open ring at the very beginning.
pub fn beginning(center: Point) -> Vec<Item> {
    let look = Look::line(ink::ROPE, Length::mm(1.1)).on(ink::PAPER);
    vec![circle(center, Length::mm(2.0), look)]
}

/// The stopper knot at the very end of a rope that comes from above, with its loose ends.
pub fn stopper_below(center: Point) -> Vec<Item> {
    ends(center, |along, across| center.moved(across, along))
}

/// The same for a rope that comes from the left.
pub fn stopper_right(center: Point) -> Vec<Item> {
    ends(center, |along, across| center.moved(along, across))
}

fn ends(center: Point, at: impl Fn(Length, Length) -> Point) -> Vec<Item> {
    let mm = Length::mm;
    let mut items: Vec<Item> = [-1.6, 0.0, 1.6]
        .into_iter()
        .map(|spread| {
            let path = Path {
                segs: vec![
                    Seg::Move(at(Length::ZERO, Length::ZERO)),
                    Seg::Line(at(mm(5.2), mm(spread))),
                ],
            };
            shape(path, Look::line(ink::ROPE, mm(0.7)))
        })
        .collect();
    items.extend(knot(center));
    items
}

/// An open ring to tick or to cover.
pub fn ring(center: Point, radius: Length) -> Item {
    circle(
        center,
        radius,
        Look::line(ink::INK, Length::mm(0.7)).on(ink::PAPER),
    )
}

/// An open square to cover when a step is done.
pub fn cover(center: Point, side: Length) -> Item {
    let r = Rect {
        x: center.x - side / 2,
        y: center.y - side / 2,
        w: side,
        h: side,
    };
    let look = Look::line(ink::INK, Length::mm(0.7)).on(ink::PAPER);
    rounded(r, Length::mm(2.0), look)
}

/// The plate of a peg, its middle at a place.
pub fn peg(center: Point) -> Vec<Item> {
    let plate = Rect {
        x: center.x - PEG.w / 2,
        y: center.y - PEG.h / 2,
        w: PEG.w,
        h: PEG.h,
    };
    vec![rounded(plate, Length::mm(1.8), Look::filled(ink::INK))]
}

/// The number on a peg.
pub fn peg_number(center: Point, number: usize) -> Vec<Item> {
    let digits = number.to_string();
    let mut size = PEG_LETTERS;
    let room = PEG.w - Length::mm(1.2);
    while crate::text::line(&digits, &Style::bold(size)).width > room && size > Length::pt(6.0) {
        size = size.scale(0.9);
    }
    Words::line(&digits, &Style::bold(size), PEG.w).amid(center, ink::PAPER)
}

/// A letter on a plate: two pages are laid together where it is the same.
pub fn join(at: Point, letter: &str) -> Vec<Item> {
    let look = Look::line(ink::ROPE, ink::THIN).on(ink::PAPER);
    let words = Words::line(letter, &Style::bold(Length::pt(11.0)), Length::mm(8.0));
    let mut items = vec![circle(at, Length::mm(3.0), look)];
    items.extend(words.amid(at, ink::INK));
    items
}
