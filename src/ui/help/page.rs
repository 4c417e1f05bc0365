//! One page of the help to read, and the keys that scroll it.

use egui::{
    Align, CornerRadius, Id, Key, Modifiers, Rect, Role, ScrollArea, Sense, StrokeKind, Ui,
    UiBuilder, WidgetInfo, pos2, vec2,
};

use super::text::{Line, Run, What, pages};
use super::words::{self, BODY};
use super::{HelpState, find};
use crate::ui::regions::keep_arrows;
use crate::ui::strand::paint;
use crate::ui::theme;
use crate::ui::widgets::focus_ring;

/// Widest column of words; longer lines are hard to follow.
const WIDEST: f32 = 740.0;
/// How far a point is set in.
const POINT: f32 = 24.0;
/// Width of the column of keys, and below what width of the page they stand above instead.
const KEYS: f32 = 236.0;
const BESIDE: f32 = 520.0;
/// How far an arrow key scrolls.
const STEP: f32 = 60.0;
/// More than any page is high.
const FAR: f32 = 100_000.0;

/// What has the keyboard while a page is read.
pub fn id() -> Id {
    Id::unique("help-text")
}

/// Shows the page in a rectangle, scrolled on by so much.
pub fn show(ui: &mut Ui, state: &mut HelpState, rect: Rect, by: Option<f32>) {
    let page = &pages()[state.page];
    let r = ui.interact(rect, id(), Sense::focusable_noninteractive());
    r.widget_info(|| WidgetInfo::labeled(Role::Document, true, page.title));
    focus_ring(ui, &r, rect, theme::R_CONTROL);
    if r.has_focus() {
        keep_arrows(ui, id());
    }
    let wanted = find::wanted(&state.typed);
    let to = state.to_line.take();
    let mut child = ui.new_child(UiBuilder::new().max_rect(rect.shrink2(vec2(8.0, 4.0))));
    let mut area = ScrollArea::vertical()
        .id_salt(("help-page", state.page))
        .auto_shrink(false);
    if std::mem::take(&mut state.top) {
        area = area.vertical_scroll_offset(0.0);
    }
    area.show(&mut child, |ui| {
        if let Some(by) = by {
            ui.scroll_with_delta(vec2(0.0, -by));
        }
        ui.set_max_width((ui.available_width() - 8.0).min(WIDEST));
        ui.spacing_mut().item_spacing.y = 4.0;
        words::heading(ui, page.title, 24.0, &wanted);
        for (n, line) in page.lines.iter().enumerate() {
            let top = ui.cursor().top();
            show_line(ui, state, line, &wanted);
            if to == Some(n) {
                let span = egui::Rangef::new(top - 24.0, ui.cursor().top());
                let at = Rect::from_x_y_ranges(ui.max_rect().x_range(), span);
                ui.scroll_to_rect(at, Some(Align::Center));
            }
        }
        ui.add_space(24.0);
    });
}

/// How far the keys pressed scroll a page of a height downwards. Asked before the list is shown,
/// which knows the page keys too.
pub fn keys(ui: &Ui, height: f32) -> Option<f32> {
    let reading = ui.memory(|m| m.has_focus(id()));
    let screen = (height - STEP).max(STEP);
    let pressed = |key| ui.input_mut(|i| i.consume_key(Modifiers::NONE, key));
    let anywhere = [(Key::PageDown, screen), (Key::PageUp, -screen)];
    let here = [
        (Key::ArrowDown, STEP),
        (Key::ArrowUp, -STEP),
        (Key::Space, screen),
        (Key::Home, -FAR),
        (Key::End, FAR),
    ];
    let here = here.into_iter().filter(|_| reading);
    let mut all = anywhere.into_iter().chain(here);
    all.find(|(key, _)| pressed(*key)).map(|(_, by)| by)
}

fn show_line(ui: &mut Ui, state: &mut HelpState, line: &Line, wanted: &[String]) {
    if line.room {
        ui.add_space(9.0);
    }
    match &line.what {
        What::Text(runs) => paragraph(ui, line, runs, (0.0, Role::Paragraph), wanted),
        What::Point(runs) => {
            let top = ui.cursor().min;
            paragraph(ui, line, runs, (POINT, Role::ListItem), wanted);
            let t = theme::of(ui.ctx());
            let at = top + vec2(9.0, BODY * 0.86);
            paint::knot(ui.painter(), &t, at, 5.0);
        }
        What::Heading(says) => {
            ui.add_space(10.0);
            words::heading(ui, says, 18.0, wanted);
            ui.add_space(2.0);
        }
        What::Key(key, what) => key_row(ui, (key, what), wanted),
        What::Picture { name, says } => picture(ui, state, name, says),
    }
}

fn paragraph(
    ui: &mut Ui,
    line: &Line,
    runs: &[Run],
    (inset, role): (f32, Role),
    wanted: &[String],
) {
    let t = theme::of(ui.ctx());
    let width = ui.available_width();
    let g = words::lay(ui.painter(), &t, runs, wanted, width - inset);
    let (rect, r) = ui.allocate_exact_size(vec2(width, g.size().y), Sense::hover());
    r.widget_info(|| WidgetInfo::labeled(role, true, line.what.words()));
    let at = rect.min + vec2(inset, 0.0);
    ui.painter().galley(at, g, t.col.ink);
}

/// A key and what it does: beside one another, or below where there is little room.
fn key_row(ui: &mut Ui, (key, what): (&str, &str), wanted: &[String]) {
    let t = theme::of(ui.ctx());
    let width = ui.available_width();
    let beside = width >= BESIDE;
    let (left, right) = if beside {
        (KEYS - 12.0, width - KEYS)
    } else {
        (width, width - POINT)
    };
    let p = ui.painter();
    let key_words = words::lay_plain(p, &t, (key, theme::bold(16.0)), wanted, left);
    let does = words::lay_plain(p, &t, (what, theme::regular(16.0)), wanted, right);
    let (under, height) = if beside {
        (vec2(KEYS, 0.0), key_words.size().y.max(does.size().y))
    } else {
        let y = key_words.size().y;
        (vec2(POINT, y), y + does.size().y)
    };
    let (rect, r) = ui.allocate_exact_size(vec2(width, height + 4.0), Sense::hover());
    r.widget_info(|| WidgetInfo::labeled(Role::ListItem, true, format!("{key}: {what}")));
    ui.painter().galley(rect.min, key_words, t.col.ink);
    ui.painter().galley(rect.min + under, does, t.col.ink);
}

/// A picture of the window, as wide as there is room, with a thin edge round it.
fn picture(ui: &mut Ui, state: &mut HelpState, name: &'static str, says: &str) {
    let t = theme::of(ui.ctx());
    let Some(texture) = state.pictures.get(ui.ctx(), name) else {
        return;
    };
    let size = texture.size_vec2();
    let width = ui.available_width().min(size.x);
    let size = vec2(width, (width * size.y / size.x).round());
    let (rect, r) = ui.allocate_exact_size(size, Sense::hover());
    r.widget_info(|| WidgetInfo::labeled(Role::Image, true, says));
    let whole = Rect::from_min_max(pos2(0.0, 0.0), pos2(1.0, 1.0));
    let radius = CornerRadius::same(theme::R_PAPER);
    let shape = egui::epaint::RectShape::filled(rect, radius, theme::AS_IS)
        .with_texture(texture.id(), whole);
    let p = ui.painter();
    p.add(shape);
    p.rect_stroke(rect, radius, t.seal_line(), StrokeKind::Outside);
    ui.add_space(8.0);
}
