//! What is to be done next, in the order of an evening. Pure: a view in, one thing out.

use super::command::Place;
use super::view::View;
use crate::model::finding::{Finding, Severity, Spot};

/// Where the next thing is.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Where {
    /// At a place.
    Place(Place),
    /// Where a finding points to.
    Spot(Spot),
    /// Saving.
    Save,
    /// Writing the sheets.
    Write,
    /// Going through the day together.
    Together,
}

/// The next thing of the evening.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct NextThing {
    /// What to do, a few words that begin with what is done.
    pub says: String,
    /// Where.
    pub at: Where,
}

impl NextThing {
    fn new(says: impl Into<String>, at: Where) -> Self {
        Self {
            says: says.into(),
            at,
        }
    }
}

/// The next thing: people and a session first; then what is to be looked at, place by place, but not
/// what one was `led_to` already; then saving, printing, and the day with the child.
pub fn next_thing(view: &View<'_>, led_to: &[Where]) -> NextThing {
    missing(view)
        .or_else(|| to_look_at(view, led_to))
        .unwrap_or_else(|| to_finish(view))
}

/// What an evening cannot begin without.
fn missing(view: &View<'_>) -> Option<NextThing> {
    let at = |says: &str, place| Some(NextThing::new(says, Where::Place(place)));
    if view.club.participants.is_empty() {
        return at("Add who takes part", Place::People);
    }
    let Some(session) = view.session else {
        return at("Add a session", Place::Session);
    };
    if session.timetable.is_empty() {
        return at("Fill the timetable", Place::Session);
    }
    if view.boards.is_empty() {
        return at("Say who comes", Place::Session);
    }
    if session.date < view.today {
        return at("Copy the last session", Place::Session);
    }
    None
}

/// The place a finding is dealt with at.
fn place_of(spot: &Spot) -> Place {
    match spot {
        Spot::Session(_) | Spot::Slot(..) | Spot::Activity(_) | Spot::Water(..) => Place::Session,
        Spot::Club | Spot::Participant(_) | Spot::Helper(_) | Spot::Picture(_) => Place::People,
        Spot::Board(..) | Spot::Step(..) | Spot::Story(..) => Place::Boards,
    }
}

/// The first thing to look at in the order of the places, what must not stay before what may.
fn to_look_at(view: &View<'_>, led_to: &[Where]) -> Option<NextThing> {
    let is_new = |f: &&Finding| !led_to.contains(&Where::Spot(f.spot));
    let of = |severity: Severity| {
        let these = view.findings.iter().filter(move |f| f.severity == severity);
        these.filter(is_new).min_by_key(|f| place_of(&f.spot))
    };
    let first: &Finding = of(Severity::StopAndLook).or_else(|| of(Severity::Look))?;
    let place = place_of(&first.spot);
    let open = |f: &&Finding| f.severity == first.severity && place_of(&f.spot) == place;
    let count = view.findings.iter().filter(open).filter(is_new).count();
    let says = match (first.severity, count) {
        (Severity::StopAndLook, n) => format!("{}: {n} to settle", place.label()),
        (_, n) => format!("{}: {n} to look at", place.label()),
    };
    Some(NextThing::new(says, Where::Spot(first.spot)))
}

/// When nothing is open.
fn to_finish(view: &View<'_>) -> NextThing {
    if view.modified || view.path.is_none() {
        return NextThing::new("Save the club", Where::Save);
    }
    match (view.place, view.written) {
        (Place::Print, false) => NextThing::new("Write the sheets", Where::Write),
        (_, false) => NextThing::new("Choose what to print", Where::Place(Place::Print)),
        (_, true) => NextThing::new("Go through it together", Where::Together),
    }
}
