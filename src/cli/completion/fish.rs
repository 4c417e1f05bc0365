//! For fish.

use super::super::table::{Blank, Flag, Takes, VERBS, Verb};
use super::super::words::Word;
use super::{flags_of, program_flags};

const BEFORE: &str = "\
# What fish needs to complete a command line of daystrand.
# Written by: daystrand completion fish

function __daystrand_first
    test (count (commandline -opc)) -eq 1
end

function __daystrand_after
    set -l words (commandline -opc)
    test (count $words) -gt 1; and test $words[2] = $argv[1]
end

complete -c daystrand -f
";

/// Where a verb is still to be said.
const FIRST: &str = "__daystrand_first";

/// The script.
pub fn text() -> String {
    let mut text = BEFORE.to_owned();
    for verb in &VERBS {
        text += &several(verb);
    }
    text += "\n";
    for flag in program_flags() {
        text += &option(FIRST, "", flag);
    }
    text +=
        &format!("complete -c daystrand -n {FIRST} -k -a '(__fish_complete_suffix .daystrand)'\n");
    for verb in &VERBS {
        let brief = quoted(verb.brief);
        text += &format!(
            "complete -c daystrand -n {FIRST} -a {} -d {brief}\n",
            verb.word
        );
    }
    for verb in &VERBS {
        let when = quoted(&format!("__daystrand_after {}", verb.word));
        text += "\n";
        for flag in flags_of(verb.flags) {
            text += &option(&when, verb.word, flag);
        }
        if let Some(offer) = verb.operand.and_then(|o| offer(o, "")) {
            text += &format!("complete -c daystrand -n {when} -k -a {offer}\n");
        }
    }
    text
}

fn option(when: &str, verb: &str, flag: &Flag) -> String {
    let letter = flag.letter.map_or(String::new(), |l| format!(" -s {l}"));
    let list = format!("__daystrand_{verb}_{}", flag.name);
    let value = match flag.value.map(|v| offer(v, &list)) {
        None => String::new(),
        Some(None) => " -x".to_owned(),
        Some(Some(offer)) => format!(" -x -a {offer}"),
    };
    let what = quoted(flag.what);
    format!(
        "complete -c daystrand -n {when}{letter} -l {}{value} -d {what}\n",
        flag.name
    )
}

/// What is offered in a place; `list` is the function for several words with commas between.
fn offer(blank: Blank, list: &str) -> Option<String> {
    match blank.takes {
        Takes::Folder => Some("'(__fish_complete_directories)'".to_owned()),
        Takes::Club => Some("'(__fish_complete_suffix .daystrand)'".to_owned()),
        Takes::Text => None,
        Takes::One(words) => {
            let words: Vec<_> = words().iter().map(|w| quoted(&line(w))).collect();
            // In the argument of -a each line is one word with what is said about it.
            Some(format!("\"(printf '%s\\n' {})\"", words.join(" ")))
        }
        Takes::Several(_) => Some(format!("'(__fish_complete_list , {list})'")),
    }
}

/// Functions that offer the words of which several can be chosen.
fn several(verb: &Verb) -> String {
    let mut text = String::new();
    for flag in verb.flags {
        let Some(Blank {
            takes: Takes::Several(words),
            ..
        }) = flag.value
        else {
            continue;
        };
        let words: Vec<_> = words().iter().map(|w| quoted(&line(w))).collect();
        let words = words.join(" \\\n        ");
        text += &format!("\nfunction __daystrand_{}_{}\n", verb.word, flag.name);
        text += &format!("    printf '%s\\n' {words}\nend\n");
    }
    text
}

/// A word and what is said about it, parted as fish has it.
fn line(word: &Word) -> String {
    match word.said {
        "" => word.word.to_owned(),
        said => format!("{}\t{said}", word.word),
    }
}

/// Text between single quotes.
fn quoted(text: &str) -> String {
    format!("'{}'", text.replace('\\', r"\\").replace('\'', r"\'"))
}
