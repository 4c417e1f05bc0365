//! Losing less of the wishes: simulated annealing over plans that keep every limit.
//!
//! S. Kirkpatrick, C. D. Gelatt, M. P. Vecchi, "Optimization by simulated annealing", Science 220
//! (1983), from memory. Several times from warm to cold; the number of steps is given, so the same
//! input ends with the same plan.

use std::ops::ControlFlow;

use super::loss::losses;
use super::moves::Walk;
use super::ready::Ready;
use super::table::Table;
use super::{Effort, Progress};

type Rows = Vec<Vec<Option<usize>>>;

/// How often it is warmed up: first from the given plan, then a little from the best so far.
const ROUNDS: usize = 3;
/// Steps with the same warmth.
const PAUSE: usize = 512;
/// Where a round begins, where later ones do and where all end, in the unit of the weights.
const WARM: f64 = 40.0;
const TEPID: f64 = 16.0;
const COLD: f64 = 0.8;

/// The best rows that so many steps find, and whether it was broken off from outside.
pub(super) fn improve(
    ready: &Ready,
    rows: Rows,
    effort: &Effort,
    progress: &mut Progress,
) -> (Rows, bool) {
    if effort.improve == 0 || ready.participants == 0 || ready.turns < 2 {
        return (rows, false);
    }
    let mut run = Run::new(ready, &rows, effort);
    let stopped = run.rounds(effort.improve, progress);
    let rows = run.best.rows();
    let told = losses(ready.rotation, &rows).cost(&ready.weights);
    debug_assert_eq!(told, run.best_cost.unsigned_abs(), "told as counted");
    (rows, stopped)
}

struct Run<'a> {
    walk: Walk<'a>,
    rows: Vec<i64>,
    pairs: Vec<i64>,
    cost: i64,
    best: Table<'a>,
    best_cost: i64,
    /// What a step changes: new costs of rows and pairs.
    new_rows: Vec<(usize, i64)>,
    new_pairs: Vec<(usize, i64)>,
}

impl<'a> Run<'a> {
    fn new(ready: &'a Ready<'a>, rows: &Rows, effort: &Effort) -> Self {
        let table = Table::of(ready, rows);
        let mut run = Self {
            best: table.clone(),
            walk: Walk::new(table, effort.seed),
            rows: Vec::new(),
            pairs: Vec::new(),
            cost: 0,
            best_cost: 0,
            new_rows: Vec::new(),
            new_pairs: Vec::new(),
        };
        run.count();
        run.best_cost = run.cost;
        run
    }

    /// Counts all costs anew.
    fn count(&mut self) {
        let table = &self.walk.table;
        let ready = table.ready;
        self.rows = (0..ready.participants).map(|p| table.row_cost(p)).collect();
        self.pairs = (0..ready.friends.len())
            .map(|i| table.pair_cost(i))
            .collect();
        self.cost = self.rows.iter().sum::<i64>() + self.pairs.iter().sum::<i64>();
    }

    /// All rounds; whether it was broken off.
    fn rounds(&mut self, steps: usize, progress: &mut Progress) -> bool {
        let round = steps.div_ceil(ROUNDS);
        for done in (0..steps).step_by(PAUSE) {
            if progress(done as f32 / steps as f32) == ControlFlow::Break(()) {
                return true;
            }
            if self.best_cost == 0 {
                return false;
            }
            let part = (done % round) as f64 / round as f64;
            let again = done >= round;
            if again && done % round < PAUSE {
                self.walk.table = self.best.clone();
                self.count();
            }
            let warmth = warmth(if again { TEPID } else { WARM }, part);
            for _ in 0..PAUSE.min(steps - done) {
                self.one(warmth);
            }
        }
        progress(1.0) == ControlFlow::Break(())
    }

    /// One step: taken if it costs less, or by chance if it is warm enough for what it costs more.
    fn one(&mut self, warmth: f64) {
        if !self.walk.step() {
            return;
        }
        let more = self.more();
        if more > 0 && more as f64 > warmth * self.walk.chance.halvings() {
            self.walk.undo();
            return;
        }
        self.new_rows
            .iter()
            .for_each(|(p, cost)| self.rows[*p] = *cost);
        self.new_pairs
            .iter()
            .for_each(|(i, cost)| self.pairs[*i] = *cost);
        self.cost += more;
        if self.cost < self.best_cost {
            self.best_cost = self.cost;
            self.best = self.walk.table.clone();
        }
    }

    /// How much more the step costs.
    fn more(&mut self) -> i64 {
        let table = &self.walk.table;
        self.new_rows.clear();
        self.new_pairs.clear();
        let mut more = 0;
        for &(p, ..) in &self.walk.swaps {
            if self.new_rows.iter().any(|(q, _)| *q == p) {
                continue;
            }
            let cost = table.row_cost(p);
            more += cost - self.rows[p];
            self.new_rows.push((p, cost));
            for &i in &table.ready.pairs[p] {
                if !self.new_pairs.iter().any(|(j, _)| *j == i) {
                    let cost = table.pair_cost(i);
                    more += cost - self.pairs[i];
                    self.new_pairs.push((i, cost));
                }
            }
        }
        more
    }
}

/// How warm it is after a part of a round: fast at first, then slower. In products only, because
/// powers and logarithms differ between machines.
fn warmth(from: f64, part: f64) -> f64 {
    COLD + (from - COLD) * (1.0 - part) * (1.0 - part)
}
