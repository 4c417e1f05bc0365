//! How many pieces of one size fit on a sheet in columns and rows.

use crate::units::{Length, Size};

/// White edge that an office printer leaves free, with room to spare. Printers reach to within 4 to
/// 7 mm of the edge; 10 mm is common practice.
pub const MARGIN: Length = Length::um(10_000);

/// Columns and rows of squares of side `tile` that fit on `page`: for each axis the whole part of
/// (page - 2 margin + gap) / (tile + gap).
pub fn capacity(page: Size, margin: Length, tile: Length, gap: Length) -> (i64, i64) {
    let along = |side: Length| (side - margin * 2 + gap).times(tile + gap);
    if tile <= Length::ZERO {
        return (0, 0);
    }
    (along(page.w), along(page.h))
}
