//! Where pieces lie on sheets of paper and in pouches, and how they are cut.

use super::gather::{self, Wanted};
use crate::layout::desk::{Desk, Person};
use crate::layout::grid::MARGIN;
use crate::layout::packing::{self, Cut, Order, PackedSheet, Piece, Room};
use crate::layout::{Turn, frame};
use crate::model::craft::{Craft, Sorting, pouch_size};
use crate::model::finding::{Severity, Spot};
use crate::units::{Length, Point, Rect, Size};

/// Sheets, or pouches, with pieces on them.
#[derive(Clone, Debug, Default)]
pub(in crate::layout) struct Arranged {
    pub sheets: Vec<Laying>,
    /// Pieces too large for any.
    pub too_large: Vec<usize>,
}

impl Arranged {
    /// Cuts over all sheets.
    pub fn cuts(&self) -> usize {
        self.sheets.iter().map(|s| s.cuts.len()).sum()
    }
}

/// One sheet: pieces and cuts at their places on the paper.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(in crate::layout) struct Laying {
    /// Size of the sheet or pouch.
    pub size: Size,
    /// Piece and place.
    pub places: Vec<(usize, Rect)>,
    /// In the order to make them.
    pub cuts: Vec<Cut>,
    /// Around all pieces.
    pub block: Rect,
}

impl Laying {
    /// Whether another sheet is divided in the same way.
    pub fn is_like(&self, other: &Self) -> bool {
        self.size == other.size
            && self.cuts == other.cuts
            && self.places.len() == other.places.len()
    }
}

const fn order(sorting: Sorting) -> Order {
    match sorting {
        Sorting::ByParticipant => Order::SheetBySheet,
        Sorting::ThroughTheStack => Order::ThroughTheStack,
    }
}

/// The pieces of each size by themselves, in the order in which the sizes come.
fn by_size(sizes: &[Size]) -> Vec<Vec<usize>> {
    let mut kinds: Vec<(Size, Vec<usize>)> = Vec::new();
    for (i, size) in sizes.iter().enumerate() {
        match kinds.iter_mut().find(|(kind, _)| kind == size) {
            Some((_, some)) => some.push(i),
            None => kinds.push((*size, vec![i])),
        }
    }
    kinds.into_iter().map(|(_, some)| some).collect()
}

/// The best of several ways: what fits none first, then the fewest sheets, then the fewest cuts.
fn best(ways: impl Iterator<Item = Arranged>) -> Arranged {
    let rank = |a: &Arranged| (a.too_large.len(), a.sheets.len(), a.cuts());
    ways.min_by_key(rank).unwrap_or_default()
}

/// Several one after the other.
fn joined(all: impl Iterator<Item = Arranged>) -> Arranged {
    all.fold(Arranged::default(), |mut sum, one| {
        sum.sheets.extend(one.sheets);
        sum.too_large.extend(one.too_large);
        sum
    })
}

/// Packs some of the pieces; in what comes out they have their own numbers.
fn pack_some(sizes: &[Size], some: &[usize], room: Size, sorting: Sorting) -> packing::Packing {
    let piece = |&i: &usize| Piece {
        size: sizes[i],
        may_turn: false,
    };
    let pieces: Vec<Piece> = some.iter().map(piece).collect();
    let room = Room {
        size: room,
        gap: Length::ZERO,
    };
    let mut packed = packing::pack(&pieces, &room);
    packing::hand_out(&mut packed, &pieces, order(sorting));
    for sheet in &mut packed.sheets {
        let stacks = sheet.strips.iter_mut().flat_map(|s| &mut s.stacks);
        for placed in stacks.flat_map(|s| &mut s.pieces) {
            placed.piece = some[placed.piece];
        }
    }
    for piece in &mut packed.too_large {
        *piece = some[*piece];
    }
    packed
}

/// Printed pieces on the paper that is wanted, each sheet upright or across: all sizes together or
/// each by itself, whichever takes fewer sheets, then fewer cuts.
pub(super) fn on_paper(desk: &Desk<'_>, sizes: &[Size]) -> Arranged {
    let craft = &desk.club.rules.craft;
    let turns: &[Turn] = match desk.request.turn {
        Turn::AsSuits => &[Turn::Portrait, Turn::Landscape],
        _ => &[desk.request.turn],
    };
    let turned = |turn: Turn, some: &[usize]| {
        let size = desk.page_size(turn);
        let room = Size::new(size.w - MARGIN * 2, size.h - MARGIN * 2);
        let packed = pack_some(sizes, some, room, craft.sorting);
        let sheet = |s: &PackedSheet| laying(s, size, |block| on_page(size, block));
        Arranged {
            sheets: packed.sheets.iter().map(sheet).collect(),
            too_large: packed.too_large,
        }
    };
    let of = |some: &[usize]| best(turns.iter().map(|turn| turned(*turn, some)));
    let kinds = by_size(sizes);
    let apart = joined(kinds.iter().map(|some| of(some)));
    if craft.sizes_apart || kinds.len() < 2 {
        return apart;
    }
    let all: Vec<usize> = (0..sizes.len()).collect();
    best([of(&all), apart].into_iter())
}

