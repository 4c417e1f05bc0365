//! Why not everyone can have the people they need: participants who together need more people than
//! there are for them. By Hall's theorem (P. Hall, On representatives of subsets, Journal of the
//! London Mathematical Society 10, 1935, 26-30), with a place for each person needed, there are
//! such participants exactly when not all places can be filled.

use std::cmp::Reverse;

use super::scene::Scene;
use super::{Bond, Moment, SMALLEST_UP_TO, Shortage};

/// The shortage of a moment whose places cannot all be filled.
pub(super) fn shortage(scene: &Scene, moment: &Moment, bonds: &[Vec<Bond>]) -> Shortage {
    let slots = if scene.needs.len() <= SMALLEST_UP_TO {
        smallest(scene)
    } else {
        minimal(scene)
    };
    let people: Vec<usize> = (0..scene.people.len())
        .filter(|&c| slots.iter().any(|&s| scene.bonds[s][c] != Bond::Never))
        .map(|c| scene.people[c])
        .collect();
    let missing = needed(scene, &slots).saturating_sub(people.len() as u64);
    let loose = Moment {
        held: Vec::new(),
        ..moment.clone()
    };
    Shortage {
        participants: slots.iter().map(|&s| scene.needs[s].participant).collect(),
        people,
        missing: u32::try_from(missing).unwrap_or(u32::MAX),
        by_hand: !moment.held.is_empty() && Scene::new(&loose, bonds).can_be_full(),
    }
}

fn needed(scene: &Scene, slots: &[usize]) -> u64 {
    slots
        .iter()
        .map(|&s| u64::from(scene.needs[s].people))
        .sum()
}

/// Among all sets that are short the one with fewest participants, lowest numbers first: every set
/// is looked at. With fewest, no part of it is short.
fn smallest(scene: &Scene) -> Vec<usize> {
    let slots = scene.needs.len();
    let members = |set: u32| (0..slots).filter(move |s| set >> s & 1 == 1);
    // Who may be with whom, the other way round: a set has a person if it has one of theirs.
    let theirs = |column: usize| {
        let may = (0..slots).filter(|&s| scene.bonds[s][column] != Bond::Never);
        may.map(|s| 1 << s).sum::<u32>()
    };
    let theirs: Vec<u32> = (0..scene.people.len()).map(theirs).collect();
    let is_short = |set: &u32| {
        let people = theirs.iter().filter(|t| *t & set != 0).count();
        let needs = members(*set).map(|s| u64::from(scene.needs[s].people));
        needs.sum::<u64>() > people as u64
    };
    let short = (1..1_u32 << slots).filter(is_short);
    let least = short.min_by_key(|set| (set.count_ones(), Reverse(set.reverse_bits())));
    least.map_or_else(Vec::new, |set| members(set).collect())
}

/// A set that is short and no part of which is: from all participants, those are left out, the last
/// first, without whom the rest still cannot be full. What is left cannot be full, so some part of
/// it is short; without any one of it the rest can be full, so that part is all of it. (To ask
/// whether the rest is itself short would not do: a short set may have a short part although it has
/// none that lacks just one.)
fn minimal(scene: &Scene) -> Vec<usize> {
    let mut kept: Vec<usize> = (0..scene.needs.len()).collect();
    for slot in (0..scene.needs.len()).rev() {
        let rest: Vec<usize> = kept.iter().copied().filter(|s| *s != slot).collect();
        if !scene.only(&rest).can_be_full() {
            kept = rest;
        }
    }
    kept
}
