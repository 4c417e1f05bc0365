//! What is tried when sweeps from the usual starts leave more handovers than there must be: one
//! participant and one person pulled together over a stretch of time, starts with likings drawn by
//! lot that last all day, and all that came up so far put together anew.

use super::exact;
use super::sweeps::{Pull, Sweeps, strong};
use super::whole::{Choice, Visit, Whole, people};

/// Moments paired anew in one search over stretches, at most: it ends in reasonable time.
const BUDGET: usize = 1_000;
/// Starts drawn by lot.
const LOTS: u64 = 12;

/// Goes on from a choice until there are `least` handovers or nothing more is found.
pub(super) fn improve(sweeps: &mut Sweeps, choice: Choice, least: usize) -> Choice {
    let mut best = stretches(sweeps, choice, least);
    for lot in 0..LOTS {
        if sweeps.whole.tally(&best).handovers <= least {
            return best;
        }
        let whole = sweeps.whole;
        let worth = |at: usize, slot: usize, column: usize| {
            let scene = &whole.scenes[at];
            liking(lot, scene.needs[slot].participant, scene.people[column])
        };
        // Half of the starts keep people whatever the liking, half follow the liking.
        let pull = Pull::both(if lot % 2 == 0 { 1 << 20 } else { 0 });
        let found = sweeps.start(lot % 4 < 2, pull, worth);
        best = sweeps.better_of(Some(best), found);
    }
    if let Some(joined) = exact::among(sweeps.whole, &sweeps.ways()) {
        best = sweeps.better_of(Some(best), joined);
    }
    stretches(sweeps, best, least)
}

/// How much a participant likes a person in one of the lots: mostly a matter of the participant, so
/// that where people are short it is the same ones who have them. Mixed as in the generator of
/// Steele, Lea and Flood 2014 ("SplitMix").
fn liking(lot: u64, participant: usize, person: usize) -> i64 {
    let mix = |n: u64| {
        let z = n.wrapping_add(lot + 1).wrapping_mul(0x9e37_79b9_7f4a_7c15);
        let z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        let z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        (z ^ (z >> 31)) % 64
    };
    let (who, whom) = (participant as u64, person as u64);
    (64 * mix(who << 32) + mix((who << 32) + whom + 1)) as i64
}

/// Wherever someone gets other people, each person who could be with them on both sides is pulled
/// to them over every stretch of time around it, and what gets better is kept.
fn stretches(sweeps: &mut Sweeps, mut choice: Choice, least: usize) -> Choice {
    let mut budget = BUDGET;
    while sweeps.whole.tally(&choice).handovers > least {
        match better(sweeps, &choice, &mut budget) {
            Some(found) => choice = found,
            None => break,
        }
    }
    choice
}

fn better(sweeps: &mut Sweeps, choice: &Choice, budget: &mut usize) -> Option<Choice> {
    let whole = sweeps.whole;
    let now = whole.tally(choice);
    for (_, visits) in &whole.visits {
        for (k, step) in visits.windows(2).enumerate() {
            if people(choice, step[0]) == people(choice, step[1]) {
                continue;
            }
            for &person in &whole.scenes[step[0].0].people {
                for stretch in around(whole, visits, k, person) {
                    let cost = stretch.len() + 3 * whole.scenes.len();
                    *budget = budget.checked_sub(cost)?;
                    let pulled = pulled(sweeps, choice, stretch, person);
                    let tried = sweeps.rounds(pulled);
                    if whole.tally(&tried) < now {
                        return Some(tried);
                    }
                }
            }
        }
    }
    None
}

/// The stretches of visits with both `k` and the one after it in which the person may always be with
/// the participant: the longest, and those that end on one side or on both with these two.
fn around<'a>(whole: &Whole, visits: &'a [Visit], k: usize, person: usize) -> Vec<&'a [Visit]> {
    let may = |i: &usize| whole.may_be(visits[*i], person);
    let first = (0..=k).rev().take_while(may).last();
    let last = (k + 1..visits.len()).take_while(may).last();
    let (Some(first), Some(last)) = (first, last) else {
        return Vec::new();
    };
    let mut ends = vec![(first, last), (k, last), (first, k + 1), (k, k + 1)];
    ends.dedup();
    ends.into_iter().map(|(a, b)| &visits[a..=b]).collect()
}

/// A choice in which a person is with a participant over a stretch of their visits.
fn pulled(sweeps: &mut Sweeps, choice: &Choice, stretch: &[Visit], person: usize) -> Choice {
    let whole = sweeps.whole;
    let mut choice = choice.clone();
    let weight = strong(whole);
    for &(at, own) in stretch {
        let drawn = |slot: usize, column: usize| {
            let is_it = slot == own && whole.scenes[at].people[column] == person;
            if is_it { weight * weight } else { 0 }
        };
        choice[at] = sweeps.again(&choice, at, Pull::both(weight), drawn);
    }
    choice
}
