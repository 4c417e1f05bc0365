//! Names for things: a number each, given once in a club and never used again.

use std::fmt;
use std::sync::Arc;

macro_rules! id {
    ($(#[$doc:meta])* $name:ident) => {
        $(#[$doc])*
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
        pub struct $name(pub u32);

        impl fmt::Display for $name {
            fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                write!(f, "{}", self.0)
            }
        }
    };
}

id!(
    /// A part of the day.
    PartId
);
id!(
    /// An activity of the club.
    ActivityId
);
id!(
    /// A participant.
    ParticipantId
);
id!(
    /// A helper.
    HelperId
);
id!(
    /// A kind of certificate that the club asks for.
    AwardId
);
id!(
    /// A song or chant of the club.
    SongId
);
id!(
    /// A session: one date.
    SessionId
);
id!(
    /// One row of a session's timetable.
    SlotId
);
id!(
    /// A step that is a participant's own, not from the timetable.
    OwnId
);

id!(
    /// A step that a participant has on every board, in a place of their own.
    StandingId
);

id!(
    /// A picture of the club's own.
    PictureId
);

impl AwardId {
    /// In an edit: one that is new and gets its id with the edit.
    pub const NEW: Self = Self(u32::MAX);
}

impl StandingId {
    /// In an edit: one that is new and gets its id with the edit.
    pub const NEW: Self = Self(u32::MAX);
}

/// What a step on a board came from.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum StepRef {
    /// A row of the timetable.
    Slot(SlotId),
    /// The participant's own, added by hand for one session.
    Own(OwnId),
    /// What comes instead of a row of the timetable that is not today.
    Instead(SlotId),
    /// The participant's own on every board: beside this row, or beside a part of the day.
    Standing(StandingId, Option<SlotId>),
}

impl StepRef {
    /// The row of the timetable it stands for or beside.
    pub const fn slot(self) -> Option<SlotId> {
        match self {
            Self::Slot(id) | Self::Instead(id) => Some(id),
            Self::Standing(_, beside) => beside,
            Self::Own(_) => None,
        }
    }
}

/// Which picture: the name of a symbol, such as `sunscreen`. May name one that does not exist.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct SymbolId(pub Arc<str>);

impl SymbolId {
    /// From its name.
    pub fn new(name: &str) -> Self {
        Self(name.into())
    }

    /// Its name.
    pub fn as_str(&self) -> &str {
        &self.0
    }
}

impl fmt::Display for SymbolId {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}
