//! Undo gives back what was, redo what was undone; typing is one step.

use std::sync::Arc;

use daystrand::model::club::Club;
use daystrand::model::edit::{BoardEdit, Edit, TimetableEdit, apply};
use daystrand::model::history::{History, UNDO_STEPS};
use daystrand::model::ids::{OwnId, StepRef};
use proptest::prelude::*;

use super::random::{self, seeds};

proptest! {
    #![proptest_config(crate::chance::cases(150))]

    #[test]
    fn undo_and_redo_walk_the_same_path(seeds in seeds(50)) {
        let mut history = History::new(random::start());
        let mut path: Vec<(u64, Arc<Club>)> = vec![(history.revision(), Arc::clone(history.club()))];
        for seed in &seeds {
            let edit = random::edit(history.club(), seed);
            let before = Arc::clone(history.club());
            if history.apply(&edit).is_ok() && *before != **history.club() {
                history.end_typing();
                prop_assert!(history.is_modified());
                path.push((history.revision(), Arc::clone(history.club())));
            } else {
                prop_assert!(Arc::ptr_eq(&before, history.club()));
            }
        }
        for step in path.iter().rev().skip(1) {
            let label = history.undo_label().map(str::to_owned);
            prop_assert_eq!(history.undo(), label);
            prop_assert_eq!(history.revision(), step.0);
            prop_assert!(Arc::ptr_eq(history.club(), &step.1));
        }
        prop_assert_eq!(history.undo(), None);
        prop_assert!(!history.is_modified());
        for step in path.iter().skip(1) {
            let label = history.redo_label().map(str::to_owned);
            prop_assert_eq!(history.redo(), label);
            prop_assert_eq!(history.revision(), step.0);
            prop_assert!(Arc::ptr_eq(history.club(), &step.1));
        }
        prop_assert_eq!(history.redo(), None);
    }
}

fn type_label(history: &mut History, at: usize, label: &str) {
    let mut activity = history.club().activities[at].as_ref().clone();
    activity.label = label.into();
    history.apply(&Edit::ChangeActivity(activity)).unwrap();
}

#[test]
fn typing_in_one_field_is_one_step() {
    let mut history = History::new(random::start());
    for label in ["Ring", "Ring t", "Ring ti", "Ring time"] {
        type_label(&mut history, 0, label);
    }
    type_label(&mut history, 1, "Choir");
    assert_eq!(history.undo().as_deref(), Some("Change Song"));
    assert_eq!(history.club().activities[0].label, "Ring time");
    assert_eq!(history.undo().as_deref(), Some("Change Circle"));
    assert_eq!(history.club().activities[0].label, "Circle");
    assert_eq!(history.undo(), None);
    assert!(!history.is_modified());
}

#[test]
fn another_field_or_another_visit_is_another_step() {
    let mut history = History::new(random::start());
    type_label(&mut history, 0, "Ring");
    let mut activity = history.club().activities[0].as_ref().clone();
    activity.minutes = 20;
    history.apply(&Edit::ChangeActivity(activity)).unwrap();
    history.undo();
    assert_eq!(history.club().activities[0].label, "Ring");
    history.redo();
    type_label(&mut history, 0, "Ring A");
    history.end_typing();
    type_label(&mut history, 0, "Ring B");
    history.undo();
    assert_eq!(history.club().activities[0].label, "Ring A");
    // A choice never merges, even when it is made twice.
    let session = history.club().sessions[0].id;
    let first = history.club().sessions[0].timetable[0].id;
    for to in [1, 2] {
        let edit = Edit::Timetable(session, TimetableEdit::Move(first, to));
        history.apply(&edit).unwrap();
    }
    assert_eq!(history.undo().as_deref(), Some("Move Ring A"));
    assert_eq!(history.club().sessions[0].timetable[1].id, first);
}

#[test]
fn typing_back_to_the_start_leaves_nothing() {
    let mut history = History::new(random::start());
    for label in ["Circl", "Circ", "Circl", "Circle"] {
        type_label(&mut history, 0, label);
    }
    assert_eq!(history.undo_label(), None);
    assert!(!history.is_modified());
    type_label(&mut history, 0, "Ring");
    assert_eq!(history.undo_label(), Some("Change Circle"));
}

#[test]
fn a_save_in_the_middle_of_typing_can_be_reached_again() {
    let mut history = History::new(random::start());
    type_label(&mut history, 0, "Ring");
    let saving = history.revision();
    type_label(&mut history, 0, "Ring time");
    history.mark_saved(saving);
    assert!(
        history.is_modified(),
        "the file holds what was typed before"
    );
    history.mark_saved(history.revision());
    type_label(&mut history, 0, "Ring time!");
    assert!(history.is_modified());
    history.undo();
    assert!(!history.is_modified());
}

#[test]
fn only_so_many_steps_are_kept() {
    let mut history = History::new(random::start());
    let session = history.club().sessions[0].id;
    let first = history.club().sessions[0].timetable[0].id;
    for i in 0..UNDO_STEPS + 50 {
        let edit = Edit::Timetable(session, TimetableEdit::Move(first, (i + 1) % 2));
        history.apply(&edit).unwrap();
    }
    let mut undone = 0;
    while history.undo().is_some() {
        undone += 1;
    }
    assert_eq!(undone, UNDO_STEPS);
    assert!(
        history.is_modified(),
        "the opened state is no longer within reach"
    );
}

#[test]
fn labels_say_what_was_done_to_what() {
    let club = random::start();
    let (s, p) = (club.sessions[0].id, club.participants[0].id);
    let circle = club.sessions[0].timetable[0].id;
    let step = StepRef::Slot(circle);
    for (edit, label) in [
        (
            Edit::Timetable(s, TimetableEdit::Move(circle, 2)),
            "Move Circle",
        ),
        (
            Edit::Board(s, p, BoardEdit::Move(vec![step], 2)),
            "Move Circle for Noor",
        ),
        (
            Edit::Board(s, p, BoardEdit::TakeOff(step)),
            "Circle not today for Noor",
        ),
        (Edit::Attend(s, p, false), "Noor does not come"),
        (Edit::RemoveSession(s), "Remove Morning"),
    ] {
        assert_eq!(edit.label(&club), label);
        apply(&club, &edit).unwrap();
    }
}

#[test]
fn several_edits_are_one_step_or_none() {
    let mut history = History::new(random::start());
    let s = history.club().sessions[0].id;
    let p = history.club().participants[0].id;
    let rows = &history.club().sessions[0].timetable;
    let steps: Vec<StepRef> = rows.iter().map(|s| StepRef::Slot(s.id)).collect();
    let mut edits: Vec<BoardEdit> = steps.iter().map(|s| BoardEdit::TakeOff(*s)).collect();
    let all = |edits: &[BoardEdit]| Edit::Board(s, p, BoardEdit::All(edits.to_vec()));
    let before = Arc::clone(history.club());
    history.apply(&all(&edits)).unwrap();
    let hand = history.club().sessions[0].hand_of(p).unwrap();
    assert_eq!(hand.not_today.len(), steps.len());
    history.undo().unwrap();
    assert_eq!(before, *history.club());
    edits.push(BoardEdit::TakeOff(StepRef::Own(OwnId(9999))));
    history.apply(&all(&edits)).unwrap_err();
    assert!(Arc::ptr_eq(&before, history.club()));
}
