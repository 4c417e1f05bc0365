//! What is decided about people, water and the place for one session, and what was seen there.

use std::collections::{BTreeMap, BTreeSet};

use jiff::civil::Time;

use super::ids::{HelperId, ParticipantId, SlotId};
use super::looks::Looked;

/// Who does what on this date, who is with whom, and what was looked at.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Today {
    /// Who leads in the water.
    pub water_lead: Option<HelperId>,
    /// When a helper is there, where that is not all of the session.
    pub here: BTreeMap<HelperId, Hours>,
    /// Whether a helper watches today, where that differs from their roles.
    pub watching: BTreeMap<HelperId, bool>,
    /// Who is named to watch a participant and nothing else.
    pub watched_by: BTreeMap<ParticipantId, HelperId>,
    /// Pairs that are wanted, or not.
    pub pairs: BTreeMap<(ParticipantId, HelperId), Pair>,
    /// Who was put with whom by hand, for a row of the timetable.
    pub held: BTreeMap<(SlotId, ParticipantId), BTreeSet<HelperId>>,
    /// Where all meet when someone is missing; empty where it is the club's usual spot.
    pub meeting_spot: String,
    /// What was looked at, in the order it was written down.
    pub looks: Vec<Looked>,
    /// When thunder was heard.
    pub thunder: BTreeSet<Time>,
}

impl Today {
    /// What comes along to another date: who leads, who is named for whom, which pairs are wanted.
    pub(super) fn for_another_date(&self) -> Self {
        Self {
            water_lead: self.water_lead,
            watching: self.watching.clone(),
            watched_by: self.watched_by.clone(),
            pairs: self.pairs.clone(),
            meeting_spot: self.meeting_spot.clone(),
            ..Self::default()
        }
    }

    /// Forgets a participant.
    pub(super) fn forget_participant(&mut self, id: ParticipantId) {
        self.watched_by.remove(&id);
        self.pairs.retain(|(who, _), _| *who != id);
        self.held.retain(|(_, who), _| *who != id);
    }

    /// Forgets a helper.
    pub(super) fn forget_helper(&mut self, id: HelperId) {
        if self.water_lead == Some(id) {
            self.water_lead = None;
        }
        self.here.remove(&id);
        self.watching.remove(&id);
        self.watched_by.retain(|_, h| *h != id);
        self.pairs.retain(|(_, h), _| *h != id);
        for held in self.held.values_mut() {
            held.remove(&id);
        }
        self.held.retain(|_, held| !held.is_empty());
    }

    /// Forgets a row of the timetable.
    pub(super) fn forget_slot(&mut self, id: SlotId) {
        self.held.retain(|(slot, _), _| *slot != id);
    }
}

/// From when until when someone is there; nothing is the start or the end of the session.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Hours {
    /// From.
    pub from: Option<Time>,
    /// Until.
    pub to: Option<Time>,
}

/// What is wished of a pair.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Pair {
    /// They want to be together.
    Wanted,
    /// They are never put together.
    Never,
}

impl Pair {
    /// Both, for lists.
    pub const ALL: [Self; 2] = [Self::Wanted, Self::Never];

    /// In words.
    pub const fn label(self) -> &'static str {
        match self {
            Self::Wanted => "Together if possible",
            Self::Never => "Not together",
        }
    }
}
