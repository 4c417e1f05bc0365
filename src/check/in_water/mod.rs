//! Who is with whom in the water: moments at which someone is short of people, hands that were put
//! together and cannot be, watchers, the water lead, depth, a signal that can be seen, time to dry.
//!
//! The rule is the club's own; the finding says what is missing. Nothing here says that people are
//! enough. Common practice in the trade: one water-safety person for each participant in the water,
//! watchers apart from them, one watcher with no other job.

mod agreed;

use std::sync::Arc;

use super::{finding, said};
use crate::model::board::Board;
use crate::model::club::Club;
use crate::model::finding::{Finding, Severity, Spot};
use crate::model::ids::ParticipantId;
use crate::model::session::Session;
use crate::plan::pairing::Why;
use crate::plan::water::{InWater, Together, WaterDay, has_alert};
use agreed::{depth, last, recall};

/// Checks a session with the boards of all who come and their water.
pub fn check(
    club: &Club,
    session: &Session,
    (boards, water): (&[Arc<Board>], &WaterDay),
    findings: &mut Vec<Finding>,
) {
    watched(club, session, boards, water, findings);
    if water.is_dry() {
        return;
    }
    if !club.rules.care.awards.iter().any(|a| a.for_water) {
        findings.push(finding(
            Severity::StopAndLook,
            "water.no_award",
            Spot::Club,
            "The club has not entered which certificate is needed in the water, so none is looked at."
                .to_owned(),
            "Enter it in People, Club, with the rule for how long it lasts.",
        ));
    }
    lead(club, session, findings);
    for moment in &water.moments {
        short(club, session, moment, findings);
        broken(club, session, moment, findings);
        watchers(session, moment, findings);
    }
    depth(club, session, boards, findings);
    recall(club, session, water, findings);
    last(club, session, water, findings);
}

fn lead(club: &Club, session: &Session, findings: &mut Vec<Finding>) {
    let spot = Spot::Water(session.id, None);
    let hint = "Name who leads in the water at Session, People and water.";
    match session.today.water_lead {
        None => findings.push(finding(
            Severity::StopAndLook,
            "water.no_lead",
            spot,
            "Water is planned and nobody is named to lead in the water.".to_owned(),
            hint,
        )),
        Some(who) if session.helpers_away.contains(&who) => findings.push(finding(
            Severity::StopAndLook,
            "water.lead_away",
            spot,
            format!(
                "{} leads in the water and does not come.",
                said::helper(club, who)
            ),
            hint,
        )),
        Some(_) => {}
    }
}

/// "At 10:20 four are in the water and three people are free for them: Ada, Bo and Cy."
fn short(club: &Club, session: &Session, moment: &InWater, findings: &mut Vec<Finding>) {
    let Some(short) = &moment.short else {
        return;
    };
    let at = moment.stretch.from;
    let people: Vec<String> = short
        .people
        .iter()
        .map(|h| said::helper(club, *h))
        .collect();
    // Where everyone who is free is among them, all who are in the water are short together.
    let all = short.people.len() == moment.free.len();
    let participants = match all {
        true => moment.visits.iter().map(|v| v.who).collect(),
        false => short.participants.clone(),
    };
    let who: Vec<String> = participants
        .iter()
        .map(|p| said::participant(club, *p))
        .collect();
    let are = |n: usize| if n == 1 { "is" } else { "are" };
    let persons = |n: usize| if n == 1 { "person" } else { "people" };
    let n = people.len();
    let there = match n {
        0 => "nobody is free for them".to_owned(),
        n => format!(
            "{} {} {} free for them: {}",
            said::number(n),
            persons(n),
            are(n),
            said::list(&people)
        ),
    };
    let count = said::number(participants.len());
    let mut sentence = if all {
        format!(
            "At {at} {count} {} in the water and {there}",
            are(who.len())
        )
    } else {
        format!("At {at}, for {}, {there}", said::list(&who))
    };
    let not: Vec<String> = moment
        .not_free
        .iter()
        .map(|n| said::why_not(club, session, n.who, n.reason))
        .collect();
    if !not.is_empty() {
        sentence = format!("{sentence}; {}", not.join("; "));
    }
    let empty = |v: &Together| (v.asked as usize).saturating_sub(v.people.len());
    let missing = match all {
        true => moment.visits.iter().map(empty).sum::<usize>(),
        false => short.missing as usize,
    };
    findings.push(finding(
        Severity::StopAndLook,
        "water.no_pairing",
        spot(session, moment),
        format!("{sentence}."),
        hint(session, moment, missing, short.by_hand),
    ));
}

