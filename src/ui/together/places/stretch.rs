//! How a stretch of the rope is laid out for a card and what comes after it.

use egui::{Rect, pos2, vec2};

use super::{Coming, ROW, SMALL, square};
use crate::model::manner::Run;

pub fn alone(s: Rect) -> Rect {
    let side = s.height().min(s.width() * 0.8);
    square(s.center().x - side / 2.0, s.top(), side)
}

pub fn pair(s: Rect, run: Run) -> (Rect, Vec<Coming>) {
    let gap = (s.width() * 0.08).clamp(24.0, 110.0);
    let large = s.height().min((s.width() - gap) * 0.57);
    let small = (large * 0.74).min(s.width() - gap - large);
    let x = s.center().x - (large + gap + small) / 2.0;
    let lower = if run == Run::Down { large - small } else { 0.0 };
    let next = square(x + large + gap, s.top() + lower, small);
    (square(x, s.top(), large), vec![Coming::Card(next)])
}

pub fn triple(s: Rect, run: Run) -> (Rect, Vec<Coming>) {
    let gap = (s.width() * 0.04).clamp(16.0, 56.0);
    if run == Run::Down {
        let small = ((s.height() - gap) / 2.0).min(s.width() * 0.36);
        let large = s.height().min(s.width() - small - gap * 1.5);
        let x = s.center().x - (large + gap * 1.5 + small) / 2.0;
        let left = x + large + gap * 1.5;
        let cards = [s.top(), s.top() + small + gap].map(|y| Coming::Card(square(left, y, small)));
        return (square(x, s.top(), large), cards.to_vec());
    }
    let large = s.height().min((s.width() - 2.0 * gap) * 0.44);
    let small = (large * 0.7).min((s.width() - 2.0 * gap - large) / 2.0);
    let x = s.center().x - (large + 2.0 * (gap + small)) / 2.0;
    let first = x + large + gap;
    let cards = [first, first + small + gap].map(|x| Coming::Card(square(x, s.top(), small)));
    (square(x, s.top(), large), cards.to_vec())
}

/// The next as a card, the others as small tiles below it.
pub fn many(s: Rect, count: usize) -> (Rect, Vec<Coming>) {
    let gap = (s.width() * 0.05).clamp(20.0, 64.0);
    let large = s.height().min((s.width() - gap) * 0.5);
    let now = square(s.left(), s.top(), large);
    let left = now.right() + gap;
    let wide = s.right() - left;
    let next = ((s.height() - SMALL - 14.0).max(s.height() * 0.5))
        .min(large * 0.62)
        .min(wide);
    let mut all = vec![Coming::Card(square(left, s.top(), next))];
    let room = s.height() - next - 14.0;
    let rows = (((room + 8.0) / (84.0 + 8.0)) as usize).max(1);
    let side = ((room - 8.0 * (rows as f32 - 1.0)) / rows as f32).clamp(SMALL, 104.0);
    let columns = (((wide + 8.0) / (side + 8.0)) as usize).max(1);
    let top = s.top() + next + 14.0;
    for i in 0..(count - 1).min(rows * columns) {
        let at = vec2((i % columns) as f32, (i / columns) as f32) * (side + 8.0);
        all.push(Coming::Small(square(left + at.x, top + at.y, side)));
    }
    (now, all)
}

/// A list from top to bottom, the next one higher than the others.
pub fn list(s: Rect, count: usize) -> (Rect, Vec<Coming>) {
    let gap = (s.width() * 0.06).clamp(26.0, 80.0);
    let large = s.height().min((s.width() - gap) * 0.56);
    let now = square(s.left(), s.top(), large);
    let left = now.right() + gap;
    let wide = (s.right() - left).min(large * 1.35);
    let between = 8.0;
    // The next one counts for one and a half.
    let fit = ((s.height() + between) / (ROW + between) - 0.5)
        .floor()
        .max(1.0) as usize;
    let n = count.min(fit);
    let high = ((s.height() - between * (n as f32 - 1.0)) / (n as f32 + 0.5)).clamp(ROW, 96.0);
    let mut y = s.top();
    let rows = (0..n).map(|i| {
        let h = if i == 0 { high * 1.5 } else { high };
        let r = Rect::from_min_size(pos2(left, y), vec2(wide, h));
        y += h + between;
        Coming::Row(r)
    });
    let rows: Vec<Coming> = rows.collect();
    (now, rows)
}
