//! The story of the chosen participant, told, measured and laid out: only while it is shown, and
//! anew only when what it follows from has changed.

use jiff::civil::Date;

use super::command::PrintChoice;
use super::derived;
use crate::layout::{self, InkChoice, SheetKind};
use crate::model::board::Board;
use crate::model::club::{Club, Paper};
use crate::model::ids::{ParticipantId, SessionId};
use crate::model::people::Participant;
use crate::model::rewriting::PageRef;
use crate::model::session::Session;
use crate::page::{Page, Source};
use crate::plan::since::since;
use crate::story::against::{self, Mismatch};
use crate::story::measure::{
    Balance, Counts, Kind, Remark, Teller, TwoWords, look, sentences, two_words,
};
use crate::story::{PageKind, Story, StoryPage, tell};

/// A story with all that is shown beside it.
#[derive(Debug)]
pub struct ToldStory {
    /// Whose it is.
    pub who: ParticipantId,
    /// What it says.
    pub story: Story,
    /// In what it does not agree with the board.
    pub mismatches: Vec<Mismatch>,
    /// How easy it is to read, whole.
    pub measures: Measures,
    /// The same a page, in the order of the story.
    pub each: Vec<PageMeasures>,
    /// The same thing called by two words.
    pub two_words: Vec<TwoWords>,
    /// What differs from the last session they came to; none for someone who comes first.
    pub last_time: Option<LastTime>,
    /// Its pages on paper.
    pub leaves: Vec<Page>,
    /// For each page of the story, the first and the last of its leaves.
    pub places: Vec<(usize, usize)>,
    /// Grows whenever it is told anew.
    pub times: u64,
}

impl ToldStory {
    /// The page with this name, and which one it is.
    pub fn page(&self, at: PageRef) -> Option<(usize, &StoryPage)> {
        let i = self.story.pages.iter().position(|p| p.at == at)?;
        Some((i, &self.story.pages[i]))
    }

    /// Which page of the story a leaf belongs to.
    pub fn page_of(&self, leaf: usize) -> Option<usize> {
        let mut places = self.places.iter();
        places.position(|(first, last)| (*first..=*last).contains(&leaf))
    }
}

/// What differs from the session a participant came to last.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct LastTime {
    /// What that session is called.
    pub title: String,
    /// Its day.
    pub date: Date,
    /// What was not there then, in words.
    pub new: Vec<String>,
    /// What was.
    pub same: Vec<String>,
    /// What was there then and is not now.
    pub gone: Vec<String>,
}

impl LastTime {
    fn of(club: &Club, session: &Session, board: &Board) -> Option<Self> {
        let since = since(club, session, board)?;
        let mut new = since.new;
        new.extend(since.other_place.then(|| "the place".to_owned()));
        new.extend(since.other_start.then(|| "the time it begins".to_owned()));
        Some(Self {
            title: since.last.title.trim().to_owned(),
            date: since.last.date,
            new,
            same: since.same,
            gone: since.gone,
        })
    }
}

/// How long and how easy to read some sentences are.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Measures {
    /// What the formulas count.
    pub counts: Counts,
    /// What the sentences do.
    pub balance: Balance,
}

impl Measures {
    fn of(texts: &[&str], teller: &Teller<'_>) -> Self {
        Self {
            counts: Counts::of(texts),
            balance: Balance::of(texts, teller),
        }
    }
}

/// What is measured of one page.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct PageMeasures {
    /// All of it.
    pub measures: Measures,
    /// Each of its lines: what its sentences do, and words a reader may trip over.
    pub lines: Vec<(Vec<Kind>, Vec<Remark>)>,
}

/// What a story follows from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
struct Key {
    revision: u64,
    session: SessionId,
    who: ParticipantId,
    paper: Paper,
    ink: InkChoice,
}

/// Keeps the story that is shown.
#[derive(Debug, Default)]
pub(super) struct Telling {
    key: Option<Key>,
    told: Option<ToldStory>,
    times: u64,
}

