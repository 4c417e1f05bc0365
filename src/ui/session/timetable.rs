//! The group's order as a list along the strand: times, picture, part of the day, minutes.

use egui::scroll_area::ScrollSource;
use egui::{
    Align2, CornerRadius, DragAndDrop, Rect, ScrollArea, Stroke, Ui, UiBuilder, pos2, vec2,
};

use super::row::{self, GUTTER, Row};
use super::turns::{self, how_many};
use super::{SessionState, details};
use crate::model::edit::TimetableEdit;
use crate::model::hand::Content;
use crate::model::ids::SlotId;
use crate::model::session::{Session, Slot};
use crate::model::turns::Turns;
use crate::plan::clock::{Clock, clock};
use crate::ui::boards::held::{self, Held};
use crate::ui::desk::Desk;
use crate::ui::icons;
use crate::ui::strand::paint;
use crate::ui::theme;
use crate::ui::tray::{self, Pick, Tray};
use crate::ui::widgets::{form, within, words};

/// Height of a row.
const ROW: f32 = 62.0;
/// Height of a part's name.
const PART: f32 = 34.0;

/// Which place a thing held at height `y` would take among rows with these tops and one height:
/// before the first whose middle lies lower.
pub fn place_at(tops: &[f32], height: f32, y: f32) -> usize {
    tops.iter()
        .take_while(|top| y > **top + height / 2.0)
        .count()
}

/// Shows the pane.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut SessionState, rect: Rect) {
    let top = Rect::from_min_max(
        pos2(rect.left() + super::PANES_WIDE + 12.0, rect.top() - 54.0),
        pos2(rect.right(), rect.top() - 10.0),
    );
    let narrow = super::is_narrow(rect);
    let short = rect.height() < 480.0;
    let tray_height = if short { 92.0 } else { 124.0 };
    let tray = Rect::from_min_max(pos2(rect.left(), rect.bottom() - tray_height), rect.max);
    let list = Rect::from_min_max(rect.min, pos2(rect.right(), tray.top() - 8.0));
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
                if !session.timetable.is_empty() {
                    form::block(ui, "Rows", 150.0, theme::CONTROL, |ui| {
                        turns::opener(ui, &mut state.turns);
                    });
                }
            });
            if narrow {
                let (_, place) = ui.allocate_space(vec2(ui.available_width(), theme::CONTROL));
                details::buttons(ui, desk, place);
            }
            ui.add_space(2.0);
            strip.summary(ui);
            strip.rows(ui, desk, state);
        });
    strip.drop(ui, desk, state);
    within(ui, "activity-tray", tray, |ui| {
        activities(ui, desk, state, tray)
    });
    held::show(ui, desk, list);
}

