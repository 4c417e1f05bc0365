//! Pages to PNG, opaque, with their size on paper written in.

use image::codecs::png::{CompressionType, FilterType, PngEncoder};
use image::{ExtendedColorType, ImageEncoder, RgbaImage};

use crate::page::Page;
use crate::raster::{PaintError, paint};

/// The page as a PNG file at a resolution in dots per inch, which the file carries so that it
/// prints at its own size.
///
/// # Errors
/// If the picture would have no pixels or too many.
pub fn png(page: &Page, dpi: f64) -> Result<Vec<u8>, PaintError> {
    Ok(encode(&paint(page, dpi)?, dpi))
}

/// A picture by itself as a PNG file, with what is clear in it.
pub(super) fn picture(picture: &RgbaImage) -> Vec<u8> {
    let mut file = Vec::new();
    let encoder =
        PngEncoder::new_with_quality(&mut file, CompressionType::Default, FilterType::Adaptive);
    let (w, h) = picture.dimensions();
    // Writing to memory does not fail, and the length of the pixels is that of the picture.
    let _ = encoder.write_image(picture.as_raw(), w, h, ExtendedColorType::Rgba8);
    file
}

fn encode(picture: &RgbaImage, dpi: f64) -> Vec<u8> {
    // All pixels are opaque, so three channels hold everything.
    let rgb: Vec<u8> = picture
        .pixels()
        .flat_map(|p| [p.0[0], p.0[1], p.0[2]])
        .collect();
    let mut file = Vec::with_capacity(rgb.len() / 16);
    let encoder =
        PngEncoder::new_with_quality(&mut file, CompressionType::Default, FilterType::Adaptive);
    let (w, h) = picture.dimensions();
    // Writing to memory does not fail, and the length of the pixels is that of the picture.
    let _ = encoder.write_image(&rgb, w, h, ExtendedColorType::Rgb8);
    insert_resolution(&mut file, dpi);
    file
}

/// Signature and header: where the first further chunk may stand (PNG, third edition, 5.2 and 11.2).
const AFTER_HEADER: usize = 8 + 25;

/// Puts in the `pHYs` chunk: pixels a metre across and down, unit 1 (PNG, third edition, 11.3.4.3).
fn insert_resolution(file: &mut Vec<u8>, dpi: f64) {
    if file.len() < AFTER_HEADER {
        return;
    }
    let a_metre = (dpi / 0.0254).round() as u32;
    let mut chunk = b"pHYs".to_vec();
    chunk.extend(a_metre.to_be_bytes());
    chunk.extend(a_metre.to_be_bytes());
    chunk.push(1);
    let mut crc = flate2::Crc::new();
    crc.update(&chunk);
    let mut whole = 9_u32.to_be_bytes().to_vec();
    whole.extend(chunk);
    whole.extend(crc.sum().to_be_bytes());
    file.splice(AFTER_HEADER..AFTER_HEADER, whole);
}
