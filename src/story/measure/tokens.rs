//! A sentence as its words in small letters with their places, and ways to look for some of them.

use std::ops::Range;

use super::split::spans;

/// One word.
pub(super) struct Token {
    /// In small letters, apostrophes straight, without the dot after initials.
    pub(super) word: String,
    /// Where it stands in the sentence.
    pub(super) at: Range<usize>,
    /// Whether a comma, colon or dash stands between the word before and this one.
    pub(super) after_break: bool,
}

/// A sentence, read.
pub(super) struct Tokens<'a> {
    /// The sentence as it stands.
    pub(super) text: &'a str,
    /// Its words.
    pub(super) all: Vec<Token>,
}

/// Words that begin a clause in which nothing is told as a fact: "if I am tired", "when I can".
const CONDITION: [&str; 8] = [
    "if", "when", "whenever", "until", "while", "whether", "unless", "before",
];

/// Words that tie two clauses together.
pub(super) const LINKS: [&str; 11] = [
    "and", "but", "or", "so", "because", "then", "although", "though", "today", "now", "also",
];

impl<'a> Tokens<'a> {
    pub(super) fn read(text: &'a str) -> Self {
        let mut before = 0;
        let all = spans(text)
            .into_iter()
            .map(|at| {
                let breaks = [',', ':', ';', '–', '—', '.', '!', '?'];
                let after_break = text[before..at.start].contains(breaks);
                before = at.end;
                let word = text[at.clone()].to_lowercase().replace('’', "'");
                let word = word.trim_end_matches('.').to_owned();
                Token {
                    word,
                    at,
                    after_break,
                }
            })
            .collect();
        Self { text, all }
    }

    /// The word at a place, or nothing.
    pub(super) fn word(&self, i: usize) -> &str {
        self.all.get(i).map_or("", |t| &t.word)
    }

    /// The word before a place, or nothing.
    pub(super) fn before(&self, i: usize) -> &str {
        i.checked_sub(1).map_or("", |i| self.word(i))
    }

    /// Whether these words stand at a place, one after the other.
    pub(super) fn stands(&self, i: usize, phrase: &str) -> bool {
        phrase
            .split(' ')
            .enumerate()
            .all(|(n, w)| self.word(i + n) == w)
    }

    /// Every place where these words stand.
    pub(super) fn find(&self, phrase: &str) -> Vec<usize> {
        let (first, rest) = phrase.split_once(' ').unwrap_or((phrase, ""));
        (0..self.all.len())
            .filter(|&i| self.word(i) == first && (rest.is_empty() || self.stands(i + 1, rest)))
            .collect()
    }

    /// The bytes from one word to another, both included.
    pub(super) fn span(&self, from: usize, to: usize) -> Range<usize> {
        self.all[from].at.start..self.all[to].at.end
    }

    /// Whether a clause may begin at this word: at the start, after a comma or a linking word.
    pub(super) fn begins_clause(&self, i: usize) -> bool {
        i == 0 || self.all[i].after_break || LINKS.contains(&self.before(i))
    }

    /// Whether the clause with its subject at this word is a condition: "if I am tired".
    pub(super) fn in_condition(&self, i: usize) -> bool {
        CONDITION.contains(&self.before(i))
    }

    /// What follows a word, to the end of the sentence, without its stop.
    pub(super) fn rest(&self, i: usize) -> &'a str {
        self.all
            .get(i)
            .map_or("", |t| &self.text[t.at.start..])
            .trim_end_matches(|c: char| !c.is_alphanumeric())
    }

    /// The places where a name stands, letter by letter; none for an empty name.
    pub(super) fn named(&self, name: &str) -> Vec<(usize, usize)> {
        let parts: Vec<_> = name.split_whitespace().collect();
        if parts.is_empty() {
            return Vec::new();
        }
        (0..self.all.len())
            .filter(|&i| {
                parts.iter().enumerate().all(|(n, part)| {
                    let token = self.all.get(i + n);
                    token.is_some_and(|t| self.text[t.at.clone()] == **part)
                })
            })
            .map(|i| (i, i + parts.len() - 1))
            .collect()
    }
}
