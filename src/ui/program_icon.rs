//! The window's icon: the drawing that the desktop shows for the program too, painted when the window
//! opens.

use egui::IconData;
use resvg::{tiny_skia, usvg};

use crate::assets;

/// Pixels a side; window managers make smaller ones of it.
const SIDE: u32 = 128;

/// The icon; empty, which leaves the choice to the desktop, if the drawing could not be painted.
pub fn program_icon() -> IconData {
    painted(assets::PROGRAM_ICON, SIDE).unwrap_or_default()
}

/// A square drawing as pixels, so many a side.
pub fn painted(svg: &str, side: u32) -> Option<IconData> {
    let tree = usvg::Tree::from_str(svg, &usvg::Options::default()).ok()?;
    let mut pixels = tiny_skia::Pixmap::new(side, side)?;
    let scale = side as f32 / tree.size().width();
    let transform = tiny_skia::Transform::from_scale(scale, scale);
    resvg::render(&tree, transform, &mut pixels.as_mut());
    let colours = pixels.pixels().iter().map(|p| p.demultiply());
    let rgba = colours.flat_map(|c| [c.red(), c.green(), c.blue(), c.alpha()]);
    Some(IconData {
        rgba: rgba.collect(),
        width: side,
        height: side,
    })
}
