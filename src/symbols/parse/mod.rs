//! From an SVG of the agreed subset to flat shapes. What lies outside the subset is refused with a
//! reason, so that no painter ever meets it.

mod outline;
mod shapes;
mod style;
mod subset;

use std::collections::BTreeMap;
use std::fmt;
use std::str::FromStr;

use resvg::usvg::roxmltree::{Document, Node as Element};
use resvg::usvg::tiny_skia_path::Transform;

use self::outline::{backwards, outline, signed_area};
use self::shapes::Known;
use self::style::Style;
use super::art::{Art, CANVAS, Node, Shape};
use crate::units::path::Path;

/// Groups within groups, at most: far more than a drawing needs, far less than the stack holds.
const DEEPEST: usize = 200;

/// Why a drawing cannot be used.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Refusal(pub String);

impl fmt::Display for Refusal {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}

impl std::error::Error for Refusal {}

fn refuse<T>(reason: impl Into<String>) -> Result<T, Refusal> {
    Err(Refusal(reason.into()))
}

/// Reads a drawing.
///
/// # Errors
/// Says which element, attribute or property is outside the subset, or where the XML breaks.
pub fn parse(svg: &str) -> Result<Art, Refusal> {
    let doc = Document::parse(svg)
        .map_err(|e| Refusal(format!("The drawing is not well-formed XML: {e}.")))?;
    let mut windows = BTreeMap::new();
    for element in doc.descendants().filter(Element::is_element) {
        subset::check(element)?;
        if element.tag_name().name() == "clipPath"
            && let Some(id) = element.attribute("id")
        {
            windows.entry(id).or_insert(element);
        }
    }
    let root = doc.root_element();
    if root.tag_name().name() != "svg" {
        return refuse("The drawing does not begin with <svg>.");
    }
    let at = fit(root)?;
    let mut nodes = Vec::new();
    let known = Known::default();
    let mut reader = Reader { windows, known };
    reader.children(root, Style::default().inside(root)?, at, 0, &mut nodes)?;
    Ok(Art { nodes })
}

/// The way from the units of a drawing to the canvas.
fn fit(root: Element) -> Result<Transform, Refusal> {
    let side = |name| {
        let value = root.attribute(name).filter(|v| *v != "100%");
        value.map(|v| shapes::length(name, v)).transpose()
    };
    let (width, height) = (side("width")?, side("height")?);
    let seen = match root.attribute("viewBox") {
        Some(text) => match svgtypes::ViewBox::from_str(text) {
            Ok(b) => [b.x, b.y, b.w, b.h].map(|v| v as f32),
            Err(e) => return refuse(format!("The viewBox is not understood: {e}.")),
        },
        None => match (width, height) {
            (Some(w), Some(h)) => [0.0, 0.0, w, h],
            _ => return refuse("The drawing has no viewBox that says how large it is."),
        },
    };
    let [x, y, w, h] = seen;
    let (wide, high) = (width.unwrap_or(w), height.unwrap_or(h));
    if (wide - high).abs() > 0.01 || (w - h).abs() > 0.01 {
        return refuse("The drawing is not square.");
    }
    if w <= 0.0 || h <= 0.0 || wide <= 0.0 {
        return refuse("The drawing has no size.");
    }
    Ok(Transform::from_scale(CANVAS / w, CANVAS / w).pre_translate(-x, -y))
}

struct Reader<'a, 'i> {
    /// Every `clipPath` by its name.
    windows: BTreeMap<&'a str, Element<'a, 'i>>,
    /// Lines that were read already.
    known: Known<'a>,
}

