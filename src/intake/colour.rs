//! From the numbers of a file to numbers of sRGB, by its ICC profile where it brings one.

use std::sync::Arc;

use moxcms::{
    Chromaticity, CicpColorPrimaries, CicpProfile, ColorPrimaries, ColorProfile, DataColorSpace,
    Layout, MatrixCoefficients, ParsingOptions, ToneReprCurve, TransferCharacteristics,
    Transform8BitExecutor, TransformOptions,
};

use super::png::LARGEST_PROFILE;
use super::rows::{Meaning, Numbers, Samples};

/// Turns rows of a file's numbers into rows of sRGB with opacity, four numbers a pixel.
pub struct ToSrgb {
    samples: Samples,
    how: How,
}

enum How {
    AsTheyAre,
    /// From RGB with opacity.
    Colours(Arc<Transform8BitExecutor>),
    /// From grey, one entry for each number.
    Greys(Box<[[u8; 3]; 256]>),
    /// From four inks.
    Inks(Arc<Transform8BitExecutor>),
}

impl ToSrgb {
    /// The way for a picture, and what there is to say of it.
    pub fn new(samples: Samples, meaning: &Meaning) -> (Self, Option<String>) {
        let profile = match meaning {
            Meaning::Srgb => None,
            Meaning::Numbers(numbers) => Some(by_numbers(samples, *numbers)),
            Meaning::Codes(codes) => Some(by_codes(*codes)),
            Meaning::Profile(bytes) => Some(read(bytes)),
        };
        let (how, note) = match profile {
            None => (How::AsTheyAre, None),
            Some(profile) => match profile.and_then(|p| through(samples, &p)) {
                Some(how) => (how, None),
                None => (How::AsTheyAre, Some(unreadable())),
            },
        };
        let note = note.or_else(|| {
            let plain_inks = samples == Samples::Cmyk && matches!(how, How::AsTheyAre);
            plain_inks.then(without_profile)
        });
        (Self { samples, how }, note)
    }

    /// Whether the file's numbers are sRGB already, give or take a step.
    pub fn is_srgb(&self) -> bool {
        matches!(self.how, How::AsTheyAre) && self.samples != Samples::Cmyk
    }

    /// One row. `out` has four numbers a pixel.
    pub fn row(&self, row: &[u8], out: &mut [u8]) {
        match &self.how {
            How::AsTheyAre => spread(self.samples, row, out),
            How::Greys(table) => {
                spread(self.samples, row, out);
                for pixel in out.chunks_exact_mut(4) {
                    let grey = table[usize::from(pixel[0])];
                    pixel[..3].copy_from_slice(&grey);
                }
            }
            How::Colours(transform) => {
                let mut plain = vec![0; out.len()];
                spread(self.samples, row, &mut plain);
                if transform.transform(&plain, out).is_err() {
                    out.copy_from_slice(&plain);
                }
            }
            How::Inks(transform) => {
                let mut rgb = vec![0; out.len() / 4 * 3];
                if transform.transform(row, &mut rgb).is_ok() {
                    spread(Samples::Rgb, &rgb, out);
                } else {
                    spread(Samples::Cmyk, row, out);
                }
            }
        }
    }
}

fn unreadable() -> String {
    "Its colour profile could not be read, so its colours were taken as those of a screen (sRGB)."
        .to_owned()
}

fn without_profile() -> String {
    "Its colours are inks for a press, without a profile; on screen they can differ a little."
        .to_owned()
}

/// Numbers as they are, with opacity. Inks darken white paper, each by itself.
fn spread(samples: Samples, row: &[u8], out: &mut [u8]) {
    let pixels = row
        .chunks_exact(samples.count())
        .zip(out.chunks_exact_mut(4));
    for (from, to) in pixels {
        let pixel = match *from {
            [grey] => [grey, grey, grey, 255],
            [grey, alpha] => [grey, grey, grey, alpha],
            [r, g, b] => [r, g, b, 255],
            [c, m, y, k] if samples == Samples::Cmyk => {
                let left = |ink: u8| {
                    let both = (255 - u32::from(ink)) * (255 - u32::from(k));
                    ((both + 127) / 255) as u8
                };
                [left(c), left(m), left(y), 255]
            }
            [r, g, b, alpha] => [r, g, b, alpha],
            _ => continue,
        };
        to.copy_from_slice(&pixel);
    }
}

