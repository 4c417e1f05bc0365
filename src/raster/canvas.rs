//! The pixels and the few ways of putting ink on them.

use image::RgbaImage;
use image::imageops::FilterType;
use resvg::tiny_skia::{
    self as skia, Color, FillRule, IntRect, LineCap, LineJoin, Mask, Paint, PathBuilder, Pixmap,
    PixmapPaint, StrokeDash, Transform,
};

use crate::units::colour::Rgb;
use crate::units::path::{Path, Seg};

/// Pixels, with colours multiplied by their opacity.
pub(super) struct Canvas {
    pixels: Pixmap,
}

/// How a line is drawn, in the plane of its path.
pub(super) struct Pen {
    pub(super) colour: Rgb,
    pub(super) width: f32,
    /// Flat ends instead of round ones.
    pub(super) butt: bool,
    /// Pointed joins instead of round ones.
    pub(super) mitre: bool,
    /// Drawn length and gap.
    pub(super) dash: Option<[f32; 2]>,
}

impl Canvas {
    /// Nothing but transparency; `None` for no pixels or more than can be counted.
    pub(super) fn new(width: u32, height: u32) -> Option<Self> {
        let pixels = Pixmap::new(width, height)?;
        Some(Self { pixels })
    }

    pub(super) fn fill_white(&mut self) {
        self.pixels.fill(Color::WHITE);
    }

    /// Fills a path given in pixels.
    pub(super) fn fill(&mut self, path: &Path<[f32; 2]>, colour: Rgb, even_odd: bool) {
        if let Some(path) = outline(path) {
            self.fill_outline(&path, colour, even_odd, Transform::identity());
        }
    }

    /// Draws a line along a path given in pixels.
    pub(super) fn stroke(&mut self, path: &Path<[f32; 2]>, pen: &Pen) {
        if let Some(path) = outline(path) {
            self.stroke_outline(&path, pen, Transform::identity());
        }
    }

    /// Fills an outline brought to its place in pixels by a transform.
    pub(super) fn fill_outline(
        &mut self,
        path: &skia::Path,
        colour: Rgb,
        even_odd: bool,
        to_px: Transform,
    ) {
        let rule = if even_odd {
            FillRule::EvenOdd
        } else {
            FillRule::Winding
        };
        self.pixels
            .fill_path(path, &paint(colour), rule, to_px, None);
    }

    /// Draws a line along an outline brought to its place in pixels by a transform.
    pub(super) fn stroke_outline(&mut self, path: &skia::Path, pen: &Pen, to_px: Transform) {
        if pen.width <= 0.0 {
            return;
        }
        let stroke = skia::Stroke {
            width: pen.width,
            line_cap: if pen.butt {
                LineCap::Butt
            } else {
                LineCap::Round
            },
            line_join: if pen.mitre {
                LineJoin::Miter
            } else {
                LineJoin::Round
            },
            dash: pen
                .dash
                .and_then(|[on, off]| StrokeDash::new(vec![on, off], 0.0)),
            ..skia::Stroke::default()
        };
        self.pixels
            .stroke_path(path, &paint(pen.colour), &stroke, to_px, None);
    }

    /// Paints through a window: `draw` gets a canvas and its transform to pixels, and only what
    /// lies inside `window` is kept.
    pub(super) fn through(
        &mut self,
        window: &skia::Path,
        to_px: Transform,
        draw: impl FnOnce(&mut Self, Transform),
    ) {
        let bounds = window.clone().transform(to_px).map(|w| w.bounds());
        let all = IntRect::from_xywh(0, 0, self.pixels.width(), self.pixels.height());
        let seen = bounds
            .and_then(|b| b.round_out())
            .zip(all)
            .and_then(|(b, all)| b.intersect(&all));
        let Some(seen) = seen else { return };
        let layer = Self::new(seen.width(), seen.height());
        let mask = Mask::new(seen.width(), seen.height());
        let Some((mut layer, mut mask)) = layer.zip(mask) else {
            return;
        };
        let to_px = to_px.post_translate(-seen.x() as f32, -seen.y() as f32);
        draw(&mut layer, to_px);
        mask.fill_path(window, FillRule::Winding, true, to_px);
        layer.pixels.apply_mask(&mask);
        self.pixels.draw_pixmap(
            seen.x(),
            seen.y(),
            layer.pixels.as_ref(),
            &PixmapPaint::default(),
            Transform::identity(),
            None,
        );
    }

    /// Puts pixels into an upright rectangle of the plane that a transform brings to its place.
    pub(super) fn pixels(&mut self, image: &RgbaImage, at: [f32; 4], to_px: Transform) {
        let [x, y, w, h] = at;
        let Some(place) = skia::Rect::from_xywh(x, y, w, h).and_then(|r| r.transform(to_px)) else {
            return;
        };
        let side = |length: f32| (length.round() as u32).clamp(1, LARGEST_SIDE);
        let (across, down) = (side(place.width()), side(place.height()));
        // Each pixel of the canvas from all that fall into it; the painter alone would leave most out.
        let fitted = image::imageops::resize(image, across, down, FilterType::CatmullRom);
        let Some(pixmap) = premultiplied(&fitted) else {
            return;
        };
        self.pixels.draw_pixmap(
            place.x().round() as i32,
            place.y().round() as i32,
            pixmap.as_ref(),
            &PixmapPaint::default(),
            Transform::identity(),
            None,
        );
    }

    /// The pixels as a picture with plain colours.
    pub(super) fn into_image(self) -> Option<RgbaImage> {
        let (width, height) = (self.pixels.width(), self.pixels.height());
        RgbaImage::from_raw(width, height, self.pixels.take_demultiplied())
    }
}

/// Largest side of pixels that are put on a canvas.
const LARGEST_SIDE: u32 = 8_192;

fn premultiplied(image: &RgbaImage) -> Option<Pixmap> {
    let mut pixmap = Pixmap::new(image.width(), image.height())?;
    for (to, from) in pixmap.pixels_mut().iter_mut().zip(image.pixels()) {
        let [r, g, b, a] = from.0;
        *to = skia::ColorU8::from_rgba(r, g, b, a).premultiply();
    }
    Some(pixmap)
}

fn paint(colour: Rgb) -> Paint<'static> {
    let mut paint = Paint::default();
    paint.set_color_rgba8(colour.0, colour.1, colour.2, 255);
    paint
}

/// A path as the painter takes it; `None` if it has no stretch or a place that is no number.
pub(super) fn outline(path: &Path<[f32; 2]>) -> Option<skia::Path> {
    let mut b = PathBuilder::with_capacity(path.segs.len(), path.segs.len() * 2);
    for seg in &path.segs {
        match *seg {
            Seg::Move([x, y]) => b.move_to(x, y),
            Seg::Line([x, y]) => b.line_to(x, y),
            Seg::Cubic([ax, ay], [bx, by], [x, y]) => b.cubic_to(ax, ay, bx, by, x, y),
            Seg::Close => b.close(),
        }
    }
    b.finish()
}
