//! The bundled fonts cut down to the letters of one story, as the file's own faces.

use std::collections::BTreeSet;
use std::fmt::Write as _;

use base64::Engine as _;
use base64::engine::general_purpose::STANDARD;
use read_fonts::FontRef;
use read_fonts::collections::IntSet;
use read_fonts::types::{GlyphId, NameId, Tag};
use skera::{DEFAULT_DROP_TABLES, DEFAULT_LAYOUT_FEATURES, Plan, SubsetFlags, subset_font};
use unicode_normalization::UnicodeNormalization as _;

use crate::text;
use crate::text::run::FontId;

/// What the file says of its letters. The faces bear names of our own, since the licence keeps the
/// fonts' names for whole fonts.
pub const LICENCE: &str = "Letters: cut down from Andika and, for Arabic script, Harmattan; \
     copyright SIL International; SIL Open Font License 1.1";

/// Tables that other software than browsers reads.
const FURTHER: [Tag; 1] = [Tag::new(b"Silt")];
/// Copyright and where the licence is: what stays of a font's words.
const NAMES: [u16; 2] = [0, 14];
/// English of the United States, the language of these names.
const NAMES_IN: u16 = 0x0409;

/// The style rules that bring the letters of some markup: both weights, the Arabic face only where
/// it is needed.
pub fn faces(markup: &str) -> String {
    let used = characters(markup);
    let mut out = String::new();
    let all = [
        (FontId::Regular, "Story", 400, ""),
        (FontId::Bold, "Story", 700, ""),
        // Drawn smaller on the same body; see the optical factor of shaping.
        (FontId::Arabic, "Story Arabic", 400, "size-adjust:133%;"),
        (FontId::ArabicBold, "Story Arabic", 700, "size-adjust:133%;"),
    ];
    let arabic = used.iter().any(|c| text::runs_left(&c.to_string()));
    for (font, family, weight, more) in all {
        if family != "Story" && !arabic {
            continue;
        }
        let Some(bytes) = subset(font, &used) else {
            continue;
        };
        let _ = writeln!(
            out,
            "@font-face{{font-family:\"{family}\";font-weight:{weight};{more}\
             src:url(data:font/ttf;base64,{}) format(\"truetype\")}}",
            STANDARD.encode(bytes)
        );
    }
    out
}

/// The characters of a text as they stand, put together and taken apart, as browsers may do either.
fn characters(text: &str) -> BTreeSet<char> {
    let together = text.nfc().chain(text.nfd());
    let all = text.chars().chain(together).chain(['\u{2010}']);
    all.filter(|c| !c.is_control()).collect()
}

/// A font with no more than some characters and all that shaping does with them; nothing if it has
/// none of them.
pub fn subset(font: FontId, characters: &BTreeSet<char>) -> Option<Vec<u8>> {
    let font = FontRef::new(text::bytes(font)).ok()?;
    let mut every_script = IntSet::empty();
    every_script.invert();
    let flags = SubsetFlags::SUBSET_FLAGS_NO_HINTING | SubsetFlags::SUBSET_FLAGS_NOTDEF_OUTLINE;
    let plan = Plan::new(
        &IntSet::<GlyphId>::empty(),
        &characters.iter().map(|c| u32::from(*c)).collect(),
        &font,
        flags,
        &DEFAULT_DROP_TABLES
            .iter()
            .chain(&FURTHER)
            .copied()
            .collect(),
        &every_script,
        &DEFAULT_LAYOUT_FEATURES.iter().copied().collect(),
        &NAMES.into_iter().map(NameId::from).collect(),
        &[NAMES_IN].into_iter().collect(),
    );
    subset_font(&font, &plan).ok()
}
