//! How long stations in turns take. `cargo bench --bench rotation` prints a table; nothing here is a
//! test.

use std::hint::black_box;
use std::ops::ControlFlow;
use std::time::{Duration, Instant};

use daystrand::plan::rotation::{
    Answer, Effort, Paired, Participant, People, Plan, Rotation, Station, Visit, Water, rotate,
};

fn main() {
    println!(
        "20 participants, 6 stations, 6 turns, 4 at once in the water; first plan best of five:"
    );
    println!("evening         seed  cost at first  improved  first plan    improved");
    for (name, rotation, paired) in evenings() {
        let first = best(|| drop(black_box(plan(&rotation, paired, Effort::first()))));
        for seed in 1..=3 {
            let effort = Effort {
                seed,
                ..Effort::default()
            };
            let start = Instant::now();
            let improved = black_box(plan(&rotation, paired, effort));
            let time = start.elapsed();
            println!(
                "{name:<14} {seed:>5} {:>14} {:>9} {:>8.2} ms {:>8.0} ms",
                plan(&rotation, paired, Effort::first()).cost,
                improved.cost,
                first.as_secs_f64() * 1e3,
                time.as_secs_f64() * 1e3,
            );
        }
    }
}

fn plan(rotation: &Rotation, paired: Option<Paired>, effort: Effort) -> Plan {
    match rotate(
        rotation,
        paired,
        &effort,
        &mut |_| ControlFlow::Continue(()),
    ) {
        Answer::Found(plan) => plan,
        answer => panic!("no plan: {answer:?}"),
    }
}

/// Neighbours in the list are not wanted in the water together.
fn apart(_: usize, who: &[usize]) -> bool {
    who.windows(2).all(|w| w[0] + 1 < w[1])
}

/// Three evenings: free; with settled visits and turns that differ; with pairs that are not wanted.
fn evenings() -> Vec<(String, Rotation, Option<Paired<'static>>)> {
    let mut all = Vec::new();
    for i in 0..3 {
        let free = evening(i);
        let mut settled = free.clone();
        for p in 0..4 {
            let visit = Visit {
                turn: (p + i) % 6,
                station: settled.participants[p].wishes[p],
            };
            settled.participants[p].fixed.push(visit);
        }
        settled.water = Water::Each(vec![3, 4, 4, 5, 4, 4]);
        let i = i + 1;
        all.push((
            format!("{i} unwanted"),
            free.clone(),
            Some(&apart as Paired),
        ));
        all.push((format!("{i} free"), free, None));
        all.push((format!("{i} settled"), settled, None));
    }
    all
}

/// Six stations, one in the water and one quiet; everyone's wishes are a little different.
fn evening(i: usize) -> Rotation {
    let station = |capacity, water, quiet, place| Station {
        capacity,
        water,
        quiet,
        place,
        people: People::Each(1),
    };
    let who = |p: usize| {
        let mut wishes: Vec<usize> = (0..6).collect();
        wishes.swap(p * 7 % 6, (p * p + i) % 6);
        if p % 4 == 3 {
            wishes.remove((p + i) % 6);
        }
        Participant {
            wishes,
            fixed: Vec::new(),
        }
    };
    Rotation {
        stations: vec![
            station(5, true, false, 0),
            station(4, false, true, 1),
            station(4, false, false, 1),
            station(5, false, false, 2),
            station(4, false, false, 2),
            station(6, false, false, 3),
        ],
        participants: (0..20).map(who).collect(),
        friends: (0..8).map(|k| (k, (k * 5 + i + 9) % 20)).collect(),
        water: Water::Every(4),
        turns: Some(6),
    }
}

fn best(run: impl Fn()) -> Duration {
    let once = |_| {
        let start = Instant::now();
        run();
        start.elapsed()
    };
    (0..5).map(once).min().unwrap_or_default()
}
