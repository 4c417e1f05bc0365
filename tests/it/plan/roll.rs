//! Head counts.

use daystrand::plan::roll::{Count, Occasion};

/// The worked example of a club's practice guidance: 11 arrived, 1 left early, 1 at the toilets with
/// a helper, so 9 are expected; a difference of any size is looked into.
#[test]
fn eleven_arrived_one_left_one_at_the_toilets_gives_nine() {
    let count = Count {
        arrived: 11,
        left_early: 1,
        at_toilets: 1,
    };
    assert_eq!(count.expected_here(), Some(9));
    for counted in 0..12 {
        assert_eq!(count.stop_and_look(counted), counted != 9, "{counted}");
    }
}

#[test]
fn more_away_than_arrived_cannot_be_and_is_looked_into() {
    let count = Count {
        arrived: 2,
        left_early: 1,
        at_toilets: 2,
    };
    assert_eq!(count.expected_here(), None);
    assert!(count.stop_and_look(0));
    let huge = Count {
        arrived: 0,
        left_early: u32::MAX,
        at_toilets: u32::MAX,
    };
    assert_eq!(huge.expected_here(), None);
}

/// Counts at arrival, before water, at every change of helpers, leaving water, after toilets and
/// before leaving are common practice; without water three of them are left.
#[test]
fn heads_are_counted_six_times_near_water_and_three_times_on_land() {
    assert_eq!(Occasion::ALL.len(), 6);
    let land = Occasion::ALL.into_iter().filter(|o| !o.is_of_water());
    let land: Vec<_> = land.map(Occasion::label).collect();
    assert_eq!(land, ["At arrival", "After toilets", "Before leaving"]);
}
