//! What holds of every plan, for a thousand random inputs.

use std::ops::ControlFlow;

use daystrand::plan::rotation::{
    Answer, Effort, Participant, Rotation, Station, Visit, Water, breaches, rotate,
};

use super::{arranged, dry, quiet, sound, wet};

/// The generator of Lehmer with Knuth's factor (The Art of Computer Programming 2, 3.3.4).
struct Dice(u64);

impl Dice {
    fn below(&mut self, n: usize) -> usize {
        let factor = 6_364_136_223_846_793_005_u64;
        self.0 = self
            .0
            .wrapping_mul(factor)
            .wrapping_add(1_442_695_040_888_963_407);
        (self.0 >> 33) as usize % n
    }

    fn one_in(&mut self, n: usize) -> bool {
        self.below(n) == 0
    }

    fn shuffled(&mut self, n: usize) -> Vec<usize> {
        let mut list: Vec<usize> = (0..n).collect();
        (1..n).for_each(|i| list.swap(i, self.below(i + 1)));
        list
    }
}

fn station(dice: &mut Dice) -> Station {
    let (place, capacity) = (dice.below(3), 1 + dice.below(5));
    match dice.below(3) {
        0 => wet(place, capacity),
        1 => quiet(place, capacity),
        _ => dry(place, capacity),
    }
}

/// Some input, often with settled visits and turns that differ; plans need not exist.
fn input(dice: &mut Dice) -> Rotation {
    let stations: Vec<Station> = (0..1 + dice.below(5)).map(|_| station(dice)).collect();
    let turns = stations.len() + dice.below(3);
    let who = |dice: &mut Dice| {
        let mut wishes = dice.shuffled(stations.len());
        wishes.truncate(1 + dice.below(stations.len()));
        let visit = Visit {
            turn: dice.below(turns),
            station: wishes[0],
        };
        let fixed = if dice.one_in(6) { vec![visit] } else { vec![] };
        Participant { wishes, fixed }
    };
    let participants: Vec<Participant> = (0..1 + dice.below(10)).map(|_| who(dice)).collect();
    let n = participants.len();
    let friends = (0..dice.below(4))
        .map(|_| (dice.below(n), dice.below(n)))
        .collect();
    let water = match dice.below(3) {
        0 => Water::AsStations,
        1 => Water::Every(1 + dice.below(5)),
        _ => Water::Each((0..turns + 2).map(|_| dice.below(6)).collect()),
    };
    Rotation {
        stations,
        participants,
        friends,
        water,
        turns: (!dice.one_in(3)).then_some(turns),
    }
}

/// Two who are never in the water together, and one who is not there in the first turn.
fn paired(turn: usize, who: &[usize]) -> bool {
    let both = who.contains(&0) && who.contains(&1);
    !both && (turn > 0 || !who.contains(&2)) && who.is_sorted() && !who.is_empty()
}

fn effort(seed: u64, improve: usize) -> Effort {
    Effort {
        seed,
        improve,
        search: 2_000,
        ..Effort::default()
    }
}

#[test]
fn every_plan_keeps_every_limit_and_is_the_same_again() {
    let (mut plans, mut denied, mut open) = (0, 0, 0);
    for seed in 0..1_000 {
        let mut dice = Dice(seed);
        let rotation = input(&mut dice);
        let check = dice.one_in(2).then_some(&paired as _);
        let effort = effort(seed, 2_000);
        let answer = arranged(&rotation, check, &effort);
        assert_eq!(answer, arranged(&rotation, check, &effort));
        match answer {
            Answer::Found(plan) => {
                sound(&rotation, check, &plan);
                assert_eq!(breaches(&rotation, check, &plan.rows), []);
                assert_eq!(plan.cost, plan.losses.cost(&effort.weights));
                plans += 1;
            }
            Answer::Impossible(reasons) => {
                assert!(!reasons.is_empty());
                denied += 1;
            }
            Answer::NotFound(not) => {
                assert!(!not.stopped);
                open += 1;
            }
        }
    }
    println!("{plans} plans, {denied} proved impossible, {open} not found");
    assert!(plans > 500 && denied > 100 && open < 20);
}

#[test]
fn more_steps_never_cost_more_than_none() {
    for seed in 0..200 {
        let rotation = input(&mut Dice(seed));
        let first = arranged(&rotation, None, &effort(seed, 0));
        let better = arranged(&rotation, None, &effort(seed, 3_000));
        if let (Answer::Found(first), Answer::Found(better)) = (first, better) {
            assert!(better.cost <= first.cost);
            assert_eq!((better.turns, better.fewest), (first.turns, first.fewest));
        }
    }
}

#[test]
fn breaking_off_keeps_the_best_so_far() {
    let mut cut = 0;
    for seed in 0..200 {
        let rotation = input(&mut Dice(seed));
        let mut words = 0;
        let mut before = 0.0;
        let answer = rotate(&rotation, None, &effort(seed, 100_000), &mut |part| {
            assert!((0.0..=1.0).contains(&part) && part >= before);
            before = part;
            words += 1;
            if words == 5 {
                ControlFlow::Break(())
            } else {
                ControlFlow::Continue(())
            }
        });
        if let Answer::Found(plan) = answer {
            sound(&rotation, None, &plan);
            if plan.stopped {
                let first = arranged(&rotation, None, &effort(seed, 0));
                let Answer::Found(first) = first else {
                    panic!("there was one")
                };
                assert!(plan.cost <= first.cost);
                cut += 1;
            }
        }
    }
    assert!(cut > 50, "only {cut} were broken off");
}

#[test]
fn breaking_off_the_search_says_so() {
    let visit = Visit {
        turn: 0,
        station: 0,
    };
    let rotation = Rotation {
        stations: vec![dry(0, 1)],
        participants: vec![Participant {
            wishes: vec![0],
            fixed: vec![visit],
        }],
        turns: Some(2),
        ..Rotation::default()
    };
    let answer = rotate(&rotation, None, &effort(1, 0), &mut |_| {
        ControlFlow::Break(())
    });
    let Answer::NotFound(not) = answer else {
        panic!("{answer:?}");
    };
    assert!(not.stopped && not.reasons.is_empty());
}
