//! Pictures of symbols as textures: made when first seen, at the very pixels they take, and let go
//! when there are too many.

use std::collections::{BTreeSet, HashMap};
use std::sync::Arc;

use egui::{ColorImage, Context, Painter, Rect, TextureHandle, TextureOptions, Vec2, pos2};
use image::RgbaImage;

use crate::model::club::Club;
use crate::model::ids::{ParticipantId, SymbolId};
use crate::model::people::{Figure, Participant};
use crate::model::picture::Picture;
use crate::raster;
use crate::symbols::art::Art;
use crate::symbols::library::library;
use crate::symbols::own;
use crate::symbols::variant::{Ink, Variant};

/// Bytes of textures kept at most.
const CAP: usize = 64 * 1024 * 1024;
/// Largest side of a texture, in pixels.
const LARGEST: u32 = 1024;

/// Symbol, variant, side in physical pixels.
type Key = (SymbolId, &'static str, u32);

/// With whose eyes a picture is seen: how people on it are drawn, and which own pictures stand in
/// the place of symbols.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Eyes {
    /// How the main person is drawn.
    pub figure: Figure,
    /// Whose pictures they are; nobody's are the group's.
    pub who: Option<ParticipantId>,
}

impl Eyes {
    /// Those of a participant.
    pub fn of(person: &Participant) -> Self {
        Self {
            figure: person.figure,
            who: Some(person.id),
        }
    }
}

impl From<Figure> for Eyes {
    fn from(figure: Figure) -> Self {
        Self { figure, who: None }
    }
}

/// The club's own pictures, by the names and for the eyes that see them.
#[derive(Default)]
struct Gallery {
    own: HashMap<SymbolId, Arc<Picture>>,
    seen: HashMap<(ParticipantId, SymbolId), SymbolId>,
}

impl Gallery {
    fn of(club: &Club) -> Self {
        let own = club.pictures.iter().map(|p| (p.symbol(), Arc::clone(p)));
        let stood_for: BTreeSet<&SymbolId> = club
            .pictures
            .iter()
            .filter_map(|p| p.stands_for.as_ref())
            .collect();
        let mut seen = HashMap::new();
        for person in &club.participants {
            for symbol in &stood_for {
                let sees = club.seen_by(person, symbol);
                seen.insert((person.id, (*symbol).clone()), sees);
            }
        }
        Self {
            own: own.collect(),
            seen,
        }
    }
}

/// Textures of the symbols seen lately.
#[derive(Default)]
pub struct Pictures {
    gallery: Gallery,
    revision: Option<u64>,
    kept: HashMap<Key, Kept>,
    bytes: usize,
    tick: u64,
    scale: f32,
    sketches: HashMap<&'static str, Sketched>,
}

/// A drawing being made, as it was when last painted in one place.
struct Sketched {
    texture: TextureHandle,
    revision: u64,
    px: u32,
}

struct Kept {
    texture: TextureHandle,
    used: u64,
}

impl Pictures {
    /// Takes over the club's own pictures when the club is another than before.
    pub fn look_at(&mut self, club: &Club, revision: u64) {
        if self.revision != Some(revision) {
            self.revision = Some(revision);
            self.gallery = Gallery::of(club);
        }
    }

    /// Paints a symbol into the middle square of a rectangle, as someone sees it.
    pub fn symbol(&mut self, p: &Painter, rect: Rect, id: &SymbolId, eyes: Eyes) {
        let sees = |who| self.gallery.seen.get(&(who, id.clone()));
        let seen = eyes.who.and_then(sees).unwrap_or(id);
        let variant = Variant::new(eyes.figure, Ink::Colour);
        let drawn = match self.gallery.own.get(seen) {
            Some(picture) => own::of_picture(picture, variant),
            None => library().art(seen, variant),
        };
        self.paint(p, rect, drawn);
    }

    /// Paints a participant's mark into the middle square of a rectangle.
    pub fn mark(&mut self, p: &Painter, rect: Rect, id: &SymbolId) {
        let drawn = library().mark_art(id);
        self.paint(p, rect, drawn);
    }

