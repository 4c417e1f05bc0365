//! Rows of the chosen session in turns: what is asked at first, working it out in the background,
//! what came of it, and the one change that sets it.

use std::sync::Arc;

use super::Workbench;
use super::command::Notice;
use super::jobs::{Worked, WorkingOut};
use crate::check::arranged;
use crate::model::board::{self, Board};
use crate::model::club::Club;
use crate::model::edit::{self, Edit, TurnsEdit, TurnsPlan};
use crate::model::ids::{ActivityId, SessionId};
use crate::model::session::Session;
use crate::model::turns::{Station, Turns};
use crate::plan::rotation::{Answer, fewest_turns};
use crate::plan::turns::{Asked, QUIET, Round};

/// Minutes of a turn where no row says another number. Our own number.
const MINUTES: u32 = 10;

/// Turns being worked out, or those that were.
#[derive(Clone, Copy, Debug)]
pub enum Arranging<'a> {
    /// How much is done, from 0 to 1.
    Working(f32),
    /// What came out.
    Came(&'a Proposal),
}

/// What came of working turns out.
#[derive(Clone, Debug, PartialEq)]
pub struct Proposal {
    /// The turns, if there are any.
    pub plan: Option<Planned>,
    /// What is lost of the wishes, or why there are no turns, in sentences.
    pub words: Vec<String>,
}

/// Turns that can be used.
#[derive(Clone, Debug, PartialEq)]
pub struct Planned {
    /// As an edit sets them.
    pub plan: TurnsPlan,
    /// Whether it is proved that fewer turns do not do.
    pub fewest: bool,
    /// The session as it would be.
    pub session: Arc<Session>,
    /// The boards of all who come, as they would be.
    pub boards: Vec<Arc<Board>>,
}

/// What is said about turns as they are asked, or as they are.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Told {
    /// Who is free for the water, and how many can be in it at once.
    pub room: Vec<String>,
    /// What turns as they are lose of the wishes.
    pub losses: Vec<String>,
}

/// What is asked at first: the rows in the water, turns as long as the longest of these, as few as
/// possible, a quiet place for whoever waits if the club has one.
pub fn suggested(club: &Club, session: &Session) -> Asked {
    let wet = session.timetable.iter();
    let wet = wet.filter(|s| s.off.is_none() && club.in_water(s.activity));
    let minutes = wet.clone().map(|s| s.minutes).max();
    let station = |slot| Station {
        slot,
        capacity: None,
    };
    Asked {
        rows: wet.map(|s| station(s.id)).collect(),
        turns: None,
        minutes: minutes.unwrap_or(MINUTES),
        waiting: quiet_place(club),
        friends: Default::default(),
    }
}

fn quiet_place(club: &Club) -> Option<ActivityId> {
    let quiet = |a: &&Arc<_>| {
        let a: &crate::model::club::Activity = a;
        a.symbol.as_str() == QUIET
    };
    club.activities.iter().find(quiet).map(|a| a.id)
}

/// What is said about what is asked, and about turns as they are.
pub fn told(
    club: &Club,
    session: &Session,
    boards: &[Arc<Board>],
    asked: &Asked,
    turns: Option<&Turns>,
) -> Told {
    let wet = |s: &Station| {
        let row = session.slot(s.slot);
        row.is_some_and(|r| club.in_water(r.activity))
    };
    let room = || {
        let round = Round::new(club, session, boards, asked.clone());
        let fewest = || fewest_turns(&round.rotation).unwrap_or(1);
        let count = asked.turns.map_or_else(fewest, |n| n as usize);
        arranged::room(club, &round, count)
    };
    let losses = |turns: &Turns| {
        let round = Round::new(club, session, boards, Asked::of(session, turns));
        arranged::losses(club, session, &round, &round.losses(turns))
    };
    Told {
        room: asked.rows.iter().any(wet).then(room).unwrap_or_default(),
        losses: turns.map(losses).unwrap_or_default(),
    }
}

/// What turns are worked out of: another club or another session is another matter.
type Of = (u64, Option<SessionId>);

