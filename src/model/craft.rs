//! How a club makes its tiles: the shape they have, whether film goes around them, how they are cut,
//! fastened and sorted. All of it is the club's own choice; the first values are common practice.

use super::club::Paper;
use crate::units::{Length, Size};

/// The shape of a participant's printed tiles.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum TileShape {
    /// As high as wide.
    #[default]
    Square,
    /// Higher than wide, 4 to 3.
    Upright,
    /// Wider than high, 4 to 3.
    Across,
    /// As large as a bank card: ID-1 of ISO/IEC 7810, 85.60 x 53.98 mm.
    Card,
    /// A7 of ISO 216, 74 x 105 mm.
    A7,
    /// A6 of ISO 216, 105 x 148 mm.
    A6,
}

impl TileShape {
    /// All of them, for lists.
    pub const ALL: [Self; 6] = [
        Self::Square,
        Self::Upright,
        Self::Across,
        Self::Card,
        Self::A7,
        Self::A6,
    ];

    /// In words.
    pub const fn label(self) -> &'static str {
        match self {
            Self::Square => "Square",
            Self::Upright => "Upright",
            Self::Across => "Across",
            Self::Card => "Bank card",
            Self::A7 => "A7",
            Self::A6 => "A6",
        }
    }

    /// The printed size; `side` is the shorter side where the shape leaves it open.
    pub fn size(self, side: Length) -> Size {
        let long = Length::um(side.to_um() * 4 / 3);
        match self {
            Self::Square => Size::square(side),
            Self::Upright => Size::new(side, long),
            Self::Across => Size::new(long, side),
            Self::Card => Size::mm(85.6, 53.98),
            Self::A7 => Size::mm(74.0, 105.0),
            Self::A6 => Size::mm(105.0, 148.0),
        }
    }

    /// Whether the side is the club's to choose.
    pub const fn has_side(self) -> bool {
        matches!(self, Self::Square | Self::Upright | Self::Across)
    }
}

/// How tiles are made to last.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Work {
    /// Cut, laminated, cut again: film closes around each tile.
    #[default]
    CutLaminateCut,
    /// Printed on waterproof synthetic paper and cut once.
    OneSheet,
}

/// With what tiles are cut.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Cutting {
    /// A trimmer that cuts from edge to edge.
    #[default]
    Trimmer,
    /// Scissors.
    Scissors,
}

/// In which order tiles lie on the sheets.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Sorting {
    /// Participant by participant, sheet by sheet.
    #[default]
    ByParticipant,
    /// Same pictures together, through the stack: sheets are cut lying on one another and each pile
    /// is in order.
    ThroughTheStack,
}

/// Over which edge a printer turns the sheet for its other side.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Flip {
    /// The long edge.
    Long,
    /// The short edge.
    Short,
}

/// Which half of a fastener is on the tile. Which is which is convention; only that a club keeps to
/// one matters.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Half {
    /// The soft half on the tile, the rough one on the board.
    #[default]
    SoftOnTile,
    /// The rough half on the tile, the soft one on the board.
    RoughOnTile,
}

impl Half {
    /// The half on the tile and the half on the board.
    pub const fn words(self) -> (&'static str, &'static str) {
        match self {
            Self::SoftOnTile => ("soft", "rough"),
            Self::RoughOnTile => ("rough", "soft"),
        }
    }
}

/// How a club makes its tiles.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Craft {
    /// How they are made to last.
    pub work: Work,
    /// With what they are cut.
    pub cutting: Cutting,
    /// The laminating pouches there are.
    pub pouch: Paper,
    /// In which order they lie on the sheets.
    pub sorting: Sorting,
    /// Whether each size has sheets of its own: more sheets, fewer cuts.
    pub sizes_apart: bool,
    /// Diameter of a hole in a tab of film, where cards hang on a ring.
    pub ring: Option<Length>,
    /// Whether backs are printed, and over which edge the printer turns the sheet.
    pub backs: Option<Flip>,
    /// Which half of the fastener is on the tile.
    pub half: Half,
    /// Diameter of a fastener dot. Sold from 10 to 22 mm.
    pub dot: Length,
    /// Radius of the finished corner; zero leaves it square.
    pub corner: Length,
    /// Whether tiles get into sea water, which asks for a wider seal.
    pub sea_water: bool,
    /// Seconds that one cut takes.
    pub cut_seconds: u32,
    /// Whether spares of what everyone uses are printed.
    pub spares: bool,
    /// Blank tiles for a pen, for each board.
    pub blanks: u32,
    /// What the printer made of the bar of 100 mm, where someone measured it.
    pub bar: Option<Length>,
}

impl Default for Craft {
    fn default() -> Self {
        Self {
            work: Work::default(),
            cutting: Cutting::default(),
            pouch: Paper::A4,
            sorting: Sorting::default(),
            sizes_apart: false,
            ring: None,
            backs: None,
            half: Half::default(),
            dot: Length::mm(15.0),
            corner: Length::mm(4.0),
            sea_water: false,
            cut_seconds: 15,
            spares: false,
            blanks: 0,
            bar: None,
        }
    }
}

/// A laminating pouch for this paper: paper and 3 mm on every side, but 9 by 11.5 in for Letter, as
/// the trade sells them.
pub fn pouch_size(paper: Paper) -> Size {
    match paper {
        Paper::A3 => Size::mm(303.0, 426.0),
        Paper::A4 => Size::mm(216.0, 303.0),
        Paper::A5 => Size::mm(154.0, 216.0),
        Paper::Letter => Size::mm(228.6, 292.1),
    }
}
