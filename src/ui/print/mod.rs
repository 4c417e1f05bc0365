//! The place Print: what goes on paper, for whom, how it will look, how much it is; and the tiles
//! that are in stock.

mod choose;
mod kinds;
mod numbers;
mod preview;
mod printer;
mod stock;
mod stock_row;
mod tiles;
mod whom;
mod write;

use egui::{Id, Rect, Ui, pos2, vec2};

use super::desk::Desk;
use super::find::Find;
use super::theme;
use super::widgets::choose::segments;
use super::widgets::within;
pub use preview::{Pages, paint};

/// Which side is shown.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Pane {
    /// What is printed.
    #[default]
    Sheets,
    /// Tiles that are made.
    Stock,
}

const PANES: [(Pane, &str); 2] = [(Pane::Sheets, "Sheets"), (Pane::Stock, "Stock")];

/// What the place remembers.
#[derive(Default)]
pub struct PrintState {
    /// What is shown.
    pub pane: Pane,
    /// What is looked for among those who come.
    pub find: Find,
    /// What is looked for in stock.
    pub find_stock: Find,
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
    let tabs = left.with_max_y(left.top() + theme::CONTROL);
    let now = PANES
        .iter()
        .position(|(p, _)| *p == state.pane)
        .unwrap_or(0);
    desk.regions.add(tabs, Id::unique(("print-pane", now)));
    if let Some(i) = segments(ui, "print-pane", tabs, &PANES.map(|(_, n)| n), now) {
        state.pane = PANES[i].0;
    }
    if state.pane == Pane::Stock {
        return within(ui, "print-stock", rect, |ui| {
            stock::show(ui, desk, &mut state.find_stock, (rect, tabs))
        });
    }
    let left = left.with_min_y(tabs.bottom() + 10.0);
    within(ui, "print-what", left, |ui| {
        choose::show(ui, desk, state, left, right.is_none())
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
        vec2((rect.width() * 0.52).min(360.0), rect.height()),
    );
    (
        left,
        Rect::from_min_max(pos2(left.right() + 14.0, rect.top()), rect.max),
        None,
    )
}
