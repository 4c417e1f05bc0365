//! Pixels on a drawing: those of a photograph as it is kept, or the same in grey. What no painter
//! needs is not decoded.

use std::sync::{Arc, OnceLock};

use image::{DynamicImage, ImageFormat, ImageReader, Limits, RgbaImage};

use crate::model::limits::picture::SIDE;
use crate::model::picture::{Photo, PhotoKind};
use crate::units::colour::Rgb;

/// A rectangle of pixels.
#[derive(Clone, Debug)]
pub struct Pixels {
    photo: Arc<Photo>,
    grey: bool,
    seen: OnceLock<RgbaImage>,
}

/// A photograph's own file.
#[derive(Clone, Copy, Debug)]
pub enum AsKept<'a> {
    /// A JPEG.
    Jpeg(&'a [u8]),
    /// A PNG.
    Png(&'a [u8]),
}

impl PartialEq for Pixels {
    fn eq(&self, other: &Self) -> bool {
        self.grey == other.grey && self.photo == other.photo
    }
}

/// Memory that decoding may take: four bytes for each of the most pixels, twice.
const MOST_BYTES: u64 = 8 * SIDE as u64 * SIDE as u64;

impl Pixels {
    /// Those of a photograph, in colour or in grey.
    pub const fn new(photo: Arc<Photo>, grey: bool) -> Self {
        Self {
            photo,
            grey,
            seen: OnceLock::new(),
        }
    }

    /// Pixels across and down.
    pub fn size(&self) -> [u32; 2] {
        self.photo.size()
    }

    /// The photograph's own file, where it is seen as it is kept.
    pub fn file(&self) -> Option<AsKept<'_>> {
        let bytes = self.photo.bytes();
        match self.photo.kind() {
            _ if self.grey => None,
            PhotoKind::Jpeg => Some(AsKept::Jpeg(bytes)),
            PhotoKind::Png => Some(AsKept::Png(bytes)),
        }
    }

    /// The pixels; white where the file turns out to be damaged.
    pub fn image(&self) -> &RgbaImage {
        self.seen.get_or_init(|| {
            let [w, h] = self.photo.size().map(|side| side.clamp(1, SIDE));
            let decoded = decode(&self.photo).filter(|i| i.dimensions() == (w, h));
            let white = || RgbaImage::from_pixel(w, h, image::Rgba([255; 4]));
            let mut image = decoded.unwrap_or_else(white);
            if self.grey {
                to_grey(&mut image);
            }
            image
        })
    }
}

fn decode(photo: &Photo) -> Option<RgbaImage> {
    let format = match photo.kind() {
        PhotoKind::Jpeg => ImageFormat::Jpeg,
        PhotoKind::Png => ImageFormat::Png,
    };
    let mut reader = ImageReader::with_format(std::io::Cursor::new(photo.bytes()), format);
    let mut limits = Limits::default();
    limits.max_image_width = Some(SIDE);
    limits.max_image_height = Some(SIDE);
    limits.max_alloc = Some(MOST_BYTES);
    reader.limits(limits);
    reader.decode().ok().map(DynamicImage::into_rgba8)
}

/// The steepest that greys are drawn apart: more would make grain of what is nearly one tone.
const STEEPEST: f32 = 2.5;
/// Share of the pixels at each end that may become black or white.
const ENDS: f32 = 0.01;

/// Each pixel as the grey of its luminance, and the greys drawn apart until the darkest and the
/// lightest hundredth are black and white: a photograph that is pale in colour is still read in grey.
pub fn to_grey(image: &mut RgbaImage) {
    let mut count = [0_u32; 256];
    for pixel in image.pixels_mut() {
        let [r, g, b, a] = pixel.0;
        let grey = Rgb(r, g, b).to_grey().0;
        pixel.0 = [grey, grey, grey, a];
        if a > 0 {
            count[usize::from(grey)] += 1;
        }
    }
    let (dark, light) = ends(&count);
    let middle = f32::midpoint(dark, light);
    let gain = (255.0 / (light - dark).max(1.0)).min(STEEPEST);
    let half = (light - dark) * gain / 2.0;
    let aim = middle.clamp(half.min(127.5), 255.0 - half.min(127.5));
    let drawn: Vec<u8> = (0..=255)
        .map(|grey: u8| ((f32::from(grey) - middle) * gain + aim).clamp(0.0, 255.0) as u8)
        .collect();
    for pixel in image.pixels_mut() {
        let grey = drawn[usize::from(pixel.0[0])];
        pixel.0[..3].fill(grey);
    }
}

/// The greys below and above which a hundredth of the pixels lie.
fn ends(count: &[u32; 256]) -> (f32, f32) {
    let all: u32 = count.iter().sum();
    let few = (all as f32 * ENDS) as u32;
    let end = |order: [usize; 256]| {
        let mut passed = 0;
        let found = order.into_iter().find(|g| {
            passed += count[*g];
            passed > few
        });
        found.unwrap_or(0) as f32
    };
    let up: [usize; 256] = std::array::from_fn(|g| g);
    let down = up.map(|g| 255 - g);
    (end(up), end(down))
}
