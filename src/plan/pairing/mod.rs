//! Who is with whom in the water, worked out on numbers: it knows no club. Every participant in the
//! water has exactly the number of people they need, and a person is with one participant at most.
//!
//! `moment` answers for one stretch of time in which nothing changes, `day` for all of a session:
//! the same person through the session wherever that can be. What counts, in strict order:
//!
//! 1. pairs held by hand that are possible;
//! 2. as many places filled as can be (a participant who needs two people has two places);
//! 3. pairs that are wanted;
//! 4. trainers with their own participant;
//! 5. the same people as in the moments before and after;
//! 6. low numbers first, so that the same question always has the same answer.
//!
//! Points 1 to 4 are as good as they can be in each moment on its own, and `day` gives none of
//! them up for point 5. `assign` fills places at least cost, `scene` is a moment made ready for it,
//! `hall` says who is short of people and why, `whole`, `sweeps`, `stretches`, `exact` and `bound`
//! join the moments, `watchers` counts who watches. It pairs and counts; whether people are enough it never says.

pub mod assign;
mod bound;
mod exact;
mod hall;
mod scene;
mod stretches;
mod sweeps;
pub mod watchers;
mod whole;

use scene::Scene;
use sweeps::Sweeps;
use whole::Whole;

/// What is known of a participant and a person, from weakest to strongest. Who is both wanted and
/// the trainer is `Wanted`.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord)]
pub enum Bond {
    /// They are never paired, not even by hand.
    Never,
    /// They may be paired.
    #[default]
    Plain,
    /// The person trains with this participant.
    Trainer,
    /// The pair is wanted.
    Wanted,
}

/// A participant with one person.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Pair {
    /// The number of the participant in the session.
    pub participant: usize,
    /// The number of the person in the session.
    pub person: usize,
}

/// A participant in the water and what they need there.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Need {
    /// The number of the participant in the session.
    pub participant: usize,
    /// How many people they need to themselves. With zero they are in no pair.
    pub people: u32,
}

/// A stretch of time in which nothing changes.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Moment {
    /// Who is in the water; of a participant listed twice the greater need counts.
    pub in_water: Vec<Need>,
    /// Who is free to be with them: here, current, without another job.
    pub free: Vec<usize>,
    /// Pairs held by hand. Where two exclude each other the earlier one holds.
    pub held: Vec<Pair>,
}

/// All moments of a session.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Day {
    /// In order of time.
    pub moments: Vec<Moment>,
    /// What is known of participant and person: `bonds[participant][person]`. A pair that is not
    /// in it is never made.
    pub bonds: Vec<Vec<Bond>>,
}

/// Why a pair held by hand could not be.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Why {
    /// The participant is not in the water then, or needs nobody.
    NotInWater,
    /// The person is not free then.
    NotFree,
    /// These two are never paired.
    Never,
    /// The person is held for another participant already.
    Elsewhere,
    /// The participant has all the people they need by hand already.
    Enough,
}

/// A pair held by hand that could not be.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Broken {
    /// The pair.
    pub pair: Pair,
    /// The reason.
    pub why: Why,
}

/// Participants who together need more people than there are for them (a violator of Hall's
/// condition): the reason why not everyone can have the people they need.
///
/// Each smaller part of these participants could have all their people. With up to
/// [`SMALLEST_UP_TO`] participants in the water no other such set has fewer participants; with
/// more that is not searched for.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Shortage {
    /// The participants, in order.
    pub participants: Vec<usize>,
    /// All free people who may be with one of them, in order. Who is held by hand for someone else
    /// is not among them.
    pub people: Vec<usize>,
    /// How many people these participants need beyond `people`; at least one.
    pub missing: u32,
    /// Without the pairs held by hand everyone would have the people they need.
    pub by_hand: bool,
}

/// With so many participants in the water a [`Shortage`] has the fewest participants there can be.
pub const SMALLEST_UP_TO: usize = 12;

/// The pairs of a moment.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Paired {
    /// In order of participant, then person. When people are short, as many as there can be.
    pub pairs: Vec<Pair>,
    /// How many places are empty, over everyone in the water.
    pub missing: u32,
    /// Why, when some are.
    pub shortage: Option<Shortage>,
    /// Pairs held by hand that could not be, in the order they were given.
    pub broken: Vec<Broken>,
}

