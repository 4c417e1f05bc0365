//! A drawing said anew in flat shapes on a square of 240: transforms done, uses copied out, styles
//! on each shape.

use std::fmt::Write;

use resvg::tiny_skia::{Path as Outline, PathBuilder, PathSegment, Transform};
use resvg::usvg::{ClipPath, FillRule, Group, Node, Paint, PaintOrder, Path, Rect, Tree};

use super::super::refusal::Why;
use super::lines::{Line, line};
use crate::symbols::art::CANVAS;
use crate::symbols::parse::parse;

/// Left free around a drawing that reaches to its edges, and what counts as reaching there.
const MARGIN: f32 = 6.0;
const NEAR: f32 = 3.0;
/// The longest text that is kept, in bytes; the largest drawing of this program has a tenth of it.
const LONGEST: usize = 400_000;
/// Farther out no number keeps its two decimals.
const FARTHEST: f32 = 100_000.0;

/// The drawing; none where flat shapes cannot say it or would be too many.
///
/// # Errors
/// If it has lines of dashes without end.
pub fn write(tree: &Tree) -> Result<Option<String>, Why> {
    let (w, h) = (tree.size().width(), tree.size().height());
    let ink = tree.root().abs_stroke_bounding_box();
    let at = place(w, h, ink);
    let mut writer = Writer::default();
    let over = ink.left() < -0.01 * w
        || ink.top() < -0.01 * h
        || ink.right() > 1.01 * w
        || ink.bottom() > 1.01 * h;
    if over && let Some(edge) = Rect::from_xywh(0.0, 0.0, w, h) {
        let edge = PathBuilder::from_rect(edge).transform(at);
        writer.open(edge.iter());
    }
    writer.group(tree.root(), at)?;
    if over {
        writer.body.push_str("</g>");
    }
    let svg = writer.whole();
    // What is kept must be what is drawn later.
    let fits =
        !writer.is_beyond && svg.len() <= LONGEST && parse(&svg).is_ok_and(|a| !a.nodes.is_empty());
    Ok(fits.then_some(svg))
}

/// Onto the middle of the square, with a margin if the ink comes near its edges.
fn place(w: f32, h: f32, ink: Rect) -> Transform {
    let middle = |scale: f32| {
        let (x, y) = ((CANVAS - w * scale) / 2.0, (CANVAS - h * scale) / 2.0);
        Transform::from_row(scale, 0.0, 0.0, scale, x, y)
    };
    let longest = w.max(h);
    let whole = middle(CANVAS / longest);
    let near = |low: f32, high: f32, side: f32| {
        let (low, high) = (low.max(0.0), high.min(side));
        let free = (CANVAS - side * whole.sx) / 2.0;
        free + low * whole.sx < NEAR || free + (side - high) * whole.sx < NEAR
    };
    if near(ink.left(), ink.right(), w) || near(ink.top(), ink.bottom(), h) {
        return middle((CANVAS - 2.0 * MARGIN) / longest);
    }
    whole
}

#[derive(Default)]
struct Writer {
    windows: String,
    count: usize,
    body: String,
    is_beyond: bool,
}

impl Writer {
    fn whole(&self) -> String {
        let mut svg =
            format!("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {CANVAS} {CANVAS}\">");
        if !self.windows.is_empty() {
            let _ = write!(svg, "<defs>{}</defs>", self.windows);
        }
        svg.push_str(&self.body);
        svg.push_str("</svg>\n");
        svg
    }

    fn group(&mut self, group: &Group, at: Transform) -> Result<(), Why> {
        for node in group.children() {
            if self.body.len() + self.windows.len() > LONGEST {
                self.is_beyond = true;
                return Ok(());
            }
            match node {
                Node::Group(inside) => {
                    let at = at.pre_concat(inside.transform());
                    let opened = self.through(inside.clip_path(), at);
                    self.group(inside, at)?;
                    self.body.push_str(&"</g>".repeat(opened));
                }
                Node::Path(path) if path.is_visible() => self.path(path, at)?,
                _ => {}
            }
        }
        Ok(())
    }

    /// Opens a group for a window and each further one it is seen through itself; says how many.
    fn through(&mut self, clip: Option<&ClipPath>, at: Transform) -> usize {
        let (mut clip, mut opened) = (clip, 0);
        while let Some(window) = clip {
            let mut shapes = Vec::new();
            gather(
                window.root(),
                at.pre_concat(window.transform()),
                &mut shapes,
            );
            self.open(shapes.iter());
            opened += 1;
            clip = window.clip_path();
        }
        opened
    }

