//! Words in a story that a reader may trip over, each with the reason and a better way.
//!
//! The rules come from published guidance on easy-to-read text and on social narratives: short
//! sentences, one idea each, said as what happens and what one can do, possible and not promised,
//! no guesses at feelings, nothing figurative. They are rules on words of English and can err both
//! ways; a remark is a thought for the writer and stops nothing.
//!
//! "… is not today." is left alone: it is how the program says that a step does not take place,
//! the plan's own necessary words, and there is no plainer way to say it.

mod clarity;
mod duty;
mod judging;
mod negative;
mod promise;
mod same_thing;
mod speaker;

use std::ops::Range;

use super::split;
use super::tokens::Tokens;
use crate::model::people::Voice;
pub use same_thing::{TwoWords, two_words};

/// In whose voice a story is told, and about whom.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Teller<'a> {
    /// The voice.
    pub voice: Voice,
    /// The participant's name as the story writes it; may be empty.
    pub name: &'a str,
}

impl<'a> Teller<'a> {
    /// The participant as the subject of a sentence.
    fn subject(&self) -> &'a str {
        match self.voice {
            Voice::You => "You",
            Voice::Name if !self.name.trim().is_empty() => self.name.trim(),
            Voice::I | Voice::Name => "I",
        }
    }

    /// "me", "you" or the name.
    fn object(&self) -> &'a str {
        match self.subject() {
            "I" => "me",
            "You" => "you",
            name => name,
        }
    }

    /// "my", "your" or "their".
    fn own(&self) -> &'static str {
        match self.voice {
            Voice::I => "my",
            Voice::You => "your",
            Voice::Name => "their",
        }
    }
}

/// Something found in a sentence.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Remark {
    /// What kind of thing.
    pub kind: RemarkKind,
    /// The words found, as they stand.
    pub words: String,
    /// Where they stand in the sentence, in bytes.
    pub at: Range<usize>,
    /// Why someone may trip over it, one sentence.
    pub why: String,
    /// A better way, one sentence.
    pub better: String,
}

impl Remark {
    /// A remark on the words from one place to another.
    fn on(tokens: &Tokens<'_>, kind: RemarkKind, (from, to): (usize, usize), why: &str) -> Self {
        let at = tokens.span(from, to);
        Self {
            kind,
            words: tokens.text[at.clone()].to_owned(),
            at,
            why: why.to_owned(),
            better: String::new(),
        }
    }

    /// The same with a better way.
    fn better(mut self, better: impl Into<String>) -> Self {
        self.better = better.into();
        self
    }
}

/// Kinds of remarks.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum RemarkKind {
    /// More than 15 words.
    Long,
    /// More than one linking word, which hints at two ideas.
    TwoIdeas,
    /// A word of four or more syllables.
    HardWord,
    /// "always", "never", "everyone must".
    Absolute,
    /// "don’t", "not", "without".
    Negative,
    /// "not unlimited".
    DoubleNegative,
    /// "The sea will be calm."
    Promise,
    /// "I love the waves."
    Feeling,
    /// "must", "should", "have to".
    Duty,
    /// "you" in a story that is not told so.
    SecondPerson,
    /// The participant in two voices at once.
    MixedVoice,
    /// "a piece of cake".
    Figurative,
    /// "PFD", "e.g."
    Abbreviation,
    /// Shame, comparing, praise that depends.
    Judging,
}

impl RemarkKind {
    /// All of them.
    pub const ALL: [Self; 14] = [
        Self::Long,
        Self::TwoIdeas,
        Self::HardWord,
        Self::Absolute,
        Self::Negative,
        Self::DoubleNegative,
        Self::Promise,
        Self::Feeling,
        Self::Duty,
        Self::SecondPerson,
        Self::MixedVoice,
        Self::Figurative,
        Self::Abbreviation,
        Self::Judging,
    ];

    /// In a few words.
    pub const fn label(self) -> &'static str {
        match self {
            Self::Long => "Long sentence",
            Self::TwoIdeas => "Perhaps two ideas",
            Self::HardWord => "Long word",
            Self::Absolute => "Always or never",
            Self::Negative => "Says what not to do",
            Self::DoubleNegative => "Two negatives in one",
            Self::Promise => "A promise",
            Self::Feeling => "A guess at a feeling",
            Self::Duty => "An order",
            Self::SecondPerson => "Speaks to the reader",
            Self::MixedVoice => "Two voices",
            Self::Figurative => "Not meant word for word",
            Self::Abbreviation => "Shortened words",
            Self::Judging => "Judges or compares",
        }
    }
}

/// What there is to say about a sentence of a story, in the order of its words. A text of several
/// sentences is looked at one by one.
pub fn look(sentence: &str, teller: &Teller<'_>) -> Vec<Remark> {
    let mut from = 0;
    let mut all = Vec::new();
    for one in split::sentences(sentence) {
        // Where it stands in the text; sentences come in order.
        let start = from + sentence[from..].find(one).unwrap_or(0);
        from = start + one.len();
        all.extend(look_at_one(one, teller).into_iter().map(|r| Remark {
            at: start + r.at.start..start + r.at.end,
            ..r
        }));
    }
    all
}

fn look_at_one(sentence: &str, teller: &Teller<'_>) -> Vec<Remark> {
    let tokens = Tokens::read(sentence);
    if tokens.all.is_empty() {
        return Vec::new();
    }
    let mut all = clarity::look(&tokens, teller);
    all.extend(negative::look(&tokens, teller));
    all.extend(promise::look(&tokens, teller));
    all.extend(duty::look(&tokens, teller));
    all.extend(speaker::look(&tokens, teller));
    all.extend(judging::look(&tokens));
    all.sort_by_key(|r| (r.at.start, r.kind));
    all
}

/// Something to say about a whole page.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct PageRemark {
    /// Why someone may trip over it, one sentence.
    pub why: String,
    /// A better way, one sentence.
    pub better: String,
}

/// Sentences on a page at most: guidance asks for one to three.
const ON_A_PAGE: usize = 3;

/// What there is to say about so many sentences on one page.
pub fn page_length(sentences_on_page: usize) -> Option<PageRemark> {
    (sentences_on_page > ON_A_PAGE).then(|| PageRemark {
        why: format!("This page has {sentences_on_page} sentences; 1 to 3 are easier to take in."),
        better: "Keep the 3 that help most, or make two pages.".to_owned(),
    })
}

/// A sentence as it is offered: a capital first, a full stop last, in quotation marks.
fn quoted(sentence: &str) -> String {
    let bare = sentence.trim().trim_end_matches(['.', '!', '?']);
    let mut letters = bare.chars();
    let first = letters.next().into_iter().flat_map(char::to_uppercase);
    format!("“{}{}.”", first.collect::<String>(), letters.as_str())
}
