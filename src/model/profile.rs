//! What a person who knows the participant wrote down, one field a fact. The class of readers of a
//! field is part of the field: nobody chooses it, and no page can read a field above its own class.
//!
//! Which facts a club needs, and who may see them, follows common practice for one-page profiles in
//! sport and health (NHS England's guidance on health and care passports; the Child Protection in
//! Sport Unit's on photographs and names). Collect only what the session needs.

use std::collections::{BTreeMap, BTreeSet};

use jiff::civil::Date;

use super::conditions::Condition;
use super::ids::ActivityId;
use super::privacy::{Class, Guarded};

/// All that was written down about one participant.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Profile {
    /// The texts; a field without one is not in the map.
    texts: BTreeMap<Field, Guarded<String>>,
    /// Favourite activities, as shown by the participant. Seen by all who see the board.
    pub favourites: BTreeSet<ActivityId>,
    /// What is hard on some days, and what helps then. For the helper.
    hard: Guarded<BTreeMap<Condition, String>>,
    /// When the way the board is given was decided. For the helper.
    decision: Guarded<Decision>,
    /// Follows from the decision; kept apart because whoever sees the cards sees this tile.
    surprise_tile: bool,
    /// What is agreed about the water. For the helper.
    in_water: Guarded<InWater>,
    /// What the family agreed to. For the coordinator.
    papers: Guarded<Papers>,
}

impl Default for Profile {
    fn default() -> Self {
        Self {
            texts: BTreeMap::new(),
            favourites: BTreeSet::new(),
            hard: Guarded::new(Class::Helper, BTreeMap::new()),
            decision: Guarded::new(Class::Helper, Decision::default()),
            surprise_tile: false,
            in_water: Guarded::new(Class::Helper, InWater::default()),
            papers: Guarded::new(Class::Coordinator, Papers::default()),
        }
    }
}

/// When the way a board is given was decided, and when to look at it again.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Decision {
    /// The day it was decided.
    pub on: Option<Date>,
    /// The day to look at it again.
    pub review: Option<Date>,
    /// Whether to tell this participant of a change apart from the others and earlier.
    pub warn_of_changes: bool,
    /// Whether the family agreed to surprises on the board.
    pub surprises: bool,
    /// Whether whoever prints is to be told of small parts on this participant's tiles, whatever the
    /// size of a tile.
    pub small_parts: bool,
}

/// What is agreed about a participant in the water, where it can be compared with the day.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct InWater {
    /// How deep, in centimetres.
    pub depth_cm: Option<u32>,
    /// Whether they do not hear in the water, for hearing aids stay dry.
    pub without_hearing: bool,
}

/// What the family agreed to, and until when.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Papers {
    /// The day the family agreed that the club keeps this.
    pub agreed: Option<Date>,
    /// The day by which all of it is to be deleted.
    pub delete_by: Option<Date>,
    /// Where photographs may be used.
    pub photos: PhotoConsent,
    /// The day that was said.
    pub photos_on: Option<Date>,
}

impl Profile {
    /// A text, if a page of this class may show it; empty when there is none.
    pub fn for_page(&self, field: Field, page: Class) -> Option<&str> {
        match self.texts.get(&field) {
            Some(text) => text.for_page(page).map(String::as_str),
            None => (page >= field.class()).then_some(""),
        }
    }

    /// A text for the window and the file, where the person who entered it works on it.
    pub fn for_owner(&self, field: Field) -> &str {
        self.texts.get(&field).map_or("", |t| t.for_owner())
    }

    /// The same text with its class, for a page that reads what it may.
    pub fn guarded(&self, field: Field) -> Option<&Guarded<String>> {
        self.texts.get(&field)
    }

    /// Sets a text; nothing takes the field out.
    pub fn set(&mut self, field: Field, text: String) {
        if text.is_empty() {
            self.texts.remove(&field);
        } else {
            self.texts.insert(field, Guarded::new(field.class(), text));
        }
    }

    /// Every field that has a text, in the order of the fields.
    pub fn filled(&self) -> impl Iterator<Item = (Field, &Guarded<String>)> {
        self.texts.iter().map(|(field, text)| (*field, text))
    }

    /// What is hard on some days, and what helps then.
    pub const fn hard(&self) -> &Guarded<BTreeMap<Condition, String>> {
        &self.hard
    }

    /// Sets what is hard on some days.
    pub fn set_hard(&mut self, hard: BTreeMap<Condition, String>) {
        self.hard = Guarded::new(Class::Helper, hard);
    }

    /// When the way the board is given was decided.
    pub const fn decision(&self) -> &Guarded<Decision> {
        &self.decision
    }

    /// Sets that.
    pub fn set_decision(&mut self, decision: Decision) {
        self.surprise_tile = decision.surprises;
        self.decision = Guarded::new(Class::Helper, decision);
    }

