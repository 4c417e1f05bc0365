//! Many pieces of few sizes: one good sheet is worked out from the inside outwards (stacks for a
//! strip, strips for the sheet, each a knapsack) and used as often as there are pieces for it.
//!
//! Between rounds, pieces that ended on badly filled sheets become worth more, so that the next
//! round takes them while there is something to pair them with (sequential value correction).

use super::Direction;
use super::greedy::{By, TASTES, fill, repeat};
use super::kinds::Task;
use super::tree::{Band, Item, Pile, Tree};

/// Most kinds this is good for.
pub(super) const MOST_KINDS: usize = 16;
/// Most states of a knapsack that are followed up.
const MOST_STATES: usize = 48;

/// Most pieces of a kind on a sheet; twice as many are still a number of 16 bits.
const MOST_OF_A_KIND: u16 = 30_000;

type Uses = [u16; MOST_KINDS];

/// Something to fill a length with: a piece, a stack or a strip.
#[derive(Clone)]
struct Part<T> {
    size: i64,
    value: i64,
    uses: Uses,
    what: T,
}

/// Packings of all pieces, one a round, handed to `take` until it says stop.
pub(super) fn rounds(task: &Task, most: u64, mut take: impl FnMut(Vec<Tree>) -> bool) {
    if task.kinds.len() > MOST_KINDS {
        return;
    }
    let mut worth: Vec<i64> = task.kinds.iter().map(|k| k.area()).collect();
    let mut steps = 0;
    while steps < most {
        let Some(sheets) = round(task, &worth, &mut steps, 2 * most) else {
            break;
        };
        correct(task, &sheets, &mut worth);
        if !take(sheets) {
            break;
        }
    }
}

/// One packing; none when it would take more steps than `most`.
fn round(task: &Task, worth: &[i64], steps: &mut u64, most: u64) -> Option<Vec<Tree>> {
    let mut counts = task.counts();
    let mut sheets = Vec::new();
    while counts.iter().any(|&c| c > 0) {
        let tried = [Direction::Across, Direction::Down]
            .map(|first| sheet(task, first, worth, &counts, steps));
        let valued = |t: &Tree| t.items().map(|i| worth[i.kind]).sum::<i64>();
        let [across, down] = tried;
        let tree = if valued(&down) > valued(&across) {
            down
        } else {
            across
        };
        if !repeat(&tree, &mut counts, &mut sheets) || *steps > most {
            return None;
        }
    }
    Some(sheets)
}

/// New worth of each kind: half of the old, half by how well the sheets were filled where it lies.
fn correct(task: &Task, sheets: &[Tree], worth: &mut [i64]) {
    let room = (task.w * task.h) as f64;
    let mut sums = vec![(0.0, 0.0); worth.len()];
    for tree in sheets {
        let waste = room / tree.area().max(1) as f64;
        for item in tree.items() {
            sums[item.kind].0 += waste.min(3.0);
            sums[item.kind].1 += 1.0;
        }
    }
    for ((w, (sum, n)), kind) in worth.iter_mut().zip(sums).zip(&task.kinds) {
        if n > 0.0 {
            *w = (*w + (kind.area() as f64 * sum / n) as i64) / 2;
        }
    }
}

/// A good sheet out of what is left.
fn sheet(task: &Task, first: Direction, worth: &[i64], counts: &[usize], steps: &mut u64) -> Tree {
    let mut left = [0; MOST_KINDS];
    for (l, c) in left.iter_mut().zip(counts) {
        *l = u16::try_from(*c)
            .unwrap_or(MOST_OF_A_KIND)
            .min(MOST_OF_A_KIND);
    }
    let (along, deep) = task.sides(first);
    let pieces = shapes(task, first, worth, &left);
    let mut depths: Vec<i64> = pieces.iter().map(|p| p.size).collect();
    depths.sort_unstable();
    depths.dedup();
    let mut strips = Vec::new();
    for depth in depths.into_iter().filter(|&d| d <= deep) {
        let stacks = stacks(&pieces, depth, along, &left, steps);
        let chosen = choose(&stacks, along, &left, steps);
        strips.extend(together(&chosen, |c| {
            let strip = Band::of(c.into_iter().map(|p| p.what).collect());
            (strip.depth, strip)
        }));
    }
    let mut tree = Tree::new(task, first);
    tree.strips = choose(&strips, deep, &left, steps)
        .into_iter()
        .map(|p| p.what)
        .collect();
    tree.used = tree.strips.iter().map(|s| s.depth).sum();
    tree.fixed = true;
    let mut rest = counts.to_vec();
    for item in tree.items() {
        rest[item.kind] -= 1;
    }
    fill(
        task,
        &mut tree,
        &By::Area.order(&task.kinds, &rest),
        &mut rest,
        &TASTES[0],
        steps,
    );
    tree.fixed = false;
    tree
}