    fn open<'a>(&mut self, shapes: impl Iterator<Item = &'a Outline>) {
        self.count += 1;
        let id = self.count;
        let mut window = String::new();
        for shape in shapes {
            let d = self.data(shape);
            let _ = write!(window, "<path d=\"{d}\"/>");
        }
        let _ = write!(self.windows, "<clipPath id=\"w{id}\">{window}</clipPath>");
        let _ = write!(self.body, "<g clip-path=\"url(#w{id})\">");
    }

    fn path(&mut self, path: &Path, at: Transform) -> Result<(), Why> {
        if path.paint_order() == PaintOrder::StrokeAndFill {
            self.stroke(path, at)?;
            self.fill(path, at);
        } else {
            self.fill(path, at);
            self.stroke(path, at)?;
        }
        Ok(())
    }

    fn fill(&mut self, path: &Path, at: Transform) {
        let Some(fill) = path.fill().filter(|f| f.opacity().get() > 0.0) else {
            return;
        };
        let Some(outline) = path.data().clone().transform(at) else {
            return;
        };
        let rule = match fill.rule() {
            FillRule::NonZero => "",
            FillRule::EvenOdd => " fill-rule=\"evenodd\"",
        };
        let (d, colour) = (self.data(&outline), self.colour(fill.paint()));
        let _ = write!(self.body, "<path d=\"{d}\" fill=\"{colour}\"{rule}/>");
    }

    fn stroke(&mut self, path: &Path, at: Transform) -> Result<(), Why> {
        let Some(stroke) = path.stroke().filter(|s| s.opacity().get() > 0.0) else {
            return Ok(());
        };
        let colour = self.colour(stroke.paint());
        match line(path, stroke, at)? {
            Some(Line::Pen {
                path,
                width,
                cap,
                join,
            }) => {
                let (d, width) = (self.data(&path), self.number(width.max(0.01)));
                let _ = write!(
                    self.body,
                    "<path d=\"{d}\" fill=\"none\" stroke=\"{colour}\" stroke-width=\"{width}\" \
                     stroke-linecap=\"{cap}\" stroke-linejoin=\"{join}\"/>"
                );
            }
            Some(Line::Shape(shape)) => {
                let d = self.data(&shape);
                let _ = write!(self.body, "<path d=\"{d}\" fill=\"{colour}\"/>");
            }
            None => {}
        }
        Ok(())
    }

    fn colour(&mut self, paint: &Paint) -> String {
        let Paint::Color(c) = paint else {
            self.is_beyond = true;
            return "none".to_owned();
        };
        format!("#{:02x}{:02x}{:02x}", c.red, c.green, c.blue)
    }

    fn data(&mut self, path: &Outline) -> String {
        let mut d = String::new();
        for segment in path.segments() {
            let (letter, points) = match segment {
                PathSegment::MoveTo(p) => ('M', vec![p]),
                PathSegment::LineTo(p) => ('L', vec![p]),
                PathSegment::QuadTo(a, p) => ('Q', vec![a, p]),
                PathSegment::CubicTo(a, b, p) => ('C', vec![a, b, p]),
                PathSegment::Close => ('Z', Vec::new()),
            };
            d.push(letter);
            for (i, v) in points.iter().flat_map(|p| [p.x, p.y]).enumerate() {
                let text = self.number(v);
                if i > 0 && !text.starts_with('-') {
                    d.push(' ');
                }
                d.push_str(&text);
            }
        }
        d
    }

    /// With two decimals, far finer than any paper: the canvas has 24,000 such steps.
    fn number(&mut self, v: f32) -> String {
        if !v.is_finite() || v.abs() > FARTHEST {
            self.is_beyond = true;
            return "0".to_owned();
        }
        let text = format!("{v:.2}");
        let text = text.trim_end_matches('0').trim_end_matches('.');
        if text == "-0" {
            "0".to_owned()
        } else {
            text.to_owned()
        }
    }
}

/// The shapes of a window.
fn gather(group: &Group, at: Transform, shapes: &mut Vec<Outline>) {
    for node in group.children() {
        match node {
            Node::Group(inside) => gather(inside, at.pre_concat(inside.transform()), shapes),
            Node::Path(path) => shapes.extend(path.data().clone().transform(at)),
            _ => {}
        }
    }
}
