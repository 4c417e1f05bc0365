//! Drawings as SVG, each once, to be used by name.

use std::borrow::Cow;
use std::fmt::Write as _;

use base64::Engine as _;
use base64::engine::general_purpose::STANDARD;

use super::markup::attribute;
use super::{Book, Picture};
use crate::export::png::picture;
use crate::symbols::art::{Art, CANVAS, Node, Shape};
use crate::symbols::pixels::{AsKept, Pixels};
use crate::units::colour::Rgb;
use crate::units::path::{Path, Seg};

/// All drawings of a book, and its mark, in a place that is not seen.
pub(super) fn write_all<'a>(
    out: &mut String,
    book: &Book,
    pictures: impl Iterator<Item = &'a Picture>,
) {
    out.push_str("<svg class=\"drawings\" width=\"0\" height=\"0\" aria-hidden=\"true\">\n");
    let pictures = pictures.map(|p| (name(p.drawn.id.as_str()), &p.drawn.art));
    for (name, art) in pictures.chain([(MARK.to_owned(), &book.mark.art)]) {
        write(out, &name, art);
    }
    out.push_str("</svg>\n");
}

/// Name of the mark.
pub(super) const MARK: &str = "mark";

/// Name of a drawing.
fn name(symbol: &str) -> String {
    format!("s-{}", attribute(symbol).replace(char::is_whitespace, "-"))
}

/// A picture at some place, with the words that stand for it; without words it says nothing.
pub(super) fn shown(symbol: &str, words: &str) -> String {
    used(&name(symbol), words)
}

/// A drawing by its name in the file.
pub(super) fn used(name: &str, words: &str) -> String {
    let says = match words.trim() {
        "" => "aria-hidden=\"true\"".to_owned(),
        words => format!("role=\"img\" aria-label=\"{}\"", attribute(words)),
    };
    format!("<svg viewBox=\"0 0 {CANVAS} {CANVAS}\" {says}><use href=\"#{name}\"/></svg>")
}

fn write(out: &mut String, name: &str, art: &Art) {
    let _ = write!(
        out,
        "<symbol id=\"{name}\" viewBox=\"0 0 {CANVAS} {CANVAS}\" fill=\"none\" \
         stroke-linecap=\"round\" stroke-linejoin=\"round\">"
    );
    let mut clips = 0;
    write_nodes(out, (name, &mut clips), &art.nodes);
    out.push_str("</symbol>\n");
}

fn write_nodes(out: &mut String, (name, clips): (&str, &mut usize), nodes: &[Node]) {
    for node in nodes {
        match node {
            Node::Shape(shape) => write_shape(out, shape),
            Node::Clipped { clip, nodes } => {
                *clips += 1;
                let id = format!("{name}-{clips}");
                let _ = write!(
                    out,
                    "<clipPath id=\"{id}\"><path d=\"{}\"/></clipPath><g clip-path=\"url(#{id})\">",
                    data(clip)
                );
                write_nodes(out, (name, clips), nodes);
                out.push_str("</g>");
            }
            Node::Pixels { at, pixels } => write_pixels(out, *at, pixels),
        }
    }
}

/// A photograph as its own file, which needs no network.
fn write_pixels(out: &mut String, [x, y, w, h]: [f32; 4], pixels: &Pixels) {
    let (kind, file) = match pixels.file() {
        Some(AsKept::Jpeg(bytes)) => ("jpeg", Cow::Borrowed(bytes)),
        Some(AsKept::Png(bytes)) => ("png", Cow::Borrowed(bytes)),
        None => ("png", Cow::Owned(picture(pixels.image()))),
    };
    let _ = write!(
        out,
        "<image x=\"{}\" y=\"{}\" width=\"{}\" height=\"{}\" \
         href=\"data:image/{kind};base64,{}\"/>",
        tenths(x),
        tenths(y),
        tenths(w),
        tenths(h),
        STANDARD.encode(file)
    );
}

fn write_shape(out: &mut String, shape: &Shape) {
    let _ = write!(out, "<path d=\"{}\"", data(&shape.path));
    if let Some(fill) = shape.fill {
        let _ = write!(out, " fill=\"{}\"", colour(fill));
        if shape.even_odd {
            out.push_str(" fill-rule=\"evenodd\"");
        }
    }
    if let Some(stroke) = shape.stroke {
        let colour = colour(stroke.colour);
        let _ = write!(
            out,
            " stroke=\"{colour}\" stroke-width=\"{}\"",
            tenths(stroke.width)
        );
        if stroke.butt {
            out.push_str(" stroke-linecap=\"butt\"");
        }
        if stroke.mitre {
            out.push_str(" stroke-linejoin=\"miter\"");
        }
    }
    out.push_str("/>");
}

fn colour(Rgb(r, g, b): Rgb) -> String {
    let long = format!("#{r:02x}{g:02x}{b:02x}");
    match [r, g, b].iter().all(|c| c >> 4 == c & 15) {
        true => format!("#{:x}{:x}{:x}", r & 15, g & 15, b & 15),
        false => long,
    }
}

/// A path in tenths of the canvas's unit, which is a fifth of a dot at the largest a telephone
/// shows, each point from the one before, which takes half the room.
fn data(path: &Path<[f32; 2]>) -> String {
    let mut out = String::new();
    let (mut at, mut begun) = ([0; 2], [0; 2]);
    for seg in &path.segs {
        let (letter, points): (char, &[[f32; 2]]) = match seg {
            Seg::Move(p) => ('M', &[*p]),
            Seg::Line(p) => ('l', &[*p]),
            Seg::Cubic(a, b, p) => ('c', &[*a, *b, *p]),
            Seg::Close => ('z', &[]),
        };
        out.push(letter);
        let from = if letter == 'M' { [0; 2] } else { at };
        for (i, point) in points.iter().enumerate() {
            at = point.map(in_tenths);
            for (axis, (to, from)) in at.iter().zip(from).enumerate() {
                let number = of_tenths(to - from);
                if i + axis > 0 && !number.starts_with('-') {
                    out.push(' ');
                }
                out.push_str(&number);
            }
        }
        match seg {
            Seg::Move(_) => begun = at,
            Seg::Close => at = begun,
            _ => {}
        }
    }
    out
}

fn tenths(n: f32) -> String {
    of_tenths(in_tenths(n))
}

fn in_tenths(n: f32) -> i32 {
    (n * 10.0).round() as i32
}

/// "12", "12.3", ".3".
fn of_tenths(n: i32) -> String {
    let sign = if n < 0 { "-" } else { "" };
    match (n.abs() / 10, n.abs() % 10) {
        (whole, 0) => format!("{sign}{whole}"),
        (0, tenth) => format!("{sign}.{tenth}"),
        (whole, tenth) => format!("{sign}{whole}.{tenth}"),
    }
}
