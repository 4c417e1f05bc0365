//! Boards that show less than the whole session: what stands above each strip, and the pointer that
//! is moved from strip to strip.

use std::ops::Range;

use super::desk::{Desk, Person};
use super::ink;
use super::shapes::{Look, dashes, line, rounded, shape};
use super::words::Words;
use super::writer::{Everyone, PageWriter};
use crate::model::ids::SymbolId;
use crate::model::manner::Reach;
use crate::page::Item;
use crate::plan::chunks;
use crate::story::cards::Card;
use crate::text::Style;
use crate::units::path::{Path, Seg};
use crate::units::{Length, Point, Rect, Size};

/// Pointers on one tile, one below the other.
const POINTERS: i64 = 3;

/// One page's worth of a strip.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Strip {
    /// Which strip, from zero.
    pub index: usize,
    /// Of how many.
    pub of: usize,
    /// The steps.
    pub steps: Range<usize>,
}

impl Strip {
    /// "Strip 2 of 4".
    pub fn title(&self) -> String {
        format!("Strip {} of {}", self.index + 1, self.of)
    }
}

/// The strips of a person's board; none for a board that shows the whole session.
pub(super) fn of(desk: &Desk<'_>, person: &Person<'_>) -> Option<Vec<Strip>> {
    let reach = person.who.manner.reach;
    if reach == Reach::Whole {
        return None;
    }
    let chunks = chunks::chunks(desk.club, &person.board, reach);
    let of = chunks.len();
    let strip = |(index, steps)| Strip { index, of, steps };
    Some(chunks.into_iter().enumerate().map(strip).collect())
}

/// A heading as it stands on a page that begins it, and on those where it goes on (from one).
pub(super) fn goes_on(title: &str, page: usize) -> String {
    match page {
        0 => title.to_owned(),
        _ => format!("{title} goes on"),
    }
}

/// What is laid out at once: the whole board, or one strip of it.
pub(super) struct Part {
    pub steps: Range<usize>,
    pub strip: Option<Strip>,
}

/// The strips of a person's board, or all of it as one.
pub(super) fn parts(desk: &Desk<'_>, person: &Person<'_>) -> Vec<Part> {
    let Some(strips) = of(desk, person) else {
        return vec![Part {
            steps: 0..person.board.steps.len(),
            strip: None,
        }];
    };
    let part = |strip: Strip| Part {
        steps: strip.steps.clone(),
        strip: Some(strip),
    };
    strips.into_iter().map(part).collect()
}

