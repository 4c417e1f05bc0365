//! Counting down with pieces that are taken away one by one, whoever holds them deciding when: they
//! carry no minutes, so nothing on paper changes when an activity gets shorter. Common practice for
//! visual schedules: a countdown that names minutes is a promise that the day does not keep.

use std::sync::Arc;

use daystrand::layout::SheetKind;
use daystrand::model::club::Club;
use daystrand::page::dump::dump;

use super::sheets;
use crate::fixture;

/// What participants have in their hands.
const FOR_THEM: [SheetKind; 4] = [
    SheetKind::LargePrint,
    SheetKind::Tiles,
    SheetKind::BaseBoard,
    SheetKind::Cards,
];

/// The demo with a countdown for everyone and its boat lasting so many minutes.
fn boat_of(minutes: u32) -> Club {
    let mut club = fixture::club();
    for p in &mut club.participants {
        Arc::make_mut(p).standing.countdown = true;
    }
    let boat = club
        .activities
        .iter()
        .find(|a| a.label == "Boat")
        .unwrap()
        .id;
    let rows = &mut fixture::session_mut(&mut club).timetable;
    let row = rows.iter_mut().find(|r| r.activity == boat).unwrap();
    row.minutes = minutes;
    club
}

#[test]
fn a_shorter_activity_changes_no_sheet_with_a_countdown() {
    for kind in FOR_THEM {
        let pages = |minutes| -> Vec<String> {
            let sheets = sheets(&boat_of(minutes), kind);
            sheets.iter().flat_map(|s| &s.pages).map(dump).collect()
        };
        let (long, short) = (pages(20), pages(12));
        assert!(!long.is_empty(), "{kind:?}");
        assert_eq!(long, short, "{kind:?}");
    }
}

#[test]
fn pieces_to_count_down_with_say_no_minutes() {
    let words = super::words(&boat_of(20), SheetKind::Cards).to_lowercase();
    assert!(words.contains("5\n4\n3\n2\n1\n"), "{words}");
    assert!(
        !words.contains("minute") && !words.contains(" min"),
        "{words}"
    );
}
