//! Bounds of people, water and the place, and their texts made tidy.

use super::{
    LINES, LIST, SLOTS, TRANSITION_MINUTES, count, date, filled, text, tidy_line, tidy_start,
    tidy_text, whole,
};
use crate::model::award::{Award, Certificate, Validity};
use crate::model::care::{Care, Flag};
use crate::model::edit::{Refused, TurnsPlan};
use crate::model::looks::Looked;
use crate::model::people::Helper;
use crate::model::today::{Hours, Today};
use crate::model::turns::Turns;

/// Most people beside one participant, most in the water to one watcher, most adults asked for.
const PEOPLE_EACH: u32 = 6;
const WATCHER_FOR: u32 = 100;
const ADULTS: u32 = 200;
/// Longest reminder, in minutes: one day.
const REMINDER: u32 = 1440;
/// Longest validity of a certificate, in months.
const MONTHS: u32 = 600;
/// Most turns.
pub const TURNS: u32 = 40;
/// Deepest water, in centimetres.
pub const DEPTH_CM: u32 = 3_000;
/// Most kinds of certificates, and of flags.
const KINDS: usize = 100;

/// Tidies every text of the club's rules for people and water.
pub(crate) fn tidy(care: &Care) -> Care {
    let flag = |f: &Flag| Flag {
        looks: tidy_line(&f.looks),
        means: tidy_line(&f.means),
    };
    let award = |a: &Award| Award {
        name: tidy_line(&a.name),
        ..a.clone()
    };
    Care {
        rule: tidy_text(&care.rule),
        emergency: tidy_line(&care.emergency),
        meeting_spot: tidy_line(&care.meeting_spot),
        recall: tidy_line(&care.recall),
        flags: care.flags.iter().map(flag).collect(),
        awards: care.awards.iter().map(award).collect(),
        ..care.clone()
    }
}

/// Tidies the texts of a helper.
pub(crate) fn tidy_helper(h: &Helper) -> Helper {
    let certificate = |c: &Certificate| Certificate {
        seen_by: tidy_line(&c.seen_by),
        ..c.clone()
    };
    Helper {
        name: tidy_line(&h.name),
        certificates: h.certificates.iter().map(certificate).collect(),
        ..h.clone()
    }
}

/// Hours without seconds.
pub(crate) fn tidy_hours(h: Hours) -> Hours {
    Hours {
        from: h.from.map(tidy_start),
        to: h.to.map(tidy_start),
    }
}

/// Tidies what was looked at.
pub(crate) fn tidy_looked(l: &Looked) -> Looked {
    Looked {
        look: l.look,
        at: tidy_start(l.at),
        by: tidy_line(&l.by),
        seen: tidy_line(&l.seen),
        note: tidy_line(&l.note),
    }
}

/// Refuses rules for people and water outside the bounds.
pub fn care(c: &Care) -> Result<(), Refused> {
    let people = "The number of people beside one participant";
    whole(people, "", c.people_each, 1, PEOPLE_EACH)?;
    let watcher = "The number in the water to one watcher";
    c.watcher_for
        .map_or(Ok(()), |n| whole(watcher, "", n, 1, WATCHER_FOR))?;
    whole("The number of adults", "", c.fewest_adults, 0, ADULTS)?;
    for (what, minutes) in [
        (
            "The time until the place is looked at again",
            c.look_again_minutes,
        ),
        ("The time after thunder", c.thunder_minutes),
    ] {
        whole(what, " minutes", minutes, 1, REMINDER)?;
    }
    if let Some(s) = c.sunscreen {
        whole(
            "Sunscreen before the start",
            " minutes",
            s.before_minutes,
            0,
            TRANSITION_MINUTES,
        )?;
        whole("Sunscreen again", " minutes", s.every_minutes, 1, REMINDER)?;
    }
    let drink = "The time between drinks";
    c.drink_minutes
        .map_or(Ok(()), |n| whole(drink, " minutes", n, 1, REMINDER))?;
    text("The club’s rule for the water", &c.rule)?;
    text("The emergency number", &c.emergency)?;
    text("The meeting spot", &c.meeting_spot)?;
    text("The signal that can be seen", &c.recall)?;
    count("flags", c.flags.len(), KINDS)?;
    for flag in &c.flags {
        text("A flag", &flag.looks)?;
        text("What a flag means", &flag.means)?;
    }
    count("kinds of certificates", c.awards.len(), KINDS)?;
    c.awards.iter().try_for_each(award)
}

