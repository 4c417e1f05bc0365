//! Forms: a name above each control, blocks side by side as the width allows.

use egui::{Align, CornerRadius, Layout, Rect, StrokeKind, Ui, UiBuilder, vec2};

use super::words;
use crate::ui::{icons, theme};

/// A control under its name, in a block of a width and height.
pub fn block<R>(
    ui: &mut Ui,
    name: &str,
    width: f32,
    height: f32,
    add: impl FnOnce(&mut Ui) -> R,
) -> R {
    let width = width.min(ui.max_rect().width());
    let layout = Layout::top_down(Align::Min);
    ui.allocate_ui_with_layout(vec2(width, height + 30.0), layout, |ui| {
        ui.set_min_size(vec2(width, height + 30.0));
        ui.spacing_mut().item_spacing.y = 2.0;
        let t = theme::of(ui.ctx());
        let (_, rect) = ui.allocate_space(vec2(width, 24.0));
        let p = ui.painter();
        words::line(
            p,
            rect,
            egui::Align2::LEFT_CENTER,
            name,
            theme::bold(15.0),
            t.col.soft,
        );
        add(ui)
    })
    .inner
}

/// Blocks side by side, broken into rows.
pub fn row<R>(ui: &mut Ui, add: impl FnOnce(&mut Ui) -> R) -> R {
    let layout = Layout::left_to_right(Align::Min).with_main_wrap(true);
    let size = vec2(ui.available_width(), 0.0);
    ui.allocate_ui_with_layout(size, layout, |ui| {
        ui.spacing_mut().item_spacing = vec2(16.0, 8.0);
        add(ui)
    })
    .inner
}

/// Something in a column of a width, whatever it needs of it.
pub fn column<R>(ui: &mut Ui, width: f32, add: impl FnOnce(&mut Ui) -> R) -> R {
    let down = Layout::top_down(Align::Min);
    ui.allocate_ui_with_layout(vec2(width, 0.0), down, |ui| {
        ui.set_width(width);
        ui.spacing_mut().item_spacing.x = 8.0;
        add(ui)
    })
    .inner
}

/// A panel with room inside, as high as what is in it.
pub fn sheet<R>(ui: &mut Ui, add: impl FnOnce(&mut Ui) -> R) -> R {
    let t = theme::of(ui.ctx());
    egui::Frame::new()
        .fill(t.col.panel)
        .stroke(egui::Stroke::new(t.line(), t.col.rule))
        .corner_radius(CornerRadius::same(theme::R_PANEL))
        .inner_margin(egui::Margin::symmetric(18, 14))
        .show(ui, |ui| {
            ui.set_min_width(ui.available_width());
            add(ui)
        })
        .inner
}

/// A slip of paper with something to say, as high as what is in it.
pub fn slip<R>(ui: &mut Ui, add: impl FnOnce(&mut Ui) -> R) -> R {
    let t = theme::of(ui.ctx());
    egui::Frame::new()
        .fill(t.col.panel)
        .stroke(t.edge())
        .corner_radius(CornerRadius::same(theme::R_CONTROL))
        .inner_margin(egui::Margin::symmetric(14, 8))
        .show(ui, |ui| {
            ui.set_min_width(ui.available_width());
            add(ui)
        })
        .inner
}

/// A dashed frame: something that is put aside.
pub fn dashed(ui: &Ui, rect: Rect) {
    let t = theme::of(ui.ctx());
    let line = egui::Stroke::new(t.line(), t.col.down_line);
    let radius = f32::from(theme::R_CONTROL);
    icons::dashed_rect(ui.painter(), rect.shrink(1.0), radius, line, 7.0, 5.0);
}

/// A child area that scrolls upwards and downwards.
pub fn scroll<R>(ui: &mut Ui, salt: &str, rect: Rect, add: impl FnOnce(&mut Ui) -> R) -> R {
    let mut child = ui.new_child(UiBuilder::new().id_salt(salt).max_rect(rect));
    egui::ScrollArea::vertical()
        .id_salt(salt)
        .auto_shrink(false)
        .show(&mut child, |ui| {
            ui.set_max_width(ui.available_width());
            add(ui)
        })
        .inner
}

/// A thin frame round something.
pub fn outline(ui: &Ui, rect: Rect) {
    let t = theme::of(ui.ctx());
    let r = CornerRadius::same(theme::R_CONTROL);
    ui.painter()
        .rect_stroke(rect, r, t.edge(), StrokeKind::Inside);
}
