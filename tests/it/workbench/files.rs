//! Opening, saving, and the questions before something would be lost.

use std::fs;
use std::path::{Path, PathBuf};

use daystrand::model::edit::Edit;
use daystrand::storage;
use daystrand::workbench::Workbench;
use daystrand::workbench::command::{Answer, Command, Effect, Place, Theme};
use tempfile::tempdir;

use super::*;

fn rename(bench: &mut Workbench, name: &str) {
    edit(bench, Edit::ClubName(name.into()));
}

/// The demo club saved in a folder, and the workbench on it.
fn saved(dir: &Path) -> (Workbench, PathBuf) {
    let mut bench = demo();
    let path = dir.join("lagoon.daystrand");
    quietly(&mut bench, Command::SaveAs(path.clone()));
    (bench, path)
}

fn answers(bench: &Workbench) -> Vec<Answer> {
    let question = bench.view().question;
    question.map_or_else(Vec::new, |q| q.answers.iter().map(|(a, _)| *a).collect())
}

#[track_caller]
fn trouble(bench: &Workbench) -> String {
    let notice = bench.view().notice.unwrap();
    assert!(notice.trouble && !notice.hint.is_empty(), "{notice:?}");
    format!("{} {}", notice.sentence, notice.hint)
}

#[test]
fn what_is_saved_opens_the_same() {
    let dir = tempdir().unwrap();
    let (bench, path) = saved(dir.path());
    assert!(!bench.view().modified);
    assert_eq!(bench.view().path, Some(path.as_path()));
    let mut other = super::bench();
    quietly(&mut other, Command::Open(path.clone()));
    assert_eq!(other.view().club, bench.view().club);
    assert!(!other.view().modified && other.view().undo.is_none());
    assert_eq!(other.view().recent, [path]);
    assert!(!other.view().notice.unwrap().trouble);
}

#[test]
fn save_asks_for_a_file_once() {
    let dir = tempdir().unwrap();
    let mut bench = demo();
    let asked = bench.handle(Command::Save);
    let suggested = "reedwater-paddle-and-play.daystrand".to_owned();
    assert_eq!(asked, [Effect::AskSavePath { suggested }]);
    let path = dir.path().join("a.daystrand");
    quietly(&mut bench, Command::SaveAs(path.clone()));
    rename(&mut bench, "Another");
    assert!(bench.view().modified);
    quietly(&mut bench, Command::Save);
    assert!(!bench.view().modified);
    assert_eq!(storage::load(&path).unwrap().club.name, "Another");
}

#[test]
fn undo_to_what_is_saved_is_not_modified() {
    let dir = tempdir().unwrap();
    let (mut bench, _) = saved(dir.path());
    rename(&mut bench, "Another");
    assert!(bench.view().modified);
    quietly(&mut bench, Command::Undo);
    assert!(!bench.view().modified);
}

#[test]
fn nothing_is_asked_while_nothing_is_unsaved() {
    let mut bench = demo();
    quietly(&mut bench, Command::New);
    quietly(&mut bench, Command::Demo);
    assert_eq!(bench.handle(Command::Quit), [Effect::Quit]);
}

#[test]
fn unsaved_changes_are_asked_about_before_each_way_of_losing_them() {
    let dir = tempdir().unwrap();
    let (_, path) = saved(dir.path());
    for command in [
        Command::New,
        Command::Demo,
        Command::Open(path),
        Command::Quit,
    ] {
        let mut bench = demo();
        rename(&mut bench, "Changed");
        quietly(&mut bench, command.clone());
        assert_eq!(
            answers(&bench),
            [Answer::Save, Answer::Discard, Answer::Stay],
            "{command:?}"
        );
        assert!(
            bench
                .view()
                .question
                .unwrap()
                .sentence
                .contains("“Changed”")
        );
        quietly(&mut bench, Command::Answer(Answer::Stay));
        assert_eq!(
            (bench.view().club.name.as_str(), bench.view().question),
            ("Changed", None)
        );
        assert!(bench.view().modified && bench.view().undo.is_some());
    }
}

