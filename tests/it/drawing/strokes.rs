//! Lines by hand: without trembling, few curves, corners kept, within bounds.

use daystrand::drawing::gesture::{Gesture, Spot};
use daystrand::drawing::sketch::Sketch;
use daystrand::drawing::trail::{TOLERANCE, Trail};
use daystrand::symbols::art::Node;
use kurbo::{BezPath, ParamCurve, ParamCurveNearest, PathSeg, Point};

use super::{PEN, Tremble, along, circle, colour, drawn, pixels, shapes, spots};

/// Many points along curves.
fn dense(curves: &BezPath) -> Vec<Point> {
    let pieces = curves.segments();
    pieces
        .flat_map(|s: PathSeg| (0..=50).map(move |i| s.eval(f64::from(i) / 50.0)))
        .collect()
}

/// The largest distance of any of the points from the curves.
fn farthest(from: &[Point], to: &BezPath) -> f64 {
    let near = |p: &Point| {
        let each = to.segments().map(|s| s.nearest(*p, 1e-6).distance_sq);
        each.fold(f64::MAX, f64::min).sqrt()
    };
    from.iter().map(near).fold(0.0, f64::max)
}

#[test]
fn a_circle_comes_out_round_in_few_curves() {
    for tremble in [0.0, 0.3, 0.6] {
        let curves = Trail::new(&circle((120.0, 120.0), 70.0, 180, tremble)).curves(TOLERANCE);
        let radii = dense(&curves)
            .into_iter()
            .map(|p| p.distance(Point::new(120.0, 120.0)));
        let off = radii.map(|r| (r - 70.0).abs()).fold(0.0, f64::max);
        assert!(off < 0.4 + tremble, "off by {off} at {tremble}");
        let count = curves.segments().count();
        assert!((2..=12).contains(&count), "{count} curves at {tremble}");
    }
}

#[test]
fn a_straight_line_is_one_line_though_the_hand_trembles() {
    let mut t = Tremble(5);
    let hand = spots((0..120).map(|i| (30.0 + 1.5 * f64::from(i), 100.0 + 0.25 * t.next())));
    let curves = Trail::new(&hand).curves(TOLERANCE);
    assert_eq!(curves.segments().count(), 1, "{curves:?}");
}

#[test]
fn a_corner_stays_a_corner() {
    let hand = along(&[(40.0, 40.0), (200.0, 40.0), (200.0, 180.0)]);
    let curves = Trail::new(&hand).curves(TOLERANCE);
    assert_eq!(curves.segments().count(), 2, "{curves:?}");
    let corner = curves.segments().next().expect("a line").end();
    assert!(corner.distance(Point::new(200.0, 40.0)) < 0.7, "{corner:?}");
}

#[test]
fn a_square_by_hand_has_four_corners_and_is_closed() {
    let mut t = Tremble(9);
    let hand = along(&[
        (50.0, 60.0),
        (190.0, 60.0),
        (190.0, 190.0),
        (50.0, 190.0),
        (50.5, 61.5),
    ]);
    let hand: Vec<Spot> = hand
        .iter()
        .map(|s| Spot::new(s.x + 0.3 * t.next(), s.y + 0.3 * t.next()))
        .collect();
    let trail = Trail::new(&hand);
    assert!(trail.closed);
    let curves = trail.curves(TOLERANCE);
    let count = curves.segments().count();
    assert!((4..=6).contains(&count), "{count}: {curves:?}");
    let ends: Vec<Point> = curves.segments().map(|s| s.end()).collect();
    for corner in [(50.0, 60.0), (190.0, 60.0), (190.0, 190.0), (50.0, 190.0)] {
        let corner = Point::new(corner.0, corner.1);
        assert!(
            ends.iter().any(|e| e.distance(corner) < 2.0),
            "{corner:?} {ends:?}"
        );
    }
}

/// The curves keep within the tolerance of the line that was smoothed, whatever was drawn.
#[test]
fn curves_keep_within_the_tolerance_of_the_smoothed_line() {
    for seed in 1..30 {
        let mut t = Tremble(seed * 7919);
        let (mut x, mut y, mut turn) = (120.0, 120.0, 0.0_f64);
        let hand = spots((0..300).map(|_| {
            turn += 0.5 * t.next();
            x = (x + 2.0 * turn.cos()).clamp(5.0, 235.0);
            y = (y + 2.0 * turn.sin()).clamp(5.0, 235.0);
            (x, y)
        }));
        let trail = Trail::new(&hand);
        let curves = trail.curves(TOLERANCE);
        let off = farthest(&trail.points, &curves);
        assert!(off <= TOLERANCE + 0.05, "seed {seed}: {off}");
        let raw: Vec<Point> = hand.iter().map(|s| Point::new(s.x, s.y)).collect();
        let off = farthest(&raw, &curves);
        assert!(off < 3.0, "seed {seed}: {off} from the hand");
    }
}

