//! Edits of the rows that are done in turns. Stations stand together in the timetable; a row that is
//! moved away from them is no station any more, and nothing is put between them.

use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

use super::session::{find, find_mut};
use super::{Made, Refused, TimetableEdit, TurnsEdit, TurnsPlan, timetable};
use crate::model::club::Club;
use crate::model::ids::{ParticipantId, SessionId, SlotId};
use crate::model::limits;
use crate::model::session::{Session, Slot};
use crate::model::turns::Turns;

type Friends = BTreeSet<(ParticipantId, ParticipantId)>;

pub(super) fn apply(club: &mut Club, id: SessionId, edit: &TurnsEdit) -> Result<Made, Refused> {
    match edit {
        TurnsEdit::Set(plan) => set(club, id, plan),
        TurnsEdit::Place(who, turn, slot) => place(club, id, *who, *turn, *slot),
        TurnsEdit::Hold(who, slot, held) => hold(club, id, (*who, *slot), *held),
        TurnsEdit::Friends(friends) => {
            let friends = pairs(club, friends)?;
            turns_of(club, id)?.friends = friends;
            Ok(Made::Nothing)
        }
        TurnsEdit::Off => off(club, id),
    }
}

/// Who wants to be together, each pair once and nobody with themselves.
fn pairs(club: &Club, friends: &Friends) -> Result<Friends, Refused> {
    let known = |p: &ParticipantId| club.participant(*p).is_some();
    if !friends.iter().all(|(a, b)| known(a) && known(b)) {
        return Err(Refused::gone("participant"));
    }
    limits::count("pairs of friends", friends.len(), limits::LIST)?;
    let tidy = |(a, b): &(ParticipantId, ParticipantId)| (*a.min(b), *a.max(b));
    Ok(friends.iter().filter(|(a, b)| a != b).map(tidy).collect())
}

fn off(club: &mut Club, id: SessionId) -> Result<Made, Refused> {
    let Some(turns) = find(club, id)?.turns.clone() else {
        return Ok(Made::Nothing);
    };
    for slot in turns.waits {
        timetable::remove(club, id, slot)?;
    }
    Arc::make_mut(find_mut(club, id)?).turns = None;
    Ok(Made::Nothing)
}

fn set(club: &mut Club, id: SessionId, plan: &TurnsPlan) -> Result<Made, Refused> {
    check(club, id, plan)?;
    let friends = pairs(club, &plan.friends)?;
    gather(club, id, plan)?;
    let waits = waiting_rows(club, id, plan)?;
    let mut places = BTreeMap::new();
    for (who, own) in &plan.places {
        let mut spare = waits.iter().copied();
        let own = own.iter().map(|at| at.or_else(|| spare.next()));
        places.insert(*who, own.collect());
    }
    let session = Arc::make_mut(find_mut(club, id)?);
    let mut next = Turns {
        stations: plan.stations.clone(),
        waits,
        count: plan.count,
        minutes: plan.minutes,
        places,
        friends,
        held: BTreeSet::new(),
    };
    // What was held and stands in the same turn is held on.
    if let Some(before) = &session.turns {
        let stays = |&(who, turn, slot): &_| next.turn_of(who, slot) == Some(turn);
        let held = before.held_visits().filter(stays);
        next.held = held.map(|(who, _, slot)| (who, slot)).collect();
        next.settle_held();
    }
    session.turns = Some(Box::new(next));
    Ok(Made::Nothing)
}

fn check(club: &Club, id: SessionId, plan: &TurnsPlan) -> Result<(), Refused> {
    let session = find(club, id)?;
    limits::care::turns(plan)?;
    let mut seen = BTreeSet::new();
    for station in &plan.stations {
        if session.slot(station.slot).is_none() {
            return Err(Refused::gone("row of the timetable"));
        }
        if !seen.insert(station.slot) {
            return Err(Refused::new(
                "One row is named twice among the turns.",
                "Name each row once.",
            ));
        }
    }
    for (who, places) in &plan.places {
        if club.participant(*who).is_none() {
            return Err(Refused::gone("participant"));
        }
        let mut own = BTreeSet::new();
        let named = places.iter().flatten();
        if places.len() != plan.count as usize
            || named.clone().any(|s| !seen.contains(s))
            || !named.clone().all(|s| own.insert(*s))
        {
            return Err(Refused::new(
                "The turns of a participant do not fit the plan.",
                "Work the turns out again.",
            ));
        }
    }
    match plan.waiting {
        Some(a) if club.activity(a).is_none() => Err(Refused::gone("activity")),
        _ => Ok(()),
    }
}

