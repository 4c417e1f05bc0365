//! A drawing as pixels, on transparent ground.

use image::RgbaImage;
use resvg::tiny_skia::{Pixmap, Transform};
use resvg::usvg::Tree;

use super::super::refusal::Why;
use super::super::{WORKING_PX, area};
use super::{SIMPLER, cost};

/// Pixels that may be touched in all: about a second's work.
const MOST_TOUCHED: f64 = 80e6;
/// Pixels that may be held at once, four bytes each.
const MOST_HELD: f64 = 40e6;
/// The least longest side that is worth keeping.
const LEAST_PX: f64 = 400.0;

/// Paints a drawing as large as is kept, or smaller where that would take too long.
///
/// # Errors
/// If even a small picture would take too long or too much room.
pub fn paint(tree: &Tree) -> Result<RgbaImage, Why> {
    let cost = cost::of(tree)?;
    let (w, h) = (tree.size().width(), tree.size().height());
    let longest = w.max(h);
    // Pixels of a picture with a longest side of one.
    let unit = f64::from(w / longest) * f64::from(h / longest);
    let room = (MOST_TOUCHED / (cost.passes + 1.0)).min(MOST_HELD / (cost.held + 2.0));
    let side = (room / unit.max(1e-4))
        .sqrt()
        .min(f64::from(WORKING_PX))
        .floor();
    if side.is_nan() || side < LEAST_PX {
        return Err(Why::new(
            "is a drawing that takes too long to paint",
            SIMPLER,
        ));
    }
    let [width, height] = area::fitted(
        ((w / longest) * 1e6).max(1.0) as u32,
        ((h / longest) * 1e6).max(1.0) as u32,
        side as u32,
    );
    let mut pixmap = Pixmap::new(width, height).ok_or_else(Why::damaged)?;
    let scale = Transform::from_scale(width as f32 / w, height as f32 / h);
    resvg::render(tree, scale, &mut pixmap.as_mut());
    let pixels = pixmap.pixels().iter().flat_map(|p| {
        let c = p.demultiply();
        [c.red(), c.green(), c.blue(), c.alpha()]
    });
    RgbaImage::from_raw(width, height, pixels.collect()).ok_or_else(Why::damaged)
}
