//! One row of the timetable: times, picture, words, part of the day, minutes, swap and take out.

use egui::{
    Align2, Color32, CornerRadius, CursorIcon, Id, Key, Modifiers, Rect, Response, Role, Stroke,
    StrokeKind, Ui, Vec2, WidgetInfo, pos2, vec2,
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
use crate::ui::widgets::button::{Button, Weight};
use crate::ui::widgets::card::{Lie, peg, plate, tile};
use crate::ui::widgets::choose::select_at;
use crate::ui::widgets::steps::{Steps, stepper_at};
use crate::ui::widgets::{focus_ring, words};

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

    /// Part, minutes, swap and take out, at the right.
    fn controls(&self, ui: &mut Ui, desk: &mut Desk<'_>, state: &mut SessionState, cells: &Cells) {
        let (id, slot, label) = (self.id(), self.slot, &self.activity.label);
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
        let small = |what: &'static str, icon: Icon, weight: Weight, place: Rect, ui: &mut Ui| {
            let name = what.replace('*', label);
            let b = Button::new((id, what), &name)
                .icon_only(icon)
                .weight(weight);
            b.show_at(ui, place).clicked()
        };
        let weight = if state.swap == Some(slot.id) {
            Weight::Chosen(true)
        } else {
            Weight::Quiet
        };
        let room = cells.swap.width() > 10.0;
        if room
            && small(
                "Another activity instead of *",
                Icon::Swap,
                weight,
                cells.swap,
                ui,
            )
        {
            begin_swap(state, slot.id);
        }
        let weight = |on: bool| {
            if on {
                Weight::Chosen(true)
            } else {
                Weight::Quiet
            }
        };
        let offers = state.offer == Some(slot.id);
        let name = "A choice at *";
        if room && small(name, Icon::Diamond, weight(offers), cells.offer, ui) {
            begin_offer(state, slot.id);
        }
        let name = if slot.off.is_some() {
            "* today after all"
        } else {
            "* not today"
        };
        if small(name, Icon::Cross, weight(slot.off.is_some()), cells.off, ui) {
            self.turn_off(desk);
        }
        if small("Take * out", Icon::Bin, Weight::Quiet, cells.out, ui) {
            desk.timetable(TimetableEdit::Remove(slot.id));
        }
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

/// Where things stand in a row.
struct Cells {
    time: Rect,
    picture: Rect,
    label: Rect,
    part: Rect,
    minutes: Rect,
    swap: Rect,
    offer: Rect,
    off: Rect,
    out: Rect,
}

impl Cells {
    fn of(row: Rect) -> Self {
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
