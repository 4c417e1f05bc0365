//! Where finished tiles go on a base board: a place for each, one pouch for all, or nothing but a note
//! that they are turned over.

use super::desk::{Desk, Person};
use super::frame::picture;
use super::ink;
use super::shapes::{Look, fastener, rounded, shape};
use super::sizes::in_mm;
use super::words::Words;
use super::writer::{Everyone, PageWriter};
use crate::model::manner::Finishing;
use crate::page::Item;
use crate::plan::seal;
use crate::story::cards;
use crate::text::Style;
use crate::units::path::{Path, Seg};
use crate::units::{Length, Point, Rect, Size};

/// Inside the edge of the finished place.
const POUCH_PAD: Length = Length::um(2_500);
/// Height of the finished place's heading, where it stands above the tiles.
const POUCH_HEAD: Length = Length::um(14_000);
/// Width of the finished place's heading, where it stands beside the tiles.
const POUCH_SIDE: Length = Length::um(22_000);

/// How the finished place is divided.
#[derive(Clone, Copy, Debug)]
pub(super) struct Pouch {
    /// Places in a row.
    pub columns: usize,
    /// Rows on a page of its own.
    pub rows: usize,
    /// Whether its heading stands beside the tiles rather than above.
    pub beside: bool,
}

impl Pouch {
    pub fn on(content: Rect, place: Size) -> Option<Self> {
        let w = content.w - POUCH_PAD * 2;
        let columns = w.times(place.w);
        let beside = w - place.w * columns >= POUCH_SIDE;
        let head = if beside { Length::ZERO } else { POUCH_HEAD };
        let rows = (content.h - head - POUCH_PAD * 2).times(place.h);
        (columns > 0 && rows > 0).then_some(Self {
            columns: usize::try_from(columns).ok()?,
            rows: usize::try_from(rows).ok()?,
            beside,
        })
    }

    pub fn height(self, place: Size, tiles: usize) -> Length {
        let head = if self.beside {
            Length::ZERO
        } else {
            POUCH_HEAD
        };
        head + place.h * tiles.div_ceil(self.columns) as i64 + POUCH_PAD * 2
    }
}

/// Height of what finished tiles go to.
pub(super) fn finish_height(
    finishing: Finishing,
    pouch: Pouch,
    place: Size,
    tiles: usize,
) -> Length {
    match finishing {
        Finishing::FinishedRow => pouch.height(place, tiles),
        Finishing::Pouch => place.h + Length::mm(4.0),
        Finishing::TurnedOver => Length::mm(13.0),
        Finishing::Tick => Length::ZERO,
    }
}

/// A pouch for all finished tiles, one on the other: its opening is 20 mm wider than a finished
/// tile.
pub(super) fn draw_one_pouch(
    desk: &mut Desk<'_>,
    person: &Person<'_>,
    place: Size,
    at: Rect,
    page: &mut PageWriter<Everyone>,
) {
    let finished = seal::finished(person.who.tile_size(), desk.club.rules.film());
    let real = seal::pouch(finished);
    let w = real.w.min(at.w);
    let pouch_at = Rect {
        x: at.center().x - w / 2,
        w,
        ..at
    };
    let look = Look::line(ink::INK, ink::LINE).on(ink::HATCH_GROUND);
    page.artifact(vec![shape(pouch(pouch_at), look)]);
    let card = cards::finished(desk.club);
    let drawn = desk.art(&card.symbol, &card.label, person, desk.board_spot(person));
    let alt = desk.alt_for(person, &card.symbol, &card.label);
    let words = Words::line(
        &card.label,
        &Style::bold(Length::pt(16.0)),
        w - Length::mm(6.0),
    );
    let side = place.h.scale(0.5).min(Length::mm(40.0));
    let all = side + Length::mm(2.0) + words.height() + Length::mm(6.5);
    let middle = pouch_at.center();
    let symbol = Rect::new(
        Point::new(middle.x - side / 2, middle.y - all / 2),
        Size::square(side),
    );
    page.figure(None, alt, vec![picture(&drawn, symbol)]);
    let top = symbol.bottom() + Length::mm(2.0);
    page.heading(2, words.centred(Point::new(middle.x, top), ink::INK));
    let note = format!("pouch, opening {}, depth {}", in_mm(real.w), in_mm(real.h));
    let note = Words::line(&note, &Style::regular(Length::pt(9.0)), w - Length::mm(4.0));
    let below = top + words.height() + Length::mm(1.5);
    page.paragraph(None, note.centred(Point::new(middle.x, below), ink::SOFT));
}

