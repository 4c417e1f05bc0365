//! What follows from the club: boards, findings and sheets, made anew only when what they follow
//! from has changed.

use std::sync::Arc;

use super::command::{Place, PrintChoice};
use crate::check;
use crate::layout::{self, Counts, Laid, Request, Sheet};
use crate::model::board::{self, Board};
use crate::model::club::Club;
use crate::model::finding::Finding;
use crate::model::ids::{ParticipantId, SessionId};
use crate::model::session::Session;

/// What everything here follows from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
struct Source {
    revision: u64,
    session: Option<SessionId>,
}

/// Boards, findings and sheets of the chosen session.
#[derive(Debug, Default)]
pub(super) struct Derived {
    source: Option<Source>,
    boards: Vec<(ParticipantId, Arc<Board>)>,
    findings: Vec<Finding>,
    sheets: Vec<Sheet>,
    counts: Option<Counts>,
    sheets_of: Option<(Source, PrintChoice)>,
}

impl Derived {
    /// The board of everyone who comes, in the order of the list.
    pub fn boards(&self) -> &[(ParticipantId, Arc<Board>)] {
        &self.boards
    }

    /// What should be looked at.
    pub fn findings(&self) -> &[Finding] {
        &self.findings
    }

    /// The sheets of the print choice; empty outside the place where they are shown.
    pub fn sheets(&self) -> &[Sheet] {
        &self.sheets
    }

    /// How much making the tiles of the print choice is.
    pub fn counts(&self) -> Option<&Counts> {
        self.counts.as_ref()
    }

    /// One participant's board.
    pub fn board(&self, who: ParticipantId) -> Option<&Board> {
        let mut boards = self.boards.iter();
        boards.find(|(id, _)| *id == who).map(|(_, b)| b.as_ref())
    }

    /// Forgets everything, for another club.
    pub fn clear(&mut self) {
        *self = Self::default();
    }

    /// Brings boards and findings up to date. A board that comes out equal stays the same `Arc`.
    pub fn follow(&mut self, club: &Club, revision: u64, session: Option<&Session>) {
        let source = Source {
            revision,
            session: session.map(|s| s.id),
        };
        if self.source == Some(source) {
            return;
        }
        self.source = Some(source);
        let before = std::mem::take(&mut self.boards);
        self.boards = session.map_or_else(Vec::new, |session| {
            club.attending(session)
                .map(|p| (p.id, kept(&before, board::derive(club, session, p.id))))
                .collect()
        });
        let boards: Vec<_> = self.boards.iter().map(|(_, b)| b.clone()).collect();
        self.findings = check::run_on(club, session, &boards);
    }

    /// Brings the sheets up to date while they are shown, and drops them when they are not.
    pub fn follow_sheets(&mut self, club: &Club, place: Place, choice: &PrintChoice) {
        let Some(source) = self.source.filter(|_| place == Place::Print) else {
            self.sheets_of = None;
            self.sheets.clear();
            self.counts = None;
            return;
        };
        let wanted = (source, choice.clone());
        if self.sheets_of.as_ref() == Some(&wanted) {
            return;
        }
        let session = source.session.and_then(|id| club.session(id));
        let request = session.map(|session| request(club, session, choice));
        let laid = request.map_or_else(Laid::default, |r| layout::lay_out(club, &r));
        (self.sheets, self.counts) = (laid.sheets, laid.counts);
        self.sheets_of = Some(wanted);
    }
}

/// The earlier `Arc` of an equal board, or a new one.
fn kept(before: &[(ParticipantId, Arc<Board>)], board: Board) -> Arc<Board> {
    let same = before.iter().find(|(_, b)| **b == board);
    same.map_or_else(|| Arc::new(board), |(_, b)| b.clone())
}

/// What a print choice asks of layout: for the chosen, or for everyone who comes.
pub(super) fn request(club: &Club, session: &Session, choice: &PrintChoice) -> Request {
    let chosen = |p: &ParticipantId| choice.participants.as_ref().is_none_or(|c| c.contains(p));
    Request {
        session: session.id,
        participants: club
            .attending(session)
            .map(|p| p.id)
            .filter(chosen)
            .collect(),
        kinds: choice.kinds.clone(),
        paper: choice.paper,
        turn: choice.turn,
        ink: choice.ink,
        only_missing: choice.only_missing,
    }
}
