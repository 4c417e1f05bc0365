//! Edits of participants and helpers.

use std::sync::Arc;

use super::{Made, Refused, fresh, set, shift};
use crate::model::club::Club;
use crate::model::ids::{HelperId, ParticipantId};
use crate::model::limits;
use crate::model::people::{Helper, Participant};

pub(super) fn add_participant(club: &mut Club, p: &Participant) -> Result<Made, Refused> {
    limits::count("participants", club.participants.len() + 1, limits::LIST)?;
    let mut participant = limits::tidy_participant(p);
    limits::participant(&participant)?;
    let id = ParticipantId(fresh(club)?);
    participant.id = id;
    club.participants.push(Arc::new(participant));
    Ok(Made::Participant(id))
}

pub(super) fn change_participant(club: &mut Club, p: &Participant) -> Result<Made, Refused> {
    let participant = limits::tidy_participant(p);
    limits::participant(&participant)?;
    let at = participant_at(club, participant.id)?;
    set(&mut club.participants[at], participant);
    Ok(Made::Nothing)
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
    for session in &mut club.sessions {
        if session.away.contains(&id) || session.hand.contains_key(&id) {
            let session = Arc::make_mut(session);
            session.away.remove(&id);
            session.hand.remove(&id);
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
    let helper = tidy_helper(h)?;
    let id = HelperId(fresh(club)?);
    club.helpers.push(Arc::new(Helper { id, ..helper }));
    Ok(Made::Helper(id))
}

pub(super) fn change_helper(club: &mut Club, h: &Helper) -> Result<Made, Refused> {
    let helper = tidy_helper(h)?;
    let at = helper_at(club, helper.id)?;
    set(&mut club.helpers[at], helper);
    Ok(Made::Nothing)
}

pub(super) fn remove_helper(club: &mut Club, id: HelperId) -> Result<Made, Refused> {
    let at = helper_at(club, id)?;
    club.helpers.remove(at);
    for session in &mut club.sessions {
        if session.helpers_away.contains(&id) {
            Arc::make_mut(session).helpers_away.remove(&id);
        }
    }
    Ok(Made::Nothing)
}

fn tidy_helper(h: &Helper) -> Result<Helper, Refused> {
    let helper = Helper {
        name: limits::tidy_line(&h.name),
        ..h.clone()
    };
    limits::helper(&helper)?;
    Ok(helper)
}

fn helper_at(club: &Club, id: HelperId) -> Result<usize, Refused> {
    let at = club.helpers.iter().position(|h| h.id == id);
    at.ok_or_else(|| Refused::gone("helper"))
}
