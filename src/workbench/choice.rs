//! What is chosen: a place, a session, a participant and a step; kept sane whatever is removed.

use jiff::civil::Date;

use super::command::Place;
use crate::model::board::Board;
use crate::model::club::Club;
use crate::model::edit::Made;
use crate::model::finding::Spot;
use crate::model::ids::{ParticipantId, SessionId, StepRef};
use crate::model::rewriting::PageRef;
use crate::model::session::Session;

/// What is chosen, with where it stood in its list, so that its neighbour follows when it is gone.
#[derive(Clone, Debug, Default)]
pub(super) struct Choice {
    pub place: Place,
    pub session: Option<SessionId>,
    pub participant: Option<ParticipantId>,
    pub step: Option<StepRef>,
    /// Whether Boards shows the story rather than the board.
    pub story: bool,
    session_at: usize,
    participant_at: usize,
    step_at: usize,
}

impl Choice {
    /// For a club just opened: the next session from `today` on, or else the last one.
    pub fn for_club(club: &Club, today: Date, place: Place) -> Self {
        let next = club.sessions.iter().find(|s| s.date >= today);
        let session = next.or(club.sessions.last()).map(|s| s.id);
        let mut choice = Self {
            place,
            session,
            ..Self::default()
        };
        choice.settle(club);
        choice
    }

    /// The chosen session.
    pub fn session_of<'a>(&self, club: &'a Club) -> Option<&'a Session> {
        club.session(self.session?).map(AsRef::as_ref)
    }

    /// Chooses what an edit made.
    pub fn follow(&mut self, made: Made) {
        match made {
            Made::Session(id) => self.session = Some(id),
            Made::Participant(id) => self.participant = Some(id),
            Made::Slot(id) => self.step = Some(StepRef::Slot(id)),
            Made::Own(id) => self.step = Some(StepRef::Own(id)),
            Made::Nothing
            | Made::Part(_)
            | Made::Activity(_)
            | Made::Picture(_)
            | Made::Song(_)
            | Made::Helper(_) => {}
        }
    }

    /// Goes to where a finding points.
    pub fn go_to(&mut self, spot: Spot) {
        match spot {
            Spot::Club | Spot::Activity(_) => self.place = Place::Session,
            Spot::Participant(who) => {
                self.place = Place::People;
                self.participant = Some(who);
            }
            Spot::Helper(_) | Spot::Picture(_) => self.place = Place::People,
            Spot::Session(session) => {
                self.place = Place::Session;
                self.session = Some(session);
            }
            Spot::Water(session, _) => {
                self.place = Place::Session;
                self.session = Some(session);
            }
            Spot::Slot(session, slot) => {
                self.place = Place::Session;
                self.session = Some(session);
                self.step = Some(StepRef::Slot(slot));
            }
            Spot::Board(session, who) => {
                self.place = Place::Boards;
                self.story = false;
                self.session = Some(session);
                self.participant = Some(who);
                self.step = None;
                self.story = false;
            }
            Spot::Story(session, who, page) => {
                self.place = Place::Boards;
                self.story = true;
                self.session = Some(session);
                self.participant = Some(who);
                self.step = match page {
                    PageRef::Step(step) => Some(step),
                    _ => None,
                };
            }
            Spot::Step(session, who, step) => {
                self.place = Place::Boards;
                self.story = false;
                self.session = Some(session);
                self.participant = Some(who);
                self.step = Some(step);
                self.story = false;
            }
        }
    }

    /// After a change of the club or of the choice: what is gone gives way to its neighbour. At
    /// Boards only who comes can be chosen; elsewhere everyone.
    pub fn settle(&mut self, club: &Club) {
        let sessions: Vec<SessionId> = club.sessions.iter().map(|s| s.id).collect();
        settle_one(&sessions, &mut self.session, &mut self.session_at);
        let all = || club.participants.iter().map(|p| p.id).collect::<Vec<_>>();
        let coming = |s| club.attending(s).map(|p| p.id).collect::<Vec<_>>();
        let session = self.session_of(club);
        let known = self
            .participant
            .is_some_and(|who| club.participant(who).is_some());
        let people = match session {
            Some(session) if self.place == Place::Boards || !known => coming(session),
            _ => all(),
        };
        settle_one(&people, &mut self.participant, &mut self.participant_at);
    }

    /// After a change of the board or timetable: a step that is gone gives way to the one in its
    /// place. Session shows rows of the timetable, every other place steps of the board.
    pub fn settle_step(&mut self, club: &Club, board: Option<&Board>) {
        if self.step.is_none() {
            return;
        }
        let steps: Vec<StepRef> = if self.place == Place::Session {
            let session = self.session_of(club);
            let slots = session.map_or(&[][..], |s| &s.timetable);
            slots.iter().map(|s| StepRef::Slot(s.id)).collect()
        } else {
            let steps = board.map_or(&[][..], |b| &b.steps);
            steps.iter().map(|s| s.at).collect()
        };
        settle_one(&steps, &mut self.step, &mut self.step_at);
    }
}

/// Keeps `chosen` if it is in the list and notes where; otherwise takes what stands there now.
fn settle_one<T: Copy + PartialEq>(list: &[T], chosen: &mut Option<T>, at: &mut usize) {
    let found = chosen.and_then(|c| list.iter().position(|l| *l == c));
    *at = found.unwrap_or((*at).min(list.len().saturating_sub(1)));
    *chosen = list.get(*at).copied();
}
