//! One place of the table of turns: what it holds, and what it looks like; and who a row is of.

use egui::{Align2, CornerRadius, Rect, Stroke, StrokeKind, Ui, Vec2, pos2, vec2};

use super::super::water::pin;
use crate::model::board::Board;
use crate::model::ids::{ParticipantId, SlotId, SymbolId};
use crate::model::people::Participant;
use crate::ui::desk::Desk;
use crate::ui::icons::{self, Icon};
use crate::ui::pictures::Eyes;
use crate::ui::theme;
use crate::ui::widgets::card::{Lie, plate, tile};
use crate::ui::widgets::form::dashed;
use crate::ui::widgets::words;

/// One place of it.
pub struct Cell {
    pub who: ParticipantId,
    pub turn: usize,
    pub rect: Rect,
    pub slot: Option<SlotId>,
    pub symbol: SymbolId,
    pub label: String,
    pub wet: bool,
    pub waits: bool,
    /// It stays in its turn when turns are worked out again.
    pub held: bool,
}

impl Cell {
    /// A station can be held, a row of waiting or an empty turn not.
    pub const fn can_be_held(&self) -> bool {
        self.slot.is_some() && !self.waits
    }
}

fn person<'a>(desk: &Desk<'a>, who: ParticipantId) -> Option<&'a Participant> {
    desk.view.club.participant(who).map(AsRef::as_ref)
}

/// How the pictures of a participant's board look.
pub fn figure(desk: &Desk<'_>, who: ParticipantId) -> Eyes {
    person(desk, who).map_or_else(Eyes::default, Eyes::of)
}

/// Mark and name at the left of a row.
pub fn name(ui: &Ui, desk: &mut Desk<'_>, board: &Board, rect: Rect) {
    let Some(person) = person(desk, board.participant) else {
        return;
    };
    let t = theme::of(ui.ctx());
    let p = ui.painter();
    let mark = Rect::from_center_size(rect.left_center() + vec2(22.0, 0.0), Vec2::splat(40.0));
    plate(p, &t, mark);
    desk.pictures.mark(p, mark.shrink(7.0), &person.mark);
    let room = Rect::from_min_max(pos2(mark.right() + 8.0, rect.top()), rect.max);
    let left = Align2::LEFT_CENTER;
    words::line(p, room, left, &person.name, theme::bold(16.0), t.col.ink);
}

/// The card of a place: picture, words, and the wave of what is in the water.
pub fn paint(ui: &Ui, desk: &mut Desk<'_>, c: &Cell, figure: Eyes, target: bool, over: bool) {
    let t = theme::of(ui.ctx());
    let p = ui.painter();
    let planned = c.slot.is_some() && !c.waits;
    let ink = if planned {
        tile(p, &t, c.rect, Lie::Flat);
        t.col.card_ink
    } else {
        dashed(ui, c.rect);
        t.col.ink
    };
    let corner = CornerRadius::same(theme::R_CARD);
    if over {
        let line = Stroke::new(2.0, t.col.ink);
        p.rect_stroke(c.rect, corner, line, StrokeKind::Inside);
    }
    if target {
        let line = Stroke::new(2.5, t.col.accent);
        icons::dashed_rect(p, c.rect, 12.0, line, 7.0, 5.0);
    }
    let mut room = c.rect.shrink2(vec2(8.0, 4.0));
    if c.slot.is_some() {
        let mid = pos2(room.left() + 20.0, room.center().y);
        let picture = Rect::from_center_size(mid, Vec2::splat(38.0));
        if c.waits {
            plate(p, &t, picture);
        }
        desk.pictures
            .symbol(p, picture.shrink(1.0), &c.symbol, figure);
        room.min.x = picture.right() + 6.0;
    }
    if c.wet {
        let at = pos2(room.right() - 10.0, room.center().y);
        icons::paint(p, Icon::Wave, icons::square(at, 20.0), ink);
        room.max.x -= 24.0;
    }
    let says = if c.waits {
        format!("waits: {}", c.label)
    } else {
        c.label.clone()
    };
    let font = if planned {
        theme::bold(15.0)
    } else {
        theme::regular(15.0)
    };
    let galley = words::lay(p, &says, font, ink, room.width(), 2);
    let top = room.center().y - galley.size().y / 2.0;
    p.galley(pos2(room.left(), top), galley, ink);
    if c.held {
        pin(p, &t, c.rect.right_top() + vec2(-12.0, 2.0));
    }
}
