//! The picture of waiting: water in a rounded vessel that sinks behind a line of shells, and what to
//! do meanwhile. No numbers, no sound, and one slow movement at most.

use std::f32::consts::TAU;

use egui::{CornerRadius, Mesh, Painter, Pos2, Rect, Shape, Stroke, StrokeKind, Ui, pos2, vec2};

use super::cards::{self, Face, Presses};
use super::places::Places;
use super::views::{heading, peg, rope};
use super::wait::Wait;
use super::{Day, Target};
use crate::model::manner::Run;
use crate::story::cards::wait as wait_card;
use crate::ui::pictures::Pictures;
use crate::ui::theme::{self, Theme};

/// Shells on the line.
const SHELLS: usize = 5;

/// The vessel, and beside it what to do while waiting.
pub fn show(
    ui: &Ui,
    pictures: &mut Pictures,
    day: &Day<'_>,
    places: &Places,
    wait: &Wait,
    presses: &mut Presses,
) {
    let t = theme::of(ui.ctx());
    let p = ui.painter();
    rope(p, &t, places, Run::LeftToRight);
    let [vessel, beside] = places.two();
    let words = if wait.is_over() {
        "Waiting is finished"
    } else {
        "Wait"
    };
    heading(p, &t, places.head(), words, places);
    paint(
        p,
        &t,
        vessel,
        wait.level(t.still) as f32,
        ui.input(|i| i.time) as f32,
    );
    let meanwhile = day.who.standing.waiting.as_ref();
    let meanwhile = meanwhile.map(|c| crate::model::board::shown(day.club, c));
    let face = meanwhile
        .as_ref()
        .map_or_else(|| Face::from(&wait_card(day.club)), Face::from);
    let side = beside.width() * 0.8;
    let from = pos2(beside.center().x - side / 2.0, beside.top());
    let card = Rect::from_min_size(from, egui::Vec2::splat(side));
    cards::paint(p, pictures, card, &face, day.eyes);
    peg(
        p,
        &t,
        card.center_top() - vec2(0.0, super::places::HANG - 2.0),
    );
    cards::named(
        ui,
        "meanwhile",
        card,
        &format!("While waiting: {}", face.label),
    );
    if wait.is_over() {
        presses.at(ui, Target::On, vessel, "Waiting is finished: go on");
    } else {
        cards::named(ui, "vessel", vessel, "Water that sinks while we wait");
    }
}

/// The vessel with its water and the line of shells in front of it.
pub fn paint(p: &Painter, t: &Theme, room: Rect, level: f32, time: f32) {
    let side = room.width().min(room.height());
    let vessel = Rect::from_center_size(room.center(), vec2(side * 0.74, side * 0.98));
    let round = side * 0.26;
    let corner = CornerRadius::same(round.min(250.0) as u8);
    p.rect(
        vessel,
        corner,
        t.col.panel,
        Stroke::NONE,
        StrokeKind::Inside,
    );
    let inner = vessel.shrink(side * 0.03);
    water(p, t, inner, round - side * 0.03, level, time);
    let rim = Stroke::new((side * 0.014).max(3.0), t.col.edge);
    p.rect_stroke(vessel, corner, rim, StrokeKind::Inside);
    shells(p, t, inner);
}

/// The water, as high as it is full; its surface moves by a breath, or lies flat.
fn water(p: &Painter, t: &Theme, inner: Rect, round: f32, level: f32, time: f32) {
    if level <= 0.0 {
        return;
    }
    let top = inner.bottom() - inner.height() * level.min(1.0);
    // Flat when full or nearly empty, so that it never leaves the vessel.
    let room = (top - inner.top()).min(inner.bottom() - top);
    let swell = if t.still {
        0.0
    } else {
        (inner.height() * 0.008).min(room * 0.5)
    };
    let half = |y: f32| -> f32 {
        let from_end = (y - inner.top()).min(inner.bottom() - y).clamp(0.0, round);
        let cut = round - (round * round - (round - from_end).powi(2)).max(0.0).sqrt();
        inner.width() / 2.0 - cut
    };
    let mid = inner.center().x;
    let mut mesh = Mesh::default();
    let steps = 64;
    for i in 0..=steps {
        let part = i as f32 / steps as f32;
        let y = top + (inner.bottom() - top) * part;
        let w = half(y).max(0.0);
        mesh.colored_vertex(pos2(mid - w, y), t.col.rope);
        mesh.colored_vertex(pos2(mid + w, y), t.col.rope);
    }
    for i in 0..steps as u32 {
        mesh.add_triangle(2 * i, 2 * i + 1, 2 * i + 2);
        mesh.add_triangle(2 * i + 1, 2 * i + 3, 2 * i + 2);
    }
    p.add(Shape::mesh(mesh));
    let w = half(top).max(0.0);
    let surface: Vec<Pos2> = (0..=40)
        .map(|i| {
            let part = i as f32 / 40.0;
            let wave = swell * (TAU * (part * 1.5 + time * 0.06)).sin() * (TAU * part / 2.0).sin();
            pos2(mid - w + 2.0 * w * part, top + wave)
        })
        .collect();
    let light = Stroke::new((inner.width() * 0.016).max(3.0), t.col.rope_light);
    p.add(Shape::line(surface, light));
}

/// A cord from top to bottom in front of the water, with shells at equal heights.
fn shells(p: &Painter, t: &Theme, inner: Rect) {
    let x = inner.center().x;
    let cord = Stroke::new((inner.width() * 0.012).max(2.0), t.col.card_soft);
    let under = Stroke::new(cord.width + 3.0, t.col.card);
    let ends = (inner.top() + 2.0)..=(inner.bottom() - 2.0);
    p.vline(x, ends.clone(), under);
    p.vline(x, ends, cord);
    let size = inner.height() * 0.062;
    for i in 0..SHELLS {
        let part = (i as f32 + 0.5) / SHELLS as f32;
        shell(p, t, pos2(x, inner.top() + inner.height() * part), size);
    }
}

/// A fan of a shell: a rounded top, ribs, a small foot.
fn shell(p: &Painter, t: &Theme, at: Pos2, size: f32) {
    let line = Stroke::new((size * 0.11).max(1.6), t.col.card_ink);
    let foot = at + vec2(0.0, size * 0.85);
    let rim: Vec<Pos2> = (0..=24)
        .map(|i| {
            let a = (-160.0 + 140.0 * i as f32 / 24.0_f32).to_radians();
            let scallop = 1.0 + 0.05 * (a * 16.0).sin().abs();
            foot + vec2(a.cos() * 1.15, a.sin() * 1.75) * size * scallop
        })
        .collect();
    let mut fan = Mesh::default();
    fan.colored_vertex(foot, t.col.card);
    for q in &rim {
        fan.colored_vertex(*q, t.col.card);
    }
    for i in 1..rim.len() as u32 {
        fan.add_triangle(0, i, i + 1);
    }
    p.add(Shape::mesh(fan));
    let mut outline = rim.clone();
    outline.push(foot);
    p.add(Shape::closed_line(outline, line));
    let rib = Stroke::new((size * 0.07).max(1.2), t.col.card_soft);
    for i in [6, 12, 18] {
        let end = foot + (rim[i] - foot) * 0.86;
        p.line_segment([foot + (rim[i] - foot) * 0.2, end], rib);
    }
    let base = Rect::from_center_size(foot, vec2(size * 0.7, size * 0.32));
    p.rect(base, 3, t.col.card, line, StrokeKind::Middle);
}
