//! One row: the name, then every step under its row of the timetable, own steps on the line between.

use egui::{
    CornerRadius, CursorIcon, Id, Rect, Role, Stroke, StrokeKind, Ui, Vec2, WidgetInfo, pos2, vec2,
};

use super::drop::Hit;
use super::places::{Cell, cells};
use super::{At, ROW, Table, cell, hands, name};
use crate::model::board::{Step, StepState};
use crate::model::ids::{ParticipantId, StepRef};
use crate::ui::boards::sort::Line;
use crate::ui::boards::{BoardsState, card};
use crate::ui::desk::Desk;
use crate::ui::regions;
use crate::ui::strand::paint;
use crate::ui::theme;
use crate::ui::widgets::focus_ring;

/// The name of a place to the toolkit.
pub fn id(who: ParticipantId, at: At) -> Id {
    Id::unique(("group-cell", who, at))
}

/// Shows a row if it is in sight or has the keyboard; gives the place under what is in the hand.
pub fn show<'a>(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    state: &mut BoardsState,
    table: &Table<'a>,
    i: usize,
) -> Option<Hit<'a>> {
    let line = table.lines[i];
    let who = line.person.id;
    let top = table.origin.y + i as f32 * ROW;
    let rect = Rect::from_min_max(
        pos2(table.origin.x, top),
        pos2(table.end() + 24.0, top + ROW),
    );
    let current = state.table.at.filter(|(w, _)| *w == who).map(|(_, at)| at);
    let seen = ui.is_rect_visible(rect);
    if !seen && current.is_none() {
        return None;
    }
    let cells = cells(table, line, rect);
    let current = current.map(|at| {
        let there = cells.iter().any(|c| c.at == at);
        if there { at } else { At::Name }
    });
    if let Some(at) = current {
        state.table.at = Some((who, at));
    }
    if seen {
        ground(ui, desk, table, line, rect);
    }
    let mut hit = None;
    // Large cards lie over their neighbours, and the name over all that is scrolled below it.
    for pass in [false, true] {
        for c in cells.iter().filter(|c| c.at != At::Name) {
            let large = c.step.is_some_and(Step::differs);
            if large == pass {
                place(ui, desk, state, table, (i, line), &cells, c, current);
                if under(table, c.rect) {
                    hit = Some(Hit { line, at: c.at });
                }
            }
        }
    }
    if let Some(name) = cells.iter().find(|c| c.at == At::Name) {
        place(ui, desk, state, table, (i, line), &cells, name, current);
        if under(table, name.rect) {
            hit = Some(Hit { line, at: At::Name });
        }
    }
    if let (Some(hit), true) = (&hit, table.held.is_some()) {
        let target = cells.iter().find(|c| c.at == hit.at && c.at != At::Name);
        if let Some(c) = target {
            let col = theme::of(ui.ctx()).col;
            let line = Stroke::new(2.5, col.accent);
            let r = CornerRadius::same(theme::R_CARD);
            ui.painter()
                .rect_stroke(c.rect, r, line, StrokeKind::Outside);
        }
    }
    hit
}

fn under(table: &Table<'_>, rect: Rect) -> bool {
    table.held.is_some()
        && table
            .target
            .is_some_and(|at| rect.contains(at) && table.body.contains(at))
}

/// The panel under the chosen row, and the thread its cards hang on.
fn ground(ui: &Ui, desk: &Desk<'_>, table: &Table<'_>, line: Line<'_>, rect: Rect) {
    let t = theme::of(ui.ctx());
    let p = ui.painter();
    let chosen = desk
        .view
        .participant
        .is_some_and(|p| p.id == line.person.id);
    if chosen {
        let edge = Stroke::new(1.2, t.col.rule);
        let r = CornerRadius::same(theme::R_CARD);
        let rect = rect.shrink2(vec2(2.0, 1.0));
        p.rect(rect, r, t.col.panel, edge, StrokeKind::Inside);
    }
    let left = pos2(table.origin.x + table.names + 2.0, rect.center().y);
    let right = pos2(table.end() + 4.0, rect.center().y);
    paint::line(p, &t, &[left, right], 3.5);
    paint::ring(p, &t.col, left, 5.0, t.col.ground);
    p.circle_filled(right, 5.0, t.col.rope);
}

#[expect(
    clippy::too_many_arguments,
    reason = "one place of one row of one table"
)]
fn place(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    state: &mut BoardsState,
    table: &Table<'_>,
    (i, line): (usize, Line<'_>),
    cells: &[Cell<'_>],
    c: &Cell<'_>,
    current: Option<At>,
) {
    let who = line.person.id;
    let seen = ui.is_rect_visible(c.rect);
    let differs_only = state.table.differs_only;
    let plain = c.step.is_some_and(|s| !s.differs());
    if current != Some(c.at) && (!seen || (differs_only && plain)) {
        return;
    }
    let id = id(who, c.at);
    let drag = c.step.is_some();
    let sense = regions::one_stop(ui, id, current == Some(c.at), drag);
    let r = ui.interact(c.rect, id, sense);
    r.widget_info(|| WidgetInfo::labeled(Role::Button, true, name::spoken(desk, table, line, c)));
    let p = ui.painter().clone();
    if seen {
        match c.at {
            At::Name => name::paint(&p, desk, line, c.rect, r.hovered()),
            At::Out(_) => cell::gap(&p, c.rect),
            At::Step(_) => {
                if let Some(s) = c.step.filter(|_| !(differs_only && plain)) {
                    cell::step(&p, desk, c.rect, s, line.person);
                }
            }
        }
        if asked_here(table, who, c.at) {
            cell::question(&p, c.rect);
        }
        let round = if plain {
            Rect::from_center_size(c.rect.center(), Vec2::splat(44.0))
        } else {
            c.rect
        };
        let here = desk.view.participant.is_some_and(|p| p.id == who);
        let chosen = |s: StepRef| desk.view.step == Some(s) || state.several.has(s);
        if here && matches!(c.at, At::Step(s) if chosen(s)) {
            let edge = Stroke::new(2.5, theme::of(ui.ctx()).col.accent);
            let r = CornerRadius::same(theme::R_CARD);
            p.rect_stroke(round, r, edge, StrokeKind::Inside);
        }
        focus_ring(ui, &r, round, theme::R_CARD);
    }
    hands::act(ui, desk, state, table, (i, line), cells, c, &r);
    let tip = tip(c);
    let r = r.on_hover_cursor(if drag {
        CursorIcon::Grab
    } else {
        CursorIcon::PointingHand
    });
    if !tip.is_empty() && table.held.is_none() {
        r.on_hover_text(tip);
    }
}

/// Whether something is asked about the row of the timetable a place stands for.
fn asked_here(table: &Table<'_>, who: ParticipantId, at: At) -> bool {
    let At::Step(StepRef::Slot(slot)) = at else {
        return false;
    };
    let hand = table.session.hand_of(who);
    hand.is_some_and(|h| h.asked.iter().any(|a| a.slot() == Some(slot)))
}

fn tip(c: &Cell<'_>) -> String {
    match (c.at, c.step) {
        (At::Out(_), _) => "Left out, as always. G: with the group today".to_owned(),
        (_, Some(s)) => {
            let says = card::says(s).map_or_else(String::new, |(_, w, _)| format!(", {w}"));
            let off = if s.state == StepState::NotToday {
                ", not today"
            } else {
                ""
            };
            format!("{}{says}{off}", s.label)
        }
        _ => String::new(),
    }
}
