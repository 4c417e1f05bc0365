//! `symbols`: the pictures that fit some words, or all pictures and marks.

use std::io::Write;

use super::say;
use crate::symbols::library::{Symbol, library};

/// Lists name, label and what can be seen, a picture a line.
pub fn run(words: &[String], out: &mut dyn Write) {
    let words = words.join(" ");
    let found = library().search(&words);
    if found.is_empty() {
        say(
            out,
            &format!("No picture fits “{words}”. Try one word, or the start of one."),
        );
        return;
    }
    let marks: Vec<&Symbol> = match words.trim() {
        "" => library().marks().iter().collect(),
        _ => Vec::new(),
    };
    let all = || found.iter().chain(&marks);
    let width = |text: &dyn Fn(&Symbol) -> usize| all().map(|s| text(s)).max().unwrap_or(0);
    let ids = width(&|s| s.id.as_str().chars().count());
    let labels = width(&|s| s.label.chars().count());
    for s in all() {
        let line = format!("{:ids$}  {:labels$}  {}", s.id.as_str(), s.label, s.shows);
        say(out, line.trim_end());
    }
}
