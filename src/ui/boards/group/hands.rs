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
use crate::ui::boards::{BoardsState, several, take_off};
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
        let board = (who, line.board);
        let steps = state.several.taken(desk.view, board, s.at);
        r.dnd_set_drag_payload(Held::Steps(who, steps, content));
        choose(desk, who, c.at);
    }
    if r.clicked() {
        let at = click(ui, desk, state, line, c);
        state.table.at = Some((who, at));
        choose(desk, who, at);
        ui.memory_mut(|m| m.request_focus(row::id(who, at)));
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
    // Before the arrows alone, which would use these up.
    if shifts(ui, desk, state, line, c) || reaches(ui, desk, state, line, c) {
        return;
    }
    if let Some(to) = arrows(ui, table, i, cells, c) {
        state.several.alone();
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

/// The place that a click leads to: with Ctrl or Shift steps of one row are chosen together.
fn click(ui: &Ui, desk: &Desk<'_>, state: &mut BoardsState, line: Line<'_>, c: &Cell<'_>) -> At {
    let here = desk
        .view
        .participant
        .is_some_and(|p| p.id == line.person.id);
    match c.at {
        At::Step(step) if here => {
            let chosen = desk.view.step;
            At::Step(state.several.click(ui, line.board, chosen, step))
        }
        at => {
            state.several.alone();
            at
        }
    }
}

/// With Alt an arrow moves what is chosen; whether it did.
fn shifts(ui: &Ui, desk: &mut Desk<'_>, state: &BoardsState, line: Line<'_>, c: &Cell<'_>) -> bool {
    let place = c
        .step
        .and_then(|s| Some((s.at, line.board.position(s.at)?)));
    let Some((step, at)) = place else {
        return false;
    };
    let Some(to) = regions::alt_arrows(ui, at, line.board.steps.len(), 1) else {
        return false;
    };
    let board = (line.person.id, line.board);
    let all = state.several.with(desk.view, board, step);
    several::shift(desk, board, &all, to as isize - at as isize);
    true
}

/// With Shift an arrow chooses the next step of the row too, with Ctrl and A all of them are chosen,
/// with Escape one alone; whether it was one of these keys.
fn reaches(
    ui: &Ui,
    desk: &mut Desk<'_>,
    state: &mut BoardsState,
    line: Line<'_>,
    c: &Cell<'_>,
) -> bool {
    let At::Step(step) = c.at else { return false };
    if ui.input_mut(|i| i.consume_key(Modifiers::COMMAND, Key::A)) {
        state.several.choose_all(line.board);
        return true;
    }
    let pressed = |key| ui.input_mut(|i| i.consume_key(Modifiers::SHIFT, key));
    let (back, on) = (pressed(Key::ArrowLeft), pressed(Key::ArrowRight));
    let at = line.board.position(step);
    let next = at.and_then(|at| match (back, on) {
        (true, false) => line.board.steps.get(at.checked_sub(1)?),
        (false, true) => line.board.steps.get(at + 1),
        _ => None,
    });
    if let Some(next) = next {
        let who = line.person.id;
        state.several.reach(line.board, Some(step), next.at);
        state.table.at = Some((who, At::Step(next.at)));
        choose(desk, who, At::Step(next.at));
        ui.memory_mut(|m| m.request_focus(row::id(who, At::Step(next.at))));
    }
    back || on || state.several.escaped(ui)
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
    if pressed(Key::Delete) {
        let all = state.several.with(desk.view, (who, line.board), step.at);
        state.several.alone();
        if matches!(step.at, StepRef::Own(_) | StepRef::Instead(_)) {
            let at = cells.iter().position(|x| x.at == c.at).unwrap_or(1);
            let before = cells[at.saturating_sub(1)].at;
            state.table.at = Some((who, before));
            ui.memory_mut(|m| m.request_focus(row::id(who, before)));
        }
        take_off(desk, who, line.board, &all);
    }
    if step.state == StepState::NotToday && pressed(Key::T) {
        desk.board(who, BoardEdit::DoToday(step.at));
    }
    if pressed(Key::Backspace) {
        let all = state.several.with(desk.view, (who, line.board), step.at);
        several::restore(desk, who, &all);
    }
    if pressed(Key::R) {
        state.swap = Some(step.at);
        state.tray.focus_search = true;
    }
}
