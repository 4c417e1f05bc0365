//! Along the top: the menu, which session, the five places on the strand with what is open in
//! words, whether all is saved, and the way into the full-screen view.

mod ends;
mod menu;
mod places;
mod sessions;

use egui::{Rect, Ui, pos2, vec2};

use crate::ui::actions;
use crate::ui::actions::Action;
use crate::ui::desk::Desk;
use crate::ui::icons::Icon;
use crate::ui::theme;
use crate::ui::widgets::button::Button;
use crate::ui::widgets::button::Weight;
use crate::workbench::next::Where;

use ends::{show_next, show_saved};
use menu::show_menu;
pub use places::open_in;
use places::{place_id, places};
use sessions::session_chooser;

/// What the bar shows of the window's own state.
pub struct Bar<'a> {
    /// No movement.
    pub still: bool,
    /// Things the next-thing key has led to.
    pub led_to: &'a [Where],
}

/// Height of the bar for a window of a size.
pub fn height(window: egui::Vec2) -> f32 {
    if window.y < 560.0 { 60.0 } else { 78.0 }
}

/// Shows the bar.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>, bar: &Bar<'_>, rect: Rect) {
    let small = rect.width() < 1120.0;
    let menu = Rect::from_min_size(
        pos2(rect.left() + theme::MARGIN, rect.top() + 12.0),
        vec2(44.0, 44.0),
    );
    show_menu(ui, desk, bar, menu);
    let title_width = if small { 0.0 } else { 196.0 };
    let title = Rect::from_min_size(menu.right_top() + vec2(8.0, -4.0), vec2(title_width, 52.0));
    if small {
        desk.regions.add(rect, place_id(desk.view.place));
    } else {
        session_chooser(ui, desk, title);
        desk.regions.add(rect, place_id(desk.view.place));
    }
    let main = Button::new("together", "Go through together")
        .weight(Weight::Main)
        .enabled(actions::possible(Action::Together, desk.view))
        .tip("The day, one step at a time, in full view (F5)");
    let main = if small {
        main.icon_only(Icon::Right)
    } else {
        main
    };
    let width = if small { 48.0 } else { 200.0 };
    let right = Rect::from_min_size(
        pos2(rect.right() - theme::MARGIN - width, rect.top() + 12.0),
        vec2(width, if small { 44.0 } else { 48.0 }),
    );
    let next_width = if small { 48.0 } else { 172.0 };
    let saved_width = if small { 56.0 } else { 106.0 };
    let saved = Rect::from_min_max(
        pos2(right.left() - saved_width - 12.0, rect.top() + 10.0),
        pos2(right.left() - 12.0, rect.top() + 58.0),
    );
    let next = Rect::from_min_max(
        pos2(saved.left() - next_width - 10.0, right.top()),
        pos2(saved.left() - 10.0, right.bottom()),
    );
    // Where there is hardly any room the names of the places have it; F4 and the menu lead on too.
    let tiny = rect.width() < 860.0;
    let end = if tiny {
        saved.left() - 10.0
    } else {
        next.left() - 6.0
    };
    let strand = Rect::from_min_max(
        pos2(title.right() + 10.0, rect.top()),
        pos2(end, rect.bottom()),
    );
    places(ui, desk, strand);
    if !tiny {
        show_next(ui, desk, bar, next, small);
    }
    show_saved(ui, desk, saved, small);
    if main.show_at(ui, right).clicked() {
        desk.actions.push(Action::Together);
    }
}
