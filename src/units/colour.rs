//! Colours of paper and screen, and how well they can be told apart.

/// An opaque sRGB colour.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct Rgb(pub u8, pub u8, pub u8);

impl Rgb {
    /// White paper.
    pub const WHITE: Self = Self(255, 255, 255);
    /// Black ink.
    pub const BLACK: Self = Self(0, 0, 0);

    /// From `0xRRGGBB`.
    pub const fn hex(rgb: u32) -> Self {
        Self((rgb >> 16) as u8, (rgb >> 8) as u8, rgb as u8)
    }

    /// Relative luminance, 0 for black to 1 for white, as WCAG 2.2 defines it.
    pub fn luminance(self) -> f64 {
        let linear = |c: u8| {
            let c = f64::from(c) / 255.0;
            if c <= 0.04045 {
                c / 12.92
            } else {
                ((c + 0.055) / 1.055).powf(2.4)
            }
        };
        0.2126 * linear(self.0) + 0.7152 * linear(self.1) + 0.0722 * linear(self.2)
    }

    /// Contrast ratio to another colour, 1 to 21, as WCAG 2.2 defines it.
    pub fn contrast(self, other: Self) -> f64 {
        let (a, b) = (self.luminance(), other.luminance());
        (a.max(b) + 0.05) / (a.min(b) + 0.05)
    }

    /// CIE 1976 lightness L*, 0 to 100: what a grey print keeps of a colour.
    pub fn lightness(self) -> f64 {
        let y = self.luminance();
        if y <= 216.0 / 24389.0 {
            y * 24389.0 / 27.0
        } else {
            116.0 * y.cbrt() - 16.0
        }
    }

    /// The grey of the same luminance.
    pub fn to_grey(self) -> Self {
        let y = self.luminance();
        let c = if y <= 0.003_130_8 {
            y * 12.92
        } else {
            1.055 * y.powf(1.0 / 2.4) - 0.055
        };
        let c = (c * 255.0).round() as u8;
        Self(c, c, c)
    }
}
