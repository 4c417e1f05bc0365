//! Rows in turns: what is asked, what came out as a table, and the turns as they are, to be changed
//! by hand. It stands in the place of the timetable while it is open.

mod cell;
mod found;
mod friends;
mod hand;
mod setup;
mod table;
mod working;

use std::sync::Arc;

use egui::{Id, Rect, Ui};

use crate::model::board::Board;
use crate::model::edit::{Edit, TurnsEdit};
use crate::model::finding::Finding;
use crate::model::ids::{ParticipantId, SessionId};
use crate::model::session::Session;
use crate::model::turns::Turns;
use crate::plan::clock::{Clock, clock};
use crate::plan::turns::Asked;
use crate::ui::desk::Desk;
use crate::ui::icons::Icon;
use crate::ui::widgets::button::{Button, Weight};
use crate::ui::widgets::form::{column, row, scroll, sheet};
use crate::ui::widgets::words;
use crate::workbench::command::Command;
use crate::workbench::turns::{Arranging, Planned, Proposal, Told, suggested, told};

use found::{findings, found, lost};
use table::Table;
use working::working;

/// Room beside the table from which on what is found and lost stands there.
const SIDE: f32 = 320.0;

/// What the panel remembers.
#[derive(Default)]
pub struct TurnsState {
    /// Whether it is open.
    open: bool,
    /// What is being asked.
    draft: Option<Draft>,
    /// Whether what is asked lies open although there are turns.
    setup: bool,
    /// The place of the table that the keyboard is on, or would be.
    at: Option<(ParticipantId, usize)>,
    /// Put the keyboard there.
    focus: bool,
    /// Whose place is being dragged.
    from: Option<ParticipantId>,
    /// Two who are being named as friends.
    friend: [Option<ParticipantId>; 2],
    /// What is said, and of what.
    told: Option<(u64, SessionId, Asked, Told)>,
    /// Whether turns that were worked out have been shown.
    came: bool,
}

/// What is being asked for a session.
struct Draft {
    session: SessionId,
    /// As it was planned when the draft was begun.
    basis: Option<Asked>,
    asked: Asked,
}

impl TurnsState {
    /// Whether it stands in the place of the timetable.
    pub const fn is_open(&self) -> bool {
        self.open
    }

    /// Opens it, with the keyboard in it.
    pub fn show_up(&mut self, ui: &Ui) {
        self.open = true;
        self.setup = false;
        focus(ui, "turns-back");
    }

    /// What is asked: a draft, begun anew when the turns have changed.
    fn settle(&mut self, desk: &Desk<'_>, session: &Session) {
        let now = session.turns.as_ref().map(|t| Asked::of(session, t));
        let same = |d: &Draft| d.session == session.id && d.basis == now;
        if !self.draft.as_ref().is_some_and(same) {
            let asked = now.clone();
            self.draft = Some(Draft {
                session: session.id,
                asked: asked.unwrap_or_else(|| suggested(desk.view.club, session)),
                basis: now,
            });
        }
        if let Some(draft) = &mut self.draft {
            draft.asked.rows.retain(|s| session.slot(s.slot).is_some());
        }
    }

    fn told(&mut self, desk: &Desk<'_>, session: &Session) -> Told {
        let Some(asked) = self.draft.as_ref().map(|d| d.asked.clone()) else {
            return Told::default();
        };
        let revision = desk.view.revision;
        if let Some((r, s, a, told)) = &self.told
            && (*r, *s, a) == (revision, session.id, &asked)
        {
            return told.clone();
        }
        let boards: Vec<Arc<Board>> = desk.view.boards.iter().map(|b| b.1.clone()).collect();
        let turns = session.turns.as_deref();
        let told = told(desk.view.club, session, &boards, &asked, turns);
        self.told = Some((revision, session.id, asked, told.clone()));
        told
    }
}

