//! Symbols as form objects: a unit square each, written once however often it is used.

use std::collections::BTreeMap;
use std::io::Write as _;

use printpdf::{DictItem, ExternalStream, ExternalXObject, XObject, XObjectId};

use super::content::deflate;
use crate::page::SymbolKey;
use crate::symbols::art::{Art, CANVAS, Node, Shape, Stroke};
use crate::units::colour::Rgb;
use crate::units::path::{Path, Seg};

/// The symbols of one document, named in the order of first use.
#[derive(Default)]
pub(super) struct Symbols {
    names: BTreeMap<SymbolKey, XObjectId>,
    objects: BTreeMap<XObjectId, XObject>,
}

impl Symbols {
    /// The name of a symbol's form; written when first asked for.
    pub(super) fn name(&mut self, key: &SymbolKey, art: &Art) -> XObjectId {
        if let Some(id) = self.names.get(key) {
            return id.clone();
        }
        let id = XObjectId(format!("S{}", self.names.len() + 1));
        self.objects.insert(id.clone(), form(art));
        self.names.insert(key.clone(), id.clone());
        id
    }

    pub(super) fn into_objects(self) -> BTreeMap<XObjectId, XObject> {
        self.objects
    }
}

fn form(art: &Art) -> XObject {
    let side = 1.0 / CANVAS;
    let reals = |v: &[f32]| DictItem::Array(v.iter().map(|r| DictItem::Real(*r)).collect());
    let name = |n: &str| DictItem::Name(n.as_bytes().to_vec());
    let (content, packed) = deflate(&content(art));
    let mut dict = BTreeMap::from([
        ("Type".to_owned(), name("XObject")),
        ("Subtype".to_owned(), name("Form")),
        ("FormType".to_owned(), DictItem::Int(1)),
        ("BBox".to_owned(), reals(&[0.0, 0.0, CANVAS, CANVAS])),
        (
            "Matrix".to_owned(),
            reals(&[side, 0.0, 0.0, -side, 0.0, 1.0]),
        ),
        (
            "Resources".to_owned(),
            DictItem::Dict {
                map: BTreeMap::new(),
            },
        ),
    ]);
    if packed {
        dict.insert("Filter".to_owned(), name("FlateDecode"));
    }
    XObject::External(ExternalXObject {
        stream: ExternalStream {
            dict,
            content,
            compress: false,
        },
        width: None,
        height: None,
        dpi: None,
    })
}

/// What was last set, so that nothing is said twice.
#[derive(Clone, Copy, Default, PartialEq)]
struct State {
    fill: Option<Rgb>,
    line: Option<Stroke>,
}

/// The drawing as operators on its own canvas.
fn content(art: &Art) -> Vec<u8> {
    // A form begins with the line style of the page: a dash there would get in here. Pointed joins
    // are cut off where SVG cuts them off.
    let mut out = b"[] 0 d 4 M\n".to_vec();
    nodes(&art.nodes, State::default(), &mut out);
    out
}

fn nodes(nodes: &[Node], mut state: State, out: &mut Vec<u8>) {
    for node in nodes {
        match node {
            Node::Shape(s) => shape(s, &mut state, out),
            Node::Clipped {
                clip,
                nodes: inside,
            } => {
                out.extend_from_slice(b"q\n");
                path(clip, out);
                out.extend_from_slice(b"W n\n");
                self::nodes(inside, state, out);
                out.extend_from_slice(b"Q\n");
            }
        }
    }
}

fn shape(s: &Shape, state: &mut State, out: &mut Vec<u8>) {
    let paint: &[u8] = match (s.fill.is_some(), s.stroke.is_some(), s.even_odd) {
        (true, true, false) => b"B\n",
        (true, true, true) => b"B*\n",
        (true, false, false) => b"f\n",
        (true, false, true) => b"f*\n",
        (false, true, _) => b"S\n",
        (false, false, _) => return,
    };
    if let Some(fill) = s.fill
        && state.fill != s.fill
    {
        colour(fill, "rg", out);
        state.fill = s.fill;
    }
    if let Some(line) = s.stroke
        && state.line != s.stroke
    {
        set_line(&line, state.line, out);
        state.line = s.stroke;
    }
    path(&s.path, out);
    out.extend_from_slice(paint);
}

fn set_line(line: &Stroke, was: Option<Stroke>, out: &mut Vec<u8>) {
    if was.map(|w| w.colour) != Some(line.colour) {
        colour(line.colour, "RG", out);
    }
    if was.map(|w| w.width) != Some(line.width) {
        number(line.width, out);
        out.extend_from_slice(b"w\n");
    }
    if was.map(|w| w.butt) != Some(line.butt) {
        out.extend_from_slice(if line.butt { b"0 J\n" } else { b"1 J\n" });
    }
    if was.map(|w| w.mitre) != Some(line.mitre) {
        out.extend_from_slice(if line.mitre { b"0 j\n" } else { b"1 j\n" });
    }
}

fn colour(c: Rgb, operator: &str, out: &mut Vec<u8>) {
    for part in [c.0, c.1, c.2] {
        // Three decimals tell all 256 steps apart.
        let part = f32::from(part) / 255.0;
        let _ = write!(out, "{} ", (part * 1000.0).round() / 1000.0);
    }
    let _ = writeln!(out, "{operator}");
}

fn path(path: &Path<[f32; 2]>, out: &mut Vec<u8>) {
    let point = |p: &[f32; 2], out: &mut Vec<u8>| {
        number(p[0], out);
        number(p[1], out);
    };
    for seg in &path.segs {
        match seg {
            Seg::Move(p) => {
                point(p, out);
                out.extend_from_slice(b"m\n");
            }
            Seg::Line(p) => {
                point(p, out);
                out.extend_from_slice(b"l\n");
            }
            Seg::Cubic(a, b, p) => {
                point(a, out);
                point(b, out);
                point(p, out);
                out.extend_from_slice(b"c\n");
            }
            Seg::Close => out.extend_from_slice(b"h\n"),
        }
    }
}

/// A number to a hundredth of a canvas unit (2.5 µm on a 60 mm tile) and a space.
fn number(value: f32, out: &mut Vec<u8>) {
    let hundredths = (value * 100.0).round() as i64;
    let sign = if hundredths < 0 { "-" } else { "" };
    let (whole, rest) = (hundredths.abs() / 100, hundredths.abs() % 100);
    let _ = match (rest, rest % 10) {
        (0, _) => write!(out, "{sign}{whole} "),
        (_, 0) => write!(out, "{sign}{whole}.{} ", rest / 10),
        _ => write!(out, "{sign}{whole}.{rest:02} "),
    };
}
