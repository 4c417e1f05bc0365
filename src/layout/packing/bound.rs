//! How many sheets are needed at least.
//!
//! Let `f` be a function on lengths up to a side `W`, not below zero, such that lengths that together
//! are at most `W` have values that together are at most `f(W)` (a dual feasible function), and `g`
//! such a function on lengths up to `H`. Fekete and Schepers (Mathematical Methods of Operations
//! Research 60, 2004) show: rectangles `w x h` that lie in a room `W x H` without overlap still do so
//! when `w/W` becomes `f(w)/f(W)` and `h/H` becomes `g(h)/g(H)`; so the sum of `f(w) g(h)` over one
//! sheet is at most `f(W) g(H)`, and over all sheets that sum divided by `f(W) g(H)`, rounded up, is
//! a lower bound. A piece that may be turned lies in one of two ways; whichever it is, it adds at
//! least the smaller of its two values, so taking the smaller one keeps the bound true.
//!
//! With `f` and `g` the lengths themselves this is the bound by area. The families used beside it:
//! - `Large(e)`, `0 < e <= W/2`: lengths over `W - e` count as `W`, lengths below `e` as nothing,
//!   others as they are. True: with a length over `W - e` nothing of `e` or more fits in `W`; and
//!   without one nothing has grown.
//! - `Steps(e)`, `0 < e <= W/2`, with `n(x)` the whole part of `x/e`: lengths below `W/2` count as
//!   `2 n(x)`, over `W/2` as `2 n(W) - 2 n(W - x)`, `W/2` itself as `n(W)`; `f(W) = 2 n(W)`. True: at
//!   most one length is over `W/2`; call it `x`. The others have together at most `W - x`, and whole
//!   parts add up to no more than the whole part of the sum, so they count for at most `2 n(W - x)`
//!   (if one were `W/2`, the sum would be too long). Without such an `x`: the same with whole parts
//!   when there is no `W/2`; one `W/2` counts `n(W)`, and what is beside it at most
//!   `2 n(W/2) <= n(W)`; two fill `W` and count `2 n(W)`.
//!   Two pieces longer than half the side cannot lie beside each other: that is what it adds.

use super::kinds::{Kind, Task};
use super::{Piece, Room};

/// Work for the bound: pairs of functions times kinds.
const MOST: usize = 60_000;

/// No packing, guillotine or not, needs fewer sheets for those pieces that fit a sheet at all.
pub fn bound(pieces: &[Piece], room: &Room) -> usize {
    of_task(&Task::new(pieces, room).0)
}

pub(super) fn of_task(task: &Task) -> usize {
    if task.kinds.is_empty() {
        return 0;
    }
    let mut share = task.kinds.len() * 2 + 2;
    while share > 4 && (2 * share + 1) * (2 * share + 1) * task.kinds.len() > MOST {
        share -= share / 4;
    }
    let across = Way::all(task.w, &task.kinds, share);
    let down = Way::all(task.h, &task.kinds, share);
    let each = across.iter().flat_map(|f| down.iter().map(move |g| (f, g)));
    each.map(|(f, g)| sheets(task, *f, *g)).max().unwrap_or(1)
}

fn sheets(task: &Task, f: Way, g: Way) -> usize {
    let value =
        |w: i64, h: i64| (w <= task.w && h <= task.h).then(|| f.of(w, task.w) * g.of(h, task.h));
    let mut sum = 0_i128;
    for kind in &task.kinds {
        let straight = value(kind.w, kind.h);
        let turned = kind.may_turn.then(|| value(kind.h, kind.w)).flatten();
        let least = straight.into_iter().chain(turned).min().unwrap_or(0);
        sum += i128::from(least) * kind.members.len() as i128;
    }
    let whole = i128::from(f.of(task.w, task.w) * g.of(task.h, task.h));
    usize::try_from((sum + whole - 1) / whole).unwrap_or(usize::MAX)
}

/// How lengths count.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
enum Way {
    Same,
    Large(i64),
    Steps(i64),
}

impl Way {
    /// Every function worth trying for a side: those that change where a piece begins to count.
    fn all(side: i64, kinds: &[Kind], most: usize) -> Vec<Self> {
        let lengths = kinds.iter().flat_map(|k| [k.w, k.h]);
        let mut at: Vec<i64> = lengths
            .map(|x| x.min(side - x))
            .filter(|&e| e > 0)
            .collect();
        at.extend(
            [side / 2, side / 3 + 1]
                .into_iter()
                .filter(|&e| 0 < e && e <= side / 2),
        );
        at.sort_unstable();
        at.dedup();
        let step = at.len().div_ceil(most.max(1));
        let chosen: Vec<i64> = at.into_iter().rev().step_by(step.max(1)).collect();
        let large = chosen.iter().map(|&e| Self::Large(e));
        let steps = chosen.iter().map(|&e| Self::Steps(e));
        std::iter::once(Self::Same)
            .chain(large)
            .chain(steps)
            .collect()
    }

    fn of(self, x: i64, side: i64) -> i64 {
        match self {
            Self::Same => x,
            Self::Large(e) if x > side - e => side,
            Self::Large(e) if x < e => 0,
            Self::Large(_) => x,
            Self::Steps(e) if 2 * x > side => 2 * (side / e) - 2 * ((side - x) / e),
            Self::Steps(e) if 2 * x == side => side / e,
            Self::Steps(e) => 2 * (x / e),
        }
    }
}
