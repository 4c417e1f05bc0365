//! Stations in turns against theorems about colouring edges and completing Latin squares.
//!
//! Participants with stations of capacity one in turns are bipartite graphs whose edges are coloured;
//! everyone at every station is a Latin square. Sources, all from memory: D. König, Über Graphen und
//! ihre Anwendung auf Determinantentheorie und Mengenlehre, Mathematische Annalen 77 (1916), 453-465;
//! D. de Werra, Balanced schedules, INFOR 9 (1971), 230-237; M. Hall, An existence theorem for Latin
//! squares, Bulletin of the American Mathematical Society 51 (1945), 387-388; H. J. Ryser, A
//! combinatorial theorem with an application to Latin rectangles, Proceedings of the American
//! Mathematical Society 2 (1951), 550-552.

use daystrand::plan::rotation::{
    Answer, Effort, Participant, Plan, Reason, Rotation, Visit, Water, fewest_turns,
};

use crate::plan::rotation::{arranged, dry, found, sound, wet};

/// Everyone at every station, one at a time.
fn complete(n: usize) -> Rotation {
    let everywhere = Participant {
        wishes: (0..n).collect(),
        fixed: vec![],
    };
    Rotation {
        stations: vec![dry(0, 1); n],
        participants: vec![everywhere; n],
        ..Rotation::default()
    }
}

/// A first plan that must exist.
fn first(rotation: &Rotation) -> Plan {
    let plan = found(rotation, None, &Effort::first());
    sound(rotation, None, &plan);
    plan
}

/// Participant `p` is at the station `p` and at others by a step that differs with `p`.
fn some_graph(participants: usize, stations: usize, factor: usize) -> Rotation {
    let who = |p: usize| {
        let there = |s: &usize| (p * factor + s * s * 3 + p * s) % 7 < 3 || *s == p % stations;
        Participant {
            wishes: (0..stations).filter(there).collect(),
            fixed: vec![],
        }
    };
    Rotation {
        stations: vec![dry(0, 1); stations],
        participants: (0..participants).map(who).collect(),
        ..Rotation::default()
    }
}

#[test]
fn konig_1916_complete_bipartite_graphs_give_latin_squares() {
    for n in 1..=12 {
        let plan = first(&complete(n));
        assert_eq!((plan.turns, plan.fewest), (n, true));
        for turn in 0..n {
            let mut column: Vec<_> = plan.rows.iter().map(|row| row[turn]).collect();
            column.sort_unstable();
            assert_eq!(column, (0..n).map(Some).collect::<Vec<_>>());
        }
        let fewer = Rotation {
            turns: Some(n - 1),
            ..complete(n)
        };
        let answer = arranged(&fewer, None, &Effort::first());
        let Answer::Impossible(reasons) = answer else {
            panic!("{answer:?}");
        };
        // Every row and every column of the square says so.
        assert_eq!(reasons.len(), 2 * n);
    }
}

#[test]
fn konig_1916_a_bipartite_graph_has_as_many_colours_as_its_greatest_degree() {
    for (participants, stations) in [(5, 5), (8, 5), (5, 9), (12, 7), (20, 6)] {
        for factor in 1..30 {
            let rotation = some_graph(participants, stations, factor);
            let lists = || rotation.participants.iter().map(|p| &p.wishes);
            let at = |s: usize| lists().filter(|w| w.contains(&s)).count();
            let rows = lists().map(Vec::len).max().unwrap();
            let degree = rows.max((0..stations).map(at).max().unwrap());
            assert_eq!(fewest_turns(&rotation), Some(degree));
            assert_eq!(first(&rotation).turns, degree);
        }
    }
}

#[test]
fn konig_1916_a_regular_bipartite_graph_falls_into_perfect_matchings() {
    for (n, steps) in [(7, vec![0, 1, 3]), (10, vec![0, 2, 3, 7]), (13, vec![1, 5])] {
        let who = |p: usize| Participant {
            wishes: steps.iter().map(|step| (p + step) % n).collect(),
            fixed: vec![],
        };
        let rotation = Rotation {
            participants: (0..n).map(who).collect(),
            ..complete(n)
        };
        let plan = first(&rotation);
        assert_eq!(plan.turns, steps.len());
        assert!(plan.rows.iter().flatten().all(Option::is_some));
    }
}

