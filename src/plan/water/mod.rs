//! Who is with whom in the water at every moment of a session, from the club's own entries: an
//! exact pairing (`pairing`) of the participants who are in the water with the people who are there,
//! whose certificates cover the day, and who have no other job.
//!
//! `moments` says who is in the water when, `free` who can be with them and why the others cannot.
//! It pairs and counts; it never says that people are enough, or that anyone is qualified.

mod free;
mod moments;

use std::collections::BTreeSet;
use std::sync::Arc;

use super::clock::{Moment, clock};
use super::pairing::{self, Bond, Broken, Day, Need, Pair, PairedDay};
use crate::model::board::Board;
use crate::model::club::Club;
use crate::model::ids::{ActivityId, HelperId, ParticipantId, SlotId};
use crate::model::session::Session;
use crate::model::today;

pub use free::{
    NotFree, Reason, certificates_on, has_alert, job_at, people_at, watches, within_hours,
};
pub use moments::{Stretch, Visit, visits};

/// The water of a whole session.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct WaterDay {
    /// Every stretch of time in which someone is in the water, in order of time.
    pub moments: Vec<InWater>,
    /// Every time a participant gets other people.
    pub handovers: Vec<Handover>,
    /// Whether it is certain that there cannot be fewer.
    pub fewest: bool,
}

/// One stretch of time with someone in the water.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct InWater {
    /// When, and in which rows.
    pub stretch: Stretch,
    /// Who is in the water, where, and with whom; in the order of the list of participants.
    pub visits: Vec<Together>,
    /// People who could be with someone now, in the order of the list of helpers.
    pub free: Vec<HelperId>,
    /// Water-safety people who cannot, and why.
    pub not_free: Vec<NotFree>,
    /// Who is short of people, when someone is.
    pub short: Option<Short>,
    /// Pairs put together by hand that could not be.
    pub broken: Vec<(ParticipantId, HelperId, pairing::Why)>,
    /// Who watches and has no other job.
    pub watchers: Vec<HelperId>,
    /// How many watchers the club's own number asks for.
    pub watchers_asked: u32,
}

/// A participant in the water with their people.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Together {
    /// Who.
    pub who: ParticipantId,
    /// At which row of the timetable.
    pub slot: SlotId,
    /// What they do.
    pub activity: Option<ActivityId>,
    /// Their people; fewer than asked for when there are not enough.
    pub people: Vec<HelperId>,
    /// How many the club's rule asks for.
    pub asked: u32,
}

/// Participants who together need more people than there are for them.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Short {
    /// Who.
    pub participants: Vec<ParticipantId>,
    /// All who could be with one of them.
    pub people: Vec<HelperId>,
    /// How many more people would be needed.
    pub missing: u32,
    /// Whether it would do without the pairs put together by hand.
    pub by_hand: bool,
}

/// A participant gets other people between two moments.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Handover {
    /// Who.
    pub who: ParticipantId,
    /// When the new ones begin.
    pub at: Moment,
}

impl WaterDay {
    /// The people of a participant at a row.
    pub fn people(&self, who: ParticipantId, slot: SlotId) -> Option<&Together> {
        let visits = self.moments.iter().flat_map(|m| &m.visits);
        visits.into_iter().find(|v| v.who == who && v.slot == slot)
    }

    /// The moments of one participant, with who is with them.
    pub fn of(&self, who: ParticipantId) -> impl Iterator<Item = (&InWater, &Together)> {
        self.moments.iter().filter_map(move |m| {
            let own = m.visits.iter().find(|v| v.who == who)?;
            Some((m, own))
        })
    }

    /// The moments of one helper, with whom they are.
    pub fn with(&self, helper: HelperId) -> impl Iterator<Item = (&InWater, &Together)> {
        self.moments.iter().filter_map(move |m| {
            let own = m.visits.iter().find(|v| v.people.contains(&helper))?;
            Some((m, own))
        })
    }

