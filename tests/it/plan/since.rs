//! What is new since last time.

use daystrand::model::board::derive;
use daystrand::model::club::Club;
use daystrand::model::edit::{BoardEdit, Edit, TimetableEdit, apply};
use daystrand::model::ids::StepRef;
use daystrand::model::record::Record;
use daystrand::plan::since::{favourites_shown, last, last_record, since};
use jiff::civil::{date, time};

use crate::model::random::{self, details};

fn done(club: &mut Club, edit: Edit) {
    *club = apply(club, &edit).unwrap().0;
}

/// The first session, and one a week later with the swim replaced by snack.
fn two_sessions() -> Club {
    let mut club = random::start();
    let first = club.sessions[0].id;
    let next = details("Morning", date(2026, 5, 9), time(9, 30, 0, 0));
    done(&mut club, Edit::CopySession(first, next));
    let id = club.sessions[1].id;
    let swim = club.sessions[1].timetable[3].id;
    let circle = club.activities[0].id;
    done(
        &mut club,
        Edit::Timetable(id, TimetableEdit::Replace(swim, circle)),
    );
    club
}

#[test]
fn new_and_same_follow_the_participants_own_boards() {
    let mut club = two_sessions();
    let (who, other) = (club.participants[0].id, club.participants[1].id);
    let (first, second) = (club.sessions[0].id, club.sessions[1].id);
    assert_eq!(club.sessions[1].from, Some(first));
    let board = derive(&club, &club.sessions[1], who);
    let found = since(&club, &club.sessions[1], &board).unwrap();
    assert_eq!(found.new, Vec::<String>::new());
    assert_eq!(found.same, ["Circle", "Song", "Boat", "Snack"]);
    assert_eq!(found.gone, ["Swim"]);
    assert!(!found.other_place && !found.other_start);
    // Last time the snack was not today for one of them: now it is new for that one alone.
    let snack = StepRef::Slot(club.sessions[0].timetable[5].id);
    done(
        &mut club,
        Edit::Board(first, who, BoardEdit::TakeOff(snack)),
    );
    let new = |club: &Club, who| {
        let board = derive(club, &club.sessions[1], who);
        since(club, &club.sessions[1], &board).unwrap().new
    };
    assert_eq!(new(&club, who), ["Snack"]);
    assert_eq!(new(&club, other), Vec::<String>::new());
    // Who was away last time comes for the first time.
    done(&mut club, Edit::Attend(first, other, false));
    let board = derive(&club, club.session(second).unwrap(), other);
    assert_eq!(since(&club, club.session(second).unwrap(), &board), None);
    assert!(last(&club, club.session(first).unwrap(), who).is_none());
}

#[test]
fn what_was_seen_comes_up_next_time() {
    let mut club = two_sessions();
    let who = club.participants[0].id;
    let first = club.sessions[0].id;
    let record = Record {
        favourite: Some(club.activities[2].id),
        next_time: "Ask before the boat.".into(),
        ..Record::default()
    };
    done(&mut club, Edit::Record(first, who, record));
    let (from, seen) = last_record(&club, &club.sessions[1], who).unwrap();
    assert_eq!(from.id, first);
    assert_eq!(seen.next_time, "Ask before the boat.");
    let shown = favourites_shown(&club, &club.sessions[1], who);
    assert_eq!(shown, [club.activities[2].id]);
    assert!(last_record(&club, &club.sessions[0], who).is_none());
    // An empty record is none.
    done(&mut club, Edit::Record(first, who, Record::default()));
    assert!(last_record(&club, &club.sessions[1], who).is_none());
}