#[test]
fn de_werra_1971_visits_are_spread_evenly_over_any_number_of_turns() {
    for factor in 1..20 {
        let mut rotation = some_graph(14, 6, factor);
        for s in 0..6 {
            rotation.stations[s] = if s < 2 { wet(0, 5) } else { dry(1, 4) };
        }
        rotation.water = Water::Every(6);
        let least = fewest_turns(&rotation).unwrap();
        for turns in least..least + 4 {
            rotation.turns = Some(turns);
            let plan = first(&rotation);
            let at = |turn: usize, s: usize| plan.at(turn, s).len();
            let even = |counts: Vec<usize>| {
                let (least, most) = (counts.iter().min(), counts.iter().max());
                assert!(most.unwrap() - least.unwrap() <= 1, "{counts:?}");
            };
            (0..6).for_each(|s| even((0..turns).map(|t| at(t, s)).collect()));
            even((0..turns).map(|t| at(t, 0) + at(t, 1)).collect());
        }
    }
}

/// Participants are rows, turns are columns, stations are signs: the first cells are settled.
fn begun(n: usize, cells: &[Vec<usize>]) -> Rotation {
    let mut rotation = complete(n);
    for (who, row) in rotation.participants.iter_mut().zip(cells) {
        let visits = row.iter().enumerate();
        who.fixed = visits
            .map(|(turn, &station)| Visit { turn, station })
            .collect();
    }
    rotation.turns = Some(n);
    rotation
}

/// All Latin rectangles of so many rows and columns on `n` signs.
fn rectangles(n: usize, rows: usize, columns: usize) -> Vec<Vec<Vec<usize>>> {
    let mut all = vec![vec![vec![]; rows]];
    for (r, c) in (0..rows).flat_map(|r| (0..columns).map(move |c| (r, c))) {
        let longer = |square: &Vec<Vec<usize>>| {
            let fits = |s: &usize| !square[r].contains(s) && (0..r).all(|q| square[q][c] != *s);
            let with = |s: usize| {
                let mut square = square.clone();
                square[r].push(s);
                square
            };
            (0..n).filter(fits).map(with).collect::<Vec<_>>()
        };
        all = all.iter().flat_map(longer).collect();
    }
    all
}

#[test]
fn hall_1945_whole_rows_of_a_latin_square_can_always_be_completed() {
    for (n, rows, every) in [(3, 2, 1), (4, 2, 1), (4, 3, 7), (5, 2, 97)] {
        let all = rectangles(n, rows, n);
        for cells in all.iter().step_by(every) {
            first(&begun(n, cells));
        }
    }
    // Turned squares of ten, some rows of them.
    for rows in 1..10 {
        let turned = |r: usize| (0..10).map(|c| (3 * r + c) % 10).collect();
        first(&begun(10, &(0..rows).map(turned).collect::<Vec<_>>()));
    }
}

#[test]
fn ryser_1951_a_latin_rectangle_can_be_completed_if_every_sign_is_there_often_enough() {
    let (mut there, mut not) = (0, 0);
    for (n, rows, columns, every) in [
        (3, 2, 2, 1),
        (4, 2, 3, 1),
        (4, 3, 2, 1),
        (4, 3, 3, 1),
        (5, 3, 3, 301),
    ] {
        let all = rectangles(n, rows, columns);
        for cells in all.iter().step_by(every) {
            let times = |s: usize| cells.iter().flatten().filter(|c| **c == s).count();
            let enough = (0..n).all(|s| times(s) + n >= rows + columns);
            let rotation = begun(n, cells);
            match arranged(&rotation, None, &Effort::first()) {
                Answer::Found(plan) => {
                    sound(&rotation, None, &plan);
                    assert!(enough, "{cells:?}");
                    there += 1;
                }
                Answer::Impossible(reasons) => {
                    assert_eq!(reasons, [Reason::AllTried]);
                    assert!(!enough, "{cells:?}");
                    not += 1;
                }
                Answer::NotFound(not) => panic!("{not:?} for {cells:?}"),
            }
        }
    }
    println!("{there} rectangles that can be completed, {not} that cannot");
    assert!(there > 100 && not > 100);
}
