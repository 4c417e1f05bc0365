//! How high letters are: sizes in points against millimetres on paper.

use daystrand::text::run::FontId;
use daystrand::text::{self, Style};
use daystrand::units::Length;
use daystrand::units::path::Seg;

/// 1 pt = 1/72 in and 1 in = 25.4 mm exactly; the letter sizes that clear-print and large-print
/// guidelines name, in millimetres to four decimals.
#[test]
fn letter_sizes_in_millimetres() {
    let table = [
        (12.0, 4.2333),
        (14.0, 4.9389),
        (16.0, 5.6444),
        (18.0, 6.3500),
        (20.0, 7.0556),
        (24.0, 8.4667),
    ];
    for (pt, mm) in table {
        assert!((Length::pt(pt).to_mm() - mm).abs() <= 0.0005, "{pt} pt");
    }
}

/// x-height in mm = pt × 25.4/72 × sxHeight/unitsPerEm. sxHeight 1040, sCapHeight 1485, ascender
/// 2500, descender -800 and 2048 units an em are in the tables OS/2, hhea and head of the bundled
/// Andika files. For comparison at 18 pt by the same formula: DejaVu Sans 2.37 (1120 of 2048)
/// 3.473 mm.
#[test]
fn heights_of_the_main_face() {
    for style in [
        Style::regular(Length::pt(18.0)),
        Style::bold(Length::pt(18.0)),
    ] {
        let m = text::metrics(&style);
        let near = |l: Length, mm: f64| (l.to_mm() - mm).abs() <= 0.0006;
        assert!(near(m.x_height, 6.35 * 1040.0 / 2048.0), "{m:?}");
        assert!(near(m.cap_height, 6.35 * 1485.0 / 2048.0), "{m:?}");
        assert!(near(m.ascent, 6.35 * 2500.0 / 2048.0), "{m:?}");
        assert!(near(m.descent, 6.35 * 800.0 / 2048.0), "{m:?}");
    }
    let dejavu = Length::pt(18.0).scale(1120.0 / 2048.0);
    assert!((dejavu.to_mm() - 3.473).abs() < 0.001);
}

/// What the tables say is what is drawn: the top of the outline of x and of H, within a fortieth
/// of an em.
#[test]
fn the_tables_agree_with_the_outlines() {
    for (style, font) in [
        (Style::regular(Length::pt(72.0)), FontId::Regular),
        (Style::bold(Length::pt(72.0)), FontId::Bold),
    ] {
        let m = text::metrics(&style);
        let em = text::units_per_em(font) as f32;
        for (letter, height) in [("x", m.x_height), ("H", m.cap_height)] {
            let glyph = text::line(letter, &style).runs[0].1.glyphs[0].id;
            let outline = text::glyph_outline(font, glyph).unwrap();
            let top = outline.segs.iter().fold(0.0, |top: f32, seg| match seg {
                Seg::Move(p) | Seg::Line(p) | Seg::Cubic(_, _, p) => top.max(p[1]),
                Seg::Close => top,
            });
            let drawn = f64::from(top / em) * 25.4;
            assert!((drawn - height.to_mm()).abs() < 25.4 / 40.0, "{letter}");
        }
    }
}

/// The least size of large print in use is 16 pt (UKAAF, Minimum standards MS03, 2012) or 18 pt
/// (American Printing House for the Blind, Guidelines for Print Document Design, 2011). EU
/// Regulation 1169/2011, article 13(2) and annex IV (from memory), asks for an x-height of at
/// least 1.2 mm on food labels: the main face is there from 7 pt on.
#[test]
fn the_main_face_is_read_at_ordinary_distances() {
    let x = |pt| text::metrics(&Style::regular(Length::pt(pt))).x_height;
    assert!(x(6.5) < Length::mm(1.2) && x(7.0) > Length::mm(1.2));
    assert!(x(18.0) > Length::mm(3.2));
}
