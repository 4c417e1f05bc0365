//! Edits of a timetable. Hand changes of every board survive them; one that no longer says clearly
//! what is meant becomes a question to a person, never lost in silence.

use std::collections::BTreeSet;
use std::sync::Arc;

use super::board::checked;
use super::session::{find, find_mut};
use super::{Made, Refused, TimetableEdit, club as of_club, fresh, shift};
use crate::model::board::{self, Board};
use crate::model::club::{Activity, Club};
use crate::model::hand::{Asked, Content};
use crate::model::ids::{ActivityId, PartId, ParticipantId, SessionId, SlotId, StepRef};
use crate::model::limits;
use crate::model::session::{Off, Session, Slot};

pub(super) fn apply(club: &mut Club, id: SessionId, edit: &TimetableEdit) -> Result<Made, Refused> {
    let made = change_rows(club, id, edit)?;
    super::turns::settle(club, id, edit)?;
    Ok(made)
}

fn change_rows(club: &mut Club, id: SessionId, edit: &TimetableEdit) -> Result<Made, Refused> {
    find(club, id)?;
    match *edit {
        TimetableEdit::Off(slot, off) => call_off(club, id, slot, off),
        TimetableEdit::Dry(part, dry) => dry_all(club, id, part, dry),
        TimetableEdit::Options(slot, ref options) => offer(club, id, slot, options),
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
        TimetableEdit::Leads(slot, ref leads) => {
            if leads.iter().any(|h| club.helper(*h).is_none()) {
                return Err(Refused::gone("helper"));
            }
            change(club, id, slot, |s| s.leads.clone_from(leads))
        }
        TimetableEdit::Remove(slot) => remove(club, id, slot),
    }
}

pub(super) fn insert(
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
            leads: BTreeSet::new(),
            options: Vec::new(),
            off: None,
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
    if old.activity != activity {
        ask_about_replaced(club, id, slot, activity)?;
    }
    change(club, id, slot, |s| {
        if s.activity != activity {
            // What was offered, or came instead, belonged to the activity before.
            s.options.clear();
            s.off = None;
        }
        s.activity = activity;
        if follows {
            s.part = part;
        }
    })
}

/// Changes by hand about a row that shows another activity now. Its words are set aside, because
/// they would stand under another picture.
fn ask_about_replaced(
    club: &mut Club,
    id: SessionId,
    slot: SlotId,
    now: ActivityId,
) -> Result<(), Refused> {
    let session = find(club, id)?;
    let at = slot_at(session, slot)?;
    let old = session.timetable[at].activity;
    let was = Content::of(activity_of(club, old)?);
    let session = Arc::make_mut(find_mut(club, id)?);
    let step = StepRef::Slot(slot);
    for hand in session.hand.values_mut() {
        if let Some(words) = hand.labels.remove(&step) {
            let was = was.clone();
            hand.asked.push(Asked::OtherWords { slot, was, words });
        }
        // The timetable came back to what it was when it was asked: nothing is open any more.
        let back = |a: &Asked| a.slot() == Some(slot) && a.was().activity == Some(now);
        for a in hand.asked.iter().filter(|a| back(a)) {
            if let Asked::OtherWords { words, .. } = a {
                hand.labels.insert(step, words.clone());
            }
        }
        hand.asked.retain(|a| !back(a));
        let differs = hand.replaced.contains_key(&step)
            || hand.not_today.contains_key(&step)
            || hand.choices.contains_key(&step);
        let open = |a: &Asked| matches!(a, Asked::OtherActivity { slot: s, .. } if *s == slot);
        let is_now = |c: &Content| c.activity == Some(now);
        let agrees = hand.replaced.get(&step).is_some_and(is_now);
        if differs && !agrees && !hand.asked.iter().any(open) {
            let was = was.clone();
            hand.asked.push(Asked::OtherActivity { slot, was });
        }
    }
    Ok(())
}

fn call_off(
    club: &mut Club,
    id: SessionId,
    slot: SlotId,
    off: Option<Off>,
) -> Result<Made, Refused> {
    if let Some(instead) = off.and_then(|o| o.instead) {
        activity_of(club, instead)?;
    }
    change(club, id, slot, |s| s.off = off)
}

/// Every row in the water, in one part of the day or all, with its dry replacement instead.
fn dry_all(
    club: &mut Club,
    id: SessionId,
    part: Option<PartId>,
    dry: bool,
) -> Result<Made, Refused> {
    let session = find(club, id)?;
    let here = |s: &&Slot| part.is_none_or(|p| p == s.part);
    let mut rows: Vec<(SlotId, Option<Off>)> = Vec::new();
    for slot in session.timetable.iter().filter(here) {
        let Some(activity) = club.activity(slot.activity).filter(|a| a.in_water) else {
            continue;
        };
        let off = dry.then(|| {
            let usual = Off {
                instead: activity.dry_replacement,
            };
            slot.off.unwrap_or(usual)
        });
        rows.push((slot.id, off));
    }
    for (slot, off) in rows {
        change(club, id, slot, |s| s.off = off)?;
    }
    Ok(Made::Nothing)
}

