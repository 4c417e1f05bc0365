//! Where a line may end (Unicode Standard Annex #14), and text brought into the one form that all
//! of this module works on.
//!
//! The rules are those of Unicode 15.0 with those of 15.1 for quotation marks, which keep a mark with
//! the words it encloses even across a blank, as French writes it.

use std::borrow::Cow;

use unicode_linebreak::{BreakClass, BreakOpportunity, break_property, linebreaks};
use unicode_normalization::{UnicodeNormalization, is_nfc};

/// What may stand before an opening quotation mark (rule LB15a), beside the beginning of the text;
/// first what a mark cannot stand on.
const BEFORE_OPENING: [BreakClass; 9] = [
    BreakClass::Mandatory,
    BreakClass::CarriageReturn,
    BreakClass::LineFeed,
    BreakClass::NextLine,
    BreakClass::Space,
    BreakClass::ZeroWidthSpace,
    BreakClass::OpenPunctuation,
    BreakClass::Quotation,
    BreakClass::NonBreakingGlue,
];
/// How many of them a mark cannot stand on: there it counts as a letter (rule LB10).
const NO_BASE: usize = 6;
/// What may stand behind a closing quotation mark (rule LB15b), beside the end of the text.
const BEHIND_CLOSING: [BreakClass; 14] = [
    BreakClass::ZeroWidthSpace,
    BreakClass::Space,
    BreakClass::NonBreakingGlue,
    BreakClass::WordJoiner,
    BreakClass::ClosePunctuation,
    BreakClass::Quotation,
    BreakClass::CloseParenthesis,
    BreakClass::Exclamation,
    BreakClass::InfixSeparator,
    BreakClass::Symbol,
    BreakClass::Mandatory,
    BreakClass::CarriageReturn,
    BreakClass::LineFeed,
    BreakClass::NextLine,
];

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
    for at in line_ends(paragraph) {
        let soft = at < paragraph.len() && paragraph[..at].ends_with(SOFT_HYPHEN);
        if soft {
            &mut out.soft
        } else {
            &mut out.between_words
        }
        .push(at);
    }
    out
}

/// Where lines of a text may or must end by Unicode Standard Annex #14, as places in bytes where a
/// next line begins, in order. The end of a text that is not empty is always one.
pub fn line_ends(text: &str) -> Vec<usize> {
    let by_15_0 = linebreaks(text)
        .filter(|(at, kind)| *kind == BreakOpportunity::Mandatory || !is_held_by_quote(text, *at))
        .map(|(at, _)| at);
    let brackets = text.match_indices(is_bracket).map(|(at, _)| at);
    let set_free = brackets.filter(|at| is_held_only_by_15_0(text, *at));
    let mut ends: Vec<usize> = by_15_0.chain(set_free).collect();
    ends.sort_unstable();
    ends.dedup();
    ends
}

/// Whether an opening bracket follows a quotation mark and a blank: Unicode 15.0 forbade to end a
/// line there, 15.1 does so only behind an opening quotation mark.
fn is_held_only_by_15_0(text: &str, bracket: usize) -> bool {
    let before = &text[..bracket];
    let quoted = before.trim_end_matches(' ');
    let quote = quoted.trim_end_matches(is_mark).chars().next_back();
    quoted.len() < before.len()
        && quote.is_some_and(|c| class(c) == BreakClass::Quotation)
        && !after_opening_quote(before)
}

/// Whether a quotation mark forbids to end a line here: rules LB15a and LB15b of Unicode 15.1.
fn is_held_by_quote(text: &str, at: usize) -> bool {
    let (before, after) = (&text[..at], &text[at..]);
    after_opening_quote(before) || before_closing_quote(before, after)
}

fn after_opening_quote(before: &str) -> bool {
    let quoted = before.trim_end_matches(' ').trim_end_matches(is_mark);
    let Some(outside) = quoted.strip_suffix(is_opening_quote) else {
        return false;
    };
    let base = outside.trim_end_matches(is_mark);
    let has_marks = base.len() < outside.len();
    let Some(class) = base.chars().next_back().map(class) else {
        return !has_marks;
    };
    let allowed = if has_marks {
        &BEFORE_OPENING[NO_BASE..]
    } else {
        &BEFORE_OPENING[..]
    };
    allowed.contains(&class)
}

fn before_closing_quote(before: &str, after: &str) -> bool {
    let Some(outside) = after.strip_prefix(is_closing_quote) else {
        return false;
    };
    let next = outside.trim_start_matches(is_mark).chars().next();
    let ends_words = next.is_none_or(|c| BEHIND_CLOSING.contains(&class(c)));
    // A blank of no width asks for a line end and is stronger (rule LB8).
    let asked_for = before.trim_end_matches(' ').ends_with('\u{200B}');
    ends_words && !asked_for
}

fn class(c: char) -> BreakClass {
    break_property(u32::from(c))
}

fn is_mark(c: char) -> bool {
    matches!(
        class(c),
        BreakClass::CombiningMark | BreakClass::ZeroWidthJoiner
    )
}

fn is_bracket(c: char) -> bool {
    class(c) == BreakClass::OpenPunctuation
}

/// Initial quotation marks (general category Pi of break class QU).
fn is_opening_quote(c: char) -> bool {
    matches!(
        c,
        '\u{AB}' | '\u{2018}' | '\u{201B}' | '\u{201C}' | '\u{201F}' | '\u{2039}'
    )
}

/// Final quotation marks (general category Pf of break class QU).
fn is_closing_quote(c: char) -> bool {
    matches!(c, '\u{BB}' | '\u{2019}' | '\u{201D}' | '\u{203A}')
}

/// Without the blanks that hang over at the end of a line.
pub(super) fn trim_line_end(text: &str) -> &str {
    text.trim_end_matches(is_hanging)
}

/// Blanks that vanish at the end of a line; those that hold words together stay.
pub(super) fn is_hanging(c: char) -> bool {
    (c.is_whitespace() && !matches!(c, '\u{A0}' | '\u{2007}' | '\u{202F}')) || c == '\u{200B}'
}
