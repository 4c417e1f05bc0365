//! A sheet full of tiles, true to size: the tiles touch, so that each cut serves two of them. Cuts are
//! numbered in the order to make them on a trimmer; marks and numbers stand outside all tiles.

use super::around::Around;
use super::arrange::Laying;
use super::gather::{self, What};
use super::{Making, backs};
use crate::layout::desk::{Desk, Person};
use crate::layout::packing::Cut;
use crate::layout::shapes::{Look, circle, line, rounded};
use crate::layout::tile_face::{TileSet, corner_radius, draw_mark};
use crate::layout::words::Words;
use crate::layout::writer::{Everyone, PageWriter};
use crate::layout::{SheetKind, choice_card, ink};
use crate::model::craft::{Cutting, Work};
use crate::page::{Item, Page};
use crate::plan::seal;
use crate::text::Style;
use crate::units::{Length, Point, Rect, Size};

/// Length of a cut mark and its distance from the tiles.
pub(super) const TICK: Length = Length::um(1_200);
pub(super) const TICK_GAP: Length = Length::um(400);
/// Radius of the plate of a cut's number.
pub(super) const NUMBER: Length = Length::um(1_600);

/// All pages: each sheet, and behind it its back where backs are wanted.
pub(super) fn pages(
    desk: &mut Desk<'_>,
    people: &[Person<'_>],
    making: &Making,
    kind: SheetKind,
) -> Vec<Page> {
    let count = making.sheets.sheets.len();
    let mut pages = Vec::new();
    for (i, sheet) in making.sheets.sheets.iter().enumerate() {
        let around = Around {
            size: sheet.size,
            block: sheet.block,
            kind,
            number: i + 1,
            count,
            people: people_on(making, sheet),
            sizes: sizes_on(making, sheet),
        };
        let mut page = PageWriter::new(around.size, around.title());
        around.header(desk, people, &mut page);
        draw_cuts(desk.club.rules.craft.cutting, sheet, &around, &mut page);
        for &(piece, at) in &sheet.places {
            draw_piece(desk, people, making, piece, at, &mut page);
        }
        around.footer(desk, people, &mut page);
        pages.push(page.finish());
        if let Some(flip) = desk.club.rules.craft.backs {
            pages.push(backs::back(desk, people, making, sheet, &around, flip));
        }
    }
    pages
}

/// The people whose tiles lie on a sheet, each once, in order.
pub(super) fn people_on(making: &Making, sheet: &Laying) -> Vec<usize> {
    let who = sheet.places.iter().map(|(p, _)| making.piece(*p).person);
    let mut who: Vec<usize> = who.collect();
    who.sort_unstable();
    who.dedup();
    who
}

/// The printed sizes on a sheet, each once, the largest first.
pub(super) fn sizes_on(making: &Making, sheet: &Laying) -> Vec<Size> {
    let mut sizes: Vec<Size> = Vec::new();
    for (piece, _) in &sheet.places {
        let size = making.piece(*piece).size;
        if !sizes.contains(&size) {
            sizes.push(size);
        }
    }
    sizes.sort_by_key(|s| std::cmp::Reverse((s.w, s.h)));
    sizes
}

/// What is done with a sheet, with its sizes: printed and finished are never taken for one another.
pub(super) fn how_to(desk: &Desk<'_>, sizes: &[Size]) -> String {
    let rules = &desk.club.rules;
    let film = rules.film();
    let list = |grow: Length| {
        let all: Vec<String> = sizes
            .iter()
            .map(|s| gather::in_words(seal::finished(*s, grow)))
            .collect();
        all.join(" and ")
    };
    if rules.craft.work == Work::OneSheet {
        return format!(
            "Printed and finished {}. Waterproof paper: cut once, on the lines. No film.",
            list(Length::ZERO)
        );
    }
    use crate::layout::sizes::in_mm;
    format!(
        "Printed {}, finished {}. Cut on the lines. Laminate with {} between tiles. Cut again, \
         leaving {} of film.",
        list(Length::ZERO),
        list(film),
        in_mm(film * 2),
        in_mm(film)
    )
}

/// One tile, card, or blank at its place.
fn draw_piece(
    desk: &mut Desk<'_>,
    people: &[Person<'_>],
    making: &Making,
    piece: usize,
    at: Rect,
    page: &mut PageWriter<Everyone>,
) {
    let wanted = making.piece(piece);
    let (person, set): (&Person<'_>, &TileSet) =
        (&people[wanted.person], &making.sets[wanted.person]);
    let marked = wanted.key.whose.is_some();
    match wanted.what {
        What::Face(face) => set.draw(desk, person, face, (at, marked), page),
        What::Several(choice, columns) => {
            choice_card::draw(desk, person, set, (choice, columns), at, page);
            if marked {
                draw_mark(
                    person,
                    choice_card::cell(set, columns, columns - 1, at),
                    page,
                );
            }
        }
        What::Blank => {
            let corner = Look::line(ink::RULE, ink::HAIRLINE);
            let radius = corner_radius(at.w.min(at.h));
            page.artifact(vec![rounded(at, radius, corner)]);
            if marked {
                draw_mark(person, at, page);
            }
        }
    }
}

/// Hairlines along the cuts, marks outside and, for a trimmer, the number of each cut that comes out
/// of the block.
fn draw_cuts(cutting: Cutting, sheet: &Laying, around: &Around, page: &mut PageWriter<Everyone>) {
    let mut items = Vec::new();
    let mut taken: Vec<Rect> = Vec::new();
    for (i, cut) in sheet.cuts.iter().enumerate() {
        items.push(line(cut.from, cut.to, ink::RULE, ink::HAIRLINE));
        let [before, after] = ends(cut, sheet.block);
        let marks = before.iter().chain(&after);
        items.extend(marks.map(|&(a, b)| line(a, b, ink::INK, Length::um(200))));
        if let (Cutting::Trimmer, Some(mark)) = (cutting, before) {
            let is_down = cut.from.x == cut.to.x;
            let bare = is_down && !around.has_room_for_plates();
            let (area, number) = match bare {
                true => bare_number(mark.0, i + 1),
                false => number_beyond(mark.1, is_down, i + 1),
            };
            // Two cuts that lie close: the cut list has the number of the second.
            if taken.iter().all(|t| !t.overlaps(area)) {
                items.extend(number);
                taken.push(area);
            }
        }
    }
    page.artifact(items);
}

/// The marks that carry a cut on beyond the block, before its beginning and after its end.
fn ends(cut: &Cut, block: Rect) -> [Option<(Point, Point)>; 2] {
    let z = Length::ZERO;
    let (near, far) = (TICK_GAP, TICK_GAP + TICK);
    if cut.from.x == cut.to.x {
        let (a, b) = (cut.from, cut.to);
        return [
            (a.y == block.y).then(|| (a.moved(z, -near), a.moved(z, -far))),
            (b.y == block.bottom()).then(|| (b.moved(z, near), b.moved(z, far))),
        ];
    }
    let (a, b) = (cut.from, cut.to);
    [
        (a.x == block.x).then(|| (a.moved(-near, z), a.moved(-far, z))),
        (b.x == block.right()).then(|| (b.moved(near, z), b.moved(far, z))),
    ]
}

/// The number of a cut beside its mark, where there is no room for a plate, and the place it takes.
fn bare_number(mark: Point, number: usize) -> (Rect, Vec<Item>) {
    let style = Style::bold(Length::pt(5.0));
    let words = Words::line(&number.to_string(), &style, Length::mm(8.0));
    let beside = mark.moved(Length::um(450), -words.height() + Length::um(300));
    let area = Rect::new(beside, Size::new(words.width(), words.height()));
    (area, words.left(beside, ink::SOFT))
}

/// The number of a cut on its plate beyond the end of its mark, and the place it takes.
fn number_beyond(end: Point, is_down: bool, number: usize) -> (Rect, Vec<Item>) {
    let centre = match is_down {
        true => end.moved(Length::ZERO, -NUMBER),
        false => end.moved(-NUMBER, Length::ZERO),
    };
    let area = Rect::new(centre.moved(-NUMBER, -NUMBER), Size::square(NUMBER * 2));
    (area, cut_number(centre, number))
}

/// The number of a cut on a small plate.
pub(in crate::layout) fn cut_number(center: Point, number: usize) -> Vec<Item> {
    let look = Look::line(ink::SOFT, Length::um(200)).on(ink::PAPER);
    let style = Style::bold(Length::pt(6.0));
    let words = Words::line(&number.to_string(), &style, Length::mm(8.0));
    let mut items = vec![circle(center, NUMBER, look)];
    items.extend(words.amid(center, ink::SOFT));
    items
}
