//! Choosing: switches, one of several side by side, one of a list.

use egui::{
    Align2, Color32, CornerRadius, CursorIcon, Id, Popup, PopupCloseBehavior, Rect, Response, Role,
    ScrollArea, Sense, Stroke, StrokeKind, Ui, WidgetInfo, vec2,
};

use super::button::{Button, Weight};
use super::{focus_ring, words};
use crate::ui::icons::{self, Icon};
use crate::ui::theme;

/// A box with a tick and words; soft words at the right. Says whether it was clicked.
pub fn tick(ui: &mut Ui, id: Id, on: bool, label: &str, trailing: &str) -> Response {
    let (_, rect) = ui.allocate_space(vec2(ui.available_width().min(560.0), theme::CONTROL));
    tick_at(ui, id, rect, on, label, trailing)
}

/// The same in a rectangle.
pub fn tick_at(ui: &mut Ui, id: Id, rect: Rect, on: bool, label: &str, trailing: &str) -> Response {
    let t = theme::of(ui.ctx());
    let r = ui.interact(rect, id, Sense::click());
    let enabled = ui.is_enabled();
    r.widget_info(|| WidgetInfo::selected(Role::CheckBox, enabled, on, label));
    let p = ui.painter();
    let mark = Rect::from_center_size(rect.left_center() + vec2(18.0, 0.0), vec2(28.0, 28.0));
    tick_box(ui, mark, on, r.hovered());
    let col = &t.col;
    let mut room = rect.with_min_x(rect.left() + 44.0);
    if !trailing.is_empty() {
        let right = rect.with_max_x(rect.right() - 8.0);
        let took = words::line(
            p,
            right,
            Align2::RIGHT_CENTER,
            trailing,
            theme::regular(14.5),
            col.soft,
        );
        room.max.x = took.left() - 8.0;
    }
    let font = if on {
        theme::bold(16.0)
    } else {
        theme::regular(16.0)
    };
    words::line(p, room, Align2::LEFT_CENTER, label, font, col.ink);
    focus_ring(ui, &r, rect, theme::R_CONTROL);
    r.on_hover_cursor(CursorIcon::PointingHand)
}

/// The box itself.
pub fn tick_box(ui: &Ui, mark: Rect, on: bool, over: bool) {
    let t = theme::of(ui.ctx());
    let (p, col) = (ui.painter(), &t.col);
    let edge = if over {
        Stroke::new(2.0, col.ink)
    } else {
        t.edge()
    };
    let fill = if on { col.peg } else { col.panel };
    p.rect(mark, CornerRadius::same(7), fill, edge, StrokeKind::Inside);
    if on {
        icons::paint(p, Icon::Tick, mark.shrink(4.0), col.on_peg);
    }
}

/// One of a few, side by side in one frame. Gives the one newly chosen.
pub fn segments(
    ui: &mut Ui,
    id: &str,
    rect: Rect,
    options: &[&str],
    chosen: usize,
) -> Option<usize> {
    let t = theme::of(ui.ctx());
    let r = CornerRadius::same(theme::R_CONTROL);
    ui.painter()
        .rect(rect, r, t.col.panel, t.edge(), StrokeKind::Inside);
    let inner = rect.shrink(3.0);
    let mut left = inner.left();
    let all: Vec<(Rect, Response)> = widths(ui, options, inner.width())
        .into_iter()
        .enumerate()
        .map(|(i, width)| {
            let at = egui::pos2(left, inner.top());
            left += width;
            let cell = Rect::from_min_size(at, vec2(width, inner.height()));
            (cell, ui.interact(cell, Id::unique((id, i)), Sense::click()))
        })
        .collect();
    let picked = all.iter().position(|(_, r)| r.clicked());
    let picked = picked.filter(|i| *i != chosen);
    // What was just chosen is painted so at once, like what it leads to.
    let on = picked.unwrap_or(chosen);
    for (i, ((cell, r), label)) in all.into_iter().zip(options).enumerate() {
        segment(ui, r, cell, label, i == on);
    }
    picked
}

/// All as wide, or, where the words of one would be cut off, each with the same room around its words.
fn widths(ui: &Ui, options: &[&str], room: f32) -> Vec<f32> {
    let needs: Vec<f32> = options.iter().map(|o| words_width(ui, o) + 12.0).collect();
    let count = options.len().max(1) as f32;
    let total: f32 = needs.iter().sum();
    let equal = room / count;
    if total > room || needs.iter().all(|n| *n <= equal) {
        return vec![equal; options.len()];
    }
    let more = (room - total) / count;
    needs.into_iter().map(|n| n + more).collect()
}

