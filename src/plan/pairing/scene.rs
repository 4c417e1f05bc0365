//! A moment made ready: who may be with whom after the pairs held by hand, and what a pair is worth.

use super::assign::Seating;
use super::{Bond, Broken, Moment, Need, Pair, Why};

/// A moment in order, without what could not be. Slots are positions in `needs`, columns positions
/// in `people`.
pub(super) struct Scene {
    /// Who needs someone, in order.
    pub needs: Vec<Need>,
    /// Who is free, in order.
    pub people: Vec<usize>,
    /// By slot and column. A person held by hand is free for nobody else.
    pub bonds: Vec<Vec<Bond>>,
    /// Slot and column of what is held by hand. All of it comes about without an empty place more:
    /// whoever has another person than the held one could change, for nobody else has that one.
    pub held: Vec<(usize, usize)>,
    /// What was held by hand and could not be.
    pub broken: Vec<Broken>,
    /// The slot of each place: as many places as people needed, but no more than could be filled.
    pub places: Vec<usize>,
}

/// The people of each slot, in order.
pub(super) type Sets = Vec<Vec<usize>>;

/// What a pair is worth beyond its bond, by slot and column.
pub(super) type Bonus = Vec<Vec<i64>>;

impl Scene {
    pub fn new(moment: &Moment, bonds: &[Vec<Bond>]) -> Self {
        let needs = needs(moment);
        let mut people = moment.free.clone();
        people.sort_unstable();
        people.dedup();
        let bond = |need: &Need, person: &usize| {
            let row = bonds.get(need.participant);
            row.and_then(|r| r.get(*person))
                .copied()
                .unwrap_or(Bond::Never)
        };
        let row = |need| people.iter().map(|p| bond(need, p)).collect();
        let mut scene = Self {
            bonds: needs.iter().map(row).collect(),
            needs,
            people,
            held: Vec::new(),
            broken: Vec::new(),
            places: Vec::new(),
        };
        scene.hold(&moment.held);
        scene.places = (0..scene.needs.len())
            .flat_map(|slot| scene.places_of(slot))
            .collect();
        scene
    }

    /// The same participants without some of them.
    pub fn only(&self, slots: &[usize]) -> Self {
        let mut part = Self {
            needs: slots.iter().map(|&s| self.needs[s]).collect(),
            people: self.people.clone(),
            held: Vec::new(),
            bonds: slots.iter().map(|&s| self.bonds[s].clone()).collect(),
            broken: Vec::new(),
            places: Vec::new(),
        };
        part.places = (0..slots.len())
            .flat_map(|slot| part.places_of(slot))
            .collect();
        part
    }

    fn places_of(&self, slot: usize) -> impl Iterator<Item = usize> + use<> {
        let most = self.neighbours(slot).count();
        let needed = usize::try_from(self.needs[slot].people).unwrap_or(usize::MAX);
        std::iter::repeat_n(slot, needed.min(most))
    }

