//! Whether a plan exists, against trying every possibility, for all small cases.

use daystrand::plan::rotation::{
    Answer, Effort, Participant, Reason, Rotation, Station, Visit, Water, fewest_turns,
};

use super::{arranged, dry, sound, wet};

/// Whether rows exist, by trying all: participant by participant, turn by turn.
fn exists(rotation: &Rotation, turns: usize, rows: &mut Vec<Vec<Option<usize>>>) -> bool {
    let Some(who) = rotation.participants.get(rows.len()) else {
        return true;
    };
    let mut possible = vec![vec![]];
    for turn in 0..turns {
        let longer = |row: &Vec<Option<usize>>| {
            let free = who.wishes.iter().filter(|s| !row.contains(&Some(**s)));
            let mut all: Vec<_> = free.map(|s| with(row, Some(*s))).collect();
            all.push(with(row, None));
            all
        };
        possible = possible.iter().flat_map(longer).collect();
        let settled = who.fixed.iter().filter(|v| v.turn == turn);
        settled.for_each(|v| possible.retain(|row| row[turn] == Some(v.station)));
    }
    possible.retain(|row| row.iter().flatten().count() == who.wishes.len());
    possible.into_iter().any(|row| {
        rows.push(row);
        let fits = (0..turns).all(|t| fits(rotation, t, rows)) && exists(rotation, turns, rows);
        rows.pop();
        fits
    })
}

fn with(row: &[Option<usize>], station: Option<usize>) -> Vec<Option<usize>> {
    row.iter().copied().chain([station]).collect()
}

fn fits(rotation: &Rotation, turn: usize, rows: &[Vec<Option<usize>>]) -> bool {
    let at = |s: usize| rows.iter().filter(|row| row[turn] == Some(s)).count();
    let stations = rotation.stations.iter().enumerate();
    let bathers: usize = stations
        .clone()
        .filter(|s| s.1.water)
        .map(|s| at(s.0))
        .sum();
    bathers <= rotation.water.limit(turn) && stations.clone().all(|(s, st)| at(s) <= st.capacity)
}

/// All lists of `n` kinds of `kinds`, each in rising order.
fn rising(n: usize, kinds: usize) -> Vec<Vec<usize>> {
    let mut lists: Vec<Vec<usize>> = vec![vec![]];
    for _ in 0..n {
        let longer = |list: &Vec<usize>| {
            let from = list.last().copied().unwrap_or(0);
            let longer = |k| list.iter().copied().chain([k]).collect();
            (from..kinds).map(longer).collect::<Vec<_>>()
        };
        lists = lists.iter().flat_map(longer).collect();
    }
    lists
}

/// Three stations of capacities 1 to 3 in and out of the water, up to their order.
fn stations() -> Vec<Vec<Station>> {
    let station = |kind: &usize| match kind {
        0..3 => dry(0, kind + 1),
        _ => wet(1, kind - 2),
    };
    let stations = |list: Vec<usize>| list.iter().map(station).collect();
    rising(3, 6).into_iter().map(stations).collect()
}

/// Up to four participants with any of three stations, up to their order.
fn participants() -> Vec<Vec<Participant>> {
    let who = |set: &usize| Participant {
        wishes: (0..3).filter(|s| set >> s & 1 == 1).collect(),
        fixed: vec![],
    };
    let all = |list: Vec<usize>| list.iter().map(who).collect();
    rising(4, 8).into_iter().map(all).collect()
}

/// Every case with each water limit from 1 to 3.
fn cases() -> impl Iterator<Item = Rotation> {
    let limits = |stations: Vec<Station>| {
        let most = if stations.iter().any(|s| s.water) {
            3
        } else {
            1
        };
        (1..=most).map(move |limit| (stations.clone(), limit))
    };
    let places: Vec<_> = stations().into_iter().flat_map(limits).collect();
    participants().into_iter().flat_map(move |participants| {
        let case = |(stations, limit): (Vec<Station>, usize)| Rotation {
            stations,
            participants: participants.clone(),
            friends: vec![],
            water: Water::Every(limit),
            turns: None,
        };
        places.clone().into_iter().map(case).collect::<Vec<_>>()
    })
}

/// Whether the program finds a plan; what it finds must hold, what it denies must have reasons.
fn finds(rotation: &Rotation) -> bool {
    match arranged(rotation, None, &Effort::first()) {
        Answer::Found(plan) => {
            sound(rotation, None, &plan);
            true
        }
        Answer::Impossible(reasons) => {
            assert!(!reasons.is_empty());
            false
        }
        Answer::NotFound(not) => panic!("{not:?} for {rotation:?}"),
    }
}

#[test]
fn the_theorem_agrees_with_trying_everything_in_all_small_cases() {
    let (mut there, mut not) = (0, 0);
    for mut rotation in cases() {
        let mut least = None;
        for turns in 1..=3 {
            rotation.turns = Some(turns);
            let found = finds(&rotation);
            assert_eq!(found, exists(&rotation, turns, &mut vec![]), "{rotation:?}");
            least = least.or(found.then_some(turns));
            *(if found { &mut there } else { &mut not }) += 1;
        }
        let empty = rotation.participants.iter().all(|p| p.wishes.is_empty());
        let fewest = fewest_turns(&rotation).filter(|n| *n <= 3);
        assert_eq!(fewest.map(|n| n.max(1)), least, "{rotation:?}");
        assert!(!empty || fewest == Some(0));
    }
    println!("{there} cases with a plan, {not} without");
    assert!(there > 50_000 && not > 20_000);
}

#[test]
fn the_search_agrees_with_trying_everything_when_turns_differ_and_visits_are_settled() {
    let (mut there, mut not) = (0, 0);
    for (i, mut rotation) in cases().enumerate().filter(|(i, _)| i % 5 == 0) {
        let differ = [i / 5 % 4, i / 20 % 4, i / 80 % 4];
        rotation.water = Water::Each(differ.to_vec());
        let who = &mut rotation.participants[1 + i % 3];
        if let Some(station) = who.wishes.get(i % 2).copied() {
            who.fixed.push(Visit {
                turn: i / 7 % 3,
                station,
            });
        }
        rotation.turns = Some(3);
        let found = finds(&rotation);
        assert_eq!(found, exists(&rotation, 3, &mut vec![]), "{rotation:?}");
        *(if found { &mut there } else { &mut not }) += 1;
    }
    println!("{there} cases with a plan, {not} without");
    assert!(there > 2_000 && not > 2_000);
}

#[test]
fn some_cases_only_the_search_can_deny() {
    // The third needs every turn, and in the first all stations are taken; numbers do not see it.
    let visit = |turn, station| vec![Visit { turn, station }];
    let who = |wishes: &[usize], fixed| Participant {
        wishes: wishes.to_vec(),
        fixed,
    };
    let rotation = Rotation {
        stations: vec![dry(0, 1), dry(0, 1), dry(0, 1)],
        participants: vec![
            who(&[0], visit(0, 0)),
            who(&[1], visit(0, 1)),
            who(&[0, 1, 2], vec![]),
            who(&[2], visit(0, 2)),
        ],
        turns: Some(3),
        ..Rotation::default()
    };
    assert_eq!(
        arranged(&rotation, None, &Effort::default()),
        Answer::Impossible(vec![Reason::AllTried])
    );
}
