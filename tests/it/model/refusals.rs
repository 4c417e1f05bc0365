//! What cannot be done is said in a sentence, with what to do; and what was typed is made tidy.

use daystrand::model::board::{StepState, derive};
use daystrand::model::club::{Activity, Club, Rules};
use daystrand::model::edit::{BoardEdit, Edit, Made, Refused, TimetableEdit, apply};
use daystrand::model::hand::Content;
use daystrand::model::ids::{ActivityId, PartId, StepRef, SymbolId};
use daystrand::model::people::Participant;
use daystrand::units::Length;
use jiff::civil::{date, time};

use super::random;

fn done(club: &Club, edit: Edit) -> Club {
    apply(club, &edit).unwrap().0
}

fn refused(club: &Club, edit: Edit) -> Refused {
    let refused = apply(club, &edit).unwrap_err();
    for part in [&refused.sentence, &refused.hint] {
        assert!(part.ends_with('.') && part.len() > 10, "{part}");
    }
    refused
}

fn content(activity: Option<ActivityId>, label: &str) -> Content {
    Content {
        activity,
        symbol: SymbolId::new("drum"),
        label: label.into(),
    }
}

#[test]
fn an_activity_in_use_stays_and_the_places_are_named() {
    let mut club = random::start();
    let (s, p) = (club.sessions[0].id, club.participants[1].id);
    let circle = club.activities[0].id;
    let said = refused(&club, Edit::RemoveActivity(circle)).sentence;
    assert_eq!(
        said,
        "“Circle” is in use: the timetable of Morning, 2026-05-02."
    );

    // In use on a board only: as own step, as replacement; then as dry replacement only.
    let drum = Activity {
        label: "Drum".into(),
        ..Activity::clone(&club.activities[0])
    };
    let (next, made) = apply(&club, &Edit::AddActivity(drum)).unwrap();
    let Made::Activity(drum) = made else { panic!() };
    club = next;
    done(&club, Edit::RemoveActivity(drum));
    let slot = StepRef::Slot(club.sessions[0].timetable[1].id);
    for edit in [
        BoardEdit::Insert(content(Some(drum), ""), 0),
        BoardEdit::Replace(slot, content(Some(drum), "")),
    ] {
        let club = done(&club, Edit::Board(s, p, edit));
        let said = refused(&club, Edit::RemoveActivity(drum)).sentence;
        assert_eq!(
            said,
            "“Drum” is in use: the board of Tam in Morning, 2026-05-02."
        );
    }
    let mut swim = Activity::clone(&club.activities[3]);
    swim.dry_replacement = Some(drum);
    let club = done(&club, Edit::ChangeActivity(swim.clone()));
    let said = refused(&club, Edit::RemoveActivity(drum)).sentence;
    assert_eq!(said, "“Drum” is in use: the dry replacement of “Swim”.");
    swim.dry_replacement = Some(swim.id);
    let said = refused(&club, Edit::ChangeActivity(swim)).sentence;
    assert_eq!(said, "“Swim” cannot stand in for itself.");
}

#[test]
fn many_places_are_counted() {
    let mut club = random::start();
    let s = club.sessions[0].id;
    for day in 3..9 {
        let details = random::details("Morning", date(2026, 5, day), time(9, 0, 0, 0));
        club = done(&club, Edit::CopySession(s, details));
    }
    let said = refused(&club, Edit::RemoveActivity(club.activities[0].id)).sentence;
    assert!(said.ends_with("Morning, 2026-05-04 and 4 more."), "{said}");
    let said = refused(&club, Edit::RemovePart(club.parts[0].id)).sentence;
    assert!(
        said.starts_with("“Shore” is in use: the activity “Circle”"),
        "{said}"
    );
}

