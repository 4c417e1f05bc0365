//! Steps from one plan that keeps every limit to another.
//!
//! All are made of swaps of two turns in one row. A swap that makes a station or the water too full
//! is mended by swapping the same two turns in another row that is there, and so on: a Kempe chain
//! of two colours, which exists with every capacity because a station is as many nodes as it holds.

use super::ready::{NONE, Ready};
use super::table::{Asked, Table};
use crate::plan::chance::Chance;

/// A plan on its way.
pub(super) struct Walk<'a> {
    pub table: Table<'a>,
    pub chance: Chance,
    asked: Asked,
    /// The swaps of this step: participant and two turns.
    pub swaps: Vec<(usize, usize, usize)>,
    /// Room for those a chain can go on with.
    pool: Vec<usize>,
}

impl<'a> Walk<'a> {
    pub fn new(table: Table<'a>, seed: u64) -> Self {
        Self {
            table,
            chance: Chance(seed),
            asked: Asked::default(),
            swaps: Vec::new(),
            pool: Vec::new(),
        }
    }

    /// Takes a step that keeps every limit, told in `swaps`; false if nothing came of it.
    pub fn step(&mut self) -> bool {
        self.swaps.clear();
        let done = match self.chance.below(32) {
            0 => self.whole_turns(),
            1..=2 => self.rows_exchanged(),
            3..=5 => self.shifted(),
            6..=10 => self.after_water(),
            11..=16 => self.friends(),
            17..=20 => self.two_chains(),
            _ => self.any_chain(),
        };
        if done && !self.swaps.is_empty() && self.keeps_limits() {
            return true;
        }
        self.undo();
        false
    }

    /// Takes the step back.
    pub fn undo(&mut self) {
        while let Some((p, a, b)) = self.swaps.pop() {
            self.table.swap(p, a, b);
        }
    }

    fn ready(&self) -> &'a Ready<'a> {
        self.table.ready
    }

    /// Swaps two turns of a row, unless one is settled.
    fn swap(&mut self, p: usize, a: usize, b: usize) -> bool {
        if self.ready().settled(p, a) || self.ready().settled(p, b) {
            return false;
        }
        if a != b && self.table.at(p, a) != self.table.at(p, b) {
            self.table.swap(p, a, b);
            self.swaps.push((p, a, b));
        }
        true
    }

    fn any_chain(&mut self) -> bool {
        let p = self.chance.below(self.ready().participants);
        self.any_chain_of(p)
    }

    /// Two chains that begin with the same participant.
    fn two_chains(&mut self) -> bool {
        let p = self.chance.below(self.ready().participants);
        self.any_chain_of(p) && self.any_chain_of(p)
    }

    fn any_chain_of(&mut self, p: usize) -> bool {
        let a = self.chance.below(self.ready().turns);
        let b = self.chance.below(self.ready().turns);
        self.chain(p, a, b)
    }

    /// Brings two friends together at a common station.
    fn friends(&mut self) -> bool {
        let friends = &self.ready().friends;
        if friends.is_empty() {
            return self.any_chain();
        }
        let (a, b, _) = friends[self.chance.below(friends.len())];
        let (stays, comes) = if self.chance.below(2) == 0 {
            (a, b)
        } else {
            (b, a)
        };
        let wanted = self.chance.below(self.ready().turns);
        let station = self.table.at(stays, wanted);
        match self.table.turn_of(comes, station) {
            Some(now) if station != NONE && now != wanted => self.chain(comes, now, wanted),
            _ => false,
        }
    }

    /// Puts a quiet place behind the water, or the water before it.
    fn after_water(&mut self) -> bool {
        let ready = self.ready();
        let p = self.chance.below(ready.participants);
        if !ready.has[p].1 {
            return self.any_chain_of(p);
        }
        let row = self.table.row(p);
        let quiet = |s: usize| s != NONE && ready.rotation.stations[s].quiet && !ready.water(s);
        let (wet, still) = (
            row.iter().position(|s| ready.water(*s)),
            row.iter().position(|s| quiet(*s)),
        );
        let (Some(wet), Some(still)) = (wet, still) else {
            return self.any_chain_of(p);
        };
        if self.chance.below(2) == 0 {
            wet + 1 < ready.turns && self.chain(p, still, wet + 1)
        } else {
            still > 0 && self.chain(p, wet, still - 1)
        }
    }

