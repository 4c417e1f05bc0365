//! One row of the timetable: times, picture, words, part of the day, minutes, swap and take out.

mod cells;
mod controls;

use egui::{
    Align2, Color32, CornerRadius, CursorIcon, Id, Key, Modifiers, Rect, Response, Role, Stroke,
    StrokeKind, Ui, WidgetInfo, pos2,
};

use super::SessionState;
use crate::model::club::Activity;
use crate::model::edit::TimetableEdit;
use crate::model::finding::{Severity, Spot};
use crate::model::hand::Content;
use crate::model::ids::{SessionId, SlotId};
use crate::model::session::{Off, Session, Slot};
use crate::ui::boards::held::Held;
use crate::ui::checks;
use crate::ui::desk::Desk;
use crate::ui::icons::{self, Icon};
use crate::ui::regions;
use crate::ui::theme;
use crate::ui::widgets::card::{Lie, peg, plate, tile};
use crate::ui::widgets::{focus_ring, words};
use cells::Cells;

/// Room for the rope at the left of a row.
pub const GUTTER: f32 = 54.0;

/// A row's name to the toolkit.
pub fn id_of(session: SessionId, slot: SlotId) -> Id {
    Id::unique(("slot", session, slot))
}

/// The next activity picked takes this row's place; asked twice, it does not.
fn begin_swap(state: &mut SessionState, slot: SlotId) {
    state.slot = Some(slot);
    state.swap = if state.swap == Some(slot) {
        None
    } else {
        Some(slot)
    };
    state.tray.focus_search = state.swap.is_some();
}

/// The activities picked next are what can be chosen in this row; asked twice, it ends.
fn begin_offer(state: &mut SessionState, slot: SlotId) {
    state.slot = Some(slot);
    state.swap = None;
    state.offer = (state.offer != Some(slot)).then_some(slot);
    state.tray.focus_search = state.offer.is_some();
}

/// A row to be shown.
pub struct Row<'a> {
    /// Of which session.
    pub session: &'a Session,
    /// The row.
    pub slot: &'a Slot,
    /// What is done in it.
    pub activity: &'a Activity,
    /// From when to when, in words.
    pub times: String,
    /// Its place in the timetable, from zero.
    pub place: usize,
    /// The number on its peg; another one while something is held above it.
    pub number: usize,
}

