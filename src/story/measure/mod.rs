//! Measures of the plain-language story, shown beside the text: how long its sentences are, how
//! hard its words, what kinds of sentence it has, and words that a reader may trip over.
//!
//! Everything here is a hint to the person who writes. Nothing forbids, nothing is put right by
//! itself, and no measure says that a story is good: plain language is more than numbers, and two
//! ideas in a sentence can only be suspected, not computed. Pure functions of text, in English.

pub mod balance;
pub mod kind;
pub mod readability;
pub mod split;
pub mod syllables;
mod tokens;
pub mod wording;

pub use balance::Balance;
pub use kind::Kind;
pub use readability::Counts;
pub use split::{sentences, words};
pub use syllables::syllables;
pub use wording::{Remark, RemarkKind, Teller, TwoWords, look, page_length, two_words};