#[test]
fn a_tap_is_a_dot() {
    let sketch = drawn(&[(Gesture::Stroke(spots([(100.0, 80.0)])), PEN)]);
    let image = pixels(&sketch);
    assert!(colour(&image, 100.0, 80.0).is_some());
    assert!(colour(&image, 102.0, 80.0).is_some());
    assert!(colour(&image, 104.0, 80.0).is_none());
}

#[test]
fn what_is_no_number_or_far_off_does_no_harm() {
    let mut sketch = Sketch::new();
    let odd = [f64::NAN, f64::INFINITY, -1e300, 1e300, 0.0];
    let hand: Vec<Spot> = odd
        .iter()
        .flat_map(|x| {
            odd.map(|y| Spot {
                x: *x,
                y,
                force: Some(f64::NAN),
            })
        })
        .collect();
    sketch.draw(&Gesture::Stroke(hand.clone()), PEN);
    sketch.draw(&Gesture::Polygon(hand.clone()), PEN);
    sketch.draw(&Gesture::Rounded(hand.clone()), PEN);
    sketch.draw(&Gesture::Erase(hand.clone(), 12.0), PEN);
    for a in &hand {
        sketch.draw(&Gesture::Fill(*a), PEN);
        sketch.draw(&Gesture::Line(*a, hand[24]), PEN);
        sketch.draw(&Gesture::Rectangle(*a, hand[24]), PEN);
        sketch.draw(&Gesture::Ellipse(*a, hand[24]), PEN);
    }
    for nothing in [
        Gesture::Stroke(vec![]),
        Gesture::Polygon(vec![]),
        Gesture::Erase(vec![], 9.0),
    ] {
        assert!(!sketch.draw(&nothing, PEN));
    }
    let read = Sketch::open(&sketch.svg()).expect("its own text is read");
    for (x, y) in read.things().zip(sketch.things()) {
        assert!(matches!((x, y), (Node::Shape(_), Node::Shape(_))));
    }
}

#[test]
fn ten_thousand_places_are_as_few_curves_as_a_hundred() {
    let many = circle((120.0, 120.0), 60.0, 10_000, 0.3);
    let sketch = drawn(&[(Gesture::Stroke(many), PEN)]);
    let count = shapes(&sketch)[0].path.segs.len();
    assert!(count < 16, "{count}");
}

#[test]
fn pressure_makes_a_line_broader_where_it_is_pressed() {
    let hand: Vec<Spot> = (0..=100)
        .map(|i| Spot {
            x: 20.0 + 2.0 * f64::from(i),
            y: 120.0,
            force: Some(f64::from(i) / 100.0),
        })
        .collect();
    let pen = super::Pen { width: 10.0, ..PEN };
    let sketch = drawn(&[(Gesture::Stroke(hand), pen)]);
    let image = pixels(&sketch);
    let wide = |x: f64| {
        let rows = (0..960).filter(|y| colour(&image, x, f64::from(*y) / 4.0).is_some());
        rows.count() as f64 / 4.0
    };
    // 4.5 without pressure to 14.5 with the hardest.
    assert!((wide(40.0) - 5.5).abs() < 0.8, "{}", wide(40.0));
    assert!((wide(120.0) - 9.5).abs() < 0.8, "{}", wide(120.0));
    assert!((wide(200.0) - 13.5).abs() < 0.8, "{}", wide(200.0));
    let shape = shapes(&sketch)[0];
    assert!(
        shape.stroke.is_none() && shape.path.segs.len() < 30,
        "{:?}",
        shape.path
    );
}

#[test]
fn even_pressure_is_a_plain_line() {
    let hand: Vec<Spot> = along(&[(20.0, 20.0), (200.0, 30.0)])
        .into_iter()
        .map(|s| Spot {
            force: Some(0.7),
            ..s
        })
        .collect();
    let sketch = drawn(&[(Gesture::Stroke(hand), PEN)]);
    assert!(shapes(&sketch)[0].stroke.is_some());
}
