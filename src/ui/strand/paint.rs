//! Strokes the rope and ties its knots.

use egui::{Align2, Color32, Painter, Pos2, Rect, Shape, Stroke, Vec2, pos2, vec2};

use super::Rope;
use crate::ui::icons;
use crate::ui::theme::{self, Palette, Theme};

/// The rope with its arrowheads.
pub fn rope(p: &Painter, t: &Theme, rope: &Rope) {
    line(p, t, &rope.points, theme::ROPE);
    for (at, way) in &rope.arrows {
        arrow(p, *at, *way, t.col.rope);
    }
}

/// A stretch of rope of any thickness.
pub fn line(p: &Painter, t: &Theme, points: &[Pos2], width: f32) {
    p.add(Shape::line(points.to_vec(), Stroke::new(width, t.col.rope)));
    if t.scheme != theme::Scheme::Contrast {
        let light = Stroke::new((width * 0.22).max(1.0), t.col.rope_light);
        p.add(Shape::line(points.to_vec(), light));
    }
}

/// An arrowhead lying on the rope.
pub fn arrow(p: &Painter, at: Pos2, way: Vec2, colour: Color32) {
    let side = way.rot90();
    let tip = at + way * 6.0;
    let wings = [
        tip - way * 11.0 + side * 9.0,
        tip,
        tip - way * 11.0 - side * 9.0,
    ];
    p.add(Shape::line(wings.to_vec(), Stroke::new(2.6, colour)));
}

/// An open ring: something begins here, or is still open.
pub fn ring(p: &Painter, col: &Palette, at: Pos2, radius: f32, inside: Color32) {
    p.circle(at, radius, inside, Stroke::new(radius * 0.38, col.rope));
}

/// A closed knot: a part of the day begins here, or nothing is open.
pub fn knot(p: &Painter, t: &Theme, at: Pos2, radius: f32) {
    let col = &t.col;
    p.circle_filled(at, radius, col.rope);
    let light = if t.scheme == theme::Scheme::Contrast {
        col.ground
    } else {
        col.rope_light
    };
    let stroke = Stroke::new((radius * 0.17).max(1.0), light);
    for shift in [-0.42_f32, 0.12, 0.62] {
        let pts = (0..=8).map(|i| {
            let s = -0.62 + 1.24 * i as f32 / 8.0;
            let bow = 0.26 * (1.0 - (s / 0.62) * (s / 0.62));
            at + radius * vec2(s * 0.86 + shift * 0.42, -s * 0.62 + shift * 0.72 - bow)
        });
        let inside: Vec<Pos2> = pts.filter(|q| (*q - at).length() < radius * 0.88).collect();
        if inside.len() > 1 {
            p.add(Shape::line(inside, stroke));
        }
    }
}

/// The stopper at the end: a knot with two loose ends.
pub fn stopper(p: &Painter, t: &Theme, at: Pos2) {
    let stroke = Stroke::new(3.0, t.col.rope);
    for y in [-7.0, 0.0, 7.0] {
        p.line_segment([at + vec2(4.0, 0.0), at + vec2(26.0, y)], stroke);
    }
    knot(p, t, at, 11.0);
}

/// The stopper of a rope that hangs down: loose ends of a length below the knot.
pub fn hanging_stopper(p: &Painter, t: &Theme, at: Pos2, radius: f32, length: f32) {
    for side in [-6.0, 0.0, 6.0] {
        let end = at + vec2(side, length);
        p.line_segment([at, end], Stroke::new(2.6, t.col.rope));
    }
    knot(p, t, at, radius);
}

/// The doubled cord from a peg to a card that hangs lower.
pub fn cord(p: &Painter, t: &Theme, peg: Pos2, card: Rect) {
    let stroke = Stroke::new(3.0, t.col.rope);
    for side in [-1.0, 1.0] {
        let from = peg + vec2(side * 9.0, 4.0);
        let to = pos2(peg.x + side * 19.0, card.top() + 3.0);
        p.line_segment([from, to], stroke);
    }
}

/// A name above a knot, cut off where the next one begins. Gives what it took.
pub fn name(p: &Painter, t: &Theme, knot: Pos2, room: f32, words: &str) -> Rect {
    let place = Rect::from_min_size(pos2(knot.x + 5.0, knot.y - 41.0), vec2(room, 26.0));
    for size in [18.0, 16.0] {
        let g = p.layout_no_wrap(words.to_owned(), theme::bold(size), t.col.ink);
        if g.size().x <= room {
            let at = Align2::LEFT_CENTER.align_size_within_rect(g.size(), place);
            p.galley(at.min, g, t.col.ink);
            return at;
        }
    }
    crate::ui::widgets::words::line(
        p,
        place,
        Align2::LEFT_CENTER,
        words,
        theme::bold(15.0),
        t.col.ink,
    )
}

/// The dashed place where a held card would go.
pub fn gap(p: &Painter, t: &Theme, card: Rect, words: &str, number: &str, peg: Pos2) {
    let col = &t.col;
    p.rect_filled(card, egui::CornerRadius::same(theme::R_CARD), col.tint);
    icons::dashed_rect(
        p,
        card.shrink(1.0),
        14.0,
        Stroke::new(2.2, col.accent),
        7.0,
        5.0,
    );
    let plate = Rect::from_center_size(peg, vec2(28.0, 26.0));
    p.rect(
        plate,
        egui::CornerRadius::same(theme::R_PEG),
        col.tint,
        Stroke::new(2.0, col.accent),
        egui::StrokeKind::Inside,
    );
    p.text(
        peg,
        Align2::CENTER_CENTER,
        number,
        theme::bold(15.0),
        col.accent,
    );
    p.text(
        peg - vec2(0.0, 25.0),
        Align2::CENTER_CENTER,
        words,
        theme::bold(15.0),
        col.accent,
    );
}