fn offer(
    club: &mut Club,
    id: SessionId,
    slot: SlotId,
    options: &[Content],
) -> Result<Made, Refused> {
    limits::options(options)?;
    let options: Vec<Content> = options
        .iter()
        .map(|o| checked(club, o))
        .collect::<Result<_, _>>()?;
    change(club, id, slot, |s| s.options = options)
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

/// What was shown, said or moved by hand in a slot that goes becomes a question; that it was not
/// today is true of it now for everyone. Own steps and other moved steps stay, held by the rest of
/// what stood before them.
pub(super) fn remove(club: &mut Club, id: SessionId, slot: SlotId) -> Result<Made, Refused> {
    let session = find(club, id)?;
    let at = slot_at(session, slot)?;
    let people: Vec<ParticipantId> = session.hand.keys().copied().collect();
    let asked: Vec<(ParticipantId, Asked)> = people
        .into_iter()
        .flat_map(|who| {
            let asked = row_gone(club, session, who, slot).into_iter();
            let beside = beside_gone(club, session, who, slot);
            asked.chain(beside).map(move |a| (who, a))
        })
        .collect();
    let session = Arc::make_mut(find_mut(club, id)?);
    session.timetable.remove(at);
    session.today.forget_slot(slot);
    if let Some(turns) = &mut session.turns {
        turns.forget_slot(slot);
    }
    for (who, hand) in &mut session.hand {
        for step in hand.named() {
            if step.slot() == Some(slot) {
                hand.forget(step);
            }
        }
        hand.asked.retain(|a| a.slot() != Some(slot));
        let mine = asked.iter().filter(|(id, _)| id == who);
        hand.asked.extend(mine.map(|(_, a)| a.clone()));
    }
    session.hand.retain(|_, hand| !hand.is_empty());
    Ok(Made::Nothing)
}

/// What to ask about the standing steps beside a row that goes: other words or another picture.
fn beside_gone(club: &Club, session: &Session, who: ParticipantId, slot: SlotId) -> Vec<Asked> {
    let Some(hand) = session.hand_of(who) else {
        return Vec::new();
    };
    let board = board::derive(club, session, who);
    let changed = |at: &StepRef| hand.replaced.contains_key(at) || hand.labels.contains_key(at);
    let lost = board.steps.iter().enumerate().filter(|(_, s)| {
        matches!(s.at, StepRef::Standing(_, Some(at)) if at == slot) && changed(&s.at)
    });
    lost.map(|(i, step)| {
        let shown = Content {
            activity: step.activity.filter(|_| !step.relabelled),
            symbol: step.symbol.clone(),
            label: step.label.clone(),
        };
        Asked::RowGone {
            was: shown.clone(),
            shown,
            options: step.options.clone(),
            after: before(&board, i, slot),
        }
    })
    .collect()
}

/// All that stands before a step, nearest first, without what goes with a row.
fn before(board: &Board, at: usize, slot: SlotId) -> Vec<StepRef> {
    let steps = board.steps[..at].iter().rev().map(|s| s.at);
    steps.filter(|s| s.slot() != Some(slot)).collect()
}

/// What to ask about a row that goes; nothing when nothing is lost with it.
fn row_gone(club: &Club, session: &Session, who: ParticipantId, slot: SlotId) -> Option<Asked> {
    let hand = session.hand_of(who)?;
    let row = session.slot(slot)?;
    let step = StepRef::Slot(slot);
    let instead = hand.replaced.get(&StepRef::Instead(slot));
    let instead = instead.or_else(|| hand.not_today.get(&step).and_then(Option::as_ref));
    let off = hand.not_today.contains_key(&step);
    let by_hand = hand.replaced.get(&step).filter(|_| !off);
    let changed =
        hand.labels.contains_key(&step) || hand.choices.contains_key(&step) || hand.is_placed(step);
    if instead.is_none() && by_hand.is_none() && (off || !changed) {
        return None;
    }
    let board = board::derive(club, session, who);
    let at = board.position(step)?;
    let was = club.activity(row.activity).map(|a| Content::of(a))?;
    let mut shown = instead.or(by_hand).unwrap_or(&was).clone();
    if let (Some(words), None) = (hand.labels.get(&step), instead) {
        shown = Content {
            activity: None,
            symbol: board.steps[at].symbol.clone(),
            label: words.clone(),
        };
    }
    Some(Asked::RowGone {
        was,
        shown,
        options: hand.choices.get(&step).cloned().unwrap_or_default(),
        after: before(&board, at, slot),
    })
}

fn slot_at(session: &Session, slot: SlotId) -> Result<usize, Refused> {
    let at = session.timetable.iter().position(|s| s.id == slot);
    at.ok_or_else(|| Refused::gone("row of the timetable"))
}

fn activity_of(club: &Club, id: ActivityId) -> Result<&Arc<Activity>, Refused> {
    of_club::activity_at(club, id).map(|at| &club.activities[at])
}
