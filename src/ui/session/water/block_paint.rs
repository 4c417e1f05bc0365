//! What a block looks like: names on a card, slanting lines where nobody is, a pin where people were
//! put together by hand, and where a person in the hand could go.

use egui::{CornerRadius, Painter, Rect, Stroke, StrokeKind, vec2};

use super::Line;
use super::rows::names;
use crate::plan::water::Together;
use crate::story::said;
use crate::ui::desk::Desk;
use crate::ui::icons;
use crate::ui::theme::{self, Theme};
use crate::ui::widgets::card::{Lie, tile};
use crate::ui::widgets::words;

/// Letters of names, from the largest on, and their lines.
const SIZES: [f32; 3] = [15.0, 14.0, 13.0];
const LINES: usize = 2;
/// Width of the picture of what is done, and of the slanting lines for people who are missing.
const PICTURE: f32 = 32.0;
const MISSING: f32 = 18.0;

/// What is in the water with whom: a card with names; hatched, with words, where nobody is.
pub fn block(p: &Painter, desk: &mut Desk<'_>, line: &Line<'_>, rect: Rect, own: &Together) {
    let t = theme::of(p.ctx());
    if own.people.is_empty() {
        return nobody(p, &t, rect);
    }
    let mut text = tile(p, &t, rect, Lie::Flat).shrink2(vec2(4.0, 1.0));
    let mut said = names(line, own);
    let missing = (own.asked as usize).saturating_sub(own.people.len());
    if missing > 0 {
        let (rest, gap) = text.split_left_right_at_x(text.right() - MISSING);
        icons::hatch(p, gap, 7.0, Stroke::new(1.3, t.col.card_soft));
        text = rest.with_max_x(rest.right() - 3.0);
        said = format!("{said}, {} missing", said::number(missing));
    }
    let symbol = own.activity.and_then(|a| line.club.activity(a));
    let beside = text.with_min_x(text.left() + PICTURE + 3.0);
    // Names come first: the picture stands above in the timetable as well.
    if let Some(a) = symbol.filter(|_| rect.width() > 104.0 && fits(p, beside, &said)) {
        let picture = text.with_max_x(text.left() + PICTURE);
        desk.pictures
            .symbol(p, picture, &a.symbol, Default::default());
        text = beside;
    }
    words::label(p, text, &said, &SIZES, LINES, t.col.card_ink);
}

/// Whether names stand in a place without being cut off.
fn fits(p: &Painter, place: Rect, said: &str) -> bool {
    let least = SIZES[SIZES.len() - 1];
    let lines = words::rows_needed(p, said, theme::bold(least), place.width());
    lines <= LINES && words::fits(p, said, least, place.width())
}

/// Nobody is beside them: slanting lines, and the word.
fn nobody(p: &Painter, t: &Theme, rect: Rect) {
    let col = &t.col;
    p.rect_filled(rect, CornerRadius::same(theme::R_CARD), col.panel);
    let inner = rect.shrink(4.0);
    icons::hatch(p, inner, 9.0, Stroke::new(1.6, col.ink.gamma_multiply(0.6)));
    let edge = Stroke::new(t.line() + 0.7, col.ink);
    let corner = CornerRadius::same(theme::R_CARD);
    p.rect_stroke(rect, corner, edge, StrokeKind::Inside);
    let plate = Rect::from_center_size(rect.center(), vec2((rect.width() - 16.0).min(82.0), 28.0));
    p.rect_filled(plate, CornerRadius::same(theme::R_PAPER), col.card);
    words::label(p, plate, "nobody", &[15.0, 14.0], 1, col.card_ink);
}

/// A small pin: put together by hand.
pub fn pin(p: &Painter, t: &Theme, at: egui::Pos2) {
    p.line_segment(
        [at, at + vec2(-2.5, 10.0)],
        Stroke::new(2.0, t.col.card_ink),
    );
    p.circle(at, 5.5, t.col.peg, Stroke::new(1.5, t.col.card));
}

/// A place where what is in the hand could go, and the one under the pointer.
pub fn target(p: &Painter, t: &Theme, rect: Rect, can: bool, over: bool) {
    let col = &t.col;
    if over && can {
        p.rect_filled(rect, CornerRadius::same(theme::R_CARD), col.tint);
        let goes = rect.shrink2(vec2(4.0, 2.0));
        words::label(p, goes, "goes here", &[15.0, 14.0], 2, col.accent);
    }
    if can {
        let width = if over { 2.6 } else { 1.8 };
        icons::dashed_rect(
            p,
            rect.shrink(1.0),
            14.0,
            Stroke::new(width, col.accent),
            7.0,
            5.0,
        );
    } else if over {
        let edge = Stroke::new(2.0, col.ink);
        let r = CornerRadius::same(theme::R_CARD);
        p.rect_stroke(rect, r, edge, StrokeKind::Inside);
    }
}