fn hint(session: &Session, moment: &InWater, missing: usize, by_hand: bool) -> String {
    let more = match missing {
        1 => "One more person is missing".to_owned(),
        n => format!("{} more people are missing", capital(&said::number(n))),
    };
    if by_hand {
        return format!("{more} as pairs were put together by hand; let some of those go.");
    }
    let turns = match (moment.stretch.turn, &session.turns) {
        (None, None) => "do these rows in turns",
        _ => "work the turns out again",
    };
    format!("{more}: ask another, {turns}, or leave some on land.")
}

fn capital(word: &str) -> String {
    let sentence = said::sentence(word);
    sentence.trim_end_matches('.').to_owned()
}

fn spot(session: &Session, moment: &InWater) -> Spot {
    let first = moment.visits.first();
    Spot::Water(session.id, first.map(|v| v.slot))
}

fn broken(club: &Club, session: &Session, moment: &InWater, findings: &mut Vec<Finding>) {
    for (who, with, why) in &moment.broken {
        let (name, helper) = (said::participant(club, *who), said::helper(club, *with));
        let reason = moment.not_free.iter().find(|n| n.who == *with);
        let because = match why {
            Why::NotFree => reason.map_or_else(
                || format!("{helper} does not go into the water"),
                |n| said::why_not(club, session, n.who, n.reason),
            ),
            Why::Never => "they are not to be together".to_owned(),
            Why::Elsewhere => format!("{helper} is with someone else"),
            Why::Enough => format!("{name} has someone already"),
            Why::NotInWater => format!("{name} is not in the water then"),
        };
        findings.push(finding(
            Severity::StopAndLook,
            "water.held_broken",
            spot(session, moment),
            format!(
                "At {} {helper} was put with {name}, and {because}.",
                moment.stretch.from
            ),
            "Put someone else there, or let it go.",
        ));
    }
}

/// Watchers as the club asks for them, apart from those who are with someone.
fn watchers(session: &Session, moment: &InWater, findings: &mut Vec<Finding>) {
    let (there, asked) = (moment.watchers.len(), moment.watchers_asked as usize);
    if there >= asked {
        return;
    }
    let are = if there == 1 { "is" } else { "are" };
    findings.push(finding(
        Severity::StopAndLook,
        "water.no_watcher",
        spot(session, moment),
        format!(
            "At {} the club’s rule asks for {} to watch, and {} {are} free to.",
            moment.stretch.from,
            said::number(asked),
            if there == 0 {
                "none".to_owned()
            } else {
                said::number(there)
            },
        ),
        "Name someone who has no other job then. Whoever is with one participant does not watch.",
    ));
}

/// Everyone with an alert has someone who watches them and has no other job.
fn watched(
    club: &Club,
    session: &Session,
    boards: &[Arc<Board>],
    water: &WaterDay,
    findings: &mut Vec<Finding>,
) {
    for who in without_watcher(club, session, boards) {
        findings.push(finding(
            Severity::StopAndLook,
            "water.not_watched",
            Spot::Water(session.id, None),
            format!(
                "Not complete: no watcher is named for {}, for whom an alert is entered.",
                said::participant(club, who)
            ),
            "Name someone at Session, People and water. Follow this person’s plan.",
        ));
    }
    for (who, by) in &session.today.watched_by {
        let here = boards.iter().any(|b| b.participant == *who);
        let elsewhere = water.with(*by).next();
        let others = session.today.watched_by.iter();
        let others = others.filter(|(other, h)| *h == by && *other < who).count();
        let busy = session.helpers_away.contains(by);
        let name = said::helper(club, *by);
        let what = match elsewhere {
            _ if busy => format!("{name} does not come"),
            Some((moment, _)) => format!(
                "{name} is with someone in the water at {}",
                moment.stretch.from
            ),
            None if others > 0 => format!("{name} is named for another too"),
            None => continue,
        };
        if here {
            findings.push(finding(
                Severity::StopAndLook,
                "water.watcher_busy",
                Spot::Water(session.id, None),
                format!(
                    "{name} is named to watch {}, and {what}.",
                    said::participant(club, *who)
                ),
                "Name someone who has no other job.",
            ));
        }
    }
}

/// Who comes, has an alert, and has nobody named to watch them.
pub fn without_watcher(
    club: &Club,
    session: &Session,
    boards: &[Arc<Board>],
) -> Vec<ParticipantId> {
    let alert = |id: &ParticipantId| club.participant(*id).is_some_and(|p| has_alert(p));
    let all = boards.iter().map(|b| b.participant);
    all.filter(|id| alert(id) && !session.today.watched_by.contains_key(id))
        .collect()
}
