//! What telling needs at every page, and how a page is begun.

use super::cards::Card;
use super::page::{Line, PageKind, StoryPage};
use super::voice::Speaker;
use crate::model::board::Board;
use crate::model::club::Club;
use crate::model::ids::SymbolId;
use crate::model::people::Participant;
use crate::model::rewriting::{About, LineRef, PageRef};
use crate::model::session::Session;
use crate::model::telling::Depth;

/// Whose story of which day is told.
pub(super) struct Teller<'a> {
    pub club: &'a Club,
    pub session: &'a Session,
    pub board: &'a Board,
    pub who: &'a Participant,
    pub speaker: Speaker,
}

impl Teller<'_> {
    /// How much is written.
    pub fn depth(&self) -> Depth {
        self.who.telling.depth
    }

    /// Whether the text is for someone who reads.
    pub fn is_full(&self) -> bool {
        self.depth() == Depth::Full
    }
}

/// A sentence about something, the first of its kind on its page.
pub(super) fn line(about: About, text: String) -> Line {
    nth(about, 0, text)
}

/// One of several sentences about something.
pub(super) fn nth(about: About, n: usize, text: String) -> Line {
    let n = u32::try_from(n).unwrap_or(u32::MAX);
    Line::told(LineRef::Told(about, n), text)
}

/// A page with sentences beside a picture.
pub(super) fn page(
    (at, kind): (PageRef, PageKind),
    heading: String,
    symbol: SymbolId,
    lines: Vec<Line>,
) -> StoryPage {
    StoryPage {
        at,
        kind,
        heading,
        heading_second: None,
        symbol,
        lines,
        hidden: Vec::new(),
        small: Vec::new(),
        step: None,
        reordered: false,
    }
}

/// A sentence with a card beside it.
pub(super) fn beside(card: Card, line: Line) -> Line {
    Line {
        card: Some(card),
        ..line
    }
}

/// A label as part of a sentence: trimmed, without a full stop at its end; "This" for none.
pub(super) fn named(label: &str) -> String {
    match label.trim().trim_end_matches('.').trim_end() {
        "" => "This".to_owned(),
        l => l.to_owned(),
    }
}
