//! What was cut out of a photograph so far: strokes and pours in shares of it, so that they can be
//! taken back one by one and done again on all of its pixels.

use std::sync::Arc;

use crate::intake::{Mask, Photo};

/// One thing done to the mask. Points and lengths are shares of the width of the photograph.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Touch {
    /// A stroke of the brush.
    Brush {
        /// From here.
        from: [f32; 2],
        /// To here.
        to: [f32; 2],
        /// How wide on each side.
        radius: f32,
        /// Whether it brings back.
        keep: bool,
    },
    /// What looks like this place goes.
    Pour {
        /// The place.
        at: [f32; 2],
        /// How alike it has to look (distance in CIE L*a*b*).
        tolerance: f32,
    },
}

/// All that was done, a list for each press of the pointer.
#[derive(Clone, Debug)]
pub struct Cut {
    strokes: Vec<Vec<Touch>>,
    /// Grows with each change.
    pub changes: u64,
    /// Half the width of the brush, as a share of the width of the photograph.
    pub radius: f32,
    /// How alike what is poured over has to look.
    pub tolerance: f32,
    /// What a press does.
    pub tool: Tool,
    /// The mask of the small photograph, after so many changes.
    small: Option<(u64, Option<Arc<Mask>>)>,
}

/// What a press on the photograph does.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Tool {
    /// Takes away what looks like the place.
    #[default]
    Pour,
    /// Takes away what the brush touches.
    Away,
    /// Brings back what the brush touches.
    Back,
}

impl Default for Cut {
    fn default() -> Self {
        Self {
            strokes: Vec::new(),
            changes: 0,
            radius: 0.03,
            tolerance: 18.0,
            tool: Tool::default(),
            small: None,
        }
    }
}

impl Cut {
    /// Whether nothing was cut out.
    pub const fn is_empty(&self) -> bool {
        self.strokes.is_empty()
    }

    /// Begins a press.
    pub fn begin(&mut self, touch: Touch) {
        self.strokes.push(vec![touch]);
        self.changes += 1;
    }

    /// Goes on with the press.
    pub fn go_on(&mut self, touch: Touch) {
        if let Some(stroke) = self.strokes.last_mut() {
            stroke.push(touch);
            self.changes += 1;
        }
    }

    /// Takes the last press back.
    pub fn take_back(&mut self) {
        if self.strokes.pop().is_some() {
            self.changes += 1;
        }
    }

    /// Takes everything back.
    pub fn clear(&mut self) {
        self.strokes.clear();
        self.changes += 1;
    }

    /// The mask for a photograph; none while all of it is kept.
    pub fn mask(&self, photo: &Photo) -> Option<Arc<Mask>> {
        if let Some((changes, mask)) = &self.small
            && *changes == self.changes
            && mask.as_ref().is_none_or(|m| m.size() == photo.size())
            && (mask.is_some() || self.is_empty())
        {
            return mask.clone();
        }
        let mut mask = (!self.is_empty()).then(|| Mask::new(photo))?;
        for touch in self.strokes.iter().flatten() {
            put(&mut mask, photo, *touch);
        }
        Some(Arc::new(mask))
    }

    /// Keeps the mask of the photograph that is worked on, for as long as nothing changes.
    pub fn remember(&mut self, photo: &Photo) {
        let fresh = self.small.as_ref().is_some_and(|(c, _)| *c == self.changes);
        if !fresh {
            self.small = Some((self.changes, self.mask(photo)));
        }
    }
}

fn put(mask: &mut Mask, photo: &Photo, touch: Touch) {
    let [w, h] = photo.size().map(|v| v as f32);
    let px = |p: [f32; 2]| [p[0] * w, p[1] * w];
    match touch {
        Touch::Brush {
            from,
            to,
            radius,
            keep,
        } => mask.brush(px(from), px(to), radius * w, keep),
        Touch::Pour { at, tolerance } => {
            let [x, y] = px(at);
            if x >= 0.0 && y >= 0.0 && x < w && y < h {
                mask.flood(photo, [x as u32, y as u32], tolerance, false);
            }
        }
    }
}
