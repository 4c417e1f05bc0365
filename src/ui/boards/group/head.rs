//! The timetable above the rows, as cards on the strand; it scrolls sideways with them.

use egui::{Align2, CornerRadius, Painter, Rect, Stroke, Ui, pos2, vec2};

use super::{ROW, Table, cell};
use crate::model::session::Slot;
use crate::ui::desk::Desk;
use crate::ui::icons;
use crate::ui::strand::{Rope, paint};
use crate::ui::theme::{self, Theme};
use crate::ui::widgets::card::{Lie, peg, tile};
use crate::ui::widgets::words;

/// How high it is.
pub const fn height(short: bool) -> f32 {
    if short { 96.0 } else { 152.0 }
}

/// From its top to the rope: the names of the parts stand over it.
const ROPE_AT: f32 = 38.0;

/// Where the parts of the day begin, with how many columns each has.
fn runs(table: &Table<'_>) -> Vec<(usize, usize)> {
    let slots = &table.session.timetable;
    let mut runs: Vec<(usize, usize)> = Vec::new();
    for (i, slot) in slots.iter().enumerate() {
        match runs.last_mut() {
            Some((from, n)) if slots[*from].part == slot.part => *n += 1,
            _ => runs.push((i, 1)),
        }
    }
    runs
}

/// Lines down through the rows where a part of the day begins.
pub fn rules(p: &Painter, table: &Table<'_>, _desk: &Desk<'_>) {
    let t = theme::of(p.ctx());
    let bottom = table.origin.y + table.lines.len() as f32 * ROW;
    for (first, _) in runs(table).into_iter().skip(1) {
        let x = table.middle(first) - table.column / 2.0;
        p.vline(x, table.origin.y..=bottom, Stroke::new(1.0, t.col.rule));
    }
}

/// Shows it.
pub fn show(ui: &Ui, desk: &mut Desk<'_>, table: &Table<'_>, rect: Rect, short: bool) {
    let t = theme::of(ui.ctx());
    let p = ui.painter();
    p.rect_filled(rect, 0, t.col.ground);
    let y = rect.top() + ROPE_AT;
    let n = table.session.timetable.len();
    let mut rope = Rope {
        points: vec![pos2(table.origin.x + table.names - 4.0, y)],
        arrows: Vec::new(),
    };
    for i in 0..n {
        rope.sag_to(pos2(table.middle(i), y));
    }
    rope.sag_to(pos2(table.end() + 6.0, y));
    paint::rope(p, &t, &rope);
    parts(p, &t, desk, table, y);
    for i in 0..n {
        slot(p, &t, desk, table, i, (y, short));
    }
    let corner = rect.with_max_x(rect.left() + table.names - 12.0);
    p.rect_filled(corner, 0, t.col.ground);
    let left = corner.with_min_y(y + if short { 8.0 } else { 22.0 });
    let (upper, lower) = left.split_top_bottom_at_y(left.top() + 28.0);
    let steps = format!("{n} steps");
    words::line(
        p,
        upper,
        Align2::LEFT_CENTER,
        "Timetable",
        theme::bold(18.0),
        t.col.ink,
    );
    if lower.height() > 18.0 {
        let lower = lower.with_max_y(lower.top() + 24.0);
        words::line(
            p,
            lower,
            Align2::LEFT_CENTER,
            &steps,
            theme::regular(15.0),
            t.col.soft,
        );
    }
}

fn parts(p: &Painter, t: &Theme, desk: &Desk<'_>, table: &Table<'_>, y: f32) {
    for (first, run) in runs(table) {
        let x = table.middle(first) - table.column / 2.0;
        let room = run as f32 * table.column - 12.0;
        paint::knot(p, t, pos2(x, y), 8.0);
        if let Some(part) = desk.view.club.part(table.session.timetable[first].part) {
            paint::name(p, t, pos2(x, y + 1.0), room, &part.name);
        }
    }
}

/// One row of the timetable, as a card.
fn slot(
    p: &Painter,
    t: &Theme,
    desk: &mut Desk<'_>,
    table: &Table<'_>,
    i: usize,
    (y, short): (f32, bool),
) {
    let slot = &table.session.timetable[i];
    let Some(activity) = desk.view.club.activity(slot.activity) else {
        return;
    };
    let x = table.middle(i);
    let width = if short {
        54.0
    } else {
        (table.column - 10.0).min(110.0)
    };
    let card = Rect::from_min_size(
        pos2(x - width / 2.0, y + 8.0),
        vec2(width, if short { 48.0 } else { 102.0 }),
    );
    let at = pos2(x, y);
    if slot.off.is_some() {
        off(p, t, desk, card, slot, short);
        peg(p, at, &(i + 1).to_string(), t.col.peg, t.col.on_peg);
        return;
    }
    let paper = tile(p, t, card, Lie::Ground);
    if short {
        let picture = paper.with_min_y(paper.top() + 4.0);
        desk.pictures
            .symbol(p, picture, &activity.symbol, Default::default());
    } else {
        let paper = paper.shrink(3.0);
        let (picture, text) = paper.split_top_bottom_at_y(paper.bottom() - 36.0);
        desk.pictures
            .symbol(p, picture, &activity.symbol, Default::default());
        let sizes = [15.0, 14.0, 13.0];
        words::label(p, text, &activity.label, &sizes, 2, t.col.card_ink);
    }
    peg(p, at, &(i + 1).to_string(), t.col.peg, t.col.on_peg);
}

/// A row that is called off: face down with its words, what comes instead named below.
fn off(p: &Painter, t: &Theme, desk: &Desk<'_>, card: Rect, slot: &Slot, short: bool) {
    if short {
        return cell::back(
            p,
            t,
            Rect::from_center_size(card.center(), vec2(38.0, 44.0)),
        );
    }
    p.rect_filled(card, CornerRadius::same(theme::R_CARD), t.col.down);
    let line = Stroke::new(t.line() + 0.2, t.col.down_line);
    icons::dashed_rect(p, card.shrink(1.0), 14.0, line, 7.0, 5.0);
    let plate = card.shrink2(vec2(6.0, 9.0));
    p.rect_filled(plate, CornerRadius::same(theme::R_PAPER), t.col.card);
    let label = |id| desk.view.club.activity(id).map_or("", |a| a.label.as_str());
    let instead = slot.off.and_then(|o| o.instead).map(label);
    let (top, rest) = plate.split_top_bottom_at_y(plate.top() + 24.0);
    let ink = t.col.card_ink;
    let says = if instead.is_some() {
        "Not today:"
    } else {
        "Not today"
    };
    words::label(p, top, says, &[14.0, 13.0], 1, ink);
    let (middle, last) = match instead {
        Some(_) => rest.split_top_bottom_at_fraction(0.45),
        None => (rest, Rect::NOTHING),
    };
    words::label(p, middle, label(slot.activity), &[14.0, 13.0], 2, ink);
    if let Some(instead) = instead {
        let words = format!("now {instead}");
        words::label(p, last, &words, &[14.0, 13.0], 2, ink);
    }
}
