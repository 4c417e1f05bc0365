//! Where rows, names of parts and the words above the turns stand in the timetable, and what is
//! painted between them.

use egui::{Align2, CornerRadius, Pos2, Rect, Stroke, Ui, pos2, vec2};

use super::super::row::GUTTER;
use crate::model::session::Slot;
use crate::model::turns::Turns;
use crate::ui::icons;
use crate::ui::theme;
use crate::ui::widgets::words;

/// Height of a row.
pub const ROW: f32 = 62.0;
/// Height of a part's name.
pub const PART: f32 = 34.0;

/// Which place a thing held at height `y` would take among rows with these tops and one height:
/// before the first whose middle lies lower.
pub fn place_at(tops: &[f32], height: f32, y: f32) -> usize {
    tops.iter()
        .take_while(|top| y > **top + height / 2.0)
        .count()
}

/// Where everything stands.
pub struct Tops {
    /// Tops of the rows.
    pub tops: Vec<f32>,
    /// The parts' names, with the row they stand above.
    pub names: Vec<(usize, f32)>,
    /// The words above the first row that is done in turns.
    pub turns: Option<(usize, f32)>,
    /// The height of all.
    pub height: f32,
}

/// The rows of one frame, with the gap for what is held above them.
pub struct Laid<'a> {
    /// The rows that lie there, with their place in the timetable.
    pub lying: Vec<(usize, &'a Slot)>,
    /// Where they stand.
    pub tops: Tops,
    /// Before which of them what is held would go.
    pub gap: Option<usize>,
    /// The upper left corner of all.
    pub origin: Pos2,
    /// The width of all.
    pub width: f32,
}

impl Laid<'_> {
    /// Where the rope hangs.
    pub fn rope(&self) -> f32 {
        self.origin.x + 24.0
    }

    /// How far a row gives way to what is held.
    pub fn shift(&self, i: usize) -> f32 {
        match self.gap {
            Some(gap) if i >= gap => ROW,
            _ => 0.0,
        }
    }

    /// The top of a row.
    pub fn top(&self, i: usize) -> f32 {
        self.tops.tops[i] + self.shift(i)
    }

    /// Where what is held would go: before the name of the part that begins there, if one does.
    pub fn goes(&self) -> Option<Rect> {
        let gap = self.gap?;
        let mut names = self.tops.names.iter().chain(&self.tops.turns);
        let name = names.find(|(i, _)| *i == gap).map(|(_, y)| *y);
        let end = self.origin.y + self.tops.height;
        let top = name.or(self.tops.tops.get(gap).copied()).unwrap_or(end);
        let at = pos2(self.origin.x + GUTTER, top);
        let size = vec2(self.width - GUTTER - 4.0, ROW - 6.0);
        Some(Rect::from_min_size(at, size))
    }
}

/// Lays the rows out from a height on, without what is held.
pub fn tops(lying: &[(usize, &Slot)], plan: Option<&Turns>, from: f32) -> Tops {
    let (mut y, mut before) = (from, None);
    let (mut tops, mut names, mut turns) = (Vec::new(), Vec::new(), None);
    for (i, (_, slot)) in lying.iter().enumerate() {
        if before.replace(slot.part) != Some(slot.part) {
            names.push((i, y));
            y += PART;
        }
        if turns.is_none() && plan.is_some_and(|p| p.has(slot.id)) {
            turns = Some((i, y));
            y += PART;
        }
        tops.push(y);
        y += ROW;
    }
    Tops {
        tops,
        names,
        turns,
        height: y - from,
    }
}

/// The dashed place where a held row would go.
pub fn goes_here(ui: &Ui, place: Rect) {
    let col = theme::of(ui.ctx()).col;
    let p = ui.painter();
    p.rect_filled(place, CornerRadius::same(12), col.tint);
    icons::dashed_rect(p, place, 12.0, Stroke::new(2.0, col.accent), 7.0, 5.0);
    words::line(
        p,
        place,
        Align2::CENTER_CENTER,
        "goes here",
        theme::bold(16.0),
        col.accent,
    );
}

/// The bracket beside the rows that are done in turns, and above them how many turns.
pub fn block(ui: &Ui, at: egui::Pos2, width: f32, rows: &[f32], says: &str) {
    let (Some(first), Some(last)) = (rows.first(), rows.last()) else {
        return;
    };
    let t = theme::of(ui.ctx());
    let p = ui.painter();
    let x = at.x + GUTTER - 8.0;
    let place = Rect::from_min_size(pos2(x, at.y), vec2(width - GUTTER, PART));
    let font = theme::bold(16.0);
    let left = Align2::LEFT_CENTER;
    let words = format!("In turns: {says}");
    words::line(p, place, left, &words, font, t.col.ink);
    let (top, bottom) = (first + 3.0, last + ROW - 9.0);
    let line = [
        pos2(x + 6.0, top),
        pos2(x, top),
        pos2(x, bottom),
        pos2(x + 6.0, bottom),
    ];
    let stroke = Stroke::new(2.5, t.col.ink);
    p.add(egui::Shape::line(line.to_vec(), stroke));
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_held_row_goes_before_the_first_whose_middle_is_lower() {
        let tops = [0.0, 62.0, 158.0];
        assert_eq!(place_at(&tops, 62.0, -50.0), 0);
        assert_eq!(place_at(&tops, 62.0, 30.0), 0);
        assert_eq!(place_at(&tops, 62.0, 32.0), 1);
        assert_eq!(place_at(&tops, 62.0, 130.0), 2);
        assert_eq!(place_at(&tops, 62.0, 900.0), 3);
        assert_eq!(place_at(&[], 62.0, 10.0), 0);
    }
}
