//! How a step differs from the timetable, in the words of the group's table.

use crate::model::board::{By, Step, StepState};

/// How a step differs, as the group's table says it: never by colour alone.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Differs {
    /// Not at all.
    No,
    /// Something else than in the timetable.
    Swapped,
    /// A step of their own.
    Own,
    /// Not done today.
    NotToday,
    /// Not done today by anyone.
    CalledOff,
    /// It comes instead of what is not today.
    Instead,
    /// Something can be chosen.
    Choice,
    /// It stands elsewhere.
    Moved,
    /// It has other words.
    OwnWords,
}

impl Differs {
    /// How a step differs; of several ways the one that says most.
    pub fn of(step: &Step) -> Self {
        match &step.state {
            StepState::NotToday if step.by == By::Timetable => Self::CalledOff,
            StepState::NotToday => Self::NotToday,
            _ if !step.options.is_empty() => Self::Choice,
            StepState::Instead { .. } => Self::Instead,
            StepState::Swapped { .. } => Self::Swapped,
            StepState::Own => Self::Own,
            StepState::AsTimetable if step.moved => Self::Moved,
            StepState::AsTimetable if step.relabelled => Self::OwnWords,
            StepState::AsTimetable => Self::No,
        }
    }

    /// In words.
    pub const fn label(self) -> &'static str {
        match self {
            Self::No => "as the timetable",
            Self::Swapped => "swapped",
            Self::Own => "own",
            Self::NotToday => "not today",
            Self::CalledOff => "called off",
            Self::Instead => "instead",
            Self::Choice => "choice",
            Self::Moved => "moved",
            Self::OwnWords => "own words",
        }
    }
}
