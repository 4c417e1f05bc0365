//! Dates and times in plain words, on a 24-hour clock, without a locale.

use jiff::civil::{Date, Weekday};

use crate::model::club::Rules;
use crate::model::session::Session;
use crate::plan::clock::{Moment, clock};

/// A space that no line breaks at.
pub const NO_BREAK: char = '\u{a0}';

/// "Saturday".
pub fn weekday(date: Date) -> &'static str {
    match date.weekday() {
        Weekday::Monday => "Monday",
        Weekday::Tuesday => "Tuesday",
        Weekday::Wednesday => "Wednesday",
        Weekday::Thursday => "Thursday",
        Weekday::Friday => "Friday",
        Weekday::Saturday => "Saturday",
        Weekday::Sunday => "Sunday",
    }
}

/// The months by their names.
pub const MONTHS: [&str; 12] = [
    "January",
    "February",
    "March",
    "April",
    "May",
    "June",
    "July",
    "August",
    "September",
    "October",
    "November",
    "December",
];

/// "June".
fn month(date: Date) -> &'static str {
    MONTHS[usize::from(date.month().unsigned_abs() - 1) % 12]
}

/// "Saturday 12 June"; number and month stay on one line.
pub fn day(date: Date) -> String {
    let (weekday, month) = (weekday(date), month(date));
    format!("{weekday} {}{NO_BREAK}{month}", date.day())
}

/// "12 June 2027"; stays on one line.
pub fn full_date(date: Date) -> String {
    let month = month(date);
    format!("{}{NO_BREAK}{month}{NO_BREAK}{}", date.day(), date.year())
}

/// When a session is usually over, to the next five minutes, which is what one says to a child;
/// `None` when there is nothing to do or the end is past midnight.
pub fn about_end(session: &Session, rules: &Rules) -> Option<Moment> {
    let clock = clock(session, rules);
    let past = clock.end.minute() % 5;
    let end = clock.end.after((5 - past) % 5);
    (!clock.rows.is_empty() && end.days_later() == 0).then_some(end)
}

/// Puts a space that does not break between a number and what it counts: "10:30 am", "5 minutes".
pub fn hold_together(sentence: &str) -> String {
    const UNITS: [&str; 21] = [
        "am", "pm", "a.m.", "p.m.", "m", "km", "cm", "mm", "min", "minute", "minutes", "hour",
        "hours", "metre", "metres", "kg", "l", "litres", "%", "°C", "°",
    ];
    let mut out = String::with_capacity(sentence.len());
    for word in sentence.split_inclusive(' ') {
        let bare = word
            .trim_end()
            .trim_end_matches([',', '.', '!', '?', ';', ':']);
        let dotted = word.trim_end().trim_end_matches([',', '!', '?', ';', ':']);
        let is_unit = UNITS.contains(&bare) || UNITS.contains(&dotted);
        let after_number = out
            .trim_end_matches(' ')
            .ends_with(|c: char| c.is_ascii_digit());
        if is_unit && after_number && out.ends_with(' ') {
            out.pop();
            out.push(NO_BREAK);
        }
        out.push_str(word);
    }
    out
}
