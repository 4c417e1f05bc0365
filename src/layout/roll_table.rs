//! The two tables of the roll: a row for each participant, and a row for each head count.

use super::desk::Person;
use super::flow::{Flow, Piece};
use super::frame::picture;
use super::ink;
use super::shapes::{Look, line, rounded};
use super::words::{TIGHT, Words};
use super::writer::Coordinator;
use crate::model::profile::Field;
use crate::page::{Item, Role};
use crate::plan::roll::Occasion;
use crate::text::Style;
use crate::units::{Length, Point, Rect, Size};

/// How high rows are.
#[derive(Clone, Copy, Debug)]
pub(super) struct Rows {
    /// Of the roll: a box is ticked with a cold hand.
    pub person: Length,
    /// Of a count: figures are written in it.
    pub count: Length,
}

impl Rows {
    /// All of them, the roomiest first.
    pub fn all() -> impl Iterator<Item = Self> {
        (0..=6).rev().map(|more| Self {
            person: Length::mm(6.6) + Length::mm(0.7) * more,
            count: Length::mm(8.0) + Length::mm(0.6) * more,
        })
    }
}

/// Letters of the tables and of their heads.
const PT: f64 = 10.5;
const HEAD_PT: f64 = 9.0;
const BOX: Length = Length::um(4_400);
const PLATE: Length = Length::um(5_900);
/// White between columns.
const GUTTER: Length = Length::um(2_500);
/// Narrower pages have tighter columns, and smaller letters above them.
const NARROW: Length = Length::um(150_000);
const NARROW_GUTTER: Length = Length::um(1_200);
const NARROW_HEAD_PT: f64 = 7.5;

/// Columns of the roll, with the share of the width that each takes.
const PEOPLE: [(&str, f64); 6] = [
    ("", 0.05),
    ("Name", 0.21),
    ("Says “here” by", 0.34),
    ("Here", 0.09),
    ("Not yet seen", 0.13),
    ("Left early, at", 0.18),
];

/// Columns of the counts.
const COUNTS: [(&str, f64); 8] = [
    ("When", 0.23),
    ("Time", 0.10),
    ("Arrived", 0.10),
    ("− left early", 0.10),
    ("− at toilets", 0.11),
    ("= expected here", 0.13),
    ("Counted", 0.10),
    ("By whom", 0.13),
];

/// The same on a narrow page.
const NARROW_COUNTS: [(&str, f64); 8] = [
    ("When", 0.18),
    ("Time", 0.09),
    ("Arrived", 0.115),
    ("− left early", 0.10),
    ("− at toilets", 0.105),
    ("= expected here", 0.135),
    ("Counted", 0.125),
    ("By whom", 0.15),
];

fn counts_of(room: Rect) -> &'static [(&'static str, f64); 8] {
    if is_narrow(room) {
        &NARROW_COUNTS
    } else {
        &COUNTS
    }
}

fn is_narrow(room: Rect) -> bool {
    room.w < NARROW
}

/// Left edge and width of each column.
fn columns<const N: usize>(shares: &[(&str, f64); N], room: Rect) -> [(Length, Length); N] {
    let mut x = room.x;
    shares.map(|(_, share)| {
        let (at, w) = (x, room.w.scale(share));
        x += w;
        let gutter = if is_narrow(room) {
            NARROW_GUTTER
        } else {
            GUTTER
        };
        (at, w - gutter)
    })
}

/// Names of columns, their feet on one line.
fn head<const N: usize>(shares: &[(&str, f64); N], room: Rect) -> Piece {
    let pt = if is_narrow(room) {
        NARROW_HEAD_PT
    } else {
        HEAD_PT
    };
    let style = Style::bold(Length::pt(pt));
    let columns = columns(shares, room);
    let set = shares.iter().zip(columns);
    let words: Vec<Words> = set
        .map(|((name, _), (_, w))| Words::wrapped(name, &style, w, TIGHT, 3))
        .collect();
    let height = words.iter().map(Words::height).max().unwrap_or_default();
    let mut items = Vec::new();
    for (words, (x, _)) in words.iter().zip(columns) {
        items.extend(words.left(Point::new(x, height - words.height()), ink::SOFT));
    }
    let foot = height + Length::mm(1.2);
    Piece::new(foot)
        .kept()
        .words(items)
        .drawn(vec![rule(room, foot)])
}

