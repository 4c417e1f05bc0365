//! Rows of a timetable in turns, for a club: makes the numbers that `rotation` works on, so that no
//! turn has more in the water than can be with someone, and reads its answer back.

use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

use super::clock::{Moment, clock};
use super::pairing::{self, Bond, Need};
use super::rotation::{
    self, Answer, Breach, Effort, Losses, Participant, People, Progress, Rotation, Station, Visit,
    Water,
};
use super::water::{Reason, Stretch, bonds, people_at};
use crate::model::board::{Board, Step, StepState};
use crate::model::club::Club;
use crate::model::edit::TurnsPlan;
use crate::model::ids::{ActivityId, HelperId, ParticipantId, SlotId, StepRef};
use crate::model::limits::care::TURNS;
use crate::model::session::Session;
use crate::model::turns::{self, Turns};

/// The picture of a place to come to after the water.
pub const QUIET: &str = "quiet_place";

/// What is to be done in turns.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Asked {
    /// The rows, with how many can be at each.
    pub rows: Vec<turns::Station>,
    /// How many turns; nothing asks for as few as possible.
    pub turns: Option<u32>,
    /// Minutes of each turn.
    pub minutes: u32,
    /// What those do who wait.
    pub waiting: Option<ActivityId>,
    /// Who wants to be together.
    pub friends: BTreeSet<(ParticipantId, ParticipantId)>,
}

impl Asked {
    /// As it is planned now.
    pub fn of(session: &Session, turns: &Turns) -> Self {
        let wait = turns.waits.first().and_then(|s| session.slot(*s));
        Self {
            rows: turns.stations.clone(),
            turns: Some(turns.count),
            minutes: turns.minutes,
            waiting: wait.map(|s| s.activity),
            friends: turns.friends.clone(),
        }
    }
}

/// Everything the rotation needs to know, and what its numbers mean.
#[derive(Clone, Debug)]
pub struct Round {
    /// What is to be arranged.
    pub rotation: Rotation,
    /// What was asked.
    pub asked: Asked,
    /// The row of each station, and whether it is in the water. A row that is dry for some, by a
    /// swap, is two stations.
    stations: Vec<(SlotId, bool)>,
    /// Who each participant is.
    people: Vec<ParticipantId>,
    /// Who is free in each turn while nobody is in the water.
    free: Vec<Vec<HelperId>>,
    club: Club,
    session: Session,
    bonds: Vec<Vec<Bond>>,
}

impl Round {
    /// For a session; `boards` are those of everyone who comes.
    pub fn new(club: &Club, session: &Session, boards: &[Arc<Board>], asked: Asked) -> Self {
        let mut round = Self {
            rotation: Rotation::default(),
            stations: Vec::new(),
            people: boards.iter().map(|b| b.participant).collect(),
            free: Vec::new(),
            club: club.clone(),
            session: session.clone(),
            bonds: bonds(club, session),
            asked,
        };
        let wishes = round.wishes(boards);
        round.free = (0..TURNS as usize)
            .map(|turn| round.free_in(turn, &BTreeSet::new()))
            .collect();
        let friends = round.asked.friends.iter().filter_map(|(a, b)| {
            let number = |p: &ParticipantId| round.people.iter().position(|q| q == p);
            Some((number(a)?, number(b)?))
        });
        round.rotation = Rotation {
            stations: (0..round.stations.len())
                .map(|s| round.station(s))
                .collect(),
            participants: wishes
                .into_iter()
                .zip(&round.people)
                .map(|(wishes, who)| Participant {
                    fixed: round.held(*who, &wishes),
                    wishes,
                })
                .collect(),
            friends: friends.collect(),
            water: round.water(),
            turns: round.asked.turns.map(|n| n as usize),
        };
        round
    }

    /// Works it out.
    pub fn arrange(&self, effort: &Effort, progress: &mut Progress) -> Answer {
        let paired = |turn: usize, who: &[usize]| self.can_be_paired(turn, who);
        let exact = self.needs_looking().then_some(&paired as rotation::Paired);
        rotation::rotate(&self.rotation, exact, effort, progress)
    }

    /// What is wrong with turns as they are, for instance after a change by hand.
    pub fn breaches(&self, turns: &Turns) -> Vec<Breach> {
        let paired = |turn: usize, who: &[usize]| self.can_be_paired(turn, who);
        rotation::breaches(&self.rotation, Some(&paired), &self.rows(turns))
    }

