//! Colours and line widths of paper, all in one place.

use crate::units::Length;
use crate::units::colour::Rgb;

/// Words and outlines.
pub const INK: Rgb = Rgb::hex(0x10_38_3B);
/// Words of less weight; 5.8 to 1 on white and more.
pub const SOFT: Rgb = Rgb::hex(0x44_60_5F);
/// The rope.
pub const ROPE: Rgb = Rgb::hex(0x3B_74_76);
/// The light along the rope.
pub const ROPE_LIGHT: Rgb = Rgb::hex(0xB9_D3_D1);
/// Rules and cut lines.
pub const RULE: Rgb = Rgb::hex(0xCD_BF_A6);
/// Clear film as it is drawn.
pub const SEAL: Rgb = Rgb::hex(0xEA_F1_EC);
/// Edge of clear film.
pub const SEAL_EDGE: Rgb = Rgb::hex(0x9D_B3_AC);
/// Hatching and dashes of what lies face down.
pub const HATCH: Rgb = Rgb::hex(0x87_7C_62);
/// The ground under hatching, and of the finished place.
pub const HATCH_GROUND: Rgb = Rgb::hex(0xEF_E6_D4);
/// Paper.
pub const PAPER: Rgb = Rgb::WHITE;

/// A hairline to cut along: a quarter of a point is common practice.
pub const HAIRLINE: Length = Length::um(90);
/// A thin line.
pub const THIN: Length = Length::um(250);
/// The outline of rings and boxes.
pub const LINE: Length = Length::um(450);
/// The rope.
pub const ROPE_WIDTH: Length = Length::um(1_700);
/// The light along the rope.
pub const ROPE_LIGHT_WIDTH: Length = Length::um(380);
