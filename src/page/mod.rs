//! A finished page: things at fixed places in micrometres, in reading order, each with the role it
//! plays. Nothing on it is left to look up, fall back on or decide.
//!
//! A page has no selection, zoom or hover, and knows nothing of clubs. It carries the class of
//! readers it was built for.

pub mod dump;
pub mod hit;
pub mod valid;

use std::sync::Arc;

use crate::model::ids::{SlotId, StepRef, SymbolId};
use crate::model::privacy::Class;
use crate::symbols::art::Art;
use crate::text::run::Line;
use crate::units::colour::Rgb;
use crate::units::path::Path;
use crate::units::{Length, Point, Rect, Size};

/// One side of a sheet of paper.
#[derive(Clone, Debug)]
pub struct Page {
    /// Paper size as it lies before the reader.
    pub size: Size,
    /// What it is, such as "Tiles 60 mm, sheet 1 of 3"; also the outline entry in a PDF.
    pub title: String,
    /// Language of its words, as a BCP 47 tag.
    pub lang: String,
    /// Whom it was built for.
    pub class: Class,
    /// What stands on it, in reading order, which is also painting order.
    pub blocks: Vec<Block>,
}

/// Items that belong together and are read together.
#[derive(Clone, Debug)]
pub struct Block {
    /// What it is to a reader.
    pub role: Role,
    /// What it shows, for clicking on it.
    pub source: Option<Source>,
    /// Language of its words as a BCP 47 tag, where it is another than the page's.
    pub lang: Option<String>,
    /// What is painted, first to last.
    pub items: Vec<Item>,
}

/// What a block is to someone who hears the page read.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Role {
    /// A heading of level 1 to 3.
    Heading(u8),
    /// A paragraph, a label, a sentence.
    Paragraph,
    /// A picture, with the words that stand for it.
    Figure {
        /// The words.
        alt: String,
    },
    /// Lines, grounds, cut marks, the check bar: not read aloud.
    Artifact,
}

/// What a block shows.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Source {
    /// A step of the board.
    Step(StepRef),
    /// A row of the timetable.
    Slot(SlotId),
}

/// One thing painted.
#[derive(Clone, Debug)]
pub enum Item {
    /// A line of words; `at` is the left end of its baseline.
    Text {
        /// Left end of the baseline.
        at: Point,
        /// The glyphs.
        line: Arc<Line>,
        /// Their colour.
        colour: Rgb,
    },
    /// A symbol filling a square or the middle square of a rectangle.
    Symbol {
        /// Where.
        rect: Rect,
        /// Which one in which variant: equal keys have equal art, so it is written once.
        key: SymbolKey,
        /// The drawing.
        art: Arc<Art>,
    },
    /// A drawn shape.
    Shape {
        /// Its line.
        path: Path<Point>,
        /// Colour inside.
        fill: Option<Rgb>,
        /// The line, if seen.
        stroke: Option<Stroke>,
    },
}

/// Names a drawing in one variant.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct SymbolKey {
    /// The symbol.
    pub id: SymbolId,
    /// Its variant in a few letters, such as `warm` or `grey`.
    pub variant: &'static str,
}

/// How a line on a page is seen. Ends and joins are round.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stroke {
    /// Colour.
    pub colour: Rgb,
    /// Width.
    pub width: Length,
    /// Drawn length and gap, for a dashed line.
    pub dash: Option<(Length, Length)>,
}