fn award(a: &Award) -> Result<(), Refused> {
    filled("The name of a kind of certificate", &a.name)?;
    match a.validity {
        Validity::Months { months, .. } => {
            whole("The time a certificate lasts", " months", months, 1, MONTHS)
        }
        Validity::AsWritten | Validity::FixedDay { .. } => Ok(()),
    }
}

/// Refuses certificates outside the bounds.
pub fn certificates(all: &[Certificate]) -> Result<(), Refused> {
    count("certificates of one helper", all.len(), LINES)?;
    for c in all {
        text("Who saw the certificate", &c.seen_by)?;
        let dates = [c.gained, c.expires, c.seen_on];
        dates.into_iter().flatten().try_for_each(date)?;
    }
    Ok(())
}

/// Refuses hours that end before they begin.
pub fn hours(h: &Hours) -> Result<(), Refused> {
    match (h.from, h.to) {
        (Some(from), Some(to)) if to <= from => Err(Refused::new(
            "The time someone goes is not after the time they come.",
            "Put the later time second.",
        )),
        _ => Ok(()),
    }
}

/// Refuses what was looked at outside the bounds.
pub fn looked(l: &Looked) -> Result<(), Refused> {
    text("Who looked", &l.by)?;
    text("What was seen", &l.seen)?;
    text("The note", &l.note)
}

/// Refuses a plan of turns outside the bounds.
pub fn turns(plan: &TurnsPlan) -> Result<(), Refused> {
    if plan.stations.is_empty() {
        return Err(Refused::new(
            "No rows are named for turns.",
            "Choose the rows that are done in turns.",
        ));
    }
    turn_numbers(plan.count, plan.minutes)?;
    let mut capacities = plan.stations.iter().filter_map(|s| s.capacity);
    capacities.try_for_each(capacity)
}

fn turn_numbers(turns: u32, minutes: u32) -> Result<(), Refused> {
    whole("The number of turns", "", turns, 1, TURNS)?;
    whole(
        "The time of a turn",
        " minutes",
        minutes,
        0,
        super::SLOT_MINUTES,
    )
}

fn capacity(n: u32) -> Result<(), Refused> {
    whole("How many can be at a station", "", n, 1, LIST as u32)
}

/// Refuses turns in a club that are outside the bounds.
pub fn turns_in(t: &Turns) -> Result<(), Refused> {
    turn_numbers(t.count, t.minutes)?;
    count("stations", t.stations.len() + t.waits.len(), SLOTS)?;
    count("pairs of friends", t.friends.len(), LIST)?;
    let mut capacities = t.stations.iter().filter_map(|s| s.capacity);
    capacities.try_for_each(capacity)
}

/// Refuses what is said about one date outside the bounds.
pub fn today(t: &Today) -> Result<(), Refused> {
    text("The meeting spot", &t.meeting_spot)?;
    count("points looked at", t.looks.len(), LIST)?;
    count("times of thunder", t.thunder.len(), SLOTS)?;
    t.here.values().try_for_each(hours)?;
    t.looks.iter().try_for_each(looked)
}

/// Refuses water that is deeper than any place of a session.
pub fn depth(cm: Option<u32>) -> Result<(), Refused> {
    cm.map_or(Ok(()), |cm| {
        whole("How deep the water is", " centimetres", cm, 0, DEPTH_CM)
    })
}
