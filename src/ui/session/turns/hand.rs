//! By hand a place of the table of turns changes with another one of the same participant, dragged,
//! by a menu or by keys, or is held where it is.

use egui::{
    DragAndDrop, EventFilter, Key, Modifiers, Popup, PopupCloseBehavior, Response, Role, Ui,
};

use super::TurnsState;
use super::cell::Cell;
use super::table::{Table, id_of};
use crate::model::edit::{Edit, TurnsEdit};
use crate::model::hand::Content;
use crate::ui::boards::held::{self, Held};
use crate::ui::desk::Desk;
use crate::ui::regions;
use crate::ui::widgets::button::{Button, Weight};

impl Table<'_> {
    /// Mouse and keys.
    pub(super) fn act(
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
        if Popup::is_id_open(ui.ctx(), Popup::default_response_id(r)) {
            // Arrows lead into the menu; Escape closes it, and the keyboard stays here.
            let filter = EventFilter {
                escape: true,
                ..Default::default()
            };
            return ui.memory_mut(|m| m.set_focus_lock_filter(r.id, filter));
        }
        regions::keep_arrows(ui, r.id);
        let n = self.times.len();
        if let Some(to) = regions::alt_arrows(ui, c.turn, n, 1) {
            self.move_to(desk, state, c, to);
        } else if let Some(to) = regions::arrows(ui, i, cells.len(), n) {
            let c = &cells[to];
            state.at = Some((c.who, c.turn));
            let id = id_of(self.hand, c);
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
    pub(super) fn menu(&self, desk: &mut Desk<'_>, state: &mut TurnsState, c: &Cell, r: &Response) {
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
    pub(super) fn is_target(&self, ui: &Ui, state: &TurnsState, cells: &[Cell], c: &Cell) -> bool {
        let Some((held, at)) = held::in_hand(ui.ctx()).filter(|_| self.hand) else {
            return false;
        };
        let own = cells.iter().find(|x| x.who == c.who && is_held(x, &held));
        let other = own.is_some_and(|own| own.turn != c.turn) && !c.held;
        state.from == Some(c.who) && other && c.rect.contains(at)
    }

    pub(super) fn drop_held(
        &self,
        ui: &Ui,
        desk: &mut Desk<'_>,
        state: &mut TurnsState,
        cells: &[Cell],
    ) {
        let Some((held, at)) = held::in_hand(ui.ctx()) else {
            return held::ghost(ui, desk, None);
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
        match (own, target) {
            (Some(own), Some(target)) if own.turn != target.turn => {
                self.move_to(desk, state, own, target.turn);
            }
            _ => held::goes_back(ui, &held, at),
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
