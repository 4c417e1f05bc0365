//! What letting go of a card on a place of the table means, in words and in fact.

use egui::{DragAndDrop, Ui};

use super::{At, Table};
use crate::model::edit::{BoardEdit, GiveAt};
use crate::model::ids::{ParticipantId, SlotId, StepRef};
use crate::model::session::Session;
use crate::ui::boards::held::{self, Held};
use crate::ui::boards::sort::Line;
use crate::ui::boards::{several, take_off};
use crate::ui::desk::Desk;

/// The place under what is in the hand.
pub(super) struct Hit<'a> {
    pub line: Line<'a>,
    pub at: At,
}

impl Hit<'_> {
    /// What letting go here would do, in words.
    pub fn says(&self, ui: &Ui, table: &Table<'_>) -> Option<&'static str> {
        match (table.held.as_deref()?, self.at) {
            (Held::New(_), At::Step(_)) => Some("swap it in"),
            (Held::New(_), At::Out(_)) => Some("own step"),
            (Held::Steps(from, steps, _), _) => self.does(ui, *from, steps).says(),
            _ => None,
        }
    }

    /// What letting go of someone's steps here would do.
    fn does(&self, ui: &Ui, from: ParticipantId, steps: &[StepRef]) -> Does {
        let who = self.line.person.id;
        let row = match (steps, self.at) {
            ([held], At::Step(here)) => held.slot().filter(|s| here.slot() == Some(*s)),
            _ => None,
        };
        match (from == who, held::copies(ui)) {
            (true, false) => match self.at {
                At::Step(here) if steps.contains(&here) => Does::Stay,
                At::Step(_) => Does::Move,
                At::Name | At::Out(_) => Does::Nothing,
            },
            (true, true) => Does::Again,
            (false, false) if row.is_some() => Does::Same,
            (false, _) if several::moves_over(ui) => Does::Over,
            (false, _) => Does::Too,
        }
    }

    /// Where a step would stand that is let go here.
    fn place(&self, session: &Session) -> usize {
        match self.at {
            At::Step(step) => self.line.board.position(step).unwrap_or(0),
            At::Name => self.line.board.steps.len(),
            At::Out(slot) => self.place_of_gap(session, slot),
        }
    }

    /// Where an own step would stand that comes in for a row that is left out.
    fn place_of_gap(&self, session: &Session, slot: SlotId) -> usize {
        let rows = &session.timetable;
        let at = rows.iter().position(|s| s.id == slot).unwrap_or(0);
        let before = rows[..at].iter().rev();
        let found = before
            .filter_map(|s| self.line.board.position(StepRef::Slot(s.id)))
            .next();
        found.map_or(0, |p| p + 1)
    }
}

/// What comes of letting go of a step on a row of the table.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Does {
    /// It goes there on its own board.
    Move,
    /// It stands there once more.
    Again,
    /// The other one has the same there.
    Same,
    /// The other one gets it too.
    Too,
    /// The other one gets it, and it is gone from here.
    Over,
    /// It stays where it is.
    Stay,
    /// Nothing.
    Nothing,
}

impl Does {
    const fn says(self) -> Option<&'static str> {
        Some(match self {
            Self::Stay => return None,
            Self::Move => "move here",
            Self::Again => "once more",
            Self::Same => "the same here",
            Self::Too => "here too",
            Self::Over => "over to here",
            Self::Nothing => "not here",
        })
    }
}

/// Does what letting go of what is in the hand means here; where nothing comes of it, it slides back.
pub(super) fn drop_held(ui: &Ui, desk: &mut Desk<'_>, table: &Table<'_>, hit: Option<&Hit<'_>>) {
    if !ui.input(|i| i.pointer.any_released()) {
        return;
    }
    let (Some(held), Some(pointer)) = (table.held.clone(), table.target) else {
        return;
    };
    DragAndDrop::clear_payload(ui.ctx());
    match (held.as_ref(), hit) {
        (Held::New(content), Some(hit)) => {
            let edit = match hit.at {
                At::Name => return held::goes_back(ui, &held, pointer),
                At::Step(step) => BoardEdit::Replace(step, content.clone()),
                At::Out(slot) => {
                    BoardEdit::Insert(content.clone(), hit.place_of_gap(table.session, slot))
                }
            };
            desk.board(hit.line.person.id, edit);
        }
        (Held::Steps(from, steps, _), Some(hit)) => {
            if !drop_on(ui, desk, (*from, steps), table.session, hit) {
                held::goes_back(ui, &held, pointer);
            }
        }
        (Held::Steps(from, steps, _), None) if !table.body.contains(pointer) => {
            let line = table.lines.iter().find(|l| l.person.id == *from);
            match line.filter(|_| !held::copies(ui)) {
                Some(line) => take_off(desk, line.person.id, line.board, steps),
                None => held::goes_back(ui, &held, pointer),
            }
        }
        _ => held::goes_back(ui, &held, pointer),
    }
}

/// Someone's steps let go on a place of a row; whether anything comes of it.
fn drop_on(
    ui: &Ui,
    desk: &mut Desk<'_>,
    (from, steps): (ParticipantId, &[StepRef]),
    session: &Session,
    hit: &Hit<'_>,
) -> bool {
    let (who, to) = (hit.line.person.id, hit.place(session));
    match (hit.does(ui, from, steps), hit.at) {
        (Does::Nothing | Does::Stay, _) => return false,
        (Does::Move, _) => {
            let order = hit.line.board.steps[..to].iter();
            let before = order.filter(|s| steps.contains(&s.at)).count();
            // Behind what it is let go on when it comes from before that, else before it.
            let to = to - before + usize::from(before > 0);
            desk.board(who, BoardEdit::Move(steps.to_vec(), to));
        }
        (Does::Same, At::Step(here)) => {
            several::give(ui, desk, (from, steps), (who, GiveAt::Step(here)));
        }
        _ => several::give(ui, desk, (from, steps), (who, GiveAt::Position(to))),
    }
    true
}