#[test]
fn while_a_question_stands_nothing_else_goes_on() {
    let mut bench = demo();
    rename(&mut bench, "Changed");
    quietly(&mut bench, Command::Quit);
    let club = bench.view().club.clone();
    quietly(&mut bench, Command::Undo);
    quietly(
        &mut bench,
        Command::Edit(Edit::ClubName("Behind it".into())),
    );
    quietly(&mut bench, Command::New);
    quietly(&mut bench, Command::Quit);
    quietly(&mut bench, Command::Show(Place::Print));
    assert_eq!(*bench.view().club, club);
    assert_ne!(bench.view().place, Place::Print);
    assert_eq!(
        bench.handle(Command::Answer(Answer::Discard)),
        [Effect::Quit]
    );
    quietly(&mut bench, Command::Answer(Answer::Discard));
}

#[test]
fn save_then_go_on_asks_for_a_file_if_there_is_none() {
    let dir = tempdir().unwrap();
    let path = dir.path().join("kept.daystrand");
    let mut bench = demo();
    rename(&mut bench, "Kept");
    quietly(&mut bench, Command::Quit);
    let asked = bench.handle(Command::Answer(Answer::Save));
    assert!(matches!(asked.as_slice(), [Effect::AskSavePath { .. }]));
    assert_eq!(bench.handle(Command::SaveAs(path.clone())), [Effect::Quit]);
    assert_eq!(storage::load(&path).unwrap().club.name, "Kept");
}

#[test]
fn quitting_is_forgotten_when_no_file_was_chosen() {
    let dir = tempdir().unwrap();
    let mut bench = demo();
    rename(&mut bench, "Kept");
    quietly(&mut bench, Command::Quit);
    assert_eq!(bench.handle(Command::Answer(Answer::Save)).len(), 1);
    // The dialog was closed. Later the person saves; that must not close the window.
    assert_eq!(bench.handle(Command::Save).len(), 1);
    quietly(&mut bench, Command::SaveAs(dir.path().join("a.daystrand")));
    assert!(!bench.view().modified);
}

#[test]
fn when_saving_first_fails_nothing_goes_on() {
    let dir = tempdir().unwrap();
    let (mut bench, path) = saved(dir.path());
    rename(&mut bench, "Changed");
    fs::remove_file(&path).unwrap();
    fs::create_dir(&path).unwrap();
    quietly(&mut bench, Command::New);
    quietly(&mut bench, Command::Answer(Answer::Save));
    assert!(trouble(&bench).contains("folder"));
    assert_eq!(bench.view().club.name, "Changed");
    assert!(bench.view().modified);
}

#[test]
fn bad_files_are_named_with_the_reason_and_change_nothing() {
    let dir = tempdir().unwrap();
    let whole = {
        let (_, path) = saved(dir.path());
        fs::read(path).unwrap()
    };
    let cases: [(&str, &[u8], &str); 5] = [
        ("empty.daystrand", b"", "empty"),
        ("cut.daystrand", &whole[..whole.len() / 2], "cut off"),
        (
            "picture.daystrand",
            b"\x89PNG\r\n\x1a\n",
            "not a Daystrand club",
        ),
        (
            "words.daystrand",
            b"a shopping list",
            "not a Daystrand club",
        ),
        (
            "newer.daystrand",
            br#"{"format":"daystrand-club","version":99}"#,
            "newer.daystrand",
        ),
    ];
    for (name, content, reason) in cases {
        let path = dir.path().join(name);
        fs::write(&path, content).unwrap();
        let mut bench = demo();
        rename(&mut bench, "Mine");
        let before = bench.view().club.clone();
        quietly(&mut bench, Command::Open(path));
        let said = trouble(&bench);
        assert!(
            said.contains(name) && said.contains(reason),
            "{name}: {said}"
        );
        assert_eq!((bench.view().question, bench.view().club), (None, &before));
        assert!(bench.view().modified && bench.view().path.is_none());
        assert!(bench.view().recent.is_empty());
    }
    let mut bench = demo();
    quietly(
        &mut bench,
        Command::Open(dir.path().join("nowhere.daystrand")),
    );
    assert!(trouble(&bench).contains("nowhere.daystrand"));
    quietly(&mut bench, Command::Open(dir.path().to_path_buf()));
    assert!(trouble(&bench).contains("folder"));
}

