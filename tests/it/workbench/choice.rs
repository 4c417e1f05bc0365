//! What is chosen follows what is done, and is never left pointing at nothing.

use daystrand::model::edit::{BoardEdit, Edit, TimetableEdit};
use daystrand::model::finding::Spot;
use daystrand::model::ids::StepRef;
use daystrand::workbench::Workbench;
use daystrand::workbench::command::{Command, Place};
use jiff::civil::date;

use super::*;

#[test]
fn the_next_session_is_chosen_on_opening() {
    let mut late = Workbench::new(date(2027, 6, 13));
    quietly(&mut late, Command::Demo);
    assert_eq!(late.view().session.unwrap().date, date(2027, 6, 19));
    let mut same_day = Workbench::new(date(2027, 6, 12));
    quietly(&mut same_day, Command::Demo);
    assert_eq!(same_day.view().session.unwrap().date, date(2027, 6, 12));
    let mut after = Workbench::new(date(2028, 1, 1));
    quietly(&mut after, Command::Demo);
    assert_eq!(after.view().session.unwrap().date, date(2027, 6, 26));
}

#[test]
fn a_new_club_has_nothing_to_choose() {
    let bench = bench();
    let view = bench.view();
    assert_eq!(
        (view.session, view.participant, view.step),
        (None, None, None)
    );
    assert!(view.boards.is_empty() && view.board().is_none());
    assert!(!view.modified);
    assert!(
        view.club.activities.len() > 20,
        "a new club has activities to begin with"
    );
}

#[test]
fn what_was_made_is_chosen() {
    let mut bench = bench();
    edit(&mut bench, Edit::AddSession(details("First", 12)));
    edit(&mut bench, Edit::AddSession(details("Second", 19)));
    assert_eq!(bench.view().session.unwrap().title, "Second");
    edit(
        &mut bench,
        Edit::AddParticipant(participant("Noor", "leaf")),
    );
    edit(
        &mut bench,
        Edit::AddParticipant(participant("Tavi", "boat")),
    );
    assert_eq!(bench.view().participant.unwrap().name, "Tavi");
    let session = bench.view().session.unwrap().id;
    let hello = activity_id(&bench, "Hello");
    edit(
        &mut bench,
        Edit::Timetable(session, TimetableEdit::Insert(hello, 0)),
    );
    let slot = bench.view().session.unwrap().timetable[0].id;
    assert_eq!(bench.view().step, Some(StepRef::Slot(slot)));
    quietly(&mut bench, Command::Show(Place::Boards));
    let drum = content(&bench, "Drum");
    quietly(&mut bench, Command::EditBoard(BoardEdit::Insert(drum, 1)));
    assert_eq!(words(&bench), ["Hello", "Drum"]);
    assert!(matches!(bench.view().step, Some(StepRef::Own(_))));
}

#[test]
fn a_removed_session_gives_way_to_its_neighbour() {
    let mut bench = demo();
    let ids: Vec<_> = bench.view().club.sessions.iter().map(|s| s.id).collect();
    quietly(&mut bench, Command::ChooseSession(ids[0]));
    edit(&mut bench, Edit::RemoveSession(ids[0]));
    assert_eq!(bench.view().session.unwrap().id, ids[1]);
    edit(&mut bench, Edit::RemoveSession(ids[1]));
    assert_eq!(bench.view().session.unwrap().id, ids[2]);
    edit(&mut bench, Edit::RemoveSession(ids[2]));
    assert!(bench.view().session.is_none() && bench.view().boards.is_empty());
    quietly(&mut bench, Command::Undo);
    assert_eq!(bench.view().session.unwrap().id, ids[2]);
}

#[test]
fn a_removed_participant_gives_way_to_the_one_in_their_place() {
    let mut bench = demo();
    let (third, fourth) = (marked(&bench, "leaf"), marked(&bench, "fish"));
    quietly(&mut bench, Command::ChooseParticipant(third));
    edit(&mut bench, Edit::RemoveParticipant(third));
    assert_eq!(bench.view().participant.unwrap().id, fourth);
    for id in bench
        .view()
        .club
        .participants
        .iter()
        .map(|p| p.id)
        .collect::<Vec<_>>()
    {
        edit(&mut bench, Edit::RemoveParticipant(id));
    }
    assert!(bench.view().participant.is_none());
}

#[test]
fn who_is_away_is_chosen_at_people_and_not_at_boards() {
    let mut bench = demo();
    let (session, leaf) = (bench.view().session.unwrap().id, marked(&bench, "leaf"));
    quietly(&mut bench, Command::Show(Place::People));
    quietly(&mut bench, Command::ChooseParticipant(leaf));
    edit(&mut bench, Edit::Attend(session, leaf, false));
    assert_eq!(bench.view().participant.unwrap().id, leaf);
    assert!(bench.view().board().is_none());
    quietly(&mut bench, Command::Show(Place::Boards));
    assert_ne!(bench.view().participant.unwrap().id, leaf);
    assert!(bench.view().board().is_some());
}

#[test]
fn a_step_taken_off_gives_way_to_the_next() {
    let mut bench = demo();
    quietly(&mut bench, Command::Show(Place::Boards));
    choose(&mut bench, "star");
    let board = bench.view().board().unwrap();
    let at = board
        .steps
        .iter()
        .position(|s| matches!(s.at, StepRef::Own(_)))
        .unwrap();
    let (own, next) = (board.steps[at].at, board.steps[at + 1].at);
    quietly(&mut bench, Command::ChooseStep(Some(own)));
    quietly(&mut bench, Command::EditBoard(BoardEdit::TakeOff(own)));
    assert_eq!(bench.view().step, Some(next));
}

#[test]
fn every_finding_leads_to_its_place() {
    let mut bench = demo();
    let session = bench.view().club.sessions[1].id;
    let slot = bench.view().club.sessions[1].timetable[2].id;
    let star = marked(&bench, "star");
    let step = StepRef::Slot(slot);
    let places = [
        (Spot::Club, Place::Session),
        (Spot::Activity(activity_id(&bench, "Dig")), Place::Session),
        (Spot::Participant(star), Place::People),
        (Spot::Session(session), Place::Session),
        (Spot::Slot(session, slot), Place::Session),
        (Spot::Board(session, star), Place::Boards),
        (Spot::Step(session, star, step), Place::Boards),
    ];
    for (spot, place) in places {
        quietly(&mut bench, Command::Show(Place::Checks));
        quietly(&mut bench, Command::GoTo(spot));
        assert_eq!(bench.view().place, place, "{spot:?}");
    }
    assert_eq!(bench.view().session.unwrap().id, session);
    assert_eq!(bench.view().participant.unwrap().id, star);
    assert_eq!(bench.view().step, Some(step));
}

#[test]
fn choosing_what_is_not_there_chooses_something_that_is() {
    let mut bench = demo();
    quietly(
        &mut bench,
        Command::ChooseSession(daystrand::model::ids::SessionId(9999)),
    );
    quietly(&mut bench, Command::ChooseParticipant(ParticipantId(9999)));
    quietly(&mut bench, Command::Show(Place::Boards));
    assert!(bench.view().board().is_some());
}
