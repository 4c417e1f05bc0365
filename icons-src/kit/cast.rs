//! The people who come back from picture to picture, so that a child meets the
//! same group all day. The first is the child the schedule belongs to: its skin
//! is the one the program exchanges.

use super::body::{Bottom, Figure};
use super::geom::P;
use super::hair::{Hair, Style};
use super::head::{SKIN, SKIN_DARK, SKIN_LIGHT, Skin, Wear};
use super::paint::ink;

/// Someone of the cast at a scale, with the hips at a point.
pub type Member = fn(f64, P) -> Figure;

fn person(
    mut f: Figure,
    skin: Skin,
    hair: Hair,
    top: &'static str,
    bottom: &'static str,
) -> Figure {
    f.skin = skin;
    f.hair = hair;
    f.top.0 = top;
    if let Bottom::Legs(_, share) = f.bottom {
        f.bottom = Bottom::Legs(bottom, share);
    }
    f
}

/// The main child: coral top, navy shorts, dark short hair.
pub fn main_child(k: f64, hip: P) -> Figure {
    person(
        Figure::child(k, hip),
        SKIN,
        Hair(Style::Crop, ink::HAIR_DARK),
        ink::CORAL,
        ink::NAVY,
    )
}
/// The main child as a girl with a tail; the same clothes.
pub fn main_girl(k: f64, hip: P) -> Figure {
    person(
        Figure::child(k, hip),
        SKIN,
        Hair(Style::Tail, ink::HAIR_DARK),
        ink::CORAL,
        ink::NAVY,
    )
}
/// A friend with two puffs, dark skin, yellow top.
pub fn puffs(k: f64, hip: P) -> Figure {
    person(
        Figure::child(k, hip),
        SKIN_DARK,
        Hair(Style::Puffs, ink::HAIR_DARK),
        ink::SUN,
        ink::TEAL,
    )
}
/// A friend with a fair bob and glasses, light skin, teal top.
pub fn bob(k: f64, hip: P) -> Figure {
    let mut f = person(
        Figure::child(k, hip),
        SKIN_LIGHT,
        Hair(Style::Bob, ink::HAIR_FAIR),
        ink::TEAL,
        ink::CHARCOAL,
    );
    f.wear = Wear::Glasses;
    f
}
/// A friend with brown curls, light skin, white top.
pub fn curls(k: f64, hip: P) -> Figure {
    person(
        Figure::child(k, hip),
        SKIN_LIGHT,
        Hair(Style::Curly, ink::HAIR_BROWN),
        ink::WHITE,
        ink::NAVY,
    )
}
/// A friend who wears ear defenders, dark skin, navy top.
pub fn muffs(k: f64, hip: P) -> Figure {
    let mut f = person(
        Figure::child(k, hip),
        SKIN_DARK,
        Hair(Style::Buzz, ink::HAIR_DARK),
        ink::NAVY,
        ink::CHARCOAL,
    );
    f.wear = Wear::Muffs(ink::SUN);
    f
}
/// The helper who is there most: teal top, brown bob.
pub fn helper(k: f64, hip: P) -> Figure {
    person(
        Figure::adult(k, hip),
        SKIN_LIGHT,
        Hair(Style::Bob, ink::HAIR_BROWN),
        ink::TEAL,
        ink::CHARCOAL,
    )
}
/// A helper with dark curls and dark skin.
pub fn helper_dark(k: f64, hip: P) -> Figure {
    person(
        Figure::adult(k, hip),
        SKIN_DARK,
        Hair(Style::Curly, ink::HAIR_DARK),
        ink::TEAL,
        ink::CHARCOAL,
    )
}
/// A parent with a scarf.
pub fn parent(k: f64, hip: P) -> Figure {
    person(
        Figure::adult(k, hip),
        SKIN_DARK,
        Hair(Style::Scarf, ink::NAVY),
        ink::TEAL,
        ink::CHARCOAL,
    )
}
