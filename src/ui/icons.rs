//! The few signs of the window, drawn as lines so that no font has to have them.

mod tools;

use egui::{Align2, Color32, Painter, Pos2, Rect, Shape, Stroke, Vec2, pos2, vec2};

use super::theme;

/// A sign.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Icon {
    /// Three lines: a menu, a list.
    Lines,
    /// Look for.
    Search,
    /// Take away, close.
    Cross,
    /// Add.
    Plus,
    /// One less.
    Minus,
    /// Chosen.
    Tick,
    /// Back.
    Left,
    /// On.
    Right,
    /// Upwards.
    Up,
    /// Downwards.
    Down,
    /// Take the last change back.
    Undo,
    /// Make it again.
    Redo,
    /// Back to where it is from, past all that was done since.
    AsMade,
    /// One thing for another.
    Swap,
    /// In the water.
    Wave,
    /// Change the words.
    Pen,
    /// Take off, throw away.
    Bin,
    /// A folder.
    Folder,
    /// Stop and look (filled), look (hollow).
    Diamond,
    /// Good to know.
    Ring,
    /// Write to paper.
    Sheet,
    /// A picture in a frame.
    Picture,
    /// A straight line.
    Straight,
    /// A rectangle.
    Box,
    /// An ellipse.
    Oval,
    /// A shape with corners.
    Corners,
    /// A shape in curves.
    Bends,
    /// Fill with colour.
    Pour,
    /// The eraser.
    Eraser,
    /// Squares to draw on.
    Squares,
    /// Something faint below.
    Below,
    /// Take over what lies below.
    TakeOver,
}

/// Paints a sign in the middle of `rect`, as large as the smaller side allows.
pub fn paint(p: &Painter, icon: Icon, rect: Rect, colour: Color32) {
    let side = rect.width().min(rect.height());
    let (mid, u) = (rect.center(), side / 24.0);
    let stroke = Stroke::new((2.2 * u).max(1.4), colour);
    let at = |x: f32, y: f32| mid + vec2(x * u, y * u);
    let line = |pts: &[(f32, f32)]| {
        p.add(Shape::line(
            pts.iter().map(|&(x, y)| at(x, y)).collect(),
            stroke,
        ));
        for &(x, y) in pts {
            p.circle_filled(at(x, y), stroke.width / 2.0, colour);
        }
    };
    match icon {
        Icon::Lines => [-6.0, 0.0, 6.0]
            .iter()
            .for_each(|&y| line(&[(-9.0, y), (9.0, y)])),
        Icon::Search => {
            p.circle_stroke(at(-2.0, -2.0), 6.5 * u, stroke);
            line(&[(3.0, 3.0), (9.0, 9.0)]);
        }
        Icon::Cross => {
            line(&[(-6.0, -6.0), (6.0, 6.0)]);
            line(&[(6.0, -6.0), (-6.0, 6.0)]);
        }
        Icon::Plus => {
            line(&[(-8.0, 0.0), (8.0, 0.0)]);
            line(&[(0.0, -8.0), (0.0, 8.0)]);
        }
        Icon::Minus => line(&[(-8.0, 0.0), (8.0, 0.0)]),
        Icon::Tick => line(&[(-7.0, 0.5), (-2.0, 5.5), (7.5, -5.5)]),
        Icon::Left => line(&[(3.5, -7.0), (-3.5, 0.0), (3.5, 7.0)]),
        Icon::Right => line(&[(-3.5, -7.0), (3.5, 0.0), (-3.5, 7.0)]),
        Icon::Up => line(&[(-7.0, 3.5), (0.0, -3.5), (7.0, 3.5)]),
        Icon::Down => line(&[(-7.0, -3.5), (0.0, 3.5), (7.0, -3.5)]),
        Icon::Undo => turn(p, at(0.0, 0.0), u, stroke, 1.0),
        Icon::Redo => turn(p, at(0.0, 0.0), u, stroke, -1.0),
        Icon::AsMade => {
            line(&[(-9.0, -8.0), (-9.0, 8.0)]);
            line(&[(9.0, 0.0), (-4.5, 0.0)]);
            line(&[(1.0, -5.5), (-4.5, 0.0), (1.0, 5.5)]);
        }
        Icon::Swap => {
            line(&[(-8.0, -4.0), (8.0, -4.0), (4.0, -8.0)]);
            line(&[(8.0, 4.0), (-8.0, 4.0), (-4.0, 8.0)]);
        }
        Icon::Wave => [-3.5, 3.5].iter().for_each(|&y| wave(p, mid, u, y, stroke)),
        Icon::Pen => {
            line(&[
                (-8.0, 8.0),
                (-6.5, 2.5),
                (5.0, -9.0),
                (9.0, -5.0),
                (-2.5, 6.5),
                (-8.0, 8.0),
            ]);
        }
        Icon::Bin => {
            line(&[(-8.0, -5.0), (8.0, -5.0)]);
            line(&[(-3.0, -8.5), (3.0, -8.5)]);
            line(&[(-6.0, -5.0), (-5.0, 8.5), (5.0, 8.5), (6.0, -5.0)]);
        }
        Icon::Folder => line(&[
            (-9.0, 7.0),
            (-9.0, -6.5),
            (-2.5, -6.5),
            (0.0, -3.5),
            (9.0, -3.5),
            (9.0, 7.0),
            (-9.0, 7.0),
        ]),
        Icon::Diamond => line(&[
            (0.0, -9.5),
            (9.5, 0.0),
            (0.0, 9.5),
            (-9.5, 0.0),
            (0.0, -9.5),
        ]),
        Icon::Ring => {
            p.circle_stroke(mid, 9.0 * u, stroke);
            p.circle_filled(mid, 2.6 * u, colour);
        }
        Icon::Picture => {
            line(&[
                (-9.5, -8.0),
                (9.5, -8.0),
                (9.5, 8.0),
                (-9.5, 8.0),
                (-9.5, -8.0),
            ]);
            line(&[
                (-9.0, 5.0),
                (-2.5, -1.5),
                (2.5, 3.0),
                (5.0, 1.0),
                (9.0, 4.5),
            ]);
            p.circle_filled(at(4.0, -3.5), 1.9 * u, colour);
        }
        Icon::Sheet => {
            line(&[
                (-7.0, -10.0),
                (3.0, -10.0),
                (8.0, -5.0),
                (8.0, 10.0),
                (-7.0, 10.0),
                (-7.0, -10.0),
            ]);
            line(&[(-3.0, 0.0), (4.0, 0.0)]);
            line(&[(-3.0, 5.0), (4.0, 5.0)]);
        }
        tool => tools::paint(p, tool, (mid, u), stroke),
    }
}