fn shapes(task: &Task, first: Direction, worth: &[i64], left: &Uses) -> Vec<Part<Item>> {
    let mut pieces = Vec::new();
    for (k, kind) in task.kinds.iter().enumerate().filter(|(k, _)| left[*k] > 0) {
        for (along, deep) in kind.shapes(first) {
            let mut uses = [0; MOST_KINDS];
            uses[k] = 1;
            let what = Item {
                along,
                deep,
                kind: k,
            };
            pieces.push(Part {
                size: deep,
                value: worth[k],
                uses,
                what,
            });
        }
    }
    pieces
}

/// The best stack of each width for a strip of this depth.
fn stacks(
    pieces: &[Part<Item>],
    depth: i64,
    along: i64,
    left: &Uses,
    steps: &mut u64,
) -> Vec<Part<Pile>> {
    let fits = |p: &&Part<Item>| p.size <= depth && p.what.along <= along;
    let mut widths: Vec<i64> = pieces.iter().filter(fits).map(|p| p.what.along).collect();
    widths.sort_unstable();
    widths.dedup();
    let mut stacks: Vec<Part<Pile>> = Vec::new();
    for width in widths {
        let narrow = |p: &&Part<Item>| p.what.along <= width;
        let inside: Vec<_> = pieces.iter().filter(fits).filter(narrow).cloned().collect();
        let chosen = choose(&inside, depth, left, steps);
        let stack = together(&chosen, |c| {
            let stack = Pile::of(c.into_iter().map(|p| p.what).collect());
            (stack.width, stack)
        });
        stacks.extend(stack.filter(|s| stacks.last().is_none_or(|l| l.value < s.value)));
    }
    stacks
}

fn together<A: Clone, B>(
    chosen: &[Part<A>],
    make: impl Fn(Vec<Part<A>>) -> (i64, B),
) -> Option<Part<B>> {
    let value = chosen.iter().map(|p| p.value).sum();
    let mut uses = [0; MOST_KINDS];
    for part in chosen {
        uses.iter_mut().zip(part.uses).for_each(|(a, b)| *a += b);
    }
    let (size, what) = (!chosen.is_empty()).then(|| make(chosen.to_vec()))?;
    Some(Part {
        size,
        value,
        uses,
        what,
    })
}

/// A way to fill part of a length.
#[derive(Clone, Copy)]
struct State {
    size: i64,
    value: i64,
    uses: Uses,
    /// The state before and the part added, by number.
    from: usize,
    part: usize,
}

/// Parts of the most value that fit a length, each as often as there are pieces for it. Only
/// lengths are followed up that are worth more than all shorter ones (Nemhauser and Ullmann, 1969),
/// so limits on the number of pieces may hide a better choice.
fn choose<T: Clone>(parts: &[Part<T>], room: i64, left: &Uses, steps: &mut u64) -> Vec<Part<T>> {
    let start = State {
        size: 0,
        value: 0,
        uses: [0; MOST_KINDS],
        from: 0,
        part: 0,
    };
    let mut all = vec![start];
    let mut front: Vec<usize> = vec![0];
    for (number, part) in parts.iter().enumerate() {
        let mut new = front.clone();
        while !new.is_empty() {
            *steps += new.len() as u64;
            let begin = all.len();
            for from in new {
                let s = all[from];
                let mut uses = s.uses;
                uses.iter_mut().zip(part.uses).for_each(|(a, b)| *a += b);
                if s.size + part.size <= room && uses.iter().zip(left).all(|(u, l)| u <= l) {
                    let (size, value) = (s.size + part.size, s.value + part.value);
                    all.push(State {
                        size,
                        value,
                        uses,
                        from,
                        part: number,
                    });
                }
            }
            front.extend(begin..all.len());
            thin(&mut front, &all);
            new = front.iter().copied().filter(|&i| i >= begin).collect();
        }
    }
    follow(parts, &all, front.last().copied().unwrap_or(0))
}

/// Keeps what is worth more than all that is shorter, and of that the longest.
fn thin(front: &mut Vec<usize>, all: &[State]) {
    front.sort_by_key(|&i| (all[i].size, std::cmp::Reverse(all[i].value), i));
    let mut most = -1;
    front.retain(|&i| {
        let more = all[i].value > most;
        most = most.max(all[i].value);
        more
    });
    front.drain(..front.len().saturating_sub(MOST_STATES));
}

/// The parts that led to a state.
fn follow<T: Clone>(parts: &[Part<T>], all: &[State], mut at: usize) -> Vec<Part<T>> {
    let mut chosen = Vec::new();
    while at > 0 {
        chosen.push(parts[all[at].part].clone());
        at = all[at].from;
    }
    chosen.reverse();
    chosen
}
