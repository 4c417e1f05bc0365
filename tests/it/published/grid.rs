//! Squares on a sheet: capacities computed from the sizes of ISO 216:2007 (A series) and ANSI/ASME
//! Y14.1 (Letter) by the whole part of (page - 2 margin + gap) / (tile + gap) on each axis.

use daystrand::layout::grid::{MARGIN, capacity};
use daystrand::model::club::Paper::{self, A3, A4, Letter};
use daystrand::units::Length;

/// Paper, margin, tile, gap in mm; columns, rows.
pub(super) const WITH_GAPS: [(Paper, f64, f64, f64, i64, i64); 9] = [
    (A4, 10.0, 40.0, 6.0, 4, 6),
    (A4, 10.0, 50.0, 6.0, 3, 5),
    (A4, 10.0, 60.0, 6.0, 2, 4),
    (A4, 10.0, 75.0, 6.0, 2, 3),
    (A4, 5.0, 38.0, 10.0, 4, 6),
    (Letter, 10.0, 50.0, 6.0, 3, 4),
    (Letter, 10.0, 60.0, 6.0, 3, 4),
    (Letter, 10.0, 40.0, 6.0, 4, 5),
    (A3, 10.0, 50.0, 6.0, 5, 7),
];

#[test]
fn capacities_with_gaps() {
    for (paper, margin, tile, gap, columns, rows) in WITH_GAPS {
        let mm = Length::mm;
        let got = capacity(paper.size(), mm(margin), mm(tile), mm(gap));
        assert_eq!(got, (columns, rows), "{paper:?} {tile} mm");
    }
}

/// Tiles that touch, 10 mm margins: side in mm, tiles on A4, tiles on Letter. Common practice,
/// computed.
pub(super) const TOUCHING: [(f64, usize, usize); 12] = [
    (30.0, 54, 48),
    (40.0, 24, 24),
    (45.0, 24, 20),
    (50.0, 15, 15),
    (55.0, 15, 12),
    (60.0, 12, 12),
    (65.0, 8, 9),
    (70.0, 6, 6),
    (75.0, 6, 6),
    (80.0, 6, 6),
    (90.0, 6, 4),
    (100.0, 2, 2),
];

#[test]
fn sheets_of_touching_tiles_hold_what_the_formula_gives() {
    for (side, a4, letter) in TOUCHING {
        for (paper, tiles) in [(A4, a4), (Letter, letter)] {
            let (columns, rows) = capacity(paper.size(), MARGIN, Length::mm(side), Length::ZERO);
            assert_eq!((columns * rows) as usize, tiles, "{side} mm on {paper:?}");
        }
    }
}
