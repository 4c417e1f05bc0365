//! What mouse and keys do to a card on the strand, and where what is in the hand is let go.

use egui::{DragAndDrop, Key, Modifiers, Rect, Response, Ui};

use super::hangs::Hangs;
use super::{Strip, card_id};
use crate::model::board::{By, Step, StepState};
use crate::model::edit::BoardEdit;
use crate::model::hand::Content;
use crate::model::ids::StepRef;
use crate::ui::boards::held::Held;
use crate::ui::boards::{BoardsState, take_off};
use crate::ui::desk::Desk;
use crate::ui::photo;
use crate::ui::regions;
use crate::workbench::command::Command;

impl Strip<'_> {
    /// Does what was done to a card.
    pub fn act(
        &self,
        ui: &Ui,
        desk: &mut Desk<'_>,
        state: &mut BoardsState,
        r: &Response,
        hangs: &Hangs<'_>,
    ) {
        let step = hangs.step;
        if r.drag_started() {
            let content = Content {
                activity: step.activity,
                symbol: step.symbol.clone(),
                label: step.label.clone(),
            };
            r.dnd_set_drag_payload(Held::Step(step.at, content));
            desk.ask(Command::ChooseStep(Some(step.at)));
        }
        if r.clicked() {
            desk.ask(Command::ChooseStep(Some(step.at)));
            r.request_focus();
        }
        if r.double_clicked() {
            state.relabel = Some(step.at);
        }
        if r.has_focus() {
            regions::keep_arrows(ui, r.id);
            self.keys(ui, desk, state, step, hangs.per_row);
        }
    }

    /// Keys on the card that has the keyboard.
    fn keys(
        &self,
        ui: &Ui,
        desk: &mut Desk<'_>,
        state: &mut BoardsState,
        step: &Step,
        per_row: usize,
    ) {
        let (who, n) = (self.person.id, self.board.steps.len());
        let Some(at) = self.board.position(step.at) else {
            return;
        };
        if desk.view.step != Some(step.at) {
            desk.ask(Command::ChooseStep(Some(step.at)));
        }
        if let Some(to) = regions::alt_arrows(ui, at, n, per_row) {
            desk.board(who, BoardEdit::Move(step.at, to));
        }
        if let Some(to) = regions::arrows(ui, at, n, per_row) {
            let next = self.board.steps[to].at;
            desk.ask(Command::ChooseStep(Some(next)));
            ui.memory_mut(|m| m.request_focus(card_id(who, next)));
        }
        let pressed = |key| ui.input_mut(|i| i.consume_key(Modifiers::NONE, key));
        if pressed(Key::Delete) {
            let next = self
                .board
                .steps
                .get(at + 1)
                .or_else(|| at.checked_sub(1).map(|b| &self.board.steps[b]));
            if let (StepRef::Own(_), Some(next)) = (step.at, next) {
                desk.ask(Command::ChooseStep(Some(next.at)));
                ui.memory_mut(|m| m.request_focus(card_id(who, next.at)));
            }
            take_off(desk, who, self.board, step.at);
        }
        let off = step.state == StepState::NotToday;
        if off && pressed(Key::T) {
            desk.board(who, BoardEdit::DoToday(step.at));
        }
        if off && matches!(step.at, StepRef::Slot(_)) && pressed(Key::I) {
            state.begin_instead(step.at);
        }
        if !off && pressed(Key::C) {
            state.begin_choice(step.at);
        }
        if pressed(Key::Backspace) && !matches!(step.at, StepRef::Own(_)) {
            desk.board(who, BoardEdit::Restore(step.at));
        }
        if let StepRef::Slot(slot) = step.at
            && pressed(Key::G)
        {
            let hand = desk.view.session.and_then(|s| s.hand_of(who));
            let with = hand.is_some_and(|h| h.with_group.contains(&slot));
            if with || step.by == By::Standing {
                desk.board(who, BoardEdit::WithGroup(slot, !with));
            }
        }
        if pressed(Key::F2) {
            state.relabel = Some(step.at);
        }
        if pressed(Key::P) {
            desk.ask(Command::AskPictures(photo::purpose(desk.view)));
        }
        if pressed(Key::R) {
            state.swap = Some(step.at);
            state.tray.focus_search = true;
        }
    }

    /// Lets go of what is in the hand.
    pub fn drop(&self, ui: &Ui, desk: &mut Desk<'_>, gap: Option<usize>, rect: Rect) {
        if !ui.input(|i| i.pointer.any_released()) {
            return;
        }
        let Some((held, at)) = self.hand.clone() else {
            return;
        };
        DragAndDrop::clear_payload(ui.ctx());
        let who = self.person.id;
        if !rect.contains(at) {
            if let Held::Step(step, _) = held.as_ref() {
                take_off(desk, who, self.board, *step);
            }
            return;
        }
        let under = |s: &&Step| {
            ui.ctx()
                .read_response(card_id(who, s.at))
                .is_some_and(|r| r.rect.contains(at))
        };
        if self.swaps(ui) {
            if let (Held::New(content), Some(step)) =
                (held.as_ref(), self.board.steps.iter().find(under))
            {
                desk.board(who, BoardEdit::Replace(step.at, content.clone()));
            }
            return;
        }
        let Some(place) = gap else { return };
        match held.as_ref() {
            Held::New(content) => desk.board(who, BoardEdit::Insert(content.clone(), place)),
            Held::Slot(..) => {}
            Held::Step(step, _) => {
                if self.board.position(*step) != Some(place) {
                    desk.board(who, BoardEdit::Move(*step, place));
                }
            }
        }
    }
}
