//! One card of the group wall: its number and part of the day, a large symbol, its words, and
//! whether it is today.

use super::desk::Desk;
use super::frame::picture;
use super::group_turns::{self, InTurns};
use super::shapes::{Look, face_down, rounded};
use super::words::{TIGHT, Words};
use super::writer::{Everyone, PageWriter};
use super::{ink, strand};
use crate::model::board::shown;
use crate::model::hand::Content;
use crate::model::ids::{SlotId, SymbolId};
use crate::model::people::Figure;
use crate::page::{Item, Source};
use crate::text::Style;
use crate::units::{Length, Point, Rect, Size};

/// White inside the edge of a card, and between symbol and words.
const PAD: Length = Length::um(3_000);
const GAP: Length = Length::um(6_000);
/// The symbol: common practice for a wall is 120 to 150 mm.
const SMALLEST: Length = Length::um(120_000);
const LARGEST: Length = Length::um(150_000);
/// The least height of words below a symbol, and the least width of words beside one.
const LEAST_BELOW: Length = Length::um(24_000);
const LEAST_WORDS: Length = Length::um(48_000);
/// The number's plate.
const NUMBER: Size = Size::new(Length::um(20_000), Length::um(15_000));
const NUMBER_PT: f64 = 30.0;
/// Letters of the part of the day, of tabs and of what can be chosen; the smallest of large print.
const SMALL_PT: f64 = 18.0;
/// The highest tab, with the white above and below it.
const TAB: Length = Length::um(32_000);
/// What can be chosen, one below the other, each this high.
const OPTION: Length = Length::um(17_000);
/// The line with the plan at the foot of a card.
const PLAN: Length = Length::um(5_000);
const PLAN_PT: f64 = 8.0;

/// Whether it is today.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) enum State {
    /// As planned.
    Today,
    /// Called off; it stays on the wall.
    NotToday,
    /// It comes instead of something.
    Instead(String),
}

impl State {
    /// What its tab says.
    fn words(&self) -> Option<String> {
        match self {
            Self::Today => None,
            Self::NotToday => Some("Not today".to_owned()),
            Self::Instead(was) => Some(format!("Instead of {was}")),
        }
    }
}

/// What is on a card.
#[derive(Clone, Debug)]
pub(super) struct Card {
    pub number: usize,
    pub slot: SlotId,
    pub symbol: SymbolId,
    pub label: String,
    /// The part of the day, and whether it begins here.
    pub part: String,
    pub begins_part: bool,
    pub state: State,
    /// What can be chosen.
    pub options: Vec<Content>,
    /// Its place among cards that are done in turns, which have one number.
    pub turns: Option<InTurns>,
}

/// What can be chosen in a row, as it is called now.
pub(super) fn options(desk: &Desk<'_>, options: &[Content]) -> Vec<Content> {
    options.iter().map(|o| shown(desk.club, o)).collect()
}

/// What any card of a wall has besides words and symbol.
#[derive(Clone, Copy, Debug)]
pub(super) struct With {
    /// Something can be chosen.
    pub options: bool,
    /// Something can be chosen where turns are.
    pub both: bool,
}

impl With {
    /// On any of these cards.
    pub fn of(all: &[Card]) -> Self {
        let options = |c: &Card| !c.options.is_empty();
        Self {
            options: all.iter().any(options),
            both: all.iter().any(|c| options(c) && c.turns.is_some()),
        }
    }
}

/// Where things are on a card.
#[derive(Clone, Copy, Debug)]
pub(super) struct Place {
    card: Rect,
    symbol: Rect,
    /// Number, part of the day, tab.
    head: Rect,
    pub label: Rect,
    options: Rect,
    plan: Rect,
}

impl Place {
    /// On the first card of a page. Words stand beside the symbol, or below it on a narrow card.
    pub fn of(card: Rect, with: With) -> Self {
        let inside = card.shrink(PAD);
        let beside = inside.w - GAP - LEAST_WORDS;
        let plan = Rect {
            y: inside.bottom() - PLAN,
            h: PLAN,
            ..inside
        };
        if beside >= SMALLEST {
            // Words get half of a wide card.
            let side = inside.h.min(LARGEST).min((inside.w / 2).max(SMALLEST));
            return Self::beside(card, plan, side, with);
        }
        let words = NUMBER.h + PLAN + PAD * 2 + LEAST_BELOW;
        let side = inside.w.min(LARGEST).min(inside.h - words);
        Self::below(card, plan, side, with)
    }

