//! What one draws with: tools, widths, colours, and what is done to the whole.

use egui::{
    CornerRadius, CursorIcon, Id, Rect, Response, Role, Sense, Stroke, StrokeKind, Ui, Vec2,
    WidgetInfo, vec2,
};

use super::{DrawingState, Tool, Use};
use crate::drawing::colours::{COLOURS, WIDTHS};
use crate::drawing::gesture::Look;
use crate::drawing::sketch::Sketch;
use crate::symbols::own;
use crate::symbols::variant::Variant;
use crate::ui::desk::Desk;
use crate::ui::icons::Icon;
use crate::ui::picker::{For, Picker};
use crate::ui::theme;
use crate::ui::widgets::button::{Button, Weight};
use crate::ui::widgets::focus_ring;

/// Side by side.
const ACROSS: usize = 3;
const GAP: f32 = 4.0;
/// Width of all.
pub const WIDTH: f32 = theme::CONTROL * ACROSS as f32 + GAP * (ACROSS - 1) as f32 + 22.0;

/// The tools with their names, what each does and its key.
pub const TOOLS: [(Tool, Icon, &str, egui::Key); 8] = [
    (Tool::Pen, Icon::Pen, "Pen", egui::Key::P),
    (Tool::Eraser, Icon::Eraser, "Eraser", egui::Key::E),
    (Tool::Fill, Icon::Pour, "Fill", egui::Key::F),
    (Tool::Line, Icon::Straight, "Line", egui::Key::L),
    (Tool::Rectangle, Icon::Box, "Rectangle", egui::Key::R),
    (Tool::Ellipse, Icon::Oval, "Ellipse", egui::Key::O),
    (Tool::Polygon, Icon::Corners, "Corners", egui::Key::C),
    (Tool::Rounded, Icon::Bends, "Curves", egui::Key::B),
];

const LOOKS: [(Look, &str); 3] = [
    (Look::Both, "Shapes: colour with a line in ink"),
    (Look::Area, "Shapes: colour without a line"),
    (Look::Line, "Shapes: line only"),
];

/// What the keyboard reaches first.
pub fn first() -> Id {
    Id::unique(("button", ("draw-tool", 0)))
}

/// Shows the column.
pub fn show(ui: &mut Ui, desk: &Desk<'_>, state: &mut DrawingState) {
    ui.spacing_mut().item_spacing = Vec2::splat(GAP);
    kinds(ui, state);
    ui.add_space(4.0);
    widths(ui, state);
    looks(ui, state);
    ui.add_space(4.0);
    colours(ui, state);
    ui.add_space(4.0);
    steps(ui, state);
    below(ui, desk, state);
}

fn kinds(ui: &mut Ui, state: &mut DrawingState) {
    let mut chosen = None;
    rows(ui, TOOLS.len() + 1, |ui, i| {
        let Some((tool, icon, name, key)) = TOOLS.get(i) else {
            let b = Button::new("draw-grid", "Squares to draw on (G)")
                .name("Squares to draw on")
                .icon_only(Icon::Squares)
                .role(Role::CheckBox)
                .weight(Weight::Chosen(state.hand.grid));
            if b.show(ui).clicked() {
                state.hand.grid = !state.hand.grid;
            }
            return;
        };
        let label = format!("{name} ({})", key.name());
        let b = Button::new(("draw-tool", i), &label)
            .name(name)
            .icon_only(*icon)
            .role(Role::RadioButton)
            .weight(Weight::Chosen(state.hand.tool == *tool));
        if b.show(ui).clicked() {
            chosen = Some(*tool);
        }
    });
    if let Some(tool) = chosen {
        state.take(tool);
    }
}

/// Squares side by side.
fn rows(ui: &mut Ui, count: usize, mut add: impl FnMut(&mut Ui, usize)) {
    for row in 0..count.div_ceil(ACROSS) {
        ui.horizontal(|ui| {
            for i in row * ACROSS..((row + 1) * ACROSS).min(count) {
                add(ui, i);
            }
        });
    }
}

/// A square to press, with its frame painted.
fn square(ui: &mut Ui, id: Id, on: bool, name: &str) -> (Response, Rect) {
    let t = theme::of(ui.ctx());
    let (_, rect) = ui.allocate_space(Vec2::splat(theme::CONTROL));
    let r = ui.interact(rect, id, Sense::click());
    r.widget_info(|| WidgetInfo::selected(Role::RadioButton, true, on, name));
    let edge = if r.hovered() {
        Stroke::new(2.0, t.col.ink)
    } else {
        t.edge()
    };
    let fill = if on { t.col.peg } else { t.col.panel };
    let corner = CornerRadius::same(theme::R_CONTROL);
    ui.painter()
        .rect(rect, corner, fill, edge, StrokeKind::Inside);
    focus_ring(ui, &r, rect, theme::R_CONTROL);
    let r = r.on_hover_cursor(CursorIcon::PointingHand);
    (r.on_hover_text(name), rect)
}

