//! What a shell needs to complete a command line, made from the table of verbs. A file a shell.

mod bash;
mod fish;
mod zsh;

use super::table::{Flag, HELP, PROGRAM_FLAGS};

/// A shell that can be told.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Shell {
    Bash,
    Zsh,
    Fish,
}

/// The shells by their words.
pub const SHELLS: [(&str, Shell); 3] = [
    ("bash", Shell::Bash),
    ("zsh", Shell::Zsh),
    ("fish", Shell::Fish),
];

/// The script for a shell.
pub fn text(shell: Shell) -> String {
    match shell {
        Shell::Bash => bash::text(),
        Shell::Zsh => zsh::text(),
        Shell::Fish => fish::text(),
    }
}

/// Options as they are typed, letters too.
fn switches<'a>(flags: impl IntoIterator<Item = &'a Flag>) -> Vec<String> {
    let of = |flag: &Flag| {
        let letter = flag.letter.map(|l| format!("-{l}"));
        letter.into_iter().chain([format!("--{}", flag.name)])
    };
    flags.into_iter().flat_map(of).collect::<Vec<_>>()
}

/// Those of a verb, help too.
fn flags_of(flags: &'static [Flag]) -> impl Iterator<Item = &'static Flag> {
    static ALSO: [Flag; 1] = [HELP];
    flags.iter().chain(&ALSO)
}

/// Those without a verb.
fn program_flags() -> impl Iterator<Item = &'static Flag> {
    static FLAGS: [Flag; 2] = PROGRAM_FLAGS;
    FLAGS.iter()
}

/// Text between single quotes, as bash and zsh read it.
fn quoted(text: &str) -> String {
    format!("'{}'", text.replace('\'', r"'\''"))
}