    /// Whether someone is in the water at some moment.
    pub fn is_dry(&self) -> bool {
        self.moments.is_empty()
    }

    /// All pairs as they are, to be held by hand.
    pub fn as_held(&self) -> crate::model::edit::Held {
        let visits = self.moments.iter().flat_map(|m| &m.visits);
        let held = visits.filter(|v| !v.people.is_empty());
        held.map(|v| ((v.slot, v.who), v.people.iter().copied().collect()))
            .collect()
    }
}

/// The last answer of the pairing, so that the same question is not worked out again: most changes
/// of a club are not about the water.
#[derive(Debug, Default)]
pub struct Known(Option<(Day, PairedDay)>);

impl Known {
    fn answer(&mut self, day: Day) -> &PairedDay {
        if self.0.as_ref().is_none_or(|(asked, _)| *asked != day) {
            self.0 = None;
        }
        let (_, answer) = self.0.get_or_insert_with(|| {
            let answer = pairing::day(&day);
            (day, answer)
        });
        answer
    }
}

/// The water of a session. `boards` are those of everyone who comes, as derived.
pub fn day(club: &Club, session: &Session, boards: &[Arc<Board>]) -> WaterDay {
    day_again(club, session, boards, &mut Known::default())
}

/// The same, where it was worked out before.
pub fn day_again(
    club: &Club,
    session: &Session,
    boards: &[Arc<Board>],
    known: &mut Known,
) -> WaterDay {
    let clock = clock(session, &club.rules);
    let scene = Scene { club, session };
    let stretches = visits(club, session, boards, &clock);
    let moments: Vec<Made> = stretches
        .into_iter()
        .filter(|(_, visits)| !visits.is_empty())
        .map(|(stretch, visits)| scene.moment(stretch, visits))
        .collect();
    let day = Day {
        moments: moments.iter().map(|m| m.engine.clone()).collect(),
        bonds: bonds(club, session),
    };
    let paired = known.answer(day);
    let participant = |i: usize| club.participants[i].id;
    let handover = |h: &pairing::Handover| Handover {
        who: participant(h.participant),
        at: moments[h.to].stretch.from,
    };
    WaterDay {
        handovers: paired.handovers.iter().map(handover).collect(),
        fewest: paired.fewest,
        moments: moments
            .iter()
            .zip(&paired.moments)
            .map(|(made, paired)| scene.told(made, paired))
            .collect(),
    }
}

/// What is known of every participant and helper of the club, for the pairing.
pub fn bonds(club: &Club, session: &Session) -> Vec<Vec<Bond>> {
    let wished = &session.today.pairs;
    let bond = |p: ParticipantId, h: &crate::model::people::Helper| {
        let beside = session.beside.get(&p) == Some(&h.id);
        match wished.get(&(p, h.id)) {
            Some(today::Pair::Never) => Bond::Never,
            Some(today::Pair::Wanted) => Bond::Wanted,
            None if beside => Bond::Wanted,
            None if h.trains.contains(&p) => Bond::Trainer,
            None => Bond::Plain,
        }
    };
    let row = |p: ParticipantId| club.helpers.iter().map(|h| bond(p, h)).collect();
    club.participants.iter().map(|p| row(p.id)).collect()
}

/// A moment made ready for the pairing.
struct Made {
    stretch: Stretch,
    visits: Vec<Visit>,
    not_free: Vec<NotFree>,
    engine: pairing::Moment,
}

struct Scene<'a> {
    club: &'a Club,
    session: &'a Session,
}

