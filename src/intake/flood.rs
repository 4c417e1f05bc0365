//! Pouring over what hangs together and looks alike, line by line.

use image::RgbaImage;

use super::light::light;

/// A place in CIE 1976 L*a*b*, white being that of sRGB (D65).
fn lab(pixel: [u8; 4]) -> [f32; 3] {
    let table = light();
    let [r, g, b] = [pixel[0], pixel[1], pixel[2]].map(|c| table[usize::from(c)]);
    // IEC 61966-2-1; rows divided by the white they add up to.
    let x = (0.4124 * r + 0.3576 * g + 0.1805 * b) / 0.9505;
    let y = 0.2126 * r + 0.7152 * g + 0.0722 * b;
    let z = (0.0193 * r + 0.1192 * g + 0.9505 * b) / 1.089;
    let [fx, fy, fz] = [x, y, z].map(|t| {
        if t > 216.0 / 24389.0 {
            t.cbrt()
        } else {
            (t * 24389.0 / 27.0 + 16.0) / 116.0
        }
    });
    [116.0 * fy - 16.0, 500.0 * (fx - fy), 200.0 * (fy - fz)]
}

/// What is known of a pixel.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Known {
    Nothing,
    Alike,
    Other,
    Painted,
}

/// The pixels that look like the first, each compared only once.
struct Alike<'a> {
    pixels: &'a RgbaImage,
    first: [f32; 3],
    opaque: bool,
    square: f32,
    known: Vec<Known>,
}

impl Alike<'_> {
    /// Whether a pixel looks alike and is not painted yet.
    fn waits(&mut self, x: u32, y: u32) -> bool {
        let at = y as usize * self.pixels.width() as usize + x as usize;
        if self.known[at] == Known::Nothing {
            let pixel = self.pixels.get_pixel(x, y).0;
            let fits = (pixel[3] > 0) == self.opaque && (!self.opaque || self.is_near(pixel));
            self.known[at] = if fits { Known::Alike } else { Known::Other };
        }
        self.known[at] == Known::Alike
    }

    /// All to the left and right of a pixel without a gap.
    fn stretch(&mut self, x: u32, y: u32) -> std::ops::RangeInclusive<u32> {
        let (mut left, mut right) = (x, x);
        while left > 0 && self.waits(left - 1, y) {
            left -= 1;
        }
        while right + 1 < self.pixels.width() && self.waits(right + 1, y) {
            right += 1;
        }
        left..=right
    }

    fn is_near(&self, pixel: [u8; 4]) -> bool {
        let here = lab(pixel);
        let gap = |i: usize| (here[i] - self.first[i]).powi(2);
        gap(0) + gap(1) + gap(2) <= self.square
    }

    fn paint(&mut self, x: u32, y: u32) {
        let at = y as usize * self.pixels.width() as usize + x as usize;
        self.known[at] = Known::Painted;
    }
}

/// Calls `paint` once for each pixel that hangs together with the first, which must be inside.
pub fn pour(pixels: &RgbaImage, at: [u32; 2], tolerance: f32, mut paint: impl FnMut(u32, u32)) {
    let (width, height) = pixels.dimensions();
    let first = pixels.get_pixel(at[0], at[1]).0;
    let tolerance = if tolerance.is_finite() {
        tolerance.clamp(0.0, 400.0)
    } else {
        0.0
    };
    let mut alike = Alike {
        pixels,
        first: lab(first),
        opaque: first[3] > 0,
        square: tolerance * tolerance,
        known: vec![Known::Nothing; width as usize * height as usize],
    };
    // Each entry begins a stretch; it is filled both ways and leaves one entry for each stretch
    // above and below it.
    let mut open = vec![(at[0], at[1])];
    while let Some((x, y)) = open.pop() {
        if !alike.waits(x, y) {
            continue;
        }
        let stretch = alike.stretch(x, y);
        for x in stretch.clone() {
            alike.paint(x, y);
            paint(x, y);
        }
        let above = y.checked_sub(1);
        let below = Some(y + 1).filter(|y| *y < height);
        for y in above.into_iter().chain(below) {
            let mut before = false;
            for x in stretch.clone() {
                let now = alike.waits(x, y);
                if now && !before {
                    open.push((x, y));
                }
                before = now;
            }
        }
    }
}
