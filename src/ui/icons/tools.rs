//! The signs of what one draws with.

use egui::{Painter, Pos2, Rect, Shape, Stroke, StrokeKind, Vec2, pos2, vec2};

use super::{Icon, dashed_rect};

/// Paints one of them about a point, in units of a 24th of its side.
pub fn paint(p: &Painter, icon: Icon, (mid, u): (Pos2, f32), stroke: Stroke) {
    let at = |x: f32, y: f32| mid + vec2(x * u, y * u);
    let line = |pts: &[(f32, f32)]| {
        let pts: Vec<Pos2> = pts.iter().map(|&(x, y)| at(x, y)).collect();
        for end in &pts {
            p.circle_filled(*end, stroke.width / 2.0, stroke.color);
        }
        p.add(Shape::line(pts, stroke));
    };
    let dots = |pts: &[(f32, f32)]| {
        for &(x, y) in pts {
            p.circle_filled(at(x, y), 2.6 * u, stroke.color);
        }
    };
    match icon {
        Icon::Straight => {
            line(&[(-8.0, 8.0), (8.0, -8.0)]);
            dots(&[(-8.0, 8.0), (8.0, -8.0)]);
        }
        Icon::Box => {
            let rect = Rect::from_center_size(mid, vec2(19.0, 15.0) * u);
            p.rect_stroke(rect, 1, stroke, StrokeKind::Middle);
        }
        Icon::Oval => drop(p.add(Shape::ellipse_stroke(mid, vec2(10.0, 7.5) * u, stroke))),
        Icon::Corners => {
            let all = [(-8.0, 7.0), (-5.0, -7.0), (7.0, -5.0), (9.0, 7.0)];
            line(&[all[0], all[1], all[2], all[3], all[0]]);
            dots(&all);
        }
        Icon::Bends => bends(p, (mid, u), stroke),
        Icon::Pour => pour(p, (mid, u), stroke),
        Icon::Eraser => {
            let corners = [(-9.0, 3.0), (2.0, -8.0), (9.0, -1.0), (-2.0, 10.0)];
            line(&[corners[0], corners[1], corners[2], corners[3], corners[0]]);
            line(&[(-4.5, -1.5), (2.5, 5.5)]);
        }
        Icon::Squares => {
            for v in [-9.0, -3.0, 3.0, 9.0] {
                line(&[(v, -9.0), (v, 9.0)]);
                line(&[(-9.0, v), (9.0, v)]);
            }
        }
        Icon::Below => {
            let back = Rect::from_center_size(at(3.0, 3.0), Vec2::splat(13.0 * u));
            dashed_rect(p, back, 3.0 * u, stroke, 3.2 * u, 2.4 * u);
            p.circle_stroke(at(-3.0, -3.0), 6.0 * u, stroke);
        }
        Icon::TakeOver => {
            p.circle_stroke(at(-2.0, -3.0), 6.0 * u, stroke);
            line(&[(3.0, 9.0), (9.0, 9.0), (9.0, 3.0)]);
            line(&[(9.0, 9.0), (3.0, 3.0)]);
        }
        _ => {}
    }
}

/// A closed shape without corners.
fn bends(p: &Painter, (mid, u): (Pos2, f32), stroke: Stroke) {
    let round = (0..=48).map(|i| {
        let a = std::f32::consts::TAU * i as f32 / 48.0;
        let r = 8.0 + 1.9 * (3.0 * a).sin();
        mid + vec2(r * a.cos(), r * a.sin()) * u
    });
    p.add(Shape::line(round.collect(), stroke));
}

/// A tipped bucket and a drop.
fn pour(p: &Painter, (mid, u): (Pos2, f32), stroke: Stroke) {
    let at = |x: f32, y: f32| mid + vec2(x * u, y * u);
    let body = [(-9.0, 0.0), (0.0, -9.0), (7.0, -2.0), (-2.0, 7.0)];
    let body: Vec<Pos2> = body.iter().map(|&(x, y)| at(x, y)).collect();
    p.add(Shape::closed_line(body, stroke));
    p.line_segment([at(-7.6, -0.6), at(5.6, -0.6)], stroke);
    let drop = (0..=16).map(|i| {
        let a = std::f32::consts::PI * i as f32 / 16.0;
        pos2(2.6 * u * a.cos(), 2.6 * u * a.sin()).to_vec2() + at(8.0, 6.5).to_vec2()
    });
    let mut drop: Vec<Pos2> = drop.map(Vec2::to_pos2).collect();
    drop.push(at(8.0, 1.5));
    p.add(Shape::convex_polygon(drop, stroke.color, Stroke::NONE));
}
