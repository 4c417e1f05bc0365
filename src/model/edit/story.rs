//! Edits of stories: the words of a page, and who is beside whom on the day.

use std::sync::Arc;

use super::session::{find, find_mut};
use super::{Made, Refused};
use crate::model::club::Club;
use crate::model::ids::{HelperId, ParticipantId, SessionId};
use crate::model::limits;
use crate::model::rewriting::{PageRef, PageWords};

/// Words of a page without anything in them are taken out: the page is as told.
pub(super) fn page(
    club: &mut Club,
    id: SessionId,
    who: ParticipantId,
    at: PageRef,
    words: &PageWords,
) -> Result<Made, Refused> {
    there(club, who)?;
    let words = limits::story::tidy_page(words);
    limits::story::page(&words)?;
    let session = find_mut(club, id)?;
    let before = session.stories.get(&who).and_then(|s| s.page(at));
    let wanted = (!words.is_empty()).then_some(&words);
    if before == wanted {
        return Ok(Made::Nothing);
    }
    let stories = &mut Arc::make_mut(session).stories;
    let story = stories.entry(who).or_default();
    if words.is_empty() {
        story.pages.remove(&at);
    } else {
        story.pages.insert(at, words);
    }
    if story.pages.is_empty() {
        stories.remove(&who);
    }
    Ok(Made::Nothing)
}

/// The whole story as told again.
pub(super) fn as_told(club: &mut Club, id: SessionId, who: ParticipantId) -> Result<Made, Refused> {
    there(club, who)?;
    let session = find_mut(club, id)?;
    if session.stories.contains_key(&who) {
        Arc::make_mut(session).stories.remove(&who);
    }
    Ok(Made::Nothing)
}

pub(super) fn beside(
    club: &mut Club,
    id: SessionId,
    who: ParticipantId,
    helper: Option<HelperId>,
) -> Result<Made, Refused> {
    there(club, who)?;
    if helper.is_some_and(|h| club.helper(h).is_none()) {
        return Err(Refused::gone("helper"));
    }
    if find(club, id)?.beside.get(&who).copied() == helper {
        return Ok(Made::Nothing);
    }
    let beside = &mut Arc::make_mut(find_mut(club, id)?).beside;
    match helper {
        Some(helper) => beside.insert(who, helper),
        None => beside.remove(&who),
    };
    Ok(Made::Nothing)
}

fn there(club: &Club, who: ParticipantId) -> Result<(), Refused> {
    let found = club.participant(who).map(|_| ());
    found.ok_or_else(|| Refused::gone("participant"))
}
