//! Edits of sessions: adding, copying, details, who comes.

use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

use super::{Made, Refused, SessionDetails, fresh};
use crate::model::club::Club;
use crate::model::ids::{HelperId, ParticipantId, SessionId, SlotId};
use crate::model::limits;
use crate::model::session::{Session, Slot};

pub(super) fn add(club: &mut Club, details: &SessionDetails) -> Result<Made, Refused> {
    insert(club, details, Vec::new())
}

/// The timetable comes along with new slot ids; who is away and hand changes do not: they belong to
/// that one date.
pub(super) fn copy(
    club: &mut Club,
    from: SessionId,
    details: &SessionDetails,
) -> Result<Made, Refused> {
    let original = Arc::clone(find(club, from)?);
    let mut timetable: Vec<Slot> = Vec::with_capacity(original.timetable.len());
    for slot in &original.timetable {
        timetable.push(Slot {
            id: SlotId(fresh(club)?),
            ..slot.clone()
        });
    }
    insert(club, details, timetable)
}

fn insert(club: &mut Club, d: &SessionDetails, timetable: Vec<Slot>) -> Result<Made, Refused> {
    limits::count("sessions", club.sessions.len() + 1, limits::LIST)?;
    let d = limits::tidy_details(d);
    limits::details(&d)?;
    let id = SessionId(fresh(club)?);
    club.sessions.push(Arc::new(Session {
        id,
        title: d.title,
        date: d.date,
        start: d.start,
        place: d.place,
        timetable,
        away: BTreeSet::new(),
        helpers_away: BTreeSet::new(),
        hand: BTreeMap::new(),
    }));
    sort(club);
    Ok(Made::Session(id))
}

pub(super) fn change(club: &mut Club, id: SessionId, d: &SessionDetails) -> Result<Made, Refused> {
    let d = limits::tidy_details(d);
    limits::details(&d)?;
    let session = find_mut(club, id)?;
    let same = session.title == d.title
        && session.date == d.date
        && session.start == d.start
        && session.place == d.place;
    if !same {
        let session = Arc::make_mut(session);
        session.title = d.title;
        session.date = d.date;
        session.start = d.start;
        session.place = d.place;
        sort(club);
    }
    Ok(Made::Nothing)
}

/// By date, then start; sessions at the same time stay in the order they were added.
fn sort(club: &mut Club) {
    club.sessions.sort_by_key(|s| (s.date, s.start, s.id));
}

pub(super) fn remove(club: &mut Club, id: SessionId) -> Result<Made, Refused> {
    find(club, id)?;
    club.sessions.retain(|s| s.id != id);
    Ok(Made::Nothing)
}

pub(super) fn attend(
    club: &mut Club,
    id: SessionId,
    who: ParticipantId,
    comes: bool,
) -> Result<Made, Refused> {
    if club.participant(who).is_none() {
        return Err(Refused::gone("participant"));
    }
    let session = find_mut(club, id)?;
    if session.away.contains(&who) == comes {
        let away = &mut Arc::make_mut(session).away;
        if comes {
            away.remove(&who);
        } else {
            away.insert(who);
        }
    }
    Ok(Made::Nothing)
}

pub(super) fn helper_attends(
    club: &mut Club,
    id: SessionId,
    who: HelperId,
    comes: bool,
) -> Result<Made, Refused> {
    if club.helper(who).is_none() {
        return Err(Refused::gone("helper"));
    }
    let session = find_mut(club, id)?;
    if session.helpers_away.contains(&who) == comes {
        let away = &mut Arc::make_mut(session).helpers_away;
        if comes {
            away.remove(&who);
        } else {
            away.insert(who);
        }
    }
    Ok(Made::Nothing)
}

pub(super) fn find(club: &Club, id: SessionId) -> Result<&Arc<Session>, Refused> {
    club.session(id).ok_or_else(|| Refused::gone("session"))
}

pub(super) fn find_mut(club: &mut Club, id: SessionId) -> Result<&mut Arc<Session>, Refused> {
    let found = club.sessions.iter_mut().find(|s| s.id == id);
    found.ok_or_else(|| Refused::gone("session"))
}
