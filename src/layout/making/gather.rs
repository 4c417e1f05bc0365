//! What is needed: every tile and card of every person with its number, its size and its kind; and
//! what of it is not in stock and has to be printed.

use std::collections::BTreeMap;

use super::face_key;
use crate::layout::Request;
use crate::layout::desk::{Desk, Person};
use crate::layout::fit;
use crate::layout::grid::MARGIN;
use crate::layout::tile_face::{Shape, TileSet};
use crate::model::finding::{Severity, Spot};
use crate::model::manner::Form;
use crate::model::session::Session;
use crate::model::stock::{TileFace, TileKey};
use crate::plan::clock::{Moment, clock};
use crate::plan::stock;
use crate::units::{Length, Size};

/// Smallest side of a tile that is laid out at all: below, not even a short word fits at 14 points.
pub(in crate::layout) const SMALLEST: Length = Length::um(20_000);

/// One tile or card that is needed.
#[derive(Clone, Debug)]
pub(in crate::layout) struct Wanted {
    /// Whose, as a place among the people; of a spare, who has one like it.
    pub person: usize,
    /// What is on it.
    pub what: What,
    /// Printed size.
    pub size: Size,
    /// Its number among all of that person.
    pub number: usize,
    /// Its kind.
    pub key: TileKey,
    /// Whether it belongs to the cards rather than to the board.
    pub is_card: bool,
    /// Whether it is one more of what others have.
    pub is_spare: bool,
}

/// What is on a tile.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(in crate::layout) enum What {
    /// One face of the person's set.
    Face(usize),
    /// A card of several faces, so many of them side by side.
    Several(usize, usize),
    /// Nothing: for a pen.
    Blank,
}

/// Everything that the people need, each person's in the order: tiles of the board, choice cards,
/// blank tiles, always-there cards, waiting; then the spares.
pub(super) fn gather(desk: &Desk<'_>, people: &[Person<'_>], sets: &[TileSet]) -> Vec<Wanted> {
    let mut all = Vec::new();
    for (i, (person, set)) in people.iter().zip(sets).enumerate() {
        if set.size.w.min(set.size.h) >= SMALLEST {
            of_person(desk, (i, person), set, &mut all);
        }
    }
    if desk.club.rules.craft.spares {
        let spares = spares(people.len(), sets, &all);
        all.extend(spares);
    }
    all
}

fn of_person(
    desk: &Desk<'_>,
    (person, who): (usize, &Person<'_>),
    set: &TileSet,
    all: &mut Vec<Wanted>,
) {
    let mut number = 0;
    let mut add = |what, size, face: TileFace, is_card| {
        number += 1;
        // A tile with a picture of someone's own is no tile for others.
        let seen = desk.club.seen_by(who.who, &face.symbol);
        let own = desk
            .club
            .own_picture(&seen)
            .is_some_and(|p| p.whose.is_some());
        let whose = (own || !who.who.shared_tiles).then_some(who.who.id);
        all.push(Wanted {
            person,
            what,
            size,
            number,
            key: TileKey { whose, face },
            is_card,
            is_spare: false,
        });
    };
    let face = |i: usize| face_key::of_face(desk, who, &set.faces[i], set.size);
    for i in set.tiles.clone() {
        add(What::Face(i), set.size, face(i), false);
    }
    let several = |cards: bool| {
        let all = set.several.iter().enumerate();
        all.filter(move |(_, s)| s.is_card == cards).map(|(i, s)| {
            let (columns, size) = card_size(desk, s.faces.len(), set.size);
            let faces: Vec<_> = s.faces.clone().map(|f| &set.faces[f]).collect();
            let key = face_key::of_several(desk, who, &faces, size);
            (What::Several(i, columns), size, key)
        })
    };
    for (what, size, key) in several(false) {
        add(what, size, key, false);
    }
    for _ in 0..desk.club.rules.craft.blanks {
        let key = face_key::blank(desk, set.size);
        add(What::Blank, set.size, key, false);
    }
    for i in set.cards.clone() {
        add(What::Face(i), set.size, face(i), true);
    }
    for (what, size, key) in several(true) {
        add(what, size, key, true);
    }
}

/// How many faces of a card of several stand side by side, and its size: in one row where the upright
/// paper is wide enough, else in rows of the same length.
fn card_size(desk: &Desk<'_>, faces: usize, one: Size) -> (usize, Size) {
    let room = desk.request.paper.size().w - MARGIN * 2;
    let most = usize::try_from(room.times(one.w)).unwrap_or(1).max(1);
    let rows = faces.div_ceil(most);
    let columns = faces.div_ceil(rows);
    (
        columns,
        Size::new(one.w * columns as i64, one.h * rows as i64),
    )
}

/// Spares of what at least half of the people use, in the size most of them have: for the shared box,
/// without a mark.
fn spares(people: usize, sets: &[TileSet], all: &[Wanted]) -> Vec<Wanted> {
    let mut used: BTreeMap<(&str, &str), Vec<&Wanted>> = BTreeMap::new();
    for wanted in all.iter().filter(|w| may_be_spare(w, sets)) {
        let face = &wanted.key.face;
        let like = (face.symbol.as_str(), face.label.as_str());
        used.entry(like).or_default().push(wanted);
    }
    let mut spares = Vec::new();
    for users in used.into_values() {
        let mut who: Vec<usize> = users.iter().map(|w| w.person).collect();
        who.dedup();
        let Some(usual) = usual(&users).filter(|_| who.len() * 2 >= people) else {
            continue;
        };
        for _ in 0..stock::spares(who.len()) {
            let mut spare = Wanted::clone(usual);
            spare.key.whose = None;
            spare.is_spare = true;
            spare.number = spares.len() + 1;
            spares.push(spare);
        }
    }
    spares
}

/// One of the size that most of them have; of sizes that are as common, the one that comes first.
fn usual<'a>(users: &[&'a Wanted]) -> Option<&'a Wanted> {
    let common = |w: &Wanted| users.iter().filter(|u| u.size == w.size).count();
    users.iter().rev().max_by_key(|w| common(w)).copied()
}

