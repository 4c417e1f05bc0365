//! Turns as a table: participants as rows, turns as columns, in each place what is done then. By
//! hand a place changes with another one of the same participant: dragged, by a menu, or by keys.

use egui::{
    Align2, CornerRadius, CursorIcon, DragAndDrop, Id, Key, Modifiers, Popup, PopupCloseBehavior,
    Rect, Response, Role, ScrollArea, Sense, Stroke, StrokeKind, Ui, Vec2, WidgetInfo, pos2, vec2,
};

use super::super::water::pin;
use super::TurnsState;
use crate::model::board::{Board, StepState};
use crate::model::club::Club;
use crate::model::edit::{Edit, TurnsEdit};
use crate::model::hand::Content;
use crate::model::ids::{ParticipantId, SlotId, StepRef, SymbolId};
use crate::model::people::{Figure, Participant};
use crate::model::session::Session;
use crate::model::turns::Turns;
use crate::plan::clock::Moment;
use crate::story::said;
use crate::ui::boards::held::{self, Held};
use crate::ui::desk::Desk;
use crate::ui::icons::{self, Icon};
use crate::ui::regions;
use crate::ui::theme;
use crate::ui::widgets::button::{Button, Weight};
use crate::ui::widgets::card::{Lie, plate, tile};
use crate::ui::widgets::form::dashed;
use crate::ui::widgets::{focus_ring, words};

/// Height of a row, and of the times above.
const ROW: f32 = 56.0;
const HEAD: f32 = 46.0;

/// A table to be shown.
pub struct Table<'a> {
    session: &'a Session,
    turns: &'a Turns,
    boards: &'a [&'a Board],
    times: &'a [(Moment, Moment)],
    /// Whether it can be changed by hand.
    hand: bool,
}

/// One place of it.
struct Cell {
    who: ParticipantId,
    turn: usize,
    rect: Rect,
    slot: Option<SlotId>,
    symbol: SymbolId,
    label: String,
    wet: bool,
    waits: bool,
    /// It stays in its turn when turns are worked out again.
    held: bool,
}

impl Cell {
    /// A station can be held, a row of waiting or an empty turn not.
    const fn can_be_held(&self) -> bool {
        self.slot.is_some() && !self.waits
    }
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
        let id = Id::unique(("turn-cell", self.hand, c.who, c.turn));
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

    fn when(&self, turn: usize) -> String {
        let times = self.times.get(turn);
        times.map_or_else(String::new, |(from, to)| format!(", {from} to {to}"))
    }

    /// Mouse and keys.
    fn act(
        &self,
        ui: &Ui,
        desk: &mut Desk<'_>,
        state: &mut TurnsState,
        cells: &[Cell],
        (i, r): (usize, &Response),
    ) {
        let c = &cells[i];
        if r.drag_started()
            && let Some(slot) = c.slot
        {
            Popup::close_all(ui.ctx());
            let content = Content {
                activity: None,
                symbol: c.symbol.clone(),
                label: c.label.clone(),
            };
            r.dnd_set_drag_payload(Held::Slot(slot, content));
            state.from = Some(c.who);
        }
        if r.clicked() || r.drag_started() {
            state.at = Some((c.who, c.turn));
            r.request_focus();
        }
        if !r.has_focus() {
            return;
        }
        state.at = Some((c.who, c.turn));
        regions::keep_arrows(ui, r.id);
        let n = self.times.len();
        if let Some(to) = regions::alt_arrows(ui, c.turn, n, 1) {
            self.move_to(desk, state, c, to);
        } else if let Some(to) = regions::arrows(ui, i, cells.len(), n) {
            let c = &cells[to];
            state.at = Some((c.who, c.turn));
            let id = Id::unique(("turn-cell", self.hand, c.who, c.turn));
            ui.memory_mut(|m| m.request_focus(id));
        } else if ui.input_mut(|i| i.consume_key(Modifiers::NONE, Key::H)) {
            self.hold(desk, state, c);
        }
    }

    /// Holds what stands there, or lets it go.
    fn hold(&self, desk: &mut Desk<'_>, state: &mut TurnsState, c: &Cell) {
        if let Some(slot) = c.slot.filter(|_| c.can_be_held()) {
            let edit = TurnsEdit::Hold(c.who, slot, !c.held);
            desk.edit(Edit::Turns(self.session.id, edit));
            state.at = Some((c.who, c.turn));
            state.focus = true;
        }
    }

    /// What a press can do: the turns to which it moves, and whether it is held.
    fn menu(&self, desk: &mut Desk<'_>, state: &mut TurnsState, c: &Cell, r: &Response) {
        if c.slot.is_none() {
            return;
        }
        let (mut to, mut hold) = (None, false);
        Popup::menu(r)
            .width(300.0)
            .close_behavior(PopupCloseBehavior::CloseOnClick)
            .accessible_name("Move to another turn, or hold")
            .show(|ui| {
                ui.spacing_mut().item_spacing.y = 2.0;
                for turn in (0..self.times.len()).filter(|t| *t != c.turn) {
                    let label = format!("Move to turn {}{}", turn + 1, self.when(turn));
                    let item = Button::new(("turn-move", c.who, c.turn, turn), &label);
                    let item = item.weight(Weight::Quiet).role(Role::MenuItem).left();
                    if item.width(ui.available_width()).show(ui).clicked() {
                        to = Some(turn);
                    }
                }
                if c.can_be_held() {
                    hold = hold_item(ui, c);
                }
            });
        if let Some(to) = to {
            self.move_to(desk, state, c, to);
        } else if hold {
            self.hold(desk, state, c);
        }
    }

