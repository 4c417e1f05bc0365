//! Words set and ready to be put on a page: shaped, wrapped, cut where they do not fit.

use std::sync::Arc;

use crate::page::Item;
use crate::text::run::Line;
use crate::text::{self, Style};
use crate::units::colour::Rgb;
use crate::units::{Length, Point};

/// Distance of baselines in letter sizes for headings and single lines.
pub const TIGHT: f64 = 1.2;
/// The same for text that is read: clear-print guidance asks for a quarter more at least.
pub const CLEAR: f64 = 1.35;
/// The same for the sentences of a story: WCAG 2.2 (1.4.8) and the American Council of the Blind
/// ask for one and a half.
pub const OPEN: f64 = 1.5;
/// Stands for what was cut off.
const ELLIPSIS: char = '…';

/// Lines of words, ready to be placed.
#[derive(Clone, Debug, Default)]
pub struct Words {
    lines: Vec<Arc<Line>>,
    above: Length,
    below: Length,
    leading: Length,
    /// Whether something was cut off or a word split.
    pub cut: bool,
}

impl Words {
    /// One line, cut off at a width.
    pub fn line(words: &str, style: &Style, width: Length) -> Self {
        Self::wrapped(words, style, width, TIGHT, 1)
    }

    /// As many lines as a width asks for, but no more than `max_lines`; what is left over is cut
    /// off and shown by dots.
    pub fn wrapped(
        words: &str,
        style: &Style,
        width: Length,
        leading: f64,
        max_lines: usize,
    ) -> Self {
        let (words, shortened) = shortened(words, style, width, max_lines);
        let wrapped = text::wrap(words, style, width);
        let (mut lines, mut cut) = (wrapped.lines, wrapped.split_word || shortened);
        if lines.len() > max_lines {
            lines.truncate(max_lines);
            if let Some(last) = lines.last_mut() {
                *last = with_dots(&last.text, style, width);
            }
            cut = true;
        }
        let m = text::metrics(style);
        // Room for letters with marks above and for descenders, within the leading.
        let above = m.cap_height.max(style.size.scale(0.78));
        let below = style.size.scale(0.26);
        Self {
            lines: lines.into_iter().map(Arc::new).collect(),
            above,
            below,
            leading: style.size.scale(leading),
            cut,
        }
    }

    /// From lines that were fitted as a set.
    pub fn fitted(lines: &[Line], above: Length, below: Length, leading: Length) -> Self {
        Self {
            lines: lines.iter().cloned().map(Arc::new).collect(),
            above,
            below,
            leading,
            cut: false,
        }
    }

    /// Whether there are no words.
    pub fn is_empty(&self) -> bool {
        self.lines.is_empty()
    }

    /// The lines that fit a height, at least one of them, and the rest.
    pub fn split_at_height(self, room: Length) -> (Self, Self) {
        let mut fit = 1;
        while fit < self.lines.len() && self.height_of(fit + 1) <= room {
            fit += 1;
        }
        let fit = fit.min(self.lines.len());
        self.split_at(fit)
    }

    fn split_at(mut self, lines: usize) -> (Self, Self) {
        let rest = Self {
            lines: self.lines.split_off(lines),
            ..self
        };
        (self, rest)
    }

    fn height_of(&self, lines: usize) -> Length {
        match lines as i64 {
            0 => Length::ZERO,
            n => self.above + self.leading * (n - 1) + self.below,
        }
    }

    /// From the top of the first line to the bottom of the last.
    pub fn height(&self) -> Length {
        self.height_of(self.lines.len())
    }

    /// Width of the widest line.
    pub fn width(&self) -> Length {
        let widths = self.lines.iter().map(|l| l.width);
        widths.max().unwrap_or(Length::ZERO)
    }

    /// Whether the words run from right to left.
    pub fn runs_left(&self) -> bool {
        self.lines.first().is_some_and(|l| text::runs_left(&l.text))
    }

    /// Flush left, the top at `at`.
    pub fn left(&self, at: Point, colour: Rgb) -> Vec<Item> {
        self.place(at.y, colour, |_| at.x)
    }

    /// Flush right, the top right corner at `at`.
    pub fn right(&self, at: Point, colour: Rgb) -> Vec<Item> {
        self.place(at.y, colour, |width| at.x - width)
    }

    /// Centred, the middle of the top at `at`.
    pub fn centred(&self, at: Point, colour: Rgb) -> Vec<Item> {
        self.place(at.y, colour, |width| at.x - width / 2)
    }

    /// Flush left, with its middle at the height of `at`.
    pub fn left_of_middle(&self, at: Point, colour: Rgb) -> Vec<Item> {
        self.left(Point::new(at.x, at.y - self.height() / 2), colour)
    }

    /// Centred both ways.
    pub fn amid(&self, at: Point, colour: Rgb) -> Vec<Item> {
        self.centred(Point::new(at.x, at.y - self.height() / 2), colour)
    }

    fn place(&self, top: Length, colour: Rgb, x: impl Fn(Length) -> Length) -> Vec<Item> {
        let mut baseline = top + self.above;
        let mut items = Vec::with_capacity(self.lines.len());
        for line in &self.lines {
            if line.runs.is_empty() {
                baseline += self.leading;
                continue;
            }
            items.push(Item::Text {
                at: Point::new(x(line.width), baseline),
                line: Arc::clone(line),
                colour,
            });
            baseline += self.leading;
        }
        items
    }
}

/// As much of very long words as can possibly be seen, so that no time is spent on the rest.
fn shortened<'a>(
    words: &'a str,
    style: &Style,
    width: Length,
    max_lines: usize,
) -> (&'a str, bool) {
    /// Narrower than any letter, in letter sizes.
    const NARROWEST: f64 = 0.12;
    let per_line = width.times(style.size.scale(NARROWEST).max(Length::um(1)));
    let most = usize::try_from(per_line)
        .unwrap_or(0)
        .saturating_add(8)
        .saturating_mul(max_lines.saturating_add(1));
    match words.char_indices().nth(most) {
        Some((end, _)) => (&words[..end], true),
        None => (words, false),
    }
}

/// The words with dots after them, shortened until they fit.
fn with_dots(words: &str, style: &Style, width: Length) -> Line {
    let mut kept = words.trim_end().to_owned();
    loop {
        let line = text::line(&format!("{kept}{ELLIPSIS}"), style);
        if line.width <= width || kept.pop().is_none() {
            return line;
        }
        kept.truncate(kept.trim_end().len());
    }
}
