//! Which words are understood, and what is said to those that are not.

use std::fs;
use std::sync::Arc;

use daystrand::cli::table::VERBS;
use daystrand::cli::{Outcome, Surroundings};
use tempfile::tempdir;

use super::*;

#[test]
fn help_for_the_program_and_each_verb() {
    for words in [&["--help"][..], &["-h"], &["help"]] {
        let text = run(words).done();
        for verb in VERBS.iter().map(|v| v.word).chain(["Exit codes"]) {
            assert!(text.contains(verb), "{verb} in {words:?}");
        }
    }
    for verb in VERBS.iter().map(|v| v.word) {
        let text = run(&[verb, "--help"]).done();
        assert!(
            text.contains(&format!("daystrand {verb}")) || text.contains("[open]"),
            "{text}"
        );
        assert_eq!(text, run(&["help", verb]).done());
        assert!(text.lines().all(|l| l.chars().count() <= 100), "{text}");
    }
    assert_eq!(
        run(&["--version"]).done().trim(),
        format!("daystrand {}", env!("CARGO_PKG_VERSION"))
    );
}

#[test]
fn what_is_not_understood_is_said_with_what_to_do() {
    let cases: [(&[&str], &str, &str); 24] = [
        (&["prnt"], "“prnt”", "open, demo, print"),
        (&["--fast"], "--fast", "--help"),
        (
            &["help", "prnt"],
            "“prnt”",
            "open, demo, print, check, symbols, manual, completion or help",
        ),
        (
            &["open", "a.daystrand", "b.daystrand"],
            "more than one file",
            "daystrand open --help",
        ),
        (&["demo", "a.daystrand"], "no file", "--to DIR"),
        (&["demo", "--to"], "after --to", "--help"),
        (
            &["demo", "--no-window=yes"],
            "--no-window",
            "daystrand demo --help",
        ),
        (&["print"], "No club file", "daystrand print --help"),
        (&["print", "a.daystrand"], "where the sheets go", "--to DIR"),
        (
            &["print", "a.daystrand", "--to", "o", "--sheet", "poster"],
            "“poster”",
            "tiles",
        ),
        (
            &["print", "a.daystrand", "--to", "o", "--paper", "B5"],
            "“B5”",
            "A4, A3, A5 or Letter",
        ),
        (
            &["print", "a.daystrand", "--to", "o", "--turn", "round"],
            "“round”",
            "landscape",
        ),
        (
            &["print", "a.daystrand", "--to", "o", "--ink", "blue"],
            "“blue”",
            "grey or outline",
        ),
        (
            &["print", "a.daystrand", "--to", "o", "--format", "doc"],
            "“doc”",
            "pdf, png, text or html",
        ),
        (
            &["print", "a.daystrand", "--to", "o", "--session", "12 June"],
            "“12 June”",
            "2027-06-12",
        ),
        (
            &["print", "a.daystrand", "--to", "o", "--loud"],
            "--loud",
            "daystrand print --help",
        ),
        (
            &["print", "a.daystrand", "--to", "o", "-x"],
            "-x",
            "daystrand print --help",
        ),
        (&["check"], "No club file", "daystrand check --help"),
        (
            &["check", "a.daystrand", "--session", "2027-13-01"],
            "“2027-13-01”",
            "2027-06-12",
        ),
        (
            &["manual", "print"],
            "after “manual”",
            "daystrand manual --help",
        ),
        (
            &["completion"],
            "which shell",
            "daystrand completion --help",
        ),
        (&["completion", "bash", "fish"], "which shell", "Name one"),
        (&["completion", "tcsh"], "“tcsh”", "bash, zsh or fish"),
        (&["help", "open", "demo"], "more than one verb", "Name one"),
    ];
    for (words, sentence, hint) in cases {
        let line = run(words).wrong();
        assert!(
            line.contains(sentence) && line.contains(hint),
            "{words:?}: {line}"
        );
    }
}

#[test]
fn a_file_that_cannot_be_read_is_named_with_the_reason() {
    let dir = tempdir().unwrap();
    let bad = dir.path().join("list.daystrand");
    fs::write(&bad, "milk, eggs").unwrap();
    let bad = bad.to_str().unwrap();
    for words in [
        &["check", bad][..],
        &["print", bad, "--to", "out"],
        &["open", bad],
        &[bad],
    ] {
        let line = run(words).wrong();
        assert!(
            line.contains("list.daystrand") && line.contains("not a Daystrand club"),
            "{line}"
        );
    }
    let line = run(&["check", "/nowhere/at/all.daystrand"]).wrong();
    assert!(line.contains("all.daystrand"), "{line}");
}

#[test]
fn a_window_is_asked_for_where_there_is_a_display() {
    let dir = tempdir().unwrap();
    let file = demo_file(dir.path());
    let display = Surroundings {
        display: true,
        ..around()
    };
    for words in [&[][..], &["open"], &["open", &file], &[&file]] {
        let run = run_in(&display, words);
        assert_eq!((run.outcome.code, run.err.as_str()), (0, ""));
        let window = run.outcome.window.unwrap();
        assert!(window.needed);
        let path = window
            .workbench
            .view()
            .path
            .map(|p| p.to_str().unwrap().to_owned());
        assert_eq!(
            path,
            words
                .last()
                .filter(|w| **w != "open")
                .map(|w| (*w).to_owned())
        );
    }
    assert!(run(&["open"]).wrong().contains("no display"));
}

