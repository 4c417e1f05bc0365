//! Why there is no plan, as far as numbers and settled visits say so, and the fewest turns by them.

use super::{Paired, Rotation, Station, Visit, Water};

/// Why there is no plan.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Reason {
    /// A wish names a station that there is not, or one station twice.
    BadWish {
        /// Whose.
        participant: usize,
        /// The station.
        station: usize,
    },
    /// A participant has more stations than there are turns.
    TooManyStations {
        /// Who.
        participant: usize,
        /// The stations.
        stations: usize,
        /// The turns.
        turns: usize,
    },
    /// A station has more visits than fit into all turns.
    StationFull {
        /// Which.
        station: usize,
        /// The visits.
        visits: usize,
        /// How many fit.
        most: usize,
    },
    /// The water has more visits than fit into all turns, by numbers or by who can be paired.
    WaterFull {
        /// The visits.
        visits: usize,
        /// How many fit.
        most: usize,
    },
    /// A settled visit is to no wished station.
    FixedNotWished {
        /// Whose.
        participant: usize,
        /// The visit.
        visit: Visit,
    },
    /// A settled visit is after the last turn.
    FixedTooLate {
        /// Whose.
        participant: usize,
        /// The visit.
        visit: Visit,
    },
    /// Two settled visits of one participant are in one turn, or to one station.
    FixedTwice {
        /// Whose.
        participant: usize,
        /// The one.
        visit: Visit,
        /// The other.
        other: Visit,
    },
    /// More visits are settled for a station in a turn than it holds.
    FixedStationFull {
        /// Where and when.
        visit: Visit,
        /// How many.
        visits: usize,
        /// How many fit.
        most: usize,
    },
    /// More visits to the water are settled for a turn than there can be.
    FixedWaterFull {
        /// When.
        turn: usize,
        /// How many.
        visits: usize,
        /// How many fit.
        most: usize,
    },
    /// Those settled for the water in a turn cannot be paired.
    FixedNotPaired {
        /// When.
        turn: usize,
        /// Who.
        participants: Vec<usize>,
    },
    /// A participant with a station in the water cannot be paired there in any turn, not even
    /// alone.
    NeverPaired {
        /// Who.
        participant: usize,
    },
    /// No single cause: every possibility was tried.
    AllTried,
}

/// The fewest turns that numbers and settled visits allow. Without settled visits, and with as many
/// in the water in every turn, a plan with so many turns exists. `None` if no number is enough.
pub fn fewest_turns(rotation: &Rotation) -> Option<usize> {
    let wishes = rotation.participants.iter().map(|p| p.wishes.len());
    let fixed = rotation.participants.iter().flat_map(|p| &p.fixed);
    let mut turns = wishes.max().unwrap_or(0);
    turns = turns.max(fixed.map(|v| v.turn.saturating_add(1)).max().unwrap_or(0));
    for (station, visits) in rotation.stations.iter().zip(visits(rotation)) {
        match (visits, station.capacity) {
            (0, _) => {}
            (_, 0) => return None,
            (n, capacity) => turns = turns.max(n.div_ceil(capacity)),
        }
    }
    let need = water_visits(rotation);
    match &rotation.water {
        _ if need == 0 => Some(turns),
        Water::AsStations => Some(turns),
        Water::Every(0) => None,
        Water::Every(n) => Some(turns.max(need.div_ceil(*n))),
        Water::Each(list) => {
            let enough = (1..=list.len()).find(|t| water_room(rotation, *t) >= need);
            Some(turns.max(enough?))
        }
    }
}

/// All reasons that can be read from the input for so many turns; none of them is a proof of a plan.
pub(super) fn reasons(rotation: &Rotation, paired: Option<Paired>, turns: usize) -> Vec<Reason> {
    let mut all = bad_wishes(rotation);
    if !all.is_empty() {
        return all;
    }
    numbers(rotation, turns, &mut all);
    for participant in 0..rotation.participants.len() {
        own_fixed(rotation, participant, turns, &mut all);
    }
    for turn in 0..turns {
        fixed_together(rotation, paired, turn, &mut all);
    }
    if let Some(paired) = paired {
        let never = |p: &usize| {
            let wishes = &rotation.participants[*p].wishes;
            let water = wishes.iter().any(|s| rotation.stations[*s].water);
            water && !(0..turns).any(|t| paired(t, &[*p]))
        };
        let never = (0..rotation.participants.len()).filter(never);
        all.extend(never.map(|participant| Reason::NeverPaired { participant }));
    }
    all
}

