//! Go through together: the day one step at a time in full view, for participant and parent. A
//! key, a tap or a switch moves the card to the finished place; nothing else is on the screen, and
//! leaving takes a long press so that nobody leaves by accident.

use egui::{
    Align2, Color32, CornerRadius, CursorIcon, Id, Key, Modifiers, Painter, Pos2, Rect, Role,
    Sense, Shape, Stroke, StrokeKind, Ui, Vec2, WidgetInfo, pos2, vec2,
};

use super::boards::face::face;
use super::desk::Desk;
use super::icons::{self, Icon};
use super::strand::{Rope, paint};
use super::theme;
use super::widgets::card::{Lie, face_down, peg, tile};
use super::widgets::{focus_ring, words};
use crate::model::board::{Board, Step, StepState};
use crate::model::ids::SymbolId;
use crate::symbols::lexicon::lexicon;
use crate::symbols::library::library;
use crate::ui::pictures::Eyes;

/// Seconds to hold before the view is left.
const HOLD: f64 = 0.8;
/// Seconds a card takes to the finished place.
const MOVE: f64 = 0.35;
/// Below this width a window is small.
const SMALL: f32 = 900.0;
/// The cards that are always there.
const ALWAYS: [&str; 5] = ["help", "stop", "break", "toilet", "quiet_place"];

/// Where the two have come to.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct TogetherState {
    /// How many steps are finished.
    done: usize,
    /// When the last card began to move.
    moved: Option<f64>,
    /// Since when leaving is held.
    held: Option<f64>,
}

/// Where things stand for a size of window.
struct Places {
    now: Rect,
    next: Rect,
    finished: Rect,
    always: Rect,
    leave: Pos2,
    rope_y: f32,
}

impl Places {
    fn of(rect: Rect) -> Self {
        // In a small window the cards at the side have their words beside the picture.
        let side = if rect.width() < SMALL {
            172.0
        } else {
            (rect.width() * 0.135).min(200.0)
        };
        let always = Rect::from_min_max(
            pos2(rect.right() - side, rect.top() + 14.0),
            rect.max - vec2(14.0, 14.0),
        );
        let low = (rect.height() * 0.235).clamp(96.0, 200.0);
        let finished = Rect::from_min_max(
            pos2(rect.left() + 36.0, rect.bottom() - low - 16.0),
            pos2(always.left() - 40.0, rect.bottom() - 16.0),
        );
        let rope_y = rect.top() + (rect.height() * 0.115).max(58.0);
        let room = vec2(
            always.left() - rect.left() - 60.0,
            finished.top() - rope_y - 44.0,
        );
        let large = room.y.min(room.x * 0.46);
        let small = (large * 0.68).min(room.x * 0.34);
        let now = Rect::from_min_size(
            pos2(rect.left() + room.x * 0.08, rope_y + 14.0),
            Vec2::splat(large),
        );
        let next_x = (now.right() + always.left() - small) / 2.0;
        let next = Rect::from_min_size(pos2(next_x, rope_y + 14.0), Vec2::splat(small));
        let leave = pos2(always.left() - 74.0, finished.top() - 40.0);
        Self {
            now,
            next,
            finished,
            always,
            leave,
            rope_y,
        }
    }

    /// The place of a finished card among so many: all fit side by side where they can.
    fn slot(&self, i: usize, count: usize) -> Rect {
        let left = self.finished.left() + 150.0;
        let room = self.finished.right() - 16.0 - left;
        let n = count.max(1) as f32;
        let high = (self.finished.height() - 44.0).max(56.0);
        let side = ((room - 8.0 * (n - 1.0)) / n).min(high).max(56.0);
        let step = (side + 8.0).min((room - side) / (n - 1.0).max(1.0));
        let top = self.finished.center().y - side / 2.0 + 10.0;
        Rect::from_min_size(pos2(left + i as f32 * step, top), Vec2::splat(side))
    }
}

/// Shows the view; says whether it was left.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut TogetherState, rect: Rect) -> bool {
    let (Some(person), Some(board)) = (desk.view.participant, desk.view.board()) else {
        return true;
    };
    let n = board.steps.len();
    state.done = state.done.min(n);
    let t = theme::of(ui.ctx());
    ui.painter()
        .rect_filled(rect, CornerRadius::ZERO, t.col.ground);
    let places = Places::of(rect);
    let mut rope = Rope {
        points: vec![pos2(rect.left(), places.rope_y - 4.0)],
        arrows: Vec::new(),
    };
    rope.sag_to(pos2(places.now.center().x, places.rope_y));
    rope.sag_to(pos2(places.next.center().x, places.rope_y));
    rope.sag_to(pos2(places.always.left(), places.rope_y - 4.0));
    paint::line(ui.painter(), &t, &rope.points, 9.0);
    basket(ui.painter(), places.finished);
    always(ui, desk, &places, Eyes::of(person));
    finished(ui, desk, state, &places, board, Eyes::of(person));
    heading(
        ui,
        places.now,
        places.rope_y,
        if state.done < n {
            "Now"
        } else {
            "All finished"
        },
    );
    now(ui, desk, state, &places, board, Eyes::of(person));
    if let Some(step) = board.steps.get(state.done + 1) {
        heading(ui, places.next, places.rope_y, "Next");
        large(ui, desk, places.next, step, Eyes::of(person), 30.0);
        let at = pos2(places.next.center().x, places.rope_y);
        peg(ui.painter(), at, "", t.col.peg, t.col.on_peg);
    }
    keys(ui, state, n);
    leave(ui, state, places.leave)
}