    /// What is lost of the wishes in turns as they are.
    pub fn losses(&self, turns: &Turns) -> Losses {
        rotation::losses(&self.rotation, &self.rows(turns))
    }

    /// The row of a station.
    pub fn slot(&self, station: usize) -> SlotId {
        self.stations[station].0
    }

    /// Who a participant is.
    pub fn who(&self, participant: usize) -> ParticipantId {
        self.people[participant]
    }

    /// Who is free to be with someone in the water in a turn.
    pub fn free(&self, turn: usize) -> &[HelperId] {
        self.free.get(turn).map_or(&[], |f| f)
    }

    /// How many can be in the water in a turn, where it is one person each or more.
    pub fn room(&self, turn: usize) -> usize {
        self.rotation.water.limit(turn)
    }

    /// An answer as an edit sets it.
    pub fn plan(&self, plan: &rotation::Plan) -> TurnsPlan {
        let places = plan.rows.iter().enumerate().map(|(i, row)| {
            let row = row.iter().map(|s| s.map(|s| self.slot(s)));
            (self.who(i), row.collect())
        });
        TurnsPlan {
            stations: self.asked.rows.clone(),
            waiting: self.asked.waiting,
            count: u32::try_from(plan.turns).unwrap_or(u32::MAX),
            minutes: self.asked.minutes,
            places: places.collect(),
            friends: self.asked.friends.clone(),
        }
    }

    /// Turns of a club in the numbers of the rotation; rows of waiting are nowhere.
    fn rows(&self, turns: &Turns) -> Vec<Vec<Option<usize>>> {
        let row = |(number, who): (usize, &ParticipantId)| {
            let wishes = &self.rotation.participants[number].wishes;
            let station = |slot: SlotId| {
                let own = wishes.iter().copied().find(|s| self.slot(*s) == slot);
                own.or_else(|| self.stations.iter().position(|s| s.0 == slot))
            };
            let places = turns.of(*who).into_iter();
            places.map(|p| p.and_then(station)).collect()
        };
        self.people.iter().enumerate().map(row).collect()
    }

    /// The stations of every board, in its order.
    fn wishes(&mut self, boards: &[Arc<Board>]) -> Vec<Vec<usize>> {
        let rows: Vec<SlotId> = self.asked.rows.iter().map(|s| s.slot).collect();
        let mut all = Vec::with_capacity(boards.len());
        for board in boards {
            let mut own: BTreeMap<usize, usize> = BTreeMap::new();
            for step in board
                .steps
                .iter()
                .filter(|s| s.state != StepState::NotToday)
            {
                let slot = match step.at {
                    StepRef::Slot(id) | StepRef::Instead(id) => id,
                    _ => continue,
                };
                let Some(order) = rows.iter().position(|r| *r == slot) else {
                    continue;
                };
                let station = self.number(slot, self.is_wet(step));
                own.entry(order).or_insert(station);
            }
            all.push(own.into_values().collect());
        }
        all
    }

    /// What is held for a participant in the turns as they are. A row that is asked for no more
    /// holds nobody; one that is not on the board is still a station, so that it can be named.
    fn held(&self, who: ParticipantId, wishes: &[usize]) -> Vec<Visit> {
        let turns = self.session.turns.iter();
        let held = turns.flat_map(|t| t.held_visits()).filter(|h| h.0 == who);
        held.filter_map(|(_, turn, slot)| {
            let own = wishes.iter().copied().find(|s| self.slot(*s) == slot);
            let station = own.or_else(|| self.stations.iter().position(|s| s.0 == slot))?;
            Some(Visit { turn, station })
        })
        .collect()
    }

    fn number(&mut self, slot: SlotId, wet: bool) -> usize {
        let known = self.stations.iter().position(|s| *s == (slot, wet));
        known.unwrap_or_else(|| {
            self.stations.push((slot, wet));
            self.stations.len() - 1
        })
    }

    fn is_wet(&self, step: &Step) -> bool {
        let options = step.options.iter().filter_map(|o| o.activity);
        let mut all = step.activity.into_iter().chain(options);
        all.any(|a| self.club.in_water(a))
    }

