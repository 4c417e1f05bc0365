//! People and water: the day from left to right, who is in the water when and with whom, and who
//! does what on this date.
//!
//! `columns` says how wide each stretch of time is, `head` shows the timetable, `rows` the
//! participants with their moments in the water (`block_paint`: what those look like), `people` the helpers, `lane` where each of them is, `hands` what mouse and keys
//! do, `hold` what a pair put together by hand means, `says` the sentences above; at the side are
//! `with` (one moment of one participant), `person` (one helper) and `today` (the date).

mod block_paint;
mod columns;
mod hands;
mod head;
mod hold;
mod lane;
mod people;
mod person;
mod rows;
mod says;
mod today;
mod with;

use egui::{Id, Pos2, Rect, ScrollArea, Ui, UiBuilder, pos2, vec2};

use crate::model::club::Club;
use crate::model::edit::{Edit, TodayEdit};
use crate::model::ids::{HelperId, ParticipantId, SessionId, SlotId};
use crate::model::people::{Helper, Participant};
use crate::model::session::Session;
use crate::plan::clock::clock;
use crate::plan::water::WaterDay;
use crate::ui::desk::Desk;
use crate::ui::theme;
use crate::ui::widgets::{card, form, words};
use columns::Column;

pub(super) use block_paint::pin;

/// Width of the side.
const SIDE: f32 = 324.0;
/// Height of a group's name.
const GROUP: f32 = 36.0;
/// Height of a participant's row.
const ROW: f32 = 54.0;
/// Height of a helper's row.
const PERSON: f32 = 58.0;

/// A place of the time line.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum At {
    /// A participant in the water at a row of the timetable.
    Block(ParticipantId, SlotId),
    /// A helper.
    Person(HelperId),
}

/// What the pane remembers.
#[derive(Default)]
pub struct WaterState {
    /// The place the keyboard is on, or would be.
    at: Option<At>,
    /// What the side shows; the date where it is nothing.
    open: Option<At>,
    /// Put the keyboard on the first control of the side.
    focus_side: bool,
    /// Put it back on the line.
    focus_line: bool,
    /// Bring the side into sight, where it stands below.
    to_side: bool,
    /// Why the last person was not put where they were dropped.
    refused: Option<String>,
    /// Where a person who was refused was let go, and when.
    back: Option<(HelperId, Pos2, f64)>,
    /// All sentences are shown.
    all_says: bool,
    /// The session whose water was brought into sight.
    brought: Option<SessionId>,
}

/// Asks for a change of who does what on the chosen date.
fn change(desk: &mut Desk<'_>, edit: TodayEdit) {
    if let Some(session) = desk.view.session {
        desk.edit(Edit::Today(session.id, edit));
    }
}

/// Shows the pane.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut WaterState, rect: Rect) {
    let Some(session) = desk.view.session else {
        words::body(ui, "Add a session first.");
        return;
    };
    let narrow = super::is_narrow(rect);
    let side = rect.with_min_x(rect.right() - SIDE);
    let left = if narrow {
        rect
    } else {
        rect.with_max_x(side.left() - 16.0)
    };
    let mut child = ui.new_child(UiBuilder::new().id_salt("people-water").max_rect(left));
    child.set_clip_rect(left.intersect(ui.clip_rect()));
    ScrollArea::vertical()
        .id_salt("people-water")
        .auto_shrink(false)
        .scroll_source(
            egui::scroll_area::ScrollSource::SCROLL_BAR
                | egui::scroll_area::ScrollSource::MOUSE_WHEEL,
        )
        .show(&mut child, |ui| {
            ui.set_max_width(ui.available_width());
            says::show(ui, desk, state, session);
            line(ui, desk, state, session, (left, narrow));
            if narrow {
                ui.add_space(8.0);
                if std::mem::take(&mut state.to_side) {
                    ui.scroll_to_cursor(Some(egui::Align::TOP));
                }
                form::sheet(ui, |ui| at_side(ui, desk, state, session));
            }
            ui.add_space(12.0);
        });
    if !narrow {
        card::panel(ui.painter(), &theme::of(ui.ctx()), side);
        form::scroll(ui, "water-side", side.shrink2(vec2(14.0, 12.0)), |ui| {
            at_side(ui, desk, state, session);
            ui.add_space(12.0);
        });
        let first = first_at_side(desk, state, session);
        desk.regions.add(side, first);
    }
    says::refused(ui, state, left);
    hands::ghost(ui, desk, state);
}

/// What the side shows.
fn at_side(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut WaterState, session: &Session) {
    if std::mem::take(&mut state.focus_side) {
        let first = first_at_side(desk, state, session);
        ui.memory_mut(|m| m.request_focus(first));
    }
    match state.open {
        Some(At::Block(who, slot)) => with::show(ui, desk, state, session, (who, slot)),
        Some(At::Person(helper)) => person::show(ui, desk, state, session, helper),
        None => today::show(ui, desk, session),
    }
}

