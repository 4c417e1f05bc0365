//! The pages of the help on a rope that hangs down, with a peg at the one that is read.

use egui::{
    Align2, CornerRadius, CursorIcon, Id, Rect, Role, ScrollArea, StrokeKind, Ui, UiBuilder,
    WidgetInfo, pos2, vec2,
};

use super::HelpState;
use super::text::pages;
use crate::ui::regions::{arrows, keep_arrows, one_stop};
use crate::ui::strand::paint;
use crate::ui::theme::{self, Theme};
use crate::ui::widgets::{focus_ring, words};

/// Height of a row.
const ROW: f32 = 46.0;
/// Room above the first row and below the last, for the ring and the knot of the rope.
const END: f32 = 20.0;
/// From the left edge to the rope.
const ROPE: f32 = 18.0;
/// From the left edge to the words.
const WORDS: f32 = 38.0;

/// What has the keyboard at a page.
pub fn row_id(page: usize) -> Id {
    Id::unique(("help-page", page))
}

/// Shows the list in a rectangle.
pub fn show(ui: &mut Ui, state: &mut HelpState, rect: Rect) {
    state.regions.add(rect, row_id(state.page));
    let mut child = ui.new_child(UiBuilder::new().max_rect(rect));
    ScrollArea::vertical()
        .id_salt("help-pages")
        .auto_shrink(false)
        .show(&mut child, |ui| {
            let n = pages().len();
            let size = vec2(ui.available_width(), n as f32 * ROW + 2.0 * END);
            let (_, all) = ui.allocate_space(size);
            let now = state.page;
            rope(ui, all, (now, n));
            for i in 0..n {
                let top = all.top() + END + i as f32 * ROW;
                let row = Rect::from_min_size(pos2(all.left(), top), vec2(all.width(), ROW));
                show_row(ui, state, (i, i == now), row);
            }
        });
}

/// The rope from its ring to its knot, a knot at each page and the peg at the one that is read.
fn rope(ui: &Ui, all: Rect, (now, n): (usize, usize)) {
    let t = theme::of(ui.ctx());
    let p = ui.painter();
    let x = all.left() + ROPE;
    let (top, end) = (all.top() + 10.0, all.bottom() - 14.0);
    let steps = 60;
    let points = (0..=steps).map(|i| {
        let part = i as f32 / steps as f32;
        let sway = (part * 21.0).sin() * 1.4;
        pos2(x + sway, top + (end - top) * part)
    });
    let points: Vec<_> = points.collect();
    paint::line(p, &t, &points, 5.0);
    paint::ring(p, &t.col, pos2(x, top), 7.0, t.col.panel);
    paint::hanging_stopper(p, &t, pos2(x, end), 8.0, 14.0);
    for i in (0..n).filter(|i| *i != now) {
        let y = all.top() + END + (i as f32 + 0.5) * ROW;
        paint::knot(p, &t, pos2(x, y), 6.0);
    }
}

fn show_row(ui: &mut Ui, state: &mut HelpState, (i, current): (usize, bool), row: Rect) {
    let id = row_id(i);
    let rect = Rect::from_min_max(row.min + vec2(0.0, 1.0), row.max - vec2(6.0, 1.0));
    let sense = one_stop(ui, id, current, false);
    let r = ui.interact(rect, id, sense);
    let pages = pages();
    r.widget_info(|| {
        let says = format!("{}, page {} of {}", pages[i].title, i + 1, pages.len());
        WidgetInfo::selected(Role::ListBoxOption, true, current, says)
    });
    paint_row(
        ui,
        rect,
        pages[i].title,
        (current && !state.looking, r.hovered()),
    );
    focus_ring(ui, &r, plate(rect), theme::R_CONTROL);
    if r.has_focus() {
        keep_arrows(ui, id);
        if let Some(to) = arrows(ui, i, pages.len(), 1) {
            state.read(to);
            state.focus = Some(row_id(to));
        }
    }
    if r.clicked() {
        state.read(i);
    }
    r.on_hover_cursor(CursorIcon::PointingHand);
}

/// Where the words of a row stand.
fn plate(row: Rect) -> Rect {
    row.with_min_x(row.left() + WORDS)
}

fn paint_row(ui: &Ui, row: Rect, title: &str, (current, over): (bool, bool)) {
    let t = theme::of(ui.ctx());
    let p = ui.painter();
    let plate = plate(row);
    let radius = CornerRadius::same(theme::R_CONTROL);
    let mut ink = t.col.ink;
    if current {
        p.add(t.shadow().as_shape(plate, radius));
        p.rect(plate, radius, t.col.card, t.seal_line(), StrokeKind::Inside);
        ink = t.col.card_ink;
        peg(ui, &t, pos2(row.left() + ROPE, row.center().y));
    } else if over {
        p.rect_stroke(plate, radius, t.edge(), StrokeKind::Inside);
    }
    let font = if current {
        theme::bold(16.0)
    } else {
        theme::regular(16.0)
    };
    let room = plate.shrink2(vec2(12.0, 0.0));
    words::line(p, room, Align2::LEFT_CENTER, title, font, ink);
}

/// The peg at the page that is read.
fn peg(ui: &Ui, t: &Theme, at: egui::Pos2) {
    let rect = Rect::from_center_size(at, vec2(20.0, 20.0));
    let radius = CornerRadius::same(6);
    ui.painter().rect_filled(rect, radius, t.col.accent);
}
