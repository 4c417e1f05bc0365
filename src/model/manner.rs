//! How a board is given to a participant: in what form, how much at once, which way it runs, and
//! how what is finished is put away. Everything has a sensible first value; a person who knows the
//! participant decides, never the program.

use std::collections::BTreeMap;

use super::ids::ActivityId;

/// All that is said about the look and handling of one participant's board.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Manner {
    /// The usual form of a step.
    pub form: Form,
    /// Steps in another form than the usual one.
    pub mixed: BTreeMap<ActivityId, Mixed>,
    /// How much is shown at once.
    pub reach: Reach,
    /// Which way the steps run.
    pub run: Run,
    /// Where a finished step goes.
    pub finishing: Finishing,
}

impl Manner {
    /// The form of a step that shows this activity; a step that is no activity has the usual form.
    pub fn form_of(&self, activity: Option<ActivityId>) -> Form {
        let other = activity.and_then(|id| self.mixed.get(&id));
        other.map_or(self.form, |m| m.form)
    }

    /// The thing that stands for an activity on this participant's board, as they know it.
    pub fn thing_of(&self, activity: Option<ActivityId>) -> Option<&str> {
        let thing = activity.and_then(|id| self.mixed.get(&id))?.thing.as_str();
        (!thing.is_empty()).then_some(thing)
    }
}

/// One activity in a form of its own.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Mixed {
    /// The form.
    pub form: Form,
    /// The thing that stands for it, such as "the blue cup"; empty means the activity's usual one.
    pub thing: String,
}

/// In what form a step is understood, from concrete to abstract. The order is that of published
/// guidance on visual schedules (University of North Carolina, Steps for Implementation, 2009).
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Form {
    /// A real thing that is packed and handed over.
    Object,
    /// A photograph that is put in the place left for it.
    Photograph,
    /// A drawing with its words.
    #[default]
    Drawing,
    /// The words alone.
    Word,
    /// A whole sentence.
    Sentence,
}

impl Form {
    /// All of them, from concrete to abstract.
    pub const ALL: [Self; 5] = [
        Self::Object,
        Self::Photograph,
        Self::Drawing,
        Self::Word,
        Self::Sentence,
    ];

    /// In words.
    pub const fn label(self) -> &'static str {
        match self {
            Self::Object => "Object",
            Self::Photograph => "Photograph",
            Self::Drawing => "Drawing",
            Self::Word => "Word",
            Self::Sentence => "Sentence",
        }
    }
}

/// How many steps are shown at once.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Reach {
    /// One.
    One,
    /// Two: first, then.
    FirstThen,
    /// Two: now, next.
    NowNext,
    /// Three.
    Three,
    /// A part of the day.
    Part,
    /// The whole session.
    #[default]
    Whole,
}

impl Reach {
    /// All of them, from short to long.
    pub const ALL: [Self; 6] = [
        Self::One,
        Self::FirstThen,
        Self::NowNext,
        Self::Three,
        Self::Part,
        Self::Whole,
    ];

    /// In words.
    pub const fn label(self) -> &'static str {
        match self {
            Self::One => "One step",
            Self::FirstThen => "First, then",
            Self::NowNext => "Now and next",
            Self::Three => "Three steps",
            Self::Part => "A part of the day",
            Self::Whole => "The whole session",
        }
    }

    /// Most steps shown at once; `None` when the number is not what limits it.
    pub const fn steps(self) -> Option<usize> {
        match self {
            Self::One => Some(1),
            Self::FirstThen | Self::NowNext => Some(2),
            Self::Three => Some(3),
            Self::Part | Self::Whole => None,
        }
    }
}

/// Which way the steps of a board run.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Run {
    /// From top to bottom.
    #[default]
    Down,
    /// From left to right.
    LeftToRight,
    /// From right to left.
    RightToLeft,
}

impl Run {
    /// All of them, for lists.
    pub const ALL: [Self; 3] = [Self::Down, Self::LeftToRight, Self::RightToLeft];

    /// In words.
    pub const fn label(self) -> &'static str {
        match self {
            Self::Down => "Top to bottom",
            Self::LeftToRight => "Left to right",
            Self::RightToLeft => "Right to left",
        }
    }
}

/// What the participant does with a step that is finished.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Finishing {
    /// Puts its tile into a pouch.
    Pouch,
    /// Turns its tile over.
    TurnedOver,
    /// Moves its tile to a row of finished ones.
    #[default]
    FinishedRow,
    /// Ticks it.
    Tick,
}

impl Finishing {
    /// All of them, for lists.
    pub const ALL: [Self; 4] = [Self::Pouch, Self::TurnedOver, Self::FinishedRow, Self::Tick];

    /// In words.
    pub const fn label(self) -> &'static str {
        match self {
            Self::Pouch => "Into a pouch",
            Self::TurnedOver => "Turned over",
            Self::FinishedRow => "To the finished row",
            Self::Tick => "Ticked",
        }
    }
}
