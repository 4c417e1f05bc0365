//! What a check or a layout reports: a code, how serious, where, one sentence, and what to do.

use super::ids::{ActivityId, HelperId, ParticipantId, PictureId, SessionId, SlotId, StepRef};
use super::rewriting::PageRef;

/// Something a person should look at. Nothing is ever refused because of one.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Finding {
    /// How serious; the most serious sort first.
    pub severity: Severity,
    /// Which check speaks, such as `time.overrun`. The same code always means the same.
    pub code: &'static str,
    /// Where to look.
    pub spot: Spot,
    /// One plain sentence.
    pub sentence: String,
    /// What to do about it.
    pub hint: String,
}

/// How serious a finding is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Severity {
    /// Stop and look before anything is printed.
    StopAndLook,
    /// Look when there is time.
    Look,
    /// For your information.
    GoodToKnow,
}

impl Severity {
    /// In words.
    pub const fn label(self) -> &'static str {
        match self {
            Self::StopAndLook => "Stop and look",
            Self::Look => "Look",
            Self::GoodToKnow => "Good to know",
        }
    }
}

/// Where in the club a finding points to.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Spot {
    /// The club as a whole, its rules.
    Club,
    /// An activity.
    Activity(ActivityId),
    /// A participant's settings.
    Participant(ParticipantId),
    /// A helper's settings.
    Helper(HelperId),
    /// A picture of the club's own.
    Picture(PictureId),
    /// A session as a whole.
    Session(SessionId),
    /// A row of a timetable.
    Slot(SessionId, SlotId),
    /// Who is with whom in the water of a session, at a row or as a whole.
    Water(SessionId, Option<SlotId>),
    /// A participant's board.
    Board(SessionId, ParticipantId),
    /// A step on a board.
    Step(SessionId, ParticipantId, StepRef),
    /// A page of a participant's story.
    Story(SessionId, ParticipantId, PageRef),
}
