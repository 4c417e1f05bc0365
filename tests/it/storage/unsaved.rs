//! What a program leaves that came to an end without being closed.

use std::fs;

use daystrand::storage::unsaved::Keeper;
use daystrand::storage::{load, save};

use crate::fixture;

#[test]
fn what_was_kept_is_found_by_the_next_program_and_by_no_other_that_runs() {
    let dir = tempfile::tempdir().unwrap();
    let folder = dir.path().join("unsaved");
    let file = dir.path().join("Lagoon.daystrand");
    let mut club = fixture::club();
    save(&file, &club).unwrap();
    let stamp = load(&file).unwrap().stamp;

    let (mut first, left) = Keeper::claim(&folder).unwrap();
    assert!(left.is_none());
    club.name = "Changed".into();
    first.keep(&club, Some(&(file.clone(), stamp))).unwrap();
    // A second window while the first one runs: nothing was left behind.
    let (mut second, left) = Keeper::claim(&folder).unwrap();
    assert!(left.is_none());
    second.keep(&fixture::club(), None).unwrap();
    second.forget();
    drop(second);
    // The first one comes to an end without saying so.
    drop(first);
    let (mut next, left) = Keeper::claim(&folder).unwrap();
    let left = left.unwrap();
    assert_eq!(left.club, club);
    assert_eq!(left.origin, Some((file, stamp)));
    next.forget();
    drop(next);
    assert!(Keeper::claim(&folder).unwrap().1.is_none());
}

#[test]
fn a_club_that_was_never_saved_comes_back_without_a_file() {
    let dir = tempfile::tempdir().unwrap();
    let (mut keeper, _) = Keeper::claim(dir.path()).unwrap();
    keeper.keep(&fixture::club(), None).unwrap();
    drop(keeper);
    let left = Keeper::claim(dir.path()).unwrap().1.unwrap();
    assert_eq!(left.club, fixture::club());
    assert_eq!(left.origin, None);
}

#[test]
fn something_damaged_is_left_where_it_is_and_in_nobodys_way() {
    let dir = tempfile::tempdir().unwrap();
    let damaged = dir.path().join("1.daystrand");
    fs::write(&damaged, "{ half of").unwrap();
    let (mut keeper, left) = Keeper::claim(dir.path()).unwrap();
    assert!(left.is_none());
    keeper.keep(&fixture::club(), None).unwrap();
    assert_eq!(fs::read_to_string(&damaged).unwrap(), "{ half of");
    assert!(dir.path().join("2.daystrand").exists());
    // Where nothing can be written nothing is kept.
    let file = dir.path().join("a file");
    fs::write(&file, "").unwrap();
    assert!(Keeper::claim(&file).is_none());
}

#[test]
fn another_place_is_taken_while_something_left_waits_for_an_answer() {
    let dir = tempfile::tempdir().unwrap();
    let (mut keeper, _) = Keeper::claim(dir.path()).unwrap();
    keeper.keep(&fixture::club(), None).unwrap();
    drop(keeper);
    let mut other = Keeper::claim_empty(dir.path()).unwrap();
    other.keep(&fixture::club(), None).unwrap();
    other.forget();
    assert!(Keeper::claim(dir.path()).unwrap().1.is_some());
}
