//! The moments of a session together: who comes when, whom they may have in the best pairs of each
//! moment, and how often they change.

use std::collections::BTreeMap;

use super::scene::{Scene, Sets};
use super::{Day, Handover, PairedDay, paired};

/// The people of every slot in every moment.
pub(super) type Choice = Vec<Sets>;

/// A moment of a participant: the number of the moment and their slot in it.
pub(super) type Visit = (usize, usize);

/// What is to be small: first handovers, then people who come or go in them.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord)]
pub(super) struct Tally {
    pub handovers: usize,
    pub changed: usize,
}

impl Tally {
    /// With one participant's step from one set of people to the next.
    pub fn and(mut self, from: &[usize], to: &[usize]) -> Self {
        if from != to {
            let gone = from.iter().filter(|p| !to.contains(p)).count();
            let new = to.iter().filter(|p| !from.contains(p)).count();
            self.handovers += 1;
            self.changed += gone + new;
        }
        self
    }
}

/// A session made ready.
pub(super) struct Whole {
    pub scenes: Vec<Scene>,
    /// Whether everyone has all their people in the best pairs of a moment.
    pub full: Vec<bool>,
    /// By moment, slot and column: whether that pair is in some best way to pair the moment. Only
    /// such pairs come up: handovers count less than everything that makes a way best.
    pub may: Vec<Vec<Vec<bool>>>,
    /// The moments of each participant, in order of time; participants in order.
    pub visits: Vec<(usize, Vec<Visit>)>,
    /// By moment and slot: the participant's moment before.
    pub before: Vec<Vec<Option<Visit>>>,
    /// By moment and slot: their moment after.
    pub after: Vec<Vec<Option<Visit>>>,
}

impl Whole {
    pub fn new(day: &Day) -> Self {
        let scene = |moment| Scene::new(moment, &day.bonds);
        let scenes: Vec<Scene> = day.moments.iter().map(scene).collect();
        let mut visits: BTreeMap<usize, Vec<Visit>> = BTreeMap::new();
        for (at, scene) in scenes.iter().enumerate() {
            for (slot, need) in scene.needs.iter().enumerate() {
                visits.entry(need.participant).or_default().push((at, slot));
            }
        }
        let nobody: Vec<Vec<Option<Visit>>> =
            scenes.iter().map(|s| vec![None; s.needs.len()]).collect();
        let (mut before, mut after) = (nobody.clone(), nobody);
        for pair in visits.values().flat_map(|v| v.windows(2)) {
            let (from, to) = (pair[0], pair[1]);
            after[from.0][from.1] = Some(to);
            before[to.0][to.1] = Some(from);
        }
        Self {
            full: scenes.iter().map(Scene::can_be_full).collect(),
            may: scenes.iter().map(may).collect(),
            scenes,
            visits: visits.into_iter().collect(),
            before,
            after,
        }
    }

    /// Nobody chosen yet.
    pub fn nobody(&self) -> Choice {
        self.scenes
            .iter()
            .map(|s| vec![Vec::new(); s.needs.len()])
            .collect()
    }

    /// Whether a participant may have a person at a visit.
    pub fn may_be(&self, (at, slot): Visit, person: usize) -> bool {
        let column = self.scenes[at].people.binary_search(&person);
        column.is_ok_and(|c| self.may[at][slot][c])
    }

    pub fn tally(&self, choice: &Choice) -> Tally {
        let steps = self.visits.iter().flat_map(|(_, visits)| visits.windows(2));
        steps.fold(Tally::default(), |tally, step| {
            tally.and(people(choice, step[0]), people(choice, step[1]))
        })
    }

    /// What is said of the day with these people.
    pub fn finish(&self, choice: &Choice, day: &Day, fewest: bool) -> PairedDay {
        let moments = self.scenes.iter().zip(choice).zip(&day.moments);
        let mut handovers = Vec::new();
        for (participant, visits) in &self.visits {
            for step in visits.windows(2) {
                if people(choice, step[0]) != people(choice, step[1]) {
                    handovers.push(Handover {
                        participant: *participant,
                        from: step[0].0,
                        to: step[1].0,
                    });
                }
            }
        }
        PairedDay {
            moments: moments
                .map(|((s, sets), m)| paired(s, sets, m, &day.bonds))
                .collect(),
            handovers,
            fewest,
        }
    }
}

/// The people chosen for a visit.
pub(super) fn people(choice: &Choice, (at, slot): Visit) -> &[usize] {
    &choice[at][slot]
}

/// By slot and column whether the pair is in some best way.
fn may(scene: &Scene) -> Vec<Vec<bool>> {
    let seating = scene.solve(None);
    let mut may = vec![vec![false; scene.people.len()]; scene.needs.len()];
    for (place, &slot) in scene.places.iter().enumerate() {
        for (column, may) in may[slot].iter_mut().enumerate() {
            *may = *may || seating.may(place, column);
        }
    }
    may
}
