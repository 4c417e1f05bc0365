//! Opening and saving, and the questions that come before something would be lost.

use std::path::{Path, PathBuf};
use std::sync::Arc;

use super::command::{Answer, Effect, Notice, Place, Question};
use super::{Workbench, demo};
use crate::model::club::Club;
use crate::model::history::History;
use crate::model::set::Meeting;
use crate::storage::disk::{Disk as _, Real};
use crate::storage::unsaved::Left;
use crate::storage::{self, EXTENSION, Stamp};

/// The club's file.
#[derive(Clone, Debug)]
pub(super) struct ClubFile {
    pub path: PathBuf,
    /// What it held when it was read or written here last.
    pub stamp: Stamp,
}

/// What is done once it is clear what happens to changes that are not saved.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) enum Next {
    New,
    Demo,
    Open(PathBuf),
    Quit,
}

/// A question with what it is about.
#[derive(Clone, Debug)]
pub(super) struct Standing {
    pub question: Question,
    pub about: About,
}

#[derive(Clone, Debug)]
pub(super) enum About {
    /// Changes are not saved, and this would come next.
    Unsaved(Next),
    /// Someone else has saved the club's file meanwhile; after saving, this comes next.
    Overwrite(Option<Next>),
    /// Some of what another club gives has the name of something here.
    Meeting(Arc<Club>),
    /// A program came to an end without being closed and left this.
    Left(Box<Left>),
}

impl Workbench {
    /// Goes on at once, or asks first when changes are not saved.
    pub(super) fn ask_first(&mut self, next: Next, effects: &mut Vec<Effect>) {
        self.after_save = None;
        if self.history.is_modified() {
            self.question = Some(Standing {
                question: unsaved_question(self.history.club(), &next),
                about: About::Unsaved(next),
            });
        } else {
            self.go_on(next, effects);
        }
    }

    pub(super) fn answer(&mut self, answer: Answer, effects: &mut Vec<Effect>) {
        let Some(Standing { about, .. }) = self.question.take() else {
            return;
        };
        match (answer, about) {
            (Answer::Save, About::Unsaved(next)) => self.save_then(Some(next), effects),
            (Answer::Discard, About::Unsaved(next)) => self.go_on(next, effects),
            (Answer::Save, About::Overwrite(next)) => {
                if let Some(path) = self.file.as_ref().map(|f| f.path.clone()) {
                    self.write_then(&path, next, effects);
                }
            }
            (Answer::Discard, About::Overwrite(next)) => self.ask_path(next, effects),
            (Answer::KeepOurs, About::Meeting(set)) => self.use_set(set, Meeting::KeepOurs),
            (Answer::KeepBoth, About::Meeting(set)) => self.use_set(set, Meeting::KeepBoth),
            (Answer::TakeTheirs, About::Meeting(set)) => self.use_set(set, Meeting::TakeTheirs),
            (answer, About::Left(left)) => self.answer_left(answer, *left),
            _ => {}
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
                self.jobs.stop();
                self.unsaved.forget();
                effects.push(Effect::Quit);
            }
        }
    }

    /// Looks into the file before asking anything: one that cannot be read changes nothing.
    pub(super) fn open(&mut self, path: PathBuf, effects: &mut Vec<Effect>) {
        match storage::load(&path) {
            Ok(_) => self.ask_first(Next::Open(path), effects),
            Err(error) => self.tell(Notice::trouble(error.sentence, error.hint)),
        }
    }

    fn read_club(&mut self, path: &Path) {
        let loaded = match storage::load(path) {
            Ok(loaded) => loaded,
            Err(error) => return self.tell(Notice::trouble(error.sentence, error.hint)),
        };
        let opened = format!("“{}” is open.", file_name(path));
        let mended = !loaded.notes.is_empty();
        let history = if mended {
            History::unsaved(loaded.club)
        } else {
            History::new(loaded.club)
        };
        let file = ClubFile {
            path: path.to_path_buf(),
            stamp: loaded.stamp,
        };
        self.replace(history, Some(file), Place::Session);
        self.remember(path);
        self.tell(if mended {
            let notes = loaded.notes.join(" ");
            Notice::trouble(
                format!("{opened} Something in it was mended: {notes}"),
                "Look at it, then save to keep it so.",
            )
        } else {
            Notice::done(opened)
        });
    }

    /// Saves to the club's file, asking for one if there is none.
    pub(super) fn save(&mut self, effects: &mut Vec<Effect>) {
        self.save_then(None, effects);
    }

    fn save_then(&mut self, next: Option<Next>, effects: &mut Vec<Effect>) {
        let Some(file) = self.file.clone() else {
            return self.ask_path(next, effects);
        };
        if storage::changed_elsewhere(&file.path, &file.stamp) {
            self.question = Some(Standing {
                question: overwrite_question(&file.path),
                about: About::Overwrite(next),
            });
        } else {
            self.write_then(&file.path, next, effects);
        }
    }

    pub(super) fn ask_save_as(&mut self, effects: &mut Vec<Effect>) {
        self.ask_path(None, effects);
    }

    /// Asks for a file; `next` comes once it is saved, unless something else is begun before.
    fn ask_path(&mut self, next: Option<Next>, effects: &mut Vec<Effect>) {
        self.after_save = next;
        let suggested = match &self.file {
            Some(file) => file.path.display().to_string(),
            None => suggested_name(self.history.club()),
        };
        effects.push(Effect::AskSavePath { suggested });
    }

    pub(super) fn save_as(&mut self, path: PathBuf, effects: &mut Vec<Effect>) {
        let next = self.after_save.take();
        let own = self.file.as_ref().is_some_and(|f| f.path == path);
        if own {
            return self.save_then(next, effects);
        }
        match with_ending(path, EXTENSION) {
            Ok(path) => self.write_then(&path, next, effects),
            Err(taken) => self.tell(there_already(&taken)),
        }
    }

    fn write_then(&mut self, path: &Path, next: Option<Next>, effects: &mut Vec<Effect>) {
        let revision = self.history.revision();
        match storage::save(path, self.history.club()) {
            Ok(saved) => {
                self.history.mark_saved(revision);
                self.file = Some(ClubFile {
                    path: path.to_path_buf(),
                    stamp: saved.stamp,
                });
                self.remember(path);
                self.tell(saved_notice(path, &saved));
                if let Some(next) = next {
                    self.go_on(next, effects);
                }
            }
            Err(error) => self.tell(Notice::trouble(error.sentence, error.hint)),
        }
    }

    fn remember(&mut self, path: &Path) {
        self.preferences.opened(path);
        self.keep_preferences();
    }
}

