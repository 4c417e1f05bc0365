//! For zsh, by its own `_arguments`.

use super::super::table::{Blank, Flag, Takes, VERBS, Verb};
use super::super::words::Word;
use super::{flags_of, program_flags, quoted};

const BEFORE: &str = "\
#compdef daystrand
# What zsh needs to complete a command line of daystrand.
# Written by: daystrand completion zsh
";

/// The script.
pub fn text() -> String {
    let mut text = BEFORE.to_owned();
    for verb in &VERBS {
        text += &several(verb);
    }
    text += "\n_daystrand_first() {\n    local -a verbs=(\n";
    for verb in &VERBS {
        let pair = format!("{}:{}", verb.word, verb.brief);
        text += &format!("        {}\n", quoted(&pair));
    }
    text += "    )\n    _describe -t verbs verb verbs\n    _files -g '*.daystrand'\n}\n";
    text += "\n_daystrand() {\n    local curcontext=$curcontext state line\n";
    text += "    typeset -A opt_args\n    _arguments -C";
    text += &specs(program_flags(), "");
    text += " \\\n        '1: :_daystrand_first' \\\n        '*:: :->rest'\n";
    text += "    [[ $state == rest ]] || return\n    case $line[1] in\n";
    for verb in &VERBS {
        text += &format!("    {})\n        _arguments", verb.word);
        text += &specs(flags_of(verb.flags), verb.word);
        if let Some(operand) = verb.operand {
            let many = if operand.shown.contains("...") {
                "*"
            } else {
                "1"
            };
            let spec = format!("{many}:{}:{}", shown(operand), action(operand, ""));
            text += &format!(" \\\n        {}", quoted(&spec));
        }
        text += "\n        ;;\n";
    }
    text += "    esac\n}\n\nif [[ $funcstack[1] == _daystrand ]]; then\n    _daystrand \"$@\"\n";
    text + "else\n    compdef _daystrand daystrand\nfi\n"
}

/// Options as `_arguments` takes them, a line each.
fn specs<'a>(flags: impl Iterator<Item = &'a Flag>, verb: &str) -> String {
    let mut text = String::new();
    for flag in flags {
        let what = escaped(flag.what, &[':', '[', ']']);
        let value = flag.value.map_or(String::new(), |v| {
            let list = format!("_daystrand_{verb}_{}", flag.name);
            format!(":{}:{}", shown(v), action(v, &list))
        });
        let equals = if flag.value.is_some() { "=" } else { "" };
        let spec = format!("--{}{equals}[{what}]{value}", flag.name);
        text += &format!(" \\\n        {}", quoted(&spec));
        if let Some(letter) = flag.letter {
            text += &format!(" \\\n        {}", quoted(&format!("-{letter}[{what}]")));
        }
    }
    text
}

fn shown(blank: Blank) -> &'static str {
    blank.shown.trim_matches(['[', ']', '.'])
}

/// What is offered in a place; `list` is the function for several words with commas between.
fn action(blank: Blank, list: &str) -> String {
    let said = |w: &Word| match w.said {
        "" => w.word.to_owned(),
        said => format!(r#"{}\:"{}""#, w.word, escaped(said, &['"', ':'])),
    };
    match blank.takes {
        Takes::Folder => "_files -/".to_owned(),
        Takes::Club => r#"_files -g "*.daystrand""#.to_owned(),
        Takes::Text => " ".to_owned(),
        Takes::One(words) => {
            let words = words();
            let all: Vec<_> = words.iter().map(said).collect();
            let said = words.iter().any(|w| !w.said.is_empty());
            let all = all.join(" ");
            if said {
                format!("(({all}))")
            } else {
                format!("({all})")
            }
        }
        Takes::Several(_) => list.to_owned(),
    }
}

/// Functions that offer several words with commas between.
fn several(verb: &Verb) -> String {
    let mut text = String::new();
    for flag in verb.flags {
        let Some(Blank {
            takes: Takes::Several(words),
            shown,
        }) = flag.value
        else {
            continue;
        };
        let word = |w: &Word| match w.said {
            "" => quoted(w.word),
            said => quoted(&format!("{}[{}]", w.word, escaped(said, &['[', ']']))),
        };
        let words: Vec<_> = words().iter().map(word).collect();
        text += &format!(
            "\n_daystrand_{}_{}() {{\n    _values -s , ",
            verb.word, flag.name
        );
        text += &format!("{shown} \\\n        {}\n}}\n", words.join(" \\\n        "));
    }
    text
}

/// With a backslash before each of some signs.
fn escaped(text: &str, signs: &[char]) -> String {
    let mut out = String::new();
    for c in text.chars() {
        if signs.contains(&c) {
            out.push('\\');
        }
        out.push(c);
    }
    out
}
