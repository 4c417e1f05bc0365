//! Curves as polygons, and polygons as curves again.

use kurbo::{BezPath, PathEl, Point};

use super::smooth::turn;
use super::trail::curves;

/// How far a polygon may lie from the curve it stands for, in canvas units.
pub const FLAT: f64 = 0.02;
/// How far the curves made of a polygon may lie from it.
const TOLERANCE: f64 = 0.1;
/// A side this long is a straight line; pieces of curves are shorter.
const STRAIGHT: f64 = 8.0;
/// Between points of the sides that are fitted with curves.
const STEP: f64 = 0.6;
/// Where the sides of a polygon turn by more degrees than this, there is a corner.
const TURN: f64 = 35.0;
/// How far before and behind a corner its turn is measured.
const LEG: f64 = 0.8;

/// A closed line through its corners.
pub type Contour = Vec<[f64; 2]>;

/// Lines that go nowhere: a round pen put down and lifted leaves a dot.
pub fn dots(curves: &BezPath, width: f64) -> Vec<Contour> {
    let mut out = Vec::new();
    let mut line: Vec<Point> = Vec::new();
    let mut flush = |line: &mut Vec<Point>| {
        if let Some(p) = line.first()
            && line.iter().all(|q| q.distance(*p) < 1e-6)
        {
            let circle = kurbo::Circle::new(*p, width / 2.0);
            out.extend(flat(&kurbo::Shape::to_path(&circle, FLAT)));
        }
        line.clear();
    };
    for el in curves.elements() {
        if matches!(el, PathEl::MoveTo(_)) {
            flush(&mut line);
        }
        match *el {
            PathEl::CurveTo(a, b, c) => line.extend([a, b, c]),
            PathEl::QuadTo(a, b) => line.extend([a, b]),
            PathEl::MoveTo(a) | PathEl::LineTo(a) => line.push(a),
            PathEl::ClosePath => {}
        }
    }
    flush(&mut line);
    out
}

/// Curves as polygons.
pub fn flat(curves: &BezPath) -> Vec<Contour> {
    let mut out: Vec<Contour> = Vec::new();
    kurbo::flatten(curves, FLAT, |el| match el {
        PathEl::MoveTo(p) => out.push(vec![[p.x, p.y]]),
        PathEl::LineTo(p) => {
            if let Some(line) = out.last_mut() {
                line.push([p.x, p.y]);
            }
        }
        _ => {}
    });
    out.retain(|c| c.len() > 2);
    out
}

/// Half the sum of the cross products: the area, with the sign of its direction.
pub fn signed(c: &Contour) -> f64 {
    let next = c.iter().cycle().skip(1);
    let cross = c.iter().zip(next).map(|(a, b)| a[0] * b[1] - a[1] * b[0]);
    cross.sum::<f64>() / 2.0
}

/// A polygon as curves: straight where its sides are long, fitted between its corners elsewhere.
pub fn round_about(contour: &Contour) -> BezPath {
    let corners: Vec<Point> = contour.iter().map(|p| Point::new(p[0], p[1])).collect();
    let n = corners.len();
    // Places where a curve may not run on: corners, and the ends of straight sides.
    let mut points = Vec::new();
    let mut stops = Vec::new();
    let long = |i: usize| corners[i % n].distance(corners[(i + 1) % n]) >= STRAIGHT;
    for i in 0..n {
        let (a, b) = (corners[i], corners[(i + 1) % n]);
        if long(i) || long(i + n - 1) || sharp(&corners, i) {
            stops.push(points.len());
        }
        points.push(a);
        let pieces = (a.distance(b) / STEP).ceil();
        if !long(i) {
            points.extend((1..pieces as usize).map(|k| a.lerp(b, k as f64 / pieces)));
        }
    }
    let Some(first) = stops.first().copied() else {
        points.push(points[0]);
        return curves(&points, &[], true, TOLERANCE);
    };
    points.rotate_left(first);
    points.push(points[0]);
    let m = points.len() - 1;
    let mut stops: Vec<usize> = stops.into_iter().map(|s| s - first).collect();
    stops.push(m);
    curves(&points, &stops, true, TOLERANCE)
}

/// Whether a polygon turns at once at a corner, seen a little way before and behind it.
fn sharp(corners: &[Point], i: usize) -> bool {
    let n = corners.len();
    let away = |forth: bool| {
        let step = |k: usize| if forth { (i + k) % n } else { (i + n - k) % n };
        let mut left = LEG;
        let mut at = corners[i];
        for k in 1..n {
            let to = corners[step(k)];
            let long = at.distance(to);
            if long >= left {
                return at.lerp(to, left / long);
            }
            left -= long;
            at = to;
        }
        at
    };
    let at_corner = |j: usize| {
        let (a, b) = (corners[(j + n - 1) % n], corners[(j + 1) % n]);
        turn(corners[j % n] - a, b - corners[j % n])
    };
    let here = at_corner(i);
    let most_here = here >= at_corner(i + n - 1) && here >= at_corner(i + 1);
    here > 8.0 && most_here && turn(corners[i] - away(false), away(true) - corners[i]) > TURN
}
