//! The name at the left of a row, and how the board differs in words; also what a screen reader says.

use egui::{Align2, CornerRadius, Painter, Rect, Vec2, pos2, vec2};

use super::places::Cell;
use super::{At, Table, cell};
use crate::ui::boards::card;
use crate::ui::boards::differs::Differs;
use crate::ui::boards::sort::Line;
use crate::ui::boards::who::differs;
use crate::ui::desk::Desk;
use crate::ui::theme;
use crate::ui::widgets::card::plate;
use crate::ui::widgets::words;

/// Paints the name.
pub fn paint(p: &Painter, desk: &mut Desk<'_>, line: Line<'_>, rect: Rect, over: bool) {
    let t = theme::of(p.ctx());
    let chosen = desk
        .view
        .participant
        .is_some_and(|p| p.id == line.person.id);
    let ground = if chosen || over {
        t.col.panel
    } else {
        t.col.ground
    };
    p.rect_filled(rect, CornerRadius::same(theme::R_CARD), ground);
    let mark = Rect::from_min_size(rect.min + vec2(8.0, 7.0), Vec2::splat(42.0));
    plate(p, &t, mark);
    desk.pictures.mark(p, mark.shrink(7.0), &line.person.mark);
    let text = Rect::from_min_max(
        pos2(mark.right() + 9.0, rect.top() + 4.0),
        rect.max - vec2(2.0, 4.0),
    );
    let (upper, lower) = text.split_top_bottom_at_fraction(0.52);
    let bold = theme::bold(16.0);
    words::line(
        p,
        upper,
        Align2::LEFT_BOTTOM,
        &line.person.name,
        bold,
        t.col.ink,
    );
    let says = how(line);
    let ink = if line.questions > 0 {
        t.col.ink
    } else {
        t.col.soft
    };
    let font = theme::regular(14.0);
    words::line(p, lower, Align2::LEFT_TOP, &says, font, ink);
    if line.questions > 0 {
        cell::question(p, mark);
    }
}

/// How a board differs, with what is asked about it first.
fn how(line: Line<'_>) -> String {
    match line.questions {
        0 => differs(line.board),
        1 => format!("1 question, {}", differs(line.board)),
        n => format!("{n} questions, {}", differs(line.board)),
    }
}

/// What a screen reader says of a place.
pub fn spoken(desk: &Desk<'_>, table: &Table<'_>, line: Line<'_>, c: &Cell<'_>) -> String {
    let who = &line.person.name;
    match (c.at, c.step) {
        (At::Out(slot), _) => {
            let slot = table.session.slot(slot);
            let activity = slot.and_then(|s| desk.view.club.activity(s.activity));
            let label = activity.map_or("", |a| a.label.as_str());
            format!("{label}, left out, {who}")
        }
        (_, Some(s)) => {
            let says = match Differs::of(s) {
                how @ (Differs::NotToday | Differs::CalledOff) => how.label().to_owned(),
                how => card::says(s).map_or_else(|| how.label().to_owned(), |(_, w, _)| w),
            };
            format!("{}, {says}, {who}", s.label)
        }
        _ => {
            let mut all = format!("{who}, {}", how(line));
            for s in line.board.steps.iter().filter(|s| s.differs()) {
                let says = Differs::of(s).label();
                all.push_str(&format!("; {} {says}", s.label));
            }
            all
        }
    }
}
