//! The photograph with the frame that is moved over it, or under the brush.

use egui::{
    Color32, CursorIcon, Id, Key, Mesh, Modifiers, Pos2, Rect, Response, Role, Sense,
    Shape as Paint, Stroke, Ui, Vec2, WidgetInfo, pos2, vec2,
};

use super::cut::{Tool, Touch};
use super::{Doing, PhotoState};
use crate::intake::{Frame, Photo, Recipe, Shape};
use crate::ui::widgets::focus_ring;
use crate::ui::{regions, theme};

/// Smallest width of a frame, as a share of the picture's.
const NARROWEST: f32 = 0.05;
/// How near a corner counts as on it, in points.
const NEAR: f32 = 26.0;

/// Width and height of the picture after its quarter turns.
fn turned([w, h]: [u32; 2], recipe: &Recipe) -> [f32; 2] {
    let [w, h] = [w as f32, h as f32];
    match recipe.quarter_turns % 2 {
        1 => [h, w],
        _ => [w, h],
    }
}

/// The largest frame of a shape, in the middle.
pub fn largest(size: [u32; 2], recipe: &Recipe, shape: Shape) -> Frame {
    let frame = Frame {
        centre: [0.5, 0.5],
        width: 1.0,
        shape,
    };
    fitted(turned(size, recipe), recipe.straighten, frame)
}

/// Puts the frame of a recipe back inside the picture.
pub fn settle(size: [u32; 2], recipe: &mut Recipe) {
    let picture = turned(size, recipe);
    let degrees = recipe.straighten;
    recipe.frame = recipe.frame.map(|f| fitted(picture, degrees, f));
}

/// Half width and half height of what a tilted frame covers, in the picture's pixels.
fn reach([w, _]: [f32; 2], degrees: f32, frame: &Frame) -> [f32; 2] {
    let half = frame.width * w / 2.0;
    let high = half / frame.shape.ratio().unwrap_or(1.0);
    let (sin, cos) = degrees.abs().to_radians().sin_cos();
    [half * cos + high * sin, half * sin + high * cos]
}

/// The frame no larger than the picture and wholly on it.
fn fitted(picture: [f32; 2], degrees: f32, mut frame: Frame) -> Frame {
    frame.width = frame.width.clamp(NARROWEST, 1.0);
    let [rx, ry] = reach(picture, degrees, &frame);
    let over = (2.0 * rx / picture[0]).max(2.0 * ry / picture[1]);
    if over > 1.0 {
        frame.width /= over;
    }
    let reach = reach(picture, degrees, &frame);
    for axis in 0..2 {
        let least = (reach[axis] / picture[axis]).min(0.5);
        frame.centre[axis] = frame.centre[axis].clamp(least, 1.0 - least);
    }
    frame
}

/// The corners of a frame on the screen, clockwise from the upper left.
fn corners(place: Rect, picture: [f32; 2], recipe: &Recipe, frame: &Frame) -> [Pos2; 4] {
    let scale = place.width() / picture[0];
    let middle = place.min
        + vec2(
            frame.centre[0] * place.width(),
            frame.centre[1] * place.height(),
        );
    let half = frame.width * picture[0] / 2.0 * scale;
    let high = half / frame.shape.ratio().unwrap_or(1.0);
    // The picture turns clockwise to stand straight, so the frame leans the other way on it.
    let (sin, cos) = (-recipe.straighten.to_radians()).sin_cos();
    [(-half, -high), (half, -high), (half, high), (-half, high)]
        .map(|(x, y)| middle + vec2(x * cos - y * sin, x * sin + y * cos))
}

