//! Changes that are not saved yet are kept aside, and offered again after a crash.

use std::path::{Path, PathBuf};
use std::thread::JoinHandle;

use super::command::{Answer, Notice, Place, Question};
use super::files::{About, ClubFile, Standing};
use super::{Workbench, jobs};
use crate::model::history::History;
use crate::storage::FileError;
use crate::storage::unsaved::{Keeper, Left};

/// A keeper that comes back from writing, with what went wrong.
pub(super) type Kept = (Keeper, Option<FileError>);

/// Where unsaved changes are kept.
#[derive(Debug, Default)]
pub(super) struct Unsaved {
    folder: Option<PathBuf>,
    keeper: Option<Keeper>,
    writing: Option<JoinHandle<Kept>>,
    /// Of which revision something is kept; 0 for what came from before.
    kept: Option<u64>,
    /// That keeping fails is told once.
    told: bool,
}

impl Unsaved {
    fn claim(&mut self, folder: &Path) -> Option<Left> {
        self.folder = Some(folder.to_path_buf());
        let (keeper, left) = Keeper::claim(folder)?;
        self.keeper = Some(keeper);
        left
    }

    /// Whether a revision could be kept and is not.
    pub(super) fn lacks(&self, revision: u64) -> bool {
        self.keeper.is_some() && self.kept != Some(revision)
    }

    /// Takes a writer back that has ended; what went wrong, the first time something did.
    fn settle(&mut self, wait: bool) -> Option<FileError> {
        let ended = self.writing.take_if(|w| wait || w.is_finished())?;
        // One that panicked has told its story on the way, and keeps nothing any more.
        let (keeper, wrong) = ended.join().ok()?;
        self.keeper = Some(keeper);
        wrong.filter(|_| !std::mem::replace(&mut self.told, true))
    }

    /// Empties the place.
    pub(super) fn forget(&mut self) {
        if self.kept.take().is_some() {
            self.settle(true);
            if let Some(keeper) = &mut self.keeper {
                keeper.forget();
            }
        }
    }
}

impl Workbench {
    /// The same, with changes kept in a folder until they are saved; asks about what is left there by
    /// a program that came to an end without being closed.
    #[must_use]
    pub fn with_unsaved(mut self, folder: Option<&Path>) -> Self {
        if let Some(left) = folder.and_then(|f| self.unsaved.claim(f)) {
            self.question = Some(Standing {
                question: question(&left),
                about: About::Left(Box::new(left)),
            });
        }
        self
    }

    pub(super) fn keep_unsaved(&mut self) {
        let revision = self.last_revision_of_club();
        if !self.history.is_modified() || !self.unsaved.lacks(revision) {
            return;
        }
        let Some(keeper) = self.unsaved.keeper.take() else {
            return;
        };
        let origin = self.file.as_ref().map(|f| (f.path.clone(), f.stamp));
        self.unsaved.kept = Some(revision);
        self.unsaved.writing = jobs::keeping(keeper, self.history.club().clone(), origin);
    }

    /// Whether writing ended; says once when it failed.
    pub(super) fn poll_unsaved(&mut self) -> bool {
        let Some(wrong) = self.unsaved.settle(false) else {
            return false;
        };
        self.tell(Notice::trouble(
            format!("Changes cannot be kept aside: {}", wrong.sentence),
            "Save often; without that a power cut takes what is not saved.",
        ));
        true
    }

    pub(super) fn answer_left(&mut self, answer: Answer, left: Left) {
        match answer {
            Answer::TakeUp => {
                let file = left.origin.map(|(path, stamp)| ClubFile { path, stamp });
                self.replace(History::unsaved(left.club), file, Place::Session);
                self.unsaved.kept = Some(0);
                self.tell(Notice::done("All is as it was. Save to keep it so."));
            }
            Answer::Discard => {
                self.unsaved.kept = Some(0);
                self.unsaved.forget();
            }
            _ => {
                let folder = self.unsaved.folder.as_deref();
                self.unsaved.keeper = folder.and_then(Keeper::claim_empty);
            }
        }
    }
}

fn question(left: &Left) -> Question {
    let name = match left.club.name.trim() {
        "" => "a club".to_owned(),
        name => format!("“{name}”"),
    };
    Question {
        sentence: format!(
            "Daystrand stopped last time before {name} was saved. Its changes are kept."
        ),
        answers: vec![
            (Answer::TakeUp, "Open it with its changes".to_owned()),
            (Answer::Stay, "Ask again next time".to_owned()),
            (Answer::Discard, "Give its changes up".to_owned()),
        ],
    }
}
