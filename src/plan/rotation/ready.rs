//! The input made ready for searching: looked up once, then only read.

use super::{Paired, Rotation, Weights};

/// No station: waiting.
pub(super) const NONE: usize = usize::MAX;

/// The input with what is looked up often. Wishes are sound (`reasons::bad_wishes`).
pub(super) struct Ready<'a> {
    pub rotation: &'a Rotation,
    pub paired: Option<Paired<'a>>,
    pub weights: Weights,
    pub turns: usize,
    pub participants: usize,
    pub stations: usize,
    /// Most in the water in each turn.
    pub limit: Vec<usize>,
    /// For participant and turn: the settled station or `NONE`.
    pub fixed: Vec<usize>,
    /// For participant and station: its place among the wishes or `NONE`.
    pub rank: Vec<usize>,
    /// For each participant whether a dry station, a quiet one are wished.
    pub has: Vec<(bool, bool)>,
    /// Pairs of friends with the number of common stations.
    pub friends: Vec<(usize, usize, usize)>,
    /// For each participant the pairs.
    pub pairs: Vec<Vec<usize>>,
}

impl<'a> Ready<'a> {
    pub fn new(
        rotation: &'a Rotation,
        paired: Option<Paired<'a>>,
        weights: Weights,
        turns: usize,
    ) -> Self {
        let (participants, stations) = (rotation.participants.len(), rotation.stations.len());
        let mut fixed = vec![NONE; participants * turns];
        let mut rank = vec![NONE; participants * stations];
        let mut has = Vec::new();
        for (p, who) in rotation.participants.iter().enumerate() {
            for v in who.fixed.iter().filter(|v| v.turn < turns) {
                fixed[p * turns + v.turn] = v.station;
            }
            for (i, &s) in who.wishes.iter().enumerate() {
                rank[p * stations + s] = i;
            }
            let mut dry = who.wishes.iter().filter(|s| !rotation.stations[**s].water);
            let quiet = dry.clone().any(|s| rotation.stations[*s].quiet);
            has.push((dry.next().is_some(), quiet));
        }
        let friends = friends(rotation);
        let of = |p: usize| {
            let of = |i: &usize| friends[*i].0 == p || friends[*i].1 == p;
            (0..friends.len()).filter(of).collect()
        };
        Self {
            rotation,
            paired,
            weights,
            turns,
            participants,
            stations,
            limit: (0..turns).map(|t| rotation.water.limit(t)).collect(),
            fixed,
            rank,
            has,
            pairs: (0..participants).map(of).collect(),
            friends,
        }
    }

    pub fn water(&self, station: usize) -> bool {
        station != NONE && self.rotation.stations[station].water
    }

    /// Whether the visit of a participant in a turn is settled.
    pub fn settled(&self, participant: usize, turn: usize) -> bool {
        self.fixed[participant * self.turns + turn] != NONE
    }
}

/// The pairs of friends that have common stations.
fn friends(rotation: &Rotation) -> Vec<(usize, usize, usize)> {
    let wishes = |p: usize| rotation.participants.get(p).map(|p| &p.wishes);
    let common = |&(a, b): &(usize, usize)| {
        let (of_a, of_b) = (wishes(a)?, wishes(b)?);
        let common = of_a.iter().filter(|s| of_b.contains(s)).count();
        (a != b && common > 0).then_some((a, b, common))
    };
    rotation.friends.iter().filter_map(common).collect()
}
