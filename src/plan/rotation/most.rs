//! How many can be in the water in each turn when it is asked who can be paired.

use super::{Paired, Rotation};

/// Questions for one turn; after these the limit by numbers stands.
const QUESTIONS: usize = 2_000;

/// The most in the water in each turn, by numbers and by asking.
pub(super) fn most_in_water(
    rotation: &Rotation,
    paired: Option<Paired>,
    turns: usize,
) -> Vec<usize> {
    let wet = |s: &usize| rotation.stations[*s].water;
    let goes = |p: &usize| rotation.participants[*p].wishes.iter().any(wet);
    let all: Vec<usize> = (0..rotation.participants.len()).filter(goes).collect();
    let most = |turn: usize| {
        let limit = rotation.water.limit(turn).min(all.len());
        let Some(paired) = paired else {
            return limit;
        };
        let mut asking = Asking {
            paired,
            turn,
            limit,
            best: 0,
            left: QUESTIONS,
        };
        asking.grow(&mut Vec::new(), &all);
        if asking.left == 0 { limit } else { asking.best }
    };
    (0..turns).map(most).collect()
}

struct Asking<'a> {
    paired: Paired<'a>,
    turn: usize,
    limit: usize,
    best: usize,
    left: usize,
}

impl Asking<'_> {
    /// Adds those who can be added, one after the other, in every way that can lead to more.
    fn grow(&mut self, group: &mut Vec<usize>, others: &[usize]) {
        for (i, &p) in others.iter().enumerate() {
            let enough = self.best >= self.limit || self.left == 0;
            if enough || group.len() + others.len() - i <= self.best {
                return;
            }
            self.left -= 1;
            group.push(p);
            if (self.paired)(self.turn, group) {
                self.best = self.best.max(group.len());
                self.grow(group, &others[i + 1..]);
            }
            group.pop();
        }
    }
}
