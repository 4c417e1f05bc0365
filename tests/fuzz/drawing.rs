//! Drawings of the program's own: made here, changed, opened again and drawn on.

use std::f64::consts::TAU;

use daystrand::drawing::gesture::{Gesture, Look, Pen, Spot};
use daystrand::drawing::sketch::Sketch;
use daystrand::model::ids::SymbolId;
use daystrand::symbols::library::library;
use daystrand::symbols::parse::parse;
use daystrand::symbols::variant::Variant;
use daystrand::units::colour::Rgb;

use super::targets::{Outcome, Step};

const PEN: Pen = Pen {
    colour: Rgb(0xCC, 0x44, 0x22),
    width: 9.0,
    look: Look::Both,
};

fn round(middle: f64, radius: f64, press: bool) -> Vec<Spot> {
    let at = |i: i32| {
        let a = TAU * f64::from(i) / 60.0;
        Spot {
            x: middle + radius * a.cos(),
            y: middle + radius * a.sin(),
            force: press.then_some(0.5 + 0.4 * a.sin()),
        }
    };
    (0..=60).map(at).collect()
}

/// What a hand may have left.
pub fn originals() -> Vec<Vec<u8>> {
    let gestures = [
        Gesture::Stroke(round(120.0, 70.0, true)),
        Gesture::Fill(Spot::new(120.0, 120.0)),
        Gesture::Erase(round(90.0, 40.0, false), 12.0),
        Gesture::Rectangle(Spot::new(20.0, 150.0), Spot::new(90.0, 220.0)),
        Gesture::Ellipse(Spot::new(150.0, 20.0), Spot::new(220.0, 90.0)),
        Gesture::Polygon(round(170.0, 30.0, false)),
        Gesture::Rounded(round(60.0, 30.0, false)),
    ];
    let mut all = Vec::new();
    for tidy in [false, true] {
        let mut sketch = Sketch::new();
        for gesture in &gestures {
            sketch.draw(gesture, PEN);
            sketch.set_tidy(tidy);
            all.push(sketch.svg().into_bytes());
        }
        let towel = library().art(&SymbolId::new("towel"), Variant::default());
        sketch.start_from(&towel.art);
        all.push(sketch.svg().into_bytes());
    }
    all
}

/// Opens a drawing and does with it what a person does.
pub fn bring(file: &[u8], step: &mut Step) -> Outcome {
    let text = String::from_utf8_lossy(file);
    // What is drawn leaves nothing out; opening leaves out what tidying added.
    let drawn = parse(&text).is_ok();
    step("parse");
    let opened = Sketch::open(&text);
    step("open");
    assert!(opened.is_ok() || !drawn, "drawn, but cannot be opened");
    let Ok(mut sketch) = opened else {
        return Outcome::Refused;
    };
    sketch.draw(&Gesture::Stroke(round(100.0, 50.0, true)), PEN);
    step("stroke");
    sketch.draw(&Gesture::Fill(Spot::new(100.0, 100.0)), PEN);
    step("fill");
    sketch.draw(&Gesture::Erase(round(130.0, 60.0, false), 16.0), PEN);
    step("erase");
    sketch.set_tidy(!sketch.tidy());
    sketch.art();
    step("tidy");
    let kept = sketch.svg();
    step("write");
    assert!(
        Sketch::open(&kept).is_ok(),
        "what is kept cannot be opened again"
    );
    step("open again");
    Outcome::Drawing
}
