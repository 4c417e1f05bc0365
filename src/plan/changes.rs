//! What follows when something is called off: whose boards show it, what comes instead, what is to
//! be brought and what stays at home.

use std::collections::BTreeSet;
use std::sync::Arc;

use super::equipment::{beyond, only_in};
use crate::model::board::{Board, Step, StepState};
use crate::model::club::Club;
use crate::model::ids::{ActivityId, ParticipantId, StepRef};
use crate::model::manner::Form;
use crate::model::session::Session;

/// All that follows from what is not today.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Changes {
    /// Boards that show it, in the order of the list.
    pub boards: Vec<Affected>,
    /// What need not be brought, because nobody does it any more.
    pub stays: Vec<String>,
    /// What is to be brought for what comes instead, and was not to be brought before.
    pub comes: Vec<String>,
}

impl Changes {
    /// Whether everything is as it was.
    pub fn is_empty(&self) -> bool {
        self.boards.is_empty()
    }

    /// Tiles of what comes instead that are handed out, one for each change on each board.
    pub fn dry_tiles(&self) -> usize {
        let all = self.boards.iter().flat_map(|b| &b.changes);
        all.filter(|c| c.tile().is_some()).count()
    }

    /// Change tiles that are handed out: one for each change on each board.
    pub fn change_tiles(&self) -> usize {
        self.boards.iter().map(|b| b.changes.len()).sum()
    }
}

/// A board that shows something that is not today.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Affected {
    /// Whose.
    pub participant: ParticipantId,
    /// What, in the order of the board.
    pub changes: Vec<Change>,
    /// Whether to tell them apart from the others and earlier, as the people who know them decided.
    /// For the coordinator and the helper.
    pub tell_apart: bool,
}

/// One step that is not today.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Change {
    /// The step.
    pub step: StepRef,
    /// Its words.
    pub was: String,
    /// What comes instead: its step and words.
    pub instead: Option<(StepRef, String)>,
    /// The real thing that is handed over for what comes instead, if it is not a tile.
    pub thing: Option<String>,
}

impl Change {
    /// The words of the tile of what comes instead, if there is one.
    pub fn tile(&self) -> Option<&str> {
        let instead = self.instead.as_ref().filter(|_| self.thing.is_none());
        instead.map(|(_, words)| words.as_str())
    }
}

/// What follows for the boards of all who come.
pub fn changes(club: &Club, session: &Session, boards: &[Arc<Board>]) -> Changes {
    let all = boards
        .iter()
        .filter(|b| !session.away.contains(&b.participant));
    let boards: Vec<Affected> = all.clone().filter_map(|b| affected(club, b)).collect();
    let mut off = BTreeSet::new();
    let mut instead = BTreeSet::new();
    let mut done = BTreeSet::new();
    for step in all.flat_map(|b| &b.steps) {
        let Some(activity) = step.activity else {
            continue;
        };
        match step.state {
            StepState::NotToday => off.insert(activity),
            StepState::Instead { .. } => instead.insert(activity),
            _ => done.insert(activity),
        };
    }
    let now = things(club, done.iter().chain(&instead));
    let before = things(club, done.iter().chain(&off));
    Changes {
        stays: sorted(only_in(things(club, off.iter()), now)),
        comes: sorted(beyond(things(club, instead.iter()), before)),
        boards,
    }
}

fn affected(club: &Club, board: &Board) -> Option<Affected> {
    let off = |s: &&Step| s.state == StepState::NotToday;
    let changes: Vec<Change> = board
        .steps
        .iter()
        .filter(off)
        .map(|s| change(board, s))
        .collect();
    let who = club.participant(board.participant)?;
    (!changes.is_empty()).then(|| Affected {
        participant: who.id,
        changes,
        tell_apart: who.profile.decision().for_owner().warn_of_changes,
    })
}

fn change(board: &Board, step: &Step) -> Change {
    let instead = match step.at {
        StepRef::Slot(slot) => board.position(StepRef::Instead(slot)),
        _ => None,
    };
    let instead = instead.map(|i| &board.steps[i]);
    let thing = instead.filter(|s| s.form == Form::Object);
    Change {
        step: step.at,
        was: step.label.clone(),
        instead: instead.map(|s| (s.at, s.label.clone())),
        thing: thing.map(|s| s.thing.clone()),
    }
}

fn things<'a>(
    club: &'a Club,
    activities: impl Iterator<Item = &'a ActivityId>,
) -> impl Iterator<Item = &'a [String]> {
    let known = activities.filter_map(|id| club.activity(*id));
    known.map(|a| a.equipment.as_slice())
}

fn sorted(mut things: Vec<String>) -> Vec<String> {
    things.sort();
    things
}
