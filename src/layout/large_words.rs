//! The words of a large-print board: a label or a sentence for each step, at one size for the whole
//! board, with the real thing and "first" or "then" where a step has them.

use super::desk::{Desk, Person};
use super::fit::{Labels, fit};
use super::words::Words;
use super::{forms, strips};
use crate::model::board::{Step, StepState};
use crate::model::manner::Form;
use crate::page::Item;
use crate::text::{Direction, Room, Style};
use crate::units::colour::Rgb;
use crate::units::{Length, Point};

/// Smallest letters of large print: the American Printing House for the Blind calls nothing below
/// 18 points large print, and the UK Association for Accessible Formats asks for 18 ideally.
pub(super) const SMALLEST_PT: f64 = 18.0;
/// Largest letters that can be asked for.
const LARGEST_PT: f64 = 160.0;
/// Lines of one label.
const LINES: usize = 3;
/// Lines of one sentence, and its largest letters in points.
const SENTENCE_LINES: usize = 6;
const MOST_SENTENCE_PT: f64 = 30.0;
/// Distance of baselines; clear-print guidance of CNIB asks for 1.25 to 1.3 at least.
const LEADING: f64 = 1.3;
/// Letters a tenth smaller are read from nearly as far.
const NEARLY: f64 = 0.9;
/// Between a label and the words above and below it.
const BETWEEN: Length = Length::um(1_500);

/// Where words may stand.
#[derive(Clone, Copy, Debug)]
pub(super) struct Places {
    /// Width of words with a picture.
    pub narrow: Length,
    /// Width and height of words without one.
    pub whole: Length,
    pub whole_height: Length,
    /// Height of a label with a picture.
    pub height: Length,
    /// The largest letters, if not those the participant has.
    pub most: Option<Length>,
}

/// All words of a board.
#[derive(Clone, Debug)]
pub(super) struct Said {
    /// The words of each step: its label or a sentence.
    pub said: Vec<String>,
    pub labels: Labels,
    /// Words that name the real thing, for steps that have one.
    things: Vec<Words>,
    /// "First" and "Then", on boards of two.
    orders: Vec<Words>,
}

impl Said {
    pub fn of(desk: &Desk<'_>, person: &Person<'_>, places: &Places) -> Self {
        let steps = &person.board.steps;
        let said: Vec<String> = steps
            .iter()
            .map(|s| forms::words_of(desk, person, s))
            .collect();
        Self {
            labels: labels(person, &said, places),
            things: steps.iter().map(|s| thing(s, places.narrow)).collect(),
            orders: order_words(desk, person),
            said,
        }
    }

    /// Height of all words of a step.
    pub fn height(&self, step: usize) -> Length {
        self.above(step) + self.labels.words[step].height() + self.below(step)
    }

    /// Height of the words besides the label, for the step that has most of them.
    pub fn besides(&self) -> Length {
        let all = (0..self.said.len()).map(|i| self.above(i) + self.below(i));
        all.max().unwrap_or(Length::ZERO)
    }

    /// Whether the words are as large as others, or nearly, and no more of them are cut off.
    pub fn as_large_as(&self, other: &Self) -> bool {
        self.labels.size >= other.labels.size.scale(NEARLY)
            && self.labels.overfull.len() <= other.labels.overfull.len()
    }

    fn above(&self, step: usize) -> Length {
        room_of(&self.orders[step])
    }

    fn below(&self, step: usize) -> Length {
        room_of(&self.things[step])
    }

    /// The words of a step below a point, set by `set`.
    pub fn put(
        &self,
        step: usize,
        top: Point,
        (ink, soft): (Rgb, Rgb),
        set: impl Fn(&Words, Point, Rgb) -> Vec<Item>,
    ) -> Vec<Item> {
        let label = top.moved(Length::ZERO, self.above(step));
        let words = &self.labels.words[step];
        let thing = label.moved(Length::ZERO, words.height() + BETWEEN);
        let mut items = set(&self.orders[step], top, soft);
        items.extend(set(words, label, ink));
        items.extend(set(&self.things[step], thing, soft));
        items
    }
}

fn room_of(words: &Words) -> Length {
    if words.is_empty() {
        Length::ZERO
    } else {
        words.height() + BETWEEN
    }
}

/// Whether a square stands with the words: a picture, a frame, a place, or "not today".
pub(super) fn has_plate(step: &Step) -> bool {
    step.state == StepState::NotToday || forms::has_picture(step.form)
}

/// Labels at one size, words alone with more room at the same, sentences at a size of their own.
fn labels(person: &Person<'_>, said: &[String], places: &Places) -> Labels {
    let steps = &person.board.steps;
    let own = f64::from(person.who.text_pt).clamp(SMALLEST_PT, LARGEST_PT);
    let wanted = places.most.map_or(own, |most| most.to_pt().min(own));
    let wanted = wanted.max(SMALLEST_PT);
    let room = Room {
        width: places.narrow,
        height: places.height,
        max_lines: LINES,
        sizes: Length::pt(SMALLEST_PT)..=Length::pt(wanted),
        bold: true,
        direction: Direction::Auto,
    };
    // What is not today has its label beside the face-down tile.
    let is_sentence = |i: &usize| steps[*i].form == Form::Sentence && !has_plate(&steps[*i]);
    let (sentences, labels): (Vec<usize>, Vec<usize>) = (0..steps.len()).partition(is_sentence);
    let texts = |which: &[usize]| which.iter().map(|&i| said[i].as_str()).collect::<Vec<_>>();
    let short = fit(&texts(&labels), &room, LEADING);
    let whole = Room {
        width: places.whole,
        height: places.whole_height,
        max_lines: SENTENCE_LINES,
        sizes: Length::pt(SMALLEST_PT)..=Length::pt(wanted.min(MOST_SENTENCE_PT)),
        bold: false,
        ..room
    };
    let long = fit(&texts(&sentences), &whole, LEADING);
    let mut all = Labels {
        size: if labels.is_empty() {
            long.size
        } else {
            short.size
        },
        words: vec![Words::default(); steps.len()],
        overfull: Vec::new(),
    };
    for (which, fitted) in [(labels, short), (sentences, long)] {
        all.overfull
            .extend(fitted.overfull.iter().map(|&k| which[k]));
        for (at, words) in which.into_iter().zip(fitted.words) {
            all.words[at] = words;
        }
    }
    all.overfull.sort_unstable();
    all
}

/// "object: the blue cup".
fn thing(step: &Step, width: Length) -> Words {
    if step.form != Form::Object || step.state == StepState::NotToday {
        return Words::default();
    }
    let style = Style::regular(Length::pt(SMALLEST_PT));
    Words::wrapped(&forms::object_words(&step.thing), &style, width, LEADING, 2)
}

/// "First" and "Then" of each step, in the smallest letters of large print.
fn order_words(desk: &Desk<'_>, person: &Person<'_>) -> Vec<Words> {
    let style = Style::bold(Length::pt(SMALLEST_PT));
    let mut all = vec![Words::default(); person.board.steps.len()];
    for strip in strips::of(desk, person).unwrap_or_default() {
        for i in strip.steps.clone() {
            if let Some(word) = strips::order_word(person, &strip, i) {
                all[i] = Words::line(word, &style, Length::mm(60.0));
            }
        }
    }
    all
}