    /// Whether a surprise tile lies with the cards: where the family agreed to surprises.
    pub const fn surprise_tile(&self) -> bool {
        self.surprise_tile
    }

    /// What is agreed about the water.
    pub const fn in_water(&self) -> &Guarded<InWater> {
        &self.in_water
    }

    /// Sets that.
    pub fn set_in_water(&mut self, in_water: InWater) {
        self.in_water = Guarded::new(Class::Helper, in_water);
    }

    /// What the family agreed to.
    pub const fn papers(&self) -> &Guarded<Papers> {
        &self.papers
    }

    /// Sets that.
    pub fn set_papers(&mut self, papers: Papers) {
        self.papers = Guarded::new(Class::Coordinator, papers);
    }

    /// Whether nothing was written down.
    pub fn is_empty(&self) -> bool {
        *self == Self::default()
    }
}

/// Where photographs of a participant may be used. Seen by the coordinator.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum PhotoConsent {
    /// Nowhere.
    #[default]
    None,
    /// On their own tiles only.
    OwnTiles,
    /// Within the group.
    Group,
    /// In the club's media.
    ClubMedia,
}

impl PhotoConsent {
    /// All of them, from narrow to wide.
    pub const ALL: [Self; 4] = [Self::None, Self::OwnTiles, Self::Group, Self::ClubMedia];

    /// In words.
    pub const fn label(self) -> &'static str {
        match self {
            Self::None => "No photographs",
            Self::OwnTiles => "Own tiles only",
            Self::Group => "Within the group",
            Self::ClubMedia => "Club media",
        }
    }
}

/// A group of fields, as they stand on the page of a participant.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Section {
    /// How the board is used and who decided it.
    Board,
    /// How they say the things that matter.
    Saying,
    /// How to talk with them.
    Talking,
    /// What they notice more or less than others.
    Senses,
    /// What helps and what they like.
    Helping,
    /// Changes from one thing to the next, and how they show how they are.
    Changes,
    /// Touch, toilet, changing.
    Body,
    /// Moving and the water.
    Water,
    /// Eating, alerts, contacts, papers.
    Sealed,
}

impl Section {
    /// All of them, in order.
    pub const ALL: [Self; 9] = [
        Self::Board,
        Self::Saying,
        Self::Talking,
        Self::Senses,
        Self::Helping,
        Self::Changes,
        Self::Body,
        Self::Water,
        Self::Sealed,
    ];

    /// In words.
    pub const fn label(self) -> &'static str {
        match self {
            Self::Board => "Using the board",
            Self::Saying => "How they say it",
            Self::Talking => "Talking together",
            Self::Senses => "Senses",
            Self::Helping => "What helps, what they like",
            Self::Changes => "Changes and signs",
            Self::Body => "Touch, toilet, changing",
            Self::Water => "Moving and water",
            Self::Sealed => "Sealed: alerts, contacts, papers",
        }
    }

    /// Its fields, in order.
    pub fn fields(self) -> impl Iterator<Item = Field> {
        Field::ALL.into_iter().filter(move |f| f.section() == self)
    }
}

