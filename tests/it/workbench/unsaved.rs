//! Changes that were not saved are offered after a crash, and gone when they are saved or given up.

use std::path::Path;
use std::time::Duration;

use daystrand::model::edit::Edit;
use daystrand::workbench::Workbench;
use daystrand::workbench::command::{Answer, Command, Effect};

use super::bench;

fn rename(bench: &mut Workbench, name: &str) {
    drop(bench.handle(Command::Edit(Edit::ClubName(name.into()))));
}

/// Keeps the changes and waits until they are on the disk.
fn keep(bench: &mut Workbench, folder: &Path) {
    assert!(bench.view().unkept);
    drop(bench.handle(Command::KeepUnsaved));
    for _ in 0..12_000 {
        bench.poll();
        if kept(folder) > 0 && !bench.view().unkept {
            return;
        }
        std::thread::sleep(Duration::from_millis(5));
    }
    panic!("nothing was kept");
}

fn kept(folder: &Path) -> usize {
    let files = std::fs::read_dir(folder).into_iter().flatten().flatten();
    let clubs = files.filter(|f| f.path().extension().is_some_and(|e| e == "daystrand"));
    clubs.count()
}

#[test]
fn after_a_crash_the_changes_are_offered_and_taken_up() {
    let dir = tempfile::tempdir().unwrap();
    let (folder, file) = (dir.path().join("unsaved"), dir.path().join("A.daystrand"));
    let mut first = bench().with_unsaved(Some(&folder));
    assert!(first.view().question.is_none() && !first.view().unkept);
    drop(first.handle(Command::SaveAs(file.clone())));
    rename(&mut first, "Changed");
    keep(&mut first, &folder);
    // The program ends without saying so.
    drop(first);

    let mut second = bench().with_unsaved(Some(&folder));
    let asked = second.view().question.unwrap().clone();
    assert!(asked.sentence.contains("before “Changed” was saved"));
    // Asked again next time.
    drop(second.handle(Command::Answer(Answer::Stay)));
    rename(&mut second, "Something else");
    drop(second);

    let mut third = bench().with_unsaved(Some(&folder));
    drop(third.handle(Command::Answer(Answer::TakeUp)));
    let view = third.view();
    assert_eq!((view.club.name.as_str(), view.modified), ("Changed", true));
    assert_eq!(view.path, Some(file.as_path()));
    assert_eq!(kept(&folder), 1, "kept until it is saved");
    drop(third.handle(Command::Save));
    assert!(!third.view().modified && third.view().question.is_none());
    assert_eq!(kept(&folder), 0);
    drop(third);
    assert!(
        bench()
            .with_unsaved(Some(&folder))
            .view()
            .question
            .is_none()
    );
}

#[test]
fn who_saved_the_file_meanwhile_is_not_written_over_unasked() {
    let dir = tempfile::tempdir().unwrap();
    let (folder, file) = (dir.path().join("unsaved"), dir.path().join("A.daystrand"));
    let mut first = bench().with_unsaved(Some(&folder));
    drop(first.handle(Command::SaveAs(file.clone())));
    rename(&mut first, "Changed here");
    keep(&mut first, &folder);
    drop(first);
    let mut elsewhere = bench();
    drop(elsewhere.handle(Command::Open(file.clone())));
    rename(&mut elsewhere, "Changed elsewhere");
    drop(elsewhere.handle(Command::Save));
    let mut second = bench().with_unsaved(Some(&folder));
    drop(second.handle(Command::Answer(Answer::TakeUp)));
    drop(second.handle(Command::Save));
    let asked = second.view().question.unwrap();
    assert!(asked.sentence.contains("was saved by another window"));
}

#[test]
fn nothing_stays_of_changes_that_were_given_up() {
    let dir = tempfile::tempdir().unwrap();
    let folder = dir.path().join("unsaved");
    for way in [Command::New, Command::Quit, Command::Undo] {
        let mut first = bench().with_unsaved(Some(&folder));
        rename(&mut first, "Changed");
        keep(&mut first, &folder);
        let effects = first.handle(way.clone());
        assert!(effects.is_empty());
        if way != Command::Undo {
            let effects = first.handle(Command::Answer(Answer::Discard));
            assert_eq!(effects.contains(&Effect::Quit), way == Command::Quit);
        }
        assert_eq!(kept(&folder), 0, "{way:?}");
    }
    // What a crash left is given up just as well.
    let mut first = bench().with_unsaved(Some(&folder));
    rename(&mut first, "Changed");
    keep(&mut first, &folder);
    drop(first);
    let mut second = bench().with_unsaved(Some(&folder));
    drop(second.handle(Command::Answer(Answer::Discard)));
    assert_eq!(kept(&folder), 0);
}
