//! What is looked at in a place before and during a session: each point with who looked, when, what
//! was seen, and a note. It is written down; nothing is computed from it.
//!
//! The points are common practice for groups by the water, in the words of published guidance for
//! schools and lifesaving clubs, put into our own.

use jiff::civil::Time;

/// Points looked at together.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum LookGroup {
    /// Who else is there and what they say.
    Patrol,
    /// Wind and sky.
    Sky,
    /// The water.
    Water,
    /// Sand, ground and what lies there.
    Ground,
    /// Ways, shade, rooms.
    Place,
    /// Boundaries, signals and kit.
    Kit,
    /// Counts.
    People,
}

impl LookGroup {
    /// All of them, in order.
    pub const ALL: [Self; 7] = [
        Self::Patrol,
        Self::Sky,
        Self::Water,
        Self::Ground,
        Self::Place,
        Self::Kit,
        Self::People,
    ];

    /// In words.
    pub const fn label(self) -> &'static str {
        match self {
            Self::Patrol => "Patrol and flags",
            Self::Sky => "Wind, sun and sky",
            Self::Water => "The water",
            Self::Ground => "Sand and ground",
            Self::Place => "Ways, shade, rooms",
            Self::Kit => "Signals and kit",
            Self::People => "People",
        }
    }

    /// Its points, in order.
    pub fn looks(self) -> impl Iterator<Item = Look> {
        Look::ALL.into_iter().filter(move |l| l.group() == self)
    }
}

macro_rules! looks {
    ($($name:ident: $group:ident, $word:literal, $label:literal;)*) => {
        /// A point of the check list.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
        #[expect(missing_docs, reason = "the words below say all there is")]
        pub enum Look {
            $($name,)*
        }

        impl Look {
            /// All of them, in the order of the sheet.
            pub const ALL: [Self; [$(Self::$name),*].len()] = [$(Self::$name),*];

            /// Where it stands.
            pub const fn group(self) -> LookGroup {
                match self { $(Self::$name => LookGroup::$group,)* }
            }

            /// As written in files.
            pub const fn word(self) -> &'static str {
                match self { $(Self::$name => $word,)* }
            }

            /// In words.
            pub const fn label(self) -> &'static str {
                match self { $(Self::$name => $label,)* }
            }
        }
    };
}

looks! {
    Patrol: Patrol, "patrol", "Lifeguard or patrol is there, and was spoken to";
    Flags: Patrol, "flags", "Flags, and where the area is today";
    Notices: Patrol, "notices", "Notices: water quality, algae, stingers, animals";
    Wind: Sky, "wind", "Wind: how strong, from where, gusts; offshore drifts floats out";
    Uv: Sky, "uv", "UV Index, and when it is highest";
    Heat: Sky, "heat", "Heat or cold";
    Storm: Sky, "storm", "Storm: sky, radar, thunder heard";
    Waves: Water, "waves", "Waves: height, kind, dumping on a steep edge";
    Currents: Water, "currents", "Currents and drift along the shore: where";
    Tide: Water, "tide", "Tide now, when it turns, how much shore is left";
    Depth: Water, "depth", "Drop-offs, banks, depth";
    Clarity: Water, "clarity", "How clear the water is";
    WaterWarmth: Water, "water-warmth", "How warm the water is";
    Animals: Water, "animals", "Stingers, rays, sea lice, animals";
    Weed: Water, "weed", "Weed in the water and on the shore: slips, hides, smells";
    Litter: Ground, "litter", "Glass, hooks, needles, wood, rocks";
    Holes: Ground, "holes", "Holes: filled, none deeper than the knee of the smallest digger";
    HotGround: Ground, "hot-ground", "Hot sand or ground";
    Others: Place, "others", "Dogs, craft, crowds, noise";
    Access: Place, "access", "Way in, mat, parking";
    Toilets: Place, "toilets", "Toilets are open; a place to change";
    Shade: Place, "shade", "Shade is up";
    Quiet: Place, "quiet", "Quiet place is up and can be seen";
    Emergency: Place, "emergency", "Name of the place for whoever is called; way in for them";
    Boundary: Kit, "boundary", "Boundary markers and stop line";
    Recall: Kit, "recall", "Signal to come out was tried, and one that can be seen";
    Rescue: Kit, "rescue", "Rescue aids";
    Phone: Kit, "phone", "Telephone has a signal and a dry case";
    FirstAid: Kit, "first-aid", "First-aid kit, and where the defibrillator is";
    Adults: People, "adults", "Adults counted, by what they do";
    Participants: People, "participants", "Participants counted";
}

impl Look {
    /// The one with this word.
    pub fn from_word(word: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|l| l.word() == word)
    }
}

/// What was seen at one point.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Looked {
    /// The point.
    pub look: Look,
    /// When, local time.
    pub at: Time,
    /// By whom.
    pub by: String,
    /// A value, or yes or no.
    pub seen: String,
    /// What else there is to say.
    pub note: String,
}
