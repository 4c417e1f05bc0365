//! The paper: the drawing, what is faintly below, the squares, and the hand on it.

use egui::{
    Color32, CornerRadius, CursorIcon, Event, Id, Painter, PointerButton, Pos2, Rect, Role, Sense,
    Shape, Stroke, StrokeKind, TouchPhase, Ui, WidgetInfo, vec2,
};
use kurbo::PathEl;

use super::hand::Doing;
use super::{DrawingState, Tool, keys};
use crate::drawing::gesture::{Gesture, Look, Pen, Spot};
use crate::drawing::sketch::{GRID, shape};
use crate::drawing::wide::width_at;
use crate::symbols::art::{CANVAS, Node};
use crate::ui::desk::Desk;
use crate::ui::theme::{self, Theme};
use crate::ui::widgets::{focus_ring, keyboard_led};
use crate::units::path::{Path, Seg};

/// The paper, to a keyboard.
pub fn id() -> Id {
    Id::unique("draw-paper")
}

/// Shows the paper and does what the hand does.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut DrawingState, rect: Rect) {
    let t = theme::of(ui.ctx());
    let r = ui.interact(rect, id(), Sense::click_and_drag());
    let count = state.sketch.things().len();
    r.widget_info(|| {
        let says = format!(
            "Paper, {count} {}. Arrows move the pen, Space puts it down and lifts it, Enter \
             finishes a shape",
            if count == 1 { "thing" } else { "things" }
        );
        WidgetInfo::labeled(Role::Button, true, says)
    });
    hand(ui, state, rect, r.contains_pointer());
    if r.has_focus() {
        keys::pen(ui, state, r.id);
    }
    let p = ui.painter().with_clip_rect(rect);
    p.rect_filled(rect, CornerRadius::same(theme::R_PAPER), t.col.card);
    if let Some(below) = &state.below {
        desk.pictures.symbol(&p, rect, below, Default::default());
        // The same paper again, thin: what is below shows through.
        p.rect_filled(rect, CornerRadius::ZERO, t.col.card.gamma_multiply(0.76));
    }
    if state.hand.grid {
        squares(&p, &t, rect);
    }
    let sketch = &state.sketch;
    desk.pictures
        .sketch(&p, rect, "paper", sketch.revision(), || sketch.art());
    under_way(&p, &t, state, rect);
    if r.has_focus() && keyboard_led(ui.ctx()) {
        point(&p, &t, to_screen(rect, state.point));
    }
    if state.hand.tool == Tool::Eraser
        && let Some(at) = r.hover_pos()
    {
        let half = state.hand.eraser as f32 / 2.0 * rect.width() / CANVAS;
        p.circle_stroke(at, half, Stroke::new(1.5, t.col.card_ink));
    }
    let edge = CornerRadius::same(theme::R_PAPER);
    ui.painter()
        .rect_stroke(rect, edge, t.seal_line(), StrokeKind::Outside);
    focus_ring(ui, &r, rect, theme::R_PAPER);
    r.on_hover_cursor(CursorIcon::Crosshair);
}

/// Lines of the grid; the margin that the built-in symbols keep is a little stronger.
fn squares(p: &Painter, t: &Theme, rect: Rect) {
    let unit = rect.width() / CANVAS;
    let count = (f64::from(CANVAS) / GRID) as usize;
    for i in 1..count {
        let margin = i == 1 || i + 1 == count;
        let line = Stroke::new(
            1.0,
            t.col
                .card_soft
                .gamma_multiply(if margin { 0.5 } else { 0.2 }),
        );
        let far = i as f32 * GRID as f32 * unit;
        p.vline(rect.left() + far, rect.y_range(), line);
        p.hline(rect.x_range(), rect.top() + far, line);
    }
}

/// Where the keyboard's pen is.
fn point(p: &Painter, t: &Theme, at: Pos2) {
    for (width, colour) in [(5.0, t.col.card), (2.0, t.col.card_ink)] {
        let line = Stroke::new(width, colour);
        p.circle_stroke(at, 9.0, line);
        for (x, y) in [(1.0, 0.0), (-1.0, 0.0), (0.0, 1.0), (0.0, -1.0)] {
            let way = vec2(x, y);
            p.line_segment([at + way * 4.0, at + way * 15.0], line);
        }
    }
}

fn to_screen(rect: Rect, s: Spot) -> Pos2 {
    let unit = rect.width() / CANVAS;
    rect.min + vec2(s.x as f32, s.y as f32) * unit
}

