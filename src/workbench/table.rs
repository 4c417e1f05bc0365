//! Participants as a table of any spreadsheet: written, and taken in as one change.

use std::path::{Path, PathBuf};

use super::Workbench;
use super::command::{Effect, Notice};
use super::files::{file_name, there_already, with_ending};
use crate::model::edit::Edit;
use crate::roster::{self, Skipped};
use crate::storage::table;

/// What came of the last table taken in, until the next one or another club.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct TakenIn {
    /// The file's name.
    pub file: String,
    /// People who are new.
    pub added: usize,
    /// People who are changed.
    pub changed: usize,
    /// Rows that say what the club has already.
    pub same: usize,
    /// Rows that were not taken in.
    pub skipped: Vec<Skipped>,
    /// Columns that were passed over, by their headings.
    pub passed_over: Vec<String>,
}

impl TakenIn {
    /// In one sentence.
    pub fn sentence(&self) -> String {
        let mut parts = Vec::new();
        for (n, what) in [
            (self.added, "new"),
            (self.changed, "changed"),
            (self.same, "as they were"),
        ] {
            if n > 0 {
                parts.push(format!("{n} {what}"));
            }
        }
        let people = match parts.is_empty() {
            true => "nobody".to_owned(),
            false => parts.join(", "),
        };
        let left = match self.skipped.len() {
            0 => String::new(),
            1 => " One row was left out.".to_owned(),
            n => format!(" {n} rows were left out."),
        };
        format!("From “{}”: {people}.{left}", self.file)
    }
}

impl Workbench {
    pub(super) fn ask_table(&self, for_helpers: bool, effects: &mut Vec<Effect>) {
        let suggested = match for_helpers {
            true => "participants for helpers.csv",
            false => "participants.csv",
        };
        effects.push(Effect::AskTablePath {
            suggested: suggested.to_owned(),
            for_helpers,
        });
    }

    pub(super) fn write_table(&mut self, path: PathBuf, for_helpers: bool) {
        let path = match with_ending(path, "csv") {
            Ok(path) => path,
            Err(taken) => return self.tell(there_already(&taken)),
        };
        let written = roster::write(self.history.club(), for_helpers);
        if let Err(error) = table::write(&path, &written.bytes) {
            return self.tell(Notice::trouble(error.sentence, error.hint));
        }
        let (n, name) = (written.people, file_name(&path));
        let mut said = match n {
            1 => format!("One participant is in “{name}”."),
            n => format!("{n} participants are in “{name}”."),
        };
        if written.defused > 0 {
            let cells = match written.defused {
                1 => "One cell begins".to_owned(),
                n => format!("{n} cells begin"),
            };
            said += &format!(
                " {cells} like a formula and got an apostrophe before it; taking the table in removes it."
            );
        }
        self.tell(Notice::done(said));
    }

    pub(super) fn take_in_table(&mut self, path: &Path) {
        let read = match table::read(path) {
            Ok(bytes) => roster::read(&bytes, self.history.club()),
            Err(error) => return self.tell(Notice::trouble(error.sentence, error.hint)),
        };
        let read = match read {
            Ok(read) => read,
            Err(refused) => {
                let sentence = format!("“{}”: {}", file_name(path), refused.sentence);
                return self.tell(Notice::trouble(sentence, refused.hint));
            }
        };
        let added = read.new_people();
        let taken = TakenIn {
            file: file_name(path),
            added,
            changed: read.people.len() - added,
            same: read.same,
            skipped: read.skipped,
            passed_over: read.passed_over,
        };
        if !read.people.is_empty() {
            let edit = Edit::TakeIn(read.people);
            if let Err(refused) = self.history.apply(&edit) {
                return self.tell(Notice::trouble(refused.sentence, refused.hint));
            }
        }
        let sentence = taken.sentence();
        self.tell(if taken.skipped.is_empty() {
            Notice::done(sentence)
        } else {
            Notice::trouble(sentence, "People, As a table says which and why.")
        });
        self.taken_in = Some(taken);
    }
}
