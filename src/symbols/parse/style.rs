//! How a shape is painted: properties handed down from group to shape, and their initial values by
//! SVG 2, chapter 13.

use std::str::FromStr;

use resvg::usvg::roxmltree::Node;
use resvg::usvg::tiny_skia_path::Transform;
use svgtypes::Paint;

use super::outline::stretches;
use super::shapes::length;
use super::{Refusal, refuse};
use crate::symbols::art::Stroke;
use crate::units::colour::Rgb;

/// How far a transform may stretch one direction more than another before a stroke would have to
/// change its width along the way.
const STRETCH: f32 = 1.04;

/// The properties in force at one place of a drawing.
#[derive(Clone, Copy)]
pub struct Style {
    /// Colour inside.
    pub fill: Option<Rgb>,
    /// Whether the inside is by the even-odd rule.
    pub even_odd: bool,
    /// The same for a shape of a window.
    pub clip_even_odd: bool,
    stroke: Option<Rgb>,
    width: f32,
    cap: Cap,
    join: Join,
}

#[derive(Clone, Copy)]
enum Cap {
    Butt,
    Round,
    Square,
}

#[derive(Clone, Copy)]
enum Join {
    Mitre,
    Round,
    Bevel,
}

impl Default for Style {
    fn default() -> Self {
        Self {
            fill: Some(Rgb(0, 0, 0)),
            even_odd: false,
            clip_even_odd: false,
            stroke: None,
            width: 1.0,
            cap: Cap::Butt,
            join: Join::Mitre,
        }
    }
}

impl Style {
    /// The properties inside `node`, these being in force around it.
    ///
    /// # Errors
    /// Names the value that is not understood or not allowed.
    pub fn inside(mut self, node: Node) -> Result<Self, Refusal> {
        for attribute in node.attributes() {
            let (name, value) = (attribute.name(), attribute.value().trim());
            if value == "inherit" {
                continue;
            }
            match name {
                "fill" => self.fill = paint(value, self.fill)?,
                "stroke" => self.stroke = paint(value, self.stroke)?,
                "stroke-width" => self.width = length(name, value)?,
                "fill-rule" => self.even_odd = even_odd(name, value)?,
                "clip-rule" => self.clip_even_odd = even_odd(name, value)?,
                "stroke-linecap" => {
                    self.cap = match value {
                        "butt" => Cap::Butt,
                        "round" => Cap::Round,
                        "square" => Cap::Square,
                        _ => return unknown(name, value),
                    }
                }
                "stroke-linejoin" => {
                    self.join = match value {
                        "miter" | "miter-clip" => Join::Mitre,
                        "round" => Join::Round,
                        "bevel" => Join::Bevel,
                        _ => return unknown(name, value),
                    }
                }
                _ => {}
            }
        }
        Ok(self)
    }

    /// The line of a shape, if it is seen, on the canvas that `at` leads to.
    ///
    /// # Errors
    /// Says which kind of line is not allowed.
    pub fn line(&self, at: Transform) -> Result<Option<Stroke>, Refusal> {
        let Some(colour) = self.stroke else {
            return Ok(None);
        };
        if self.width <= 0.0 {
            return Ok(None);
        }
        let (long, short) = stretches(at);
        if short <= 0.0 || long / short > STRETCH {
            return refuse("A line is stretched in one direction, so its width would not be even.");
        }
        let butt = match self.cap {
            Cap::Butt => true,
            Cap::Round => false,
            Cap::Square => return refuse("A line has square ends."),
        };
        let mitre = match self.join {
            Join::Mitre => true,
            Join::Round => false,
            Join::Bevel => return refuse("A line has bevelled joins."),
        };
        let width = self.width * (long * short).sqrt();
        Ok(Some(Stroke {
            colour,
            width,
            butt,
            mitre,
        }))
    }
}

fn unknown<T>(name: &str, value: &str) -> Result<T, Refusal> {
    refuse(format!("The value {value:?} of {name} is not understood."))
}

fn even_odd(name: &str, value: &str) -> Result<bool, Refusal> {
    match value {
        "nonzero" => Ok(false),
        "evenodd" => Ok(true),
        _ => unknown(name, value),
    }
}

fn paint(value: &str, around: Option<Rgb>) -> Result<Option<Rgb>, Refusal> {
    match Paint::from_str(value) {
        Ok(Paint::None) => Ok(None),
        Ok(Paint::Inherit) => Ok(around),
        // No drawing may set `color`, so it has its initial value.
        Ok(Paint::CurrentColor) => Ok(Some(Rgb(0, 0, 0))),
        Ok(Paint::Color(c)) if c.alpha < 255 => refuse("A colour is see-through."),
        Ok(Paint::Color(c)) => Ok(Some(Rgb(c.red, c.green, c.blue))),
        Ok(Paint::FuncIRI(..)) => refuse("A shape is painted with a gradient or a pattern."),
        Ok(Paint::ContextFill | Paint::ContextStroke) | Err(_) => {
            refuse(format!("The colour {value:?} is not understood."))
        }
    }
}

/// The transform that an element brings.
///
/// # Errors
/// Says that it is not understood.
pub fn transform(node: Node) -> Result<Transform, Refusal> {
    let Some(text) = node.attribute("transform") else {
        return Ok(Transform::identity());
    };
    let Ok(t) = svgtypes::Transform::from_str(text) else {
        return refuse(format!("The transform {text:?} is not understood."));
    };
    let [a, b, c, d, e, f] = [t.a, t.b, t.c, t.d, t.e, t.f].map(|v| v as f32);
    Ok(Transform::from_row(a, b, c, d, e, f))
}
