//! The only way a club changes. Each edit names what a person meant; applying it keeps every
//! invariant or refuses with a sentence and changes nothing.

use jiff::civil::{Date, Time};

use super::club::{Activity, Rules};
use super::hand::Content;
use super::ids::{ActivityId, HelperId, OwnId, PartId, ParticipantId, SessionId, SlotId, StepRef};
use super::people::{Helper, Participant};

/// One change. Positions count from zero; one past the end is the end.
#[derive(Clone, Debug, PartialEq)]
pub enum Edit {
    /// Renames the club.
    ClubName(String),
    /// Sets the club's rules.
    Rules(Rules),
    /// Adds a part of the day at the end.
    AddPart(String),
    /// Renames a part of the day.
    RenamePart(PartId, String),
    /// Moves a part of the day to a position.
    MovePart(PartId, usize),
    /// Removes a part that nothing uses.
    RemovePart(PartId),
    /// Adds an activity; its id is given anew.
    AddActivity(Activity),
    /// Sets all of an activity.
    ChangeActivity(Activity),
    /// Removes an activity that no timetable uses.
    RemoveActivity(ActivityId),
    /// Adds a participant; the id is given anew.
    AddParticipant(Participant),
    /// Sets all of a participant.
    ChangeParticipant(Participant),
    /// Moves a participant in the list.
    MoveParticipant(ParticipantId, usize),
    /// Removes a participant with all their hand changes.
    RemoveParticipant(ParticipantId),
    /// Adds a helper; the id is given anew.
    AddHelper(Helper),
    /// Sets all of a helper.
    ChangeHelper(Helper),
    /// Removes a helper.
    RemoveHelper(HelperId),
    /// Adds a session with an empty timetable.
    AddSession(SessionDetails),
    /// Adds a session with another one's timetable, without its hand changes.
    CopySession(SessionId, SessionDetails),
    /// Sets title, date, start and place.
    ChangeSession(SessionId, SessionDetails),
    /// Removes a session.
    RemoveSession(SessionId),
    /// Says whether a participant comes.
    Attend(SessionId, ParticipantId, bool),
    /// Says whether a helper comes.
    HelperAttends(SessionId, HelperId, bool),
    /// One change to a timetable.
    Timetable(SessionId, TimetableEdit),
    /// One change by hand to a board.
    Board(SessionId, ParticipantId, BoardEdit),
}

/// What is said about a session besides its timetable.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct SessionDetails {
    /// What it is called on paper.
    pub title: String,
    /// The day.
    pub date: Date,
    /// When it begins.
    pub start: Time,
    /// Where.
    pub place: String,
}

/// One change to a timetable.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum TimetableEdit {
    /// Inserts an activity at a position, with its usual part and minutes.
    Insert(ActivityId, usize),
    /// Moves a slot to a position (counted after taking it out).
    Move(SlotId, usize),
    /// Puts another activity in a slot; minutes stay.
    Replace(SlotId, ActivityId),
    /// Sets a slot's minutes.
    Minutes(SlotId, u32),
    /// Sets a slot's part of the day.
    Part(SlotId, PartId),
    /// Removes a slot.
    Remove(SlotId),
}

/// One change by hand to a board.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum BoardEdit {
    /// Adds an own step at a position.
    Insert(Content, usize),
    /// Moves a step to a position (counted after taking it out).
    Move(StepRef, usize),
    /// Shows something else in a timetable step, or in an own step.
    Replace(StepRef, Content),
    /// Other words under a step; the activity's own words take the change back.
    Relabel(StepRef, String),
    /// Takes a step off: an own step goes, a timetable step is "not today" and stays visible.
    TakeOff(StepRef),
    /// Takes back all hand changes of one timetable step.
    Restore(StepRef),
    /// Takes back all hand changes of the board.
    RestoreAll,
}

/// What applying an edit made, for selecting it afterwards.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Made {
    /// Nothing new.
    Nothing,
    /// A part of the day.
    Part(PartId),
    /// An activity.
    Activity(ActivityId),
    /// A participant.
    Participant(ParticipantId),
    /// A helper.
    Helper(HelperId),
    /// A session.
    Session(SessionId),
    /// A row of a timetable.
    Slot(SlotId),
    /// An own step.
    Own(OwnId),
}

/// Why an edit was not made: one sentence and what to do.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Refused {
    /// What is in the way.
    pub sentence: String,
    /// What to do.
    pub hint: String,
}