impl Row<'_> {
    fn id(&self) -> Id {
        id_of(self.session.id, self.slot.id)
    }

    /// Shows it.
    pub fn show(&self, ui: &mut Ui, desk: &mut Desk<'_>, state: &mut SessionState, rect: Rect) {
        let chosen = state.slot == Some(self.slot.id);
        let first = state.slot.is_none() && self.place == 0;
        let sense = regions::one_stop(ui, self.id(), chosen || first, true);
        let r = ui.interact(rect, self.id(), sense);
        r.widget_info(|| WidgetInfo::selected(Role::ListBoxOption, true, chosen, self.spoken()));
        let ink = self.ground(ui, rect, &r, chosen);
        let cells = Cells::of(rect);
        let swapping = state.swap == Some(self.slot.id);
        self.words(ui, desk, &cells, ink, swapping);
        focus_ring(ui, &r, rect, theme::R_CARD);
        self.act(ui, desk, state, &r);
        self.controls(ui, desk, state, &cells);
        r.on_hover_cursor(CursorIcon::Grab);
    }

    /// What a screen reader says.
    fn spoken(&self) -> String {
        let wet = if self.activity.in_water {
            ", in the water"
        } else {
            ""
        };
        let off = if self.slot.off.is_some() {
            ", not today"
        } else {
            ""
        };
        format!(
            "{} {}, {} min{wet}{off}, row {} of {}",
            self.activity.label,
            self.times,
            self.session.minutes_of(self.slot),
            self.place + 1,
            self.session.timetable.len()
        )
    }

    /// The card under it and the peg beside it; gives ink and soft ink.
    fn ground(&self, ui: &Ui, rect: Rect, r: &Response, chosen: bool) -> (Color32, Color32) {
        let t = theme::of(ui.ctx());
        let (p, col) = (ui.painter(), &t.col);
        let at = pos2(rect.left() - GUTTER + 24.0, rect.center().y);
        let number = self.number.to_string();
        if chosen {
            tile(p, &t, rect, Lie::Ground);
            peg(p, at, &number, col.accent, col.on_accent);
            return (col.card_ink, col.card_soft);
        }
        let line = if r.hovered() {
            t.edge()
        } else {
            Stroke::new(1.2, col.rule)
        };
        let corner = CornerRadius::same(theme::R_CARD);
        p.rect(rect, corner, col.panel, line, StrokeKind::Inside);
        peg(p, at, &number, col.peg, col.on_peg);
        (col.ink, col.soft)
    }

    /// Times, picture, words, and the signs after them.
    fn words(
        &self,
        ui: &Ui,
        desk: &mut Desk<'_>,
        cells: &Cells,
        (ink, soft): (Color32, Color32),
        swapping: bool,
    ) {
        let t = theme::of(ui.ctx());
        let p = ui.painter();
        let left = Align2::LEFT_CENTER;
        let font = theme::regular(16.0);
        words::line(p, cells.time, left, &self.times, font, soft);
        plate(p, &t, cells.picture);
        let picture = cells.picture.shrink(4.0);
        let symbol = &self.activity.symbol;
        desk.pictures.symbol(p, picture, symbol, Default::default());
        let colour = if swapping { t.col.accent } else { ink };
        let said = if swapping {
            "Pick an activity below…".to_owned()
        } else {
            self.said(desk)
        };
        words::line(p, cells.label, left, &said, theme::bold(17.0), colour);
        self.signs(ui, desk, cells, ink);
    }

    /// What the row says: what is done, what can be chosen, that it is not today.
    fn said(&self, desk: &Desk<'_>) -> String {
        let label = &self.activity.label;
        if let Some(off) = self.slot.off {
            let instead = off.instead.and_then(|id| desk.view.club.activity(id));
            return match instead {
                Some(a) => format!("Not today: {label}. Instead: {}", a.label),
                None => format!("Not today: {label}"),
            };
        }
        let turns = self.session.turns.as_ref();
        if turns.is_some_and(|t| t.waits.contains(&self.slot.id)) {
            return format!("{label}, while waiting");
        }
        if self.slot.options.is_empty() {
            return label.clone();
        }
        let each: Vec<&str> = self.slot.options.iter().map(|o| o.label.as_str()).collect();
        format!("{label}: {}", each.join(" or "))
    }

    /// Calls the row off with its dry replacement, or takes that back.
    fn turn_off(&self, desk: &mut Desk<'_>) {
        let off = match self.slot.off {
            Some(_) => None,
            None => Some(Off {
                instead: self.activity.dry_replacement,
            }),
        };
        desk.timetable(TimetableEdit::Off(self.slot.id, off));
    }

    /// The wave of an activity in the water, and the sign of what was found about the row.
    fn signs(&self, ui: &Ui, desk: &Desk<'_>, cells: &Cells, ink: Color32) {
        let mut at = pos2(cells.label.right() + 14.0, cells.picture.center().y);
        if self.activity.in_water {
            icons::paint(ui.painter(), Icon::Wave, icons::square(at, 24.0), ink);
        }
        let (session, slot) = (self.session.id, self.slot.id);
        let here = [Spot::Slot(session, slot), Spot::Water(session, Some(slot))];
        let open = desk.view.findings.iter();
        let found = open
            .filter(|f| f.severity <= Severity::Look)
            .find(|f| here.contains(&f.spot));
        if let Some(f) = found {
            at.x += 34.0;
            checks::sign(ui, at, f.severity, None);
        }
    }

    /// Mouse and keys on the row.
    fn act(&self, ui: &Ui, desk: &mut Desk<'_>, state: &mut SessionState, r: &Response) {
        let slot = self.slot;
        if r.drag_started() {
            let content = Content {
                activity: Some(slot.activity),
                symbol: self.activity.symbol.clone(),
                label: self.activity.label.clone(),
            };
            r.dnd_set_drag_payload(Held::Slot(slot.id, content));
        }
        if r.clicked() || r.drag_started() {
            state.slot = Some(slot.id);
            r.request_focus();
        }
        if r.has_focus() {
            regions::keep_arrows(ui, r.id);
            state.slot = Some(slot.id);
            self.keys(ui, desk, state);
        }
    }

    fn keys(&self, ui: &Ui, desk: &mut Desk<'_>, state: &mut SessionState) {
        let (all, at) = (&self.session.timetable, self.place);
        if let Some(to) = regions::alt_arrows(ui, at, all.len(), 1) {
            desk.timetable(TimetableEdit::Move(self.slot.id, to));
        }
        if let Some(to) = regions::arrows(ui, at, all.len(), 1) {
            state.slot = Some(all[to].id);
            ui.memory_mut(|m| m.request_focus(id_of(self.session.id, all[to].id)));
        }
        let pressed = |key| ui.input_mut(|i| i.consume_key(Modifiers::NONE, key));
        if pressed(Key::Delete) {
            let before = || at.checked_sub(1).map(|b| &all[b]);
            state.slot = all.get(at + 1).or_else(before).map(|s| s.id);
            state.focus_slot = true;
            desk.timetable(TimetableEdit::Remove(self.slot.id));
        }
        if pressed(Key::R) {
            begin_swap(state, self.slot.id);
        }
        if pressed(Key::C) {
            begin_offer(state, self.slot.id);
        }
        if pressed(Key::T) {
            self.turn_off(desk);
        }
    }
}