/// Puts the keyboard on a button.
fn focus(ui: &Ui, button: &str) {
    let id = Id::unique(("button", button));
    ui.memory_mut(|m| m.request_focus(id));
}

/// The button in the timetable that opens it.
pub fn opener(ui: &mut Ui, state: &mut TurnsState) {
    let b = Button::new("in-turns", "In turns…");
    let tip = "Rows between which participants change, so that not all are in the water at once";
    if b.icon(Icon::Swap).tip(tip).show(ui).clicked() {
        state.show_up(ui);
    }
}

/// Shows it in the place of the timetable.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut TurnsState, rect: Rect) {
    let Some(session) = desk.view.session else {
        state.open = false;
        return;
    };
    state.settle(desk, session);
    let told = state.told(desk, session);
    desk.regions.add(rect, Id::unique(("button", "turns-back")));
    scroll(ui, "turns", rect, |ui| {
        ui.set_max_width(ui.available_width() - 10.0);
        head(ui, state);
        let came = match desk.view.turns {
            Some(Arranging::Came(proposal)) => Some(proposal),
            _ => None,
        };
        let planned = came.and_then(|c| c.plan.as_ref());
        match (came, planned, &session.turns) {
            (Some(came), Some(planned), _) => {
                sheet(ui, |ui| result(ui, desk, state, came, planned));
            }
            (came, _, turns) => {
                if let Some(came) = came {
                    sheet(ui, |ui| no_result(ui, desk, came));
                    ui.add_space(12.0);
                }
                if let Some(turns) = turns {
                    sheet(ui, |ui| now(ui, desk, state, (session, turns), &told));
                    ui.add_space(12.0);
                }
                if turns.is_none() || state.setup {
                    sheet(ui, |ui| setup::show(ui, desk, state, session, &told));
                }
            }
        }
        state.came = planned.is_some();
        ui.add_space(16.0);
    });
}

fn head(ui: &mut Ui, state: &mut TurnsState) {
    ui.horizontal(|ui| {
        ui.spacing_mut().item_spacing.x = 14.0;
        let b = Button::new("turns-back", "Back to the timetable");
        if b.icon(Icon::Left).show(ui).clicked() {
            state.open = false;
            focus(ui, "in-turns");
        }
        words::heading(ui, "In turns", 22.0);
    });
    ui.add_space(4.0);
}

/// Turns that were worked out, to be used or not.
fn result(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    state: &mut TurnsState,
    came: &Proposal,
    planned: &Planned,
) {
    let Some(turns) = &planned.session.turns else {
        return;
    };
    if !state.came {
        focus(ui, "turns-use");
    }
    let fewest = if planned.fewest {
        " Fewer turns do not do."
    } else {
        ""
    };
    words::heading(ui, &format!("Worked out: {}", how_many(turns)), 20.0);
    let times = clock(&planned.session, &desk.view.club.rules);
    words::soft(ui, &format!("{}{fewest}", ends(&times)));
    row(ui, |ui| {
        let b = Button::new("turns-use", "Use these turns");
        let b = b.weight(Weight::Main).icon(Icon::Tick);
        if b.tip("One change; Undo takes all of it back")
            .show(ui)
            .clicked()
        {
            desk.ask(Command::UseTurns);
            state.focus = true;
            state.setup = false;
        }
        if Button::new("turns-drop", "Not these").show(ui).clicked() {
            desk.ask(Command::DropTurns);
            state.setup = true;
            focus(ui, "turns-back");
        }
    });
    let boards: Vec<&Board> = planned.boards.iter().map(AsRef::as_ref).collect();
    let table = Table::new(&planned.session, turns, &boards, &times.turns, false);
    beside(ui, desk, state, &table, (&[], &came.words));
}

