//! Who is in the water when: the rows of the timetable as stretches of time in which nothing
//! changes, and the steps of every board that are in the water then.

use std::sync::Arc;

use crate::model::board::{Board, Step, StepState};
use crate::model::club::Club;
use crate::model::ids::{ActivityId, ParticipantId, SlotId, StepRef};
use crate::model::session::Session;
use crate::plan::clock::{Clock, Moment};

/// A stretch of time in which nothing changes.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Stretch {
    /// From.
    pub from: Moment,
    /// Until.
    pub to: Moment,
    /// The rows that are done then: one, or all that are done in turns.
    pub rows: Vec<SlotId>,
    /// Which turn, counted from zero, where rows are done in turns.
    pub turn: Option<usize>,
}

/// A participant in the water.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Visit {
    /// Who.
    pub who: ParticipantId,
    /// At which row of the timetable.
    pub slot: SlotId,
    /// What they do, where one activity is meant.
    pub activity: Option<ActivityId>,
}

/// All stretches of a session in order of time, with who is in the water in each, in the order of
/// the boards. A step that is a participant's own counts with the row before it, and a choice counts
/// as in the water if one of its options is.
pub fn visits(
    club: &Club,
    session: &Session,
    boards: &[Arc<Board>],
    clock: &Clock,
) -> Vec<(Stretch, Vec<Visit>)> {
    let wet: Vec<(ParticipantId, Vec<Visit>)> = boards
        .iter()
        .map(|b| (b.participant, wet_rows(club, b)))
        .collect();
    stretches(session, clock)
        .into_iter()
        .map(|stretch| {
            let own = wet.iter().filter_map(|(who, rows)| {
                let here = |v: &&Visit| is_in(session, &stretch, *who, v.slot);
                rows.iter().find(here).copied()
            });
            let own = own.collect();
            (stretch, own)
        })
        .collect()
}

fn stretches(session: &Session, clock: &Clock) -> Vec<Stretch> {
    let mut all: Vec<Stretch> = Vec::new();
    let mut turned = false;
    for row in &clock.rows {
        let plan = session.turns.as_ref().filter(|t| t.has(row.slot));
        let Some(plan) = plan else {
            all.push(Stretch {
                from: row.from,
                to: row.to,
                rows: vec![row.slot],
                turn: None,
            });
            continue;
        };
        if turned {
            continue;
        }
        turned = true;
        let rows: Vec<SlotId> = plan.slots().collect();
        let turns = clock.turns.iter().enumerate();
        all.extend(turns.map(|(i, (from, to))| Stretch {
            from: *from,
            to: *to,
            rows: rows.clone(),
            turn: Some(i),
        }));
    }
    all
}

/// Whether a participant is at a row in this stretch. Whoever has no turn at a station of theirs is
/// nowhere.
fn is_in(session: &Session, stretch: &Stretch, who: ParticipantId, slot: SlotId) -> bool {
    match (&session.turns, stretch.turn) {
        (Some(turns), Some(turn)) if turns.has(slot) => turns.turn_of(who, slot) == Some(turn),
        _ => stretch.rows == [slot],
    }
}

/// The rows of a board at which its participant is in the water, each once.
fn wet_rows(club: &Club, board: &Board) -> Vec<Visit> {
    let mut rows: Vec<Visit> = Vec::new();
    for (i, step) in board.steps.iter().enumerate() {
        if step.state == StepState::NotToday || !is_wet(club, step) {
            continue;
        }
        let Some(slot) = row_of(board, i) else {
            continue;
        };
        if !rows.iter().any(|v| v.slot == slot) {
            rows.push(Visit {
                who: board.participant,
                slot,
                activity: step.activity.filter(|a| club.in_water(*a)),
            });
        }
    }
    rows
}

fn is_wet(club: &Club, step: &Step) -> bool {
    let options = step.options.iter().filter_map(|o| o.activity);
    step.activity
        .into_iter()
        .chain(options)
        .any(|a| club.in_water(a))
}

/// The row of the timetable during which a step is done.
fn row_of(board: &Board, at: usize) -> Option<SlotId> {
    let row = |s: &Step| match s.at {
        StepRef::Slot(id) | StepRef::Instead(id) => Some(id),
        StepRef::Standing(_, beside) => beside,
        StepRef::Own(_) => None,
    };
    let before = board.steps[..=at].iter().rev();
    let after = board.steps[at..].iter();
    before.chain(after).find_map(row)
}