    fn beside(card: Rect, plan: Rect, side: Length, with: With) -> Self {
        let inside = card.shrink(PAD);
        let symbol = Rect {
            y: inside.center().y - side / 2,
            w: side,
            h: side,
            ..inside
        };
        let x = symbol.right() + GAP;
        let column = Rect {
            x,
            w: inside.right() - x,
            ..inside
        };
        let options_h = if with.options {
            OPTION * 3
        } else {
            Length::ZERO
        };
        // What is called off is no choice, so a card has a tab or options; but turns can have both.
        let below = match with.both {
            true => TAB + options_h,
            false => TAB.max(options_h),
        };
        let head = Rect {
            y: column.y + Length::mm(1.0),
            h: NUMBER.h,
            ..column
        };
        let top = head.bottom() + PAD;
        Self {
            card,
            symbol,
            head,
            label: Rect {
                y: top,
                h: plan.y - top - below - PAD,
                ..column
            },
            options: Rect {
                y: plan.y - options_h - PAD,
                h: options_h,
                ..column
            },
            plan: Rect {
                x,
                w: column.w,
                ..plan
            },
        }
    }

    fn below(card: Rect, plan: Rect, side: Length, with: With) -> Self {
        let inside = card.shrink(PAD);
        let head = Rect {
            h: NUMBER.h,
            ..inside
        };
        let symbol = Rect {
            x: inside.center().x - side / 2,
            y: head.bottom() + PAD,
            w: side,
            h: side,
        };
        let options_h = if with.options { OPTION } else { Length::ZERO };
        let options = Rect {
            y: plan.y - options_h,
            h: options_h,
            ..inside
        };
        let top = symbol.bottom() + PAD;
        Self {
            card,
            symbol,
            head,
            label: Rect {
                y: top,
                h: options.y - top - Length::mm(1.0),
                ..inside
            },
            options,
            plan,
        }
    }

    /// The same on a card that lies elsewhere.
    pub fn moved(self, by: Point) -> Self {
        let moved = |r: Rect| Rect {
            x: r.x + by.x,
            y: r.y + by.y,
            ..r
        };
        Self {
            card: moved(self.card),
            symbol: moved(self.symbol),
            head: moved(self.head),
            label: moved(self.label),
            options: moved(self.options),
            plan: moved(self.plan),
        }
    }

    fn is_beside(&self) -> bool {
        self.head.x > self.symbol.x + self.symbol.w / 2
    }
}

/// Draws a card.
pub(super) fn draw(
    desk: &Desk<'_>,
    card: &Card,
    words: &Words,
    place: &Place,
    plan: &str,
    page: &mut PageWriter<Everyone>,
) {
    let source = Some(Source::Slot(card.slot));
    group_turns::draw_frame(card, place.card, page);
    let below = draw_head(desk, card, place, page);
    draw_symbol(desk, card, place.symbol, page);
    let colour = match card.state {
        State::NotToday => ink::SOFT,
        State::Today | State::Instead(_) => ink::INK,
    };
    let items = if place.is_beside() {
        let floor = match card.options.is_empty() {
            true => place.plan.y,
            false => place.options.y,
        };
        let middle = Point::new(place.label.x, (below + floor) / 2);
        words.left_of_middle(middle, colour)
    } else {
        words.amid(place.label.center(), colour)
    };
    page.paragraph(source, items);
    draw_options(desk, card, place.options, page);
    let plan = format!("{} · {plan}", group_turns::named(card));
    let plan = Words::line(&plan, &Style::regular(Length::pt(PLAN_PT)), place.plan.w);
    let at = Point::new(place.plan.x, place.plan.bottom() - plan.height());
    page.paragraph(None, plan.left(at, ink::SOFT));
}

