//! One drawing seen differently: the main person's skin, in grey, as an outline, on a dark ground,
//! mirrored. All from the same source.

use std::sync::Arc;

use super::art::{Art, CANVAS, Node, Shape, Stroke};
use super::palette;
use crate::model::people::{Figure, Skin};
use crate::units::colour::Rgb;
use crate::units::path::Path;

/// How a symbol is wanted.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub struct Variant {
    /// Skin and age of the main person.
    pub figure: Figure,
    /// With which inks.
    pub ink: Ink,
    /// Left and right exchanged, where the drawing allows it.
    pub mirrored: bool,
}

/// With which inks a symbol is printed.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Ink {
    /// As drawn.
    #[default]
    Colour,
    /// Each colour as the grey of the same luminance, as a grey printer shows it.
    Grey,
    /// White with dark lines: for little ink, for photocopies, and for colouring in.
    Outline,
    /// Light lines and few bright colours for a black ground.
    OnDark,
}

impl Ink {
    /// All of them, for lists.
    pub const ALL: [Self; 4] = [Self::Colour, Self::Grey, Self::Outline, Self::OnDark];

    /// In a word, as in file names.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Colour => "colour",
            Self::Grey => "grey",
            Self::Outline => "outline",
            Self::OnDark => "on-dark",
        }
    }

    /// The ground it is made for.
    pub const fn ground(self) -> Rgb {
        match self {
            Self::OnDark => Rgb::BLACK,
            _ => Rgb::WHITE,
        }
    }
}

/// Names of the variants of one age, facing one way: four skins in colour, four in grey, outline,
/// on dark, colour and grey without skin.
macro_rules! names {
    ($start:literal) => {
        [
            concat!($start, "light"),
            concat!($start, "warm"),
            concat!($start, "tan"),
            concat!($start, "deep"),
            concat!($start, "light-grey"),
            concat!($start, "warm-grey"),
            concat!($start, "tan-grey"),
            concat!($start, "deep-grey"),
            concat!($start, "outline"),
            concat!($start, "on-dark"),
            concat!($start, "plain"),
            concat!($start, "grey"),
        ]
    };
}

const NAMES: [[&str; 12]; 6] = [
    names!(""),
    names!("teen-"),
    names!("adult-"),
    names!("mirrored-"),
    names!("mirrored-teen-"),
    names!("mirrored-adult-"),
];

impl Variant {
    /// A figure in an ink, as it was drawn.
    pub const fn new(figure: Figure, ink: Ink) -> Self {
        Self {
            figure,
            ink,
            mirrored: false,
        }
    }

    /// How many different variants a drawing can have.
    pub(super) const COUNT: usize = 60;

    /// Which of the six rows of ages and directions.
    const fn row(self) -> usize {
        self.figure.age as usize + if self.mirrored { 3 } else { 0 }
    }

    /// Which of the ten inks and skins.
    const fn column(self) -> usize {
        let skin = self.figure.skin as usize;
        match self.ink {
            Ink::Colour => skin,
            Ink::Grey => 4 + skin,
            Ink::Outline => 8,
            Ink::OnDark => 9,
        }
    }

    /// A place below [`Self::COUNT`].
    pub(super) const fn slot(self) -> usize {
        self.row() * 10 + self.column()
    }

    /// The variant in a few letters; equal names of one symbol mean equal drawings.
    pub(super) const fn name(self, has_skin: bool) -> &'static str {
        let column = match (self.ink, has_skin) {
            (Ink::Colour, false) => 10,
            (Ink::Grey, false) => 11,
            _ => self.column(),
        };
        NAMES[self.row()][column]
    }
}

/// A skin and the colour of nose, inner ear and finger slits on it. The deepest has marks lighter
/// than itself, because darker ones would be lost. Our own choice of tones.
pub fn tones(skin: Skin) -> (Rgb, Rgb) {
    match skin {
        Skin::Light => (Rgb::hex(0xF3_CF_AE), Rgb::hex(0xB0_70_48)),
        Skin::Warm => (palette::SKIN, palette::SKIN_LINE),
        Skin::Tan => (Rgb::hex(0xB0_77_4F), Rgb::hex(0x63_38_1E)),
        Skin::Deep => (Rgb::hex(0x88_58_3B), Rgb::hex(0xD2_9C_74)),
    }
}

/// Cheeks on a skin: a little redder than the skin itself.
fn blush(skin: Skin) -> Rgb {
    match skin {
        Skin::Light | Skin::Warm => palette::BLUSH,
        Skin::Tan => Rgb::hex(0xC0_6E_50),
        Skin::Deep => Rgb::hex(0xA2_5A_42),
    }
}

/// Whether a drawing shows the skin that follows the participant.
pub(super) fn has_skin(art: &Art) -> bool {
    any_colour(&art.nodes, &|c| c == palette::SKIN)
}

fn any_colour(nodes: &[Node], is: &dyn Fn(Rgb) -> bool) -> bool {
    nodes.iter().any(|node| match node {
        Node::Shape(s) => s.fill.is_some_and(is) || s.stroke.is_some_and(|s| is(s.colour)),
        Node::Clipped { nodes, .. } => any_colour(nodes, is),
        Node::Pixels { .. } => false,
    })
}

