//! What shaping gives: glyphs at known places, with the characters they stand for.

use std::sync::Arc;

use crate::units::Length;

/// Which bundled font.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum FontId {
    /// Andika, the main face.
    Regular,
    /// Andika bold.
    Bold,
    /// Harmattan, for Arabic script.
    Arabic,
    /// Harmattan bold.
    ArabicBold,
}

/// One glyph of a run, in the order it is painted from left to right.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Glyph {
    /// Glyph number in the whole bundled font.
    pub id: u16,
    /// How far the pen moves, in font units.
    pub advance: i32,
    /// Offset of the glyph from the pen, to the right, in font units.
    pub dx: i32,
    /// Offset of the glyph from the pen, upwards, in font units.
    pub dy: i32,
    /// Where its characters begin in the run's text, in bytes.
    pub from: u32,
    /// Where its characters end; equal to `from` when another glyph already stands for them.
    pub to: u32,
}

/// Glyphs of one font and size.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Run {
    /// The font.
    pub font: FontId,
    /// Letter size (the em).
    pub size: Length,
    /// The characters, in reading order.
    pub text: Arc<str>,
    /// The glyphs, left to right.
    pub glyphs: Vec<Glyph>,
    /// Width of all advances.
    pub width: Length,
}

/// One line of text: runs side by side on one baseline.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Line {
    /// Each run with its distance from the left end of the line.
    pub runs: Vec<(Length, Run)>,
    /// From the left end to the right end.
    pub width: Length,
    /// The characters of the whole line in reading order, without the break at its end.
    pub text: String,
}
