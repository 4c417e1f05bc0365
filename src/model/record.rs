//! What was seen in a session, written down afterwards: facts, not judgements. It comes up when the
//! next session is made.

use std::collections::{BTreeMap, BTreeSet};

use super::ids::{ActivityId, StepRef};

/// One participant's session as it was. Seen by the coordinator.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Record {
    /// How the board was used, if someone looked.
    pub used: Option<Used>,
    /// Steps that were done.
    pub done: BTreeSet<StepRef>,
    /// Steps that were changed on the day.
    pub changed: BTreeSet<StepRef>,
    /// What was chosen where there was a choice, in words.
    pub chose: String,
    /// The favourite, as shown by the participant and not guessed.
    pub favourite: Option<ActivityId>,
    /// What to change next time.
    pub next_time: String,
    /// What was picked at each choice when the day was gone through beforehand, in the words of the
    /// option.
    pub picked: BTreeMap<StepRef, String>,
    /// What was answered about steps when the day was gone through beforehand.
    pub answered: BTreeMap<StepRef, Answered>,
}

impl Record {
    /// Whether nothing was written down.
    pub fn is_empty(&self) -> bool {
        *self == Self::default()
    }
}

/// How a participant used the board. Published guidance on visual schedules asks for this after
/// each session (University of North Carolina, Steps for Implementation, 2009).
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Used {
    /// Without help.
    Alone,
    /// When someone pointed.
    Pointing,
    /// With help.
    Help,
    /// Not at all.
    NotAtAll,
}

impl Used {
    /// All of them, for lists.
    pub const ALL: [Self; 4] = [Self::Alone, Self::Pointing, Self::Help, Self::NotAtAll];

    /// In words.
    pub const fn label(self) -> &'static str {
        match self {
            Self::Alone => "Alone",
            Self::Pointing => "With pointing",
            Self::Help => "With help",
            Self::NotAtAll => "Not used",
        }
    }
}

/// How a participant answered a simple question about a step, in their own way: with a thumb, by
/// pointing, or by acting it out (guidance on social narratives asks for these instead of "do you
/// understand?": a US national autism standards manual for schools, seen in part).
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Answered {
    /// A thumb up.
    ThumbUp,
    /// A flat hand: not sure.
    NotSure,
    /// A thumb down: not good for them.
    NotGood,
    /// Pointed to it.
    Pointed,
    /// Pointed to another.
    PointedElsewhere,
    /// Acted it out, or showed it in another way.
    Showed,
    /// Did not, this time.
    DidNotShow,
}

impl Answered {
    /// All of them, for lists.
    pub const ALL: [Self; 7] = [
        Self::ThumbUp,
        Self::NotSure,
        Self::NotGood,
        Self::Pointed,
        Self::PointedElsewhere,
        Self::Showed,
        Self::DidNotShow,
    ];

    /// In words.
    pub const fn label(self) -> &'static str {
        match self {
            Self::ThumbUp => "thumb up",
            Self::NotSure => "not sure",
            Self::NotGood => "not good",
            Self::Pointed => "pointed to it",
            Self::PointedElsewhere => "pointed to another",
            Self::Showed => "showed it",
            Self::DidNotShow => "did not show it",
        }
    }
}
