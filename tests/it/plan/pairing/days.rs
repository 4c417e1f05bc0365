//! Whole days: by hand, and against all ways to pair all moments.

use daystrand::plan::pairing::{Bond, Day, Handover, Moment, Need, PairedDay, day, day_by_sweeps};

use super::brute::{best, key};
use super::{Numbers, bonds, pair, sound, water};

/// Moments in which these people are free, all participants in the water with one person each.
fn free(participants: usize, people: usize, each: &[&[usize]]) -> Day {
    let moment = |free: &&[usize]| Moment {
        free: free.to_vec(),
        ..water(&vec![1; participants], 0)
    };
    Day {
        moments: each.iter().map(moment).collect(),
        bonds: vec![vec![Bond::Plain; people]; participants],
    }
}

/// The people of a participant with one person, moment by moment.
fn who(paired: &PairedDay, participant: usize) -> Vec<Option<usize>> {
    paired
        .moments
        .iter()
        .map(|m| m.people_of(participant).next())
        .collect()
}

#[test]
fn the_person_who_can_stay_is_there_from_the_beginning() {
    // Person 0 leaves after two moments, person 1 stays.
    let paired = day(&free(1, 2, &[&[0, 1], &[0, 1], &[1], &[1]]));
    assert_eq!(who(&paired, 0), [Some(1); 4]);
    assert_eq!((paired.handovers.len(), paired.fewest), (0, true));
    // The other way round in time.
    let paired = day(&free(1, 2, &[&[1], &[1], &[0, 1], &[0, 1]]));
    assert_eq!(who(&paired, 0), [Some(1); 4]);
}

#[test]
fn someone_who_was_out_for_a_while_comes_back_to_the_same_person() {
    let mut back = free(2, 3, &[&[0, 1, 2], &[0, 1, 2], &[0, 1, 2]]);
    back.moments[1].in_water.remove(1);
    back.moments[0].held = vec![pair(1, 2)];
    let paired = day(&back);
    assert_eq!(who(&paired, 1), [Some(2), None, Some(2)]);
    assert!(paired.handovers.is_empty());
}

#[test]
fn a_handover_that_must_be_is_told_with_its_moments() {
    let paired = day(&free(1, 3, &[&[0, 1], &[1], &[2]]));
    let handover = Handover {
        participant: 0,
        from: 1,
        to: 2,
    };
    assert_eq!(paired.handovers, [handover]);
    assert!(paired.fewest);
}

#[test]
fn what_is_held_in_one_moment_draws_the_others_along() {
    let mut held = free(2, 2, &[&[0, 1], &[0, 1], &[0, 1]]);
    held.moments[1].held = vec![pair(0, 1)];
    let paired = day(&held);
    assert_eq!(who(&paired, 0), [Some(1); 3]);
    assert!(paired.handovers.is_empty());
}

#[test]
fn a_trainer_counts_more_than_a_handover() {
    let mut trained = free(1, 2, &[&[0], &[0, 1]]);
    trained.bonds = bonds(&["pt"]);
    let paired = day(&trained);
    assert_eq!(who(&paired, 0), [Some(0), Some(1)]);
    assert_eq!((paired.handovers.len(), paired.fewest), (1, true));
}

#[test]
fn two_people_at_once_stay_both() {
    let mut two = free(1, 4, &[&[0, 1, 2, 3], &[1, 2, 3], &[2, 3]]);
    for moment in &mut two.moments {
        moment.in_water[0].people = 2;
    }
    let paired = day(&two);
    assert!(paired.handovers.is_empty());
    assert_eq!(paired.moments[0].pairs, [pair(0, 2), pair(0, 3)]);
}

#[test]
fn a_day_without_moments() {
    let paired = day(&Day::default());
    assert!(paired.moments.is_empty() && paired.fewest);
}

