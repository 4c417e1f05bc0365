//! Random afternoons: whatever is done, boards stay true to the timetable and to every hand.

use std::collections::BTreeMap;

use daystrand::model::board::{Board, StepState, derive};
use daystrand::model::club::Club;
use daystrand::model::edit::{BoardEdit, Edit, Made, TimetableEdit, apply};
use daystrand::model::ids::{ParticipantId, SessionId, StepRef};
use daystrand::model::invariants;
use daystrand::model::session::Session;
use proptest::prelude::*;

use super::random::{self, seeds};

fn all_boards(club: &Club) -> BTreeMap<(SessionId, ParticipantId), Board> {
    let mut boards = BTreeMap::new();
    for s in &club.sessions {
        for p in &club.participants {
            boards.insert((s.id, p.id), derive(club, s, p.id));
        }
    }
    boards
}

fn order(board: &Board) -> Vec<StepRef> {
    board.steps.iter().map(|s| s.at).collect()
}

fn without(mut list: Vec<StepRef>, step: StepRef) -> Vec<StepRef> {
    list.retain(|s| *s != step);
    list
}

/// Every row and every own step exactly once, and each says truly how it differs.
fn check_board(session: &Session, board: &Board) {
    let mut shown = order(board);
    shown.sort_unstable();
    let rows = session.timetable.iter().map(|r| StepRef::Slot(r.id));
    let own = session.hand_of(board.participant);
    let own = own
        .iter()
        .flat_map(|h| h.own.keys())
        .map(|o| StepRef::Own(*o));
    let mut all: Vec<StepRef> = rows.chain(own).collect();
    all.sort_unstable();
    assert_eq!(shown, all);
    for step in &board.steps {
        assert!(!step.label.is_empty());
        assert_eq!(
            step.state == StepState::Own,
            matches!(step.at, StepRef::Own(_))
        );
        assert_eq!(step.minutes.is_none(), step.state == StepState::Own);
    }
    // Steps that were not moved stand among each other as in the timetable.
    let unmoved: Vec<StepRef> = board
        .steps
        .iter()
        .filter(|s| !s.moved)
        .map(|s| s.at)
        .collect();
    let rows = session.timetable.iter().map(|r| StepRef::Slot(r.id));
    let as_rows: Vec<StepRef> = rows.filter(|r| unmoved.contains(r)).collect();
    let unmoved_rows: Vec<StepRef> = unmoved
        .into_iter()
        .filter(|s| matches!(s, StepRef::Slot(_)))
        .collect();
    assert_eq!(unmoved_rows, as_rows);
}

/// What must be true after a board edit, by what it meant.
fn check_board_edit(before: &Club, after: &Club, edit: &Edit, made: Made) {
    let Edit::Board(id, who, what) = edit else {
        return;
    };
    let old = derive(before, before.session(*id).unwrap(), *who);
    let new = derive(after, after.session(*id).unwrap(), *who);
    let (old_order, new_order) = (order(&old), order(&new));
    match what {
        BoardEdit::Insert(_, at) => {
            let Made::Own(own) = made else {
                panic!("made {made:?}")
            };
            let mut wanted = old_order;
            wanted.insert((*at).min(wanted.len()), StepRef::Own(own));
            assert_eq!(new_order, wanted);
        }
        BoardEdit::Move(step, to) => {
            let mut wanted = without(old_order, *step);
            wanted.insert((*to).min(wanted.len()), *step);
            assert_eq!(new_order, wanted);
        }
        BoardEdit::TakeOff(step @ StepRef::Own(_)) => {
            assert_eq!(new_order, without(old_order, *step));
        }
        BoardEdit::TakeOff(step) => {
            assert_eq!(new_order, old_order);
            assert_eq!(
                new.steps[new.position(*step).unwrap()].state,
                StepState::NotToday
            );
        }
        BoardEdit::Replace(..) | BoardEdit::Relabel(..) => assert_eq!(new_order, old_order),
        BoardEdit::Restore(step) => {
            assert_eq!(without(new_order, *step), without(old_order, *step));
            let step = &new.steps[new.position(*step).unwrap()];
            assert!(!step.moved && !step.relabelled, "{step:?}");
            assert!(matches!(
                step.state,
                StepState::AsTimetable | StepState::Own
            ));
        }
        BoardEdit::RestoreAll => {
            let rows = &after.session(*id).unwrap().timetable;
            let rows: Vec<StepRef> = rows.iter().map(|r| StepRef::Slot(r.id)).collect();
            assert_eq!(new_order, rows);
            assert_eq!(new.differences(), 0);
        }
    }
}