impl Telling {
    /// The story, while it is shown.
    pub const fn told(&self) -> Option<&ToldStory> {
        self.told.as_ref()
    }

    /// Nothing is shown: forgets it.
    pub fn drop_it(&mut self) {
        (self.key, self.told) = (None, None);
    }

    /// Brings it up to date for a participant who comes.
    pub fn follow(
        &mut self,
        (club, revision): (&Club, u64),
        session: &Session,
        (who, board): (&Participant, &Board),
        print: &PrintChoice,
    ) {
        let key = Key {
            revision,
            session: session.id,
            who: who.id,
            paper: print.paper,
            ink: print.ink,
        };
        if self.key == Some(key) {
            return;
        }
        self.key = Some(key);
        self.times += 1;
        let choice = PrintChoice {
            kinds: vec![SheetKind::Story],
            participants: Some(vec![who.id]),
            ..print.clone()
        };
        let laid = layout::lay_out(club, &derived::request(club, session, &choice));
        let leaves: Vec<Page> = laid.sheets.into_iter().flat_map(|s| s.pages).collect();
        let story = tell(club, session, board, who);
        let teller = Teller {
            voice: who.voice,
            name: &who.name,
        };
        let all: Vec<&str> = story.pages.iter().flat_map(|p| said(&story, p)).collect();
        let each = story.pages.iter().map(|p| measured(&story, p, &teller));
        self.told = Some(ToldStory {
            who: who.id,
            last_time: LastTime::of(club, session, board),
            mismatches: against::look(club, &story, board),
            measures: Measures::of(&all, &teller),
            each: each.collect(),
            two_words: two_words(&all),
            places: places(&story, &leaves),
            leaves,
            times: self.times,
            story,
        });
    }
}

/// Whether the lines of a page are sentences; else they are words under pictures, or none.
pub fn has_sentences(story: &Story, page: &StoryPage) -> bool {
    story.depth.has_sentences() || page.kind == PageKind::Title
}

fn said<'a>(story: &Story, page: &'a StoryPage) -> Vec<&'a str> {
    match has_sentences(story, page) {
        true => page.sentences().collect(),
        false => Vec::new(),
    }
}

fn measured(story: &Story, page: &StoryPage, teller: &Teller<'_>) -> PageMeasures {
    let kinds = |text: &str| {
        let mut kinds = Vec::new();
        for one in sentences(text) {
            let kind = Kind::of(one, teller.voice, teller.name);
            if !kinds.contains(&kind) {
                kinds.push(kind);
            }
        }
        kinds
    };
    let line = |text: &str| match has_sentences(story, page) {
        true => (kinds(text), look(text, teller)),
        false => (Vec::new(), Vec::new()),
    };
    PageMeasures {
        measures: Measures::of(&said(story, page), teller),
        lines: page.lines.iter().map(|l| line(&l.text)).collect(),
    }
}

/// On which leaves each page of the story stands: the leaves of a page bear its heading, and the
/// first one of a step is marked with the step.
fn places(story: &Story, leaves: &[Page]) -> Vec<(usize, usize)> {
    let heading = |leaf: &Page, page: &StoryPage| {
        let shown = leaf.title.split_once(": ").map(|(_, words)| words);
        shown.is_some_and(|words| words == page.heading)
    };
    let begins = |leaf: &Page, page: &StoryPage| {
        let marked = |step| leaf.blocks.iter().any(|b| b.source == Some(step));
        heading(leaf, page) && page.step.is_none_or(|s| marked(Source::Step(s)))
    };
    let mut places = Vec::with_capacity(story.pages.len());
    let mut next = 0;
    for (i, page) in story.pages.iter().enumerate() {
        let first = next.min(leaves.len().saturating_sub(1));
        next += 1;
        let follower = story.pages.get(i + 1);
        while leaves
            .get(next)
            .is_some_and(|l| heading(l, page) && follower.is_none_or(|f| !begins(l, f)))
        {
            next += 1;
        }
        places.push((first, next.min(leaves.len()).saturating_sub(1).max(first)));
    }
    places
}