fn heading(ui: &Ui, card: Rect, rope_y: f32, words: &str) {
    let t = theme::of(ui.ctx());
    let low = rope_y < ui.max_rect().top() + 66.0;
    let (up, size) = if low { (34.0, 26.0) } else { (36.0, 34.0) };
    let at = pos2(card.left(), rope_y - up);
    ui.painter()
        .text(at, Align2::LEFT_CENTER, words, theme::bold(size), t.col.ink);
}

/// A step as a very large card.
fn large(ui: &Ui, desk: &mut Desk<'_>, rect: Rect, step: &Step, figure: Eyes, size: f32) {
    let t = theme::of(ui.ctx());
    let p = ui.painter();
    if step.state == StepState::NotToday {
        let plate = face_down(p, &t, rect);
        let (upper, lower) = plate.split_top_bottom_at_fraction(0.5);
        words::line(
            p,
            upper,
            Align2::CENTER_CENTER,
            "Not today",
            theme::bold(size),
            t.col.card_ink,
        );
        words::label(
            p,
            lower,
            &step.label,
            &[size * 0.8, size * 0.6, 16.0],
            1,
            t.col.card_ink,
        );
        return;
    }
    let corner = CornerRadius::same(26);
    p.add(t.shadow().as_shape(rect, corner));
    p.rect(rect, corner, t.col.seal, t.seal_line(), StrokeKind::Inside);
    let paper = rect.shrink(rect.width() * 0.05);
    p.rect_filled(paper, CornerRadius::same(14), t.col.card);
    let inner = paper.shrink(rect.width() * 0.03);
    let (picture, text) = inner.split_top_bottom_at_y(inner.bottom() - size * 1.7);
    desk.pictures.symbol(p, picture, &step.symbol, figure);
    words::label(
        p,
        text,
        &step.label,
        &[size, size * 0.8, size * 0.6, 16.0],
        1,
        t.col.card_ink,
    );
}

/// The card that is done now: a tap or a key finishes it.
fn now(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    state: &mut TogetherState,
    places: &Places,
    board: &Board,
    figure: Eyes,
) {
    let t = theme::of(ui.ctx());
    let Some(step) = board.steps.get(state.done) else {
        let p = ui.painter();
        p.text(
            places.now.center(),
            Align2::CENTER_CENTER,
            "The day is finished.",
            theme::regular(28.0),
            t.col.soft,
        );
        return;
    };
    let id = Id::unique("together-now");
    let r = ui.interact(places.now, id, Sense::click());
    let n = board.steps.len();
    let what = if step.state == StepState::NotToday {
        "not today"
    } else {
        "press when finished"
    };
    r.widget_info(|| {
        WidgetInfo::labeled(
            Role::Button,
            true,
            format!(
                "Now: {}, step {} of {n}, {what}",
                step.label,
                state.done + 1
            ),
        )
    });
    large(ui, desk, places.now, step, figure, 40.0);
    let at = Rect::from_center_size(
        pos2(places.now.center().x, places.rope_y),
        Vec2::splat(46.0),
    );
    ui.painter()
        .rect_filled(at, CornerRadius::same(14), t.col.accent);
    focus_ring(ui, &r, places.now, 26);
    if ui.memory(|m| m.focused().is_none()) {
        r.request_focus();
    }
    if r.on_hover_cursor(CursorIcon::PointingHand).clicked() {
        finish(ui, state, n);
    }
}

fn finish(ui: &Ui, state: &mut TogetherState, n: usize) {
    if state.done < n {
        state.done += 1;
        state.moved = Some(ui.input(|i| i.time));
    }
}

/// Keys beside the button's own Space and Enter.
fn keys(ui: &Ui, state: &mut TogetherState, n: usize) {
    let pressed = |key| ui.input_mut(|i| i.consume_key(Modifiers::NONE, key));
    if pressed(Key::ArrowRight) || pressed(Key::PageDown) {
        finish(ui, state, n);
    }
    if pressed(Key::ArrowLeft) || pressed(Key::PageUp) || pressed(Key::Backspace) {
        state.done = state.done.saturating_sub(1);
        state.moved = None;
    }
}

