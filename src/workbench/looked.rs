//! What was looked at in a place, in words: when, how old that is by the start and by the next row
//! in the water, what a number is called, and the wait after thunder. It is written down and told;
//! whether anyone goes into the water is decided by people.

use crate::model::club::Club;
use crate::model::looks::{Look, Looked};
use crate::model::session::Session;
use crate::plan::clock::{Moment, clock};
use crate::plan::reminders::{LastLook, last_look, return_not_before};
use crate::plan::weather::{Beaufort, PROTECTION_FROM, UvIndex, WindUnit};

/// A point of the check list on a date.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Point<'a> {
    /// The point.
    pub look: Look,
    /// The last look, with its place in the session's list.
    pub last: Option<(usize, &'a Looked)>,
    /// How that lies to the start, or that nobody has looked.
    pub age: String,
    /// That it is older than the club's minutes when the next row in the water begins.
    pub older: Option<String>,
    /// What its number is called.
    pub named: Option<String>,
}

/// The points that the club looks at, on a date.
pub fn points<'a>(club: &Club, session: &'a Session) -> Vec<Point<'a>> {
    let water = water_begins(club, session);
    let limit = club.rules.care.look_again_minutes;
    let looks = club.rules.care.looks();
    looks.map(|l| point(session, l, &water, limit)).collect()
}

fn point<'a>(session: &'a Session, look: Look, water: &[Moment], limit: u32) -> Point<'a> {
    let of_it = session.today.looks.iter().enumerate();
    let of_it = of_it.filter(|(_, l)| l.look == look);
    let last = of_it.max_by_key(|(i, l)| (l.at, *i));
    let Some((_, looked)) = last else {
        return Point {
            look,
            last,
            age: "Not looked at yet".to_owned(),
            older: None,
            named: None,
        };
    };
    let (at, start) = (Moment::at(looked.at), Moment::at(session.start));
    let age = match (start.since(at), at.since(start)) {
        (0, 0) => format!("at the start, {start}"),
        (0, after) => format!("{after} min after the start at {start}"),
        (before, _) => format!("{before} min before the start at {start}"),
    };
    let next = water.iter().copied().filter(|w| *w >= at).min();
    let older = next.and_then(|next| match last_look(&[at], next, limit) {
        LastLook::At {
            minutes,
            older: true,
            ..
        } => Some(format!(
            "By the water at {next} it is {minutes} min old: older than the club’s {limit} minutes."
        )),
        _ => None,
    });
    Point {
        look,
        last,
        age,
        older,
        named: named(look, &looked.seen),
    }
}

/// When rows in the water begin; a called-off one does not.
fn water_begins(club: &Club, session: &Session) -> Vec<Moment> {
    let clock = clock(session, &club.rules);
    let wet = session.timetable.iter();
    let wet = wet.filter(|s| s.off.is_none() && club.in_water(s.activity));
    wet.filter_map(|s| Some(clock.row(s.id)?.from)).collect()
}

/// What a number about sun or wind is called: a name, no more.
pub fn named(look: Look, seen: &str) -> Option<String> {
    match look {
        Look::Uv => {
            let index = UvIndex::rounded(number(seen)?.0)?;
            let protection = if index.asks_for_protection() {
                format!(
                    ". From {PROTECTION_FROM} the World Health Organization asks for sun protection"
                )
            } else {
                String::new()
            };
            Some(format!(
                "UV Index {}: {}{protection}.",
                index.whole(),
                index.band().label()
            ))
        }
        Look::Wind => {
            let (speed, rest) = number(seen)?;
            let unit = unit(rest)?;
            let force = Beaufort::of(speed, unit)?;
            Some(format!("Beaufort {}, {}.", force.number(), force.name()))
        }
        _ => None,
    }
}

/// The unit with which some words begin.
pub fn unit(words: &str) -> Option<WindUnit> {
    let words = words.trim().to_lowercase();
    let begins = |u: &WindUnit| words.starts_with(u.label());
    WindUnit::ALL.into_iter().find(begins)
}

/// A number at the beginning, with a point or a comma, and what comes after it.
pub fn number(words: &str) -> Option<(f64, &str)> {
    let words = words.trim();
    let part = |c: char| c.is_ascii_digit() || c == '.' || c == ',';
    let end = words.find(|c| !part(c)).unwrap_or(words.len());
    let (number, rest) = words.split_at(end);
    Some((number.replace(',', ".").parse().ok()?, rest))
}

/// The end of the club's wait after the last thunder, in words.
pub fn thunder(club: &Club, session: &Session) -> Option<String> {
    let minutes = club.rules.care.thunder_minutes;
    let heard = session.today.thunder.iter().map(|t| Moment::at(*t));
    let heard: Vec<Moment> = heard.collect();
    let until = return_not_before(&heard, minutes)?;
    Some(format!(
        "Out of the water until {until} at the earliest, by the club’s {minutes} minutes; each new \
         thunder starts it again."
    ))
}
