//! How watchers are counted, after rules of public bodies. The numbers are theirs and stand here as
//! examples of what a club may enter: NSW Department of Education, beach and inland water (one for
//! 15 in the water, at least two); Queensland surf lifesaving, junior activities (one water-safety
//! person for 5); Buckinghamshire Council, pupils with special needs (adults in the water supporting
//! one person do not count); California licensing (lifeguards do not count). Common practice.

use daystrand::plan::pairing::Pair;
use daystrand::plan::pairing::watchers::{Area, needed, watchers};

const fn area(in_water: u32, one_for: u32) -> Area {
    Area { in_water, one_for }
}

/// People 0, 1, … with one participant each.
fn one_to_one(count: usize) -> Vec<Pair> {
    let pair = |n| Pair {
        participant: n,
        person: n,
    };
    (0..count).map(pair).collect()
}

#[test]
fn groups_in_separate_areas_are_counted_each() {
    assert_eq!(needed(&[area(6, 5), area(6, 5)], 0), 4);
    assert_eq!(
        needed(&[area(12, 5)], 0),
        3,
        "in one area it would be three"
    );
}

#[test]
fn two_at_least() {
    assert_eq!(needed(&[area(6, 15)], 2), 2);
    assert_eq!(needed(&[area(6, 15)], 0), 1);
    assert_eq!(needed(&[area(15, 15)], 0), 1);
    assert_eq!(needed(&[area(31, 15)], 2), 3, "the sum where it is more");
    assert_eq!(
        needed(&[area(1, 15), area(1, 15)], 2),
        2,
        "at least two in all, not each"
    );
}

#[test]
fn who_supports_one_person_does_not_watch() {
    let here: Vec<usize> = (0..5).collect();
    assert!(watchers(&here, &one_to_one(5), &[]).is_empty());
    let two_more: Vec<usize> = (0..7).rev().collect();
    assert_eq!(watchers(&two_more, &one_to_one(5), &[]), [5, 6]);
}

#[test]
fn people_in_the_water_and_observers_are_counted_apart() {
    // Six one to one and six with one for five: 6 + 2 in the water.
    let in_water = needed(&[area(6, 1), area(6, 5)], 0);
    assert_eq!(in_water, 8);
    // These eight all have their job, so observers are others.
    let in_water = in_water as usize;
    let with_the_group: Vec<usize> = (6..in_water).collect();
    let eight: Vec<usize> = (0..in_water).collect();
    assert!(watchers(&eight, &one_to_one(6), &with_the_group).is_empty());
    let nine: Vec<usize> = (0..=in_water).collect();
    assert_eq!(watchers(&nine, &one_to_one(6), &with_the_group), [8]);
}

#[test]
fn a_lifeguard_on_duty_changes_nothing() {
    let without = watchers(&[0, 1, 2], &one_to_one(1), &[]);
    let lifeguard = 3;
    let with = watchers(&[0, 1, 2, lifeguard], &one_to_one(1), &[lifeguard]);
    assert_eq!(without, [1, 2]);
    assert_eq!(with, without);
}

#[test]
fn nobody_in_the_water_and_nothing_entered() {
    assert_eq!(needed(&[], 2), 0);
    assert_eq!(needed(&[area(0, 5), area(0, 5)], 2), 0);
    assert_eq!(needed(&[area(6, 0)], 0), 0, "no number entered");
    assert_eq!(needed(&[area(6, 0)], 2), 2);
    assert_eq!(needed(&[area(u32::MAX, 1), area(9, 1)], 0), u32::MAX);
}