#[test]
fn a_bad_file_is_told_in_the_window_too() {
    let dir = tempdir().unwrap();
    let bad = dir.path().join("list.daystrand");
    fs::write(&bad, "milk, eggs").unwrap();
    let display = Surroundings {
        display: true,
        ..around()
    };
    let run = run_in(&display, &[bad.to_str().unwrap()]);
    assert_eq!(run.outcome.code, 2);
    assert!(run.err.contains("list.daystrand"));
    let window = run.outcome.window.unwrap();
    assert!(
        window
            .workbench
            .view()
            .notice
            .unwrap()
            .sentence
            .contains("list.daystrand")
    );
}

#[test]
fn a_window_that_cannot_open_matters_only_where_it_was_the_point() {
    let mut err = Vec::new();
    let why = || Err("no library.".to_owned());
    assert_eq!(Outcome::after_window(0, true, why(), &mut err), 2);
    assert_eq!(Outcome::after_window(0, false, why(), &mut err), 0);
    assert_eq!(Outcome::after_window(2, true, Ok(()), &mut err), 2);
    let said = String::from_utf8(err).unwrap();
    assert_eq!(said.lines().count(), 2);
    assert!(said.starts_with("daystrand: No window could be opened: no library."));
}

#[test]
fn check_ends_with_one_only_if_something_needs_a_look() {
    let dir = tempdir().unwrap();
    let mut club = crate::fixture::calm();
    let file = saved(dir.path(), &club);
    let text = run(&["check", file.to_str().unwrap()]).done();
    assert_eq!(
        text.matches("Nothing was found to look at.").count(),
        3,
        "{text}"
    );
    // The wind of the second session is good to know, and nothing to look at.
    assert!(text.contains("Good to know (conditions.hard)"), "{text}");
    Arc::make_mut(&mut club.sessions[1]).timetable[0].minutes = 60;
    let path = saved(dir.path(), &club);
    let found = run(&["check", path.to_str().unwrap()]);
    assert_eq!((found.outcome.code, found.err.as_str()), (1, ""));
    let overrun = "Stop and look (time.overrun): The timetable ends at 12:18";
    assert!(found.out.contains(overrun), "{}", found.out);
    let other = ["check", path.to_str().unwrap(), "--session", "2027-06-12"];
    assert!(!run(&other).done().contains("overrun"));
    let none = ["check", path.to_str().unwrap(), "--session", "2027-06-13"];
    let line = run(&none).wrong();
    assert!(
        line.contains("2027-06-13") && line.contains("2027-06-19 or 2027-06-26"),
        "{line}"
    );
}

#[test]
fn symbols_are_found_by_word_and_all_are_listed() {
    let found = run(&["symbols", "walk", "water"]).done();
    assert!(
        found.lines().next().unwrap().starts_with("walk_to_water"),
        "{found}"
    );
    let none = run(&["symbols", "xylophone"]).done();
    assert!(none.contains("xylophone"));
    let all = run(&["symbols"]).done();
    let library = daystrand::symbols::library::library();
    assert_eq!(
        all.lines().count(),
        library.all().len() + library.marks().len()
    );
}

#[test]
fn symbols_are_found_with_a_slip_and_in_other_words() {
    let found = run(&["symbols", "suncreen"]).done();
    assert!(found.starts_with("sunscreen"), "{found}");
    let british = run(&["symbols", "swim top on"]).done();
    let australian = run(&["symbols", "rashie", "--words", "en-AU"]).done();
    assert!(british.starts_with("swim_top_on") && british.contains("Swim top on"));
    assert!(australian.starts_with("swim_top_on") && australian.contains("Rashie on"));
    let trouble = run(&["symbols", "--words", "xx"]).wrong();
    assert!(trouble.contains("en-GB, en-AU or en-US"), "{trouble}");
}

#[test]
fn contact_sheets_hold_every_symbol_once() {
    let dir = tempfile::tempdir().unwrap();
    let to = dir.path().join("new").join("sheets");
    let to = to.to_str().unwrap();
    let said = run(&["symbols", "--to", to, "--ink", "grey", "--words", "en-US"]).done();
    let library = daystrand::symbols::library::library();
    let files: Vec<&str> = said.lines().collect();
    assert!(files[0].ends_with("symbols-grey.pdf"), "{said}");
    assert!(files.len() > library.groups().len());
    for file in &files {
        assert!(std::fs::metadata(file).unwrap().len() > 1_000, "{file}");
    }
    let pdf = std::fs::read(files[0]).unwrap();
    let again = run(&["symbols", "--to", to, "--ink", "grey", "--words", "en-US"]).done();
    assert_eq!(again, said);
    assert_eq!(std::fs::read(files[0]).unwrap(), pdf);
}

#[test]
fn contact_sheets_say_what_is_missing() {
    let nowhere = run(&["symbols", "--ink", "grey"]).wrong();
    assert!(
        nowhere.contains("--ink") && nowhere.contains("--to DIR"),
        "{nowhere}"
    );
    let some = run(&["symbols", "water", "--to", "x"]).wrong();
    assert!(some.contains("all symbols"), "{some}");
    let ink = run(&["symbols", "--to", "x", "--ink", "gold"]).wrong();
    assert!(ink.contains("colour, grey, outline or on-dark"), "{ink}");
}
