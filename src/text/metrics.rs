//! How high text stands and how deep it hangs, from the tables of the fonts.

use super::fonts;
use super::lines::Style;
use super::run::{FontId, Line, Run};
use crate::units::Length;

/// Measures of the main face at a letter size; all above zero.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Metrics {
    /// From the baseline up to the top that the font keeps free, marks on capitals included.
    pub ascent: Length,
    /// From the baseline down to the bottom that the font keeps free.
    pub descent: Length,
    /// Height of a small x (`sxHeight`): what legibility is judged by.
    pub x_height: Length,
    /// Height of a capital (`sCapHeight`).
    pub cap_height: Length,
}

/// How far ink reaches from a baseline.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Ink {
    /// Upwards.
    pub above: Length,
    /// Downwards; below zero when all ink is above the baseline.
    pub below: Length,
}

/// Measures of the main face.
pub fn metrics(style: &Style) -> Metrics {
    let font = fonts::main(style.bold);
    let face = fonts::face(font);
    let em = f64::from(fonts::units_per_em(font));
    let length = |units: i16| style.size.scale(f64::from(units) / em);
    Metrics {
        ascent: length(face.ascender()),
        descent: length(face.descender().saturating_neg()),
        x_height: length(face.x_height().unwrap_or(0)),
        cap_height: length(face.capital_height().unwrap_or(0)),
    }
}

/// How far the ink of a line reaches from its baseline; nothing for a line without ink.
pub fn ink(line: &Line) -> Ink {
    let reaches = line.runs.iter().flat_map(|(_, run)| {
        let glyphs = run.glyphs.iter();
        glyphs.filter_map(|g| {
            let (top, bottom) = fonts::glyph_ink(run.font, g.id)?;
            Some(Ink {
                above: in_run(run, top + g.dy),
                below: -in_run(run, bottom + g.dy),
            })
        })
    });
    let both = |a: Ink, b: Ink| Ink {
        above: a.above.max(b.above),
        below: a.below.max(b.below),
    };
    reaches.reduce(both).unwrap_or_default()
}

fn in_run(run: &Run, units: i32) -> Length {
    let em = f64::from(fonts::units_per_em(run.font));
    run.size.scale(f64::from(units) / em)
}

/// Highest ascender and deepest descender of the plain letters a to z, in ems: the least room
/// that a line of a set is given, so that sets without tall letters do not crowd.
pub(super) fn letter_reach(font: FontId) -> (f64, f64) {
    let em = f64::from(fonts::units_per_em(font));
    let face = fonts::face(font);
    let ink = |c| {
        let glyph = face.glyph_index(c)?;
        fonts::glyph_ink(font, glyph.0)
    };
    let top = ink('b').map_or(0.0, |i| f64::from(i.0) / em);
    let bottom = ink('g').map_or(0.0, |i| f64::from(-i.1) / em);
    (top, bottom)
}
