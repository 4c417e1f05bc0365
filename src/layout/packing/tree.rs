//! A sheet in the making: strips, stacks and pieces as lengths, without places yet.

use super::Direction;
use super::kinds::{Kind, Task};

/// A piece of some kind as it lies: its side along the strips and the one across them.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(super) struct Item {
    pub along: i64,
    pub deep: i64,
    pub kind: usize,
}

impl Item {
    pub fn area(self) -> i64 {
        self.along * self.deep
    }
}

/// Pieces one below the other across a strip.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(super) struct Pile {
    pub width: i64,
    pub used: i64,
    pub items: Vec<Item>,
}

impl Pile {
    pub fn of(items: Vec<Item>) -> Self {
        Self {
            width: items.iter().map(|i| i.along).max().unwrap_or(0),
            used: items.iter().map(|i| i.deep).sum(),
            items,
        }
    }
}

/// Stacks side by side along a strip.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(super) struct Band {
    pub depth: i64,
    pub used: i64,
    pub stacks: Vec<Pile>,
}

impl Band {
    pub fn of(stacks: Vec<Pile>) -> Self {
        Self {
            depth: stacks.iter().map(|s| s.used).max().unwrap_or(0),
            used: stacks.iter().map(|s| s.width).sum(),
            stacks,
        }
    }
}

/// Where a piece would go: an index one past the end means a new stack or a new strip.
#[derive(Clone, Copy, Debug)]
pub(super) struct Place {
    pub first: Direction,
    pub strip: usize,
    pub stack: usize,
    pub item: Item,
}

/// How dear the kinds of room are that a piece may spoil.
#[derive(Clone, Copy, Debug)]
pub(super) struct Taste {
    /// Making a strip deeper.
    pub growth: f64,
    /// Room beside a piece in its strip that a lower stack leaves.
    pub below: f64,
    /// Room of a strip after its first stack.
    pub beside: f64,
    /// Room of a stack after a piece.
    pub under: f64,
}

/// The strips of a sheet.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Tree {
    pub first: Direction,
    pub along: i64,
    pub deep: i64,
    pub used: i64,
    /// Whether the direction stays as it is while the sheet is empty.
    pub fixed: bool,
    pub strips: Vec<Band>,
}

impl Tree {
    pub fn new(task: &Task, first: Direction) -> Self {
        let (along, deep) = task.sides(first);
        Self {
            first,
            along,
            deep,
            used: 0,
            fixed: false,
            strips: Vec::new(),
        }
    }

    pub fn items(&self) -> impl Iterator<Item = &Item> {
        let stacks = self.strips.iter().flat_map(|s| &s.stacks);
        stacks.flat_map(|s| &s.items)
    }

    /// Area of all pieces.
    pub fn area(&self) -> i64 {
        self.items().map(|i| i.area()).sum()
    }

    /// The cheapest place for a piece of this kind, with its price. Counts the places looked at.
    pub fn best(
        &self,
        kind: &Kind,
        number: usize,
        taste: &Taste,
        steps: &mut u64,
    ) -> Option<(f64, Place)> {
        let mut best: Option<(f64, Place)> = None;
        let both = [self.first, self.first.other()];
        let open = self.strips.is_empty() && !self.fixed;
        for &first in &both[..1 + usize::from(open)] {
            for (along, deep) in kind.shapes(first) {
                let item = Item {
                    along,
                    deep,
                    kind: number,
                };
                self.look(first, item, taste, steps, |price, strip, stack| {
                    if best.is_none_or(|b| price < b.0) {
                        best = Some((
                            price,
                            Place {
                                first,
                                strip,
                                stack,
                                item,
                            },
                        ));
                    }
                });
            }
        }
        best
    }

    fn look(
        &self,
        first: Direction,
        item: Item,
        taste: &Taste,
        steps: &mut u64,
        mut offer: impl FnMut(f64, usize, usize),
    ) {
        let (along, deep) = if first == self.first {
            (self.along, self.deep)
        } else {
            (self.deep, self.along)
        };
        let free_deep = deep - self.used;
        for (i, strip) in self.strips.iter().enumerate() {
            let free = along - strip.used;
            if free_deep + strip.depth < item.deep {
                continue;
            }
            *steps += strip.stacks.len() as u64;
            for (j, stack) in strip.stacks.iter().enumerate() {
                let wider = (item.along - stack.width).max(0);
                let deeper = (stack.used + item.deep - strip.depth).max(0);
                if wider <= free && deeper <= free_deep {
                    let width = stack.width + wider;
                    let lost = (width - item.along) * item.deep + wider * stack.used;
                    let grown = deeper * (strip.used + wider - width);
                    let left = width * (strip.depth + deeper - stack.used - item.deep);
                    let price =
                        lost as f64 + taste.growth * grown as f64 + taste.under * left as f64;
                    offer(price, i, j);
                }
            }
            let deeper = (item.deep - strip.depth).max(0);
            if item.along <= free && deeper <= free_deep {
                let left = item.along * (strip.depth + deeper - item.deep);
                let grown = deeper * strip.used;
                let price = taste.below * left as f64 + taste.growth * grown as f64;
                offer(price, i, strip.stacks.len());
            }
        }
        *steps += 1;
        if item.along <= along && item.deep <= free_deep {
            let left = (along - item.along) * item.deep;
            offer(taste.beside * left as f64, self.strips.len(), 0);
        }
    }

    pub fn insert(&mut self, place: Place) {
        if self.strips.is_empty() && place.first != self.first {
            self.first = place.first;
            std::mem::swap(&mut self.along, &mut self.deep);
        }
        let item = place.item;
        if place.strip == self.strips.len() {
            self.used += item.deep;
            self.strips.push(Band::of(vec![Pile::of(vec![item])]));
            return;
        }
        let strip = &mut self.strips[place.strip];
        if place.stack == strip.stacks.len() {
            strip.used += item.along;
            strip.stacks.push(Pile::of(vec![item]));
        } else {
            let stack = &mut strip.stacks[place.stack];
            strip.used += (item.along - stack.width).max(0);
            stack.width = stack.width.max(item.along);
            stack.used += item.deep;
            stack.items.push(item);
        }
        let depth = strip.depth.max(strip.stacks[place.stack].used);
        self.used += depth - strip.depth;
        strip.depth = depth;
    }

    /// Takes out the pieces that do not stay and closes up what is left. `stays` is asked with the
    /// numbers of strip and stack.
    pub fn keep(&mut self, mut stays: impl FnMut(usize, usize, &Item) -> bool) {
        for (i, strip) in self.strips.iter_mut().enumerate() {
            for (j, stack) in strip.stacks.iter_mut().enumerate() {
                let before = stack.items.len();
                stack.items.retain(|item| stays(i, j, item));
                if stack.items.len() < before {
                    *stack = Pile::of(std::mem::take(&mut stack.items));
                }
            }
            strip.stacks.retain(|s| !s.items.is_empty());
            *strip = Band::of(std::mem::take(&mut strip.stacks));
        }
        self.strips.retain(|s| !s.stacks.is_empty());
        self.used = self.strips.iter().map(|s| s.depth).sum();
    }
}
