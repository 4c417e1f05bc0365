//! Turns as a table: participants as rows, turns as columns, in each place what is done then. What a
//! place looks like is in `cell`, how it is changed by hand in `hand`.

use egui::{Align2, CursorIcon, Id, Rect, Role, ScrollArea, Sense, Ui, WidgetInfo, pos2, vec2};

use super::TurnsState;
use super::cell::{Cell, figure, name, paint};
use crate::model::board::{Board, StepState};
use crate::model::club::Club;
use crate::model::ids::{ParticipantId, SlotId, StepRef, SymbolId};
use crate::model::session::Session;
use crate::model::turns::Turns;
use crate::plan::clock::Moment;
use crate::story::said;
use crate::ui::desk::Desk;
use crate::ui::regions;
use crate::ui::theme;
use crate::ui::widgets::{focus_ring, words};

/// Height of a row, and of the times above.
const ROW: f32 = 56.0;
const HEAD: f32 = 46.0;

/// A table to be shown.
pub struct Table<'a> {
    pub(super) session: &'a Session,
    turns: &'a Turns,
    boards: &'a [&'a Board],
    pub(super) times: &'a [(Moment, Moment)],
    /// Whether it can be changed by hand.
    pub(super) hand: bool,
}

impl<'a> Table<'a> {
    /// Of a session, with the boards of all who come and the times of the turns.
    pub const fn new(
        session: &'a Session,
        turns: &'a Turns,
        boards: &'a [&'a Board],
        times: &'a [(Moment, Moment)],
        hand: bool,
    ) -> Self {
        Self {
            session,
            turns,
            boards,
            times,
            hand,
        }
    }

    /// The widths of the names and of a turn in so much room.
    fn widths(&self, room: f32) -> (f32, f32) {
        let n = self.times.len().max(1) as f32;
        let names = if room < 900.0 { 128.0 } else { 176.0 };
        let column = ((room - names) / n).clamp(124.0, 224.0).floor();
        (names, column)
    }

    /// How wide it is in so much room.
    pub fn width(&self, room: f32) -> f32 {
        let (names, column) = self.widths(room);
        names + column * self.times.len().max(1) as f32
    }

    /// Shows it.
    pub fn show(&self, ui: &mut Ui, desk: &mut Desk<'_>, state: &mut TurnsState) {
        let n = self.times.len().max(1);
        let (names, column) = self.widths(ui.available_width());
        self.settle(state);
        ScrollArea::horizontal()
            .id_salt(("turns-table", self.hand))
            .auto_shrink([false, true])
            .show(ui, |ui| {
                let height = HEAD + ROW * self.boards.len() as f32;
                let size = vec2(names + column * n as f32, height + 4.0);
                let (_, place) = ui.allocate_space(size);
                self.head(ui, place, names, column);
                let cells = self.cells(desk.view.club, place, names, column);
                for (i, board) in self.boards.iter().enumerate() {
                    let top = place.top() + HEAD + i as f32 * ROW;
                    let rect = Rect::from_min_size(pos2(place.left(), top), vec2(names, ROW));
                    name(ui, desk, board, rect);
                }
                for i in 0..cells.len() {
                    self.cell(ui, desk, state, &cells, i);
                }
                if self.hand {
                    self.drop_held(ui, desk, state, &cells);
                }
            });
    }

    /// The keyboard's place is always one that is there.
    fn settle(&self, state: &mut TurnsState) {
        let first = self.boards.first().map(|b| (b.participant, 0));
        let there = |(who, turn): &(ParticipantId, usize)| {
            let mut boards = self.boards.iter();
            boards.any(|b| b.participant == *who) && *turn < self.times.len()
        };
        state.at = state.at.filter(there).or(first);
    }

    fn head(&self, ui: &Ui, place: Rect, names: f32, column: f32) {
        let t = theme::of(ui.ctx());
        let p = ui.painter();
        for (i, (from, to)) in self.times.iter().enumerate() {
            let left = place.left() + names + i as f32 * column + 8.0;
            let at = pos2(left, place.top());
            let upper = Rect::from_min_size(at, vec2(column - 10.0, 24.0));
            let lower = upper.translate(vec2(0.0, 20.0));
            let (l, col) = (Align2::LEFT_CENTER, &t.col);
            let turn = format!("Turn {}", i + 1);
            words::line(p, upper, l, &turn, theme::bold(16.0), col.ink);
            let times = format!("{from}–{to}");
            words::line(p, lower, l, &times, theme::regular(15.0), col.soft);
        }
    }

    fn cells(&self, club: &Club, place: Rect, names: f32, column: f32) -> Vec<Cell> {
        let mut all = Vec::new();
        for (i, board) in self.boards.iter().enumerate() {
            for (turn, slot) in self.turns.of(board.participant).into_iter().enumerate() {
                let left = place.left() + names + turn as f32 * column;
                let at = pos2(left, place.top() + HEAD + i as f32 * ROW);
                let rect = Rect::from_min_size(at, vec2(column, ROW)).shrink2(vec2(4.0, 3.0));
                let (symbol, label, wet) = self.face(club, board, slot);
                all.push(Cell {
                    who: board.participant,
                    turn,
                    rect,
                    slot,
                    symbol,
                    label,
                    wet,
                    waits: slot.is_some_and(|s| self.turns.waits.contains(&s)),
                    held: slot.is_some_and(|s| self.turns.holds(board.participant, s)),
                });
            }
        }
        all
    }

    /// What is shown at a row: what the participant's board has there, or else the timetable.
    fn face(&self, club: &Club, board: &Board, slot: Option<SlotId>) -> (SymbolId, String, bool) {
        let Some(slot) = slot else {
            return (SymbolId::new(""), "Nothing planned".to_owned(), false);
        };
        let mut steps = board.steps.iter();
        let own = steps.find(|s| {
            let here = matches!(s.at, StepRef::Slot(id) | StepRef::Instead(id) if id == slot);
            here && s.state != StepState::NotToday
        });
        if let Some(step) = own {
            let options = step.options.iter().filter_map(|o| o.activity);
            let wet = step.activity.into_iter().chain(options);
            let wet = wet.into_iter().any(|a| club.in_water(a));
            return (step.symbol.clone(), step.label.clone(), wet);
        }
        let row = self.session.slot(slot);
        match row.and_then(|s| club.activity(s.activity)) {
            Some(a) => (a.symbol.clone(), a.label.clone(), false),
            None => (SymbolId::new(""), String::new(), false),
        }
    }

    fn cell(
        &self,
        ui: &mut Ui,
        desk: &mut Desk<'_>,
        state: &mut TurnsState,
        cells: &[Cell],
        i: usize,
    ) {
        let c = &cells[i];
        let id = id_of(self.hand, c);
        let current = state.at == Some((c.who, c.turn));
        let sense = match self.hand {
            true => regions::one_stop(ui, id, current, c.slot.is_some()),
            false => Sense::hover(),
        };
        let r = ui.interact(c.rect, id, sense);
        let (role, spoken) = (self.role(), self.spoken(desk.view.club, c));
        r.widget_info(|| WidgetInfo::labeled(role, true, &spoken));
        let target = self.is_target(ui, state, cells, c);
        paint(
            ui,
            desk,
            c,
            figure(desk, c.who),
            target,
            r.hovered() && self.hand,
        );
        if !self.hand {
            return;
        }
        if current && std::mem::take(&mut state.focus) {
            r.request_focus();
        }
        focus_ring(ui, &r, c.rect, theme::R_CARD);
        self.act(ui, desk, state, cells, (i, &r));
        self.menu(desk, state, c, &r);
        r.on_hover_cursor(CursorIcon::Grab);
    }

    const fn role(&self) -> Role {
        if self.hand { Role::Button } else { Role::Label }
    }

    /// What a screen reader says.
    fn spoken(&self, club: &Club, c: &Cell) -> String {
        let name = said::participant(club, c.who);
        let wet = if c.wet { ", in the water" } else { "" };
        let waits = if c.waits { ", waiting" } else { "" };
        let held = if c.held { ", held in this turn" } else { "" };
        format!(
            "{name}, turn {}{}: {}{wet}{waits}{held}",
            c.turn + 1,
            self.when(c.turn),
            c.label
        )
    }

    pub(super) fn when(&self, turn: usize) -> String {
        let times = self.times.get(turn);
        times.map_or_else(String::new, |(from, to)| format!(", {from} to {to}"))
    }
}

/// A place's name to the toolkit.
pub(super) fn id_of(hand: bool, c: &Cell) -> Id {
    Id::unique(("turn-cell", hand, c.who, c.turn))
}
