//! A paragraph measured once in ems: where its lines may end and how wide any stretch of it is, so
//! that breaking it for a size or a width is arithmetic.

use std::sync::{Arc, OnceLock};

use unicode_segmentation::UnicodeSegmentation;

use super::bidi::{Direction, Levels};
use super::breaks::{Breaks, SOFT_HYPHEN, breaks, clean, is_hanging, trim_line_end};
use super::cache::Cache;
use super::shape::{Shaped, kind, shape, shaped};

/// The paragraphs of a text with all that breaking needs.
#[derive(Debug)]
pub(super) struct Measured {
    pub(super) paragraphs: Vec<Paragraph>,
    /// Highest and lowest ink against a baseline, in ems, upwards positive.
    pub(super) ink: Option<(f64, f64)>,
    /// Characters no bundled font has.
    pub(super) missing: Vec<char>,
}

/// One paragraph.
#[derive(Debug)]
pub(super) struct Paragraph {
    text: String,
    bold: bool,
    levels: Levels,
    breaks: Breaks,
    /// Where each cluster begins and how far the pen has moved before it, in ems.
    starts: Vec<(usize, f64)>,
    /// Width of the whole, in ems.
    total: f64,
    hyphen: f64,
    /// Widest stretch without a break, in ems.
    pub(super) widest_word: f64,
}

/// One line of a paragraph, in bytes.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Cut {
    pub(super) start: usize,
    /// Where the next line begins.
    pub(super) end: usize,
    /// Whether it ends within a word because the word alone is too wide.
    pub(super) splits_word: bool,
}

/// A text measured; kept for the next time.
pub(super) fn measured(text: &str, bold: bool, direction: Direction) -> Arc<Measured> {
    static CACHE: OnceLock<Cache<Measured>> = OnceLock::new();
    let kind = kind(bold, direction);
    let make = || measure(text, bold, direction);
    CACHE.get_or_init(Cache::new).get(text, kind, make)
}

fn measure(text: &str, bold: bool, direction: Direction) -> Measured {
    let mut out = Measured {
        paragraphs: Vec::new(),
        ink: None,
        missing: Vec::new(),
    };
    for words in clean(text).lines() {
        let words = words.trim_matches(is_hanging);
        let levels = Levels::of(words, direction);
        let whole = shape(words, 0..words.len(), &levels, bold);
        if let Some((top, bottom)) = whole.ink() {
            let (t, b) = out.ink.unwrap_or((top, bottom));
            out.ink = Some((t.max(top), b.min(bottom)));
        }
        for c in &whole.missing {
            if !out.missing.contains(c) {
                out.missing.push(*c);
            }
        }
        out.paragraphs
            .push(Paragraph::new(words, bold, levels, &whole));
    }
    out
}

impl Paragraph {
    fn new(text: &str, bold: bool, levels: Levels, whole: &Shaped) -> Self {
        let mut starts: Vec<(usize, f64)> = Vec::new();
        let mut total = 0.0;
        for (at, advance) in whole.advances() {
            if starts.last().is_none_or(|s| s.0 != at) {
                starts.push((at, total));
            }
            total += advance;
        }
        let hyphen = if text.contains(SOFT_HYPHEN) {
            let hyphen = shaped("\u{2010}", bold, Direction::LeftToRight);
            hyphen.advances().iter().map(|a| a.1).sum()
        } else {
            0.0
        };
        let mut p = Self {
            text: text.to_owned(),
            bold,
            levels,
            breaks: breaks(text),
            starts,
            total,
            hyphen,
            widest_word: 0.0,
        };
        let mut start = 0;
        for &end in &p.breaks.between_words {
            p.widest_word = p.widest_word.max(p.width(start, end));
            start = end;
        }
        p
    }

    /// How far the pen has moved before a byte.
    fn before(&self, at: usize) -> f64 {
        let i = self.starts.partition_point(|s| s.0 < at);
        self.starts.get(i).map_or(self.total, |s| s.1)
    }