/// The finished place: a wide shallow hollow.
fn basket(p: &Painter, rect: Rect) {
    let t = theme::of(p.ctx());
    let (upper, lower) = basket_edges(rect);
    let mut mesh = egui::Mesh::default();
    for at in upper.iter().zip(&lower).flat_map(|(a, b)| [*a, *b]) {
        mesh.colored_vertex(at, t.col.well);
    }
    for i in 0..upper.len() as u32 - 1 {
        mesh.add_triangle(2 * i, 2 * i + 1, 2 * i + 2);
        mesh.add_triangle(2 * i + 1, 2 * i + 3, 2 * i + 2);
    }
    p.add(Shape::mesh(mesh));
    let edge = upper.iter().chain(lower.iter().rev()).copied().collect();
    p.add(Shape::closed_line(edge, Stroke::new(2.0, t.col.edge)));
    let at = pos2(rect.left() + 26.0, rect.center().y + 6.0);
    p.text(
        at,
        Align2::LEFT_CENTER,
        "Finished",
        theme::bold(24.0),
        t.col.ink,
    );
}

/// Upper edge, sagging, and lower edge, round at its ends, with points above one another.
fn basket_edges(rect: Rect) -> (Vec<Pos2>, Vec<Pos2>) {
    const ROUND: f32 = 20.0;
    let width = rect.width();
    let ends =
        (0..=8).map(|i| ROUND * (1.0 - (i as f32 / 8.0 * std::f32::consts::FRAC_PI_2).cos()));
    let ends: Vec<f32> = ends.collect();
    let middle = (1..40).map(|i| ROUND + (width - 2.0 * ROUND) * i as f32 / 40.0);
    let xs: Vec<f32> = ends
        .iter()
        .copied()
        .chain(middle)
        .chain(ends.iter().rev().map(|x| width - x))
        .collect();
    let upper = |x: f32| {
        let s = 2.0 * x / width - 1.0;
        pos2(rect.left() + x, rect.top() + 24.0 * (1.0 - s.powi(4)))
    };
    let lower = |x: f32| {
        let from_end = x.min(width - x).min(ROUND);
        let up = ROUND - (ROUND * ROUND - (ROUND - from_end).powi(2)).max(0.0).sqrt();
        pos2(rect.left() + x, rect.bottom() - up)
    };
    (
        xs.iter().map(|x| upper(*x)).collect(),
        xs.iter().map(|x| lower(*x)).collect(),
    )
}

/// The finished cards; the last one may still be on its way. A tap takes the last one back.
fn finished(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    state: &mut TogetherState,
    places: &Places,
    board: &Board,
    figure: Eyes,
) {
    let t = theme::of(ui.ctx());
    let now = ui.input(|i| i.time);
    let gone = state.moved.map_or(1.0, |from| {
        if t.still {
            1.0
        } else {
            ((now - from) / MOVE).min(1.0)
        }
    });
    if gone < 1.0 {
        ui.ctx().request_repaint();
    } else {
        state.moved = None;
    }
    for (i, step) in board.steps.iter().take(state.done).enumerate() {
        let home = places.slot(i, board.steps.len());
        let last = i + 1 == state.done;
        let rect = if last && gone < 1.0 {
            between(places.now, home, gone as f32)
        } else {
            home
        };
        let p = ui.painter();
        if step.state == StepState::NotToday {
            let plate = face_down(p, &t, rect);
            words::label(p, plate, "Not today", &[15.0, 13.0], 2, t.col.card_ink);
        } else {
            let paper = tile(p, &t, rect, Lie::Ground);
            small_face(p, desk, paper, step, figure);
        }
        if last {
            let r = ui.interact(home, Id::unique("together-back"), Sense::click());
            r.widget_info(|| {
                WidgetInfo::labeled(Role::Button, true, format!("Take back {}", step.label))
            });
            focus_ring(ui, &r, home, theme::R_CARD);
            if r.clicked() {
                state.done -= 1;
                state.moved = None;
            }
        }
    }
}

/// A finished step: small ones show their picture alone.
fn small_face(p: &Painter, desk: &mut Desk<'_>, paper: Rect, step: &Step, figure: Eyes) {
    if paper.width() < 84.0 {
        let inner = paper.shrink(3.0);
        desk.pictures.symbol(p, inner, &step.symbol, figure);
    } else {
        face(p, desk.pictures, paper, &step.symbol, &step.label, figure);
    }
}

/// On the way from one place to another, slowing down towards the end.
fn between(from: Rect, to: Rect, part: f32) -> Rect {
    let s = 1.0 - (1.0 - part).powi(3);
    let mix = |a: Pos2, b: Pos2| a + (b - a) * s;
    Rect::from_min_max(mix(from.min, to.min), mix(from.max, to.max))
}

