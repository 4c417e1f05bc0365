//! What a story is made of: pages, sentences, small pictures.

use super::cards::Card;
use crate::model::ids::{StepRef, SymbolId};
use crate::model::rewriting::{LineRef, PageRef};
use crate::model::telling::Depth;

/// One participant's story for one session.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Story {
    /// What stands on its first page.
    pub title: String,
    /// The same in the second language, if someone wrote it.
    pub title_second: Option<String>,
    /// How much is written.
    pub depth: Depth,
    /// The pages in order.
    pub pages: Vec<StoryPage>,
    /// The second language, if there is one.
    pub second: Option<SecondShown>,
}

impl Story {
    /// The page with this name.
    pub fn page(&self, at: PageRef) -> Option<&StoryPage> {
        self.pages.iter().find(|p| p.at == at)
    }

    /// Every sentence in order, without those that are hidden.
    pub fn sentences(&self) -> impl Iterator<Item = &str> {
        self.pages.iter().flat_map(StoryPage::sentences)
    }

    /// Whether anything was changed by hand.
    pub fn is_rewritten(&self) -> bool {
        self.pages.iter().any(StoryPage::is_rewritten)
    }

    /// Whether pictures stand alone, without words.
    pub fn is_bare(&self) -> bool {
        self.depth == Depth::Pictures
    }

    /// Whether there is a second language that nobody read through.
    pub fn is_unread(&self) -> bool {
        let unchecked = self
            .second
            .as_ref()
            .is_some_and(|s| s.checked_by.is_empty());
        unchecked && self.pages.iter().any(StoryPage::is_in_second)
    }
}

/// What is said about the second language.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct SecondShown {
    /// Its tag by BCP 47.
    pub language: String,
    /// Whether it stands before the first.
    pub first: bool,
    /// Who read it through; empty while nobody did.
    pub checked_by: String,
    /// Headings and sentences that nobody wrote in it.
    pub missing: usize,
}

/// One page of a story.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct StoryPage {
    /// Its name, which stays when the timetable changes.
    pub at: PageRef,
    /// What the page is about.
    pub kind: PageKind,
    /// The words above, those of the board for a step.
    pub heading: String,
    /// The same in the second language, if someone wrote it.
    pub heading_second: Option<String>,
    /// The picture beside the sentences.
    pub symbol: SymbolId,
    /// The sentences in order.
    pub lines: Vec<Line>,
    /// Sentences that a person hid, where they would stand.
    pub hidden: Vec<Line>,
    /// The steps of the day in small, in the order of the board.
    pub small: Vec<Small>,
    /// The step it tells of, if it is one.
    pub step: Option<StepRef>,
    /// Whether a person changed the order of the sentences.
    pub reordered: bool,
}

impl StoryPage {
    /// The sentences that stand beside the large picture or above cards.
    pub fn plain(&self) -> impl Iterator<Item = &Line> {
        self.lines.iter().filter(|l| l.card.is_none())
    }

    /// The sentences with a card each.
    pub fn with_cards(&self) -> impl Iterator<Item = (&Card, &Line)> {
        self.lines
            .iter()
            .filter_map(|l| Some((l.card.as_ref()?, l)))
    }

    /// Whether cards stand on it, and no large picture.
    pub fn has_cards(&self) -> bool {
        !self.small.is_empty() || self.lines.iter().any(|l| l.card.is_some())
    }

    /// What is said, in order; nothing where a picture stands alone.
    pub fn sentences(&self) -> impl Iterator<Item = &str> {
        let lines = self.lines.iter().map(|l| l.text.as_str());
        lines.filter(|s| !s.is_empty())
    }

    /// Whether anything on it is said in the second language too.
    pub fn is_in_second(&self) -> bool {
        self.heading_second.is_some() || self.lines.iter().any(|l| l.second.is_some())
    }

    /// Whether anything on it was changed by hand.
    pub fn is_rewritten(&self) -> bool {
        self.reordered || !self.hidden.is_empty() || self.lines.iter().any(Line::is_rewritten)
    }

    /// The steps it tells of, in order.
    pub fn steps(&self) -> impl Iterator<Item = StepRef> {
        let small = self.small.iter().map(|s| s.step);
        let lines = self.lines.iter().filter_map(|l| l.step);
        self.step.into_iter().chain(small).chain(lines)
    }
}

/// A sentence on a page.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Line {
    /// Its name, which stays when it is told anew.
    pub at: LineRef,
    /// What it says.
    pub text: String,
    /// The same in the second language, if someone wrote it.
    pub second: Option<String>,
    /// What the program says here; nothing for one that a person added.
    pub told: Option<String>,
    /// Whether the program said something else when a person wrote it.
    pub stale: bool,
    /// The tile or card beside it.
    pub card: Option<Card>,
    /// The step it tells of on a page of several.
    pub step: Option<StepRef>,
    /// Whether that step is not today.
    pub off: bool,
}

impl Line {
    /// A sentence of the program.
    pub(super) fn told(at: LineRef, text: String) -> Self {
        Self {
            at,
            told: Some(text.clone()),
            text,
            second: None,
            stale: false,
            card: None,
            step: None,
            off: false,
        }
    }

    /// Whether a person wrote it, or wrote it in other words.
    pub fn is_rewritten(&self) -> bool {
        self.told.as_ref() != Some(&self.text)
    }
}

/// A step of the day in small.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Small {
    /// The step.
    pub step: StepRef,
    /// Its picture and words.
    pub card: Card,
    /// Whether it was not on the board last time.
    pub new: bool,
    /// Whether it is not today.
    pub off: bool,
}

/// What a page of a story is about.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum PageKind {
    /// Who, where and when.
    Title,
    /// What the day may bring.
    Day,
    /// All steps in small, and what is the same.
    Same,
    /// What is new.
    New,
    /// A step of the board.
    Step,
    /// A part of the day.
    Part,
    /// A step that is not done today.
    NotToday,
    /// What the change tile looks like.
    Change,
    /// What may come instead of an activity in the water.
    Dry,
    /// How to ask.
    Ask,
    /// How it ends and who collects.
    Ending,
}
