//! The words of a club file, version 1. Frozen: what is written with these types must always be
//! read with them; a change of the format is a new version beside this one.
//!
//! Lengths are millimetres, days are `2026-05-02`, times `09:30`, choices are words, and a step is
//! `slot-12` or `own-7`. A word that is not known here is an error, never passed over: passing it
//! over would lose it with the next save.

mod care;
mod craft;
mod mend;
mod picture;
mod plain;
mod read;
mod settings;
mod story;
mod write;

use serde::{Deserialize, Serialize};

use plain::{Clock, Day, Mm, Step};
pub(super) use read::read;
pub(super) use write::{write, write_set};

/// What `format` says.
pub(super) const FORMAT: &str = "daystrand-club";
/// What `format` says of what one club gives to another.
pub(super) const SET_FORMAT: &str = "daystrand-set";
/// What `version` says.
pub(super) const VERSION: u32 = 1;

/// The whole file.
#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct File {
    format: String,
    version: u32,
    name: String,
    /// The next number to give; worked out when missing.
    #[serde(default)]
    next_id: u32,
    rules: Rules,
    parts: Vec<Part>,
    activities: Vec<Activity>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pictures: Vec<picture::Picture>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    songs: Vec<Song>,
    participants: Vec<Participant>,
    helpers: Vec<Helper>,
    sessions: Vec<Session>,
    /// Tiles already made.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    stock: Vec<craft::Owned>,
    /// What is seen on pictures that are photographs.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    photographs: Vec<picture::Photo>,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Rules {
    transition_minutes: u32,
    session_minutes: u32,
    paper: Paper,
    #[serde(default = "english", skip_serializing_if = "is_english")]
    words: String,
    seal_mm: Mm,
    tile_mm: Mm,
    /// How tiles are made.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    tiles: Option<craft::Craft>,
    /// People, water and the place.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    care: Option<care::Care>,
}

fn english() -> String {
    crate::model::language::ENGLISH.to_owned()
}

fn is_english(tag: &str) -> bool {
    tag == crate::model::language::ENGLISH
}

