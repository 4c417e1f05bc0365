//! The language of words that the program brings along.

use std::collections::BTreeSet;
use std::fmt;
use std::ops::RangeInclusive;
use std::sync::Arc;

/// British English, which every other word list falls back to.
pub const ENGLISH: &str = "en-GB";
/// The longest tag; RFC 5646 section 4.4.1 asks programs to hold 35 characters.
pub const LONGEST: usize = 35;

/// Tags from before the grammar that do not follow it (RFC 5646, section 2.1, "irregular").
const IRREGULAR: [&str; 17] = [
    "en-GB-oed",
    "i-ami",
    "i-bnn",
    "i-default",
    "i-enochian",
    "i-hak",
    "i-klingon",
    "i-lux",
    "i-mingo",
    "i-navajo",
    "i-pwn",
    "i-tao",
    "i-tay",
    "i-tsu",
    "sgn-BE-FR",
    "sgn-BE-NL",
    "sgn-CH-DE",
];

/// A language tag such as `en-AU` (BCP 47). May name one that the program has no words in; the
/// nearest it has are used then.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Language(Arc<str>);

impl Language {
    /// The language with this tag.
    pub fn new(tag: &str) -> Self {
        Self(Arc::from(tag))
    }

    /// Its tag.
    pub fn tag(&self) -> &str {
        &self.0
    }

    /// The part before the first hyphen: the language without country or script.
    pub fn primary(&self) -> &str {
        self.0.split('-').next().unwrap_or(&self.0)
    }

    /// Whether it is well-formed by RFC 5646, section 2.1, says no variant and no extension twice
    /// (sections 2.2.5 and 2.2.6), and is no longer than a program has to hold. What its subtags
    /// mean stands in a registry that the program does not have.
    pub fn is_tag(&self) -> bool {
        let mut irregular = IRREGULAR.iter();
        let irregular = irregular.any(|t| t.eq_ignore_ascii_case(&self.0));
        self.0.len() <= LONGEST && (irregular || well_formed(&self.0))
    }
}

impl Default for Language {
    fn default() -> Self {
        Self::new(ENGLISH)
    }
}

impl fmt::Display for Language {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}

fn well_formed(tag: &str) -> bool {
    let tag = tag.to_ascii_lowercase();
    let parts: Vec<&str> = tag.split('-').collect();
    let mut rest = Rest(&parts);
    let private = parts.first() == Some(&"x");
    (private || rest.language()) && rest.private_use() && rest.0.is_empty()
}

/// The subtags of a tag that were not read yet, in small letters.
struct Rest<'a>(&'a [&'a str]);

impl<'a> Rest<'a> {
    fn take(&mut self, fits: impl Fn(&str) -> bool) -> Option<&'a str> {
        let (first, others) = self.0.split_first()?;
        let first = fits(first).then_some(*first)?;
        self.0 = others;
        Some(first)
    }

    /// Language, script, region, variants and extensions; whether what was read is in order.
    fn language(&mut self) -> bool {
        let Some(language) = self.take(|p| letters(p, 2..=8)) else {
            return false;
        };
        if language.len() <= 3 {
            for _ in 0..3 {
                self.take(|p| letters(p, 3..=3));
            }
        }
        self.take(|p| letters(p, 4..=4));
        self.take(|p| letters(p, 2..=2) || digits(p));
        let mut seen = BTreeSet::new();
        while let Some(variant) = self.take(is_variant) {
            if !seen.insert(variant) {
                return false;
            }
        }
        while let Some(sign) = self.take(|p| signs(p, 1..=1) && p != "x") {
            if !seen.insert(sign) || !self.some(2..=8) {
                return false;
            }
        }
        true
    }

    /// What was agreed in private, if there is any; whether it is in order.
    fn private_use(&mut self) -> bool {
        self.take(|p| p == "x").is_none() || self.some(1..=8)
    }

    /// Reads subtags of so many signs; whether there was one.
    fn some(&mut self, long: RangeInclusive<usize>) -> bool {
        let before = self.0.len();
        while self.take(|p| signs(p, long.clone())).is_some() {}
        self.0.len() < before
    }
}

fn letters(part: &str, long: RangeInclusive<usize>) -> bool {
    long.contains(&part.len()) && part.bytes().all(|b| b.is_ascii_alphabetic())
}

fn digits(part: &str) -> bool {
    part.len() == 3 && part.bytes().all(|b| b.is_ascii_digit())
}

fn signs(part: &str, long: RangeInclusive<usize>) -> bool {
    long.contains(&part.len()) && part.bytes().all(|b| b.is_ascii_alphanumeric())
}

fn is_variant(part: &str) -> bool {
    signs(part, 5..=8) || (signs(part, 4..=4) && part.starts_with(|c: char| c.is_ascii_digit()))
}
