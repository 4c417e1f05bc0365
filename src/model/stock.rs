//! Tiles that are already made: whose, what is on them, how many there are, and how many were lost
//! or worn out.

use super::craft::Half;
use super::ids::{ParticipantId, SymbolId};
use super::language::Language;
use super::manner::Form;
use crate::units::{Length, Size};

/// What makes a tile the tile it is. A change of any of these makes another tile; the order of a
/// board is none of them.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct TileFace {
    /// The picture.
    pub symbol: SymbolId,
    /// The words on it.
    pub label: String,
    /// In what form it is understood.
    pub form: Form,
    /// Printed width and height.
    pub size: (Length, Length),
    /// Language of its words.
    pub language: Language,
    /// Clear film edge around it; zero where there is no film.
    pub film: Length,
    /// Half of the fastener on it.
    pub half: Half,
    /// Diameter of the fastener.
    pub dot: Length,
    /// A short code of the drawing itself, so that a newer drawing is another tile.
    pub version: String,
}

impl TileFace {
    /// Printed size.
    pub const fn printed(&self) -> Size {
        Size::new(self.size.0, self.size.1)
    }
}

/// A kind of tile: whose, and what is on it. Nobody's are for everyone, from the shared box.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct TileKey {
    /// Whose mark is on it.
    pub whose: Option<ParticipantId>,
    /// What is on it.
    pub face: TileFace,
}

/// Tiles of one kind that the club has.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Owned {
    /// The kind.
    pub key: TileKey,
    /// How many there are now.
    pub count: u32,
    /// How many were lost so far.
    pub lost: u32,
    /// How many were worn out so far.
    pub worn: u32,
}

/// What happened to a tile.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Loss {
    /// It is gone.
    Lost,
    /// It is split, cloudy or sharp and was thrown away.
    Worn,
}

/// A change of the stock.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum StockEdit {
    /// These were made, so many of each.
    Made(Vec<(TileKey, u32)>),
    /// One of these is no longer there.
    Gone(TileKey, Loss),
    /// So many of these are there, as counted.
    Counted(TileKey, u32),
}