#[test]
fn numbers_out_of_range_are_refused_at_the_edge() {
    let club = random::start();
    let person = |tile: Length, text_pt| {
        Edit::ChangeParticipant(Participant {
            tile,
            text_pt,
            ..Participant::clone(&club.participants[0])
        })
    };
    for (um, pt) in [(10_000, 36), (400_000, 36), (60_000, 18), (60_000, 200)] {
        done(&club, person(Length::um(um), pt));
    }
    for (um, pt) in [
        (9_999, 36),
        (400_001, 36),
        (-60_000, 36),
        (60_000, 17),
        (60_000, 201),
    ] {
        refused(&club, person(Length::um(um), pt));
    }
    let said = refused(&club, person(Length::um(9_999), 36));
    assert_eq!(said.sentence, "The side of a tile cannot be 9.999 mm.");
    assert_eq!(said.hint, "Choose a size from 10 to 400 mm.");

    let (s, slot) = (club.sessions[0].id, club.sessions[0].timetable[0].id);
    let minutes = |m| Edit::Timetable(s, TimetableEdit::Minutes(slot, m));
    done(&club, minutes(0));
    done(&club, minutes(600));
    let said = refused(&club, minutes(601)).sentence;
    assert_eq!(said, "The time cannot be 601 minutes.");
    let seal = |mm| {
        Edit::Rules(Rules {
            seal: Length::mm(mm),
            ..Rules::default()
        })
    };
    done(&club, seal(0.0));
    refused(&club, seal(-0.1));
    refused(&club, seal(20.1));
    let at = |year| Edit::AddSession(random::details("A", date(year, 1, 1), time(9, 0, 0, 0)));
    refused(&club, at(1999));
    refused(&club, at(2200));
}

#[test]
fn texts_are_made_tidy_and_may_be_long() {
    let club = random::start();
    let label = |label: &str| {
        let activity = Activity::clone(&club.activities[0]);
        Edit::ChangeActivity(Activity {
            label: label.into(),
            ..activity
        })
    };
    let tidy = done(&club, label("  Say\thello\n to all \u{7} "));
    assert_eq!(tidy.activities[0].label, "Say hello  to all");
    let long = "é".repeat(2_000);
    assert_eq!(done(&club, label(&long)).activities[0].label, long);
    done(&club, label(&"é".repeat(10_000)));
    let said = refused(&club, label(&"é".repeat(10_001))).sentence;
    assert_eq!(said, "The label is longer than 10000 characters.");
    refused(&club, label(" \n "));
    let details = random::details(" Late ", date(2026, 5, 1), time(9, 30, 59, 7));
    let club = done(&club, Edit::AddSession(details));
    assert_eq!(club.sessions[0].title, "Late", "earlier dates come first");
    assert_eq!(club.sessions[0].start, time(9, 30, 0, 0));
}

#[test]
fn what_is_gone_is_said_to_be_gone() {
    let club = random::start();
    let s = club.sessions[0].id;
    let p = club.participants[0].id;
    let nobody = daystrand::model::ids::ParticipantId(999);
    let step = StepRef::Slot(daystrand::model::ids::SlotId(999));
    for edit in [
        Edit::RemoveParticipant(nobody),
        Edit::Attend(s, nobody, true),
        Edit::Board(s, nobody, BoardEdit::RestoreAll),
        Edit::Board(s, p, BoardEdit::Move(vec![step], 0)),
        Edit::Board(
            s,
            p,
            BoardEdit::Insert(content(Some(ActivityId(999)), "x"), 0),
        ),
        Edit::Timetable(s, TimetableEdit::Insert(ActivityId(999), 0)),
        Edit::RemoveSession(daystrand::model::ids::SessionId(999)),
    ] {
        let said = refused(&club, edit).sentence;
        assert!(said.ends_with("is no longer there."), "{said}");
    }
}