/// Shows the photograph and takes what is done on it.
pub fn show(ui: &mut Ui, state: &mut PhotoState, photo: &Photo, rect: Rect) {
    let t = theme::of(ui.ctx());
    ui.painter().rect_filled(rect, 14, t.col.well);
    let picture = turned(photo.size(), &state.recipe);
    let room = rect.shrink(8.0);
    let scale = (room.width() / picture[0]).min(room.height() / picture[1]);
    let place = Rect::from_center_size(room.center(), vec2(picture[0], picture[1]) * scale);
    state.cut.remember(photo);
    let shown = Recipe {
        frame: None,
        straighten: 0.0,
        mask: state.cut.mask(photo),
        ..state.recipe.clone()
    };
    state.looks.whole(ui, photo, &shown, place);
    let id = Id::unique("photo-stage");
    let r = ui.interact(place, id, Sense::click_and_drag());
    match state.doing {
        Doing::Frame => frame(ui, state, photo, place, &r),
        Doing::Cut => brush(ui, state, place, picture, &r),
    }
    focus_ring(ui, &r, place, 4);
}

fn frame(ui: &Ui, state: &mut PhotoState, photo: &Photo, place: Rect, r: &Response) {
    let picture = turned(photo.size(), &state.recipe);
    let name = "The part that is shown. Arrows move it, plus and minus make it larger and smaller.";
    r.widget_info(|| WidgetInfo::labeled(Role::Group, true, name));
    let Some(mut now) = state.recipe.frame else {
        return;
    };
    let at = corners(place, picture, &state.recipe, &now);
    let start = ui.input(|i| i.pointer.press_origin());
    let on_corner = start.is_some_and(|s| at.iter().any(|c| c.distance(s) < NEAR));
    let moved = r.drag_delta();
    let middle = at[0] + (at[2] - at[0]) / 2.0;
    if r.dragged() && (on_corner || state.looks.resizing) {
        state.looks.resizing = true;
        if let Some(p) = r.interact_pointer_pos() {
            let half = (at[2] - at[0]).length() / 2.0;
            now.width *= (p - middle).length() / half.max(1.0);
        }
    } else if r.dragged() {
        now.centre[0] += moved.x / place.width();
        now.centre[1] += moved.y / place.height();
    } else {
        state.looks.resizing = false;
    }
    if r.hovered() {
        let wheel = ui.input(|i| i.smooth_scroll_delta.y);
        now.width *= 1.0 + wheel / 600.0;
    }
    if r.has_focus() {
        by_keys(ui, r, &mut now);
    }
    let now = fitted(picture, state.recipe.straighten, now);
    state.recipe.frame = Some(now);
    let at = corners(place, picture, &state.recipe, &now);
    paint_frame(ui, place, at);
    let icon = if on_corner {
        CursorIcon::ResizeNwSe
    } else {
        CursorIcon::Move
    };
    let _ = r.clone().on_hover_cursor(icon);
}

fn by_keys(ui: &Ui, r: &Response, frame: &mut Frame) {
    regions::keep_arrows(ui, r.id);
    let press = |key| ui.input_mut(|i| i.count_and_consume_key(Modifiers::NONE, key)) as f32;
    frame.centre[0] += (press(Key::ArrowRight) - press(Key::ArrowLeft)) * 0.01;
    frame.centre[1] += (press(Key::ArrowDown) - press(Key::ArrowUp)) * 0.01;
    let larger = press(Key::Plus) + press(Key::Equals) - press(Key::Minus);
    frame.width *= 1.0 + 0.03 * larger;
}

/// A veil over what is not shown, the frame, and handles at its corners.
fn paint_frame(ui: &Ui, place: Rect, at: [Pos2; 4]) {
    let t = theme::of(ui.ctx());
    let p = ui.painter();
    let outer = [
        place.left_top(),
        place.right_top(),
        place.right_bottom(),
        place.left_bottom(),
    ];
    // Not as polygons: where the frame lies on the edge they have no height, and softening the edges
    // of such a one draws a line far beyond it.
    let mut veil = Mesh::default();
    for corner in outer.into_iter().chain(at) {
        veil.colored_vertex(corner, t.col.veil);
    }
    for i in 0..4 {
        let n = (i + 1) % 4;
        veil.add_triangle(i, n, n + 4);
        veil.add_triangle(i, n + 4, i + 4);
    }
    p.add(veil);
    let line = |width, colour| Stroke::new(width, colour);
    p.add(Paint::closed_line(at.to_vec(), line(4.0, t.col.card_ink)));
    p.add(Paint::closed_line(at.to_vec(), line(2.0, t.col.card)));
    for corner in at {
        p.circle(corner, 8.0, t.col.card, line(2.0, t.col.card_ink));
    }
}

