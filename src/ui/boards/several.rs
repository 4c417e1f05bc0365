//! Several steps of one board chosen at once, and steps that were copied.

use std::collections::BTreeSet;

use egui::{Event, Key, Modifiers, Ui};

use super::held::copies;
use crate::model::board::Board;
use crate::model::edit::{BoardEdit, Edit, Give, GiveAt};
use crate::model::ids::{ParticipantId, SessionId, StepRef};
use crate::ui::desk::Desk;
use crate::workbench::view::View;

/// What is chosen beside the one step that the workbench knows of.
#[derive(Debug, Default)]
pub struct Several {
    also: BTreeSet<StepRef>,
    /// From where Shift reaches.
    from: Option<StepRef>,
    copied: Option<Copied>,
}

/// Steps that were copied, with the words the clipboard got for them.
#[derive(Debug)]
struct Copied {
    session: SessionId,
    who: ParticipantId,
    steps: Vec<StepRef>,
    words: String,
}

impl Several {
    /// One step alone is chosen.
    pub fn alone(&mut self) {
        self.also.clear();
        self.from = None;
    }

    /// Forgets steps that are no longer there.
    pub fn keep(&mut self, there: impl Fn(&StepRef) -> bool) {
        self.also.retain(&there);
        self.from = self.from.filter(there);
    }

    /// Whether a step is chosen beside the one that the workbench knows of.
    pub fn has(&self, step: StepRef) -> bool {
        self.also.contains(&step)
    }

    /// All that are chosen, in the order of the board.
    pub fn all(&self, board: &Board, chosen: Option<StepRef>) -> Vec<StepRef> {
        let steps = board.steps.iter().map(|s| s.at);
        let in_it = |s: &StepRef| Some(*s) == chosen || self.also.contains(s);
        steps.filter(in_it).collect()
    }

    /// What a hand or a key on a step is about: all that are chosen where it is one of them; it alone
    /// where the keyboard came to it so lately that it is not yet the chosen one.
    pub fn with(
        &self,
        view: &View<'_>,
        (who, board): (ParticipantId, &Board),
        step: StepRef,
    ) -> Vec<StepRef> {
        let here = view.participant.is_some_and(|p| p.id == who);
        let all = self.all(board, view.step.filter(|_| here));
        if here && all.contains(&step) {
            all
        } else {
            vec![step]
        }
    }

    /// What a hand that takes hold of a step carries; one that was not chosen is then chosen alone.
    pub fn taken(
        &mut self,
        view: &View<'_>,
        board: (ParticipantId, &Board),
        step: StepRef,
    ) -> Vec<StepRef> {
        let all = self.with(view, board, step);
        if all.len() == 1 {
            self.alone();
        }
        all
    }

    /// What a click on a step chooses: it alone; with Ctrl it too, or it no more; with Shift all
    /// from the one before. Gives the step that gets the keyboard.
    pub fn click(
        &mut self,
        ui: &Ui,
        board: &Board,
        chosen: Option<StepRef>,
        step: StepRef,
    ) -> StepRef {
        let keys = ui.input(|i| i.modifiers);
        if keys.shift {
            self.reach(board, chosen, step);
        } else if keys.command {
            self.also.extend(chosen);
            if self.also.len() > 1 && self.also.remove(&step) {
                let left = self.also.first().copied();
                return chosen.filter(|c| *c != step).or(left).unwrap_or(step);
            }
            self.also.insert(step);
        } else {
            self.alone();
        }
        step
    }

    /// Chooses all from where the choice began to a step.
    pub fn reach(&mut self, board: &Board, chosen: Option<StepRef>, step: StepRef) {
        let from = self.from.or(chosen).unwrap_or(step);
        let (Some(a), Some(b)) = (board.position(from), board.position(step)) else {
            return;
        };
        self.from = Some(from);
        let between = &board.steps[a.min(b)..=a.max(b)];
        self.also = between.iter().map(|s| s.at).collect();
    }

