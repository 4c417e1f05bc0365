//! The cut list: every sheet and every pouch as a small picture with its cuts numbered in the order to
//! make them. Sheets that are divided alike share a picture.

use super::{counted, diagram, flowing, heading, paragraph};
use crate::layout::desk::{Desk, Person};
use crate::layout::flow::{Flow, Piece};
use crate::layout::making::{Arranged, Laying, Making};
use crate::layout::words::Words;
use crate::layout::writer::Everyone;
use crate::layout::{Sheet, SheetKind, Turn, frame, ink};
use crate::model::club::Rules;
use crate::model::craft::Sorting;
use crate::page::Role;
use crate::text::Style;
use crate::units::{Length, Point, Rect};

/// Widest picture of a sheet.
const WIDEST: Length = Length::um(88_000);
/// Taken above the pictures by what the list says, and by the headings of two rows.
const ABOVE: Length = Length::um(38_000);
/// White between two pictures side by side.
const GAP: Length = Length::um(6_000);

/// The sheet.
pub(in crate::layout) fn lay_out(desk: &Desk<'_>, people: &[Person<'_>], making: &Making) -> Sheet {
    let room = frame::content(desk.page_size(Turn::Portrait));
    let rules = &desk.club.rules;
    let mut flow: Flow<Everyone> = Flow::new();
    flow.push(paragraph(
        "Make the cuts in the order of their numbers. A line through several strips is one cut: leave \
         the strips lying side by side. Each tile shows whose it is and its number.",
        room,
    ));
    let stacked = desk.club.rules.craft.sorting == Sorting::ThroughTheStack;
    for (title, of, film) in [
        ("Paper", &making.sheets, None),
        ("Film, after laminating", &making.pouches, Some(rules)),
    ] {
        if !of.sheets.is_empty() {
            flow.push(heading(title, room));
            pictures(
                people,
                making,
                (of, film),
                (room, stacked && film.is_none()),
                &mut flow,
            );
        }
    }
    let below = format!(
        "{}, {} of paper, {} of film",
        counted(making.sheets.sheets.len(), "sheet", "sheets"),
        counted(making.sheets.cuts(), "cut", "cuts"),
        making.pouches.cuts()
    );
    flowing(desk, people, (SheetKind::CutList, &below), flow)
}

/// Sheets in groups that follow one another and are divided alike: from, to.
pub(super) fn groups(sheets: &[Laying], together: bool) -> Vec<(usize, usize)> {
    let mut groups: Vec<(usize, usize)> = Vec::new();
    for (i, sheet) in sheets.iter().enumerate() {
        match groups.last_mut() {
            Some((from, to)) if together && sheet.is_like(&sheets[*from]) => *to = i + 1,
            _ => groups.push((i, i + 1)),
        }
    }
    groups
}

/// The pictures, two side by side where the page is wide enough.
fn pictures(
    people: &[Person<'_>],
    making: &Making,
    (of, film): (&Arranged, Option<&Rules>),
    (room, stacked): (Rect, bool),
    flow: &mut Flow<Everyone>,
) {
    let columns = if room.w >= Length::mm(150.0) { 2 } else { 1 };
    let most = ((room.w - GAP * (columns - 1)) / columns).min(WIDEST);
    let groups = groups(&of.sheets, stacked);
    for row in groups.chunks(columns as usize) {
        let mut piece: Option<Piece> = None;
        for (k, &(from, to)) in row.iter().enumerate() {
            let sheet = &of.sheets[from];
            let width = diagram::width_in(sheet.size, most, room.h - ABOVE);
            let x = room.x + (most + GAP) * k as i64;
            let title = title(film.is_none(), (from, to), sheet);
            let words = Words::line(&title, &Style::bold(Length::pt(10.0)), width);
            let corner = Point::new(x, words.height() + Length::mm(0.5));
            let items = diagram::draw(people, making, sheet, (corner, width), film);
            let height = corner.y + diagram::height(sheet.size, width) + Length::mm(1.0);
            let alt = alt(&title, sheet);
            let one = Piece::new(height)
                .words(words.left(Point::new(x, Length::ZERO), ink::INK))
                .with(Role::Figure { alt }, None, items);
            piece = Some(one.beside(piece));
        }
        if let Some(piece) = piece {
            flow.push(piece);
        }
    }
}

fn title(paper: bool, (from, to): (usize, usize), sheet: &Laying) -> String {
    let what = if paper { "Sheet" } else { "Pouch" };
    let which = match to - from {
        1 => format!("{what} {}", from + 1),
        _ => format!("{what}s {} to {}, as a stack", from + 1, to),
    };
    format!("{which}: {}", counted(sheet.cuts.len(), "cut", "cuts"))
}

/// The picture in words: how many tiles, and where the first cuts go.
fn alt(title: &str, sheet: &Laying) -> String {
    format!("{title}, {}", counted(sheet.places.len(), "tile", "tiles"))
}
