//! What every decoder hands over: rows from top to bottom, eight bits a sample.

use image::metadata::Orientation;

use super::refusal::Why;

/// The samples of one pixel.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Samples {
    Grey,
    GreyAlpha,
    Rgb,
    Rgba,
    /// Inks, 255 for all of the ink.
    Cmyk,
}

impl Samples {
    pub fn count(self) -> usize {
        match self {
            Self::Grey => 1,
            Self::GreyAlpha => 2,
            Self::Rgb => 3,
            Self::Rgba | Self::Cmyk => 4,
        }
    }
}

/// The colours a picture's numbers stand for.
#[derive(Clone, Debug, PartialEq)]
pub enum Meaning {
    Srgb,
    /// As an ICC profile says.
    Profile(Vec<u8>),
    /// As these numbers say.
    Numbers(Numbers),
    /// Primaries, curve, matrix and range by their codes (ITU-T H.273).
    Codes([u8; 4]),
}

/// What differs from sRGB.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Numbers {
    /// The light is the number to this power.
    pub gamma: Option<f32>,
    /// White, red, green and blue in the diagram of CIE 1931.
    pub points: Option<[[f32; 2]; 4]>,
}

/// What is known of a picture before its pixels are.
#[derive(Clone, Debug)]
pub struct Header {
    pub width: u32,
    pub height: u32,
    pub samples: Samples,
    pub meaning: Meaning,
    pub orientation: Orientation,
    pub notes: Vec<String>,
}

/// Takes the rows.
pub type Sink<'a> = dyn FnMut(&[u8]) + 'a;

/// Hands every row to a sink.
pub type Decode<'a> = Box<dyn FnOnce(&mut Sink) -> Result<(), Why> + 'a>;

/// A picture that was looked at and may be decoded.
pub struct Opened<'a> {
    pub header: Header,
    pub decode: Decode<'a>,
}

/// Said when a file told more than its picture.
pub fn removed() -> String {
    "What the file says of where, when and with what it was taken was removed.".to_owned()
}

/// Said when a file has more pictures than one.
pub fn first_only() -> String {
    "Only the first picture of the animation was taken.".to_owned()
}

/// The way up that an Exif block asks for (TIFF 6.0 and Exif 2.32, tag 0x0112).
pub fn orientation(exif: &[u8]) -> Orientation {
    // Some writers repeat the mark that JPEG puts before the block.
    let exif = exif.strip_prefix(b"Exif\0\0").unwrap_or(exif);
    Orientation::from_exif_chunk(exif).unwrap_or(Orientation::NoTransforms)
}