/// "First" and "Then" on a board of two, or "Now" and "Next"; nothing else has words of its own. What
/// is not today has none, and what follows it takes its place.
pub(super) fn order_word(person: &Person<'_>, strip: &Strip, step: usize) -> Option<&'static str> {
    use crate::model::board::StepState;
    let off = |i: usize| person.board.steps[i].state == StepState::NotToday;
    let words = match person.who.manner.reach {
        Reach::FirstThen => ["First", "Then"],
        Reach::NowNext => ["Now", "Next"],
        _ => return None,
    };
    if off(step) {
        return None;
    }
    let before = (strip.steps.start..step).filter(|&i| !off(i)).count();
    words.get(before).copied()
}

/// The words of the pointer.
pub(super) fn now_on() -> Card {
    Card {
        symbol: SymbolId::new("next"),
        label: "Now on".to_owned(),
    }
}

/// Height of all that stands above a strip on a page with so much room: with the place for a
/// pointer, or on a very low page without.
pub(super) fn head_height(person: &Person<'_>, seal: Length, room: Length) -> Length {
    const LEAST_BELOW: Length = Length::um(90_000);
    let with_place = pointer_place(person.who.tile_size(), seal).h;
    if room - with_place < LEAST_BELOW {
        Length::mm(14.0)
    } else {
        with_place
    }
}

/// Height of a printed pointer: a third of a tile, but no more than a finger's length.
fn pointer_height(tile: Length) -> Length {
    (tile / POINTERS).clamp(Length::mm(6.0), Length::mm(20.0))
}

/// Room for a finished pointer: film around it, and a little more.
pub(super) fn pointer_place(tile: Size, film: Length) -> Size {
    let film = film * 2 + Length::mm(2.0);
    Size::new(
        tile.w.max(Length::mm(20.0)) + film,
        pointer_height(tile.h) + film,
    )
}

/// "Strip 2 of 4" with the parts of the day below, and the place for the pointer at the far end.
pub(super) fn draw_head(
    desk: &Desk<'_>,
    person: &Person<'_>,
    (title, below): (&str, &str),
    at: Rect,
    page: &mut PageWriter<Everyone>,
) {
    let place = pointer_place(person.who.tile_size(), desk.club.rules.film());
    let has_place = at.h >= place.h;
    let place = Size::new(place.w.min(at.w.scale(0.48)), place.h);
    let corner = Point::new(at.right() - place.w, at.y);
    let place = Rect::new(corner, place);
    let room = match has_place {
        true => at.w - place.w - Length::mm(4.0),
        false => at.w,
    };
    let lines = if has_place { 2 } else { 1 };
    let title = Words::line(title, &Style::bold(Length::pt(18.0)), room);
    let parts = Words::wrapped(below, &Style::regular(Length::pt(12.0)), room, 1.2, lines);
    page.heading(2, title.left(at.origin(), ink::INK));
    let y = at.y + title.height() + Length::mm(1.2);
    page.paragraph(None, parts.left(Point::new(at.x, y), ink::SOFT));
    if has_place {
        draw_pointer_place(place, page);
    }
}

/// Where the pointer is laid when it points to a strip.
pub(super) fn draw_pointer_place(place: Rect, page: &mut PageWriter<Everyone>) {
    let mut items = vec![rounded(place, Length::mm(3.0), dashes().on(ink::PAPER))];
    items.extend(words_and_arrow(place, ink::SOFT, false));
    page.figure(None, "Place for the pointer: now on".to_owned(), items);
}

/// Pointers on a tile, to be cut apart.
pub(super) fn draw_pointers(at: Rect, page: &mut PageWriter<Everyone>) {
    let h = pointer_height(at.h);
    let mut items = Vec::new();
    for i in 0..POINTERS {
        let y = at.y + h * i;
        if y > at.y {
            let (a, b) = (Point::new(at.x, y), Point::new(at.right(), y));
            items.push(line(a, b, ink::RULE, ink::HAIRLINE));
        }
        let one = Rect { y, h, ..at };
        items.extend(words_and_arrow(one, ink::INK, true));
    }
    let end = at.y + h * POINTERS;
    if end < at.bottom() - Length::mm(1.0) {
        let (a, b) = (Point::new(at.x, end), Point::new(at.right(), end));
        items.push(line(a, b, ink::RULE, ink::HAIRLINE));
    }
    page.figure(None, "Pointers: now on".to_owned(), items);
}

/// An arrow that points down to the strip, and "Now on" beside it.
fn words_and_arrow(r: Rect, colour: crate::units::colour::Rgb, filled: bool) -> Vec<Item> {
    let h = r.h.scale(0.56).min(r.w.scale(0.3));
    let w = h.scale(0.9);
    let gap = h.scale(0.35);
    let room = r.w - w - gap - Length::mm(5.0);
    let mut size = r.h.scale(0.42).min(Length::pt(24.0));
    let words = loop {
        let words = Words::line("Now on", &Style::bold(size), room);
        if !words.cut || size <= Length::pt(6.0) {
            break words;
        }
        size = size.scale(0.94);
    };
    let x = r.center().x - (w + gap + words.width()) / 2;
    let y = r.center().y;
    let p = |fx: f64, fy: f64| Point::new(x + w.scale(fx), y + h.scale(fy));
    let path = Path {
        segs: vec![
            Seg::Move(p(0.3, -0.5)),
            Seg::Line(p(0.7, -0.5)),
            Seg::Line(p(0.7, 0.0)),
            Seg::Line(p(1.0, 0.0)),
            Seg::Line(p(0.5, 0.5)),
            Seg::Line(p(0.0, 0.0)),
            Seg::Line(p(0.3, 0.0)),
            Seg::Close,
        ],
    };
    let look = if filled {
        Look::filled(ink::INK)
    } else {
        Look::line(ink::HATCH, ink::LINE).on(ink::PAPER)
    };
    let mut items = vec![shape(path, look)];
    items.extend(words.left_of_middle(Point::new(x + w + gap, y), colour));
    items
}
