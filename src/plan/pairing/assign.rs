//! Places filled by people at least cost (the assignment problem), by the Hungarian method: H. W.
//! Kuhn, The Hungarian method for the assignment problem, Naval Research Logistics Quarterly 2,
//! 1955, 83-97, in the form that seats one place after the other by a shortest path with prices
//! (J. Edmonds, R. M. Karp, Journal of the ACM 19, 1972, 248-264). Whole numbers throughout, so it
//! is exact.
//!
//! Every place has, beside the people, an empty seat of its own that costs more than all people
//! together: so most places are filled, and among these ways the cheapest is found.

use std::collections::VecDeque;

/// The cost of what may not be.
const NEVER: i128 = i128::MAX;

/// Places seated, with the prices that prove that it cannot be cheaper.
pub(super) struct Seating {
    /// How many people there are; columns from here on are the empty seats of the places.
    people: usize,
    /// People and empty seats.
    width: usize,
    /// By place and column; where a place sits it is the sum of the two prices.
    costs: Vec<i128>,
    place_price: Vec<i128>,
    /// Never above zero, and zero where nobody sits.
    seat_price: Vec<i128>,
    /// The column of each place.
    seat: Vec<usize>,
    /// The place in each column.
    holder: Vec<Option<usize>>,
}

/// Which person each place gets so that most places are filled, and these at least cost; of several
/// such ways the one in which the first place has the lowest number, then the second, and so on.
/// `costs[place][person]`; nothing where the person may not be.
pub fn cheapest(costs: &[Vec<Option<i64>>]) -> Vec<Option<usize>> {
    let wide = |row: &Vec<Option<i64>>| row.iter().map(|c| c.map(i128::from)).collect();
    let costs: Vec<Vec<Option<i128>>> = costs.iter().map(wide).collect();
    let mut seating = Seating::new(&costs);
    seating.lower();
    (0..costs.len())
        .map(|place| seating.person(place))
        .collect()
}

impl Seating {
    /// Seats all places.
    pub(super) fn new(costs: &[Vec<Option<i128>>]) -> Self {
        let places = costs.len();
        let people = costs.iter().map(Vec::len).max().unwrap_or(0);
        let width = people + places;
        let known = || costs.iter().flatten().flatten().copied();
        let (least, most) = (known().min().unwrap_or(0), known().max().unwrap_or(0));
        let empty = (most - least) * places as i128 + 1;
        let mut flat = vec![NEVER; places * width];
        for (place, row) in costs.iter().enumerate() {
            for (person, cost) in row.iter().enumerate() {
                flat[place * width + person] = cost.map_or(NEVER, |c| c - least);
            }
            flat[place * width + people + place] = empty;
        }
        let mut seating = Self {
            people,
            width,
            costs: flat,
            place_price: vec![0; places],
            seat_price: vec![0; width],
            seat: vec![usize::MAX; places],
            holder: vec![None; width],
        };
        for place in 0..places {
            seating.seat_next(place);
        }
        seating
    }

    /// The person in a place.
    pub(super) fn person(&self, place: usize) -> Option<usize> {
        Some(self.seat[place]).filter(|&seat| seat < self.people)
    }

    /// Whether all places have a person.
    pub(super) fn is_full(&self) -> bool {
        self.seat.iter().all(|&seat| seat < self.people)
    }

    /// What a place in a column costs above both prices; never below zero.
    fn above(&self, place: usize, column: usize) -> i128 {
        match self.costs[place * self.width + column] {
            NEVER => NEVER,
            cost => cost - self.place_price[place] - self.seat_price[column],
        }
    }

    fn is_tight(&self, place: usize, column: usize) -> bool {
        self.above(place, column) == 0
    }

    /// Seats one more place: the shortest path to a column where nobody sits, prices following.
    fn seat_next(&mut self, first: usize) {
        let mut least = vec![NEVER; self.width];
        let mut from = vec![None; self.width];
        let mut done = vec![false; self.width];
        let (mut place, mut via) = (first, None);
        loop {
            // The own empty seat is always open to the first place, so something is found.
            let (mut step, mut column) = (NEVER, 0);
            for c in (0..self.width).filter(|&c| !done[c]) {
                let cost = self.above(place, c);
                if cost < least[c] {
                    (least[c], from[c]) = (cost, via);
                }
                if least[c] < step {
                    (step, column) = (least[c], c);
                }
            }
            if step > 0 {
                self.raise(first, &done, step);
                for l in least.iter_mut().filter(|l| **l != NEVER) {
                    *l -= step;
                }
            }
            done[column] = true;
            via = Some(column);
            match self.holder[column] {
                Some(next) => place = next,
                None => break,
            }
        }
        while let Some(column) = via {
            via = from[column];
            let place = via.map_or(Some(first), |c| self.holder[c]);
            self.sit(place, column);
        }
    }

