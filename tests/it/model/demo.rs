//! The demo club holds what always holds.

use daystrand::model::invariants;

#[test]
fn the_demo_club_is_whole() {
    let club = daystrand::workbench::demo::club();
    assert_eq!(invariants::check(&club), Vec::<String>::new());
}
