//! The clear film around a laminated tile: how much is left in a corner that is rounded, how deep a
//! tab for a hole must be, how large a pouch for finished tiles. All in whole micrometres.

use crate::units::{Length, Size};

/// Least seal: film makers ask for an eighth of an inch all round.
pub const LEAST: Length = Length::um(3_200);
/// Seal where tiles get into sea water. Common practice.
pub const SEA: Length = Length::um(5_000);
/// Seal in a corner below which we ask people to look. Common practice.
pub const CORNER_LEAST: Length = Length::um(3_000);
/// How much wider than a finished tile the opening of a pouch is. Common practice.
pub const POUCH_EASE: Length = Length::um(20_000);

/// A printed size with film around it: what is cut, held and laid on a board.
pub fn finished(printed: Size, film: Length) -> Size {
    Size::new(printed.w + film * 2, printed.h + film * 2)
}

/// Film between the square corner of the paper and the rounded corner of the film: the seal itself
/// where the radius is no larger; else R - sqrt(2) (R - s), which may be below zero.
pub fn in_corner(seal: Length, radius: Length) -> Length {
    if radius <= seal {
        return seal;
    }
    let beyond = (radius - seal).to_um();
    Length::um(radius.to_um() - (2 * beyond * beyond).isqrt())
}

/// The radius to which the paper is rounded so that the film is equally wide all round.
pub fn paper_radius(seal: Length, radius: Length) -> Length {
    (radius - seal).max(Length::ZERO)
}

/// Depth of a tab of film that a hole is punched in: the hole and a seal on either side.
pub fn tab_depth(hole: Length, seal: Length) -> Length {
    hole + seal * 2
}

/// Width of the opening and depth of a pouch that finished tiles go into: 20 mm wider than a tile,
/// and one and a half tiles deep. Common practice.
pub fn pouch(finished: Size) -> Size {
    Size::new(finished.w + POUCH_EASE, finished.h * 3 / 2)
}

/// What a printer makes of a length, if it makes `measured` of a bar of 100 mm.
pub fn printed(length: Length, measured: Length) -> Length {
    Length::um((length.to_um() * measured.to_um() + 50_000) / 100_000)
}

/// The scale to set in the printer's dialog so that the bar of 100 mm comes out right, in tenths of a
/// per cent.
pub fn scale_to_set(measured: Length) -> i64 {
    let um = measured.to_um().max(1);
    (100_000 * 1_000 + um / 2) / um
}
