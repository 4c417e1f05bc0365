//! The group's order as a list along the strand: times, picture, part of the day, minutes. Where rows
//! and names stand is in `places`, the activities below in `below`.

mod below;
mod places;

use egui::scroll_area::ScrollSource;
use egui::{Align2, DragAndDrop, Rect, ScrollArea, Ui, UiBuilder, pos2, vec2};

use super::row::{self, GUTTER, Row};
use super::turns::{self, how_many};
use super::{SessionState, details};
use crate::model::edit::TimetableEdit;
use crate::model::hand::Content;
use crate::model::ids::SlotId;
use crate::model::session::{Session, Slot};
use crate::plan::clock::{Clock, clock};
use crate::ui::boards::held::{self, Held};
use crate::ui::desk::Desk;
use crate::ui::strand::paint;
use crate::ui::theme;
use crate::ui::tray;
use crate::ui::widgets::{form, within, words};
use below::activities;
use places::{Laid, PART, ROW, block, goes_here, place_at, tops};

/// Shows the pane.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut SessionState, rect: Rect) {
    let top = Rect::from_min_max(
        pos2(rect.left() + super::PANES_WIDE + 12.0, rect.top() - 54.0),
        pos2(rect.right(), rect.top() - 10.0),
    );
    let narrow = super::is_narrow(rect);
    let short = rect.height() < 480.0;
    let folds = tray::folds(rect.height());
    let picking = state.swap.or(state.offer).is_some();
    let tray_height = match (state.tray.shows_up(folds, picking), short) {
        (false, _) => 0.0,
        (true, true) => 92.0,
        (true, false) => 124.0,
    };
    let tray = Rect::from_min_max(pos2(rect.left(), rect.bottom() - tray_height), rect.max);
    let list = Rect::from_min_max(
        rect.min,
        pos2(rect.right(), tray.top() - tray_height.min(8.0)),
    );
    // Without a session the buttons stand below the words that ask for one, and nowhere else.
    let Some(session) = desk.view.session else {
        return nothing(ui, desk, list);
    };
    if !narrow {
        details::buttons(ui, desk, top);
    }
    follow(state, session);
    if state.turns.is_open() {
        return turns::show(ui, desk, &mut state.turns, rect);
    }
    let strip = Strip::new(desk, session, list, ui);
    if let Some(slot) = state.slot.or(session.timetable.first().map(|s| s.id)) {
        desk.regions.add(list, row::id_of(session.id, slot));
        if std::mem::take(&mut state.focus_slot) {
            ui.memory_mut(|m| m.request_focus(row::id_of(session.id, slot)));
        }
    }
    let mut child = ui.new_child(
        UiBuilder::new()
            .id_salt(("timetable", session.id))
            .max_rect(list),
    );
    child.set_clip_rect(list.intersect(ui.clip_rect()));
    ScrollArea::vertical()
        .id_salt("timetable")
        .auto_shrink(false)
        .scroll_source(ScrollSource::SCROLL_BAR | ScrollSource::MOUSE_WHEEL)
        .show(&mut child, |ui| {
            form::row(ui, |ui| {
                details::fields(ui, desk, session);
                if !narrow && (folds || !session.timetable.is_empty()) {
                    form::block(ui, "Rows", 210.0, theme::CONTROL, |ui| {
                        rows_tools(ui, state, session, folds);
                    });
                }
            });
            if narrow {
                let (_, place) = ui.allocate_space(vec2(ui.available_width(), theme::CONTROL));
                let (left, right) = place.split_left_right_at_x(place.left() + 210.0);
                within(ui, "rows-tools", left, |ui| {
                    rows_tools(ui, state, session, folds);
                });
                details::buttons(ui, desk, right);
            }
            ui.add_space(2.0);
            strip.summary(ui);
            strip.rows(ui, desk, state);
        });
    strip.drop(ui, desk, state);
    if tray_height > 0.0 {
        within(ui, "activity-tray", tray, |ui| {
            activities(ui, desk, state, tray)
        });
    }
    held::show(ui, desk, list);
}

/// Turns, and in a low window the button for the activities.
fn rows_tools(ui: &mut Ui, state: &mut SessionState, session: &Session, folds: bool) {
    ui.horizontal(|ui| {
        ui.spacing_mut().item_spacing.x = 8.0;
        if !session.timetable.is_empty() {
            turns::opener(ui, &mut state.turns);
        }
        if folds {
            let (_, place) = ui.allocate_space(vec2(theme::CONTROL, theme::CONTROL));
            tray::folder(ui, &mut state.tray, "activity-tray", place);
        }
    });
}

