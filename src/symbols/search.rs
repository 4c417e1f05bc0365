//! Finding a symbol by the words someone types.

use unicode_normalization::UnicodeNormalization;
use unicode_normalization::char::is_combining_mark;

/// The words of one symbol, made ready to compare.
#[derive(Clone, Debug, Default)]
pub(super) struct Words {
    label: Vec<String>,
    synonyms: Vec<Vec<String>>,
    shows: Vec<String>,
}

impl Words {
    pub(super) fn new(label: &str, synonyms: &[String], shows: &str) -> Self {
        Self {
            label: split(label),
            synonyms: synonyms.iter().map(|s| split(s)).collect(),
            shows: split(shows),
        }
    }

    /// How well all of the wanted words fit, 0 best; none when one of them does not.
    pub(super) fn rank(&self, wanted: &[String]) -> Option<u32> {
        if self.label == wanted {
            return Some(0);
        }
        wanted.iter().map(|w| self.rank_one(w).map(|r| r + 1)).sum()
    }

    fn rank_one(&self, wanted: &str) -> Option<u32> {
        let starts = |words: &[String]| words.iter().any(|w| w.starts_with(wanted));
        let first = |words: &[String]| words.first().is_some_and(|w| w.starts_with(wanted));
        let whole = |words: &[String]| words.iter().any(|w| w == wanted);
        if whole(&self.label) {
            Some(0)
        } else if first(&self.label) {
            Some(1)
        } else if starts(&self.label) {
            Some(2)
        } else if self.synonyms.iter().any(|s| s.len() == 1 && s[0] == wanted) {
            Some(3)
        } else if self.synonyms.iter().any(|s| first(s)) {
            Some(4)
        } else if self.synonyms.iter().any(|s| starts(s)) {
            Some(5)
        } else if starts(&self.shows) {
            Some(8)
        } else {
            None
        }
    }
}

/// The words of a text without case, accents and punctuation.
pub(super) fn split(text: &str) -> Vec<String> {
    let plain: String = text
        .nfkd()
        .filter(|c| !is_combining_mark(*c) && *c != '\'' && *c != '\u{2019}')
        .flat_map(char::to_lowercase)
        .collect();
    plain
        .split(|c: char| !c.is_alphanumeric())
        .filter(|w| !w.is_empty())
        .map(str::to_owned)
        .collect()
}
