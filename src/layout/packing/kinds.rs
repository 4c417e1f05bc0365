//! Pieces of equal size taken together, and the white between pieces made part of them.

use super::{Direction, Piece, Room};

/// No room or gap is longer than this (500 m), so that areas are whole numbers of 64 bits.
const LONGEST: i64 = 500_000_000;

/// What makes pieces exchangeable: their sides and whether they may be turned. A piece that may be
/// turned has its shorter side first; a square needs no turning.
pub(super) fn key(piece: &Piece) -> (i64, i64, bool) {
    let (w, h) = (piece.size.w.to_um(), piece.size.h.to_um());
    if piece.may_turn && w != h {
        (w.min(h), w.max(h), true)
    } else {
        (w, h, false)
    }
}

/// Pieces of one size. Sides are in micrometres and hold the gap to the right and below.
#[derive(Clone, Debug)]
pub(super) struct Kind {
    pub w: i64,
    pub h: i64,
    pub may_turn: bool,
    pub members: Vec<usize>,
}

impl Kind {
    pub fn area(&self) -> i64 {
        self.w * self.h
    }

    /// The ways it may lie: its side along the strips and the one across them.
    pub fn shapes(&self, first: Direction) -> impl Iterator<Item = (i64, i64)> + use<> {
        let (w, h) = match first {
            Direction::Across => (self.w, self.h),
            Direction::Down => (self.h, self.w),
        };
        std::iter::once((w, h)).chain(self.may_turn.then_some((h, w)))
    }
}

/// What is to be packed. A gap between pieces is dealt with once, here: pieces and room are made
/// larger by the gap, and then pieces lie edge to edge. (Pieces with a gap of `g` between them fit a
/// room exactly when pieces longer by `g` fit a room longer by `g`.)
#[derive(Clone, Debug)]
pub(super) struct Task {
    pub kinds: Vec<Kind>,
    pub w: i64,
    pub h: i64,
    pub gap: i64,
}

impl Task {
    /// The task and the pieces that fit no sheet. Kinds go by size, largest first.
    pub fn new(pieces: &[Piece], room: &Room) -> (Self, Vec<usize>) {
        let gap = room.gap.to_um().clamp(0, LONGEST);
        let grown = |side: i64| side.clamp(0, LONGEST) + gap;
        let mut task = Self {
            kinds: Vec::new(),
            w: grown(room.size.w.to_um()),
            h: grown(room.size.h.to_um()),
            gap,
        };
        let mut order: Vec<_> = (0..pieces.len()).map(|i| (key(&pieces[i]), i)).collect();
        order.sort_unstable();
        let mut too_large = Vec::new();
        let mut last = None;
        for (key @ (w, h, may_turn), piece) in order {
            if !task.fits(w, h, may_turn) {
                too_large.push(piece);
                continue;
            }
            if last != Some(key) {
                last = Some(key);
                task.kinds.push(Kind {
                    w: w + gap,
                    h: h + gap,
                    may_turn,
                    members: Vec::new(),
                });
            }
            if let Some(kind) = task.kinds.last_mut() {
                kind.members.push(piece);
            }
        }
        task.kinds.sort_by_key(|k| std::cmp::Reverse(k.area()));
        too_large.sort_unstable();
        (task, too_large)
    }

    fn fits(&self, w: i64, h: i64, may_turn: bool) -> bool {
        let inside = |w: i64, h: i64| w <= self.w - self.gap && h <= self.h - self.gap;
        w > 0 && h > 0 && (inside(w, h) || may_turn && inside(h, w))
    }

    /// Length of the strips and the depth of the sheet across them.
    pub fn sides(&self, first: Direction) -> (i64, i64) {
        match first {
            Direction::Across => (self.w, self.h),
            Direction::Down => (self.h, self.w),
        }
    }

    /// How many pieces of each kind.
    pub fn counts(&self) -> Vec<usize> {
        self.kinds.iter().map(|k| k.members.len()).collect()
    }
}
