//! In what form and length a board is given.
//!
//! Lengths shorter than the session in successive strips, forms from the real object to the
//! sentence: University of North Carolina, Steps for Implementation: Visual Schedules (2009), read
//! in part. Objects in place of pictures: Middletown Centre for Autism, pages on visual schedules
//! (early years, severe learning disability), read in part. How seven steps fall into strips is
//! computed; that a strip ends where the place changes is common practice.

use std::sync::Arc;

use daystrand::layout::SheetKind;
use daystrand::model::board::derive;
use daystrand::model::club::Club;
use daystrand::model::manner::{Form, Reach};
use daystrand::model::people::Participant;

use super::words;
use crate::fixture;

/// The demo club where one participant comes alone to seven activities in one part of the day.
fn seven(change: impl Fn(&mut Participant)) -> Club {
    let mut club = fixture::club();
    let p = Arc::make_mut(&mut club.participants[0]);
    *p.standing = Default::default();
    change(p);
    let others: Vec<_> = club.participants[1..].iter().map(|p| p.id).collect();
    let part = club.parts[0].id;
    let session = fixture::session_mut(&mut club);
    session.away.extend(others);
    session.hand.clear();
    session.timetable.truncate(7);
    session.timetable.iter_mut().for_each(|s| s.part = part);
    club
}

/// Where each of the seven is done, by the first letter of the place.
fn places(club: &mut Club, places: &str) {
    let slots: Vec<_> = club.sessions[0]
        .timetable
        .iter()
        .map(|s| s.activity)
        .collect();
    for (id, place) in slots.into_iter().zip(places.chars()) {
        let mut all = club.activities.iter_mut();
        let activity = Arc::make_mut(all.find(|a| a.id == id).unwrap());
        activity.place = place.to_string();
    }
}

/// How many steps stand on each strip of the large-print board.
fn on_strips(club: &Club) -> Vec<usize> {
    let board = derive(club, &club.sessions[0], club.participants[0].id);
    let paper = words(club, SheetKind::LargePrint);
    let mut strips = Vec::new();
    for line in paper.lines() {
        if line.contains("Strip ") {
            strips.push(0);
        }
        // "3 First Sunscreen".
        let numbered = line.starts_with(|c: char| c.is_ascii_digit());
        let mut steps = board.steps.iter();
        let is_step = numbered && steps.any(|s| line.ends_with(&format!(" {}", s.label)));
        if let Some(last) = strips.last_mut().filter(|_| is_step) {
            *last += 1;
        }
    }
    for i in 1..=strips.len() {
        let title = format!("Strip {i} of {}", strips.len());
        assert!(paper.contains(&title), "{title} in {paper}");
    }
    strips
}

#[test]
fn seven_steps_two_at_a_time_are_four_strips() {
    let mut club = seven(|p| p.manner.reach = Reach::FirstThen);
    places(&mut club, "aaaaaaa");
    assert_eq!(on_strips(&club), [2, 2, 2, 1]);
    // Four strips are needed anyhow: one of them ends where the group moves on.
    places(&mut club, "aaabbbb");
    assert_eq!(on_strips(&club), [2, 1, 2, 2]);
    places(&mut club, "abbbbbb");
    assert_eq!(on_strips(&club), [1, 2, 2, 2]);
    let club = seven(|p| p.manner.reach = Reach::One);
    assert_eq!(on_strips(&club), [1; 7]);
    let club = seven(|p| p.manner.reach = Reach::Three);
    assert_eq!(on_strips(&club).len(), 3);
}

/// Someone who understands real things alone: no step has a tile with a picture, every step has a
/// thing to pack, and a board has a place for each.
#[test]
fn who_has_real_things_has_a_list_to_pack_and_no_picture_tiles() {
    let mut club = seven(|p| p.manner.form = Form::Object);
    let label = |club: &Club, i: usize| {
        let slot = &club.sessions[0].timetable[i];
        club.activity(slot.activity).unwrap().label.clone()
    };
    for (i, thing) in [(0, "a hand bell"), (2, "the empty bottle")] {
        let id = club.sessions[0].timetable[i].activity;
        let mut all = club.activities.iter_mut();
        Arc::make_mut(all.find(|a| a.id == id).unwrap()).thing = thing.into();
    }
    let tiles = words(&club, SheetKind::Tiles);
    let packed = words(&club, SheetKind::SessionSheet);
    let boards = [SheetKind::BaseBoard, SheetKind::LargePrint].map(|k| words(&club, k));
    for i in 0..7 {
        let label = label(&club, i);
        assert!(!tiles.lines().any(|l| l == label), "{label} in {tiles}");
        assert!(!tiles.contains(&format!("[{label}")), "{label} in {tiles}");
        let thing = match i {
            0 => "a hand bell",
            2 => "the empty bottle",
            // What nothing is known for is asked for, and its place has its label.
            _ => label.as_str(),
        };
        let line = match i {
            0 | 2 => format!("kite: {thing}, for {label}"),
            _ => format!("kite: a thing that stands for {label}"),
        };
        assert!(packed.contains(&line), "{line} in {packed}");
        for board in &boards {
            let place = format!("object: {thing}");
            assert!(board.contains(&place), "{place} in {board}");
        }
    }
    // The same person with drawings has the tiles and nothing to pack.
    let club = seven(|_| {});
    let tiles = words(&club, SheetKind::Tiles);
    for i in 0..7 {
        let label = label(&club, i);
        assert!(tiles.lines().any(|l| l == label), "{label} in {tiles}");
    }
    let packed = words(&club, SheetKind::SessionSheet);
    assert!(!packed.contains("Objects for boards"), "{packed}");
}

/// What is ready for the water is a thing too: it is packed before the day.
#[test]
fn what_is_ready_instead_is_packed_too() {
    let mut club = seven(|p| p.manner.form = Form::Object);
    let boat = club
        .activities
        .iter()
        .find(|a| a.label == "Boat")
        .unwrap()
        .id;
    let dry = club.activity(boat).unwrap().dry_replacement.unwrap();
    let dry_label = club.activity(dry).unwrap().label.clone();
    fixture::session_mut(&mut club).timetable[6].activity = boat;
    let packed = words(&club, SheetKind::SessionSheet);
    let line = format!("for {dry_label}");
    assert!(packed.contains(&line), "{line} in {packed}");
}
