//! Stations held in a turn: kept when turns are worked out again, and said when they cannot be.

use daystrand::model::edit::{Edit, TimetableEdit, TurnsEdit};
use daystrand::model::ids::{ParticipantId, SlotId};
use daystrand::model::turns::Station;
use daystrand::plan::turns::Asked;
use daystrand::workbench::Workbench;
use daystrand::workbench::command::Command;

use super::turns::{as_now, called, no_plan, planned, row, session, turns, wait, water, wave};
use super::{edit, marked, quietly, sound};

fn hold(bench: &mut Workbench, who: ParticipantId, slot: SlotId) {
    let id = session(bench).id;
    edit(bench, Edit::Turns(id, TurnsEdit::Hold(who, slot, true)));
}

fn place(bench: &mut Workbench, who: ParticipantId, turn: usize, slot: SlotId) {
    let id = session(bench).id;
    edit(bench, Edit::Turns(id, TurnsEdit::Place(who, turn, slot)));
}

#[test]
fn what_is_held_keeps_its_turn_when_turns_are_worked_out_again() {
    let mut bench = wave();
    let (kite, wet) = (marked(&bench, "kite"), water(&bench));
    // The water last is a loss: worked out freely, nobody who can have it earlier has it then.
    place(&mut bench, kite, 2, wet);
    let asked = as_now(&bench);
    quietly(&mut bench, Command::WorkOutTurns(asked.clone()));
    wait(&mut bench);
    assert_ne!(planned(&bench).plan.places[&kite][2], Some(wet));
    quietly(&mut bench, Command::DropTurns);
    hold(&mut bench, kite, wet);
    sound(&bench);
    quietly(&mut bench, Command::WorkOutTurns(asked));
    wait(&mut bench);
    assert_eq!(planned(&bench).plan.places[&kite][2], Some(wet));
    quietly(&mut bench, Command::UseTurns);
    assert_eq!(turns(&bench).turn_of(kite, wet), Some(2));
    assert!(turns(&bench).holds(kite, wet), "it is held on");
    sound(&bench);
    // Fewer turns, as few as possible, are never fewer than what is held needs.
    let few = Asked {
        rows: vec![Station {
            slot: wet,
            capacity: None,
        }],
        turns: None,
        ..as_now(&bench)
    };
    quietly(&mut bench, Command::WorkOutTurns(few));
    wait(&mut bench);
    let plan = planned(&bench).plan;
    assert_eq!((plan.count, plan.places[&kite][2]), (3, Some(wet)));
}

#[test]
fn holding_is_one_change_and_is_taken_back() {
    let mut bench = wave();
    let (kite, wet) = (marked(&bench, "kite"), water(&bench));
    hold(&mut bench, kite, wet);
    let view = bench.view();
    assert!(view.undo.unwrap().starts_with("Hold "), "{:?}", view.undo);
    quietly(&mut bench, Command::Undo);
    assert!(turns(&bench).held.is_empty());
    quietly(&mut bench, Command::Redo);
    assert!(turns(&bench).holds(kite, wet));
    let id = session(&bench).id;
    let go = TurnsEdit::Hold(kite, wet, false);
    edit(&mut bench, Edit::Turns(id, go));
    assert!(turns(&bench).held.is_empty());
}

#[test]
fn what_is_held_is_not_pushed_away_but_can_be_moved_itself() {
    let mut bench = wave();
    let (kite, wet) = (marked(&bench, "kite"), water(&bench));
    let own = turns(&bench).of(kite);
    let at = turns(&bench).turn_of(kite, wet).unwrap();
    let other = (at + 1) % own.len();
    hold(&mut bench, kite, wet);
    let id = session(&bench).id;
    let push = TurnsEdit::Place(kite, at, own[other].unwrap());
    drop(bench.handle(Command::Edit(Edit::Turns(id, push))));
    assert!(bench.view().notice.is_some_and(|n| n.trouble));
    assert_eq!(turns(&bench).of(kite), own);
    // Moved itself, it is held where it was put.
    place(&mut bench, kite, other, wet);
    assert_eq!(turns(&bench).turn_of(kite, wet), Some(other));
    assert!(turns(&bench).holds(kite, wet));
}

#[test]
fn a_row_that_goes_or_a_wait_is_not_held() {
    let mut bench = wave();
    let (kite, wet) = (marked(&bench, "kite"), water(&bench));
    let id = session(&bench).id;
    hold(&mut bench, kite, wet);
    let dig = row(&bench, "Dig");
    hold(&mut bench, kite, dig);
    edit(&mut bench, Edit::Timetable(id, TimetableEdit::Remove(wet)));
    assert_eq!(turns(&bench).held.len(), 1);
    sound(&bench);
    edit(&mut bench, Edit::RemoveParticipant(kite));
    assert!(turns(&bench).held.is_empty());
    sound(&bench);
}

#[test]
fn what_cannot_be_held_is_said() {
    let mut bench = wave();
    let (kite, wet) = (marked(&bench, "kite"), water(&bench));
    place(&mut bench, kite, 2, wet);
    hold(&mut bench, kite, wet);
    let name = called(&bench, "kite");
    let wet_label = {
        let view = bench.view();
        let activity = session(&bench).slot(wet).unwrap().activity;
        view.club.activity(activity).unwrap().label.clone()
    };
    let one = |slot| {
        vec![Station {
            slot,
            capacity: None,
        }]
    };
    let asked = Asked {
        rows: one(wet),
        turns: Some(2),
        ..as_now(&bench)
    };
    let words = no_plan(&mut bench, asked);
    let late = format!("{name} is held at “{wet_label}” in turn 3, and there are fewer turns.");
    assert!(words.contains(&late), "{words:?}");
    // Five held in the water, and four can be in it.
    for mark in ["boat", "moon", "star", "shell"] {
        let who = marked(&bench, mark);
        place(&mut bench, who, 2, wet);
        hold(&mut bench, who, wet);
    }
    let asked = as_now(&bench);
    let words = no_plan(&mut bench, asked);
    let five = "Five are held in the water in turn 3, and four can be in it.";
    assert!(words.iter().any(|w| w == five), "{words:?}");
}
