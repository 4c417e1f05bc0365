//! The last steps of a picture: the edge of a mask, tones, the ground, the file.

use image::codecs::jpeg::JpegEncoder;
use image::codecs::png::PngEncoder;
use image::{ExtendedColorType, ImageEncoder, RgbaImage};

use super::light::{light, number};
use super::photo::{Finished, Kind};
use super::recipe::Ground;

/// Quality of the JPEG files that are written, with full colour resolution (4:4:4).
const QUALITY: u8 = 88;

/// Makes the edge of a mask about one and a half pixels wide: 1, 2, 1 across and down.
pub fn soften(pixels: &mut [[f32; 5]], width: usize) {
    let kept: Vec<f32> = pixels.iter().map(|p| p[4]).collect();
    let height = kept.len() / width.max(1);
    let across = |x: usize, y: usize| {
        let at = |x: usize| kept[y * width + x.min(width - 1)];
        (at(x.saturating_sub(1)) + 2.0 * at(x) + at(x + 1)) / 4.0
    };
    for y in 0..height {
        for x in 0..width {
            let above = across(x, y.saturating_sub(1));
            let below = across(x, (y + 1).min(height - 1));
            pixels[y * width + x][4] = (above + 2.0 * across(x, y) + below) / 4.0;
        }
    }
}

/// One pixel of a finished picture. Where nothing is left of the photograph nothing of its colour
/// is either.
pub fn pixel(&[r, g, b, alpha, kept]: &[f32; 5], tones: &[u8; 256], ground: Ground) -> [u8; 4] {
    let seen = (alpha * kept).clamp(0.0, 1.0);
    let opacity = (seen * 255.0).round() as u8;
    if opacity == 0 {
        return match ground {
            Ground::Transparent => [0; 4],
            Ground::White => [255; 4],
        };
    }
    let [r, g, b] = [r, g, b].map(|c| tones[usize::from(number(c / alpha))]);
    if ground == Ground::White && opacity < 255 {
        let on_white = |c: u8| number(light()[usize::from(c)] * seen + 1.0 - seen);
        return [on_white(r), on_white(g), on_white(b), 255];
    }
    [r, g, b, opacity]
}

/// A JPEG if all is opaque, a PNG otherwise.
pub fn encode(picture: &RgbaImage) -> Finished {
    let (width, height) = picture.dimensions();
    let opaque = picture.pixels().all(|p| p.0[3] == 255);
    let mut bytes = Vec::new();
    // Both write to memory, where nothing can go wrong with sides below 65,536.
    let (kind, written) = if opaque {
        let rgb: Vec<u8> = picture
            .pixels()
            .flat_map(|p| [p.0[0], p.0[1], p.0[2]])
            .collect();
        let encoder = JpegEncoder::new_with_quality(&mut bytes, QUALITY);
        let written = encoder.write_image(&rgb, width, height, ExtendedColorType::Rgb8);
        (Kind::Jpeg, written)
    } else {
        let encoder = PngEncoder::new(&mut bytes);
        let written = encoder.write_image(picture, width, height, ExtendedColorType::Rgba8);
        (Kind::Png, written)
    };
    debug_assert!(written.is_ok(), "{written:?}");
    Finished {
        kind,
        width,
        height,
        bytes,
    }
}
