//! What lies under an open pouch while it is filled: the place of each tile, true to size, with a seal at
//! the edge and two between, and the lines of the second cut.

use super::cut_list::groups;
use crate::layout::desk::{Desk, Person};
use crate::layout::frame::{self, PRINTER_EDGE};
use crate::layout::making::{Laying, Making, footer, gather};
use crate::layout::packing::Cut;
use crate::layout::shapes::{Look, circle, rounded};
use crate::layout::sizes::in_mm;
use crate::layout::words::Words;
use crate::layout::writer::PageWriter;
use crate::layout::{Sheet, SheetKind, ink, shapes};
use crate::model::craft::pouch_size;
use crate::page::{Item, Page};
use crate::text::Style;
use crate::units::path::{Path, Seg};
use crate::units::{Length, Point, Rect, Size};

/// The sheet: one page for each way of filling a pouch, on the paper that the pouch is made for.
pub(in crate::layout) fn lay_out(desk: &Desk<'_>, people: &[Person<'_>], making: &Making) -> Sheet {
    let pouches = &making.pouches.sheets;
    let groups = alike(pouches);
    let count = groups.len();
    let pages = groups
        .iter()
        .enumerate()
        .map(|(i, which)| page(desk, people, making, which, (i + 1, count)));
    let pages = pages.collect();
    desk.common_sheet(people, SheetKind::PouchGuide, pages)
}

/// Pouches that are filled alike, wherever they come.
fn alike(pouches: &[Laying]) -> Vec<Vec<usize>> {
    let mut all: Vec<Vec<usize>> = Vec::new();
    for (from, to) in groups(pouches, true) {
        match all
            .iter_mut()
            .find(|g| pouches[g[0]].is_like(&pouches[from]))
        {
            Some(group) => group.extend(from..to),
            None => all.push((from..to).collect()),
        }
    }
    all
}

