//! The place Print: what goes on paper, for whom, how it will look, how much it is.

mod choose;
mod numbers;
mod preview;

use egui::{Rect, Ui, pos2, vec2};

use super::desk::Desk;
use super::widgets::within;
pub use preview::Pages;

/// What the place remembers.
#[derive(Default)]
pub struct PrintState {
    /// Which page is shown, counted over all sheets.
    page: usize,
    /// How large, in steps: whole page, width of the desk, true size.
    zoom: preview::Zoom,
    /// Pages as textures.
    pub pages: Pages,
}

/// Shows the place.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut PrintState, rect: Rect) {
    let (left, middle, right) = columns(rect);
    within(ui, "print-what", left, |ui| {
        choose::show(ui, desk, left, right.is_none())
    });
    within(ui, "print-preview", middle, |ui| {
        preview::show(ui, desk, state, middle)
    });
    if let Some(right) = right {
        within(ui, "print-numbers", right, |ui| {
            numbers::show(ui, desk, right)
        });
    }
}

/// Three columns where they fit, else two.
fn columns(rect: Rect) -> (Rect, Rect, Option<Rect>) {
    if rect.width() > 1100.0 {
        let left = Rect::from_min_size(rect.min, vec2(334.0, rect.height()));
        let right = Rect::from_min_max(pos2(rect.right() - 366.0, rect.top()), rect.max);
        let middle = Rect::from_min_max(
            pos2(left.right() + 22.0, rect.top()),
            pos2(right.left() - 22.0, rect.bottom()),
        );
        return (left, middle, Some(right));
    }
    let left = Rect::from_min_size(
        rect.min,
        vec2((rect.width() * 0.46).min(360.0), rect.height()),
    );
    (
        left,
        Rect::from_min_max(pos2(left.right() + 14.0, rect.top()), rect.max),
        None,
    )
}
