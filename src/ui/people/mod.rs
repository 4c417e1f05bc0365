//! The place People: participants, helpers, and what the club decided once.

mod ahead;
mod ahead_sheet;
mod awards;
mod certificates;
mod club;
mod craft;
mod flags;
mod held;
mod helper_form;
mod helpers;
mod in_water;
mod list;
mod looked;
mod looks;
mod manner;
mod participants;
mod parts;
mod pictures;
mod profile;
mod readers;
pub mod seen;
mod sketch;
mod songs;
pub mod standing;
mod table;
mod telling;
mod water;

use std::collections::BTreeSet;

use egui::{Id, Rect, Ui, vec2};

use super::desk::Desk;
use super::find::Find;
use super::picker::Picker;
use super::theme;
use super::widgets::choose::segments;
use super::widgets::within;
use crate::model::ids::{HelperId, ParticipantId};
use crate::model::looks::LookGroup;
use crate::model::privacy::Class;
use crate::model::profile::Section;

/// Which side is shown.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Pane {
    /// Who takes part.
    #[default]
    Participants,
    /// Who helps.
    Helpers,
    /// Name, parts of the day, rules.
    Club,
    /// Pictures of the club's own.
    Pictures,
    /// Participants for a spreadsheet.
    Table,
}

const PANES: [(Pane, &str); 5] = [
    (Pane::Participants, "Participants"),
    (Pane::Helpers, "Helpers"),
    (Pane::Club, "The club"),
    (Pane::Pictures, "Pictures"),
    (Pane::Table, "As a table"),
];

/// Which page of a participant is shown.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Page {
    /// Name, mark, sizes, figures.
    #[default]
    Looks,
    /// How the board is given.
    Board,
    /// How the story is told.
    Story,
    /// What always differs.
    Always,
    /// What is known.
    Know,
    /// What only the coordinator sees.
    Sealed,
    /// What others see.
    Seen,
}

const PAGES: [(Page, &str); 7] = [
    (Page::Looks, "Who they are"),
    (Page::Board, "Their board"),
    (Page::Story, "Their story"),
    (Page::Always, "Always different"),
    (Page::Know, "Good to know"),
    (Page::Sealed, "Sealed"),
    (Page::Seen, "Seen by"),
];

/// What the place remembers.
pub struct PeopleState {
    /// What is shown.
    pub pane: Pane,
    /// The helper being looked at.
    pub helper: Option<HelperId>,
    /// Whether the helpers’ certificates ahead are shown instead of one helper.
    pub ahead: bool,
    /// Whether the kinds of certificates are to be brought into sight.
    to_kinds: bool,
    /// Points of the check list that are folded open.
    looks_open: BTreeSet<LookGroup>,
    /// How many helpers there were, to choose a new one.
    helpers: usize,
    /// The pictures of the club's own.
    pub pictures: pictures::PicturesState,
    /// A mark or a picture being picked.
    pub picker: Option<Picker>,
    /// The page of a participant.
    pub page: Page,
    /// Sections that are folded open.
    open: BTreeSet<Section>,
    /// By whose eyes the last page looks.
    seen_by: Class,
    /// What was typed for a date and is none, and where.
    no_date: Option<(Id, String)>,
    /// A condition being typed in the club's own words.
    condition: String,
    /// Whether a table is written with what helpers know.
    table_for_helpers: bool,
    /// What is looked for in the list.
    pub find: Find,
    /// Whose row the list last followed.
    listed: Option<ParticipantId>,
}

impl Default for PeopleState {
    fn default() -> Self {
        Self {
            pane: Pane::default(),
            helper: None,
            ahead: false,
            to_kinds: false,
            looks_open: BTreeSet::new(),
            helpers: 0,
            pictures: pictures::PicturesState::default(),
            picker: None,
            page: Page::default(),
            open: BTreeSet::new(),
            seen_by: Class::Public,
            no_date: None,
            condition: String::new(),
            table_for_helpers: false,
            find: Find::default(),
            listed: None,
        }
    }
}

/// Shows the place.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut PeopleState, rect: Rect) {
    let wide = (rect.width() * 0.92).clamp(300.0, 680.0);
    let panes = Rect::from_min_size(rect.min, vec2(wide, theme::CONTROL));
    let names: Vec<&str> = PANES.iter().map(|(_, n)| *n).collect();
    let now = PANES
        .iter()
        .position(|(p, _)| *p == state.pane)
        .unwrap_or(0);
    desk.regions.add(panes, Id::unique(("people-pane", now)));
    if let Some(i) = segments(ui, "people-pane", panes, &names, now) {
        state.pane = PANES[i].0;
    }
    let below = rect.with_min_y(panes.bottom() + 10.0);
    match state.pane {
        Pane::Participants => within(ui, "participants", below, |ui| {
            participants::show(ui, desk, state, below)
        }),
        Pane::Helpers => within(ui, "helpers", below, |ui| {
            helpers::show(ui, desk, state, below)
        }),
        Pane::Pictures => within(ui, "pictures", below, |ui| {
            pictures::show(ui, desk, state, below)
        }),
        Pane::Table => within(ui, "table", below, |ui| table::show(ui, desk, state, below)),
        Pane::Club => within(ui, "club", below, |ui| club::show(ui, desk, state, below)),
    }
}
