//! The calm drawing that stands where a symbol is missing: a dashed empty square.

use super::art::{Art, CANVAS, Node, Shape, Stroke};
use crate::units::colour::Rgb;
use crate::units::path::{Path, Seg};

/// Distance of the square from the canvas edge.
const MARGIN: f32 = 30.0;
/// Radius of its corners.
const RADIUS: f32 = 30.0;
/// Dashes on each straight side; corners are dashes of their own.
const DASHES: usize = 4;
/// A quarter circle as a cubic: the usual constant, 4/3 (sqrt 2 - 1).
const KAPPA: f32 = 0.552_284_8;

/// The drawing.
pub fn placeholder() -> Art {
    let mut segs = Vec::new();
    let far = CANVAS / 2.0 - MARGIN;
    let straight = far - RADIUS;
    for quarter in 0..4 {
        let p = |x: f32, y: f32| turned(x, y, quarter);
        let pitch = 2.0 * straight / DASHES as f32;
        for dash in 0..DASHES {
            let from = -straight + pitch * (dash as f32 + 0.25);
            segs.push(Seg::Move(p(from, -far)));
            segs.push(Seg::Line(p(from + pitch / 2.0, -far)));
        }
        // The middle half of the corner, between the dashes beside it.
        let (a, b) = (corner(0.2), corner(0.8));
        let pull = KAPPA * RADIUS * 0.6;
        let along = |angle: f32| [angle.sin() * pull, angle.cos() * pull];
        let (t0, t1) = (along(0.2 * HALF_PI), along(0.8 * HALF_PI));
        let o = straight;
        segs.push(Seg::Move(p(o + a[0], -o - a[1])));
        segs.push(Seg::Cubic(
            p(o + a[0] + t0[1], -o - a[1] + t0[0]),
            p(o + b[0] - t1[1], -o - b[1] - t1[0]),
            p(o + b[0], -o - b[1]),
        ));
    }
    let stroke = Stroke {
        colour: Rgb::hex(0x87_7C_62),
        width: 6.0,
        butt: false,
        mitre: false,
    };
    let shape = Shape {
        path: Path { segs },
        fill: None,
        even_odd: false,
        stroke: Some(stroke),
    };
    Art {
        nodes: vec![Node::Shape(shape)],
    }
}

const HALF_PI: f32 = std::f32::consts::FRAC_PI_2;

/// A place on the corner's quarter circle, from its top (0) to its side (1).
fn corner(part: f32) -> [f32; 2] {
    let angle = part * HALF_PI;
    [angle.sin() * RADIUS, angle.cos() * RADIUS]
}

/// A place around the middle of the canvas, turned by quarters of a circle.
fn turned(x: f32, y: f32, quarters: u8) -> [f32; 2] {
    let (x, y) = match quarters {
        0 => (x, y),
        1 => (-y, x),
        2 => (-x, -y),
        _ => (y, -x),
    };
    [CANVAS / 2.0 + x, CANVAS / 2.0 + y]
}
