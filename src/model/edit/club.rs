//! Edits of the club itself: its name and rules, parts of the day, activities.

use std::sync::Arc;

use super::{Made, Refused, fresh, set, shift, songs};
use crate::model::club::{Activity, Club, Part, Rules};
use crate::model::hand::HandChanges;
use crate::model::ids::{ActivityId, AwardId, PartId};
use crate::model::limits;
use crate::model::people::Helper;
use crate::model::privacy::Guarded;
use crate::model::record::Record;
use crate::model::session::{Session, Slot};
use crate::model::standing::{Beside, StandingStep};

pub(super) fn rename(club: &mut Club, name: &str) -> Result<Made, Refused> {
    let name = limits::tidy_line(name);
    limits::text("The name", &name)?;
    club.name = name;
    Ok(Made::Nothing)
}

pub(super) fn set_rules(club: &mut Club, rules: &Rules) -> Result<Made, Refused> {
    let mut rules = rules.clone();
    rules.care = Box::new(limits::care::tidy(&rules.care));
    limits::rules(&rules)?;
    for award in &club.rules.care.awards {
        let held = |h: &&Arc<Helper>| h.certificates.iter().any(|c| c.award == award.id);
        let holders: Vec<String> = club
            .helpers
            .iter()
            .filter(held)
            .map(|h| short(&h.name))
            .collect();
        if rules.care.award(award.id).is_none() && !holders.is_empty() {
            let name = quoted(&award.name);
            return Err(in_use(&name, &holders, "Take it from these helpers first."));
        }
    }
    for award in &mut rules.care.awards {
        if award.id == AwardId::NEW {
            award.id = AwardId(fresh(club)?);
        }
    }
    club.rules = rules;
    Ok(Made::Nothing)
}

pub(super) fn add_part(club: &mut Club, name: &str) -> Result<Made, Refused> {
    let name = limits::tidy_line(name);
    limits::filled("The name", &name)?;
    limits::count("parts of the day", club.parts.len() + 1, limits::PARTS)?;
    let id = PartId(fresh(club)?);
    club.parts.push(Part { id, name });
    Ok(Made::Part(id))
}

pub(super) fn rename_part(club: &mut Club, id: PartId, name: &str) -> Result<Made, Refused> {
    let name = limits::tidy_line(name);
    limits::filled("The name", &name)?;
    let at = part_at(club, id)?;
    club.parts[at].name = name;
    Ok(Made::Nothing)
}

pub(super) fn move_part(club: &mut Club, id: PartId, to: usize) -> Result<Made, Refused> {
    let at = part_at(club, id)?;
    shift(&mut club.parts, at, to);
    Ok(Made::Nothing)
}

pub(super) fn remove_part(club: &mut Club, id: PartId) -> Result<Made, Refused> {
    let at = part_at(club, id)?;
    let activities = club
        .activities
        .iter()
        .filter(|a| a.part == id)
        .map(|a| format!("the activity {}", quoted(&a.label)));
    let sessions = club
        .sessions
        .iter()
        .filter(|s| s.timetable.iter().any(|slot| slot.part == id))
        .map(|s| format!("the timetable of {}", session_name(s)));
    let people = club
        .participants
        .iter()
        .filter(|p| p.standing.own.iter().any(|s| s.beside == Beside::Part(id)))
        .map(|p| format!("an own step of {}", short(&p.name)));
    let places: Vec<String> = activities.chain(sessions).chain(people).collect();
    if !places.is_empty() {
        let name = quoted(&club.parts[at].name);
        return Err(in_use(&name, &places, "Give these another part first."));
    }
    club.parts.remove(at);
    Ok(Made::Nothing)
}

fn part_at(club: &Club, id: PartId) -> Result<usize, Refused> {
    let at = club.parts.iter().position(|p| p.id == id);
    at.ok_or_else(|| Refused::gone("part of the day"))
}

pub(super) fn add_activity(club: &mut Club, activity: &Activity) -> Result<Made, Refused> {
    limits::count("activities", club.activities.len() + 1, limits::LIST)?;
    let mut activity = limits::tidy_activity(activity);
    // The id given is a placeholder, so a replacement equal to it cannot mean the activity itself.
    check_activity(club, &activity)?;
    let id = ActivityId(fresh(club)?);
    activity.id = id;
    club.activities.push(Arc::new(activity));
    Ok(Made::Activity(id))
}

pub(super) fn change_activity(club: &mut Club, activity: &Activity) -> Result<Made, Refused> {
    let activity = limits::tidy_activity(activity);
    let at = activity_at(club, activity.id)?;
    check_activity(club, &activity)?;
    if activity.dry_replacement == Some(activity.id) {
        return Err(Refused::new(
            format!("{} cannot stand in for itself.", quoted(&activity.label)),
            "Choose another activity for when the water is not possible.",
        ));
    }
    set(&mut club.activities[at], activity);
    Ok(Made::Nothing)
}