fn may_be_spare(wanted: &Wanted, sets: &[TileSet]) -> bool {
    match wanted.what {
        What::Face(i) => sets[wanted.person].faces[i].shape == Shape::Form(Form::Drawing),
        What::Several(..) | What::Blank => false,
    }
}

/// What is printed: everything, or where only what is missing is wanted, what is not in stock. Tiles of
/// the shared box that are in use elsewhere at the same time are not there.
pub(super) fn to_print(desk: &Desk<'_>, all: &[Wanted]) -> Vec<usize> {
    if !desk.request.only_missing {
        return (0..all.len()).collect();
    }
    missing(desk, all)
}

/// Says how many tiles of the session are not in stock; nothing where no stock is kept.
pub(super) fn report_stock(desk: &mut Desk<'_>, all: &[Wanted]) {
    if desk.club.stock.is_empty() {
        return;
    }
    let (short, needed) = (missing(desk, all).len(), all.len());
    if short == 0 {
        return;
    }
    let are = if short == 1 { "is" } else { "are" };
    let sentence = format!("{short} of {needed} tiles and cards {are} not in stock yet.");
    let spot = Spot::Session(desk.session.id);
    let hint = "Print what is missing, and mark it as made.";
    desk.note(Severity::GoodToKnow, "print.stock", spot, sentence, hint);
}

/// What is not in stock.
fn missing(desk: &Desk<'_>, all: &[Wanted]) -> Vec<usize> {
    let mut there = stock::Shelf::of(&desk.club.stock);
    for (key, n) in in_use_elsewhere(desk, all) {
        for _ in 0..n {
            there.take(&key);
        }
    }
    (0..all.len())
        .filter(|&i| !there.take(&all[i].key))
        .collect()
}

/// Shared tiles in use in other sessions while this one lasts: of each kind, the most at one moment
/// beyond what this session needs.
fn in_use_elsewhere(desk: &Desk<'_>, all: &[Wanted]) -> Vec<(TileKey, u32)> {
    let shared = all.iter().filter(|w| w.key.whose.is_none());
    let mine = stock::count(shared.map(|w| &w.key));
    if mine.is_empty() {
        return Vec::new();
    }
    let (here, rules) = (desk.session, &desk.club.rules);
    let now = clock(here, rules);
    let others = desk.club.sessions.iter().filter(|s| {
        let then = clock(s, rules);
        s.id != here.id && s.date == here.date && then.start < now.end && now.start < then.end
    });
    let mut uses: BTreeMap<TileKey, Vec<(Moment, Moment, u32)>> = BTreeMap::new();
    for session in others {
        let then = clock(session, rules);
        for (key, n) in shared_in(desk, session) {
            uses.entry(key).or_default().push((then.start, then.end, n));
        }
    }
    let beyond = mine.into_iter().filter_map(|(key, n)| {
        let mut of_it = uses.remove(&key)?;
        of_it.push((now.start, now.end, n));
        let more = stock::most_at_once(&of_it).saturating_sub(n);
        Some((key, more))
    });
    beyond.collect()
}