/// A random small day, everything in order and nothing held.
fn small(numbers: &mut Numbers, moments: usize, participants: usize, people: usize) -> Day {
    let bond = |n: usize| match n {
        0..3 => Bond::Never,
        3..17 => Bond::Plain,
        17..19 => Bond::Trainer,
        _ => Bond::Wanted,
    };
    let row = |numbers: &mut Numbers| (0..people).map(|_| bond(numbers.below(20))).collect();
    let bonds = (0..participants).map(|_| row(numbers)).collect();
    let moment = |numbers: &mut Numbers| {
        let who: Vec<usize> = (0..participants).filter(|_| numbers.chance(80)).collect();
        let need = |participant| Need {
            participant,
            people: 1 + numbers.below(8) as u32 / 7,
        };
        Moment {
            in_water: who.into_iter().map(need).collect(),
            free: (0..people).filter(|_| numbers.chance(85)).collect(),
            held: vec![],
        }
    };
    Day {
        moments: (0..moments).map(|_| moment(numbers)).collect(),
        bonds,
    }
}

/// The fewest handovers, by all best ways of all moments.
fn fewest(day: &Day) -> usize {
    let ways: Vec<_> = day
        .moments
        .iter()
        .map(|m| best(m, &day.bonds, &[], &[]).1)
        .collect();
    let mut paired = PairedDay {
        moments: vec![Default::default(); ways.len()],
        ..Default::default()
    };
    let mut at = vec![0; ways.len()];
    let mut least = usize::MAX;
    loop {
        for (moment, (ways, &i)) in paired.moments.iter_mut().zip(ways.iter().zip(&at)) {
            moment.pairs.clone_from(&ways[i]);
        }
        least = least.min(sound::handovers(day, &paired));
        let Some(turn) = (0..at.len()).find(|&i| at[i] + 1 < ways[i].len()) else {
            return least;
        };
        at[..turn].fill(0);
        at[turn] += 1;
    }
}

/// All that `day` promises of single moments holds, and handovers are as few as can be.
#[test]
fn small_days_have_the_fewest_handovers() {
    let mut numbers = Numbers(6);
    let (mut some, mut swept) = (0, 0);
    for case in 0..300 {
        let (participants, people) = (1 + numbers.below(3), 2 + numbers.below(3));
        let random = small(&mut numbers, 3, participants, people);
        let paired = day(&random);
        sound::check(&random, &paired);
        for (m, p) in random.moments.iter().zip(&paired.moments) {
            let ours = key(m, &random.bonds, &[], &[], &p.pairs);
            assert_eq!(ours, best(m, &random.bonds, &[], &[]).0, "{case}");
        }
        let least = fewest(&random);
        assert!(paired.fewest, "{case}: small enough to be certain");
        assert_eq!(paired.handovers.len(), least, "{case}: {random:?}");
        some += usize::from(least > 0);
        let by_sweeps = day_by_sweeps(&random);
        sound::check(&random, &by_sweeps);
        assert!(by_sweeps.handovers.len() >= least, "{case}");
        assert!(
            !by_sweeps.fewest || by_sweeps.handovers.len() == least,
            "{case}: claimed"
        );
        swept += by_sweeps.handovers.len() - least;
    }
    assert!(some > 60, "handovers come up: {some}");
    // Without trying all ways; it was none too many when this was written.
    assert_eq!(swept, 0, "handovers more than needed in 300 small days");
}

/// Larger days, where trying all ways is still possible to compare with. Accepted is one handover
/// too many in one of a hundred days, and none where nobody is short of people. When this was
/// written the sweeps alone had the fewest in all 200 days.
#[test]
fn sweeps_alone_come_close_in_larger_days() {
    let mut numbers = Numbers(7);
    let (mut certain, mut equal) = (0, 0);
    for case in 0..200 {
        let random = small(&mut numbers, 6, 4, 5);
        let (exact, swept) = (day(&random), day_by_sweeps(&random));
        sound::check(&random, &swept);
        if !exact.fewest {
            continue;
        }
        certain += 1;
        let more = swept.handovers.len() - exact.handovers.len();
        let full = exact.moments.iter().all(|m| m.is_full());
        assert!(more <= usize::from(!full), "{case}: {more} more");
        equal += usize::from(more == 0);
    }
    assert!(certain >= 150, "certain in {certain} of 200");
    assert!(
        equal * 100 >= certain * 99,
        "fewest in {equal} of {certain}"
    );
}
