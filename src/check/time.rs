//! Whether the timetable fits into the session's time.

use super::finding;
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
            closing_hint(club, &clock),
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
fn closing_hint(club: &Club, clock: &Clock) -> String {
    let closing = clock.closing().first().and_then(|r| club.part(r.part));
    let latest = match (closing, clock.latest_closing()) {
        (Some(part), Some(at)) => format!(
            " To end by {}, \"{}\" begins at {at} at the latest.",
            clock.limit, part.name
        ),
        _ => String::new(),
    };
    format!("Take out or shorten an activity, or change the minutes in the club's rules.{latest}")
}

fn minutes(n: u32) -> String {
    if n == 1 {
        "1 minute".to_owned()
    } else {
        format!("{n} minutes")
    }
}
