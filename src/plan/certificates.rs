//! Whether the entered dates of a helper's certificates cover the dates of sessions, by the rule
//! that the club entered for each kind.
//!
//! This compares dates. It does not say that anyone is qualified, and not that a paper is genuine.

use std::cmp::Reverse;

use jiff::Span;
use jiff::civil::Date;

use crate::model::award::{Award, Certificate, MonthDay, ShortMonth, Validity};

/// The day on which a certificate expires: as entered from the paper, else by the club's rule from
/// the day it was gained; nothing where neither gives one.
pub fn expiry(award: &Award, certificate: &Certificate) -> Option<Date> {
    certificate.expires.or_else(|| {
        let gained = certificate.gained?;
        match award.validity {
            Validity::AsWritten => None,
            Validity::Months { months, short } => months_after(gained, months, short),
            Validity::FixedDay { until, boundary } => fixed_day_after(gained, until, boundary),
        }
    })
}

fn months_after(gained: Date, months: u32, short: ShortMonth) -> Option<Date> {
    let span = Span::new().try_months(i64::from(months)).ok()?;
    let day = gained.checked_add(span).ok()?;
    // Where the month is too short, the calendar stopped at its last day.
    match short {
        ShortMonth::FirstOfNext if day.day() < gained.day() => day.tomorrow().ok(),
        _ => Some(day),
    }
}

/// The first such day from the day gained on; one year further if the last boundary day before it
/// was reached already.
fn fixed_day_after(gained: Date, until: MonthDay, boundary: Option<MonthDay>) -> Option<Date> {
    let comes_in = |day: MonthDay| Some((day.in_year(gained.year())?, gained.year()));
    let (mut end, mut year) = comes_in(until)?;
    if end < gained {
        year = year.checked_add(1)?;
        end = until.in_year(year)?;
    }
    let Some(boundary) = boundary else {
        return Some(end);
    };
    let mut from = boundary.in_year(year)?;
    if from > end {
        from = boundary.in_year(year.checked_sub(1)?)?;
    }
    if gained < from {
        return Some(end);
    }
    until.in_year(year.checked_add(1)?)
}

/// The last day that still counts: the day of expiry, or the one before it, as the club entered.
pub fn last_good_day(award: &Award, certificate: &Certificate) -> Option<Date> {
    let day = expiry(award, certificate)?;
    match award.last_day_counts {
        true => Some(day),
        false => day.yesterday().ok(),
    }
}

/// Whether the dates of a certificate cover a day; nothing where no date of expiry is known.
pub fn current_on(award: &Award, certificate: &Certificate, date: Date) -> Option<bool> {
    let last = last_good_day(award, certificate)?;
    let begun = certificate.gained.is_none_or(|gained| gained <= date);
    Some(begun && date <= last)
}

/// What the entered dates of a helper's certificates of one kind say about a day.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Standing {
    /// None of this kind is entered.
    NotEntered,
    /// The last day that counted is over.
    Ended {
        /// That day.
        last: Date,
    },
    /// It was gained after the day that is asked about.
    NotYetGained {
        /// When it was gained.
        gained: Date,
    },
    /// One is entered, but no date of expiry and nothing that gives one.
    NoDate,
    /// The entered dates cover the day.
    Covered {
        /// The last day that counts.
        last: Date,
    },
}

impl Standing {
    /// Whether the entered dates cover the day.
    pub const fn is_covered(self) -> bool {
        matches!(self, Self::Covered { .. })
    }

    /// Higher is what says more of the day; of the same, what lies nearer to it or reaches further.
    const fn rank(self) -> (u8, Option<Date>, Reverse<Option<Date>>) {
        match self {
            Self::NotEntered => (0, None, Reverse(None)),
            Self::Ended { last } => (1, Some(last), Reverse(None)),
            Self::NotYetGained { gained } => (2, None, Reverse(Some(gained))),
            Self::NoDate => (3, None, Reverse(None)),
            Self::Covered { last } => (4, Some(last), Reverse(None)),
        }
    }
}

/// What one helper's certificates say about a day; those of other kinds are passed over. Of several
/// the one that reaches furthest counts, in whatever order they were entered.
pub fn standing(award: &Award, held: &[Certificate], date: Date) -> Standing {
    let of_kind = held.iter().filter(|c| c.award == award.id);
    let all = of_kind.map(|certificate| standing_of(award, certificate, date));
    all.max_by_key(|s| s.rank()).unwrap_or(Standing::NotEntered)
}

fn standing_of(award: &Award, certificate: &Certificate, date: Date) -> Standing {
    let Some(last) = last_good_day(award, certificate) else {
        return Standing::NoDate;
    };
    match certificate.gained {
        _ if last < date => Standing::Ended { last },
        Some(gained) if date < gained => Standing::NotYetGained { gained },
        _ => Standing::Covered { last },
    }
}

/// What the entered dates say about the sessions of a season.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Season {
    /// The dates that are not covered, with the reason, in order of date.
    pub affected: Vec<(Date, Standing)>,
    /// The last day that counts, if sessions come after it: it ends before the season does.
    pub ends_early: Option<Date>,
}

impl Season {
    /// The first date that is not covered.
    pub fn first_affected(&self) -> Option<Date> {
        self.affected.first().map(|(date, _)| *date)
    }
}

/// The dates of a helper's certificates of one kind against the dates of sessions, in any order.
pub fn season(award: &Award, held: &[Certificate], sessions: &[Date]) -> Season {
    let mut dates = sessions.to_vec();
    dates.sort_unstable();
    dates.dedup();
    let all: Vec<(Date, Standing)> = dates
        .into_iter()
        .map(|date| (date, standing(award, held, date)))
        .collect();
    let ends_early = match all.last() {
        Some((_, Standing::Ended { last })) => Some(*last),
        _ => None,
    };
    let affected = all.into_iter().filter(|(_, s)| !s.is_covered()).collect();
    Season {
        affected,
        ends_early,
    }
}
