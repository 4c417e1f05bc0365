//! Lines of words, painted glyph by glyph from their outlines.

use std::collections::BTreeMap;

use resvg::tiny_skia::{Path, Transform};

use super::Place;
use super::canvas::{Canvas, outline};
use crate::text::run::{FontId, Line};
use crate::text::{glyph_outline, units_per_em};
use crate::units::Point;
use crate::units::colour::Rgb;

/// Outlines already taken from the fonts, in font units; `None` for blanks.
pub(super) type Glyphs = BTreeMap<(FontId, u16), Option<Path>>;

/// Paints a line whose baseline begins at `at`.
pub(super) fn paint_line(
    canvas: &mut Canvas,
    place: &Place,
    at: Point,
    line: &Line,
    colour: Rgb,
    glyphs: &mut Glyphs,
) {
    for (from_left, run) in &line.runs {
        let [left, baseline] = place.px(at.moved(*from_left, crate::units::Length::ZERO));
        let scale = place.length(run.size) / units_per_em(run.font) as f32;
        let mut pen = 0;
        for glyph in &run.glyphs {
            let key = (run.font, glyph.id);
            let shape = glyphs
                .entry(key)
                .or_insert_with(|| outline(&glyph_outline(run.font, glyph.id)?));
            if let Some(shape) = shape {
                let x = left + (pen + glyph.dx) as f32 * scale;
                let y = baseline - glyph.dy as f32 * scale;
                // Fonts count upwards, pixels downwards.
                let to_px = Transform::from_row(scale, 0.0, 0.0, -scale, x, y);
                canvas.fill_outline(shape, colour, false, to_px);
            }
            pen += glyph.advance;
        }
    }
}
