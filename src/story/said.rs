//! Words that the checks and the window share: names in a row, small numbers, why someone is not free.

use jiff::civil::Date;

use crate::model::club::Club;
use crate::model::ids::{HelperId, ParticipantId, SlotId};
use crate::model::people::Participant;
use crate::model::session::Session;
use crate::plan::certificates::Standing;
use crate::plan::water::Reason;

use super::when::{self, full_date};

/// "Ada, Bo and Cy".
pub fn list(names: &[String]) -> String {
    match names {
        [] => String::new(),
        [one] => one.clone(),
        [most @ .., last] => format!("{} and {last}", most.join(", ")),
    }
}

/// "four" up to twelve, then figures.
pub fn number(n: usize) -> String {
    const WORDS: [&str; 13] = [
        "no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten",
        "eleven", "twelve",
    ];
    WORDS
        .get(n)
        .map_or_else(|| n.to_string(), |w| (*w).to_owned())
}

/// A participant in a sentence for the coordinator: name and mark, because names may be shared.
pub fn called(participant: &Participant) -> String {
    let name = participant.name.trim();
    let mark = participant.mark.as_str();
    match (name.is_empty(), mark.is_empty()) {
        (true, true) => "someone without name and mark".to_owned(),
        (true, false) => format!("the participant with the mark {mark}"),
        (false, true) => name.to_owned(),
        (false, false) => format!("{name} ({mark})"),
    }
}

/// The name of a helper.
pub fn helper(club: &Club, id: HelperId) -> String {
    let found = club.helper(id).map(|h| h.name.trim().to_owned());
    found.unwrap_or_else(|| "a helper".to_owned())
}

/// A participant with their mark.
pub fn participant(club: &Club, id: ParticipantId) -> String {
    let found = club.participant(id).map(|p| called(p));
    found.unwrap_or_else(|| "a participant".to_owned())
}

/// "1 November 2027", without the year where it is that of the session.
pub fn date(date: Date, session: Date) -> String {
    if date.year() == session.year() {
        let full = full_date(date);
        let end = format!("{}{}", when::NO_BREAK, date.year());
        full.strip_suffix(&end).map_or(full.clone(), str::to_owned)
    } else {
        full_date(date)
    }
}

/// "Dee's certificate “Pool rescue” ended on 1 November", as part of a sentence.
pub fn why_not(club: &Club, session: &Session, who: HelperId, reason: Reason) -> String {
    let name = helper(club, who);
    match reason {
        Reason::Away => format!("{name} does not come"),
        Reason::NotThere => format!("{name} is not there then"),
        Reason::Leads(slot) => format!("{name} leads “{}”", row(club, session, slot)),
        Reason::Watches => format!("{name} watches"),
        Reason::WatchesOne(p) => format!("{name} is named to watch {}", participant(club, p)),
        Reason::Certificate(award, standing) => {
            let award = club.rules.care.award(award);
            let award = award.map_or("certificate", |a| a.name.trim());
            certificate(&name, award, standing, session.date)
        }
    }
}

/// The same without their name, where it stands beside it: "“Pool rescue” ended with 1 November".
pub fn why_short(club: &Club, session: &Session, reason: Reason) -> String {
    match reason {
        Reason::Away => "does not come".to_owned(),
        Reason::NotThere => "is not there then".to_owned(),
        Reason::Leads(slot) => format!("leads “{}”", row(club, session, slot)),
        Reason::Watches => "watches".to_owned(),
        Reason::WatchesOne(p) => format!("watches {}", participant(club, p)),
        Reason::Certificate(award, standing) => {
            let award = club.rules.care.award(award);
            let award = award.map_or("certificate", |a| a.name.trim());
            let on = session.date;
            match standing {
                Standing::NotEntered => format!("no “{award}” is entered"),
                Standing::NoDate => format!("“{award}” has no date"),
                Standing::Ended { last } => format!("“{award}” ended with {}", date(last, on)),
                Standing::NotYetGained { gained } => {
                    format!("“{award}” begins on {}", date(gained, on))
                }
                Standing::Covered { last } => format!("“{award}” until {}", date(last, on)),
            }
        }
    }
}

/// What is done in a row.
fn row<'a>(club: &'a Club, session: &Session, slot: SlotId) -> &'a str {
    let row = session.slot(slot).and_then(|s| club.activity(s.activity));
    row.map_or("a row", |a| a.label.trim())
}

/// The same for a certificate alone.
pub fn certificate(name: &str, award: &str, standing: Standing, on: Date) -> String {
    match standing {
        Standing::NotEntered => format!("no “{award}” is entered for {name}"),
        Standing::NoDate => format!("the “{award}” of {name} has no date"),
        Standing::Ended { last } => {
            format!("“{award}” of {name} ended with {}", date(last, on))
        }
        Standing::NotYetGained { gained } => {
            format!("“{award}” of {name} begins on {}", date(gained, on))
        }
        Standing::Covered { last } => {
            format!("“{award}” of {name} runs until {}", date(last, on))
        }
    }
}

/// A sentence with a capital letter and a full stop.
pub fn sentence(words: &str) -> String {
    let mut letters = words.chars();
    let first = letters.next().map(|c| c.to_uppercase().to_string());
    format!("{}{}.", first.unwrap_or_default(), letters.as_str())
}