/// What a timetable edit may do to the hand changes of a board: nothing, but drop what is about a
/// removed row.
fn check_hands_survive(before: &Club, after: &Club, edit: &Edit) {
    let Edit::Timetable(id, what) = edit else {
        return;
    };
    let (old, new) = (before.session(*id).unwrap(), after.session(*id).unwrap());
    if let TimetableEdit::Remove(slot) = what {
        let gone = StepRef::Slot(*slot);
        for (who, hand) in &old.hand {
            let mut hand = hand.clone();
            hand.replaced.remove(slot);
            hand.not_today.remove(slot);
            hand.labels.remove(&gone);
            hand.placed.retain(|p| p.step != gone);
            for p in &mut hand.placed {
                p.after.retain(|a| *a != gone);
            }
            assert_eq!(new.hand_of(*who).cloned().unwrap_or_default(), hand);
        }
    } else {
        assert_eq!(old.hand, new.hand);
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(400))]

    #[test]
    fn every_afternoon_keeps_what_always_holds(seeds in seeds(60)) {
        let mut club = random::start();
        prop_assert_eq!(invariants::check(&club), Vec::<String>::new());
        for seed in &seeds {
            let edit = random::edit(&club, seed);
            let before = club.clone();
            let label = edit.label(&club);
            prop_assert!(!label.trim().is_empty() && label.chars().count() < 140, "{}", label);
            let Ok((next, made)) = apply(&club, &edit) else { continue };
            prop_assert_eq!(&club, &before, "the club given was changed");
            let broken = invariants::check(&next);
            prop_assert!(broken.is_empty(), "{:?} after {:?}", broken, edit);
            prop_assert!(next.next_id >= club.next_id);
            for s in &next.sessions {
                for p in &next.participants {
                    check_board(s, &derive(&next, s, p.id));
                }
            }
            check_board_edit(&club, &next, &edit, made);
            check_hands_survive(&club, &next, &edit);
            club = next;
        }
    }

    /// Board edits on one board never show on another, timetable edits never on another session.
    #[test]
    fn one_board_at_a_time(seeds in seeds(40)) {
        let mut club = random::start();
        for seed in &seeds {
            let edit = random::edit(&club, seed);
            let Ok((next, _)) = apply(&club, &edit) else { continue };
            let (old, new) = (all_boards(&club), all_boards(&next));
            for (key, board) in &old {
                let touched = match &edit {
                    Edit::Board(s, p, _) => *key == (*s, *p),
                    Edit::Timetable(s, _) => key.0 == *s,
                    _ => true,
                };
                if !touched {
                    prop_assert_eq!(Some(board), new.get(key));
                }
            }
            club = next;
        }
    }

    /// A new row comes where the timetable has it, among the rows no one moved; all others keep
    /// their order on every board.
    #[test]
    fn a_new_row_reaches_every_board(seeds in seeds(40), at in 0..8_usize) {
        let club = random::club(&seeds);
        let Some(session) = club.sessions.first() else { return Ok(()) };
        let Some(activity) = club.activities.first() else { return Ok(()) };
        let edit = Edit::Timetable(session.id, TimetableEdit::Insert(activity.id, at));
        let (next, made) = apply(&club, &edit).unwrap();
        let Made::Slot(slot) = made else { panic!("made {made:?}") };
        for p in &club.participants {
            let old = order(&derive(&club, session, p.id));
            let after = next.session(session.id).unwrap();
            let new = derive(&next, after, p.id);
            let step = &new.steps[new.position(StepRef::Slot(slot)).unwrap()];
            prop_assert!(!step.differs());
            prop_assert_eq!(without(order(&new), StepRef::Slot(slot)), old);
        }
    }
}

