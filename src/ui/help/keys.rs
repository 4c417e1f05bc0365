//! The page of keys, from the tables that the keys themselves come from.

use super::text::{Line, What};
use crate::ui::actions::{self, IN_AREAS, Row, TABLE};

/// What the mouse does at Boards.
pub const MOUSE: &[(&str, &str)] = &[
    ("Drag a symbol up", "adds an own step where you let go"),
    ("Drag with Shift", "swaps it for the step under it"),
    ("Drag a step", "moves it; off the line it is not today"),
    (
        "Drag onto a name",
        "it is for them too; with Shift it goes over",
    ),
    (
        "Drag with Ctrl",
        "the step or row stays, and stands there once more",
    ),
    (
        "Click with Ctrl or Shift",
        "on a step: choose it too, or all up to it",
    ),
    (
        "Double click",
        "on a step: change its words; on a symbol: add it",
    ),
];

/// All keys, and what the mouse does, under their headings.
pub fn lines() -> Vec<Line> {
    let anywhere = TABLE.iter().filter(|r| r.key.is_some());
    let anywhere = anywhere.map(|r| What::Key(keys(r), r.tip));
    let table = |rows: &'static [(&str, &str)]| {
        let rows = rows.iter();
        rows.map(|(key, what)| What::Key((*key).to_owned(), what))
    };
    let mut all = Vec::new();
    all.extend(part("From anywhere", anywhere));
    all.extend(part("Where the keyboard is", table(IN_AREAS)));
    all.extend(part("With the mouse, at Boards", table(MOUSE)));
    all
}

fn part(heading: &'static str, rows: impl Iterator<Item = What>) -> impl Iterator<Item = Line> {
    let heading = Line {
        what: What::Heading(heading),
        room: true,
    };
    std::iter::once(heading).chain(rows.map(|what| Line { what, room: false }))
}

/// The key of a row, and the other key for the same.
fn keys(row: &Row) -> String {
    match &row.also {
        Some(also) => format!("{} or {}", row.keys(), actions::key_words(also)),
        None => row.keys(),
    }
}
