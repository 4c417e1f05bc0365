//! Who can be with a participant in the water at a moment, and why others who go into the water
//! cannot: they are away, not there yet, lead or watch, or a certificate does not cover the day.

use std::collections::BTreeSet;

use crate::model::club::Club;
use crate::model::ids::{AwardId, HelperId, ParticipantId, SlotId};
use crate::model::people::{Helper, Participant, Role};
use crate::model::profile::Field;
use crate::model::session::Session;
use crate::plan::certificates::{Standing, standing};
use crate::plan::clock::Moment;

use super::Stretch;

/// A water-safety person who cannot be with a participant now.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct NotFree {
    /// Who.
    pub who: HelperId,
    /// Why.
    pub reason: Reason,
}

/// Why someone cannot be with a participant in the water.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Reason {
    /// They do not come.
    Away,
    /// They come later, or go earlier.
    NotThere,
    /// What they hold of this kind does not cover the day.
    Certificate(AwardId, Standing),
    /// They lead a row.
    Leads(SlotId),
    /// They watch, and have no other job.
    Watches,
    /// They are named to watch this participant, who is in the water now.
    WatchesOne(ParticipantId),
}

/// Whether an alert is entered for a participant, so that someone is named to watch them. What it
/// says is not told.
pub fn has_alert(participant: &Participant) -> bool {
    let of = |f: Field| participant.profile.for_owner(f);
    let fields = [Field::AlertMarker, Field::Alerts];
    fields.into_iter().any(|f| !of(f).trim().is_empty())
}

/// Whether someone watches today: as decided for the date, or as their roles say. Whoever both
/// watches and goes into the water goes into the water unless the date says otherwise.
pub fn watches(session: &Session, helper: &Helper) -> bool {
    let role = |r| helper.roles.contains(&r);
    let usual = role(Role::Watcher) && !role(Role::WaterSafety);
    *session.today.watching.get(&helper.id).unwrap_or(&usual)
}

/// What the entered certificates of a helper say about a day, for every kind that the club asks for
/// in the water.
pub fn certificates_on(
    club: &Club,
    helper: &Helper,
    date: jiff::civil::Date,
) -> Vec<(AwardId, Standing)> {
    let needed = club.rules.care.awards.iter().filter(|a| a.for_water);
    needed
        .map(|a| (a.id, standing(a, &helper.certificates, date)))
        .collect()
}

/// Whether the hours that are entered for a helper reach from one moment to another.
pub fn within_hours(session: &Session, helper: HelperId, from: Moment, to: Moment) -> bool {
    session.today.here.get(&helper).is_none_or(|hours| {
        let late = hours.from.is_some_and(|f| Moment::at(f) > from);
        let early = hours.to.is_some_and(|t| Moment::at(t) < to);
        !late && !early
    })
}

/// What keeps a helper from being with anyone in this stretch: where they are and what else they do.
pub fn job_at(
    session: &Session,
    stretch: &Stretch,
    helper: HelperId,
    in_water: &BTreeSet<ParticipantId>,
) -> Option<Reason> {
    if session.helpers_away.contains(&helper) {
        return Some(Reason::Away);
    }
    if !within_hours(session, helper, stretch.from, stretch.to) {
        return Some(Reason::NotThere);
    }
    let rows = session.timetable.iter();
    let mut led = rows.filter(|s| stretch.rows.contains(&s.id) && s.leads.contains(&helper));
    if let Some(row) = led.next() {
        return Some(Reason::Leads(row.id));
    }
    let named = session.today.watched_by.iter();
    let mut named = named.filter(|(who, h)| **h == helper && in_water.contains(who));
    named.next().map(|(who, _)| Reason::WatchesOne(*who))
}

/// Who is free to be with someone in this stretch, in the order of the list, and who is not.
pub fn people_at(
    club: &Club,
    session: &Session,
    stretch: &Stretch,
    in_water: &BTreeSet<ParticipantId>,
) -> (Vec<HelperId>, Vec<NotFree>) {
    let (mut free, mut not_free) = (Vec::new(), Vec::new());
    let go = |h: &&std::sync::Arc<Helper>| h.roles.contains(&Role::WaterSafety);
    for helper in club.helpers.iter().filter(go) {
        match why_not(club, session, stretch, helper, in_water) {
            None => free.push(helper.id),
            Some(reason) => not_free.push(NotFree {
                who: helper.id,
                reason,
            }),
        }
    }
    (free, not_free)
}

fn why_not(
    club: &Club,
    session: &Session,
    stretch: &Stretch,
    helper: &Helper,
    in_water: &BTreeSet<ParticipantId>,
) -> Option<Reason> {
    let job = job_at(session, stretch, helper.id, in_water);
    if job == Some(Reason::Away) {
        return job;
    }
    let held = certificates_on(club, helper, session.date);
    let uncovered = held.into_iter().find(|(_, s)| !s.is_covered());
    if let Some((award, standing)) = uncovered {
        return Some(Reason::Certificate(award, standing));
    }
    job.or_else(|| watches(session, helper).then_some(Reason::Watches))
}
