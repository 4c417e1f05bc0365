//! One drawing seen differently: the child's skin, in grey, as an outline. All from the same source.

use super::art::{Art, Node, Shape, Stroke};
use super::palette;
use crate::model::people::Skin;
use crate::units::colour::Rgb;

/// How a symbol is wanted.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub struct Variant {
    /// Skin of the main child.
    pub skin: Skin,
    /// With which inks.
    pub ink: Ink,
}

/// With which inks a symbol is printed.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Ink {
    /// As drawn.
    #[default]
    Colour,
    /// Each colour as the grey of the same luminance, as a grey printer shows it.
    Grey,
    /// White with dark lines: for little ink, and for colouring in.
    Outline,
}

impl Ink {
    /// All of them, for lists.
    pub const ALL: [Self; 3] = [Self::Colour, Self::Grey, Self::Outline];
}

impl Variant {
    /// How many different variants a drawing can have.
    pub(super) const COUNT: usize = 9;

    /// A place below [`Self::COUNT`]. A drawing without the skin that follows the participant is
    /// the same on every skin; an outline has none.
    pub(super) fn slot(self, has_skin: bool) -> usize {
        let skin = if has_skin {
            self.skin as usize
        } else {
            Skin::Warm as usize
        };
        match self.ink {
            Ink::Colour => skin,
            Ink::Grey => 4 + skin,
            Ink::Outline => 8,
        }
    }

    /// The variant in a few letters; equal names of one symbol mean equal drawings.
    pub(super) fn name(self, has_skin: bool) -> &'static str {
        match (self.ink, has_skin, self.skin) {
            (Ink::Colour, false, _) => "plain",
            (Ink::Grey, false, _) => "grey",
            (Ink::Outline, _, _) => "outline",
            (Ink::Colour, true, Skin::Light) => "light",
            (Ink::Colour, true, Skin::Warm) => "warm",
            (Ink::Colour, true, Skin::Tan) => "tan",
            (Ink::Colour, true, Skin::Deep) => "deep",
            (Ink::Grey, true, Skin::Light) => "light-grey",
            (Ink::Grey, true, Skin::Warm) => "warm-grey",
            (Ink::Grey, true, Skin::Tan) => "tan-grey",
            (Ink::Grey, true, Skin::Deep) => "deep-grey",
        }
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
    })
}

/// The drawing as wanted.
pub fn vary(art: &Art, variant: Variant) -> Art {
    match variant.ink {
        Ink::Colour => recolour(art, &|c| on_skin(c, variant.skin)),
        Ink::Grey => recolour(art, &|c| on_skin(c, variant.skin).to_grey()),
        Ink::Outline => outline(art),
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
    map_shapes(&art.nodes, &outline_shape)
}

fn outline_shape(shape: &Shape) -> Vec<Shape> {
    let mut out = Vec::with_capacity(2);
    let filled = shape.fill.map(paper_of);
    match shape.stroke {
        Some(s) if s.width >= BODY && s.colour != palette::INK => {
            let body = paper_of(s.colour);
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
