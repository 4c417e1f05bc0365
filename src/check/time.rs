//! Whether the timetable fits into the session's time.

use super::{finding, said};
use crate::model::club::Club;
use crate::model::finding::{Finding, Severity, Spot};
use crate::model::session::Session;
use crate::plan::clock::{Clock, clock};

/// Checks one session against the club's minutes.
pub fn check(club: &Club, session: &Session, findings: &mut Vec<Finding>) {
    let clock = clock(session, &club.rules);
    let spot = Spot::Session(session.id);
    if clock.overrun() > 0 {
        findings.push(finding(
            Severity::StopAndLook,
            "time.overrun",
            spot,
            overrun(club, &clock),
            closing_hint(club, session, &clock),
        ));
    }
    if clock.end.days_later() > 0 {
        findings.push(finding(
            Severity::Look,
            "time.past_midnight",
            spot,
            format!(
                "The session begins at {} and goes on past midnight.",
                clock.start
            ),
            "Look at the time it begins.",
        ));
    }
}

fn overrun(club: &Club, clock: &Clock) -> String {
    format!(
        "The timetable ends at {}, {} after the {} of the session are over.",
        clock.end,
        minutes(clock.overrun()),
        minutes(club.rules.session_minutes),
    )
}

/// What to do, with the moment at which the closing part has to begin.
fn closing_hint(club: &Club, session: &Session, clock: &Clock) -> String {
    let closing = clock.closing().first().and_then(|r| club.part(r.part));
    let latest = match (closing, clock.latest_closing()) {
        (Some(part), Some(at)) => format!(
            " To end by {}, “{}” begins at {at} at the latest.",
            clock.limit, part.name
        ),
        _ => String::new(),
    };
    let gives = what_could_give(club, session, clock.overrun());
    format!(
        "Take out or shorten an activity, or change the minutes in the club’s rules.{gives}{latest}"
    )
}

/// The longest rows, as many as would make up for so many minutes if each gave half of its own.
fn what_could_give(club: &Club, session: &Session, over: u32) -> String {
    let mut rows: Vec<(u32, &str)> = session
        .timetable
        .iter()
        .filter_map(|s| {
            Some((
                session.minutes_of(s),
                club.activity(s.activity)?.label.trim(),
            ))
        })
        .collect();
    rows.sort_by_key(|(minutes, _)| std::cmp::Reverse(*minutes));
    let mut left = over;
    let mut names: Vec<String> = Vec::new();
    for (long, label) in rows {
        if left == 0 || names.len() == 3 {
            break;
        }
        left = left.saturating_sub(long / 2);
        names.push(format!("“{label}” ({})", minutes(long)));
    }
    match names.is_empty() {
        true => String::new(),
        false => format!(" The longest are {}.", said::list(&names)),
    }
}

fn minutes(n: u32) -> String {
    if n == 1 {
        "1 minute".to_owned()
    } else {
        format!("{n} minutes")
    }
}
