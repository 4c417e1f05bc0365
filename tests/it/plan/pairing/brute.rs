//! Every way to pair, one after the other: slow, and simple enough to be believed.

use std::cmp::Reverse;

use daystrand::plan::pairing::{Bond, Moment, Pair};

/// How good a way is, smallest first: empty places, then pairs held, wanted, with the trainer, same
/// as before.
pub type Key = (u32, [Reverse<usize>; 4]);

/// Calls with every way to pair a moment: each person with nobody or with someone they may be with.
pub fn every_way(moment: &Moment, bonds: &[Vec<Bond>], each: &mut impl FnMut(&[Pair])) {
    let mut left: Vec<u32> = moment.in_water.iter().map(|n| n.people).collect();
    go_on(moment, bonds, 0, &mut left, &mut Vec::new(), each);
}

fn go_on(
    moment: &Moment,
    bonds: &[Vec<Bond>],
    at: usize,
    left: &mut Vec<u32>,
    pairs: &mut Vec<Pair>,
    each: &mut impl FnMut(&[Pair]),
) {
    let Some(&person) = moment.free.get(at) else {
        return each(pairs);
    };
    go_on(moment, bonds, at + 1, left, pairs, each);
    for (slot, need) in moment.in_water.iter().enumerate() {
        let participant = need.participant;
        if left[slot] == 0 || bonds[participant][person] == Bond::Never {
            continue;
        }
        left[slot] -= 1;
        pairs.push(Pair {
            participant,
            person,
        });
        go_on(moment, bonds, at + 1, left, pairs, each);
        pairs.pop();
        left[slot] += 1;
    }
}

/// How good a way is. `kept` are the pairs held by hand that are possible.
pub fn key(
    moment: &Moment,
    bonds: &[Vec<Bond>],
    kept: &[Pair],
    same: &[Pair],
    pairs: &[Pair],
) -> Key {
    let needed: u32 = moment.in_water.iter().map(|n| n.people).sum();
    let with = |bond| {
        pairs
            .iter()
            .filter(move |p| bonds[p.participant][p.person] == bond)
            .count()
    };
    let levels = [
        kept.iter().filter(|k| pairs.contains(k)).count(),
        with(Bond::Wanted),
        with(Bond::Trainer),
        same.iter().filter(|s| pairs.contains(s)).count(),
    ];
    (needed - pairs.len() as u32, levels.map(Reverse))
}

/// The best key there is, and all ways that have it, pairs in order.
pub fn best(
    moment: &Moment,
    bonds: &[Vec<Bond>],
    kept: &[Pair],
    same: &[Pair],
) -> (Key, Vec<Vec<Pair>>) {
    let mut best: Option<(Key, Vec<Vec<Pair>>)> = None;
    every_way(moment, bonds, &mut |pairs| {
        // With what is held by hand come all ways that keep it, and no others.
        if !kept.iter().all(|k| pairs.contains(k)) {
            return;
        }
        let key = key(moment, bonds, kept, same, pairs);
        match &mut best {
            Some((least, _)) if *least < key => {}
            Some((least, ways)) if *least == key => ways.push(pairs.to_vec()),
            other => *other = Some((key, vec![pairs.to_vec()])),
        }
    });
    let (key, mut ways) = best.expect("what is possible by hand is possible");
    for way in &mut ways {
        way.sort_unstable();
    }
    (key, ways)
}

/// For every set of participants (a bit each) how many people it lacks; none or fewer: it has enough.
pub fn lacking(moment: &Moment, bonds: &[Vec<Bond>]) -> Vec<i64> {
    let count = moment.in_water.len();
    let set = |set: u32| {
        let members = || (0..count).filter(move |s| set >> s & 1 == 1);
        let needed: i64 = members()
            .map(|s| i64::from(moment.in_water[s].people))
            .sum();
        let has = |p: &&usize| {
            members().any(|s| bonds[moment.in_water[s].participant][**p] != Bond::Never)
        };
        needed - moment.free.iter().filter(has).count() as i64
    };
    (0..1_u32 << count).map(set).collect()
}
