//! What a hand did on the paper, before it is made into shapes.

use crate::units::colour::Rgb;

/// Where the hand was, in canvas units, and how hard it pressed from 0 to 1 if that is known.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Spot {
    /// From the left.
    pub x: f64,
    /// From the top.
    pub y: f64,
    /// Pressure.
    pub force: Option<f64>,
}

impl Spot {
    /// A place without pressure.
    pub const fn new(x: f64, y: f64) -> Self {
        Self { x, y, force: None }
    }
}

/// How a closed shape is shown.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Look {
    /// Its line alone.
    Line,
    /// Its inside alone.
    Area,
    /// Its inside in the colour, with a line in ink around it, as the built-in symbols have.
    #[default]
    Both,
}

/// With what is drawn.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Pen {
    /// Colour.
    pub colour: Rgb,
    /// Width of the line on the canvas.
    pub width: f32,
    /// How closed shapes are shown.
    pub look: Look,
}

/// One thing that was done.
#[derive(Clone, Debug, PartialEq)]
pub enum Gesture {
    /// A line by hand.
    Stroke(Vec<Spot>),
    /// A straight line.
    Line(Spot, Spot),
    /// An upright rectangle by two opposite corners.
    Rectangle(Spot, Spot),
    /// An upright ellipse in the rectangle of two opposite corners.
    Ellipse(Spot, Spot),
    /// A closed shape with these corners.
    Polygon(Vec<Spot>),
    /// A closed shape led round these corners in curves.
    Rounded(Vec<Spot>),
    /// A tap that fills what lies around it.
    Fill(Spot),
    /// The eraser, this wide.
    Erase(Vec<Spot>, f64),
}
