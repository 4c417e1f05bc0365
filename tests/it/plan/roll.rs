//! Head counts.

use daystrand::model::ids::ParticipantId;
use daystrand::plan::clock::Moment;
use daystrand::plan::roll::{
    Count, Entry, Occasion, Seen, Tally, Whereabouts, day, tally, whereabouts,
};
use jiff::civil::Time;

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

fn at(hour: i8, minute: i8) -> Moment {
    Moment::at(Time::constant(hour, minute, 0, 0))
}

fn entry(who: u32, seen: Seen, (hour, minute): (i8, i8)) -> Entry {
    Entry {
        who: ParticipantId(who),
        seen,
        at: at(hour, minute),
    }
}

fn group(n: u32) -> Vec<ParticipantId> {
    (1..=n).map(ParticipantId).collect()
}

/// Common practice for roll calls with people who do not speak: "present" may be a gesture, and no
/// answer is "not yet seen". There is no such thing as absent here, not even for one who is looked
/// for all day.
#[test]
fn not_yet_seen_is_not_absent() {
    let entries = [entry(1, Seen::Here, (9, 25))];
    let found = |who, now| whereabouts(&entries, ParticipantId(who), now);
    assert_eq!(found(1, at(9, 24)), Whereabouts::NotYetSeen);
    assert_eq!(found(1, at(9, 25)), Whereabouts::WithGroup);
    assert_eq!(found(2, at(23, 59)), Whereabouts::NotYetSeen);
    assert_eq!(Whereabouts::default().label(), "Not yet seen");
    let whole = tally(&group(2), &entries, at(11, 0));
    assert_eq!(whole.not_yet_seen, [ParticipantId(2)]);
    assert_eq!(whole.count.expected_here(), Some(1));
    let all = [
        Whereabouts::NotYetSeen,
        Whereabouts::WithGroup,
        Whereabouts::AtToilets,
        Whereabouts::LeftEarly,
    ];
    let absent = |w: Whereabouts| w.label().to_lowercase().contains("absent");
    assert!(!all.into_iter().any(absent));
}

/// The worked example again, now from the roll of a day: 12 in the group, 11 arrived, one left
/// early, one at the toilets.
#[test]
fn each_occasion_of_a_day_has_the_number_that_is_expected() {
    let arrived = (1..=11).map(|who| entry(who, Seen::Here, (9, 20)));
    let mut entries: Vec<_> = arrived.collect();
    entries.extend([
        entry(4, Seen::LeftEarly, (10, 5)),
        entry(7, Seen::ToToilets, (10, 10)),
        entry(7, Seen::Back, (10, 20)),
        entry(12, Seen::Here, (10, 25)),
    ]);
    let when = [
        (Occasion::Arrival, at(9, 30)),
        (Occasion::BeforeWater, at(10, 0)),
        (Occasion::HelperChange, at(10, 12)),
        (Occasion::HelperChange, at(10, 5)),
        (Occasion::AfterToilets, at(10, 20)),
        (Occasion::LeavingWater, at(10, 30)),
        (Occasion::BeforeLeaving, at(11, 0)),
    ];
    let expected = [
        (Occasion::Arrival, Some(11), 1),
        (Occasion::BeforeWater, Some(11), 1),
        (Occasion::HelperChange, Some(10), 1),
        (Occasion::HelperChange, Some(9), 1),
        (Occasion::AfterToilets, Some(10), 1),
        (Occasion::LeavingWater, Some(11), 0),
        (Occasion::BeforeLeaving, Some(11), 0),
    ];
    let found: Vec<_> = day(&group(12), &entries, &when)
        .into_iter()
        .map(|(occasion, _, t)| (occasion, t.count.expected_here(), t.not_yet_seen.len()))
        .collect();
    assert_eq!(found, expected);
    let worked = tally(&group(12), &entries, at(10, 12)).count;
    let same = Count {
        arrived: 11,
        left_early: 1,
        at_toilets: 1,
    };
    assert_eq!(worked, same);
    // The order in which lines were written does not matter.
    entries.sort_by_key(|e| (e.who, e.at));
    assert_eq!(tally(&group(12), &entries, at(10, 12)).count, same);
}

#[test]
fn whoever_left_had_come_even_without_a_tick_and_may_come_back() {
    let entries = [
        entry(1, Seen::LeftEarly, (10, 0)),
        entry(2, Seen::ToToilets, (10, 0)),
        entry(1, Seen::Here, (10, 30)),
        // Two in one minute: the later one in the list.
        entry(3, Seen::ToToilets, (10, 0)),
        entry(3, Seen::Back, (10, 0)),
        // One of another group.
        entry(9, Seen::Here, (9, 0)),
    ];
    let before = tally(&group(3), &entries, at(10, 0));
    let count = Count {
        arrived: 3,
        left_early: 1,
        at_toilets: 1,
    };
    let not_yet_seen = vec![];
    let expected = Tally {
        count,
        not_yet_seen,
    };
    assert_eq!(before, expected);
    let after = tally(&group(3), &entries, at(10, 30)).count;
    assert_eq!((after.left_early, after.expected_here()), (0, Some(2)));
}
