//! The basic shapes and paths of SVG 2, chapters 9 and 10, as lines and curves.

use std::collections::BTreeMap;
use std::rc::Rc;
use std::str::FromStr;

use resvg::usvg::roxmltree::Node;
use resvg::usvg::tiny_skia_path::{Path as SkPath, PathBuilder, Rect};
use svgtypes::{
    Length, LengthUnit, NumberListParser, PointsParser, SimplePathSegment, SimplifyingPathParser,
};

use super::{Refusal, refuse};

/// How far a curve may lie from the arc it stands for, before it is put on the canvas.
const ARC: f64 = 0.1;

/// Beyond this a number is no place in any drawing, and an arc there would be taken apart into curves
/// without end: it draws nothing.
const FARTHEST: f64 = 1e9;

fn is_far(number: f64) -> bool {
    number.is_nan() || number.abs() > FARTHEST
}

/// A length in the drawing's own units.
///
/// # Errors
/// Says which attribute holds something else.
pub fn length(name: &str, value: &str) -> Result<f32, Refusal> {
    match Length::from_str(value) {
        Ok(Length {
            number,
            unit: LengthUnit::None | LengthUnit::Px,
        }) => Ok(number as f32),
        _ => refuse(format!(
            "The value {value:?} of {name} is not a plain number."
        )),
    }
}

fn number(node: Node, name: &str) -> Result<f32, Refusal> {
    node.attribute(name).map_or(Ok(0.0), |v| length(name, v))
}

/// Stretches of paths that were read already, each from one `M` to the next. Drawings say the same
/// stretch again for its seam and for every window it is part of, and reading the numbers is most
/// of the work. An absolute move begins anew, so that a stretch means the same wherever it stands.
#[derive(Default)]
pub struct Known<'a>(BTreeMap<(usize, &'a str), Option<Rc<SkPath>>>);

impl<'a> Known<'a> {
    fn path(&mut self, text: &'a str) -> Result<Option<Rc<SkPath>>, Refusal> {
        let key = (text.len(), text);
        if let Some(path) = self.0.get(&key) {
            return Ok(path.clone());
        }
        let starts = text.match_indices('M').map(|(i, _)| i).skip(1);
        let ends = starts.chain([text.len()]);
        let mut from = 0;
        let mut pieces = Vec::new();
        for to in ends {
            pieces.push(&text[from..to]);
            from = to;
        }
        if let [whole] = pieces[..] {
            return self.stretch(whole);
        }
        let mut pen = PathBuilder::new();
        for piece in pieces {
            if let Some(path) = self.stretch(piece)? {
                pen.push_path(&path);
            }
        }
        let path = pen.finish().map(Rc::new);
        self.0.insert(key, path.clone());
        Ok(path)
    }

    fn stretch(&mut self, text: &'a str) -> Result<Option<Rc<SkPath>>, Refusal> {
        // By length first: stretches that begin alike are seldom as long as each other.
        let key = (text.len(), text);
        if let Some(path) = self.0.get(&key) {
            return Ok(path.clone());
        }
        let path = data(text)?.map(Rc::new);
        self.0.insert(key, path.clone());
        Ok(path)
    }
}

/// The line of a shape, or nothing where the element draws nothing.
///
/// # Errors
/// Says which of its attributes is not understood.
pub fn path<'a>(node: Node<'a, '_>, known: &mut Known<'a>) -> Result<Option<Rc<SkPath>>, Refusal> {
    match node.tag_name().name() {
        "path" => known.path(node.attribute("d").unwrap_or_default()),
        _ => Ok(basic(node)?.map(Rc::new)),
    }
}

/// The line of one of the basic shapes.
fn basic(node: Node) -> Result<Option<SkPath>, Refusal> {
    let n = |name| number(node, name);
    match node.tag_name().name() {
        "circle" => Ok(ellipse(n("cx")?, n("cy")?, n("r")?, n("r")?)),
        "ellipse" => {
            let (rx, ry) = radii(node)?;
            Ok(ellipse(n("cx")?, n("cy")?, rx, ry))
        }
        "rect" => rect(node),
        "line" => {
            let mut pen = PathBuilder::new();
            pen.move_to(n("x1")?, n("y1")?);
            pen.line_to(n("x2")?, n("y2")?);
            Ok(pen.finish())
        }
        "polyline" => Ok(points(node).finish()),
        "polygon" => {
            let mut pen = points(node);
            pen.close();
            Ok(pen.finish())
        }
        _ => Ok(None),
    }
}

/// Whether a path has arcs and a number that is far beyond any drawing.
fn has_far_arc(text: &str) -> bool {
    let signs = |c: char| !c.is_ascii_alphabetic() || matches!(c, 'e' | 'E');
    text.contains(['a', 'A']) && {
        let numbers = text.replace(|c| !signs(c), " ");
        NumberListParser::from(numbers.as_str()).any(|n| n.is_ok_and(is_far))
    }
}

