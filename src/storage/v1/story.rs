//! The words of a club file for stories: how they are told, and what was changed in them by hand.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};

use super::settings::words;
use super::{Step, is_false};
use crate::model::club;
use crate::model::ids::{PartId, ParticipantId};
use crate::model::rewriting::{self, About, LineRef, PageRef, PageWords, Rewriting};
use crate::model::telling;

/// What is said around an activity.
#[derive(Serialize, Deserialize, Default)]
#[serde(deny_unknown_fields)]
pub(super) struct Around {
    #[serde(default, skip_serializing_if = "String::is_empty")]
    who: String,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    strong: String,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    helps: String,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    why: String,
}

impl From<Around> for club::Around {
    fn from(a: Around) -> Self {
        Self {
            who: a.who,
            strong: a.strong,
            helps: a.helps,
            why: a.why,
        }
    }
}

/// Nothing when nothing is said.
pub(super) fn write_around(a: &club::Around) -> Option<Around> {
    (*a != club::Around::default()).then(|| Around {
        who: a.who.clone(),
        strong: a.strong.clone(),
        helps: a.helps.clone(),
        why: a.why.clone(),
    })
}

words!(
    Depth = telling::Depth {
        Pictures,
        Word,
        Short,
        Full
    }
);
words!(
    Pages = telling::Pages {
        AsFits,
        Steps,
        Parts,
        News
    }
);
words!(
    Ask = telling::Ask {
        Help,
        Stop,
        Break,
        Toilet
    }
);

/// How a story is told.
#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Telling {
    #[serde(default, skip_serializing_if = "Option::is_none")]
    depth: Option<Depth>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pages: Option<Pages>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    letters_pt: Option<u32>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pronouns: Option<Pronouns>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    asks: Vec<Asks>,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    collects: String,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    second: Option<Second>,
}

