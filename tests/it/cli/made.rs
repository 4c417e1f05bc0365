//! What is made from the table of verbs: help, the manual page, what shells complete; and that the
//! reader of command lines takes what the table says.

use std::process::Command;

use daystrand::cli::table::{Flag, PROGRAM_FLAGS, VERBS};
use daystrand::layout::SheetKind;

use super::*;

/// Every option with its verb; those without a verb last.
fn flags() -> Vec<(&'static str, Flag)> {
    let of_verbs = VERBS
        .iter()
        .flat_map(|v| v.flags.iter().map(|f| (v.word, *f)));
    let all: Vec<_> = of_verbs.chain(PROGRAM_FLAGS.map(|f| ("", f))).collect();
    assert!(all.len() > 20, "the table is not empty");
    all
}

/// The part of a text from a heading to the next line that begins like one.
fn part<'a>(text: &'a str, heading: &str, next: &str) -> &'a str {
    let found = text.find(heading);
    let start = found.unwrap_or_else(|| panic!("no “{heading}”")) + heading.len();
    let rest = &text[start..];
    &rest[..rest.find(next).unwrap_or(rest.len())]
}

/// In a text without blanks on both sides of it, `word` stands alone.
#[track_caller]
fn has_word(text: &str, word: &str, place: &str) {
    let apart = |c: char| !(c.is_alphanumeric() || c == '-');
    assert!(text.split(apart).any(|w| w == word), "{word} in {place}");
}

#[test]
fn every_verb_and_option_is_in_help() {
    let program = run(&["help"]).done();
    for verb in &VERBS {
        has_word(&program, verb.word, "help");
        assert!(program.contains(verb.brief), "{}", verb.word);
    }
    for (verb, flag) in flags() {
        let text = match verb {
            "" => program.clone(),
            verb => run(&["help", verb]).done(),
        };
        has_word(&text, &format!("--{}", flag.name), verb);
        for word in flag.value.map_or(Vec::new(), |v| v.takes.words()) {
            has_word(&text, word.word, &format!("help {verb}"));
        }
    }
}

#[test]
fn every_verb_and_option_is_in_the_manual() {
    let manual = run(&["manual"]).done().replace(r"\-", "-");
    for verb in &VERBS {
        let heading = format!(".SS \"\\fB{}\\fR", verb.word);
        let about = part(&manual, &heading, "\n.S");
        for flag in verb.flags {
            assert!(
                about.contains(&format!(r"\fB--{}\fR", flag.name)),
                "{about}"
            );
            for word in flag.value.map_or(Vec::new(), |v| v.takes.words()) {
                let bold = format!(r"\fB{}\fR", word.word);
                assert!(about.contains(&bold), "{bold} in {about}");
            }
        }
    }
    let options = part(&manual, ".SH \"OPTIONS\"", "\n.SH");
    for flag in PROGRAM_FLAGS {
        assert!(options.contains(&format!(r"\fB--{}\fR", flag.name)));
        assert!(options.contains(&format!(r"\fB-{}\fR", flag.letter.unwrap())));
    }
}

#[test]
fn every_verb_and_option_is_completed_by_each_shell() {
    for (shell, option, letter) in [
        ("bash", "--NAME", "-L"),
        ("zsh", "--NAME", "-L"),
        ("fish", " -l NAME ", " -s L "),
    ] {
        let text = run(&["completion", shell]).done();
        for verb in &VERBS {
            has_word(&text, verb.word, shell);
        }
        for (_, flag) in flags() {
            let name = option.replace("NAME", flag.name);
            assert!(text.contains(&name), "{name} in {shell}");
            let letter = flag.letter.map(|l| letter.replace('L', &l.to_string()));
            assert!(letter.is_none_or(|l| text.contains(&l)));
            for word in flag.value.map_or(Vec::new(), |v| v.takes.words()) {
                has_word(&text, word.word, shell);
            }
        }
    }
}

#[test]
fn every_option_of_the_table_is_taken() {
    for (verb, flag) in flags().into_iter().filter(|(verb, _)| !verb.is_empty()) {
        let name = format!("--{}", flag.name);
        let said = match flag.value {
            Some(_) => run(&[verb, &name]).wrong(),
            None => run(&[verb, &name, "--no-such-option"]).wrong(),
        };
        let wanted = match flag.value {
            Some(_) => format!("missing after {name}."),
            None => "--no-such-option".to_owned(),
        };
        assert!(said.contains(&wanted), "{verb} {name}: {said}");
    }
    // An option of another verb is not taken.
    assert!(
        run(&["check", "--to", "x"])
            .wrong()
            .contains("no option --to")
    );
    assert!(
        run(&["open", "--session", "x"])
            .wrong()
            .contains("--session")
    );
}

#[test]
fn help_names_the_sheets_that_all_leaves_out() {
    let help = run(&["help", "print"]).done().replace("\n", " ");
    let words: Vec<_> = help.split_whitespace().collect();
    let said = words.join(" ");
    let usual = SheetKind::usual();
    let out: Vec<_> = SheetKind::ALL
        .into_iter()
        .filter(|k| !usual.contains(k))
        .collect();
    let out: Vec<_> = out.iter().map(|k| k.word()).collect();
    let (last, first) = out.split_last().unwrap();
    let list = format!("leaves out {} and {last}", first.join(", "));
    assert!(said.contains(&list), "{list} in {said}");
}

