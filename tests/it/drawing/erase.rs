//! The eraser.

use daystrand::drawing::gesture::{Gesture, Look, Pen, Spot};
use daystrand::drawing::sketch::Sketch;
use daystrand::model::ids::SymbolId;
use daystrand::symbols::library::library;
use daystrand::symbols::variant::Variant;

use super::{PEN, RED, along, circle, colour, drawn, pixels, shapes};

fn across(x: f64, width: f64) -> Gesture {
    Gesture::Erase(along(&[(x, 10.0), (x, 230.0)]), width)
}

#[test]
fn a_line_is_cut_where_it_is_touched() {
    let line = Gesture::Line(Spot::new(20.0, 120.0), Spot::new(220.0, 120.0));
    let sketch = drawn(&[(line, PEN), (across(120.0, 16.0), PEN)]);
    assert_eq!(sketch.things().len(), 2);
    let image = pixels(&sketch);
    for x in [113.0, 120.0, 127.0] {
        assert_eq!(colour(&image, x, 120.0), None, "{x}");
    }
    // Round ends reach to the eraser's edge.
    for x in [22.0, 111.0, 129.0, 218.0] {
        assert_eq!(colour(&image, x, 120.0), Some(PEN.colour), "{x}");
    }
    assert!(shapes(&sketch).iter().all(|s| s.stroke.is_some()));
}

#[test]
fn an_area_loses_what_is_erased_and_its_ground_is_clear() {
    let area = Gesture::Rectangle(Spot::new(40.0, 40.0), Spot::new(200.0, 200.0));
    let pen = Pen {
        look: Look::Area,
        colour: RED,
        ..PEN
    };
    let sketch = drawn(&[(area, pen), (across(120.0, 20.0), PEN)]);
    let image = pixels(&sketch);
    for y in [50.0, 120.0, 190.0] {
        assert_eq!(colour(&image, 120.0, y), None);
        assert_eq!(colour(&image, 111.0, y), None);
        assert_eq!(colour(&image, 109.4, y), Some(RED));
        assert_eq!(colour(&image, 130.6, y), Some(RED));
    }
    // Corners are as sharp as before, and straight sides are straight.
    assert_eq!(colour(&image, 40.3, 40.3), Some(RED));
    let segs = shapes(&sketch)[0].path.segs.len();
    assert!(segs < 16, "{segs}");
}

#[test]
fn a_filled_shape_with_a_line_loses_both() {
    let ellipse = Gesture::Ellipse(Spot::new(40.0, 60.0), Spot::new(200.0, 180.0));
    let pen = Pen {
        look: Look::Both,
        colour: RED,
        ..PEN
    };
    let sketch = drawn(&[(ellipse, pen), (across(120.0, 20.0), PEN)]);
    let image = pixels(&sketch);
    assert_eq!(colour(&image, 120.0, 60.0), None, "line");
    assert_eq!(colour(&image, 120.0, 120.0), None, "inside");
    assert_eq!(colour(&image, 41.0, 120.0), Some(PEN.colour));
    assert_eq!(colour(&image, 60.0, 120.0), Some(RED));
}

#[test]
fn all_of_it_can_go_and_what_is_not_touched_stays_the_same() {
    let dot = Gesture::Stroke(circle((60.0, 60.0), 6.0, 60, 0.0));
    let ring = Gesture::Stroke(circle((160.0, 160.0), 50.0, 160, 0.3));
    let mut sketch = drawn(&[(dot, PEN), (ring, PEN)]);
    let before = shapes(&sketch)[1].clone();
    assert!(sketch.draw(
        &Gesture::Erase(along(&[(40.0, 60.0), (80.0, 60.0)]), 30.0),
        PEN
    ));
    assert_eq!(shapes(&sketch), [&before]);
    assert!(!sketch.draw(
        &Gesture::Erase(along(&[(40.0, 60.0), (80.0, 60.0)]), 30.0),
        PEN
    ));
}

#[test]
fn a_ring_cut_once_is_one_line() {
    let ring = Gesture::Stroke(circle((120.0, 120.0), 70.0, 160, 0.0));
    let eraser = Gesture::Erase(along(&[(120.0, 40.0), (120.0, 60.0)]), 10.0);
    let sketch = drawn(&[(ring, PEN), (eraser, PEN)]);
    assert_eq!(sketch.things().len(), 1);
}

/// A built-in symbol with windows and broad lines is erased as well.
#[test]
fn a_built_in_symbol_is_erased_where_the_eraser_went() {
    for id in ["swim", "say_hello", "towel", "drum"] {
        let id = SymbolId::new(id);
        if library().get(&id).is_none() {
            continue;
        }
        let mut sketch = Sketch::new();
        sketch.start_from(&library().art(&id, Variant::default()).art);
        let before = pixels(&sketch);
        sketch.draw(&across(120.0, 24.0), PEN);
        let after = pixels(&sketch);
        let mut kept = 0;
        for y in 0..240 {
            let y = f64::from(y);
            for x in [112.0, 120.0, 128.0] {
                // A line beside the eraser may keep half its width.
                let gone = colour(&after, x, y).is_none();
                assert!(gone, "{id} at {x} {y}");
            }
            for x in [60.0, 90.0, 150.0, 180.0] {
                if colour(&before, x, y) == colour(&after, x, y) {
                    kept += 1;
                }
            }
        }
        assert!(kept > 930, "{id}: {kept} of 960 are as before");
    }
}

/// A drawing out of a file, whose line reaches as far on both sides and whose curve turns as far up.
fn far(reach: &str) -> Sketch {
    let text = format!(
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 240 240'>\
         <path d='M-{reach} 120L{reach} 120M120 -{reach}C120 {reach} 130 -{reach} 130 {reach}' \
         fill='none' stroke='#16302F' stroke-width='4'/></svg>"
    );
    Sketch::open(&text).unwrap()
}

#[test]
fn a_line_that_goes_far_beyond_the_canvas_is_cut_where_it_is_touched() {
    for reach in ["9000", "400000", "999999"] {
        let mut sketch = far(reach);
        let before = sketch.things().len();
        assert!(sketch.draw(&across(60.0, 16.0), PEN), "{reach}");
        let image = pixels(&sketch);
        assert_eq!(colour(&image, 60.0, 120.0), None, "{reach}");
        for x in [49.0, 71.0] {
            assert!(colour(&image, x, 120.0).is_some(), "{reach} {x}");
        }
        assert!(sketch.things().len() > before, "{reach}");
    }
}

/// The painter of pixels would stop the program.
#[test]
fn what_lies_beyond_all_bounds_is_not_drawn() {
    for reach in ["2000000", "9e9", "3e19", "2e38"] {
        let mut sketch = far(reach);
        let untouched = sketch.art();
        sketch.draw(&across(60.0, 16.0), PEN);
        assert_eq!(pixels(&sketch).pixels().filter(|p| p.0[3] > 0).count(), 0);
        assert_eq!(sketch.art(), untouched);
    }
}