    /// Swaps two turns for everyone.
    fn whole_turns(&mut self) -> bool {
        let a = self.chance.below(self.ready().turns);
        let b = self.chance.below(self.ready().turns);
        (0..self.ready().participants).all(|p| self.swap(p, a, b))
    }

    /// Two who have the same stations take each other's rows.
    fn rows_exchanged(&mut self) -> bool {
        let p = self.chance.below(self.ready().participants);
        let q = self.chance.below(self.ready().participants);
        let stations = 0..self.ready().stations;
        let wished = |p: usize, s: usize| self.ready().rank[p * self.ready().stations + s] != NONE;
        if p == q || stations.clone().any(|s| wished(p, s) != wished(q, s)) {
            return false;
        }
        let (old_p, old_q) = (self.table.row(p).to_vec(), self.table.row(q).to_vec());
        self.become_row(p, &old_q) && self.become_row(q, &old_p)
    }

    /// Orders a row until it is the wanted one of the same stations.
    fn become_row(&mut self, p: usize, wanted: &[usize]) -> bool {
        for (t, station) in wanted.iter().enumerate() {
            if self.table.at(p, t) == *station {
                continue;
            }
            let rest = &self.table.row(p)[t..];
            let Some(further) = rest.iter().position(|s| s == station) else {
                return false;
            };
            if !self.swap(p, t, t + further) {
                return false;
            }
        }
        true
    }

    /// Moves one visit of a row to another turn; those between move up.
    fn shifted(&mut self) -> bool {
        let p = self.chance.below(self.ready().participants);
        let a = self.chance.below(self.ready().turns);
        let b = self.chance.below(self.ready().turns);
        if a < b {
            (a..b).all(|t| self.chain(p, t, t + 1))
        } else {
            (b..a).rev().all(|t| self.chain(p, t, t + 1))
        }
    }

    /// Swaps two turns of a row and goes on with other rows until nothing is too full.
    fn chain(&mut self, p: usize, a: usize, b: usize) -> bool {
        let from = self.swaps.len();
        if a == b || !self.swap(p, a, b) {
            return false;
        }
        for _ in 0..self.ready().participants {
            if !self.table.too_full() {
                return true;
            }
            let trouble = self.trouble(a, b).or_else(|| self.trouble(b, a));
            let Some((turn, other, station)) = trouble else {
                return false;
            };
            let Some(q) = self.next_of(turn, other, station, from) else {
                return false;
            };
            self.swap(q, a, b);
        }
        false
    }

    /// The turn that is too full, the other one, and the station or `NONE` for the water.
    fn trouble(&self, turn: usize, other: usize) -> Option<(usize, usize, usize)> {
        let mut stations = 0..self.ready().stations;
        if let Some(s) = stations.find(|s| self.table.over(turn, *s)) {
            return Some((turn, other, s));
        }
        self.table.water_over(turn).then_some((turn, other, NONE))
    }

    /// Someone who can leave what is too full, and did not move yet in this chain. Those after whom
    /// the chain ends are three times as likely.
    fn next_of(&mut self, turn: usize, other: usize, station: usize, from: usize) -> Option<usize> {
        let ready = self.ready();
        self.pool.clear();
        for q in 0..ready.participants {
            let (here, there) = (self.table.at(q, turn), self.table.at(q, other));
            let leaves = if station == NONE {
                ready.water(here) && !ready.water(there)
            } else {
                here == station && there != here
            };
            let moved = || self.swaps[from..].iter().any(|(p, ..)| *p == q);
            if !leaves || ready.settled(q, turn) || ready.settled(q, other) || moved() {
                continue;
            }
            let ends = there == NONE || self.table.room(turn, there) > 0;
            let times = if ends { 3 } else { 1 };
            self.pool.extend(std::iter::repeat_n(q, times));
        }
        let pick = self.chance.below(self.pool.len());
        self.pool.get(pick).copied()
    }

    /// Whether the step keeps every limit; of pairing only the turns of the step are asked.
    fn keeps_limits(&mut self) -> bool {
        let ready = self.ready();
        if self.table.too_full() {
            return false;
        }
        let turns = 0..if ready.paired.is_some() {
            ready.turns
        } else {
            0
        };
        for turn in turns {
            let changed = |(_, a, b): &(usize, usize, usize)| turn == *a || turn == *b;
            if self.swaps.iter().any(changed) {
                let who = self.table.in_water(turn);
                if !self.asked.paired(ready, turn, who) {
                    return false;
                }
            }
        }
        true
    }
}
