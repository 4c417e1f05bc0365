//! What is wrong with the rows of a plan: nothing with those made here, perhaps something with those
//! changed by hand.

use super::{Paired, Rotation, Visit};

/// A limit or a wish for a station that a plan does not keep.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Breach {
    /// There is not one row for each participant, or rows have different numbers of turns.
    Shape,
    /// Someone is at a station that is not among the wishes.
    NotWished {
        /// Who.
        participant: usize,
        /// The visit.
        visit: Visit,
    },
    /// Someone is not exactly once at a wished station.
    NotOnce {
        /// Who.
        participant: usize,
        /// The station.
        station: usize,
        /// How often.
        times: usize,
    },
    /// Someone is elsewhere in a turn that was settled.
    FixedMoved {
        /// Who.
        participant: usize,
        /// What was settled.
        visit: Visit,
    },
    /// More are at a station than it holds.
    StationOver {
        /// Where and when.
        visit: Visit,
        /// How many are there.
        visits: usize,
    },
    /// More are in the water than can be.
    WaterOver {
        /// When.
        turn: usize,
        /// How many are there.
        visits: usize,
    },
    /// Just these cannot be in the water together.
    NotPaired {
        /// When.
        turn: usize,
        /// Who.
        participants: Vec<usize>,
    },
}

/// All that is wrong with rows of a plan; a plan that `rotate` returns has nothing.
pub fn breaches(
    rotation: &Rotation,
    paired: Option<Paired>,
    rows: &[Vec<Option<usize>>],
) -> Vec<Breach> {
    let turns = rows.first().map_or(0, Vec::len);
    if rows.len() != rotation.participants.len() || rows.iter().any(|row| row.len() != turns) {
        return vec![Breach::Shape];
    }
    let mut all = Vec::new();
    for (p, row) in rows.iter().enumerate() {
        of_row(rotation, p, row, &mut all);
    }
    for turn in 0..turns {
        of_turn(rotation, paired, rows, turn, &mut all);
    }
    all
}

fn of_row(rotation: &Rotation, participant: usize, row: &[Option<usize>], all: &mut Vec<Breach>) {
    let who = &rotation.participants[participant];
    for (turn, station) in row.iter().enumerate() {
        if let Some(station) = station.filter(|s| !who.wishes.contains(s)) {
            let visit = Visit { turn, station };
            all.push(Breach::NotWished { participant, visit });
        }
    }
    for &station in &who.wishes {
        let times = row.iter().filter(|s| **s == Some(station)).count();
        if times != 1 {
            all.push(Breach::NotOnce {
                participant,
                station,
                times,
            });
        }
    }
    let moved = |v: &&Visit| row.get(v.turn) != Some(&Some(v.station));
    let moved = who.fixed.iter().filter(moved);
    all.extend(moved.map(|&visit| Breach::FixedMoved { participant, visit }));
}

fn of_turn(
    rotation: &Rotation,
    paired: Option<Paired>,
    rows: &[Vec<Option<usize>>],
    turn: usize,
    all: &mut Vec<Breach>,
) {
    let mut in_water = Vec::new();
    for (p, row) in rows.iter().enumerate() {
        let station = row[turn].and_then(|s| rotation.stations.get(s));
        if station.is_some_and(|s| s.water) {
            in_water.push(p);
        }
    }
    for (station, limits) in rotation.stations.iter().enumerate() {
        let visits = rows.iter().filter(|r| r[turn] == Some(station)).count();
        if visits > limits.capacity {
            let visit = Visit { turn, station };
            all.push(Breach::StationOver { visit, visits });
        }
    }
    let visits = in_water.len();
    if visits > rotation.water.limit(turn) {
        all.push(Breach::WaterOver { turn, visits });
    }
    if visits > 0 && paired.is_some_and(|paired| !paired(turn, &in_water)) {
        all.push(Breach::NotPaired {
            turn,
            participants: in_water,
        });
    }
}
