//! What a day may bring that is hard for some: wind, heat, a loud place. Known ones have a picture;
//! anything else is said in the club's own words. They inform people; they decide nothing.

use super::ids::SymbolId;

/// One condition of a day.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Condition {
    /// One that the program has a picture for.
    Known(Known),
    /// In the club's own words, such as "the road is closed".
    Words(String),
}

impl Condition {
    /// In words.
    pub fn label(&self) -> &str {
        match self {
            Self::Known(known) => known.label(),
            Self::Words(words) => words,
        }
    }

    /// Its picture, if there is one.
    pub fn symbol(&self) -> Option<SymbolId> {
        match self {
            Self::Known(known) => Some(SymbolId::new(known.symbol())),
            Self::Words(_) => None,
        }
    }
}

/// A condition with a picture. Common practice: what clubs by the water, in halls and in parks tell
/// families about.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[expect(missing_docs, reason = "the words below say all there is")]
pub enum Known {
    Windy,
    BigWaves,
    Seaweed,
    Stingers,
    Hot,
    Bright,
    HotSand,
    Cold,
    Rain,
    Thunder,
    Loud,
    Crowded,
}

impl Known {
    /// All of them, for lists.
    pub const ALL: [Self; 12] = [
        Self::Windy,
        Self::BigWaves,
        Self::Seaweed,
        Self::Stingers,
        Self::Hot,
        Self::Bright,
        Self::HotSand,
        Self::Cold,
        Self::Rain,
        Self::Thunder,
        Self::Loud,
        Self::Crowded,
    ];

    /// In words.
    pub const fn label(self) -> &'static str {
        self.row().0
    }

    /// As written in files and tables.
    pub const fn word(self) -> &'static str {
        self.row().1
    }

    /// The name of its picture.
    pub const fn symbol(self) -> &'static str {
        self.row().2
    }

    /// The one with this word.
    pub fn from_word(word: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|k| k.word() == word)
    }

    const fn row(self) -> (&'static str, &'static str, &'static str) {
        match self {
            Self::Windy => ("Windy", "windy", "windy"),
            Self::BigWaves => ("Big waves", "big-waves", "big_waves"),
            Self::Seaweed => ("Seaweed", "seaweed", "seaweed"),
            Self::Stingers => ("Stingers", "stingers", "stingers"),
            Self::Hot => ("Hot", "hot", "hot"),
            Self::Bright => ("Bright light", "bright", "sunny"),
            Self::HotSand => ("Hot sand", "hot-sand", "hot_sand"),
            Self::Cold => ("Cold", "cold", "cold_day"),
            Self::Rain => ("Rain", "rain", "rain"),
            Self::Thunder => ("Thunder", "thunder", "thunder"),
            Self::Loud => ("Loud place", "loud", "too_loud"),
            Self::Crowded => ("Crowded", "crowded", "group"),
        }
    }
}
