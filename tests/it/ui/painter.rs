//! Paints what the window tessellated into a picture, without a graphics card: triangles filled
//! with bilinear texture samples and blended with premultiplied alpha, as the toolkit's own
//! painters do.

use std::collections::BTreeMap;

use egui::epaint::{ImageData, ImageDelta, Primitive, Vertex};
use egui::{Color32, Context, FullOutput, Pos2, Rect, TextureId, TexturesDelta};
use image::{Rgba, RgbaImage};

/// A painter with the textures it was given.
#[derive(Default)]
pub struct Painter {
    textures: BTreeMap<u64, Texture>,
}

struct Texture {
    width: usize,
    height: usize,
    pixels: Vec<Color32>,
}

fn key(id: TextureId) -> u64 {
    match id {
        TextureId::Managed(n) => n * 2,
        TextureId::User(n) => n * 2 + 1,
    }
}

impl Texture {
    fn change(&mut self, delta: &ImageDelta) {
        let ImageData::Color(image) = &delta.image;
        let [x0, y0] = delta.pos.unwrap_or([0, 0]);
        for y in 0..image.height() {
            for x in 0..image.width() {
                self.pixels[(y0 + y) * self.width + x0 + x] = image[(x, y)];
            }
        }
    }

    fn at(&self, x: i64, y: i64) -> [f32; 4] {
        let x = x.clamp(0, self.width as i64 - 1) as usize;
        let y = y.clamp(0, self.height as i64 - 1) as usize;
        self.pixels[y * self.width + x].to_array().map(f32::from)
    }

    fn sample(&self, uv: Pos2) -> [f32; 4] {
        let (x, y) = (
            uv.x * self.width as f32 - 0.5,
            uv.y * self.height as f32 - 0.5,
        );
        let (fx, fy) = (x - x.floor(), y - y.floor());
        let (x, y) = (x.floor() as i64, y.floor() as i64);
        let row = |y| mix(self.at(x, y), self.at(x + 1, y), fx);
        mix(row(y), row(y + 1), fy)
    }
}

fn mix(a: [f32; 4], b: [f32; 4], t: f32) -> [f32; 4] {
    std::array::from_fn(|i| a[i] + (b[i] - a[i]) * t)
}

/// Fills one triangle.
fn triangle(image: &mut RgbaImage, clip: Rect, v: [&Vertex; 3], scale: f32, texture: &Texture) {
    let p = v.map(|v| v.pos * scale);
    let area = (p[1] - p[0]).rot90().dot(p[2] - p[0]);
    if area == 0.0 {
        return;
    }
    let bounds = Rect::from_points(&p).intersect(clip);
    let (x0, y0) = (
        bounds.left().floor().max(0.0) as u32,
        bounds.top().floor().max(0.0) as u32,
    );
    let x1 = (bounds.right().ceil().max(0.0) as u32).min(image.width());
    let y1 = (bounds.bottom().ceil().max(0.0) as u32).min(image.height());
    for y in y0..y1 {
        for x in x0..x1 {
            let at = Pos2::new(x as f32 + 0.5, y as f32 + 0.5);
            let part = |a: Pos2, b: Pos2| (b - a).rot90().dot(at - a) / area;
            let w = [part(p[1], p[2]), part(p[2], p[0]), part(p[0], p[1])];
            // The top-left rule in short: a point on a shared edge belongs to one side only.
            let inside = |w: f32, a: Pos2, b: Pos2| {
                w > 0.0
                    || (w == 0.0
                        && ((b.y - a.y) * area.signum() > 0.0
                            || (b.y == a.y && (a.x - b.x) * area.signum() > 0.0)))
            };
            let on =
                inside(w[0], p[1], p[2]) && inside(w[1], p[2], p[0]) && inside(w[2], p[0], p[1]);
            if on && clip.contains(at) {
                let uv = v
                    .iter()
                    .zip(w)
                    .fold(Pos2::ZERO, |s, (v, w)| s + v.uv.to_vec2() * w);
                let tint: [f32; 4] = std::array::from_fn(|i| {
                    (0..3)
                        .map(|k| f32::from(v[k].color.to_array()[i]) * w[k])
                        .sum()
                });
                blend(image.get_pixel_mut(x, y), texture.sample(uv), tint);
            }
        }
    }
}

fn blend(onto: &mut Rgba<u8>, sample: [f32; 4], tint: [f32; 4]) {
    let colour: [f32; 4] = std::array::from_fn(|i| sample[i] * tint[i] / 255.0);
    let rest = 1.0 - colour[3] / 255.0;
    for (onto, colour) in onto.0.iter_mut().zip(colour) {
        let sum = colour + f32::from(*onto) * rest;
        *onto = sum.round().clamp(0.0, 255.0) as u8;
    }
}

impl egui_kittest::TestRenderer for Painter {
    fn handle_delta(&mut self, delta: &mut TexturesDelta) {
        for (id, changes) in delta.set.drain() {
            for change in &changes {
                let [width, height] = change.image.size();
                if change.pos.is_none() {
                    let pixels = vec![Color32::TRANSPARENT; width * height];
                    self.textures.insert(
                        key(id),
                        Texture {
                            width,
                            height,
                            pixels,
                        },
                    );
                }
                if let Some(texture) = self.textures.get_mut(&key(id)) {
                    texture.change(change);
                }
            }
        }
        for id in delta.free.drain() {
            self.textures.remove(&key(id));
        }
    }

    fn render(&mut self, ctx: &Context, output: &FullOutput) -> Result<RgbaImage, String> {
        let scale = output.pixels_per_point;
        let size = (ctx.content_rect().size() * scale).round();
        let mut image = RgbaImage::from_pixel(size.x as u32, size.y as u32, Rgba([0, 0, 0, 255]));
        for shape in ctx.tessellate(output.shapes.clone(), scale) {
            let clip = shape.clip_rect * scale;
            let clip = Rect::from_min_max(clip.min.round(), clip.max.round());
            let Primitive::Mesh(mesh) = &shape.primitive else {
                continue;
            };
            let Some(texture) = self.textures.get(&key(mesh.texture_id)) else {
                return Err(format!("no texture {:?}", mesh.texture_id));
            };
            for t in mesh.indices.chunks_exact(3) {
                let v = [t[0], t[1], t[2]].map(|i| &mesh.vertices[i as usize]);
                triangle(&mut image, clip, v, scale, texture);
            }
        }
        Ok(image)
    }
}
