//! The phrase bank: what can be said about a picture under its usual words, for clubs that wrote
//! nothing of their own, one file a group of pictures.
//!
//! All of it is true on any day: in the present, with "may", "usually" and "can"; nothing is
//! promised about water, weather, animals or people, no feeling is guessed, nobody is ordered. The
//! same thing has the same word everywhere: helper, trainer, group, towel, mat; a tile is a picture
//! on the board, a card one that is always there. In the water the helper is there, and Stop can be
//! shown. Holes in the sand end below the knee and are filled in (common practice).

mod arrival;
mod boats;
mod calm;
mod cards;
mod closing;
mod feelings;
mod games;
mod hall;
mod making;
mod nature;
mod outdoors;
mod people;
mod places;
mod pool;
mod sand;
mod self_care;
mod things;
mod time;
mod warm_up;
mod water;
mod weather;

use crate::model::ids::SymbolId;
use crate::model::language::Language;
use crate::symbols::lexicon;

/// What can be said about one picture under its usual words; templates with the words of the
/// participant in braces (see [`voice`](super::voice)).
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Phrases {
    /// The picture.
    pub symbol: &'static str,
    /// The words under the picture it is for, in any case; a picture with words that are not usual
    /// for it gets nothing.
    pub label: &'static str,
    /// What happens, in order, one to three sentences; the first can stand alone.
    pub happens: &'static [&'static str],
    /// Who is there and what they do; one sentence or empty.
    pub who: &'static str,
    /// What may feel, sound or smell strong; up to two short sentences.
    pub strong: &'static [&'static str],
    /// What helps with that or makes it easier, in the participant's power; one sentence or empty.
    pub helps: &'static str,
    /// Why it is done or why it matters; one sentence or empty.
    pub why: &'static str,
}

impl Phrases {
    /// All its sentences in the order they are told.
    pub fn sentences(&self) -> impl Iterator<Item = &'static str> {
        let told = self.happens.iter().chain([&self.who]);
        let told = told.chain(self.strong).chain([&self.helps, &self.why]);
        told.copied().filter(|s| !s.is_empty())
    }
}

/// All groups, in the order of a day.
const GROUPS: [&[Phrases]; 21] = [
    arrival::ROWS,
    warm_up::ROWS,
    sand::ROWS,
    water::ROWS,
    boats::ROWS,
    pool::ROWS,
    closing::ROWS,
    self_care::ROWS,
    calm::ROWS,
    cards::ROWS,
    feelings::ROWS,
    time::ROWS,
    people::ROWS,
    places::ROWS,
    weather::ROWS,
    things::ROWS,
    games::ROWS,
    hall::ROWS,
    outdoors::ROWS,
    nature::ROWS,
    making::ROWS,
];

/// Everything in the bank.
pub fn all() -> impl Iterator<Item = &'static Phrases> {
    GROUPS.iter().copied().flatten()
}

/// What can be said about a picture under these words; `None` where they are not usual for it in
/// any kind of English.
pub fn phrases(symbol: &SymbolId, label: &str) -> Option<&'static Phrases> {
    let found = all().find(|p| p.symbol == symbol.as_str())?;
    let label = plain(label);
    let same = |word: &str| plain(word) == label;
    let english = |l: &&lexicon::Lexicon| l.language.primary() == Language::default().primary();
    let usual = || {
        let mut lexicons = lexicon::lexicons().iter().filter(english);
        lexicons.any(|l| same(l.label(symbol)) || l.words(symbol).iter().any(|w| same(w)))
    };
    (same(found.label) || usual()).then_some(found)
}

/// Words without what makes no difference: case, spaces around, the kind of apostrophe.
fn plain(words: &str) -> String {
    words.trim().to_lowercase().replace('’', "'")
}
