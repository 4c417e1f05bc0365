//! Helpers: certificates against the dates of sessions, and whoever is to be in two places at once.

use super::{finding, said};
use crate::model::club::Club;
use crate::model::finding::{Finding, Severity, Spot};
use crate::model::ids::{HelperId, SlotId};
use crate::model::people::{Helper, Role};
use crate::model::session::Session;
use crate::plan::certificates::{Standing, season};
use crate::plan::clock::{Moment, clock};
use crate::plan::water::{certificates_on, within_hours};

/// Checks certificates that end within the season: until the last session of the club.
pub fn club(club: &Club, findings: &mut Vec<Finding>) {
    let dates: Vec<_> = club.sessions.iter().map(|s| s.date).collect();
    for helper in &club.helpers {
        for award in &club.rules.care.awards {
            let held = helper.certificates.iter().any(|c| c.award == award.id);
            let season = season(award, &helper.certificates, &dates);
            let Some(ends) = season.ends_early.filter(|_| held) else {
                continue;
            };
            // One that had ended before the first session is told with each session.
            let covered = season.affected.len() < dates_once(&dates);
            let Some(first) = season.first_affected().filter(|_| covered) else {
                continue;
            };
            findings.push(finding(
                Severity::Look,
                "people.certificate_ends",
                Spot::Helper(helper.id),
                format!(
                    "“{}” of {} ends with {}; the first session after that is on {}.",
                    award.name.trim(),
                    helper.name.trim(),
                    said::date(ends, first),
                    said::date(first, ends),
                ),
                "Ask for the new certificate before then.",
            ));
        }
    }
}

fn dates_once(dates: &[jiff::civil::Date]) -> usize {
    let once: std::collections::BTreeSet<_> = dates.iter().collect();
    once.len()
}

/// Checks the helpers of one session.
pub fn check(club: &Club, session: &Session, findings: &mut Vec<Finding>) {
    let here = |h: &&std::sync::Arc<Helper>| !session.helpers_away.contains(&h.id);
    for helper in club.helpers.iter().filter(here) {
        lapsed(club, session, helper, findings);
        twice(club, session, helper, findings);
    }
    leads_away(club, session, findings);
    adults(club, session, findings);
}

/// Someone who goes into the water and whose certificate does not cover the day.
fn lapsed(club: &Club, session: &Session, helper: &Helper, findings: &mut Vec<Finding>) {
    if !helper.roles.contains(&Role::WaterSafety) {
        return;
    }
    for (award, standing) in certificates_on(club, helper, session.date) {
        if standing.is_covered() {
            continue;
        }
        let name = club.rules.care.award(award).map_or("", |a| a.name.trim());
        let words = said::certificate(helper.name.trim(), name, standing, session.date);
        let hint = match standing {
            Standing::Ended { .. } | Standing::NotYetGained { .. } => {
                "Nobody is paired with them on that day until a new one is entered and was seen."
            }
            _ => {
                "Enter its dates from the paper, and who saw it. Until then nobody is paired with them."
            }
        };
        findings.push(finding(
            Severity::Look,
            "people.certificate",
            Spot::Helper(helper.id),
            said::sentence(&words),
            hint,
        ));
    }
}

/// Someone who leads two rows at the same time, or leads and is not there.
fn twice(club: &Club, session: &Session, helper: &Helper, findings: &mut Vec<Finding>) {
    let clock = clock(session, &club.rules);
    let led: Vec<(SlotId, Moment, Moment)> = session
        .timetable
        .iter()
        .filter(|s| s.leads.contains(&helper.id))
        .filter_map(|s| clock.row(s.id).map(|r| (s.id, r.from, r.to)))
        .collect();
    let label = |slot: SlotId| {
        let activity = session.slot(slot).and_then(|s| club.activity(s.activity));
        activity.map_or("a row", |a| a.label.trim()).to_owned()
    };
    let name = helper.name.trim();
    for (i, (slot, from, to)) in led.iter().enumerate() {
        let other = led[..i].iter().find(|(_, f, t)| f < to && from < t);
        if let Some((other, ..)) = other {
            findings.push(finding(
                Severity::StopAndLook,
                "people.double_booked",
                Spot::Slot(session.id, *slot),
                format!(
                    "{name} leads “{}” and “{}” at the same time.",
                    label(*other),
                    label(*slot)
                ),
                "Let someone else lead one of them.",
            ));
        }
        if !there(session, helper.id, *from, *to) {
            findings.push(finding(
                Severity::StopAndLook,
                "people.not_there",
                Spot::Slot(session.id, *slot),
                format!("{name} leads “{}” and is not there then.", label(*slot)),
                "Let someone else lead it, or look at when they are there.",
            ));
        }
    }
}

/// Whether a helper is there from one moment to another.
pub fn there(session: &Session, helper: HelperId, from: Moment, to: Moment) -> bool {
    !session.helpers_away.contains(&helper) && within_hours(session, helper, from, to)
}

fn leads_away(club: &Club, session: &Session, findings: &mut Vec<Finding>) {
    for slot in &session.timetable {
        for who in slot
            .leads
            .iter()
            .filter(|h| session.helpers_away.contains(h))
        {
            let label = club.activity(slot.activity).map_or("", |a| a.label.trim());
            findings.push(finding(
                Severity::Look,
                "people.lead_away",
                Spot::Slot(session.id, slot.id),
                format!(
                    "{} leads “{label}” and does not come.",
                    said::helper(club, *who)
                ),
                "Let someone else lead it.",
            ));
        }
    }
}

/// Fewer adults than the club's own rule asks for, at some moment.
fn adults(club: &Club, session: &Session, findings: &mut Vec<Finding>) {
    let asked = club.rules.care.fewest_adults as usize;
    let clock = clock(session, &club.rules);
    let count = |from: Moment, to: Moment| {
        let all = club.helpers.iter();
        all.filter(|h| there(session, h.id, from, to)).count()
    };
    let least = clock.rows.iter().map(|r| (count(r.from, r.to), r));
    let Some((n, row)) = least.min_by_key(|(n, _)| *n) else {
        return;
    };
    if n < asked {
        let are = if n == 1 { "is" } else { "are" };
        findings.push(finding(
            Severity::StopAndLook,
            "people.few_adults",
            Spot::Slot(session.id, row.slot),
            format!(
                "At {} {} {are} there, and the club’s rule asks for {} adults.",
                row.from,
                if n == 0 {
                    "none".to_owned()
                } else {
                    said::number(n)
                },
                said::number(asked),
            ),
            "Ask another helper.",
        ));
    }
}
