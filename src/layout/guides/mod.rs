//! For whoever prints: how much there is to make, how it is cut and laminated, what goes into whose
//! pouch, labels for the boxes, and a page that tests the printer. Marks and numbers only, no names.

pub(super) mod cut_list;
mod diagram;
pub(super) mod labels;
pub(super) mod pack_list;
pub(super) mod pouch_guide;
pub(super) mod print_run;
pub(super) mod test_page;

use super::desk::{Desk, Person};
use super::flow::{Flow, Piece};
use super::frame::{self, Header};
use super::making::footer;
use super::shapes::{Look, rounded};
use super::words::{CLEAR, TIGHT, Words};
use super::writer::{Everyone, PageWriter};
use super::{Sheet, SheetKind, Turn, ink};
use crate::page::{Item, Role};
use crate::text::Style;
use crate::units::{Length, Point, Rect, Size};

/// Letters of what is read.
const TEXT_PT: f64 = 10.0;
/// Letters of headings within a page.
const HEAD_PT: f64 = 14.0;

/// A page of a guide with what stands around it.
fn begin(
    desk: &Desk<'_>,
    people: &[Person<'_>],
    kind: SheetKind,
    below: &str,
    (size, page, pages): (Size, usize, usize),
) -> PageWriter<Everyone> {
    let what = match pages {
        1 => kind.label().to_owned(),
        _ => format!("{}, page {page} of {pages}", kind.label()),
    };
    let mut writer = PageWriter::new(size, what.clone());
    let one = match people {
        [one] => Some(one),
        _ => None,
    };
    let header = Header {
        mark: one.map(|p| &p.mark),
        mark_words: one.map_or("", |p| &p.mark_words),
        title: kind.label(),
        below,
    };
    frame::draw(&mut writer, size, &header, &footer(desk, people, what));
    writer
}

/// Pieces one below the other on as many pages as they take.
fn flowing(
    desk: &Desk<'_>,
    people: &[Person<'_>],
    (kind, below): (SheetKind, &str),
    flow: Flow<Everyone>,
) -> Sheet {
    let size = desk.page_size(Turn::Portrait);
    let pages = flow.into_pages(frame::content(size), |page, pages| {
        begin(desk, people, kind, below, (size, page, pages))
    });
    let pages = pages.into_iter().map(PageWriter::finish);
    desk.common_sheet(people, kind, pages.collect())
}

/// A heading within a page.
fn heading(words: &str, room: Rect) -> Piece {
    let set = Words::line(words, &Style::bold(Length::pt(HEAD_PT)), room.w);
    let top = Length::mm(2.2);
    let items = set.left(Point::new(room.x, top), ink::INK);
    Piece::new(top + set.height() + Length::mm(1.6))
        .kept()
        .with(Role::Heading(2), None, items)
}

/// A paragraph.
fn paragraph(words: &str, room: Rect) -> Piece {
    let style = Style::regular(Length::pt(TEXT_PT));
    let set = Words::wrapped(words, &style, room.w, CLEAR, 40);
    Piece::new(set.height() + Length::mm(1.4))
        .words(set.left(Point::new(room.x, Length::ZERO), ink::INK))
}

/// A numbered step, its number on a small plate.
fn step(number: usize, words: &str, room: Rect) -> Piece {
    let style = Style::regular(Length::pt(TEXT_PT));
    let x = room.x + Length::mm(9.0);
    let set = Words::wrapped(words, &style, room.right() - x, CLEAR, 40);
    let plate = Rect::new(Point::new(room.x, -Length::mm(0.5)), Size::mm(6.2, 5.4));
    let look = Look::line(ink::SEAL_EDGE, ink::THIN).on(ink::SEAL);
    let number = Words::line(&number.to_string(), &Style::bold(Length::pt(10.0)), plate.w);
    Piece::new(set.height() + Length::mm(1.6))
        .drawn(vec![rounded(plate, Length::mm(1.4), look)])
        .words(number.amid(plate.center(), ink::INK))
        .words(set.left(Point::new(x, Length::ZERO), ink::INK))
}

/// A row of a table: each cell flush left in its column, given as shares of the width.
fn table_row(cells: &[&str], shares: &[f64], room: Rect, bold: bool) -> Piece {
    let size = Length::pt(TEXT_PT);
    let style = match bold {
        true => Style::bold(size),
        false => Style::regular(size),
    };
    let mut x = room.x;
    let mut piece = Piece::new(Length::ZERO);
    let mut height = Length::ZERO;
    for (cell, share) in cells.iter().zip(shares) {
        let w = room.w.scale(*share);
        let words = Words::wrapped(cell, &style, w - Length::mm(3.0), TIGHT, 3);
        height = height.max(words.height());
        piece = piece.words(words.left(Point::new(x, Length::ZERO), ink::INK));
        x += w;
    }
    piece.height = height + Length::mm(1.3);
    if bold { piece.kept() } else { piece }
}

/// An empty box to tick.
fn tick_box(at: Point) -> Item {
    let look = Look::line(ink::INK, Length::um(300)).on(ink::PAPER);
    rounded(Rect::new(at, Size::mm(3.6, 3.6)), Length::um(500), look)
}

/// With a capital at the beginning.
fn capital(words: &str) -> String {
    let mut chars = words.chars();
    let first = chars.next().map(|c| c.to_uppercase().to_string());
    first.unwrap_or_default() + chars.as_str()
}

/// "1 sheet", "3 sheets".
fn counted(n: usize, one: &str, many: &str) -> String {
    match n {
        1 => format!("1 {one}"),
        n => format!("{n} {many}"),
    }
}
