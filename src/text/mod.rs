//! Words made ready to paint: shaped, broken into lines, fitted to a place. Bundled fonts only.
//!
//! Knows nothing of what the words say. The same words give the same glyphs for screen, picture
//! and paper; the computer's own fonts and language are never asked. Nothing here fails: what no
//! bundled font has becomes a visible substitute and is named in the result.

mod bidi;
mod breaks;
mod cache;
mod fit;
mod fonts;
mod lines;
mod metrics;
mod paragraph;
pub mod run;
mod shape;

pub use bidi::{Direction, runs_left};
pub use breaks::{clean, line_ends};
pub use fit::{Fit, Room, fit_set};
pub use fonts::{bytes, glyph_outline, postscript_name, units_per_em};
pub use lines::{Style, Wrapped, line, missing, wrap, wrap_evenly};
pub use metrics::{Ink, Metrics, ink, metrics};
