//! Opening and saving, and the question about changes that are not saved.

use std::path::{Path, PathBuf};

use super::command::{Answer, Effect, Notice, Place, Question};
use super::{Workbench, demo};
use crate::model::club::Club;
use crate::model::history::History;

/// What is done once it is clear what happens to changes that are not saved.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) enum Next {
    New,
    Demo,
    Open(PathBuf),
    Quit,
}

/// A question with what follows its answer.
#[derive(Clone, Debug)]
pub(super) struct Standing {
    pub question: Question,
    next: Next,
}

impl Workbench {
    /// Goes on at once, or asks first when changes are not saved.
    pub(super) fn ask_first(&mut self, next: Next, effects: &mut Vec<Effect>) {
        self.after_save = None;
        if self.history.is_modified() {
            let question = unsaved_question(self.history.club(), &next);
            self.question = Some(Standing { question, next });
        } else {
            self.go_on(next, effects);
        }
    }

    pub(super) fn answer(&mut self, answer: Answer, effects: &mut Vec<Effect>) {
        let Some(Standing { next, .. }) = self.question.take() else {
            return;
        };
        match answer {
            Answer::Stay => {}
            Answer::Discard => self.go_on(next, effects),
            Answer::Save => match self.file.clone() {
                Some(file) => {
                    if self.write_club(&file) {
                        self.go_on(next, effects);
                    }
                }
                None => {
                    self.after_save = Some(next);
                    effects.push(self.ask_path());
                }
            },
        }
    }

    fn go_on(&mut self, next: Next, effects: &mut Vec<Effect>) {
        match next {
            Next::New => {
                self.replace(History::new(demo::starter()), None, Place::Session);
                self.tell(Notice::done("A new club is open."));
            }
            Next::Demo => {
                self.replace(History::new(demo::club()), None, Place::Boards);
                self.tell(Notice::done("The demo club is open. Nobody in it exists."));
            }
            Next::Open(path) => self.read_club(&path),
            Next::Quit => {
                self.cancel_job();
                effects.push(Effect::Quit);
            }
        }
    }

    /// Looks into the file before asking anything: one that cannot be read changes nothing.
    pub(super) fn open(&mut self, path: PathBuf, effects: &mut Vec<Effect>) {
        self.ask_first(Next::Open(path), effects);
    }

    fn read_club(&mut self, _path: &Path) {
        self.tell(Notice::trouble("Files cannot be opened yet.", ""));
    }

    fn write_club(&mut self, _path: &Path) -> bool {
        self.tell(Notice::trouble("Files cannot be saved yet.", ""));
        false
    }

    /// Saves to the club's file, asking for one if there is none.
    pub(super) fn save(&mut self, effects: &mut Vec<Effect>) {
        match self.file.clone() {
            Some(file) => {
                self.write_club(&file);
            }
            None => self.ask_save_as(effects),
        }
    }

    pub(super) fn ask_save_as(&mut self, effects: &mut Vec<Effect>) {
        self.after_save = None;
        effects.push(self.ask_path());
    }

    pub(super) fn save_as(&mut self, path: PathBuf, effects: &mut Vec<Effect>) {
        let next = self.after_save.take();
        if self.write_club(&path)
            && let Some(next) = next
        {
            self.go_on(next, effects);
        }
    }

    fn ask_path(&self) -> Effect {
        let suggested = match &self.file {
            Some(file) => file.display().to_string(),
            None => suggested_name(self.history.club()),
        };
        Effect::AskSavePath { suggested }
    }

    pub(super) fn ask_folder(&mut self, effects: &mut Vec<Effect>) {
        effects.push(Effect::AskFolder);
    }

    pub(super) fn write_sheets(&mut self, _folder: PathBuf) {
        self.tell(Notice::trouble("Sheets cannot be written yet.", ""));
    }

    pub(super) fn cancel_job(&mut self) {}
}

fn unsaved_question(club: &Club, next: &Next) -> Question {
    let name = match club.name.trim() {
        "" => "The club".to_owned(),
        name => format!("\"{name}\""),
    };
    let go_on = match next {
        Next::New | Next::Demo | Next::Open(_) => "Go on without saving",
        Next::Quit => "Close without saving",
    };
    Question {
        sentence: format!("{name} has changes that are not saved."),
        answers: vec![
            (Answer::Save, "Save".to_owned()),
            (Answer::Discard, go_on.to_owned()),
            (Answer::Stay, "Stay here".to_owned()),
        ],
    }
}

/// A file name from the club's name: small letters, digits and hyphens.
fn suggested_name(club: &Club) -> String {
    let mut name = String::new();
    for c in club.name.to_lowercase().chars() {
        match c {
            c if c.is_alphanumeric() => name.push(c),
            _ if name.is_empty() || name.ends_with('-') => {}
            _ => name.push('-'),
        }
    }
    let name = match name.trim_end_matches('-') {
        "" => "club",
        name => name,
    };
    format!("{name}.daystrand")
}