/// Finished pieces in pouches: the edge of a finished piece may lie on the edge of the pouch, for
/// its seal is part of it; between two there is the seal of each.
pub(super) fn in_pouches(sizes: &[Size], craft: &Craft) -> Arranged {
    let pouch = pouch_size(craft.pouch);
    let middle = |block: Size| Point::new((pouch.w - block.w) / 2, (pouch.h - block.h) / 2);
    let of = |some: &[usize]| {
        let packed = pack_some(sizes, some, pouch, craft.sorting);
        let sheets = packed.sheets.iter().map(|s| laying(s, pouch, middle));
        Arranged {
            sheets: sheets.collect(),
            too_large: packed.too_large,
        }
    };
    match craft.sizes_apart {
        true => joined(by_size(sizes).iter().map(|some| of(some))),
        false => of(&(0..sizes.len()).collect::<Vec<_>>()),
    }
}

/// The corner of a block on a page: in the middle across, and a little below the middle down, where
/// the header takes more room than the footer; a low block stays near the header.
fn on_page(page: Size, block: Size) -> Point {
    let free = page.h - block.h;
    let top = free.scale(0.56).min(free - MARGIN).max(MARGIN);
    Point::new(
        (page.w - block.w) / 2,
        top.min(frame::FULL_HEADER.max(MARGIN)),
    )
}

/// A packed sheet at its place: shifted so that the block of its pieces lies where it should.
fn laying(sheet: &PackedSheet, size: Size, place: impl Fn(Size) -> Point) -> Laying {
    let right = sheet
        .pieces()
        .map(|p| p.at.right())
        .max()
        .unwrap_or_default();
    let bottom = sheet
        .pieces()
        .map(|p| p.at.bottom())
        .max()
        .unwrap_or_default();
    let block = Rect::new(place(Size::new(right, bottom)), Size::new(right, bottom));
    let (dx, dy) = (block.x, block.y);
    let shifted = |r: Rect| Rect {
        x: r.x + dx,
        y: r.y + dy,
        ..r
    };
    // A cut across the room is drawn across the block only: marks carry it on.
    let within = |p: Point| Point::new(p.x.min(right), p.y.min(bottom)).moved(dx, dy);
    Laying {
        size,
        places: sheet.pieces().map(|p| (p.piece, shifted(p.at))).collect(),
        cuts: packing::cuts(sheet)
            .into_iter()
            .map(|c| Cut {
                from: within(c.from),
                to: within(c.to),
                ..c
            })
            .collect(),
        block,
    }
}

/// Says which tiles are larger than the paper, without laying any out.
pub(super) fn report_larger_than_paper(desk: &mut Desk<'_>, people: &[Person<'_>], all: &[Wanted]) {
    let paper = desk.request.paper.size();
    let (short, long) = (paper.w - MARGIN * 2, paper.h - MARGIN * 2);
    let fits = |s: Size| (s.w <= short && s.h <= long) || (s.w <= long && s.h <= short);
    for wanted in all.iter().filter(|w| !fits(w.size)) {
        too_large(desk, &people[wanted.person], wanted.size);
    }
}

/// Says which tiles no sheet can hold.
pub(super) fn report_too_large(
    desk: &mut Desk<'_>,
    people: &[Person<'_>],
    all: &[Wanted],
    printed: &[usize],
    sheets: &Arranged,
) {
    for &i in &sheets.too_large {
        let wanted = &all[printed[i]];
        too_large(desk, &people[wanted.person], wanted.size);
    }
}

fn too_large(desk: &mut Desk<'_>, person: &Person<'_>, size: Size) {
    let paper = desk.request.paper.label();
    let sentence = format!(
        "A tile of {} for {} is larger than {paper} paper can hold; it is left out.",
        gather::in_words(size),
        person.mark_words
    );
    let spot = Spot::Participant(person.who.id);
    let hint = "Choose another tile size or larger paper. Tiles are always printed true to size.";
    desk.note(Severity::StopAndLook, "print.tile", spot, sentence, hint);
}

/// Says which tiles are larger with their film than the pouches the club has.
pub(super) fn report_pouches(
    desk: &mut Desk<'_>,
    people: &[Person<'_>],
    all: &[Wanted],
    printed: &[usize],
    pouches: &Arranged,
) {
    let pouch = desk.club.rules.craft.pouch.label();
    for &i in &pouches.too_large {
        let wanted = &all[printed[i]];
        let person = &people[wanted.person];
        let sentence = format!(
            "A tile of {} for {} is larger with its film than an {pouch} pouch; it is printed but has \
             no place in a pouch.",
            gather::in_words(wanted.size),
            person.mark_words
        );
        let spot = Spot::Participant(person.who.id);
        let hint = "Choose larger pouches at People, The club, or another tile size.";
        desk.note(Severity::Look, "print.pouch", spot, sentence, hint);
    }
}
