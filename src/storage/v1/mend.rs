//! What can be mended in a club that was read without guessing what a person meant; each kind is
//! told once.

use std::collections::btree_map::Entry;
use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

use crate::model::hand::{HandChanges, Placement};
use crate::model::ids::{HelperId, OwnId, ParticipantId, SlotId, StepRef};
use crate::model::language::Language;
use crate::model::stock::{Owned, TileKey};
use crate::model::{club, session};

/// Takes out what speaks of someone or something that is not in the file, and gives every own step
/// a place. Tells each kind once.
pub(super) fn mend_session(club: &club::Club, s: &mut session::Session) -> Vec<String> {
    let mut notes = Vec::new();
    let name = format!("{}, {}", s.title, s.date);
    let mut tell = |mended: bool, what: &str| {
        if mended {
            notes.push(format!("{name}: {what}"));
        }
    };
    let before = (s.away.len() + s.helpers_away.len(), s.hand.len());
    s.away.retain(|id| club.participant(*id).is_some());
    s.helpers_away.retain(|id| club.helper(*id).is_some());
    tell(
        s.away.len() + s.helpers_away.len() != before.0,
        "someone who is not in the club was marked as away; the mark was left out.",
    );
    s.hand.retain(|id, _| club.participant(*id).is_some());
    tell(
        s.hand.len() != before.1,
        "there was a board of someone who is not in the club; it was left out.",
    );
    let before = (s.stories.len(), s.beside.len());
    s.stories.retain(|id, _| club.participant(*id).is_some());
    tell(
        s.stories.len() != before.0,
        "there was a story of someone who is not in the club; it was left out.",
    );
    s.beside
        .retain(|id, h| club.participant(*id).is_some() && club.helper(*h).is_some());
    tell(
        s.beside.len() != before.1,
        "someone who is not in the club was beside another; it was left out.",
    );
    tell(
        mend_people(club, s),
        "someone or a row was named for the day that is not there; it was left out.",
    );
    let rows: BTreeSet<SlotId> = s.timetable.iter().map(|r| r.id).collect();
    let (mut gone, mut placed) = (false, false);
    for hand in s.hand.values_mut() {
        name_contents(club, hand);
        gone |= drop_gone(&rows, hand);
        placed |= place_each_once(&s.timetable, hand);
    }
    s.hand.retain(|_, hand| !hand.is_empty());
    tell(
        gone,
        "a change by hand was about a step that is not there; it was left out.",
    );
    tell(
        placed,
        "a step had no place of its own, or two; look at the order of the boards.",
    );
    notes
}

/// Takes out of the day's people and turns whoever is not in the club, and rows that are not there.
fn mend_people(club: &club::Club, s: &mut session::Session) -> bool {
    let before = (s.today.clone(), s.turns.clone());
    let helper = |h: &HelperId| club.helper(*h).is_some();
    let here = |p: &ParticipantId| club.participant(*p).is_some();
    let rows: BTreeSet<SlotId> = s.timetable.iter().map(|r| r.id).collect();
    let today = &mut s.today;
    today.water_lead = today.water_lead.filter(helper);
    today.here.retain(|h, _| helper(h));
    today.watching.retain(|h, _| helper(h));
    today.watched_by.retain(|p, h| here(p) && helper(h));
    today.pairs.retain(|(p, h), _| here(p) && helper(h));
    for with in today.held.values_mut() {
        with.retain(helper);
    }
    today
        .held
        .retain(|(slot, p), with| rows.contains(slot) && here(p) && !with.is_empty());
    if let Some(turns) = &mut s.turns {
        turns.places.retain(|p, _| here(p));
        turns.friends.retain(|(a, b)| here(a) && here(b));
        turns.settle_held();
    }
    (&s.today, &s.turns) != (&before.0, &before.1)
}

/// Words of content that is an activity may be left out by whoever writes a file by hand.
fn name_contents(club: &club::Club, hand: &mut HandChanges) {
    for content in hand.own.values_mut().chain(hand.replaced.values_mut()) {
        if content.label.is_empty()
            && let Some(activity) = content.activity.and_then(|id| club.activity(id))
        {
            content.label.clone_from(&activity.label);
        }
    }
}

fn drop_gone(rows: &BTreeSet<SlotId>, hand: &mut HandChanges) -> bool {
    let before = hand.clone();
    let own: BTreeSet<OwnId> = hand.own.keys().copied().collect();
    let exists = |step: &StepRef| match step {
        StepRef::Own(id) => own.contains(id),
        _ => step.slot().is_none_or(|id| rows.contains(&id)),
    };
    hand.replaced.retain(|step, _| exists(step));
    hand.not_today.retain(|step, _| exists(step));
    hand.choices.retain(|step, _| exists(step));
    hand.with_group.retain(|id| rows.contains(id));
    hand.asked
        .retain(|a| a.slot().is_none_or(|id| rows.contains(&id)));
    hand.labels
        .retain(|step, words| exists(step) && !words.is_empty());
    hand.placed.retain(|p| exists(&p.step));
    for p in &mut hand.placed {
        p.after.retain(exists);
    }
    *hand != before
}

