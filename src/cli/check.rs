//! `check`: what should be looked at, for one session or for all.

use std::io::Write;

use super::args::CheckWish;
use super::{DONE, LOOK, Outcome, Surroundings, Trouble, pick, say};
use crate::check;
use crate::model::club::Club;
use crate::model::finding::{Finding, Severity};
use crate::model::session::Session;

/// Says what was found; code 1 if anything needs a look.
pub fn run(
    wish: &CheckWish,
    around: &Surroundings,
    out: &mut dyn Write,
) -> Result<Outcome, Trouble> {
    let (club, mended) = pick::club(wish.file.clone(), around)?;
    if let Some(mended) = &mended {
        say(out, &mended.sentence);
    }
    let sessions = pick::sessions(&club, wish.session)?;
    let of_club = check::run(&club, None);
    let mut needs_look = mended.is_some();
    needs_look |= report(out, &title_of(&club), &of_club);
    for session in sessions {
        let mut found = check::run(&club, Some(session));
        found.retain(|f| !of_club.contains(f));
        needs_look |= report(out, &heading(session), &found);
    }
    Ok(Outcome::code(if needs_look { LOOK } else { DONE }))
}

fn title_of(club: &Club) -> String {
    match club.name.trim() {
        "" => "The club".to_owned(),
        name => name.to_owned(),
    }
}

fn heading(session: &Session) -> String {
    let start = format!("{:02}:{:02}", session.start.hour(), session.start.minute());
    format!("{} {start} {}", session.date, session.title)
}

/// Writes the findings under a heading; true if one needs a look.
fn report(out: &mut dyn Write, heading: &str, findings: &[Finding]) -> bool {
    say(out, heading.trim_end());
    if findings.is_empty() {
        say(out, "  Nothing was found to look at.");
    }
    for f in findings {
        say(
            out,
            &format!("  {} ({}): {}", f.severity.label(), f.code, f.sentence),
        );
        say(out, &format!("      {}", f.hint));
    }
    findings.iter().any(|f| f.severity != Severity::GoodToKnow)
}
