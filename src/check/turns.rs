//! Rows in turns after a change by hand or of who comes: who has no turn, stations that are too full,
//! boards in another order.

use std::sync::Arc;

use super::{finding, said};
use crate::model::board::{Board, StepState};
use crate::model::club::Club;
use crate::model::finding::{Finding, Severity, Spot};
use crate::model::ids::{SlotId, StepRef};
use crate::model::session::Session;
use crate::model::turns::Turns;
use crate::plan::rotation::Breach;
use crate::plan::turns::{Asked, Round};

/// Checks the turns of a session, if it has any.
pub fn check(club: &Club, session: &Session, boards: &[Arc<Board>], findings: &mut Vec<Finding>) {
    let Some(turns) = &session.turns else {
        return;
    };
    let round = Round::new(club, session, boards, Asked::of(session, turns));
    let words = Words { club, session };
    for breach in round.breaches(turns) {
        findings.extend(words.breach(&round, &breach));
    }
    for board in boards {
        findings.extend(words.order(turns, board));
    }
}

struct Words<'a> {
    club: &'a Club,
    session: &'a Session,
}

impl Words<'_> {
    fn label(&self, slot: SlotId) -> String {
        let row = self.session.slot(slot);
        let activity = row.and_then(|s| self.club.activity(s.activity));
        activity.map_or_else(|| "a row".to_owned(), |a| a.label.trim().to_owned())
    }

    /// Too many in the water is said by the check of the water itself.
    fn breach(&self, round: &Round, breach: &Breach) -> Option<Finding> {
        let hint = "Work the turns out again, or change places by hand.";
        let (slot, sentence) = match breach {
            Breach::NotOnce {
                participant,
                station,
                times,
            } => {
                let (who, slot) = (round.who(*participant), round.slot(*station));
                let name = said::participant(self.club, who);
                let label = self.label(slot);
                let sentence = match times {
                    0 => format!("{name} has no turn at “{label}”."),
                    _ => format!("{name} has more than one turn at “{label}”."),
                };
                (slot, sentence)
            }
            Breach::StationOver { visit, visits } => {
                let slot = round.slot(visit.station);
                let label = self.label(slot);
                let sentence = format!(
                    "In turn {} {} are at “{label}”, which holds fewer.",
                    visit.turn + 1,
                    said::number(*visits)
                );
                (slot, sentence)
            }
            Breach::NotWished { participant, visit } => {
                let slot = round.slot(visit.station);
                let name = said::participant(self.club, round.who(*participant));
                let label = self.label(slot);
                (
                    slot,
                    format!("{name} has a turn at “{label}”, which is not on their board."),
                )
            }
            _ => return None,
        };
        Some(finding(
            Severity::StopAndLook,
            "turns.broken",
            Spot::Slot(self.session.id, slot),
            sentence,
            hint,
        ))
    }

    /// A board whose rows in turns were moved by hand stands in another order than the turns.
    fn order(&self, turns: &Turns, board: &Board) -> Option<Finding> {
        let own = turns.of(board.participant);
        let place = |slot: SlotId| own.iter().position(|s| *s == Some(slot));
        let steps = board
            .steps
            .iter()
            .filter(|s| s.state != StepState::NotToday);
        let shown = steps.filter_map(|s| match s.at {
            StepRef::Slot(id) => place(id).map(|turn| (turn, s)),
            _ => None,
        });
        let shown: Vec<_> = shown.collect();
        let (_, step) = shown
            .windows(2)
            .find(|two| two[0].0 > two[1].0)
            .map(|two| two[1])?;
        Some(finding(
            Severity::Look,
            "turns.other_order",
            Spot::Step(self.session.id, board.participant, step.at),
            format!(
                "The board of {} shows “{}” in another order than the turns.",
                said::participant(self.club, board.participant),
                step.label.trim()
            ),
            "Move it back on the board, or change the turns.",
        ))
    }
}
