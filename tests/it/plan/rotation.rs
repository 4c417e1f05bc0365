//! Stations in turns: by hand here; against all small cases, random ones and proved optima in files
//! of their own.

mod optimum;
mod random;
mod small;

use std::ops::ControlFlow;

use daystrand::plan::rotation::{
    Answer, Effort, Paired, Participant, People, Plan, Reason, Rotation, Station, Visit, Water,
    fewest_turns, losses, rotate,
};

/// A dry station at a place of its own number.
pub fn dry(place: usize, capacity: usize) -> Station {
    Station {
        capacity,
        water: false,
        quiet: false,
        place,
        people: People::Together(1),
    }
}

/// A station in the water.
pub fn wet(place: usize, capacity: usize) -> Station {
    Station {
        water: true,
        people: People::Each(1),
        ..dry(place, capacity)
    }
}

/// A quiet place.
pub fn quiet(place: usize, capacity: usize) -> Station {
    Station {
        quiet: true,
        ..dry(place, capacity)
    }
}

/// Participants by their wishes.
pub fn all(wishes: &[&[usize]]) -> Vec<Participant> {
    let one = |wishes: &&[usize]| Participant {
        wishes: wishes.to_vec(),
        fixed: vec![],
    };
    wishes.iter().map(one).collect()
}

/// Arranges without a word about progress.
pub fn arranged(rotation: &Rotation, paired: Option<Paired>, effort: &Effort) -> Answer {
    rotate(rotation, paired, effort, &mut |_| ControlFlow::Continue(()))
}

/// The plan that must be found.
pub fn found(rotation: &Rotation, paired: Option<Paired>, effort: &Effort) -> Plan {
    match arranged(rotation, paired, effort) {
        Answer::Found(plan) => plan,
        answer => panic!("no plan: {answer:?} for {rotation:?}"),
    }
}

/// All that must hold of rows, judged without the program.
pub fn sound(rotation: &Rotation, paired: Option<Paired>, plan: &Plan) {
    let (rows, turns) = (&plan.rows, plan.turns);
    assert_eq!(rows.len(), rotation.participants.len());
    if let Some(wanted) = rotation.turns {
        assert_eq!(turns, wanted);
    }
    for (who, row) in rotation.participants.iter().zip(rows) {
        assert_eq!(row.len(), turns);
        let mut visited: Vec<usize> = row.iter().flatten().copied().collect();
        let mut wished = who.wishes.clone();
        visited.sort_unstable();
        wished.sort_unstable();
        assert_eq!(visited, wished, "each station once");
        let kept = |v: &Visit| row[v.turn] == Some(v.station);
        assert!(who.fixed.iter().all(kept), "what is settled stays");
    }
    for turn in 0..turns {
        let mut bathers = vec![];
        for (s, station) in rotation.stations.iter().enumerate() {
            let there: Vec<usize> = (0..rows.len())
                .filter(|p| rows[*p][turn] == Some(s))
                .collect();
            assert!(
                there.len() <= station.capacity,
                "station {s} in turn {turn}"
            );
            assert_eq!(there, plan.at(turn, s));
            if station.water {
                bathers.extend(there);
            }
        }
        bathers.sort_unstable();
        let limit = match &rotation.water {
            Water::AsStations => usize::MAX,
            Water::Every(n) => *n,
            Water::Each(list) => list.get(turn).copied().unwrap_or(0),
        };
        assert!(bathers.len() <= limit, "the water in turn {turn}");
        let fits = bathers.is_empty() || paired.is_none_or(|paired| paired(turn, &bathers));
        assert!(fits, "{bathers:?} in the water in turn {turn}");
    }
}

/// Eight participants, four people for the water: two turns in it, and everyone in both stations.
fn evening() -> Rotation {
    let wish: &[usize] = &[0, 1];
    Rotation {
        stations: vec![wet(0, 8), quiet(1, 8)],
        participants: all(&[wish; 8]),
        friends: vec![(0, 7)],
        water: Water::Every(4),
        turns: None,
    }
}

#[test]
fn eight_with_four_people_for_the_water_go_in_two_halves() {
    let rotation = evening();
    let plan = found(&rotation, None, &Effort::default());
    sound(&rotation, None, &plan);
    assert_eq!((plan.turns, plan.fewest), (2, true));
    assert_eq!(plan.at(0, 0).len(), 4);
    assert_eq!(plan.rows[0], plan.rows[7], "friends go together");
    // Four have the water last: no quiet place follows, and their order is not the wished one.
    assert_eq!((plan.losses.quiet.len(), plan.losses.last.len()), (4, 4));
    assert_eq!((plan.losses.apart.len(), plan.losses.order.len()), (0, 4));
    assert_eq!((plan.losses.places.len(), plan.losses.waits.len()), (8, 0));
    assert_eq!(plan.cost, 4 * 100 + 4 * 60 + 4 * 5 + 8 * 3);
    assert_eq!(plan.people(&rotation, 0), 4 + 1);
}

#[test]
fn a_third_turn_lets_a_quiet_place_follow_the_water_for_all() {
    let rotation = Rotation {
        turns: Some(3),
        ..evening()
    };
    let plan = found(&rotation, None, &Effort::default());
    sound(&rotation, None, &plan);
    assert_eq!((plan.turns, plan.fewest), (3, false));
    // Water and then quiet, in the first two turns or the last two: only the way is left to count.
    assert_eq!(plan.cost, 8 * 3);
    assert_eq!(plan.losses.places.len(), 8);
}