/// A step that cannot be placed short (its neighbour is placed later) still lands where it was put.
#[test]
fn a_neighbour_that_moves_away_takes_no_one_along() {
    let mut club = random::start();
    let (s, p) = (club.sessions[0].id, club.participants[0].id);
    let rows: Vec<StepRef> = club.sessions[0]
        .timetable
        .iter()
        .map(|r| StepRef::Slot(r.id))
        .collect();
    let board = |club: &Club| order(&derive(club, club.session(s).unwrap(), p));
    let mut put = |step, to| {
        club = apply(&club, &Edit::Board(s, p, BoardEdit::Move(step, to)))
            .unwrap()
            .0;
        board(&club)
    };
    // Row 0 stands behind row 3; then row 3 goes to the start.
    put(rows[0], 3);
    assert_eq!(
        put(rows[3], 0),
        [rows[3], rows[1], rows[2], rows[0], rows[4], rows[5]]
    );
    // Both go back: the board is the timetable again, and nothing is left of the changes.
    put(rows[3], 3);
    assert_eq!(put(rows[0], 0), rows);
    assert!(club.session(s).unwrap().hand.is_empty());
}

/// A water activity moved in the timetable takes the own step behind it along.
#[test]
fn an_own_step_follows_what_it_stands_behind() {
    let mut club = random::start();
    let (s, p) = (club.sessions[0].id, club.participants[0].id);
    let rows: Vec<StepRef> = club.sessions[0]
        .timetable
        .iter()
        .map(|r| StepRef::Slot(r.id))
        .collect();
    let quiet = daystrand::model::hand::Content {
        activity: None,
        symbol: daystrand::model::ids::SymbolId::new("quiet_place"),
        label: "Quiet place".into(),
    };
    let (next, made) = apply(&club, &Edit::Board(s, p, BoardEdit::Insert(quiet, 4))).unwrap();
    let Made::Own(own) = made else {
        panic!("made {made:?}")
    };
    club = next;
    let StepRef::Slot(swim) = rows[3] else {
        panic!()
    };
    club = apply(&club, &Edit::Timetable(s, TimetableEdit::Move(swim, 1)))
        .unwrap()
        .0;
    let board = derive(&club, club.session(s).unwrap(), p);
    let at = board.position(rows[3]).unwrap();
    assert_eq!(at, 1);
    assert_eq!(board.position(StepRef::Own(own)), Some(2));
    assert_eq!(board.steps[2].part, board.steps[1].part);
    // Without the row it stands behind what came before that.
    club = apply(&club, &Edit::Timetable(s, TimetableEdit::Remove(swim)))
        .unwrap()
        .0;
    let board = derive(&club, club.session(s).unwrap(), p);
    let at = board.position(StepRef::Own(own)).unwrap();
    assert_eq!(board.steps[at - 1].at, rows[2]);
}

/// A broken timetable (never made by an edit) still gives a board that can be shown and reported.
#[test]
fn an_unknown_activity_is_shown_as_such() {
    let mut club = random::start();
    club.activities.remove(0);
    let mut session = Session::clone(&club.sessions[0]);
    let twice = session.timetable[1].clone();
    session.timetable.push(twice);
    let board = derive(&club, &session, club.participants[0].id);
    assert_eq!(board.steps.len(), 6, "a row named twice stands once");
    assert_eq!(
        board.steps[0].label,
        daystrand::model::board::UNKNOWN_ACTIVITY
    );
    let unknown = board.steps[0].activity.unwrap();
    assert!(club.activity(unknown).is_none(), "a check finds it by this");
    assert!(!invariants::check(&club).is_empty());
}
