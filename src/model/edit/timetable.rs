//! Edits of a timetable. Hand changes of every board survive them, but those of a removed slot.

use std::sync::Arc;

use super::session::{find, find_mut};
use super::{Made, Refused, TimetableEdit, club as of_club, fresh, shift};
use crate::model::club::{Activity, Club};
use crate::model::ids::{ActivityId, PartId, SessionId, SlotId, StepRef};
use crate::model::limits;
use crate::model::session::{Session, Slot};

pub(super) fn apply(club: &mut Club, id: SessionId, edit: &TimetableEdit) -> Result<Made, Refused> {
    find(club, id)?;
    match *edit {
        TimetableEdit::Insert(activity, at) => insert(club, id, activity, at),
        TimetableEdit::Move(slot, to) => {
            let from = slot_at(find(club, id)?, slot)?;
            let session = Arc::make_mut(find_mut(club, id)?);
            shift(&mut session.timetable, from, to);
            Ok(Made::Nothing)
        }
        TimetableEdit::Replace(slot, activity) => replace(club, id, slot, activity),
        TimetableEdit::Minutes(slot, minutes) => {
            limits::slot_minutes(minutes)?;
            change(club, id, slot, |s| s.minutes = minutes)
        }
        TimetableEdit::Part(slot, part) => set_part(club, id, slot, part),
        TimetableEdit::Remove(slot) => remove(club, id, slot),
    }
}

fn insert(
    club: &mut Club,
    id: SessionId,
    activity: ActivityId,
    at: usize,
) -> Result<Made, Refused> {
    let rows = find(club, id)?.timetable.len();
    limits::count("rows in this timetable", rows + 1, limits::SLOTS)?;
    let what = activity_of(club, activity)?;
    let (part, minutes) = (what.part, what.minutes);
    let slot = SlotId(fresh(club)?);
    let session = Arc::make_mut(find_mut(club, id)?);
    session.timetable.insert(
        at.min(rows),
        Slot {
            id: slot,
            activity,
            part,
            minutes,
        },
    );
    Ok(Made::Slot(slot))
}

/// The part follows the new activity, unless someone had chosen another part than the usual one.
fn replace(
    club: &mut Club,
    id: SessionId,
    slot: SlotId,
    activity: ActivityId,
) -> Result<Made, Refused> {
    let part = activity_of(club, activity)?.part;
    let session = find(club, id)?;
    let old = &session.timetable[slot_at(session, slot)?];
    let usual = club.activity(old.activity).map(|a| a.part);
    let follows = usual == Some(old.part);
    change(club, id, slot, |s| {
        s.activity = activity;
        if follows {
            s.part = part;
        }
    })
}

fn set_part(club: &mut Club, id: SessionId, slot: SlotId, part: PartId) -> Result<Made, Refused> {
    if club.part(part).is_none() {
        return Err(Refused::gone("part of the day"));
    }
    change(club, id, slot, |s| s.part = part)
}

fn change(
    club: &mut Club,
    id: SessionId,
    slot: SlotId,
    how: impl FnOnce(&mut Slot),
) -> Result<Made, Refused> {
    let session = find_mut(club, id)?;
    let at = slot_at(session, slot)?;
    let mut changed = session.timetable[at].clone();
    how(&mut changed);
    if changed != session.timetable[at] {
        Arc::make_mut(session).timetable[at] = changed;
    }
    Ok(Made::Nothing)
}

/// A slot goes with what was changed by hand about it; own steps and other moved steps stay, held
/// by the rest of what stood before them.
fn remove(club: &mut Club, id: SessionId, slot: SlotId) -> Result<Made, Refused> {
    let session = find_mut(club, id)?;
    let at = slot_at(session, slot)?;
    let session = Arc::make_mut(session);
    session.timetable.remove(at);
    for hand in session.hand.values_mut() {
        hand.forget(StepRef::Slot(slot));
    }
    session.hand.retain(|_, hand| !hand.is_empty());
    Ok(Made::Nothing)
}

fn slot_at(session: &Session, slot: SlotId) -> Result<usize, Refused> {
    let at = session.timetable.iter().position(|s| s.id == slot);
    at.ok_or_else(|| Refused::gone("row of the timetable"))
}

fn activity_of(club: &Club, id: ActivityId) -> Result<&Arc<Activity>, Refused> {
    of_club::activity_at(club, id).map(|at| &club.activities[at])
}
