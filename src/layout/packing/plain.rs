//! Plain grids: each size by itself in columns and rows.

use super::Direction;
use super::greedy::{self, By, TASTES};
use super::kinds::Task;
use super::tree::{Band, Item, Pile, Tree};

/// Every kind on sheets of its own.
pub(super) fn each_by_itself(task: &Task, first: Direction) -> Vec<Tree> {
    let mut counts = task.counts();
    let kinds = 0..task.kinds.len();
    kinds
        .flat_map(|k| grids(task, k, first, false, &mut counts))
        .collect()
}

/// Full sheets of every kind, and what is left over of all kinds together.
pub(super) fn rest_together(task: &Task, first: Direction, steps: &mut u64) -> Vec<Tree> {
    let mut counts = task.counts();
    let kinds = 0..task.kinds.len();
    let mut sheets: Vec<_> = kinds
        .flat_map(|k| grids(task, k, first, true, &mut counts))
        .collect();
    sheets.extend(greedy::pack_these(
        task,
        counts,
        By::Area,
        &TASTES[0],
        None,
        steps,
    ));
    sheets
}

/// Sheets of one kind in columns and rows, lying the way that puts more on a sheet. With
/// `full` only full sheets. What is placed is taken off `counts`.
pub(super) fn grids(
    task: &Task,
    number: usize,
    first: Direction,
    full: bool,
    counts: &mut [usize],
) -> Vec<Tree> {
    let (along, deep) = task.sides(first);
    let holds = |&(a, d): &(i64, i64)| (along / a) * (deep / d);
    let shapes: Vec<_> = task.kinds[number].shapes(first).collect();
    // Of equally good ones the first: as given, not turned.
    let Some(&(a, d)) = shapes.iter().rev().max_by_key(|s| holds(s)) else {
        return Vec::new();
    };
    let item = Item {
        along: a,
        deep: d,
        kind: number,
    };
    let most = usize::try_from(holds(&(a, d))).unwrap_or(0);
    let mut sheets = Vec::new();
    while most > 0 && counts[number] >= if full { most } else { 1 } {
        let wanted = counts[number].min(most);
        counts[number] -= wanted;
        sheets.push(grid(task, first, item, wanted));
    }
    sheets
}

fn grid(task: &Task, first: Direction, item: Item, mut left: usize) -> Tree {
    let mut tree = Tree::new(task, first);
    let columns = usize::try_from(tree.along / item.along).unwrap_or(1);
    while left > 0 {
        let here = left.min(columns);
        let piles = (0..here).map(|_| Pile::of(vec![item]));
        tree.strips.push(Band::of(piles.collect()));
        tree.used += item.deep;
        left -= here;
    }
    tree
}
