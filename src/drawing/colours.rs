//! What there is to draw with: colours of the built-in symbols, by what a person calls them, and
//! widths.

use crate::symbols::palette::{CORAL, INK, SKIN, SUN, WATER, WHITE};
use crate::units::colour::Rgb;

/// The colours with their names. Those that the built-in symbols keep for one thing only (a
/// warning flag, the first-aid sign, cheeks) are not among them.
pub const COLOURS: [(&str, Rgb); 18] = [
    ("Ink", INK),
    ("Dark grey", Rgb::hex(0x3B_47_50)),
    ("Grey", Rgb::hex(0x9A_A7_AA)),
    ("Light grey", Rgb::hex(0xD9_E0_DF)),
    ("White", WHITE),
    ("Sand", Rgb::hex(0xF2_DD_B2)),
    ("Yellow", SUN),
    ("Orange red", CORAL),
    ("Ochre", Rgb::hex(0xC9_8F_3E)),
    ("Brown", Rgb::hex(0x7A_4A_2B)),
    ("Green", Rgb::hex(0x6D_AA_5B)),
    ("Sea green", Rgb::hex(0x1F_6B_66)),
    ("Dark blue", Rgb::hex(0x2F_4E_7A)),
    ("Blue", WATER),
    ("Light blue", Rgb::hex(0xBF_E3_F2)),
    ("Skin, as each participant’s", SKIN),
    ("Dark skin", Rgb::hex(0x8D_5A_3B)),
    ("Light skin", Rgb::hex(0xF0_C7_A2)),
];

/// Sand and water: a setting, which has no outline in the built-in symbols.
pub const SETTINGS: [Rgb; 3] = [Rgb::hex(0xF2_DD_B2), WATER, Rgb::hex(0xBF_E3_F2)];

/// Fine, usual and broad line on the canvas, within what `icons-src/STYLE.md` asks: nothing that
/// matters under 2.4, an outline of about 5.
pub const WIDTHS: [f32; 3] = [3.0, 5.2, 9.0];
