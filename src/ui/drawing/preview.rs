//! What the drawing will look like: as a tile with its words, and in grey as small as tiles get.

use egui::{Align2, Id, Rect, Sense, Ui, Vec2, WidgetInfo, pos2, vec2};

use super::DrawingState;
use crate::symbols::variant::{Ink, Variant, vary};
use crate::ui::desk::Desk;
use crate::ui::theme;
use crate::ui::widgets::card::{Lie, tile};
use crate::ui::widgets::words;

/// 20 mm at 96 dots an inch, the scale of the window at 100 %.
const SMALL: f32 = 76.0;
/// Between both.
const GAP: f32 = 16.0;

/// Shows both side by side.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>, state: &DrawingState) {
    let t = theme::of(ui.ctx());
    let wide = ui.available_width();
    let side = (wide - SMALL - GAP).clamp(88.0, theme::CARD);
    // Room for what is painted round their edges.
    let (_, rect) = ui.allocate_space(vec2(wide, side + 28.0));
    let rect = rect.with_min_y(rect.top() + 2.0);
    let card = Rect::from_min_size(rect.min, Vec2::splat(side));
    let name = state.facts.name.trim();
    let r = ui.interact(rect, Id::unique("draw-preview"), Sense::hover());
    r.widget_info(|| {
        let says = format!("As a tile: {name}. Beside it in grey, 20 mm");
        WidgetInfo::labeled(egui::Role::Label, true, says)
    });
    let p = ui.painter();
    let paper = tile(p, &t, card, Lie::Ground);
    let inner = paper.shrink2(vec2(4.0, 3.0));
    let (picture, text) = inner.split_top_bottom_at_y(inner.bottom() - 26.0);
    let sketch = &state.sketch;
    let revision = sketch.revision();
    let art = || sketch.art();
    desk.pictures.sketch(p, picture, "tile", revision, art);
    words::label(p, text, name, &[16.0, 15.0, 14.0], 1, t.col.card_ink);
    let small = Rect::from_min_size(card.right_top() + vec2(GAP, 0.0), Vec2::splat(SMALL));
    p.rect(
        small,
        theme::R_PAPER,
        t.col.card,
        egui::Stroke::new(1.0, t.col.seal_line),
        egui::StrokeKind::Outside,
    );
    let grey = || vary(&sketch.art(), Variant::new(Default::default(), Ink::Grey));
    desk.pictures.sketch(p, small, "grey", revision, grey);
    let width = 110.0;
    // In a narrow column the words of the small one do not fit under it.
    let narrow = small.left() > rect.right() - width;
    let soft = |under: Rect, says: &str, align: Align2| {
        let left = under.left().min(rect.right() - width);
        let top = if narrow { card } else { under }.bottom() + 4.0;
        let line = Rect::from_min_size(pos2(left, top), vec2(width, 20.0));
        let font = theme::regular(14.0);
        words::line(p, line, align, says, font, t.col.soft);
    };
    soft(card, "As a tile", Align2::LEFT_CENTER);
    let align = if narrow {
        Align2::RIGHT_CENTER
    } else {
        Align2::LEFT_CENTER
    };
    soft(small, "In grey, 20 mm", align);
}
