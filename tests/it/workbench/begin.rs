//! A club from three answers, what is to be done next, and going back several changes at once.

use daystrand::model::edit::Edit;
use daystrand::storage;
use daystrand::workbench::begin::{Beginning, names};
use daystrand::workbench::command::{Command, Place};
use daystrand::workbench::next::{Where, next_thing};
use jiff::civil::date;

use super::*;

fn answers(of: &str) -> Command {
    Command::Begin(Beginning {
        name: "Pebble Cove".into(),
        names: names(of),
        date: date(2027, 6, 12),
    })
}

#[test]
fn three_answers_make_a_club_that_can_be_printed() {
    let mut bench = bench();
    quietly(&mut bench, answers("Ada, Bo;  Ada\nCy, "));
    let view = bench.view();
    let called: Vec<&str> = view
        .club
        .participants
        .iter()
        .map(|p| p.name.as_str())
        .collect();
    assert_eq!(called, ["Ada", "Bo", "Ada", "Cy"]);
    let mut marks: Vec<_> = view.club.participants.iter().map(|p| &p.mark).collect();
    marks.sort();
    marks.dedup();
    assert_eq!(marks.len(), 4, "each has a mark of their own");
    let session = view.session.unwrap();
    assert_eq!(session.date, date(2027, 6, 12));
    let in_water = session
        .timetable
        .iter()
        .filter(|s| view.club.activity(s.activity).is_some_and(|a| a.in_water));
    assert_eq!(in_water.count(), 0, "nobody goes into the water unasked");
    assert_eq!(view.boards.len(), 4);
    assert!(view.modified && view.path.is_none());
    let dir = tempfile::tempdir().unwrap();
    let path = dir.path().join("cove.daystrand");
    quietly(&mut bench, Command::SaveAs(path.clone()));
    assert_eq!(&storage::load(&path).unwrap().club, bench.view().club);
}

#[test]
fn without_any_answer_there_is_still_a_club_to_go_on_with() {
    let mut bench = bench();
    quietly(&mut bench, answers(" , ;\n"));
    let view = bench.view();
    assert!(view.club.participants.is_empty() && view.session.is_some());
    assert_eq!(next_thing(&view, &[]).says, "Add who takes part");
}

#[test]
fn the_next_thing_is_what_must_be_settled_then_what_may_be_looked_at_then_saving() {
    let mut bench = demo();
    let first = next_thing(&bench.view(), &[]);
    let Where::Spot(spot) = first.at else {
        panic!("{first:?}");
    };
    let worst = bench.view().findings.iter().map(|f| f.severity).min();
    let of = |s| bench.view().findings.iter().find(|f| f.spot == s).cloned();
    assert_eq!(of(spot).map(|f| f.severity), worst);
    // Once one was led to everything, the rest of the evening is left.
    let all: Vec<Where> = bench
        .view()
        .findings
        .iter()
        .map(|f| Where::Spot(f.spot))
        .collect();
    assert_eq!(next_thing(&bench.view(), &all).at, Where::Save);
    let dir = tempfile::tempdir().unwrap();
    quietly(&mut bench, Command::SaveAs(dir.path().join("a.daystrand")));
    assert_eq!(
        next_thing(&bench.view(), &all).at,
        Where::Place(Place::Print)
    );
    quietly(&mut bench, Command::Show(Place::Print));
    assert_eq!(next_thing(&bench.view(), &all).at, Where::Write);
    quietly(&mut bench, Command::WriteSheets(dir.path().join("sheets")));
    for _ in 0..2400 {
        bench.poll();
        if bench.view().job.is_none() {
            break;
        }
        std::thread::sleep(std::time::Duration::from_millis(25));
    }
    let told = bench.view().notice.unwrap();
    assert_eq!(told.folder, Some(dir.path().join("sheets")));
    assert!(told.hint.contains("100 %"));
    assert_eq!(next_thing(&bench.view(), &all).at, Where::Together);
    // What is changed afterwards is to be written again.
    edit(&mut bench, Edit::ClubName("Other".into()));
    quietly(&mut bench, Command::Save);
    assert_eq!(next_thing(&bench.view(), &all).at, Where::Write);
}

#[test]
fn several_changes_are_taken_back_and_made_again_at_once() {
    let mut bench = demo();
    let names = ["One", "Two", "Three"];
    for name in names {
        edit(&mut bench, Edit::ClubName(name.into()));
        quietly(&mut bench, Command::DismissNotice);
    }
    let first = demo().view().club.clone();
    assert_eq!(bench.view().history.done().len(), 3);
    quietly(&mut bench, Command::UndoSteps(2));
    assert_eq!(bench.view().club.name, "One");
    assert_eq!(bench.view().history.undone().len(), 2);
    quietly(&mut bench, Command::UndoSteps(9));
    assert_eq!(*bench.view().club, first);
    quietly(&mut bench, Command::RedoSteps(3));
    assert_eq!(bench.view().club.name, "Three");
    assert_eq!(
        bench.view().notice.unwrap().sentence,
        "3 changes done again."
    );
}