fn nothing(ui: &mut Ui, desk: &mut Desk<'_>, rect: Rect) {
    let place = rect.shrink2(vec2(0.0, 40.0));
    within(ui, "no-session", place, |ui| {
        words::heading(ui, "There is no session yet.", 20.0);
        words::body(ui, "Add one, then put activities into its timetable.");
        ui.add_space(8.0);
        let (_, at) = ui.allocate_space(vec2(580.0_f32.min(ui.available_width()), theme::CONTROL));
        details::buttons(ui, desk, at);
    });
}

/// A row that is gone is not chosen; a new one is.
fn follow(state: &mut SessionState, session: &Session) {
    let there = |s: &SlotId| session.slot(*s).is_some();
    state.slot = state.slot.filter(there);
    state.swap = state.swap.filter(there);
    state.offer = state.offer.filter(there);
    let n = session.timetable.len();
    if n == state.rows + 1 {
        state.slot = session.timetable.iter().map(|s| s.id).max_by_key(|s| s.0);
    }
    state.rows = n;
}

/// One frame of the list.
struct Strip<'a> {
    session: &'a Session,
    clock: Clock,
    rect: Rect,
    held: Option<SlotId>,
    at: Option<egui::Pos2>,
}

impl<'a> Strip<'a> {
    fn new(desk: &Desk<'_>, session: &'a Session, rect: Rect, ui: &Ui) -> Self {
        let hand = held::in_hand(ui.ctx());
        let held = hand.as_ref().and_then(|(h, _)| match h.as_ref() {
            // What is copied stays where it is.
            Held::Slot(slot, _) if !held::copies(ui) => Some(*slot),
            _ => None,
        });
        let at = hand.map(|(_, at)| at).filter(|at| rect.contains(*at));
        Self {
            session,
            clock: clock(session, &desk.view.club.rules),
            rect,
            held,
            at,
        }
    }

    /// When it ends, and how that compares with the club's own minutes.
    fn summary(&self, ui: &mut Ui) {
        let n = self.session.timetable.len();
        let (over, slack) = (self.clock.overrun(), self.clock.slack());
        let rest = match (n, over) {
            (0, _) => "Drag an activity here to begin.".to_owned(),
            (_, 0) => format!("{slack} min to spare."),
            (_, m) => format!("{m} min longer than the club’s time."),
        };
        let words = format!(
            "{} to {}, {} min with the minutes between. {rest}",
            self.clock.start,
            self.clock.end,
            self.clock.minutes()
        );
        words::soft(ui, &words);
    }

    fn rows(&self, ui: &mut Ui, desk: &mut Desk<'_>, state: &mut SessionState) {
        let all = self.session.timetable.iter().enumerate();
        let lying: Vec<(usize, &Slot)> = all.filter(|(_, s)| Some(s.id) != self.held).collect();
        let origin = ui.cursor().min;
        let tops = tops(&lying, self.session.turns.as_deref(), origin.y);
        let gap = self.at.map(|at| place_at(&tops.tops, ROW, at.y));
        state.gap = gap;
        let extra = if gap.is_some() { ROW } else { 0.0 };
        let size = vec2(ui.available_width(), tops.height + extra + 40.0);
        let (_, all) = ui.allocate_space(size);
        let laid = Laid {
            lying,
            tops,
            gap,
            origin,
            width: all.width(),
        };
        let t = theme::of(ui.ctx());
        let (x, end) = (laid.rope(), origin.y + laid.tops.height + extra + 16.0);
        let rope = [pos2(x, origin.y + 8.0), pos2(x, end)];
        paint::line(ui.painter(), &t, &rope, theme::ROPE);
        self.parts(ui, desk, &laid);
        self.turns(ui, &laid);
        if let Some(place) = laid.goes() {
            goes_here(ui, place);
        }
        paint::knot(ui.painter(), &t, pos2(x, end), 10.0);
        for i in 0..laid.lying.len() {
            self.row(ui, desk, state, &laid, i);
        }
        held::autoscroll(ui, self.rect, self.at);
    }