/// A curved arrow, to the left for 1 and to the right for -1.
fn turn(p: &Painter, mid: Pos2, u: f32, stroke: Stroke, dir: f32) {
    let at = |x: f32, y: f32| mid + vec2(dir * x * u, y * u);
    let arc = (0..=20).map(|i| {
        let a = (-90.0 + 180.0 * i as f32 / 20.0_f32).to_radians();
        at(3.0 + 5.5 * a.cos(), 2.5 + 5.5 * a.sin())
    });
    let mut pts = vec![at(-8.0, -3.0)];
    pts.extend(arc);
    pts.push(at(-3.0, 8.0));
    p.add(Shape::line(pts, stroke));
    p.add(Shape::line(
        vec![at(-4.0, -7.5), at(-8.5, -3.0), at(-4.0, 1.5)],
        stroke,
    ));
}

fn wave(p: &Painter, mid: Pos2, u: f32, y: f32, stroke: Stroke) {
    let pts = (0..=24).map(|i| {
        let x = -9.0 + 18.0 * i as f32 / 24.0;
        mid + vec2(x * u, (y + 2.2 * (x * 0.7).sin()) * u)
    });
    p.add(Shape::line(pts.collect(), stroke));
}

/// A diamond with a number or nothing in it, as findings wear it; filled when it must be seen to
/// first.
pub fn diamond(p: &Painter, mid: Pos2, radius: f32, filled: bool, ink: Color32, ground: Color32) {
    let d = [
        vec2(0.0, -radius),
        vec2(radius, 0.0),
        vec2(0.0, radius),
        vec2(-radius, 0.0),
    ];
    let pts: Vec<Pos2> = d.iter().map(|v| mid + *v).collect();
    let fill = if filled { ink } else { ground };
    p.add(Shape::convex_polygon(pts, fill, Stroke::new(1.8, ink)));
}

/// A diamond with a number in it.
pub fn numbered(p: &Painter, mid: Pos2, n: usize, filled: bool, ink: Color32, ground: Color32) {
    diamond(p, mid, 14.0, filled, ink, ground);
    let words = if filled { ground } else { ink };
    number(p, mid, n, words);
}

/// The number of a finding.
pub fn number(p: &Painter, mid: Pos2, n: usize, ink: Color32) {
    let font = theme::bold(14.0);
    p.text(mid, Align2::CENTER_CENTER, n.to_string(), font, ink);
}

/// A square of a given side round a point.
pub fn square(mid: Pos2, side: f32) -> Rect {
    Rect::from_center_size(mid, Vec2::splat(side))
}

/// Dashes along the edge of a rounded rectangle.
pub fn dashed_rect(p: &Painter, rect: Rect, radius: f32, stroke: Stroke, dash: f32, gap: f32) {
    p.extend(Shape::dashed_line(
        &rounded_outline(rect, radius),
        stroke,
        dash,
        gap,
    ));
}

/// The edge of a rounded rectangle as a closed line.
pub fn rounded_outline(rect: Rect, radius: f32) -> Vec<Pos2> {
    let r = radius.min(rect.width() / 2.0).min(rect.height() / 2.0);
    let corners = [
        (pos2(rect.right() - r, rect.top() + r), -90.0),
        (pos2(rect.right() - r, rect.bottom() - r), 0.0),
        (pos2(rect.left() + r, rect.bottom() - r), 90.0),
        (pos2(rect.left() + r, rect.top() + r), 180.0),
    ];
    let mut pts: Vec<Pos2> = Vec::with_capacity(40);
    for (centre, from) in corners {
        pts.extend((0..=8).map(|i| {
            let a: f32 = (from + 90.0 * i as f32 / 8.0_f32).to_radians();
            centre + r * vec2(a.cos(), a.sin())
        }));
    }
    pts.push(pts[0]);
    pts
}

/// Slanting lines inside a rectangle, cut at its edges.
pub fn hatch(p: &Painter, rect: Rect, step: f32, stroke: Stroke) {
    let (w, h) = (rect.width(), rect.height());
    let mut d = step;
    while d < w + h {
        let from = if d <= w { vec2(d, 0.0) } else { vec2(w, d - w) };
        let to = if d <= h { vec2(0.0, d) } else { vec2(d - h, h) };
        p.line_segment([rect.min + from, rect.min + to], stroke);
        d += step;
    }
}
