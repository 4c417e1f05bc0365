//! How many squares fit on a sheet, and where they lie.

use crate::units::{Length, Point, Rect, Size};

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

/// A block of touching squares on a sheet.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Grid {
    /// Squares side by side.
    pub columns: i64,
    /// Squares one below the other.
    pub rows: i64,
    /// Side of a square.
    pub tile: Length,
    /// Top left corner of the block.
    pub at: Point,
}

impl Grid {
    /// The block with the most squares of this side, but no more rows than `wanted` squares take.
    /// It lies in the middle across and a little below the middle down, where the header takes more
    /// room than the footer. `None` when not even one square fits.
    pub fn on(page: Size, tile: Length, wanted: usize) -> Option<Self> {
        let (columns, rows) = capacity(page, MARGIN, tile, Length::ZERO);
        if columns < 1 || rows < 1 {
            return None;
        }
        let wanted = i64::try_from(wanted).unwrap_or(i64::MAX).max(1);
        let rows = rows.min((wanted - 1) / columns + 1);
        let free_x = page.w - tile * columns;
        let free_y = page.h - tile * rows;
        let top = free_y.scale(0.56).min(free_y - MARGIN).max(MARGIN);
        // A single row or column leaves much room: keep the block near the header.
        let top = top.min(Length::mm(34.0).max(MARGIN));
        Some(Self {
            columns,
            rows,
            tile,
            at: Point::new(free_x / 2, top),
        })
    }

    /// How many squares.
    pub fn len(&self) -> usize {
        usize::try_from(self.columns * self.rows).unwrap_or(0)
    }

    /// Whether it holds no square; it never does.
    pub fn is_empty(&self) -> bool {
        self.len() == 0
    }

    /// The square at a place, row by row from the top left.
    pub fn cell(&self, index: usize) -> Rect {
        let index = i64::try_from(index).unwrap_or(0);
        let (column, row) = (index % self.columns, index / self.columns);
        Rect::new(
            self.at.moved(self.tile * column, self.tile * row),
            Size::square(self.tile),
        )
    }

    /// The whole block, or its first rows.
    pub fn block(&self, rows: i64) -> Rect {
        Rect::new(
            self.at,
            Size::new(self.tile * self.columns, self.tile * rows),
        )
    }
}
