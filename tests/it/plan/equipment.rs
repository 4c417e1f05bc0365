//! What to bring: the peak by overlap, each value by hand.

use std::sync::Arc;

use daystrand::model::session::Off;
use daystrand::model::turns::{Station, Turns};
use daystrand::plan::clock::Moment;
use daystrand::plan::equipment::{Used, needed, of_session};
use jiff::civil::Time;

use crate::fixture;

type Row<'a> = ((i8, i8), (i8, i8), &'a [&'a str]);

fn brought(rows: &[Row<'_>]) -> Vec<String> {
    let at = |(h, m)| Moment::at(Time::constant(h, m, 0, 0));
    let lists: Vec<Vec<String>> = rows
        .iter()
        .map(|(_, _, things)| things.iter().map(|t| (*t).to_owned()).collect())
        .collect();
    let used: Vec<Used<'_>> = rows
        .iter()
        .zip(&lists)
        .map(|((from, to, _), things)| Used {
            from: at(*from),
            to: at(*to),
            things,
        })
        .collect();
    needed(&used)
}

#[test]
fn of_what_is_used_at_one_time_the_sum_and_of_what_follows_the_greatest() {
    const TEN: (i8, i8) = (10, 0);
    const HALF: (i8, i8) = (10, 30);
    const ELEVEN: (i8, i8) = (11, 0);
    let cases: [(&str, &[Row<'_>], &[&str]); 9] = [
        (
            "one after the other",
            &[
                (TEN, HALF, &["6 boards"]),
                ((10, 40), ELEVEN, &["4 boards"]),
            ],
            &["6 boards"],
        ),
        (
            "at the same time",
            &[(TEN, HALF, &["6 boards"]), (TEN, HALF, &["4 boards"])],
            &["10 boards"],
        ),
        (
            "one begins as the other ends",
            &[(TEN, HALF, &["6 boards"]), (HALF, ELEVEN, &["4 boards"])],
            &["6 boards"],
        ),
        (
            "a minute of overlap is enough",
            &[
                (TEN, (10, 31), &["6 boards"]),
                (HALF, ELEVEN, &["4 boards"]),
            ],
            &["10 boards"],
        ),
        (
            "two short ones within a long one: 5 + 4, not 5 + 3 + 4",
            &[
                (TEN, ELEVEN, &["5 boards"]),
                (TEN, (10, 20), &["3 boards"]),
                ((10, 20), (10, 40), &["4 boards"]),
            ],
            &["9 boards"],
        ),
        (
            "large or small letters",
            &[(TEN, HALF, &["2 Buckets"]), (TEN, HALF, &["3 buckets"])],
            &["5 Buckets"],
        ),
        (
            "without a number nothing is counted",
            &[(TEN, HALF, &["mat path", " "]), (TEN, HALF, &["Mat path"])],
            &["mat path"],
        ),
        (
            "with a number here and none there",
            &[(TEN, HALF, &["ropes"]), (TEN, HALF, &["2 ropes"])],
            &["2 ropes"],
        ),
        (
            "in the order of first mention, and letters that only look like a number stay",
            &[
                (TEN, HALF, &["3m rope", "8 paddles"]),
                (HALF, ELEVEN, &["10 paddles", "a flag"]),
            ],
            &["3m rope", "10 paddles", "a flag"],
        ),
    ];
    for (what, rows, wanted) in cases {
        assert_eq!(brought(rows), wanted, "{what}");
        let back: Vec<Row<'_>> = rows.iter().rev().copied().collect();
        let sorted = |mut all: Vec<String>| {
            all.iter_mut().for_each(|t| *t = t.to_lowercase());
            all.sort();
            all
        };
        assert_eq!(
            sorted(brought(&back)),
            sorted(brought(rows)),
            "{what}, from the end"
        );
    }
}

#[test]
fn numbers_without_measure_do_not_overflow() {
    let most = format!("{} shells", u64::MAX);
    let row: Row<'_> = ((9, 0), (9, 5), &[&most]);
    assert_eq!(brought(&[row, row]), std::slice::from_ref(&most));
}

/// Three rows with 6, 4 and 2 buckets: one after the other 6; the first two in turns 10; called off
/// for something that needs one, 5.
#[test]
fn a_session_needs_the_sum_of_its_stations_and_nothing_for_what_is_called_off() {
    let mut club = fixture::club();
    let own: Vec<_> = club.activities.iter().take(4).map(|a| a.id).collect();
    for (a, n) in club.activities.iter_mut().zip([6, 4, 2, 1]) {
        Arc::make_mut(a).equipment = vec![format!("{n} buckets")];
    }
    let mut session = fixture::session_of(&[20, 20, 20]);
    for (slot, activity) in session.timetable.iter_mut().zip(&own) {
        slot.activity = *activity;
    }
    assert_eq!(of_session(&club, &session), ["6 buckets"]);
    let stations = session.timetable[..2].iter().map(|s| Station {
        slot: s.id,
        capacity: None,
    });
    session.turns = Some(Box::new(Turns {
        stations: stations.collect(),
        count: 2,
        minutes: 20,
        ..Turns::default()
    }));
    assert_eq!(of_session(&club, &session), ["10 buckets"]);
    session.timetable[0].off = Some(Off {
        instead: Some(own[3]),
    });
    assert_eq!(of_session(&club, &session), ["5 buckets"]);
    session.timetable[0].off = Some(Off { instead: None });
    assert_eq!(of_session(&club, &session), ["4 buckets"]);
}
