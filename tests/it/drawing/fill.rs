//! Filling by a tap.

use daystrand::drawing::gesture::{Gesture, Pen, Spot};
use daystrand::drawing::sketch::Sketch;
use daystrand::units::colour::Rgb;

use super::{PEN, RED, circle, colour, drawn, pixels, shapes};

fn tap(x: f64, y: f64) -> Gesture {
    Gesture::Fill(Spot::new(x, y))
}

fn red() -> Pen {
    Pen { colour: RED, ..PEN }
}

/// An arc that leaves a gap so wide between the ends of its line, round ends included.
fn ring_with_gap(gap: f64) -> Vec<Spot> {
    let open = (gap + 5.2) / 70.0;
    super::spots((0..=200).map(|i| {
        let turn = open / 2.0 + (std::f64::consts::TAU - open) * f64::from(i) / 200.0;
        (120.0 + 70.0 * turn.cos(), 120.0 + 70.0 * turn.sin())
    }))
}

#[test]
fn a_ring_is_filled_inside_and_nowhere_else() {
    let ring = Gesture::Stroke(circle((120.0, 120.0), 70.0, 180, 0.4));
    let sketch = drawn(&[(ring, PEN), (tap(120.0, 120.0), red())]);
    let image = pixels(&sketch);
    for i in 0..360 {
        let turn = f64::from(i).to_radians();
        let at = |r: f64| colour(&image, 120.0 + r * turn.cos(), 120.0 + r * turn.sin());
        assert_eq!(at(60.0), Some(RED), "{i}");
        // No white between colour and line.
        for r in [66.0, 66.5, 67.0, 67.5, 68.0] {
            assert!(at(r).is_some(), "white at {r} in direction {i}");
        }
        assert_eq!(at(70.0), Some(PEN.colour), "{i}");
        assert_eq!(at(74.5), None, "{i}");
    }
    // It lies under the line.
    assert_eq!(shapes(&sketch)[0].fill, Some(RED));
}

#[test]
fn colour_does_not_leave_by_a_narrow_gap() {
    for gap in [0.5, 1.0, 1.8] {
        let ring = Gesture::Stroke(ring_with_gap(gap));
        let sketch = drawn(&[(ring, PEN), (tap(120.0, 120.0), red())]);
        let image = pixels(&sketch);
        assert_eq!(colour(&image, 120.0, 120.0), Some(RED));
        assert_eq!(colour(&image, 230.0, 10.0), None, "leaks by a gap of {gap}");
    }
    let wide = Gesture::Stroke(ring_with_gap(6.0));
    let sketch = drawn(&[(wide, PEN), (tap(120.0, 120.0), red())]);
    assert_eq!(colour(&pixels(&sketch), 230.0, 10.0), Some(RED));
}

/// A corner narrower than a gap is filled into its tip.
#[test]
fn a_narrow_corner_is_filled_to_its_tip() {
    let wedge = [(20.0, 180.0), (220.0, 150.0), (220.0, 180.0)].map(|(x, y)| Spot::new(x, y));
    let sketch = drawn(&[
        (Gesture::Polygon(wedge.to_vec()), PEN),
        (tap(200.0, 170.0), red()),
    ]);
    let image = pixels(&sketch);
    for x in 21..219 {
        let x = f64::from(x);
        for y in [179.0, 178.0, 177.5, 176.0] {
            let inside = y > 180.0 - (x - 20.0) * 0.15;
            assert!(
                !inside || colour(&image, x, y).is_some(),
                "white at {x} {y}"
            );
        }
    }
    assert_eq!(colour(&image, 100.0, 190.0), None);
}

#[test]
fn a_second_tap_gives_another_colour_and_no_second_shape() {
    let ring = Gesture::Stroke(circle((120.0, 120.0), 70.0, 180, 0.0));
    let mut sketch = drawn(&[(ring, PEN), (tap(120.0, 120.0), red())]);
    let blue = Pen {
        colour: Rgb::hex(0x6F_B4_DE),
        ..PEN
    };
    assert!(sketch.draw(&tap(100.0, 110.0), blue));
    assert_eq!(sketch.things().len(), 2);
    assert_eq!(colour(&pixels(&sketch), 120.0, 120.0), Some(blue.colour));
    assert!(
        !sketch.draw(&tap(100.0, 110.0), blue),
        "the same colour again"
    );
    // A tap on a line colours the line.
    assert!(sketch.draw(&tap(190.0, 120.0), red()));
    assert_eq!(colour(&pixels(&sketch), 50.0, 120.0), Some(RED));
}

#[test]
fn one_of_two_rings_is_filled() {
    let outer = Gesture::Stroke(circle((120.0, 120.0), 90.0, 180, 0.0));
    let inner = Gesture::Stroke(circle((120.0, 120.0), 40.0, 180, 0.0));
    let sketch = drawn(&[(outer, PEN), (inner, PEN), (tap(120.0, 55.0), red())]);
    let image = pixels(&sketch);
    assert_eq!(colour(&image, 120.0, 185.0), Some(RED), "all round");
    assert_eq!(colour(&image, 120.0, 120.0), None, "not the inner one");
    assert_eq!(colour(&image, 5.0, 5.0), None, "not outside");
}

#[test]
fn part_of_an_area_parted_by_a_line_is_filled_above_it() {
    let area = Gesture::Rectangle(Spot::new(40.0, 40.0), Spot::new(200.0, 200.0));
    let filled = Pen {
        look: super::Look::Area,
        colour: Rgb::hex(0xFF_C8_3D),
        ..PEN
    };
    let across = Gesture::Line(Spot::new(20.0, 120.0), Spot::new(220.0, 120.0));
    let sketch = drawn(&[(area, filled), (across, PEN), (tap(120.0, 80.0), red())]);
    let image = pixels(&sketch);
    assert_eq!(colour(&image, 120.0, 80.0), Some(RED));
    assert_eq!(colour(&image, 120.0, 160.0), Some(filled.colour));
    assert_eq!(colour(&image, 120.0, 120.0), Some(PEN.colour));
    assert_eq!(colour(&image, 120.0, 30.0), None);
}

#[test]
fn off_the_sheet_and_on_an_empty_one() {
    let mut sketch = Sketch::new();
    assert!(!sketch.draw(&tap(-5.0, 20.0), red()));
    assert!(!sketch.draw(&tap(f64::NAN, 20.0), red()));
    assert!(sketch.draw(&tap(20.0, 20.0), red()), "the whole sheet");
    let image = pixels(&sketch);
    assert_eq!(colour(&image, 1.0, 1.0), Some(RED));
    assert_eq!(colour(&image, 238.0, 238.0), Some(RED));
}
