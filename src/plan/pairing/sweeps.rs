//! Few handovers in days too large to try all ways: every moment is paired anew with the pairs of
//! the moments beside it as a bonus, over and over, until nothing gets better; from several starts.

use std::collections::BTreeSet;

use super::scene::{Bonus, Sets};
use super::whole::{Choice, Tally, Visit, Whole, people};

/// Times over the whole day before a start is left.
const ROUNDS: usize = 12;
/// So many ways to pair a moment are remembered.
const WAYS: usize = 100;

/// What a pair is worth when it is also in the participant's moment before and after.
#[derive(Clone, Copy)]
pub(super) struct Pull {
    before: i64,
    after: i64,
}

impl Pull {
    /// The same on both sides.
    pub const fn both(weight: i64) -> Self {
        Self {
            before: weight,
            after: weight,
        }
    }
}

/// A day that is swept, and the ways to pair its moments that came up.
pub(super) struct Sweeps<'a> {
    pub whole: &'a Whole,
    ways: Vec<BTreeSet<Sets>>,
}

impl<'a> Sweeps<'a> {
    pub fn new(whole: &'a Whole) -> Self {
        let ways = vec![BTreeSet::new(); whole.scenes.len()];
        Self { whole, ways }
    }

    /// The best of several starts: onwards and backwards in time, whom they had first or whom they
    /// can keep longest, and everyone with whom they could have for the longest time.
    pub fn starts(&mut self) -> Choice {
        let behind = reach(self.whole, &self.whole.before, false);
        let ahead = reach(self.whole, &self.whole.after, true);
        let both: Vec<Bonus> = behind
            .iter()
            .zip(&ahead)
            .map(|(b, a)| added(b, a))
            .collect();
        let most = strong(self.whole);
        let starts = [
            (&ahead, true, most),
            (&behind, false, most),
            (&ahead, true, 1),
            (&behind, false, 1),
            (&both, true, 0),
        ];
        let mut best: Option<Choice> = None;
        for (bonus, onwards, weight) in starts {
            let worth = |at: usize, slot: usize, column: usize| bonus[at][slot][column];
            let found = self.start(onwards, Pull::both(weight), worth);
            best = Some(self.better_of(best, found));
        }
        best.unwrap_or_else(|| self.whole.nobody())
    }

    /// Once over the day from nothing with a bonus by moment, slot and column, then rounds.
    pub fn start(
        &mut self,
        onwards: bool,
        pull: Pull,
        worth: impl Fn(usize, usize, usize) -> i64,
    ) -> Choice {
        let mut choice = self.whole.nobody();
        for at in in_order(self.whole, onwards) {
            choice[at] = self.again(&choice, at, pull, |slot, column| worth(at, slot, column));
        }
        self.rounds(choice)
    }

    /// The better of two, the first when they are equal.
    pub fn better_of(&self, first: Option<Choice>, second: Choice) -> Choice {
        match first {
            Some(first) if self.whole.tally(&first) <= self.whole.tally(&second) => first,
            _ => second,
        }
    }

    /// One moment anew.
    pub fn again(
        &mut self,
        choice: &Choice,
        at: usize,
        pull: Pull,
        extra: impl Fn(usize, usize) -> i64,
    ) -> Sets {
        let whole = self.whole;
        let scene = &whole.scenes[at];
        let mut bonus: Bonus = vec![vec![0; scene.people.len()]; scene.needs.len()];
        for (slot, row) in bonus.iter_mut().enumerate() {
            for (column, worth) in row.iter_mut().enumerate() {
                *worth = extra(slot, column);
            }
            let before = (whole.before[at][slot], pull.before);
            for (visit, pull) in [before, (whole.after[at][slot], pull.after)] {
                for person in visit.map_or(&[][..], |v| people(choice, v)) {
                    if let Ok(column) = scene.people.binary_search(person) {
                        row[column] += pull;
                    }
                }
            }
        }
        let sets = scene.solve(Some(&bonus)).sets(scene);
        if self.ways[at].len() < WAYS && !self.ways[at].contains(&sets) {
            self.ways[at].insert(sets.clone());
        }
        sets
    }

    /// All moments anew until nothing gets better, now onwards and now backwards. Between equals it
    /// leans to the side it comes from, so that a change of people wanders until it meets another.
    pub fn rounds(&mut self, mut choice: Choice) -> Choice {
        let (mut best, mut least) = (choice.clone(), self.whole.tally(&choice));
        let mut idle = 0;
        let weight = strong(self.whole);
        for round in 0..ROUNDS {
            let onwards = round % 2 == 0;
            let pull = Pull {
                before: weight + i64::from(onwards),
                after: weight + i64::from(!onwards),
            };
            for at in in_order(self.whole, onwards) {
                choice[at] = self.again(&choice, at, pull, |_, _| 0);
            }
            let tally = self.whole.tally(&choice);
            if tally < least {
                (best, least, idle) = (choice.clone(), tally, 0);
            } else {
                idle += 1;
            }
            if idle == 2 || least == Tally::default() {
                break;
            }
        }
        best
    }

    /// The ways to pair each moment that came up so far.
    pub fn ways(&self) -> Vec<Vec<Sets>> {
        self.ways
            .iter()
            .map(|ways| ways.iter().cloned().collect())
            .collect()
    }
}

/// More than all bonuses for long stretches in a moment together.
pub(super) fn strong(whole: &Whole) -> i64 {
    let places = whole
        .scenes
        .iter()
        .map(|s| s.places.len())
        .max()
        .unwrap_or(0);
    (places * 2 * whole.scenes.len() + 1) as i64
}

fn in_order(whole: &Whole, onwards: bool) -> Vec<usize> {
    let last = whole.scenes.len();
    if onwards {
        (0..last).collect()
    } else {
        (0..last).rev().collect()
    }
}

/// Through how many further moments of the participant each pair could last.
fn reach(whole: &Whole, next: &[Vec<Option<Visit>>], later: bool) -> Vec<Bonus> {
    let zero = |m: &Vec<Vec<bool>>| m.iter().map(|row| vec![0; row.len()]).collect();
    let mut reach: Vec<Bonus> = whole.may.iter().map(zero).collect();
    for at in in_order(whole, !later) {
        for (slot, beside) in next[at].iter().enumerate() {
            let Some((there, other)) = *beside else {
                continue;
            };
            for (column, person) in whole.scenes[at].people.iter().enumerate() {
                let found = whole.scenes[there].people.binary_search(person);
                let lasts = found.ok().filter(|&c| whole.may[there][other][c]);
                if let Some(c) = lasts {
                    reach[at][slot][column] = 1 + reach[there][other][c];
                }
            }
        }
    }
    reach
}

fn added(a: &Bonus, b: &Bonus) -> Bonus {
    let sum = |(a, b): (&Vec<i64>, &Vec<i64>)| a.iter().zip(b).map(|(a, b)| a + b).collect();
    a.iter().zip(b).map(sum).collect()
}
