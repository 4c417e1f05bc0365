//! Symbols, painted shape by shape; nothing of one is seen outside its square.

use image::RgbaImage;
use resvg::tiny_skia::{PathBuilder, Rect as SkiaRect, Transform};

use super::Place;
use super::canvas::{Canvas, Pen, outline};
use crate::symbols::art::{Art, CANVAS, Node, Shape};
use crate::units::Rect;
use crate::units::path::{Path, Seg};

/// Largest side of a symbol painted by itself, in pixels.
const LARGEST: u32 = 4096;

/// A symbol by itself on transparent ground, on a square of `px` pixels, at least 1 and at most
/// 4096.
pub fn paint_art(art: &Art, px: u32) -> RgbaImage {
    let px = px.clamp(1, LARGEST);
    let painted = Canvas::new(px, px).and_then(|mut canvas| {
        let side = px as f32 / CANVAS;
        paint_nodes(&mut canvas, &art.nodes, Transform::from_scale(side, side));
        canvas.into_image()
    });
    painted.unwrap_or_else(|| RgbaImage::new(px, px))
}

/// Paints a symbol into the middle square of a rectangle.
pub(super) fn paint_on_page(canvas: &mut Canvas, place: &Place, rect: Rect, art: &Art) {
    let square = rect.middle_square();
    let [x, y] = place.px(square.origin());
    let scale = place.length(square.w) / CANVAS;
    let to_px = Transform::from_row(scale, 0.0, 0.0, scale, x, y);
    if !art.nodes.iter().any(reaches_out) {
        return paint_nodes(canvas, &art.nodes, to_px);
    }
    let Some(whole) = SkiaRect::from_xywh(0.0, 0.0, CANVAS, CANVAS) else {
        return;
    };
    canvas.through(&PathBuilder::from_rect(whole), to_px, |layer, to_px| {
        paint_nodes(layer, &art.nodes, to_px);
    });
}

fn paint_nodes(canvas: &mut Canvas, nodes: &[Node], to_px: Transform) {
    for node in nodes {
        match node {
            Node::Shape(shape) => paint_shape(canvas, shape, to_px),
            Node::Clipped { clip, nodes } => {
                if let Some(window) = outline(clip) {
                    canvas.through(&window, to_px, |layer, to_px| {
                        paint_nodes(layer, nodes, to_px);
                    });
                }
            }
            Node::Pixels { at, pixels } => canvas.pixels(pixels.image(), *at, to_px),
        }
    }
}

fn paint_shape(canvas: &mut Canvas, shape: &Shape, to_px: Transform) {
    let Some(path) = outline(&shape.path) else {
        return;
    };
    if let Some(colour) = shape.fill {
        canvas.fill_outline(&path, colour, shape.even_odd, to_px);
    }
    if let Some(stroke) = shape.stroke {
        let pen = Pen {
            colour: stroke.colour,
            width: stroke.width,
            butt: stroke.butt,
            mitre: stroke.mitre,
            dash: None,
        };
        canvas.stroke_outline(&path, &pen, to_px);
    }
}

/// Whether a node may put ink outside the square of the symbol, going by the outermost points of
/// its lines.
fn reaches_out(node: &Node) -> bool {
    match node {
        Node::Shape(shape) => {
            // A pointed join reaches up to four half widths (the limit SVG gives by default).
            let reach = |s: crate::symbols::art::Stroke| s.width * if s.mitre { 2.0 } else { 0.5 };
            let margin = shape.stroke.map_or(0.0, reach);
            any_point_outside(&shape.path, margin)
        }
        Node::Clipped { clip, .. } => any_point_outside(clip, 0.0),
        Node::Pixels { .. } => false,
    }
}

fn any_point_outside(path: &Path<[f32; 2]>, margin: f32) -> bool {
    let inside = |v: f32| v >= margin && v <= CANVAS - margin;
    let out = |p: &[f32; 2]| !(inside(p[0]) && inside(p[1]));
    path.segs.iter().any(|seg| match seg {
        Seg::Move(p) | Seg::Line(p) => out(p),
        Seg::Cubic(a, b, p) => out(a) || out(b) || out(p),
        Seg::Close => false,
    })
}
