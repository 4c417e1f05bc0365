//! Boards in strips: against brute force, and as people expect them.

use std::ops::Range;
use std::sync::Arc;

use daystrand::model::board::derive;
use daystrand::model::edit::{BoardEdit, Edit, apply};
use daystrand::model::hand::Content;
use daystrand::model::ids::StepRef;
use daystrand::model::manner::Reach;
use daystrand::plan::chunks::{chunks, split};
use proptest::prelude::*;

use crate::fixture;
use crate::model::random;

fn sizes(runs: &[Range<usize>]) -> Vec<usize> {
    runs.iter().map(ExactSizeIterator::len).collect()
}

/// Every way to cut `n` things into runs.
fn ways(n: usize) -> Vec<Vec<Range<usize>>> {
    (0..1_u32 << n.saturating_sub(1))
        .map(|cuts| {
            let mut from = 0;
            let mut runs = Vec::new();
            for i in 1..=n {
                if i == n || cuts >> (i - 1) & 1 == 1 {
                    runs.push(from..i);
                    from = i;
                }
            }
            runs
        })
        .collect()
}

/// Fewest runs, then least cost of breaks, then the longest runs first.
fn key(runs: &[Range<usize>], breaks: &[u64]) -> (usize, u64, Vec<std::cmp::Reverse<usize>>) {
    let cut = runs[..runs.len() - 1].iter().map(|r| breaks[r.end - 1]);
    let sizes = runs.iter().map(|r| std::cmp::Reverse(r.len()));
    (runs.len(), cut.sum(), sizes.collect())
}

proptest! {
    #![proptest_config(crate::chance::cases(256))]

    #[test]
    fn no_other_way_is_better(
        things in prop::collection::vec((0..3_usize, 0..3_u64), 1..11),
        most in 1..5_usize,
    ) {
        let weights: Vec<usize> = things.iter().map(|t| t.0).collect();
        let breaks: Vec<u64> = things.iter().map(|t| t.1).collect();
        let fits = |r: &Range<usize>| {
            r.len() == 1 || weights[r.clone()].iter().sum::<usize>() <= most
        };
        let best = ways(weights.len())
            .into_iter()
            .filter(|runs| runs.iter().all(fits))
            .min_by_key(|runs| key(runs, &breaks))
            .unwrap();
        prop_assert_eq!(split(&weights, &breaks, most), best);
    }

    /// Whatever was done to a board, its strips together are the board, none is longer than asked,
    /// and what comes instead stands beside what is not today.
    #[test]
    fn strips_are_the_board(seeds in random::seeds(40), reach in 0..5_usize) {
        let club = random::club(&seeds);
        let reach = Reach::ALL[reach];
        for session in &club.sessions {
            for who in &club.participants {
                let board = derive(&club, session, who.id);
                let strips = chunks(&club, &board, reach);
                let all: Vec<usize> = strips.iter().cloned().flatten().collect();
                prop_assert_eq!(all, (0..board.steps.len()).collect::<Vec<_>>());
                for strip in &strips {
                    let steps = &board.steps[strip.clone()];
                    let done = steps.iter().filter(|s| {
                        s.state != daystrand::model::board::StepState::NotToday
                    });
                    prop_assert!(done.count() <= reach.steps().unwrap_or(usize::MAX));
                }
            }
        }
    }
}

/// Common practice, no published source: a session of seven steps shown two at a time is four
/// strips, the last with one step.
#[test]
fn seven_steps_by_two_are_2_2_2_1() {
    assert_eq!(sizes(&split(&[1; 7], &[1; 6], 2)), [2, 2, 2, 1]);
}

/// A strip ends where the day has a break, if that costs no further strip.
#[test]
fn a_strip_ends_at_a_natural_break() {
    // A change of place after the third of seven.
    let breaks = [1, 1, 0, 1, 1, 1];
    assert_eq!(sizes(&split(&[1; 7], &breaks, 2)), [2, 1, 2, 2]);
    // Not where it would cost one: two by two is three strips of six, whatever the breaks.
    let breaks = [0, 1, 0, 1, 0];
    assert_eq!(sizes(&split(&[1; 6], &breaks, 2)), [2, 2, 2]);
}

#[test]
fn a_change_of_place_is_a_natural_break() {
    let mut club = random::start();
    // Circle, Song, Boat, Swim, Song, Snack: the second song is at the jetty, as the boat and swim.
    let part = club.parts[0].id;
    for (i, place) in ["field", "field", "jetty", "jetty", ""].iter().enumerate() {
        let activity = Arc::make_mut(&mut club.activities[i]);
        activity.place = (*place).into();
        activity.part = part;
    }
    let session = fixture::session_mut(&mut club);
    session.timetable.iter_mut().for_each(|s| s.part = part);
    session.timetable.remove(1);
    // Circle | Boat Swim | Song Snack; not Circle Boat | Swim Song | Snack.
    let board = derive(&club, &club.sessions[0], club.participants[0].id);
    let strips = chunks(&club, &board, Reach::FirstThen);
    assert_eq!(sizes(&strips), [1, 2, 2]);
}

/// A step that is not today takes no room, and what comes instead is on the same strip.
#[test]
fn not_today_takes_no_room() {
    let mut club = random::start();
    let (s, p) = (club.sessions[0].id, club.participants[0].id);
    let row = StepRef::Slot(club.sessions[0].timetable[1].id);
    let instead = Content::of(&club.activities[4]);
    let edit = Edit::Board(s, p, BoardEdit::NotToday(row, Some(instead)));
    club = apply(&club, &edit).unwrap().0;
    let board = derive(&club, &club.sessions[0], p);
    assert_eq!(board.steps.len(), 7);
    let strips = chunks(&club, &board, Reach::FirstThen);
    assert_eq!(sizes(&strips), [3, 2, 2]);
    assert_eq!(sizes(&chunks(&club, &board, Reach::One)).len(), 6);
    assert_eq!(sizes(&chunks(&club, &board, Reach::Whole)), [7]);
}
