//! Dates and times in words, and read from what was typed.

use jiff::ToSpan;
use jiff::civil::{Date, Time};

use crate::model::award::MonthDay;
use crate::story::when::MONTHS;

/// As "Saturday 12 June".
pub fn short(date: Date) -> String {
    date.strftime("%A %-d %B").to_string()
}

/// As "Sat 12 June".
pub fn shortest(date: Date) -> String {
    date.strftime("%a %-d %B").to_string()
}

/// As "Saturday 12 June 2027".
pub fn long(date: Date) -> String {
    date.strftime("%A %-d %B %Y").to_string()
}

/// As "12 June 2027".
pub fn plain(date: Date) -> String {
    date.strftime("%-d %B %Y").to_string()
}

/// As "12 Jun", with the year where it is not that of another day.
pub fn brief(date: Date, other: Date) -> String {
    let year = date.year() != other.year();
    let form = if year { "%-d %b %Y" } else { "%-d %b" };
    date.strftime(form).to_string()
}

/// As "31 December".
pub fn of_the_year(day: MonthDay) -> String {
    let month = MONTHS.get(usize::from(day.month()) - 1);
    format!("{} {}", day.day(), month.copied().unwrap_or_default())
}

/// A day of every year from "31 December", "31 dec" or "31.12."; day before month.
pub fn read_of_the_year(words: &str) -> Option<MonthDay> {
    let parts: Vec<&str> = words
        .split(|c: char| !c.is_alphanumeric())
        .filter(|s| !s.is_empty())
        .collect();
    let &[day, month] = parts.as_slice() else {
        return None;
    };
    let named = |m: &&str| {
        let begins = m.to_lowercase();
        month.chars().count() >= 3 && begins.starts_with(&month.to_lowercase())
    };
    let at = MONTHS.iter().position(named);
    let month = match at {
        Some(i) => u8::try_from(i + 1).ok()?,
        None => month.parse().ok()?,
    };
    MonthDay::new(month, day.parse().ok()?)
}

/// As "2027-06-12", the way it can be typed.
pub fn typed(date: Date) -> String {
    date.strftime("%Y-%m-%d").to_string()
}

/// A date from "2027-06-12", "12.6.2027", "12/6/2027" or "12 6 2027"; day before month.
pub fn read_date(words: &str) -> Option<Date> {
    let parts: Vec<i16> = words
        .split(|c: char| !c.is_ascii_digit())
        .filter(|s| !s.is_empty())
        .map(|s| s.parse().ok())
        .collect::<Option<_>>()?;
    let &[a, b, c] = parts.as_slice() else {
        return None;
    };
    let (year, month, day) = if a > 31 { (a, b, c) } else { (c, b, a) };
    let year = if year < 100 { 2000 + year } else { year };
    Date::new(year, i8::try_from(month).ok()?, i8::try_from(day).ok()?).ok()
}

/// A time from "9:30", "09.30", "930" or "9".
pub fn read_time(words: &str) -> Option<Time> {
    let parts: Vec<&str> = words
        .split(|c: char| !c.is_ascii_digit())
        .filter(|s| !s.is_empty())
        .collect();
    let (hour, minute) = match parts.as_slice() {
        [one] if one.len() > 2 && one.len() <= 4 => one.split_at(one.len() - 2),
        [one] => (*one, "0"),
        [hour, minute, ..] => (*hour, *minute),
        [] => return None,
    };
    Time::new(hour.parse().ok()?, minute.parse().ok()?, 0, 0).ok()
}

/// Days later, or earlier when negative; the same date when the calendar ends.
pub fn days_on(date: Date, days: i32) -> Date {
    date.checked_add(days.days()).unwrap_or(date)
}

/// As "09:30".
pub fn clock(time: Time) -> String {
    format!("{:02}:{:02}", time.hour(), time.minute())
}

#[cfg(test)]
mod tests {
    use super::*;
    use jiff::civil::{date, time};

    #[test]
    fn dates_are_read_as_people_type_them() {
        for words in ["2027-06-12", "12.6.2027", "12/06/27", "12 6 2027"] {
            assert_eq!(read_date(words), Some(date(2027, 6, 12)), "{words}");
        }
        for words in ["", "tomorrow", "31.2.2027", "12.6", "1.2.3.4"] {
            assert_eq!(read_date(words), None, "{words}");
        }
    }

    #[test]
    fn days_of_the_year_are_read_as_people_type_them() {
        let end = MonthDay::new(12, 31);
        for words in ["31 December", "31 dec", "31.12.", "31/12"] {
            assert_eq!(read_of_the_year(words), end, "{words}");
        }
        // 29 February is not in every year.
        for words in ["", "December", "29 February", "31.4.", "31.12.2027", "3 ju"] {
            assert_eq!(read_of_the_year(words), None, "{words}");
        }
        assert_eq!(end.map(of_the_year).as_deref(), Some("31 December"));
        assert_eq!(plain(date(2027, 6, 1)), "1 June 2027");
    }

    #[test]
    fn times_are_read_as_people_type_them() {
        for words in ["9:30", "09.30", "930", "0930"] {
            assert_eq!(read_time(words), Some(time(9, 30, 0, 0)), "{words}");
        }
        assert_eq!(read_time("14"), Some(time(14, 0, 0, 0)));
        for words in ["", "late", "25:00", "9:75"] {
            assert_eq!(read_time(words), None, "{words}");
        }
    }

    /// 12 June 2027 is a Saturday: ISO 8601 week date 2027-W23-6.
    #[test]
    fn a_week_on_is_the_same_weekday() {
        assert_eq!(long(days_on(date(2027, 6, 12), 7)), "Saturday 19 June 2027");
        assert_eq!(short(date(2027, 6, 12)), "Saturday 12 June");
    }
}
