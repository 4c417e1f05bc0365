//! What can be changed in a row of the timetable: the part of the day, minutes, and what is at its
//! right end.

use egui::{Align2, Rect, Ui};

use super::cells::Cells;
use super::{Row, begin_offer, begin_swap};
use crate::model::edit::TimetableEdit;
use crate::ui::desk::Desk;
use crate::ui::icons::Icon;
use crate::ui::session::SessionState;
use crate::ui::theme;
use crate::ui::widgets::button::{Button, Weight};
use crate::ui::widgets::choose::select_at;
use crate::ui::widgets::steps::{Steps, stepper_at};
use crate::ui::widgets::words;

impl Row<'_> {
    /// Part, minutes, swap and take out, at the right.
    pub(super) fn controls(
        &self,
        ui: &mut Ui,
        desk: &mut Desk<'_>,
        state: &mut SessionState,
        cells: &Cells,
    ) {
        let slot = self.slot;
        if cells.part.width() > 60.0 {
            self.part(ui, desk, cells.part);
        }
        if let Some(turns) = self.session.turns.as_ref().filter(|t| t.has(slot.id)) {
            // The turn has the minutes; those of the row would change nothing.
            let says = format!("{} min a turn", turns.minutes);
            let soft = theme::of(ui.ctx()).col.soft;
            let font = theme::regular(15.0);
            let middle = Align2::CENTER_CENTER;
            words::line(ui.painter(), cells.minutes, middle, &says, font, soft);
        } else {
            self.minutes(ui, desk, cells.minutes);
        }
        self.at_the_end(ui, desk, state, cells);
    }

    /// Another activity, a choice, not today, and out of the timetable.
    fn at_the_end(
        &self,
        ui: &mut Ui,
        desk: &mut Desk<'_>,
        state: &mut SessionState,
        cells: &Cells,
    ) {
        let (slot, off) = (self.slot, self.slot.off.is_some());
        let room = cells.swap.width() > 10.0;
        let swaps = state.swap == Some(slot.id);
        let name = "Another activity instead of *";
        if room && self.small(ui, name, Icon::Swap, swaps, cells.swap) {
            begin_swap(state, slot.id);
        }
        let offers = state.offer == Some(slot.id);
        if room && self.small(ui, "A choice at *", Icon::Diamond, offers, cells.offer) {
            begin_offer(state, slot.id);
        }
        let name = if off {
            "* today after all"
        } else {
            "* not today"
        };
        if self.small(ui, name, Icon::Cross, off, cells.off) {
            self.turn_off(desk);
        }
        if self.small(ui, "Take * out", Icon::Bin, false, cells.out) {
            desk.timetable(TimetableEdit::Remove(slot.id));
        }
    }

    /// A button with a sign; the activity stands for the star in its name.
    fn small(&self, ui: &mut Ui, what: &'static str, icon: Icon, on: bool, place: Rect) -> bool {
        let name = what.replace('*', &self.activity.label);
        let weight = if on {
            Weight::Chosen(true)
        } else {
            Weight::Quiet
        };
        let b = Button::new((self.id(), what), &name).icon_only(icon);
        b.weight(weight).show_at(ui, place).clicked()
    }

    fn minutes(&self, ui: &mut Ui, desk: &mut Desk<'_>, place: Rect) {
        let name = format!("Minutes of {}", self.activity.label);
        let steps = Steps {
            id: self.id().with("minutes"),
            label: &name,
            unit: "min",
            range: 1..=240,
            step: 1,
        };
        if let Some(m) = stepper_at(ui, desk.drafts, &steps, self.slot.minutes, place) {
            desk.timetable(TimetableEdit::Minutes(self.slot.id, m));
        }
    }

    fn part(&self, ui: &mut Ui, desk: &mut Desk<'_>, place: Rect) {
        let parts = &desk.view.club.parts;
        let names: Vec<String> = parts.iter().map(|p| p.name.clone()).collect();
        let now = parts.iter().position(|p| p.id == self.slot.part);
        let name = format!("Part of the day of {}", self.activity.label);
        if let Some(i) = select_at(ui, self.id().with("part"), place, &name, &names, now) {
            desk.timetable(TimetableEdit::Part(self.slot.id, parts[i].id));
        }
    }
}