/// The page as roff has it: after man(7), and groff's manual for control lines.
#[test]
fn the_manual_is_sound_roff() {
    let manual = run(&["manual"]).done();
    assert!(manual.is_ascii(), "a terminal of any kind shows it");
    let known = [
        "TH", "SH", "SS", "TP", "PP", "IP", "RS", "RE", "br", "nf", "fi",
    ];
    let mut counts = std::collections::BTreeMap::new();
    for line in manual.lines() {
        assert!(!line.is_empty(), "an empty line is a space on the page");
        assert!(!line.starts_with('\''), "{line}");
        if let Some(control) = line.strip_prefix('.') {
            let name = control.split(' ').next().unwrap();
            assert!(known.contains(&name), "{line}");
            *counts.entry(name).or_insert(0) += 1;
        }
        let fonts: Vec<_> = line
            .match_indices(r"\f")
            .map(|(i, _)| &line[i + 2..i + 3])
            .collect();
        for pair in fonts.chunks(2) {
            assert!(matches!(pair, ["B" | "I", "R"]), "{line}");
        }
        for (i, _) in line.match_indices('\\') {
            let after = &line[i + 1..i + 2];
            assert!(["f", "-", "&", "e"].contains(&after), "{line}");
        }
    }
    assert_eq!(counts["RS"], counts["RE"]);
    assert_eq!(counts["nf"], counts["fi"]);
    let sections: Vec<_> = manual
        .lines()
        .filter_map(|l| l.strip_prefix(".SH "))
        .collect();
    let wanted = [
        "NAME",
        "SYNOPSIS",
        "DESCRIPTION",
        "COMMANDS",
        "OPTIONS",
        "FILES",
        "EXIT STATUS",
        "EXAMPLES",
    ];
    assert_eq!(sections, wanted.map(|s| format!("\"{s}\"")));
}

/// A script given to a shell in a file; its answer, or nothing where that shell is not there.
fn told(shell: &str, before: &[&str], after: &str) -> Option<String> {
    let dir = tempfile::tempdir().unwrap();
    let script = dir.path().join("script");
    let text = run(&["completion", shell]).done();
    std::fs::write(&script, format!("{text}\n{after}")).unwrap();
    let done = Command::new(shell).args(before).arg(&script).output();
    let done = match done {
        Err(e) if e.kind() == std::io::ErrorKind::NotFound => return None,
        done => done.unwrap(),
    };
    let err = String::from_utf8_lossy(&done.stderr).into_owned();
    assert!(done.status.success() && err.is_empty(), "{shell}: {err}");
    Some(String::from_utf8(done.stdout).unwrap())
}

#[test]
fn each_shell_can_read_what_is_for_it() {
    for shell in ["bash", "zsh", "fish"] {
        told(shell, &["-n"], "");
    }
}

/// What bash would offer, run as it runs a function for completion.
fn bash_offers(words: &[&str]) -> Option<Vec<String>> {
    let quoted: Vec<_> = words.iter().map(|w| format!("'{w}'")).collect();
    let at = words.len() - 1;
    let after = format!(
        "COMP_WORDS=({}); COMP_CWORD={at}; _daystrand\nprintf '%s\\n' \"${{COMPREPLY[@]}}\"\n",
        quoted.join(" ")
    );
    let said = told("bash", &["--norc"], &after)?;
    Some(
        said.lines()
            .map(str::to_owned)
            .filter(|l| !l.is_empty())
            .collect(),
    )
}

#[test]
fn bash_offers_what_fits() {
    let cases: [(&[&str], &[&str]); 9] = [
        (&["daystrand", "pr"], &["print"]),
        (&["daystrand", "--v"], &["--version"]),
        (&["daystrand", "print", "--s"], &["--session", "--sheet"]),
        (&["daystrand", "print", "--turn", "l"], &["landscape"]),
        (&["daystrand", "print", "--turn", "=", "p"], &["portrait"]),
        (
            &["daystrand", "print", "--ink", "="],
            &["colour", "grey", "outline"],
        ),
        (
            &["daystrand", "print", "--sheet", "tiles,st"],
            &["tiles,story", "tiles,story-page"],
        ),
        (&["daystrand", "print", "--session", ""], &[]),
        (&["daystrand", "completion", ""], &["bash", "zsh", "fish"]),
    ];
    for (words, wanted) in cases {
        if let Some(offered) = bash_offers(words) {
            assert_eq!(offered, wanted, "{words:?}");
        }
    }
}

#[test]
fn bash_offers_club_files_with_blanks_in_their_names() {
    let dir = tempfile::tempdir().unwrap();
    std::fs::write(dir.path().join("my club.daystrand"), "").unwrap();
    std::fs::write(dir.path().join("my list.txt"), "").unwrap();
    std::fs::create_dir(dir.path().join("my folder")).unwrap();
    let start = format!("{}/my", dir.path().to_str().unwrap());
    if let Some(offered) = bash_offers(&["daystrand", "check", &start]) {
        assert_eq!(
            offered,
            [format!("{start} folder"), format!("{start} club.daystrand")]
        );
    }
    if let Some(offered) = bash_offers(&["daystrand", "print", "--to", &start]) {
        assert_eq!(offered, [format!("{start} folder")]);
    }
}