#[derive(Clone, Copy, Serialize, Deserialize)]
enum Paper {
    A4,
    A3,
    A5,
    Letter,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Part {
    id: u32,
    name: String,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Activity {
    id: u32,
    label: String,
    symbol: String,
    part: u32,
    minutes: u32,
    #[serde(default, skip_serializing_if = "is_false")]
    in_water: bool,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    depth_cm: Option<u32>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    dry_replacement: Option<u32>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    sentences: Vec<String>,
    /// What else the story says about it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    story: Option<story::Around>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    equipment: Vec<String>,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    place: String,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    thing: String,
    /// Known conditions under which it is not done.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    not_when: Vec<String>,
}

/// Its words line by line; an empty line ends a verse.
#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Song {
    id: u32,
    title: String,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    words: Vec<String>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    activity: Option<u32>,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Participant {
    id: u32,
    name: String,
    mark: String,
    tile_mm: Mm,
    text_pt: u32,
    voice: Voice,
    skin: Skin,
    #[serde(default, skip_serializing_if = "Age::is_child")]
    figures: Age,
    /// How the board is given.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    board: Option<settings::Manner>,
    /// What differs on every board.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    always: Option<settings::Standing>,
    /// How the story is told.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    story: Option<story::Telling>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    profile: Option<settings::Profile>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    helper_note: Option<Note>,
    #[serde(default = "craft::square", skip_serializing_if = "craft::is_square")]
    tile_shape: craft::Shape,
    #[serde(default, skip_serializing_if = "is_false")]
    shared_tiles: bool,
}

#[derive(Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
enum Voice {
    I,
    You,
    Name,
}

#[derive(Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
enum Skin {
    Light,
    Warm,
    Tan,
    Deep,
}

impl From<Paper> for crate::model::club::Paper {
    fn from(paper: Paper) -> Self {
        match paper {
            Paper::A4 => Self::A4,
            Paper::A3 => Self::A3,
            Paper::A5 => Self::A5,
            Paper::Letter => Self::Letter,
        }
    }
}

impl From<crate::model::club::Paper> for Paper {
    fn from(paper: crate::model::club::Paper) -> Self {
        use crate::model::club::Paper as Sold;
        match paper {
            Sold::A4 => Self::A4,
            Sold::A3 => Self::A3,
            Sold::A5 => Self::A5,
            Sold::Letter => Self::Letter,
        }
    }
}

/// How old someone is drawn.
#[derive(Serialize, Deserialize, Default, PartialEq, Eq)]
#[serde(rename_all = "kebab-case")]
enum Age {
    #[default]
    Child,
    Teen,
    Adult,
}

impl Age {
    fn is_child(&self) -> bool {
        *self == Self::Child
    }
}

/// A text with the most open class of readers that may see it.
#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Note {
    readers: Readers,
    text: String,
}

#[derive(Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
enum Readers {
    Public,
    Helper,
    Coordinator,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Helper {
    id: u32,
    name: String,
    roles: Vec<Role>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    trains: Vec<u32>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    certificates: Vec<care::Certificate>,
}

#[derive(Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
enum Role {
    Lead,
    Trainer,
    WaterSafety,
    Watcher,
    FirstAid,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Session {
    id: u32,
    title: String,
    date: Day,
    start: Clock,
    place: String,
    timetable: Vec<Slot>,
    /// Rows done in turns.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    turns: Option<care::Turns>,
    /// Who does what.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    people: Option<care::Today>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    away: Vec<u32>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    helpers_away: Vec<u32>,
    /// What was changed by hand.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    boards: Vec<Hand>,
    /// What was changed by hand in stories.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    stories: Vec<story::Story>,
    /// Who is beside whom.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    beside: Vec<story::Beside>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    conditions: Vec<settings::Condition>,
    /// What was seen.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    records: Vec<Record>,
    /// The session it started from.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    from: Option<u32>,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Record {
    participant: u32,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    used: Option<settings::Used>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    done: Vec<Step>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    changed: Vec<Step>,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    chose: String,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    favourite: Option<u32>,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    next_time: String,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    picked: Vec<Picked>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    answered: Vec<Answer>,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Picked {
    step: Step,
    words: String,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Answer {
    step: Step,
    how: settings::Answered,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Slot {
    id: u32,
    activity: u32,
    part: u32,
    minutes: u32,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    leads: Vec<u32>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    options: Vec<Shown>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    off: Option<Off>,
}

/// A row that is called off.
#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Off {
    #[serde(default, skip_serializing_if = "Option::is_none")]
    instead: Option<u32>,
}

/// A picture and its words.
#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Shown {
    #[serde(default, skip_serializing_if = "Option::is_none")]
    activity: Option<u32>,
    symbol: String,
    label: String,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Hand {
    participant: u32,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    own: Vec<Own>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    placed: Vec<Placed>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    replaced: Vec<Replaced>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    not_today: Vec<u32>,
    /// Other steps, and rows with something that comes instead.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    off: Vec<OffStep>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    labels: Vec<Label>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    choices: Vec<Choice>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    with_group: Vec<u32>,
    /// What waits for an answer.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    asked: Vec<Asked>,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct OffStep {
    step: Step,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    instead: Option<Shown>,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Choice {
    step: Step,
    options: Vec<Shown>,
}

#[derive(Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
enum Asked {
    RowGone {
        was: Shown,
        shown: Shown,
        #[serde(default, skip_serializing_if = "Vec::is_empty")]
        options: Vec<Shown>,
        after: Vec<Step>,
    },
    OtherWords {
        slot: u32,
        was: Shown,
        words: String,
    },
    OtherActivity {
        slot: u32,
        was: Shown,
    },
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Own {
    id: u32,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    activity: Option<u32>,
    symbol: String,
    label: String,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Placed {
    step: Step,
    after: Vec<Step>,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Replaced {
    /// A row of the timetable …
    #[serde(default, skip_serializing_if = "Option::is_none")]
    slot: Option<u32>,
    /// … or another step.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    step: Option<Step>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    activity: Option<u32>,
    symbol: String,
    label: String,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Label {
    step: Step,
    label: String,
}

#[expect(
    clippy::trivially_copy_pass_by_ref,
    reason = "the shape serde asks for"
)]
const fn is_false(b: &bool) -> bool {
    !*b
}
