//! Pictures and activities given to another club and taken from one.

use std::path::{Path, PathBuf};
use std::sync::Arc;

use super::Workbench;
use super::command::{Answer, Effect, Notice, Question};
use super::files::{About, Standing, file_name, there_already, with_ending};
use crate::model::club::Club;
use crate::model::edit::Edit;
use crate::model::set::{self, Holds, Meeting};
use crate::storage::set as file;

/// Most names that a message repeats.
const NAMED: usize = 4;

impl Workbench {
    pub(super) fn ask_set(&self, holds: Holds, effects: &mut Vec<Effect>) {
        let club = self.history.club().name.trim();
        let begin = if club.is_empty() { "club" } else { club };
        effects.push(Effect::AskSetPath {
            suggested: format!("{begin} {}.daystrand-set", holds.label().to_lowercase()),
            holds,
        });
    }

    pub(super) fn write_set(&mut self, path: PathBuf, holds: Holds) {
        let path = match with_ending(path, file::SET_EXTENSION) {
            Ok(path) => path,
            Err(taken) => return self.tell(there_already(&taken)),
        };
        let (set, left) = set::of_club(self.history.club(), holds);
        let (pictures, activities) = (set.pictures.len(), set.activities.len());
        if pictures + activities == 0 {
            return self.tell(Notice::trouble(
                "There is nothing that may be given out.",
                "A picture goes out when it may be seen outside too, is the club’s and shows no \
                 person.",
            ));
        }
        if let Err(error) = file::write(&path, &set) {
            return self.tell(Notice::trouble(error.sentence, error.hint));
        }
        let mut said = format!(
            "{} are in “{}”, without any person.",
            counted(pictures, activities),
            file_name(&path)
        );
        if !left.is_empty() {
            said += &format!(
                " Left out, because they are someone’s, name or show someone, or may not be seen \
                 outside: {}.",
                named(&left)
            );
        }
        self.tell(Notice::done(said));
    }

    pub(super) fn take_set(&mut self, path: &Path) {
        let set = match file::read(path) {
            Ok(set) => set,
            Err(error) => return self.tell(Notice::trouble(error.sentence, error.hint)),
        };
        let meetings = set::meetings(self.history.club(), &set);
        if meetings.is_empty() {
            return self.use_set(Arc::new(set), Meeting::KeepOurs);
        }
        let sentence = format!(
            "The club has others of these names already: {}. What is to be kept?",
            named(&meetings)
        );
        let answers = [
            (Answer::KeepOurs, "Ours"),
            (Answer::KeepBoth, "Both"),
            (Answer::TakeTheirs, "Those that come"),
            (Answer::Stay, "Take nothing in"),
        ];
        self.question = Some(Standing {
            question: Question {
                sentence,
                answers: answers.map(|(a, words)| (a, words.to_owned())).into(),
            },
            about: About::Meeting(Arc::new(set)),
        });
    }

    pub(super) fn use_set(&mut self, set: Arc<Club>, meeting: Meeting) {
        let before = self.history.revision();
        let said = counted(set.pictures.len(), set.activities.len());
        let from = set.name.trim().to_owned();
        self.edit(&Edit::TakeSet(set, meeting));
        if self.history.revision() != before {
            self.tell(Notice::done(format!("Taken in from “{from}”: {said}.")));
        } else if self.notice.is_none() {
            self.tell(Notice::done("The club has all of that already."));
        }
    }
}

/// "3 pictures and 1 activity".
fn counted(pictures: usize, activities: usize) -> String {
    let of = |n: usize, one: &str, more: &str| match n {
        0 => None,
        1 => Some(format!("1 {one}")),
        n => Some(format!("{n} {more}")),
    };
    let parts = [
        of(pictures, "picture", "pictures"),
        of(activities, "activity", "activities"),
    ];
    let parts: Vec<String> = parts.into_iter().flatten().collect();
    parts.join(" and ")
}

fn named(names: &[String]) -> String {
    let first: Vec<&str> = names.iter().take(NAMED).map(String::as_str).collect();
    match names.len().saturating_sub(NAMED) {
        0 => first.join(", "),
        more => format!("{} and {more} more", first.join(", ")),
    }
}
