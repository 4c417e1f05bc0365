//! The demo club holds what always holds.

use daystrand::model::invariants;

#[test]
fn the_demo_club_is_whole() {
    let club = daystrand::workbench::demo::club();
    assert_eq!(invariants::check(&club), Vec::<String>::new());
}

/// Every activity of the demo club has a picture of its own, and there is such a picture.
#[test]
fn every_activity_has_a_picture_of_its_own() {
    let club = daystrand::workbench::demo::club();
    let mut taken = std::collections::BTreeMap::new();
    for a in &club.activities {
        assert!(
            daystrand::symbols::library::library()
                .get(&a.symbol)
                .is_some(),
            "{}",
            a.label
        );
        if let Some(other) = taken.insert(a.symbol.clone(), &a.label) {
            panic!("{other} and {} show the same picture {}", a.label, a.symbol);
        }
    }
}