    /// Paints a drawing being made into the middle square of a rectangle. There is one picture for
    /// each place, made anew when the revision or the size is another.
    pub fn sketch(
        &mut self,
        p: &Painter,
        rect: Rect,
        place: &'static str,
        revision: u64,
        art: impl FnOnce() -> Art,
    ) {
        let scale = p.pixels_per_point();
        let side = rect.width().min(rect.height());
        let px = ((side * scale).round() as u32).clamp(1, 2 * LARGEST);
        let known = self.sketches.get(place);
        if known.is_none_or(|s| (s.revision, s.px) != (revision, px)) {
            let image = raster::paint_art(&art(), px);
            let texture = texture(p.ctx(), place.to_owned(), &image);
            let now = Sketched {
                texture,
                revision,
                px,
            };
            self.sketches.insert(place, now);
        }
        if let Some(sketched) = self.sketches.get(place) {
            stick(p, rect, px, &sketched.texture);
        }
    }

    /// Lets the pictures of a drawing being made go.
    pub fn forget_sketches(&mut self) {
        self.sketches.clear();
    }

    fn paint(&mut self, p: &Painter, rect: Rect, drawn: crate::symbols::library::Drawn) {
        let scale = p.pixels_per_point();
        self.on_scale(scale);
        let side = rect.width().min(rect.height());
        let px = ((side * scale).round() as u32).clamp(1, LARGEST);
        let key = (drawn.id.clone(), drawn.variant, px);
        self.tick += 1;
        let tick = self.tick;
        if !self.kept.contains_key(&key) {
            self.make_room(px);
            let texture = upload(p.ctx(), &drawn, px);
            self.bytes += bytes(px);
            self.kept.insert(
                key.clone(),
                Kept {
                    texture,
                    used: tick,
                },
            );
        }
        if let Some(kept) = self.kept.get_mut(&key) {
            kept.used = tick;
            stick(p, rect, px, &kept.texture);
        }
    }

    /// Another zoom needs other pixels: the old ones go.
    fn on_scale(&mut self, scale: f32) {
        if (self.scale - scale).abs() > 0.001 {
            self.scale = scale;
            self.kept.clear();
            self.bytes = 0;
        }
    }

    fn make_room(&mut self, px: u32) {
        while self.bytes + bytes(px) > CAP {
            let Some(oldest) = self
                .kept
                .iter()
                .min_by_key(|(_, k)| k.used)
                .map(|(k, _)| k.clone())
            else {
                return;
            };
            self.bytes -= bytes(oldest.2);
            self.kept.remove(&oldest);
        }
    }
}

const fn bytes(px: u32) -> usize {
    px as usize * px as usize * 4
}

/// A square texture in the middle of a rectangle, pixel for pixel.
fn stick(p: &Painter, rect: Rect, px: u32, texture: &TextureHandle) {
    let scale = p.pixels_per_point();
    let half = px as f32 / scale / 2.0;
    let snap = |v: f32| (v * scale).round() / scale;
    let min = pos2(snap(rect.center().x - half), snap(rect.center().y - half));
    let place = Rect::from_min_size(min, Vec2::splat(px as f32 / scale));
    let whole = Rect::from_min_max(pos2(0.0, 0.0), pos2(1.0, 1.0));
    let light = crate::ui::theme::of(p.ctx()).light();
    p.image(texture.id(), place, whole, light);
}

fn upload(ctx: &Context, drawn: &crate::symbols::library::Drawn, px: u32) -> TextureHandle {
    let image = raster::paint_art(&drawn.art, px);
    let name = format!("{} {} {px}", drawn.id, drawn.variant);
    texture(ctx, name, &image)
}

fn texture(ctx: &Context, name: String, image: &RgbaImage) -> TextureHandle {
    let size = [image.width() as usize, image.height() as usize];
    let colours = ColorImage::from_rgba_unmultiplied(size, image.as_raw());
    ctx.load_texture(name, colours, TextureOptions::LINEAR)
}
