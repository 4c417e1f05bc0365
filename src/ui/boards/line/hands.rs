//! What mouse and keys do to a card on the strand, and where what is in the hand is let go.

use egui::{DragAndDrop, Key, Modifiers, Rect, Response, Ui};

use super::hangs::Hangs;
use super::{Strip, card_id};
use crate::model::board::{By, Step, StepState};
use crate::model::edit::{BoardEdit, GiveAt};
use crate::model::hand::Content;
use crate::model::ids::StepRef;
use crate::ui::boards::held::{self, Held, copies};
use crate::ui::boards::{BoardsState, several, take_off};
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
            let board = (self.person.id, self.board);
            let steps = state.several.taken(desk.view, board, step.at);
            r.dnd_set_drag_payload(Held::Steps(self.person.id, steps, content));
            desk.ask(Command::ChooseStep(Some(step.at)));
        }
        if r.clicked() {
            let chosen = desk.view.step;
            let on = state.several.click(ui, self.board, chosen, step.at);
            desk.ask(Command::ChooseStep(Some(on)));
            ui.memory_mut(|m| m.request_focus(card_id(self.person.id, on)));
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
        let who = self.person.id;
        let Some(at) = self.board.position(step.at) else {
            return;
        };
        if desk.view.step != Some(step.at) {
            desk.ask(Command::ChooseStep(Some(step.at)));
        }
        self.several_keys(ui, desk, state, (step, at), per_row);
        let pressed = |key| ui.input_mut(|i| i.consume_key(Modifiers::NONE, key));
        if pressed(Key::Delete) {
            let all = self.meant(desk, state, step);
            let stays = |s: &&Step| !(all.contains(&s.at) && matches!(s.at, StepRef::Own(_)));
            let after = self.board.steps[at..].iter().find(stays);
            let next = after.or_else(|| self.board.steps[..at].iter().rev().find(stays));
            if let (false, Some(next)) = (stays(&step), next) {
                desk.ask(Command::ChooseStep(Some(next.at)));
                ui.memory_mut(|m| m.request_focus(card_id(who, next.at)));
            }
            take_off(desk, who, self.board, &all);
            state.several.alone();
            return;
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
        if pressed(Key::Backspace) {
            several::restore(desk, who, &self.meant(desk, state, step));
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

    /// What a hand or a key on a step is about.
    fn meant(&self, desk: &Desk<'_>, state: &BoardsState, step: &Step) -> Vec<StepRef> {
        let board = (self.person.id, self.board);
        state.several.with(desk.view, board, step.at)
    }

    /// Keys that go along the board, and those that move or choose several steps.
    fn several_keys(
        &self,
        ui: &Ui,
        desk: &mut Desk<'_>,
        state: &mut BoardsState,
        (step, at): (&Step, usize),
        per_row: usize,
    ) {
        let (who, n) = (self.person.id, self.board.steps.len());
        if let Some(to) = regions::alt_arrows(ui, at, n, per_row) {
            let all = self.meant(desk, state, step);
            let by = to as isize - at as isize;
            several::shift(desk, (who, self.board), &all, by);
        }
        let reaches = ui.input(|i| i.modifiers.shift);
        if let Some(to) = regions::arrows(ui, at, n, per_row) {
            let next = self.board.steps[to].at;
            match reaches {
                true => state.several.reach(self.board, Some(step.at), next),
                false => state.several.alone(),
            }
            desk.ask(Command::ChooseStep(Some(next)));
            ui.memory_mut(|m| m.request_focus(card_id(who, next)));
        }
        if ui.input_mut(|i| i.consume_key(Modifiers::COMMAND, Key::A)) {
            state.several.choose_all(self.board);
        }
        let board = (who, self.board);
        state.several.clipboard(ui, desk, board, at);
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
            match held.as_ref() {
                Held::Steps(_, steps, _) if !copies(ui) => {
                    take_off(desk, who, self.board, steps);
                }
                _ => held::goes_back(ui, &held, at),
            }
            return;
        }
        let under = |s: &&Step| {
            ui.ctx()
                .read_response(card_id(who, s.at))
                .is_some_and(|r| r.rect.contains(at))
        };
        if self.swaps(ui) {
            match (held.as_ref(), self.board.steps.iter().find(under)) {
                (Held::New(content), Some(step)) => {
                    desk.board(who, BoardEdit::Replace(step.at, content.clone()));
                }
                _ => held::goes_back(ui, &held, at),
            }
            return;
        }
        let Some(place) = gap else { return };
        match held.as_ref() {
            Held::New(content) => desk.board(who, BoardEdit::Insert(content.clone(), place)),
            Held::Slot(..) => {}
            Held::Steps(from, steps, _) if copies(ui) => {
                several::give(ui, desk, (*from, steps), (who, GiveAt::Position(place)));
            }
            Held::Steps(_, steps, _) => desk.board(who, BoardEdit::Move(steps.clone(), place)),
        }
    }
}
