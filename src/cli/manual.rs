//! The manual page, in the form that man reads: roff with the macros of man(7). It has no date, for
//! the same program gives the same page on every day.

use super::help::{called, lines};
use super::table::{CODES, DESCRIPTION, FILES, Flag, PROGRAM_FLAGS, PURPOSE, Takes, VERBS, Verb};
use super::words::or;

/// The longest line of the source, in bytes, as mandoc would have it.
const WIDTH: usize = 80;

/// The page.
pub fn text() -> String {
    let version = env!("CARGO_PKG_VERSION");
    let mut page = Page::default();
    page.line(&format!(
        r#".TH DAYSTRAND 1 "" "daystrand {version}" "User Commands""#
    ));
    page.section("NAME");
    let purpose = PURPOSE.trim_end_matches('.');
    page.line(&format!(r"daystrand \- {}", lower_first(&plain(purpose))));
    synopsis(&mut page);
    page.section("DESCRIPTION");
    page.paragraphs(DESCRIPTION);
    page.section("COMMANDS");
    for verb in &VERBS {
        command(&mut page, verb);
    }
    page.section("OPTIONS");
    page.prose("With every command, or without one:");
    for flag in &PROGRAM_FLAGS {
        option(&mut page, flag);
    }
    page.section("FILES");
    for (name, what) in FILES {
        page.item(&italic(name), &plain(what));
    }
    page.section("EXIT STATUS");
    for (code, meaning) in CODES {
        page.item(&bold(&code.to_string()), &sentence(meaning));
    }
    page.section("EXAMPLES");
    for verb in VERBS.iter().filter(|v| !v.examples.is_empty()) {
        page.item(&bold(verb.word), &sentence(verb.brief));
        for example in verb.examples {
            page.example(example);
        }
    }
    page.text
}

fn synopsis(page: &mut Page) {
    page.section("SYNOPSIS");
    for (i, usage) in VERBS.iter().flat_map(|v| v.usage).enumerate() {
        if i > 0 {
            page.line(".br");
        }
        page.line(&format!("{} {}", bold("daystrand"), marked(usage)));
    }
}

fn command(page: &mut Page, verb: &Verb) {
    page.line(&format!(".SS {}", quoted(&marked(&called(verb)))));
    page.prose(verb.about);
    page.paragraphs_after(verb.further);
    for flag in verb.flags {
        option(page, flag);
    }
}

fn option(page: &mut Page, flag: &Flag) {
    let letter = flag.letter.map(|l| bold(&format!("-{l}")) + ", ");
    let name = bold(&format!("--{}", flag.name));
    let value = flag.value.map(|v| format!(" {}", italic(v.shown)));
    let tag = letter.unwrap_or_default() + &name + &value.unwrap_or_default();
    let Some(blank) = flag.value.filter(|v| !v.takes.words().is_empty()) else {
        return page.item(&tag, &sentence(&format!("{}{}", flag.what, flag.more)));
    };
    let words = blank.takes.words();
    let more = flag.more.trim_start_matches([';', ',', ' ']);
    if words.iter().all(|w| w.said.is_empty()) {
        let words: Vec<_> = words.iter().map(|w| bold(w.word)).collect();
        let choices = match blank.takes {
            Takes::Several(_) => format!("{}, several with commas between", words.join(", ")),
            _ => or(&words),
        };
        let what = sentence(flag.what).trim_end_matches('.').to_owned();
        return page.item(&tag, &format!("{what}: {choices}; {}.", plain(more)));
    }
    page.item(&tag, &format!("{} {}", sentence(flag.what), sentence(more)));
    page.line("Several have commas between:");
    page.line(".RS");
    for word in words {
        page.item(&bold(word.word), &sentence(word.said));
    }
    page.line(".RE");
}

/// A page that is being written.
#[derive(Default)]
struct Page {
    text: String,
}

impl Page {
    fn line(&mut self, line: &str) {
        self.text.push_str(line);
        self.text.push('\n');
    }

    fn section(&mut self, name: &str) {
        self.line(&format!(".SH {}", quoted(name)));
    }

    /// Words of ours.
    fn prose(&mut self, text: &str) {
        self.filled(&plain(text));
    }

    /// Text in roff already: each sentence begins a line, and no line is long.
    fn filled(&mut self, text: &str) {
        for sentence in text.split_inclusive(". ") {
            for line in lines(sentence, WIDTH) {
                self.line(&at_start(&line));
            }
        }
    }

    fn paragraphs(&mut self, paragraphs: &[&str]) {
        let (first, rest) = paragraphs.split_at(paragraphs.len().min(1));
        first.iter().for_each(|p| self.prose(p));
        self.paragraphs_after(rest);
    }

    fn paragraphs_after(&mut self, paragraphs: &[&str]) {
        for paragraph in paragraphs {
            self.line(".PP");
            self.prose(paragraph);
        }
    }

    /// A tag and what is said about it, both in roff already.
    fn item(&mut self, tag: &str, text: &str) {
        self.line(".TP");
        self.line(tag);
        self.filled(text);
    }

    /// A command line, as it is typed.
    fn example(&mut self, command: &str) {
        self.line(".IP");
        self.line(".nf");
        self.line(&at_start(&plain(command)));
        self.line(".fi");
    }
}

/// Words as roff has them: nothing in them is taken as an instruction, and hyphens can be copied.
fn plain(text: &str) -> String {
    text.replace('\\', r"\e").replace('-', r"\-")
}

/// At the start of a line a stop or a quotation mark would make an instruction of it.
fn at_start(line: &str) -> String {
    match line.starts_with(['.', '\'']) {
        true => format!(r"\&{line}"),
        false => line.to_owned(),
    }
}

fn bold(text: &str) -> String {
    format!(r"\fB{}\fR", plain(text))
}

fn italic(text: &str) -> String {
    format!(r"\fI{}\fR", plain(text))
}

fn quoted(text: &str) -> String {
    format!("\"{}\"", text.replace('"', r"\(dq"))
}

/// A usage line: what is typed is bold, what is filled in italic.
fn marked(usage: &str) -> String {
    let mut marked = String::new();
    let mut word = String::new();
    for c in usage.chars().chain([' ']) {
        if c.is_alphabetic() || c == '-' {
            word.push(c);
            continue;
        }
        if !word.is_empty() {
            let blank = word.chars().all(char::is_uppercase);
            marked += &if blank { italic(&word) } else { bold(&word) };
            word.clear();
        }
        marked.push(c);
    }
    marked.trim_end().to_owned()
}

/// A few words as a sentence.
fn sentence(words: &str) -> String {
    let mut letters = words.chars();
    let first = letters.next().map(|c| c.to_uppercase().to_string());
    let stop = if words.ends_with('.') { "" } else { "." };
    plain(&format!(
        "{}{}{stop}",
        first.unwrap_or_default(),
        letters.as_str()
    ))
}

fn lower_first(text: &str) -> String {
    let mut letters = text.chars();
    let first = letters.next().map(|c| c.to_lowercase().to_string());
    first.unwrap_or_default() + letters.as_str()
}