#[test]
fn a_missing_folder_loses_nothing() {
    let dir = tempdir().unwrap();
    let mut bench = demo();
    rename(&mut bench, "Mine");
    quietly(
        &mut bench,
        Command::SaveAs(dir.path().join("gone").join("a.daystrand")),
    );
    assert!(trouble(&bench).contains("not there"));
    assert!(bench.view().modified && bench.view().path.is_none());
    quietly(&mut bench, Command::SaveAs(dir.path().join("b.daystrand")));
    assert!(!bench.view().modified);
}

#[test]
fn a_read_only_file_loses_nothing() {
    let dir = tempdir().unwrap();
    let (mut bench, path) = saved(dir.path());
    let before = fs::read(&path).unwrap();
    let mut rights = fs::metadata(&path).unwrap().permissions();
    rights.set_readonly(true);
    fs::set_permissions(&path, rights).unwrap();
    rename(&mut bench, "Changed");
    quietly(&mut bench, Command::Save);
    assert!(trouble(&bench).contains("read-only"));
    assert!(bench.view().modified);
    assert_eq!(fs::read(&path).unwrap(), before);
}

#[test]
fn a_file_saved_elsewhere_meanwhile_is_asked_about() {
    let dir = tempdir().unwrap();
    let (mut mine, path) = saved(dir.path());
    let mut theirs = bench();
    quietly(&mut theirs, Command::Open(path.clone()));
    rename(&mut theirs, "Theirs");
    quietly(&mut theirs, Command::Save);
    rename(&mut mine, "Mine");
    quietly(&mut mine, Command::Save);
    assert_eq!(answers(&mine).len(), 3);
    assert_eq!(storage::load(&path).unwrap().club.name, "Theirs");
    quietly(&mut mine, Command::Answer(Answer::Stay));
    assert!(mine.view().modified);
    // Under another name.
    quietly(&mut mine, Command::Save);
    let asked = mine.handle(Command::Answer(Answer::Discard));
    assert!(matches!(asked.as_slice(), [Effect::AskSavePath { .. }]));
    // Or over it: theirs becomes an earlier copy.
    quietly(&mut mine, Command::Save);
    quietly(&mut mine, Command::Answer(Answer::Save));
    assert_eq!(storage::load(&path).unwrap().club.name, "Mine");
    let copies = storage::earlier_copies(&path);
    let kept: Vec<_> = fs::read_dir(copies)
        .unwrap()
        .map(|e| storage::load(&e.unwrap().path()).unwrap().club.name)
        .collect();
    assert!(kept.contains(&"Theirs".to_owned()), "{kept:?}");
}

#[test]
fn the_ending_is_added_and_replaces_nothing_unasked() {
    let dir = tempdir().unwrap();
    let mut bench = demo();
    quietly(&mut bench, Command::SaveAs(dir.path().join("club")));
    assert_eq!(
        bench.view().path.unwrap(),
        dir.path().join("club.daystrand")
    );
    let mut other = demo();
    rename(&mut other, "Other");
    quietly(&mut other, Command::SaveAs(dir.path().join("club")));
    assert!(trouble(&other).contains("club.daystrand"));
    let there = storage::load(&dir.path().join("club.daystrand")).unwrap();
    assert_eq!(there.club, *bench.view().club);
}

#[test]
fn recent_files_colours_and_zoom_are_remembered() {
    let dir = tempdir().unwrap();
    let preferences = dir.path().join("config").join("preferences.json");
    let remembering = || Workbench::new(TODAY).with_preferences(Some(preferences.clone()));
    let paths = ["a.daystrand", "b.daystrand"].map(|n| dir.path().join(n));
    let mut bench = remembering();
    for path in &paths {
        quietly(&mut bench, Command::SaveAs(path.clone()));
    }
    quietly(&mut bench, Command::SetTheme(Theme::Dark));
    quietly(&mut bench, Command::SetZoom(1000));
    let again = remembering();
    assert_eq!(again.view().recent, [paths[1].clone(), paths[0].clone()]);
    assert_eq!(
        (again.view().theme, again.view().zoom_percent),
        (Theme::Dark, 300)
    );
    let first = Workbench::new(TODAY);
    assert_eq!(
        (first.view().theme, first.view().zoom_percent),
        (Theme::System, 100)
    );
    fs::write(&preferences, "no json").unwrap();
    assert!(remembering().view().recent.is_empty());
}