/// Everything the pointer did since the last frame, in its order: a fast hand passes many places
/// between two frames.
fn hand(ui: &Ui, state: &mut DrawingState, rect: Rect, over: bool) {
    let unit = rect.width() / CANVAS;
    let spot = |pos: Pos2, force: Option<f64>| {
        let at = (pos - rect.min) / unit;
        Spot {
            x: f64::from(at.x),
            y: f64::from(at.y),
            force,
        }
    };
    for event in ui.input(|i| i.events.clone()) {
        match event {
            Event::Touch { phase, force, .. } => {
                let on = matches!(phase, TouchPhase::Start | TouchPhase::Move);
                state.force = force.map(f64::from).filter(|_| on);
            }
            Event::PointerButton {
                pos,
                button: PointerButton::Primary,
                pressed: true,
                ..
            } if over && rect.contains(pos) => {
                ui.memory_mut(|m| m.request_focus(id()));
                let done = state.hand.press(spot(pos, state.force));
                state.draw(done);
            }
            Event::PointerMoved(pos) => state.hand.moved(spot(pos, state.force)),
            Event::PointerButton {
                button: PointerButton::Primary,
                pressed: false,
                ..
            } => {
                let done = state.hand.lift();
                state.draw(done);
            }
            _ => {}
        }
    }
}

/// What the hand is at, painted by the window itself until it is finished.
fn under_way(p: &Painter, t: &Theme, state: &DrawingState, rect: Rect) {
    let unit = rect.width() / CANVAS;
    let pen = state.pen;
    match (&state.hand.doing, state.hand.tool) {
        (Doing::Nothing, _) => {}
        (Doing::Down(spots), Tool::Eraser) => {
            let width = state.hand.eraser as f32 * unit;
            by_hand(p, rect, spots, |_| width, t.col.card);
        }
        (Doing::Down(spots), _) => {
            let forces = spots.iter().filter_map(|s| s.force);
            let (a, b) = forces.fold((1.0_f64, 0.0_f64), |(a, b), f| (a.min(f), b.max(f)));
            let width = |s: &Spot| match s.force {
                Some(f) if b - a > 0.05 => width_at(f, f64::from(pen.width)) as f32 * unit,
                _ => pen.width * unit,
            };
            by_hand(p, rect, spots, width, theme::from_rgb(pen.colour));
        }
        (Doing::Corners(corners, at), tool) => {
            let open: Vec<Spot> = corners.iter().chain([at]).copied().collect();
            let line: Vec<Pos2> = open.iter().map(|s| to_screen(rect, *s)).collect();
            let thin = Stroke::new(1.5, t.col.card_ink);
            if tool == Tool::Rounded {
                preview(p, rect, &Gesture::Rounded(open), pen);
            }
            p.add(Shape::line(line.clone(), thin));
            for corner in line {
                p.circle(corner, 5.0, t.col.card, thin);
            }
        }
        _ => {
            if let Some(gesture) = state.hand.gesture() {
                preview(p, rect, &gesture, pen);
            }
        }
    }
}

/// The way of a hand.
fn by_hand(p: &Painter, rect: Rect, spots: &[Spot], width: impl Fn(&Spot) -> f32, colour: Color32) {
    for s in spots {
        p.circle_filled(to_screen(rect, *s), width(s) / 2.0, colour);
    }
    for pair in spots.windows(2) {
        let ends = [to_screen(rect, pair[0]), to_screen(rect, pair[1])];
        p.line_segment(ends, Stroke::new(width(&pair[1]), colour));
    }
}

/// The line of a shape that is not finished.
fn preview(p: &Painter, rect: Rect, gesture: &Gesture, pen: Pen) {
    let line = Pen {
        look: Look::Line,
        ..pen
    };
    let Some(Node::Shape(shape)) = shape(gesture, line) else {
        return;
    };
    let unit = rect.width() / CANVAS;
    let stroke = Stroke::new(pen.width * unit, theme::from_rgb(pen.colour));
    p.add(Shape::line(points(&shape.path, rect), stroke));
}

/// Points along a path.
fn points(path: &Path<[f32; 2]>, rect: Rect) -> Vec<Pos2> {
    let at = |q: [f32; 2]| kurbo::Point::new(f64::from(q[0]), f64::from(q[1]));
    let els = path.segs.iter().map(|seg| match *seg {
        Seg::Move(a) => PathEl::MoveTo(at(a)),
        Seg::Line(a) => PathEl::LineTo(at(a)),
        Seg::Cubic(a, b, c) => PathEl::CurveTo(at(a), at(b), at(c)),
        Seg::Close => PathEl::ClosePath,
    });
    let mut out = Vec::new();
    kurbo::flatten(els, 0.1, |el| match el {
        PathEl::MoveTo(q) | PathEl::LineTo(q) => out.push(to_screen(rect, Spot::new(q.x, q.y))),
        _ => out.extend(out.first().copied()),
    });
    out
}
