//! Costs against optima that another program proved.

use std::fs;

use daystrand::plan::rotation::{Effort, Participant, Rotation, Station, Visit, Water};

use super::{dry, found, quiet, sound, wet};

/// A line of the file, which explains its fields.
struct Instance {
    name: String,
    rotation: Rotation,
    /// Pairs who are not in the water in the same turn.
    unwanted: Vec<(usize, usize)>,
    least: u64,
}

fn instances() -> Vec<Instance> {
    let path = "/tests/cases/rotation/instances.txt";
    let file = fs::read_to_string(format!("{}{path}", env!("CARGO_MANIFEST_DIR"))).unwrap();
    let lines = file
        .lines()
        .filter(|l| !l.starts_with('#') && !l.is_empty());
    lines.map(instance).collect()
}

fn instance(line: &str) -> Instance {
    let fields: Vec<&str> = line.split(';').collect();
    let words = |i: usize| fields[i].split_whitespace();
    let rotation = Rotation {
        stations: words(3).map(station).collect(),
        participants: words(4).map(participant).collect(),
        friends: words(5).map(|w| two(w, '-')).collect(),
        water: Water::Each(words(2).map(number).collect()),
        turns: Some(number(fields[1])),
    };
    Instance {
        name: fields[0].to_owned(),
        rotation,
        unwanted: words(6).map(|w| two(w, '-')).collect(),
        least: fields[7].parse().unwrap(),
    }
}

fn number(word: &str) -> usize {
    word.parse().unwrap()
}

fn two(word: &str, between: char) -> (usize, usize) {
    let (a, b) = word.split_once(between).unwrap();
    (number(a), number(b))
}

fn station(word: &str) -> Station {
    let kind = word.find(['w', 'q', '-']).unwrap();
    let (capacity, place) = (number(&word[..kind]), number(&word[kind + 1..]));
    match &word[kind..=kind] {
        "w" => wet(place, capacity),
        "q" => quiet(place, capacity),
        _ => dry(place, capacity),
    }
}

fn participant(word: &str) -> Participant {
    let mut parts = word.split('!');
    let wishes = parts.next().unwrap().split('>').map(number).collect();
    let settled = |word| {
        let (turn, station) = two(word, ':');
        Visit { turn, station }
    };
    Participant {
        wishes,
        fixed: parts.map(settled).collect(),
    }
}

#[test]
fn costs_are_within_two_in_a_hundred_of_proved_optima() {
    let (mut ours, mut least, mut shares, mut n) = (0, 0, 0.0, 0);
    for instance in instances() {
        let unwanted = &instance.unwanted;
        let both = |who: &[usize], (a, b): (usize, usize)| who.contains(&a) && who.contains(&b);
        let paired = |_: usize, who: &[usize]| !unwanted.iter().any(|pair| both(who, *pair));
        let check = (!unwanted.is_empty()).then_some(&paired as _);
        let plan = found(&instance.rotation, check, &Effort::default());
        sound(&instance.rotation, check, &plan);
        println!(
            "{:<12} {:>5} of {:>5}",
            instance.name, plan.cost, instance.least
        );
        assert!(plan.cost >= instance.least, "{}: no optimum", instance.name);
        ours += plan.cost;
        least += instance.least;
        shares += plan.cost as f64 / instance.least as f64;
        n += 1;
    }
    let mean = shares / f64::from(n);
    println!("{n} instances: {ours} of {least}, {mean:.4} on average");
    assert!(n >= 30 && mean <= 1.02, "{mean:.4} on average");
}
