//! Sheets written in the background: all of them, some of them, none of them.

use std::collections::BTreeSet;
use std::fs;
use std::path::Path;
use std::time::{Duration, Instant};

use daystrand::layout::SheetKind;
use daystrand::model::club::Paper;
use daystrand::model::edit::Edit;
use daystrand::workbench::Workbench;
use daystrand::workbench::command::{Command, Effect, Format, Place, PrintChoice};
use tempfile::tempdir;

use super::*;

/// Waits for the job; fails if it takes unreasonably long.
#[track_caller]
fn wait(bench: &mut Workbench) {
    let began = Instant::now();
    while bench.view().job.is_some() {
        bench.poll();
        assert!(
            began.elapsed() < Duration::from_secs(60),
            "the job does not end"
        );
        std::thread::sleep(Duration::from_millis(2));
    }
}

fn names(dir: &Path) -> BTreeSet<String> {
    let entries = fs::read_dir(dir).unwrap();
    entries
        .map(|e| e.unwrap().file_name().into_string().unwrap())
        .collect()
}

fn choose_print(bench: &mut Workbench, change: impl FnOnce(&mut PrintChoice)) {
    let mut print = bench.view().print.clone();
    change(&mut print);
    quietly(bench, Command::SetPrint(print));
}

#[test]
fn everything_for_everyone_is_written_under_marks_and_dates() {
    let dir = tempdir().unwrap();
    let mut bench = demo();
    quietly(&mut bench, Command::Show(Place::Print));
    assert_eq!(bench.handle(Command::AskPrintFolder), [Effect::AskFolder]);
    let folder = dir.path().join("out");
    quietly(&mut bench, Command::WriteSheets(folder.clone()));
    assert!(bench.view().job.is_some());
    wait(&mut bench);
    let notice = bench.view().notice.unwrap();
    assert!(!notice.trouble, "{notice:?}");
    let names = names(&folder);
    // Four kinds for each of eight, and thirteen for all of them.
    assert_eq!(names.len(), 45, "{names:?}");
    assert!(notice.sentence.contains("45 files"), "{notice:?}");
    for name in &names {
        let lower = name.to_lowercase();
        for p in &bench.view().club.participants {
            let part = |w: &str| w == p.name.to_lowercase();
            assert!(
                !lower.split(|c: char| !c.is_alphanumeric()).any(part),
                "{name} has a name"
            );
        }
    }
    for sheet in bench.view().sheets {
        assert!(
            names.contains(&format!("{}.pdf", sheet.file_stem)),
            "{}",
            sheet.file_stem
        );
    }
    assert_eq!(bench.view().last_folder, Some(folder.as_path()));
}

#[test]
fn writing_again_gives_the_same_files_byte_for_byte() {
    let dir = tempdir().unwrap();
    let mut bench = demo();
    choose_print(&mut bench, |p| {
        p.kinds = vec![SheetKind::Tiles, SheetKind::Story]
    });
    let mut runs = Vec::new();
    for folder in ["one", "two", "one"] {
        let folder = dir.path().join(folder);
        quietly(&mut bench, Command::WriteSheets(folder.clone()));
        wait(&mut bench);
        let read = |n: &String| (n.clone(), fs::read(folder.join(n)).unwrap());
        runs.push(names(&folder).iter().map(read).collect::<Vec<_>>());
    }
    assert_eq!(runs[0].len(), 9);
    assert!(runs[0] == runs[1] && runs[1] == runs[2]);
}

#[test]
fn each_kind_of_file_is_what_it_says() {
    let dir = tempdir().unwrap();
    let mut bench = demo();
    let leaf = marked(&bench, "leaf");
    choose_print(&mut bench, |p| {
        p.participants = Some(vec![leaf]);
        p.kinds = vec![SheetKind::Story, SheetKind::Cards];
        p.formats = vec![Format::Html, Format::Text, Format::Pdf, Format::Pdf];
    });
    quietly(&mut bench, Command::WriteSheets(dir.path().to_path_buf()));
    wait(&mut bench);
    choose_print(&mut bench, |p| {
        p.kinds = vec![SheetKind::Cards];
        p.formats = vec![Format::Png];
        p.paper = Paper::A5;
    });
    quietly(&mut bench, Command::Show(Place::Print));
    let pages = bench.view().sheets[0].pages.len();
    quietly(&mut bench, Command::WriteSheets(dir.path().to_path_buf()));
    wait(&mut bench);
    let names = names(dir.path());
    let of = |ending: &str| {
        names
            .iter()
            .filter(|n| n.ends_with(ending))
            .collect::<Vec<_>>()
    };
    assert_eq!(
        (of(".pdf").len(), of(".txt").len(), of(".png").len()),
        (2, 1, pages)
    );
    let read = |n: &str| fs::read(dir.path().join(n)).unwrap();
    assert!(read(of(".pdf")[0]).starts_with(b"%PDF-"));
    assert!(read(of(".png")[0]).starts_with(b"\x89PNG\r\n\x1a\n"));
    let story = String::from_utf8(read(of(".txt")[0])).unwrap();
    assert!(story.contains("Drum") && story.contains("Noor"), "{story}");
    assert_eq!(of(".html").len(), 1, "of the story, not of cards");
    let page = String::from_utf8(read(of(".html")[0])).unwrap();
    assert!(page.starts_with("<!DOCTYPE html>") && page.contains("Drum"));
}

