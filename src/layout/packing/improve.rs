//! Saving a sheet: one sheet is emptied, then some pieces are taken out of some sheets and put back
//! in another way, over and over, until nothing is left over.

use super::kinds::Task;
use super::tree::{Taste, Tree};
use crate::plan::chance::Chance;

/// Tries to do with one sheet less. `steps` is what may be spent: places looked at.
pub(super) fn one_less(
    task: &Task,
    sheets: &[Tree],
    chance: &mut Chance,
    steps: &mut u64,
) -> Option<Vec<Tree>> {
    let worst = (0..sheets.len()).min_by_key(|&i| sheets[i].area())?;
    let mut state = State {
        task,
        sheets: sheets.to_vec(),
        out: sheets[worst].items().map(|i| i.kind).collect(),
        spent: 0,
    };
    state.sheets.remove(worst);
    if state.sheets.is_empty() {
        return None;
    }
    let found = state.search(chance, *steps);
    *steps = steps.saturating_sub(state.spent);
    found.then_some(state.sheets)
}

struct State<'a> {
    task: &'a Task,
    sheets: Vec<Tree>,
    /// Kinds of the pieces that lie on no sheet.
    out: Vec<usize>,
    spent: u64,
}

impl State<'_> {
    /// Whether a place for everything was found. A change is kept when it is no worse than the state
    /// now or that of a while ago (late acceptance: Burke and Bykov, 2017).
    fn search(&mut self, chance: &mut Chance, most: u64) -> bool {
        let mut now = self.cost();
        let mut history = vec![now; 30];
        for slot in (0..history.len()).cycle() {
            if self.out.is_empty() {
                return true;
            }
            if self.spent >= most {
                break;
            }
            let chosen = self.choose(chance);
            let saved: Vec<Tree> = chosen.iter().map(|&i| self.sheets[i].clone()).collect();
            let out = self.out.clone();
            self.ruin(&chosen, chance);
            self.refill(&chosen, chance);
            let then = self.cost();
            if then <= now || then <= history[slot] {
                now = then;
            } else {
                for (&i, tree) in chosen.iter().zip(saved) {
                    self.sheets[i] = tree;
                }
                self.out = out;
            }
            history[slot] = now;
        }
        false
    }

    /// What lies on no sheet, by area.
    fn cost(&self) -> i128 {
        let areas = self.out.iter().map(|&k| self.task.kinds[k].area());
        areas.map(i128::from).sum()
    }

    fn choose(&self, chance: &mut Chance) -> Vec<usize> {
        let wanted = (1 + chance.below(3)).min(self.sheets.len());
        let mut chosen: Vec<usize> = Vec::with_capacity(wanted);
        while chosen.len() < wanted {
            let i = chance.below(self.sheets.len());
            if !chosen.contains(&i) {
                chosen.push(i);
            }
        }
        chosen
    }

    fn ruin(&mut self, chosen: &[usize], chance: &mut Chance) {
        for &i in chosen {
            let tree = &mut self.sheets[i];
            self.spent += 2 * tree.strips.len() as u64 + 4;
            let out = &mut self.out;
            let way = chance.below(4);
            let strip = chance.below(tree.strips.len());
            let stacks = tree.strips.get(strip).map_or(0, |s| s.stacks.len());
            let stack = chance.below(stacks);
            let share = 1 + chance.below(6);
            tree.keep(|i, j, item| {
                let goes = match way {
                    0 => i == strip,
                    1 => i == strip && j == stack,
                    2 => chance.below(8) < share,
                    _ => chance.below(3) == 0,
                };
                if goes {
                    out.push(item.kind);
                }
                !goes
            });
        }
    }

    fn refill(&mut self, chosen: &[usize], chance: &mut Chance) {
        let taste = taste(chance);
        let way = chance.below(4);
        let kinds = &self.task.kinds;
        let mut order: Vec<(f64, usize)> = Vec::with_capacity(self.out.len());
        for k in self.out.drain(..) {
            let kind = &kinds[k];
            let size = match way {
                0 => kind.w.max(kind.h),
                1 => kind.w.min(kind.h),
                _ => kind.area(),
            };
            order.push((size as f64 * (800 + chance.below(400)) as f64, k));
        }
        order.sort_unstable_by(|a, b| b.0.total_cmp(&a.0).then(a.1.cmp(&b.1)));
        for (_, k) in order {
            let mut best = None;
            for &i in chosen {
                if chance.below(100) == 0 {
                    continue;
                }
                let found = self.sheets[i].best(&kinds[k], k, &taste, &mut self.spent);
                if let Some((price, place)) = found
                    && best.is_none_or(|(p, _, _)| price < p)
                {
                    best = Some((price, i, place));
                }
            }
            match best {
                Some((_, i, place)) => self.sheets[i].insert(place),
                None => self.out.push(k),
            }
        }
    }
}

fn taste(chance: &mut Chance) -> Taste {
    let mut any =
        |least: f64, most: f64| least + (most - least) * chance.below(1000) as f64 / 1000.0;
    Taste {
        growth: any(0.1, 1.2),
        below: any(0.1, 1.0),
        beside: any(0.05, 1.0),
        under: any(0.0, 0.5),
    }
}
