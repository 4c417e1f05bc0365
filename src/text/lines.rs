//! Lines of text at a size: one line as it is, or as many as a width asks for.

use super::bidi::Direction;
use super::breaks::clean;
use super::paragraph::{Cut, Paragraph, measured};
use super::run::Line;
use super::shape::shaped;
use crate::units::Length;

/// How text is set.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Style {
    /// In the bold face.
    pub bold: bool,
    /// Letter size (the em).
    pub size: Length,
    /// Which way paragraphs run.
    pub direction: Direction,
}

impl Style {
    /// Regular weight, direction by the text.
    pub const fn regular(size: Length) -> Self {
        Self {
            bold: false,
            size,
            direction: Direction::Auto,
        }
    }

    /// Bold, direction by the text.
    pub const fn bold(size: Length) -> Self {
        Self {
            bold: true,
            size,
            direction: Direction::Auto,
        }
    }
}

/// Text broken into lines.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Wrapped {
    /// The lines from top to bottom; none for text of blanks only.
    pub lines: Vec<Line>,
    /// Whether a word had to be split because it alone is wider than a line.
    pub split_word: bool,
    /// Characters that no bundled font has, each once, in order of appearance; in the lines a
    /// substitute stands for each.
    pub missing: Vec<char>,
}

/// All of a text on one line, however long; line ends in it become blanks. Blanks at its ends are
/// kept.
pub fn line(text: &str, style: &Style) -> Line {
    let text = clean(text);
    if text.contains('\n') {
        let text = text.replace('\n', " ");
        return shaped(&text, style.bold, style.direction).line(style.size);
    }
    shaped(&text, style.bold, style.direction).line(style.size)
}

/// The characters of a text that no bundled font has, each once, in order of appearance.
pub fn missing(text: &str) -> Vec<char> {
    measured(text, false, Direction::Auto).missing.clone()
}

/// A text in lines no wider than `max_width`, each as full as it gets. A word is split only if it
/// alone is wider; a line is never without a character, so it can be wider than `max_width` when
/// that is narrower than one.
pub fn wrap(text: &str, style: &Style, max_width: Length) -> Wrapped {
    wrap_as(text, style, max_width, false)
}

/// As [`wrap`], in no more lines, but with lines of a paragraph of much the same width: for labels
/// and headings.
pub fn wrap_evenly(text: &str, style: &Style, max_width: Length) -> Wrapped {
    wrap_as(text, style, max_width, true)
}

fn wrap_as(text: &str, style: &Style, max_width: Length, evenly: bool) -> Wrapped {
    let measured = measured(text, style.bold, style.direction);
    let mut out = Wrapped {
        missing: measured.missing.clone(),
        ..Wrapped::default()
    };
    if measured.paragraphs.iter().all(|p| p.len() == 0) {
        return out;
    }
    let limit = limit(max_width, style.size);
    for p in &measured.paragraphs {
        let limit = if evenly { p.even_limit(limit) } else { limit };
        break_paragraph(p, style.size, limit, max_width, &mut out);
    }
    out
}

/// A width in ems of a letter size, with half a micrometre for rounding.
pub(super) fn limit(max_width: Length, size: Length) -> f64 {
    let um = |l: Length| l.to_um() as f64;
    (um(max_width) + 0.5) / um(size).max(1.0)
}

fn break_paragraph(p: &Paragraph, size: Length, limit: f64, max_width: Length, out: &mut Wrapped) {
    let mut start = 0;
    loop {
        let cut = exact_cut(p, start, size, limit, max_width);
        out.split_word |= cut.splits_word;
        out.lines.push(p.shape(&cut).line(size));
        start = cut.end;
        if start >= p.len() {
            break;
        }
    }
}

/// A line that is not too wide as shaped, either: kerning over its ends can make a hair's
/// difference to what was measured.
fn exact_cut(p: &Paragraph, start: usize, size: Length, limit: f64, max_width: Length) -> Cut {
    let mut cut = p.cut(start, limit);
    while cut.end > start && p.shape(&cut).width(size) > max_width {
        let narrower = p.cut(start, p.width(start, cut.end) - 1e-6);
        if narrower.end >= cut.end {
            break;
        }
        cut = narrower;
    }
    cut
}