impl Scene<'_> {
    fn number_of(&self, who: ParticipantId) -> Option<usize> {
        self.club.participants.iter().position(|p| p.id == who)
    }

    fn person(&self, helper: HelperId) -> Option<usize> {
        self.club.helpers.iter().position(|h| h.id == helper)
    }

    fn moment(&self, stretch: Stretch, visits: Vec<Visit>) -> Made {
        let in_water: BTreeSet<ParticipantId> = visits.iter().map(|v| v.who).collect();
        let (free, not_free) = people_at(self.club, self.session, &stretch, &in_water);
        let each = self.club.rules.care.people_each.max(1);
        let need = |v: &Visit| {
            let participant = self.number_of(v.who)?;
            Some(Need {
                participant,
                people: each,
            })
        };
        let held = visits.iter().flat_map(|v| {
            let held = self.session.today.held.get(&(v.slot, v.who));
            held.into_iter().flatten().filter_map(|h| {
                Some(Pair {
                    participant: self.number_of(v.who)?,
                    person: self.person(*h)?,
                })
            })
        });
        let engine = pairing::Moment {
            in_water: visits.iter().filter_map(need).collect(),
            free: free.iter().filter_map(|h| self.person(*h)).collect(),
            held: held.collect(),
        };
        Made {
            stretch,
            visits,
            not_free,
            engine,
        }
    }

    fn told(&self, made: &Made, paired: &pairing::Paired) -> InWater {
        let participant = |i: &usize| self.club.participants[*i].id;
        let helper = |i: &usize| self.club.helpers[*i].id;
        let people = |who: ParticipantId| -> Vec<HelperId> {
            let number = self.number_of(who);
            let own = number.into_iter().flat_map(|n| paired.people_of(n));
            own.map(|i| helper(&i)).collect()
        };
        let together = |v: &Visit| Together {
            who: v.who,
            slot: v.slot,
            activity: v.activity,
            people: people(v.who),
            asked: self.club.rules.care.people_each.max(1),
        };
        let short = paired.shortage.as_ref().map(|s| Short {
            participants: s.participants.iter().map(participant).collect(),
            people: s.people.iter().map(helper).collect(),
            missing: s.missing,
            by_hand: s.by_hand,
        });
        let broken = |b: &Broken| {
            let (p, h) = (b.pair.participant, b.pair.person);
            (participant(&p), helper(&h), b.why)
        };
        InWater {
            stretch: made.stretch.clone(),
            visits: made.visits.iter().map(together).collect(),
            free: made.engine.free.iter().map(helper).collect(),
            not_free: made.not_free.clone(),
            short,
            broken: paired.broken.iter().map(broken).collect(),
            watchers: self.watchers(made, &paired.pairs),
            watchers_asked: self.watchers_asked(&made.visits),
        }
    }

    /// Who watches, is there, leads nothing and is with nobody.
    fn watchers(&self, made: &Made, pairs: &[Pair]) -> Vec<HelperId> {
        let held: BTreeSet<HelperId> = pairs
            .iter()
            .map(|p| self.club.helpers[p.person].id)
            .collect();
        let in_water: BTreeSet<ParticipantId> = made.visits.iter().map(|v| v.who).collect();
        let free = |h: &crate::model::people::Helper| {
            // Whoever is named for one participant watches that one and nobody else.
            let job = job_at(self.session, &made.stretch, h.id, &in_water);
            !held.contains(&h.id) && job.is_none()
        };
        let all = self.club.helpers.iter();
        all.filter(|h| watches(self.session, h) && free(h))
            .map(|h| h.id)
            .collect()
    }

    /// As the club entered it: groups at different places are counted each on its own.
    fn watchers_asked(&self, visits: &[Visit]) -> u32 {
        let Some(one_for) = self.club.rules.care.watcher_for else {
            return 0;
        };
        let place = |v: &Visit| {
            let activity = v.activity.and_then(|id| self.club.activity(id));
            let place = activity.map_or("", |a| a.place.trim()).to_lowercase();
            let row = place.is_empty().then_some(v.slot);
            (place, row)
        };
        let places: BTreeSet<_> = visits.iter().map(place).collect();
        let areas = places.iter().map(|here| {
            let there = visits.iter().filter(|v| place(v) == *here).count();
            pairing::watchers::Area {
                in_water: u32::try_from(there).unwrap_or(u32::MAX),
                one_for,
            }
        });
        pairing::watchers::needed(&areas.collect::<Vec<_>>(), 0)
    }
}