/// Why there are no such turns.
fn no_result(ui: &mut Ui, desk: &mut Desk<'_>, came: &Proposal) {
    words::heading(ui, "There are no such turns", 20.0);
    for sentence in &came.words {
        words::body(ui, sentence);
    }
    let held = desk.view.session.and_then(|s| s.turns.as_deref());
    let held = match held.is_some_and(|t| !t.held.is_empty()) {
        true => " Or let go of what is held.",
        false => "",
    };
    let hint = "Ask for more turns, or for as few as possible; let more be at a row at once; or tick \
                fewer rows.";
    words::soft(ui, &format!("{hint}{held}"));
    if Button::new("turns-drop", "Put this away")
        .show(ui)
        .clicked()
    {
        desk.ask(Command::DropTurns);
        focus(ui, "turns-back");
    }
}

/// Turns as they are.
fn now(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    state: &mut TurnsState,
    (session, turns): (&Session, &Turns),
    told: &Told,
) {
    words::heading(ui, &how_many(turns), 20.0);
    let times = clock(session, &desk.view.club.rules);
    words::soft(
        ui,
        &format!(
            "{} Drag a card to another turn, or press it; Alt with an arrow key does the same. H \
             holds a card in its turn.",
            ends(&times)
        ),
    );
    if !working(ui, desk) {
        buttons(ui, desk, state, session);
    }
    let all: Vec<Arc<Board>> = desk.view.boards.iter().map(|b| b.1.clone()).collect();
    let boards: Vec<&Board> = all.iter().map(AsRef::as_ref).collect();
    let table = Table::new(session, turns, &boards, &times.turns, true);
    let found = found(desk, session);
    beside(ui, desk, state, &table, (&found, &told.losses));
}

/// The table, with what is found and lost beside it, or above and below it where there is no room.
fn beside(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    state: &mut TurnsState,
    table: &Table<'_>,
    (found, losses): (&[Finding], &[String]),
) {
    let room = ui.available_width();
    let wide = table.width(room);
    if room - wide < SIDE {
        findings(ui, desk, found);
        table.show(ui, desk, state);
        return lost(ui, losses);
    }
    ui.horizontal_top(|ui| {
        ui.spacing_mut().item_spacing.x = 24.0;
        column(ui, wide, |ui| table.show(ui, desk, state));
        column(ui, room - wide - 24.0, |ui| {
            findings(ui, desk, found);
            lost(ui, losses);
        });
    });
}

fn buttons(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut TurnsState, session: &Session) {
    row(ui, |ui| {
        let b = Button::new("turns-again", "Work it out again");
        if b.icon(Icon::Redo).show(ui).clicked() {
            state.work(desk);
        }
        let b = Button::new("turns-setup", "Other rows, minutes or friends");
        if b.weight(Weight::Chosen(state.setup)).show(ui).clicked() {
            state.setup = !state.setup;
        }
        let b = Button::new("turns-off", "Not in turns").icon(Icon::Cross);
        let b = b.weight(Weight::Quiet);
        let tip = "All rows one after the other again; Undo brings the turns back";
        if b.tip(tip).show(ui).clicked() {
            desk.edit(Edit::Turns(session.id, TurnsEdit::Off));
            focus(ui, "turns-back");
        }
    });
}

impl TurnsState {
    fn work(&mut self, desk: &mut Desk<'_>) {
        if let Some(draft) = &self.draft {
            desk.ask(Command::WorkOutTurns(draft.asked.clone()));
        }
    }
}

/// "3 turns of 10 min".
pub fn how_many(turns: &Turns) -> String {
    let s = if turns.count == 1 { "" } else { "s" };
    format!("{} turn{s} of {} min", turns.count, turns.minutes)
}

/// When they are, and when the session ends with them.
fn ends(times: &Clock) -> String {
    let (Some(first), Some(last)) = (times.turns.first(), times.turns.last()) else {
        return String::new();
    };
    let over = match times.overrun() {
        0 => String::new(),
        m => format!(", {m} min longer than the club’s time"),
    };
    format!(
        "From {} to {}; the session ends at {}{over}.",
        first.0, last.1, times.end
    )
}