/// Number, part of the day with a knot where it begins, and a tab for what is not as planned; gives
/// where they end.
fn draw_head(
    desk: &Desk<'_>,
    card: &Card,
    place: &Place,
    page: &mut PageWriter<Everyone>,
) -> Length {
    let head = place.head;
    let plate = Rect::new(head.origin(), NUMBER);
    let number = Words::line(
        &card.number.to_string(),
        &Style::bold(Length::pt(NUMBER_PT)),
        NUMBER.w,
    );
    let mut drawn = vec![rounded(plate, Length::mm(3.6), Look::filled(ink::INK))];
    let middle = plate.center().y;
    let tab = card.state.words();
    let turns = card.turns.as_ref().filter(|_| tab.is_none());
    let has_part = place.is_beside() || tab.is_none() && turns.is_none();
    let knot = Point::new(plate.right() + Length::mm(6.5), middle);
    if has_part && card.begins_part && !card.part.is_empty() {
        drawn.extend(strand::knot(knot));
    }
    page.artifact(drawn);
    page.paragraph(None, number.amid(plate.center(), ink::PAPER));
    if has_part {
        let x = match card.begins_part {
            true => knot.x + Length::mm(4.5),
            false => plate.right() + Length::mm(4.0),
        };
        let style = Style::bold(Length::pt(SMALL_PT));
        let part = Words::wrapped(&card.part, &style, head.right() - x, TIGHT, 2);
        page.paragraph(None, part.left_of_middle(Point::new(x, middle), ink::SOFT));
    }
    // On a narrow card a tab stands where the part of the day stands on others.
    let room = match place.is_beside() {
        true => {
            let at = Point::new(head.x, plate.bottom() + Length::mm(5.0));
            Rect::new(at, Size::new(head.w, TAB - Length::mm(5.0)))
        }
        false => {
            let x = plate.right() + GAP;
            let w = head.right() - x;
            Rect {
                x,
                w,
                h: NUMBER.h,
                ..head
            }
        }
    };
    let lines = if place.is_beside() { 3 } else { 2 };
    match (tab, turns) {
        (Some(words), _) => draw_tab(&words, room, lines, page),
        (None, Some(turns)) => {
            group_turns::draw_sign(desk, turns, room, SMALL_PT, !place.is_beside(), page)
        }
        (None, None) => plate.bottom(),
    }
}

/// Light words on a dark tab at the top left of a room; gives where it ends.
fn draw_tab(words: &str, room: Rect, lines: usize, page: &mut PageWriter<Everyone>) -> Length {
    let pad = Length::mm(3.0);
    let style = Style::bold(Length::pt(SMALL_PT));
    let words = Words::wrapped(words, &style, room.w - pad * 2, TIGHT, lines);
    let size = Size::new(words.width() + pad * 2, words.height() + pad);
    let tab = Rect::new(room.origin(), size);
    page.artifact(vec![rounded(tab, Length::mm(2.4), Look::filled(ink::INK))]);
    page.paragraph(
        None,
        words.left(tab.origin().moved(pad, pad / 2), ink::PAPER),
    );
    tab.bottom()
}

fn draw_symbol(desk: &Desk<'_>, card: &Card, at: Rect, page: &mut PageWriter<Everyone>) {
    let drawn = desk.art_on(&card.symbol, Figure::default());
    let alt = desk.alt(&card.symbol, &card.label);
    let source = Some(Source::Slot(card.slot));
    let radius = Length::mm(7.0);
    if card.state == State::NotToday {
        let mut items = face_down(at, radius);
        let plate = at.shrink(at.w.scale(0.17));
        items.push(rounded(plate, radius, Look::filled(ink::PAPER)));
        items.push(picture(&drawn, plate.shrink(at.w.scale(0.03))));
        page.figure(source, format!("Not today. {alt}"), items);
        return;
    }
    let edge = Look::line(ink::RULE, Length::mm(0.4)).on(ink::PAPER);
    let items: Vec<Item> = vec![
        rounded(at, radius, edge),
        picture(&drawn, at.shrink(at.w.scale(0.03))),
    ];
    page.figure(source, alt, items);
}

/// What can be chosen: a small picture and its words each.
fn draw_options(desk: &Desk<'_>, card: &Card, at: Rect, page: &mut PageWriter<Everyone>) {
    let n = card.options.len() as i64;
    if n == 0 {
        return;
    }
    let in_a_row = at.h < OPTION * 2;
    let style = Style::bold(Length::pt(SMALL_PT));
    for (i, option) in card.options.iter().enumerate() {
        let cell = match in_a_row {
            true => Rect {
                x: at.x + at.w / n * i as i64,
                w: at.w / n,
                ..at
            },
            false => Rect {
                y: at.bottom() - OPTION * (n - i as i64),
                h: OPTION,
                ..at
            },
        };
        let side = OPTION - Length::mm(1.5);
        let square = Rect::new(cell.origin(), Size::square(side));
        let drawn = desk.art_on(&option.symbol, Figure::default());
        let alt = desk.alt(&option.symbol, &option.label);
        page.figure(None, alt, vec![picture(&drawn, square)]);
        let x = square.right() + Length::mm(2.0);
        let width = cell.right() - x - Length::mm(1.0);
        let words = Words::wrapped(&option.label, &style, width, TIGHT, 2);
        let middle = Point::new(x, square.center().y);
        page.paragraph(None, words.left_of_middle(middle, ink::INK));
    }
}