    fn raise(&mut self, first: usize, reached: &[bool], step: i128) {
        self.place_price[first] += step;
        for column in (0..self.width).filter(|&c| reached[c]) {
            self.seat_price[column] -= step;
            if let Some(place) = self.holder[column] {
                self.place_price[place] += step;
            }
        }
    }

    fn sit(&mut self, place: Option<usize>, column: usize) {
        self.holder[column] = place;
        if let Some(place) = place {
            self.seat[place] = column;
        }
    }

    /// Goes over to the way with the lowest numbers among those of the same cost.
    pub(super) fn lower(&mut self) {
        for place in 0..self.seat.len() {
            for column in 0..self.seat[place] {
                if let Some(way) = self.exchange(place, column, place) {
                    self.go(place, &way);
                    break;
                }
            }
        }
    }

    /// Whether a person is in a place in some cheapest way.
    pub(super) fn may(&self, place: usize, person: usize) -> bool {
        self.seat[place] == person || self.exchange(place, person, 0).is_some()
    }

    /// The columns along which places move on when a place takes a column and leaves its own: from
    /// that column to its own, at no cost. Places below `fixed` stay. Every cheapest way uses tight
    /// columns only and leaves none empty that has a price, so all of them are reached like this.
    fn exchange(&self, place: usize, column: usize, fixed: usize) -> Option<Vec<usize>> {
        if !self.is_tight(place, column) {
            return None;
        }
        let goal = self.seat[place];
        let mut from = vec![None; self.width];
        let mut queue = VecDeque::from([column]);
        while let Some(at) = queue.pop_front() {
            for to in (0..self.width).filter(|&to| to != column) {
                let may = match self.holder[at] {
                    Some(other) => other >= fixed && self.is_tight(other, to),
                    None => self.seat_price[to] == 0,
                };
                if !may || from[to].is_some() {
                    continue;
                }
                from[to] = Some(at);
                if to == goal {
                    let back = std::iter::successors(Some(goal), |&c| from[c]);
                    return Some(back.collect());
                }
                queue.push_back(to);
            }
        }
        None
    }

    /// Moves places along a way from `exchange`: it begins with the column that is left.
    fn go(&mut self, place: usize, way: &[usize]) {
        for step in way.windows(2) {
            self.sit(self.holder[step[1]], step[0]);
        }
        if let Some(&column) = way.last() {
            self.sit(Some(place), column);
        }
    }

    /// All cheapest ways, as columns of the places, when they are at most `most` and found in as
    /// many steps times the places. `alike[place]`: it belongs with the place before, so the two
    /// are kept in order and a set counts once.
    pub(super) fn all(&self, alike: &[bool], most: usize) -> Option<Vec<Vec<Option<usize>>>> {
        let mut search = Search {
            seating: self,
            alike,
            taken: vec![false; self.width],
            chosen: Vec::new(),
            found: Vec::new(),
            steps: most * (self.seat.len() + 1),
            most,
        };
        search.place().then_some(search.found)
    }
}

/// A search for all cheapest ways.
struct Search<'a> {
    seating: &'a Seating,
    alike: &'a [bool],
    taken: Vec<bool>,
    chosen: Vec<usize>,
    found: Vec<Vec<Option<usize>>>,
    steps: usize,
    most: usize,
}

impl Search<'_> {
    /// Seats the next place in every way; false when it becomes too much.
    fn place(&mut self) -> bool {
        let place = self.chosen.len();
        if self.steps == 0 || self.found.len() > self.most {
            return false;
        }
        self.steps -= 1;
        if place == self.alike.len() {
            let priced = self.seating.seat_price.iter().zip(&self.taken);
            if priced
                .into_iter()
                .all(|(price, taken)| *price == 0 || *taken)
            {
                let person = |&c: &usize| Some(c).filter(|&c| c < self.seating.people);
                self.found.push(self.chosen.iter().map(person).collect());
            }
            return self.found.len() <= self.most;
        }
        let first = match (self.alike[place], self.chosen.last()) {
            (true, Some(&before)) => before + 1,
            _ => 0,
        };
        for column in first..self.seating.width {
            if self.taken[column] || !self.seating.is_tight(place, column) {
                continue;
            }
            self.taken[column] = true;
            self.chosen.push(column);
            let fine = self.place();
            self.chosen.pop();
            self.taken[column] = false;
            if !fine {
                return false;
            }
        }
        true
    }
}
