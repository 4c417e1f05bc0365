//! What is due when, by the club's minutes.

use daystrand::plan::clock::Moment;
use daystrand::plan::reminders::{LastLook, Sunscreen, drinks, last_look, return_not_before};
use jiff::civil::Time;

fn at(hour: i8, minute: i8) -> Moment {
    Moment::at(Time::constant(hour, minute, 0, 0))
}

fn written(all: impl Iterator<Item = Moment>) -> String {
    let all: Vec<_> = all.map(|moment| moment.to_string()).collect();
    all.join(" ")
}

/// Practice of health bodies with the UV Index: 20 minutes before, again every two hours and after
/// water. The times by hand.
#[test]
fn sunscreen_is_due_again_after_two_hours_or_on_leaving_the_water() {
    let club = Sunscreen::default();
    let applied = club.first(at(9, 30));
    assert_eq!(applied, at(9, 10));
    assert_eq!(club.again_by(applied, &[]), at(11, 10));
    assert_eq!(club.again_by(applied, &[at(10, 45)]), at(10, 45));
    assert_eq!(club.again_by(applied, &[at(11, 30)]), at(11, 10));
    // Who was in the water before it was applied lost nothing of it.
    assert_eq!(club.again_by(applied, &[at(9, 5), at(9, 10)]), at(11, 10));
    // Several leave the water: the first of them, in whatever order.
    let leaving = [at(10, 50), at(9, 0), at(10, 20)];
    assert_eq!(club.again_by(applied, &leaving), at(10, 20));
}

#[test]
fn sunscreen_over_a_whole_day() {
    let club = Sunscreen {
        before: 15,
        again: 90,
    };
    let all = |leaving: &[Moment]| written(club.all(at(9, 0), at(13, 0), leaving));
    assert_eq!(all(&[]), "08:45 10:15 11:45");
    assert_eq!(all(&[at(9, 40)]), "08:45 09:40 11:10 12:40");
    assert_eq!(all(&[at(13, 0)]), "08:45 10:15 11:45 13:00");
    let short = club.all(at(9, 0), at(10, 0), &[]);
    assert_eq!(written(short), "08:45");
}

#[test]
fn no_minutes_between_is_once_and_not_for_ever() {
    let once = Sunscreen {
        before: 20,
        again: 0,
    };
    assert_eq!(written(once.all(at(9, 30), at(11, 0), &[])), "09:10");
    assert_eq!(drinks(at(9, 30), at(11, 0), 0).count(), 0);
}

#[test]
fn drinks_are_within_the_session() {
    let every = |minutes| written(drinks(at(9, 30), at(11, 0), minutes));
    assert_eq!(every(20), "09:50 10:10 10:30 10:50");
    // One at the very end belongs to the way home.
    assert_eq!(every(30), "10:00 10:30");
    assert_eq!(every(90), "");
    assert_eq!(every(u32::MAX), "");
    assert_eq!(drinks(at(11, 0), at(9, 30), 20).count(), 0);
}

/// Common practice: what was looked at before the session is looked at again after the minutes that
/// the club chose.
#[test]
fn a_look_is_older_only_beyond_the_clubs_minutes() {
    let looks = [at(10, 0), at(9, 0), at(11, 30)];
    let found = |now| last_look(&looks, now, 30);
    assert_eq!(found(at(8, 59)), LastLook::None);
    let cases = [
        (at(9, 0), at(9, 0), 0, false),
        (at(9, 59), at(9, 0), 59, true),
        (at(10, 30), at(10, 0), 30, false),
        (at(10, 31), at(10, 0), 31, true),
        (at(11, 29), at(10, 0), 89, true),
        (at(11, 30), at(11, 30), 0, false),
    ];
    for (now, last, minutes, older) in cases {
        let expected = LastLook::At {
            last,
            minutes,
            older,
        };
        assert_eq!(found(now), expected, "{now}");
    }
    assert_eq!(last_look(&[], at(10, 0), 30), LastLook::None);
}

/// Weather services, as sport bodies repeat it: 30 minutes after the last thunder or flash, and each
/// new one begins the wait anew.
#[test]
fn the_wait_after_thunder_begins_anew_with_each() {
    assert_eq!(return_not_before(&[], 30), None);
    assert_eq!(return_not_before(&[at(10, 12)], 30), Some(at(10, 42)));
    let both = [at(10, 12), at(10, 30)];
    assert_eq!(return_not_before(&both, 30), Some(at(11, 0)));
    let written_down_late = [at(10, 30), at(10, 12), at(9, 50)];
    assert_eq!(return_not_before(&written_down_late, 30), Some(at(11, 0)));
    // The club's own minutes, and past midnight.
    assert_eq!(return_not_before(&both, 45), Some(at(11, 15)));
    let late = return_not_before(&[at(23, 50)], 30).unwrap();
    assert_eq!((late.to_string().as_str(), late.days_later()), ("00:20", 1));
}
