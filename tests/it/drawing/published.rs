//! The methods against what was published about them, and against the curves of kurbo.

use daystrand::drawing::fit::{by_chord, fit, least_squares};
use daystrand::drawing::trail::douglas_peucker;
use kurbo::{BezPath, CubicBez, ParamCurve, ParamCurveNearest, Point, Shape, Vec2};

fn points(all: &[(f64, f64)]) -> Vec<Point> {
    all.iter().map(|p| Point::new(p.0, p.1)).collect()
}

/// The digitised curve of the program that goes with P. J. Schneider, "An Algorithm for
/// Automatically Fitting Digitized Curves", Graphics Gems, 1990 (`FitCurves.c`); the numbers are from
/// memory. Its bound is a squared error of 4.
const SCHNEIDER: [(f64, f64); 7] = [
    (0.0, 0.0),
    (0.0, 0.5),
    (1.1, 1.4),
    (2.1, 1.6),
    (3.2, 1.1),
    (4.0, 0.2),
    (4.0, 0.0),
];

#[test]
fn schneiders_curve_is_fitted_within_his_bound_by_one_curve() {
    let d = points(&SCHNEIDER);
    let mut out = BezPath::new();
    out.move_to(d[0]);
    fit(&d, false, 2.0, &mut out);
    let curves: Vec<_> = out.segments().collect();
    assert_eq!(curves.len(), 1);
    assert_eq!((curves[0].start(), curves[0].end()), (d[0], d[6]));
    for p in &d {
        assert!(curves[0].nearest(*p, 1e-6).distance_sq <= 4.0);
    }
}

/// Least squares: at the best handles the sum of squares has no slope (the normal equations of the
/// same paper, page 616), so a small change of either handle makes it larger.
#[test]
fn no_other_handles_are_better() {
    let d = points(&SCHNEIDER);
    let places = by_chord(&d);
    let (start, end) = (Vec2::new(0.0, 1.0), Vec2::new(0.0, 1.0));
    let best = least_squares(&d, &places, start, end);
    let sum = |c: CubicBez| -> f64 {
        let square = |(p, t): (&Point, &f64)| c.eval(*t).distance_squared(*p);
        d.iter().zip(&places).map(square).sum()
    };
    let least = sum(best);
    for (a, b) in [
        (0.05, 0.0),
        (-0.05, 0.0),
        (0.0, 0.05),
        (0.0, -0.05),
        (0.03, -0.03),
    ] {
        let other = CubicBez::new(best.p0, best.p1 + start * a, best.p2 + end * b, best.p3);
        assert!(sum(other) > least, "{a} {b}");
    }
}

/// Points on one cubic curve are fitted by that curve.
#[test]
fn a_curve_is_found_again_from_its_own_points() {
    let c = CubicBez::new((10.0, 200.0), (30.0, 20.0), (160.0, 10.0), (220.0, 180.0));
    let d: Vec<Point> = (0..=200).map(|i| c.eval(f64::from(i) / 200.0)).collect();
    let mut out = BezPath::new();
    out.move_to(d[0]);
    fit(&d, false, 0.6, &mut out);
    assert!(out.segments().count() <= 2, "{out:?}");
    for p in &d {
        let near = |s: kurbo::PathSeg| s.nearest(*p, 1e-6).distance_sq;
        let off = out.segments().map(near).fold(f64::MAX, f64::min);
        assert!(off.sqrt() < 0.6);
    }
}

/// kurbo fits the same smooth outline by another method (moments of area); ours needs no more than
/// twice as many curves for the same bound.
#[test]
fn about_as_few_curves_as_kurbo_makes() {
    let ellipse = kurbo::Ellipse::new((120.0, 120.0), (90.0, 50.0), 0.3);
    let dense = ellipse.to_path(1e-3);
    let d: Vec<Point> = dense
        .segments()
        .flat_map(|s| (0..40).map(move |i| s.eval(f64::from(i) / 40.0)))
        .chain([dense.segments().next().expect("a curve").start()])
        .collect();
    let mut ours = BezPath::new();
    ours.move_to(d[0]);
    fit(&d, true, 0.1, &mut ours);
    let theirs = kurbo::simplify::simplify_bezpath(
        dense.iter(),
        0.1,
        &kurbo::simplify::SimplifyOptions::default(),
    );
    let (n, m) = (ours.segments().count(), theirs.segments().count());
    assert!(n <= 2 * m, "ours {n}, theirs {m}");
}

/// D. H. Douglas and T. K. Peucker, Cartographica 10(2), 1973: every point left out lies within the
/// tolerance of the line that is kept, and no point kept in between could be left out by the same
/// measure. The line is worked by hand: with 1.0 only the peak at (4, 3) stays, with 0.4 the dip at
/// (2, 0.5) as well: it lies 1.0 under the chord from (0, 0) to (4, 3), that is 2 x 3/4 - 0.5, times
/// 4/5 for the slant.
#[test]
fn douglas_and_peucker_by_hand() {
    let d = points(&[(0.0, 0.0), (2.0, 0.5), (4.0, 3.0), (6.0, 1.4), (8.0, 0.0)]);
    assert_eq!(douglas_peucker(&d, 1.0), [0, 2, 4]);
    assert_eq!(douglas_peucker(&d, 0.4), [0, 1, 2, 4]);
    assert_eq!(douglas_peucker(&d, 10.0), [0, 4]);
    assert_eq!(douglas_peucker(&d, 0.0), [0, 1, 2, 3, 4]);
    assert!(douglas_peucker(&[], 1.0).is_empty());
}

#[test]
fn douglas_and_peucker_leave_out_nothing_that_lies_off() {
    let wave = |i: usize| {
        (
            i as f64 * 0.5,
            20.0 * (i as f64 * 0.07).sin() + 3.0 * (i as f64).cos(),
        )
    };
    let d: Vec<Point> = (0..400).map(wave).map(Point::from).collect();
    for tolerance in [0.5, 2.0, 6.0] {
        let kept = douglas_peucker(&d, tolerance);
        assert!(kept.is_sorted() && kept.len() < d.len());
        for pair in kept.windows(2) {
            let chord = kurbo::Line::new(d[pair[0]], d[pair[1]]);
            for p in &d[pair[0]..=pair[1]] {
                assert!(chord.nearest(*p, 1e-9).distance_sq.sqrt() <= tolerance + 1e-9);
            }
        }
    }
}
