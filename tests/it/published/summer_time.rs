//! The days on which clocks are put back or forward: a session keeps what a clock at the place
//! shows.
//!
//! European Union: Directive 2000/84/EC, articles 2 and 3 (last Sunday of March and of October, at
//! 01:00 of world time); the United Kingdom has the same days by its Summer Time Order 2002. New
//! South Wales: Standard Time Act 1987 as amended (first Sunday of April, 03:00 becomes 02:00). Both
//! from memory. That a session is kept as the time on the clock is common practice.

use std::fs;
use std::path::Path;
use std::process::Command;

use daystrand::model::club::Club;
use daystrand::model::edit::{Edit, Made, SessionDetails, apply};
use daystrand::model::session::Session;
use daystrand::plan::clock::clock;
use daystrand::storage;
use daystrand::ui::dates;
use jiff::civil::{Date, Time, Weekday, date, time};
use tempfile::tempdir;

use crate::fixture;

/// Where; the day the clocks change, a Sunday; the starts that are looked at: one on a usual
/// morning, one in the hour that comes twice or not at all.
const CHANGES: [(&str, Date, [Time; 2]); 3] = [
    (
        "Europe/London",
        date(2025, 10, 26),
        [time(9, 30, 0, 0), time(1, 30, 0, 0)],
    ),
    (
        "Europe/London",
        date(2026, 3, 29),
        [time(9, 30, 0, 0), time(1, 30, 0, 0)],
    ),
    (
        "Australia/Sydney",
        date(2026, 4, 5),
        [time(9, 30, 0, 0), time(2, 30, 0, 0)],
    ),
];

#[test]
fn the_days_are_those_of_the_rules() {
    let sunday = |day: Date| day.weekday() == Weekday::Sunday;
    for (_, day, _) in CHANGES {
        assert!(sunday(day), "{day}");
    }
    let last = |day: Date| dates::days_on(day, 7).month() != day.month();
    assert!(last(CHANGES[0].1) && last(CHANGES[1].1));
    assert!(CHANGES[2].1.day() <= 7);
}

/// The demo club with its first session on a day at a time, and no other.
fn on(day: Date, start: Time) -> Club {
    let mut club = fixture::club();
    club.sessions.truncate(1);
    let session = fixture::session_mut(&mut club);
    (session.date, session.start) = (day, start);
    session.hand.clear();
    session.records.clear();
    club
}

/// The same session a week later, as "Copy for next week" in the window makes it.
fn a_week_on(club: &Club) -> Club {
    let from = club.sessions.last().unwrap();
    let details = SessionDetails {
        title: from.title.clone(),
        date: dates::days_on(from.date, 7),
        start: from.start,
        place: from.place.clone(),
    };
    let (club, made) = apply(club, &Edit::CopySession(from.id, details)).unwrap();
    assert!(matches!(made, Made::Session(_)));
    club
}

fn times(club: &Club, session: &Session) -> Vec<String> {
    let clock = clock(session, &club.rules);
    let rows = clock.rows.iter();
    rows.map(|r| format!("{}-{}", r.from, r.to)).collect()
}

/// A session a week before the change, on the day and a week after, saved and opened in between.
#[test]
fn a_session_a_week_later_begins_when_the_first_one_did() {
    for (place, day, starts) in CHANGES {
        for start in starts {
            let mut club = on(dates::days_on(day, -7), start);
            let dir = tempdir().unwrap();
            let file = dir.path().join("club.daystrand");
            for _ in 0..2 {
                club = a_week_on(&club);
                storage::save(&file, &club).unwrap();
                let opened = storage::load(&file).unwrap();
                assert_eq!((&opened.club, opened.notes.len()), (&club, 0), "{place}");
                club = opened.club;
            }
            let days: Vec<Date> = club.sessions.iter().map(|s| s.date).collect();
            assert_eq!(days, [-7, 0, 7].map(|d| dates::days_on(day, d)), "{place}");
            let first = times(&club, &club.sessions[0]);
            let begins = format!("{:02}:{:02}-", start.hour(), start.minute());
            assert!(first[0].starts_with(&begins), "{first:?}");
            for session in &club.sessions {
                assert_eq!(session.start, start, "{place}, {}", session.date);
                assert_eq!(times(&club, session), first, "{place}, {}", session.date);
            }
            // What stands in the file is what the clock shows, without a zone.
            let text = fs::read_to_string(&file).unwrap();
            for written in [format!("\"{day}\""), format!("\"{}\"", dates::clock(start))] {
                assert!(text.contains(&written), "{written} for {place}");
            }
        }
    }
}

/// All files that the program itself writes for the day of the change, on a computer that keeps the
/// time of a place, and what it says of the club.
fn written(file: &Path, day: Date, zone: &str) -> Vec<(String, Vec<u8>)> {
    let out = tempdir().unwrap();
    let day = day.to_string();
    let (file, to) = (file.to_str().unwrap(), out.path().to_str().unwrap());
    let run = |words: &[&str]| {
        let mut command = Command::new(env!("CARGO_BIN_EXE_daystrand"));
        command.args(words).env("TZ", zone).output().unwrap()
    };
    let sheets = [
        "--for",
        "leaf",
        "--sheet",
        "story,session",
        "--format",
        "pdf,text",
    ];
    let words = ["print", file, "--to", to, "--session", &day];
    let printed = run(&[&words[..], &sheets[..]].concat());
    assert_eq!(printed.status.code(), Some(0), "{printed:?}");
    let mut all: Vec<_> = fs::read_dir(out.path())
        .unwrap()
        .map(|e| e.unwrap().path())
        .map(|p| (p.file_name().unwrap().to_str().unwrap().to_owned(), p))
        .map(|(name, path)| (name, fs::read(path).unwrap()))
        .collect();
    all.sort();
    all.push((
        "check".into(),
        run(&["check", file, "--session", &day]).stdout,
    ));
    all
}

#[test]
fn what_is_printed_does_not_depend_on_where_the_computer_is() {
    for (place, day, starts) in CHANGES {
        let dir = tempdir().unwrap();
        let file = dir.path().join("club.daystrand");
        storage::save(&file, &on(day, starts[1])).unwrap();
        let there = written(&file, day, place);
        assert_eq!(there.len(), 4, "two sheets, a story in words, a check");
        for zone in ["UTC", "America/Los_Angeles", "Pacific/Kiritimati"] {
            let elsewhere = written(&file, day, zone);
            let differs = there.iter().zip(&elsewhere).find(|(a, b)| a != b);
            assert!(differs.is_none(), "{:?} in {zone}", differs.map(|d| &d.0.0));
        }
        let story = there.iter().find(|(name, _)| name.ends_with(".txt"));
        let story = String::from_utf8(story.unwrap().1.clone()).unwrap();
        let begins = format!("It starts at {} at", dates::clock(starts[1]));
        let day = format!("Sunday {}", day.day());
        assert!(story.contains(&begins), "{story}");
        assert!(story.contains(&day), "{story}");
    }
}