fn read(bytes: &[u8]) -> Option<ColorProfile> {
    let options = ParsingOptions {
        max_profile_size: LARGEST_PROFILE,
        max_allowed_clut_size: 1_000_000,
        max_allowed_trc_size: 10_000,
    };
    ColorProfile::new_from_slice_with_options(bytes, options).ok()
}

/// sRGB, or its grey, with another curve or other primaries.
fn by_numbers(samples: Samples, numbers: Numbers) -> Option<ColorProfile> {
    if matches!(samples, Samples::Grey | Samples::GreyAlpha) {
        let grey = ColorProfile::new_gray_with_gamma;
        return Some(numbers.gamma.map_or_else(ColorProfile::new_srgb, grey));
    }
    let mut profile = ColorProfile::new_srgb();
    profile.cicp = None;
    if let Some(points) = numbers.points {
        let [white, red, green, blue] = points.map(|[x, y]| Chromaticity::new(x, y));
        profile.update_rgb_colorimetry(white.to_xyyb(), ColorPrimaries { red, green, blue });
    }
    if let Some(gamma) = numbers.gamma {
        let curve = Some(ToneReprCurve::Parametric(vec![gamma]));
        profile.red_trc = curve.clone();
        profile.green_trc = curve.clone();
        profile.blue_trc = curve;
    }
    Some(profile)
}

/// RGB over the whole range with a curve for ordinary screens; what is graded for brighter ones
/// would need its light pressed together, and is not read.
fn by_codes([primaries, curve, matrix, whole]: [u8; 4]) -> Option<ColorProfile> {
    let bright = [
        TransferCharacteristics::Smpte2084,
        TransferCharacteristics::Hlg,
    ];
    let transfer_characteristics = TransferCharacteristics::try_from(curve).ok()?;
    if (matrix, whole) != (0, 1) || bright.contains(&transfer_characteristics) {
        return None;
    }
    let mut profile = ColorProfile::new_srgb();
    profile.cicp = None;
    profile.update_rgb_colorimetry_from_cicp(CicpProfile {
        color_primaries: CicpColorPrimaries::try_from(primaries).ok()?,
        transfer_characteristics,
        matrix_coefficients: MatrixCoefficients::Identity,
        full_range: true,
    });
    // Without a word of its own about one of them nothing is known.
    profile.cicp.is_some().then_some(profile)
}

/// The way through a profile; none where it is for another kind of picture or cannot be gone.
fn through(samples: Samples, profile: &ColorProfile) -> Option<How> {
    let srgb = ColorProfile::new_srgb();
    let make = |from, to| {
        let options = TransformOptions::default();
        profile.create_transform_8bit(from, &srgb, to, options).ok()
    };
    match (samples, profile.color_space) {
        (Samples::Cmyk, DataColorSpace::Cmyk) => make(Layout::Rgba, Layout::Rgb).map(How::Inks),
        (Samples::Grey | Samples::GreyAlpha, DataColorSpace::Gray) => {
            let transform = make(Layout::Gray, Layout::Rgb)?;
            let greys: Vec<u8> = (0..=255).collect();
            let mut rgb = [0; 768];
            transform.transform(&greys, &mut rgb).ok()?;
            let table = std::array::from_fn(|i| [rgb[3 * i], rgb[3 * i + 1], rgb[3 * i + 2]]);
            Some(How::Greys(Box::new(table)))
        }
        (
            Samples::Grey | Samples::GreyAlpha | Samples::Rgb | Samples::Rgba,
            DataColorSpace::Rgb,
        ) => {
            let transform = make(Layout::Rgba, Layout::Rgba)?;
            if changes_nothing(&transform) {
                return Some(How::AsTheyAre);
            }
            Some(How::Colours(transform))
        }
        _ => None,
    }
}

/// Whether no colour moves by more than a step, tried on a lattice through all of them.
fn changes_nothing(transform: &Arc<Transform8BitExecutor>) -> bool {
    let mut all = Vec::new();
    for r in 0..16_u8 {
        for g in 0..16_u8 {
            for b in 0..16_u8 {
                all.extend([r * 17, g * 17, b * 17, 255]);
            }
        }
    }
    let mut out = vec![0; all.len()];
    transform.transform(&all, &mut out).is_ok()
        && all.iter().zip(&out).all(|(a, b)| a.abs_diff(*b) <= 1)
}
