//! A thousand random days: whatever comes in, no rule is broken.

use std::collections::BTreeMap;

use daystrand::plan::pairing::{Bond, Day, Moment, Need, Pair, PairedDay, day};

use super::{Numbers, pair};

/// A random day with people who come and go, doubles in the lists and pairs held by hand.
pub fn random_day(numbers: &mut Numbers) -> Day {
    let (participants, people) = (1 + numbers.below(8), 1 + numbers.below(10));
    let never = numbers.below(40);
    let mut bond = || match numbers.below(100) {
        n if n < never => Bond::Never,
        n => [
            Bond::Plain,
            Bond::Plain,
            Bond::Plain,
            Bond::Trainer,
            Bond::Wanted,
        ][n % 5],
    };
    let bonds = (0..participants)
        .map(|_| (0..people).map(|_| bond()).collect())
        .collect();
    let here = 40 + numbers.below(61);
    let moments = (0..1 + numbers.below(6)).map(|_| {
        let need = |participant, numbers: &mut Numbers| Need {
            participant,
            people: (numbers.below(9) as u32).div_ceil(7),
        };
        let who: Vec<usize> = (0..participants).filter(|_| numbers.chance(70)).collect();
        let in_water = who.iter().map(|&p| need(p, numbers)).collect();
        let mut free: Vec<usize> = (0..people).filter(|_| numbers.chance(here)).collect();
        free.reverse();
        let held = (0..numbers.below(3))
            .map(|_| pair(numbers.below(participants), numbers.below(people)))
            .collect();
        Moment {
            in_water,
            free,
            held,
        }
    });
    Day {
        moments: moments.collect(),
        bonds,
    }
}

/// What holds in every paired moment; full ones have exactly the people needed.
pub fn check(day: &Day, paired: &PairedDay) {
    assert_eq!(paired.moments.len(), day.moments.len());
    for (moment, paired) in day.moments.iter().zip(&paired.moments) {
        let mut with: BTreeMap<usize, u32> = BTreeMap::new();
        let mut people: Vec<usize> = paired.pairs.iter().map(|p| p.person).collect();
        for pair in &paired.pairs {
            *with.entry(pair.participant).or_default() += 1;
            assert!(moment.free.contains(&pair.person), "{pair:?} is not free");
            let bond = day.bonds[pair.participant][pair.person];
            assert_ne!(bond, Bond::Never, "{pair:?}");
        }
        people.sort_unstable();
        assert!(
            people.windows(2).all(|w| w[0] < w[1]),
            "with two at once: {people:?}"
        );
        let mut missing = 0;
        for need in &moment.in_water {
            let has = with.remove(&need.participant).unwrap_or(0);
            assert!(has <= need.people, "{need:?} has {has}");
            missing += need.people - has;
        }
        assert!(with.is_empty(), "not in the water: {with:?}");
        assert_eq!(paired.missing, missing);
        assert_eq!(paired.shortage.is_some(), missing > 0);
        let kept = |h: &&Pair| !paired.broken.iter().any(|b| b.pair == **h);
        assert!(
            moment
                .held
                .iter()
                .filter(kept)
                .all(|h| paired.pairs.contains(h))
        );
    }
    assert_eq!(paired.handovers.len(), handovers(day, paired));
}

/// Handovers counted anew, participant by participant.
pub fn handovers(day: &Day, paired: &PairedDay) -> usize {
    let mut last: BTreeMap<usize, Vec<usize>> = BTreeMap::new();
    let mut count = 0;
    for (moment, paired) in day.moments.iter().zip(&paired.moments) {
        for need in moment.in_water.iter().filter(|n| n.people > 0) {
            let now: Vec<usize> = paired.people_of(need.participant).collect();
            let before = last.insert(need.participant, now.clone());
            count += usize::from(before.is_some_and(|b| b != now));
        }
    }
    count
}

#[test]
fn a_thousand_random_days_break_no_rule() {
    let mut numbers = Numbers(4);
    let (mut full, mut short, mut proven) = (0, 0, 0);
    for _ in 0..1000 {
        let random = random_day(&mut numbers);
        let paired = day(&random);
        check(&random, &paired);
        full += paired.moments.iter().filter(|m| m.is_full()).count();
        short += paired.moments.iter().filter(|m| !m.is_full()).count();
        proven += usize::from(paired.fewest);
    }
    assert!(
        full > 1000 && short > 500,
        "both kinds come up: {full} {short}"
    );
    assert!(
        proven > 800,
        "the fewest handovers for certain in {proven} of 1000"
    );
}

#[test]
fn the_same_day_gives_the_same_pairs() {
    let mut numbers = Numbers(5);
    for _ in 0..50 {
        let random = random_day(&mut numbers);
        let mut shuffled = random.clone();
        for moment in &mut shuffled.moments {
            moment.free.reverse();
            moment.in_water.reverse();
        }
        assert_eq!(day(&random), day(&shuffled));
    }
}
