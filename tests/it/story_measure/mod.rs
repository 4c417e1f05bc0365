//! Measures of the story: counts, kinds of sentence, words a reader may trip over.

mod balance;
mod kinds;
mod own_words;
mod readability;
mod remarks;
mod split;
mod syllables;
mod two_words;
mod values;

use daystrand::model::people::Voice;
use daystrand::story::measure::{Remark, RemarkKind, Teller, look};

/// A story told with "I" about Noor.
const I: Teller<'static> = teller(Voice::I);

const fn teller(voice: Voice) -> Teller<'static> {
    Teller {
        voice,
        name: "Noor",
    }
}

/// The remarks on a sentence told with "I".
fn remarks(sentence: &str) -> Vec<Remark> {
    look(sentence, &I)
}

/// Their kinds, in order.
fn kinds(sentence: &str) -> Vec<RemarkKind> {
    remarks(sentence).into_iter().map(|r| r.kind).collect()
}
