//! From sheets in the making to sheets as they are cut: an order that saves cuts, exact places.

use std::cmp::Reverse;

use crate::units::{Length, Point, Rect, Size};

use super::cuts::cuts;
use super::greedy::{By, TASTES, fill};
use super::kinds::Task;
use super::tree::{Pile, Tree};
use super::{Direction, PackedSheet, Packing, Placed, Stack, Strip};
use crate::plan::chance::Chance;

/// Puts what is alike next to each other, so that one cut goes through as much as possible.
pub(super) fn tidy(tree: &mut Tree) {
    for strip in &mut tree.strips {
        for stack in &mut strip.stacks {
            stack.items.sort_unstable_by_key(|i| Reverse(*i));
        }
        strip.stacks.sort_unstable_by(order);
    }
    tree.strips.sort_unstable_by(|a, b| {
        let widths = |s: &super::tree::Band| s.stacks.iter().map(|p| p.width).collect::<Vec<_>>();
        widths(b).cmp(&widths(a)).then_with(|| b.cmp(a))
    });
}

fn order(a: &Pile, b: &Pile) -> std::cmp::Ordering {
    let deeps = |p: &Pile| p.items.iter().map(|i| i.deep).collect::<Vec<_>>();
    let by_width = b.width.cmp(&a.width);
    by_width
        .then_with(|| deeps(b).cmp(&deeps(a)))
        .then_with(|| b.cmp(a))
}

/// How many cuts a tidy sheet takes.
pub(super) fn count(task: &Task, tree: &Tree) -> usize {
    cuts(&place(task, tree, |_| 0)).len()
}

/// Places looked at to save cuts.
const MOST_STEPS: u64 = 600_000;

/// Lays the pieces of each sheet anew in other ways and keeps what takes fewest cuts. `tries` is how
/// many ways in all.
pub(super) fn fewer_cuts(task: &Task, sheets: &mut [Tree], tries: usize) {
    let mut before: Option<(Tree, Tree)> = None;
    let mut chance = Chance(7);
    let mut steps = 0;
    let each = (tries / sheets.len().max(1)).clamp(4, 36);
    for tree in sheets {
        if let Some((from, to)) = &before
            && from == tree
        {
            *tree = to.clone();
            continue;
        }
        let from = tree.clone();
        another_way(task, tree, each, &mut chance, &mut steps);
        before = Some((from, tree.clone()));
    }
}

fn another_way(task: &Task, tree: &mut Tree, tries: usize, chance: &mut Chance, steps: &mut u64) {
    let mut counts = vec![0_usize; task.kinds.len()];
    tree.items().for_each(|i| counts[i.kind] += 1);
    let mut order: Vec<usize> = (0..counts.len()).filter(|&k| counts[k] > 0).collect();
    tidy(tree);
    let mut least = count(task, tree);
    for _ in 0..tries {
        if *steps > MOST_STEPS {
            return;
        }
        let mut left = counts.clone();
        let way = if chance.below(2) == 0 {
            Direction::Across
        } else {
            Direction::Down
        };
        let mut other = Tree::new(task, way);
        other.fixed = true;
        By::ALL[chance.below(By::ALL.len())].sort(&task.kinds, &mut order);
        let taste = TASTES[chance.below(TASTES.len())];
        fill(task, &mut other, &order, &mut left, &taste, steps);
        other.fixed = false;
        if left.iter().any(|&c| c > 0) {
            continue;
        }
        tidy(&mut other);
        let then = count(task, &other);
        if then < least {
            least = then;
            *tree = other;
        }
    }
}

/// Sheets with places and with pieces, in the order of the list.
pub(super) fn finish(task: &Task, sheets: &[Tree], too_large: Vec<usize>) -> Packing {
    let mut given = vec![0; task.kinds.len()];
    let mut next = |kind: usize| {
        given[kind] += 1;
        task.kinds[kind].members[given[kind] - 1]
    };
    Packing {
        sheets: sheets.iter().map(|t| place(task, t, &mut next)).collect(),
        too_large,
    }
}

fn place(task: &Task, tree: &Tree, mut piece: impl FnMut(usize) -> usize) -> PackedSheet {
    let rect = |along: i64, deep: i64, length: i64, depth: i64| {
        let [x, y, w, h] = match tree.first {
            Direction::Across => [along, deep, length, depth],
            Direction::Down => [deep, along, depth, length],
        };
        let um = Length::um;
        Rect::new(
            Point::new(um(x), um(y)),
            Size::new(um(w - task.gap), um(h - task.gap)),
        )
    };
    let mut deep = 0;
    let mut strips = Vec::new();
    for band in &tree.strips {
        let mut along = 0;
        let mut stacks = Vec::new();
        for pile in &band.stacks {
            let mut at = deep;
            let mut pieces = Vec::new();
            for item in &pile.items {
                pieces.push(Placed {
                    piece: piece(item.kind),
                    at: rect(along, at, item.along, item.deep),
                    turned: false,
                });
                at += item.deep;
            }
            stacks.push(Stack {
                at: rect(along, deep, pile.width, band.depth),
                pieces,
            });
            along += pile.width;
        }
        strips.push(Strip {
            at: rect(0, deep, tree.along, band.depth),
            stacks,
        });
        deep += band.depth;
    }
    let um = Length::um;
    PackedSheet {
        room: Size::new(um(task.w - task.gap), um(task.h - task.gap)),
        first: tree.first,
        strips,
    }
}
