//! The story as a booklet: pages of half the paper, two on each side of a sheet, in the order in which
//! sheets printed on both sides are folded together. The paper is turned over on its short edge.

use super::desk::{Desk, Person};
use super::flow::moved;
use super::ink;
use super::shapes::line;
use super::story;
use super::words::Words;
use crate::page::{Block, Page, Role};
use crate::text::Style;
use crate::units::{Length, Point, Rect, Size};

/// The sheets of a participant, outside and inside of each in turn.
pub(super) fn lay_out(desk: &mut Desk<'_>, person: &Person<'_>) -> Vec<Page> {
    let sheet = desk.request.paper.size().turned();
    let half = Size::new(sheet.w / 2, sheet.h);
    let pages = story::on_paper(desk, person, half);
    let places = places(pages.len());
    let sides = imposed(places.len());
    let count = sides.len() / 2;
    let side = |(i, (left, right)): (usize, (usize, usize))| {
        let of = |place: usize| places[place].map(|page| (page, &pages[page]));
        let face = if i % 2 == 0 { "outside" } else { "inside" };
        let title = title(i / 2 + 1, count, face, [left, right].map(|p| places[p]));
        let mut page = Page {
            size: sheet,
            title,
            ..pages[0].clone()
        };
        page.blocks = Vec::new();
        for (place, x) in [(left, Length::ZERO), (right, half.w)] {
            let blocks = of(place).map(|(_, p)| p.blocks.clone());
            let blocks = blocks.into_iter().flatten();
            page.blocks
                .extend(blocks.map(|b| moved(b, x, Length::ZERO)));
        }
        page.blocks.push(fold_mark(sheet, i == 0));
        page
    };
    sides.into_iter().enumerate().map(side).collect()
}

/// "Booklet, sheet 1 of 3, outside: pages 12 and 1".
fn title(sheet: usize, of: usize, face: &str, pages: [Option<usize>; 2]) -> String {
    let numbers: Vec<String> = pages
        .iter()
        .flatten()
        .map(|p| (p + 1).to_string())
        .collect();
    let pages = match numbers.as_slice() {
        [] => "blank".to_owned(),
        [one] => format!("page {one}"),
        [a, b, ..] => format!("pages {a} and {b}"),
    };
    format!("Booklet, sheet {sheet} of {of}, {face}: {pages}")
}

/// Which page of the story stands at each place of a booklet, counted from the front cover. Blank
/// places are the back cover, then the inside of the front cover, then the inside of the back cover:
/// nobody takes one of these for a missing page.
pub fn places(pages: usize) -> Vec<Option<usize>> {
    let total = pages.div_ceil(4) * 4;
    let blank = total - pages;
    let is_blank = |place: usize| {
        (blank >= 1 && place == total - 1)
            || (blank >= 2 && place == 1)
            || (blank >= 3 && place == total - 2)
    };
    let mut next = 0..pages;
    (0..total)
        .map(|place| if is_blank(place) { None } else { next.next() })
        .collect()
}

/// The places on each side of each sheet, left and right, for a booklet of so many places (a multiple
/// of four), counted from zero. With n places, sheet i from zero carries outside n - 2i and 2i + 1,
/// inside 2i + 2 and n - 2i - 1, counted from one: the usual order of a saddle-stitched booklet
/// (common practice).
pub fn imposed(places: usize) -> Vec<(usize, usize)> {
    let mut sides = Vec::with_capacity(places / 2);
    for sheet in 0..places / 4 {
        let (first, last) = (2 * sheet, places - 1 - 2 * sheet);
        sides.push((last, first));
        sides.push((first + 1, last - 1));
    }
    sides
}

/// Where to fold: a short line at either end. On the first side also how to print.
fn fold_mark(sheet: Size, first: bool) -> Block {
    let x = sheet.w / 2;
    let tick = Length::mm(5.0);
    let mut items = Vec::new();
    for (from, to) in [(Length::ZERO, tick), (sheet.h - tick, sheet.h)] {
        items.push(line(
            Point::new(x, from),
            Point::new(x, to),
            ink::SOFT,
            ink::THIN,
        ));
    }
    if first {
        let style = Style::regular(Length::pt(7.0));
        let words = "Print on both sides, turned on the short edge; fold at the lines.";
        let words = Words::line(words, &style, sheet.w / 2 - Length::mm(20.0));
        let corner = Rect::new(Point::default(), sheet);
        let at = Point::new(corner.right() - Length::mm(12.0), Length::mm(4.5));
        items.extend(words.right(at, ink::SOFT));
    }
    Block {
        role: Role::Artifact,
        source: None,
        lang: None,
        items,
    }
}
