//! A table of participants written and taken in by the running program.

use std::fs;

use daystrand::workbench::command::{Command, Effect};
use tempfile::tempdir;

use super::*;

#[test]
fn a_table_goes_out_is_filled_in_and_comes_back_as_one_change() {
    let dir = tempdir().unwrap();
    let mut bench = demo();
    let asked = bench.handle(Command::AskTable(false));
    let suggested = "participants.csv".to_owned();
    let wanted = Effect::AskTablePath {
        suggested,
        for_helpers: false,
    };
    assert_eq!(asked, [wanted]);
    let path = dir.path().join("people.csv");
    quietly(
        &mut bench,
        Command::WriteTable(dir.path().join("people"), false),
    );
    let text = fs::read_to_string(&path).unwrap();
    let before = bench.club().clone();
    fs::write(&path, format!("{text}Quill,,60\r\nSedge,,wide\r\n")).unwrap();
    assert_eq!(bench.handle(Command::AskTakeIn), [Effect::AskTable]);
    assert!(bench.handle(Command::TakeIn(path)).is_empty());
    let said = bench.view().notice.unwrap().clone();
    assert!(said.trouble && said.sentence.contains("1 new"), "{said:?}");
    assert!(said.sentence.contains("One row was left out"), "{said:?}");
    let taken = bench.view().taken_in.unwrap().clone();
    let lines = before.participants.len() as u64 + 3;
    assert_eq!(taken.skipped[0].line, lines);
    assert_eq!(
        bench.club().participants.len(),
        before.participants.len() + 1
    );
    quietly(&mut bench, Command::Undo);
    assert_eq!(*bench.club().participants, *before.participants);
}

#[test]
fn a_table_with_nothing_new_is_no_change() {
    let dir = tempdir().unwrap();
    let path = dir.path().join("people.csv");
    let mut bench = demo();
    quietly(&mut bench, Command::WriteTable(path.clone(), true));
    quietly(&mut bench, Command::TakeIn(path));
    assert!(!bench.view().notice.unwrap().trouble);
    assert!(bench.view().undo.is_none());
}

#[test]
fn a_name_that_was_made_whole_is_not_written_over() {
    let dir = tempdir().unwrap();
    fs::write(dir.path().join("people.csv"), "mine").unwrap();
    let mut bench = demo();
    quietly(
        &mut bench,
        Command::WriteTable(dir.path().join("people"), false),
    );
    assert!(bench.view().notice.unwrap().trouble);
    assert_eq!(
        fs::read_to_string(dir.path().join("people.csv")).unwrap(),
        "mine"
    );
}

#[test]
fn what_cannot_be_read_or_written_is_told() {
    let dir = tempdir().unwrap();
    let mut bench = demo();
    for command in [
        Command::TakeIn(dir.path().join("gone.csv")),
        Command::TakeIn(dir.path().to_path_buf()),
        Command::WriteTable(dir.path().join("gone/people.csv"), false),
    ] {
        quietly(&mut bench, command);
        let notice = bench.view().notice.unwrap();
        assert!(notice.trouble && !notice.hint.is_empty(), "{notice:?}");
    }
    assert!(bench.view().undo.is_none());
}