/// There is no finished place when tiles are turned over.
pub(super) fn draw_turn_over(at: Rect, page: &mut PageWriter<Everyone>) {
    let style = Style::bold(Length::pt(14.0));
    let words = Words::line("Finished: turn over", &style, at.w);
    let y = at.y + Length::mm(5.0);
    page.paragraph(None, words.centred(Point::new(at.center().x, y), ink::SOFT));
}

/// The finished place: an open pouch with a place for each tile.
pub(super) fn draw_pouch(
    desk: &mut Desk<'_>,
    person: &Person<'_>,
    (divided, place): (Pouch, Size),
    tiles: usize,
    at: Rect,
    page: &mut PageWriter<Everyone>,
) {
    let look = Look::line(ink::INK, ink::LINE).on(ink::HATCH_GROUND);
    page.artifact(vec![shape(pouch(at), look)]);
    let card = cards::finished(desk.club);
    let drawn = desk.art(&card.symbol, &card.label, person, desk.board_spot(person));
    let alt = desk.alt_for(person, &card.symbol, &card.label);
    let columns = divided.columns;
    let used = place.w * columns.min(tiles) as i64;
    let inside = at.shrink(POUCH_PAD);
    let (heading, first) = if divided.beside {
        let spare = inside.w - place.w * columns as i64;
        let heading = Rect { w: spare, ..inside };
        (heading, Point::new(heading.right(), inside.y))
    } else {
        let heading = Rect {
            h: POUCH_HEAD,
            ..inside
        };
        let left = inside.x + (inside.w - used) / 2;
        (heading, Point::new(left, heading.bottom()))
    };
    let (symbol, words, words_at) = pouch_heading(&card.label, heading, divided.beside);
    page.figure(None, alt, vec![picture(&drawn, symbol)]);
    page.heading(2, words.left(words_at, ink::INK));
    let mut items: Vec<Item> = Vec::new();
    for k in 0..tiles {
        let corner = Point::new(
            first.x + place.w * (k % columns) as i64,
            first.y + place.h * (k / columns) as i64,
        );
        let one = Rect::new(corner, place).shrink(Length::mm(0.6));
        let look = Look::line(ink::HATCH, ink::THIN).dashed(Length::mm(1.0), Length::mm(1.4));
        items.push(rounded(one, place.w.min(place.h).scale(0.08), look));
        items.extend(fastener(one.center(), desk.club.rules.craft.dot));
    }
    page.artifact(items);
}

/// Picture and words of the finished place, beside the tiles or above them.
fn pouch_heading(label: &str, at: Rect, beside: bool) -> (Rect, Words, Point) {
    let bold = |pt: f64| Style::bold(Length::pt(pt));
    if !beside {
        let symbol = Rect::new(
            at.origin().moved(Length::mm(1.0), Length::mm(0.8)),
            Size::square(at.h - Length::mm(2.0)),
        );
        let x = symbol.right() + Length::mm(3.0);
        let words = Words::line(label, &bold(18.0), at.right() - x);
        let top = symbol.center().y - words.height() / 2;
        return (symbol, words, Point::new(x, top));
    }
    let room = at.w - Length::mm(1.0);
    let fits = |pt: &f64| !Words::line(label, &bold(*pt), room).cut;
    let pt = [18.0, 16.0, 14.0, 13.0, 12.0].into_iter().find(fits);
    let words = Words::line(label, &bold(pt.unwrap_or(12.0)), room);
    let side = (at.w - Length::mm(3.0)).min(Length::mm(30.0));
    let all = side + Length::mm(1.5) + words.height();
    let top = at.center().y - all / 2;
    let symbol = Rect::new(
        Point::new(at.center().x - side / 2, top),
        Size::square(side),
    );
    let words_at = Point::new(
        at.center().x - words.width() / 2,
        symbol.bottom() + Length::mm(1.5),
    );
    (symbol, words, words_at)
}

/// An open pouch: its upper edge hangs a little.
fn pouch(r: Rect) -> Path<Point> {
    let radius = Length::mm(3.0);
    let sag = Length::mm(2.2);
    let p = Point::new;
    let k = radius.scale(0.45);
    Path {
        segs: vec![
            Seg::Move(p(r.x, r.y)),
            Seg::Cubic(
                p(r.x + r.w.scale(0.3), r.y + sag),
                p(r.x + r.w.scale(0.7), r.y + sag),
                p(r.right(), r.y),
            ),
            Seg::Line(p(r.right(), r.bottom() - radius)),
            Seg::Cubic(
                p(r.right(), r.bottom() - k),
                p(r.right() - k, r.bottom()),
                p(r.right() - radius, r.bottom()),
            ),
            Seg::Line(p(r.x + radius, r.bottom())),
            Seg::Cubic(
                p(r.x + k, r.bottom()),
                p(r.x, r.bottom() - k),
                p(r.x, r.bottom() - radius),
            ),
            Seg::Close,
        ],
    }
}