/// The drawing as wanted; its age is that of the source.
pub fn vary(art: &Art, variant: Variant) -> Art {
    let skin = variant.figure.skin;
    let inked = match variant.ink {
        Ink::Colour => recolour(art, &|c| on_skin(c, skin)),
        Ink::Grey => recolour(art, &|c| on_skin(c, skin).to_grey()),
        Ink::Outline => outline(art),
        Ink::OnDark => recolour(&outline_of(art, &dark_fill), &|c| {
            if c == palette::INK { Rgb::WHITE } else { c }
        }),
    };
    if variant.mirrored {
        mirror(&inked)
    } else {
        inked
    }
}

/// Left and right exchanged.
fn mirror(art: &Art) -> Art {
    Art {
        nodes: art.nodes.iter().map(mirror_node).collect(),
    }
}

fn mirror_node(node: &Node) -> Node {
    let turn = |path: &Path<[f32; 2]>| path.map(|[x, y]| [CANVAS - x, *y]);
    match node {
        Node::Shape(s) => Node::Shape(Shape {
            path: turn(&s.path),
            ..s.clone()
        }),
        Node::Clipped { clip, nodes } => Node::Clipped {
            clip: turn(clip),
            nodes: nodes.iter().map(mirror_node).collect(),
        },
        // A photograph is what it is: a mirrored place is another place.
        Node::Pixels {
            at: [x, y, w, h],
            pixels,
        } => Node::Pixels {
            at: [CANVAS - x - w, *y, *w, *h],
            pixels: Arc::clone(pixels),
        },
    }
}

fn on_skin(colour: Rgb, skin: Skin) -> Rgb {
    match colour {
        palette::SKIN => tones(skin).0,
        palette::SKIN_LINE => tones(skin).1,
        palette::BLUSH => blush(skin),
        other => other,
    }
}

fn recolour(art: &Art, to: &dyn Fn(Rgb) -> Rgb) -> Art {
    map_shapes(&art.nodes, &|shape| {
        vec![Shape {
            fill: shape.fill.map(to),
            stroke: shape.stroke.map(|s| Stroke {
                colour: to(s.colour),
                ..s
            }),
            ..shape.clone()
        }]
    })
}

fn map_shapes(nodes: &[Node], to: &dyn Fn(&Shape) -> Vec<Shape>) -> Art {
    let mut out = Vec::with_capacity(nodes.len());
    for node in nodes {
        match node {
            Node::Shape(s) => out.extend(to(s).into_iter().map(Node::Shape)),
            Node::Clipped { clip, nodes } => out.push(Node::Clipped {
                clip: clip.clone(),
                nodes: map_shapes(nodes, to).nodes,
            }),
            Node::Pixels { .. } => out.push(node.clone()),
        }
    }
    Art { nodes: out }
}

/// Line around a fill that has none of its own. Canvas units, as all below.
const EDGE: f32 = 2.2;
/// Narrowest seam or mark as a line.
const THIN: f32 = 2.2;
/// A stroke this wide is a limb or a rope rather than a line: it gets two edges.
const BODY: f32 = 7.0;

/// White fills, dark lines. Dark cloth and hair become a light grey, so that a figure keeps its
/// parts; the white seams between layers turn into lines.
fn outline(art: &Art) -> Art {
    outline_of(art, &paper_of)
}

fn outline_of(art: &Art, fill: &dyn Fn(Rgb) -> Rgb) -> Art {
    map_shapes(&art.nodes, &|shape| outline_shape(shape, fill))
}

fn outline_shape(shape: &Shape, fill: &dyn Fn(Rgb) -> Rgb) -> Vec<Shape> {
    let mut out = Vec::with_capacity(2);
    let filled = shape.fill.map(fill);
    match shape.stroke {
        Some(s) if s.width >= BODY && s.colour != palette::INK => {
            let body = fill(s.colour);
            out.push(with(
                shape,
                None,
                Some(Stroke {
                    colour: palette::INK,
                    width: s.width,
                    ..s
                }),
            ));
            let inner = Stroke {
                colour: body,
                width: s.width - 2.0 * EDGE,
                ..s
            };
            out.push(with(shape, filled, Some(inner)));
        }
        Some(s) => {
            let width = if s.colour == palette::INK {
                s.width
            } else {
                s.width.clamp(THIN, 4.0)
            };
            out.push(with(
                shape,
                filled,
                Some(Stroke {
                    colour: palette::INK,
                    width,
                    ..s
                }),
            ));
        }
        None => {
            let edge = Stroke {
                colour: palette::INK,
                width: EDGE,
                butt: false,
                mitre: false,
            };
            let edge = (shape.fill != Some(palette::INK)).then_some(edge);
            out.push(with(shape, filled, edge));
        }
    }
    out
}

fn with(shape: &Shape, fill: Option<Rgb>, stroke: Option<Stroke>) -> Shape {
    Shape {
        fill,
        stroke,
        ..shape.clone()
    }
}

/// What a fill becomes in an outline.
fn paper_of(colour: Rgb) -> Rgb {
    if colour == palette::INK {
        palette::INK
    } else if colour.lightness() < 42.0 {
        Rgb::hex(0xD4_D9_D8)
    } else {
        Rgb::WHITE
    }
}

/// What a fill becomes on a black ground: the key object, water and accents stay bright, the rest
/// is black or nearly, so that the light lines carry the picture.
fn dark_fill(colour: Rgb) -> Rgb {
    if [palette::INK, palette::SUN, palette::CORAL, palette::WATER].contains(&colour) {
        colour
    } else if colour.lightness() < 42.0 {
        Rgb::hex(0x2A_30_33)
    } else {
        Rgb::BLACK
    }
}
