//! Save then open gives the same club; the same club gives the same bytes; no bytes make it panic.

use std::path::Path;

use daystrand::model::club::Club;
use daystrand::model::invariants;
use daystrand::storage::{from_bytes, to_bytes};
use proptest::prelude::*;

use crate::model::random::{self, seeds};

fn bytes(club: &Club) -> Vec<u8> {
    to_bytes(Path::new("a.daystrand"), club).unwrap()
}

fn open(content: &[u8]) -> Result<Club, String> {
    let loaded = from_bytes(Path::new("a.daystrand"), content).map_err(|e| e.to_string())?;
    assert_eq!(invariants::check(&loaded.club), Vec::<String>::new());
    Ok(loaded.club)
}

proptest! {
    #![proptest_config(crate::chance::cases(300))]

    #[test]
    fn what_is_saved_is_what_is_opened(seeds in seeds(60)) {
        let club = random::club(&seeds);
        let content = bytes(&club);
        let loaded = from_bytes(Path::new("a.daystrand"), &content).unwrap();
        prop_assert_eq!(&loaded.notes, &Vec::<String>::new());
        prop_assert_eq!(&loaded.club, &club);
        prop_assert_eq!(bytes(&loaded.club), content);
    }

    /// A file that was cut, or in which bytes were changed, opens as a whole club or not at all.
    #[test]
    fn a_damaged_file_opens_whole_or_not_at_all(
        seeds in seeds(20),
        cut in 0.0..1.0_f64,
        flips in prop::collection::vec((0.0..1.0_f64, 0..8_u32), 1..4),
    ) {
        let good = bytes(&random::club(&seeds));
        let at = |share: f64| (share * good.len() as f64) as usize;
        // Without its last line break a file is still whole.
        let said = open(&good[..at(cut).min(good.len() - 2)]).unwrap_err();
        prop_assert!(said.contains("cut off") || at(cut) < 40, "{}", said);
        let mut flipped = good.clone();
        for (share, bit) in flips {
            flipped[at(share)] ^= 1 << bit;
        }
        if let Err(said) = open(&flipped) {
            prop_assert!(said.starts_with("“a.daystrand” "), "{}", said);
        }
    }

    #[test]
    fn any_bytes_get_an_answer(content in prop::collection::vec(any::<u8>(), 0..400)) {
        open(&content).unwrap_err();
    }

    /// Any number in the place of any number of a good file.
    #[test]
    fn any_number_gets_an_answer(
        which in 0..400_usize,
        number in prop_oneof![
            Just("NaN"), Just("-1"), Just("1e999"), Just("1e308"), Just("99999999999999999999"),
            Just("4294967295"), Just("0.5"), Just("null"), Just("\"7\""), Just("[]"),
        ],
    ) {
        let good = String::from_utf8(bytes(&daystrand::workbench::demo::club())).unwrap();
        let digits = |c: char| c.is_ascii_digit();
        let places: Vec<usize> = good
            .match_indices(": ")
            .map(|(i, _)| i + 2)
            .filter(|i| good[*i..].starts_with(digits))
            .collect();
        let at = places[which % places.len()];
        let end = at + good[at..].find(|c| !digits(c)).unwrap();
        let bad = format!("{}{number}{}", &good[..at], &good[end..]);
        if let Err(said) = open(bad.as_bytes()) {
            prop_assert!(said.starts_with("“a.daystrand” "), "{}", said);
        }
    }
}

/// How the file is set out, for whoever reads one. Changing this changes every file on every disk.
#[test]
fn the_file_is_pleasant_to_read() {
    let content = String::from_utf8(bytes(&sample())).unwrap();
    let kept = include_str!("../../cases/files/good.daystrand");
    if std::env::var_os("UPDATE_GOLDEN").is_some() {
        let path = concat!(
            env!("CARGO_MANIFEST_DIR"),
            "/tests/cases/files/good.daystrand"
        );
        std::fs::write(path, &content).unwrap();
    } else {
        assert_eq!(content, kept);
    }
}

fn sample() -> Club {
    use daystrand::model::edit::{BoardEdit, Edit, TimetableEdit, apply};
    use daystrand::model::hand::Content;
    use daystrand::model::ids::{StepRef, SymbolId};
    let mut club = random::start();
    let (s, p) = (club.sessions[0].id, club.participants[0].id);
    let rows: Vec<_> = club.sessions[0].timetable.iter().map(|r| r.id).collect();
    let quiet = Content {
        activity: None,
        symbol: SymbolId::new("quiet_place"),
        label: "Quiet \"place\"".into(),
    };
    let boat = Content {
        activity: Some(club.activities[2].id),
        ..quiet.clone()
    };
    for edit in [
        Edit::Board(s, p, BoardEdit::Insert(quiet, 3)),
        Edit::Board(s, p, BoardEdit::Move(vec![StepRef::Slot(rows[4])], 0)),
        Edit::Board(s, p, BoardEdit::Replace(StepRef::Slot(rows[1]), boat)),
        Edit::Board(s, p, BoardEdit::TakeOff(StepRef::Slot(rows[3]))),
        Edit::Board(
            s,
            p,
            BoardEdit::Relabel(StepRef::Slot(rows[0]), "Ring".into()),
        ),
        Edit::Timetable(s, TimetableEdit::Minutes(rows[5], 25)),
        Edit::Attend(s, club.participants[2].id, false),
    ] {
        club = apply(&club, &edit).unwrap().0;
    }
    club
}

/// Nothing of the demo is lost, and a whole season of a large club stays far below the bound.
#[test]
fn large_and_real_clubs_go_through() {
    let demo = daystrand::workbench::demo::club();
    assert_eq!(open(&bytes(&demo)), Ok(demo));
    let mut club = sample();
    let day =
        |i: usize| jiff::civil::date(2026, 1, 1).saturating_add(jiff::Span::new().days(i as i64));
    let from = club.sessions[0].clone();
    for i in 0..200 {
        let mut session = daystrand::model::session::Session::clone(&from);
        session.id = daystrand::model::ids::SessionId(10_000 + i as u32);
        session.date = day(i + 200);
        for (n, row) in session.timetable.iter_mut().enumerate() {
            row.id = daystrand::model::ids::SlotId(20_000 + (i * 100 + n) as u32);
        }
        session.hand.clear();
        club.sessions.push(session.into());
    }
    club.next_id = 100_000;
    let content = bytes(&club);
    assert!(content.len() < 2_000_000, "{}", content.len());
    assert_eq!(open(&content), Ok(club));
}
