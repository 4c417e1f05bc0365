//! One row: the name, then every step under its row of the timetable, own steps on the line between.

use egui::{
    Align2, CornerRadius, CursorIcon, Id, Key, Modifiers, Painter, Rect, Response, Role, Stroke,
    StrokeKind, Ui, Vec2, WidgetInfo, pos2, vec2,
};

use super::{At, Hit, ROW, Table, cell};
use crate::model::board::{Step, StepState};
use crate::model::edit::BoardEdit;
use crate::model::hand::Content;
use crate::model::ids::{ParticipantId, SlotId, StepRef};
use crate::ui::actions::Action;
use crate::ui::boards::held::Held;
use crate::ui::boards::sort::{Differs, Line};
use crate::ui::boards::who::differs;
use crate::ui::boards::{BoardsState, card, take_off};
use crate::ui::desk::Desk;
use crate::ui::regions;
use crate::ui::strand::paint;
use crate::ui::theme;
use crate::ui::widgets::card::plate;
use crate::ui::widgets::{focus_ring, words};
use crate::workbench::command::Command;

/// The name of a place to the toolkit.
pub fn id(who: ParticipantId, at: At) -> Id {
    Id::unique(("group-cell", who, at))
}

/// A place with where it is.
struct Cell<'a> {
    at: At,
    step: Option<&'a Step>,
    rect: Rect,
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

/// Every place of a row from left to right.
fn cells<'a>(table: &Table<'a>, line: Line<'a>, row: Rect) -> Vec<Cell<'a>> {
    let column = |id: SlotId| table.session.timetable.iter().position(|s| s.id == id);
    let y = row.center().y;
    let wide = (table.column - 4.0).min(112.0);
    let in_column =
        |c: usize, width: f32| Rect::from_center_size(pos2(table.middle(c), y), vec2(width, 54.0));
    let board = line.board;
    let instead_of = |id: SlotId| board.position(StepRef::Instead(id)).is_some();
    let name = Rect::from_min_size(
        pos2(table.body.left(), row.top() + 2.0),
        vec2(table.names - 6.0, ROW - 4.0),
    );
    let mut all = Vec::with_capacity(board.steps.len() + board.left_out.len() + 1);
    let mut edge = table.origin.x + table.names + 8.0;
    let mut crowded = false;
    for s in &board.steps {
        let rect = match s.at {
            StepRef::Slot(id) => column(id).map(|c| {
                edge = table.middle(c) + table.column / 2.0;
                let all = in_column(c, wide);
                // What comes instead shares the column.
                if instead_of(id) {
                    all.with_max_x(all.left() + 36.0)
                } else {
                    all
                }
            }),
            StepRef::Instead(id) => column(id).map(|c| {
                edge = table.middle(c) + table.column / 2.0;
                let all = in_column(c, wide);
                all.with_min_x(all.left() + 38.0)
            }),
            StepRef::Own(_) | StepRef::Standing(..) => None,
        };
        let rect = rect.unwrap_or_else(|| {
            let x = edge + if crowded { 9.0 } else { 0.0 };
            edge += 30.0;
            Rect::from_center_size(pos2(x, y), vec2(48.0, 54.0))
        });
        crowded = s.differs();
        all.push(Cell {
            at: At::Step(s.at),
            step: Some(s),
            rect,
        });
    }
    for id in &board.left_out {
        if let Some(c) = column(*id) {
            all.push(Cell {
                at: At::Out(*id),
                step: None,
                rect: in_column(c, wide.min(88.0)),
            });
        }
    }
    all.sort_by(|a, b| a.rect.center().x.total_cmp(&b.rect.center().x));
    all.insert(
        0,
        Cell {
            at: At::Name,
            step: None,
            rect: name,
        },
    );
    all
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
    let plain = c.step.is_some_and(|s| Differs::of(s) == Differs::No);
    if current != Some(c.at) && (!seen || (differs_only && plain)) {
        return;
    }
    let id = id(who, c.at);
    let drag = c.step.is_some();
    let sense = regions::one_stop(ui, id, current == Some(c.at), drag);
    let r = ui.interact(c.rect, id, sense);
    r.widget_info(|| WidgetInfo::labeled(Role::Button, true, spoken(desk, table, line, c)));
    let p = ui.painter().clone();
    if seen {
        match c.at {
            At::Name => name(&p, desk, table, line, c.rect, r.hovered()),
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
        let chosen = matches!(c.at, At::Step(s) if desk.view.step == Some(s));
        if chosen && desk.view.participant.is_some_and(|p| p.id == who) {
            let edge = Stroke::new(2.5, theme::of(ui.ctx()).col.accent);
            let r = CornerRadius::same(theme::R_CARD);
            p.rect_stroke(round, r, edge, StrokeKind::Inside);
        }
        focus_ring(ui, &r, round, theme::R_CARD);
    }
    act(ui, desk, state, table, (i, line), cells, c, &r);
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

#[expect(
    clippy::too_many_arguments,
    reason = "one place of one row of one table"
)]
fn act(
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
        r.dnd_set_drag_payload(Held::Step(s.at, content));
        state.table.from = Some(who);
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
        ui.memory_mut(|m| m.request_focus(id(to.0, to.1)));
        return;
    }
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
    let next = self::cells(table, line, row);
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
        desk.board(who, BoardEdit::Move(step.at, to));
    }
    if pressed(Key::Delete) {
        if matches!(step.at, StepRef::Own(_) | StepRef::Instead(_)) {
            let at = cells.iter().position(|x| x.at == c.at).unwrap_or(1);
            let before = cells[at.saturating_sub(1)].at;
            state.table.at = Some((who, before));
            ui.memory_mut(|m| m.request_focus(id(who, before)));
        }
        take_off(desk, who, line.board, step.at);
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

fn name(
    p: &Painter,
    desk: &mut Desk<'_>,
    table: &Table<'_>,
    line: Line<'_>,
    rect: Rect,
    over: bool,
) {
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
    let _ = table;
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
fn spoken(desk: &Desk<'_>, table: &Table<'_>, line: Line<'_>, c: &Cell<'_>) -> String {
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