fn data(text: &str) -> Result<Option<SkPath>, Refusal> {
    if has_far_arc(text) {
        return Ok(None);
    }
    // A segment takes about a dozen letters.
    let mut pen = PathBuilder::with_capacity(text.len() / 12 + 2, text.len() / 6 + 4);
    for seg in SimplifyingPathParser::from(text) {
        match seg.map_err(|e| Refusal(format!("The line of a path breaks off: {e}.")))? {
            SimplePathSegment::MoveTo { x, y } => pen.move_to(x as f32, y as f32),
            SimplePathSegment::LineTo { x, y } => pen.line_to(x as f32, y as f32),
            SimplePathSegment::Quadratic { x1, y1, x, y } => {
                pen.quad_to(x1 as f32, y1 as f32, x as f32, y as f32);
            }
            SimplePathSegment::CurveTo {
                x1,
                y1,
                x2,
                y2,
                x,
                y,
            } => {
                let [a, b, c, d, e, f] = [x1, y1, x2, y2, x, y].map(|v| v as f32);
                pen.cubic_to(a, b, c, d, e, f);
            }
            SimplePathSegment::ClosePath => pen.close(),
        }
    }
    Ok(pen.finish())
}

fn points(node: Node) -> PathBuilder {
    let mut pen = PathBuilder::new();
    for (x, y) in PointsParser::from(node.attribute("points").unwrap_or_default()) {
        if pen.is_empty() {
            pen.move_to(x as f32, y as f32);
        } else {
            pen.line_to(x as f32, y as f32);
        }
    }
    pen
}

/// Radii across and down; one alone stands for both, a negative one for none.
fn radii(node: Node) -> Result<(f32, f32), Refusal> {
    let radius = |name| -> Result<Option<f32>, Refusal> {
        let value = node.attribute(name).filter(|v| v.trim() != "auto");
        let value = value.map(|v| length(name, v)).transpose()?;
        Ok(value.filter(|v| !v.is_sign_negative()))
    };
    Ok(match (radius("rx")?, radius("ry")?) {
        (Some(rx), Some(ry)) => (rx, ry),
        (Some(r), None) | (None, Some(r)) => (r, r),
        (None, None) => (0.0, 0.0),
    })
}

fn rect(node: Node) -> Result<Option<SkPath>, Refusal> {
    let (w, h) = (number(node, "width")?, number(node, "height")?);
    if w <= 0.0 || h <= 0.0 {
        return Ok(None);
    }
    let (x, y) = (number(node, "x")?, number(node, "y")?);
    let (rx, ry) = radii(node)?;
    let (rx, ry) = (rx.min(w / 2.0), ry.min(h / 2.0));
    if rx <= 0.0 || ry <= 0.0 {
        return Ok(Rect::from_xywh(x, y, w, h).map(PathBuilder::from_rect));
    }
    if [x, y, w, h].iter().any(|v| is_far(f64::from(*v))) {
        return Ok(None);
    }
    let mut pen = PathBuilder::new();
    pen.move_to(x + rx, y);
    pen.line_to(x + w - rx, y);
    arc(&mut pen, rx, ry, x + w, y + ry);
    pen.line_to(x + w, y + h - ry);
    arc(&mut pen, rx, ry, x + w - rx, y + h);
    pen.line_to(x + rx, y + h);
    arc(&mut pen, rx, ry, x, y + h - ry);
    pen.line_to(x, y + ry);
    arc(&mut pen, rx, ry, x + rx, y);
    pen.close();
    Ok(pen.finish())
}

fn ellipse(cx: f32, cy: f32, rx: f32, ry: f32) -> Option<SkPath> {
    let far = [cx, cy, rx, ry].iter().any(|v| is_far(f64::from(*v)));
    if rx <= 0.0 || ry <= 0.0 || far {
        return None;
    }
    let mut pen = PathBuilder::new();
    pen.move_to(cx + rx, cy);
    arc(&mut pen, rx, ry, cx, cy + ry);
    arc(&mut pen, rx, ry, cx - rx, cy);
    arc(&mut pen, rx, ry, cx, cy - ry);
    arc(&mut pen, rx, ry, cx + rx, cy);
    pen.close();
    pen.finish()
}

/// The short way clockwise along an upright ellipse to a point.
fn arc(pen: &mut PathBuilder, rx: f32, ry: f32, x: f32, y: f32) {
    let Some(from) = pen.last_point() else { return };
    let arc = kurbo::Arc::from_svg_arc(&kurbo::SvgArc {
        from: kurbo::Point::new(from.x.into(), from.y.into()),
        to: kurbo::Point::new(x.into(), y.into()),
        radii: kurbo::Vec2::new(rx.into(), ry.into()),
        x_rotation: 0.0,
        large_arc: false,
        sweep: true,
    });
    let Some(arc) = arc else {
        return pen.line_to(x, y);
    };
    arc.to_cubic_beziers(ARC, |a, b, p| {
        let [ax, ay, bx, by, px, py] = [a.x, a.y, b.x, b.y, p.x, p.y].map(|v| v as f32);
        pen.cubic_to(ax, ay, bx, by, px, py);
    });
}
