//! What the entered dates of a certificate say, in words. It is about dates and about who saw the
//! paper, never about what someone can do.

use jiff::civil::Date;

use crate::model::award::{Award, Certificate, ShortMonth, Validity};
use crate::plan::certificates::{Standing, expiry, last_good_day};
use crate::ui::dates;

/// What the dates say on a day, and who saw the paper.
pub fn says(award: &Award, certificate: &Certificate, today: Date) -> String {
    format!(
        "{}; {}.",
        runs(award, certificate, today),
        seen(certificate)
    )
}

/// "Runs until 31 December 2027, by the club’s rule".
fn runs(award: &Award, certificate: &Certificate, today: Date) -> String {
    let (Some(day), Some(last)) = (
        expiry(award, certificate),
        last_good_day(award, certificate),
    ) else {
        return match award.validity {
            Validity::AsWritten => "No date of expiry and no rule".to_owned(),
            _ => "No date of expiry, and no day on which it was gained for the club’s rule".into(),
        };
    };
    let whence = match certificate.expires {
        Some(_) => "as entered",
        None => "by the club’s rule",
    };
    let not_itself = match day == last {
        true => String::new(),
        false => format!(" ({} no longer counts)", dates::plain(day)),
    };
    let last = dates::plain(last);
    match certificate.gained {
        Some(gained) if gained > today && day >= gained => format!(
            "Begins on {} and runs until {last}{not_itself}, {whence}",
            dates::plain(gained)
        ),
        _ if dates_end(award, certificate, today) => {
            format!("Ended with {last}{not_itself}, {whence}")
        }
        _ => format!("Runs until {last}{not_itself}, {whence}"),
    }
}

/// Whether the last day that counts is over.
fn dates_end(award: &Award, certificate: &Certificate, today: Date) -> bool {
    last_good_day(award, certificate).is_some_and(|last| last < today)
}

/// "seen by Asta on 3 May 2027".
fn seen(certificate: &Certificate) -> String {
    let by = certificate.seen_by.trim();
    match (by.is_empty(), certificate.seen_on.map(dates::plain)) {
        (false, Some(on)) => format!("seen by {by} on {on}"),
        (false, None) => format!("seen by {by}"),
        (true, Some(on)) => format!("seen on {on}, by whom is not entered"),
        (true, None) => "nobody has seen it yet".to_owned(),
    }
}

/// "ended with 1 November 2027", after the name of a kind; "ends" while that day is not over.
pub fn standing(standing: Standing, today: Date) -> String {
    match standing {
        Standing::NotEntered => "is not entered".to_owned(),
        Standing::NoDate => "has no date".to_owned(),
        Standing::Ended { last } => {
            let verb = if last < today { "ended" } else { "ends" };
            format!("{verb} with {}", dates::plain(last))
        }
        Standing::NotYetGained { gained } => format!("begins on {}", dates::plain(gained)),
        Standing::Covered { last } => format!("runs until {}", dates::plain(last)),
    }
}

/// Examples of what the club's rule for a kind gives in a year: where there is a boundary day, the
/// day before it and that day; where a month can be too short, such a day.
pub fn worked(award: &Award, today: Date) -> String {
    let year = today.year();
    let days: Vec<Date> = match award.validity {
        Validity::AsWritten => Vec::new(),
        Validity::Months { months, .. } => {
            let usual = Date::new(year, 7, 1).ok();
            usual.into_iter().chain(too_short(months, year)).collect()
        }
        Validity::FixedDay { boundary: None, .. } => {
            Date::new(year, 7, 1).ok().into_iter().collect()
        }
        Validity::FixedDay {
            boundary: Some(day),
            ..
        } => {
            let on = day.in_year(year);
            let before = on.and_then(|d| d.yesterday().ok());
            before.into_iter().chain(on).collect()
        }
    };
    let all: Vec<String> = days.iter().filter_map(|d| example(award, *d)).collect();
    if all.is_empty() {
        return "Nothing is reckoned: the day of expiry is typed from the certificate.".to_owned();
    }
    all.join(" ")
}

/// "Gained 1 July 2026: until 31 December 2027."
fn example(award: &Award, gained: Date) -> Option<String> {
    let last = last_good_day(award, &gained_on(award, gained))?;
    let (gained, last) = (dates::plain(gained), dates::plain(last));
    Some(format!("Gained {gained}: until {last}."))
}

fn gained_on(award: &Award, gained: Date) -> Certificate {
    Certificate {
        award: award.id,
        gained: Some(gained),
        expires: None,
        seen_by: String::new(),
        seen_on: None,
    }
}

/// The first day, in this year or the four after it, after which the month it ends in has no such
/// day.
fn too_short(months: u32, year: i16) -> Option<Date> {
    let ends = |gained: Date, short: ShortMonth| {
        let award = Award {
            id: crate::model::ids::AwardId::NEW,
            name: String::new(),
            for_water: false,
            validity: Validity::Months { months, short },
            last_day_counts: true,
        };
        expiry(&award, &gained_on(&award, gained))
    };
    let all = (0..=4).flat_map(|more| (1..=12).map(move |month| (year + more, month)));
    let mut days = all.flat_map(|(year, month)| {
        (29..=31).filter_map(move |day| Date::new(year, month, day).ok())
    });
    days.find(|d| ends(*d, ShortMonth::LastDay) != ends(*d, ShortMonth::FirstOfNext))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::model::award::MonthDay;
    use crate::model::ids::AwardId;
    use jiff::civil::date;

    fn kind(validity: Validity, last_day_counts: bool) -> Award {
        Award {
            id: AwardId(7),
            name: "Pool rescue".into(),
            for_water: true,
            validity,
            last_day_counts,
        }
    }

    /// Published by Surf Life Saving Australia: gained after 30 June runs to 31 December of the
    /// following year (from memory).
    #[test]
    fn a_boundary_day_is_worked_on_both_sides() {
        let rule = Validity::FixedDay {
            until: MonthDay::new(12, 31).expect("a day"),
            boundary: MonthDay::new(7, 1),
        };
        assert_eq!(
            worked(&kind(rule, true), date(2026, 3, 4)),
            "Gained 30 June 2026: until 31 December 2026. \
             Gained 1 July 2026: until 31 December 2027."
        );
    }

    #[test]
    fn a_month_that_is_too_short_is_worked_by_the_clubs_choice() {
        let months = |months, short| kind(Validity::Months { months, short }, true);
        let year = worked(&months(12, ShortMonth::LastDay), date(2026, 3, 4));
        assert!(
            year.ends_with("Gained 29 February 2028: until 28 February 2029."),
            "{year}"
        );
        let one = worked(&months(1, ShortMonth::FirstOfNext), date(2026, 3, 4));
        assert!(
            one.ends_with("Gained 29 January 2026: until 1 March 2026."),
            "{one}"
        );
    }

    #[test]
    fn only_what_was_entered_is_said() {
        let today = date(2027, 6, 10);
        let written = kind(Validity::AsWritten, false);
        let mut c = gained_on(&written, date(2026, 5, 1));
        assert_eq!(
            says(&written, &c, today),
            "No date of expiry and no rule; nobody has seen it yet."
        );
        c.expires = Some(date(2027, 6, 10));
        c.seen_by = "Asta".into();
        c.seen_on = Some(date(2027, 5, 3));
        assert_eq!(
            says(&written, &c, today),
            "Ended with 9 June 2027 (10 June 2027 no longer counts), as entered; \
             seen by Asta on 3 May 2027."
        );
    }
}
