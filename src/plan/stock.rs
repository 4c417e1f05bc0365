//! Tiles that are needed against tiles that are there, and how many spares there should be.

use std::collections::BTreeMap;

use crate::model::stock::{Owned, TileKey};

/// Participants for whom one spare of a routine tile is enough. Common practice: one spare for six,
/// at least one, rounded up.
const PARTICIPANTS_A_SPARE: usize = 6;

/// Spares of a tile that so many participants use.
pub const fn spares(participants: usize) -> usize {
    let n = participants.div_ceil(PARTICIPANTS_A_SPARE);
    if n == 0 { 1 } else { n }
}

/// The most of a shared tile that are in use at one moment: uses have a beginning, an end and a
/// number. A use that ends when another begins does not overlap with it.
pub fn most_at_once<T: Ord + Copy>(uses: &[(T, T, u32)]) -> u32 {
    let at = |moment: T| {
        let then = uses
            .iter()
            .filter(|(from, to, _)| *from <= moment && moment < *to);
        then.map(|(.., n)| n).sum()
    };
    uses.iter().map(|(from, ..)| at(*from)).max().unwrap_or(0)
}

/// Tiles in stock, to take from.
#[derive(Clone, Debug, Default)]
pub struct Shelf<'a> {
    left: BTreeMap<&'a TileKey, u32>,
}

impl<'a> Shelf<'a> {
    /// All that is in stock.
    pub fn of(stock: &'a [Owned]) -> Self {
        Self {
            left: stock.iter().map(|o| (&o.key, o.count)).collect(),
        }
    }

    /// Takes one tile of a kind, if there is one left.
    pub fn take(&mut self, key: &TileKey) -> bool {
        match self.left.get_mut(key) {
            Some(n) if *n > 0 => {
                *n -= 1;
                true
            }
            _ => false,
        }
    }
}

/// How many of each kind there are in a list, in the order of the kinds.
pub fn count<'a>(keys: impl Iterator<Item = &'a TileKey>) -> Vec<(TileKey, u32)> {
    let mut counts: BTreeMap<&TileKey, u32> = BTreeMap::new();
    for key in keys {
        *counts.entry(key).or_default() += 1;
    }
    counts
        .into_iter()
        .map(|(key, n)| (key.clone(), n))
        .collect()
}
