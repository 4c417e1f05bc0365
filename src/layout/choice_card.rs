//! Choice cards: the question and two or three things to choose from on one card, each as large as
//! a tile.

use super::desk::{Desk, Person};
use super::frame::{self, Header};
use super::shapes::{Look, line, rounded};
use super::tile_face::{Choice, TileSet, corner_radius, draw_mark};
use super::tile_sheet::in_mm;
use super::writer::{Everyone, PageWriter};
use super::{Turn, fit, ink};
use crate::page::Page;
use crate::units::{Length, Point, Rect, Size};

/// White between two cards.
const GAP: Length = Length::um(7_000);
/// Length of the marks to cut along, and their distance from the card.
const TICK: Length = Length::um(2_000);

/// One way up: how many squares stand side by side, and how many cards one below the other.
struct Plan {
    size: Size,
    columns: usize,
    pages: Vec<Vec<usize>>,
}

/// The pages with the choice cards of a participant.
pub(super) fn lay_out(desk: &mut Desk<'_>, person: &Person<'_>, set: &TileSet) -> Vec<Page> {
    let plans = [Turn::Portrait, Turn::Landscape]
        .into_iter()
        .filter_map(|turn| plan(desk.page_size(turn), set));
    let Some(plan) = plans.min_by_key(|p| (p.pages.len(), p.size.w > p.size.h)) else {
        return Vec::new();
    };
    report(desk, person, set);
    let count = plan.pages.len();
    let mut pages = Vec::with_capacity(count);
    for (i, cards) in plan.pages.iter().enumerate() {
        let of = format!(
            "Choice cards {}, sheet {} of {count}",
            in_mm(set.side),
            i + 1
        );
        let mut page = PageWriter::new(plan.size, of.clone());
        let header = Header {
            mark: Some(&person.mark),
            mark_words: &person.mark_words,
            title: "Choice cards",
            below: "Cut along the marks. Laminate each card in one piece.",
        };
        frame::draw(&mut page, plan.size, &header, &desk.footer(person, of));
        let room = frame::content(plan.size);
        let mut y = room.y;
        for &card in cards {
            let size = card_size(&set.choices[card], set.side, plan.columns);
            let x = room.x + (room.w - size.w) / 2;
            let at = Rect::new(Point::new(x, y), size);
            draw_card(desk, person, set, &set.choices[card], at, &mut page);
            y = at.bottom() + GAP;
        }
        pages.push(page.finish());
    }
    pages
}

fn card_size(choice: &Choice, side: Length, columns: usize) -> Size {
    let n = choice.faces.len();
    let rows = n.div_ceil(columns);
    Size::new(side * n.div_ceil(rows) as i64, side * rows as i64)
}

fn plan(size: Size, set: &TileSet) -> Option<Plan> {
    let room = frame::content(size);
    let columns = usize::try_from(room.w.times(set.side)).ok()?;
    if columns == 0 || set.choices.is_empty() {
        return None;
    }
    let mut pages: Vec<Vec<usize>> = Vec::new();
    let mut free = Length::ZERO;
    for (i, choice) in set.choices.iter().enumerate() {
        let h = card_size(choice, set.side, columns).h;
        if h > room.h {
            return None;
        }
        match pages.last_mut() {
            Some(page) if h + GAP <= free => {
                page.push(i);
                free -= h + GAP;
            }
            _ => {
                pages.push(vec![i]);
                free = room.h - h;
            }
        }
    }
    Some(Plan {
        size,
        columns,
        pages,
    })
}

fn report(desk: &mut Desk<'_>, person: &Person<'_>, set: &TileSet) {
    let faces: Vec<usize> = set.choices.iter().flat_map(|c| c.faces.clone()).collect();
    let label = |&i: &usize| (set.faces[i].card.label.as_str(), set.faces[i].spot);
    let labels: Vec<_> = faces.iter().map(label).collect();
    let over: Vec<usize> = (0..faces.len())
        .filter(|&i| set.overfull.contains(&faces[i]))
        .collect();
    let hint = "Use fewer or shorter words, or larger tiles.";
    fit::report(desk, person, &labels, &over, "choice cards", hint);
}

fn draw_card(
    desk: &mut Desk<'_>,
    person: &Person<'_>,
    set: &TileSet,
    choice: &Choice,
    at: Rect,
    page: &mut PageWriter<Everyone>,
) {
    let side = set.side;
    let columns = usize::try_from(at.w.times(side)).unwrap_or(1).max(1);
    let cell = |k: usize| {
        let (x, y) = (side * (k % columns) as i64, side * (k / columns) as i64);
        Rect::new(at.origin().moved(x, y), Size::square(side))
    };
    let mut items = vec![rounded(
        at,
        corner_radius(side),
        Look::line(ink::INK, ink::LINE).on(ink::PAPER),
    )];
    // The question on its ground, the options each in a frame.
    let inset = Length::mm(1.6);
    items.push(rounded(
        cell(0).shrink(inset),
        corner_radius(side),
        Look::filled(ink::SEAL),
    ));
    for k in 1..choice.faces.len() {
        let look = Look::line(ink::SEAL_EDGE, ink::THIN);
        items.push(rounded(cell(k).shrink(inset), corner_radius(side), look));
    }
    items.extend(cut_marks(at));
    page.artifact(items);
    for (k, face) in choice.faces.clone().enumerate() {
        set.draw_inside(desk, person, face, cell(k).shrink(inset), page);
    }
    draw_mark(person, cell(columns.min(choice.faces.len()) - 1), page);
}

fn cut_marks(at: Rect) -> Vec<crate::page::Item> {
    let mut items = Vec::new();
    let gap = Length::mm(0.7);
    for (x, across) in [(at.x, -1), (at.right(), 1)] {
        for (y, down) in [(at.y, -1), (at.bottom(), 1)] {
            let p = Point::new(x, y);
            let z = Length::ZERO;
            let mark = |from: Point, to: Point| line(from, to, ink::INK, Length::um(200));
            items.push(mark(
                p.moved(gap * across, z),
                p.moved((gap + TICK) * across, z),
            ));
            items.push(mark(
                p.moved(z, gap * down),
                p.moved(z, (gap + TICK) * down),
            ));
        }
    }
    items
}