impl<'a, 'i> Reader<'a, 'i> {
    fn children(
        &mut self,
        parent: Element<'a, 'i>,
        style: Style,
        at: Transform,
        depth: usize,
        out: &mut Vec<Node>,
    ) -> Result<(), Refusal> {
        if depth > DEEPEST {
            return refuse("The drawing has too many groups within groups.");
        }
        for child in parent.children().filter(Element::is_element) {
            match child.tag_name().name() {
                "defs" | "clipPath" | "title" => continue,
                "svg" => return refuse("The drawing holds another <svg>."),
                _ => {}
            }
            let at = at.pre_concat(style::transform(child)?);
            if !at.is_valid() {
                continue;
            }
            let style = style.inside(child)?;
            let Some(window) = self.window(child)? else {
                self.one(child, style, at, depth, out)?;
                continue;
            };
            let clip = clip_outline(window, at, &mut self.known)?;
            let mut nodes = Vec::new();
            self.one(child, style, at, depth, &mut nodes)?;
            if !nodes.is_empty() && !clip.segs.is_empty() {
                out.push(Node::Clipped { clip, nodes });
            }
        }
        Ok(())
    }

    fn one(
        &mut self,
        element: Element<'a, 'i>,
        style: Style,
        at: Transform,
        depth: usize,
        out: &mut Vec<Node>,
    ) -> Result<(), Refusal> {
        if element.tag_name().name() == "g" {
            return self.children(element, style, at, depth + 1, out);
        }
        let stroke = style.line(at)?;
        if style.fill.is_none() && stroke.is_none() {
            return Ok(());
        }
        if let Some(path) = shapes::path(element, &mut self.known)? {
            out.push(Node::Shape(Shape {
                path: outline(&path, at),
                fill: style.fill,
                even_odd: style.fill.is_some() && style.even_odd,
                stroke,
            }));
        }
        Ok(())
    }

    fn window(&self, element: Element) -> Result<Option<Element<'a, 'i>>, Refusal> {
        let Some(text) = element.attribute("clip-path").filter(|t| *t != "none") else {
            return Ok(None);
        };
        let link = svgtypes::FuncIRI::from_str(text);
        match link.ok().and_then(|link| self.windows.get(link.0)) {
            Some(window) => Ok(Some(*window)),
            None => refuse(format!("The window {text:?} is not in the drawing.")),
        }
    }
}

/// One path that covers all that the window's shapes cover. Each shape is turned the same way round
/// so that overlaps add up.
fn clip_outline<'a>(
    window: Element<'a, '_>,
    at: Transform,
    known: &mut Known<'a>,
) -> Result<Path<[f32; 2]>, Refusal> {
    if window.attribute("clip-path").is_some_and(|t| t != "none") {
        return refuse("A window is itself seen through a window.");
    }
    if window.attribute("clipPathUnits") == Some("objectBoundingBox") {
        return refuse("A window is measured by what is seen through it.");
    }
    let at = at.pre_concat(style::transform(window)?);
    let style = inherited(window)?;
    let mut all = Path { segs: Vec::new() };
    for part in window.children().filter(Element::is_element) {
        if part.attribute("clip-path").is_some_and(|t| t != "none") {
            return refuse("A part of a window is itself seen through a window.");
        }
        match part.tag_name().name() {
            "title" => continue,
            name @ ("g" | "svg" | "defs" | "clipPath") => {
                return refuse(format!("A window holds <{name}> instead of plain shapes."));
            }
            _ => {}
        }
        if style.inside(part)?.clip_even_odd {
            return refuse("A window has the even-odd rule.");
        }
        let at = at.pre_concat(style::transform(part)?);
        let Some(path) = shapes::path(part, known)? else {
            continue;
        };
        let path = outline(&path, at);
        let path = if signed_area(&path) < 0.0 {
            backwards(&path)
        } else {
            path
        };
        all.segs.extend(path.segs);
    }
    Ok(all)
}

/// The properties in force in an element that is not read on the way down.
fn inherited(element: Element) -> Result<Style, Refusal> {
    let mut above: Vec<Element> = element.ancestors().filter(Element::is_element).collect();
    above.reverse();
    above
        .into_iter()
        .try_fold(Style::default(), |style, e| style.inside(e))
}
