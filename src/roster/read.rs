//! A table of participants taken in: good rows become people, each bad one is told with its line.

use std::sync::Arc;

use csv::{ReaderBuilder, StringRecord, Trim};

use super::cell::restore;
use super::column::{Column, short};
use super::write::UTF8_SIGN;
use crate::model::club::Club;
use crate::model::edit::{Edit, Refused, apply};
use crate::model::ids::ParticipantId;
use crate::model::people::Participant;
use crate::symbols::library::free_mark;

/// What a table holds for a club.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Read {
    /// People to add (their id is zero) and people who are changed, in the order of the rows.
    pub people: Vec<Participant>,
    /// How many rows say what the club has already.
    pub same: usize,
    /// Rows that cannot be taken in.
    pub skipped: Vec<Skipped>,
    /// Columns that are not known, or not taken in, by their headings.
    pub passed_over: Vec<String>,
}

impl Read {
    /// How many of the people are new.
    pub fn new_people(&self) -> usize {
        self.people.iter().filter(|p| p.id.0 == 0).count()
    }
}

/// A row that was not taken in.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Skipped {
    /// The line of the file it begins on, the heading's being 1.
    pub line: u64,
    /// Why, one sentence.
    pub why: String,
}

/// Reads a table. An empty cell leaves a setting as it is, or as usual for someone new; a row whose
/// name the club has already changes that participant.
///
/// # Errors
/// When it is no text, or has no heading with a name in it; nothing of it can be used then.
pub fn read(bytes: &[u8], club: &Club) -> Result<Read, Refused> {
    let text = std::str::from_utf8(bytes).map_err(|_| {
        Refused::new(
            "The table is not written in UTF-8.",
            "Save it again as “CSV UTF-8”, then take it in.",
        )
    })?;
    let text = text.strip_prefix(UTF8_SIGN).unwrap_or(text);
    let mut rows = ReaderBuilder::new()
        .has_headers(false)
        .flexible(true)
        .delimiter(separator(text))
        .trim(Trim::None)
        .from_reader(text.as_bytes());
    let mut records = rows.records();
    let heading = match records.next() {
        Some(Ok(heading)) => heading,
        _ => return Err(no_name()),
    };
    let columns: Vec<Option<Column>> = heading.iter().map(Column::of).collect();
    if !columns.contains(&Some(Column::Name)) {
        return Err(no_name());
    }
    let mut taken = Taking::new(club, columns, &heading);
    let mut lines = Lines {
        text,
        at: 0,
        line: 1,
    };
    for record in records.flatten() {
        let begins = record.position().map_or(0, csv::Position::byte);
        taken.row(&record, lines.at(begins as usize));
    }
    Ok(taken.read)
}

fn no_name() -> Refused {
    Refused::new(
        "The table has no column “Name” in its first line.",
        "Write a table from here first and fill it in; its first line has the headings.",
    )
}

/// Counts lines on the way through a text; a record may begin behind blank lines, or between the
/// two letters of a line break.
struct Lines<'a> {
    text: &'a str,
    at: usize,
    line: u64,
}

impl Lines<'_> {
    fn at(&mut self, byte: usize) -> u64 {
        let bytes = self.text.as_bytes();
        let breaks = |b: &u8| matches!(b, b'\r' | b'\n');
        let rest = bytes.get(byte..).unwrap_or_default();
        let begins = byte + rest.iter().take_while(|b| breaks(b)).count();
        while self.at < begins.min(bytes.len()) {
            let after_return = self.at > 0 && bytes[self.at - 1] == b'\r';
            let here = bytes[self.at];
            self.line += u64::from(here == b'\r' || here == b'\n' && !after_return);
            self.at += 1;
        }
        self.line
    }
}

/// What parts the cells: the comma of the standard, or what a spreadsheet of another country puts
/// in its place, judged by the first line.
fn separator(text: &str) -> u8 {
    let first = text.lines().next().unwrap_or_default();
    let most = [b',', b';', b'\t']
        .into_iter()
        .rev()
        .max_by_key(|s| first.bytes().filter(|b| b == s).count());
    most.unwrap_or(b',')
}

