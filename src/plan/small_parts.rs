//! Which flat pieces fit the gauge for small parts.
//!
//! The gauge is a cylinder with a floor that slopes at 45 degrees, from 1 in deep on one side to
//! 2.25 in on the other: 16 CFR 1501.4, figure 1, where the inch dimensions bind. EN 71-1:2014
//! section 8.2 uses the same shape at 31.7 mm. A piece that fits entirely, in any position and
//! without being pressed, counts as a small part there.
//!
//! This tells sizes apart; it says nothing about whether a piece meets a rule, nor for whom such a
//! rule is meant.

use crate::units::{Length, Size};

/// A gauge for small parts.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Gauge {
    /// 1.25 in across, from 1 in to 2.25 in deep (16 CFR 1501.4).
    Inch,
    /// 31.7 mm across, from 25.4 mm to 57.1 mm deep (EN 71-1, section 8.2).
    Millimetre,
}

impl Gauge {
    /// Inner diameter.
    pub const fn diameter(self) -> Length {
        match self {
            Self::Inch => Length::um(31_750),
            Self::Millimetre => Length::um(31_700),
        }
    }

    /// Depth on the shallow side.
    pub const fn shallow(self) -> Length {
        Length::um(25_400)
    }

    /// Depth on the deep side.
    pub const fn deep(self) -> Length {
        match self {
            Self::Inch => Length::um(57_150),
            Self::Millimetre => Length::um(57_100),
        }
    }
}

/// How a piece and a gauge go together.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Fit {
    /// It goes in entirely.
    Fits,
    /// It is too long to stand upright in it but may go in leaning.
    MayFitLeaning,
    /// It cannot go in entirely.
    DoesNotFit,
}

/// How far off a line cut by hand is expected to be. Our own choice.
pub const CUTTING_ALLOWANCE: Length = Length::um(1_500);

/// Shorter side of a finished piece below which we ask people to look: the wider gauge and the
/// cutting allowance, rounded up to a tenth of a millimetre.
pub const LOOK_BELOW: Length = Length::um(33_300);

/// How a flat rectangular piece with sharp corners goes into a gauge.
///
/// A flat piece passes the mouth only on edge: shorter side `a` and thickness `t` must lie within
/// the circle of diameter `D`, so `a² + t² <= D²`; this is exact. Then its longer side decides. It
/// stands upright across the slope up to `shallow + D/2 + √(D²/4 - a²/4) - t`. The longest straight
/// line in the gauge is `√(D² + deep²)`, and nothing longer goes in.
pub fn fit(piece: Size, thickness: Length, gauge: Gauge) -> Fit {
    let square = |l: Length| i128::from(l.to_um()) * i128::from(l.to_um());
    let (a, b) = (piece.w.min(piece.h), piece.w.max(piece.h));
    let d = gauge.diameter();
    if square(a) + square(thickness) > square(d) || square(b) > square(d) + square(gauge.deep()) {
        return Fit::DoesNotFit;
    }
    let half_chord = (d.to_mm().powi(2) - a.to_mm().powi(2)).max(0.0).sqrt() / 2.0;
    let upright = gauge.shallow().to_mm() + d.to_mm() / 2.0 + half_chord - thickness.to_mm();
    if b.to_mm() <= upright {
        Fit::Fits
    } else {
        Fit::MayFitLeaning
    }
}

/// How a flat round piece goes into a gauge: lying flat it goes in up to the gauge's diameter, and
/// a wider one is too wide in every position.
pub fn fit_disc(diameter: Length, gauge: Gauge) -> Fit {
    if diameter <= gauge.diameter() {
        Fit::Fits
    } else {
        Fit::DoesNotFit
    }
}

/// Whether a finished piece should be looked at: its shorter side is not above the wider gauge by
/// at least the cutting allowance. Right for every corner radius and thickness, because a piece
/// wider than the gauge on its shorter side fits in no position.
pub fn should_be_looked_at(finished: Size) -> bool {
    finished.w.min(finished.h) < LOOK_BELOW
}
