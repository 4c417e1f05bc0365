//! All boards at once, row by row under the timetable: what is as in the timetable is a small plate,
//! what differs is a large card with its words and its sign. Sorted, filtered, and edited in place
//! with the keys and the drag of one board.
//!
//! The timetable stays above and the names stay at the left while the rest scrolls; only rows in
//! sight are laid out and painted.

mod bar;
mod cell;
mod drop;
mod hands;
mod head;
mod name;
mod places;
mod row;

use egui::{Align2, Pos2, Rect, ScrollArea, Ui, UiBuilder, pos2, scroll_area, vec2};

use super::held::{self, Held};
use super::sort::{self, Filter, Line, Sort};
use super::{BoardsState, symbols};
use crate::model::ids::{ParticipantId, SlotId, StepRef};
use crate::model::session::Session;
use crate::ui::desk::Desk;
use crate::ui::theme;
use crate::ui::widgets::{within, words};

/// Height of a row.
const ROW: f32 = 60.0;
/// Below this width the line above has no title.
const NARROW: f32 = 1150.0;
/// Below this height the timetable above shows its pictures alone.
const SHORT: f32 = 560.0;

/// One place of a row.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub(super) enum At {
    /// Who it is.
    Name,
    /// A step.
    Step(StepRef),
    /// A row of the timetable that is left out.
    Out(SlotId),
}

/// What the table remembers.
#[derive(Default)]
pub struct TableState {
    /// In which order the rows stand.
    sort: Sort,
    /// Which boards are shown.
    filter: Filter,
    /// Only what differs.
    differs_only: bool,
    /// Whose row was last brought into sight.
    listed: Option<ParticipantId>,
    /// The place the keyboard is on, or would be.
    at: Option<(ParticipantId, At)>,
}

/// Shows the place.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut BoardsState, rect: Rect) {
    let Some(session) = desk.view.session else {
        return;
    };
    // Before the rows: a key there may ask for the step of one board in the next frame.
    if std::mem::take(&mut state.focus_step)
        && let Some((who, at)) = state.table.at
    {
        ui.memory_mut(|m| m.request_focus(row::id(who, at)));
    }
    let bar = rect.with_max_y(rect.top() + theme::CONTROL);
    let club = desk.view.club;
    let (filter, sort) = (state.table.filter, state.table.sort);
    let lines = sort::lines(club, session, desk.view.boards, filter, sort);
    let short = rect.height() < SHORT;
    bar::show(ui, desk, state, &lines, (bar, short));
    let picking = state.swap.is_some();
    let symbols_open = state.tray.shows_up(short, picking);
    let tray_height = match (symbols_open, short) {
        (false, _) => 0.0,
        (true, true) => 92.0,
        (true, false) => 124.0,
    };
    let tray = Rect::from_min_max(pos2(rect.left(), rect.bottom() - tray_height), rect.max);
    let area = Rect::from_min_max(
        pos2(rect.left(), bar.bottom() + 4.0),
        pos2(
            rect.right(),
            tray.top() - if symbols_open { 6.0 } else { 0.0 },
        ),
    );
    if lines.is_empty() {
        nobody(ui, area, filter.nobody());
    } else {
        settle_place(state, &lines, desk.view.participant.map(|p| p.id));
        table(ui, desk, state, session, &lines, area, short);
    }
    if symbols_open {
        within(ui, "tray", tray, |ui| symbols(ui, desk, state, tray));
    }
}

