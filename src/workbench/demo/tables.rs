//! The demo club's people, places and timetables. All of it is invented.

use jiff::civil::{Date, Time};

use crate::model::conditions::Known;
use crate::model::people::{Age, Figure, Role, Skin, Voice};

/// The parts of the day.
pub(super) const PARTS: [&str; 5] = [
    "Arriving",
    "Warming up",
    "On land",
    "In the water",
    "Finishing",
];

/// A participant: name, mark, tile in mm, text in points, voice, how they are drawn, what a helper needs to know.
pub(super) type ParticipantRow = (
    &'static str,
    &'static str,
    f64,
    u32,
    Voice,
    Figure,
    &'static str,
);

const fn child(skin: Skin) -> Figure {
    let age = Age::Child;
    Figure { skin, age }
}

const fn teen(skin: Skin) -> Figure {
    let age = Age::Teen;
    Figure { skin, age }
}

pub(super) const PARTICIPANTS: [ParticipantRow; 8] = [
    (
        "Mila",
        "kite",
        60.0,
        36,
        Voice::I,
        child(Skin::Warm),
        "Speak in few words and wait. An answer may take ten seconds. Show the next tile before walking.",
    ),
    (
        "Tavi",
        "boat",
        75.0,
        48,
        Voice::I,
        child(Skin::Deep),
        "Takes a tile in the hand to ask for something. A flat hand means stop. Keep the change tile in reach.",
    ),
    (
        "Noor",
        "leaf",
        50.0,
        36,
        Voice::Name,
        child(Skin::Tan),
        "Drum instead of song: singing in a group is too loud. Ear muffs hang on the bag. Both hands turned over means finished.",
    ),
    (
        "Jonas",
        "fish",
        40.0,
        36,
        Voice::You,
        teen(Skin::Light),
        "Reads words and likes to turn the tiles over alone. Say how many steps are left, not how many minutes.",
    ),
    (
        "Ilka",
        "moon",
        65.0,
        60,
        Voice::I,
        child(Skin::Light),
        "Sees best close up and in the shade. Hold the board still and name the picture. Stays on land this time; shells are a favourite.",
    ),
    (
        "Sami",
        "shell",
        55.0,
        40,
        Voice::I,
        child(Skin::Deep),
        "Walks with a frame on the mat path. Ask before touching the frame. Begin each walk two minutes early.",
    ),
    (
        "Mila",
        "star",
        60.0,
        44,
        Voice::Name,
        child(Skin::Tan),
        "Sunscreen first, before anything wet or sandy; puts it on alone with the mirror. Shakes the head for no.",
    ),
    (
        "Wren",
        "feather",
        45.0,
        36,
        Voice::You,
        teen(Skin::Warm),
        "Quiet place after everything in the water. Going quiet means a break is needed. Sit beside, not opposite.",
    ),
];

pub(super) const HELPERS: [(&str, &[Role]); 6] = [
    ("Asta", &[Role::Lead]),
    ("Benno", &[Role::Trainer, Role::WaterSafety]),
    ("Carmen", &[Role::WaterSafety]),
    ("Dario", &[Role::Watcher]),
    ("Edda", &[Role::FirstAid]),
    ("Farid", &[Role::Trainer, Role::WaterSafety]),
];

/// A session: title, date, start, timetable (activity by symbol, minutes).
pub(super) type SessionRow = (&'static str, Date, Time, &'static [(&'static str, u32)]);

/// Under which condition an activity is not done.
pub(super) const NOT_WHEN: [(&str, Known); 3] = [
    ("canoe", Known::Windy),
    ("canoe", Known::Thunder),
    ("splash", Known::Stingers),
];

/// Where activities are done.
pub(super) const PLACES: [(&str, &str); 6] = [
    ("say_hello", "landing"),
    ("welcome_circle", "landing"),
    ("dig", "sand bank"),
    ("canoe", "jetty"),
    ("splash", "water’s edge"),
    ("bye", "landing"),
];

pub(super) const PLACE: &str = "Heron Landing, Reedwater Lagoon";

pub(super) const SESSIONS: [SessionRow; 2] = [
    (
        "Boat morning",
        Date::constant(2027, 6, 12),
        Time::constant(9, 30, 0, 0),
        &[
            ("say_hello", 5),
            ("welcome_circle", 7),
            ("sunscreen", 5),
            ("song", 5),
            ("warm_up", 6),
            ("dig", 10),
            ("life_jacket", 4),
            ("walk_to_water", 3),
            ("canoe", 15),
            ("dry", 5),
            ("bye", 3),
        ],
    ),
    (
        "Shore morning",
        Date::constant(2027, 6, 19),
        Time::constant(10, 0, 0, 0),
        &[
            ("say_hello", 5),
            ("welcome_circle", 7),
            ("sunscreen", 5),
            ("copy_me", 6),
            ("find_shells", 12),
            ("feet_in", 10),
            ("splash", 8),
            ("rinse", 4),
            ("pack_up", 5),
            ("bye", 3),
        ],
    ),
];