    fn move_to(&self, desk: &mut Desk<'_>, state: &mut TurnsState, c: &Cell, to: usize) {
        if let Some(slot) = c.slot {
            let edit = TurnsEdit::Place(c.who, to, slot);
            desk.edit(Edit::Turns(self.session.id, edit));
            state.at = Some((c.who, to));
            state.focus = true;
        }
    }

    /// Whether letting go now would put what is held here.
    fn is_target(&self, ui: &Ui, state: &TurnsState, cells: &[Cell], c: &Cell) -> bool {
        let Some((held, at)) = held::in_hand(ui.ctx()).filter(|_| self.hand) else {
            return false;
        };
        let own = cells.iter().find(|x| x.who == c.who && is_held(x, &held));
        let other = own.is_some_and(|own| own.turn != c.turn) && !c.held;
        state.from == Some(c.who) && other && c.rect.contains(at)
    }

    fn drop_held(&self, ui: &Ui, desk: &mut Desk<'_>, state: &mut TurnsState, cells: &[Cell]) {
        let Some((held, at)) = held::in_hand(ui.ctx()) else {
            return;
        };
        let own = cells
            .iter()
            .find(|c| Some(c.who) == state.from && is_held(c, &held));
        let over = cells.iter().find(|c| c.rect.contains(at));
        let target = over.filter(|o| Some(o.who) == state.from);
        let says = match target {
            Some(c) if c.held && own.is_some_and(|own| own.turn != c.turn) => "held there",
            Some(_) => "change places",
            None => "only in its row",
        };
        held::ghost(ui, desk, Some(says));
        if !ui.input(|i| i.pointer.any_released()) {
            return;
        }
        DragAndDrop::clear_payload(ui.ctx());
        if let (Some(own), Some(target)) = (own, target)
            && own.turn != target.turn
        {
            self.move_to(desk, state, own, target.turn);
        }
        state.from = None;
    }
}

/// The item of the menu that holds a place, or lets it go.
fn hold_item(ui: &mut Ui, c: &Cell) -> bool {
    let label = match c.held {
        true => format!("Let it go from turn {}", c.turn + 1),
        false => format!("Hold in turn {}", c.turn + 1),
    };
    let tip = "What is held stays in its turn when turns are worked out again";
    let item = Button::new(("turn-hold", c.who, c.turn), &label).tip(tip);
    let item = item.weight(Weight::Quiet).role(Role::MenuItem).left();
    item.width(ui.available_width()).show(ui).clicked()
}

fn is_held(c: &Cell, held: &Held) -> bool {
    matches!(held, Held::Slot(slot, _) if c.slot == Some(*slot))
}

fn person<'a>(desk: &Desk<'a>, who: ParticipantId) -> Option<&'a Participant> {
    desk.view.club.participant(who).map(AsRef::as_ref)
}

fn figure(desk: &Desk<'_>, who: ParticipantId) -> Figure {
    person(desk, who).map_or_else(Figure::default, |p| p.figure)
}

/// Mark and name at the left of a row.
fn name(ui: &Ui, desk: &mut Desk<'_>, board: &Board, rect: Rect) {
    let Some(person) = person(desk, board.participant) else {
        return;
    };
    let t = theme::of(ui.ctx());
    let p = ui.painter();
    let mark = Rect::from_center_size(rect.left_center() + vec2(22.0, 0.0), Vec2::splat(40.0));
    plate(p, &t, mark);
    desk.pictures.mark(p, mark.shrink(7.0), &person.mark);
    let room = Rect::from_min_max(pos2(mark.right() + 8.0, rect.top()), rect.max);
    let left = Align2::LEFT_CENTER;
    words::line(p, room, left, &person.name, theme::bold(16.0), t.col.ink);
}

/// The card of a place: picture, words, and the wave of what is in the water.
fn paint(ui: &Ui, desk: &mut Desk<'_>, c: &Cell, figure: Figure, target: bool, over: bool) {
    let t = theme::of(ui.ctx());
    let p = ui.painter();
    let planned = c.slot.is_some() && !c.waits;
    let ink = if planned {
        tile(p, &t, c.rect, Lie::Flat);
        t.col.card_ink
    } else {
        dashed(ui, c.rect);
        t.col.ink
    };
    let corner = CornerRadius::same(theme::R_CARD);
    if over {
        let line = Stroke::new(2.0, t.col.ink);
        p.rect_stroke(c.rect, corner, line, StrokeKind::Inside);
    }
    if target {
        let line = Stroke::new(2.5, t.col.accent);
        icons::dashed_rect(p, c.rect, 12.0, line, 7.0, 5.0);
    }
    let mut room = c.rect.shrink2(vec2(8.0, 4.0));
    if c.slot.is_some() {
        let mid = pos2(room.left() + 20.0, room.center().y);
        let picture = Rect::from_center_size(mid, Vec2::splat(38.0));
        if c.waits {
            plate(p, &t, picture);
        }
        desk.pictures
            .symbol(p, picture.shrink(1.0), &c.symbol, figure);
        room.min.x = picture.right() + 6.0;
    }
    if c.wet {
        let at = pos2(room.right() - 10.0, room.center().y);
        icons::paint(p, Icon::Wave, icons::square(at, 20.0), ink);
        room.max.x -= 24.0;
    }
    let says = if c.waits {
        format!("waits: {}", c.label)
    } else {
        c.label.clone()
    };
    let font = if planned {
        theme::bold(15.0)
    } else {
        theme::regular(15.0)
    };
    let galley = words::lay(p, &says, font, ink, room.width(), 2);
    let top = room.center().y - galley.size().y / 2.0;
    p.galley(pos2(room.left(), top), galley, ink);
    if c.held {
        pin(p, &t, c.rect.right_top() + vec2(-12.0, 2.0));
    }
}