    fn station(&self, number: usize) -> Station {
        let (slot, wet) = self.stations[number];
        let row = self.session.slot(slot);
        let activity = row.and_then(|s| self.club.activity(s.activity));
        // Whoever has something dry there does not take a place at the station itself.
        let usual = activity.is_some_and(|a| a.in_water) == wet;
        let asked = self.asked.rows.iter().find(|s| s.slot == slot);
        let capacity = asked.and_then(|s| s.capacity).filter(|_| usual);
        let place = activity.map_or("", |a| a.place.trim());
        let same = self.stations.iter().position(|(other, _)| {
            let row = self.session.slot(*other);
            let other = row.and_then(|s| self.club.activity(s.activity));
            !place.is_empty() && other.is_some_and(|o| o.place.trim() == place)
        });
        Station {
            capacity: capacity.map_or(usize::MAX, |n| n as usize),
            water: wet,
            quiet: activity.is_some_and(|a| a.symbol.as_str() == QUIET),
            place: same.unwrap_or(number),
            people: match wet {
                true => People::Each(self.each()),
                false => People::Together(0),
            },
        }
    }

    fn each(&self) -> usize {
        self.club.rules.care.people_each.max(1) as usize
    }

    fn water(&self) -> Water {
        let most: Vec<usize> = self.free.iter().map(|f| f.len() / self.each()).collect();
        match most.split_first() {
            Some((first, rest)) if rest.iter().all(|n| n == first) => Water::Every(*first),
            _ => Water::Each(most),
        }
    }

    /// When a turn is, and which rows are done in it.
    fn stretch(&self, turn: usize) -> Stretch {
        let between = self.club.rules.transition_minutes;
        let begins = self.begins();
        let turn_minutes = self.asked.minutes.saturating_add(between);
        let number = u32::try_from(turn).unwrap_or(u32::MAX);
        let from = begins.after(number.saturating_mul(turn_minutes));
        Stretch {
            from,
            to: from.after(self.asked.minutes),
            rows: self.asked.rows.iter().map(|s| s.slot).collect(),
            turn: Some(turn),
        }
    }

    /// When the first turn begins: with the first of the rows, wherever the others stand now.
    fn begins(&self) -> Moment {
        let mut plain = self.session.clone();
        plain.turns = None;
        let is_asked = |id: SlotId| self.asked.rows.iter().any(|s| s.slot == id);
        let waits = self.session.turns.iter().flat_map(|t| t.waits.clone());
        let waits: Vec<SlotId> = waits.collect();
        plain.timetable.retain(|s| !waits.contains(&s.id));
        let first = plain.timetable.iter().find(|s| is_asked(s.id));
        let first = first.map(|s| s.id);
        let clock = clock(&plain, &self.club.rules);
        let row = first.and_then(|id| clock.row(id).copied());
        row.map_or(clock.start, |r| r.from)
    }

    fn free_in(&self, turn: usize, in_water: &BTreeSet<ParticipantId>) -> Vec<HelperId> {
        people_at(&self.club, &self.session, &self.stretch(turn), in_water).0
    }

    /// Whether numbers alone do not say who can be paired.
    fn needs_looking(&self) -> bool {
        let never = self.bonds.iter().flatten().any(|b| *b == Bond::Never);
        never || !self.session.today.watched_by.is_empty()
    }

    fn can_be_paired(&self, turn: usize, who: &[usize]) -> bool {
        let people: BTreeSet<ParticipantId> = who.iter().map(|i| self.people[*i]).collect();
        let usual = self.free.get(turn).map_or(&[][..], |f| f);
        let watching = &self.session.today.watched_by;
        let watches = |h: &HelperId| watching.iter().any(|(p, w)| w == h && people.contains(p));
        let free = usual.iter().filter(|h| !watches(h));
        let number = |h: &HelperId| self.club.helpers.iter().position(|o| o.id == *h);
        let list = &self.club.participants;
        let in_water = people.iter().filter_map(|p| {
            Some(Need {
                participant: list.iter().position(|o| o.id == *p)?,
                people: u32::try_from(self.each()).unwrap_or(u32::MAX),
            })
        });
        let moment = pairing::Moment {
            in_water: in_water.collect(),
            free: free.filter_map(number).collect(),
            held: Vec::new(),
        };
        pairing::moment(&moment, &self.bonds, &[]).is_full()
    }

    /// Why water-safety people are not free in a turn.
    pub fn not_free(&self, turn: usize) -> Vec<(HelperId, Reason)> {
        let none = BTreeSet::new();
        let (_, not) = people_at(&self.club, &self.session, &self.stretch(turn), &none);
        not.into_iter().map(|n| (n.who, n.reason)).collect()
    }
}
