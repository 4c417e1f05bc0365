//! Boards that show less than the whole session: successive strips, broken where the day breaks.
//!
//! As few strips as the number of steps allows; among these the ones with fewest breaks in the
//! middle of things; among these the ones whose first strips are the fullest. A step that is not
//! today takes no room of its own, and what comes instead stands on the same strip.

use std::ops::Range;

use crate::model::board::{Board, Step, StepState};
use crate::model::club::Club;
use crate::model::ids::StepRef;
use crate::model::manner::Reach;

/// What a strip costs: more than all breaks of the longest board together.
const STRIP: u64 = 1_000_000;
/// What it costs to part a step that is not today from what comes instead.
const PARTED: u64 = 1_000;
/// What a break costs where neither place nor part of the day changes.
const AMID: u64 = 1;

/// The strips of a board, in order; together they are the whole board. None for an empty board.
pub fn chunks(club: &Club, board: &Board, reach: Reach) -> Vec<Range<usize>> {
    let steps = &board.steps;
    if steps.is_empty() {
        return Vec::new();
    }
    match (reach, reach.steps()) {
        (Reach::Part, _) => parts(steps),
        (_, Some(most)) => {
            let weights: Vec<usize> = steps.iter().map(weight).collect();
            split(&weights, &breaks(club, steps), most)
        }
        (_, None) => std::iter::once(0..steps.len()).collect(),
    }
}

/// Splits things of these weights into runs of at most `most`, at least cost. `breaks[i]` is what it
/// costs to break between thing `i` and the next. A run holds at least one thing, however heavy.
pub fn split(weights: &[usize], breaks: &[u64], most: usize) -> Vec<Range<usize>> {
    let n = weights.len();
    // From the end: the least cost of splitting what begins here, and where its first run ends.
    let mut best: Vec<(u64, usize)> = vec![(0, n); n + 1];
    for from in (0..n).rev() {
        let mut weight = 0;
        let mut least = (u64::MAX, n);
        for to in from + 1..=n {
            weight += weights[to - 1];
            if weight > most && to > from + 1 {
                break;
            }
            let cut = if to == n { 0 } else { breaks[to - 1] };
            let cost = STRIP + cut + best[to].0;
            // At the same cost the longer run comes first.
            if cost <= least.0 {
                least = (cost, to);
            }
        }
        best[from] = least;
    }
    let mut runs = Vec::new();
    let mut from = 0;
    while from < n {
        let to = best[from].1;
        runs.push(from..to);
        from = to;
    }
    runs
}

fn weight(step: &Step) -> usize {
    usize::from(step.state != StepState::NotToday)
}

/// What a break after each step but the last costs.
fn breaks(club: &Club, steps: &[Step]) -> Vec<u64> {
    let mut place: Option<&str> = None;
    let mut all = Vec::with_capacity(steps.len());
    for pair in steps.windows(2) {
        let (a, b) = (&pair[0], &pair[1]);
        place = place_of(club, a).or(place);
        let next = place_of(club, b);
        let moves = matches!((place, next), (Some(p), Some(n)) if p != n);
        let natural = moves || a.part != b.part;
        let instead = matches!((a.at, b.at), (StepRef::Slot(x), StepRef::Instead(y)) if x == y);
        all.push(match (instead, natural) {
            (true, _) => PARTED,
            (false, true) => 0,
            (false, false) => AMID,
        });
    }
    all
}

fn place_of<'a>(club: &'a Club, step: &Step) -> Option<&'a str> {
    let activity = club.activity(step.activity?)?;
    Some(activity.place.as_str()).filter(|p| !p.is_empty())
}

fn parts(steps: &[Step]) -> Vec<Range<usize>> {
    let mut all = Vec::new();
    let mut from = 0;
    for run in steps.chunk_by(|a, b| a.part == b.part) {
        all.push(from..from + run.len());
        from += run.len();
    }
    all
}
