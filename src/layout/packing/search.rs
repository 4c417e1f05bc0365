//! The whole way from pieces to sheets: quick packings of several kinds, the best of them made
//! better until no sheet can be saved or the steps are spent.

use super::greedy::{self, By, TASTES};
use super::hand_out::{Order, hand_out};
use super::kinds::Task;
use super::tidy::{count, fewer_cuts, finish, tidy};
use super::tree::Tree;
use super::{Direction, Packing, Piece, Room, bound, improve, patterns, plain};
use crate::plan::chance::Chance;

/// Places looked at by quick packings.
const QUICK: u64 = 2_000_000;
/// States looked at by patterns.
const PATTERNS: u64 = 100_000;
/// Rounds of patterns.
const ROUNDS: usize = 16;
/// Places looked at to save a sheet, for each piece, up to the pieces named.
const SAVING: (u64, u64) = (12_000, 40);
/// The same where there are more pieces than can be looked at together.
const SAVING_OF_MANY: u64 = 150_000;
/// Pieces among which a sheet is to be saved: more are seldom brought under one hat.
const WINDOW: usize = 150;
/// Ways tried to save cuts.
const FEWER_CUTS: usize = 900;

const WAYS: [Direction; 2] = [Direction::Across, Direction::Down];

/// Packs all pieces: fewest sheets first, then fewest cuts. Equal pieces lie in the order of the
/// list, sheet by sheet; see [`hand_out`] for another order.
///
/// It begins with plain grids, size by size, so it never takes more sheets than those; pieces of one
/// size lie in a plain grid unless something else takes fewer sheets. It looks no further for fewer
/// sheets when there are as few as [`bound()`](super::bound()) says.
pub fn pack(pieces: &[Piece], room: &Room) -> Packing {
    let (task, too_large) = Task::new(pieces, room);
    let mut sheets = search(&task);
    fewer_cuts(&task, &mut sheets, FEWER_CUTS);
    group(&mut sheets);
    let mut packing = finish(&task, &sheets, too_large);
    hand_out(&mut packing, pieces, Order::SheetBySheet);
    packing
}

/// Sheets that are divided alike one after the other, full ones first.
fn group(sheets: &mut Vec<Tree>) {
    sheets.sort_by_key(|t| std::cmp::Reverse(t.area()));
    let mut grouped: Vec<Tree> = Vec::with_capacity(sheets.len());
    while !sheets.is_empty() {
        let top = sheets[0].clone();
        let (same, others) = std::mem::take(sheets).into_iter().partition(|t| *t == top);
        let same: Vec<Tree> = same;
        grouped.extend(same);
        *sheets = others;
    }
    *sheets = grouped;
}

/// The best packing so far.
struct Best<'a> {
    task: &'a Task,
    least: usize,
    sheets: Option<Vec<Tree>>,
    cuts: Option<usize>,
}

impl Best<'_> {
    fn take(&mut self, mut sheets: Vec<Tree>) {
        let Some(best) = &mut self.sheets else {
            self.sheets = Some(sheets);
            return;
        };
        // Pieces of one size: a plain grid came first and stays unless a sheet is saved.
        let most = best.len() - usize::from(self.cuts.is_some() && self.task.kinds.len() == 1);
        if sheets.len() > most {
            return;
        }
        sheets.iter_mut().for_each(tidy);
        let cuts = total(self.task, &sheets);
        if sheets.len() == best.len() {
            let before = *self.cuts.get_or_insert_with(|| {
                best.iter_mut().for_each(tidy);
                total(self.task, best)
            });
            if cuts >= before {
                return;
            }
        }
        self.sheets = Some(sheets);
        self.cuts = Some(cuts);
    }

    fn done(&self) -> bool {
        self.sheets.as_ref().is_some_and(|s| s.len() <= self.least)
    }
}

fn total(task: &Task, sheets: &[Tree]) -> usize {
    let mut sum = 0;
    let mut last: Option<(&Tree, usize)> = None;
    for tree in sheets {
        let cuts = match last {
            Some((t, cuts)) if t == tree => cuts,
            _ => count(task, tree),
        };
        last = Some((tree, cuts));
        sum += cuts;
    }
    sum
}

fn search(task: &Task) -> Vec<Tree> {
    let mut best = Best {
        task,
        least: bound::of_task(task),
        sheets: None,
        cuts: None,
    };
    for first in WAYS {
        best.take(plain::each_by_itself(task, first));
    }
    if task.kinds.len() > 1 {
        quick(task, &mut best);
    } else if best.done() {
        return best.sheets.unwrap_or_default();
    }
    let mut rounds = 0;
    patterns::rounds(task, PATTERNS, |sheets| {
        best.take(sheets);
        rounds += 1;
        !best.done() && rounds < ROUNDS
    });
    let least = best.least;
    let mut sheets = best.sheets.unwrap_or_default();
    save(task, &mut sheets, least);
    sheets
}

/// Piece after piece in many ways.
fn quick(task: &Task, best: &mut Best) {
    let mut steps = 0;
    for first in WAYS {
        best.take(plain::rest_together(task, first, &mut steps));
    }
    let oriented = task.kinds.iter().any(|k| !k.may_turn && k.w != k.h);
    let orders = &By::ALL[..if oriented { 5 } else { 3 }];
    for first in [None, Some(Direction::Across), Some(Direction::Down)] {
        for taste in &TASTES {
            for &by in orders {
                if steps < QUICK {
                    best.take(greedy::pack(task, by, taste, first, &mut steps));
                }
            }
        }
    }
}

/// Saves sheets as long as steps last.
fn save(task: &Task, sheets: &mut Vec<Tree>, least: usize) {
    let all: usize = task.counts().iter().sum();
    let mut steps = if all > WINDOW {
        SAVING_OF_MANY
    } else {
        SAVING.0 * SAVING.1.min(all as u64)
    };
    let mut chance = Chance(1);
    // Patterns have the last word about a single size.
    while task.kinds.len() > 1 && sheets.len() > least && steps > 0 {
        sheets.sort_by_key(Tree::area);
        let mut pieces = 0;
        let fits = |t: &&Tree| {
            pieces += t.items().count();
            pieces <= WINDOW
        };
        let window = sheets.iter().take_while(fits).count();
        let pieces: i128 = sheets[..window].iter().map(|t| i128::from(t.area())).sum();
        let room = i128::from(task.w * task.h);
        if window < 2 || pieces > room * (window as i128 - 1) {
            break;
        }
        let Some(better) = improve::one_less(task, &sheets[..window], &mut chance, &mut steps)
        else {
            break;
        };
        sheets.splice(..window, better);
    }
}
