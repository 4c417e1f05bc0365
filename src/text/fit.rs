//! One letter size for a whole set of labels: the largest at which every one of them fits.

use std::ops::RangeInclusive;
use std::sync::Arc;

use super::bidi::Direction;
use super::fonts;
use super::lines::{Style, limit, wrap_evenly};
use super::metrics::letter_reach;
use super::paragraph::{Measured, measured};
use super::run::Line;
use crate::units::Length;

/// Distance of baselines in letter sizes: at least a quarter more than the letter size, as the
/// Clear Print Accessibility Guidelines of CNIB ask.
const LEADING: f64 = 1.25;
/// Sizes are tried in steps of half a point.
const STEPS_PER_PT: f64 = 2.0;

/// The place that each label of a set has.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Room {
    /// No line is wider.
    pub width: Length,
    /// No label is higher, from the highest ink of its first line to the lowest of its last.
    pub height: Length,
    /// No label takes more lines.
    pub max_lines: usize,
    /// Smallest and largest letter size.
    pub sizes: RangeInclusive<Length>,
    /// In the bold face.
    pub bold: bool,
    /// Which way the labels run.
    pub direction: Direction,
}

/// A set of labels at one size.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Fit {
    /// The letter size of all labels.
    pub size: Length,
    /// From the top of a label to its first baseline, the same for all labels.
    pub above: Length,
    /// From the last baseline of a label to its bottom, the same for all labels.
    pub below: Length,
    /// From baseline to baseline.
    pub leading: Length,
    /// The lines of each label.
    pub labels: Vec<Vec<Line>>,
    /// Labels that do not fit even at the smallest size. Their lines are there all the same, too
    /// many, too wide or with a split word.
    pub overfull: Vec<usize>,
    /// Characters of all labels that no bundled font has.
    pub missing: Vec<char>,
}

impl Fit {
    /// Height of a label of so many lines.
    pub fn height(&self, lines: usize) -> Length {
        match i64::try_from(lines) {
            Ok(n) if n > 0 => self.above + self.leading * (n - 1) + self.below,
            _ => Length::ZERO,
        }
    }
}

/// The largest size, in steps of half a point, at which all labels fit without splitting a word.
/// If a label does not fit at the smallest size, that is the size, and the label is named.
pub fn fit_set(labels: &[&str], room: &Room) -> Fit {
    let set = Set::new(labels, room);
    let sizes = sizes(&room.sizes);
    // Sizes grow, and what fits at one fits at all below it.
    let mut at = sizes.partition_point(|s| set.all_fit(*s)).saturating_sub(1);
    loop {
        let size = sizes.get(at).copied().unwrap_or(*room.sizes.start());
        let fit = set.at(size);
        // Shaped lines can be a hair wider than measured ones.
        if fit.overfull.is_empty() || at == 0 {
            return fit;
        }
        at -= 1;
    }
}

/// All sizes to try, growing: the smallest, then each half point up to the largest.
fn sizes(range: &RangeInclusive<Length>) -> Vec<Length> {
    let steps = |l: Length| l.to_pt() * STEPS_PER_PT;
    // A length is a whole number of micrometres, so a half point can lie just beside its step.
    let first = (steps(*range.start()) + 0.01).floor() as i64 + 1;
    let last = (steps(*range.end()) + 0.01).floor() as i64;
    let further = (first..=last).map(|s| Length::pt(s as f64 / STEPS_PER_PT));
    std::iter::once(*range.start()).chain(further).collect()
}

/// A set of labels, measured.
struct Set<'a> {
    labels: &'a [&'a str],
    measured: Vec<Arc<Measured>>,
    room: &'a Room,
    /// Reach of ink above and below baselines, and baseline distance, in ems.
    above: f64,
    below: f64,
    leading: f64,
}

impl<'a> Set<'a> {
    fn new(labels: &'a [&'a str], room: &'a Room) -> Self {
        let measure = |l: &&str| measured(l, room.bold, room.direction);
        let measured: Vec<_> = labels.iter().map(measure).collect();
        let (mut above, mut below) = letter_reach(fonts::main(room.bold));
        for (top, bottom) in measured.iter().filter_map(|m| m.ink) {
            above = above.max(top);
            below = below.max(-bottom);
        }
        Self {
            labels,
            measured,
            room,
            above,
            below,
            leading: LEADING.max(above + below),
        }
    }

    fn all_fit(&self, size: Length) -> bool {
        let limit = limit(self.room.width, size);
        let fit = self.empty(size);
        self.measured.iter().all(|m| {
            let lines = m.paragraphs.iter().map(|p| p.lines_at(limit));
            let lines = lines.sum::<Option<usize>>();
            lines.is_some_and(|n| n <= self.room.max_lines && fit.height(n) <= self.room.height)
        })
    }

    /// A set at a size, without its lines.
    fn empty(&self, size: Length) -> Fit {
        Fit {
            size,
            above: size.scale(self.above),
            below: size.scale(self.below),
            leading: size.scale(self.leading),
            labels: Vec::new(),
            overfull: Vec::new(),
            missing: Vec::new(),
        }
    }

    fn at(&self, size: Length) -> Fit {
        let style = Style {
            bold: self.room.bold,
            size,
            direction: self.room.direction,
        };
        let mut fit = self.empty(size);
        for (i, label) in self.labels.iter().enumerate() {
            let wrapped = wrap_evenly(label, &style, self.room.width);
            let n = wrapped.lines.len();
            let fits = !wrapped.split_word
                && n <= self.room.max_lines
                && fit.height(n) <= self.room.height
                && wrapped.lines.iter().all(|l| l.width <= self.room.width);
            if !fits {
                fit.overfull.push(i);
            }
            for c in wrapped.missing {
                if !fit.missing.contains(&c) {
                    fit.missing.push(c);
                }
            }
            fit.labels.push(wrapped.lines);
        }
        fit
    }
}
