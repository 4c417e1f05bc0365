//! Private facts on pages that others can see. Pages cannot be given them (see `layout`); but a
//! person can type them into a label, a name or a title. Every text of a public page, what is read
//! aloud for its pictures, its title and the name of its file are searched for anything above their
//! class. This is the one finding that stops a sheet from being written.
//!
//! What must not be seen by others is common practice in the trade (surname, date of birth, phone,
//! health, toilet, who may collect); the words of a finding never repeat the fact.

use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

use jiff::civil::Date;

use super::everyday::{Everyday, words};
use super::{called, finding};
use crate::layout::Sheet;
use crate::model::board::Board;
use crate::model::club::Club;
use crate::model::finding::{Finding, Severity, Spot};
use crate::model::ids::ParticipantId;
use crate::model::people::Participant;
use crate::model::privacy::Class;
use crate::model::profile::Field;
use crate::model::session::Session;
use crate::page::dump;
use crate::story;

/// A private fact found where others can see it.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Leak {
    /// Whose fact.
    pub who: ParticipantId,
    /// Which one.
    pub field: Field,
    /// On which page, counted from one; none for a title or the name of a file.
    pub page: Option<usize>,
}

/// What to look for. Made once for a club, used for many texts.
pub struct Facts {
    facts: Vec<Fact>,
}

struct Fact {
    who: ParticipantId,
    field: Field,
    needle: Needle,
}

enum Needle {
    /// These words one after the other.
    Words(Vec<String>),
    /// These digits, whatever stands between them.
    Digits(String),
}

/// Fewest digits that are a telephone number and not a time or a size.
const PHONE: usize = 6;
/// Fewest letters of a word that tells something by itself.
const TELLING: usize = 4;

/// Fields in which single words tell something.
const TELLING_FIELDS: [Field; 7] = [
    Field::Alerts,
    Field::AlertMarker,
    Field::Eating,
    Field::ToiletDetail,
    Field::Emergency,
    Field::Collects,
    Field::NotCollect,
];

impl Facts {
    /// What must not be seen of the people of a club.
    pub fn of(club: &Club) -> Self {
        let written = |p: &Arc<Participant>| p.profile.filled().next().is_some();
        if !club.participants.iter().any(written) {
            return Self { facts: Vec::new() };
        }
        let everyday = Everyday::of(club);
        let mut facts = Vec::new();
        for p in &club.participants {
            // What the family gave for the story is for whoever reads it.
            let told: Vec<&str> = p.telling.asks.values().map(|t| t.trim()).collect();
            let told = |text: &str| told.contains(&text.trim());
            for (field, text) in p.profile.filled().filter(|(_, t)| !told(t.for_owner())) {
                let needles = needles(p, field, text.for_owner(), &everyday);
                facts.extend(needles.into_iter().map(|needle| Fact {
                    who: p.id,
                    field,
                    needle,
                }));
            }
        }
        Self { facts }
    }

    /// Whether there is nothing to look for.
    pub fn is_empty(&self) -> bool {
        self.facts.is_empty()
    }

    /// What a text that readers of `class` see holds above their class.
    pub fn in_text(&self, text: &str, class: Class) -> BTreeSet<(ParticipantId, Field)> {
        if self.facts.is_empty() {
            return BTreeSet::new();
        }
        let (said, digits) = (words(text).collect::<Vec<_>>(), numbers(text));
        let found = self.facts.iter().filter(|f| f.field.class() > class);
        found
            .filter(|f| match &f.needle {
                Needle::Words(needle) => said.windows(needle.len()).any(|w| w == &needle[..]),
                Needle::Digits(needle) => digits.iter().any(|d| d.contains(needle)),
            })
            .map(|f| (f.who, f.field))
            .collect()
    }

    /// What a sheet holds above the class of its pages: in words, in what is read for pictures, in
    /// titles and in the name of its file.
    pub fn in_sheet(&self, sheet: &Sheet) -> Vec<Leak> {
        let mut leaks = BTreeSet::new();
        let mut add = |page: Option<usize>, text: &str, class: Class| {
            let found = self.in_text(text, class).into_iter();
            leaks.extend(found.map(|(who, field)| Leak { who, field, page }));
        };
        for (i, page) in sheet.pages.iter().enumerate() {
            add(Some(i + 1), &page.title, page.class);
            for read in dump::read(page) {
                let (dump::Read::Heading(_, text)
                | dump::Read::Paragraph(text)
                | dump::Read::Figure(text)) = read;
                add(Some(i + 1), &text, page.class);
            }
        }
        // Whoever sees the folder sees titles and names of files, whatever is on the pages.
        add(None, &sheet.title, Class::Public);
        add(None, &sheet.file_stem, Class::Public);
        leaks.into_iter().collect()
    }
}

