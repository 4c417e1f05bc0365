//! What follows when the wind turns: common practice, no published source.

use std::sync::Arc;

use daystrand::model::board::{By, StepState, derive};
use daystrand::model::club::Club;
use daystrand::model::edit::{BoardEdit, Edit, TimetableEdit, apply};
use daystrand::model::hand::Content;
use daystrand::model::ids::{ActivityId, StepRef};
use daystrand::model::session::Off;
use daystrand::plan::changes::{Changes, changes};

use crate::model::random;

fn done(club: &mut Club, edit: Edit) {
    *club = apply(club, &edit).unwrap().0;
}

fn found(club: &Club) -> Changes {
    let session = &club.sessions[0];
    let boards: Vec<_> = club
        .attending(session)
        .map(|p| Arc::new(derive(club, session, p.id)))
        .collect();
    changes(club, session, &boards)
}

/// Swim in the water with the dry replacement Snack; a bucket for the snack, a float for the swim.
fn club() -> Club {
    let mut club = random::start();
    let snack = club.activities[4].id;
    let swim = Arc::make_mut(&mut club.activities[3]);
    swim.dry_replacement = Some(snack);
    swim.equipment = vec!["3 floats".into()];
    Arc::make_mut(&mut club.activities[4]).equipment = vec!["1 bucket".into()];
    // The snack at the end goes, so that it comes only as a replacement.
    let session = Arc::make_mut(&mut club.sessions[0]);
    session.timetable.pop();
    club
}

#[test]
fn one_action_replaces_all_water_for_everyone() {
    let mut club = club();
    let id = club.sessions[0].id;
    assert!(found(&club).is_empty());
    let before = club.clone();
    done(
        &mut club,
        Edit::Timetable(id, TimetableEdit::Dry(None, true)),
    );
    let now = found(&club);
    // Every board that has the swim, and each needs one dry tile and one change tile.
    assert_eq!(now.boards.len(), 3);
    assert_eq!((now.dry_tiles(), now.change_tiles()), (3, 3));
    assert_eq!(now.boards[0].changes[0].was, "Swim");
    let instead = now.boards[0].changes[0].instead.as_ref().unwrap();
    assert_eq!(instead.1, "Snack");
    assert_eq!(now.stays, ["3 floats"]);
    assert_eq!(now.comes, ["1 bucket"]);
    // The row stays visible, and what comes instead stands right behind it on every board.
    let board = derive(&club, &club.sessions[0], club.participants[0].id);
    let row = club.sessions[0].timetable[3].id;
    let at = board.position(StepRef::Slot(row)).unwrap();
    assert_eq!(board.steps[at].state, StepState::NotToday);
    assert_eq!(board.steps[at + 1].at, StepRef::Instead(row));
    assert!(!board.steps[at].differs(), "the timetable says so");
    // It can be taken back as a whole.
    done(
        &mut club,
        Edit::Timetable(id, TimetableEdit::Dry(None, false)),
    );
    assert_eq!(club, before);
}

#[test]
fn only_boards_that_contain_it_are_affected() {
    let mut club = club();
    let id = club.sessions[0].id;
    let (a, b) = (club.participants[0].id, club.participants[1].id);
    let row = club.sessions[0].timetable[3].id;
    // One does something dry there anyhow; another has no part in it at all.
    let circle = Content::of(&club.activities[0]);
    let swap = BoardEdit::Replace(StepRef::Slot(row), circle);
    done(&mut club, Edit::Board(id, a, swap));
    let mut person = club.participants[1].as_ref().clone();
    person.standing.left_out.insert(club.activities[3].id);
    person.profile.set_decision(Default::default());
    done(&mut club, Edit::ChangeParticipant(person));
    done(
        &mut club,
        Edit::Timetable(id, TimetableEdit::Dry(None, true)),
    );
    let now = found(&club);
    assert_eq!(now.boards.len(), 1);
    assert!(
        now.boards
            .iter()
            .all(|x| x.participant != a && x.participant != b)
    );
}

/// What comes instead follows the standing changes of a participant.
#[test]
fn the_replacement_is_swapped_where_it_always_is() {
    let mut club = club();
    let id = club.sessions[0].id;
    let who = club.participants[0].id;
    let mut person = club.participants[0].as_ref().clone();
    let (snack, song): (ActivityId, _) = (club.activities[4].id, Content::of(&club.activities[1]));
    person.standing.swaps.insert(snack, song);
    done(&mut club, Edit::ChangeParticipant(person));
    let row = club.sessions[0].timetable[3].id;
    let off = Some(Off {
        instead: Some(snack),
    });
    done(&mut club, Edit::Timetable(id, TimetableEdit::Off(row, off)));
    let board = derive(&club, &club.sessions[0], who);
    let instead = &board.steps[board.position(StepRef::Instead(row)).unwrap()];
    assert_eq!((instead.label.as_str(), instead.by), ("Song", By::Standing));
}
