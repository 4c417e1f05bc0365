//! The photograph as textures: whole to work on, and what becomes of it, as a tile in colour and in
//! grey.

use egui::{
    Align2, ColorImage, Pos2, Rect, StrokeKind, TextureHandle, TextureOptions, Ui, Vec2, pos2, vec2,
};
use image::RgbaImage;

use crate::intake::{Photo, Recipe};
use crate::raster;
use crate::symbols::parse::parse;
use crate::symbols::pixels::to_grey;
use crate::ui::theme;
use crate::ui::widgets::{card, words};

/// Pixels of a result.
const RESULT_PX: u32 = 260;
/// Side of the squares that show where a picture is clear, in points.
const CHECK: f32 = 9.0;

/// Textures, each with what it was made of.
#[derive(Default)]
pub struct Looks {
    whole: Option<(Recipe, TextureHandle)>,
    results: Option<(Recipe, [TextureHandle; 2])>,
    drawing: Option<TextureHandle>,
    /// A corner of the frame is being dragged.
    pub resizing: bool,
    /// Where the keyboard holds the brush, as shares of the picture shown.
    pub cursor: Pos2,
}

fn texture(ui: &Ui, name: &str, image: &RgbaImage) -> TextureHandle {
    let size = [image.width() as usize, image.height() as usize];
    let colours = ColorImage::from_rgba_unmultiplied(size, image.as_raw());
    ui.ctx().load_texture(name, colours, TextureOptions::LINEAR)
}

fn put(ui: &Ui, texture: &TextureHandle, rect: Rect) {
    let whole = Rect::from_min_max(pos2(0.0, 0.0), pos2(1.0, 1.0));
    ui.painter().image(texture.id(), rect, whole, theme::AS_IS);
}

/// A picture of a size, as large as a square lets it be.
fn inside(square: Rect, size: Vec2) -> Rect {
    let scale = (square.width() / size.x).min(square.height() / size.y);
    Rect::from_center_size(square.center(), size * scale)
}

impl Looks {
    /// The whole photograph.
    pub fn whole(&mut self, ui: &Ui, photo: &Photo, recipe: &Recipe, rect: Rect) {
        if self.whole.as_ref().is_none_or(|(r, _)| r != recipe) {
            let image = photo.preview(recipe, super::WORKED_PX);
            self.whole = Some((recipe.clone(), texture(ui, "photo whole", &image)));
        }
        if recipe.mask.is_some() {
            checks(ui, rect);
        }
        if let Some((_, texture)) = &self.whole {
            put(ui, texture, rect);
        }
    }

    /// What it becomes, on two tiles.
    pub fn results(&mut self, ui: &mut Ui, photo: &Photo, recipe: &Recipe) {
        if self.results.as_ref().is_none_or(|(r, _)| r != recipe) {
            let colour = photo.preview(recipe, RESULT_PX);
            let mut grey = colour.clone();
            to_grey(&mut grey);
            let both = [("photo colour", colour), ("photo grey", grey)];
            let both = both.map(|(name, image)| texture(ui, name, &image));
            self.results = Some((recipe.clone(), both));
        }
        let Some((_, both)) = &self.results else {
            return;
        };
        let t = theme::of(ui.ctx());
        let side = ((ui.available_width() - 20.0) / 2.0).min(150.0);
        let (_, row) = ui.allocate_space(vec2(ui.available_width(), side + 22.0));
        for (i, (texture, says)) in both.iter().zip(["In colour", "In grey"]).enumerate() {
            let left = row.left() + i as f32 * (side + 20.0);
            let tile = Rect::from_min_size(pos2(left, row.top()), Vec2::splat(side));
            let paper = card::tile(ui.painter(), &t, tile, card::Lie::Ground);
            put(ui, texture, inside(paper.shrink(6.0), texture.size_vec2()));
            let below =
                Rect::from_min_max(pos2(left, tile.bottom()), pos2(tile.right(), row.bottom()));
            let font = theme::regular(14.5);
            words::line(
                ui.painter(),
                below,
                Align2::CENTER_CENTER,
                says,
                font,
                t.col.soft,
            );
        }
    }

    /// A drawing that came in.
    pub fn drawing(&mut self, ui: &Ui, svg: &str, rect: Rect) {
        let texture = self.drawing.get_or_insert_with(|| {
            let art = parse(svg).unwrap_or_default();
            texture(ui, "drawing", &raster::paint_art(&art, 512))
        });
        let t = theme::of(ui.ctx());
        let p = ui.painter();
        p.rect(rect, 14, t.col.card, t.seal_line(), StrokeKind::Inside);
        let side = rect.width().min(rect.height()) - 24.0;
        let square = Rect::from_center_size(rect.center(), Vec2::splat(side));
        put(ui, texture, square);
    }
}

/// Squares of two tones, where nothing of the picture is.
fn checks(ui: &Ui, rect: Rect) {
    let t = theme::of(ui.ctx());
    let p = ui.painter().with_clip_rect(rect);
    p.rect_filled(rect, 0, t.col.card);
    let (columns, rows) = (rect.width() / CHECK, rect.height() / CHECK);
    for row in 0..=rows as u32 {
        for column in (row % 2..=columns as u32).step_by(2) {
            let at = rect.min + vec2(column as f32, row as f32) * CHECK;
            p.rect_filled(Rect::from_min_size(at, Vec2::splat(CHECK)), 0, t.col.seal);
        }
    }
}
