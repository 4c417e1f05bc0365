//! Tidied as the built-in symbols are.

use daystrand::drawing::colours::COLOURS;
use daystrand::drawing::gesture::{Gesture, Look, Pen, Spot};
use daystrand::symbols::palette::{INK, WHITE};

use super::{PEN, RED, circle, colour, drawn, pixels};

fn area(colour: daystrand::units::colour::Rgb) -> Pen {
    Pen {
        look: Look::Area,
        colour,
        ..PEN
    }
}

fn rect(a: (f64, f64), b: (f64, f64)) -> Gesture {
    Gesture::Rectangle(Spot::new(a.0, a.1), Spot::new(b.0, b.1))
}

#[test]
fn one_line_goes_round_the_whole_figure() {
    let mut sketch = drawn(&[
        (rect((40.0, 60.0), (140.0, 160.0)), area(RED)),
        (rect((100.0, 100.0), (200.0, 200.0)), area(COLOURS[6].1)),
    ]);
    sketch.set_tidy(true);
    let image = pixels(&sketch);
    // On the edge of the figure, not inside.
    for (x, y) in [(40.0, 100.0), (90.0, 60.0), (200.0, 150.0), (70.0, 160.0)] {
        assert_eq!(colour(&image, x, y), Some(INK), "{x} {y}");
    }
    assert_eq!(colour(&image, 36.0, 100.0), None);
    // Where one lies on the other there is a white seam, outside the upper one.
    assert_eq!(colour(&image, 120.0, 98.8), Some(WHITE));
    assert_eq!(colour(&image, 120.0, 95.0), Some(RED));
    assert_eq!(colour(&image, 120.0, 102.0), Some(COLOURS[6].1));
    // The seam does not cut the line round the figure.
    assert_eq!(colour(&image, 140.0, 98.8), Some(INK));
}

#[test]
fn sand_and_water_have_no_line_and_ink_lies_above() {
    let mut sketch = drawn(&[
        (rect((20.0, 180.0), (220.0, 220.0)), area(COLOURS[5].1)),
        (rect((60.0, 60.0), (180.0, 190.0)), area(RED)),
        (Gesture::Stroke(circle((120.0, 120.0), 20.0, 80, 0.0)), PEN),
    ]);
    sketch.set_tidy(true);
    let image = pixels(&sketch);
    assert_eq!(colour(&image, 20.5, 200.0), Some(COLOURS[5].1));
    assert_eq!(colour(&image, 60.0, 120.0), Some(INK));
    assert_eq!(colour(&image, 140.0, 120.0), Some(INK));
}

#[test]
fn it_can_be_switched_off_again() {
    let mut sketch = drawn(&[(rect((40.0, 60.0), (140.0, 160.0)), area(RED))]);
    let before = sketch.svg();
    sketch.set_tidy(true);
    assert_ne!(sketch.svg(), before);
    sketch.set_tidy(false);
    assert_eq!(sketch.svg(), before);
    assert!(sketch.undo() && sketch.tidy() && sketch.undo() && !sketch.tidy());
}
