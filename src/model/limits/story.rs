//! What the words of stories may be.

use super::{LINES, LIST, count, text, tidy_line, whole};
use crate::model::club::Around;
use crate::model::edit::Refused;
use crate::model::rewriting::{PageWords, Rewriting, Rewritten};
use crate::model::telling::{LETTERS, OwnPronouns, Pronouns, Second, Telling};

/// Most sentences of a story in a second language that are kept.
const SECOND: usize = 20_000;

/// Tidies what is said around an activity.
pub(crate) fn tidy_around(a: &Around) -> Around {
    Around {
        who: tidy_line(&a.who),
        strong: tidy_line(&a.strong),
        helps: tidy_line(&a.helps),
        why: tidy_line(&a.why),
    }
}

/// Tidies the texts of a telling; what is empty goes.
pub(crate) fn tidy_telling(t: &Telling) -> Telling {
    let asks = t.asks.iter().map(|(ask, words)| (*ask, tidy_line(words)));
    Telling {
        pronouns: match &t.pronouns {
            Pronouns::Own(own) => Pronouns::Own(Box::new(OwnPronouns {
                subject: tidy_line(&own.subject),
                object: tidy_line(&own.object),
                possessive: tidy_line(&own.possessive),
                reflexive: tidy_line(&own.reflexive),
            })),
            other => other.clone(),
        },
        asks: asks.filter(|(_, words)| !words.is_empty()).collect(),
        collects: tidy_line(&t.collects),
        second: t.second.as_ref().map(tidy_second),
        ..t.clone()
    }
}

fn tidy_second(s: &Second) -> Second {
    let texts = s
        .texts
        .iter()
        .map(|(of, text)| (of.clone(), tidy_line(text)));
    Second {
        language: tidy_line(&s.language),
        first: s.first,
        checked_by: tidy_line(&s.checked_by),
        texts: texts.filter(|(_, text)| !text.is_empty()).collect(),
    }
}

/// Tidies the words of a page; empty sentences go.
pub(crate) fn tidy_page(words: &PageWords) -> PageWords {
    let texts = words.texts.iter().map(|(line, r)| {
        let text = tidy_line(&r.text);
        let was = r.was.clone();
        (*line, Rewritten { text, was })
    });
    let added = words.added.iter().map(|(n, text)| (*n, tidy_line(text)));
    PageWords {
        texts: texts.filter(|(_, r)| !r.text.is_empty()).collect(),
        added: added.filter(|(_, text)| !text.is_empty()).collect(),
        ..words.clone()
    }
}

/// Refuses what is said around an activity outside the bounds.
pub(crate) fn around(a: &Around) -> Result<(), Refused> {
    [&a.who, &a.strong, &a.helps, &a.why]
        .into_iter()
        .try_for_each(|s| text("A sentence", s))
}

/// Refuses a telling outside the bounds.
pub(crate) fn telling(t: &Telling) -> Result<(), Refused> {
    if let Some(letters) = t.letters {
        let what = "The size of the letters of a story";
        whole(what, " points", letters, *LETTERS.start(), *LETTERS.end())?;
    }
    if let Pronouns::Own(own) = &t.pronouns {
        for word in [&own.subject, &own.object, &own.possessive, &own.reflexive] {
            text("A pronoun", word)?;
        }
    }
    for words in t.asks.values() {
        text("How someone asks", words)?;
    }
    text("Who collects", &t.collects)?;
    let Some(second) = &t.second else {
        return Ok(());
    };
    text("The second language", &second.language)?;
    text("The name of who read it", &second.checked_by)?;
    count("sentences in a second language", second.texts.len(), SECOND)?;
    for (of, words) in &second.texts {
        text("A sentence", of)?;
        text("A sentence in the second language", words)?;
    }
    Ok(())
}

/// Refuses the words of a page outside the bounds.
pub(crate) fn page(words: &PageWords) -> Result<(), Refused> {
    count("sentences on a page", words.added.len(), LINES)?;
    count("sentences on a page", words.texts.len(), LINES)?;
    count("sentences on a page", words.order.len(), LIST)?;
    let texts = words.texts.values().flat_map(|r| [&r.text, &r.was]);
    texts
        .chain(words.added.values())
        .try_for_each(|s| text("A sentence", s))
}

/// Refuses changes of a story outside the bounds.
pub(crate) fn rewriting(r: &Rewriting) -> Result<(), Refused> {
    count("pages of a story that were changed", r.pages.len(), LIST)?;
    r.pages.values().try_for_each(page)
}