    /// Chooses every step.
    pub fn choose_all(&mut self, board: &Board) {
        self.also = board.steps.iter().map(|s| s.at).collect();
    }

    /// With Escape one alone is chosen again; whether it was pressed.
    pub fn escaped(&mut self, ui: &Ui) -> bool {
        let none = self.also.is_empty();
        let away = !none && ui.input_mut(|i| i.consume_key(Modifiers::NONE, Key::Escape));
        if away {
            self.alone();
        }
        away
    }

    /// Copies what is chosen, or gives what was copied to this board after the chosen step.
    pub fn clipboard(
        &mut self,
        ui: &Ui,
        desk: &mut Desk<'_>,
        (who, board): (ParticipantId, &Board),
        at: usize,
    ) {
        let Some(session) = desk.view.session.map(|s| s.id) else {
            return;
        };
        let (copy, paste) = ui.input(|i| {
            let copy = i.events.iter().any(|e| matches!(e, Event::Copy));
            let paste = i.events.iter().find_map(|e| match e {
                Event::Paste(words) => Some(words.clone()),
                _ => None,
            });
            (copy, paste)
        });
        if copy {
            let steps = self.all(board, desk.view.step);
            let named = board.steps.iter().filter(|s| steps.contains(&s.at));
            let words: Vec<&str> = named.map(|s| s.label.as_str()).collect();
            let words = words.join(", ");
            ui.copy_text(words.clone());
            self.copied = Some(Copied {
                session,
                who,
                steps,
                words,
            });
        }
        let Some(copied) = &self.copied else { return };
        if copied.session == session && paste.is_some_and(|w| w.trim() == copied.words.trim()) {
            let give = Give {
                from: copied.who,
                steps: copied.steps.clone(),
                to: who,
                at: GiveAt::Position(at + 1),
                stays: true,
            };
            desk.edit(Edit::Give(session, give));
        }
    }
}

/// Lets steps go on someone's board: they stay where they are from too.
pub fn give(
    ui: &Ui,
    desk: &mut Desk<'_>,
    (from, steps): (ParticipantId, &[StepRef]),
    (to, at): (ParticipantId, GiveAt),
) {
    let Some(session) = desk.view.session.map(|s| s.id) else {
        return;
    };
    let give = Give {
        from,
        steps: steps.to_vec(),
        to,
        at,
        stays: !moves_over(ui),
    };
    desk.edit(Edit::Give(session, give));
}

/// With Shift held what goes to someone else does not stay.
pub fn moves_over(ui: &Ui) -> bool {
    ui.input(|i| i.modifiers.shift) && !copies(ui)
}

/// A change of each step that is chosen, as one.
pub fn each(
    desk: &mut Desk<'_>,
    who: ParticipantId,
    steps: &[StepRef],
    edit: impl Fn(StepRef) -> BoardEdit,
) {
    let edits: Vec<BoardEdit> = steps.iter().map(|s| edit(*s)).collect();
    match edits.as_slice() {
        [] => {}
        [one] => desk.board(who, one.clone()),
        _ => desk.board(who, BoardEdit::All(edits)),
    }
}

/// Moves steps together by so many places.
pub fn shift(
    desk: &mut Desk<'_>,
    (who, board): (ParticipantId, &Board),
    steps: &[StepRef],
    by: isize,
) {
    let order = board.steps.iter().map(|s| s.at);
    let before = order.take_while(|s| !steps.contains(s)).count();
    let last = board.steps.len() - steps.len();
    let to = before.saturating_add_signed(by).min(last);
    desk.board(who, BoardEdit::Move(steps.to_vec(), to));
}

/// Makes steps as in the timetable again; own steps are not in it.
pub fn restore(desk: &mut Desk<'_>, who: ParticipantId, steps: &[StepRef]) {
    let rows = steps.iter().copied();
    let rows: Vec<StepRef> = rows.filter(|s| !matches!(s, StepRef::Own(_))).collect();
    each(desk, who, &rows, BoardEdit::Restore);
}
