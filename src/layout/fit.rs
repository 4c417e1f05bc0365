//! Labels of a set at one size: the largest at which all fit, never under the smallest. One that
//! does not fit even then does not make the others smaller; it is cut off and reported.

use super::desk::{Desk, Person, quoted};
use super::words::Words;
use crate::model::finding::{Severity, Spot};
use crate::text::{Fit, Room, Style, fit_set, missing};
use crate::units::Length;

/// No place on any sheet holds a label of more characters; trying would only cost time.
const LONGEST: usize = 600;

/// Labels ready to be placed, in the order they were given.
#[derive(Clone, Debug)]
pub(super) struct Labels {
    /// The letter size of all that fit.
    pub size: Length,
    pub words: Vec<Words>,
    /// Which do not fit.
    pub overfull: Vec<usize>,
}

impl Labels {
    /// Height of the highest.
    pub fn height(&self) -> Length {
        let heights = self.words.iter().map(Words::height);
        heights.max().unwrap_or(Length::ZERO)
    }
}

/// Fits a set of labels to a room. Baselines are at least `leading` letter sizes apart.
pub(super) fn fit(labels: &[&str], room: &Room, leading: f64) -> Labels {
    let too_long = |l: &str| l.chars().nth(LONGEST).is_some();
    let mut overfull: Vec<usize> = (0..labels.len()).filter(|&i| too_long(labels[i])).collect();
    let mut fitted = fit_others(labels, &overfull, room);
    while !fitted.overfull.is_empty() {
        let tried: Vec<usize> = others(labels, &overfull).map(|(i, _)| i).collect();
        overfull.extend(fitted.overfull.iter().map(|&i| tried[i]));
        fitted = fit_others(labels, &overfull, room);
    }
    let mut lines = fitted.labels.iter();
    let style = Style {
        bold: room.bold,
        size: *room.sizes.start(),
        direction: room.direction,
    };
    let words = labels.iter().enumerate().map(|(i, label)| {
        if overfull.contains(&i) {
            let most = lines_that_fit(room, &style, leading);
            return Words::wrapped(label, &style, room.width, leading, most);
        }
        let lines = lines.next().map(Vec::as_slice).unwrap_or_default();
        let apart = fitted.leading.max(fitted.size.scale(leading));
        Words::fitted(lines, fitted.above, fitted.below, apart)
    });
    let words = words.collect();
    overfull.sort_unstable();
    Labels {
        size: fitted.size,
        words,
        overfull,
    }
}

/// The labels that are not left out, with their places.
fn others<'a>(labels: &'a [&'a str], out: &'a [usize]) -> impl Iterator<Item = (usize, &'a str)> {
    let all = labels.iter().copied().enumerate();
    all.filter(|(i, _)| !out.contains(i))
}

fn fit_others(labels: &[&str], out: &[usize], room: &Room) -> Fit {
    let rest: Vec<&str> = others(labels, out).map(|(_, l)| l).collect();
    fit_set(&rest, room)
}

fn lines_that_fit(room: &Room, style: &Style, leading: f64) -> usize {
    let lines = room.height.times(style.size.scale(leading));
    usize::try_from(lines)
        .unwrap_or(1)
        .clamp(1, room.max_lines.max(1))
}

/// Reports labels that do not fit and signs that cannot be printed; each label with where it is.
pub(super) fn report(
    desk: &mut Desk<'_>,
    person: &Person<'_>,
    labels: &[(&str, Spot)],
    overfull: &[usize],
    sheet: &str,
    hint: &str,
) {
    for (label, spot) in overfull.iter().filter_map(|&i| labels.get(i)) {
        let smallest = "even in the smallest letters allowed";
        let label = quoted(label);
        let mark = &person.mark_words;
        let sentence = format!("{label} does not fit on the {sheet} of {mark}, {smallest}.");
        desk.note(Severity::Look, "print.label", *spot, sentence, hint);
    }
    for (label, spot) in labels {
        desk.note_missing(*spot, &missing(label));
    }
}
