//! A first plan where no theorem decides: all possibilities in turn, the narrowest visit first,
//! with a limit of steps.

use std::ops::ControlFlow;

use super::Progress;
use super::ready::{NONE, Ready};
use super::table::{Asked, Table};
use crate::plan::chance::Chance;

/// Steps between two words about progress.
const PAUSE: usize = 256;

type Rows = Vec<Vec<Option<usize>>>;

/// What a search came to.
pub(super) enum Verdict {
    /// A plan.
    Found(Rows),
    /// Every possibility was tried.
    None,
    /// The steps were used up.
    Open,
    /// Broken off from outside.
    Stopped,
}

/// Searches in several runs: a short one that follows the hint, short ones that follow chance, and
/// one with all steps that are left. A run that ends before its steps do is a proof.
pub(super) fn search(ready: &Ready, hint: &Rows, steps: usize, progress: &mut Progress) -> Verdict {
    let mut asked = Asked::default();
    for run in 0..8 {
        if progress(0.0) == ControlFlow::Break(()) {
            return Verdict::Stopped;
        }
        let share = match run {
            0 => steps.div_ceil(8),
            7 => steps.div_ceil(2),
            _ => steps / 16,
        };
        let chance = (run % 7 > 0).then_some(Chance(run));
        let mut search = Search::new(ready, hint, share, chance, &mut asked, &mut *progress);
        match search.descend() {
            Verdict::Open => {}
            verdict => return verdict,
        }
    }
    Verdict::Open
}

struct Search<'a, 'b, 'c> {
    table: Table<'a>,
    hint: &'b Rows,
    /// Visits without a turn: participant and station.
    open: Vec<(usize, usize)>,
    left: usize,
    chance: Option<Chance>,
    asked: &'b mut Asked,
    progress: &'b mut Progress<'c>,
}

impl<'a, 'b, 'c> Search<'a, 'b, 'c> {
    fn new(
        ready: &'a Ready<'a>,
        hint: &'b Rows,
        left: usize,
        chance: Option<Chance>,
        asked: &'b mut Asked,
        progress: &'b mut Progress<'c>,
    ) -> Self {
        let mut table = Table::new(ready);
        let mut open = Vec::new();
        for (p, who) in ready.rotation.participants.iter().enumerate() {
            let settled = |s: usize| who.fixed.iter().any(|v| v.station == s);
            who.fixed
                .iter()
                .for_each(|v| table.put(p, v.turn, v.station));
            let free = who.wishes.iter().filter(|s| !settled(**s));
            open.extend(free.map(|s| (p, *s)));
        }
        Self {
            table,
            hint,
            open,
            left,
            chance,
            asked,
            progress,
        }
    }

    fn descend(&mut self) -> Verdict {
        if self.open.is_empty() {
            return Verdict::Found(self.table.rows());
        }
        if self.left == 0 {
            return Verdict::Open;
        }
        self.left -= 1;
        if self.left.is_multiple_of(PAUSE) && (self.progress)(0.0) == ControlFlow::Break(()) {
            return Verdict::Stopped;
        }
        let Some((index, turns)) = self.narrowest() else {
            return Verdict::None;
        };
        let (p, s) = self.open.swap_remove(index);
        for t in turns {
            self.table.put(p, t, s);
            match self.descend() {
                Verdict::None => self.table.put(p, t, NONE),
                verdict => return verdict,
            }
        }
        self.open.push((p, s));
        let last = self.open.len() - 1;
        self.open.swap(index, last);
        Verdict::None
    }

    /// The open visit with the fewest turns, and these in the order to try; `None` when some visits
    /// can no longer be had.
    fn narrowest(&mut self) -> Option<(usize, Vec<usize>)> {
        let ready = self.table.ready;
        let mut can = Can::new(ready);
        let mut best: Option<(usize, usize)> = None;
        for i in 0..self.open.len() {
            let (p, s) = self.open[i];
            let mut turns = 0;
            for t in 0..ready.turns {
                if self.can(p, s, t) {
                    turns += 1;
                    can.note(ready, p, s, t);
                }
            }
            if turns == 0 {
                return None;
            }
            if best.is_none_or(|(least, _)| turns < least) {
                best = Some((turns, i));
            }
        }
        if !can.enough(&self.table, &self.open) {
            return None;
        }
        let (_, index) = best?;
        Some((index, self.in_order(index)))
    }

    /// The turns of an open visit in the order to try.
    fn in_order(&mut self, index: usize) -> Vec<usize> {
        let (p, s) = self.open[index];
        let turns = 0..self.table.ready.turns;
        let mut turns: Vec<usize> = turns.filter(|t| self.can(p, s, *t)).collect();
        match &mut self.chance {
            Some(chance) => {
                for i in (1..turns.len()).rev() {
                    turns.swap(i, chance.below(i + 1));
                }
            }
            None => {
                let hinted = |t: &usize| self.hint[p].get(*t) == Some(&Some(s));
                turns.sort_by_key(|t| !hinted(t));
            }
        }
        turns
    }

    fn can(&mut self, participant: usize, station: usize, turn: usize) -> bool {
        let (table, ready) = (&self.table, self.table.ready);
        if table.at(participant, turn) != NONE || table.room(turn, station) == 0 {
            return false;
        }
        if !ready.water(station) {
            return true;
        }
        if table.water_room(turn) == 0 {
            return false;
        }
        if ready.paired.is_none() {
            return true;
        }
        let mut who = table.in_water(turn);
        who.insert(who.partition_point(|q| *q < participant), participant);
        self.asked.paired(ready, turn, who)
    }
}

/// What open visits can still have, counted: less than they need is a dead end.
struct Can {
    /// For turn and station how many participants.
    at: Vec<usize>,
    /// For participant and turn whether any open visit, whether one to the water.
    any: Vec<bool>,
    wet: Vec<bool>,
}

impl Can {
    fn new(ready: &Ready) -> Self {
        Self {
            at: vec![0; ready.turns * ready.stations],
            any: vec![false; ready.participants * ready.turns],
            wet: vec![false; ready.participants * ready.turns],
        }
    }

    fn note(&mut self, ready: &Ready, participant: usize, station: usize, turn: usize) {
        self.at[turn * ready.stations + station] += 1;
        self.any[participant * ready.turns + turn] = true;
        self.wet[participant * ready.turns + turn] |= ready.water(station);
    }

    fn enough(&self, table: &Table, open: &[(usize, usize)]) -> bool {
        let ready = table.ready;
        let mut of_station = vec![0; ready.stations];
        let mut of_participant = vec![0; ready.participants];
        let mut wet = 0;
        for &(p, s) in open {
            of_station[s] += 1;
            of_participant[p] += 1;
            wet += usize::from(ready.water(s));
        }
        let turns = 0..ready.turns;
        let room = |t: usize, s: usize| table.room(t, s).min(self.at[t * ready.stations + s]);
        let station = |s: usize| turns.clone().map(|t| room(t, s)).sum::<usize>();
        let free = |p: usize| {
            let row = &self.any[p * ready.turns..(p + 1) * ready.turns];
            row.iter().filter(|b| **b).count()
        };
        let bathers = |t: usize| {
            let all = (0..ready.participants).filter(|p| self.wet[p * ready.turns + t]);
            all.count().min(table.water_room(t))
        };
        (0..ready.stations).all(|s| of_station[s] == 0 || station(s) >= of_station[s])
            && (0..ready.participants).all(|p| free(p) >= of_participant[p])
            && (wet == 0 || turns.clone().map(bathers).sum::<usize>() >= wet)
    }
}