impl Paired {
    /// Whether everyone has exactly the people they need.
    pub const fn is_full(&self) -> bool {
        self.missing == 0
    }

    /// The people of one participant, in order.
    pub fn people_of(&self, participant: usize) -> impl Iterator<Item = usize> + '_ {
        let own = self
            .pairs
            .iter()
            .filter(move |p| p.participant == participant);
        own.map(|p| p.person)
    }
}

/// A participant gets other people: in two moments of theirs that follow each other the sets differ.
/// Moments between them, in which they are not in the water, do not count.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Handover {
    /// Who gets other people.
    pub participant: usize,
    /// The number of the moment with the former people.
    pub from: usize,
    /// The number of the moment with the new ones.
    pub to: usize,
}

/// The pairs of all moments.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct PairedDay {
    /// One for each moment of the day.
    pub moments: Vec<Paired>,
    /// Every handover, in order of participant and time.
    pub handovers: Vec<Handover>,
    /// Whether it is certain that there cannot be fewer handovers (points 1 to 4 kept).
    pub fewest: bool,
}

/// Pairs for one moment. `same` are pairs to keep if nothing above them stands against it, as those
/// of the moment before; one that is listed twice counts twice.
pub fn moment(moment: &Moment, bonds: &[Vec<Bond>], same: &[Pair]) -> Paired {
    let scene = Scene::new(moment, bonds);
    let bonus = scene.bonus(|pair| same.iter().filter(|s| **s == pair).count() as i64);
    let sets = scene.solve(Some(&bonus)).sets(&scene);
    paired(&scene, &sets, moment, bonds)
}

/// Pairs for all moments of a session with as few handovers as are found, and whether fewer are
/// possible. To have the fewest is hard in general (matching in stages is, already with two of them:
/// M. Chimani, N. Troost, T. Wiedera, Approximating multistage matching problems, from memory), so
/// this sweeps from several starts, compares with a lower bound, and tries all ways where they are
/// few. A moment in which people are short has its handovers too, places left empty among them.
pub fn day(day: &Day) -> PairedDay {
    let whole = Whole::new(day);
    let mut sweeps = Sweeps::new(&whole);
    let swept = sweeps.starts();
    let least = bound::handovers(&whole);
    if whole.tally(&swept).handovers == least {
        return whole.finish(&swept, day, true);
    }
    if let Some(best) = exact::fewest(&whole) {
        return whole.finish(&best, day, true);
    }
    let better = stretches::improve(&mut sweeps, swept, least);
    let fewest = whole.tally(&better).handovers == least;
    whole.finish(&better, day, fewest)
}

/// As [`day`], but without trying all ways: what a day gets that is too large for that.
pub fn day_by_sweeps(day: &Day) -> PairedDay {
    let whole = Whole::new(day);
    let least = bound::handovers(&whole);
    let mut sweeps = Sweeps::new(&whole);
    let swept = sweeps.starts();
    let better = stretches::improve(&mut sweeps, swept, least);
    let fewest = whole.tally(&better).handovers == least;
    whole.finish(&better, day, fewest)
}

/// What is said of a moment whose people are chosen: `sets` by participant of the scene.
fn paired(scene: &Scene, sets: &[Vec<usize>], moment: &Moment, bonds: &[Vec<Bond>]) -> Paired {
    let of = |(slot, people): (usize, &Vec<usize>)| {
        let participant = scene.needs[slot].participant;
        people
            .iter()
            .map(move |&person| Pair {
                participant,
                person,
            })
            .collect::<Vec<_>>()
    };
    let pairs: Vec<Pair> = sets.iter().enumerate().flat_map(of).collect();
    let needed: u64 = scene.needs.iter().map(|n| u64::from(n.people)).sum();
    let missing = needed.saturating_sub(pairs.len() as u64);
    Paired {
        pairs,
        missing: u32::try_from(missing).unwrap_or(u32::MAX),
        shortage: (missing > 0).then(|| hall::shortage(scene, moment, bonds)),
        broken: scene.broken.clone(),
    }
}
