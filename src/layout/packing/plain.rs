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
    let mut best = (
        0,
        0,
        Item {
            along: 1,
            deep: 1,
            kind: number,
        },
    );
    for (a, d) in task.kinds[number].shapes(first) {
        let (columns, rows) = (along / a, deep / d);
        if columns * rows > best.0 * best.1 {
            best = (
                columns,
                rows,
                Item {
                    along: a,
                    deep: d,
                    kind: number,
                },
            );
        }
    }
    let (columns, rows, item) = best;
    let holds = usize::try_from(columns * rows).unwrap_or(0);
    let mut sheets = Vec::new();
    while holds > 0 && counts[number] >= if full { holds } else { 1 } {
        let wanted = counts[number].min(holds);
        counts[number] -= wanted;
        sheets.push(grid(
            task,
            first,
            item,
            wanted,
            usize::try_from(columns).unwrap_or(1),
        ));
    }
    sheets
}

fn grid(task: &Task, first: Direction, item: Item, wanted: usize, columns: usize) -> Tree {
    let mut tree = Tree::new(task, first);
    let mut left = wanted;
    while left > 0 {
        let here = left.min(columns);
        let piles = (0..here).map(|_| Pile::of(vec![item]));
        tree.strips.push(Band::of(piles.collect()));
        tree.used += item.deep;
        left -= here;
    }
    tree
}