    /// Width of a line from `start` to `end` without the blanks at its end, in ems. Kerning over
    /// its ends is not undone, so a shaped line may differ by a hair.
    pub(super) fn width(&self, start: usize, end: usize) -> f64 {
        let line = trim_line_end(&self.text[start..end]);
        let hyphen = if line.ends_with(SOFT_HYPHEN) && end < self.text.len() {
            self.hyphen
        } else {
            0.0
        };
        self.before(start + line.len()) - self.before(start) + hyphen
    }

    /// The fullest line from `start` no wider than `limit` ems; if not even one word fits, as
    /// much of it as does, but always something.
    pub(super) fn cut(&self, start: usize, limit: f64) -> Cut {
        let first = self.breaks.between_words.partition_point(|b| *b <= start);
        let ends = &self.breaks.between_words[first..];
        let fitting = ends.iter().take_while(|e| self.width(start, **e) <= limit);
        if let Some(&end) = fitting.last() {
            return Cut {
                start,
                end,
                splits_word: false,
            };
        }
        let word_end = ends.first().copied().unwrap_or(self.text.len());
        let end = self.split_word(start, word_end, limit);
        Cut {
            start,
            end,
            splits_word: end < word_end,
        }
    }

    /// Where to split a word that is too wide: at the last soft hyphen that fits, otherwise
    /// between two characters as readers see them.
    fn split_word(&self, start: usize, word_end: usize, limit: f64) -> usize {
        let fits = |end: &usize| self.width(start, *end) <= limit;
        let soft = self.breaks.soft.iter().copied();
        let soft = soft.filter(|s| *s > start && *s < word_end);
        if let Some(end) = soft.take_while(fits).last() {
            return end;
        }
        let word = &self.text[start..word_end];
        let mut ends = word
            .grapheme_indices(true)
            .map(|(i, g)| start + i + g.len());
        let one = ends.next().unwrap_or(word_end);
        ends.take_while(fits).last().unwrap_or(one)
    }

    /// How many lines it takes at a width, in ems; `None` if a word would have to be split.
    pub(super) fn lines_at(&self, limit: f64) -> Option<usize> {
        if self.widest_word > limit {
            return None;
        }
        let (mut lines, mut start) = (0, 0);
        loop {
            lines += 1;
            start = self.cut(start, limit).end;
            if start >= self.text.len() {
                return Some(lines);
            }
        }
    }

    /// The smallest width, in ems, at which it takes no more lines than at `limit`, so that its
    /// lines come out much alike; `limit` itself if a word is wider.
    pub(super) fn even_limit(&self, limit: f64) -> f64 {
        let Some(lines) = self.lines_at(limit).filter(|n| *n > 1) else {
            return limit;
        };
        let (mut too_narrow, mut enough) = (self.widest_word.min(limit), limit);
        if self.lines_at(too_narrow) == Some(lines) {
            return too_narrow;
        }
        // Sixteen halvings leave less than a thousandth of an em on any paper.
        for _ in 0..16 {
            let middle = (too_narrow + enough) / 2.0;
            if self.lines_at(middle).is_some_and(|n| n <= lines) {
                enough = middle;
            } else {
                too_narrow = middle;
            }
        }
        enough
    }

    /// The end of the paragraph, in bytes.
    pub(super) fn len(&self) -> usize {
        self.text.len()
    }

    /// The glyphs of a line.
    pub(super) fn shape(&self, cut: &Cut) -> Arc<Shaped> {
        let words = trim_line_end(&self.text[cut.start..cut.end]);
        if self.levels.is_plain() {
            return match words.strip_suffix(SOFT_HYPHEN) {
                Some(w) if cut.end < self.text.len() => {
                    shaped(&format!("{w}\u{2010}"), self.bold, Direction::LeftToRight)
                }
                _ => shaped(words, self.bold, Direction::LeftToRight),
            };
        }
        let range = cut.start..cut.start + words.len();
        Arc::new(shape(&self.text, range, &self.levels, self.bold))
    }
}
