//! What a plan loses of the wishes, told by indices so that others can put it into words, and what
//! it weighs.

use super::Rotation;

/// What the losses weigh against each other. The order is that of the goals; the numbers are our
/// own choice, from no source.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Weights {
    /// A visit to the water that no quiet place follows.
    pub quiet: u32,
    /// A participant whose last visit is the water.
    pub last: u32,
    /// A common station that two friends visit in different turns.
    pub apart: u32,
    /// Two stations visited the other way round than wished.
    pub order: u32,
    /// A change of place between two visits.
    pub place: u32,
    /// A turn of waiting between two visits.
    pub wait: u32,
}

impl Default for Weights {
    fn default() -> Self {
        Self {
            quiet: 100,
            last: 60,
            apart: 20,
            order: 5,
            place: 3,
            wait: 2,
        }
    }
}

/// All that is lost; only those are listed who lose something.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Losses {
    /// Visits to the water that no quiet place follows.
    pub quiet: Vec<NoQuiet>,
    /// Those whose last visit is the water.
    pub last: Vec<WaterLast>,
    /// Friends who are apart.
    pub apart: Vec<Apart>,
    /// Those who have another order than they wished.
    pub order: Vec<Reordered>,
    /// Those who change places.
    pub places: Vec<Changes>,
    /// Those who wait between visits.
    pub waits: Vec<Waits>,
}

/// Someone with a quiet place among the wishes comes out of the water, and the next visit is to no
/// quiet place, or there is none. Going on in the water counts only when it ends.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct NoQuiet {
    /// Who.
    pub participant: usize,
    /// The turn in the water.
    pub turn: usize,
}

/// Someone who does not only go into the water has it last.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct WaterLast {
    /// Who.
    pub participant: usize,
    /// The turn in the water.
    pub turn: usize,
}

/// Two friends are at common stations in different turns.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Apart {
    /// Which pair of the friends.
    pub pair: usize,
    /// The common stations they visit in different turns.
    pub stations: Vec<usize>,
}

/// Someone has stations in another order than wished.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Reordered {
    /// Who.
    pub participant: usize,
    /// Two stations each: the first is visited before the second and was wished after it.
    pub pairs: Vec<(usize, usize)>,
}

/// Someone goes to another place between visits.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Changes {
    /// Who.
    pub participant: usize,
    /// How often.
    pub times: usize,
}

/// Someone waits between the first and the last visit.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Waits {
    /// Who.
    pub participant: usize,
    /// The turns of waiting.
    pub turns: Vec<usize>,
}

impl Losses {
    /// The sum of all losses by their weights.
    pub fn cost(&self, weights: &Weights) -> u64 {
        let each = [
            (weights.quiet, self.quiet.len()),
            (weights.last, self.last.len()),
            (weights.apart, sum(&self.apart, |a| a.stations.len())),
            (weights.order, sum(&self.order, |o| o.pairs.len())),
            (weights.place, sum(&self.places, |p| p.times)),
            (weights.wait, sum(&self.waits, |w| w.turns.len())),
        ];
        each.iter().map(|(w, n)| u64::from(*w) * *n as u64).sum()
    }
}

fn sum<T>(all: &[T], count: impl Fn(&T) -> usize) -> usize {
    all.iter().map(count).sum()
}

/// What the rows of a plan lose, of this program or changed by hand.
pub fn losses(rotation: &Rotation, rows: &[Vec<Option<usize>>]) -> Losses {
    let mut all = Losses::default();
    let known = rows.iter().take(rotation.participants.len());
    for (participant, row) in known.enumerate() {
        let visits: Vec<(usize, usize)> = visits(row).collect();
        water(rotation, participant, &visits, &mut all);
        on_the_way(rotation, participant, &visits, &mut all);
    }
    for (pair, &(a, b)) in rotation.friends.iter().enumerate() {
        if let (Some(a), Some(b)) = (rows.get(a), rows.get(b)) {
            let alone = |(turn, s): (usize, usize)| {
                let other = visits(b).find(|(_, there)| *there == s);
                other.is_some_and(|(then, _)| then != turn).then_some(s)
            };
            let stations: Vec<usize> = visits(a).filter_map(alone).collect();
            if !stations.is_empty() {
                all.apart.push(Apart { pair, stations });
            }
        }
    }
    all
}

/// Turn and station of the visits of a row.
fn visits(row: &[Option<usize>]) -> impl Iterator<Item = (usize, usize)> {
    row.iter().enumerate().filter_map(|(t, s)| Some((t, (*s)?)))
}

/// What is lost around the water.
fn water(rotation: &Rotation, participant: usize, visits: &[(usize, usize)], all: &mut Losses) {
    let station = |s: usize| &rotation.stations[s];
    let mut wishes = rotation.participants[participant].wishes.iter();
    let has_dry = wishes.clone().any(|s| !station(*s).water);
    let has_quiet = wishes.any(|s| station(*s).quiet && !station(*s).water);
    let in_water = visits
        .iter()
        .enumerate()
        .filter(|(_, v)| station(v.1).water);
    for (i, &(turn, _)) in in_water {
        let next = visits.get(i + 1).map(|v| station(v.1));
        if has_quiet && !next.is_some_and(|n| n.quiet || n.water) {
            all.quiet.push(NoQuiet { participant, turn });
        }
        if has_dry && next.is_none() {
            all.last.push(WaterLast { participant, turn });
        }
    }
}

/// Order, changes of place and waiting.
fn on_the_way(
    rotation: &Rotation,
    participant: usize,
    visits: &[(usize, usize)],
    all: &mut Losses,
) {
    let wishes = &rotation.participants[participant].wishes;
    let rank = |s: usize| wishes.iter().position(|w| *w == s);
    let mut pairs = Vec::new();
    for (i, &(_, early)) in visits.iter().enumerate() {
        let later = visits[i + 1..]
            .iter()
            .filter(|(_, s)| rank(*s) < rank(early));
        pairs.extend(later.map(|&(_, late)| (early, late)));
    }
    if !pairs.is_empty() {
        all.order.push(Reordered { participant, pairs });
    }
    let place = |s: usize| rotation.stations[s].place;
    let changes = visits.windows(2).filter(|w| place(w[0].1) != place(w[1].1));
    let times = changes.count();
    if times > 0 {
        all.places.push(Changes { participant, times });
    }
    let between = visits.windows(2).flat_map(|w| w[0].0 + 1..w[1].0);
    let turns: Vec<usize> = between.collect();
    if !turns.is_empty() {
        all.waits.push(Waits { participant, turns });
    }
}
