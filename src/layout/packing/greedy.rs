//! Piece after piece to the cheapest place, largest first: quick packings in many ways.

use super::Direction;
use super::kinds::{Kind, Task};
use super::tree::{Taste, Tree};

/// By what pieces are put in order; the largest goes first.
#[derive(Clone, Copy, Debug)]
pub(super) enum By {
    Area,
    LongSide,
    ShortSide,
    Width,
    Height,
}

impl By {
    /// The best ones first. (Where all may be turned the last two are the first two again.)
    pub const ALL: [Self; 5] = [
        Self::ShortSide,
        Self::LongSide,
        Self::Area,
        Self::Width,
        Self::Height,
    ];

    fn size(self, kind: &Kind) -> (i64, i64) {
        let (w, h) = (kind.w, kind.h);
        match self {
            Self::Area => (w * h, w.max(h)),
            Self::LongSide => (w.max(h), w.min(h)),
            Self::ShortSide => (w.min(h), w.max(h)),
            Self::Width => (w, h),
            Self::Height => (h, w),
        }
    }

    /// Puts numbers of kinds in order, largest first.
    pub fn sort(self, kinds: &[Kind], numbers: &mut [usize]) {
        numbers.sort_by_key(|&k| (std::cmp::Reverse(self.size(&kinds[k])), k));
    }

    /// The numbers of those kinds of which something is left, largest first.
    pub fn order(self, kinds: &[Kind], counts: &[usize]) -> Vec<usize> {
        let mut order: Vec<usize> = (0..kinds.len()).filter(|&k| counts[k] > 0).collect();
        self.sort(kinds, &mut order);
        order
    }
}

/// Tastes that do well on different sizes.
pub(super) const TASTES: [Taste; 3] = [
    Taste {
        growth: 1.0,
        below: 0.5,
        beside: 0.25,
        under: 0.1,
    },
    Taste {
        growth: 1.0,
        below: 1.0,
        beside: 0.1,
        under: 0.0,
    },
    Taste {
        growth: 0.5,
        below: 0.3,
        beside: 0.8,
        under: 0.3,
    },
];

/// Puts as many as fit of what is left (`counts` by kind) onto one sheet, and takes them off.
pub(super) fn fill(
    task: &Task,
    tree: &mut Tree,
    order: &[usize],
    counts: &mut [usize],
    taste: &Taste,
    steps: &mut u64,
) {
    let mut free = tree.along * tree.deep - tree.area();
    for &k in order {
        while counts[k] > 0 && task.kinds[k].area() <= free {
            match tree.best(&task.kinds[k], k, taste, steps) {
                Some((_, place)) => tree.insert(place),
                None => break,
            }
            free -= task.kinds[k].area();
            counts[k] -= 1;
        }
    }
}

/// Sheet after sheet, each filled before the next is begun. A sheet that came out is used again as
/// long as there are enough pieces for it. `first` fixes the direction of the first cuts.
pub(super) fn pack(
    task: &Task,
    by: By,
    taste: &Taste,
    first: Option<Direction>,
    steps: &mut u64,
) -> Vec<Tree> {
    pack_these(task, task.counts(), by, taste, first, steps)
}

/// The same for some of the pieces.
pub(super) fn pack_these(
    task: &Task,
    mut counts: Vec<usize>,
    by: By,
    taste: &Taste,
    first: Option<Direction>,
    steps: &mut u64,
) -> Vec<Tree> {
    let mut order = by.order(&task.kinds, &counts);
    let mut sheets = Vec::new();
    while !order.is_empty() {
        let ways = [Direction::Across, Direction::Down];
        let tried = ways
            .into_iter()
            .filter(|w| first.is_none_or(|f| f == *w))
            .map(|way| {
                let mut left = counts.clone();
                let mut tree = Tree::new(task, way);
                tree.fixed = true;
                fill(task, &mut tree, &order, &mut left, taste, steps);
                tree.fixed = false;
                tree
            });
        let Some(tree) = tried.max_by_key(|t| (t.area(), t.first == Direction::Across)) else {
            break;
        };
        if !repeat(&tree, &mut counts, &mut sheets) {
            break;
        }
        order.retain(|&k| counts[k] > 0);
    }
    sheets
}

/// Adds a sheet as often as there are pieces for it.
pub(super) fn repeat(tree: &Tree, counts: &mut [usize], sheets: &mut Vec<Tree>) -> bool {
    let mut used = vec![0_usize; counts.len()];
    for item in tree.items() {
        used[item.kind] += 1;
    }
    let often = used
        .iter()
        .zip(&*counts)
        .filter(|(u, _)| **u > 0)
        .map(|(u, c)| c / u);
    let often = often.min().unwrap_or(0);
    for (count, u) in counts.iter_mut().zip(&used) {
        *count -= u * often;
    }
    sheets.extend(std::iter::repeat_n(tree.clone(), often));
    often > 0
}
