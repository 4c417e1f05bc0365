//! Symbols told apart: every pair of the set as a 20 mm tile at 300 dots an inch in grey.

use std::collections::BTreeSet;

use daystrand::symbols::library::library;
use daystrand::symbols::variant::{Ink, Variant};

use super::paint;

/// 20 mm at 300 dots an inch.
const DOTS: u32 = 236;
/// What an eye at arm's length still sees of them: squares of four dots, about a third of a
/// millimetre (one minute of arc at 1.2 m).
const BLOCK: u32 = 4;
const SIDE: usize = (DOTS / BLOCK) as usize;
/// Cells in which edges are counted by direction, and directions; a cell is about 2.5 mm wide, so
/// that a picture shifted a little is still the same picture.
const CELLS: usize = 8;
const WAYS: usize = 8;

/// The least distance of any two, of at most 1: one less the cosine between what edges run where
/// (histograms of oriented gradients after Dalal and Triggs, CVPR 2005). The bound is our own: pairs
/// at this distance were looked at and told apart.
const LEAST: f64 = 0.14;
/// The least distance within the groups that are easily mistaken for each other.
const LEAST_IN_GROUP: f64 = 0.25;

/// Groups that must not be mistaken for each other (common practice of the trade).
const GROUPS: [&[&str]; 14] = [
    &["finished", "later", "not_today"],
    &["choose", "change", "something_else"],
    &["stop", "good"],
    &["wait", "break", "sit_at_edge"],
    &["first", "then"],
    &["little_waves", "big_waves"],
    &["between_flags", "red_flag"],
    &["shower", "rinse", "rain"],
    &["get_changed", "dry"],
    &["help", "hold_hands"],
    &["toilet", "toilets_building"],
    &["quiet_place", "first_aid_tent"],
    &["bye", "say_hello"],
    &["timer", "wait"],
];

struct Seen {
    id: String,
    edges: Vec<f64>,
}

fn seen() -> Vec<Seen> {
    let all = library().all().iter();
    all.map(|s| Seen {
        id: s.id.to_string(),
        edges: edges(&grey(&paint::to_svg(
            &s.drawn(Variant::new(Default::default(), Ink::Grey)).art,
        ))),
    })
    .collect()
}

fn grey(svg: &str) -> Vec<f64> {
    let map = paint::svg(svg, DOTS);
    let mut out = vec![0.0; SIDE * SIDE];
    for (i, p) in map.pixels().iter().enumerate() {
        let (x, y) = (i as u32 % DOTS, i as u32 / DOTS);
        let at = (y / BLOCK) as usize * SIDE + (x / BLOCK) as usize;
        out[at] += f64::from(p.green()) / 255.0 / f64::from(BLOCK * BLOCK);
    }
    out
}

/// How strong edges are in each cell and direction; an edge is shared among the cells around it.
fn edges(grey: &[f64]) -> Vec<f64> {
    let at = |x: usize, y: usize| grey[y * SIDE + x];
    let mut out = vec![0.0; CELLS * CELLS * WAYS];
    for y in 1..SIDE - 1 {
        for x in 1..SIDE - 1 {
            let (dx, dy) = (at(x + 1, y) - at(x - 1, y), at(x, y + 1) - at(x, y - 1));
            let strength = dx.hypot(dy);
            if strength < 0.02 {
                continue;
            }
            let turn = dy.atan2(dx).rem_euclid(std::f64::consts::PI) / std::f64::consts::PI;
            for (way, a) in shared(turn * WAYS as f64) {
                for (row, b) in shared(y as f64 / SIDE as f64 * CELLS as f64 - 0.5) {
                    for (column, c) in shared(x as f64 / SIDE as f64 * CELLS as f64 - 0.5) {
                        if row < 0 || column < 0 || row >= CELLS as i64 || column >= CELLS as i64 {
                            continue;
                        }
                        let way = way.rem_euclid(WAYS as i64) as usize;
                        let cell = row as usize * CELLS + column as usize;
                        out[cell * WAYS + way] += strength.sqrt() * a * b * c;
                    }
                }
            }
        }
    }
    out
}

/// The two whole numbers around a place, with how near each is.
fn shared(place: f64) -> [(i64, f64); 2] {
    let low = place.floor();
    let near = place - low;
    [(low as i64, 1.0 - near), (low as i64 + 1, near)]
}

fn distance(a: &[f64], b: &[f64]) -> f64 {
    let dot = |a: &[f64], b: &[f64]| a.iter().zip(b).map(|(x, y)| x * y).sum::<f64>();
    let long = (dot(a, a) * dot(b, b)).sqrt();
    if long == 0.0 {
        1.0
    } else {
        1.0 - dot(a, b) / long
    }
}

/// All pairs by distance, the nearest first.
fn pairs(all: &[Seen]) -> Vec<(f64, &str, &str)> {
    let mut out = Vec::new();
    for (i, a) in all.iter().enumerate() {
        for b in &all[i + 1..] {
            out.push((distance(&a.edges, &b.edges), a.id.as_str(), b.id.as_str()));
        }
    }
    out.sort_by(|x, y| x.0.total_cmp(&y.0));
    out
}

#[test]
fn no_two_symbols_look_alike_at_20_mm_in_grey() {
    let all = seen();
    let pairs = pairs(&all);
    let nearest: Vec<String> = pairs
        .iter()
        .take(20)
        .map(|(d, a, b)| format!("{d:.3} {a} {b}"))
        .collect();
    println!("The closest twenty pairs:\n{}", nearest.join("\n"));
    assert!(pairs[0].0 >= LEAST, "{}", nearest.join("\n"));
}

#[test]
fn groups_that_are_easily_mistaken_are_told_apart() {
    let all = seen();
    let find = |id: &str| all.iter().find(|s| s.id == id);
    let mut faults = BTreeSet::new();
    for group in GROUPS {
        for (i, a) in group.iter().enumerate() {
            for b in &group[i + 1..] {
                match (find(a), find(b)) {
                    (Some(x), Some(y)) => {
                        let d = distance(&x.edges, &y.edges);
                        println!("{d:.3} {a} {b}");
                        if d < LEAST_IN_GROUP {
                            faults.insert(format!("{a} and {b}: {d:.3}"));
                        }
                    }
                    _ => {
                        faults.insert(format!("{a} or {b} is not there"));
                    }
                }
            }
        }
    }
    assert!(faults.is_empty(), "{faults:?}");
}

/// The measure itself: a picture is next to itself shifted by a third of a millimetre, and farther
/// from the one after it in the index.
#[test]
fn the_measure_measures() {
    let all = seen();
    for (i, s) in library().all().iter().enumerate() {
        let art = s.drawn(Variant::new(Default::default(), Ink::Grey)).art;
        let plain = grey(&paint::to_svg(&art));
        let mut moved = vec![1.0; SIDE * SIDE];
        for y in 0..SIDE - 1 {
            for x in 0..SIDE - 1 {
                moved[(y + 1) * SIDE + x + 1] = plain[y * SIDE + x];
            }
        }
        let near = distance(&all[i].edges, &edges(&moved));
        assert!(near < LEAST / 2.0, "{}: {near:.3}", s.id);
        let other = &all[(i + 1) % all.len()];
        assert!(near < distance(&all[i].edges, &other.edges), "{}", s.id);
        assert!(distance(&all[i].edges, &all[i].edges) < 1e-9);
    }
}
