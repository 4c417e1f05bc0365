//! Text into sentences, sentences into words, as a person counts them.
//!
//! On purpose different from the common library textstat 0.7.8, whose splitter is made for long
//! prose: "9.30" and "a.m." end no sentence and lose no dots, a sentence of one or two words
//! ("Stop.") counts like any other, and the end of a line ends a sentence, since in a story each
//! stands on a line of its own. As there, "well-being" is one word and "don’t" is one word.

use std::ops::Range;

/// Titles and the like: a full stop behind them never ends a sentence.
const NEVER_LAST: [&str; 9] = ["mr", "mrs", "ms", "dr", "st", "e.g", "i.e", "vs", "approx"];

/// The sentences of a text, trimmed, none empty.
pub fn sentences(text: &str) -> Vec<&str> {
    text.lines().flat_map(of_line).collect()
}

fn of_line(line: &str) -> Vec<&str> {
    let mut all = Vec::new();
    let mut start = 0;
    let mut keep = |piece: std::ops::Range<usize>| {
        let piece = line[piece].trim();
        if piece.contains(char::is_alphanumeric) {
            all.push(piece);
        }
    };
    let mut chars = line.char_indices().peekable();
    while let Some((at, c)) = chars.next() {
        if !is_stop(c) {
            continue;
        }
        let mut end = at + c.len_utf8();
        while let Some((i, c)) = chars.next_if(|&(_, c)| is_stop(c) || is_closing(c)) {
            end = i + c.len_utf8();
        }
        if ends(&line[start..end], &line[end..]) {
            keep(start..end);
            start = end;
        }
    }
    keep(start..line.len());
    all
}

fn is_stop(c: char) -> bool {
    matches!(c, '.' | '!' | '?' | '…')
}

fn is_closing(c: char) -> bool {
    matches!(c, '"' | '”' | '’' | '\'' | ')' | ']' | '»')
}

/// Whether a sentence ends between these two, where `so_far` ends in a stop.
fn ends(so_far: &str, rest: &str) -> bool {
    if !rest.is_empty() && !rest.starts_with(char::is_whitespace) {
        return false;
    }
    let Some(next) = rest.trim_start().chars().next() else {
        return true;
    };
    // The number of a list ("1. Walk") belongs to what follows.
    if !so_far.contains(char::is_alphabetic) {
        return false;
    }
    if !so_far.ends_with('.') {
        return true;
    }
    let last = so_far.split_whitespace().next_back().unwrap_or_default();
    let bare = last
        .trim_start_matches(|c: char| !c.is_alphanumeric())
        .trim_end_matches('.')
        .to_lowercase();
    if NEVER_LAST.contains(&bare.as_str()) {
        return false;
    }
    // "a.m. today" goes on, "a.m. We walk" does not.
    !((bare == "etc" || is_initials(&bare)) && (next.is_lowercase() || next.is_ascii_digit()))
}

/// "a.m": single letters with dots between.
fn is_initials(bare: &str) -> bool {
    bare.contains('.')
        && bare
            .split('.')
            .all(|p| p.chars().count() == 1 && p.chars().all(char::is_alphabetic))
}

/// The words of a sentence without the signs around them: "9.30" and "a.m." keep their dots,
/// hyphens and apostrophes within a word stay.
pub fn words(sentence: &str) -> Vec<&str> {
    spans(sentence).into_iter().map(|r| &sentence[r]).collect()
}

/// Where the words of a sentence stand, in bytes.
pub(super) fn spans(sentence: &str) -> Vec<Range<usize>> {
    let mut all = Vec::new();
    let mut from = 0;
    let gap = |c: char| c.is_whitespace() || matches!(c, '—' | '–' | '…');
    for (at, c) in sentence.char_indices().filter(|&(_, c)| gap(c)) {
        all.extend(word(sentence, from..at));
        from = at + c.len_utf8();
    }
    all.extend(word(sentence, from..sentence.len()));
    all
}

/// The word within a piece between gaps, if there is one.
fn word(sentence: &str, piece: Range<usize>) -> Option<Range<usize>> {
    let text = &sentence[piece.clone()];
    let first = text.find(char::is_alphanumeric)?;
    let last = text.rfind(char::is_alphanumeric)?;
    let mut end = last + text[last..].chars().next().map_or(0, char::len_utf8);
    if text[end..].starts_with('.') && is_initials(&text[first..end]) {
        end += 1;
    }
    Some(piece.start + first..piece.start + end)
}