fn check_activity(club: &Club, activity: &Activity) -> Result<(), Refused> {
    limits::activity(activity)?;
    if club.part(activity.part).is_none() {
        return Err(Refused::new(
            format!("{} has no part of the day.", quoted(&activity.label)),
            "Choose the part of the day it usually belongs to; add one if there is none.",
        ));
    }
    match activity.dry_replacement {
        Some(id) if club.activity(id).is_none() => Err(Refused::gone("dry replacement")),
        _ => Ok(()),
    }
}

pub(super) fn remove_activity(club: &mut Club, id: ActivityId) -> Result<Made, Refused> {
    let at = activity_at(club, id)?;
    let places = uses(club, id);
    if !places.is_empty() {
        let name = quoted(&club.activities[at].label);
        let hint = "Take it out there or put something else in its place first.";
        return Err(in_use(&name, &places, hint));
    }
    club.activities.remove(at);
    forget_activity(club, id);
    Ok(Made::Nothing)
}

/// What was said about an activity that is gone says nothing any more.
fn forget_activity(club: &mut Club, id: ActivityId) {
    songs::forget_activity(club, id);
    for p in &mut club.participants {
        let named = p.standing.swaps.contains_key(&id)
            || p.standing.left_out.contains(&id)
            || p.manner.mixed.contains_key(&id)
            || p.profile.favourites.contains(&id);
        if named {
            let p = Arc::make_mut(p);
            p.standing.swaps.remove(&id);
            p.standing.left_out.remove(&id);
            p.manner.mixed.remove(&id);
            p.profile.favourites.remove(&id);
        }
    }
    for session in &mut club.sessions {
        let named = |r: &Guarded<Record>| r.for_owner().favourite == Some(id);
        if session.records.values().any(named) {
            for record in Arc::make_mut(session).records.values_mut() {
                if named(record) {
                    let mut plain = record.for_owner().clone();
                    plain.favourite = None;
                    *record = Guarded::new(record.class(), plain);
                }
            }
            let empty = |r: &Guarded<Record>| r.for_owner().is_empty();
            Arc::make_mut(session).records.retain(|_, r| !empty(r));
        }
    }
}

pub(super) fn activity_at(club: &Club, id: ActivityId) -> Result<usize, Refused> {
    let at = club.activities.iter().position(|a| a.id == id);
    at.ok_or_else(|| Refused::gone("activity"))
}

/// Where an activity is used, in words.
fn uses(club: &Club, id: ActivityId) -> Vec<String> {
    let mut places: Vec<String> = club
        .activities
        .iter()
        .filter(|a| a.dry_replacement == Some(id))
        .map(|a| format!("the dry replacement of {}", quoted(&a.label)))
        .collect();
    for p in &club.participants {
        let beside = |s: &StandingStep| s.beside == Beside::Activity(id);
        let mut shown = p.standing.contents();
        if shown.any(|c| c.activity == Some(id)) || p.standing.own.iter().any(beside) {
            places.push(format!("what is always so for {}", short(&p.name)));
        }
    }
    for session in &club.sessions {
        let named = |slot: &Slot| {
            let instead = slot.off.and_then(|o| o.instead);
            let mut options = slot.options.iter().filter_map(|o| o.activity);
            slot.activity == id || instead == Some(id) || options.any(|o| o == id)
        };
        if session.timetable.iter().any(named) {
            places.push(format!("the timetable of {}", session_name(session)));
        }
        for (who, hand) in &session.hand {
            if shows(hand, id) {
                let name = club.participant(*who).map_or("a participant", |p| &p.name);
                places.push(format!(
                    "the board of {} in {}",
                    short(name),
                    session_name(session)
                ));
            }
        }
    }
    places
}

fn shows(hand: &HandChanges, id: ActivityId) -> bool {
    hand.contents().any(|c| c.activity == Some(id))
}

fn in_use(name: &str, places: &[String], hint: &str) -> Refused {
    let shown = 3;
    let mut list = places[..places.len().min(shown)].join(", ");
    if places.len() > shown {
        list += &format!(" and {} more", places.len() - shown);
    }
    Refused::new(format!("{name} is in use: {list}."), hint)
}

fn session_name(session: &Session) -> String {
    let title = if session.title.is_empty() {
        "the session"
    } else {
        &session.title
    };
    format!("{}, {}", short(title), session.date)
}

/// A name in quotation marks, short enough for a sentence.
fn quoted(name: &str) -> String {
    format!("“{}”", short(name))
}

/// A name short enough for a menu or a sentence.
pub(super) fn short(name: &str) -> String {
    let most = 40;
    if name.chars().count() <= most {
        return name.to_owned();
    }
    let start: String = name.chars().take(most - 1).collect();
    format!("{}…", start.trim_end())
}
