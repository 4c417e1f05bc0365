//! Rows of the timetable that are done in turns: participants change between them, so that no more
//! are in the water at once than there are people to be with them.

use std::collections::{BTreeMap, BTreeSet};

use super::ids::{ParticipantId, SlotId};
use super::session::{Session, Slot};

/// The part of a session that is done in turns.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Turns {
    /// The rows that are stations, in the order of the timetable, where they stand together.
    pub stations: Vec<Station>,
    /// Rows that stand after the stations for whoever waits in a turn: the first for the first
    /// time, and so on. Whoever does not wait has no part in them.
    pub waits: Vec<SlotId>,
    /// How many turns.
    pub count: u32,
    /// Minutes of each turn.
    pub minutes: u32,
    /// Who is where: for each turn a station or a row of waiting; nothing where nothing is planned.
    pub places: BTreeMap<ParticipantId, Vec<Option<SlotId>>>,
    /// Who wants to be together.
    pub friends: BTreeSet<(ParticipantId, ParticipantId)>,
    /// Stations that stay in the turn where `places` has them when turns are worked out again:
    /// whose, and which row.
    pub held: BTreeSet<(ParticipantId, SlotId)>,
}

/// A row that is a station.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Station {
    /// The row.
    pub slot: SlotId,
    /// How many can be there at once; nothing where it does not matter.
    pub capacity: Option<u32>,
}

impl Turns {
    /// All of its rows, stations first.
    pub fn slots(&self) -> impl Iterator<Item = SlotId> {
        let stations = self.stations.iter().map(|s| s.slot);
        stations.chain(self.waits.iter().copied())
    }

    /// Whether a row is one of them.
    pub fn has(&self, slot: SlotId) -> bool {
        self.slots().any(|s| s == slot)
    }

    /// Where a participant is, turn by turn. Whoever has no plan yet takes the stations in the
    /// order of the timetable, as far as the turns go.
    pub fn of(&self, who: ParticipantId) -> Vec<Option<SlotId>> {
        let count = self.count as usize;
        let mut places = match self.places.get(&who) {
            Some(places) => places.clone(),
            None => self.stations.iter().map(|s| Some(s.slot)).collect(),
        };
        places.resize(count, None);
        places
    }

    /// In which turn a participant is at a row, counted from zero.
    pub fn turn_of(&self, who: ParticipantId, slot: SlotId) -> Option<usize> {
        self.of(who).iter().position(|s| *s == Some(slot))
    }

    /// Whether a participant stays at a station in its turn when turns are worked out again.
    pub fn holds(&self, who: ParticipantId, slot: SlotId) -> bool {
        self.held.contains(&(who, slot))
    }

    /// What is held, and in which turn.
    pub fn held_visits(&self) -> impl Iterator<Item = (ParticipantId, usize, SlotId)> {
        let visit = |&(who, slot)| self.turn_of(who, slot).map(|turn| (who, turn, slot));
        self.held.iter().filter_map(visit)
    }

    /// Lets go of what has no station, or nobody with a turn there: only what stands can be held.
    pub(crate) fn settle_held(&mut self) {
        let mut held = std::mem::take(&mut self.held);
        held.retain(|(who, slot)| {
            let stands = |places: &Vec<Option<SlotId>>| places.contains(&Some(*slot));
            self.stations.iter().any(|s| s.slot == *slot)
                && self.places.get(who).is_some_and(stands)
        });
        self.held = held;
    }

    /// The same for another date, whose rows have other ids.
    pub(super) fn renamed(&self, now: &BTreeMap<SlotId, SlotId>) -> Self {
        let row = |id: SlotId| now.get(&id).copied();
        let places = |p: &Vec<Option<SlotId>>| p.iter().map(|s| s.and_then(row)).collect();
        Self {
            stations: self
                .stations
                .iter()
                .filter_map(|s| row(s.slot).map(|slot| Station { slot, ..*s }))
                .collect(),
            waits: self.waits.iter().filter_map(|s| row(*s)).collect(),
            places: self.places.iter().map(|(w, p)| (*w, places(p))).collect(),
            held: self
                .held
                .iter()
                .filter_map(|(w, s)| row(*s).map(|s| (*w, s)))
                .collect(),
            ..self.clone()
        }
    }

    pub(super) fn forget_participant(&mut self, id: ParticipantId) {
        self.places.remove(&id);
        self.friends.retain(|(a, b)| *a != id && *b != id);
        self.held.retain(|(who, _)| *who != id);
    }

    /// Takes a row out; the turns stay.
    pub(super) fn forget_slot(&mut self, id: SlotId) {
        self.stations.retain(|s| s.slot != id);
        self.waits.retain(|s| *s != id);
        self.held.retain(|(_, slot)| *slot != id);
        for places in self.places.values_mut() {
            for place in places.iter_mut().filter(|p| **p == Some(id)) {
                *place = None;
            }
        }
    }
}

impl Session {
    /// The rows of the timetable in the order in which a participant comes to them, and those of
    /// waiting that are not theirs.
    pub fn rows_of(&self, who: ParticipantId) -> (Vec<&Slot>, Vec<SlotId>) {
        let Some(turns) = &self.turns else {
            return (self.timetable.iter().collect(), Vec::new());
        };
        let places = turns.of(who);
        let mut own: Vec<SlotId> = places.into_iter().flatten().collect();
        // A station without a turn is still on the board: a check says so, nothing is lost.
        let without = turns.stations.iter().map(|s| s.slot);
        let without: Vec<SlotId> = without.filter(|s| !own.contains(s)).collect();
        own.extend(without);
        let spare: Vec<SlotId> = turns
            .waits
            .iter()
            .copied()
            .filter(|s| !own.contains(s))
            .collect();
        let first = self.timetable.iter().position(|s| turns.has(s.id));
        let mut rows: Vec<&Slot> = Vec::with_capacity(self.timetable.len());
        for (i, slot) in self.timetable.iter().enumerate() {
            if Some(i) == first {
                rows.extend(own.iter().filter_map(|id| self.slot(*id)));
            }
            if !turns.has(slot.id) {
                rows.push(slot);
            }
        }
        (rows, spare)
    }
}