#[derive(Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
enum Pronouns {
    She,
    He,
    Own {
        subject: String,
        object: String,
        possessive: String,
        reflexive: String,
    },
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Asks {
    #[serde(rename = "for")]
    ask: Ask,
    words: String,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Second {
    language: String,
    #[serde(default, skip_serializing_if = "is_false")]
    first: bool,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    checked_by: String,
    #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
    texts: BTreeMap<String, String>,
}

impl From<Telling> for telling::Telling {
    fn from(t: Telling) -> Self {
        let second = t.second.map(|s| telling::Second {
            language: s.language,
            first: s.first,
            checked_by: s.checked_by,
            texts: s.texts,
        });
        Self {
            depth: t.depth.map_or_else(Default::default, Into::into),
            pages: t.pages.map_or_else(Default::default, Into::into),
            letters: t.letters_pt,
            pronouns: t.pronouns.map_or_else(Default::default, read_pronouns),
            asks: t
                .asks
                .into_iter()
                .map(|a| (a.ask.into(), a.words))
                .collect(),
            collects: t.collects,
            second,
        }
    }
}

fn read_pronouns(p: Pronouns) -> telling::Pronouns {
    match p {
        Pronouns::She => telling::Pronouns::She,
        Pronouns::He => telling::Pronouns::He,
        Pronouns::Own {
            subject,
            object,
            possessive,
            reflexive,
        } => telling::Pronouns::Own(Box::new(telling::OwnPronouns {
            subject,
            object,
            possessive,
            reflexive,
        })),
    }
}

fn write_pronouns(p: &telling::Pronouns) -> Option<Pronouns> {
    match p {
        telling::Pronouns::They => None,
        telling::Pronouns::She => Some(Pronouns::She),
        telling::Pronouns::He => Some(Pronouns::He),
        telling::Pronouns::Own(own) => Some(Pronouns::Own {
            subject: own.subject.clone(),
            object: own.object.clone(),
            possessive: own.possessive.clone(),
            reflexive: own.reflexive.clone(),
        }),
    }
}

/// Nothing when it is told as usual.
pub(super) fn write_telling(t: &telling::Telling) -> Option<Telling> {
    let usual = telling::Telling::default();
    let asks = t.asks.iter().map(|(ask, words)| Asks {
        ask: (*ask).into(),
        words: words.clone(),
    });
    (*t != usual).then(|| Telling {
        depth: (t.depth != usual.depth).then(|| t.depth.into()),
        pages: (t.pages != usual.pages).then(|| t.pages.into()),
        letters_pt: t.letters,
        pronouns: write_pronouns(&t.pronouns),
        asks: asks.collect(),
        collects: t.collects.clone(),
        second: t.second.as_ref().map(|s| Second {
            language: s.language.clone(),
            first: s.first,
            checked_by: s.checked_by.clone(),
            texts: s.texts.clone(),
        }),
    })
}

/// What was changed by hand in the story of a participant.
#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Story {
    pub(super) participant: u32,
    pages: Vec<Page>,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Page {
    page: PageName,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    texts: Vec<Rewritten>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    hidden: Vec<LineName>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    added: Vec<Added>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    order: Vec<LineName>,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Rewritten {
    line: LineName,
    text: String,
    was: String,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Added {
    number: u32,
    text: String,
}

/// A page: `title`, `step slot-12`, `part 3`, `part 3 turn 1`, `dry 0`.
#[derive(Clone, Serialize, Deserialize)]
#[serde(try_from = "String", into = "String")]
struct PageName(PageRef);

impl TryFrom<String> for PageName {
    type Error = String;
    fn try_from(text: String) -> Result<Self, String> {
        let page = match text.split_once(' ') {
            None => match text.as_str() {
                "title" => Some(PageRef::Title),
                "day" => Some(PageRef::Day),
                "same" => Some(PageRef::Same),
                "new" => Some(PageRef::New),
                "change" => Some(PageRef::Change),
                "ask" => Some(PageRef::Ask),
                "ending" => Some(PageRef::Ending),
                _ => None,
            },
            Some(("step", step)) => Some(PageRef::Step(Step::try_from(step.to_owned())?.0)),
            Some(("dry", n)) => n.parse().ok().map(PageRef::Dry),
            Some(("part", rest)) => part(rest),
            Some(_) => None,
        };
        page.map(Self)
            .ok_or_else(|| format!("“{text}” is no page of a story such as title or step slot-12"))
    }
}

fn part(rest: &str) -> Option<PageRef> {
    let (id, turn) = match rest.split_once(" turn ") {
        None => (rest, 0),
        Some((id, turn)) => (id, turn.parse().ok()?),
    };
    Some(PageRef::Part(PartId(id.parse().ok()?), turn))
}

impl From<PageName> for String {
    fn from(page: PageName) -> Self {
        match page.0 {
            PageRef::Title => "title".into(),
            PageRef::Day => "day".into(),
            PageRef::Same => "same".into(),
            PageRef::New => "new".into(),
            PageRef::Change => "change".into(),
            PageRef::Ask => "ask".into(),
            PageRef::Ending => "ending".into(),
            PageRef::Step(at) => format!("step {}", Self::from(Step(at))),
            PageRef::Dry(n) => format!("dry {n}"),
            PageRef::Part(id, 0) => format!("part {id}"),
            PageRef::Part(id, turn) => format!("part {id} turn {turn}"),
        }
    }
}

/// A sentence: `happens 0`, `step slot-12`, `added 2`.
#[derive(Clone, Serialize, Deserialize)]
#[serde(try_from = "String", into = "String")]
struct LineName(LineRef);

impl TryFrom<String> for LineName {
    type Error = String;
    fn try_from(text: String) -> Result<Self, String> {
        let line = match text.split_once(' ') {
            Some(("step", step)) => Some(LineRef::Step(Step::try_from(step.to_owned())?.0)),
            Some(("added", n)) => n.parse().ok().map(LineRef::Added),
            Some((word, n)) => About::ALL
                .into_iter()
                .find(|a| a.word() == word)
                .zip(n.parse().ok())
                .map(|(about, n)| LineRef::Told(about, n)),
            None => None,
        };
        line.map(Self)
            .ok_or_else(|| format!("“{text}” is no sentence of a story such as happens 0"))
    }
}

impl From<LineName> for String {
    fn from(line: LineName) -> Self {
        match line.0 {
            LineRef::Told(about, n) => format!("{} {n}", about.word()),
            LineRef::Step(at) => format!("step {}", Self::from(Step(at))),
            LineRef::Added(n) => format!("added {n}"),
        }
    }
}

/// # Errors
/// When a page is there twice.
pub(super) fn read_story(story: Story) -> Result<Rewriting, String> {
    let mut pages = BTreeMap::new();
    for page in story.pages {
        let name = String::from(page.page.clone());
        let lines = |l: Vec<LineName>| l.into_iter().map(|l| l.0);
        let texts = page.texts.into_iter().map(|r| {
            let (text, was) = (r.text, r.was);
            (r.line.0, rewriting::Rewritten { text, was })
        });
        let words = PageWords {
            texts: texts.collect(),
            hidden: lines(page.hidden).collect(),
            added: page.added.into_iter().map(|a| (a.number, a.text)).collect(),
            order: lines(page.order).collect(),
        };
        let words = crate::model::limits::story::tidy_page(&words);
        if !words.is_empty() && pages.insert(page.page.0, words).is_some() {
            return Err(format!("the page “{name}” is there twice."));
        }
    }
    Ok(Rewriting { pages })
}

pub(super) fn write_story(who: ParticipantId, story: &Rewriting) -> Story {
    let page = |(at, words): (&PageRef, &PageWords)| Page {
        page: PageName(*at),
        texts: words
            .texts
            .iter()
            .map(|(line, r)| Rewritten {
                line: LineName(*line),
                text: r.text.clone(),
                was: r.was.clone(),
            })
            .collect(),
        hidden: words.hidden.iter().map(|l| LineName(*l)).collect(),
        added: words
            .added
            .iter()
            .map(|(number, text)| Added {
                number: *number,
                text: text.clone(),
            })
            .collect(),
        order: words.order.iter().map(|l| LineName(*l)).collect(),
    };
    Story {
        participant: who.0,
        pages: story.pages.iter().map(page).collect(),
    }
}

/// Who is beside a participant.
#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Beside {
    pub(super) participant: u32,
    pub(super) helper: u32,
}
