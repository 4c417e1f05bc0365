//! Outlines on the canvas: transformed, turned round, measured.

use resvg::usvg::tiny_skia_path::{Path as SkPath, PathSegment, Point as SkPoint, Transform};

use crate::units::path::{Path, Seg};

/// Units of the canvas beyond which nothing is a place in a drawing: a shape that reaches further
/// leaves nothing to draw. The painter of pixels counts places in 32 bits and stops the program
/// beyond them; at four thousand canvases, painted at 400 pixels to a unit, it does not.
const FARTHEST: f32 = 1e6;

/// The largest and smallest factor by which a transform changes a length.
pub fn stretches(t: Transform) -> (f32, f32) {
    let half = (t.sx * t.sx + t.kx * t.kx + t.ky * t.ky + t.sy * t.sy) / 2.0;
    let det = (t.sx * t.sy - t.kx * t.ky).abs();
    let spread = (half * half - det * det).max(0.0).sqrt();
    ((half + spread).sqrt(), (half - spread).max(0.0).sqrt())
}

/// The line of a path in the plane that `at` leads to, quadratic curves as cubics.
pub fn outline(path: &SkPath, at: Transform) -> Path<[f32; 2]> {
    let p = |p: SkPoint| {
        [
            at.sx * p.x + at.kx * p.y + at.tx,
            at.ky * p.x + at.sy * p.y + at.ty,
        ]
    };
    let mut pen = SkPoint::zero();
    let mut segs = Vec::with_capacity(path.len());
    for seg in path.segments() {
        match seg {
            PathSegment::MoveTo(a) => segs.push(Seg::Move(p(a))),
            PathSegment::LineTo(a) => segs.push(Seg::Line(p(a))),
            PathSegment::QuadTo(c, a) => {
                let third = |from: SkPoint| SkPoint {
                    x: from.x + (c.x - from.x) * 2.0 / 3.0,
                    y: from.y + (c.y - from.y) * 2.0 / 3.0,
                };
                segs.push(Seg::Cubic(p(third(pen)), p(third(a)), p(a)));
            }
            PathSegment::CubicTo(c1, c2, a) => segs.push(Seg::Cubic(p(c1), p(c2), p(a))),
            PathSegment::Close => segs.push(Seg::Close),
        }
        match seg {
            PathSegment::MoveTo(a)
            | PathSegment::LineTo(a)
            | PathSegment::QuadTo(_, a)
            | PathSegment::CubicTo(_, _, a) => pen = a,
            PathSegment::Close => {}
        }
    }
    let near = |q: &[f32; 2]| q.iter().all(|v| v.abs() <= FARTHEST);
    let whole = segs.iter().all(|s| match s {
        Seg::Move(a) | Seg::Line(a) => near(a),
        Seg::Cubic(a, b, c) => near(a) && near(b) && near(c),
        Seg::Close => true,
    });
    Path {
        segs: if whole { segs } else { Vec::new() },
    }
}

/// Twice the area of the polygon through a path's points; above zero when it turns clockwise on a
/// plane whose `y` grows downwards.
pub fn signed_area(path: &Path<[f32; 2]>) -> f32 {
    let (mut area, mut start, mut pen) = (0.0, [0.0; 2], [0.0; 2]);
    let cross = |a: [f32; 2], b: [f32; 2]| a[0] * b[1] - a[1] * b[0];
    for seg in &path.segs {
        match *seg {
            Seg::Move(p) => {
                area += cross(pen, start);
                start = p;
                pen = p;
            }
            Seg::Line(p) => {
                area += cross(pen, p);
                pen = p;
            }
            Seg::Cubic(a, b, p) => {
                area += cross(pen, a) + cross(a, b) + cross(b, p);
                pen = p;
            }
            Seg::Close => {
                area += cross(pen, start);
                pen = start;
            }
        }
    }
    area + cross(pen, start)
}

/// The same outline drawn the other way round.
pub fn backwards(path: &Path<[f32; 2]>) -> Path<[f32; 2]> {
    let mut segs = Vec::with_capacity(path.segs.len());
    for part in path.segs.split_inclusive(|s| matches!(s, Seg::Close)) {
        for line in part.chunk_by(|_, next| !matches!(next, Seg::Move(_))) {
            reverse_line(line, &mut segs);
        }
    }
    Path { segs }
}

fn reverse_line(line: &[Seg<[f32; 2]>], out: &mut Vec<Seg<[f32; 2]>>) {
    let end = |s: &Seg<[f32; 2]>| match *s {
        Seg::Move(p) | Seg::Line(p) | Seg::Cubic(_, _, p) => Some(p),
        Seg::Close => None,
    };
    let points: Vec<[f32; 2]> = line.iter().filter_map(end).collect();
    let Some(last) = points.last() else { return };
    out.push(Seg::Move(*last));
    for (i, seg) in line.iter().enumerate().rev() {
        match *seg {
            Seg::Line(_) if i > 0 => out.push(Seg::Line(points[i - 1])),
            Seg::Cubic(a, b, _) if i > 0 => out.push(Seg::Cubic(b, a, points[i - 1])),
            _ => {}
        }
    }
    out.push(Seg::Close);
}
