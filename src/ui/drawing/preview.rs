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

/// Shows both side by side.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>, state: &DrawingState) {
    let t = theme::of(ui.ctx());
    let high = theme::CARD + 26.0;
    let (_, rect) = ui.allocate_space(vec2(ui.available_width(), high));
    let card = Rect::from_min_size(rect.min, Vec2::splat(theme::CARD));
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
    let small = Rect::from_min_size(card.right_top() + vec2(16.0, 0.0), Vec2::splat(SMALL));
    p.rect(
        small,
        theme::R_PAPER,
        t.col.card,
        egui::Stroke::new(1.0, t.col.seal_line),
        egui::StrokeKind::Outside,
    );
    let grey = || vary(&sketch.art(), Variant::new(Default::default(), Ink::Grey));
    desk.pictures.sketch(p, small, "grey", revision, grey);
    let soft = |under: Rect, says: &str| {
        let line = Rect::from_min_size(pos2(under.left(), under.bottom() + 4.0), vec2(150.0, 20.0));
        let font = theme::regular(14.0);
        words::line(p, line, Align2::LEFT_CENTER, says, font, t.col.soft);
    };
    soft(card, "As a tile");
    soft(small, "In grey, 20 mm");
}
