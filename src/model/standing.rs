//! What differs on every board of a participant: swaps, what is left out, steps of their own beside
//! an activity or a part of the day, and cards that are always there. Apart from the timetable and
//! apart from the changes by hand of one evening, so that each can be changed alone.

use std::collections::{BTreeMap, BTreeSet};

use super::hand::Content;
use super::ids::{ActivityId, PartId, StandingId};

/// The standing changes of one participant. Empty means: as in the timetable.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Standing {
    /// What is shown and done instead of an activity, always.
    pub swaps: BTreeMap<ActivityId, Content>,
    /// Activities this participant has no part in.
    pub left_out: BTreeSet<ActivityId>,
    /// Steps of their own, in the order of the list where several stand in one place.
    pub own: Vec<StandingStep>,
    /// Cards that are always there, beside those everyone has.
    pub cards: Vec<Content>,
    /// What can be done while waiting, for a card that says so; no card where there is none.
    pub waiting: Option<Content>,
    /// Whether there are pieces to count down with: five, without any time on them.
    pub countdown: bool,
}

impl Standing {
    /// Whether nothing differs.
    pub fn is_empty(&self) -> bool {
        *self == Self::default()
    }

    /// The own step with this id.
    pub fn step(&self, id: StandingId) -> Option<&StandingStep> {
        self.own.iter().find(|s| s.id == id)
    }

    /// Everything it shows, for checks and counts.
    pub fn contents(&self) -> impl Iterator<Item = &Content> {
        let own = self.own.iter().map(|s| &s.content);
        let all = self.swaps.values().chain(own).chain(&self.cards);
        all.chain(&self.waiting)
    }

    /// The same, to change it.
    pub(crate) fn contents_mut(&mut self) -> impl Iterator<Item = &mut Content> {
        let own = self.own.iter_mut().map(|s| &mut s.content);
        let all = self.swaps.values_mut().chain(own).chain(&mut self.cards);
        all.chain(&mut self.waiting)
    }
}

/// A step of their own on every board.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct StandingStep {
    /// Its id.
    pub id: StandingId,
    /// What it shows.
    pub content: Content,
    /// Before or after what.
    pub side: Side,
    /// Beside what.
    pub beside: Beside,
    /// Whether it is a support shown as a step, such as putting on ear defenders, rather than
    /// something that is done for its own sake.
    pub support: bool,
}

/// On which side.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Side {
    /// Right before.
    Before,
    /// Right after.
    #[default]
    After,
}

impl Side {
    /// Both, for lists.
    pub const ALL: [Self; 2] = [Self::Before, Self::After];

    /// In words.
    pub const fn label(self) -> &'static str {
        match self {
            Self::Before => "Before",
            Self::After => "After",
        }
    }
}

/// What a standing step stands beside.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Beside {
    /// Each time this activity is on the board.
    Activity(ActivityId),
    /// A part of the day: before its first row or after its last one.
    Part(PartId),
    /// Each activity in the water.
    Water,
}
