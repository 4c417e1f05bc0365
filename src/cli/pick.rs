//! Finding in a club what a command line names: a session by its date, people by name or mark.

use std::path::PathBuf;
use std::sync::Arc;

use super::args::When;
use super::words::or;
use super::{Surroundings, Trouble};
use crate::model::club::Club;
use crate::model::ids::ParticipantId;
use crate::model::people::Participant;
use crate::model::session::Session;
use crate::workbench::Workbench;
use crate::workbench::command::{Command, Effect};

/// A workbench after it was asked to open a file.
pub struct Opened {
    /// With the club in the file, or with a new club if it could not be read.
    pub bench: Workbench,
    /// Whether the club is open.
    pub is_open: bool,
    /// Why it is not, or what was mended in it.
    pub trouble: Option<Trouble>,
}

/// Opens a file in a workbench.
pub fn open(mut bench: Workbench, file: PathBuf) -> Opened {
    let asks: Vec<Effect> = bench.handle(Command::Open(file));
    debug_assert!(asks.is_empty(), "a new club has nothing to ask about");
    Opened {
        is_open: bench.view().path.is_some(),
        trouble: bench.view().notice.filter(|n| n.trouble).map(Trouble::from),
        bench,
    }
}

/// The club in a file, for reading only, and what was mended on the way.
pub fn club(file: PathBuf, around: &Surroundings) -> Result<(Arc<Club>, Option<Trouble>), Trouble> {
    let opened = open(Workbench::new(around.today), file);
    match opened.trouble {
        Some(trouble) if !opened.is_open => Err(trouble),
        mended => Ok((opened.bench.club().clone(), mended)),
    }
}

/// The session that is meant; the only one if none is named.
pub fn session(club: &Club, when: Option<When>) -> Result<&Session, Trouble> {
    let Some(when) = when else {
        return match club.sessions.as_slice() {
            [only] => Ok(only),
            [] => Err(Trouble::new(
                "The club has no session.",
                "Open it and add one at Session.",
            )),
            _ => Err(Trouble::new(
                "The club has more than one session.",
                format!("Choose one with --session: {}.", dates(club)),
            )),
        };
    };
    let mut fitting = club.sessions.iter().filter(|s| fits(s, when));
    match (fitting.next(), fitting.next()) {
        (Some(session), None) => Ok(session),
        (None, _) => Err(Trouble::new(
            format!("There is no session on {}.", written(when)),
            match club.sessions.is_empty() {
                true => "The club has no session yet.".to_owned(),
                false => format!("There is one on {}.", dates(club)),
            },
        )),
        (Some(_), Some(_)) => Err(Trouble::new(
            format!("There is more than one session on {}.", written(when)),
            format!("Add the start: {}.", dates(club)),
        )),
    }
}

/// The sessions that are meant: one, or all.
pub fn sessions(club: &Club, when: Option<When>) -> Result<Vec<&Session>, Trouble> {
    match when {
        Some(_) => Ok(vec![session(club, when)?]),
        None => Ok(club.sessions.iter().map(AsRef::as_ref).collect()),
    }
}

fn fits(session: &Session, when: When) -> bool {
    let same_start = |start| {
        session.start.hour() == start_hm(start).0 && session.start.minute() == start_hm(start).1
    };
    session.date == when.date && when.start.is_none_or(same_start)
}

fn start_hm(start: jiff::civil::Time) -> (i8, i8) {
    (start.hour(), start.minute())
}

fn written(when: When) -> String {
    match when.start {
        Some(start) => format!("{} at {:02}:{:02}", when.date, start.hour(), start.minute()),
        None => when.date.to_string(),
    }
}

/// The dates of all sessions as they are typed; with the start where a date comes twice.
fn dates(club: &Club) -> String {
    let twice = |s: &Session| club.sessions.iter().filter(|o| o.date == s.date).count() > 1;
    let words: Vec<String> = club
        .sessions
        .iter()
        .map(|s| match twice(s) {
            true => format!("{}T{:02}:{:02}", s.date, s.start.hour(), s.start.minute()),
            false => s.date.to_string(),
        })
        .collect();
    let words: Vec<&str> = words.iter().map(String::as_str).collect();
    or(&words)
}

/// Those who are named, in the order they are named; everyone who comes if nobody is.
pub fn people(
    club: &Club,
    session: &Session,
    named: &[String],
) -> Result<Vec<ParticipantId>, Trouble> {
    if named.is_empty() {
        return Ok(club.attending(session).map(|p| p.id).collect());
    }
    let mut people = Vec::with_capacity(named.len());
    for word in named {
        let who = person(club, word)?;
        if session.away.contains(&who.id) {
            return Err(Trouble::new(
                format!("{} does not come on {}.", who.name, session.date),
                "Say in People that they come, or leave them out.",
            ));
        }
        if !people.contains(&who.id) {
            people.push(who.id);
        }
    }
    Ok(people)
}

/// The one with this mark or name. A mark comes first: it is one person's own.
fn person<'a>(club: &'a Club, word: &str) -> Result<&'a Participant, Trouble> {
    let by = |same: &dyn Fn(&Participant) -> bool| -> Vec<&'a Participant> {
        let all = club.participants.iter().map(AsRef::as_ref);
        all.filter(|p| same(p)).collect()
    };
    let lower = word.to_lowercase();
    let marked = by(&|p| p.mark.as_str() == lower);
    let called = by(&|p| p.name.to_lowercase() == lower);
    match (marked.as_slice(), called.as_slice()) {
        ([one], _) | ([], [one]) => Ok(one),
        ([], []) => Err(Trouble::new(
            format!("There is nobody with the name or mark “{word}”."),
            format!("Choose {}.", or(&everyone(club))),
        )),
        ([], several) => {
            let marks: Vec<_> = several.iter().map(|p| p.mark.as_str()).collect();
            Err(Trouble::new(
                format!("More than one participant is called {word}."),
                format!("Choose one by mark: {}.", or(&marks)),
            ))
        }
        (_, _) => Err(Trouble::new(
            format!("More than one participant has the mark {word}."),
            "Give each a mark of their own first.",
        )),
    }
}

fn everyone(club: &Club) -> Vec<&str> {
    let mut words: Vec<_> = club.participants.iter().map(|p| p.mark.as_str()).collect();
    words.push("all");
    words
}