/// Puts the stations together, in the order of the plan, where the first of them stands.
fn gather(club: &mut Club, id: SessionId, plan: &TurnsPlan) -> Result<(), Refused> {
    let stations: Vec<SlotId> = plan.stations.iter().map(|s| s.slot).collect();
    let session = find_mut(club, id)?;
    let before = session.turns.iter().flat_map(|t| t.waits.clone());
    let waits: Vec<SlotId> = before.filter(|w| !stations.contains(w)).collect();
    let mut wanted: Vec<Slot> = Vec::with_capacity(session.timetable.len());
    let first = session
        .timetable
        .iter()
        .position(|s| stations.contains(&s.id));
    for (i, slot) in session.timetable.iter().enumerate() {
        if Some(i) == first {
            let all = stations.iter().chain(&waits);
            wanted.extend(all.filter_map(|s| session.slot(*s)).cloned());
        }
        if !stations.contains(&slot.id) && !waits.contains(&slot.id) {
            wanted.push(slot.clone());
        }
    }
    if wanted != session.timetable {
        Arc::make_mut(session).timetable = wanted;
    }
    Ok(())
}

/// As many rows of waiting as anyone waits; those that are there already are kept.
fn waiting_rows(club: &mut Club, id: SessionId, plan: &TurnsPlan) -> Result<Vec<SlotId>, Refused> {
    let idle = |places: &Vec<Option<SlotId>>| places.iter().filter(|p| p.is_none()).count();
    let most = plan.places.values().map(idle).max().unwrap_or(0);
    let needed = plan.waiting.map_or(0, |_| most);
    let session = find(club, id)?;
    let before = session.turns.as_ref().map_or(&[][..], |t| &t.waits);
    let same = |s: &SlotId| session.slot(*s).map(|r| r.activity) == plan.waiting;
    // A row of waiting may have become a station.
    let station = |s: &&SlotId| plan.stations.iter().any(|at| at.slot == **s);
    let before = before.iter().filter(|s| !station(s));
    let (mut waits, mut gone): (Vec<SlotId>, Vec<SlotId>) = before.partition(|s| same(s));
    gone.extend(waits.split_off(waits.len().min(needed)));
    for slot in gone {
        timetable::remove(club, id, slot)?;
    }
    let Some(activity) = plan.waiting else {
        return Ok(waits);
    };
    while waits.len() < needed {
        let session = find(club, id)?;
        let last = waits.last().copied();
        let last = last.or_else(|| plan.stations.last().map(|s| s.slot));
        let at = session.timetable.iter().position(|s| Some(s.id) == last);
        let at = at.map_or(session.timetable.len(), |i| i + 1);
        if let Made::Slot(slot) = timetable::insert(club, id, activity, at)? {
            waits.push(slot);
        }
    }
    Ok(waits)
}

fn place(
    club: &mut Club,
    id: SessionId,
    who: ParticipantId,
    turn: usize,
    slot: SlotId,
) -> Result<Made, Refused> {
    if club.participant(who).is_none() {
        return Err(Refused::gone("participant"));
    }
    let turns = turns_of(club, id)?;
    if !turns.has(slot) || turn >= turns.count as usize {
        return Err(Refused::gone("turn"));
    }
    let mut own = turns.of(who);
    if own[turn].is_some_and(|there| there != slot && turns.holds(who, there)) {
        return Err(Refused::new(
            format!("What stands in turn {} is held there.", turn + 1),
            "Let it go first, or choose another turn.",
        ));
    }
    match own.iter().position(|s| *s == Some(slot)) {
        Some(other) => own.swap(other, turn),
        None => own[turn] = Some(slot),
    }
    turns.places.insert(who, own);
    Ok(Made::Nothing)
}

