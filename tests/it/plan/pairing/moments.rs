//! Single moments against brute force: all small ones, and random ones with everything in them.

use daystrand::plan::pairing::{Bond, Moment, Pair, Paired, SMALLEST_UP_TO, moment};

use super::brute::{best, key, lacking};
use super::{Numbers, pair, water};

/// Every graph of up to four participants and four people with needs of one and two; participants
/// in order, for which of them is the first makes no other graph.
#[test]
fn all_small_moments() {
    let mut seen = 0;
    for people in 0..=4 {
        let kinds: Vec<(u32, u32)> = (0..1 << people)
            .flat_map(|mask| [(mask, 1), (mask, 2)])
            .collect();
        for count in 0..=4 {
            multisets(kinds.len(), count, &mut |chosen| {
                let chosen: Vec<_> = chosen.iter().map(|&k| kinds[k]).collect();
                small(&chosen, people);
                seen += 1;
            });
        }
    }
    // With k kinds of participants there are C(k + 4, 4) lists of up to four; k is 2, 4, 8, 16, 32.
    assert_eq!(seen, 15 + 70 + 495 + 4_845 + 58_905);
}

/// All ascending lists of so many numbers below `kinds`.
fn multisets(kinds: usize, count: usize, each: &mut impl FnMut(&[usize])) {
    let mut list = vec![0; count];
    loop {
        each(&list);
        let Some(at) = (0..count).rev().find(|&i| list[i] + 1 < kinds) else {
            return;
        };
        let next = list[at] + 1;
        list[at..].fill(next);
    }
}

fn small(chosen: &[(u32, u32)], people: usize) {
    let needs: Vec<u32> = chosen.iter().map(|c| c.1).collect();
    let bond = |yes| if yes { Bond::Plain } else { Bond::Never };
    let row = |c: &(u32, u32)| (0..people).map(|p| bond(c.0 >> p & 1 == 1)).collect();
    let bonds: Vec<Vec<Bond>> = chosen.iter().map(row).collect();
    let water = water(&needs, people);
    let paired = moment(&water, &bonds, &[]);
    let (least, ways) = best(&water, &bonds, &[], &[]);
    assert_eq!(paired.missing, least.0, "{chosen:?} {people}");
    assert_eq!(
        Some(&paired.pairs),
        ways.iter().min(),
        "{chosen:?} {people}"
    );
    shortage(&paired, &water, &bonds);
}

/// The shortage is one; no part of it is; with few participants no set with fewer participants is.
fn shortage(paired: &Paired, water: &Moment, bonds: &[Vec<Bond>]) {
    let lacking = lacking(water, bonds);
    let most = lacking.iter().copied().max().unwrap_or(0);
    assert_eq!(
        i64::from(paired.missing),
        most,
        "Hall's theorem with a place for each person"
    );
    let Some(shortage) = &paired.shortage else {
        assert!(paired.is_full());
        return;
    };
    let slot = |p: &usize| {
        water
            .in_water
            .iter()
            .position(|n| n.participant == *p)
            .unwrap()
    };
    let set: usize = shortage.participants.iter().map(|p| 1 << slot(p)).sum();
    assert_eq!(i64::from(shortage.missing), lacking[set]);
    assert!(lacking[set] > 0);
    for other in (1..lacking.len()).filter(|&other| lacking[other] > 0 && other != set) {
        assert!(other & set != other, "a part of it is short");
        if water.in_water.len() <= SMALLEST_UP_TO {
            let (fewer, own) = (other.count_ones(), set.count_ones());
            assert!(fewer >= own, "fewer are short");
            // Of as many the one with the lower numbers: it has the lowest that only one has.
            let lowest = (other ^ set) & (other ^ set).wrapping_neg();
            assert!(fewer > own || set & lowest != 0, "lower numbers are short");
        }
    }
    let has = |p: &usize| {
        shortage
            .participants
            .iter()
            .any(|&s| bonds[s][*p] != Bond::Never)
    };
    let people: Vec<usize> = water.free.iter().copied().filter(has).collect();
    assert_eq!(shortage.people, people);
}