/// An own step without a place goes to the end.
fn place_each_once(timetable: &[session::Slot], hand: &mut HandChanges) -> bool {
    let before = hand.placed.len();
    let mut seen = BTreeSet::new();
    hand.placed.retain(|p| seen.insert(p.step));
    let mut mended = hand.placed.len() != before;
    let own: Vec<OwnId> = hand.own.keys().copied().collect();
    for id in own {
        if !seen.contains(&StepRef::Own(id)) {
            hand.placed.push(Placement {
                step: StepRef::Own(id),
                after: timetable
                    .iter()
                    .rev()
                    .map(|r| StepRef::Slot(r.id))
                    .collect(),
            });
            mended = true;
        }
    }
    mended
}

/// Files may hold words between hyphens that were taken for a language tag and are none. Their first
/// part chose the words, so it still does.
pub(super) fn mend_words(club: &mut club::Club) -> Option<String> {
    let was = club.rules.words.clone();
    let part = |p: &str| (1..=8).contains(&p.len()) && p.bytes().all(|b| b.is_ascii_alphanumeric());
    let taken = was.tag().len() <= 35
        && was.tag().split('-').all(part)
        && was.primary().bytes().all(|b| b.is_ascii_alphabetic());
    if was.is_tag() || !taken {
        return None;
    }
    let first = Some(Language::new(was.primary()));
    let words = first.filter(Language::is_tag).unwrap_or_default();
    let told = format!("“{was}” is no language tag; the words of “{words}” are used.");
    club.rules.words = words;
    Some(told)
}

pub(super) fn mend_order(club: &mut club::Club) -> Option<String> {
    let key = |s: &Arc<session::Session>| (s.date, s.start, s.id);
    if club.sessions.is_sorted_by_key(key) {
        return None;
    }
    club.sessions.sort_by_key(key);
    Some("The sessions were put in the order of their dates.".to_owned())
}

/// The next number to give lies above all that were given.
pub(super) fn mend_next_id(club: &mut club::Club) -> Option<String> {
    let rows = |s: &Arc<session::Session>| {
        let own = s.hand.values().flat_map(|h| h.own.keys().map(|o| o.0));
        let rows = s.timetable.iter().map(|r| r.id.0);
        own.chain(rows).chain([s.id.0]).max()
    };
    let highest = club
        .parts
        .iter()
        .map(|p| p.id.0)
        .chain(club.activities.iter().map(|a| a.id.0))
        .chain(club.participants.iter().map(|p| p.id.0))
        .chain(
            club.participants
                .iter()
                .flat_map(|p| p.standing.own.iter().map(|s| s.id.0)),
        )
        .chain(club.songs.iter().map(|s| s.id.0))
        .chain(club.pictures.iter().map(|p| p.id.0))
        .chain(club.helpers.iter().map(|h| h.id.0))
        .chain(club.rules.care.awards.iter().map(|a| a.id.0))
        .chain(club.sessions.iter().filter_map(rows))
        .max();
    let next = highest.map_or(0, |h| h.saturating_add(1));
    if club.next_id >= next {
        return None;
    }
    let told = club.next_id != 0;
    club.next_id = next;
    told.then(|| "The count of numbers given was too low; it was set right.".to_owned())
}

/// Tiles of people who are no longer in the club go; the rest are put in order, each kind once.
pub(super) fn mend_stock(club: &mut club::Club) -> Option<String> {
    let known: BTreeSet<ParticipantId> = club.participants.iter().map(|p| p.id).collect();
    let mut kinds: BTreeMap<TileKey, Owned> = BTreeMap::new();
    let mut gone = 0;
    for owned in std::mem::take(&mut club.stock) {
        if owned.key.whose.is_some_and(|who| !known.contains(&who)) {
            gone += 1;
            continue;
        }
        match kinds.entry(owned.key.clone()) {
            Entry::Vacant(place) => {
                place.insert(owned);
            }
            Entry::Occupied(mut place) => {
                let one = place.get_mut();
                one.count = one.count.saturating_add(owned.count);
                one.lost = one.lost.saturating_add(owned.lost);
                one.worn = one.worn.saturating_add(owned.worn);
            }
        }
    }
    club.stock = kinds.into_values().collect();
    let was = match gone {
        1 => "1 kind of tile was",
        n => &format!("{n} kinds of tiles were"),
    };
    (gone > 0)
        .then(|| format!("{was} in stock for someone who is not in the club; it is left out."))
}
