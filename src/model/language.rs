//! The language of words that the program brings along.

use std::fmt;
use std::sync::Arc;

/// British English, which every other word list falls back to.
pub const ENGLISH: &str = "en-GB";
/// The longest tag; RFC 5646 section 4.4.1 asks programs to hold 35 characters.
pub const LONGEST: usize = 35;

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

    /// Whether it reads like a tag: letters, digits and single hyphens, a letter first.
    pub fn is_tag(&self) -> bool {
        let part =
            |p: &str| (1..=8).contains(&p.len()) && p.bytes().all(|b| b.is_ascii_alphanumeric());
        self.0.len() <= LONGEST
            && self.0.split('-').all(part)
            && self.primary().bytes().all(|b| b.is_ascii_alphabetic())
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
