//! Printing from the window: the choice, the folder, the job and how it ended.

use std::path::PathBuf;

use super::Workbench;
use super::command::{Effect, Notice};
use super::derived::request;
use super::printing::{End, Order, Outcome};

impl Workbench {
    pub(super) fn ask_folder(&mut self, effects: &mut Vec<Effect>) {
        match self.nothing_to_print() {
            Some(notice) => self.tell(notice),
            None => effects.push(Effect::AskFolder),
        }
    }

    /// Why there is nothing to print, if so.
    fn nothing_to_print(&self) -> Option<Notice> {
        let club = self.history.club();
        let Some(session) = self.choice.session_of(club) else {
            return Some(Notice::trouble(
                "There is no session to print.",
                "Add one at Session.",
            ));
        };
        let request = request(club, session, &self.print);
        let group = request.kinds.iter().any(|k| !k.is_personal());
        if request.kinds.is_empty() {
            Some(Notice::trouble(
                "No sheet is chosen.",
                "Choose at least one kind of sheet.",
            ))
        } else if self.print.formats.is_empty() {
            Some(Notice::trouble(
                "No kind of file is chosen.",
                "Choose PDF to print.",
            ))
        } else if request.participants.is_empty() && !group {
            Some(Notice::trouble(
                "Nobody is chosen who comes to this session.",
                "Choose people, or the session sheet.",
            ))
        } else {
            None
        }
    }

    pub(super) fn write_sheets(&mut self, folder: PathBuf) {
        if self.jobs.is_running() {
            return self.tell(Notice::trouble(
                "Sheets are being written already.",
                "Wait until they are done, or stop that first.",
            ));
        }
        if let Some(notice) = self.nothing_to_print() {
            return self.tell(notice);
        }
        let club = self.history.club();
        let Some(session) = self.choice.session_of(club) else {
            return;
        };
        let order = Order {
            club: club.clone(),
            request: request(club, session, &self.print),
            formats: self.print.formats.clone(),
            one_file: self.print.one_file,
            folder: folder.clone(),
        };
        let revision = self.last_revision_of_club();
        if self.jobs.start(order) {
            self.writing = Some(revision);
            self.notice = None;
            self.preferences.last_folder = Some(folder);
            self.keep_preferences();
        } else {
            self.tell(Notice::trouble(
                "The computer is too busy to begin writing.",
                "Close other programs and try again.",
            ));
        }
    }

    /// Takes in what jobs reported; true if anything changed.
    pub fn poll(&mut self) -> bool {
        // Looked at first: what a thread said before it ended is in the channel by then.
        let gone = self.jobs.is_lost();
        let (mut changed, ended) = self.jobs.poll();
        if let Some(outcome) = ended {
            if outcome.end == End::Done && !outcome.written.is_empty() {
                self.written = self.writing;
            }
            self.tell(ended_notice(&outcome));
        } else if gone && self.jobs.is_running() {
            self.jobs.forget();
            self.tell(Notice::trouble(
                "Writing ended in the middle by a fault of this program.",
                "Files written so far are whole. Try fewer sheets at once.",
            ));
            changed = true;
        }
        changed |= self.poll_turns() | self.poll_incoming() | self.poll_unsaved();
        if let Some(well) = self.derived.poll_sheets() {
            if !well {
                self.tell(Notice::trouble(
                    "The sheets could not be laid out by a fault of this program.",
                    "Choose fewer people or fewer sheets at once.",
                ));
            }
            self.follow();
            changed = true;
        }
        changed
    }
}

fn ended_notice(outcome: &Outcome) -> Notice {
    let (sentence, hint) = outcome.words();
    Notice {
        trouble: matches!(outcome.end, End::Failed { .. }) || outcome.written.is_empty(),
        sentence,
        hint,
        folder: (!outcome.written.is_empty()).then(|| outcome.folder.clone()),
    }
}
