//! What follows from the club: boards, findings and sheets, made anew only when what they follow
//! from has changed. Sheets for many people are laid out in the background; until they are there the
//! earlier ones stay.

use std::sync::Arc;

use super::command::{Place, PrintChoice};
use super::jobs::{Came, LayingOut};
use crate::check;
use crate::layout::{self, Counts, Laid, Request, Sheet};
use crate::model::board::{self, Board};
use crate::model::club::Club;
use crate::model::finding::Finding;
use crate::model::ids::{ParticipantId, SessionId};
use crate::model::session::Session;
use crate::plan::water::{self, WaterDay};

/// Participants for whom sheets are laid out at once; for more it would be felt. Measured: all kinds
/// of sheets take some 6 to 9 milliseconds for each.
const AT_ONCE: usize = 16;

/// What everything here follows from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
struct Source {
    revision: u64,
    session: Option<SessionId>,
}

/// What sheets follow from.
type Wanted = (Source, Request);

/// Boards, findings and sheets of the chosen session.
#[derive(Debug, Default)]
pub(super) struct Derived {
    source: Option<Source>,
    boards: Vec<(ParticipantId, Arc<Board>)>,
    water: WaterDay,
    paired: water::Known,
    findings: Vec<Finding>,
    sheets: Vec<Sheet>,
    counts: Option<Counts>,
    /// What the sheets are of.
    shown: Option<Wanted>,
    /// What they should be of.
    wanted: Option<Wanted>,
    laying: LayingOut<Wanted>,
    times_laid: u64,
}

impl Derived {
    /// The board of everyone who comes, in the order of the list.
    pub fn boards(&self) -> &[(ParticipantId, Arc<Board>)] {
        &self.boards
    }

    /// Who is with whom in the water; dry while no session is chosen.
    pub const fn water(&self) -> &WaterDay {
        &self.water
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

    /// Whether other sheets are on their way.
    pub fn is_laying(&self) -> bool {
        self.wanted.is_some() && self.wanted != self.shown
    }

    /// Grows whenever the sheets are others.
    pub const fn times_laid(&self) -> u64 {
        self.times_laid
    }

    /// One participant's board.
    pub fn board(&self, who: ParticipantId) -> Option<&Board> {
        let mut boards = self.boards.iter();
        boards.find(|(id, _)| *id == who).map(|(_, b)| b.as_ref())
    }

    /// Forgets everything, for another club.
    pub fn clear(&mut self) {
        *self = Self {
            times_laid: self.times_laid + 1,
            ..Self::default()
        };
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
        self.water = session.map_or_else(WaterDay::default, |s| {
            water::day_again(club, s, &boards, &mut self.paired)
        });
        self.findings = check::run_on(club, session, &boards, &self.water);
    }

    /// Brings the sheets up to date while they are shown, and drops them when they are not.
    pub fn follow_sheets(&mut self, club: &Arc<Club>, place: Place, choice: &PrintChoice) {
        self.wanted = self
            .source
            .filter(|_| place == Place::Print)
            .and_then(|source| {
                let session = club.session(source.session?)?;
                Some((source, request(club, session, choice)))
            });
        let Some((source, request)) = self.wanted.clone() else {
            return self.put(None, Laid::default());
        };
        if !self.is_laying() {
            return;
        }
        if request.participants.len() <= AT_ONCE {
            let laid = layout::lay_out(club, &request);
            return self.put(Some((source, request)), laid);
        }
        // Sheets of another session are not kept: they would be taken for those of this one.
        let same = |(shown, _): &Wanted| shown.session == source.session;
        if !self.shown.as_ref().is_some_and(same) {
            self.put(None, Laid::default());
        }
        // One at a time: what is wanted by then follows when it has come.
        if self.laying.is_running() {
            return;
        }
        let key = (source, request.clone());
        if !self.laying.start(key, club.clone(), request.clone()) {
            let laid = layout::lay_out(club, &request);
            self.put(Some((source, request)), laid);
        }
    }

    /// Takes in what was laid out in the background: nothing, or whether it came out well. Sheets
    /// that are no longer wanted are dropped.
    pub fn poll_sheets(&mut self) -> Option<bool> {
        let (of, laid, well) = match self.laying.poll()? {
            Came::Laid(of, laid) => (of, laid, true),
            Came::Lost(of) => (of, Laid::default(), false),
        };
        if self.wanted.as_ref() == Some(&of) {
            self.put(Some(of), laid);
        }
        Some(well)
    }

    /// Puts sheets in place of those shown.
    fn put(&mut self, of: Option<Wanted>, laid: Laid) {
        if self.shown.is_some() || of.is_some() {
            self.times_laid += 1;
        }
        (self.sheets, self.counts) = (laid.sheets, laid.counts);
        self.shown = of;
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