#[test]
fn changes_are_taken_back_by_their_own_words_and_activity() {
    let club = random::start();
    let (s, p) = (club.sessions[0].id, club.participants[0].id);
    let song = club.sessions[0].timetable[1].clone();
    let step = StepRef::Slot(song.id);
    let on_board = |edit| Edit::Board(s, p, edit);
    let show = |club: &Club| {
        let board = derive(club, club.session(s).unwrap(), p);
        board.steps[board.position(step).unwrap()].clone()
    };

    let words = done(
        &club,
        on_board(BoardEdit::Relabel(step, " Sing with Bo ".into())),
    );
    assert_eq!(show(&words).label, "Sing with Bo");
    assert!(show(&words).relabelled);
    for back in ["Song", "  "] {
        assert_eq!(
            done(&words, on_board(BoardEdit::Relabel(step, back.into()))),
            club
        );
    }

    let swapped = done(
        &words,
        on_board(BoardEdit::Replace(step, content(None, "Drum"))),
    );
    assert_eq!(
        show(&swapped).label,
        "Drum",
        "new content comes with its own words"
    );
    let instead_of = "Song".to_owned();
    assert_eq!(show(&swapped).state, StepState::Swapped { instead_of });
    let own = content(Some(song.activity), "whatever");
    assert_eq!(
        done(&swapped, on_board(BoardEdit::Replace(step, own.clone()))),
        club
    );

    let off = done(&swapped, on_board(BoardEdit::TakeOff(step)));
    assert_eq!(show(&off).state, StepState::NotToday);
    assert_eq!(done(&off, on_board(BoardEdit::TakeOff(step))), off);
    assert_eq!(done(&off, on_board(BoardEdit::Replace(step, own))), club);
    assert_eq!(done(&off, on_board(BoardEdit::Restore(step))), club);
    assert_eq!(done(&off, on_board(BoardEdit::RestoreAll)), club);

    // The timetable comes round to what the board shows already.
    let boat = club.activities[2].id;
    let swap = done(
        &club,
        on_board(BoardEdit::Replace(step, content(Some(boat), ""))),
    );
    let same = done(
        &swap,
        Edit::Timetable(s, TimetableEdit::Replace(song.id, boat)),
    );
    assert_eq!(show(&same).state, StepState::AsTimetable);
    let apart = done(
        &same,
        Edit::Timetable(s, TimetableEdit::Replace(song.id, song.activity)),
    );
    assert!(matches!(show(&apart).state, StepState::Swapped { .. }));
}

#[test]
fn the_part_follows_the_activity_unless_it_was_chosen() {
    let club = random::start();
    let s = club.sessions[0].id;
    let (shore, water) = (club.parts[0].id, club.parts[1].id);
    let song = club.sessions[0].timetable[1].id;
    let swim = club.activities[3].id;
    let part = |club: &Club| club.sessions[0].slot(song).unwrap().part;
    let replace = || Edit::Timetable(s, TimetableEdit::Replace(song, swim));
    assert_eq!(part(&done(&club, replace())), water);
    let (club, made) = apply(&club, &Edit::AddPart("Hall".into())).unwrap();
    let Made::Part(hall) = made else { panic!() };
    let club = done(&club, Edit::Timetable(s, TimetableEdit::Part(song, hall)));
    assert_eq!(part(&done(&club, replace())), hall);
    assert_eq!(part(&random::start()), shore);
    refused(
        &club,
        Edit::Timetable(s, TimetableEdit::Part(song, PartId(99))),
    );
}

#[test]
fn removing_a_person_takes_their_changes_along() {
    let club = random::start();
    let s = club.sessions[0].id;
    let p = club.participants[0].id;
    let step = StepRef::Slot(club.sessions[0].timetable[0].id);
    let club = done(&club, Edit::Board(s, p, BoardEdit::TakeOff(step)));
    let club = done(&club, Edit::Attend(s, p, false));
    let club = done(&club, Edit::RemoveParticipant(p));
    assert!(club.sessions[0].hand.is_empty() && club.sessions[0].away.is_empty());
}

#[test]
fn a_copied_session_starts_clean() {
    let club = random::start();
    let s = club.sessions[0].id;
    let p = club.participants[0].id;
    let step = StepRef::Slot(club.sessions[0].timetable[0].id);
    let club = done(&club, Edit::Board(s, p, BoardEdit::TakeOff(step)));
    let club = done(&club, Edit::Attend(s, p, false));
    let details = random::details("Next", date(2026, 5, 9), time(9, 30, 0, 0));
    let club = done(&club, Edit::CopySession(s, details));
    let copy = &club.sessions[1];
    assert!(copy.hand.is_empty() && copy.away.is_empty());
    let rows = |i: usize| -> Vec<_> {
        let rows = &club.sessions[i].timetable;
        rows.iter()
            .map(|r| (r.activity, r.part, r.minutes))
            .collect()
    };
    assert_eq!(rows(0), rows(1));
    assert!(
        copy.timetable
            .iter()
            .all(|r| club.sessions[0].slot(r.id).is_none())
    );
}
