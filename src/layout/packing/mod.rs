//! Pieces of different sizes on as few sheets as possible, so that a straight trimmer cuts them.
//!
//! A sheet is divided in three steps: the first cuts go across the whole sheet and make strips, the
//! second cuts go across a strip and make stacks, the third cuts go across a stack and make pieces;
//! a piece narrower than its stack is trimmed in the end. The first cuts of a sheet go across or
//! down, whichever is better. (In the literature: three-stage guillotine cutting, non-exact.)
//!
//! Fewest sheets first, then fewest cuts. Nothing here is left to chance or to the clock: same
//! pieces, same sheets. How long it looks for something better is counted in steps.

mod bound;
mod cuts;
mod greedy;
mod hand_out;
mod improve;
mod kinds;
mod patterns;
mod plain;
mod search;
mod tidy;
mod tree;

pub use bound::bound;
pub use cuts::{Cut, cuts};
pub use hand_out::{Order, hand_out};
pub use search::pack;

use crate::units::{Length, Rect, Size};

/// A rectangle to be placed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Piece {
    /// Width and height.
    pub size: Size,
    /// Whether it may lie on its side.
    pub may_turn: bool,
}

/// The usable room of one sheet.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Room {
    /// Width and height, margins already taken off.
    pub size: Size,
    /// White between pieces; without it neighbours have a cut in common. Below zero counts as none.
    pub gap: Length,
}

/// Which way cuts go.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Direction {
    /// From the left edge to the right; strips lie one below the other.
    Across,
    /// From the top edge down; strips stand side by side.
    Down,
}

impl Direction {
    /// The other one.
    pub const fn other(self) -> Self {
        match self {
            Self::Across => Self::Down,
            Self::Down => Self::Across,
        }
    }
}

/// Where everything lies.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Packing {
    /// The sheets; those that are divided alike follow each other.
    pub sheets: Vec<PackedSheet>,
    /// Pieces (by number) that fit no sheet, or have no size above zero.
    pub too_large: Vec<usize>,
}

/// One sheet. The origin is the top left corner of its room.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct PackedSheet {
    /// The usable room.
    pub room: Size,
    /// The way the first cuts go.
    pub first: Direction,
    /// What the first cuts make, from the top or from the left.
    pub strips: Vec<Strip>,
}

impl PackedSheet {
    /// The pieces, strip by strip and stack by stack.
    pub fn pieces(&self) -> impl Iterator<Item = &Placed> {
        let stacks = self.strips.iter().flat_map(|s| &s.stacks);
        stacks.flat_map(|s| &s.pieces)
    }

    fn pieces_mut(&mut self) -> impl Iterator<Item = &mut Placed> {
        let stacks = self.strips.iter_mut().flat_map(|s| &mut s.stacks);
        stacks.flat_map(|s| &mut s.pieces)
    }
}

/// What the first cuts make: from one edge of the room to the other.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Strip {
    /// Where it lies, in full length.
    pub at: Rect,
    /// What the second cuts make of it, from the left or from the top.
    pub stacks: Vec<Stack>,
}

/// What the second cuts make: from one edge of the strip to the other.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Stack {
    /// Where it lies: as wide as its widest piece, as deep as the strip.
    pub at: Rect,
    /// What the third cuts make of it; all begin at the same edge.
    pub pieces: Vec<Placed>,
}

/// A piece and its place.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Placed {
    /// Its number in the list of pieces.
    pub piece: usize,
    /// Where it lies, without the white around it.
    pub at: Rect,
    /// Whether it lies on its side.
    pub turned: bool,
}