fn page(
    desk: &Desk<'_>,
    people: &[Person<'_>],
    making: &Making,
    which: &[usize],
    (number, count): (usize, usize),
) -> Page {
    let craft = &desk.club.rules.craft;
    let (paper, pouch) = (craft.pouch.size(), pouch_size(craft.pouch));
    let sheet = &making.pouches.sheets[which[0]];
    let what = format!("Pouch guide {number} of {count}");
    let mut page = PageWriter::new(paper, what.clone());
    // The pouch lies over the paper and reaches beyond it on all sides.
    let (dx, dy) = ((paper.w - pouch.w) / 2, (paper.h - pouch.h) / 2);
    let at = |r: Rect| Rect::new(r.origin().moved(dx, dy), r.size());
    let mut clear = Rect::new(Point::default(), paper).shrink(PRINTER_EDGE);
    clear.h -= frame::tight_footer_room() - PRINTER_EDGE;
    let mut items = Vec::new();
    let rules = &desk.club.rules;
    for &(piece, place) in &sheet.places {
        let tile = at(making.paper_in(piece, place, rules));
        if let Some((middle, hole)) = making.hole_in(piece, at(place), rules) {
            let around = Rect::new(middle, Size::default()).shrink(-hole);
            let look = Look::line(ink::INK, ink::THIN);
            items.extend(
                clear
                    .encloses(around)
                    .then(|| circle(middle, hole / 2, look)),
            );
        }
        items.push(rounded(
            clipped(tile, clear),
            Length::ZERO,
            Look::filled(ink::SEAL),
        ));
        let edge = Look::line(ink::INK, ink::THIN);
        items.extend(
            edges(tile)
                .into_iter()
                .filter_map(|e| seen_part(e, clear, edge)),
        );
    }
    let dashed = Look::line(ink::HATCH, Length::um(300)).dashed(Length::mm(2.4), Length::mm(1.6));
    let moved = |c: &Cut| (c.from.moved(dx, dy), c.to.moved(dx, dy));
    items.extend(
        sheet
            .cuts
            .iter()
            .filter_map(|c| seen_part(moved(c), clear, dashed)),
    );
    page.artifact(items);
    let words = heading_words(desk, making, which, number, count);
    let first = sheet.places.first();
    let first = first.map_or(clear, |(piece, r)| {
        clipped(at(making.paper_in(*piece, *r, rules)), clear)
    });
    let (middle, room) = (first.center(), first.w - Length::mm(3.0));
    draw_words(&words, (middle, room), &mut page);
    for &(piece, place) in sheet.places.iter().skip(1) {
        let size = gather::in_words(making.piece(piece).size);
        let words = Words::line(&size, &Style::regular(Length::pt(9.0)), place.w);
        page.paragraph(
            None,
            words.amid(clipped(at(place), clear).center(), ink::SOFT),
        );
    }
    frame::draw_tight_footer(&mut page, paper, &footer(desk, people, what));
    page.finish()
}

/// What stands in the place of the first tile, where it is covered while the pouch is filled.
fn heading_words(
    desk: &Desk<'_>,
    making: &Making,
    which: &[usize],
    number: usize,
    count: usize,
) -> Vec<String> {
    let film = desk.club.rules.film();
    let numbers: Vec<String> = which.iter().map(|i| (i + 1).to_string()).collect();
    let sheet = &making.pouches.sheets[which[0]];
    let first = sheet.places.first();
    let size = first.map_or(Size::default(), |(piece, _)| making.piece(*piece).size);
    let pouch = desk.club.rules.craft.pouch.label();
    let named = match numbers.len() {
        1 => format!("{pouch} pouch {}", numbers[0]),
        n if n <= 6 => format!("{pouch} pouches {}", numbers.join(", ")),
        n => format!("{n} {pouch} pouches"),
    };
    vec![
        format!("Pouch guide {number} of {count}"),
        named,
        format!("tiles of {}", gather::in_words(size)),
        format!("{} between, {} at the edge", in_mm(film * 2), in_mm(film)),
        "Dashed: cut here after laminating".to_owned(),
    ]
}

fn draw_words(
    words: &[String],
    (middle, room): (Point, Length),
    page: &mut PageWriter<crate::layout::writer::Everyone>,
) {
    let sizes = [13.0, 10.0, 10.0, 9.0, 9.0];
    let set: Vec<Words> = words
        .iter()
        .zip(sizes)
        .enumerate()
        .map(|(i, (w, pt))| {
            let style = match i {
                0 => Style::bold(Length::pt(pt)),
                _ => Style::regular(Length::pt(pt)),
            };
            Words::wrapped(w, &style, room, 1.2, 3)
        })
        .collect();
    let gap = Length::mm(0.8);
    let heights = set.iter().map(|w| w.height() + gap);
    let mut y = middle.y - heights.sum::<Length>() / 2;
    for (i, words) in set.iter().enumerate() {
        let items = words.centred(Point::new(middle.x, y), ink::INK);
        match i {
            0 => page.heading(1, items),
            _ => page.paragraph(None, items),
        }
        y += words.height() + gap;
    }
}

/// The part of a rectangle that a printer reaches.
fn clipped(r: Rect, clear: Rect) -> Rect {
    let (x, y) = (r.x.max(clear.x), r.y.max(clear.y));
    let (right, bottom) = (r.right().min(clear.right()), r.bottom().min(clear.bottom()));
    Rect::new(Point::new(x, y), Size::new(right - x, bottom - y))
}

/// The four edges of a rectangle.
fn edges(r: Rect) -> [(Point, Point); 4] {
    let p = Point::new;
    [
        (p(r.x, r.y), p(r.right(), r.y)),
        (p(r.x, r.bottom()), p(r.right(), r.bottom())),
        (p(r.x, r.y), p(r.x, r.bottom())),
        (p(r.right(), r.y), p(r.right(), r.bottom())),
    ]
}

/// A straight line as far as a printer reaches; none for one beyond that.
fn seen_part((from, to): (Point, Point), clear: Rect, look: Look) -> Option<Item> {
    let inside = match from.x == to.x {
        true => clear.x <= from.x && from.x <= clear.right(),
        false => clear.y <= from.y && from.y <= clear.bottom(),
    };
    let keep = |p: Point| {
        Point::new(
            p.x.clamp(clear.x, clear.right()),
            p.y.clamp(clear.y, clear.bottom()),
        )
    };
    let segs = vec![Seg::Move(keep(from)), Seg::Line(keep(to))];
    inside.then(|| shapes::shape(Path { segs }, look))
}
