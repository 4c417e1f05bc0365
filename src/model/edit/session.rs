//! Edits of sessions: adding, copying, details, who comes.

use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

use super::{Made, Refused, SessionDetails, fresh};
use crate::model::club::Club;
use crate::model::conditions::Condition;
use crate::model::ids::{HelperId, ParticipantId, SessionId, SlotId};
use crate::model::limits;
use crate::model::privacy::{Class, Guarded};
use crate::model::record::Record;
use crate::model::session::{Session, Slot};

pub(super) fn add(club: &mut Club, details: &SessionDetails) -> Result<Made, Refused> {
    insert(club, details, Vec::new())
}

/// The timetable comes along with new slot ids; who is away, what the day brought, what was called
/// off and hand changes do not: they belong to that one date.
pub(super) fn copy(
    club: &mut Club,
    from: SessionId,
    details: &SessionDetails,
) -> Result<Made, Refused> {
    let original = Arc::clone(find(club, from)?);
    let mut timetable: Vec<Slot> = Vec::with_capacity(original.timetable.len());
    let mut now: BTreeMap<SlotId, SlotId> = BTreeMap::new();
    for slot in &original.timetable {
        let id = SlotId(fresh(club)?);
        now.insert(slot.id, id);
        timetable.push(Slot {
            id,
            off: None,
            ..slot.clone()
        });
    }
    let made = insert(club, details, timetable)?;
    if let Made::Session(id) = made {
        let session = Arc::make_mut(find_mut(club, id)?);
        session.from = Some(from);
        session.turns = original.turns.as_ref().map(|t| Box::new(t.renamed(&now)));
        *session.today = original.today.for_another_date();
    }
    Ok(made)
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
        turns: None,
        today: Box::default(),
        away: BTreeSet::new(),
        helpers_away: BTreeSet::new(),
        hand: BTreeMap::new(),
        stories: BTreeMap::new(),
        beside: BTreeMap::new(),
        conditions: Vec::new(),
        records: BTreeMap::new(),
        from: None,
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
    for session in &mut club.sessions {
        if session.from == Some(id) {
            Arc::make_mut(session).from = None;
        }
    }
    Ok(Made::Nothing)
}

/// The order is the person's; one that is named twice stands once.
pub(super) fn conditions(
    club: &mut Club,
    id: SessionId,
    list: &[Condition],
) -> Result<Made, Refused> {
    let list = limits::tidy_conditions(list);
    limits::conditions(&list)?;
    let session = find_mut(club, id)?;
    if session.conditions != list {
        Arc::make_mut(session).conditions = list;
    }
    Ok(Made::Nothing)
}

/// A record without anything in it is taken out.
pub(super) fn record(
    club: &mut Club,
    id: SessionId,
    who: ParticipantId,
    record: &Record,
) -> Result<Made, Refused> {
    if club.participant(who).is_none() {
        return Err(Refused::gone("participant"));
    }
    if record.favourite.is_some_and(|a| club.activity(a).is_none()) {
        return Err(Refused::gone("activity"));
    }
    let record = limits::tidy_record(record);
    limits::record(&record)?;
    let session = find_mut(club, id)?;
    let before = session.records.get(&who).map(Guarded::for_owner);
    let wanted = (!record.is_empty()).then_some(&record);
    if before != wanted {
        let records = &mut Arc::make_mut(session).records;
        if record.is_empty() {
            records.remove(&who);
        } else {
            records.insert(who, Guarded::new(Class::Coordinator, record));
        }
    }
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
