//! A drawing as SVG text in the words of the built-in symbols, and such text as things again.

use std::fmt::Write as _;

use super::tidy::{Piece, tidied};
use crate::symbols::art::{Art, CANVAS, Node, Shape};
use crate::symbols::parse::{Refusal, parse};
use crate::units::colour::Rgb;
use crate::units::path::{Path, Seg};

/// How a line of the text begins that tidying made; such lines are left out when it is read again.
const MADE: [&str; 2] = ["<path id=\"seam-", "<path id=\"edge-"];

/// Writes things, each in a line of its own; the same things give the same bytes.
pub fn write(things: &[&Node], tidy: bool) -> String {
    let mut out = Writer::default();
    if tidy {
        for piece in tidied(things) {
            match piece {
                Piece::Drawn(node) => out.node(node),
                Piece::Seam(Node::Shape(s)) => out.shape(&s, "seam"),
                Piece::Edge(Node::Shape(s)) => out.shape(&s, "edge"),
                Piece::Seam(_) | Piece::Edge(_) => {}
            }
        }
    } else {
        things.iter().for_each(|n| out.node(n));
    }
    format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {CANVAS} {CANVAS}\">\n{}</svg>\n",
        out.text
    )
}

/// Things from a text, and whether it was tidied.
///
/// # Errors
/// Says what is outside the words of the built-in symbols.
pub fn read(text: &str) -> Result<(Art, bool), Refusal> {
    let made = |l: &&str| MADE.iter().any(|m| l.starts_with(m));
    let tidy = text.lines().any(|l| made(&l));
    if !tidy {
        return Ok((parse(text)?, false));
    }
    let drawn: Vec<&str> = text.lines().filter(|l| !made(l)).collect();
    match parse(&drawn.join("\n")) {
        Ok(art) => Ok((art, true)),
        // Lines were changed by another hand: all that is there are things.
        Err(_) => Ok((parse(text)?, false)),
    }
}

#[derive(Default)]
struct Writer {
    text: String,
    windows: usize,
    made: usize,
}

impl Writer {
    fn node(&mut self, node: &Node) {
        match node {
            Node::Shape(shape) => self.shape(shape, ""),
            Node::Clipped { clip, nodes } => {
                self.windows += 1;
                let n = self.windows;
                let d = data(clip);
                let _ = write!(
                    self.text,
                    "<clipPath id=\"w{n}\"><path d=\"{d}\"/></clipPath>\n<g clip-path=\"url(#w{n})\">\n"
                );
                nodes.iter().for_each(|n| self.node(n));
                self.text.push_str("</g>\n");
            }
            Node::Pixels { .. } => {}
        }
    }

    fn shape(&mut self, shape: &Shape, made: &str) {
        self.text.push_str("<path");
        if !made.is_empty() {
            self.made += 1;
            let _ = write!(self.text, " id=\"{made}-{}\"", self.made);
        }
        let _ = write!(self.text, " d=\"{}\"", data(&shape.path));
        let _ = match shape.fill {
            Some(colour) => write!(self.text, " fill=\"{}\"", hex(colour)),
            None => write!(self.text, " fill=\"none\""),
        };
        if shape.even_odd {
            self.text.push_str(" fill-rule=\"evenodd\"");
        }
        if let Some(line) = shape.stroke {
            let (colour, width) = (hex(line.colour), number(line.width));
            let _ = write!(self.text, " stroke=\"{colour}\" stroke-width=\"{width}\"");
            if !line.butt {
                self.text.push_str(" stroke-linecap=\"round\"");
            }
            if !line.mitre {
                self.text.push_str(" stroke-linejoin=\"round\"");
            }
        }
        self.text.push_str("/>\n");
    }
}

fn hex(Rgb(r, g, b): Rgb) -> String {
    format!("#{r:02x}{g:02x}{b:02x}")
}

/// To the hundredth of a unit, without what says nothing.
fn number(v: f32) -> String {
    let hundredths = (f64::from(v) * 100.0).round() as i64;
    let sign = if hundredths < 0 { "-" } else { "" };
    let (whole, rest) = (hundredths.abs() / 100, hundredths.abs() % 100);
    match (rest, rest % 10) {
        (0, _) => format!("{sign}{whole}"),
        (_, 0) => format!("{sign}{whole}.{}", rest / 10),
        _ => format!("{sign}{whole}.{rest:02}"),
    }
}

fn data(path: &Path<[f32; 2]>) -> String {
    let mut out = String::new();
    let mut put = |letter: char, points: &[[f32; 2]]| {
        out.push(letter);
        for (i, v) in points.iter().flatten().enumerate() {
            let v = number(*v);
            if i > 0 && !v.starts_with('-') {
                out.push(' ');
            }
            out.push_str(&v);
        }
    };
    for seg in &path.segs {
        match *seg {
            Seg::Move(p) => put('M', &[p]),
            Seg::Line(p) => put('L', &[p]),
            Seg::Cubic(a, b, p) => put('C', &[a, b, p]),
            Seg::Close => put('Z', &[]),
        }
    }
    out
}
