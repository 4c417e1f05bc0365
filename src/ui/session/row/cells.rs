//! Where things stand in a row of the timetable.

use egui::{Rect, Vec2, pos2, vec2};

use crate::ui::theme;

/// Where things stand in a row.
pub struct Cells {
    pub time: Rect,
    pub picture: Rect,
    pub label: Rect,
    pub part: Rect,
    pub minutes: Rect,
    pub swap: Rect,
    pub offer: Rect,
    pub off: Rect,
    pub out: Rect,
}

impl Cells {
    /// In a row of the timetable.
    pub fn of(row: Rect) -> Self {
        let (y, side) = (row.center().y, theme::CONTROL);
        let small = row.width() < 860.0;
        let at = |x: f32, w: f32| Rect::from_min_size(pos2(x, y - side / 2.0), vec2(w, side));
        let out = at(row.right() - side - 8.0, side);
        let off = at(out.left() - side - 4.0, side);
        let offer = at(
            off.left() - if small { 0.0 } else { side + 4.0 },
            if small { 0.0 } else { side },
        );
        let swap = at(
            offer.left() - if small { 0.0 } else { side + 4.0 },
            if small { 0.0 } else { side },
        );
        let minutes = at(swap.left() - 176.0, 168.0);
        let part = at(
            minutes.left() - if small { 0.0 } else { 192.0 },
            if small { 0.0 } else { 180.0 },
        );
        let time = at(row.left() + 16.0, 116.0);
        let left = if small {
            row.left() + 9.0
        } else {
            time.right()
        };
        let picture = Rect::from_center_size(pos2(left + 24.0, y), Vec2::splat(46.0));
        let label = Rect::from_min_max(
            pos2(picture.right() + 14.0, row.top()),
            pos2(part.left() - 76.0, row.bottom()),
        );
        // Where there is little room the times stand below the words.
        let (label, time) = if small {
            let (upper, lower) = label.split_top_bottom_at_y(y + 2.0);
            let lower = lower.with_max_y(row.bottom() - 5.0).with_max_x(part.left());
            (upper.with_min_y(row.top() + 4.0), lower)
        } else {
            (label, time)
        };
        Self {
            time,
            picture,
            label,
            part,
            minutes,
            swap,
            offer,
            off,
            out,
        }
    }
}
