//! Where the places of a row are: its name, then every step under its row of the timetable, own
//! steps between, and the gap of what is left out.

use egui::{Rect, pos2, vec2};

use super::{At, ROW, Table};
use crate::model::board::Step;
use crate::model::ids::{SlotId, StepRef};
use crate::ui::boards::sort::Line;

/// Width of the back of what is not today, where what comes instead shares its column.
const BACK: f32 = 28.0;

/// A place with where it is.
pub struct Cell<'a> {
    /// Which place.
    pub at: At,
    /// The step that is shown there.
    pub step: Option<&'a Step>,
    /// Where it is.
    pub rect: Rect,
}

/// Every place of a row from left to right.
pub fn cells<'a>(table: &Table<'a>, line: Line<'a>, row: Rect) -> Vec<Cell<'a>> {
    let column = |id: SlotId| table.session.timetable.iter().position(|s| s.id == id);
    let y = row.center().y;
    let wide = (table.column - 4.0).min(112.0);
    let in_column =
        |c: usize, width: f32| Rect::from_center_size(pos2(table.middle(c), y), vec2(width, 54.0));
    let board = line.board;
    let instead_of = |id: SlotId| board.position(StepRef::Instead(id)).is_some();
    let name = Rect::from_min_size(
        pos2(table.body.left(), row.top() + 2.0),
        vec2(table.names - 6.0, ROW - 4.0),
    );
    let mut all = Vec::with_capacity(board.steps.len() + board.left_out.len() + 1);
    let mut edge = table.origin.x + table.names + 8.0;
    let mut crowded = false;
    for s in &board.steps {
        let rect = match s.at {
            StepRef::Slot(id) => column(id).map(|c| {
                edge = table.middle(c) + table.column / 2.0;
                let all = in_column(c, wide);
                // What comes instead shares the column.
                if instead_of(id) {
                    all.with_max_x(all.left() + BACK)
                } else {
                    all
                }
            }),
            StepRef::Instead(id) => column(id).map(|c| {
                edge = table.middle(c) + table.column / 2.0;
                let all = in_column(c, wide);
                // The plate beside it leaves this much room.
                let free = ((table.column - 44.0) / 2.0 - 6.0).clamp(0.0, 20.0);
                let more = if s.differs() { free } else { 0.0 };
                Rect::from_min_max(
                    all.left_top() + vec2(BACK + 2.0, 0.0),
                    all.max + vec2(more, 0.0),
                )
            }),
            StepRef::Own(_) | StepRef::Standing(..) => None,
        };
        let rect = rect.unwrap_or_else(|| {
            let x = edge + if crowded { 9.0 } else { 0.0 };
            edge += 30.0;
            Rect::from_center_size(pos2(x, y), vec2(48.0, 54.0))
        });
        crowded = s.differs();
        all.push(Cell {
            at: At::Step(s.at),
            step: Some(s),
            rect,
        });
    }
    for id in &board.left_out {
        if let Some(c) = column(*id) {
            all.push(Cell {
                at: At::Out(*id),
                step: None,
                rect: in_column(c, wide.min(88.0)),
            });
        }
    }
    all.sort_by(|a, b| a.rect.center().x.total_cmp(&b.rect.center().x));
    all.insert(
        0,
        Cell {
            at: At::Name,
            step: None,
            rect: name,
        },
    );
    all
}
