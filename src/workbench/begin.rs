//! A new club from three answers: what it is called, who takes part, and when it meets next.

use jiff::civil::{Date, time};

use super::command::{Notice, Place};
use super::{Workbench, demo};
use crate::model::club::Club;
use crate::model::edit::{Edit, Made, Refused, SessionDetails, TimetableEdit, apply};
use crate::model::history::History;
use crate::model::people::Participant;
use crate::symbols::library::free_mark;

/// What was answered.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Beginning {
    /// What the club is called.
    pub name: String,
    /// First names of those who take part.
    pub names: Vec<String>,
    /// The day of the next session.
    pub date: Date,
}

/// A plain day on land to begin a timetable with; whoever goes into the water is decided by a person
/// who knows the place. Common practice of group sessions, no source.
pub const PLAIN_DAY: [&str; 8] = [
    "say_hello",
    "welcome_circle",
    "sunscreen",
    "song",
    "warm_up",
    "dig",
    "drink",
    "bye",
];

/// The names in a text, with commas, semicolons or line ends between them.
pub fn names(text: &str) -> Vec<String> {
    let all = text.split([',', ';', '\n']).map(str::trim);
    all.filter(|n| !n.is_empty()).map(str::to_owned).collect()
}

/// The club; the usual activities are in it, and a plain day on land as its timetable.
fn club(answers: &Beginning) -> Result<Club, Refused> {
    let mut club = apply(
        &demo::starter(),
        &Edit::ClubName(answers.name.trim().to_owned()),
    )?
    .0;
    for name in &answers.names {
        let person = Participant::new(name, free_mark(&club), club.rules.tile);
        club = apply(&club, &Edit::AddParticipant(person))?.0;
    }
    let details = SessionDetails {
        title: "Session".to_owned(),
        date: answers.date,
        start: time(10, 0, 0, 0),
        place: String::new(),
    };
    let (next, made) = apply(&club, &Edit::AddSession(details))?;
    club = next;
    let Made::Session(session) = made else {
        return Ok(club);
    };
    for symbol in PLAIN_DAY {
        let at = club.session(session).map_or(0, |s| s.timetable.len());
        let activity = club.activities.iter().find(|a| a.symbol.as_str() == symbol);
        if let Some(id) = activity.map(|a| a.id) {
            let insert = Edit::Timetable(session, TimetableEdit::Insert(id, at));
            club = apply(&club, &insert)?.0;
        }
    }
    Ok(club)
}

impl Workbench {
    pub(super) fn begin(&mut self, answers: &Beginning) {
        match club(answers) {
            Ok(club) => {
                self.replace(History::unsaved(club), None, Place::Session);
                self.tell(Notice::done(
                    "Your club is here, with a plain day on land. Change what you like.",
                ));
            }
            Err(refused) => self.tell(Notice::trouble(refused.sentence, refused.hint)),
        }
    }
}
