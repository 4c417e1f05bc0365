//! A whole evening: from nothing to sheets in a folder, with mistakes on the way.

use std::fs;
use std::time::Duration;

use daystrand::model::board::StepState;
use daystrand::model::club::Activity;
use daystrand::model::edit::{BoardEdit, Edit, TimetableEdit};
use daystrand::model::ids::{ActivityId, SlotId, StepRef, SymbolId};
use daystrand::model::people::Role;
use daystrand::workbench::command::{Answer, Command, Effect, Place};
use tempfile::tempdir;

use super::*;

#[test]
fn an_evening() {
    let dir = tempdir().unwrap();
    let mut bench = bench();

    // The club and its people.
    edit(&mut bench, Edit::ClubName("Pine Lake Paddlers".into()));
    for (name, mark) in [
        ("Ada", "bell"),
        ("Bo", "ring"),
        ("Ada", "fish"),
        ("Cy", "drop"),
    ] {
        edit(&mut bench, Edit::AddParticipant(participant(name, mark)));
    }
    for (name, roles) in [("Dora", &[Role::Lead][..]), ("Egon", &[Role::WaterSafety])] {
        edit(&mut bench, Edit::AddHelper(helper(name, roles)));
    }
    let part = activity(&bench, "Boat").part;
    let raft = Activity {
        id: ActivityId(0),
        label: "Raft".into(),
        symbol: SymbolId::new("canoe"),
        part,
        minutes: 15,
        in_water: true,
        depth_cm: None,
        dry_replacement: None,
        sentences: vec!["{I} {sit} on the raft.".into()],
        around: Default::default(),
        equipment: vec!["1 raft".into()],
        place: String::new(),
        thing: String::new(),
        not_when: Default::default(),
    };
    edit(&mut bench, Edit::AddActivity(raft));

    // The session.
    edit(&mut bench, Edit::AddSession(details("Raft evening", 12)));
    let session = bench.view().session.unwrap().id;
    for (at, label) in ["Hello", "Circle", "Song", "Raft", "Dry", "Bye"]
        .iter()
        .enumerate()
    {
        let id = activity_id(&bench, label);
        edit(
            &mut bench,
            Edit::Timetable(session, TimetableEdit::Insert(id, at)),
        );
    }
    let codes = |b: &Workbench| b.view().findings.iter().map(|f| f.code).collect::<Vec<_>>();
    assert!(
        codes(&bench).contains(&"water.no_dry_replacement"),
        "{:?}",
        codes(&bench)
    );

    // The finding leads to the row; it is mended in the activity.
    let spot = bench
        .view()
        .findings
        .iter()
        .find(|f| f.code == "water.no_dry_replacement");
    let spot = spot.unwrap().spot;
    quietly(&mut bench, Command::GoTo(spot));
    let mended = Activity {
        dry_replacement: Some(activity_id(&bench, "Dig")),
        ..activity(&bench, "Raft").clone()
    };
    edit(&mut bench, Edit::ChangeActivity(mended));
    assert!(!codes(&bench).contains(&"water.no_dry_replacement"));

    // Boards: a swap, an own step, not today, other words; then the timetable changes.
    quietly(&mut bench, Command::Show(Place::Boards));
    choose(&mut bench, "bell");
    let steps: Vec<StepRef> = bench
        .view()
        .board()
        .unwrap()
        .steps
        .iter()
        .map(|s| s.at)
        .collect();
    let (drum, quiet) = (content(&bench, "Drum"), content(&bench, "Quiet place"));
    quietly(
        &mut bench,
        Command::EditBoard(BoardEdit::Replace(steps[2], drum)),
    );
    quietly(&mut bench, Command::EditBoard(BoardEdit::Insert(quiet, 4)));
    quietly(&mut bench, Command::EditBoard(BoardEdit::TakeOff(steps[1])));
    quietly(
        &mut bench,
        Command::EditBoard(BoardEdit::Relabel(steps[3], "Big raft".into())),
    );
    let board = [
        "Hello",
        "Circle",
        "Drum",
        "Big raft",
        "Quiet place",
        "Dry",
        "Bye",
    ];
    assert_eq!(words(&bench), board);
    let dry = slot(&bench, 4);
    edit(
        &mut bench,
        Edit::Timetable(session, TimetableEdit::Move(dry, 1)),
    );
    let moved = [
        "Hello",
        "Dry",
        "Circle",
        "Drum",
        "Big raft",
        "Quiet place",
        "Bye",
    ];
    assert_eq!(words(&bench), moved);
    let off = bench.view().board().unwrap().steps[2].state.clone();
    assert_eq!(off, StepState::NotToday);

    // A slip, taken back, and done again to look, and taken back.
    let bell = marked(&bench, "bell");
    edit(&mut bench, Edit::RemoveParticipant(bell));
    assert_eq!(bench.view().boards.len(), 3);
    for command in [Command::Undo, Command::Redo, Command::Undo] {
        quietly(&mut bench, command);
    }
    choose(&mut bench, "bell");
    assert_eq!(words(&bench), moved, "nothing is lost");

    // Saved, closed, opened.
    let file = dir.path().join("pine.daystrand");
    assert!(matches!(
        bench.handle(Command::Save).as_slice(),
        [Effect::AskSavePath { .. }]
    ));
    quietly(&mut bench, Command::SaveAs(file.clone()));
    let club = bench.view().club.clone();
    assert_eq!(bench.handle(Command::Quit), [Effect::Quit]);
    let mut bench = super::bench();
    quietly(&mut bench, Command::Open(file));
    assert_eq!(*bench.view().club, club);
    quietly(&mut bench, Command::Show(Place::Boards));
    choose(&mut bench, "bell");
    assert_eq!(words(&bench), moved);

    // Paper.
    quietly(&mut bench, Command::Show(Place::Print));
    let sheets = bench.view().sheets.len();
    let out = dir.path().join("sheets");
    quietly(&mut bench, Command::WriteSheets(out.clone()));
    while bench.view().job.is_some() {
        bench.poll();
        std::thread::sleep(Duration::from_millis(2));
    }
    assert_eq!(fs::read_dir(out).unwrap().count(), sheets);

    // One more change, and the question at the end.
    edit(&mut bench, Edit::ClubName("Pine Lake".into()));
    quietly(&mut bench, Command::Quit);
    assert_eq!(bench.handle(Command::Answer(Answer::Save)), [Effect::Quit]);
    assert!(!bench.view().modified);
}

fn slot(bench: &Workbench, at: usize) -> SlotId {
    bench.view().session.unwrap().timetable[at].id
}
