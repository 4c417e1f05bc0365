//! Lengths on paper against published values.

use daystrand::model::club::Paper;
use daystrand::units::Length;

/// Millimetres to points by the definition of both: 1 in = 25.4 mm exactly (international inch,
/// 1959), 1 pt = 1/72 in (ISO 32000-1:2008, 8.3.2.3); four decimals.
#[test]
fn millimetres_to_points() {
    let table = [
        (210.0, 595.2756),
        (297.0, 841.8898),
        (148.0, 419.5276),
        (420.0, 1190.5512),
        (50.0, 141.7323),
        (100.0, 283.4646),
        (85.60, 242.6457),
        (53.98, 153.0142),
        (3.18, 9.0142),
        (3.0, 8.5039),
        (5.0, 14.1732),
        (60.0, 170.0787),
    ];
    for (mm, pt) in table {
        assert!((Length::mm(mm).to_pt() - pt).abs() < 6e-5, "{mm} mm");
        assert!((Length::pt(pt).to_mm() - mm).abs() < 0.0006, "{pt} pt");
    }
}

/// ISO 216:2007 for the A series; ANSI/ASME Y14.1 for Letter, 8.5 by 11 inches, 612 by 792 points.
#[test]
fn paper_sizes() {
    let a3 = Paper::A3.size();
    assert_eq!((a3.w.to_mm(), a3.h.to_mm()), (297.0, 420.0));
    let a4 = Paper::A4.size();
    assert_eq!((a4.w.to_mm(), a4.h.to_mm()), (210.0, 297.0));
    let a5 = Paper::A5.size();
    assert_eq!((a5.w.to_mm(), a5.h.to_mm()), (148.0, 210.0));
    let letter = Paper::Letter.size();
    assert_eq!((letter.w.to_pt(), letter.h.to_pt()), (612.0, 792.0));
}

/// A pixel at 300 dots an inch is 25.4/300 mm.
#[test]
fn lengths_to_pixels() {
    assert!((Length::mm(25.4).to_px(300.0) - 300.0).abs() < 1e-9);
    assert!((Length::mm(210.0).to_px(300.0) - 2480.315).abs() < 1e-3);
}
