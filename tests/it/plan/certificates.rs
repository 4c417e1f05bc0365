//! Certificates: what was entered goes first, what is not known stays unknown. Rules that bodies
//! publish are in `published/awards.rs`.

use std::slice;

use daystrand::model::award::{Award, Certificate, MonthDay, ShortMonth, Validity};
use daystrand::model::ids::AwardId;
use daystrand::plan::certificates::{
    Season, Standing, current_on, expiry, last_good_day, season, standing,
};
use jiff::civil::{Date, date};

const KIND: AwardId = AwardId(4);

fn award(validity: Validity) -> Award {
    Award {
        id: KIND,
        name: "Shore award".into(),
        for_water: false,
        validity,
        last_day_counts: true,
    }
}

fn held(gained: Option<Date>, expires: Option<Date>) -> Certificate {
    Certificate {
        award: KIND,
        gained,
        expires,
        seen_by: String::new(),
        seen_on: None,
    }
}

fn yearly() -> Award {
    award(Validity::Months {
        months: 12,
        short: ShortMonth::default(),
    })
}

fn fixed(until: (u8, u8), boundary: Option<(u8, u8)>) -> Award {
    award(Validity::FixedDay {
        until: MonthDay::new(until.0, until.1).unwrap(),
        boundary: boundary.and_then(|(month, day)| MonthDay::new(month, day)),
    })
}

#[test]
fn the_entered_day_goes_before_every_rule() {
    let entered = date(2025, 3, 3);
    let paper = held(Some(date(2024, 11, 14)), Some(entered));
    let kinds = [
        award(Validity::AsWritten),
        yearly(),
        fixed((12, 31), Some((7, 1))),
    ];
    for kind in &kinds {
        assert_eq!(expiry(kind, &paper), Some(entered), "{:?}", kind.validity);
    }
}

#[test]
fn without_a_date_nothing_is_computed() {
    let empty = held(None, None);
    for kind in [award(Validity::AsWritten), yearly(), fixed((12, 31), None)] {
        assert_eq!(expiry(&kind, &empty), None);
        assert_eq!(last_good_day(&kind, &empty), None);
        assert_eq!(current_on(&kind, &empty, date(2025, 1, 1)), None);
        let found = standing(&kind, slice::from_ref(&empty), date(2025, 1, 1));
        assert_eq!(found, Standing::NoDate);
    }
    let only_gained = held(Some(date(2024, 5, 1)), None);
    assert_eq!(expiry(&award(Validity::AsWritten), &only_gained), None);
}

#[test]
fn a_fixed_day_comes_on_or_after_the_day_gained() {
    let of = |kind: &Award, day| expiry(kind, &held(Some(day), None));
    let june = fixed((6, 30), None);
    assert_eq!(of(&june, date(2025, 6, 30)), Some(date(2025, 6, 30)));
    assert_eq!(of(&june, date(2025, 7, 1)), Some(date(2026, 6, 30)));
    // A season from July to June, its boundary in January.
    let season = fixed((6, 30), Some((1, 1)));
    assert_eq!(of(&season, date(2025, 8, 1)), Some(date(2026, 6, 30)));
    assert_eq!(of(&season, date(2025, 12, 31)), Some(date(2026, 6, 30)));
    assert_eq!(of(&season, date(2026, 1, 1)), Some(date(2027, 6, 30)));
    // And one whose boundary lies in the year before its end.
    let autumn = fixed((3, 31), Some((10, 1)));
    assert_eq!(of(&autumn, date(2025, 9, 30)), Some(date(2026, 3, 31)));
    assert_eq!(of(&autumn, date(2025, 10, 1)), Some(date(2027, 3, 31)));
    assert_eq!(of(&autumn, date(2026, 2, 1)), Some(date(2027, 3, 31)));
}

#[test]
fn nothing_covers_a_day_before_it_was_gained() {
    let day = date(2025, 11, 15);
    let paper = held(Some(date(2025, 11, 16)), Some(date(2026, 11, 16)));
    assert_eq!(current_on(&yearly(), &paper, day), Some(false));
    let gained = date(2025, 11, 16);
    assert_eq!(
        standing(&yearly(), slice::from_ref(&paper), day),
        Standing::NotYetGained { gained }
    );
    assert!(standing(&yearly(), &[paper], gained).is_covered());
}

