//! Undo, grid, shapes.

use daystrand::drawing::gesture::{Gesture, Look, Pen, Spot};
use daystrand::drawing::sketch::{GRID, Sketch, on_grid};
use daystrand::model::ids::SymbolId;
use daystrand::symbols::library::library;
use daystrand::symbols::palette::INK;
use daystrand::symbols::variant::Variant;

use super::{PEN, RED, along, circle, colour, pixels, shapes, spots};

#[test]
fn everything_is_undone_and_done_again() {
    let gestures = [
        Gesture::Stroke(circle((120.0, 120.0), 70.0, 100, 0.5)),
        Gesture::Fill(Spot::new(120.0, 120.0)),
        Gesture::Erase(along(&[(20.0, 120.0), (220.0, 120.0)]), 14.0),
        Gesture::Line(Spot::new(10.0, 10.0), Spot::new(90.0, 10.0)),
    ];
    let pen = Pen { colour: RED, ..PEN };
    let mut sketch = Sketch::new();
    let mut stages = vec![sketch.svg()];
    for g in &gestures {
        assert!(sketch.draw(g, pen));
        stages.push(sketch.svg());
    }
    sketch.clear();
    stages.push(sketch.svg());
    let art = library()
        .art(&SymbolId::new("towel"), Variant::default())
        .art;
    sketch.start_from(&art);
    stages.push(sketch.svg());
    for was in stages.iter().rev().skip(1) {
        assert!(sketch.undo());
        assert_eq!(sketch.svg(), *was);
    }
    assert!(!sketch.undo() && !sketch.can_undo());
    for next in &stages[1..] {
        assert!(sketch.redo());
        assert_eq!(sketch.svg(), *next);
    }
    assert!(!sketch.redo() && !sketch.can_redo());
    // What is done anew takes the place of what was undone.
    assert!(sketch.undo() && sketch.draw(&gestures[3], pen) && !sketch.can_redo());
}

#[test]
fn what_changes_nothing_is_no_step() {
    let mut sketch = Sketch::new();
    sketch.clear();
    let at = Spot::new(50.0, 50.0);
    for g in [
        Gesture::Line(at, at),
        Gesture::Rectangle(at, at),
        Gesture::Ellipse(at, Spot::new(50.0, 90.0)),
        Gesture::Polygon(spots([(1.0, 1.0), (90.0, 1.0)])),
        Gesture::Erase(vec![at], 10.0),
    ] {
        assert!(!sketch.draw(&g, PEN), "{g:?}");
    }
    assert!(!sketch.can_undo() && !sketch.is_changed() && sketch.is_empty());
}

#[test]
fn shapes_are_where_they_were_put() {
    let both = Pen {
        look: Look::Both,
        colour: RED,
        ..PEN
    };
    let mut sketch = Sketch::new();
    let corners = spots([(120.0, 40.0), (200.0, 180.0), (40.0, 180.0)]);
    assert!(sketch.draw(&Gesture::Polygon(corners.clone()), both));
    let image = pixels(&sketch);
    assert_eq!(colour(&image, 120.0, 120.0), Some(RED));
    assert_eq!(colour(&image, 120.0, 180.0), Some(INK));
    assert_eq!(colour(&image, 60.0, 80.0), None);
    sketch.clear();
    assert!(sketch.draw(&Gesture::Rounded(corners), both));
    let image = pixels(&sketch);
    assert_eq!(
        colour(&image, 120.0, 180.0),
        Some(INK),
        "touches each side in its middle"
    );
    assert_eq!(
        colour(&image, 120.0, 50.0),
        None,
        "and rounds the corner off"
    );
    sketch.clear();
    let line = Pen {
        look: Look::Line,
        ..both
    };
    let (a, b) = (Spot::new(200.0, 160.0), Spot::new(40.0, 60.0));
    assert!(sketch.draw(&Gesture::Ellipse(a, b), line));
    let image = pixels(&sketch);
    assert_eq!(colour(&image, 120.0, 60.0), Some(RED));
    assert_eq!(colour(&image, 120.0, 110.0), None);
    assert_eq!(shapes(&sketch)[0].path.segs.len(), 6);
}

#[test]
fn the_grid_holds_places() {
    let at = on_grid(Spot::new(31.0, 100.0));
    assert_eq!((at.x, at.y), (36.0, 96.0));
    let at = on_grid(Spot::new(-90.0, 999.0));
    assert_eq!((at.x, at.y), (0.0, 240.0));
    assert_eq!(240.0 % GRID, 0.0);
}

#[test]
fn a_symbol_started_from_is_its_shapes() {
    let art = library()
        .art(&SymbolId::new("towel"), Variant::default())
        .art;
    let mut sketch = Sketch::new();
    sketch.start_from(&art);
    assert_eq!(sketch.art(), *art);
    assert!(sketch.things().len() == art.nodes.len() && sketch.is_changed());
}
