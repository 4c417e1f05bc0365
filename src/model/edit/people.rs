//! Edits of participants and helpers.

use std::sync::Arc;

use super::board::checked;
use super::{Made, Refused, fresh, pictures, set, shift, stock};
use crate::model::award::Certificate;
use crate::model::club::Club;
use crate::model::craft::TileShape;
use crate::model::ids::{ActivityId, HelperId, ParticipantId, StandingId};
use crate::model::limits;
use crate::model::people::{Helper, Participant};
use crate::model::standing::Beside;
use crate::units::Length;

pub(super) fn add_participant(club: &mut Club, p: &Participant) -> Result<Made, Refused> {
    limits::count("participants", club.participants.len() + 1, limits::LIST)?;
    let mut participant = limits::tidy_participant(p);
    limits::participant(&participant)?;
    let id = ParticipantId(fresh(club)?);
    participant.id = id;
    settle_standing(club, &mut participant)?;
    club.participants.push(Arc::new(participant));
    Ok(Made::Participant(id))
}

pub(super) fn change_participant(club: &mut Club, p: &Participant) -> Result<Made, Refused> {
    let mut participant = limits::tidy_participant(p);
    limits::participant(&participant)?;
    let at = participant_at(club, participant.id)?;
    settle_standing(club, &mut participant)?;
    set(&mut club.participants[at], participant);
    Ok(Made::Nothing)
}

/// The same tiles for some; all of them or none.
pub(super) fn tile_sizes(
    club: &mut Club,
    who: &[ParticipantId],
    shape: TileShape,
    side: Length,
) -> Result<Made, Refused> {
    for id in who {
        let at = participant_at(club, *id)?;
        let next = Participant {
            shape,
            tile: side,
            ..Participant::clone(&club.participants[at])
        };
        limits::participant(&next)?;
        set(&mut club.participants[at], next);
    }
    Ok(Made::Nothing)
}

/// Adds those who are new, changes those who are known; all of them or none.
pub(super) fn take_in(club: &mut Club, people: &[Participant]) -> Result<Made, Refused> {
    let mut made = Made::Nothing;
    for person in people {
        if person.id == ParticipantId(0) {
            made = add_participant(club, person)?;
        } else {
            change_participant(club, person)?;
        }
    }
    Ok(made)
}

/// Standing steps that are new get an id; what is shown must be in the club.
fn settle_standing(club: &mut Club, p: &mut Participant) -> Result<(), Refused> {
    for content in p.standing.contents_mut() {
        *content = checked(club, content)?;
    }
    let mut named: Vec<ActivityId> = p.standing.swaps.keys().copied().collect();
    named.extend(&p.standing.left_out);
    named.extend(&p.profile.favourites);
    named.extend(p.manner.mixed.keys());
    for step in &p.standing.own {
        match step.beside {
            Beside::Activity(id) => named.push(id),
            Beside::Part(id) if club.part(id).is_none() => {
                return Err(Refused::gone("part of the day"));
            }
            Beside::Part(_) | Beside::Water => {}
        }
    }
    if named.iter().any(|id| club.activity(*id).is_none()) {
        return Err(Refused::gone("activity"));
    }
    for step in &mut p.standing.own {
        if step.id == StandingId::NEW {
            step.id = StandingId(fresh(club)?);
        }
    }
    Ok(())
}

pub(super) fn move_participant(
    club: &mut Club,
    id: ParticipantId,
    to: usize,
) -> Result<Made, Refused> {
    let at = participant_at(club, id)?;
    shift(&mut club.participants, at, to);
    Ok(Made::Nothing)
}

pub(super) fn remove_participant(club: &mut Club, id: ParticipantId) -> Result<Made, Refused> {
    let at = participant_at(club, id)?;
    club.participants.remove(at);
    stock::forget(club, id);
    pictures::forget_participant(club, id);
    for helper in &mut club.helpers {
        if helper.trains.contains(&id) {
            Arc::make_mut(helper).trains.remove(&id);
        }
    }
    for session in &mut club.sessions {
        let named = session.away.contains(&id)
            || session.hand.contains_key(&id)
            || session.records.contains_key(&id)
            || session.stories.contains_key(&id)
            || session.beside.contains_key(&id);
        let mut today = session.today.clone();
        today.forget_participant(id);
        let mut turns = session.turns.clone();
        if let Some(turns) = &mut turns {
            turns.forget_participant(id);
        }
        if today != session.today || turns != session.turns {
            let session = Arc::make_mut(session);
            session.today = today;
            session.turns = turns;
        }
        if named {
            let session = Arc::make_mut(session);
            session.away.remove(&id);
            session.hand.remove(&id);
            session.records.remove(&id);
            session.stories.remove(&id);
            session.beside.remove(&id);
        }
    }
    Ok(Made::Nothing)
}

fn participant_at(club: &Club, id: ParticipantId) -> Result<usize, Refused> {
    let at = club.participants.iter().position(|p| p.id == id);
    at.ok_or_else(|| Refused::gone("participant"))
}

pub(super) fn add_helper(club: &mut Club, h: &Helper) -> Result<Made, Refused> {
    limits::count("helpers", club.helpers.len() + 1, limits::LIST)?;
    let helper = tidy_helper(club, h)?;
    let id = HelperId(fresh(club)?);
    club.helpers.push(Arc::new(Helper { id, ..helper }));
    Ok(Made::Helper(id))
}

pub(super) fn change_helper(club: &mut Club, h: &Helper) -> Result<Made, Refused> {
    let helper = tidy_helper(club, h)?;
    let at = helper_at(club, helper.id)?;
    set(&mut club.helpers[at], helper);
    Ok(Made::Nothing)
}

pub(super) fn remove_helper(club: &mut Club, id: HelperId) -> Result<Made, Refused> {
    let at = helper_at(club, id)?;
    club.helpers.remove(at);
    for session in &mut club.sessions {
        let beside = session.beside.values().any(|h| *h == id);
        let mut today = session.today.clone();
        today.forget_helper(id);
        let leads = session.timetable.iter().any(|s| s.leads.contains(&id));
        if today != session.today || leads {
            let session = Arc::make_mut(session);
            session.today = today;
            for slot in &mut session.timetable {
                slot.leads.remove(&id);
            }
        }
        if session.helpers_away.contains(&id) || beside {
            let session = Arc::make_mut(session);
            session.helpers_away.remove(&id);
            session.beside.retain(|_, h| *h != id);
        }
    }
    Ok(Made::Nothing)
}

fn tidy_helper(club: &Club, h: &Helper) -> Result<Helper, Refused> {
    let helper = limits::care::tidy_helper(h);
    limits::helper(&helper)?;
    if helper.trains.iter().any(|p| club.participant(*p).is_none()) {
        return Err(Refused::gone("participant"));
    }
    let known = |c: &Certificate| club.rules.care.award(c.award).is_some();
    if !helper.certificates.iter().all(known) {
        return Err(Refused::gone("kind of certificate"));
    }
    Ok(helper)
}

fn helper_at(club: &Club, id: HelperId) -> Result<usize, Refused> {
    let at = club.helpers.iter().position(|h| h.id == id);
    at.ok_or_else(|| Refused::gone("helper"))
}
