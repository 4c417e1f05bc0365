//! The window's own controls: buttons, fields, switches, cards. Each is at least 44 points high,
//! shows a ring when the keyboard is on it, and tells a screen reader its name.

pub mod button;
pub mod card;
pub mod choose;
pub mod field;
pub mod form;
pub mod item;
pub mod slide;
pub mod steps;
mod way_back;
pub mod words;

use egui::{Context, CornerRadius, Id, Rect, Response, Stroke, StrokeKind, Ui, UiBuilder};

use super::theme;
pub use way_back::way_back;

/// Shows something inside a fixed place of the window.
pub fn within<R>(ui: &mut Ui, salt: &str, rect: Rect, add: impl FnOnce(&mut Ui) -> R) -> R {
    let mut child = ui.new_child(UiBuilder::new().id_salt(salt).max_rect(rect));
    child.set_clip_rect(rect.expand(6.0).intersect(ui.clip_rect()));
    add(&mut child)
}

/// Whether the keyboard, not the mouse, was used last: only then are rings shown.
pub fn keyboard_led(ctx: &Context) -> bool {
    ctx.data(|d| d.get_temp(Id::unique("keyboard-led")))
        .unwrap_or(false)
}

/// Notes which of keyboard and mouse was used last.
pub fn note_input(ctx: &Context) {
    let led = ctx.input(|i| {
        let key = |e: &egui::Event| matches!(e, egui::Event::Key { pressed: true, .. });
        if i.pointer.any_pressed() {
            Some(false)
        } else if i.events.iter().any(key) {
            Some(true)
        } else {
            None
        }
    });
    if let Some(led) = led {
        ctx.data_mut(|d| d.insert_temp(Id::unique("keyboard-led"), led));
    }
}

/// The ring round what the keyboard is on, outside a gap of 2; also brings it into sight.
pub fn focus_ring(ui: &Ui, r: &Response, rect: Rect, radius: u8) {
    if r.has_focus() && keyboard_led(ui.ctx()) {
        let t = theme::of(ui.ctx());
        ui.painter().rect_stroke(
            rect.expand(2.0),
            CornerRadius::same(radius.saturating_add(2)),
            Stroke::new(3.0, t.col.accent),
            StrokeKind::Outside,
        );
    }
    if r.gained_focus() && keyboard_led(ui.ctx()) {
        r.scroll_to_me(None);
    }
}