fn nothing(ui: &mut Ui, desk: &mut Desk<'_>, rect: Rect) {
    let place = rect.shrink2(vec2(0.0, 40.0));
    within(ui, "no-session", place, |ui| {
        words::heading(ui, "There is no session yet.", 20.0);
        words::body(ui, "Add one, then put activities into its timetable.");
        ui.add_space(8.0);
        let (_, at) = ui.allocate_space(vec2(480.0_f32.min(ui.available_width()), theme::CONTROL));
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

/// The activities of the club below the list.
fn activities(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut SessionState, rect: Rect) {
    let Some(session) = desk.view.session else {
        return;
    };
    let items = tray::activities(desk.view.club, &state.tray);
    let at = state
        .slot
        .and_then(|s| session.timetable.iter().position(|x| x.id == s));
    let label = |slot: &Slot| {
        desk.view
            .club
            .activity(slot.activity)
            .map_or("", |a| a.label.as_str())
    };
    let does = match (state.swap, at) {
        _ if state.offer.is_some() => "Pick what can be chosen; again takes it out".to_owned(),
        (Some(_), _) => "Pick what takes its place".to_owned(),
        (None, Some(i)) => format!(
            "Enter adds after {} {}",
            i + 1,
            label(&session.timetable[i])
        ),
        (None, None) => "Drag one up, or press Enter".to_owned(),
    };
    let own = items.len();
    let shown = Tray {
        name: "activity-tray",
        items,
        own,
        eager: state.swap.is_some() || state.offer.is_some(),
        does,
        figure: Default::default(),
    };
    let picked = shown.show(ui, desk, &mut state.tray, rect);
    let swap = state.swap.or(state.slot);
    if let (Some(Pick::Add(c) | Pick::Swap(c)), Some(slot)) = (&picked, state.offer) {
        offer(desk, session, slot, c);
        return;
    }
    match (picked, swap) {
        (Some(Pick::Add(c)), _) if state.swap.is_none() => {
            let place = at.map_or(session.timetable.len(), |i| i + 1);
            if let Some(activity) = c.activity {
                desk.timetable(TimetableEdit::Insert(activity, place));
            }
        }
        (Some(Pick::Add(c) | Pick::Swap(c)), Some(slot)) => {
            if let Some(activity) = c.activity {
                desk.timetable(TimetableEdit::Replace(slot, activity));
            }
            state.swap = None;
            state.tray.search.clear();
            state.focus_slot = true;
        }
        _ => {}
    }
}

/// Adds something to what can be chosen in a row, or takes it out again.
fn offer(desk: &mut Desk<'_>, session: &Session, slot: SlotId, content: &Content) {
    let now = session.slot(slot).map_or(&[][..], |s| &s.options);
    let mut next = now.to_vec();
    if now.contains(content) {
        next.retain(|o| o != content);
    } else {
        next.push(content.clone());
    }
    desk.timetable(TimetableEdit::Options(slot, next));
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
            Held::Slot(slot, _) => Some(*slot),
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
        let t = theme::of(ui.ctx());
        let lying: Vec<(usize, &Slot)> = self
            .session
            .timetable
            .iter()
            .enumerate()
            .filter(|(_, s)| Some(s.id) != self.held)
            .collect();
        let origin = ui.cursor().min;
        let Tops {
            tops,
            names,
            turns,
            height,
        } = tops(&lying, self.session.turns.as_deref(), origin.y);
        let gap = self.at.map(|at| place_at(&tops, ROW, at.y));
        state.gap = gap;
        let extra = if gap.is_some() { ROW } else { 0.0 };
        let (_, all) = ui.allocate_space(vec2(ui.available_width(), height + extra + 40.0));
        let shift = |i: usize| {
            if gap.is_some_and(|g| i >= g) {
                ROW
            } else {
                0.0
            }
        };
        let x = origin.x + 24.0;
        let end = origin.y + height + extra + 16.0;
        paint::line(
            ui.painter(),
            &t,
            &[pos2(x, origin.y + 8.0), pos2(x, end)],
            theme::ROPE,
        );
        for &(i, y) in &names {
            let at = pos2(x, y + shift(i) + PART / 2.0);
            paint::knot(ui.painter(), &t, at, 9.0);
            if let Some(part) = desk.view.club.part(lying[i].1.part) {
                // A part that begins within the rows in turns leaves room for their bracket.
                let of_turns = self.session.turns.as_ref();
                let within = of_turns.is_some_and(|t| t.has(lying[i].1.id))
                    && turns.is_some_and(|(first, _)| first != i);
                let left = if within { 32.0 } else { 18.0 };
                let place = Rect::from_min_size(
                    pos2(x + left, at.y - 16.0),
                    vec2(all.width() - 60.0, 32.0),
                );
                words::line(
                    ui.painter(),
                    place,
                    Align2::LEFT_CENTER,
                    &part.name,
                    theme::bold(18.0),
                    t.col.ink,
                );
            }
        }
        if let (Some((first, y)), Some(plan)) = (turns, &self.session.turns) {
            let rows: Vec<f32> = lying
                .iter()
                .enumerate()
                .filter(|(_, (_, s))| plan.has(s.id))
                .map(|(i, _)| tops[i] + shift(i))
                .collect();
            let at = pos2(origin.x, y + shift(first));
            block(ui, at, all.width(), &rows, &how_many(plan));
        }
        if let Some(g) = gap {
            // Before the name of the part that begins there, if one does.
            let name = names.iter().chain(&turns).find(|(i, _)| *i == g);
            let name = name.map(|(_, y)| *y);
            let top = name.or(tops.get(g).copied()).unwrap_or(origin.y + height);
            let at = pos2(origin.x + GUTTER, top);
            goes_here(
                ui,
                Rect::from_min_size(at, vec2(all.width() - GUTTER - 4.0, ROW - 6.0)),
            );
        }
        paint::knot(ui.painter(), &t, pos2(x, end), 10.0);
        for (i, (place, slot)) in lying.iter().enumerate() {
            let id = row::id_of(self.session.id, slot.id);
            let y = tops[i] + shift(i) - origin.y;
            let y = ui.ctx().animate_value_with_time(id.with("y"), y, t.slide()) + origin.y;
            let rect = Rect::from_min_size(
                pos2(origin.x + GUTTER, y),
                vec2(all.width() - GUTTER - 6.0, ROW - 6.0),
            );
            if ui.is_rect_visible(rect.expand(2.0 * ROW)) || state.slot == Some(slot.id) {
                let Some(activity) = desk.view.club.activity(slot.activity) else {
                    continue;
                };
                let row = Row {
                    session: self.session,
                    slot,
                    activity,
                    times: self.times(slot.id),
                    place: *place,
                    number: i + 1 + usize::from(gap.is_some_and(|g| i >= g)),
                };
                row.show(ui, desk, state, rect);
            }
        }
        held::autoscroll(ui, self.rect, self.at);
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
            (Held::Slot(slot, _), Some(place)) => desk.timetable(TimetableEdit::Move(*slot, place)),
            (Held::Slot(slot, _), None) => desk.timetable(TimetableEdit::Remove(*slot)),
            _ => {}
        }
    }
}

/// The dashed place where a held row would go.
fn goes_here(ui: &Ui, place: Rect) {
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
fn block(ui: &Ui, at: egui::Pos2, width: f32, rows: &[f32], says: &str) {
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

/// Where everything stands.
struct Tops {
    /// Tops of the rows.
    tops: Vec<f32>,
    /// The parts' names, with the row they stand above.
    names: Vec<(usize, f32)>,
    /// The words above the first row that is done in turns.
    turns: Option<(usize, f32)>,
    /// The height of all.
    height: f32,
}

fn tops(lying: &[(usize, &Slot)], plan: Option<&Turns>, from: f32) -> Tops {
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
