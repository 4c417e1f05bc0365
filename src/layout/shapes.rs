//! Drawn shapes as items of a page: boxes, circles, lines, hatching.

use super::ink;
use crate::page::{Item, Stroke};
use crate::units::colour::Rgb;
use crate::units::path::{Path, Seg};
use crate::units::{Length, Point, Rect, Size};

/// A quarter circle as a cubic: the usual constant, 4/3 (sqrt 2 - 1).
const KAPPA: f64 = 0.552_284_75;

/// How a shape is seen.
#[derive(Clone, Copy, Debug, Default)]
pub struct Look {
    /// Colour inside.
    pub fill: Option<Rgb>,
    /// The line.
    pub stroke: Option<Stroke>,
}

impl Look {
    /// Filled, without a line.
    pub const fn filled(colour: Rgb) -> Self {
        Self {
            fill: Some(colour),
            stroke: None,
        }
    }

    /// A line, with nothing inside.
    pub const fn line(colour: Rgb, width: Length) -> Self {
        Self {
            fill: None,
            stroke: Some(Stroke {
                colour,
                width,
                dash: None,
            }),
        }
    }

    /// The same on a ground.
    pub const fn on(self, colour: Rgb) -> Self {
        Self {
            fill: Some(colour),
            ..self
        }
    }

    /// The same with a dashed line.
    pub fn dashed(mut self, drawn: Length, gap: Length) -> Self {
        if let Some(stroke) = &mut self.stroke {
            stroke.dash = Some((drawn, gap));
        }
        self
    }
}

/// Dashes of what lies face down or is still empty.
pub fn dashes() -> Look {
    Look::line(ink::HATCH, ink::LINE).dashed(Length::mm(2.2), Length::mm(1.8))
}

/// A path with a look.
pub fn shape(path: Path<Point>, look: Look) -> Item {
    Item::Shape {
        path,
        fill: look.fill,
        stroke: look.stroke,
    }
}

/// A rectangle with round corners; radius zero gives a plain one.
pub fn rounded(r: Rect, radius: Length, look: Look) -> Item {
    shape(rounded_path(r, radius), look)
}

/// A straight line.
pub fn line(from: Point, to: Point, colour: Rgb, width: Length) -> Item {
    let path = Path {
        segs: vec![Seg::Move(from), Seg::Line(to)],
    };
    shape(path, Look::line(colour, width))
}

/// A circle.
pub fn circle(center: Point, radius: Length, look: Look) -> Item {
    let r = Rect {
        x: center.x - radius,
        y: center.y - radius,
        w: radius * 2,
        h: radius * 2,
    };
    shape(rounded_path(r, radius), look)
}

fn rounded_path(r: Rect, radius: Length) -> Path<Point> {
    let radius = radius.min(r.w / 2).min(r.h / 2).max(Length::ZERO);
    let (l, t, rt, b) = (r.x, r.y, r.right(), r.bottom());
    let p = Point::new;
    if radius == Length::ZERO {
        return Path {
            segs: vec![
                Seg::Move(p(l, t)),
                Seg::Line(p(rt, t)),
                Seg::Line(p(rt, b)),
                Seg::Line(p(l, b)),
                Seg::Close,
            ],
        };
    }
    let k = radius - radius.scale(KAPPA);
    Path {
        segs: vec![
            Seg::Move(p(l + radius, t)),
            Seg::Line(p(rt - radius, t)),
            Seg::Cubic(p(rt - k, t), p(rt, t + k), p(rt, t + radius)),
            Seg::Line(p(rt, b - radius)),
            Seg::Cubic(p(rt, b - k), p(rt - k, b), p(rt - radius, b)),
            Seg::Line(p(l + radius, b)),
            Seg::Cubic(p(l + k, b), p(l, b - k), p(l, b - radius)),
            Seg::Line(p(l, t + radius)),
            Seg::Cubic(p(l, t + k), p(l + k, t), p(l + radius, t)),
            Seg::Close,
        ],
    }
}

/// What lies face down: a hatched ground with a dashed edge.
pub fn face_down(r: Rect, radius: Length) -> Vec<Item> {
    vec![
        rounded(r, radius, Look::filled(ink::HATCH_GROUND)),
        hatch(r.shrink(radius.scale(0.5).max(Length::mm(0.8)))),
        rounded(r, radius, dashes()),
    ]
}

/// Slanting lines that fill a rectangle, cut off at its edges.
pub fn hatch(r: Rect) -> Item {
    const PITCH: Length = Length::um(3_600);
    let mut segs = Vec::new();
    // Lines x + y = c for growing c.
    let mut c = r.x + r.y + PITCH / 2;
    while c < r.right() + r.bottom() {
        let from_x = (c - r.bottom()).max(r.x);
        let to_x = (c - r.y).min(r.right());
        if from_x < to_x {
            segs.push(Seg::Move(Point::new(from_x, c - from_x)));
            segs.push(Seg::Line(Point::new(to_x, c - to_x)));
        }
        c += PITCH;
    }
    shape(Path { segs }, Look::line(ink::HATCH, Length::um(220)))
}

/// Shapes with left and right exchanged about an upright axis; words and pictures stay as they are.
pub fn mirrored(items: Vec<Item>, axis: Length) -> Vec<Item> {
    let at = |p: &Point| Point::new(axis * 2 - p.x, p.y);
    let mirror = |item| match item {
        Item::Shape { path, fill, stroke } => Item::Shape {
            path: path.map(at),
            fill,
            stroke,
        },
        other => other,
    };
    items.into_iter().map(mirror).collect()
}

/// A cross in a circle as large as the dot: where a fastener goes.
pub fn fastener(center: Point, dot: Length) -> Vec<Item> {
    let arm = dot.scale(0.16);
    let look = Look::line(ink::SEAL_EDGE, ink::THIN).on(ink::PAPER);
    let p = |dx: Length, dy: Length| center.moved(dx, dy);
    let z = Length::ZERO;
    vec![
        circle(center, dot / 2, look),
        line(p(-arm, z), p(arm, z), ink::SOFT, ink::THIN),
        line(p(z, -arm), p(z, arm), ink::SOFT, ink::THIN),
    ]
}

/// A square by its left, top and side.
pub fn square(left: Length, top: Length, side: Length) -> Rect {
    Rect::new(Point::new(left, top), Size::square(side))
}