fn rule(room: Rect, y: Length) -> Item {
    let (from, to) = (Point::new(room.x, y), Point::new(room.right(), y));
    line(from, to, ink::RULE, ink::THIN)
}

/// Adds a row for each participant.
pub(super) fn add_people(
    people: &[Person<'_>],
    row: Length,
    room: Rect,
    flow: &mut Flow<Coordinator>,
) {
    flow.push(head(&PEOPLE, room));
    for person in people {
        let says = person.who.profile.guarded(Field::SaysHere);
        let says = says.and_then(|s| flow.may_show(s)).map(String::as_str);
        flow.push(person_row(person, says.unwrap_or_default(), row, room));
    }
}

fn person_row(person: &Person<'_>, says: &str, row: Length, room: Rect) -> Piece {
    let columns = columns(&PEOPLE, room);
    let bold = Style::bold(Length::pt(PT));
    let name_width = columns[1].1 - Length::mm(2.0);
    let name = Words::wrapped(person.who.name.trim(), &bold, name_width, TIGHT, 2);
    let says = Words::wrapped(
        says.trim(),
        &Style::regular(Length::pt(HEAD_PT + 0.5)),
        columns[2].1,
        TIGHT,
        3,
    );
    let height = name.height().max(says.height()) + Length::mm(1.6);
    let height = height.max(row);
    let middle = height / 2;
    let plate = Rect::new(Point::new(room.x, middle - PLATE / 2), Size::square(PLATE));
    let look = Look::line(ink::SEAL_EDGE, ink::THIN);
    let mark = vec![
        rounded(plate, Length::mm(1.3), look),
        picture(&person.mark, plate.shrink(Length::mm(0.8))),
    ];
    let mut drawn = vec![
        tick_box(columns[3], middle),
        tick_box(columns[4], middle),
        tick_box(columns[5], middle),
    ];
    let write = columns[5].0 + BOX + Length::mm(2.0);
    let foot = middle + BOX / 2;
    let (from, to) = (Point::new(write, foot), Point::new(room.right(), foot));
    drawn.push(line(from, to, ink::SOFT, ink::THIN));
    drawn.push(rule(room, height));
    let alt = format!("Mark: {}", person.mark_words);
    let name_x = columns[1].0.max(plate.right() + Length::mm(2.0));
    let at = |column: usize| Point::new(columns[column].0, middle);
    Piece::new(height)
        .with(Role::Figure { alt }, None, mark)
        .words(name.left_of_middle(Point::new(name_x, middle), ink::INK))
        .words(says.left_of_middle(at(2), ink::INK))
        .drawn(drawn)
}

fn tick_box((x, _): (Length, Length), middle: Length) -> Item {
    let at = Rect::new(Point::new(x, middle - BOX / 2), Size::square(BOX));
    rounded(at, Length::mm(0.8), Look::line(ink::SOFT, ink::LINE))
}

/// Adds a row for each head count.
pub(super) fn add_counts(water: bool, row: Length, room: Rect, flow: &mut Flow<Coordinator>) {
    flow.push(head(counts_of(room), room));
    let all = Occasion::ALL.into_iter();
    for occasion in all.filter(|o| water || !o.is_of_water()) {
        for _ in 0..occasion.lines() {
            flow.push(count_row(occasion, row, room).kept());
        }
    }
}

fn count_row(occasion: Occasion, row: Length, room: Rect) -> Piece {
    let columns = columns(counts_of(room), room);
    let style = Style::bold(Length::pt(PT - 0.5));
    let words = Words::wrapped(occasion.label(), &style, columns[0].1, TIGHT, 2);
    let height = row.max(words.height() + Length::mm(1.6));
    let middle = height / 2;
    let h = height - Length::mm(1.4);
    let mut drawn = Vec::new();
    for (i, (x, w)) in columns.into_iter().enumerate().skip(1) {
        let at = Rect {
            x,
            y: middle - h / 2,
            w: if i + 1 < COUNTS.len() {
                w
            } else {
                room.right() - x
            },
            h,
        };
        // What is compared stands out.
        let stands_out = matches!(i, 5 | 6);
        let look = match stands_out {
            true => Look::line(ink::INK, ink::LINE),
            false => Look::line(ink::SEAL_EDGE, ink::THIN),
        };
        drawn.push(rounded(at, Length::mm(1.2), look));
    }
    Piece::new(height)
        .words(words.left_of_middle(Point::new(room.x, middle), ink::INK))
        .drawn(drawn)
}
