//! Cards of the group wall that are done in turns: one number for all of them, a frame that closes
//! when they hang side by side, and on each small pictures of what is changed between.

use super::desk::Desk;
use super::frame::picture;
use super::group_card::{Card, State};
use super::ink;
use super::shapes::{Look, rounded, shape, square};
use super::words::Words;
use super::writer::{Everyone, PageWriter};
use crate::model::ids::SymbolId;
use crate::model::people::Figure;
use crate::page::Stroke;
use crate::text::Style;
use crate::units::path::{Path, Seg};
use crate::units::{Length, Point, Rect};

/// What the cards say.
const WORDS: &str = "In turns";
/// The line of the frame, and the white between it and the edge of a card.
const FRAME: Length = Length::um(1_400);
const WHITE: Length = Length::um(700);
/// Small pictures: the largest, and the white between two.
const LARGEST: Length = Length::um(16_000);
const GAP: Length = Length::um(2_500);

/// Where a card stands among those that are done in turns.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct InTurns {
    /// Its place among the cards of the block, from zero, and how many these are.
    pub place: usize,
    pub of: usize,
    /// All that is done today in turns, with the words of each picture.
    pub pictures: Vec<(SymbolId, String)>,
    /// Which of them this card is; none where the card is not today.
    pub own: Option<usize>,
}

/// Makes one block of cards that are done in turns; `number` is theirs.
pub(super) fn join(cards: &mut [Card], number: usize) {
    let today = cards.iter().filter(|c| c.state != State::NotToday);
    let pictures: Vec<_> = today.map(|c| (c.symbol.clone(), c.label.clone())).collect();
    let (of, mut next) = (cards.len(), 0);
    for (place, card) in cards.iter_mut().enumerate() {
        card.number = number;
        let own = (card.state != State::NotToday).then_some(next);
        next += usize::from(own.is_some());
        card.turns = Some(InTurns {
            place,
            of,
            pictures: pictures.clone(),
            own,
        });
    }
}

/// "4", and "4a", "4b" for cards of one number.
pub(super) fn named(card: &Card) -> String {
    match &card.turns {
        Some(t) if t.of > 1 => {
            let letter = u8::try_from(t.place % 26).unwrap_or(0);
            format!("{}{}", card.number, char::from(b'a' + letter))
        }
        _ => card.number.to_string(),
    }
}

/// The frame around the block, as far as it lies on this card: cards side by side close it.
pub(super) fn draw_frame(card: &Card, at: Rect, page: &mut PageWriter<Everyone>) {
    let Some(turns) = &card.turns else {
        return;
    };
    let inset = WHITE + FRAME / 2;
    let (top, bottom) = (at.y + inset, at.bottom() - inset);
    let (left, right) = (at.x + inset, at.right() - inset);
    let p = Point::new;
    let mut segs = vec![Seg::Move(p(at.center().x, top))];
    match turns.place + 1 == turns.of {
        true => segs.extend([p(right, top), p(right, bottom)].map(Seg::Line)),
        false => segs.extend([
            Seg::Line(p(at.right(), top)),
            Seg::Move(p(at.right(), bottom)),
        ]),
    }
    segs.push(Seg::Line(p(at.center().x, bottom)));
    match turns.place {
        0 => segs.extend([p(left, bottom), p(left, top)].map(Seg::Line)),
        _ => segs.extend([Seg::Line(p(at.x, bottom)), Seg::Move(p(at.x, top))]),
    }
    segs.push(Seg::Line(p(at.center().x, top)));
    let look = Look {
        fill: None,
        stroke: Some(Stroke {
            colour: ink::INK,
            width: FRAME,
            dash: None,
        }),
    };
    page.artifact(vec![shape(Path { segs }, look)]);
}

/// The words, and below or beside them the small pictures, with this card's own framed; gives where
/// they end.
pub(super) fn draw_sign(
    desk: &Desk<'_>,
    turns: &InTurns,
    room: Rect,
    pt: f64,
    beside: bool,
    page: &mut PageWriter<Everyone>,
) -> Length {
    let words = Words::line(WORDS, &Style::bold(Length::pt(pt)), room.w);
    let strip = match beside {
        true => {
            let middle = Point::new(room.x, room.center().y);
            page.paragraph(None, words.left_of_middle(middle, ink::INK));
            let x = room.x + words.width() + GAP * 2;
            Rect {
                x,
                w: room.right() - x,
                ..room
            }
        }
        false => {
            page.paragraph(None, words.left(room.origin(), ink::INK));
            let y = room.y + words.height() + Length::mm(1.0);
            Rect {
                y,
                h: room.bottom() - y,
                ..room
            }
        }
    };
    let bottom = draw_pictures(desk, turns, strip, page);
    match beside {
        true => room.bottom(),
        false => bottom,
    }
}

fn draw_pictures(
    desk: &Desk<'_>,
    turns: &InTurns,
    strip: Rect,
    page: &mut PageWriter<Everyone>,
) -> Length {
    let n = turns.pictures.len().max(1) as i64;
    let side = LARGEST.min(strip.h).min((strip.w - GAP * (n - 1)) / n);
    if side <= Length::mm(4.0) || turns.pictures.len() < 2 {
        return strip.y;
    }
    let mut items = Vec::new();
    for (i, (symbol, _)) in turns.pictures.iter().enumerate() {
        let at = square(strip.x + (side + GAP) * i as i64, strip.y, side);
        let drawn = desk.art_on(symbol, Figure::default());
        let edge = match turns.own == Some(i) {
            true => Look::line(ink::INK, Length::mm(1.1)),
            false => Look::line(ink::RULE, ink::THIN),
        };
        items.push(rounded(at, Length::mm(2.0), edge.on(ink::PAPER)));
        items.push(picture(&drawn, at.shrink(Length::mm(1.4))));
    }
    let names: Vec<&str> = turns.pictures.iter().map(|p| p.1.as_str()).collect();
    page.figure(None, format!("{WORDS}: {}", names.join(", ")), items);
    strip.y + side
}
