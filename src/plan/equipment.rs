//! What has to be brought for a session: the greatest number of each thing that is used at one time.
//! Groups that do different things at once need the sum, rows that follow one another the greatest.

use super::clock::{Moment, clock};
use crate::model::club::Club;
use crate::model::session::{Session, Slot};

/// A thing and how many of it, if a number was given.
type Counted<'a> = (Option<u64>, &'a str);

/// Things that are used from one moment until another, such as "8 paddles".
#[derive(Clone, Copy, Debug)]
pub struct Used<'a> {
    /// From.
    pub from: Moment,
    /// Until; what begins then does not need its own.
    pub to: Moment,
    /// What.
    pub things: &'a [String],
}

/// What has to be brought for a session: what is called off needs nothing, what comes instead does,
/// and rows in turns are done at the same time.
pub fn of_session(club: &Club, session: &Session) -> Vec<String> {
    let clock = clock(session, &club.rules);
    let used = |slot: &Slot| {
        let activity = match slot.off {
            Some(off) => off.instead?,
            None => slot.activity,
        };
        let row = clock.row(slot.id)?;
        Some(Used {
            from: row.from,
            to: row.to,
            things: &club.activity(activity)?.equipment,
        })
    };
    let all: Vec<Used<'_>> = session.timetable.iter().filter_map(used).collect();
    needed(&all)
}

/// The greatest number of each thing in use at one time; order is that of first mention. A thing
/// without a number stays without one, for nobody said how many it is.
pub fn needed(used: &[Used<'_>]) -> Vec<String> {
    let lists = used.iter().map(|u| u.things);
    let mut all = peak(lists);
    for now in used.iter().map(|u| u.from) {
        let here = used.iter().filter(|u| u.from <= now && now < u.to);
        for (most, thing) in &mut all {
            let same_thing = here.clone().flat_map(|u| counts(u.things, thing));
            let sum = same_thing.fold(None, |sum: Option<u64>, n| {
                Some(sum.unwrap_or_default().saturating_add(n))
            });
            *most = (*most).max(sum);
        }
    }
    all.into_iter().map(in_words).collect()
}

/// The numbers given for a thing in one list; mentioned twice, the greatest counts.
fn counts(things: &[String], thing: &str) -> Option<u64> {
    let all = things.iter().map(|t| counted(t));
    all.filter(|(_, t)| same(t, thing))
        .filter_map(|(n, _)| n)
        .max()
}

/// What the first lists need and the others have nothing of.
pub fn only_in<'a>(
    lists: impl Iterator<Item = &'a [String]>,
    others: impl Iterator<Item = &'a [String]>,
) -> Vec<String> {
    let others = peak(others);
    let there = |thing: &str| others.iter().any(|(_, o)| same(o, thing));
    let all = peak(lists).into_iter();
    all.filter(|(_, t)| !there(t)).map(in_words).collect()
}

/// What the first lists need and the others have nothing of, or fewer.
pub fn beyond<'a>(
    lists: impl Iterator<Item = &'a [String]>,
    others: impl Iterator<Item = &'a [String]>,
) -> Vec<String> {
    let others = peak(others);
    let enough = |(n, thing): &Counted<'_>| others.iter().any(|(o, t)| same(t, thing) && o >= n);
    let all = peak(lists).into_iter();
    all.filter(|c| !enough(c)).map(in_words).collect()
}

fn peak<'a>(lists: impl Iterator<Item = &'a [String]>) -> Vec<Counted<'a>> {
    let mut all: Vec<Counted<'a>> = Vec::new();
    for entry in lists.flatten() {
        let (number, thing) = counted(entry);
        if thing.is_empty() {
            continue;
        }
        match all.iter_mut().find(|(_, t)| same(t, thing)) {
            Some((most, _)) => *most = (*most).max(number),
            None => all.push((number, thing)),
        }
    }
    all
}

fn same(a: &str, b: &str) -> bool {
    a.to_lowercase() == b.to_lowercase()
}

fn in_words((number, thing): Counted<'_>) -> String {
    match number {
        Some(n) => format!("{n} {thing}"),
        None => thing.to_owned(),
    }
}

/// "8 paddles" as a number and a thing.
fn counted(entry: &str) -> Counted<'_> {
    let entry = entry.trim();
    let digits = entry.len() - entry.trim_start_matches(|c: char| c.is_ascii_digit()).len();
    match entry[..digits].parse() {
        Ok(n) if entry[digits..].starts_with(' ') => (Some(n), entry[digits..].trim_start()),
        _ => (None, entry),
    }
}

#[cfg(test)]
mod tests {
    use super::{beyond, only_in};

    #[test]
    fn what_is_there_already_is_not_brought_again() {
        let list = |things: &[&str]| -> Vec<Vec<String>> {
            vec![things.iter().map(|t| (*t).to_owned()).collect()]
        };
        let boat = list(&["10 paddles", "4 boats", "a rope"]);
        let game = list(&["8 Paddles", "2 balls", "6 boats", "A rope"]);
        fn slices(lists: &[Vec<String>]) -> impl Iterator<Item = &[String]> {
            lists.iter().map(Vec::as_slice)
        }
        assert_eq!(only_in(slices(&boat), slices(&game)), Vec::<String>::new());
        assert_eq!(only_in(slices(&game), slices(&boat)), ["2 balls"]);
        assert_eq!(beyond(slices(&game), slices(&boat)), ["2 balls", "6 boats"]);
    }
}