    /// The columns of those who may be with a participant.
    pub fn neighbours(&self, slot: usize) -> impl Iterator<Item = usize> + '_ {
        let row = self.bonds[slot].iter().enumerate();
        row.filter(|(_, bond)| **bond != Bond::Never)
            .map(|(column, _)| column)
    }

    /// Keeps what is held by hand for whom it is held, as far as it can be.
    fn hold(&mut self, held: &[Pair]) {
        let mut kept: Vec<(usize, usize)> = Vec::new();
        for &pair in held {
            match self.holdable(pair, &kept) {
                Ok(place) if kept.contains(&place) => {}
                Ok(place) => kept.push(place),
                Err(why) => self.broken.push(Broken { pair, why }),
            }
        }
        for &(slot, column) in &kept {
            for (other, row) in self.bonds.iter_mut().enumerate() {
                if other != slot {
                    row[column] = Bond::Never;
                }
            }
        }
        self.held = kept;
    }

    fn holdable(&self, pair: Pair, kept: &[(usize, usize)]) -> Result<(usize, usize), Why> {
        let slot = self
            .needs
            .binary_search_by_key(&pair.participant, |n| n.participant);
        let slot = slot.map_err(|_| Why::NotInWater)?;
        let column = self
            .people
            .binary_search(&pair.person)
            .map_err(|_| Why::NotFree)?;
        if self.bonds[slot][column] == Bond::Never {
            return Err(Why::Never);
        }
        if kept.iter().any(|k| k.1 == column && k.0 != slot) {
            return Err(Why::Elsewhere);
        }
        let others = kept.iter().filter(|k| k.0 == slot && k.1 != column).count();
        let needed = usize::try_from(self.needs[slot].people).unwrap_or(usize::MAX);
        if others >= needed {
            return Err(Why::Enough);
        }
        Ok((slot, column))
    }

    /// A bonus for every pair.
    pub fn bonus(&self, of: impl Fn(Pair) -> i64) -> Bonus {
        let pair = |need: &Need, person: &usize| Pair {
            participant: need.participant,
            person: *person,
        };
        let row = |need| self.people.iter().map(|p| of(pair(need, p))).collect();
        self.needs.iter().map(row).collect()
    }

    /// The best pairs, with the bonus below everything else. Each level weighs more than all pairs
    /// of the level below together; bonuses are not below zero.
    pub fn solve(&self, bonus: Option<&Bonus>) -> Seating {
        let most = bonus
            .and_then(|b| b.iter().flatten().max())
            .map_or(0, |b| i128::from(*b));
        let places = self.places.len() as i128;
        let trainer = places * most + 1;
        let wanted = trainer * (places + 1);
        let held = wanted * (places + 1);
        let cost = |slot: usize, column: usize| {
            let by_hand = if self.held.contains(&(slot, column)) {
                held
            } else {
                0
            };
            let worth = match self.bonds[slot][column] {
                Bond::Never => return None,
                Bond::Plain => 0,
                Bond::Trainer => trainer,
                Bond::Wanted => wanted,
            };
            Some(-by_hand - worth - bonus.map_or(0, |b| i128::from(b[slot][column])))
        };
        let row = |slot: &usize| (0..self.people.len()).map(|c| cost(*slot, c)).collect();
        let costs: Vec<Vec<_>> = self.places.iter().map(row).collect();
        Seating::new(&costs)
    }

    /// Whether everyone can have the people they need.
    pub fn can_be_full(&self) -> bool {
        let needed: u64 = self.needs.iter().map(|n| u64::from(n.people)).sum();
        needed == self.places.len() as u64 && self.solve(None).is_full()
    }

    /// For each place whether it is of the same participant as the one before.
    pub fn alike(&self) -> Vec<bool> {
        let before = std::iter::once(None).chain(self.places.iter().map(Some));
        self.places
            .iter()
            .zip(before)
            .map(|(slot, b)| b == Some(slot))
            .collect()
    }

    /// The people of each slot when the places have these columns.
    pub fn sets_of(&self, columns: impl Iterator<Item = Option<usize>>) -> Sets {
        let mut sets = vec![Vec::new(); self.needs.len()];
        for (slot, column) in self.places.iter().zip(columns) {
            sets[*slot].extend(column.map(|c| self.people[c]));
        }
        for set in &mut sets {
            set.sort_unstable();
        }
        sets
    }
}

impl Seating {
    /// The people of each slot, the lowest numbers among equals.
    pub(super) fn sets(mut self, scene: &Scene) -> Sets {
        self.lower();
        scene.sets_of((0..scene.places.len()).map(|place| self.person(place)))
    }
}

/// Who is in the water and needs someone, once each.
fn needs(moment: &Moment) -> Vec<Need> {
    let mut needs: Vec<Need> = moment
        .in_water
        .iter()
        .filter(|n| n.people > 0)
        .copied()
        .collect();
    needs.sort_unstable_by_key(|n| (n.participant, std::cmp::Reverse(n.people)));
    needs.dedup_by_key(|n| n.participant);
    needs
}
