//! Stations in turns: who is at which station in which turn, when not all can be everywhere at once.
//!
//! Everything is a number here: stations, participants and turns are indices from zero. Whether a
//! plan exists is decided exactly where a theorem does it (`colouring`), else by a search with a
//! limit that says honestly when it was reached (`search`). A plan is then improved (`improve`) by
//! a number of steps, never by a time, so that the same input gives the same plan everywhere.

mod breach;
mod colouring;
mod first;
mod flow;
mod improve;
mod loss;
mod most;
mod moves;
mod ready;
mod reasons;
mod search;
mod table;

use std::ops::ControlFlow;

pub use breach::{Breach, breaches};
pub use loss::{Apart, Changes, Losses, NoQuiet, Reordered, Waits, WaterLast, Weights, losses};
pub use reasons::{Reason, fewest_turns};

use first::First;
use ready::Ready;

/// What is to be arranged.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Rotation {
    /// The stations.
    pub stations: Vec<Station>,
    /// Those who go round.
    pub participants: Vec<Participant>,
    /// Pairs who would like to be at their common stations in the same turns.
    pub friends: Vec<(usize, usize)>,
    /// How many can be in the water in one turn.
    pub water: Water,
    /// How many turns there are; `None` asks for as few as possible. More than a thousand are not
    /// tried.
    pub turns: Option<usize>,
}

/// A place where something is done during a turn.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Station {
    /// How many participants can be there in one turn.
    pub capacity: usize,
    /// Whether it is in the water.
    pub water: bool,
    /// Whether it is a quiet place, good to come to after the water.
    pub quiet: bool,
    /// Where it is: going between stations of one place is no change of place.
    pub place: usize,
    /// The people it takes.
    pub people: People,
}

/// How many people a station takes in a turn in which someone is there.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum People {
    /// So many for each participant.
    Each(usize),
    /// So many together, whoever comes.
    Together(usize),
}

/// One who goes round.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Participant {
    /// The stations to be visited, each once, in the wished order.
    pub wishes: Vec<usize>,
    /// Visits that are settled; their stations are among the wishes.
    pub fixed: Vec<Visit>,
}

/// A station in a turn.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Visit {
    /// The turn.
    pub turn: usize,
    /// The station.
    pub station: usize,
}

/// How many participants can be in the water in one turn, over all its stations together.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub enum Water {
    /// As many as the stations hold.
    #[default]
    AsStations,
    /// So many in every turn.
    Every(usize),
    /// So many in the first turn, the second and so on; nobody in turns after the last of these.
    Each(Vec<usize>),
}

/// Whether exactly these participants (in rising order, never none) can be in the water in a turn.
/// Whoever answers yes for some must answer yes for fewer of them as well.
pub type Paired<'a> = &'a dyn Fn(usize, &[usize]) -> bool;

/// Is told now and then how much is done, from 0 to 1, and may break off.
pub type Progress<'a> = dyn FnMut(f32) -> ControlFlow<()> + 'a;

/// How much is tried. Steps, not time: what comes out depends on nothing else.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Effort {
    /// Steps of the search for a first plan, for each number of turns, where no theorem decides.
    pub search: usize,
    /// Steps of improving it.
    pub improve: usize,
    /// Where the numbers that look like chance begin.
    pub seed: u64,
    /// What the losses weigh.
    pub weights: Weights,
}

impl Default for Effort {
    /// Twenty participants, six stations and six turns take well under a second.
    fn default() -> Self {
        Self {
            search: 50_000,
            improve: 1_000_000,
            seed: 1,
            weights: Weights::default(),
        }
    }
}

impl Effort {
    /// A first plan, not improved.
    pub fn first() -> Self {
        Self {
            improve: 0,
            ..Self::default()
        }
    }
}

/// What came out.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Answer {
    /// There is a plan; this is the best that was found.
    Found(Plan),
    /// It is proved that there is none, and this is why.
    Impossible(Vec<Reason>),
    /// None was found, and that there is none is not proved either.
    NotFound(NotFound),
}

/// What was tried in vain.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct NotFound {
    /// The most turns that were tried; none if they would be too many.
    pub turns: usize,
    /// What stands in the way with so many turns, as far as it is known.
    pub reasons: Vec<Reason>,
    /// Whether it was broken off from outside.
    pub stopped: bool,
}

/// Who is where in which turn.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Plan {
    /// How many turns.
    pub turns: usize,
    /// Whether it is proved that fewer turns are not enough. Always false where the number of turns
    /// was given and fewer might do.
    pub fewest: bool,
    /// For each participant the station of each turn; `None` is waiting.
    pub rows: Vec<Vec<Option<usize>>>,
    /// What was lost of the wishes.
    pub losses: Losses,
    /// The losses by their weights.
    pub cost: u64,
    /// Whether improving was broken off from outside.
    pub stopped: bool,
}

impl Plan {
    /// Who is at a station in a turn.
    pub fn at(&self, turn: usize, station: usize) -> Vec<usize> {
        let there = |p: &usize| self.rows[*p].get(turn) == Some(&Some(station));
        (0..self.rows.len()).filter(there).collect()
    }

    /// How many people the stations take in a turn.
    pub fn people(&self, rotation: &Rotation, turn: usize) -> usize {
        let stations = rotation.stations.iter().enumerate();
        let each = stations.map(
            |(s, station)| match (self.at(turn, s).len(), station.people) {
                (0, _) => 0,
                (n, People::Each(k)) => n * k,
                (_, People::Together(k)) => k,
            },
        );
        each.sum()
    }
}

impl Water {
    /// How many can be in the water in a turn, as far as this says.
    pub fn limit(&self, turn: usize) -> usize {
        match self {
            Self::AsStations => usize::MAX,
            Self::Every(n) => *n,
            Self::Each(list) => list.get(turn).copied().unwrap_or(0),
        }
    }
}

/// Arranges stations in turns: a plan that keeps every limit, in as few turns as possible if their
/// number is not given, then with as little lost of the wishes as the effort finds.
pub fn rotate(
    rotation: &Rotation,
    paired: Option<Paired>,
    effort: &Effort,
    progress: &mut Progress,
) -> Answer {
    let first = match first::first(rotation, paired, effort, progress) {
        First::Found(first) => first,
        First::Impossible(reasons) => return Answer::Impossible(reasons),
        First::NotFound(not) => return Answer::NotFound(not),
    };
    let ready = Ready::new(rotation, paired, effort.weights, first.turns);
    let (rows, stopped) = improve::improve(&ready, first.rows, effort, progress);
    let losses = losses(rotation, &rows);
    Answer::Found(Plan {
        turns: first.turns,
        fewest: first.fewest,
        cost: losses.cost(&effort.weights),
        rows,
        losses,
        stopped,
    })
}
