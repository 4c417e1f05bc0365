//! Where each pixel of a frame comes from: turned, straightened, cut.

use super::recipe::{Frame, Recipe};

/// A frame on a picture, in pixels.
pub struct Place {
    /// Size of the frame.
    pub size: [usize; 2],
    turned: [f32; 2],
    centre: [f32; 2],
    sin_cos: [f32; 2],
    turns: u8,
}

impl Place {
    /// The frame that a recipe lays on a picture of a size.
    pub fn new(picture: [u32; 2], recipe: &Recipe) -> Self {
        let turns = recipe.turns();
        let [w, h] = picture.map(|v| v as f32);
        let turned = if turns % 2 == 1 { [h, w] } else { [w, h] };
        let radians = recipe.degrees().to_radians();
        let sides = match &recipe.frame {
            Some(frame) => sides(frame, turned),
            None => largest_upright(turned, radians.abs()).map(f32::floor),
        };
        let size = [0, 1].map(|i| sides[i].round().clamp(1.0, 2.0 * turned[i].max(1.0)));
        let middle = recipe.frame.map_or([0.5, 0.5], |f| f.centre);
        let mut centre = [0, 1].map(|i| {
            let share = if middle[i].is_finite() {
                middle[i]
            } else {
                0.5
            };
            share.clamp(0.0, 1.0) * turned[i]
        });
        if radians == 0.0 {
            // Pixel on pixel, so that nothing blurs.
            centre = [0, 1].map(|i| (centre[i] - size[i] / 2.0).round() + size[i] / 2.0);
        }
        Self {
            size: size.map(|v| v as usize),
            turned,
            centre,
            sin_cos: if radians == 0.0 {
                [0.0, 1.0]
            } else {
                [radians.sin(), radians.cos()]
            },
            turns,
        }
    }

    /// Whether pixels of the frame are pixels of the picture.
    pub fn is_exact(&self) -> bool {
        self.sin_cos[0] == 0.0
    }

    /// The point of the picture under the middle of a pixel of the frame.
    pub fn source(&self, x: usize, y: usize) -> [f32; 2] {
        let dx = x as f32 + 0.5 - self.size[0] as f32 / 2.0;
        let dy = y as f32 + 0.5 - self.size[1] as f32 / 2.0;
        let [sin, cos] = self.sin_cos;
        let tx = self.centre[0] + dx * cos + dy * sin;
        let ty = self.centre[1] - dx * sin + dy * cos;
        let [w, h] = self.turned;
        match self.turns {
            1 => [ty, w - tx],
            2 => [w - tx, h - ty],
            3 => [h - ty, tx],
            _ => [tx, ty],
        }
    }
}

/// Width and height of a frame in pixels of the turned picture.
fn sides(frame: &Frame, turned: [f32; 2]) -> [f32; 2] {
    let share = |v: f32| {
        if v.is_finite() {
            v.clamp(0.0, 2.0)
        } else {
            1.0
        }
    };
    let width = share(frame.width) * turned[0];
    let height = match (frame.shape.ratio(), frame.shape) {
        (Some(ratio), _) => width / ratio,
        (None, super::recipe::Shape::Free { height }) => share(height) * turned[1],
        (None, _) => width,
    };
    [width, height]
}

/// The largest frame of the picture's own proportions that a turn leaves filled to its corners.
fn largest_upright([w, h]: [f32; 2], angle: f32) -> [f32; 2] {
    if angle == 0.0 {
        return [w, h];
    }
    let (sin, cos) = angle.sin_cos();
    let scale = (w / (w * cos + h * sin)).min(h / (w * sin + h * cos));
    [w * scale, h * scale]
}
