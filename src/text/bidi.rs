//! Which way text runs: the direction of a paragraph and the order its parts are painted in
//! (Unicode Standard Annex #9).

use std::ops::Range;

use unicode_bidi::{BidiInfo, Level, ParagraphBidiInfo};

/// Which way a paragraph runs.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Direction {
    /// As its first letter says; left to right where no letter says.
    #[default]
    Auto,
    /// Left to right.
    LeftToRight,
    /// Right to left.
    RightToLeft,
}

/// Whether a text runs from right to left by its first letter.
pub fn runs_left(text: &str) -> bool {
    Levels::of(text, Direction::Auto).rtl
}

/// The levels of a paragraph; text that only runs left to right has none.
#[derive(Clone, Debug, Default)]
pub(super) struct Levels {
    /// Whether the paragraph as a whole runs right to left.
    pub(super) rtl: bool,
    /// One level a byte, or nothing when all runs left to right.
    bytes: Vec<Level>,
}

impl Levels {
    /// The levels of one paragraph.
    pub(super) fn of(text: &str, direction: Direction) -> Self {
        // Nothing before U+0590 is written right to left.
        if direction != Direction::RightToLeft && text.chars().all(|c| c < '\u{590}') {
            return Self::default();
        }
        let base = match direction {
            Direction::Auto => None,
            Direction::LeftToRight => Some(Level::ltr()),
            Direction::RightToLeft => Some(Level::rtl()),
        };
        let info = ParagraphBidiInfo::new(text, base);
        let rtl = info.paragraph_level.is_rtl();
        let bytes = if rtl || info.levels.iter().any(|l| l.is_rtl()) {
            info.levels
        } else {
            Vec::new()
        };
        Self { rtl, bytes }
    }

    /// Whether all runs left to right.
    pub(super) fn is_plain(&self) -> bool {
        self.bytes.is_empty()
    }

    /// The parts of one line in the order they are painted, each with whether it runs right to
    /// left. `line` lies on character boundaries of `text`, the paragraph.
    pub(super) fn visual(&self, text: &str, line: Range<usize>) -> Vec<(Range<usize>, bool)> {
        if line.is_empty() {
            return Vec::new();
        }
        if self.is_plain() {
            return vec![(line, false)];
        }
        let mut levels = self.bytes[line.clone()].to_vec();
        // Rule L1: blanks at the end of a line run as the paragraph does.
        let ink = text[line.clone()].trim_end().len();
        let base = if self.rtl { Level::rtl() } else { Level::ltr() };
        levels[ink..].fill(base);

        let mut parts: Vec<(Range<usize>, Level)> = Vec::new();
        for (i, c) in text[line.clone()].char_indices() {
            let here = line.start + i;
            match parts.last_mut() {
                Some((range, level)) if *level == levels[i] => range.end = here + c.len_utf8(),
                _ => parts.push((here..here + c.len_utf8(), levels[i])),
            }
        }
        let order: Vec<Level> = parts.iter().map(|p| p.1).collect();
        let painted = BidiInfo::reorder_visual(&order);
        let part = |i: usize| (parts[i].0.clone(), parts[i].1.is_rtl());
        painted.into_iter().map(part).collect()
    }
}
