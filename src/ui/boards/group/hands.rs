//! What mouse and keys do to a place of the table: choose, drag, go on, change a step as on one board.

use egui::{Key, Modifiers, Rect, Response, Ui, vec2};

use super::places::{self, Cell};
use super::{At, ROW, Table, row};
use crate::model::board::StepState;
use crate::model::edit::BoardEdit;
use crate::model::hand::Content;
use crate::model::ids::{ParticipantId, StepRef};
use crate::ui::actions::Action;
use crate::ui::boards::held::Held;
use crate::ui::boards::sort::Line;
use crate::ui::boards::{BoardsState, take_off};
use crate::ui::desk::Desk;
use crate::ui::regions;
use crate::workbench::command::Command;

/// Does what was done to a place.
#[expect(
    clippy::too_many_arguments,
    reason = "one place of one row of one table"
)]
pub fn act(
    ui: &Ui,
    desk: &mut Desk<'_>,
    state: &mut BoardsState,
    table: &Table<'_>,
    (i, line): (usize, Line<'_>),
    cells: &[Cell<'_>],
    c: &Cell<'_>,
    r: &Response,
) {
    let who = line.person.id;
    if let (true, Some(s)) = (r.drag_started(), c.step) {
        let content = Content {
            activity: s.activity,
            symbol: s.symbol.clone(),
            label: s.label.clone(),
        };
        r.dnd_set_drag_payload(Held::Steps(who, vec![s.at], content));
        choose(desk, who, c.at);
    }
    if r.clicked() {
        state.table.at = Some((who, c.at));
        choose(desk, who, c.at);
        r.request_focus();
    }
    if r.double_clicked() || (r.clicked() && c.at == At::Name) {
        desk.actions.push(Action::Group);
        return;
    }
    if !r.has_focus() {
        return;
    }
    state.table.at = Some((who, c.at));
    let step = match c.at {
        At::Step(s) => Some(s),
        At::Name | At::Out(_) => None,
    };
    if desk.view.participant.is_none_or(|p| p.id != who) || desk.view.step != step {
        choose(desk, who, c.at);
    }
    regions::keep_arrows(ui, r.id);
    if let Some(to) = arrows(ui, table, i, cells, c) {
        state.table.at = Some(to);
        ui.memory_mut(|m| m.request_focus(row::id(to.0, to.1)));
        return;
    }
    let at = c.step.and_then(|s| line.board.position(s.at));
    let at = at.unwrap_or(line.board.steps.len());
    let board = (who, line.board);
    state.several.clipboard(ui, desk, board, at);
    keys(ui, desk, state, line, cells, c);
}

fn choose(desk: &mut Desk<'_>, who: ParticipantId, at: At) {
    desk.ask(Command::ChooseParticipant(who));
    desk.ask(Command::ChooseStep(match at {
        At::Step(s) => Some(s),
        At::Name | At::Out(_) => None,
    }));
}

/// Where an arrow leads: along the row, or to the nearest place of the row above or below.
fn arrows(
    ui: &Ui,
    table: &Table<'_>,
    i: usize,
    cells: &[Cell<'_>],
    c: &Cell<'_>,
) -> Option<(ParticipantId, At)> {
    let pressed = |key| ui.input_mut(|i| i.consume_key(Modifiers::NONE, key));
    let at = cells.iter().position(|x| x.at == c.at)?;
    let last = table.lines.len().checked_sub(1)?;
    let here = table.lines[i].person.id;
    let along = |to: usize| Some((here, cells.get(to)?.at));
    if pressed(Key::ArrowLeft) {
        return along(at.checked_sub(1)?);
    } else if pressed(Key::ArrowRight) {
        return along(at + 1);
    } else if pressed(Key::Home) {
        return along(0);
    } else if pressed(Key::End) {
        return along(cells.len() - 1);
    }
    let to = if pressed(Key::ArrowUp) {
        i.saturating_sub(1)
    } else if pressed(Key::ArrowDown) {
        (i + 1).min(last)
    } else if pressed(Key::PageUp) {
        i.saturating_sub(8)
    } else if pressed(Key::PageDown) {
        (i + 8).min(last)
    } else {
        return None;
    };
    if to == i {
        return None;
    }
    let line = table.lines[to];
    if c.at == At::Name {
        return Some((line.person.id, At::Name));
    }
    let x = c.rect.center().x;
    let row = Rect::from_min_size(table.origin, vec2(table.names, ROW));
    let away = |o: &Cell<'_>| (o.rect.center().x - x).abs();
    let next = places::cells(table, line, row);
    let near = next
        .iter()
        .filter(|o| o.at != At::Name)
        .min_by(|a, b| away(a).total_cmp(&away(b)));
    Some((line.person.id, near.map_or(At::Name, |o| o.at)))
}

/// The keys of one board, on the place that has the keyboard.
fn keys(
    ui: &Ui,
    desk: &mut Desk<'_>,
    state: &mut BoardsState,
    line: Line<'_>,
    cells: &[Cell<'_>],
    c: &Cell<'_>,
) {
    let who = line.person.id;
    let pressed = |key| ui.input_mut(|i| i.consume_key(Modifiers::NONE, key));
    if pressed(Key::Enter) {
        state.focus_step = c.step.is_some();
        desk.actions.push(Action::Group);
        return;
    }
    if let At::Out(slot) = c.at {
        if pressed(Key::G) {
            desk.board(who, BoardEdit::WithGroup(slot, true));
            state.table.at = Some((who, At::Step(StepRef::Slot(slot))));
            state.focus_step = true;
        }
        return;
    }
    let Some(step) = c.step else { return };
    let n = line.board.steps.len();
    if let Some(at) = line.board.position(step.at)
        && let Some(to) = regions::alt_arrows(ui, at, n, 1)
    {
        desk.board(who, BoardEdit::Move(vec![step.at], to));
    }
    if pressed(Key::Delete) {
        if matches!(step.at, StepRef::Own(_) | StepRef::Instead(_)) {
            let at = cells.iter().position(|x| x.at == c.at).unwrap_or(1);
            let before = cells[at.saturating_sub(1)].at;
            state.table.at = Some((who, before));
            ui.memory_mut(|m| m.request_focus(row::id(who, before)));
        }
        take_off(desk, who, line.board, &[step.at]);
    }
    if step.state == StepState::NotToday && pressed(Key::T) {
        desk.board(who, BoardEdit::DoToday(step.at));
    }
    if pressed(Key::Backspace) && !matches!(step.at, StepRef::Own(_)) {
        desk.board(who, BoardEdit::Restore(step.at));
    }
    if pressed(Key::R) {
        state.swap = Some(step.at);
        state.tray.focus_search = true;
    }
}