/// A random moment up to so many participants and people, all in order, bonds of all kinds, and
/// pairs to be kept the same.
fn random(numbers: &mut Numbers, most: usize) -> (Moment, Vec<Vec<Bond>>, Vec<Pair>) {
    let (participants, people) = (1 + numbers.below(most), 1 + numbers.below(most));
    let needs: Vec<u32> = (0..participants)
        .map(|_| 1 + numbers.below(8) as u32 / 6)
        .collect();
    let never = [0, 20, 50, 70][numbers.below(4)];
    let mut bond = || match numbers.below(100) {
        n if n < never => Bond::Never,
        n => [Bond::Plain, Bond::Plain, Bond::Trainer, Bond::Wanted][n % 4],
    };
    let bonds = (0..participants)
        .map(|_| (0..people).map(|_| bond()).collect())
        .collect();
    let mut same: Vec<Pair> = (0..people)
        .map(|p| pair(numbers.below(participants), p))
        .filter(|p| p.person % 3 > 0)
        .collect();
    same.sort_unstable();
    (water(&needs, people), bonds, same)
}

#[test]
fn random_moments_with_bonds_and_pairs_to_keep() {
    let mut numbers = Numbers(1);
    let mut short = 0;
    for case in 0..400 {
        let (water, bonds, same) = random(&mut numbers, 6);
        let paired = moment(&water, &bonds, &same);
        let (least, ways) = best(&water, &bonds, &[], &same);
        let ours = key(&water, &bonds, &[], &same, &paired.pairs);
        assert_eq!(ours, least, "{case}: {water:?} {bonds:?}");
        assert_eq!(
            Some(&paired.pairs),
            ways.iter().min(),
            "{case}: lowest numbers"
        );
        shortage(&paired, &water, &bonds);
        short += usize::from(!paired.is_full());
    }
    assert!((100..300).contains(&short), "both kinds come up: {short}");
}

#[test]
fn random_moments_with_pairs_held_by_hand() {
    let mut numbers = Numbers(2);
    let (mut kept, mut broken, mut by_hand) = (0, 0, 0);
    for case in 0..400 {
        let (mut water, bonds, same) = random(&mut numbers, 5);
        let (participants, people) = (bonds.len(), bonds[0].len());
        let held = 1 + numbers.below(3);
        water.held = (0..held)
            .map(|_| pair(numbers.below(participants + 1), numbers.below(people + 1)))
            .collect();
        let paired = moment(&water, &bonds, &same);
        let possible: Vec<Pair> = {
            let is_broken = |h: &&Pair| paired.broken.iter().any(|b| b.pair == **h);
            water
                .held
                .iter()
                .filter(|h| !is_broken(h))
                .copied()
                .collect()
        };
        for pair in &possible {
            assert!(
                paired.pairs.contains(pair),
                "{case}: {pair:?} is not broken and not kept"
            );
        }
        // The first of them is broken only when these two could not be at all.
        let first = water.held[0];
        let row = bonds
            .get(first.participant)
            .and_then(|r| r.get(first.person));
        assert_eq!(
            possible.contains(&first),
            row.is_some_and(|b| *b != Bond::Never)
        );
        let (least, ways) = best(&water, &bonds, &possible, &same);
        assert_eq!(paired.missing, least.0, "{case}");
        assert_eq!(
            Some(&paired.pairs),
            ways.iter().min(),
            "{case}: {water:?} {bonds:?}"
        );
        let (loose, _) = best(&water, &bonds, &[], &[]);
        if let Some(shortage) = &paired.shortage {
            assert_eq!(shortage.by_hand, loose.0 == 0, "{case}");
            by_hand += usize::from(shortage.by_hand);
        }
        kept += possible.len();
        broken += paired.broken.len();
    }
    assert!(
        kept > 200 && broken > 100 && by_hand > 5,
        "{kept} {broken} {by_hand}"
    );
}

/// With more than twelve in the water the shortage is minimal, though perhaps not the smallest.
#[test]
fn shortages_among_many() {
    let mut numbers = Numbers(3);
    let mut short = 0;
    for _ in 0..60 {
        let count = SMALLEST_UP_TO + 1 + numbers.below(2);
        let needs: Vec<u32> = (0..count)
            .map(|_| 1 + numbers.below(8) as u32 / 7)
            .collect();
        let people = 16 + numbers.below(6);
        let mut row = || -> Vec<Bond> {
            let bond = |yes| if yes { Bond::Plain } else { Bond::Never };
            (0..people).map(|_| bond(numbers.chance(20))).collect()
        };
        let bonds: Vec<_> = (0..count).map(|_| row()).collect();
        let water = water(&needs, people);
        let paired = moment(&water, &bonds, &[]);
        shortage(&paired, &water, &bonds);
        short += usize::from(!paired.is_full());
    }
    assert!((15..60).contains(&short), "both kinds come up: {short}");
}