/// A name that was made whole is taken.
pub(super) fn there_already(taken: &Path) -> Notice {
    Notice::trouble(
        format!("“{}” is there already.", file_name(taken)),
        "Choose it by its whole name to replace it, or choose another name.",
    )
}

fn saved_notice(path: &Path, saved: &storage::Saved) -> Notice {
    if saved.notes.is_empty() {
        let done = format!("Saved in “{}”.", file_name(path));
        return Notice::done(match saved.told {
            Some(told) => format!("{done} {told}"),
            None => done,
        });
    }
    Notice::trouble(
        saved.notes.join(" "),
        "Your changes are saved; keep a copy of the file elsewhere.",
    )
}

fn unsaved_question(club: &Club, next: &Next) -> Question {
    let name = match club.name.trim() {
        "" => "This club".to_owned(),
        name => format!("“{name}”"),
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

fn overwrite_question(path: &Path) -> Question {
    Question {
        sentence: format!(
            "“{}” was saved by another window or another computer since it was opened here.",
            file_name(path)
        ),
        answers: vec![
            (Answer::Discard, "Save under another name".to_owned()),
            (
                Answer::Save,
                "Save over it; what is there becomes an earlier copy".to_owned(),
            ),
            (Answer::Stay, "Stay here".to_owned()),
        ],
    }
}

/// The name of a file for a sentence.
pub(super) fn file_name(path: &Path) -> String {
    let name = path.file_name().unwrap_or(path.as_os_str());
    name.to_string_lossy().into_owned()
}

/// The path with an ending. Where it has to be added, nobody was asked about a file of that name:
/// then it must not be there.
pub(super) fn with_ending(path: PathBuf, ending: &str) -> Result<PathBuf, PathBuf> {
    if path
        .extension()
        .is_some_and(|e| e.eq_ignore_ascii_case(ending))
    {
        return Ok(path);
    }
    let mut name = path.into_os_string();
    name.push(".");
    name.push(ending);
    let path = PathBuf::from(name);
    if Real.kind(&path).is_ok() {
        Err(path)
    } else {
        Ok(path)
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
    format!("{name}.{EXTENSION}")
}
