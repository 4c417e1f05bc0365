//! What the chunks of a PNG say about its colours (W3C Portable Network Graphics, third edition,
//! 11.3.2), and which of them counts.

use std::io::Read as _;

use super::LARGEST_PROFILE;
use crate::intake::rows::{Meaning, Numbers};

/// The curve of sRGB as `gAMA` has it, and how near to it is the same.
const SRGB_GAMMA: u32 = 45_455;
const SAME_GAMMA: u32 = 1_000;
/// White, red, green and blue of sRGB as `cHRM` has them, and how near to them is the same.
const SRGB_POINTS: [u32; 8] = [
    31_270, 32_900, 64_000, 33_000, 30_000, 60_000, 15_000, 6_000,
];
const SAME_POINT: u32 = 200;

/// What was found.
#[derive(Default)]
pub struct Colours {
    /// `cICP`: primaries, curve, matrix, whether the whole range is used.
    codes: Option<[u8; 4]>,
    /// `iCCP`, unpacked.
    profile: Option<Vec<u8>>,
    srgb: bool,
    gamma: Option<u32>,
    points: Option<[u32; 8]>,
}

impl Colours {
    /// Looks at a chunk.
    pub fn see(&mut self, name: &[u8], body: &[u8]) {
        match name {
            b"cICP" => self.codes = body.first_chunk().copied(),
            b"iCCP" => self.profile = unpacked(body),
            b"sRGB" => self.srgb = true,
            b"gAMA" => self.gamma = body.first_chunk().map(|b| u32::from_be_bytes(*b)),
            b"cHRM" => self.points = points(body),
            _ => {}
        }
    }

    /// By the precedence of the third edition: codes, profile, sRGB, then gamma and primaries.
    pub fn meaning(&mut self) -> Meaning {
        if let Some(codes) = self.codes {
            return Meaning::Codes(codes);
        }
        if let Some(profile) = self.profile.take() {
            return Meaning::Profile(profile);
        }
        if self.srgb {
            return Meaning::Srgb;
        }
        let points = self.points.filter(differ).and_then(sound);
        // Beside the primaries of sRGB it is how a PNG writes the curve of sRGB.
        let plain = |g: &u32| points.is_some() || g.abs_diff(SRGB_GAMMA) > SAME_GAMMA;
        let can_be = |g: &u32| (10_000..=100_000).contains(g);
        let gamma = self.gamma.filter(can_be).filter(plain);
        let numbers = Numbers {
            gamma: gamma.map(|g| 100_000.0 / g as f32),
            points,
        };
        match numbers {
            Numbers {
                gamma: None,
                points: None,
            } => Meaning::Srgb,
            numbers => Meaning::Numbers(numbers),
        }
    }
}

/// The profile of an `iCCP` chunk: a name, a zero, the method and packed bytes. One beyond the bound
/// comes out empty, which is no profile anybody can read.
fn unpacked(body: &[u8]) -> Option<Vec<u8>> {
    let name = body.iter().take(80).position(|b| *b == 0)?;
    let packed = body.get(name + 2..)?;
    let mut profile = Vec::new();
    let mut reader = flate2::read::ZlibDecoder::new(packed).take(LARGEST_PROFILE as u64 + 1);
    let whole = reader.read_to_end(&mut profile).is_ok() && profile.len() <= LARGEST_PROFILE;
    Some(if whole { profile } else { Vec::new() })
}

fn points(body: &[u8]) -> Option<[u32; 8]> {
    let (all, _) = body.first_chunk::<32>()?.as_chunks::<4>();
    Some(std::array::from_fn(|i| u32::from_be_bytes(all[i])))
}

fn differ(points: &[u32; 8]) -> bool {
    let mut pairs = points.iter().zip(SRGB_POINTS);
    pairs.any(|(a, b)| a.abs_diff(b) > SAME_POINT)
}

/// White, red, green and blue where they can be colours of light: the three span a triangle, and
/// white lies within it.
fn sound(points: [u32; 8]) -> Option<[[f32; 2]; 4]> {
    let all: [[f32; 2]; 4] =
        std::array::from_fn(|i| [0, 1].map(|j| points[2 * i + j] as f32 / 100_000.0));
    let [white, red, green, blue] = all;
    let turn = |a: [f32; 2], b: [f32; 2], c: [f32; 2]| {
        (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])
    };
    let within = |a, b| turn(a, b, white) > 0.001;
    let light = all.iter().flatten().all(|v| (0.0..=1.0).contains(v));
    // Counter-clockwise, as red, green and blue lie in the diagram of CIE 1931.
    (light && white[1] > 0.01 && within(red, green) && within(green, blue) && within(blue, red))
        .then_some(all)
}
