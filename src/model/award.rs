//! Certificates: kinds that the club asks for, each with its own entered rule, and what a helper
//! holds, as entered from the paper.
//!
//! The program never says that anyone is qualified. It holds what was entered and who saw the paper,
//! and compares the entered dates with the dates of sessions.
//!
//! Rules differ between bodies and between years, so each is a setting. Surf Life Saving publishes
//! that its awards run to 31 December, and one gained after 30 June to 31 December of the following
//! year; published versions differ on the boundary day (after 30 June, after 1 July). Courses in
//! resuscitation are asked for yearly there and in first aid every three years; elsewhere other
//! periods are in use.

use jiff::civil::Date;

use super::ids::AwardId;

/// A kind of certificate that the club asks for, with its own entered rule.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Award {
    /// Its id.
    pub id: AwardId,
    /// What the club calls it.
    pub name: String,
    /// Needed by whoever is with a participant in the water.
    pub for_water: bool,
    /// How long one lasts.
    pub validity: Validity,
    /// Whether the expiry day itself still counts.
    pub last_day_counts: bool,
}

/// How long a certificate lasts, by the club's rule. A day of expiry that was entered from the
/// paper goes before any rule.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Validity {
    /// As written on the certificate; nothing is computed.
    #[default]
    AsWritten,
    /// So many months from the day it was gained.
    Months {
        /// How many.
        months: u32,
        /// What to do where the month it ends in has no such day.
        short: ShortMonth,
    },
    /// Until a fixed day of the year.
    FixedDay {
        /// The day; it comes on or after the day on which the certificate was gained.
        until: MonthDay,
        /// Gained on or after this day: until that day of the following year.
        boundary: Option<MonthDay>,
    },
}

/// Which day is meant where a month is too short: a year after 29 February, a month after 31 May.
/// Rules that do not say leave it to the club.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum ShortMonth {
    /// The last day of that month.
    #[default]
    LastDay,
    /// The first day of the next month.
    FirstOfNext,
}

impl ShortMonth {
    /// All of them, for lists.
    pub const ALL: [Self; 2] = [Self::LastDay, Self::FirstOfNext];
}

/// A day of the year that every year has.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct MonthDay {
    month: u8,
    day: u8,
}

impl MonthDay {
    /// A day of the year; nothing where there is no such day, or not every year (29 February).
    pub const fn new(month: u8, day: u8) -> Option<Self> {
        let days = match month {
            2 => 28,
            4 | 6 | 9 | 11 => 30,
            1 | 3 | 5 | 7 | 8 | 10 | 12 => 31,
            _ => 0,
        };
        if 1 <= day && day <= days {
            Some(Self { month, day })
        } else {
            None
        }
    }

    /// Month from 1 to 12.
    pub const fn month(self) -> u8 {
        self.month
    }

    /// Day of the month, from 1.
    pub const fn day(self) -> u8 {
        self.day
    }

    /// This day of a year; nothing for a year that the calendar does not reach.
    pub fn in_year(self, year: i16) -> Option<Date> {
        let small = |n: u8| i8::try_from(n).ok();
        Date::new(year, small(self.month)?, small(self.day)?).ok()
    }
}

/// What a helper holds, as entered from the paper.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Certificate {
    /// Which kind.
    pub award: AwardId,
    /// The day it was gained, if that is written on it.
    pub gained: Option<Date>,
    /// The day it expires, if that is written on it.
    pub expires: Option<Date>,
    /// Who saw the paper.
    pub seen_by: String,
    /// When they saw it.
    pub seen_on: Option<Date>,
}
