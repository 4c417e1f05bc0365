//! Participants and helpers: what the program needs to know about each, and no more.

use std::collections::BTreeSet;

use super::award::Certificate;
use super::craft::TileShape;
use super::ids::{HelperId, ParticipantId, SymbolId};
use super::manner::Manner;
use super::privacy::{Class, Guarded};
use super::profile::Profile;
use super::standing::Standing;
use super::telling::Telling;
use crate::units::{Length, Size};

/// One who takes part and gets a board.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Participant {
    /// Their id.
    pub id: ParticipantId,
    /// The name the family wants on boards and tiles; never split or reordered.
    pub name: String,
    /// The picture or shape that stands for them where a name should not.
    pub mark: SymbolId,
    /// Printed side of their tiles, the shorter one; some shapes have sides of their own.
    pub tile: Length,
    /// Shape of their tiles.
    pub shape: TileShape,
    /// Whether their tiles come from the shared box, without their mark.
    pub shared_tiles: bool,
    /// Letter size of the words on their large-print board, in points.
    pub text_pt: u32,
    /// In whose voice their story speaks.
    pub voice: Voice,
    /// How their story is told.
    pub telling: Box<Telling>,
    /// How they are drawn in their symbols.
    pub figure: Figure,
    /// How their board is given.
    pub manner: Manner,
    /// What differs on every board of theirs.
    pub standing: Box<Standing>,
    /// What is known about them.
    pub profile: Profile,
    /// What their helper needs to know; for the helper's card, never for a board.
    pub helper_note: Guarded<String>,
}

impl Participant {
    /// Someone new, with everything as usual; the id is given when they are added.
    pub fn new(name: &str, mark: SymbolId, tile: Length) -> Self {
        Self {
            id: ParticipantId(0),
            name: name.to_owned(),
            mark,
            tile,
            shape: TileShape::default(),
            shared_tiles: false,
            text_pt: DEFAULT_TEXT_PT,
            voice: Voice::default(),
            telling: Box::default(),
            figure: Figure::default(),
            manner: Manner::default(),
            standing: Box::default(),
            profile: Profile::default(),
            helper_note: Guarded::new(Class::Helper, String::new()),
        }
    }
}

impl Participant {
    /// Printed size of their tiles.
    pub fn tile_size(&self) -> Size {
        self.shape.size(self.tile)
    }
}

/// Label size of a new participant's large-print board, in points.
pub const DEFAULT_TEXT_PT: u32 = 36;

/// In whose voice a story speaks.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Voice {
    /// "I walk to the water."
    #[default]
    I,
    /// "You walk to the water."
    You,
    /// "Noor walks to the water."
    Name,
}

impl Voice {
    /// All of them, for lists.
    pub const ALL: [Self; 3] = [Self::I, Self::You, Self::Name];

    /// In words.
    pub const fn label(self) -> &'static str {
        match self {
            Self::I => "I",
            Self::You => "You",
            Self::Name => "Name",
        }
    }
}

/// How the main person of a symbol is drawn.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub struct Figure {
    /// Their skin.
    pub skin: Skin,
    /// How old they look.
    pub age: Age,
}

/// How old the people who take part look in the symbols.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Age {
    /// Primary school.
    #[default]
    Child,
    /// Secondary school.
    Teen,
    /// Grown up.
    Adult,
}

impl Age {
    /// All of them, the youngest first.
    pub const ALL: [Self; 3] = [Self::Child, Self::Teen, Self::Adult];

    /// In words.
    pub const fn label(self) -> &'static str {
        match self {
            Self::Child => "Child",
            Self::Teen => "Teen",
            Self::Adult => "Adult",
        }
    }
}

/// Skin tones that the symbols can be drawn in.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Skin {
    /// The lightest.
    Light,
    /// Between light and tan.
    #[default]
    Warm,
    /// Between warm and deep.
    Tan,
    /// The darkest.
    Deep,
}

impl Skin {
    /// All of them, from light to deep.
    pub const ALL: [Self; 4] = [Self::Light, Self::Warm, Self::Tan, Self::Deep];

    /// In words.
    pub const fn label(self) -> &'static str {
        match self {
            Self::Light => "Light",
            Self::Warm => "Warm",
            Self::Tan => "Tan",
            Self::Deep => "Deep",
        }
    }
}

/// An adult who is there.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Helper {
    /// Their id.
    pub id: HelperId,
    /// The name as shown.
    pub name: String,
    /// What they do.
    pub roles: BTreeSet<Role>,
    /// Whose trainer they are.
    pub trains: BTreeSet<ParticipantId>,
    /// What they hold, as entered from the papers.
    pub certificates: Vec<Certificate>,
}

impl Helper {
    /// Someone new; the id is given when they are added.
    pub fn new(name: &str) -> Self {
        Self {
            id: HelperId(0),
            name: name.to_owned(),
            roles: BTreeSet::new(),
            trains: BTreeSet::new(),
            certificates: Vec::new(),
        }
    }
}

/// What a helper does in a session, as the club entered it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Role {
    /// Leads the group.
    Lead,
    /// Trains participants.
    Trainer,
    /// Goes into the water beside one participant.
    WaterSafety,
    /// Watches from the side and has no other job.
    Watcher,
    /// Holds the first-aid kit.
    FirstAid,
}

impl Role {
    /// All of them, for lists.
    pub const ALL: [Self; 5] = [
        Self::Lead,
        Self::Trainer,
        Self::WaterSafety,
        Self::Watcher,
        Self::FirstAid,
    ];

    /// In words.
    pub const fn label(self) -> &'static str {
        match self {
            Self::Lead => "Leads",
            Self::Trainer => "Trainer",
            Self::WaterSafety => "Water safety",
            Self::Watcher => "Watcher",
            Self::FirstAid => "First aid",
        }
    }
}
