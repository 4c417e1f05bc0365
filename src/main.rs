//! The program: hands its arguments to the library, opens the window if one is wanted, and exits
//! with the answer.

use std::io;
use std::process::ExitCode;

use daystrand::cli::{self, Outcome, Surroundings};
use daystrand::ui;
use daystrand::workbench::usual_unsaved;

fn main() -> ExitCode {
    let mut err = io::stderr();
    let words = std::env::args_os().skip(1);
    let outcome = cli::run(words, &Surroundings::here(), &mut io::stdout(), &mut err);
    let code = outcome.window.map_or(outcome.code, |window| {
        // Only a window is worked in long enough to lose something.
        let bench = window.workbench.with_unsaved(usual_unsaved().as_deref());
        let opened = ui::run(bench);
        Outcome::after_window(outcome.code, window.needed, opened, &mut err)
    });
    ExitCode::from(code)
}
