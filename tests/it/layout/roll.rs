//! The roll: names as shown, marks, how each says "here", and head counts to fill in.

use std::sync::Arc;

use daystrand::layout::{Request, Sheet, SheetKind};
use daystrand::model::club::{Club, Paper};
use daystrand::model::ids::ParticipantId;
use daystrand::model::profile::Field;
use daystrand::page::dump::dump;

use super::{all, check, lay_out, words_on};
use crate::fixture;

fn roll(club: &Club, paper: Paper) -> Sheet {
    let request = Request {
        kinds: vec![SheetKind::Roll],
        paper,
        ..all(club)
    };
    let laid = lay_out(club, &request);
    check(club, &request, &laid, "roll");
    laid.sheets.into_iter().next().unwrap()
}

fn crowd(people: usize) -> Club {
    let mut club = fixture::club();
    let more = (club.participants.len()..people).map(|i| {
        let mut p = (*club.participants[i % 8]).clone();
        p.id = ParticipantId(60_000 + i as u32);
        p.name = format!("Name{i}");
        p.profile.set(Field::SaysHere, "Lifts a hand".into());
        Arc::new(p)
    });
    let more: Vec<_> = more.collect();
    club.participants.extend(more);
    club
}

fn flat(sheet: &Sheet) -> String {
    let text = words_on(sheet);
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

#[test]
fn twenty_participants_stand_on_one_page() {
    for (people, pages) in [(8, 1), (20, 1), (45, 2)] {
        let sheet = roll(&crowd(people), Paper::A4);
        assert_eq!(sheet.pages.len(), pages, "{people} people");
        let text = flat(&sheet);
        for i in 8..people {
            assert_eq!(text.matches(&format!("Name{i} ")).count(), 1, "{i}");
        }
        for (i, page) in sheet.pages.iter().enumerate() {
            assert_eq!(dump(page).contains("go on"), i > 0, "page {i}");
        }
    }
}

/// Shown name, mark and how someone says "here"; nothing else that was written down of anyone.
#[test]
fn the_roll_tells_nothing_but_name_mark_and_how_here_is_said() {
    let mut club = fixture::club();
    let p = Arc::make_mut(&mut club.participants[0]);
    for field in Field::ALL {
        p.profile.set(field, format!("zq{}q", field.word()));
    }
    let text = flat(&roll(&club, Paper::A4));
    for field in Field::ALL {
        let here = field == Field::SaysHere;
        let word = format!("zq{}q", field.word());
        assert_eq!(text.contains(&word), here, "{field:?}");
    }
    for p in &club.participants {
        assert!(text.contains(&p.name));
    }
    assert!(text.contains("Mark: kite"));
}

/// Common practice for roll calls with people who do not speak: no answer is "not yet seen".
#[test]
fn no_answer_is_not_absent_and_a_difference_of_one_is_looked_into() {
    let text = flat(&roll(&fixture::club(), Paper::A4));
    for words in [
        "No answer is not absent: tick “not yet seen”",
        "8 participants are expected.",
        "11 − 1 − 1 = 9",
        "A difference of any size, more or fewer: stop and look",
        "waterproof paper",
        "Before the water",
    ] {
        assert!(text.contains(words), "{words} in {text}");
    }
    let changes = text.matches("Change of helpers").count();
    assert_eq!(changes, 2, "there is room for more than one change");
    assert!(!text.to_lowercase().contains("absent:") || text.contains("is not absent:"));
}

#[test]
fn who_is_away_is_not_on_the_roll_and_a_day_on_land_has_no_counts_of_water() {
    let mut club = fixture::club();
    let away = club.participants[4].clone();
    let wet: Vec<_> = club
        .activities
        .iter()
        .filter(|a| a.in_water)
        .map(|a| a.id)
        .collect();
    let session = fixture::session_mut(&mut club);
    session.away.insert(away.id);
    session.timetable.retain(|s| !wet.contains(&s.activity));
    let text = flat(&roll(&club, Paper::A4));
    assert!(text.contains(&format!("Not expected today: {}.", away.name)));
    assert!(text.contains("7 participants are expected."));
    assert!(!text.contains("the water") && text.contains("After toilets"));
}
