//! The half of a helper's card that stays outside: the cue and the words to say, where the board
//! lives, and the steps of today in short.

use super::desk::{Desk, Person};
use super::flow::{Flow, Piece};
use super::frame::picture;
use super::session_sheet::heading_below;
use super::shapes::{Look, dashes, line, rounded};
use super::words::{CLEAR, TIGHT, Words};
use super::writer::Helper;
use super::{forms, ink, strand};
use crate::model::board::{Step, StepState};
use crate::model::manner::{Form, Run};
use crate::model::profile::Field;
use crate::page::{Item, Role, Source};
use crate::text::Style;
use crate::units::{Length, Point, Rect, Size};

/// Letters: clear print. The words to say are read at arm's length.
const PT: f64 = 12.0;
const SAY_PT: f64 = 16.0;
/// Width of "Words to say" and its like.
const NAME: Length = Length::um(31_000);
/// Least and most height of a step.
const LEAST_ROW: Length = Length::um(7_800);
const MOST_ROW: Length = Length::um(10_500);
/// Most lines of a fact: what is longer is no cue.
const LINES: usize = 4;

/// Adds everything.
pub(super) fn add(desk: &mut Desk<'_>, person: &Person<'_>, room: Rect, flow: &mut Flow<Helper>) {
    let facts = facts(person, room, flow);
    let heading = heading_below(Length::mm(3.0), "Today", room);
    let used: Length = facts.iter().map(|p| p.height).sum();
    let n = person.board.steps.len().max(1) as i64;
    let row = (room.h - used - heading.height) / n;
    let row = row.max(LEAST_ROW).min(MOST_ROW);
    for fact in facts {
        flow.push(fact);
    }
    if person.board.steps.is_empty() {
        return;
    }
    flow.push(heading);
    for index in 0..person.board.steps.len() {
        flow.push(step(desk, person, index, row, room));
    }
}

/// Cue, words to say, where the board lives; a line to write on where nothing is known.
fn facts(person: &Person<'_>, room: Rect, flow: &Flow<Helper>) -> Vec<Piece> {
    let text = |field: Field| {
        let text = person.who.profile.guarded(field);
        let text = text.and_then(|t| flow.may_show(t));
        text.map_or("", |t| t.trim())
    };
    let say = match text(Field::ExactWords) {
        "" => String::new(),
        words => format!("“{}”", words.trim_matches(['“', '”', '"'])),
    };
    vec![
        fact(
            "Cue",
            text(Field::Cue),
            &Style::regular(Length::pt(PT)),
            room,
        ),
        fact("Words to say", &say, &Style::bold(Length::pt(SAY_PT)), room),
        fact(
            "Board lives",
            text(Field::BoardLives),
            &Style::regular(Length::pt(PT)),
            room,
        ),
    ]
}

fn fact(name: &str, value: &str, style: &Style, room: Rect) -> Piece {
    let x = room.x + NAME;
    let name = Words::line(name, &Style::bold(Length::pt(PT)), NAME - Length::mm(2.0));
    let value = Words::wrapped(value, style, room.right() - x, CLEAR, LINES);
    let h = value.height().max(name.height()).max(Length::mm(6.0));
    let first = style.size.scale(1.04).max(name.height()) / 2;
    let piece = Piece::new(h + Length::mm(2.6))
        .words(name.left_of_middle(Point::new(room.x, first), ink::SOFT));
    if value.is_empty() {
        let y = h - Length::mm(0.5);
        let (from, to) = (Point::new(x, y), Point::new(room.right(), y));
        return piece.drawn(vec![line(from, to, ink::SEAL_EDGE, ink::THIN)]);
    }
    let top = first - style.size.scale(1.04) / 2;
    piece.words(value.left(Point::new(x, top), ink::INK))
}

/// Places across a row, counted from the side where the participant begins to read.
struct Across {
    room: Rect,
    from_right: bool,
}

impl Across {
    /// Left edge of something so wide.
    fn left(&self, along: Length, width: Length) -> Length {
        if self.from_right {
            self.room.right() - along - width
        } else {
            self.room.x + along
        }
    }

    fn words(&self, words: &Words, along: Length, middle: Length, soft: bool) -> Vec<Item> {
        let colour = if soft { ink::SOFT } else { ink::INK };
        let top = middle - words.height() / 2;
        if self.from_right {
            words.right(Point::new(self.left(along, Length::ZERO), top), colour)
        } else {
            words.left(Point::new(self.left(along, Length::ZERO), top), colour)
        }
    }
}

/// One step: its number on the rope, a small picture, its words.
fn step(desk: &mut Desk<'_>, person: &Person<'_>, index: usize, row: Length, room: Rect) -> Piece {
    let step = &person.board.steps[index];
    let across = Across {
        room,
        from_right: person.who.manner.run == Run::RightToLeft,
    };
    let not_today = step.state == StepState::NotToday;
    let along = Length::mm(26.0);
    let style = Style::bold(Length::pt(PT));
    let words = Words::wrapped(&said(step), &style, room.w - along, TIGHT, 3);
    let height = row.max(words.height() + Length::mm(1.6));
    let middle = height / 2;
    let x = across.left(strand::PEG.w / 2, Length::ZERO);
    let last = index + 1 == person.board.steps.len();
    let from = if index == 0 { middle } else { Length::ZERO };
    let to = if last { middle } else { height };
    let mut rope = strand::straight(Point::new(x, from), Point::new(x, to));
    rope.extend(strand::peg(Point::new(x, middle)));
    let source = Some(Source::Step(step.at));
    let number = strand::peg_number(Point::new(x, middle), index + 1);
    let mut piece = Piece::new(height)
        .drawn(rope)
        .with(Role::Paragraph, source, number);
    let side = row - Length::mm(1.0);
    let corner = Point::new(across.left(Length::mm(13.0), side), middle - side / 2);
    let at = Rect::new(corner, Size::square(side));
    if let Some((alt, items)) = seen(desk, person, step, at) {
        piece = piece.with(Role::Figure { alt }, source, items);
    }
    let items = across.words(&words, along, middle, not_today);
    piece.with(Role::Paragraph, source, items)
}

/// "Boat · not today", "Find shells · object: a flat shell".
fn said(step: &Step) -> String {
    let label = step.label.trim();
    match &step.state {
        StepState::NotToday => format!("{label} · not today"),
        StepState::Instead { of } | StepState::Swapped { instead_of: of } => {
            format!("{label} · instead of {}", of.trim())
        }
        _ if step.form == Form::Object && !step.thing.trim().is_empty() => {
            format!("{label} · {}", forms::object_words(&step.thing))
        }
        _ => label.to_owned(),
    }
}

/// What is seen beside the words: the drawing, whatever form the board has, as it is the helper who
/// looks for it here; nothing of what is not today.
fn seen(
    desk: &mut Desk<'_>,
    person: &Person<'_>,
    step: &Step,
    at: Rect,
) -> Option<(String, Vec<Item>)> {
    if step.state == StepState::NotToday {
        let alt = format!("Not today: {}", step.label.trim());
        return Some((alt, vec![rounded(at, Length::mm(1.2), dashes())]));
    }
    let drawn = desk.step_art(step, person);
    let seen = drawn.known || step.form == Form::Drawing;
    let edge = Look::line(ink::RULE, ink::THIN);
    seen.then(|| {
        let alt = desk.alt_for(person, &step.symbol, &step.label);
        let inside = at.shrink(Length::mm(0.4));
        let items = vec![rounded(at, Length::mm(1.2), edge), picture(&drawn, inside)];
        (alt, items)
    })
}
