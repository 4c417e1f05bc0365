//! Edits of who does what on a date, and of what was seen there.

use std::collections::BTreeSet;
use std::sync::Arc;

use super::session::{find, find_mut};
use super::{Made, Refused, TodayEdit};
use crate::model::club::Club;
use crate::model::ids::{HelperId, ParticipantId, SessionId, SlotId};
use crate::model::limits;
use crate::model::looks::Looked;
use crate::model::today::{Hours, Today};

pub(super) fn apply(club: &mut Club, id: SessionId, edit: &TodayEdit) -> Result<Made, Refused> {
    let mut today = Today::clone(&find(club, id)?.today);
    change(club, id, &mut today, edit)?;
    if today != *find(club, id)?.today {
        *Arc::make_mut(find_mut(club, id)?).today = today;
    }
    Ok(Made::Nothing)
}

fn change(club: &Club, id: SessionId, today: &mut Today, edit: &TodayEdit) -> Result<(), Refused> {
    match edit {
        TodayEdit::WaterLead(lead) => {
            lead.map_or(Ok(()), |h| helper(club, h))?;
            today.water_lead = *lead;
        }
        TodayEdit::Here(who, hours) => {
            helper(club, *who)?;
            let hours = hours.map(limits::care::tidy_hours);
            hours.map_or(Ok(()), |h| limits::care::hours(&h))?;
            put(
                &mut today.here,
                *who,
                hours.filter(|h| *h != Hours::default()),
            );
        }
        TodayEdit::Watches(who, watches) => {
            helper(club, *who)?;
            put(&mut today.watching, *who, *watches);
        }
        TodayEdit::WatchedBy(who, by) => {
            participant(club, *who)?;
            by.map_or(Ok(()), |h| helper(club, h))?;
            put(&mut today.watched_by, *who, *by);
        }
        TodayEdit::Pair(who, with, pair) => {
            participant(club, *who)?;
            helper(club, *with)?;
            put(&mut today.pairs, (*who, *with), *pair);
        }
        TodayEdit::Hold(slot, who, with) => {
            held(club, id, *slot, *who, with)?;
            let with = (!with.is_empty()).then(|| with.clone());
            put(&mut today.held, (*slot, *who), with);
        }
        TodayEdit::HoldAll(all) => {
            for ((slot, who), with) in all {
                held(club, id, *slot, *who, with)?;
            }
            today.held.clone_from(all);
            today.held.retain(|_, with| !with.is_empty());
        }
        TodayEdit::MeetingSpot(spot) => {
            today.meeting_spot = limits::tidy_line(spot);
            limits::text("The meeting spot", &today.meeting_spot)?;
        }
        TodayEdit::Look(_) | TodayEdit::LookAgain(..) | TodayEdit::Unlook(_) => {
            look(&mut today.looks, edit)?;
        }
        TodayEdit::Thunder(heard) => {
            limits::count("times of thunder", heard.len(), limits::SLOTS)?;
            today.thunder = heard.iter().map(|t| limits::tidy_start(*t)).collect();
        }
    }
    Ok(())
}

fn look(looks: &mut Vec<Looked>, edit: &TodayEdit) -> Result<(), Refused> {
    let tidy = |looked: &Looked| -> Result<Looked, Refused> {
        let looked = limits::care::tidy_looked(looked);
        limits::care::looked(&looked)?;
        Ok(looked)
    };
    match edit {
        TodayEdit::Look(looked) => {
            limits::count("points looked at", looks.len() + 1, limits::LIST)?;
            looks.push(tidy(looked)?);
        }
        TodayEdit::LookAgain(at, looked) => match looks.get_mut(*at) {
            Some(place) => *place = tidy(looked)?,
            None => return Err(Refused::gone("line of the check list")),
        },
        TodayEdit::Unlook(at) if *at < looks.len() => {
            looks.remove(*at);
        }
        _ => return Err(Refused::gone("line of the check list")),
    }
    Ok(())
}

fn put<K: Ord, V>(map: &mut std::collections::BTreeMap<K, V>, key: K, value: Option<V>) {
    match value {
        Some(value) => map.insert(key, value),
        None => map.remove(&key),
    };
}

fn held(
    club: &Club,
    id: SessionId,
    slot: SlotId,
    who: ParticipantId,
    with: &BTreeSet<HelperId>,
) -> Result<(), Refused> {
    participant(club, who)?;
    if find(club, id)?.slot(slot).is_none() {
        return Err(Refused::gone("row of the timetable"));
    }
    with.iter().try_for_each(|h| helper(club, *h))
}

fn participant(club: &Club, id: ParticipantId) -> Result<(), Refused> {
    let found = club.participant(id).map(|_| ());
    found.ok_or_else(|| Refused::gone("participant"))
}

fn helper(club: &Club, id: HelperId) -> Result<(), Refused> {
    let found = club.helper(id).map(|_| ());
    found.ok_or_else(|| Refused::gone("helper"))
}
