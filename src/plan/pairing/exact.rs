//! The fewest handovers for certain, by all ways to pair every moment, where they are few: from
//! moment to moment the best way to arrive at each state (who had whom last) is kept. With some of
//! the ways only, the best that can be put together from these.

use std::collections::BTreeMap;

use super::scene::Sets;
use super::whole::{Choice, Tally, Whole};

/// So many best ways to pair a single moment are looked at.
const WAYS: usize = 400;
/// So many steps from a state to a way of the next moment.
const STEPS: usize = 120_000;

/// For each participant the number of the set they had last; none before their first moment and
/// after their last, where it no longer matters.
type State = Vec<Option<usize>>;

/// How a state was arrived at: what it took, the way chosen, the state before.
type Arrival = (Tally, usize, usize);

/// The people of the day with fewest handovers, then fewest people changing; nothing when there
/// are too many ways to try.
pub(super) fn fewest(whole: &Whole) -> Option<Choice> {
    let ways: Option<Vec<Vec<Sets>>> = (0..whole.scenes.len()).map(|at| ways(whole, at)).collect();
    among(whole, &ways?)
}

/// The same among some ways to pair each moment.
pub(super) fn among(whole: &Whole, ways: &[Vec<Sets>]) -> Option<Choice> {
    let mut sets = Numbered::default();
    let mut steps = 0;
    let mut trail: Vec<Vec<Arrival>> = Vec::new();
    let mut states: Vec<State> = vec![vec![None; whole.visits.len()]];
    let mut tallies = vec![Tally::default()];
    for (at, ways) in ways.iter().enumerate() {
        steps += states.len() * ways.len();
        if steps > STEPS {
            return None;
        }
        let next = arrive(whole, at, ways, (&states, &tallies), &mut sets);
        let arrivals: Vec<Arrival> = next.values().copied().collect();
        tallies = arrivals.iter().map(|a| a.0).collect();
        states = next.into_keys().collect();
        trail.push(arrivals);
    }
    let mut at = tallies.iter().enumerate().min_by_key(|(i, t)| (**t, *i))?.0;
    let mut choice: Choice = Vec::new();
    for (arrivals, ways) in trail.iter().zip(ways).rev() {
        let (_, way, before) = arrivals[at];
        choice.push(ways[way].clone());
        at = before;
    }
    choice.reverse();
    Some(choice)
}

fn ways(whole: &Whole, at: usize) -> Option<Vec<Sets>> {
    let scene = &whole.scenes[at];
    let all = scene.solve(None).all(&scene.alike(), WAYS)?;
    Some(
        all.into_iter()
            .map(|columns| scene.sets_of(columns.into_iter()))
            .collect(),
    )
}

/// All states after a moment, each with the best way to it.
fn arrive(
    whole: &Whole,
    at: usize,
    ways: &[Sets],
    (states, tallies): (&[State], &[Tally]),
    sets: &mut Numbered,
) -> BTreeMap<State, Arrival> {
    let who = |slot: usize| {
        let participant = whole.scenes[at].needs[slot].participant;
        whole
            .visits
            .binary_search_by_key(&participant, |v| v.0)
            .ok()
    };
    let slots = whole.scenes[at].needs.len();
    let who: Vec<usize> = (0..slots).filter_map(who).collect();
    let mut next: BTreeMap<State, Arrival> = BTreeMap::new();
    for (w, way) in ways.iter().enumerate() {
        let numbers: Vec<usize> = way.iter().map(|set| sets.number(set)).collect();
        for (s, state) in states.iter().enumerate() {
            let mut tally = tallies[s];
            let mut after = state.clone();
            for (slot, &i) in who.iter().enumerate() {
                if let Some(last) = state[i] {
                    tally = tally.and(&sets.sets[last], &way[slot]);
                }
                after[i] = whole.after[at][slot].map(|_| numbers[slot]);
            }
            let arrival = (tally, w, s);
            let best = next.entry(after).or_insert(arrival);
            *best = arrival.min(*best);
        }
    }
    next
}

/// Sets of people, numbered as they come up.
#[derive(Default)]
struct Numbered {
    sets: Vec<Vec<usize>>,
    numbers: BTreeMap<Vec<usize>, usize>,
}

impl Numbered {
    fn number(&mut self, set: &[usize]) -> usize {
        if let Some(&number) = self.numbers.get(set) {
            return number;
        }
        self.sets.push(set.to_vec());
        self.numbers.insert(set.to_vec(), self.sets.len() - 1);
        self.sets.len() - 1
    }
}
