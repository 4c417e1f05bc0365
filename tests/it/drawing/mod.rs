//! Drawings made by hand: what the hand did, what is kept of it, and what is written.

mod erase;
mod fill;
mod published;
mod sketch;
mod strokes;
mod svg;
mod tidy;

use daystrand::drawing::gesture::{Gesture, Look, Pen, Spot};
use daystrand::drawing::sketch::Sketch;
use daystrand::symbols::art::{Node, Shape};
use daystrand::symbols::palette::INK;
use daystrand::units::colour::Rgb;
use image::RgbaImage;

const PEN: Pen = Pen {
    colour: INK,
    width: 5.2,
    look: Look::Line,
};
const RED: Rgb = Rgb::hex(0xE8_58_2F);

/// The same numbers between -1 and 1 at every run.
struct Tremble(u64);

impl Tremble {
    fn next(&mut self) -> f64 {
        self.0 ^= self.0 << 13;
        self.0 ^= self.0 >> 7;
        self.0 ^= self.0 << 17;
        (self.0 % 20_001) as f64 / 10_000.0 - 1.0
    }
}

fn spots(points: impl IntoIterator<Item = (f64, f64)>) -> Vec<Spot> {
    points.into_iter().map(|(x, y)| Spot::new(x, y)).collect()
}

/// A circle as a hand draws it, so many places round it and trembling so much.
fn circle(at: (f64, f64), radius: f64, places: usize, tremble: f64) -> Vec<Spot> {
    let mut t = Tremble(77);
    spots((0..=places).map(|i| {
        let turn = std::f64::consts::TAU * i as f64 / places as f64;
        let r = radius + tremble * t.next();
        (at.0 + r * turn.cos(), at.1 + r * turn.sin())
    }))
}

/// Straight from corner to corner, many places between.
fn along(corners: &[(f64, f64)]) -> Vec<Spot> {
    let pairs = corners.windows(2).flat_map(|w| {
        (0..40).map(move |i| {
            let t = f64::from(i) / 40.0;
            (
                w[0].0 + (w[1].0 - w[0].0) * t,
                w[0].1 + (w[1].1 - w[0].1) * t,
            )
        })
    });
    spots(pairs.chain(corners.last().copied()))
}

fn drawn(gestures: &[(Gesture, Pen)]) -> Sketch {
    let mut sketch = Sketch::new();
    for (gesture, pen) in gestures {
        assert!(sketch.draw(gesture, *pen), "{gesture:?} changed nothing");
    }
    sketch
}

fn pixels(sketch: &Sketch) -> RgbaImage {
    daystrand::raster::paint_art(&sketch.art(), 960)
}

/// The colour at a place of the canvas, or nothing where nothing is.
fn colour(image: &RgbaImage, x: f64, y: f64) -> Option<Rgb> {
    let scale = f64::from(image.width()) / 240.0;
    let [r, g, b, a] = image.get_pixel((x * scale) as u32, (y * scale) as u32).0;
    (a > 127).then_some(Rgb(r, g, b))
}

fn shapes(sketch: &Sketch) -> Vec<&Shape> {
    let things = sketch.things();
    things
        .filter_map(|n| match n {
            Node::Shape(s) => Some(s),
            _ => None,
        })
        .collect()
}
