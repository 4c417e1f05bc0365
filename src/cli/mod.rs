//! The command line: the same work without a window, for printing in bulk, scripts and tests.
//!
//! Reading order: `table` (every verb and option, and what is said about them) with `words`, then
//! `args` (from words to a checked request), `help`, `manual` and `completion` (made from the table),
//! then a file for each verb. Exit codes: 0 done, 1 findings that need a look (`check`), 2 wrong use or unreadable input. What went
//! wrong is one line on the error stream, with what to do.

mod args;
mod check;
mod completion;
mod demo;
mod help;
mod manual;
mod open;
mod pick;
mod print;
mod symbols;
pub mod table;
pub mod words;

use std::ffi::OsString;
use std::io::Write;
use std::path::PathBuf;

use jiff::civil::Date;

use crate::workbench::command::Notice;
use crate::workbench::{Workbench, usual_preferences};
use args::Request;

/// Done.
pub const DONE: u8 = 0;
/// Something was found that needs a look.
pub const LOOK: u8 = 1;
/// Wrong use, or something could not be read or written.
pub const WRONG: u8 = 2;

/// What the program finds around itself.
#[derive(Clone, Debug)]
pub struct Surroundings {
    /// The day on which it runs.
    pub today: Date,
    /// Where the window's preferences are kept, if anywhere.
    pub preferences: Option<PathBuf>,
    /// Whether there is a display to open a window on.
    pub display: bool,
}

impl Surroundings {
    /// As they are now.
    pub fn here() -> Self {
        let set = |name: &str| std::env::var_os(name).is_some_and(|v| !v.is_empty());
        let needs_server = cfg!(all(unix, not(target_os = "macos")));
        Self {
            today: jiff::Zoned::now().date(),
            preferences: usual_preferences(),
            display: !needs_server || set("DISPLAY") || set("WAYLAND_DISPLAY"),
        }
    }
}

/// What is left to do after a run.
#[derive(Debug)]
pub struct Outcome {
    /// The exit code, once a window that is to be opened has closed.
    pub code: u8,
    /// The window to open.
    pub window: Option<Window>,
}

/// A window to open.
#[derive(Debug)]
pub struct Window {
    /// What it shows.
    pub workbench: Box<Workbench>,
    /// Whether the run was for nothing if it cannot be opened.
    pub needed: bool,
}

impl Outcome {
    const fn code(code: u8) -> Self {
        Self { code, window: None }
    }

    /// The exit code after the window closed, or could not be opened for the reason given. Says the
    /// latter.
    pub fn after_window(
        code: u8,
        needed: bool,
        opened: Result<(), String>,
        err: &mut dyn Write,
    ) -> u8 {
        match opened {
            Ok(()) => code,
            Err(reason) => {
                let hint = "The other verbs work without a window; see daystrand --help.";
                say(
                    err,
                    &format!("daystrand: No window could be opened: {reason} {hint}"),
                );
                if needed { WRONG } else { code }
            }
        }
    }
}

/// Why a run ended without doing what was asked: one sentence and what to do.
#[derive(Clone, Debug, PartialEq, Eq)]
struct Trouble {
    sentence: String,
    hint: String,
}

impl Trouble {
    fn new(sentence: impl Into<String>, hint: impl Into<String>) -> Self {
        Self {
            sentence: sentence.into(),
            hint: hint.into(),
        }
    }
}

impl From<&Notice> for Trouble {
    fn from(notice: &Notice) -> Self {
        Self::new(notice.sentence.clone(), notice.hint.clone())
    }
}

/// Does what the words after the program's name ask for, writing to `out` and `err`.
pub fn run(
    words: impl IntoIterator<Item = OsString>,
    around: &Surroundings,
    out: &mut dyn Write,
    err: &mut dyn Write,
) -> Outcome {
    let done = args::parse(words).and_then(|request| answer(request, around, out, err));
    done.unwrap_or_else(|trouble| {
        tell(err, &trouble);
        Outcome::code(WRONG)
    })
}

fn answer(
    request: Request,
    around: &Surroundings,
    out: &mut dyn Write,
    err: &mut dyn Write,
) -> Result<Outcome, Trouble> {
    match request {
        Request::Help(topic) => written(out, &help::text(topic)),
        Request::Version => {
            say(out, &format!("daystrand {}", env!("CARGO_PKG_VERSION")));
            Ok(Outcome::code(DONE))
        }
        Request::Open(file) => open::run(file, around, err),
        Request::Demo(wish) => demo::run(&wish, around, out),
        Request::Print(wish) => print::run(&wish, around, out),
        Request::Check(wish) => check::run(&wish, around, out),
        Request::Symbols(wish) => symbols::run(&wish, out),
        Request::Manual => written(out, &manual::text()),
        Request::Completion(shell) => written(out, &completion::text(shell)),
    }
}

/// Done, with a text written.
fn written(out: &mut dyn Write, text: &str) -> Result<Outcome, Trouble> {
    say(out, text.trim_end());
    Ok(Outcome::code(DONE))
}

/// One line for what went wrong.
fn tell(err: &mut dyn Write, trouble: &Trouble) {
    let line = format!("daystrand: {} {}", trouble.sentence, trouble.hint);
    say(err, line.replace('\n', " ").trim_end());
}

/// Writes a line. Whoever reads may have gone away, as `head` does; that is no fault.
fn say(to: &mut dyn Write, line: &str) {
    let _ = writeln!(to, "{line}");
}
