//! The timetable on the coordinator's sheet: a row for each slot along the rope, with its time, what
//! is done instead when it is dry, and what is needed.

use super::desk::Desk;
use super::flow::{Flow, Piece};
use super::frame::picture;
use super::session_sheet::{LETTERS_PT, MOST_LINES, SMALL_PT, letters};
use super::shapes::{Look, line, shape};
use super::words::{CLEAR, Words};
use super::writer::Coordinator;
use super::{ink, strand};
use crate::model::club::Activity;
use crate::model::people::Figure;
use crate::model::session::Slot;
use crate::page::{Item, Role, Source};
use crate::plan::clock::Clock;
use crate::story::when::NO_BREAK;
use crate::text::Style;
use crate::units::path::{Path, Seg};
use crate::units::{Length, Point, Rect, Size};

/// White above and below a row.
const ROW_PAD: Length = Length::um(1_100);
/// Side of a picture in the table.
const PICTURE: Length = Length::um(10_000);

/// What is named in the head of the table, with the share of the width that each column takes.
const COLUMNS: [(&str, f64); 7] = [
    ("", 0.035),
    ("Time", 0.135),
    ("", 0.075),
    ("What", 0.215),
    ("Water", 0.10),
    ("If we stay dry", 0.18),
    ("Equipment", 0.26),
];

/// The same on a narrow page; what to bring stands in its own list below.
const NARROW_COLUMNS: [(&str, f64); 7] = [
    ("", 0.055),
    ("Time", 0.205),
    ("", 0.10),
    ("What", 0.285),
    ("Water", 0.135),
    ("If we stay dry", 0.22),
    ("", 0.0),
];
/// Width below which a page is narrow.
const NARROW: Length = Length::um(150_000);

