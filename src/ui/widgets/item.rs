//! A line of a list on a card: the ground it has when it is where we are, or under the pointer.

use egui::{Id, Rect, Response, Role, Sense, Ui, WidgetInfo, vec2};

use super::card;
use crate::ui::theme;

/// A line of a height, as wide as there is room beside the bar that scrolls; `name` is what a screen
/// reader says. What stands on it is painted by whoever asks; the ring of the keyboard comes last.
pub fn item(ui: &mut Ui, id: Id, height: f32, here: bool, name: &str) -> (Response, Rect) {
    let t = theme::of(ui.ctx());
    let (_, rect) = ui.allocate_space(vec2(ui.available_width() - 12.0, height));
    let r = ui.interact(rect, id, Sense::click());
    r.widget_info(|| WidgetInfo::selected(Role::ListItem, true, here, name));
    if here {
        card::here(ui.painter(), &t, rect);
    } else if r.hovered() {
        ui.painter().rect_filled(rect, theme::R_CONTROL, t.col.well);
    }
    (r, rect)
}
