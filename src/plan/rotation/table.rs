//! A table of participants and turns that can be changed in place, with its loads and its cost.

use std::collections::BTreeMap;

use super::ready::{NONE, Ready};

/// Answers that are remembered; more are forgotten, so that memory stays small.
const REMEMBERED: usize = 20_000;

/// Who is where, and how many are there.
#[derive(Clone)]
pub(super) struct Table<'a> {
    pub ready: &'a Ready<'a>,
    /// For participant and turn the station or `NONE`.
    at: Vec<usize>,
    /// For turn and station how many are there.
    load: Vec<usize>,
    /// For each turn how many are in the water.
    water: Vec<usize>,
    /// How many participants are too many, over all stations, the water and turns.
    too_many: usize,
}

impl<'a> Table<'a> {
    pub fn new(ready: &'a Ready<'a>) -> Self {
        Self {
            ready,
            at: vec![NONE; ready.participants * ready.turns],
            load: vec![0; ready.turns * ready.stations],
            water: vec![0; ready.turns],
            too_many: 0,
        }
    }

    pub fn of(ready: &'a Ready<'a>, rows: &[Vec<Option<usize>>]) -> Self {
        let mut table = Self::new(ready);
        for (p, row) in rows.iter().enumerate() {
            for (t, s) in row.iter().enumerate() {
                table.put(p, t, s.unwrap_or(NONE));
            }
        }
        table
    }

    pub fn rows(&self) -> Vec<Vec<Option<usize>>> {
        let station = |s: &usize| (*s != NONE).then_some(*s);
        let row = |p: usize| self.row(p).iter().map(station).collect();
        (0..self.ready.participants).map(row).collect()
    }

    pub fn row(&self, participant: usize) -> &[usize] {
        let from = participant * self.ready.turns;
        &self.at[from..from + self.ready.turns]
    }

    pub fn at(&self, participant: usize, turn: usize) -> usize {
        self.at[participant * self.ready.turns + turn]
    }

    /// Where a participant's station is in time.
    pub fn turn_of(&self, participant: usize, station: usize) -> Option<usize> {
        self.row(participant).iter().position(|s| *s == station)
    }

    /// Places left at a station in a turn, the water's limit aside.
    pub fn room(&self, turn: usize, station: usize) -> usize {
        let capacity = self.ready.rotation.stations[station].capacity;
        capacity.saturating_sub(self.load[turn * self.ready.stations + station])
    }

    /// Places left in the water in a turn.
    pub fn water_room(&self, turn: usize) -> usize {
        self.ready.limit[turn].saturating_sub(self.water[turn])
    }

    /// Whether too many are at a station in a turn.
    pub fn over(&self, turn: usize, station: usize) -> bool {
        let capacity = self.ready.rotation.stations[station].capacity;
        self.load[turn * self.ready.stations + station] > capacity
    }

    /// Whether too many are in the water in a turn.
    pub fn water_over(&self, turn: usize) -> bool {
        self.water[turn] > self.ready.limit[turn]
    }

    /// Whether anything is too full.
    pub fn too_full(&self) -> bool {
        self.too_many > 0
    }

    pub fn put(&mut self, participant: usize, turn: usize, station: usize) {
        let cell = participant * self.ready.turns + turn;
        let old = std::mem::replace(&mut self.at[cell], station);
        if old != NONE {
            self.too_many -= usize::from(self.over(turn, old));
            self.load[turn * self.ready.stations + old] -= 1;
            if self.ready.water(old) {
                self.too_many -= usize::from(self.water_over(turn));
                self.water[turn] -= 1;
            }
        }
        if station != NONE {
            self.load[turn * self.ready.stations + station] += 1;
            self.too_many += usize::from(self.over(turn, station));
            if self.ready.water(station) {
                self.water[turn] += 1;
                self.too_many += usize::from(self.water_over(turn));
            }
        }
    }

    pub fn swap(&mut self, participant: usize, one: usize, other: usize) {
        let (a, b) = (self.at(participant, one), self.at(participant, other));
        self.put(participant, one, b);
        self.put(participant, other, a);
    }

    /// Who is in the water in a turn.
    pub fn in_water(&self, turn: usize) -> Vec<usize> {
        let there = |p: &usize| self.ready.water(self.at(*p, turn));
        (0..self.ready.participants).filter(there).collect()
    }

    /// What the row of a participant costs.
    pub fn row_cost(&self, participant: usize) -> i64 {
        let (ready, weights) = (self.ready, &self.ready.weights);
        let (row, stations) = (self.row(participant), &ready.rotation.stations);
        let (has_dry, has_quiet) = ready.has[participant];
        let (mut before, mut idle, mut cost) = (NONE, 0, 0_i64);
        for (t, &s) in row.iter().enumerate() {
            if s == NONE {
                idle += 1;
                continue;
            }
            if before != NONE {
                let (from, to) = (&stations[before], &stations[s]);
                cost += idle * i64::from(weights.wait);
                cost += i64::from(weights.place) * i64::from(from.place != to.place);
                let lost = from.water && has_quiet && !to.quiet && !to.water;
                cost += i64::from(weights.quiet) * i64::from(lost);
            }
            let rank = |s: usize| ready.rank[participant * ready.stations + s];
            let own = rank(s);
            let later = row[..t].iter().filter(|e| **e != NONE && rank(**e) > own);
            cost += i64::from(weights.order) * later.count() as i64;
            (before, idle) = (s, 0);
        }
        if ready.water(before) {
            cost += i64::from(weights.quiet) * i64::from(has_quiet);
            cost += i64::from(weights.last) * i64::from(has_dry);
        }
        cost
    }

    /// What it costs that two friends are apart.
    pub fn pair_cost(&self, pair: usize) -> i64 {
        let (a, b, common) = self.ready.friends[pair];
        let cells = self.row(a).iter().zip(self.row(b));
        let together = cells.filter(|(a, b)| a == b && **a != NONE).count();
        i64::from(self.ready.weights.apart) * (common - together) as i64
    }
}

/// Asks whether some can be in the water together, and remembers the answers.
#[derive(Default)]
pub(super) struct Asked {
    answers: BTreeMap<(usize, Vec<usize>), bool>,
}

impl Asked {
    /// Whether these can be in the water in a turn, in rising order.
    pub fn paired(&mut self, ready: &Ready, turn: usize, who: Vec<usize>) -> bool {
        let Some(paired) = ready.paired.filter(|_| !who.is_empty()) else {
            return true;
        };
        let key = (turn, who);
        if let Some(known) = self.answers.get(&key) {
            return *known;
        }
        if self.answers.len() >= REMEMBERED {
            self.answers.clear();
        }
        let answer = paired(turn, &key.1);
        self.answers.insert(key, answer);
        answer
    }
}
