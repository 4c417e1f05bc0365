//! What of a photograph is kept: painted with a brush, or poured over what looks alike.

use super::flood;
use super::photo::Photo;

/// One mark for each pixel of a photograph at its working size: kept or left out.
#[derive(Clone, PartialEq, Eq)]
pub struct Mask {
    width: u32,
    height: u32,
    kept: Vec<bool>,
}

impl std::fmt::Debug for Mask {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "Mask({} by {})", self.width, self.height)
    }
}

impl Mask {
    /// Keeps all of a photograph.
    pub fn new(photo: &Photo) -> Self {
        let [width, height] = photo.size();
        Self {
            width,
            height,
            kept: vec![true; width as usize * height as usize],
        }
    }

    /// Width and height in pixels, those of its photograph.
    pub fn size(&self) -> [u32; 2] {
        [self.width, self.height]
    }

    /// Whether a pixel is kept; none is outside.
    pub fn keeps(&self, x: u32, y: u32) -> bool {
        x < self.width && y < self.height && self.kept[self.at(x, y)]
    }

    /// The share of pixels that are kept, 0 to 1.
    pub fn share_kept(&self) -> f32 {
        let kept = self.kept.iter().filter(|k| **k).count();
        kept as f32 / self.kept.len().max(1) as f32
    }

    /// A stroke of a round brush from one point to another, in pixels: keeps what it touches, or
    /// leaves it out.
    pub fn brush(&mut self, from: [f32; 2], to: [f32; 2], radius: f32, keep: bool) {
        let whole = [from[0], from[1], to[0], to[1], radius];
        if !whole.iter().all(|v| v.is_finite()) || radius <= 0.0 {
            return;
        }
        let span = |i: usize, side: u32| {
            let low = (from[i].min(to[i]) - radius)
                .floor()
                .clamp(0.0, side as f32);
            let high = (from[i].max(to[i]) + radius).ceil().clamp(0.0, side as f32);
            low as u32..high as u32
        };
        for y in span(1, self.height) {
            for x in span(0, self.width) {
                if touches(from, to, [x as f32 + 0.5, y as f32 + 0.5], radius) {
                    let at = self.at(x, y);
                    self.kept[at] = keep;
                }
            }
        }
    }

    /// Keeps, or leaves out, what hangs together with one pixel and looks like it: neighbours above,
    /// below and beside whose colour is within a distance of its own in CIE 1976 L*a*b* (2.3 is
    /// about the least a person sees, 10 to 30 is usual for a wall or a sky).
    pub fn flood(&mut self, photo: &Photo, at: [u32; 2], tolerance: f32, keep: bool) {
        if photo.size() != self.size() || at[0] >= self.width || at[1] >= self.height {
            return;
        }
        flood::pour(photo.pixels(), at, tolerance, |x, y| {
            self.kept[y as usize * self.width as usize + x as usize] = keep;
        });
    }

    /// Keeps what was left out and the other way round.
    pub fn invert(&mut self) {
        for kept in &mut self.kept {
            *kept = !*kept;
        }
    }

    /// Keeps everything again.
    pub fn clear(&mut self) {
        self.kept.fill(true);
    }

    /// One bit a pixel, rows one after another without gaps, highest bit first: for a file.
    pub fn to_bits(&self) -> Vec<u8> {
        let byte = |bits: &[bool]| {
            let bits = bits.iter().enumerate();
            bits.fold(0, |byte, (i, kept)| byte | u8::from(*kept) << (7 - i))
        };
        self.kept.chunks(8).map(byte).collect()
    }

    /// From what [`Mask::to_bits`] gives; none if there are too few bits or the size is none that a
    /// photograph has.
    pub fn from_bits(width: u32, height: u32, bits: &[u8]) -> Option<Self> {
        let fits = |side| (1..=super::WORKING_PX).contains(&side);
        let count = width as usize * height as usize;
        if !fits(width) || !fits(height) || bits.len() != count.div_ceil(8) {
            return None;
        }
        let kept = (0..count).map(|i| bits[i / 8] >> (7 - i % 8) & 1 == 1);
        Some(Self {
            width,
            height,
            kept: kept.collect(),
        })
    }

    /// How much a point is kept, 0 to 1: even between the middles of four pixels.
    pub(super) fn between(&self, [x, y]: [f32; 2]) -> f32 {
        let (x, y) = (x - 0.5, y - 0.5);
        let (left, top) = (x.floor(), y.floor());
        let (fx, fy) = (x - left, y - top);
        let one = |dx: f32, dy: f32| {
            let inside = |v: f32, side: u32| v.clamp(0.0, side as f32 - 1.0) as u32;
            let at = self.at(inside(left + dx, self.width), inside(top + dy, self.height));
            f32::from(u8::from(self.kept[at]))
        };
        let above = one(0.0, 0.0) * (1.0 - fx) + one(1.0, 0.0) * fx;
        let below = one(0.0, 1.0) * (1.0 - fx) + one(1.0, 1.0) * fx;
        above * (1.0 - fy) + below * fy
    }

    fn at(&self, x: u32, y: u32) -> usize {
        y as usize * self.width as usize + x as usize
    }
}

/// Whether a point lies within a distance of the line between two points.
fn touches(from: [f32; 2], to: [f32; 2], point: [f32; 2], distance: f32) -> bool {
    let (dx, dy) = (to[0] - from[0], to[1] - from[1]);
    let (px, py) = (point[0] - from[0], point[1] - from[1]);
    let length = dx * dx + dy * dy;
    let along = if length > 0.0 {
        ((px * dx + py * dy) / length).clamp(0.0, 1.0)
    } else {
        0.0
    };
    let (ox, oy) = (px - along * dx, py - along * dy);
    ox * ox + oy * oy <= distance * distance
}