fn needles(p: &Participant, field: Field, text: &str, everyday: &Everyday) -> Vec<Needle> {
    if field.class() == Class::Public {
        return Vec::new();
    }
    let mut all: Vec<Needle> = numbers(text)
        .iter()
        .filter(|d| d.len() >= PHONE && !everyday.is_day(d))
        .map(|d| Needle::Digits(subscriber(d).to_owned()))
        .collect();
    let said: Vec<String> = words(text).collect();
    match field {
        Field::Surname => all.extend(surname(p, &said, everyday)),
        Field::Born => all.extend(spellings(text).into_iter().map(Needle::Words)),
        _ => {}
    }
    if TELLING_FIELDS.contains(&field) {
        let telling = |w: &&String| w.chars().count() >= TELLING && !everyday.has(w);
        let alone = said.iter().filter(telling).filter(|w| !is_number(w));
        all.extend(alone.map(|w| Needle::Words(vec![w.clone()])));
    }
    // The whole text, unless it is made of a few words that everyone reads anyway.
    let unusual = |w: &String| w.chars().count() >= TELLING && !everyday.has(w);
    if said.len() >= 4 || said.iter().any(unusual) {
        all.push(Needle::Words(said));
    }
    all
}

/// A surname that is an everyday word tells something only behind the name.
fn surname(p: &Participant, said: &[String], everyday: &Everyday) -> Vec<Needle> {
    let mut all = Vec::new();
    for word in said {
        if everyday.has(word) {
            let mut both: Vec<String> = words(&p.name).collect();
            both.push(word.clone());
            all.push(Needle::Words(both));
        } else if word.chars().count() > 1 {
            all.push(Needle::Words(vec![word.clone()]));
        }
    }
    all
}

fn is_number(word: &str) -> bool {
    word.chars().all(|c| c.is_ascii_digit())
}

/// Runs of digits, with what people write between the digits of a telephone number left out.
fn numbers(text: &str) -> Vec<String> {
    let mut all = Vec::new();
    let mut run = String::new();
    for c in text.chars() {
        if c.is_ascii_digit() {
            run.push(c);
        } else if !matches!(c, ' ' | '-' | '/' | '(' | ')' | '.' | '\u{a0}') && !run.is_empty() {
            all.push(std::mem::take(&mut run));
        }
    }
    if !run.is_empty() {
        all.push(run);
    }
    all
}

/// The digits of a telephone number that are the same in national and international notation (ITU-T
/// E.123): without zeros in front, and at most the last eight.
fn subscriber(digits: &str) -> &str {
    let short = digits.trim_start_matches('0');
    let short = if short.len() < PHONE { digits } else { short };
    &short[short.len().saturating_sub(8)..]
}

const MONTHS: [&str; 12] = [
    "january",
    "february",
    "march",
    "april",
    "may",
    "june",
    "july",
    "august",
    "september",
    "october",
    "november",
    "december",
];

/// A date of birth in the ways people write dates, as words one after the other.
fn spellings(text: &str) -> Vec<Vec<String>> {
    let Some(date) = date(text) else {
        return Vec::new();
    };
    let (y, m, d) = (date.year(), date.month(), date.day());
    let month = MONTHS[m as usize - 1];
    let short = &month[..3];
    let mut all = Vec::new();
    for day in [format!("{d}"), format!("{d:02}")] {
        for month in [format!("{m}"), format!("{m:02}")] {
            for year in [format!("{y}"), format!("{:02}", y % 100)] {
                all.push(vec![day.clone(), month.clone(), year.clone()]);
                all.push(vec![month.clone(), day.clone(), year.clone()]);
                all.push(vec![year.clone(), month.clone(), day.clone()]);
            }
        }
        for month in [month, short] {
            all.push(vec![day.clone(), month.to_owned(), y.to_string()]);
            all.push(vec![month.to_owned(), day.clone(), y.to_string()]);
        }
    }
    all
}

