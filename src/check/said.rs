//! Words that several checks share: names in a row, small numbers, why someone is not free.

use jiff::civil::Date;

use crate::model::club::Club;
use crate::model::ids::{HelperId, ParticipantId};
use crate::model::session::Session;
use crate::plan::certificates::Standing;
use crate::plan::water::Reason;
use crate::story::when::{self, full_date};

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

/// The name of a helper.
pub fn helper(club: &Club, id: HelperId) -> String {
    let found = club.helper(id).map(|h| h.name.trim().to_owned());
    found.unwrap_or_else(|| "a helper".to_owned())
}

/// A participant with their mark.
pub fn participant(club: &Club, id: ParticipantId) -> String {
    let found = club.participant(id).map(|p| super::called(p));
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
        Reason::Leads(slot) => {
            let row = session.slot(slot).and_then(|s| club.activity(s.activity));
            let what = row.map_or("a row", |a| a.label.trim());
            format!("{name} leads “{what}”")
        }
        Reason::Watches => format!("{name} watches"),
        Reason::WatchesOne(p) => format!("{name} is named to watch {}", participant(club, p)),
        Reason::Certificate(award, standing) => {
            let award = club.rules.care.award(award);
            let award = award.map_or("certificate", |a| a.name.trim());
            certificate(&name, award, standing, session.date)
        }
    }
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
