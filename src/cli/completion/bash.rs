//! For bash. Its own words only, so that it also works where no collection of completions is
//! installed.

use super::super::table::{Blank, Flag, Takes, VERBS, Verb};
use super::{flags_of, program_flags, quoted, switches};

/// What the pieces below lean on. bash parts words at `=`, so `--to=DIR` comes as three.
const BEFORE: &str = r#"# What bash needs to complete a command line of daystrand.
# Written by: daystrand completion bash

_daystrand_words() {
    mapfile -t -O "${#COMPREPLY[@]}" COMPREPLY < <(compgen -W "$1" -- "$cur")
}

# The last of several words with commas between.
_daystrand_several() {
    local before=
    [[ $cur == *,* ]] && before=${cur%,*},
    mapfile -t COMPREPLY < <(compgen -P "$before" -W "$1" -- "${cur##*,}")
    compopt -o nospace 2>/dev/null
}

_daystrand_folders() {
    compopt -o filenames 2>/dev/null
    mapfile -t -O "${#COMPREPLY[@]}" COMPREPLY < <(compgen -d -- "$cur")
}

_daystrand_clubs() {
    _daystrand_folders
    mapfile -t -O "${#COMPREPLY[@]}" COMPREPLY < <(compgen -f -X '!*.daystrand' -- "$cur")
}

_daystrand() {
    local cur=${COMP_WORDS[COMP_CWORD]} prev=
    COMPREPLY=()
    ((COMP_CWORD > 0)) && prev=${COMP_WORDS[COMP_CWORD - 1]}
    if [[ $cur == = ]]; then
        cur=
    elif [[ $prev == = ]]; then
        prev=${COMP_WORDS[COMP_CWORD - 2]}
    fi
    if ((COMP_CWORD < 2)); then
"#;

/// The script.
pub fn text() -> String {
    let mut text = BEFORE.to_owned();
    let verbs: Vec<_> = VERBS.iter().map(|v| v.word.to_owned()).collect();
    let first = [verbs, switches(program_flags())].concat().join(" ");
    text += &format!("        _daystrand_words {}\n", quoted(&first));
    text += "        [[ $cur == -* ]] || _daystrand_clubs\n        return\n    fi\n";
    text += "    case ${COMP_WORDS[1]} in\n";
    for verb in &VERBS {
        text += &one(verb);
    }
    text += "    esac\n}\n\ncomplete -F _daystrand daystrand\n";
    text
}

fn one(verb: &Verb) -> String {
    let mut text = format!("    {})\n", verb.word);
    let valued: Vec<_> = verb.flags.iter().filter(|f| f.value.is_some()).collect();
    if !valued.is_empty() {
        text += "        case $prev in\n";
        for flag in valued {
            text += &after(flag);
        }
        text += "        esac\n";
    }
    let switches = switches(flags_of(verb.flags)).join(" ");
    text += "        if [[ $cur == -* ]]; then\n";
    text += &format!("            _daystrand_words {}\n", quoted(&switches));
    if let Some(call) = verb.operand.and_then(call) {
        text += &format!("        else\n            {call}\n");
    }
    text + "        fi\n        ;;\n"
}

/// What stands after an option.
fn after(flag: &Flag) -> String {
    let call = flag.value.and_then(call);
    let call = call.map_or(String::new(), |c| format!("            {c}\n"));
    format!(
        "        --{})\n{call}            return\n            ;;\n",
        flag.name
    )
}

fn call(blank: Blank) -> Option<String> {
    let words = blank.takes.words();
    let words = words.iter().map(|w| w.word).collect::<Vec<_>>().join(" ");
    match blank.takes {
        Takes::Folder => Some("_daystrand_folders".to_owned()),
        Takes::Club => Some("_daystrand_clubs".to_owned()),
        Takes::Text => None,
        Takes::One(_) => Some(format!("_daystrand_words {}", quoted(&words))),
        Takes::Several(_) => Some(format!("_daystrand_several {}", quoted(&words))),
    }
}