/// Wishes that mean nothing.
pub(super) fn bad_wishes(rotation: &Rotation) -> Vec<Reason> {
    let mut all = Vec::new();
    for (participant, who) in rotation.participants.iter().enumerate() {
        for (i, &station) in who.wishes.iter().enumerate() {
            if station >= rotation.stations.len() || who.wishes[..i].contains(&station) {
                all.push(Reason::BadWish {
                    participant,
                    station,
                });
            }
        }
    }
    all
}

fn numbers(rotation: &Rotation, turns: usize, all: &mut Vec<Reason>) {
    for (participant, who) in rotation.participants.iter().enumerate() {
        let stations = who.wishes.len();
        if stations > turns {
            all.push(Reason::TooManyStations {
                participant,
                stations,
                turns,
            });
        }
    }
    for (station, visits) in visits(rotation).into_iter().enumerate() {
        let most = rotation.stations[station].capacity.saturating_mul(turns);
        if visits > most {
            all.push(Reason::StationFull {
                station,
                visits,
                most,
            });
        }
    }
    let (visits, most) = (water_visits(rotation), water_room(rotation, turns));
    if visits > most {
        all.push(Reason::WaterFull { visits, most });
    }
}

fn own_fixed(rotation: &Rotation, participant: usize, turns: usize, all: &mut Vec<Reason>) {
    let who = &rotation.participants[participant];
    for (i, &visit) in who.fixed.iter().enumerate() {
        if !who.wishes.contains(&visit.station) {
            all.push(Reason::FixedNotWished { participant, visit });
        }
        if visit.turn >= turns {
            all.push(Reason::FixedTooLate { participant, visit });
        }
        let clash = |v: &&Visit| (v.turn == visit.turn) != (v.station == visit.station);
        let others = who.fixed[..i].iter().filter(clash);
        all.extend(others.map(|&other| Reason::FixedTwice {
            participant,
            visit,
            other,
        }));
    }
}

fn fixed_together(rotation: &Rotation, paired: Option<Paired>, turn: usize, all: &mut Vec<Reason>) {
    let there = |fits: &dyn Fn(usize, &Station) -> bool| -> Vec<usize> {
        let fixed = |p: &usize| {
            let mut fixed = rotation.participants[*p].fixed.iter();
            let station = |s: usize| rotation.stations.get(s).is_some_and(|st| fits(s, st));
            fixed.any(|v| v.turn == turn && station(v.station))
        };
        (0..rotation.participants.len()).filter(fixed).collect()
    };
    for (station, limits) in rotation.stations.iter().enumerate() {
        let (visits, most) = (there(&|s, _| s == station).len(), limits.capacity);
        if visits > most {
            let visit = Visit { turn, station };
            all.push(Reason::FixedStationFull {
                visit,
                visits,
                most,
            });
        }
    }
    let participants = there(&|_, s| s.water);
    let (visits, most) = (participants.len(), rotation.water.limit(turn));
    if visits > most {
        all.push(Reason::FixedWaterFull { turn, visits, most });
    } else if visits > 0 && paired.is_some_and(|paired| !paired(turn, &participants)) {
        all.push(Reason::FixedNotPaired { turn, participants });
    }
}

/// The visits of each station.
fn visits(rotation: &Rotation) -> Vec<usize> {
    let mut visits = vec![0; rotation.stations.len()];
    for &s in rotation.participants.iter().flat_map(|p| &p.wishes) {
        if let Some(n) = visits.get_mut(s) {
            *n += 1;
        }
    }
    visits
}

/// The visits to the water.
pub(super) fn water_visits(rotation: &Rotation) -> usize {
    let each = rotation.stations.iter().zip(visits(rotation));
    each.filter(|(s, _)| s.water).map(|(_, n)| n).sum()
}

/// How many visits to the water so many turns allow together.
fn water_room(rotation: &Rotation, turns: usize) -> usize {
    (0..turns).fold(0, |sum: usize, t| {
        sum.saturating_add(rotation.water.limit(t))
    })
}