/// Help, stop, break, toilet, quiet place: to point at.
fn always(ui: &Ui, desk: &mut Desk<'_>, places: &Places, figure: Eyes) {
    let t = theme::of(ui.ctx());
    let p = ui.painter();
    let rect = places.always;
    p.rect(
        rect,
        CornerRadius::same(26),
        t.col.panel,
        t.edge(),
        StrokeKind::Inside,
    );
    let there: Vec<SymbolId> = ALWAYS
        .iter()
        .map(|s| SymbolId::new(s))
        .filter(|s| library().get(s).is_some())
        .collect();
    let named = lexicon(&desk.view.club.rules.words);
    let each = (rect.height() - 20.0) / there.len().max(1) as f32;
    let side = (each - 10.0).min(rect.width() - 28.0);
    for (i, id) in there.iter().enumerate() {
        let mid = pos2(rect.center().x, rect.top() + 10.0 + (i as f32 + 0.5) * each);
        let wide = side < 84.0;
        let size = if wide {
            vec2(rect.width() - 20.0, side)
        } else {
            Vec2::splat(side)
        };
        let card = Rect::from_center_size(mid, size);
        let label = named.label(id);
        let r = ui.interact(card, Id::unique(("always", i)), Sense::hover());
        r.widget_info(|| WidgetInfo::labeled(Role::Image, true, label));
        let paper = tile(p, &t, card, Lie::Flat);
        if wide {
            let (picture, text) = paper.split_left_right_at_x(paper.left() + paper.height());
            let text = text.shrink2(vec2(4.0, 0.0));
            let sizes = [19.0, 17.0, 15.0];
            desk.pictures.symbol(p, picture.shrink(2.0), id, figure);
            words::label(p, text, label, &sizes, 2, t.col.card_ink);
        } else {
            face(p, desk.pictures, paper, id, label, figure);
        }
    }
}

/// A ring that fills while it is held, with the mouse or with Escape.
fn leave(ui: &mut Ui, state: &mut TogetherState, at: Pos2) -> bool {
    let t = theme::of(ui.ctx());
    let rect = icons::square(at, 48.0);
    let r = ui.interact(rect, Id::unique("together-leave"), Sense::click_and_drag());
    r.widget_info(|| WidgetInfo::labeled(Role::Button, true, "Leave: hold this or the Escape key"));
    let now = ui.input(|i| i.time);
    let holds =
        r.is_pointer_button_down_on() || r.dragged() || ui.input(|i| i.key_down(Key::Escape));
    state.held = if holds {
        state.held.or(Some(now))
    } else {
        None
    };
    let part = state
        .held
        .map_or(0.0, |from| ((now - from) / HOLD).min(1.0));
    let p = ui.painter();
    p.circle_stroke(at, 20.0, Stroke::new(4.0, t.col.rule));
    if part > 0.0 {
        arc(p, at, 20.0, part as f32, t.col.ink);
    }
    if state.held.is_some() {
        ui.ctx().request_repaint();
    }
    icons::paint(p, Icon::Cross, icons::square(at, 17.0), t.col.ink);
    let label = Rect::from_min_max(
        pos2(at.x - 190.0, at.y - 14.0),
        pos2(at.x - 32.0, at.y + 14.0),
    );
    words::line(
        p,
        label,
        Align2::RIGHT_CENTER,
        "hold to leave",
        theme::regular(16.0),
        t.col.soft,
    );
    focus_ring(ui, &r, rect, 24);
    // A screen reader presses without a pointer and cannot hold.
    let spoken = ui.input(|i| i.has_accesskit_action_request(r.id, egui::accesskit::Action::Click));
    part >= 1.0 || spoken
}

fn arc(p: &Painter, at: Pos2, radius: f32, part: f32, colour: Color32) {
    let steps = (40.0 * part).ceil() as usize;
    let pts = (0..=steps).map(|i| {
        let a = -std::f32::consts::FRAC_PI_2
            + std::f32::consts::TAU * part * i as f32 / steps.max(1) as f32;
        at + radius * vec2(a.cos(), a.sin())
    });
    p.add(Shape::line(pts.collect(), Stroke::new(4.0, colour)));
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn nothing_overlaps_in_any_window() {
        for (w, h) in [
            (1366.0, 768.0),
            (683.0, 384.0),
            (1920.0, 1080.0),
            (900.0, 700.0),
        ] {
            let p = Places::of(Rect::from_min_size(Pos2::ZERO, vec2(w, h)));
            assert!(p.now.right() < p.next.left(), "{w}x{h}");
            assert!(p.next.right() < p.always.left(), "{w}x{h}");
            assert!(p.now.bottom() < p.finished.top(), "{w}x{h}");
            assert!(p.slot(14, 15).right() <= p.finished.right(), "{w}x{h}");
        }
    }
}
