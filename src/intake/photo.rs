//! A photograph: upright pixels of sRGB, no larger than needed, and what is made of them.

use std::sync::Arc;

use image::metadata::Orientation;
use image::{DynamicImage, RgbaImage};

use super::area::{Area, fitted};
use super::colour::ToSrgb;
use super::light::{light, number};
use super::mask::Mask;
use super::place::Place;
use super::recipe::Recipe;
use super::refusal::Why;
use super::rows::Opened;
use super::{WORKING_PX, finish, jpeg};

/// A photograph that was taken. Cheap to clone.
#[derive(Clone)]
pub struct Photo {
    pixels: Arc<RgbaImage>,
    /// The file as it came, without anything but the picture, where that could stay as it is.
    untouched: Option<Arc<[u8]>>,
    opaque: bool,
    /// What was changed or left out, a sentence each.
    pub notes: Vec<String>,
}

impl std::fmt::Debug for Photo {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        let [w, h] = self.size();
        write!(f, "Photo({w} by {h}, {:?})", self.notes)
    }
}

/// How a finished picture is stored.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Kind {
    /// Opaque.
    Jpeg,
    /// With transparent parts.
    Png,
}

/// A file made of a photograph.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Finished {
    /// How it is stored.
    pub kind: Kind,
    /// Pixels across.
    pub width: u32,
    /// Pixels down.
    pub height: u32,
    /// The file.
    pub bytes: Vec<u8>,
}

/// Decodes what was looked at.
///
/// # Errors
/// If it is damaged or breaks off.
pub(super) fn taken(opened: Opened) -> Result<Photo, Why> {
    let header = opened.header;
    let (to_srgb, note) = ToSrgb::new(header.samples, &header.meaning);
    let [width, height] = [header.width as usize, header.height as usize];
    let size = fitted(header.width, header.height, WORKING_PX);
    let shrinks = size != [header.width, header.height];
    let mut pixels = Vec::with_capacity(size[0] as usize * size[1] as usize * 4);
    let mut area = Area::new([width, height], size.map(|v| v as usize));
    let mut row = vec![0; width * 4];
    (opened.decode)(&mut |samples| {
        to_srgb.row(samples, &mut row);
        if shrinks {
            area.push(row.chunks_exact(4).map(in_light), |done| {
                pixels.extend(done.iter().flat_map(in_numbers));
            });
        } else {
            pixels.extend_from_slice(&row);
        }
    })?;
    let pixels = RgbaImage::from_raw(size[0], size[1], pixels).ok_or_else(Why::cut_off)?;
    let mut notes = header.notes;
    notes.extend(note);
    if shrinks {
        notes.push(format!(
            "It was made smaller, from {} by {} pixels to {} by {}.",
            header.width, header.height, size[0], size[1]
        ));
    }
    Ok(Photo::new(upright(pixels, header.orientation), notes))
}

/// Decodes a JPEG and keeps its own bytes where they are upright sRGB of a fitting size.
///
/// # Errors
/// If it is damaged, cut off or beyond the bounds.
pub(super) fn taken_jpeg(bytes: &[u8]) -> Result<Photo, Why> {
    let looked = jpeg::look(bytes)?;
    let mut photo = taken(looked.opened())?;
    let header = &looked.header;
    let fits = header.width.max(header.height) <= WORKING_PX;
    let (to_srgb, _) = ToSrgb::new(header.samples, &header.meaning);
    if fits && looked.is_plain() && to_srgb.is_srgb() {
        photo.untouched = Some(looked.clean.into());
    }
    Ok(photo)
}

/// Light times opacity, and opacity.
fn in_light(pixel: &[u8]) -> [f32; 4] {
    let table = light();
    let alpha = f32::from(pixel[3]) / 255.0;
    let one = |i: usize| table[usize::from(pixel[i])] * alpha;
    [one(0), one(1), one(2), alpha]
}

/// Back to numbers; what is quite transparent has no colour left.
fn in_numbers(pixel: &[f32; 4]) -> [u8; 4] {
    let alpha = (pixel[3] * 255.0).round().clamp(0.0, 255.0) as u8;
    if alpha == 0 {
        return [0; 4];
    }
    let [r, g, b] = [0, 1, 2].map(|i| number(pixel[i] / pixel[3]));
    [r, g, b, alpha]
}

fn upright(pixels: RgbaImage, orientation: Orientation) -> RgbaImage {
    if orientation == Orientation::NoTransforms {
        return pixels;
    }
    let mut image = DynamicImage::ImageRgba8(pixels);
    image.apply_orientation(orientation);
    image.into_rgba8()
}

impl Photo {
    fn new(pixels: RgbaImage, notes: Vec<String>) -> Self {
        Self {
            opaque: pixels.pixels().all(|p| p.0[3] == 255),
            pixels: Arc::new(pixels),
            untouched: None,
            notes,
        }
    }

