//! Edits of the club's own pictures.

use std::sync::Arc;

use super::{Made, Refused, fresh};
use crate::model::club::Club;
use crate::model::hand::{Asked, Content, HandChanges};
use crate::model::ids::{ParticipantId, PictureId, SymbolId};
use crate::model::limits;
use crate::model::picture::Picture;
use crate::model::set::{self, Meeting};

pub(super) fn add(club: &mut Club, picture: &Picture) -> Result<Made, Refused> {
    limits::count("pictures", club.pictures.len() + 1, limits::PICTURES)?;
    let mut picture = limits::picture::tidy(picture);
    check(club, &picture)?;
    picture.id = PictureId(fresh(club)?);
    let id = picture.id;
    share(club, &mut picture);
    club.pictures.push(Arc::new(picture));
    limits::picture::together(club)?;
    Ok(Made::Picture(id))
}

pub(super) fn change(club: &mut Club, picture: &Picture) -> Result<Made, Refused> {
    let mut picture = limits::picture::tidy(picture);
    let at = at(club, picture.id)?;
    check(club, &picture)?;
    share(club, &mut picture);
    super::set(&mut club.pictures[at], picture);
    limits::picture::together(club)?;
    Ok(Made::Nothing)
}

/// The picture goes, and wherever it was shown its symbol is seen again.
pub(super) fn remove(club: &mut Club, id: PictureId) -> Result<Made, Refused> {
    let at = at(club, id)?;
    let gone = club.pictures.remove(at);
    forget(club, &gone);
    Ok(Made::Nothing)
}

/// Pictures and activities of another club; all of them or none.
pub(super) fn take_set(club: &mut Club, given: &Club, meeting: Meeting) -> Result<Made, Refused> {
    for picture in &given.pictures {
        check(given, picture)?;
    }
    for activity in &given.activities {
        limits::activity(activity)?;
    }
    set::take_in(club, given, meeting, fresh)?;
    limits::count("parts of the day", club.parts.len(), limits::PARTS)?;
    limits::count("pictures", club.pictures.len(), limits::PICTURES)?;
    limits::count("activities", club.activities.len(), limits::LIST)?;
    limits::picture::together(club)?;
    Ok(Made::Nothing)
}

/// Someone's pictures go with them.
pub(super) fn forget_participant(club: &mut Club, who: ParticipantId) {
    let theirs = |p: &Arc<Picture>| p.whose == Some(who);
    let gone: Vec<Arc<Picture>> = club
        .pictures
        .iter()
        .filter(|p| theirs(p))
        .cloned()
        .collect();
    club.pictures.retain(|p| !theirs(p));
    for picture in gone {
        forget(club, &picture);
    }
}

/// The same photograph is held once, however many pictures show it.
fn share(club: &Club, picture: &mut Picture) {
    let Some(photo) = picture.photo() else { return };
    let same = club.pictures.iter().filter_map(|p| p.photo());
    if let Some(same) = same.into_iter().find(|p| *p == photo) {
        picture.made = crate::model::picture::Made::Photo(Arc::clone(same));
    }
}

fn check(club: &Club, picture: &Picture) -> Result<(), Refused> {
    limits::picture::check(picture)?;
    match picture.whose {
        Some(id) if club.participant(id).is_none() => Err(Refused::gone("participant")),
        _ => Ok(()),
    }
}

fn at(club: &Club, id: PictureId) -> Result<usize, Refused> {
    let at = club.pictures.iter().position(|p| p.id == id);
    at.ok_or_else(|| Refused::gone("picture"))
}

/// Puts what a picture stood for wherever it was named.
fn forget(club: &mut Club, gone: &Picture) {
    let was = gone.symbol();
    let now = gone.stands_for.clone();
    let now = now.unwrap_or_else(|| SymbolId::new("something_else"));
    let swap = Swap { was, now };
    for activity in &mut club.activities {
        if activity.symbol == swap.was {
            Arc::make_mut(activity).symbol = swap.now.clone();
        }
    }
    for person in &mut club.participants {
        if person.standing.contents().any(|c| c.symbol == swap.was) {
            let person = Arc::make_mut(person);
            person.standing.contents_mut().for_each(|c| swap.content(c));
        }
    }
    for session in &mut club.sessions {
        let slots = session.timetable.iter();
        let in_slots = slots.flat_map(|s| &s.options).any(|c| c.symbol == swap.was);
        if in_slots {
            let slots = Arc::make_mut(session).timetable.iter_mut();
            slots.for_each(|s| s.options.iter_mut().for_each(|c| swap.content(c)));
        }
        let hands = session.hand.iter();
        let changed: Vec<(ParticipantId, HandChanges)> = hands
            .filter_map(|(who, hand)| Some((*who, swap.hand(hand)?)))
            .collect();
        if !changed.is_empty() {
            Arc::make_mut(session).hand.extend(changed);
        }
    }
}

/// One symbol in place of another.
struct Swap {
    was: SymbolId,
    now: SymbolId,
}

impl Swap {
    fn content(&self, content: &mut Content) {
        if content.symbol == self.was {
            content.symbol = self.now.clone();
        }
    }

    /// The same changes with the symbol swapped; nothing where it is not named.
    fn hand(&self, hand: &HandChanges) -> Option<HandChanges> {
        let mut next = hand.clone();
        let instead = next.not_today.values_mut().flatten();
        let shown = next.own.values_mut().chain(next.replaced.values_mut());
        let shown = shown.chain(instead);
        shown
            .chain(next.choices.values_mut().flatten())
            .for_each(|c| self.content(c));
        for asked in &mut next.asked {
            match asked {
                Asked::RowGone {
                    was,
                    shown,
                    options,
                    ..
                } => {
                    let all = [was, shown].into_iter().chain(options);
                    all.for_each(|c| self.content(c));
                }
                Asked::OtherWords { was, .. } | Asked::OtherActivity { was, .. } => {
                    self.content(was);
                }
            }
        }
        (next != *hand).then_some(next)
    }
}
