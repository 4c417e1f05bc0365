//! The colours a symbol may hold, by what they are for. `icons-src/STYLE.md` tells drawers the same.

use crate::units::colour::Rgb;

/// Outer silhouette, eyes, mouth.
pub const INK: Rgb = Rgb::hex(0x14_26_2B);
/// Skin of the main child: the one colour that follows the participant.
pub const SKIN: Rgb = Rgb::hex(0xD9_9A_6C);
/// Nose, inner ear, finger slits on [`SKIN`]; follows it.
pub const SKIN_LINE: Rgb = Rgb::hex(0x8F_52_30);
/// Cheeks, and nothing else.
pub const BLUSH: Rgb = Rgb::hex(0xE5_8A_6B);
/// Water.
pub const WATER: Rgb = Rgb::hex(0x6F_B4_DE);
/// The key object.
pub const SUN: Rgb = Rgb::hex(0xFF_C8_3D);
/// Accent cloth, movement.
pub const CORAL: Rgb = Rgb::hex(0xE8_58_2F);
/// Red of a warning flag and of heat in a face, and nothing else.
pub const FLAG_RED: Rgb = Rgb::hex(0xC6_28_28);
/// Green of the first-aid sign, and nothing else.
pub const AID_GREEN: Rgb = Rgb::hex(0x23_7F_52);
/// White, seams between layers.
pub const WHITE: Rgb = Rgb::WHITE;

/// Every colour allowed, with its name.
pub const ALL: [(&str, Rgb); 25] = [
    ("ink", INK),
    ("skin", SKIN),
    ("skinline", SKIN_LINE),
    ("skin2", Rgb::hex(0x8D_5A_3B)),
    ("skinline2", Rgb::hex(0x4A_2A_18)),
    ("skin3", Rgb::hex(0xF0_C7_A2)),
    ("skinline3", Rgb::hex(0xA8_6B_45)),
    ("hairdark", Rgb::hex(0x2B_1D_1A)),
    ("hairbrown", Rgb::hex(0x7A_4A_2B)),
    ("hairfair", Rgb::hex(0xC9_8F_3E)),
    ("teal", Rgb::hex(0x1F_6B_66)),
    ("navy", Rgb::hex(0x2F_4E_7A)),
    ("charcoal", Rgb::hex(0x3B_47_50)),
    ("coral", CORAL),
    ("water", WATER),
    ("waterlight", Rgb::hex(0xBF_E3_F2)),
    ("sun", SUN),
    ("sand", Rgb::hex(0xF2_DD_B2)),
    ("leaf", Rgb::hex(0x6D_AA_5B)),
    ("grey", Rgb::hex(0x9A_A7_AA)),
    ("greylight", Rgb::hex(0xD9_E0_DF)),
    ("white", WHITE),
    ("blush", BLUSH),
    ("flagred", FLAG_RED),
    ("aidgreen", AID_GREEN),
];
