//! What a club gives to another: pictures and activities, without any person. A set is a club in which
//! nobody is.

use std::collections::BTreeMap;
use std::sync::Arc;

use super::club::{Activity, Club, Part};
use super::ids::{ActivityId, PartId, PictureId, SymbolId};
use super::picture::{Picture, Place};
use super::privacy::{Class, Guarded};

/// What a set holds.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Holds {
    /// Pictures of the club's own.
    Pictures,
    /// Activities, with the pictures they show.
    Activities,
    /// Both.
    Both,
}

impl Holds {
    /// All of them, for lists.
    pub const ALL: [Self; 3] = [Self::Pictures, Self::Activities, Self::Both];

    /// In words.
    pub const fn label(self) -> &'static str {
        match self {
            Self::Pictures => "Pictures",
            Self::Activities => "Activities",
            Self::Both => "Pictures and activities",
        }
    }
}

/// Which of two that have the same name stays.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Meeting {
    /// The one that is there.
    KeepOurs,
    /// The one that comes.
    TakeTheirs,
    /// Both; the one that comes gets a number.
    KeepBoth,
}

/// A set out of a club, and what could not go with it, by name: pictures that are someone's own, show
/// a person or may not be seen outside, and activities whose words name someone.
pub fn of_club(club: &Club, holds: Holds) -> (Club, Vec<String>) {
    let mut left = Vec::new();
    let mut set = Club {
        name: club.name.clone(),
        next_id: club.next_id,
        ..Club::default()
    };
    if holds != Holds::Pictures {
        set.parts.clone_from(&club.parts);
        for activity in &club.activities {
            if names_someone(club, activity) {
                left.push(activity.label.clone());
            } else {
                set.activities.push(Arc::clone(activity));
            }
        }
        let kept: Vec<ActivityId> = set.activities.iter().map(|a| a.id).collect();
        for activity in &mut set.activities {
            if activity
                .dry_replacement
                .is_some_and(|dry| !kept.contains(&dry))
            {
                Arc::make_mut(activity).dry_replacement = None;
            }
        }
    }
    for picture in &club.pictures {
        let shown = set.activities.iter().any(|a| a.symbol == picture.symbol());
        if holds == Holds::Activities && !shown {
            continue;
        }
        let open = picture.whose.is_none() && !picture.person;
        if open && picture.may_be_seen(club, Place::Outside) {
            let mut picture = Picture::clone(picture);
            picture.wish = Guarded::new(Class::Coordinator, String::new());
            picture.said_on = None;
            set.pictures.push(Arc::new(picture));
        } else {
            left.push(picture.name.clone());
        }
    }
    let there: Vec<SymbolId> = set.pictures.iter().map(|p| p.symbol()).collect();
    for activity in &mut set.activities {
        if activity.symbol.own().is_some() && !there.contains(&activity.symbol) {
            let meant = club.meant_by(&activity.symbol);
            let meant = Some(meant).filter(|m| m.own().is_none());
            let meant = meant.unwrap_or_else(|| SymbolId::new("something_else"));
            Arc::make_mut(activity).symbol = meant;
        }
    }
    (set, left)
}

/// Whether the words of an activity have the name of someone in the club in them.
fn names_someone(club: &Club, a: &Activity) -> bool {
    let around = [
        &a.around.who,
        &a.around.strong,
        &a.around.helps,
        &a.around.why,
    ];
    let texts = [&a.label, &a.place, &a.thing].into_iter().chain(around);
    let texts = texts.chain(&a.sentences).chain(&a.equipment);
    let people = club.participants.iter().map(|p| &p.name);
    let names: Vec<Vec<String>> = people
        .chain(club.helpers.iter().map(|h| &h.name))
        .map(|n| words(n))
        .filter(|n| !n.is_empty())
        .collect();
    texts.map(|t| words(t)).any(|text| {
        let says = |name: &Vec<String>| text.windows(name.len()).any(|w| w == name.as_slice());
        names.iter().any(says)
    })
}

fn words(text: &str) -> Vec<String> {
    let parts = text.split(|c: char| !c.is_alphanumeric());
    parts
        .filter(|w| !w.is_empty())
        .map(str::to_lowercase)
        .collect()
}

fn same(a: &str, b: &str) -> bool {
    a.trim().to_lowercase() == b.trim().to_lowercase()
}

/// What has the name of something in the club and is not the same, by name.
pub fn meetings(club: &Club, set: &Club) -> Vec<String> {
    let pictures = set.pictures.iter().filter(|new| {
        let old = club.pictures.iter().find(|p| same(&p.name, &new.name));
        old.is_some_and(|old| old.hash() != new.hash())
    });
    let activities = set.activities.iter().filter(|new| {
        let old = club.activities.iter().find(|a| same(&a.label, &new.label));
        old.is_some_and(|old| !alike(set, club, new, old))
    });
    let pictures = pictures.map(|p| p.name.clone());
    pictures
        .chain(activities.map(|a| a.label.clone()))
        .collect()
}