fn words_width(ui: &Ui, words: &str) -> f32 {
    let font = theme::bold(16.0);
    let galley = ui
        .painter()
        .layout_no_wrap(words.to_owned(), font, Color32::PLACEHOLDER);
    galley.size().x
}

fn segment(ui: &Ui, r: Response, cell: Rect, label: &str, on: bool) {
    let col = theme::of(ui.ctx()).col;
    r.widget_info(|| WidgetInfo::selected(Role::RadioButton, true, on, label));
    let p = ui.painter();
    let (fill, ink, font) = if on {
        (col.peg, col.on_peg, theme::bold(16.0))
    } else {
        (Color32::TRANSPARENT, col.ink, theme::regular(16.0))
    };
    p.rect_filled(cell, CornerRadius::same(9), fill);
    words::line(
        p,
        cell.shrink2(vec2(6.0, 0.0)),
        Align2::CENTER_CENTER,
        label,
        font,
        ink,
    );
    focus_ring(ui, &r, cell, 9);
    r.on_hover_cursor(CursorIcon::PointingHand);
}

/// Segments where the layout stands, as wide as is left or as needed.
pub fn segments_here(ui: &mut Ui, id: &str, options: &[&str], chosen: usize) -> Option<usize> {
    let need = options.iter().map(|o| words_width(ui, o) + 28.0);
    let need = need.fold(0.0, f32::max);
    let width = (need * options.len() as f32 + 6.0).min(ui.available_width());
    let (_, rect) = ui.allocate_space(vec2(width, theme::CONTROL));
    segments(ui, id, rect, options, chosen)
}

/// One of a list that opens below; while none is chosen it says its name. Gives the one newly
/// chosen.
pub fn select(
    ui: &mut Ui,
    id: Id,
    label: &str,
    options: &[String],
    chosen: Option<usize>,
    width: f32,
) -> Option<usize> {
    let (_, rect) = ui.allocate_space(vec2(width, theme::CONTROL));
    select_at(ui, id, rect, label, options, chosen)
}

/// The same in a rectangle.
pub fn select_at(
    ui: &mut Ui,
    id: Id,
    rect: Rect,
    label: &str,
    options: &[String],
    chosen: Option<usize>,
) -> Option<usize> {
    let t = theme::of(ui.ctx());
    let shown = chosen
        .and_then(|i| options.get(i))
        .map_or(label, String::as_str);
    let r = ui.interact(rect, id, Sense::click());
    r.widget_info(|| {
        let mut info = WidgetInfo::labeled(Role::ComboBox, true, label);
        info.current_text_value = Some(shown.to_owned());
        info
    });
    let p = ui.painter();
    let edge = if r.hovered() {
        Stroke::new(2.0, t.col.ink)
    } else {
        t.edge()
    };
    p.rect(
        rect,
        CornerRadius::same(theme::R_CONTROL),
        t.col.panel,
        edge,
        StrokeKind::Inside,
    );
    let room = Rect::from_min_max(rect.min + vec2(12.0, 0.0), rect.max - vec2(34.0, 0.0));
    words::line(
        p,
        room,
        Align2::LEFT_CENTER,
        shown,
        theme::regular(16.0),
        t.col.ink,
    );
    let mark = icons::square(rect.right_center() - vec2(20.0, 0.0), 18.0);
    icons::paint(p, Icon::Down, mark, t.col.ink);
    focus_ring(ui, &r, rect, theme::R_CONTROL);
    let r = r.on_hover_cursor(CursorIcon::PointingHand);
    let mut picked = None;
    Popup::menu(&r)
        .width(rect.width().max(200.0))
        .close_behavior(PopupCloseBehavior::CloseOnClick)
        .accessible_name(label)
        .show(|ui| {
            ui.spacing_mut().item_spacing.y = 2.0;
            let room = (ui.ctx().content_rect().height() - 120.0).clamp(120.0, 420.0);
            ScrollArea::vertical().max_height(room).show(ui, |ui| {
                for (i, option) in options.iter().enumerate() {
                    let item = Button::new((id, i), option)
                        .weight(if Some(i) == chosen {
                            Weight::Chosen(true)
                        } else {
                            Weight::Quiet
                        })
                        .role(Role::MenuItemRadio)
                        .width(ui.available_width())
                        .left();
                    if item.show(ui).clicked() {
                        picked = Some(i);
                    }
                }
            });
        });
    picked.filter(|i| Some(*i) != chosen)
}
