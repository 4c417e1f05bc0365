//! Photographs for a grey print.

use image::RgbaImage;

use super::light::{light, number};

/// The most that differences are enlarged: a picture of almost one grey is not made of noise.
const MOST_GAIN: f32 = 3.0;

/// The picture in greys of the same luminance, spread so that a washed-out one stays readable: the
/// hundredth part that is darkest becomes black and the hundredth that is lightest white, what lies
/// between evenly, differences growing to three times at most (and then about the middle of what
/// there was). Transparent pixels are not counted; opacity stays.
pub fn grey(picture: &RgbaImage) -> RgbaImage {
    let mut out = picture.clone();
    let mut counts = [0_u64; 256];
    let table = light();
    for pixel in out.pixels_mut() {
        let [r, g, b, alpha] = pixel.0;
        let [r, g, b] = [r, g, b].map(|c| table[usize::from(c)]);
        // As `units::colour::Rgb::to_grey`, by tables.
        let v = number(0.2126 * r + 0.7152 * g + 0.0722 * b);
        pixel.0 = [v, v, v, alpha];
        if alpha > 127 {
            counts[usize::from(v)] += 1;
        }
    }
    let table = spread(&counts);
    for pixel in out.pixels_mut() {
        let v = table[usize::from(pixel.0[0])];
        pixel.0 = [v, v, v, pixel.0[3]];
    }
    out
}

fn spread(counts: &[u64; 256]) -> [u8; 256] {
    let all: u64 = counts.iter().sum();
    let reached = |share: u64| {
        let mut sum = 0;
        counts.iter().position(|n| {
            sum += n;
            sum * 100 > all * share
        })
    };
    let (Some(dark), Some(bright)) = (reached(1), reached(99).or(Some(255))) else {
        return std::array::from_fn(|i| i as u8);
    };
    let (dark, bright) = (dark as f32, bright as f32);
    let gain = (255.0 / (bright - dark).max(1.0)).min(MOST_GAIN);
    // At less than the full gain the ends of the range stay within black and white.
    let middle = (dark + bright) / 2.0;
    let half = (bright - dark) / 2.0 * gain;
    let target = if gain < MOST_GAIN {
        127.5
    } else {
        middle.clamp(half, 255.0 - half)
    };
    std::array::from_fn(|i| {
        let value = (i as f32 - middle) * gain + target;
        value.round().clamp(0.0, 255.0) as u8
    })
}