/// Working out, and what came of it.
#[derive(Debug, Default)]
pub(super) struct Turning {
    of: Of,
    working: Option<WorkingOut<Of>>,
    came: Option<Proposal>,
}

impl Turning {
    /// What of it is shown.
    pub fn view(&self) -> Option<Arranging<'_>> {
        match (&self.working, &self.came) {
            (Some(working), _) => Some(Arranging::Working(working.done())),
            (None, came) => came.as_ref().map(Arranging::Came),
        }
    }

    /// Stops, and forgets what came.
    pub fn drop_it(&mut self) {
        self.working = None;
        self.came = None;
    }

    /// After a change of the club or the choice: what was of something else is dropped.
    pub fn follow(&mut self, of: Of) {
        if self.of != of {
            self.drop_it();
            self.of = of;
        }
    }
}

impl Workbench {
    pub(super) fn work_out_turns(&mut self, asked: Asked) {
        let club = self.history.club();
        let Some(session) = self.choice.session_of(club) else {
            return self.tell(Notice::trouble(
                "There is no session yet.",
                "Add one, and put activities into its timetable.",
            ));
        };
        if asked.rows.is_empty() {
            return self.tell(Notice::trouble(
                "No rows are named for turns.",
                "Tick the rows that are done in turns.",
            ));
        }
        let boards: Vec<_> = self.derived.boards().iter().map(|b| b.1.clone()).collect();
        let round = Round::new(club, session, &boards, asked);
        self.turning.drop_it();
        self.turning.working = WorkingOut::start(self.turning.of, round);
        self.notice = None;
        if self.turning.working.is_none() {
            self.tell(Notice::trouble(
                "The computer is too busy to work turns out.",
                "Close other programs and try again.",
            ));
        }
    }

    /// Takes in what was worked out; true if anything changed.
    pub(super) fn poll_turns(&mut self) -> bool {
        let Some(working) = &mut self.turning.working else {
            return false;
        };
        let of = *working.key();
        match working.poll() {
            Worked::On(changed) => return changed,
            Worked::Ended(all) => {
                self.turning.working = None;
                let (round, answer) = *all;
                if of == self.turning.of {
                    self.turning.came = self.proposal(&round, &answer);
                }
            }
            Worked::Lost => {
                self.turning.working = None;
                self.tell(Notice::trouble(
                    "Working out turns ended by a fault of this program.",
                    "Ask for fewer rows or more turns, or put the rows in turns by hand.",
                ));
            }
        }
        true
    }

    fn proposal(&self, round: &Round, answer: &Answer) -> Option<Proposal> {
        let club = self.history.club();
        let session = self.choice.session_of(club)?;
        let Answer::Found(found) = answer else {
            return Some(Proposal {
                plan: None,
                words: arranged::none(club, session, round, answer),
            });
        };
        let plan = round.plan(found);
        let change = Edit::Turns(session.id, TurnsEdit::Set(plan.clone()));
        match edit::apply(club, &change) {
            Ok((next, _)) => {
                let after = next.session(session.id)?.clone();
                let coming = next.attending(&after);
                let boards = coming.map(|p| Arc::new(board::derive(&next, &after, p.id)));
                Some(Proposal {
                    words: arranged::losses(club, session, round, &found.losses),
                    plan: Some(Planned {
                        plan,
                        fewest: found.fewest,
                        boards: boards.collect(),
                        session: after,
                    }),
                })
            }
            Err(refused) => Some(Proposal {
                plan: None,
                words: vec![refused.sentence, refused.hint],
            }),
        }
    }

    /// One change: Undo takes all of it back.
    pub(super) fn use_turns(&mut self) {
        let session = self.choice.session_of(self.history.club()).map(|s| s.id);
        let came = self.turning.came.take().and_then(|c| c.plan);
        match (session, came) {
            (Some(session), Some(planned)) => {
                self.edit(&Edit::Turns(session, TurnsEdit::Set(planned.plan)));
            }
            _ => self.tell(Notice::trouble(
                "No turns are worked out.",
                "Work them out first.",
            )),
        }
    }
}
