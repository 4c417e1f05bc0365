//! Pictures of drawings through an independent painter (resvg).

use std::fmt::Write as _;

use daystrand::symbols::art::{Art, CANVAS, Node, Shape};
use daystrand::units::colour::Rgb;
use daystrand::units::path::{Path, Seg};
use resvg::{tiny_skia, usvg};

/// Paints SVG on white, `side` pixels wide.
pub fn svg(text: &str, side: u32) -> tiny_skia::Pixmap {
    let tree = usvg::Tree::from_str(text, &usvg::Options::default()).expect("readable SVG");
    let mut map = tiny_skia::Pixmap::new(side, side).expect("a size above zero");
    map.fill(tiny_skia::Color::WHITE);
    let scale = side as f32 / tree.size().width();
    let at = tiny_skia::Transform::from_scale(scale, scale);
    resvg::render(&tree, at, &mut map.as_mut());
    map
}

/// Writes a parsed drawing as SVG again, to have it painted by someone else.
pub fn to_svg(art: &Art) -> String {
    let mut out = String::new();
    let mut clips = 0;
    write_nodes(&art.nodes, &mut clips, &mut out);
    format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {CANVAS} {CANVAS}\">{out}</svg>"
    )
}

fn write_nodes(nodes: &[Node], clips: &mut u32, out: &mut String) {
    for node in nodes {
        match node {
            Node::Shape(s) => write_shape(s, out),
            Node::Clipped { clip, nodes } => {
                *clips += 1;
                let id = *clips;
                let _ = write!(
                    out,
                    "<clipPath id=\"w{id}\"><path d=\"{}\"/></clipPath><g clip-path=\"url(#w{id})\">",
                    data(clip)
                );
                write_nodes(nodes, clips, out);
                out.push_str("</g>");
            }
            Node::Pixels { .. } => panic!("no symbol has pixels"),
        }
    }
}

fn write_shape(s: &Shape, out: &mut String) {
    let fill = s.fill.map_or("none".to_owned(), hex);
    let rule = if s.even_odd { "evenodd" } else { "nonzero" };
    let _ = write!(
        out,
        "<path d=\"{}\" fill=\"{fill}\" fill-rule=\"{rule}\"",
        data(&s.path)
    );
    if let Some(line) = s.stroke {
        let cap = if line.butt { "butt" } else { "round" };
        let join = if line.mitre { "miter" } else { "round" };
        let (colour, width) = (hex(line.colour), line.width);
        let _ = write!(
            out,
            " stroke=\"{colour}\" stroke-width=\"{width}\" stroke-linecap=\"{cap}\" stroke-linejoin=\"{join}\""
        );
    }
    out.push_str("/>");
}

fn hex(c: Rgb) -> String {
    format!("#{:02X}{:02X}{:02X}", c.0, c.1, c.2)
}

fn data(path: &Path<[f32; 2]>) -> String {
    let mut d = String::new();
    for seg in &path.segs {
        let _ = match seg {
            Seg::Move([x, y]) => write!(d, "M{x} {y}"),
            Seg::Line([x, y]) => write!(d, "L{x} {y}"),
            Seg::Cubic([a, b], [c, e], [x, y]) => write!(d, "C{a} {b} {c} {e} {x} {y}"),
            Seg::Close => write!(d, "Z"),
        };
    }
    d
}

/// Share of pixels that differ by more than a sixteenth in any colour.
pub fn difference(a: &tiny_skia::Pixmap, b: &tiny_skia::Pixmap) -> f64 {
    let differ = a
        .pixels()
        .iter()
        .zip(b.pixels())
        .filter(|(a, b)| {
            a.red().abs_diff(b.red()) > 16
                || a.green().abs_diff(b.green()) > 16
                || a.blue().abs_diff(b.blue()) > 16
        })
        .count();
    differ as f64 / a.pixels().len() as f64
}

/// Left, top, right and bottom of all that is not white, in pixels.
pub fn ink_box(map: &tiny_skia::Pixmap) -> Option<[u32; 4]> {
    let mut found: Option<[u32; 4]> = None;
    for (i, p) in map.pixels().iter().enumerate() {
        if p.red().min(p.green()).min(p.blue()) > 245 {
            continue;
        }
        let (x, y) = (i as u32 % map.width(), i as u32 / map.width());
        let b = found.get_or_insert([x, y, x, y]);
        *b = [b[0].min(x), b[1].min(y), b[2].max(x + 1), b[3].max(y + 1)];
    }
    found
}
