//! The bundled fonts, opened once: what they cover, their measures, the outlines of their glyphs.

use std::sync::OnceLock;

use rustybuzz::Face;
use rustybuzz::ttf_parser::{GlyphId, OutlineBuilder};
use unicode_normalization::char::decompose_canonical;

use super::run::FontId;
use crate::assets;
use crate::units::path::{Path, Seg};

/// Glyph painted for what no bundled font has: the replacement character, a lozenge with a
/// question mark, which Andika carries.
const SUBSTITUTE: char = '\u{FFFD}';

/// The file of a font, whole.
pub fn bytes(font: FontId) -> &'static [u8] {
    match font {
        FontId::Regular => assets::ANDIKA_REGULAR,
        FontId::Bold => assets::ANDIKA_BOLD,
        FontId::Arabic => assets::HARMATTAN_REGULAR,
        FontId::ArabicBold => assets::HARMATTAN_BOLD,
    }
}

/// Name of a font as a PDF writes it.
pub fn postscript_name(font: FontId) -> &'static str {
    match font {
        FontId::Regular => "Andika-Regular",
        FontId::Bold => "Andika-Bold",
        FontId::Arabic => "Harmattan-Regular",
        FontId::ArabicBold => "Harmattan-Bold",
    }
}

/// Font units on one em.
pub fn units_per_em(font: FontId) -> i32 {
    face(font).units_per_em()
}

/// The outline of a glyph in font units, `y` growing upwards from the baseline; `None` for blanks
/// and for numbers the font does not have.
pub fn glyph_outline(font: FontId, glyph: u16) -> Option<Path<[f32; 2]>> {
    let mut pen = Pen::default();
    face(font).outline_glyph(GlyphId(glyph), &mut pen)?;
    Some(pen.path)
}

/// Highest and lowest ink of a glyph against the baseline, in font units, upwards positive.
pub(super) fn glyph_ink(font: FontId, glyph: u16) -> Option<(i32, i32)> {
    let b = face(font).glyph_bounding_box(GlyphId(glyph))?;
    Some((i32::from(b.y_max), i32::from(b.y_min)))
}

/// The opened font.
pub(super) fn face(font: FontId) -> &'static Face<'static> {
    static FACES: OnceLock<[Face<'static>; 4]> = OnceLock::new();
    let open = |f| Face::from_slice(bytes(f), 0).expect("the bundled fonts are whole");
    let faces = FACES.get_or_init(|| {
        [
            open(FontId::Regular),
            open(FontId::Bold),
            open(FontId::Arabic),
            open(FontId::ArabicBold),
        ]
    });
    &faces[match font {
        FontId::Regular => 0,
        FontId::Bold => 1,
        FontId::Arabic => 2,
        FontId::ArabicBold => 3,
    }]
}

/// The main face in a weight.
pub(super) fn main(bold: bool) -> FontId {
    if bold { FontId::Bold } else { FontId::Regular }
}

/// The face for Arabic script in a weight.
pub(super) fn arabic(bold: bool) -> FontId {
    if bold {
        FontId::ArabicBold
    } else {
        FontId::Arabic
    }
}

/// How much larger a font is set than asked, so that all bundled fonts look one size: Harmattan
/// draws its x-height 778 of 2048 high, Andika 1040 of 2048.
pub(super) fn optical_factor(font: FontId) -> f64 {
    match font {
        FontId::Regular | FontId::Bold => 1.0,
        FontId::Arabic | FontId::ArabicBold => 4.0 / 3.0,
    }
}

/// Whether a font can show a character: by a glyph of its own, by the parts the character is made
/// of, by another glyph that looks the same, or by showing nothing where nothing is to be seen.
pub(super) fn covers(font: FontId, c: char) -> bool {
    let has = |c| face(font).glyph_index(c).is_some();
    if has(c) || is_invisible(c) || c.is_whitespace() {
        return true;
    }
    if c == '\u{2011}' {
        return has('\u{2010}');
    }
    let (mut parts, mut all) = (0, true);
    decompose_canonical(c, |p| {
        parts += 1;
        all &= has(p);
    });
    parts > 1 && all
}

/// Number and advance of the substitute glyph, in the main face.
pub(super) fn substitute(bold: bool) -> (u16, i32) {
    let face = face(main(bold));
    let id = face.glyph_index(SUBSTITUTE).unwrap_or(GlyphId(0));
    let advance = face.glyph_hor_advance(id).unwrap_or(0);
    (id.0, i32::from(advance))
}

/// Characters that are never seen (Unicode property `Default_Ignorable_Code_Point`, Unicode 15,
/// listed from memory): joiners, direction marks, variation selectors, the soft hyphen.
pub(super) fn is_invisible(c: char) -> bool {
    matches!(u32::from(c),
        0xAD | 0x34F | 0x61C | 0x115F..=0x1160 | 0x17B4..=0x17B5 | 0x180B..=0x180F
        | 0x200B..=0x200F | 0x202A..=0x202E | 0x2060..=0x206F | 0x3164 | 0xFE00..=0xFE0F | 0xFEFF
        | 0xFFA0 | 0xFFF0..=0xFFF8 | 0x1BCA0..=0x1BCA3 | 0x1D173..=0x1D17A | 0xE0000..=0xE0FFF)
}

/// Takes down an outline; quadratic curves become cubic ones.
#[derive(Default)]
struct Pen {
    path: Path<[f32; 2]>,
    at: [f32; 2],
}

impl Pen {
    fn put(&mut self, seg: Seg<[f32; 2]>, at: [f32; 2]) {
        self.path.segs.push(seg);
        self.at = at;
    }
}

impl OutlineBuilder for Pen {
    fn move_to(&mut self, x: f32, y: f32) {
        self.put(Seg::Move([x, y]), [x, y]);
    }
    fn line_to(&mut self, x: f32, y: f32) {
        self.put(Seg::Line([x, y]), [x, y]);
    }
    fn quad_to(&mut self, cx: f32, cy: f32, x: f32, y: f32) {
        let two_thirds = |from: f32, to: f32| from + (to - from) * 2.0 / 3.0;
        let [ax, ay] = self.at;
        let a = [two_thirds(ax, cx), two_thirds(ay, cy)];
        let b = [two_thirds(x, cx), two_thirds(y, cy)];
        self.put(Seg::Cubic(a, b, [x, y]), [x, y]);
    }
    fn curve_to(&mut self, ax: f32, ay: f32, bx: f32, by: f32, x: f32, y: f32) {
        self.put(Seg::Cubic([ax, ay], [bx, by], [x, y]), [x, y]);
    }
    fn close(&mut self) {
        self.path.segs.push(Seg::Close);
    }
}
