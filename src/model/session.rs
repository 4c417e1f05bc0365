//! A session: one date, its timetable, who is away, and that evening's hand changes.

use std::collections::{BTreeMap, BTreeSet};

use jiff::civil::{Date, Time};

use super::board::Board;
use super::conditions::Condition;
use super::hand::{Content, HandChanges};
use super::ids::{ActivityId, HelperId, PartId, ParticipantId, SessionId, SlotId};
use super::privacy::Guarded;
use super::record::Record;
use super::rewriting::Rewriting;
use super::today::Today;
use super::turns::Turns;

/// One date.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Session {
    /// Its id.
    pub id: SessionId,
    /// What it is called on paper, such as "Lagoon morning".
    pub title: String,
    /// The day.
    pub date: Date,
    /// When it begins, local time as read on a clock at the place.
    pub start: Time,
    /// Where.
    pub place: String,
    /// The group's order.
    pub timetable: Vec<Slot>,
    /// The rows of it that are done in turns, if any are.
    pub turns: Option<Box<Turns>>,
    /// Who does what on this date, and who is with whom.
    pub today: Box<Today>,
    /// Participants who do not come.
    pub away: BTreeSet<ParticipantId>,
    /// Helpers who do not come.
    pub helpers_away: BTreeSet<HelperId>,
    /// What was changed by hand on each participant's board.
    pub hand: BTreeMap<ParticipantId, HandChanges>,
    /// What was changed by hand in each participant's story.
    pub stories: BTreeMap<ParticipantId, Rewriting>,
    /// Who is beside whom on this day, as the story says it.
    pub beside: BTreeMap<ParticipantId, HelperId>,
    /// What the day may bring.
    pub conditions: Vec<Condition>,
    /// What was seen, written down afterwards. For the coordinator.
    pub records: BTreeMap<ParticipantId, Guarded<Record>>,
    /// The session it started from.
    pub from: Option<SessionId>,
}

impl Session {
    /// Minutes of a row: those of a turn, where it is done in turns.
    pub fn minutes_of(&self, slot: &Slot) -> u32 {
        match &self.turns {
            Some(turns) if turns.has(slot.id) => turns.minutes,
            _ => slot.minutes,
        }
    }

    /// The slot with this id.
    pub fn slot(&self, id: SlotId) -> Option<&Slot> {
        self.timetable.iter().find(|s| s.id == id)
    }

    /// How many changes by hand wait for an answer: those asked about, and those about steps that
    /// are not on the board, which is this session's.
    pub fn questions(&self, board: &Board) -> usize {
        let asked = self.hand_of(board.participant).map_or(0, |h| h.asked.len());
        asked + board.waiting.len()
    }

    /// The hand changes of a participant, if there are any.
    pub fn hand_of(&self, who: ParticipantId) -> Option<&HandChanges> {
        self.hand.get(&who)
    }
}

/// One row of the timetable.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Slot {
    /// Its id.
    pub id: SlotId,
    /// What is done.
    pub activity: ActivityId,
    /// In which part of the day.
    pub part: PartId,
    /// How long.
    pub minutes: u32,
    /// Who leads it.
    pub leads: BTreeSet<HelperId>,
    /// What can be chosen here, if it is a choice: two or three.
    pub options: Vec<Content>,
    /// Whether it is called off today, for everyone.
    pub off: Option<Off>,
}

/// A row that is called off: it stays on every board, visibly not today.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Off {
    /// What comes instead.
    pub instead: Option<ActivityId>,
}