/// The keyboard's place is always one that is shown: where it was, or the name of the chosen board,
/// or the first name.
fn settle_place(state: &mut BoardsState, lines: &[Line<'_>], chosen: Option<ParticipantId>) {
    let shown = |who: ParticipantId| lines.iter().any(|l| l.person.id == who);
    let at = state.table.at.filter(|(who, _)| shown(*who));
    let fallback = chosen.filter(|who| shown(*who));
    let fallback = fallback.unwrap_or(lines[0].person.id);
    state.table.at = Some(at.unwrap_or((fallback, At::Name)));
}

fn nobody(ui: &Ui, area: Rect, says: &str) {
    let t = theme::of(ui.ctx());
    let place = area.shrink(20.0).with_max_y(area.top() + 90.0);
    let font = theme::bold(18.0);
    words::line(
        ui.painter(),
        place,
        Align2::CENTER_CENTER,
        says,
        font,
        t.col.ink,
    );
}

#[expect(
    clippy::too_many_arguments,
    reason = "each is a part of the one picture"
)]
fn table(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    state: &mut BoardsState,
    session: &Session,
    lines: &[Line<'_>],
    area: Rect,
    short: bool,
) {
    let n = session.timetable.len().max(1) as f32;
    let names = if area.width() < NARROW { 148.0 } else { 192.0 };
    let column = ((area.width() - names - 44.0) / n)
        .clamp(96.0, 140.0)
        .floor();
    let top = area.top() + head::height(short);
    let body = area.with_min_y(top);
    let mut frame = Table {
        session,
        lines,
        origin: body.min,
        body,
        names,
        column,
        target: held::in_hand(ui.ctx()).map(|(_, at)| at),
        held: held::in_hand(ui.ctx()).map(|(h, _)| h),
    };
    let mut child = ui.new_child(UiBuilder::new().id_salt("group").max_rect(body));
    child.set_clip_rect(body.intersect(ui.clip_rect()));
    let mut hit = None;
    ScrollArea::both()
        .id_salt("group")
        .auto_shrink(false)
        .scroll_source(
            scroll_area::ScrollSource::SCROLL_BAR | scroll_area::ScrollSource::MOUSE_WHEEL,
        )
        .show(&mut child, |ui| {
            let size = vec2(
                names + n * column + 30.0,
                lines.len() as f32 * ROW + if short { 4.0 } else { 10.0 },
            );
            let (_, place) = ui.allocate_space(size);
            frame.origin = place.min;
            head::rules(ui.painter(), &frame, desk);
            follow(ui, desk, state, &frame);
            for i in 0..lines.len() {
                hit = row::show(ui, desk, state, &frame, i).or(hit.take());
            }
            held::autoscroll(ui, body, frame.target.filter(|_| frame.held.is_some()));
        });
    let head = area.with_max_y(top);
    within(ui, "group-head", head, |ui| {
        ui.set_clip_rect(head.intersect(ui.clip_rect()));
        head::show(ui, desk, &frame, head, short);
    });
    if let Some((who, at)) = state.table.at {
        desk.regions.add(body, row::id(who, at));
    }
    let says = hit.as_ref().and_then(|h| h.says(ui, &frame));
    held::ghost(ui, desk, says.or_else(|| frame.off(body)));
    drop::drop_held(ui, desk, &frame, hit.as_ref());
}

/// Brings the row of a board into sight that was chosen elsewhere.
fn follow(ui: &Ui, desk: &Desk<'_>, state: &mut BoardsState, table: &Table<'_>) {
    let chosen = desk.view.participant.map(|p| p.id);
    if chosen == state.table.listed {
        return;
    }
    state.table.listed = chosen;
    let at = table.lines.iter().position(|l| Some(l.person.id) == chosen);
    if let Some(i) = at {
        let top = table.origin.y + i as f32 * ROW;
        // Only downwards: sideways the table stays as it is scrolled.
        let x = table.body.center().x;
        let row = Rect::from_min_max(pos2(x, top), pos2(x, top + ROW));
        ui.scroll_to_rect(row, None);
    }
}

/// One frame of the table.
struct Table<'a> {
    session: &'a Session,
    lines: &'a [Line<'a>],
    /// Top left of the first row, wherever it is scrolled to.
    origin: Pos2,
    /// Where rows are seen.
    body: Rect,
    /// Width of the names.
    names: f32,
    /// Width of a column.
    column: f32,
    held: Option<std::sync::Arc<Held>>,
    target: Option<Pos2>,
}

impl Table<'_> {
    fn middle(&self, column: usize) -> f32 {
        self.origin.x + self.names + (column as f32 + 0.5) * self.column
    }

    fn end(&self) -> f32 {
        self.origin.x + self.names + self.session.timetable.len() as f32 * self.column
    }

    /// What letting go outside the rows would do.
    fn off(&self, body: Rect) -> Option<&'static str> {
        let at = self.target.filter(|at| !body.contains(*at))?;
        let _ = at;
        match self.held.as_deref()? {
            Held::Steps(_, steps, _) => Some(held::off(steps)),
            _ => None,
        }
    }
}