/// Holds what stands, or lets it go. A row of waiting is where a turn was left over: it is not held.
fn hold(
    club: &mut Club,
    id: SessionId,
    (who, slot): (ParticipantId, SlotId),
    held: bool,
) -> Result<Made, Refused> {
    if club.participant(who).is_none() {
        return Err(Refused::gone("participant"));
    }
    let turns = turns_of(club, id)?;
    if !held {
        turns.held.remove(&(who, slot));
        return Ok(Made::Nothing);
    }
    let station = turns.stations.iter().any(|s| s.slot == slot);
    if !station || turns.turn_of(who, slot).is_none() {
        return Err(Refused::gone("turn"));
    }
    // Who had no plan yet is held where they stand, whatever the timetable becomes.
    let own = turns.of(who);
    turns.places.insert(who, own);
    turns.held.insert((who, slot));
    Ok(Made::Nothing)
}

fn turns_of(club: &mut Club, id: SessionId) -> Result<&mut Turns, Refused> {
    if find(club, id)?.turns.is_none() {
        return Err(Refused::gone("plan of turns"));
    }
    let session = Arc::make_mut(find_mut(club, id)?);
    let turns = session.turns.as_deref_mut();
    turns.ok_or_else(|| Refused::gone("plan of turns"))
}

/// After a change of the timetable: a station that was moved away is none any more, what was put
/// between stations stands after them, and turns without a station are over.
pub(super) fn settle(club: &mut Club, id: SessionId, edit: &TimetableEdit) -> Result<(), Refused> {
    let session = find_mut(club, id)?;
    let Some(turns) = &session.turns else {
        return Ok(());
    };
    let moved = match edit {
        TimetableEdit::Move(slot, _) => Some(*slot),
        _ => None,
    };
    let mut next = Session::clone(session);
    let mut own = Turns::clone(turns);
    if let Some(slot) = moved.filter(|s| own.has(*s) && alone(&next, &own, *s)) {
        own.forget_slot(slot);
        next.today.forget_slot(slot);
    }
    together(&mut next, &own);
    in_order(&next, &mut own);
    next.turns = (!own.stations.is_empty()).then(|| Box::new(own));
    if next.turns.is_none() {
        let waits: Vec<SlotId> = session.turns.iter().flat_map(|t| t.waits.clone()).collect();
        *session = Arc::new(next);
        for slot in waits {
            if find(club, id)?.slot(slot).is_some() {
                timetable::remove(club, id, slot)?;
            }
        }
        return Ok(());
    }
    if next != **session {
        *session = Arc::new(next);
    }
    Ok(())
}

/// Whether no other row of the turns stands right beside this one.
fn alone(session: &Session, turns: &Turns, slot: SlotId) -> bool {
    let rows = &session.timetable;
    let Some(at) = rows.iter().position(|s| s.id == slot) else {
        return true;
    };
    let is = |i: Option<usize>| i.and_then(|i| rows.get(i)).is_some_and(|s| turns.has(s.id));
    let others = turns.slots().count() > 1;
    others && !is(at.checked_sub(1)) && !is(Some(at + 1))
}

/// What stands between rows of the turns is put after them.
fn together(session: &mut Session, turns: &Turns) {
    let of_turns = |s: &Slot| turns.has(s.id);
    let Some(first) = session.timetable.iter().position(of_turns) else {
        return;
    };
    let rest = session.timetable.split_off(first);
    let (mut own, others): (Vec<Slot>, Vec<Slot>) = rest.into_iter().partition(of_turns);
    own.sort_by_key(|s| turns.waits.contains(&s.id));
    session.timetable.extend(own);
    session.timetable.extend(others);
}

/// Stations in the order of the timetable.
fn in_order(session: &Session, turns: &mut Turns) {
    let place = |slot: SlotId| session.timetable.iter().position(|s| s.id == slot);
    turns.stations.sort_by_key(|s| place(s.slot));
    turns.waits.sort_by_key(|s| place(*s));
}