/// Shared tiles that those who come to a session need.
fn shared_in(desk: &Desk<'_>, session: &Session) -> Vec<(TileKey, u32)> {
    let request = Request {
        session: session.id,
        participants: desk.club.attending(session).map(|p| p.id).collect(),
        ..desk.request.clone()
    };
    let other = Desk::new(desk.club, session, &request);
    let people = other.people();
    let sets: Vec<TileSet> = people.iter().map(|p| TileSet::of(&other, p)).collect();
    let all = gather(&other, &people, &sets);
    let shared = all.iter().filter(|w| w.key.whose.is_none());
    stock::count(shared.map(|w| &w.key))
}

/// Reports words that do not fit their tile, tiles without words and tiles too small for both.
pub(super) fn report(desk: &mut Desk<'_>, people: &[Person<'_>], sets: &[TileSet], all: &[Wanted]) {
    for (i, (person, set)) in people.iter().zip(sets).enumerate() {
        if set.size.w.min(set.size.h) < SMALLEST {
            too_small(desk, person, set.size);
            continue;
        }
        let mine = || all.iter().filter(move |w| w.person == i && !w.is_spare);
        let faces = |cards: bool| -> Vec<usize> {
            let of = mine().filter(|w| w.is_card == cards);
            of.filter_map(|w| match w.what {
                What::Face(f) => Some(f),
                _ => None,
            })
            .collect()
        };
        let choices = mine().filter_map(|w| match w.what {
            What::Several(c, _) => Some(set.several[c].faces.clone()),
            _ => None,
        });
        let choices: Vec<usize> = choices.flatten().collect();
        report_labels(desk, person, set, &faces(false), "tiles");
        report_labels(desk, person, set, &choices, "choice cards");
        report_labels(desk, person, set, &faces(true), "cards");
    }
}

fn too_small(desk: &mut Desk<'_>, person: &Person<'_>, size: Size) {
    let (side, mark) = (in_words(size), &person.mark_words);
    let sentence =
        format!("A tile of {side} for {mark} is too small for picture and words; it is left out.");
    let spot = Spot::Participant(person.who.id);
    let hint = "Choose another tile size or larger paper. Tiles are always printed true to size.";
    desk.note(Severity::StopAndLook, "print.tile", spot, sentence, hint);
}

fn report_labels(
    desk: &mut Desk<'_>,
    person: &Person<'_>,
    set: &TileSet,
    faces: &[usize],
    sheet: &str,
) {
    let label = |&i: &usize| (set.faces[i].card.label.as_str(), set.faces[i].spot);
    let labels: Vec<_> = faces.iter().map(label).collect();
    let over = |&k: &usize| set.overfull.contains(&faces[k]);
    let over: Vec<usize> = (0..faces.len()).filter(over).collect();
    let hint = "Use fewer or shorter words, or larger tiles.";
    fit::report(desk, person, &labels, &over, sheet, hint);
    for (k, &i) in faces.iter().enumerate() {
        let face = &set.faces[i];
        if face.card.label.trim().is_empty() {
            let sentence = format!("Tile {} of {} has no words.", k + 1, person.mark_words);
            let hint = "Write the words that will be said.";
            desk.note(Severity::Look, "print.no-words", face.spot, sentence, hint);
        }
    }
}

/// A size in words: "60 mm" where square, "85.6 × 54 mm" where not.
pub(in crate::layout) fn in_words(size: Size) -> String {
    use crate::layout::sizes::{in_mm, number_of_mm};
    match size.w == size.h {
        true => in_mm(size.w),
        false => format!("{} × {}", number_of_mm(size.w), in_mm(size.h)),
    }
}
