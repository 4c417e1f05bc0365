//! How the program and each verb are used, as text for a terminal.

use super::table::{CODES, Flag, HELP, PROGRAM_FLAGS, PURPOSE, Takes, Topic, VERBS, Verb};
use super::words::{Word, or};

/// The widest line, in characters.
const WIDTH: usize = 100;
/// With fewer words to choose from, what each means is said too.
const FEW: usize = 8;

/// The text about something.
pub fn text(topic: Topic) -> String {
    topic.verb().map_or_else(program, verb)
}

fn program() -> String {
    let verbs: Vec<_> = VERBS
        .iter()
        .map(|v| (called(v), v.brief.to_owned()))
        .collect();
    let flags = PROGRAM_FLAGS.iter();
    let flags: Vec<_> = flags.map(|f| (switches(f), about(f))).collect();
    let codes: Vec<_> = CODES.iter().map(|(c, m)| format!("{c} {m}")).collect();
    [
        format!("{PURPOSE}\n"),
        "Usage: daystrand [VERB] [OPTIONS]\n".to_owned(),
        format!("Verbs:\n{}", columns(&verbs)),
        format!("Options:\n{}", columns(&flags)),
        format!("Exit codes: {}.\n", codes.join(", ")),
    ]
    .join("\n")
}

fn verb(verb: &Verb) -> String {
    let usage: Vec<_> = verb
        .usage
        .iter()
        .map(|u| format!("daystrand {u}"))
        .collect();
    let flags = verb.flags.iter().chain([&HELP]);
    let flags: Vec<_> = flags.map(|f| (switches(f), about(f))).collect();
    let mut parts = vec![
        wrapped(verb.about, 0),
        format!("Usage: {}\n", usage.join("\n       ")),
        format!("Options:\n{}", columns(&flags)),
    ];
    parts.extend(verb.further.iter().map(|p| wrapped(p, 0)));
    if !verb.examples.is_empty() {
        parts.push(format!("Example:\n  {}\n", verb.examples.join("\n  ")));
    }
    parts.join("\n")
}

/// A verb with what stands after it.
pub fn called(verb: &Verb) -> String {
    let operand = verb.operand.map_or("", |o| o.shown);
    format!("{} {operand}", verb.word).trim_end().to_owned()
}

/// An option as it is typed, with what stands after it.
fn switches(flag: &Flag) -> String {
    let letter = flag.letter.map_or(String::new(), |l| format!("-{l}, "));
    let value = flag
        .value
        .map_or(String::new(), |v| format!(" {}", v.shown));
    format!("{letter}--{}{value}", flag.name)
}

/// All that is said about an option, with the words to choose from.
pub fn about(flag: &Flag) -> String {
    let words = flag.value.map_or(Vec::new(), |v| v.takes.words());
    let few = words.len() < FEW;
    let word = |w: &Word| match w.said {
        said if few && !said.is_empty() => format!("{} ({said})", w.word),
        _ => w.word.to_owned(),
    };
    let words: Vec<_> = words.iter().map(word).collect();
    let choices = match flag.value.map(|v| v.takes) {
        Some(Takes::One(_)) => format!(": {}", or(&words)),
        Some(Takes::Several(_)) => format!(": {}, several with commas between", words.join(", ")),
        _ => String::new(),
    };
    format!("{}{choices}{}", flag.what, flag.more)
}

/// Two columns, the second broken into lines below itself.
fn columns(rows: &[(String, String)]) -> String {
    let widest = rows.iter().map(|(left, _)| left.chars().count()).max();
    let indent = widest.unwrap_or(0) + 5;
    let row = |(left, right): &(String, String)| {
        let right = wrapped(right, indent);
        format!("  {left:0$}{1}", indent - 2, right.trim_start())
    };
    rows.iter().map(row).collect()
}

/// Words in lines of at most [`WIDTH`], each moved in, with a line end behind the last.
fn wrapped(text: &str, indent: usize) -> String {
    let margin = " ".repeat(indent);
    let lines = lines(text, WIDTH - indent);
    let lines = lines.iter().map(|line| format!("{margin}{line}\n"));
    lines.collect()
}

/// Words in lines of at most so many characters.
pub fn lines(text: &str, width: usize) -> Vec<String> {
    let mut lines: Vec<String> = Vec::new();
    for word in text.split_whitespace() {
        match lines.last_mut() {
            Some(line) if line.chars().count() + 1 + word.chars().count() <= width => {
                line.push(' ');
                line.push_str(word);
            }
            _ => lines.push(word.to_owned()),
        }
    }
    lines
}
