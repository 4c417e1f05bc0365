//! Changes, undo, and what follows from them.

use std::sync::Arc;

use daystrand::model::board::{Board, StepState};
use daystrand::model::edit::{BoardEdit, Edit, TimetableEdit};
use daystrand::model::ids::StepRef;
use daystrand::workbench::command::{Command, Place};

use super::*;

#[test]
fn a_refused_change_is_told_and_changes_nothing() {
    let mut bench = demo();
    let before = (bench.view().club.clone(), bench.view().revision);
    quietly(
        &mut bench,
        Command::Edit(Edit::AddParticipant(participant("  ", "bell"))),
    );
    let notice = bench.view().notice.unwrap();
    assert!(notice.trouble && !notice.hint.is_empty(), "{notice:?}");
    assert_eq!((bench.view().club.clone(), bench.view().revision), before);
    quietly(&mut bench, Command::DismissNotice);
    assert!(bench.view().notice.is_none());
}

#[test]
fn a_board_change_without_a_session_says_what_is_missing() {
    let mut bench = bench();
    let drum = content(&bench, "Drum");
    quietly(
        &mut bench,
        Command::EditBoard(BoardEdit::Insert(drum.clone(), 0)),
    );
    assert!(bench.view().notice.unwrap().sentence.contains("session"));
    edit(&mut bench, Edit::AddSession(details("First", 12)));
    quietly(&mut bench, Command::EditBoard(BoardEdit::Insert(drum, 0)));
    assert!(bench.view().notice.unwrap().sentence.contains("Nobody"));
}

#[test]
fn undo_and_redo_carry_boards_and_findings_along() {
    let mut bench = demo();
    quietly(&mut bench, Command::Show(Place::Boards));
    choose(&mut bench, "kite");
    let session = bench.view().session.unwrap().id;
    let (before, findings) = (words(&bench), bench.view().findings.to_vec());
    let ball = activity_id(&bench, "Ball");
    for _ in 0..5 {
        edit(
            &mut bench,
            Edit::Timetable(session, TimetableEdit::Insert(ball, 3)),
        );
    }
    let after = words(&bench);
    assert_eq!(after.len(), before.len() + 5);
    let overrun = |b: &Workbench| b.view().findings.iter().any(|f| f.code == "time.overrun");
    assert!(overrun(&bench) && !findings.iter().any(|f| f.code == "time.overrun"));
    assert!(bench.view().modified && bench.view().undo.is_some());
    for _ in 0..5 {
        quietly(&mut bench, Command::Undo);
    }
    assert_eq!(words(&bench), before);
    assert_eq!(bench.view().findings, findings);
    assert!(!bench.view().modified, "all is taken back");
    for _ in 0..5 {
        quietly(&mut bench, Command::Redo);
    }
    assert_eq!(words(&bench), after);
    assert!(bench.view().redo.is_none());
    quietly(&mut bench, Command::Redo);
    assert!(!bench.view().notice.unwrap().trouble);
}

#[test]
fn a_timetable_change_keeps_every_hand_change() {
    let mut bench = demo();
    quietly(&mut bench, Command::Show(Place::Boards));
    let session = bench.view().session.unwrap().id;
    let slot = bench.view().session.unwrap().timetable[1].id;
    edit(
        &mut bench,
        Edit::Timetable(session, TimetableEdit::Remove(slot)),
    );
    let pack = activity_id(&bench, "Pack up");
    edit(
        &mut bench,
        Edit::Timetable(session, TimetableEdit::Insert(pack, 0)),
    );
    let view = bench.view();
    let states = |mark: &str| {
        let who = marked(&bench, mark);
        let (_, board) = view.boards.iter().find(|(id, _)| *id == who).unwrap();
        board
            .steps
            .iter()
            .map(|s| s.state.clone())
            .collect::<Vec<_>>()
    };
    assert!(states("leaf").contains(&StepState::Swapped {
        instead_of: "Song".into()
    }));
    assert!(states("feather").contains(&StepState::Own));
    assert!(states("moon").contains(&StepState::NotToday));
}

#[test]
fn boards_that_did_not_change_stay_the_same_thing() {
    let mut bench = demo();
    quietly(&mut bench, Command::Show(Place::Boards));
    let leaf = marked(&bench, "leaf");
    quietly(&mut bench, Command::ChooseParticipant(leaf));
    let before: Vec<(_, Arc<Board>)> = bench.view().boards.to_vec();
    let first = before.iter().find(|(id, _)| *id == leaf).unwrap().1.steps[0].at;
    let relabel = BoardEdit::Relabel(first, "Hello there".into());
    quietly(&mut bench, Command::EditBoard(relabel));
    for ((id, was), (_, is)) in before.iter().zip(bench.view().boards) {
        assert_eq!(Arc::ptr_eq(was, is), *id != leaf);
    }
}

#[test]
fn revisions_never_come_back_with_another_club() {
    let mut bench = demo();
    let mut seen = vec![(bench.view().revision, bench.view().club.clone())];
    edit(&mut bench, Edit::ClubName("Another".into()));
    seen.push((bench.view().revision, bench.view().club.clone()));
    quietly(&mut bench, Command::Undo);
    assert_eq!(bench.view().revision, seen[0].0);
    quietly(&mut bench, Command::New);
    seen.push((bench.view().revision, bench.view().club.clone()));
    edit(&mut bench, Edit::ClubName("A third".into()));
    seen.push((bench.view().revision, bench.view().club.clone()));
    for (i, (revision, _)) in seen.iter().enumerate() {
        assert!(
            seen[..i].iter().all(|(r, _)| r != revision),
            "{revision} came back"
        );
    }
}

#[test]
fn typing_is_one_step_until_something_else_is_done() {
    let mut bench = demo();
    let name = bench.view().club.name.clone();
    for typed in ["R", "Re", "Ree"] {
        edit(&mut bench, Edit::ClubName(typed.into()));
    }
    quietly(&mut bench, Command::Show(Place::People));
    edit(&mut bench, Edit::ClubName("Reed".into()));
    quietly(&mut bench, Command::Undo);
    assert_eq!(bench.view().club.name, "Ree");
    quietly(&mut bench, Command::Undo);
    assert_eq!(bench.view().club.name, name);
}

#[test]
fn the_demo_shows_every_kind_of_hand_change() {
    let bench = demo();
    let view = bench.view();
    let steps: Vec<_> = view.boards.iter().flat_map(|(_, b)| &b.steps).collect();
    assert!(
        steps
            .iter()
            .any(|s| matches!(s.state, StepState::Swapped { .. }))
    );
    assert!(steps.iter().any(|s| s.state == StepState::Own));
    assert!(steps.iter().any(|s| s.state == StepState::NotToday));
    assert!(
        steps
            .iter()
            .any(|s| s.moved && matches!(s.at, StepRef::Slot(_)))
    );
    assert!(steps.iter().any(|s| s.relabelled));
    for session in &view.club.sessions {
        let slots = session.timetable.len();
        assert!((9..=11).contains(&slots), "{slots} slots");
        let clock = daystrand::plan::clock::clock(session, &view.club.rules);
        assert_eq!(clock.overrun(), 0);
    }
}
