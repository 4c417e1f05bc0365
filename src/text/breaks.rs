//! Where a line may end (Unicode Standard Annex #14), and text brought into the one form that all
//! of this module works on.

use std::borrow::Cow;

use unicode_linebreak::{BreakOpportunity, linebreaks};
use unicode_normalization::{UnicodeNormalization, is_nfc};

/// Lets a line end inside a word, with a hyphen.
pub(super) const SOFT_HYPHEN: char = '\u{AD}';

/// Text as it is shaped: composed (NFC), every kind of line end a line feed, tabs as blanks, other
/// control characters taken out.
pub fn clean(text: &str) -> Cow<'_, str> {
    let is_strange =
        |c: char| (c.is_control() && c != '\n') || matches!(c, '\u{2028}' | '\u{2029}');
    if !text.contains(is_strange) && is_nfc(text) {
        return Cow::Borrowed(text);
    }
    let mut out = String::with_capacity(text.len());
    let mut after_return = false;
    for c in text.nfc() {
        match c {
            '\n' if after_return => {}
            '\n' | '\r' | '\u{B}' | '\u{C}' | '\u{85}' | '\u{2028}' | '\u{2029}' => out.push('\n'),
            '\t' => out.push(' '),
            c if c.is_control() => {}
            c => out.push(c),
        }
        after_return = c == '\r';
    }
    Cow::Owned(out)
}

/// Places in one paragraph where a line may end.
#[derive(Debug, Default)]
pub(super) struct Breaks {
    /// Where a next line may begin without any word being split, in bytes, in order; the last is
    /// the end of the paragraph.
    pub(super) between_words: Vec<usize>,
    /// Just behind each soft hyphen.
    pub(super) soft: Vec<usize>,
}

/// The places in a clean paragraph without line feeds.
pub(super) fn breaks(paragraph: &str) -> Breaks {
    let mut out = Breaks::default();
    for (at, kind) in linebreaks(paragraph) {
        let soft = kind == BreakOpportunity::Allowed && paragraph[..at].ends_with(SOFT_HYPHEN);
        if soft {
            &mut out.soft
        } else {
            &mut out.between_words
        }
        .push(at);
    }
    out
}

/// Without the blanks that hang over at the end of a line.
pub(super) fn trim_line_end(text: &str) -> &str {
    text.trim_end_matches(is_hanging)
}

/// Blanks that vanish at the end of a line; those that hold words together stay.
pub(super) fn is_hanging(c: char) -> bool {
    (c.is_whitespace() && !matches!(c, '\u{A0}' | '\u{2007}' | '\u{202F}')) || c == '\u{200B}'
}
