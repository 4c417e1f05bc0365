//! A drawing ready to paint: flat shapes in painting order, nothing left to look up.

use std::sync::Arc;

use super::pixels::Pixels;
use crate::units::colour::Rgb;
use crate::units::path::Path;

/// Side of the square that every symbol is drawn in.
pub const CANVAS: f32 = 240.0;

/// A drawing on a square of side [`CANVAS`], `y` growing downwards.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Art {
    /// What to paint, first to last.
    pub nodes: Vec<Node>,
}

/// One thing to paint.
#[derive(Clone, Debug, PartialEq)]
pub enum Node {
    /// A shape.
    Shape(Shape),
    /// Things seen only inside the outlines of `clip` (nonzero winding).
    Clipped {
        /// The window they are seen through.
        clip: Path<[f32; 2]>,
        /// What is seen.
        nodes: Vec<Node>,
    },
    /// Pixels, filling a rectangle: left, top, width and height.
    Pixels {
        /// Where.
        at: [f32; 4],
        /// What is seen.
        pixels: Arc<Pixels>,
    },
}

/// A path, filled or stroked or both; the fill is painted first.
#[derive(Clone, Debug, PartialEq)]
pub struct Shape {
    /// Its line.
    pub path: Path<[f32; 2]>,
    /// Colour inside.
    pub fill: Option<Rgb>,
    /// Whether the inside is by the even-odd rule rather than nonzero winding.
    pub even_odd: bool,
    /// The line itself, if it is seen.
    pub stroke: Option<Stroke>,
}

/// How a line is seen. Ends and joins are round unless said otherwise.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stroke {
    /// Colour.
    pub colour: Rgb,
    /// Width on the canvas.
    pub width: f32,
    /// Flat ends instead of round ones.
    pub butt: bool,
    /// Pointed joins instead of round ones.
    pub mitre: bool,
}