#[test]
fn a_stopped_job_keeps_what_is_written_and_says_how_much() {
    let dir = tempdir().unwrap();
    let mut bench = demo();
    choose_print(&mut bench, |p| p.formats = vec![Format::Png]);
    quietly(&mut bench, Command::WriteSheets(dir.path().to_path_buf()));
    let began = Instant::now();
    while bench.view().job.is_some_and(|j| j.done < 1) {
        bench.poll();
        assert!(began.elapsed() < Duration::from_secs(60));
        std::thread::sleep(Duration::from_millis(1));
    }
    let job = bench.view().job.unwrap();
    assert!(job.total > 41 && job.doing.ends_with(".png"), "{job:?}");
    quietly(&mut bench, Command::CancelJob);
    wait(&mut bench);
    let notice = bench.view().notice.unwrap().clone();
    assert!(notice.sentence.contains("stopped"), "{notice:?}");
    let written = names(dir.path());
    assert!(
        !written.is_empty() && written.iter().all(|n| n.ends_with(".png")),
        "{written:?}"
    );
    let said = notice
        .sentence
        .split_whitespace()
        .find_map(|w| w.parse::<usize>().ok());
    assert_eq!(said, Some(written.len()), "{notice:?}");
}

#[test]
fn a_folder_that_cannot_be_is_told() {
    let dir = tempdir().unwrap();
    let file = dir.path().join("taken");
    fs::write(&file, "mine").unwrap();
    let mut bench = demo();
    for folder in [file.clone(), file.join("below")] {
        quietly(&mut bench, Command::WriteSheets(folder));
        wait(&mut bench);
        let notice = bench.view().notice.unwrap();
        assert!(notice.trouble && !notice.hint.is_empty(), "{notice:?}");
    }
    assert_eq!(fs::read(&file).unwrap(), b"mine");
}

#[test]
fn nothing_to_print_is_told_before_a_folder_is_asked_for() {
    let mut bench = bench();
    quietly(&mut bench, Command::AskPrintFolder);
    assert!(bench.view().notice.unwrap().sentence.contains("no session"));
    quietly(&mut bench, Command::Demo);
    choose_print(&mut bench, |p| p.kinds.clear());
    quietly(&mut bench, Command::AskPrintFolder);
    assert!(bench.view().notice.unwrap().sentence.contains("No sheet"));
    choose_print(&mut bench, |p| {
        p.kinds = vec![SheetKind::Tiles];
        p.formats.clear();
    });
    quietly(&mut bench, Command::AskPrintFolder);
    assert!(
        bench
            .view()
            .notice
            .unwrap()
            .sentence
            .contains("kind of file")
    );
    choose_print(&mut bench, |p| {
        p.formats = vec![Format::Pdf];
        p.participants = Some(Vec::new());
    });
    quietly(&mut bench, Command::WriteSheets("nowhere".into()));
    assert!(bench.view().notice.unwrap().sentence.contains("Nobody"));
    assert!(bench.view().job.is_none());
}

#[test]
fn one_job_at_a_time_and_work_goes_on_meanwhile() {
    let dir = tempdir().unwrap();
    let mut bench = demo();
    quietly(&mut bench, Command::WriteSheets(dir.path().join("one")));
    quietly(&mut bench, Command::WriteSheets(dir.path().join("two")));
    assert!(bench.view().notice.unwrap().trouble);
    edit(&mut bench, Edit::ClubName("Changed meanwhile".into()));
    wait(&mut bench);
    assert_eq!(names(&dir.path().join("one")).len(), 45);
    assert!(!dir.path().join("two").exists());
    assert_eq!(bench.view().club.name, "Changed meanwhile");
}

#[test]
fn sheets_are_there_at_print_only_and_follow_every_change() {
    let mut bench = demo();
    assert!(bench.view().sheets.is_empty());
    quietly(&mut bench, Command::Show(Place::Print));
    let stems = |b: &Workbench| -> Vec<String> {
        b.view()
            .sheets
            .iter()
            .map(|s| s.file_stem.clone())
            .collect()
    };
    let all = stems(&bench);
    assert_eq!(all.len(), 45);
    assert_eq!(all.iter().collect::<BTreeSet<_>>().len(), 45);
    let fish = marked(&bench, "fish");
    let session = bench.view().session.unwrap().id;
    edit(&mut bench, Edit::Attend(session, fish, false));
    assert_eq!(stems(&bench).len(), 41);
    choose_print(&mut bench, |p| p.participants = Some(vec![fish]));
    assert_eq!(stems(&bench).len(), 6, "who does not come gets no sheet");
    edit(&mut bench, Edit::RemoveParticipant(fish));
    assert_eq!(bench.view().print.participants, Some(vec![]));
    quietly(&mut bench, Command::Show(Place::Boards));
    assert!(bench.view().sheets.is_empty());
}

#[test]
fn all_in_one_file_but_never_for_other_readers() {
    let dir = tempdir().unwrap();
    let mut bench = demo();
    choose_print(&mut bench, |p| p.one_file = true);
    quietly(&mut bench, Command::Show(Place::Print));
    let pages: usize = bench.view().sheets.iter().map(|s| s.pages.len()).sum();
    quietly(&mut bench, Command::WriteSheets(dir.path().to_path_buf()));
    wait(&mut bench);
    assert_eq!(
        names(dir.path()).into_iter().collect::<Vec<_>>(),
        [
            "2027-06-12-all-sheets.pdf",
            "2027-06-12-for-helpers.pdf",
            "2027-06-12-for-the-coordinator.pdf"
        ]
    );
    let count = |name: &str| {
        let bytes = fs::read(dir.path().join(name)).unwrap();
        lopdf::Document::load_mem(&bytes).unwrap().get_pages().len()
    };
    let written: usize = names(dir.path()).iter().map(|n| count(n)).sum();
    assert_eq!(written, pages);
}
