//! A session against the clock and the dates of a season.
//!
//! That a timetable is summed with its transitions, that session dates are compared with dates by
//! which something ends, and that the day itself still counts, is common practice. That everything
//! kept about a participant has a day by which it is deleted: a Finnish data protection project on
//! hobbies (health data of children), read in part; Regulation (EU) 2016/679, article 5 (1) (e).

use std::sync::Arc;

use daystrand::check;
use daystrand::layout::SheetKind;
use daystrand::model::club::Club;
use daystrand::model::edit::{Edit, SessionDetails, apply};
use daystrand::model::finding::{Finding, Severity, Spot};
use daystrand::model::profile::{Field, Papers};
use daystrand::ui::dates;
use jiff::civil::{Date, date};

use super::words;
use crate::fixture;

/// The demo's first session from 09:30 in eight slots of 90 minutes together, within 90 minutes.
fn morning(between: u32) -> Club {
    let mut club = fixture::club();
    club.rules.transition_minutes = between;
    club.rules.session_minutes = 90;
    let minutes = [10, 10, 20, 10, 25, 5, 5, 5];
    let session = fixture::session_mut(&mut club);
    session.timetable.truncate(minutes.len());
    for (slot, minutes) in session.timetable.iter_mut().zip(minutes) {
        slot.minutes = minutes;
    }
    session.hand.clear();
    club
}

fn overrun(club: &Club) -> Option<Finding> {
    let mut all = check::run(club, Some(&club.sessions[0])).into_iter();
    all.find(|f| f.code == "time.overrun")
}

/// 10 + 10 + 20 + 10 + 25 + 5 + 5 + 5 = 90; with seven times 3 between, 111.
#[test]
fn paper_and_checks_tell_when_a_morning_ends() {
    let club = morning(0);
    let sheet = words(&club, SheetKind::SessionSheet);
    assert!(sheet.contains("09:30 to 11:00"), "{sheet}");
    assert_eq!(overrun(&club), None);
    let club = morning(3);
    let sheet = words(&club, SheetKind::SessionSheet);
    assert!(sheet.contains("09:30 to 11:21"), "{sheet}");
    let found = overrun(&club).unwrap();
    let said = "ends at 11:21, 21 minutes after the 90 minutes";
    assert!(found.sentence.contains(said), "{}", found.sentence);
}

/// The demo's first session on five Saturdays from 8 November 2025.
fn season() -> Club {
    let mut club = fixture::club();
    club.sessions.truncate(1);
    fixture::session_mut(&mut club).date = date(2025, 11, 8);
    for _ in 1..5 {
        let last = club.sessions.last().unwrap();
        let details = SessionDetails {
            title: last.title.clone(),
            date: dates::days_on(last.date, 7),
            start: last.start,
            place: last.place.clone(),
        };
        club = apply(&club, &Edit::CopySession(last.id, details))
            .unwrap()
            .0;
    }
    club
}

fn delete_by(club: &mut Club, who: usize, day: Date) {
    let papers = Papers {
        delete_by: Some(day),
        ..Papers::default()
    };
    let who = &mut club.participants[who];
    Arc::make_mut(who).profile.set_papers(papers);
}

/// Whose papers are past their day, session by session.
fn past(club: &Club) -> Vec<Vec<Finding>> {
    let of = |s: &Arc<_>| {
        let all = check::run(club, Some(s)).into_iter();
        all.filter(|f| f.code == "privacy.delete_by_past").collect()
    };
    club.sessions.iter().map(of).collect()
}

/// 8, 15, 22 and 29 November, 6 December: what ends on 22 November is told for the last two.
#[test]
fn what_ends_on_the_day_of_the_third_session_is_told_from_the_fourth() {
    let mut club = season();
    let days: Vec<String> = club.sessions.iter().map(|s| dates::short(s.date)).collect();
    let saturdays = [
        "8 November",
        "15 November",
        "22 November",
        "29 November",
        "6 December",
    ];
    assert_eq!(days, saturdays.map(|d| format!("Saturday {d}")));
    for p in 0..club.participants.len() {
        delete_by(&mut club, p, date(2026, 7, 31));
    }
    assert!(past(&club).iter().all(Vec::is_empty));
    delete_by(&mut club, 2, date(2025, 11, 22));
    let told = past(&club);
    let counts: Vec<usize> = told.iter().map(Vec::len).collect();
    assert_eq!(counts, [0, 0, 0, 1, 1]);
    let found = &told[3][0];
    assert_eq!(found.severity, Severity::StopAndLook);
    assert_eq!(found.spot, Spot::Participant(club.participants[2].id));
}

/// Everyone whose day is past is listed, whether they come or not, and with the mark; nothing that
/// is to be deleted is repeated.
#[test]
fn everyone_whose_day_is_past_is_listed_also_who_is_away() {
    let mut club = season();
    for p in 0..club.participants.len() {
        delete_by(&mut club, p, date(2025, 11, 7 + p as i8));
    }
    let first = &mut club.participants[0];
    Arc::make_mut(first)
        .profile
        .set(Field::Surname, "Quillfeather".into());
    let away = club.participants[0].id;
    fixture::session_mut(&mut club).away.insert(away);
    let told = past(&club);
    let counts: Vec<usize> = told.iter().map(Vec::len).collect();
    // 7 to 14 November, against 8, 15, … November.
    assert_eq!(counts, [1, 8, 8, 8, 8]);
    let found = &told[0][0];
    assert_eq!(found.spot, Spot::Participant(away));
    let mark = club.participants[0].mark.as_str();
    assert!(found.sentence.contains(mark), "{}", found.sentence);
    let mut all = told.iter().flatten();
    assert!(all.all(|f| !f.sentence.contains("Quillfeather")));
}