    /// A photograph from upright pixels of sRGB; shrunk if they are more than are kept.
    pub fn from_pixels(pixels: RgbaImage, notes: Vec<String>) -> Self {
        let photo = Self::new(pixels, notes);
        let [w, h] = photo.size();
        if w.max(h) <= WORKING_PX {
            return photo;
        }
        let small = photo.preview(&Recipe::default(), WORKING_PX);
        Self::new(small, photo.notes)
    }

    /// Width and height in pixels, upright.
    pub fn size(&self) -> [u32; 2] {
        [self.pixels.width(), self.pixels.height()]
    }

    /// The pixels, upright sRGB, opacity not multiplied in.
    pub fn pixels(&self) -> &RgbaImage {
        &self.pixels
    }

    /// Whether no pixel is transparent.
    pub fn is_opaque(&self) -> bool {
        self.opaque
    }

    /// What is kept of the photograph in a file, whole and unchanged: taken again it gives the same
    /// picture. The bytes as they came where they hold nothing but the picture and fit.
    pub fn kept(&self) -> Finished {
        self.develop(&Recipe::default(), WORKING_PX)
    }

    /// The picture of a recipe as a file whose longest side is at most so many pixels (at least 1);
    /// never larger than the photograph has. The same input gives the same bytes.
    pub fn develop(&self, recipe: &Recipe, longest_px: u32) -> Finished {
        let [width, height] = self.size();
        if let Some(bytes) = &self.untouched
            && recipe.changes_nothing()
            && width.max(height) <= longest_px
        {
            return Finished {
                kind: Kind::Jpeg,
                width,
                height,
                bytes: bytes.to_vec(),
            };
        }
        finish::encode(&self.preview(recipe, longest_px))
    }

    /// The same as pixels, for a screen.
    pub fn preview(&self, recipe: &Recipe, longest_px: u32) -> RgbaImage {
        let place = Place::new(self.size(), recipe);
        let [w, h] = place.size;
        let [to_w, to_h] = fitted(w as u32, h as u32, longest_px);
        let mask = recipe.mask.as_deref().filter(|m| m.size() == self.size());
        let tones = recipe.tones();
        let finished = |c: &[f32; 5]| finish::pixel(c, &tones, recipe.ground);
        let mut pixels = Vec::with_capacity(to_w as usize * to_h as usize * 4);
        let mut masked = Vec::new();
        let mut area = Area::new(place.size, [to_w as usize, to_h as usize]);
        for y in 0..h {
            let row = (0..w).map(|x| self.sample(&place, mask, x, y));
            area.push(row, |done| match mask {
                Some(_) => masked.extend_from_slice(done),
                None => pixels.extend(done.iter().flat_map(finished)),
            });
        }
        finish::soften(&mut masked, to_w as usize);
        pixels.extend(masked.iter().flat_map(finished));
        RgbaImage::from_raw(to_w, to_h, pixels).unwrap_or_default()
    }

    /// Light times opacity, opacity, and how much the mask keeps.
    fn sample(&self, place: &Place, mask: Option<&Mask>, x: usize, y: usize) -> [f32; 5] {
        let at = place.source(x, y);
        let [r, g, b, alpha] = if place.is_exact() {
            self.pixel(at[0].floor() as i64, at[1].floor() as i64)
        } else {
            self.between(at)
        };
        [r, g, b, alpha, mask.map_or(1.0, |m| m.between(at))]
    }

    fn pixel(&self, x: i64, y: i64) -> [f32; 4] {
        match (u32::try_from(x), u32::try_from(y)) {
            (Ok(x), Ok(y)) if x < self.pixels.width() && y < self.pixels.height() => {
                in_light(&self.pixels.get_pixel(x, y).0)
            }
            _ => [0.0; 4],
        }
    }

    /// Even between the middles of four pixels; along the edges what lies there goes on, and within
    /// one pixel beyond them the picture ends softly.
    fn between(&self, [x, y]: [f32; 2]) -> [f32; 4] {
        let [w, h] = self.size().map(|v| v as f32);
        let beyond = |v: f32, side: f32| (-v).max(v - side).max(0.0);
        // A frame that touches the edges may stand over by a fraction of a pixel and is still full.
        let kept = (1.25 - beyond(x, w) - beyond(y, h)).clamp(0.0, 1.0);
        if kept == 0.0 {
            return [0.0; 4];
        }
        let (x, y) = (x - 0.5, y - 0.5);
        let (fx, fy) = (x - x.floor(), y - y.floor());
        let at = |dx: f32, dy: f32| {
            let inside = |v: f32, side: f32| v.floor().clamp(0.0, side - 1.0) as i64;
            self.pixel(inside(x + dx, w), inside(y + dy, h))
        };
        let corners = [
            (at(0.0, 0.0), (1.0 - fx) * (1.0 - fy) * kept),
            (at(1.0, 0.0), fx * (1.0 - fy) * kept),
            (at(0.0, 1.0), (1.0 - fx) * fy * kept),
            (at(1.0, 1.0), fx * fy * kept),
        ];
        std::array::from_fn(|i| corners.iter().map(|(v, share)| v[i] * share).sum())
    }
}