/// Whether two activities say the same, whatever their numbers.
fn alike(set: &Club, club: &Club, new: &Activity, old: &Activity) -> bool {
    let seen = |club: &Club, a: &Activity| match club.own_picture(&a.symbol) {
        Some(own) => own.hash().to_owned(),
        None => a.symbol.to_string(),
    };
    let part = |club: &Club, a: &Activity| club.part(a.part).map(|p| p.name.to_lowercase());
    let dry = |club: &Club, a: &Activity| {
        let dry = a.dry_replacement.and_then(|id| club.activity(id));
        dry.map(|d| d.label.to_lowercase())
    };
    let plain = |a: &Activity| Activity {
        id: ActivityId(0),
        symbol: SymbolId::new(""),
        part: PartId(0),
        dry_replacement: None,
        ..a.clone()
    };
    plain(new) == plain(old)
        && seen(set, new) == seen(club, old)
        && part(set, new) == part(club, old)
        && dry(set, new) == dry(club, old)
}

/// What a set leads to: the parts, pictures and activities to add or to change, under numbers of the
/// set. `fresh` gives new numbers.
///
/// # Errors
/// What `fresh` says.
pub(crate) fn take_in<E>(
    club: &mut Club,
    set: &Club,
    meeting: Meeting,
    mut fresh: impl FnMut(&mut Club) -> Result<u32, E>,
) -> Result<(), E> {
    let mut parts: BTreeMap<PartId, PartId> = BTreeMap::new();
    for part in &set.parts {
        let used = set.activities.iter().any(|a| a.part == part.id);
        let there = club.parts.iter().find(|p| same(&p.name, &part.name));
        let id = match there.map(|p| p.id) {
            Some(id) => id,
            None if !used => continue,
            None => {
                let id = PartId(fresh(club)?);
                let name = part.name.clone();
                club.parts.push(Part { id, name });
                id
            }
        };
        parts.insert(part.id, id);
    }
    let symbols = pictures(club, set, meeting, &mut fresh)?;
    activities(club, set, meeting, (&parts, &symbols), &mut fresh)
}

/// Symbols of the set's pictures, and what they are called in the club.
type Symbols = BTreeMap<SymbolId, SymbolId>;

fn pictures<E>(
    club: &mut Club,
    set: &Club,
    meeting: Meeting,
    fresh: &mut impl FnMut(&mut Club) -> Result<u32, E>,
) -> Result<Symbols, E> {
    let mut symbols = Symbols::new();
    for new in &set.pictures {
        let at = club.pictures.iter().position(|p| same(&p.name, &new.name));
        let is_same = at.is_some_and(|i| club.pictures[i].hash() == new.hash());
        let id = match at {
            Some(i) if is_same || meeting == Meeting::KeepOurs => club.pictures[i].id,
            Some(i) if meeting == Meeting::TakeTheirs => {
                let old = Arc::make_mut(&mut club.pictures[i]);
                old.made = new.made.clone();
                old.words.clone_from(&new.words);
                old.source.clone_from(&new.source);
                old.licence.clone_from(&new.licence);
                old.id
            }
            _ => {
                let id = PictureId(fresh(club)?);
                let taken = |name: &str| club.pictures.iter().any(|p| same(&p.name, name));
                let name = free(&new.name, taken);
                club.pictures.push(Arc::new(Picture {
                    id,
                    name,
                    ..Picture::clone(new)
                }));
                id
            }
        };
        if let Some(mine) = club.picture(id) {
            symbols.insert(new.symbol(), mine.symbol());
        }
    }
    Ok(symbols)
}

fn activities<E>(
    club: &mut Club,
    set: &Club,
    meeting: Meeting,
    (parts, symbols): (&BTreeMap<PartId, PartId>, &Symbols),
    fresh: &mut impl FnMut(&mut Club) -> Result<u32, E>,
) -> Result<(), E> {
    let mut ids: BTreeMap<ActivityId, ActivityId> = BTreeMap::new();
    let mut changed = Vec::new();
    for new in &set.activities {
        let at = club
            .activities
            .iter()
            .position(|a| same(&a.label, &new.label));
        if let Some(i) = at
            && (meeting == Meeting::KeepOurs || alike(set, club, new, &club.activities[i]))
        {
            ids.insert(new.id, club.activities[i].id);
            continue;
        }
        let mut next = Activity::clone(new);
        next.symbol = symbols.get(&new.symbol).unwrap_or(&new.symbol).clone();
        next.part = parts.get(&new.part).copied().unwrap_or(new.part);
        next.dry_replacement = None;
        match at {
            Some(i) if meeting == Meeting::TakeTheirs => {
                next.id = club.activities[i].id;
                club.activities[i] = Arc::new(next.clone());
            }
            _ => {
                next.id = ActivityId(fresh(club)?);
                let taken = |name: &str| club.activities.iter().any(|a| same(&a.label, name));
                next.label = free(&new.label, taken);
                club.activities.push(Arc::new(next.clone()));
            }
        }
        ids.insert(new.id, next.id);
        changed.push((next.id, new.dry_replacement));
    }
    for (id, dry) in changed {
        let dry = dry.and_then(|d| ids.get(&d)).copied().filter(|d| *d != id);
        let at = club.activities.iter().position(|a| a.id == id);
        if let (Some(at), Some(_)) = (at, dry) {
            Arc::make_mut(&mut club.activities[at]).dry_replacement = dry;
        }
    }
    Ok(())
}

/// A name that is free: itself, or with the first number that is.
fn free(name: &str, taken: impl Fn(&str) -> bool) -> String {
    let mut free = name.to_owned();
    let mut number = 2;
    while taken(&free) {
        free = format!("{name} {number}");
        number += 1;
    }
    free
}
