//! The clock of a session; everything else that is computed about a day in files of its own.

mod certificates;
mod changes;
mod chunks;
mod equipment;
mod pairing;
mod reminders;
mod roll;
pub mod rotation;
mod since;
mod water;
mod weather;

use daystrand::model::club::Rules;
use daystrand::model::ids::{ActivityId, PartId, SessionId, SlotId};
use daystrand::model::session::{Session, Slot};
use daystrand::plan::clock::{Clock, clock};
use jiff::civil::{Date, Time};

/// A session whose slots are (minutes, part).
fn session(start: (i8, i8), slots: &[(u32, u32)]) -> Session {
    Session {
        id: SessionId(1),
        title: String::new(),
        date: Date::constant(2027, 6, 12),
        start: Time::constant(start.0, start.1, 0, 0),
        place: String::new(),
        timetable: slots
            .iter()
            .enumerate()
            .map(|(i, &(minutes, part))| Slot {
                id: SlotId(i as u32 + 10),
                activity: ActivityId(2),
                part: PartId(part),
                minutes,
                leads: Default::default(),
                options: vec![],
                off: None,
            })
            .collect(),
        turns: None,
        today: Default::default(),
        away: Default::default(),
        helpers_away: Default::default(),
        stories: Default::default(),
        beside: Default::default(),
        hand: Default::default(),
        conditions: vec![],
        records: Default::default(),
        from: None,
    }
}

fn times(start: (i8, i8), slots: &[(u32, u32)], transition: u32, limit: u32) -> Clock {
    let rules = Rules {
        transition_minutes: transition,
        session_minutes: limit,
        ..Rules::default()
    };
    clock(&session(start, slots), &rules)
}

fn written(clock: &Clock) -> String {
    let rows: Vec<_> = clock
        .rows
        .iter()
        .map(|r| format!("{}-{}", r.from, r.to))
        .collect();
    rows.join(" ")
}

/// Eight slots from 09:30, in the minutes of a usual morning; sums by hand.
const MORNING: [(u32, u32); 8] = [
    (10, 1),
    (10, 1),
    (20, 2),
    (10, 3),
    (25, 3),
    (5, 4),
    (5, 4),
    (5, 4),
];

#[test]
fn ninety_minutes_from_half_past_nine_end_at_eleven() {
    let clock = times((9, 30), &MORNING, 0, 90);
    assert_eq!(clock.end.to_string(), "11:00");
    assert_eq!(
        (clock.minutes(), clock.overrun(), clock.slack()),
        (90, 0, 0)
    );
    assert_eq!(
        written(&clock),
        "09:30-09:40 09:40-09:50 09:50-10:10 10:10-10:20 10:20-10:45 10:45-10:50 10:50-10:55 \
         10:55-11:00"
    );
}

#[test]
fn seven_moves_of_three_minutes_make_it_end_at_eleven_twenty_one() {
    let clock = times((9, 30), &MORNING, 3, 90);
    assert_eq!(clock.end.to_string(), "11:21");
    assert_eq!(
        (clock.minutes(), clock.overrun(), clock.slack()),
        (111, 21, 0)
    );
}

#[test]
fn the_closing_part_begins_at_the_latest_when_it_still_ends_in_time() {
    // 5 + 3 + 5 + 3 + 5 = 21 minutes before 11:00.
    let clock = times((9, 30), &MORNING, 3, 90);
    assert_eq!(clock.closing().len(), 3);
    assert_eq!(clock.closing()[0].from.to_string(), "11:00");
    assert_eq!(clock.latest_closing().unwrap().to_string(), "10:39");
    let with_time_left = times((9, 30), &MORNING, 3, 120);
    assert_eq!(with_time_left.slack(), 9);
    assert_eq!(
        with_time_left.latest_closing().unwrap().to_string(),
        "11:09"
    );
}

#[test]
fn a_closing_part_longer_than_the_session_begins_with_it() {
    let clock = times((9, 30), &[(30, 1), (120, 1)], 0, 60);
    assert_eq!(clock.latest_closing().unwrap().to_string(), "09:30");
    assert_eq!(clock.overrun(), 90);
}

#[test]
fn the_part_that_comes_back_is_closing_only_at_the_end() {
    let clock = times((9, 0), &[(5, 4), (5, 1), (5, 4)], 0, 60);
    assert_eq!(clock.closing().len(), 1);
    assert_eq!(clock.closing()[0].slot, SlotId(12));
}

#[test]
fn a_session_goes_on_past_midnight() {
    let clock = times((23, 30), &[(20, 1), (20, 1)], 5, 90);
    assert_eq!(written(&clock), "23:30-23:50 23:55-00:15");
    assert_eq!(clock.end.days_later(), 1);
    assert_eq!((clock.minutes(), clock.slack()), (45, 45));
    assert_eq!(clock.limit.to_string(), "01:00");
    let to_midnight = times((23, 30), &[(30, 1)], 0, 90);
    assert_eq!(
        (
            to_midnight.end.to_string().as_str(),
            to_midnight.end.days_later()
        ),
        ("00:00", 1)
    );
}

#[test]
fn an_empty_timetable_ends_as_it_begins() {
    let clock = times((9, 30), &[], 3, 90);
    assert_eq!(
        (clock.end, clock.minutes(), clock.slack()),
        (clock.start, 0, 90)
    );
    assert_eq!((clock.closing().len(), clock.latest_closing()), (0, None));
}

#[test]
fn numbers_without_measure_do_not_overflow() {
    let clock = times((9, 30), &[(u32::MAX, 1), (u32::MAX, 1)], u32::MAX, u32::MAX);
    assert_eq!(clock.overrun(), 0);
    assert_eq!(clock.rows.len(), 2);
}
