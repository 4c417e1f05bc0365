//! Few cubic curves through many points: P. J. Schneider, "An Algorithm for Automatically Fitting
//! Digitized Curves", Graphics Gems (1990), pages 612 to 626. Least squares between two end
//! tangents, better parameters by Newton's method, and a split where that is not enough: in the
//! middle rather than where the curve is farthest off, which makes a tenth fewer curves.

use kurbo::{BezPath, CubicBez, ParamCurve, ParamCurveDeriv, Point, Vec2};

/// How often parameters are made better before a curve is split.
const ROUNDS: usize = 80;
/// How often at least.
const FEW: usize = 6;
/// Rounds that change the distance by less than this share of it are the last.
const STALLED: f64 = 0.001;
/// What strays from its chord by less than this share of its length is meant to be straight.
const STRAIGHT: f64 = 0.012;
/// How far an end tangent looks, in points.
const LOOK: usize = 6;

/// Appends curves through points to a path that stands at the first of them. No point lies farther
/// than `tolerance` from its place on the curves; what is nearly straight becomes straight, up to
/// two and a half times as far. `closed` when the last point is the first and the
/// curve goes on smoothly there.
pub fn fit(points: &[Point], closed: bool, tolerance: f64, out: &mut BezPath) {
    let [first, .., last] = points else { return };
    let n = points.len();
    let long = first.distance(*last);
    if is_straight(points, (STRAIGHT * long).clamp(tolerance, 2.5 * tolerance)) {
        out.line_to(*last);
        return;
    }
    let (start, end) = if closed {
        let ahead = points[LOOK.min(n - 1)] - *first;
        let behind = *last - points[n - 1 - LOOK.min(n - 1)];
        let along = unit(ahead + behind).unwrap_or_else(|| toward(points, true));
        (along, -along)
    } else {
        (toward(points, true), toward(points, false))
    };
    if closed && n > 2 * LOOK {
        // A loop has no chord to begin with.
        let half = n / 2;
        let middle = across(points, half);
        run(&points[..=half], start, middle, tolerance, out);
        run(&points[half..], -middle, end, tolerance, out);
    } else {
        run(points, start, end, tolerance, out);
    }
}

/// The direction backwards through a point between others.
fn across(points: &[Point], at: usize) -> Vec2 {
    let (a, b) = (at.saturating_sub(LOOK), (at + LOOK).min(points.len() - 1));
    unit(points[a] - points[b]).unwrap_or_else(|| toward(&points[..=at], false))
}

/// Whether all points lie along the chord between the first and the last.
fn is_straight(points: &[Point], tolerance: f64) -> bool {
    let [first, .., last] = points else {
        return true;
    };
    let chord = kurbo::Line::new(*first, *last);
    let near = |p: &Point| {
        let (_, d2) = nearest(chord, *p);
        d2 <= tolerance * tolerance
    };
    points.iter().all(near)
}

/// The nearest place on a line, from 0 to 1, and its squared distance.
pub fn nearest(line: kurbo::Line, p: Point) -> (f64, f64) {
    let along = line.p1 - line.p0;
    let long = along.hypot2();
    let t = if long > 0.0 {
        ((p - line.p0).dot(along) / long).clamp(0.0, 1.0)
    } else {
        0.0
    };
    (t, (line.eval(t) - p).hypot2())
}

fn unit(v: Vec2) -> Option<Vec2> {
    let long = v.hypot();
    (long > 1e-9).then(|| v / long)
}

/// The direction into the points from their start, or from their end.
fn toward(points: &[Point], start: bool) -> Vec2 {
    let n = points.len();
    let at = |i: usize| if start { points[i] } else { points[n - 1 - i] };
    // That of a parabola through three points, so that a bend does not turn it aside.
    let half = LOOK.min(n - 1) / 2;
    let bent = (half > 0)
        .then(|| (at(half) - at(0)) * 4.0 - (at(2 * half) - at(0)))
        .and_then(unit);
    let looks = (1..=LOOK.min(n - 1)).rev();
    let found = bent.or_else(|| looks.map(|i| at(i) - at(0)).find_map(unit));
    found.unwrap_or(Vec2::new(1.0, 0.0))
}

