//! The place Session: which date, its timetable, who comes, and the activities the club offers.

mod activities;
mod afterwards;
mod beforehand;
mod day;
mod depth;
mod details;
mod done;
mod looked;
mod row;
mod timetable;
mod turns;
mod water;
mod who_comes;

pub use who_comes::face;

use std::collections::BTreeMap;

use egui::{Id, Rect, Ui, pos2, vec2};

use super::desk::Desk;
use super::find::Find;
use super::picker::Picker;
use super::theme;
use super::tray::TrayState;
use super::widgets::choose::{segments, select_at};
use super::widgets::within;
use crate::model::ids::{ActivityId, ParticipantId, SessionId, SlotId};
use crate::workbench::command::Command;
use looked::LookedState;
use turns::TurnsState;

/// Which side of the session is shown.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Pane {
    /// The group's order with times.
    #[default]
    Timetable,
    /// Participants and helpers.
    WhoComes,
    /// Who is in the water when, and with whom.
    Water,
    /// What the day may bring.
    TheDay,
    /// What was seen.
    Afterwards,
    /// What the club offers.
    Activities,
}

const PANES: [(Pane, &str); 6] = [
    (Pane::Timetable, "Timetable"),
    (Pane::WhoComes, "Who comes"),
    (Pane::Water, "People and water"),
    (Pane::TheDay, "The day"),
    (Pane::Afterwards, "Afterwards"),
    (Pane::Activities, "Activities"),
];

/// Widest the choice of panes gets.
const PANES_WIDE: f32 = 730.0;
/// Below this width the panes are a list that opens.
const NARROW: f32 = 1000.0;

/// Whether there is little room from side to side.
fn is_narrow(rect: Rect) -> bool {
    rect.width() < NARROW
}

/// What the place remembers.
#[derive(Default)]
pub struct SessionState {
    /// What is shown.
    pub pane: Pane,
    /// What is being written down of the place.
    looked: LookedState,
    /// Rows in turns, in the place of the timetable.
    pub turns: TurnsState,
    /// The activities below the timetable.
    pub tray: TrayState,
    /// The chosen row.
    pub slot: Option<SlotId>,
    /// The row that the next activity takes the place of.
    pub swap: Option<SlotId>,
    /// The row whose choice is being put together.
    pub offer: Option<SlotId>,
    /// The place that what is in the hand would take.
    gap: Option<usize>,
    /// Put the keyboard on the chosen row.
    focus_slot: bool,
    /// How many rows were there, to choose a new one.
    rows: usize,
    /// What is looked for among the participants.
    pub find: Find,
    /// How wide and high the sheet about each participant was, of those that are out of sight.
    heights: BTreeMap<(SessionId, ParticipantId), (f32, f32)>,
    /// The activity being looked at.
    pub activity: Option<ActivityId>,
    /// What is looked for among the activities.
    activity_search: String,
    /// How many activities there were, to choose a new one.
    activities: usize,
    /// People and water.
    pub water: water::WaterState,
    /// A picture being picked.
    pub picker: Option<Picker>,
}

/// Shows the place.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut SessionState, rect: Rect) {
    let top = rect.with_max_y(rect.top() + theme::CONTROL);
    let narrow = is_narrow(rect);
    let wide = if narrow {
        (rect.width() * 0.5).max(300.0)
    } else {
        PANES_WIDE
    };
    let panes = Rect::from_min_size(top.min, vec2(wide, theme::CONTROL));
    let names: Vec<&str> = PANES.iter().map(|(_, n)| *n).collect();
    let now = PANES
        .iter()
        .position(|(p, _)| *p == state.pane)
        .unwrap_or(0);
    desk.regions.add(panes, Id::unique(("session-pane", now)));
    let picked = if narrow {
        let all: Vec<String> = names.iter().map(|n| (*n).to_owned()).collect();
        let id = Id::unique(("session-pane", now));
        select_at(ui, id, panes, "What of the session", &all, Some(now))
    } else {
        segments(ui, "session-pane", panes, &names, now)
    };
    if let Some(i) = picked {
        state.pane = PANES[i].0;
    }
    if narrow {
        let rest = Rect::from_min_max(pos2(panes.right() + 12.0, top.top()), top.max);
        chooser(ui, desk, rest);
    }
    let below = rect.with_min_y(top.bottom() + 10.0);
    match state.pane {
        Pane::Timetable => timetable::show(ui, desk, state, below),
        Pane::WhoComes => within(ui, "who-comes", below, |ui| {
            who_comes::show(ui, desk, state, below)
        }),
        Pane::Water => water::show(ui, desk, &mut state.water, below),
        Pane::TheDay => within(ui, "the-day", below, |ui| {
            day::show(ui, desk, &mut state.looked, below)
        }),
        Pane::Afterwards => within(ui, "afterwards", below, |ui| {
            afterwards::show(ui, desk, state, below)
        }),
        Pane::Activities => within(ui, "activities", below, |ui| {
            activities::show(ui, desk, state, below)
        }),
    }
}

/// All sessions in a list, where the bar has no room for them.
fn chooser(ui: &mut Ui, desk: &mut Desk<'_>, rect: Rect) {
    let all = &desk.view.club.sessions;
    let names: Vec<String> = all
        .iter()
        .map(|s| format!("{}, {}", s.title, super::dates::short(s.date)))
        .collect();
    let now = desk
        .view
        .session
        .and_then(|now| all.iter().position(|s| s.id == now.id));
    if let Some(i) = select_at(
        ui,
        Id::unique("session-select"),
        rect,
        "Session",
        &names,
        now,
    ) {
        desk.ask(Command::ChooseSession(all[i].id));
    }
}