/// A club that rows are taken into one after another, so that each is checked as an edit would be.
struct Taking {
    club: Club,
    columns: Vec<Option<Column>>,
    before: usize,
    read: Read,
    /// Who was named by a row already, with its line.
    named: Vec<(ParticipantId, u64)>,
}

impl Taking {
    fn new(club: &Club, columns: Vec<Option<Column>>, heading: &StringRecord) -> Self {
        let unknown = heading.iter().zip(&columns);
        let unknown = unknown.filter(|(h, c)| c.is_none() && !h.trim().is_empty());
        let passed_over = unknown.map(|(h, _)| short(h.trim())).collect();
        Self {
            club: club.clone(),
            before: club.participants.len(),
            columns,
            read: Read {
                passed_over,
                ..Read::default()
            },
            named: Vec::new(),
        }
    }

    fn row(&mut self, record: &StringRecord, line: u64) {
        if record.iter().all(|cell| cell.trim().is_empty()) {
            return;
        }
        if let Err(why) = self.take(record, line) {
            self.read.skipped.push(Skipped { line, why });
        }
    }

    fn take(&mut self, record: &StringRecord, line: u64) -> Result<(), String> {
        let wanted = self.columns.len();
        // Spreadsheets leave out empty cells at the end of a row, or add some.
        if record.iter().skip(wanted).any(|c| !c.trim().is_empty()) {
            let n = record.len();
            return Err(format!(
                "It has {n} cells; the first line has {wanted}. A comma in a text needs quotes round the text."
            ));
        }
        let mut person = self.person(record)?;
        let at = |c: &Column| *c != Column::Name;
        for (column, cell) in cells(&self.columns, record).filter(|(c, _)| at(c)) {
            column.set(&self.club, &mut person, cell)?;
        }
        self.keep(person, line)
    }

    /// Who the row is about: someone of the club, or someone new.
    fn person(&self, record: &StringRecord) -> Result<Participant, String> {
        let cell = |wanted| cells(&self.columns, record).find(|(c, _)| *c == wanted);
        let Some((_, name)) = cell(Column::Name) else {
            return Err("It has no name.".to_owned());
        };
        let all = &self.club.participants[..self.before];
        let mut known: Vec<&Arc<Participant>> = all.iter().filter(|p| p.name == name).collect();
        if known.len() > 1 {
            // Two share a name: the mark tells them apart.
            let mark = cell(Column::Mark).map(|(_, mark)| mark.to_lowercase());
            let word = |p: &Participant| Column::Mark.text(&self.club, p).to_lowercase();
            known.retain(|p| mark.as_ref().is_some_and(|m| *m == word(p)));
            if known.len() != 1 {
                return Err(format!(
                    "Several in the club are called “{}”; give the mark of the one it is about.",
                    short(name)
                ));
            }
        }
        Ok(match known.first() {
            Some(p) => Participant::clone(p),
            None => Participant::new(name, free_mark(&self.club), self.club.rules.tile),
        })
    }

    fn keep(&mut self, person: Participant, line: u64) -> Result<(), String> {
        let id = person.id;
        if let Some((_, first)) = self.named.iter().find(|(p, _)| *p == id && id.0 != 0) {
            return Err(format!("It is about the same person as line {first}."));
        }
        let edit = if id.0 == 0 {
            Edit::AddParticipant(person.clone())
        } else {
            Edit::ChangeParticipant(person.clone())
        };
        let (next, _) = apply(&self.club, &edit).map_err(|r| r.to_string())?;
        self.named.push((id, line));
        if next == self.club {
            self.read.same += 1;
        } else {
            self.read.people.push(person);
            self.club = next;
        }
        Ok(())
    }
}

/// The filled cells of a row under known headings, as they were meant.
fn cells<'a>(
    columns: &'a [Option<Column>],
    record: &'a StringRecord,
) -> impl Iterator<Item = (Column, &'a str)> {
    let both = columns.iter().zip(record.iter());
    both.filter_map(|(column, cell)| {
        let cell = restore(cell.trim());
        column.filter(|_| !cell.is_empty()).map(|c| (c, cell))
    })
}
