//! Certificates against rules that bodies publish. Each rule here is one that a club enters; the
//! program has none of its own.

use daystrand::model::award::{Award, Certificate, MonthDay, ShortMonth, Validity};
use daystrand::model::ids::AwardId;
use daystrand::plan::certificates::{Standing, current_on, expiry, last_good_day, season};
use jiff::civil::{Date, date};

fn award(validity: Validity) -> Award {
    Award {
        id: AwardId(1),
        name: "Shore award".into(),
        for_water: true,
        validity,
        last_day_counts: true,
    }
}

fn gained(day: Date) -> Certificate {
    Certificate {
        award: AwardId(1),
        gained: Some(day),
        expires: None,
        seen_by: "Carmen".into(),
        seen_on: Some(date(2024, 10, 1)),
    }
}

fn to_the_end_of_the_year(boundary: (u8, u8)) -> Award {
    award(Validity::FixedDay {
        until: MonthDay::new(12, 31).unwrap(),
        boundary: MonthDay::new(boundary.0, boundary.1),
    })
}

/// Proficiency requirements of surf lifesaving bodies in Australia: valid to 31 December; gained
/// after 30 June, valid to 31 December of the following year.
#[test]
fn a_surf_award_runs_to_the_end_of_this_year_or_the_next() {
    let award = to_the_end_of_the_year((7, 1));
    let rows = [
        (date(2022, 6, 30), date(2022, 12, 31)),
        (date(2022, 7, 1), date(2023, 12, 31)),
        (date(2023, 2, 10), date(2023, 12, 31)),
        (date(2022, 7, 15), date(2023, 12, 31)),
    ];
    for (day, expected) in rows {
        assert_eq!(expiry(&award, &gained(day)), Some(expected), "{day}");
    }
}

/// The same bodies, in versions that say "after 1 July": only the boundary day itself differs.
#[test]
fn where_the_boundary_is_a_day_later_only_that_day_differs() {
    let award = to_the_end_of_the_year((7, 2));
    let rows = [
        (date(2022, 6, 30), date(2022, 12, 31)),
        (date(2022, 7, 1), date(2022, 12, 31)),
        (date(2022, 7, 2), date(2023, 12, 31)),
        (date(2023, 2, 10), date(2023, 12, 31)),
        (date(2022, 7, 15), date(2023, 12, 31)),
    ];
    for (day, expected) in rows {
        assert_eq!(expiry(&award, &gained(day)), Some(expected), "{day}");
    }
}

fn months(months: u32, short: ShortMonth) -> Award {
    award(Validity::Months { months, short })
}

/// Surf lifesaving bodies and most trainers ask for resuscitation yearly and first aid every three
/// years (periods read there; the dates are worked by hand).
#[test]
fn twelve_months_from_november_do_not_reach_the_day_after() {
    let yearly = months(12, ShortMonth::LastDay);
    let held = gained(date(2024, 11, 14));
    assert_eq!(expiry(&yearly, &held), Some(date(2025, 11, 14)));
    assert_eq!(current_on(&yearly, &held, date(2025, 11, 14)), Some(true));
    assert_eq!(current_on(&yearly, &held, date(2025, 11, 15)), Some(false));
    let day_is_over = Award {
        last_day_counts: false,
        ..yearly
    };
    assert_eq!(last_good_day(&day_is_over, &held), Some(date(2025, 11, 13)));
    for day in [14, 15] {
        let on = date(2025, 11, day);
        assert_eq!(current_on(&day_is_over, &held, on), Some(false), "{on}");
    }
    let first_aid = months(36, ShortMonth::LastDay);
    assert_eq!(expiry(&first_aid, &held), Some(date(2027, 11, 14)));
    assert_eq!(
        current_on(&first_aid, &held, date(2025, 11, 15)),
        Some(true)
    );
}

/// No body that was read says what a year after 29 February is, so the club declares it. By hand.
#[test]
fn a_year_after_the_leap_day_is_as_the_club_declares() {
    let held = gained(date(2024, 2, 29));
    let (last, next) = (ShortMonth::LastDay, ShortMonth::FirstOfNext);
    let rows = [
        (12, last, date(2025, 2, 28)),
        (12, next, date(2025, 3, 1)),
        (36, last, date(2027, 2, 28)),
        (36, next, date(2027, 3, 1)),
        (48, last, date(2028, 2, 29)),
        (48, next, date(2028, 2, 29)),
    ];
    for (n, short, expected) in rows {
        let by_rule = expiry(&months(n, short), &held);
        assert_eq!(by_rule, Some(expected), "{n} months, {short:?}");
    }
    // The same in any month that is too short.
    let held = gained(date(2025, 5, 31));
    assert_eq!(expiry(&months(1, last), &held), Some(date(2025, 6, 30)));
    assert_eq!(expiry(&months(1, next), &held), Some(date(2025, 7, 1)));
}

/// Five Saturdays from 8 November 2025, by the calendar; a certificate that says 22 November.
/// Common practice: warn of what ends before the season does.
#[test]
fn of_five_saturdays_the_last_two_are_affected_or_three() {
    let saturdays: Vec<Date> = [(11, 8), (11, 15), (11, 22), (11, 29), (12, 6)]
        .map(|(month, day)| date(2025, month, day))
        .into();
    let weekday = |d: &Date| d.weekday() == jiff::civil::Weekday::Saturday;
    assert!(saturdays.iter().all(weekday));
    let held = [Certificate {
        expires: Some(date(2025, 11, 22)),
        ..gained(date(2024, 11, 20))
    }];
    for (counts, first, last_day) in [(true, 3, 22), (false, 2, 21)] {
        let award = Award {
            last_day_counts: counts,
            ..award(Validity::AsWritten)
        };
        let season = season(&award, &held, &saturdays);
        let last = date(2025, 11, last_day);
        let ended = Standing::Ended { last };
        let expected: Vec<_> = saturdays[first..].iter().map(|d| (*d, ended)).collect();
        assert_eq!(season.affected, expected, "the day counts: {counts}");
        assert_eq!(season.first_affected(), Some(saturdays[first]));
        assert_eq!(season.ends_early, Some(last));
    }
}
