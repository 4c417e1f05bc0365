//! What an adult beside a participant needs to know of today and of last time, in lines for the
//! sheets of those who may see it.

use super::desk::{Desk, Person};
use super::flow::Flow;
use super::writer::Audience;
use crate::model::record::Record;
use crate::plan::since;
use crate::story::when;

/// What of today is hard for someone, with what helps: "hard today: Windy; helps: the tent".
pub(super) fn hard<A: Audience>(
    desk: &Desk<'_>,
    person: &Person<'_>,
    flow: &Flow<A>,
) -> Vec<String> {
    let Some(hard) = flow.may_show(person.who.profile.hard()) else {
        return Vec::new();
    };
    let of_today = hard
        .iter()
        .filter(|(c, _)| desk.session.conditions.contains(c));
    of_today
        .map(|(c, helps)| match (c.label().trim(), helps.trim()) {
            (label, "") => format!("hard today: {label}"),
            (label, helps) => format!("hard today: {label}; helps: {helps}"),
        })
        .collect()
}

/// What was written down after the session someone came to last, as far as it helps today: what was
/// chosen as favourite and what to change. Empty when there is nothing.
pub(super) fn last_time<A: Audience>(
    desk: &Desk<'_>,
    person: &Person<'_>,
    flow: &Flow<A>,
) -> String {
    let last = since::last(desk.club, desk.session, person.who.id);
    let record = last.and_then(|s| Some((s, flow.may_show(s.records.get(&person.who.id)?)?)));
    let Some((session, record)) = record else {
        return String::new();
    };
    let facts = record_facts(desk, record);
    if facts.is_empty() {
        return String::new();
    }
    let date = when::full_date(session.date);
    format!("Last time, {date}: {}", facts.join("; "))
}

fn record_facts(desk: &Desk<'_>, record: &Record) -> Vec<String> {
    let favourite = record.favourite.and_then(|id| desk.club.activity(id));
    let mut facts = Vec::new();
    facts.extend(favourite.map(|a| format!("favourite {}", a.label.trim())));
    let change = record.next_time.trim();
    if !change.is_empty() {
        facts.push(format!("to change: {change}"));
    }
    facts
}

/// What the day may bring: "Windy · The path is closed".
pub(super) fn conditions(desk: &Desk<'_>) -> String {
    let all = desk.session.conditions.iter().map(|c| c.label().trim());
    let all: Vec<&str> = all.filter(|w| !w.is_empty()).collect();
    all.join(" · ")
}