#[test]
fn what_is_lost_is_told_by_who_and_when() {
    let rotation = Rotation {
        stations: vec![wet(0, 8), quiet(1, 8), dry(1, 8)],
        participants: all(&[&[0, 1, 2], &[0, 1, 2]]),
        friends: vec![(0, 1)],
        ..Rotation::default()
    };
    let rows = [
        vec![Some(0), None, Some(2), Some(1)],
        vec![Some(1), Some(2), None, Some(0)],
    ];
    let lost = losses(&rotation, &rows);
    let quiet: Vec<_> = lost.quiet.iter().map(|q| (q.participant, q.turn)).collect();
    assert_eq!(quiet, [(0, 0), (1, 3)]);
    let last: Vec<_> = lost.last.iter().map(|w| (w.participant, w.turn)).collect();
    assert_eq!(last, [(1, 3)]);
    assert_eq!(
        (lost.apart[0].pair, &lost.apart[0].stations),
        (0, &vec![0, 2, 1])
    );
    let order: Vec<_> = lost
        .order
        .iter()
        .map(|o| (o.participant, o.pairs.clone()))
        .collect();
    assert_eq!(order, [(0, vec![(2, 1)]), (1, vec![(1, 0), (2, 0)])]);
    let changes: Vec<_> = lost
        .places
        .iter()
        .map(|c| (c.participant, c.times))
        .collect();
    assert_eq!(changes, [(0, 1), (1, 1)]);
    let waits: Vec<_> = lost
        .waits
        .iter()
        .map(|w| (w.participant, w.turns.clone()))
        .collect();
    assert_eq!(waits, [(0, vec![1]), (1, vec![2])]);
    let weights = Effort::default().weights;
    assert_eq!(
        lost.cost(&weights),
        200 + 60 + 3 * 20 + 3 * 5 + 2 * 3 + 2 * 2
    );
}

#[test]
fn why_there_is_no_plan_is_told_in_numbers() {
    let rotation = Rotation {
        stations: vec![wet(0, 2), wet(0, 2), dry(1, 1)],
        participants: all(&[&[0, 1, 2], &[0, 1, 2], &[2], &[0]]),
        water: Water::Every(2),
        turns: Some(2),
        ..Rotation::default()
    };
    let (stations, turns) = (3, 2);
    let too_many = |participant| Reason::TooManyStations {
        participant,
        stations,
        turns,
    };
    let full = Reason::StationFull {
        station: 2,
        visits: 3,
        most: 2,
    };
    let water = Reason::WaterFull { visits: 5, most: 4 };
    assert_eq!(
        arranged(&rotation, None, &Effort::default()),
        Answer::Impossible(vec![too_many(0), too_many(1), full, water])
    );
    assert_eq!(fewest_turns(&rotation), Some(3));
}

#[test]
fn settled_visits_that_clash_are_told() {
    let mut rotation = evening();
    let visit = |turn, station| Visit { turn, station };
    rotation.participants[0].fixed = vec![visit(0, 0), visit(0, 1)];
    let (visit, other) = (visit(0, 1), visit(0, 0));
    let clash = Reason::FixedTwice {
        participant: 0,
        visit,
        other,
    };
    assert_eq!(
        arranged(&rotation, None, &Effort::default()),
        Answer::Impossible(vec![clash])
    );
    let mut rotation = evening();
    (0..5).for_each(|p| {
        rotation.participants[p].fixed = vec![Visit {
            turn: 1,
            station: 0,
        }]
    });
    let full = Reason::FixedWaterFull {
        turn: 1,
        visits: 5,
        most: 4,
    };
    assert_eq!(
        arranged(&rotation, None, &Effort::default()),
        Answer::Impossible(vec![full])
    );
}

#[test]
fn who_can_never_be_paired_is_told() {
    let rotation = Rotation {
        turns: Some(3),
        ..evening()
    };
    let paired = |_: usize, who: &[usize]| !who.contains(&5);
    assert_eq!(
        arranged(&rotation, Some(&paired), &Effort::default()),
        Answer::Impossible(vec![Reason::NeverPaired { participant: 5 }])
    );
}

#[test]
fn pairs_that_are_not_wanted_ask_for_one_turn_more() {
    // Only two of these can be in the water together, though four people are there.
    let paired = |_: usize, who: &[usize]| who.len() <= 2;
    let rotation = evening();
    let plan = found(&rotation, Some(&paired), &Effort::default());
    sound(&rotation, Some(&paired), &plan);
    assert_eq!((plan.turns, plan.fewest), (4, true));
}

#[test]
fn nobody_and_nothing_are_a_plan_without_turns() {
    let plan = found(&Rotation::default(), None, &Effort::default());
    assert_eq!((plan.turns, plan.fewest, plan.cost), (0, true, 0));
}

#[test]
fn turns_without_measure_are_not_tried() {
    let mut rotation = evening();
    rotation.participants[0].fixed = vec![Visit {
        turn: usize::MAX,
        station: 0,
    }];
    let answer = arranged(&rotation, None, &Effort::default());
    assert!(matches!(answer, Answer::NotFound(not) if not.turns == 0));
}