/// `2019-03-04`, `4.3.2019`, `4/3/2019`, `4 March 2019`; day before month where both could be.
fn date(text: &str) -> Option<Date> {
    let parts: Vec<String> = words(text).collect();
    let [a, b, c] = &parts[..] else {
        return None;
    };
    let number = |w: &str| w.parse::<i16>().ok();
    let named = |w: &str| {
        let found = MONTHS.iter().position(|m| w.len() >= 3 && m.starts_with(w));
        found.map(|i| i as i16 + 1)
    };
    let (y, m, d) = if a.len() == 4 {
        (number(a)?, named(b).or_else(|| number(b))?, number(c)?)
    } else if let Some(month) = named(a) {
        (number(c)?, month, number(b)?)
    } else {
        (number(c)?, named(b).or_else(|| number(b))?, number(a)?)
    };
    let new = |m: i16, d: i16| Date::new(y, m.try_into().ok()?, d.try_into().ok()?).ok();
    new(m, d).or_else(|| new(d, m))
}

/// Checks what was typed for public pages, each where it can be mended. The pages themselves are
/// searched once more before they are written.
pub fn check(club: &Club, session: &Session, boards: &[Arc<Board>], findings: &mut Vec<Finding>) {
    let facts = Facts::of(club);
    if facts.is_empty() {
        return;
    }
    let mut found: BTreeMap<(ParticipantId, Field), Spot> = BTreeMap::new();
    let mut look = |text: &str, spot: Spot| {
        for fact in facts.in_text(text, Class::Public) {
            found.entry(fact).or_insert(spot);
        }
    };
    look(&club.name, Spot::Club);
    for part in &club.parts {
        look(&part.name, Spot::Club);
    }
    for a in &club.activities {
        for text in a.sentences.iter().chain([&a.label, &a.thing]) {
            look(text, Spot::Activity(a.id));
        }
    }
    look(&session.title, Spot::Session(session.id));
    look(&session.place, Spot::Session(session.id));
    for p in &club.participants {
        look(&p.name, Spot::Participant(p.id));
        for content in p.standing.contents() {
            look(&content.label, Spot::Participant(p.id));
        }
        for mixed in p.manner.mixed.values() {
            look(&mixed.thing, Spot::Participant(p.id));
        }
    }
    for board in boards {
        for step in &board.steps {
            let spot = Spot::Step(session.id, board.participant, step.at);
            look(&step.label, spot);
            for option in &step.options {
                look(&option.label, spot);
            }
        }
        if let Some(who) = club.participant(board.participant) {
            for page in story::tell(club, session, board, who).pages {
                let spot = Spot::Story(session.id, who.id, page.at);
                let second = page.lines.iter().filter_map(|l| l.second.as_deref());
                let second = second.chain(page.heading_second.as_deref());
                for sentence in page.sentences().chain(second) {
                    look(sentence, spot);
                }
            }
        }
    }
    findings.extend(found.into_iter().map(|((who, field), spot)| {
        finding(
            Severity::StopAndLook,
            "privacy.public",
            spot,
            format!(
                "Something from “{}” of {} stands where others can see it.",
                field.label(),
                whom(club, who)
            ),
            "Take it out of these words; the sheet is not written with it.",
        )
    }));
}

fn whom(club: &Club, who: ParticipantId) -> String {
    club.participant(who)
        .map_or_else(|| "a participant".to_owned(), |p| called(p))
}

/// Why a sheet is not written, and what to do; none when it holds nothing above its class.
pub fn refusal(club: &Club, facts: &Facts, sheet: &Sheet) -> Option<(String, String)> {
    let leak = facts.in_sheet(sheet).into_iter().next()?;
    let mark = club.participant(leak.who);
    let mark = mark.map_or("a participant", |p| p.mark.as_str());
    let place = match leak.page {
        Some(page) => format!("page {page}"),
        None => "its title".to_owned(),
    };
    Some((
        format!(
            "“{}” was not written: {place} shows something from “{}” of {mark} to others.",
            sheet.file_stem,
            leak.field.label()
        ),
        "Take it out of the words on that sheet; Checks says where. Then write again.".to_owned(),
    ))
}
