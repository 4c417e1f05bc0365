//! Numbers of making tiles: film in rounded corners, tabs, pouches, strips, spares, stock, and how much is
//! printed twice. Common practice of the trade, computed by hand unless a source stands beside it.

use daystrand::layout::grid::capacity;
use daystrand::model::club::Paper;
use daystrand::model::craft::{TileShape, pouch_size};
use daystrand::plan::{seal, stock};
use daystrand::units::{Length, Size};

fn mm(mm: f64) -> Length {
    Length::mm(mm)
}

/// Film in a corner: seal across, finished radius down. R where R is no more than s, else
/// R - sqrt(2) (R - s).
#[test]
fn film_in_a_rounded_corner() {
    let radii = [3.0, 4.0, 5.0, 6.0, 8.0, 10.0];
    let table = [
        (3.0, [300, 259, 217, 176, 93, 10]),
        (4.0, [400, 400, 359, 317, 234, 151]),
        (5.0, [500, 500, 500, 459, 376, 293]),
    ];
    for (s, row) in table {
        for (radius, wanted) in radii.into_iter().zip(row) {
            let off = seal::in_corner(mm(s), mm(radius)).to_um() - wanted * 10;
            // The table has hundredths of a millimetre.
            assert!(off.abs() <= 5, "seal {s}, radius {radius}: off by {off} µm");
        }
    }
}

/// Enough against 3.0 but not against the 3.2 that film makers ask for; paper rounded to R - s keeps
/// the film equally wide.
#[test]
fn which_corners_are_told_of() {
    let six = seal::in_corner(mm(4.0), mm(6.0));
    assert!(six >= seal::CORNER_LEAST && six < seal::LEAST);
    assert!(seal::in_corner(mm(3.0), mm(6.0)) < seal::CORNER_LEAST);
    assert_eq!(seal::in_corner(mm(4.0), mm(4.0)), mm(4.0));
    assert_eq!(seal::paper_radius(mm(4.0), mm(6.0)), mm(2.0));
}

#[test]
fn tabs_and_pouches() {
    assert_eq!(seal::tab_depth(mm(5.0), mm(4.0)), mm(13.0));
    let pouch = seal::pouch(Size::square(mm(68.0)));
    assert_eq!((pouch.w, pouch.h), (mm(88.0), mm(102.0)));
}

/// Finished tiles in a row with 6 mm between and 10 mm at both ends: printed side; on paper of 210, 297
/// and 420 mm. Five of 60 mm take 364 mm and 384 mm with their ends: too long for A4, not for A3.
#[test]
fn tiles_in_a_row() {
    for (printed, wanted) in [
        (40.0, [3, 5, 7]),
        (50.0, [3, 4, 6]),
        (60.0, [2, 3, 5]),
        (70.0, [2, 3, 4]),
    ] {
        let finished = seal::finished(Size::square(mm(printed)), mm(4.0)).w;
        for (paper, most) in [210.0, 297.0, 420.0].into_iter().zip(wanted) {
            let row = Size::new(mm(paper), finished + mm(20.0));
            let fit = capacity(row, mm(10.0), finished, mm(6.0));
            assert_eq!(fit, (most, 1), "{printed} mm on {paper} mm");
        }
    }
}

/// A printer that makes 97 mm of the bar makes 58.2 mm of a tile of 60 mm.
#[test]
fn a_scale_that_was_left_on() {
    assert_eq!(seal::printed(mm(60.0), mm(97.0)), mm(58.2));
    assert_eq!(seal::printed(mm(100.0), mm(97.0)), mm(97.0));
    assert_eq!(seal::scale_to_set(mm(97.0)), 1031);
    assert_eq!(seal::scale_to_set(mm(100.0)), 1000);
}

/// ISO 216:2007 and ANSI/ASME Y14.1; pouches as the trade sells them. ID-1 by ISO/IEC 7810.
#[test]
fn sizes_of_paper_pouches_and_cards() {
    for (paper, w, h) in [
        (Paper::A4, 216.0, 303.0),
        (Paper::A3, 303.0, 426.0),
        (Paper::A5, 154.0, 216.0),
        (Paper::Letter, 228.6, 292.1),
    ] {
        assert_eq!(pouch_size(paper), Size::mm(w, h));
    }
    // 9 by 11.5 in.
    assert_eq!(pouch_size(Paper::Letter).w.to_um(), 9 * 25_400);
    assert_eq!(pouch_size(Paper::Letter).h.to_um(), 23 * 12_700);
    let side = mm(60.0);
    assert_eq!(TileShape::Card.size(side), Size::mm(85.6, 53.98));
    assert_eq!(TileShape::A7.size(side), Size::mm(74.0, 105.0));
    assert_eq!(TileShape::A6.size(side), Size::mm(105.0, 148.0));
    assert_eq!(TileShape::Upright.size(side), Size::mm(60.0, 80.0));
    assert_eq!(TileShape::Across.size(side), Size::mm(80.0, 60.0));
}

/// One spare of a routine tile for six participants, at least one, rounded up.
#[test]
fn spares() {
    for (participants, wanted) in [(0, 1), (1, 1), (5, 1), (6, 1), (7, 2), (12, 2), (13, 3)] {
        assert_eq!(stock::spares(participants), wanted, "{participants}");
    }
}

/// Shared tiles: the greatest number in use at one moment. Four in the first wave and three in the
/// second are four; waves that overlap add up.
#[test]
fn shared_tiles_in_waves() {
    assert_eq!(stock::most_at_once(&[(540, 600, 4), (600, 660, 3)]), 4);
    assert_eq!(stock::most_at_once(&[(540, 610, 4), (600, 660, 3)]), 7);
    assert_eq!(stock::most_at_once::<i32>(&[]), 0);
}
