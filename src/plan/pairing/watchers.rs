//! Who watches, counted apart from who is with someone. Common practice in the trade: adults in the
//! water who support one person do not count as watching; a watcher has no other job; groups in
//! separate areas are counted each on its own; there may be a least number whatever the sum.
//! All numbers are as entered by the club. This counts; it says nothing of whether it is enough.

use super::Pair;

/// A group in an area of its own.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Area {
    /// How many participants are in the water there.
    pub in_water: u32,
    /// One watcher for so many, as entered by the club; zero: nothing entered, so none asked for.
    pub one_for: u32,
}

/// How many watchers the club's own numbers ask for: for each area one for so many, rounded up, and
/// `at_least` in all while anyone is in the water.
pub fn needed(areas: &[Area], at_least: u32) -> u32 {
    if areas.iter().all(|a| a.in_water == 0) {
        return 0;
    }
    let each = areas
        .iter()
        .filter(|a| a.one_for > 0)
        .map(|a| a.in_water.div_ceil(a.one_for));
    each.fold(0_u32, u32::saturating_add).max(at_least)
}

/// Who of the people here is left to watch, in order: who is with nobody in the water and has no
/// other job. A lifeguard on duty is among the `busy`, or not among those here at all: either way
/// the count is the same.
pub fn watchers(here: &[usize], pairs: &[Pair], busy: &[usize]) -> Vec<usize> {
    let is_free = |p: &&usize| !busy.contains(p) && pairs.iter().all(|pair| pair.person != **p);
    let mut left: Vec<usize> = here.iter().filter(is_free).copied().collect();
    left.sort_unstable();
    left.dedup();
    left
}