    /// A knot and the name where a part of the day begins.
    fn parts(&self, ui: &Ui, desk: &Desk<'_>, laid: &Laid<'_>) {
        let t = theme::of(ui.ctx());
        for &(i, y) in &laid.tops.names {
            let at = pos2(laid.rope(), y + laid.shift(i) + PART / 2.0);
            paint::knot(ui.painter(), &t, at, 9.0);
            let slot = laid.lying[i].1;
            let Some(part) = desk.view.club.part(slot.part) else {
                continue;
            };
            // A part that begins within the rows in turns leaves room for their bracket.
            let of_turns = self.session.turns.as_ref();
            let within = of_turns.is_some_and(|t| t.has(slot.id))
                && laid.tops.turns.is_some_and(|(first, _)| first != i);
            let left = if within { 32.0 } else { 18.0 };
            let corner = pos2(at.x + left, at.y - 16.0);
            let place = Rect::from_min_size(corner, vec2(laid.width - 60.0, 32.0));
            let (p, font) = (ui.painter(), theme::bold(18.0));
            words::line(p, place, Align2::LEFT_CENTER, &part.name, font, t.col.ink);
        }
    }

    /// The bracket beside the rows in turns.
    fn turns(&self, ui: &Ui, laid: &Laid<'_>) {
        let (Some((first, y)), Some(plan)) = (laid.tops.turns, &self.session.turns) else {
            return;
        };
        let lying = laid.lying.iter().enumerate();
        let own = lying.filter(|(_, (_, s))| plan.has(s.id));
        let rows: Vec<f32> = own.map(|(i, _)| laid.top(i)).collect();
        let at = pos2(laid.origin.x, y + laid.shift(first));
        block(ui, at, laid.width, &rows, &how_many(plan));
    }

    fn row(
        &self,
        ui: &mut Ui,
        desk: &mut Desk<'_>,
        state: &mut SessionState,
        laid: &Laid<'_>,
        i: usize,
    ) {
        let (place, slot) = laid.lying[i];
        let id = row::id_of(self.session.id, slot.id);
        let slide = theme::of(ui.ctx()).slide();
        let y = laid.top(i) - laid.origin.y;
        let y = ui.ctx().animate_value_with_time(id.with("y"), y, slide) + laid.origin.y;
        let size = vec2(laid.width - GUTTER - 6.0, ROW - 6.0);
        let rect = Rect::from_min_size(pos2(laid.origin.x + GUTTER, y), size);
        let seen = ui.is_rect_visible(rect.expand(2.0 * ROW)) || state.slot == Some(slot.id);
        let Some(activity) = desk.view.club.activity(slot.activity).filter(|_| seen) else {
            return;
        };
        let row = Row {
            session: self.session,
            slot,
            activity,
            times: self.times(slot.id),
            place,
            number: i + 1 + usize::from(laid.gap.is_some_and(|g| i >= g)),
        };
        row.show(ui, desk, state, rect);
    }

    /// From when to when a row lasts, in words.
    fn times(&self, slot: SlotId) -> String {
        let row = self.clock.row(slot);
        row.map_or_else(String::new, |c| format!("{}–{}", c.from, c.to))
    }

    fn drop(&self, ui: &Ui, desk: &mut Desk<'_>, state: &mut SessionState) {
        if !ui.input(|i| i.pointer.any_released()) {
            return;
        }
        let Some((held, at)) = held::in_hand(ui.ctx()) else {
            return;
        };
        DragAndDrop::clear_payload(ui.ctx());
        let place = state.gap.filter(|_| self.rect.contains(at));
        match (held.as_ref(), place) {
            (
                Held::New(Content {
                    activity: Some(a), ..
                }),
                Some(place),
            ) => {
                desk.timetable(TimetableEdit::Insert(*a, place));
            }
            (Held::Slot(_, c), place) if held::copies(ui) => match c.activity.zip(place) {
                Some((activity, place)) => {
                    desk.timetable(TimetableEdit::Insert(activity, place));
                }
                None => held::goes_back(ui, &held, at),
            },
            (Held::Slot(slot, _), Some(place)) => desk.timetable(TimetableEdit::Move(*slot, place)),
            (Held::Slot(slot, _), None) => desk.timetable(TimetableEdit::Remove(*slot)),
            _ => held::goes_back(ui, &held, at),
        }
    }
}
