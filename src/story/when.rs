//! Dates and times in plain words, on a 24-hour clock, without a locale.

use jiff::civil::{Date, Time, Weekday};

use crate::model::session::Session;

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

/// "June".
fn month(date: Date) -> &'static str {
    const NAMES: [&str; 12] = [
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
    NAMES[usize::from(date.month().unsigned_abs() - 1) % 12]
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

/// "10:30".
pub fn time(time: Time) -> String {
    format!("{}:{:02}", time.hour(), time.minute())
}

/// When a session with all its slots and the moves between them is over; `None` when that is not
/// on the same day or there is nothing to do.
pub fn end(session: &Session, transition_minutes: u32) -> Option<Time> {
    let slots = session.timetable.len() as u64;
    let moves = slots.checked_sub(1)? * u64::from(transition_minutes);
    let doing: u64 = session.timetable.iter().map(|s| u64::from(s.minutes)).sum();
    minutes_after(session.start, doing + moves)
}

/// The end, to the next five minutes: what one says to a child.
pub fn about_end(session: &Session, transition_minutes: u32) -> Option<Time> {
    let end = end(session, transition_minutes)?;
    let past = u64::from(end.minute().unsigned_abs()) % 5;
    minutes_after(end, (5 - past) % 5)
}

/// A time later on the same day; `None` past midnight.
pub fn minutes_after(start: Time, minutes: u64) -> Option<Time> {
    let start = i64::from(start.hour()) * 60 + i64::from(start.minute());
    let at = start.checked_add(i64::try_from(minutes).ok()?)?;
    let hour = i8::try_from(at / 60).ok()?;
    let minute = i8::try_from(at % 60).ok()?;
    Time::new(hour, minute, 0, 0).ok()
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
