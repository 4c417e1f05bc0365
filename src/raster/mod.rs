//! From a finished page to pixels: for the screen, for PNG files, for tests.
//!
//! Knows nothing of clubs, windows or files. Every item of a page is painted here as it is
//! everywhere: letters by their outlines, symbols by their shapes.

mod art;
mod canvas;
mod text;

use std::fmt;

use image::RgbaImage;

use crate::page::{Item, Page};
use crate::units::{Length, Rect};
use canvas::Canvas;

pub use art::paint_art;

/// Pixels that one picture may have; A3 at 600 dots per inch has 70 million.
const MOST_PIXELS: f64 = 100_000_000.0;
/// Pixels along one side; beyond this the painter's numbers lose their precision.
const LONGEST_SIDE: f64 = 30_000.0;

/// Why there is no picture.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum PaintError {
    /// More pixels than are painted at once.
    TooLarge {
        /// Pixels across that were asked for.
        width: f64,
        /// Pixels down that were asked for.
        height: f64,
    },
    /// A side without length, or a resolution that is no number above zero.
    Nothing,
}

impl fmt::Display for PaintError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::TooLarge { width, height } => write!(
                f,
                "a picture of {width:.0} by {height:.0} pixels is too large to make; \
                 choose a lower resolution"
            ),
            Self::Nothing => write!(
                f,
                "a picture needs a width, a height and a resolution above zero; \
                 300 dots per inch is usual for print"
            ),
        }
    }
}

impl std::error::Error for PaintError {}

/// The whole page on white at a resolution in dots per inch. All pixels are opaque.
///
/// # Errors
/// If the picture would have no pixels or too many.
pub fn paint(page: &Page, dpi: f64) -> Result<RgbaImage, PaintError> {
    let whole = Rect::new(crate::units::Point::default(), page.size);
    paint_scaled(page, whole, Length::um(1).to_px(dpi))
}

/// A part of a page, so many pixels wide and as high as that makes it; what lies beyond the edges
/// of the page is white. With the whole page as its part, a preview of that width.
///
/// # Errors
/// If the picture would have no pixels or too many.
pub fn paint_part(page: &Page, part: Rect, width_px: u32) -> Result<RgbaImage, PaintError> {
    let px_per_um = f64::from(width_px) / part.w.to_um() as f64;
    paint_scaled(page, part, px_per_um)
}

fn paint_scaled(page: &Page, part: Rect, px_per_um: f64) -> Result<RgbaImage, PaintError> {
    let (width, height) = pixels(part, px_per_um)?;
    let mut canvas = Canvas::new(width, height).ok_or(PaintError::Nothing)?;
    canvas.fill_white();
    let place = Place { part, px_per_um };
    let mut glyphs = text::Glyphs::default();
    for item in page.blocks.iter().flat_map(|b| &b.items) {
        match item {
            Item::Text { at, line, colour } => {
                text::paint_line(&mut canvas, &place, *at, line, *colour, &mut glyphs);
            }
            Item::Symbol { rect, art, .. } => art::paint_on_page(&mut canvas, &place, *rect, art),
            Item::Shape { path, fill, stroke } => {
                let path = path.map(|p| place.px(*p));
                if let Some(colour) = fill {
                    canvas.fill(&path, *colour, false);
                }
                if let Some(stroke) = stroke {
                    canvas.stroke(&path, &place.pen(stroke));
                }
            }
        }
    }
    canvas.into_image().ok_or(PaintError::Nothing)
}

/// Whole pixels of a part of a page.
fn pixels(part: Rect, px_per_um: f64) -> Result<(u32, u32), PaintError> {
    let width = (part.w.to_um() as f64 * px_per_um).round();
    let height = (part.h.to_um() as f64 * px_per_um).round();
    if !(width > 0.0 && height > 0.0) {
        return Err(PaintError::Nothing);
    }
    if width.max(height) > LONGEST_SIDE || width * height > MOST_PIXELS {
        return Err(PaintError::TooLarge { width, height });
    }
    Ok((width as u32, height as u32))
}

/// Which part of a page the pixels show.
struct Place {
    part: Rect,
    px_per_um: f64,
}

impl Place {
    fn px(&self, p: crate::units::Point) -> [f32; 2] {
        let from = |l: Length, edge: Length| ((l - edge).to_um() as f64 * self.px_per_um) as f32;
        [from(p.x, self.part.x), from(p.y, self.part.y)]
    }

    fn length(&self, l: Length) -> f32 {
        (l.to_um() as f64 * self.px_per_um) as f32
    }

    fn pen(&self, stroke: &crate::page::Stroke) -> canvas::Pen {
        canvas::Pen {
            colour: stroke.colour,
            width: self.length(stroke.width),
            butt: false,
            mitre: false,
            dash: stroke
                .dash
                .map(|(on, off)| [self.length(on), self.length(off)]),
        }
    }
}