fn run(points: &[Point], start: Vec2, end: Vec2, tolerance: f64, out: &mut BezPath) {
    let n = points.len();
    if n < 2 {
        return;
    }
    if n == 2 {
        let third = (points[1] - points[0]).hypot() / 3.0;
        let (a, b) = (points[0] + start * third, points[1] + end * third);
        out.curve_to(a, b, points[1]);
        return;
    }
    let mut places = by_chord(points);
    let mut curve = least_squares(points, &places, start, end);
    let mut far = farthest(points, &places, curve);
    let mut best = curve;
    let mut was = far;
    for round in 0..ROUNDS {
        // A few rounds more than needed make a good curve better.
        if far <= tolerance && round >= FEW {
            break;
        }
        for (p, t) in points.iter().zip(&mut places) {
            *t = better(curve, *p, *t);
        }
        curve = least_squares(points, &places, start, end);
        let now = farthest(points, &places, curve);
        if now < far {
            (best, far) = (curve, now);
        }
        if (was - now).abs() < was * STALLED {
            break;
        }
        was = now;
    }
    let curve = best;
    if far <= tolerance {
        out.curve_to(curve.p1, curve.p2, curve.p3);
        return;
    }
    let split = n / 2;
    let middle = across(points, split);
    run(&points[..=split], start, middle, tolerance, out);
    run(&points[split..], -middle, end, tolerance, out);
}

/// Places along a curve in proportion to the way along the points, from 0 to 1.
pub fn by_chord(points: &[Point]) -> Vec<f64> {
    let mut way = 0.0;
    let mut ways = vec![0.0];
    for pair in points.windows(2) {
        way += (pair[1] - pair[0]).hypot();
        ways.push(way);
    }
    if way > 0.0 {
        ways.iter_mut().for_each(|w| *w /= way);
    }
    ways
}

/// The curve between the first and the last point, with these directions at its ends, whose places
/// lie nearest to the points by the sum of squares.
pub fn least_squares(points: &[Point], places: &[f64], start: Vec2, end: Vec2) -> CubicBez {
    let (first, last) = (points[0], points[points.len() - 1]);
    let (mut c, mut x) = ([[0.0; 2]; 2], [0.0; 2]);
    for (p, &t) in points.iter().zip(places) {
        let s = 1.0 - t;
        let b = [s * s * s, 3.0 * s * s * t, 3.0 * s * t * t, t * t * t];
        let (a0, a1) = (start * b[1], end * b[2]);
        c[0][0] += a0.dot(a0);
        c[0][1] += a0.dot(a1);
        c[1][1] += a1.dot(a1);
        let rest = *p - (first.to_vec2() * (b[0] + b[1]) + last.to_vec2() * (b[2] + b[3]));
        x[0] += a0.dot(rest.to_vec2());
        x[1] += a1.dot(rest.to_vec2());
    }
    c[1][0] = c[0][1];
    let det = c[0][0] * c[1][1] - c[1][0] * c[0][1];
    let chord = (last - first).hypot();
    let (a, b) = if det.abs() > 1e-9 {
        let a = (x[0] * c[1][1] - x[1] * c[0][1]) / det;
        let b = (c[0][0] * x[1] - c[1][0] * x[0]) / det;
        (a, b)
    } else {
        (0.0, 0.0)
    };
    // Handles that point backwards or are very long make loops: a third of the chord instead.
    let way: f64 = points.windows(2).map(|w| (w[1] - w[0]).hypot()).sum();
    let fine = |v: f64| v > chord.max(way) * 1e-3 && v < way * 1.5;
    let (a, b) = if fine(a) && fine(b) {
        (a, b)
    } else {
        (chord / 3.0, chord / 3.0)
    };
    CubicBez::new(first, first + start * a, last + end * b, last)
}

/// The largest distance of a point from its place.
fn farthest(points: &[Point], places: &[f64], curve: CubicBez) -> f64 {
    let far = |(p, t): (&Point, &f64)| curve.eval(*t).distance(*p);
    points.iter().zip(places).map(far).fold(0.0, f64::max)
}

/// One step of Newton's method towards the place where the curve passes nearest to a point.
fn better(curve: CubicBez, p: Point, t: f64) -> f64 {
    let first = curve.deriv();
    let second = first.deriv();
    let (q, d1, d2) = (
        curve.eval(t) - p,
        first.eval(t).to_vec2(),
        second.eval(t).to_vec2(),
    );
    let down = d1.dot(d1) + q.dot(d2);
    if down.abs() < 1e-12 {
        return t;
    }
    (t - q.dot(d1) / down).clamp(0.0, 1.0)
}