macro_rules! fields {
    ($($(#[$doc:meta])* $name:ident: $section:ident, $class:ident, $word:literal, $label:literal;)*) => {
        /// One fact about a participant.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
        pub enum Field {
            $($(#[$doc])* $name,)*
        }

        impl Field {
            /// All of them, in the order of a page.
            pub const ALL: [Self; [$(Self::$name),*].len()] = [$(Self::$name),*];

            /// Where it stands.
            pub const fn section(self) -> Section {
                match self { $(Self::$name => Section::$section,)* }
            }

            /// The most open readers that may see it.
            pub const fn class(self) -> Class {
                match self { $(Self::$name => Class::$class,)* }
            }

            /// As written in files and tables.
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

fields! {
    /// One fixed sign to look at the board: words, an object, a tile in the hand.
    Cue: Board, Helper, "cue", "Cue to look at the board";
    /// The two to five words to say.
    ExactWords: Board, Helper, "exact-words", "Exact words to say";
    /// Where the board is kept and at what height.
    BoardLives: Board, Helper, "board-lives", "Where the board lives";
    /// How many warnings before a change, of what kind, how early.
    Warnings: Board, Helper, "warnings", "Warnings wanted before a change";
    /// What pictures or words they understand.
    Understanding: Board, Helper, "understanding", "Understands pictures or words";
    /// How many items hold their attention.
    Attention: Board, Helper, "attention", "How many items at once";
    /// Whether they follow an order.
    Sequencing: Board, Helper, "sequencing", "Follows an order";
    /// Who decided how the board is given.
    DecidedBy: Board, Helper, "decided-by", "Who decided";
    /// At roll call.
    SaysHere: Saying, Helper, "says-here", "Here";
    /// Agreeing.
    SaysYes: Saying, Helper, "says-yes", "Yes";
    /// Refusing, in whatever way.
    SaysNo: Saying, Helper, "says-no", "No";
    /// Asking for help.
    SaysHelp: Saying, Helper, "says-help", "Help";
    /// Wanting it to stop.
    SaysStop: Saying, Helper, "says-stop", "Stop";
    /// Needing a break.
    SaysBreak: Saying, Helper, "says-break", "Break";
    /// Needing the toilet.
    SaysToilet: Saying, Helper, "says-toilet", "Toilet";
    /// Being done.
    SaysFinished: Saying, Helper, "says-finished", "Finished";
    /// Being hurt.
    SaysHurt: Saying, Helper, "says-hurt", "Hurt";
    /// Few words, name first, time to wait, signs.
    HowToTalk: Talking, Helper, "how-to-talk", "How to talk with them";
    /// What they talk with, and what becomes of it near water.
    Aids: Talking, Helper, "aids", "Aids, and where they stay near water";
    /// Aids worn or taken off, what is not heard or seen then.
    HearingVision: Talking, Helper, "hearing-vision", "Hearing and seeing";
    /// Sounds sought or hard.
    Sound: Senses, Helper, "sound", "Sound";
    /// Sand, cream, wet cloth, labels.
    TouchSense: Senses, Helper, "touch-sense", "Touch on the skin";
    /// Light and movement before the eyes.
    Sight: Senses, Helper, "sight", "Sight";
    /// Smell and taste.
    SmellTaste: Senses, Helper, "smell-taste", "Smell and taste";
    /// Movement sought or hard.
    Movement: Senses, Helper, "movement", "Movement";
    /// Warm and cold.
    Temperature: Senses, Helper, "temperature", "Warm and cold";
    /// People near, crowds.
    People: Senses, Helper, "people", "People near";
    /// Hunger, thirst, needing the toilet.
    Inside: Senses, Helper, "inside", "Hunger, thirst, toilet";
    /// Shade, ear defenders, own towel, time.
    Helps: Helping, Helper, "helps", "What helps";
    /// What is hard.
    Hard: Helping, Helper, "hard", "What is hard";
    /// Interests.
    Likes: Helping, Helper, "likes", "What they like";
    /// Which changes are hard, what helps, what not to do.
    Transitions: Changes, Helper, "transitions", "From one thing to the next";
    /// Calm, what it looks like.
    SignsCalm: Changes, Helper, "signs-calm", "Signs: calm";
    /// Rising, what it looks like and what to do.
    SignsRising: Changes, Helper, "signs-rising", "Signs: getting too much";
    /// Overwhelmed or very quiet, what to do and what not.
    SignsOver: Changes, Helper, "signs-over", "Signs: too much, or very quiet";
    /// What touch is welcome, and how to ask.
    Touch: Body, Helper, "touch", "Touch that is welcome";
    /// How the need shows.
    ToiletNeed: Body, Helper, "toilet-need", "Toilet: how the need shows";
    /// Who may help, where, how.
    ToiletDetail: Body, Coordinator, "toilet-detail", "Toilet and changing: details";
    /// Moving, chairs, frames, tiring.
    Moving: Water, Helper, "moving", "Moving about";
    /// At ease in water, as stated by whom and when; drawn to water.
    WaterNote: Water, Helper, "water", "Water";
    /// How deep, as agreed.
    Depth: Water, Helper, "depth", "Depth agreed";
    /// That there is a plan to look at, without what it says.
    AlertMarker: Water, Helper, "alert-marker", "There is a plan: see";
    /// The family's name.
    Surname: Sealed, Coordinator, "surname", "Surname";
    /// When born.
    Born: Sealed, Coordinator, "born", "Date of birth";
    /// What to know about eating and drinking.
    Eating: Sealed, Coordinator, "eating", "Eating and drinking";
    /// Health alerts; the plan itself is held by those named for it.
    Alerts: Sealed, Coordinator, "alerts", "Alerts, and who holds the plan";
    /// Whom to call.
    Emergency: Sealed, Coordinator, "emergency", "Emergency contact";
    /// Who collects.
    Collects: Sealed, Coordinator, "collects", "Who collects";
    /// Who may not collect.
    NotCollect: Sealed, Coordinator, "may-not-collect", "Who may not collect";
    /// What the participant says about photographs.
    PhotoWish: Sealed, Coordinator, "photo-wish", "Their own wish about photographs";
    /// For the family's papers.
    FamilyReading: Sealed, Coordinator, "family-reading", "Languages and reading for family papers";
}