/// A place on the screen as shares of the width of the photograph as it lies in its file.
fn source(place: Rect, picture: [f32; 2], turns: u8, at: Pos2) -> [f32; 2] {
    let [w, h] = picture;
    let x = (at.x - place.left()) / place.width() * w;
    let y = (at.y - place.top()) / place.height() * h;
    let ([x, y], width) = match turns % 4 {
        1 => ([y, w - x], h),
        2 => ([w - x, h - y], w),
        3 => ([h - y, x], h),
        _ => ([x, y], w),
    };
    [x / width, y / width]
}

fn brush(ui: &Ui, state: &mut PhotoState, place: Rect, picture: [f32; 2], r: &Response) {
    let name = "What is cut out. Arrows move the brush, Enter uses it.";
    r.widget_info(|| WidgetInfo::labeled(Role::Group, true, name));
    let turns = state.recipe.quarter_turns;
    let to = |p: Pos2| source(place, picture, turns, p);
    let tool = state.cut.tool;
    let touch = |from: Pos2, at: Pos2, cut: &super::Cut| match tool {
        Tool::Pour => Touch::Pour {
            at: to(at),
            tolerance: cut.tolerance,
        },
        Tool::Away | Tool::Back => Touch::Brush {
            from: to(from),
            to: to(at),
            radius: cut.radius,
            keep: tool == Tool::Back,
        },
    };
    if let Some(at) = r.interact_pointer_pos() {
        let before = at - r.drag_delta();
        if (r.drag_started() && tool != Tool::Pour) || (r.clicked() && !r.dragged()) {
            let touch = touch(before, at, &state.cut);
            state.cut.begin(touch);
        } else if r.dragged() && tool != Tool::Pour && r.drag_delta() != Vec2::ZERO {
            let touch = touch(before, at, &state.cut);
            state.cut.go_on(touch);
        }
    }
    if let Some(at) = cursor(ui, state, place, r)
        && ui.input_mut(|i| i.consume_key(Modifiers::NONE, Key::Enter))
    {
        let touch = touch(at, at, &state.cut);
        state.cut.begin(touch);
    }
    paint_brush(ui, state, place, r);
}

/// Where the keyboard holds the brush.
fn cursor(ui: &Ui, state: &mut PhotoState, place: Rect, r: &Response) -> Option<Pos2> {
    if !r.has_focus() {
        return None;
    }
    regions::keep_arrows(ui, r.id);
    let press = |key| ui.input_mut(|i| i.count_and_consume_key(Modifiers::NONE, key)) as f32;
    let at = &mut state.looks.cursor;
    at.x = (at.x + (press(Key::ArrowRight) - press(Key::ArrowLeft)) * 0.01).clamp(0.0, 1.0);
    at.y = (at.y + (press(Key::ArrowDown) - press(Key::ArrowUp)) * 0.01).clamp(0.0, 1.0);
    Some(pos2(
        place.left() + at.x * place.width(),
        place.top() + at.y * place.height(),
    ))
}

fn paint_brush(ui: &Ui, state: &PhotoState, place: Rect, r: &Response) {
    let t = theme::of(ui.ctx());
    let p = ui.painter().with_clip_rect(place);
    let held = state.looks.cursor;
    let keys = pos2(
        place.left() + held.x * place.width(),
        place.top() + held.y * place.height(),
    );
    let at = r.hover_pos().or(r.has_focus().then_some(keys));
    let Some(at) = at else { return };
    let radius = match state.cut.tool {
        Tool::Pour => 6.0,
        _ => (state.cut.radius * place.width().max(place.height())).max(3.0),
    };
    for (width, colour) in [(4.0, t.col.card_ink), (2.0, t.col.card)] {
        let stroke = Stroke::new(width, colour);
        p.circle(at, radius, Color32::TRANSPARENT, stroke);
    }
    let _ = r.clone().on_hover_cursor(CursorIcon::Crosshair);
}
