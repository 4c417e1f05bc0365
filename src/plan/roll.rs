//! Counting heads: how many should be here at a moment, and whether that is how many are. Common
//! practice in school and club outings: whoever left early or is away with a helper is taken off
//! what is expected, and a difference of one is looked into like any other.

use super::clock::Moment;
use crate::model::ids::ParticipantId;

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

/// What was seen of someone, in one entry of the roll. Nothing here says "absent": no answer only
/// means that nobody has seen them yet.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Seen {
    /// They came, or were seen here; a gesture is an answer like any word.
    Here,
    /// They went to the toilets with a helper.
    ToToilets,
    /// They came back from there.
    Back,
    /// They left before the end.
    LeftEarly,
}

/// One entry of the roll.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Entry {
    /// Who was seen.
    pub who: ParticipantId,
    /// What was seen.
    pub seen: Seen,
    /// When.
    pub at: Moment,
}

/// Where someone is, as far as the roll knows.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord)]
pub enum Whereabouts {
    /// Nobody has seen them: go and look, ask again.
    #[default]
    NotYetSeen,
    /// With the group.
    WithGroup,
    /// At the toilets with a helper.
    AtToilets,
    /// Gone home early.
    LeftEarly,
}

impl Whereabouts {
    /// In words.
    pub const fn label(self) -> &'static str {
        match self {
            Self::NotYetSeen => "Not yet seen",
            Self::WithGroup => "With the group",
            Self::AtToilets => "At the toilets with a helper",
            Self::LeftEarly => "Left early",
        }
    }
}

/// Where someone is at a moment: what the last entry about them until then says. Entries come in
/// any order; of two in the same minute the later one in the list counts.
pub fn whereabouts(entries: &[Entry], who: ParticipantId, at: Moment) -> Whereabouts {
    let until = entries.iter().filter(|e| e.who == who && e.at <= at);
    match until.max_by_key(|e| e.at).map(|e| e.seen) {
        None => Whereabouts::NotYetSeen,
        Some(Seen::Here | Seen::Back) => Whereabouts::WithGroup,
        Some(Seen::ToToilets) => Whereabouts::AtToilets,
        Some(Seen::LeftEarly) => Whereabouts::LeftEarly,
    }
}

/// Where all of a group are at one moment.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Tally {
    /// What is written down for the head count.
    pub count: Count,
    /// Whom nobody has seen yet, in the order of the group.
    pub not_yet_seen: Vec<ParticipantId>,
}

/// Where all of a group are at a moment. Whoever left or went to the toilets had arrived, even if
/// that was not entered.
pub fn tally(group: &[ParticipantId], entries: &[Entry], at: Moment) -> Tally {
    let mut tally = Tally::default();
    for who in group {
        let place = whereabouts(entries, *who, at);
        let count = &mut tally.count;
        match place {
            Whereabouts::NotYetSeen => tally.not_yet_seen.push(*who),
            Whereabouts::WithGroup => {}
            Whereabouts::AtToilets => count.at_toilets += 1,
            Whereabouts::LeftEarly => count.left_early += 1,
        }
        count.arrived += u32::from(place != Whereabouts::NotYetSeen);
    }
    tally
}

/// What is known at each occasion of a day on which heads are counted, in the order of time.
pub fn day(
    group: &[ParticipantId],
    entries: &[Entry],
    counted_at: &[(Occasion, Moment)],
) -> Vec<(Occasion, Moment, Tally)> {
    let mut all: Vec<_> = counted_at
        .iter()
        .map(|&(occasion, at)| (occasion, at, tally(group, entries, at)))
        .collect();
    all.sort_by_key(|(occasion, at, _)| (*at, *occasion));
    all
}
