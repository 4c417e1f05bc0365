//! Counting heads: how many should be here at a moment, and whether that is how many are. Common
//! practice in school and club outings: whoever left early or is away with a helper is taken off
//! what is expected, and a difference of one is looked into like any other.

/// One count, as it is written down by hand.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Count {
    /// How many arrived.
    pub arrived: u32,
    /// How many of them left early.
    pub left_early: u32,
    /// How many are at the toilets with a helper.
    pub at_toilets: u32,
}

impl Count {
    /// How many should be here; nothing when more are away than arrived, which cannot be.
    pub const fn expected_here(self) -> Option<u32> {
        match self.arrived.checked_sub(self.left_early) {
            Some(rest) => rest.checked_sub(self.at_toilets),
            None => None,
        }
    }

    /// Whether it is time to stop and look: any difference, to either side.
    pub const fn stop_and_look(self, counted: u32) -> bool {
        match self.expected_here() {
            Some(expected) => expected != counted,
            None => true,
        }
    }
}

/// When heads are counted. Common practice for groups near water.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Occasion {
    /// When all have arrived.
    Arrival,
    /// Before anyone goes into the water.
    BeforeWater,
    /// Each time the helpers in the water change.
    HelperChange,
    /// When all are out of the water.
    LeavingWater,
    /// When all are back from the toilets.
    AfterToilets,
    /// Before anyone goes home.
    BeforeLeaving,
}

impl Occasion {
    /// All of them, in the order of a day.
    pub const ALL: [Self; 6] = [
        Self::Arrival,
        Self::BeforeWater,
        Self::HelperChange,
        Self::LeavingWater,
        Self::AfterToilets,
        Self::BeforeLeaving,
    ];

    /// In words.
    pub const fn label(self) -> &'static str {
        match self {
            Self::Arrival => "At arrival",
            Self::BeforeWater => "Before the water",
            Self::HelperChange => "Change of helpers",
            Self::LeavingWater => "Leaving the water",
            Self::AfterToilets => "After toilets",
            Self::BeforeLeaving => "Before leaving",
        }
    }

    /// Whether it only comes on a day with water.
    pub const fn is_of_water(self) -> bool {
        matches!(
            self,
            Self::BeforeWater | Self::HelperChange | Self::LeavingWater
        )
    }

    /// How many lines it takes on paper: helpers may change several times.
    pub const fn lines(self) -> usize {
        match self {
            Self::HelperChange => 2,
            _ => 1,
        }
    }
}
