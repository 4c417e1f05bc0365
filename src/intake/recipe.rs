//! How a photograph is to be shown: which part of it, turned how, how bright, without what. A plain
//! value; the photograph itself is never changed.

use std::sync::Arc;

use super::mask::Mask;

/// What to make of a photograph. The default leaves it as it is.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Recipe {
    /// The part that is shown; all of it if none, or all that is left upright after straightening.
    pub frame: Option<Frame>,
    /// Degrees the picture is turned clockwise to stand straight, -45 to 45.
    pub straighten: f32,
    /// Quarter turns clockwise, before anything else; 4 is none.
    pub quarter_turns: u8,
    /// -100 to 100. Black stays black and white stays white; the grey between moves by the power
    /// `2^(-brightness / 100)`.
    pub brightness: f32,
    /// -100 to 100. Numbers move away from middle grey or towards it by the factor
    /// `2^(contrast / 50)`, from a quarter to four times.
    pub contrast: f32,
    /// What of the photograph is kept.
    pub mask: Option<Arc<Mask>>,
    /// What is seen where nothing of the photograph is.
    pub ground: Ground,
}

/// What is seen where nothing of the photograph is.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Ground {
    /// Whatever lies behind the picture.
    #[default]
    Transparent,
    /// White paper.
    White,
}

/// A frame laid on the photograph after its quarter turns.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Frame {
    /// Its middle, as shares of the width and the height of the turned picture.
    pub centre: [f32; 2],
    /// Its width, as a share of the width of the turned picture.
    pub width: f32,
    /// Its shape, which gives its height.
    pub shape: Shape,
}

/// The shape of a frame.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Shape {
    /// As wide as high.
    Square,
    /// 3 wide to 4 high.
    Upright,
    /// 4 wide to 3 high.
    Across,
    /// Of any height, as a share of the height of the turned picture.
    Free {
        /// That share.
        height: f32,
    },
}

impl Shape {
    /// Width divided by height, where the shape fixes it.
    pub fn ratio(self) -> Option<f32> {
        match self {
            Self::Square => Some(1.0),
            Self::Upright => Some(3.0 / 4.0),
            Self::Across => Some(4.0 / 3.0),
            Self::Free { .. } => None,
        }
    }
}

impl Recipe {
    /// Whether the photograph is shown as it is.
    pub fn changes_nothing(&self) -> bool {
        self.changes_no_place() && self.changes_no_tone() && self.mask.is_none()
    }

    /// Whether every pixel stays where it is.
    fn changes_no_place(&self) -> bool {
        self.frame.is_none() && self.degrees() == 0.0 && self.turns() == 0
    }

    /// Whether every pixel keeps its colour.
    pub fn changes_no_tone(&self) -> bool {
        within(self.brightness, 100.0) == 0.0 && within(self.contrast, 100.0) == 0.0
    }

    /// Quarter turns, 0 to 3.
    pub(super) fn turns(&self) -> u8 {
        self.quarter_turns % 4
    }

    /// Straightening within its bounds; what is no number is none.
    pub(super) fn degrees(&self) -> f32 {
        within(self.straighten, 45.0)
    }

    /// The new number for each of the 256.
    pub(super) fn tones(&self) -> [u8; 256] {
        let power = (-within(self.brightness, 100.0) / 100.0).exp2();
        let factor = (within(self.contrast, 100.0) / 50.0).exp2();
        std::array::from_fn(|i| {
            let brighter = (i as f32 / 255.0).powf(power);
            let value = (brighter - 0.5) * factor + 0.5;
            (value.clamp(0.0, 1.0) * 255.0).round() as u8
        })
    }
}

fn within(value: f32, most: f32) -> f32 {
    if value.is_finite() {
        value.clamp(-most, most)
    } else {
        0.0
    }
}
