//! Symbols as form objects: a unit square each, written once however often it is used.

use std::collections::BTreeMap;
use std::sync::{Arc, Mutex, PoisonError, Weak};

use printpdf::{DictItem, ExternalStream, ExternalXObject, XObject, XObjectId};

use super::operators::{Operators, deflate};
use super::pixels;
use crate::page::SymbolKey;
use crate::symbols::art::{Art, CANVAS, Node, Shape, Stroke};
use crate::symbols::pixels::Pixels;
use crate::units::colour::Rgb;
use crate::units::path::{Path, Seg};

/// The symbols of one document, named in the order of first use.
#[derive(Default)]
pub(super) struct Symbols {
    names: BTreeMap<SymbolKey, Arc<str>>,
    objects: BTreeMap<XObjectId, XObject>,
}

impl Symbols {
    /// The name of a symbol's form; written when first asked for.
    pub(super) fn name(&mut self, key: &SymbolKey, art: &Arc<Art>) -> Arc<str> {
        if let Some(name) = self.names.get(key) {
            return Arc::clone(name);
        }
        let name: Arc<str> = format!("S{}", self.names.len() + 1).into();
        self.objects
            .insert(XObjectId(name.to_string()), form(&packed(art)));
        self.names.insert(key.clone(), Arc::clone(&name));
        name
    }

    pub(super) fn into_objects(self) -> BTreeMap<XObjectId, XObject> {
        self.objects
    }
}

/// A content stream ready to be written.
struct Content {
    bytes: Vec<u8>,
    deflated: bool,
    /// Its photographs, in the order of their names.
    images: Vec<Arc<Pixels>>,
}

type Packed = Arc<Content>;

/// The content of a drawing. Kept for as long as the drawing is, because the same symbols go into
/// every document of an evening, and packing them is most of the work of a short one.
fn packed(art: &Arc<Art>) -> Packed {
    static KEPT: Mutex<BTreeMap<usize, (Weak<Art>, Packed)>> = Mutex::new(BTreeMap::new());
    // A drawing that is only weakly held keeps its address, so no other can be taken for it.
    let place = Arc::as_ptr(art) as usize;
    let mut kept = KEPT.lock().unwrap_or_else(PoisonError::into_inner);
    if let Some((drawing, packed)) = kept.get(&place)
        && drawing.strong_count() > 0
    {
        return Arc::clone(packed);
    }
    kept.retain(|_, (drawing, _)| drawing.strong_count() > 0);
    let (written, images) = content(art);
    let (bytes, deflated) = deflate(&written);
    let packed = Arc::new(Content {
        bytes,
        deflated,
        images,
    });
    kept.insert(place, (Arc::downgrade(art), Arc::clone(&packed)));
    packed
}

fn form(packed: &Content) -> XObject {
    let side = 1.0 / CANVAS;
    let reals = |v: &[f32]| DictItem::Array(v.iter().map(|r| DictItem::Real(*r)).collect());
    let name = |n: &str| DictItem::Name(n.as_bytes().to_vec());
    let images = packed.images.iter().enumerate().map(|(i, pixels)| {
        let stream = pixels::image(pixels);
        (image_name(i), DictItem::Stream { stream })
    });
    let images: BTreeMap<String, DictItem> = images.collect();
    let mut resources = BTreeMap::new();
    if !images.is_empty() {
        resources.insert("XObject".to_owned(), DictItem::Dict { map: images });
    }
    let mut dict = BTreeMap::from([
        ("Type".to_owned(), name("XObject")),
        ("Subtype".to_owned(), name("Form")),
        ("FormType".to_owned(), DictItem::Int(1)),
        ("BBox".to_owned(), reals(&[0.0, 0.0, CANVAS, CANVAS])),
        (
            "Matrix".to_owned(),
            reals(&[side, 0.0, 0.0, -side, 0.0, 1.0]),
        ),
        ("Resources".to_owned(), DictItem::Dict { map: resources }),
    ]);
    if packed.deflated {
        dict.insert("Filter".to_owned(), name("FlateDecode"));
    }
    XObject::External(ExternalXObject {
        stream: ExternalStream {
            dict,
            content: packed.bytes.clone(),
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

/// The drawing as operators on its own canvas, to a hundredth of a unit (2.5 µm on a 60 mm tile).
fn content(art: &Art) -> (Vec<u8>, Vec<Arc<Pixels>>) {
    let mut out = Operators::new(2);
    let mut images = Vec::new();
    // A form begins with the line style of the page: a dash there would get in here. Pointed joins
    // are cut off where SVG cuts them off.
    out.raw("[] 0 d 4 M\n");
    nodes(&art.nodes, State::default(), &mut out, &mut images);
    (out.into_bytes(), images)
}

fn image_name(number: usize) -> String {
    format!("I{}", number + 1)
}

fn nodes(nodes: &[Node], mut state: State, out: &mut Operators, images: &mut Vec<Arc<Pixels>>) {
    for node in nodes {
        match node {
            Node::Shape(s) => shape(s, &mut state, out),
            Node::Clipped {
                clip,
                nodes: inside,
            } => {
                out.raw("q\n");
                path(clip, out);
                out.raw("W n\n");
                self::nodes(inside, state, out, images);
                out.raw("Q\n");
            }
            Node::Pixels { at, pixels } => {
                // The canvas grows downwards, an image object upwards.
                let [x, y, w, h] = at.map(f64::from);
                out.raw("q ");
                out.op(&[w, 0.0, 0.0, -h, x, y + h], "cm");
                out.raw(&format!("/{} Do Q\n", image_name(images.len())));
                images.push(Arc::clone(pixels));
            }
        }
    }
}

fn shape(s: &Shape, state: &mut State, out: &mut Operators) {
    let paint = match (s.fill.is_some(), s.stroke.is_some(), s.even_odd) {
        (true, true, false) => "B",
        (true, true, true) => "B*",
        (true, false, false) => "f",
        (true, false, true) => "f*",
        (false, true, _) => "S",
        (false, false, _) => return,
    };
    if let Some(fill) = s.fill
        && state.fill != s.fill
    {
        out.colour(fill, "rg");
        state.fill = s.fill;
    }
    if let Some(line) = s.stroke
        && state.line != s.stroke
    {
        set_line(&line, state.line, out);
        state.line = s.stroke;
    }
    path(&s.path, out);
    out.op(&[], paint);
}

fn set_line(line: &Stroke, was: Option<Stroke>, out: &mut Operators) {
    if was.map(|w| w.colour) != Some(line.colour) {
        out.colour(line.colour, "RG");
    }
    if was.map(|w| w.width) != Some(line.width) {
        out.op(&[f64::from(line.width)], "w");
    }
    if was.map(|w| w.butt) != Some(line.butt) {
        out.raw(if line.butt { "0 J\n" } else { "1 J\n" });
    }
    if was.map(|w| w.mitre) != Some(line.mitre) {
        out.raw(if line.mitre { "0 j\n" } else { "1 j\n" });
    }
}

fn path(path: &Path<[f32; 2]>, out: &mut Operators) {
    let p = |p: &[f32; 2]| p.map(f64::from);
    for seg in &path.segs {
        match seg {
            Seg::Move(a) => out.op(&p(a), "m"),
            Seg::Line(a) => out.op(&p(a), "l"),
            Seg::Cubic(a, b, c) => {
                let ([x1, y1], [x2, y2], [x3, y3]) = (p(a), p(b), p(c));
                out.op(&[x1, y1, x2, y2, x3, y3], "c");
            }
            Seg::Close => out.raw("h\n"),
        }
    }
}