#[test]
fn of_several_the_one_that_reaches_furthest_counts_in_any_order() {
    let day = date(2025, 6, 1);
    let ended = held(None, Some(date(2024, 12, 31)));
    let earlier = held(None, Some(date(2023, 12, 31)));
    let covers = held(None, Some(date(2025, 8, 1)));
    let longer = held(None, Some(date(2025, 9, 1)));
    let later = held(Some(date(2025, 7, 1)), None);
    let much_later = held(Some(date(2026, 7, 1)), None);
    let other_kind = Certificate {
        award: AwardId(5),
        ..longer.clone()
    };
    let last = |year, month, day| date(year, month, day);
    let cases = [
        (vec![], Standing::NotEntered),
        (vec![other_kind.clone()], Standing::NotEntered),
        (
            vec![ended.clone(), earlier, other_kind],
            Standing::Ended {
                last: last(2024, 12, 31),
            },
        ),
        (
            vec![ended.clone(), later.clone(), much_later],
            Standing::NotYetGained {
                gained: last(2025, 7, 1),
            },
        ),
        (vec![ended.clone(), held(None, None)], Standing::NoDate),
        (
            vec![ended, covers, longer, held(None, None), later],
            Standing::Covered {
                last: last(2025, 9, 1),
            },
        ),
    ];
    for (mut all, expected) in cases {
        assert_eq!(standing(&yearly(), &all, day), expected);
        all.reverse();
        assert_eq!(standing(&yearly(), &all, day), expected);
    }
}

#[test]
fn a_season_is_in_order_of_date_whatever_the_order_of_sessions() {
    let kind = award(Validity::AsWritten);
    let days = [date(2025, 12, 6), date(2025, 11, 8), date(2025, 12, 6)];
    let until = |day| [held(None, Some(day))];
    let whole = season(&kind, &until(date(2025, 12, 6)), &days);
    assert_eq!(whole, Season::default());
    let short = season(&kind, &until(date(2025, 12, 5)), &days);
    assert_eq!(short.first_affected(), Some(date(2025, 12, 6)));
    assert_eq!(short.affected.len(), 1);
    assert_eq!(short.ends_early, Some(date(2025, 12, 5)));
    let never = season(&kind, &[], &days);
    assert_eq!(never.affected.len(), 2);
    assert_eq!(never.affected[0], (date(2025, 11, 8), Standing::NotEntered));
    assert_eq!(never.ends_early, None);
    assert_eq!(season(&kind, &[], &[]), Season::default());
}

/// A gap between two certificates is not the end of the season.
#[test]
fn a_gap_in_the_middle_affects_only_what_lies_in_it() {
    let kind = award(Validity::AsWritten);
    let all = [
        held(None, Some(date(2025, 11, 10))),
        held(Some(date(2025, 11, 20)), Some(date(2026, 11, 20))),
    ];
    let days = [8, 15, 22].map(|day| date(2025, 11, day));
    let found = season(&kind, &all, &days);
    assert_eq!(found.first_affected(), Some(date(2025, 11, 15)));
    assert_eq!((found.affected.len(), found.ends_early), (1, None));
}

#[test]
fn a_day_of_the_year_is_one_that_every_year_has() {
    let there = |month, day| MonthDay::new(month, day).is_some();
    assert!(there(1, 1) && there(12, 31) && there(2, 28) && there(6, 30));
    let wrong = [
        (0, 1),
        (13, 1),
        (1, 0),
        (1, 32),
        (2, 29),
        (6, 31),
        (255, 255),
    ];
    for (month, day) in wrong {
        assert!(!there(month, day), "{month} {day}");
    }
    // Against a calendar: every day of a year without a leap day and no other.
    let mut days = 0;
    for month in 0..=14_u8 {
        for day in 0..=33_u8 {
            let real = Date::new(2025, month as i8, day as i8).is_ok();
            assert_eq!(there(month, day), real, "{month} {day}");
            days += u32::from(real);
        }
    }
    assert_eq!(days, 365);
}

#[test]
fn the_end_of_the_calendar_is_unknown_not_a_fall() {
    let held = held(Some(Date::MAX), None);
    let kinds = [
        yearly(),
        fixed((12, 31), Some((7, 1))),
        fixed((6, 30), None),
        award(Validity::Months {
            months: u32::MAX,
            short: ShortMonth::FirstOfNext,
        }),
    ];
    for kind in kinds {
        assert_eq!(expiry(&kind, &held), None, "{:?}", kind.validity);
    }
    let old = self::held(Some(Date::MIN), None);
    let kind = fixed((3, 31), Some((10, 1)));
    assert_eq!(expiry(&kind, &old), None);
}
