//! Paths of a drawing as curves to calculate with, and back.

use kurbo::{BezPath, PathEl, Point};

use crate::symbols::art::{Shape, Stroke};
use crate::units::colour::Rgb;
use crate::units::path::{Path, Seg};

/// A path as curves to calculate with.
pub fn to_curves(path: &Path<[f32; 2]>) -> BezPath {
    let p = |q: [f32; 2]| Point::new(f64::from(q[0]), f64::from(q[1]));
    let mut out = BezPath::new();
    for seg in &path.segs {
        // A path must begin with a move.
        if out.elements().is_empty() && !matches!(seg, Seg::Move(_)) {
            continue;
        }
        match *seg {
            Seg::Move(a) => out.move_to(p(a)),
            Seg::Line(a) => out.line_to(p(a)),
            Seg::Cubic(a, b, c) => out.curve_to(p(a), p(b), p(c)),
            Seg::Close => out.close_path(),
        }
    }
    out
}

/// Curves as a path, to the hundredth of a unit, which is what is written.
pub fn to_path(curves: &BezPath) -> Path<[f32; 2]> {
    let mut pen = Point::ZERO;
    let mut segs = Vec::with_capacity(curves.elements().len());
    for el in curves.elements() {
        match *el {
            PathEl::MoveTo(a) => segs.push(Seg::Move(rounded(a))),
            PathEl::LineTo(a) => segs.push(Seg::Line(rounded(a))),
            PathEl::QuadTo(c, a) => {
                let (b, c) = (pen.lerp(c, 2.0 / 3.0), a.lerp(c, 2.0 / 3.0));
                segs.push(Seg::Cubic(rounded(b), rounded(c), rounded(a)));
            }
            PathEl::CurveTo(a, b, c) => {
                segs.push(Seg::Cubic(rounded(a), rounded(b), rounded(c)));
            }
            PathEl::ClosePath => segs.push(Seg::Close),
        }
        pen = el.end_point().unwrap_or(pen);
    }
    Path { segs }
}

/// A point to the hundredth of a unit.
fn rounded(p: Point) -> [f32; 2] {
    [p.x, p.y].map(|v| ((v * 100.0).round() / 100.0) as f32)
}

/// A path seen as a line with round ends.
pub const fn line(path: Path<[f32; 2]>, colour: Rgb, width: f32) -> Shape {
    Shape {
        path,
        fill: None,
        even_odd: false,
        stroke: Some(Stroke {
            colour,
            width,
            butt: false,
            mitre: false,
        }),
    }
}

/// The inside of a path in a colour.
pub const fn filled(path: Path<[f32; 2]>, colour: Rgb) -> Shape {
    Shape {
        path,
        fill: Some(colour),
        even_odd: true,
        stroke: None,
    }
}