fn shares(room: Rect) -> [(&'static str, f64); 7] {
    if room.w < NARROW {
        NARROW_COLUMNS
    } else {
        COLUMNS
    }
}

/// Left edge and width of each column.
fn columns(room: Rect) -> [(Length, Length); 7] {
    let mut x = room.x;
    shares(room).map(|(_, share)| {
        let (at, w) = (x, room.w.scale(share));
        x += w;
        (at, w - Length::mm(2.0))
    })
}

/// Adds the table.
pub(super) fn add(desk: &Desk<'_>, clock: &Clock, room: Rect, flow: &mut Flow<Coordinator>) {
    let columns = columns(room);
    let mut head = Vec::new();
    for ((name, _), (x, w)) in shares(room).iter().zip(columns) {
        let words = Words::line(name, &Style::bold(Length::pt(SMALL_PT)), w);
        head.extend(words.left(Point::new(x, Length::ZERO), ink::SOFT));
    }
    flow.push(Piece::new(Length::mm(5.5)).kept().words(head));
    let mut part = None;
    let count = desk.session.timetable.len();
    for (i, slot) in desk.session.timetable.iter().enumerate() {
        if part != Some(slot.part) {
            part = Some(slot.part);
            flow.push(part_row(desk, slot, columns[0].0, room, i == 0));
        }
        flow.push(slot_row(desk, clock, slot, &columns, room, i + 1 == count));
    }
    if count == 0 {
        let words = Words::line("Nothing is on the timetable yet.", &letters(), room.w);
        let at = Point::new(room.x, Length::ZERO);
        flow.push(Piece::new(Length::mm(7.0)).words(words.left(at, ink::INK)));
    }
}

fn part_row(desk: &Desk<'_>, slot: &Slot, x: Length, room: Rect, first: bool) -> Piece {
    let height = Length::mm(7.0);
    let at = Point::new(x + strand::KNOT, height / 2);
    let from = if first { at.y } else { Length::ZERO };
    let mut rope = strand::straight(Point::new(at.x, from), Point::new(at.x, height));
    rope.extend(strand::knot(at));
    let name = desk.club.part(slot.part).map_or("", |p| p.name.as_str());
    let style = Style::bold(Length::pt(LETTERS_PT));
    let words = Words::line(name, &style, room.w - Length::mm(12.0));
    let left = Point::new(x + Length::mm(8.0), at.y);
    Piece::new(height)
        .kept()
        .drawn(rope)
        .words(words.left_of_middle(left, ink::SOFT))
}

fn slot_row(
    desk: &Desk<'_>,
    clock: &Clock,
    slot: &Slot,
    columns: &[(Length, Length); 7],
    room: Rect,
    last: bool,
) -> Piece {
    let activity = desk.club.activity(slot.activity);
    let label = activity.map_or("Unknown activity", |a| a.label.as_str());
    let cell = |words: &str, column: usize, style: &Style| {
        Words::wrapped(words, style, columns[column].1, CLEAR, MOST_LINES)
    };
    let bold = Style::bold(Length::pt(LETTERS_PT));
    let what = cell(label, 3, &bold);
    let minutes = format!("{}{NO_BREAK}min", slot.minutes);
    let time = clock
        .row(slot.id)
        .map_or_else(String::new, |r| format!("{}–{}\n{minutes}", r.from, r.to));
    let time = cell(&time, 1, &letters());
    let water = activity.is_some_and(|a| a.in_water);
    let dry = cell(&dry_words(desk, activity.map(|a| &**a)), 5, &letters());
    let needs = activity.map_or_else(String::new, |a| a.equipment.join(", "));
    let needs = if room.w < NARROW {
        String::new()
    } else {
        needs
    };
    let needs = cell(&needs, 6, &Style::regular(Length::pt(SMALL_PT)));
    let highest = [&what, &time, &dry, &needs].map(Words::height);
    let height = highest.into_iter().fold(PICTURE, Length::max) + ROW_PAD * 2;
    let middle = height / 2;
    let rope_x = columns[0].0 + strand::KNOT;
    let end = if last { middle } else { height };
    let mut rope = strand::straight(Point::new(rope_x, Length::ZERO), Point::new(rope_x, end));
    if last {
        rope.extend(strand::stopper_below(Point::new(rope_x, middle)));
    }
    let rule_y = height;
    rope.push(line(
        Point::new(columns[1].0, rule_y),
        Point::new(room.right(), rule_y),
        ink::RULE,
        ink::HAIRLINE,
    ));
    let source = Some(Source::Slot(slot.id));
    let at = |column: usize| Point::new(columns[column].0, middle);
    let mut piece = Piece::new(height).drawn(rope).with(
        Role::Paragraph,
        source,
        time.left_of_middle(at(1), ink::INK),
    );
    if let Some(a) = activity {
        let drawn = desk.art_on(&a.symbol, Figure::default());
        let square = Rect::new(
            Point::new(columns[2].0, middle - PICTURE / 2),
            Size::square(PICTURE),
        );
        let alt = desk.alt(&a.symbol, &a.label);
        piece = piece.with(Role::Figure { alt }, source, vec![picture(&drawn, square)]);
    }
    piece = piece.with(
        Role::Paragraph,
        source,
        what.left_of_middle(at(3), ink::INK),
    );
    if water {
        piece = piece.with(Role::Paragraph, source, water_mark(at(4), columns[4].1));
    }
    piece
        .with(Role::Paragraph, source, dry.left_of_middle(at(5), ink::INK))
        .with(
            Role::Paragraph,
            source,
            needs.left_of_middle(at(6), ink::SOFT),
        )
}

/// What is done instead, for activities in the water.
fn dry_words(desk: &Desk<'_>, activity: Option<&Activity>) -> String {
    match activity {
        Some(a) if a.in_water => a
            .dry_replacement
            .and_then(|id| desk.club.activity(id))
            .map_or_else(|| "none ready".to_owned(), |d| d.label.clone()),
        _ => String::new(),
    }
}

/// A small wave and "in water".
fn water_mark(at: Point, width: Length) -> Vec<Item> {
    let style = Style::bold(Length::pt(SMALL_PT));
    let words = Words::line("in water", &style, width);
    let mm = Length::mm;
    let mut segs = vec![Seg::Move(at.moved(mm(0.0), mm(-2.6)))];
    for i in 0..3 {
        let x = f64::from(i) * 4.0;
        segs.push(Seg::Cubic(
            at.moved(mm(x + 1.3), mm(-5.0)),
            at.moved(mm(x + 2.7), mm(-0.2)),
            at.moved(mm(x + 4.0), mm(-2.6)),
        ));
    }
    let mut items = vec![shape(Path { segs }, Look::line(ink::ROPE, mm(0.6)))];
    items.extend(words.left(at.moved(Length::ZERO, mm(-0.4)), ink::INK));
    items
}
