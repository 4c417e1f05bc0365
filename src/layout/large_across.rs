//! A large-print board that runs from left to right or from right to left: lines of steps along a
//! rope, each with its number and ring on the rope, the picture below and the words below that.

use std::cmp::Reverse;
use std::ops::Range;

use super::desk::{Desk, Person};
use super::large_frames::Sizes;
use super::large_words::{Places, Said, has_plate};
use super::strand;
use super::strips::Part;
use crate::model::manner::Run;
use crate::units::{Length, Rect};

/// From the top of a line to the rope, below the names of parts of the day or without them, and
/// from the rope to what is seen.
const ROPE_Y: Length = Length::um(14_000);
const UNNAMED_Y: Length = Length::um(6_500);
pub(super) const SEEN_Y: Length = Length::um(8_500);
/// White at the foot of a frame.
const FOOT: Length = Length::um(1_000);
/// Between picture and words.
pub(super) const WORDS_GAP: Length = Length::um(2_500);
/// Below a line, for the run of the rope back to the next.
pub(super) const RETURN: Length = Length::um(8_000);
/// White between two steps of a line.
const GAP: Length = Length::um(5_000);
/// Smallest pictures.
const SMALLEST: Length = Length::um(24_000);
/// Most steps in a line, and how many are wanted at least where the board has them.
const MOST: usize = 6;
const WANTED: usize = 3;
/// Letters may be smaller by so much where that saves lines: a line of two is hardly a line.
const LETTERS: f64 = 0.85;
/// Most white that is added to each line to fill a page.
const MOST_EXTRA: Length = Length::um(10_000);

/// Lines of steps.
pub(super) struct Across {
    pub said: Said,
    /// Side of the pictures.
    pub side: Length,
    pub run: Run,
    columns: usize,
    /// Most lines of a page.
    lines: usize,
    /// From the top of a line to the rope.
    pub rope: Length,
    /// Whether the names of parts of the day stand above the rope.
    pub named: bool,
    /// Room below the rope of a line, and how much of it is taken.
    body: Length,
    used: Length,
}

impl Across {
    /// As many steps in a line as the letters allow, then the fewest pages, then the largest
    /// pictures; as large as is asked. None where no line fits. In a frame, where the size of the
    /// pictures is asked for, a part that is too high for it is passed over.
    pub fn best(
        desk: &Desk<'_>,
        person: &Person<'_>,
        parts: &[Part],
        room: Rect,
        sizes: Sizes,
    ) -> Option<Self> {
        let longest = parts.iter().map(|p| p.steps.len()).max()?;
        let ways: Vec<Self> = (1..=longest.min(MOST))
            .flat_map(|columns| Self::with(desk, person, (parts, room), columns, sizes))
            .collect();
        let at_once = person.who.manner.reach.steps().unwrap_or(WANTED);
        let wanted = longest.min(WANTED).min(at_once);
        let over = |way: &Self| way.said.labels.overfull.len();
        let clear = ways.iter().map(over).min()?;
        let good = |way: &&Self| over(way) == clear && way.columns >= wanted;
        let letters = |way: &Self| way.said.labels.size;
        let best = ways.iter().filter(good).map(letters).max();
        let large = best.unwrap_or(Length::ZERO).scale(LETTERS);
        let rank = |way: &Self| {
            let pages: usize = parts.iter().map(|p| way.pages(&p.steps).len()).sum();
            let short = wanted.saturating_sub(way.columns);
            let small = letters(way) < large;
            (over(way), short, small, pages, Reverse(way.side))
        };
        ways.into_iter().min_by_key(rank)
    }

    /// The ways to have so many steps in a line: for each number of lines on a page one.
    fn with(
        desk: &Desk<'_>,
        person: &Person<'_>,
        (parts, room): (&[Part], Rect),
        columns: usize,
        sizes: Sizes,
    ) -> Vec<Self> {
        let framed = sizes.picture.is_some();
        let (rope, foot) = match framed {
            true => (UNNAMED_Y, FOOT),
            false => (ROPE_Y, RETURN),
        };
        let least = sizes.picture.unwrap_or(SMALLEST);
        let width = (room.w - strand::TURN * 2) / columns as i64 - GAP;
        let free = room.h - rope - SEEN_Y - foot;
        let places = |height: Length| Places {
            narrow: width,
            whole: width,
            whole_height: free,
            height,
            most: sizes.letters,
        };
        if width < least || free < least {
            return Vec::new();
        }
        let mut said = Said::of(desk, person, &places(free));
        if !framed {
            let height = free - least - WORDS_GAP - said.besides();
            said = Said::of(desk, person, &places(height));
        }
        let way = |lines: usize| {
            let body = (room.h - foot + RETURN) / lines as i64 - RETURN - SEEN_Y - rope;
            let mut way = Self {
                said: said.clone(),
                side: least,
                run: person.who.manner.run,
                columns,
                lines,
                rope,
                named: !framed,
                body,
                used: body,
            };
            let steps = |p: &&Part| way.holds(person, &p.steps) || !framed;
            let here: Vec<usize> = parts
                .iter()
                .filter(steps)
                .flat_map(|p| p.steps.clone())
                .collect();
            way.grow(person, &here, width).then_some(way)
        };
        let most = person.board.steps.len().div_ceil(columns);
        (1..=most).map_while(way).collect()
    }

    /// Makes the pictures as large as the words of some steps leave room for; whether they fit.
    fn grow(&mut self, person: &Person<'_>, steps: &[usize], width: Length) -> bool {
        let has = |i: &&usize| has_plate(&person.board.steps[**i]);
        let words = steps.iter().filter(has).map(|&i| self.said.height(i)).max();
        let least = self.side;
        if let Some(words) = words {
            self.side = (self.body - WORDS_GAP - words).min(width);
        }
        let used = steps.iter().map(|&i| self.height(person, i)).max();
        self.used = used.unwrap_or(Length::ZERO);
        !steps.is_empty() && self.side >= least && self.used <= self.body
    }

    /// What a step takes below the rope.
    fn height(&self, person: &Person<'_>, step: usize) -> Length {
        let words = self.said.height(step);
        match has_plate(&person.board.steps[step]) {
            true => self.side + WORDS_GAP + words,
            false => words,
        }
    }

    /// Height of a line, with the run back.
    pub fn pitch(&self) -> Length {
        self.rope + SEEN_Y + self.used + RETURN
    }

    /// Whether some steps fit one page.
    pub fn holds(&self, person: &Person<'_>, steps: &Range<usize>) -> bool {
        steps.len().div_ceil(self.columns) <= self.lines
            && steps.clone().all(|i| self.height(person, i) <= self.body)
    }

    /// Page by page, what stands in each line; lines as even as can be.
    pub fn pages(&self, steps: &Range<usize>) -> Vec<Vec<Range<usize>>> {
        let n = steps.len();
        let lines = n.div_ceil(self.columns);
        let begins = |line: usize| steps.start + (n * line).div_ceil(lines);
        let all: Vec<_> = (0..lines).map(|l| begins(l)..begins(l + 1)).collect();
        all.chunks(self.lines.max(1)).map(<[_]>::to_vec).collect()
    }

    /// White to add to each line of a page.
    pub fn spare(&self, room: Rect, lines: usize) -> Length {
        let lines = lines.max(1) as i64;
        ((room.h - self.pitch() * lines) / lines).clamp(Length::ZERO, MOST_EXTRA)
    }
}