fn widths(ui: &mut Ui, state: &mut DrawingState) {
    let names = ["Fine line (1)", "Usual line (2)", "Broad line (3)"];
    let mut chosen = None;
    rows(ui, WIDTHS.len(), |ui, i| {
        let on = state.width == i;
        let (r, rect) = square(ui, Id::unique(("draw-width", i)), on, names[i]);
        let t = theme::of(ui.ctx());
        let ink = if on { t.col.on_peg } else { t.col.ink };
        // As broad as on a paper of 360 points.
        let line = Stroke::new(WIDTHS[i] * 1.5, ink);
        let (a, b) = (vec2(-10.0, 7.0), vec2(10.0, -7.0));
        let mid = rect.center();
        ui.painter().line_segment([mid + a, mid + b], line);
        for end in [a, b] {
            ui.painter().circle_filled(mid + end, line.width / 2.0, ink);
        }
        if r.clicked() {
            chosen = Some(i);
        }
    });
    if let Some(i) = chosen {
        state.set_width(i);
    }
}

fn looks(ui: &mut Ui, state: &mut DrawingState) {
    let mut chosen = None;
    rows(ui, LOOKS.len(), |ui, i| {
        let (look, name) = LOOKS[i];
        let on = state.pen.look == look;
        let (r, rect) = square(ui, Id::unique(("draw-look", i)), on, name);
        let t = theme::of(ui.ctx());
        let ink = if on { t.col.on_peg } else { t.col.ink };
        let p = ui.painter();
        let inner = Rect::from_center_size(rect.center(), vec2(24.0, 18.0));
        let corner = CornerRadius::same(5);
        if look != Look::Line {
            p.rect_filled(inner, corner, ink.gamma_multiply(0.45));
        }
        if look != Look::Area {
            p.rect_stroke(inner, corner, Stroke::new(2.4, ink), StrokeKind::Middle);
        }
        if r.clicked() {
            chosen = Some(look);
        }
    });
    state.pen.look = chosen.unwrap_or(state.pen.look);
}

fn colours(ui: &mut Ui, state: &mut DrawingState) {
    let mut chosen = None;
    rows(ui, COLOURS.len(), |ui, i| {
        let (name, colour) = COLOURS[i];
        let on = state.pen.colour == colour;
        let t = theme::of(ui.ctx());
        let (_, rect) = ui.allocate_space(Vec2::splat(theme::CONTROL));
        let id = Id::unique(("draw-colour", i));
        let r = ui.interact(rect, id, Sense::click());
        r.widget_info(|| WidgetInfo::selected(Role::RadioButton, true, on, name));
        let p = ui.painter();
        let drop = rect.shrink(if on { 8.0 } else { 4.0 });
        let line = Stroke::new(1.2, t.col.edge);
        let corner = CornerRadius::same(9);
        p.rect(
            drop,
            corner,
            theme::from_rgb(colour),
            line,
            StrokeKind::Inside,
        );
        if on || r.hovered() {
            let ring = Stroke::new(if on { 3.0 } else { 1.5 }, t.col.ink);
            let outer = CornerRadius::same(theme::R_CONTROL);
            p.rect_stroke(rect.shrink(1.0), outer, ring, StrokeKind::Inside);
        }
        focus_ring(ui, &r, rect, theme::R_CONTROL);
        let r = r.on_hover_cursor(CursorIcon::PointingHand);
        if r.on_hover_text(name).clicked() {
            chosen = Some(colour);
        }
    });
    state.pen.colour = chosen.unwrap_or(state.pen.colour);
}

/// Undo, redo, clear.
fn steps(ui: &mut Ui, state: &mut DrawingState) {
    let (undo, redo) = (state.sketch.can_undo(), state.sketch.can_redo());
    let undo = undo || state.hand.gesture().is_some();
    let all = [
        ("Undo (Ctrl+Z)", Icon::Undo, undo),
        ("Redo (Ctrl+Shift+Z)", Icon::Redo, redo),
        ("Clear the sheet", Icon::Bin, !state.sketch.is_empty()),
    ];
    rows(ui, all.len(), |ui, i| {
        let (label, icon, enabled) = all[i];
        let name = label.split(" (").next().unwrap_or(label);
        let b = Button::new(("draw-step", i), label)
            .name(name)
            .icon_only(icon)
            .enabled(enabled);
        if b.show(ui).clicked() {
            match i {
                0 => state.undo(),
                1 => state.redo(),
                _ => {
                    state.hand.doing = super::hand::Doing::Nothing;
                    state.sketch.clear();
                }
            }
        }
    });
}

/// A symbol faintly below, to trace or to start from.
fn below(ui: &mut Ui, desk: &Desk<'_>, state: &mut DrawingState) {
    ui.horizontal(|ui| {
        let b = Button::new("draw-below", "A symbol faintly below, to trace")
            .icon_only(Icon::Below)
            .weight(Weight::Chosen(state.below.is_some()));
        if b.show(ui).clicked() {
            state.picker = Some(Picker::new(For::Drawing(Use::Below)));
        }
        let Some(below) = state.below.clone() else {
            return;
        };
        let drawn = own::drawn(desk.view.club, &below, Variant::default());
        let has_shapes = Sketch::can_start_from(&drawn.art);
        let b = Button::new("draw-take-over", "Start from it: its shapes become yours")
            .icon_only(Icon::TakeOver)
            .enabled(has_shapes);
        if b.show(ui).clicked() {
            state.sketch.start_from(&drawn.art);
            state.below = None;
        }
        let b = Button::new("draw-nothing-below", "Nothing below").icon_only(Icon::Cross);
        if b.show(ui).clicked() {
            state.below = None;
        }
    });
}
