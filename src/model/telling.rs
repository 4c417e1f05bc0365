//! How a participant's story is told: how much of it, in what pages, in which letters, with which
//! pronouns, and in a second language. A story goes home to the family; everything here may be read
//! by whoever sees it.

use std::collections::BTreeMap;

/// All that is said about the telling of one participant's story.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Telling {
    /// How much is written.
    pub depth: Depth,
    /// What stands on a page.
    pub pages: Pages,
    /// Letters of the story on paper in points; as the large print asks where nothing is said.
    pub letters: Option<u32>,
    /// Pronouns, as the family gave them.
    pub pronouns: Pronouns,
    /// How they ask, as the story may say it: `press {my} button`. A card is named where nothing is
    /// said.
    pub asks: BTreeMap<Ask, String>,
    /// Who collects, as the story may say it: "Dad". A trusted grown-up where nothing is said.
    pub collects: String,
    /// The story in a second language.
    pub second: Option<Second>,
}

/// Smallest and largest letters of a story in points. From 18: large print by the American Printing
/// House for the Blind (2011) and, as the ideal, by UKAAF (2012).
pub const LETTERS: std::ops::RangeInclusive<u32> = 18..=36;

/// How much of a story is written.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Depth {
    /// Pictures alone.
    Pictures,
    /// A picture and its words.
    Word,
    /// One to three short sentences a page.
    #[default]
    Short,
    /// Fuller text for someone who reads.
    Full,
}

impl Depth {
    /// All of them, from little to much.
    pub const ALL: [Self; 4] = [Self::Pictures, Self::Word, Self::Short, Self::Full];

    /// In words.
    pub const fn label(self) -> &'static str {
        match self {
            Self::Pictures => "Pictures alone",
            Self::Word => "A word",
            Self::Short => "Short sentences",
            Self::Full => "Fuller text",
        }
    }

    /// Whether there are sentences at all.
    pub const fn has_sentences(self) -> bool {
        matches!(self, Self::Short | Self::Full)
    }

    /// Most sentences on a page that the program chooses. One to three is what guidance on social
    /// narratives asks for (common practice); a reader may have more.
    pub const fn most(self) -> usize {
        match self {
            Self::Full => 5,
            _ => 3,
        }
    }
}

/// What stands on a page of a story.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Pages {
    /// A page a step the first time; later what is new and what is the same, if more is the same.
    #[default]
    AsFits,
    /// A page a step.
    Steps,
    /// A page a part of the day.
    Parts,
    /// What is new and what is the same since last time, in three or four pages.
    News,
}

impl Pages {
    /// All of them, in the order of a list.
    pub const ALL: [Self; 4] = [Self::AsFits, Self::Steps, Self::Parts, Self::News];

    /// In words.
    pub const fn label(self) -> &'static str {
        match self {
            Self::AsFits => "As fits",
            Self::Steps => "A page a step",
            Self::Parts => "A page a part of the day",
            Self::News => "What is new, what is the same",
        }
    }
}

/// Pronouns of a participant.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub enum Pronouns {
    /// They, them, their.
    #[default]
    They,
    /// She, her, her.
    She,
    /// He, him, his.
    He,
    /// As the family gave them.
    Own(Box<OwnPronouns>),
}

/// Pronouns in the family's own words.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct OwnPronouns {
    /// As "they" in "they walk".
    pub subject: String,
    /// As "them" in "for them".
    pub object: String,
    /// As "their" in "their hat".
    pub possessive: String,
    /// As "themselves".
    pub reflexive: String,
}

impl Pronouns {
    /// Subject, object, possessive, standing alone, reflexive: "they, them, their, theirs,
    /// themselves".
    pub fn forms(&self) -> [String; 5] {
        let plain = |forms: [&str; 5]| forms.map(str::to_owned);
        match self {
            Self::They => plain(["they", "them", "their", "theirs", "themselves"]),
            Self::She => plain(["she", "her", "her", "hers", "herself"]),
            Self::He => plain(["he", "him", "his", "his", "himself"]),
            Self::Own(own) => {
                let or = |word: &str, usual: &str| match word.trim() {
                    "" => usual.to_owned(),
                    word => word.to_owned(),
                };
                let possessive = or(&own.possessive, "their");
                let alone = match possessive.as_str() {
                    s if s.ends_with('s') => s.to_owned(),
                    s => format!("{s}s"),
                };
                [
                    or(&own.subject, "they"),
                    or(&own.object, "them"),
                    possessive,
                    alone,
                    or(&own.reflexive, "themselves"),
                ]
            }
        }
    }

    /// Whether a verb after the subject stands as after "they": "they walk", "she walks".
    pub fn is_plural(&self) -> bool {
        match self {
            Self::They => true,
            Self::She | Self::He => false,
            Self::Own(own) => matches!(own.subject.trim().to_lowercase().as_str(), "" | "they"),
        }
    }

    /// In words, for a list.
    pub fn label(&self) -> String {
        let forms = self.forms();
        format!("{}, {}, {}", forms[0], forms[1], forms[2])
    }
}

/// What a participant may ask for at any time.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Ask {
    /// Help.
    Help,
    /// That it stops.
    Stop,
    /// A break.
    Break,
    /// The toilet.
    Toilet,
}

impl Ask {
    /// All of them, in the order of the cards.
    pub const ALL: [Self; 4] = [Self::Help, Self::Stop, Self::Break, Self::Toilet];

    /// In words.
    pub const fn label(self) -> &'static str {
        match self {
            Self::Help => "Help",
            Self::Stop => "Stop",
            Self::Break => "Break",
            Self::Toilet => "Toilet",
        }
    }

    /// The picture of its card.
    pub const fn symbol(self) -> &'static str {
        match self {
            Self::Help => "help",
            Self::Stop => "stop",
            Self::Break => "break",
            Self::Toilet => "toilet",
        }
    }

    /// What it is asked for with, behind "I can press my button".
    pub const fn purpose(self) -> &'static str {
        match self {
            Self::Help => "for help",
            Self::Stop => "to stop",
            Self::Break => "for a break",
            Self::Toilet => "for the toilet",
        }
    }
}

/// A story in a second language: the family's or coordinator's own words for each sentence. They
/// hang on the sentence itself, so that they come again with it and are missing when it changes.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Second {
    /// Its tag by BCP 47, such as "ar".
    pub language: String,
    /// Whether it stands before the first language.
    pub first: bool,
    /// Who read it through; nobody yet where it is empty.
    pub checked_by: String,
    /// For each sentence or heading of the story, as it is said, the same in this language.
    pub texts: BTreeMap<String, String>,
}

impl Second {
    /// The same sentence in this language, if someone wrote it.
    pub fn of(&self, sentence: &str) -> Option<&str> {
        let text = self.texts.get(sentence)?;
        Some(text.trim()).filter(|t| !t.is_empty())
    }

    /// Sets a sentence. Whoever read it through has not read this one.
    pub fn set(&mut self, sentence: &str, text: &str) {
        if self.of(sentence).unwrap_or_default() == text.trim() {
            return;
        }
        self.checked_by.clear();
        if text.trim().is_empty() {
            self.texts.remove(sentence);
        } else {
            self.texts.insert(sentence.to_owned(), text.to_owned());
        }
    }

    /// Whether it is still to be read through by someone.
    pub fn is_unchecked(&self) -> bool {
        self.checked_by.trim().is_empty()
    }
}