/// The first control of the side.
fn first_at_side(desk: &Desk<'_>, state: &WaterState, session: &Session) -> Id {
    let close = Id::unique(("button", "water-side-close"));
    match state.open {
        Some(At::Block(who, slot)) => with::first(desk.view, session, who, slot).unwrap_or(close),
        Some(At::Person(_)) => close,
        None => today::first(session),
    }
}

/// One frame of the time line.
struct Line<'a> {
    club: &'a Club,
    session: &'a Session,
    water: &'a WaterDay,
    columns: Vec<Column>,
    people: Vec<&'a Participant>,
    helpers: Vec<&'a Helper>,
    /// Its upper left corner, wherever it is scrolled to.
    origin: Pos2,
    /// Width of the names.
    names: f32,
    /// What is seen of it.
    seen: Rect,
    /// The timetable stays above while the rows scroll.
    sticks: bool,
    /// Who is in the hand, and where.
    held: Option<(HelperId, Pos2)>,
}

impl Line<'_> {
    /// The left end of the time.
    fn left(&self) -> f32 {
        self.origin.x + self.names
    }

    /// How wide the time is.
    fn wide(&self) -> f32 {
        self.columns.last().map_or(0.0, |c| c.left + c.width)
    }

    /// How far it is scrolled at first, where there is no room for all of it: to the first moment in
    /// the water.
    fn to_water(&self, room: f32) -> f32 {
        let first = self.columns.iter().find(|c| c.wet);
        let most = (self.wide() + 16.0 - room).max(0.0);
        first.map_or(0.0, |c| (c.left - 60.0).clamp(0.0, most))
    }

    /// Where the names stand: they stay in sight while the time scrolls.
    fn names_at(&self) -> f32 {
        self.origin.x.max(self.seen.left())
    }

    fn row(&self, i: usize) -> Rect {
        let top = self.origin.y + head::HEIGHT + GROUP + i as f32 * ROW;
        self.rect(top, ROW)
    }

    fn person(&self, i: usize) -> Rect {
        let top = self.row(self.people.len()).top() + GROUP + i as f32 * PERSON;
        self.rect(top, PERSON)
    }

    fn rect(&self, top: f32, height: f32) -> Rect {
        let wide = self.names + self.wide() + 12.0;
        Rect::from_min_size(pos2(self.origin.x, top), vec2(wide, height))
    }

    /// Where a column crosses a row.
    fn cell(&self, column: &Column, row: Rect) -> Rect {
        let left = self.left() + column.left;
        let x = egui::Rangef::new(left, left + column.width);
        Rect::from_x_y_ranges(x, row.y_range()).shrink2(vec2(3.0, 5.0))
    }
}

/// The time line with its rows.
fn line(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    state: &mut WaterState,
    session: &Session,
    (area, narrow): (Rect, bool),
) {
    let view = *desk.view;
    let names = if narrow { 164.0 } else { 204.0 };
    let clock = clock(session, &view.club.rules);
    let room = ui.available_width() - names - 16.0;
    let mut line = Line {
        club: view.club,
        session,
        water: view.water,
        columns: columns::columns(view.club, session, &clock, view.water, room),
        people: view.club.attending(session).map(AsRef::as_ref).collect(),
        helpers: view.club.helpers.iter().map(AsRef::as_ref).collect(),
        origin: ui.cursor().min,
        names,
        seen: area,
        sticks: !narrow,
        held: hands::in_hand(ui.ctx()),
    };
    let outer = ui.clip_rect();
    let mut across = ScrollArea::horizontal()
        .id_salt("water-line")
        .auto_shrink([false, true])
        .scroll_source(
            egui::scroll_area::ScrollSource::SCROLL_BAR
                | egui::scroll_area::ScrollSource::MOUSE_WHEEL,
        );
    if state.brought.replace(session.id) != Some(session.id) {
        across = across.horizontal_scroll_offset(line.to_water(room));
    }
    across.show(ui, |ui| {
        let end = line.person(line.helpers.len()).top() - line.origin.y;
        let size = vec2(names + line.wide() + 12.0, end + 6.0);
        let (_, place) = ui.allocate_space(size);
        line.origin = place.min;
        line.seen = outer.intersect(ui.clip_rect().shrink2(vec2(3.0, 0.0)));
        hands::settle(state, &line);
        if let (Some(at), true) = (state.at, std::mem::take(&mut state.focus_line)) {
            ui.memory_mut(|m| m.request_focus(hands::id(at)));
        }
        head::rules(ui.painter(), &line);
        let over = rows::show(ui, desk, state, &line);
        people::show(ui, desk, state, &line);
        head::show(ui, desk, &line);
        hands::drop_held(ui, desk, state, &line, over);
    });
    crate::ui::boards::held::autoscroll(ui, area, line.held.map(|(_, at)| at));
    if let Some(at) = state.at {
        desk.regions.add(area, hands::id(at));
    }
}
