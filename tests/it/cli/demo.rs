//! `demo`: everything in one folder, the same every time.

use std::fs;

use tempfile::tempdir;

use super::*;

#[test]
fn the_demo_is_written_whole_and_the_same_each_time() {
    let dir = tempdir().unwrap();
    let to = dir.path().join("demo");
    let words = ["demo", "--to", to.to_str().unwrap(), "--no-window"];
    let said = run(&words).done();
    assert_eq!(
        names(&to),
        [
            "2027-06-12",
            "2027-06-19",
            "2027-06-26",
            "reedwater.daystrand"
        ]
    );
    let club = storage::load(&to.join("reedwater.daystrand")).unwrap();
    assert!(club.notes.is_empty());
    assert_eq!(club.club, daystrand::workbench::demo::club());
    for (folder, people) in [("2027-06-12", 8), ("2027-06-19", 7)] {
        let files = names(&to.join(folder));
        assert_eq!(files.len(), 8 * people + 14, "{files:?}");
    }
    let row = said
        .lines()
        .find(|l| l.contains("Large-print board"))
        .unwrap();
    assert_eq!(row.split_whitespace().nth(2), Some("8"), "{row}");
    let story = to.join("2027-06-12").join("2027-06-12-leaf-story.txt");
    let before = fs::read(&story).unwrap();
    assert_eq!(run(&words).done(), said);
    assert_eq!(fs::read(&story).unwrap(), before);
}

#[test]
fn without_a_display_it_says_so_and_is_done() {
    let dir = tempdir().unwrap();
    let to = dir.path().to_str().unwrap();
    let without = run(&["demo", "--to", to]);
    assert!(without.outcome.window.is_none());
    assert!(without.done().contains("no display"));
    let display = Surroundings {
        display: true,
        ..around()
    };
    let with = run_in(&display, &["demo", "--to", to]);
    assert_eq!(with.outcome.code, 0);
    let window = with.outcome.window.unwrap();
    assert!(!window.needed);
    assert!(
        window
            .workbench
            .view()
            .path
            .unwrap()
            .ends_with("reedwater.daystrand")
    );
}
