//! The program: hands its arguments to the library, opens the window if one is wanted, and exits
//! with the answer.

use std::io;
use std::process::ExitCode;

use daystrand::cli::{self, Outcome, Surroundings};
use daystrand::ui;

fn main() -> ExitCode {
    let mut err = io::stderr();
    let words = std::env::args_os().skip(1);
    let outcome = cli::run(words, &Surroundings::here(), &mut io::stdout(), &mut err);
    let code = outcome.window.map_or(outcome.code, |window| {
        let opened = ui::run(*window.workbench);
        Outcome::after_window(outcome.code, window.needed, opened, &mut err)
    });
    ExitCode::from(code)
}
