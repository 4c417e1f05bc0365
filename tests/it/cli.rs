//! The command line: what it writes, what it says, and how it ends.

mod demo;
mod made;
mod print;
mod process;
mod words;

use std::ffi::OsString;
use std::path::{Path, PathBuf};

use daystrand::cli::{self, Outcome, Surroundings};
use daystrand::model::club::Club;
use daystrand::storage;
use jiff::civil::date;

/// A computer without a display on 11 June 2027.
fn around() -> Surroundings {
    Surroundings {
        today: date(2027, 6, 11),
        preferences: None,
        display: false,
    }
}

/// A run: its outcome and what it wrote.
struct Run {
    outcome: Outcome,
    out: String,
    err: String,
}

fn run_in(around: &Surroundings, words: &[&str]) -> Run {
    let (mut out, mut err) = (Vec::new(), Vec::new());
    let words = words.iter().map(OsString::from);
    let outcome = cli::run(words, around, &mut out, &mut err);
    Run {
        outcome,
        out: String::from_utf8(out).unwrap(),
        err: String::from_utf8(err).unwrap(),
    }
}

fn run(words: &[&str]) -> Run {
    run_in(&around(), words)
}

impl Run {
    /// Ended well, saying nothing on the error stream.
    #[track_caller]
    fn done(self) -> String {
        assert_eq!(
            (self.outcome.code, self.err.as_str()),
            (0, ""),
            "{}",
            self.out
        );
        self.out
    }

    /// Ended with code 2 and one line of error.
    #[track_caller]
    fn wrong(self) -> String {
        assert_eq!(
            (self.outcome.code, self.out.as_str()),
            (2, ""),
            "{}",
            self.err
        );
        assert!(self.outcome.window.is_none());
        let line = self.err.strip_prefix("daystrand: ").unwrap();
        assert_eq!(line.matches('\n').count(), 1, "{line}");
        assert!(
            line.ends_with(".\n") || line.ends_with("--help.\n"),
            "{line}"
        );
        line.trim_end().to_owned()
    }
}

/// A club in a file.
fn saved(dir: &Path, club: &Club) -> PathBuf {
    let path = dir.join("club.daystrand");
    storage::save(&path, club).unwrap();
    path
}

fn demo_file(dir: &Path) -> String {
    let path = saved(dir, &daystrand::workbench::demo::club());
    path.to_str().unwrap().to_owned()
}

/// The names of all files in a folder, sorted.
fn names(dir: &Path) -> Vec<String> {
    let entries = std::fs::read_dir(dir).unwrap();
    let mut names: Vec<_> = entries
        .map(|e| e.unwrap().file_name().into_string().unwrap())
        .collect();
    names.sort();
    names
}
