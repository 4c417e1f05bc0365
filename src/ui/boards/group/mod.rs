//! All boards at once, row by row under the timetable: what is as in the timetable is a small plate,
//! what differs is a large card with its words and its sign. Sorted, filtered, and edited in place
//! with the keys and the drag of one board.
//!
//! The timetable stays above and the names stay at the left while the rest scrolls; only rows in
//! sight are laid out and painted.

mod bar;
mod cell;
mod hands;
mod head;
mod name;
mod places;
mod row;

use egui::{Align2, DragAndDrop, Pos2, Rect, ScrollArea, Ui, UiBuilder, pos2, scroll_area, vec2};

use super::held::{self, Held};
use super::sort::{self, Filter, Line, Sort};
use super::{BoardsState, several, symbols, take_off};
use crate::model::edit::BoardEdit;
use crate::model::hand::Content;
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
    drop_held(ui, desk, &frame, hit.as_ref());
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

/// The place under what is in the hand.
struct Hit<'a> {
    line: Line<'a>,
    at: At,
}

impl Hit<'_> {
    /// What letting go here would do, in words.
    fn says(&self, ui: &Ui, table: &Table<'_>) -> Option<&'static str> {
        match (table.held.as_deref()?, self.at) {
            (Held::New(_), At::Step(_)) => Some("swap it in"),
            (Held::New(_), At::Out(_)) => Some("own step"),
            (Held::Steps(from, steps, _), at) => Some(self.does(ui, *from, steps, at).says()),
            _ => None,
        }
    }

    /// What letting go of someone's steps here would do.
    fn does(&self, ui: &Ui, from: ParticipantId, steps: &[StepRef], at: At) -> Does {
        let who = self.line.person.id;
        let row = match (steps, at) {
            ([held], At::Step(here)) => held.slot().filter(|s| here.slot() == Some(*s)),
            _ => None,
        };
        match (from == who, held::copies(ui)) {
            (true, false) => match at {
                At::Step(_) => Does::Move,
                At::Name | At::Out(_) => Does::Nothing,
            },
            (true, true) => Does::Again,
            (false, false) if row.is_some() => Does::Same,
            (false, _) if several::moves_over(ui) => Does::Over,
            (false, _) => Does::Too,
        }
    }

    /// Where a step would stand that is let go here.
    fn place(&self, session: &Session) -> usize {
        match self.at {
            At::Step(step) => self.line.board.position(step).unwrap_or(0),
            At::Name => self.line.board.steps.len(),
            At::Out(slot) => self.place_of_gap(session, slot),
        }
    }

    /// Where an own step would stand that comes in for a row that is left out.
    fn place_of_gap(&self, session: &Session, slot: SlotId) -> usize {
        let rows = &session.timetable;
        let at = rows.iter().position(|s| s.id == slot).unwrap_or(0);
        let before = rows[..at].iter().rev();
        let found = before
            .filter_map(|s| self.line.board.position(StepRef::Slot(s.id)))
            .next();
        found.map_or(0, |p| p + 1)
    }
}

/// What comes of letting go of a step on a row of the table.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Does {
    /// It goes there on its own board.
    Move,
    /// It stands there once more.
    Again,
    /// The other one has the same there.
    Same,
    /// The other one gets it too.
    Too,
    /// The other one gets it, and it is gone from here.
    Over,
    /// Nothing.
    Nothing,
}

impl Does {
    const fn says(self) -> &'static str {
        match self {
            Self::Move => "move here",
            Self::Again => "once more",
            Self::Same => "the same here",
            Self::Too => "here too",
            Self::Over => "over to here",
            Self::Nothing => "not here",
        }
    }
}

fn drop_held(ui: &Ui, desk: &mut Desk<'_>, table: &Table<'_>, hit: Option<&Hit<'_>>) {
    if !ui.input(|i| i.pointer.any_released()) {
        return;
    }
    let (Some(held), Some(pointer)) = (table.held.clone(), table.target) else {
        return;
    };
    DragAndDrop::clear_payload(ui.ctx());
    match (held.as_ref(), hit) {
        (Held::New(content), Some(hit)) => {
            let edit = match hit.at {
                At::Name => return held::goes_back(ui, &held, pointer),
                At::Step(step) => BoardEdit::Replace(step, content.clone()),
                At::Out(slot) => {
                    BoardEdit::Insert(content.clone(), hit.place_of_gap(table.session, slot))
                }
            };
            desk.board(hit.line.person.id, edit);
        }
        (Held::Steps(from, steps, _), Some(hit))
            if hit.does(ui, *from, steps, hit.at) == Does::Nothing =>
        {
            held::goes_back(ui, &held, pointer);
        }
        (Held::Steps(from, steps, content), Some(hit)) => {
            drop_on(ui, desk, (*from, steps, content), table, hit);
        }
        (Held::Steps(from, steps, _), None) if !table.body.contains(pointer) => {
            let line = table.lines.iter().find(|l| l.person.id == *from);
            match line.filter(|_| !held::copies(ui)) {
                Some(line) => take_off(desk, line.person.id, line.board, steps),
                None => held::goes_back(ui, &held, pointer),
            }
        }
        _ => held::goes_back(ui, &held, pointer),
    }
}

/// Someone's steps let go on a place of a row.
fn drop_on(
    ui: &Ui,
    desk: &mut Desk<'_>,
    (from, steps, content): (ParticipantId, &[StepRef], &Content),
    table: &Table<'_>,
    hit: &Hit<'_>,
) {
    let (who, to) = (hit.line.person.id, hit.place(table.session));
    match (hit.does(ui, from, steps, hit.at), hit.at) {
        (Does::Nothing, _) => {}
        (Does::Move, _) => {
            if let [step] = steps
                && hit.line.board.position(*step) != Some(to)
            {
                desk.board(who, BoardEdit::Move(*step, to));
            }
        }
        (Does::Same, At::Step(here)) => {
            let edit = same(table, (from, steps), here, content);
            desk.board(who, edit);
        }
        _ => several::give(ui, desk, (from, steps), (who, to)),
    }
}

/// What someone has at a row, for another one there: with what can be chosen, where it is a choice.
fn same(
    table: &Table<'_>,
    (from, steps): (ParticipantId, &[StepRef]),
    here: StepRef,
    content: &Content,
) -> BoardEdit {
    let replace = BoardEdit::Replace(here, content.clone());
    let line = table.lines.iter().find(|l| l.person.id == from);
    let all = line.map_or(&[][..], |l| &l.board.steps);
    let step = all.iter().find(|s| steps.contains(&s.at));
    let options = step.map_or_else(Vec::new, |s| s.options.clone());
    if options.is_empty() {
        return replace;
    }
    BoardEdit::All(vec![replace, BoardEdit::Offer(here, options)])
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
