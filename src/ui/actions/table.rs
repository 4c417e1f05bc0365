//! Every action with its words and keys, and the keys that areas have of their own.

use egui::{Key, KeyboardShortcut, Modifiers};

use super::{Action, Group, Row};
use crate::workbench::command::Place;

/// The table.
pub const TABLE: &[Row] = &[
    row(
        Action::Go(Place::Session),
        "Session",
        "The timetable of a date",
        ctrl(Key::Num1),
    ),
    row(
        Action::Go(Place::People),
        "People",
        "Participants and helpers",
        ctrl(Key::Num2),
    ),
    row(
        Action::Go(Place::Boards),
        "Boards",
        "Each participant’s board",
        ctrl(Key::Num3),
    ),
    row(
        Action::Go(Place::Checks),
        "Checks",
        "What should be looked at",
        ctrl(Key::Num4),
    ),
    row(
        Action::Go(Place::Print),
        "Print",
        "What goes on paper",
        ctrl(Key::Num5),
    ),
    row(Action::New, "New club", "An empty club", ctrl(Key::N)).group(Group::File),
    row(Action::Open, "Open…", "Another club’s file", ctrl(Key::O)).group(Group::File),
    row(
        Action::Save,
        "Save",
        "Write the club to its file",
        ctrl(Key::S),
    )
    .group(Group::File),
    row(
        Action::SaveAs,
        "Save as…",
        "Write the club to another file",
        ctrl_shift(Key::S),
    )
    .group(Group::File),
    row(
        Action::Demo,
        "Open the demo club",
        "An invented club to try things on",
        None,
    )
    .group(Group::File),
    row(
        Action::Draw,
        "Draw a picture…",
        "A picture of your own, with mouse, pen or keys",
        ctrl(Key::D),
    )
    .group(Group::Make),
    row(
        Action::Seek,
        "Find anything…",
        "A person, an activity, a symbol, a command, by its words",
        ctrl(Key::K),
    )
    .group(Group::Make),
    row(
        Action::Past,
        "What was done…",
        "All changes, to go back to any of them",
        ctrl(Key::H),
    )
    .group(Group::Make),
    row(
        Action::Next,
        "The next thing",
        "What is to be done next this evening",
        plain(Key::F4),
    )
    .group(Group::Make),
    row(
        Action::Undo,
        "Undo",
        "Take the last change back",
        ctrl(Key::Z),
    )
    .yields(),
    row(Action::Redo, "Redo", "Make it again", ctrl_shift(Key::Z))
        .also(ctrl(Key::Y))
        .yields(),
    row(
        Action::Search,
        "Find",
        "Go to the search field",
        ctrl(Key::F),
    ),
    row(
        Action::Search,
        "Find",
        "Go to the search field",
        plain(Key::Slash),
    )
    .yields(),
    row(
        Action::PersonAfter,
        "Next participant",
        "The board of the next participant, or their sheet",
        ctrl(Key::PageDown),
    ),
    row(
        Action::PersonBefore,
        "Participant before",
        "The board of the participant before",
        ctrl(Key::PageUp),
    ),
    row(
        Action::Write,
        "Write the sheets…",
        "What is chosen at Print, into a folder",
        ctrl(Key::P),
    )
    .group(Group::File),
    row(
        Action::Group,
        "Whole group",
        "All boards at once, or one board",
        ctrl(Key::G),
    ),
    row(
        Action::Together,
        "Go through together",
        "The day, one step at a time, in full view",
        plain(Key::F5),
    ),
    row(
        Action::ZoomIn,
        "Larger",
        "Everything larger, up to 200 %",
        ctrl(Key::Plus),
    )
    .also(ctrl(Key::Equals))
    .group(Group::Look),
    row(
        Action::ZoomOut,
        "Smaller",
        "Everything smaller",
        ctrl(Key::Minus),
    )
    .group(Group::Look),
    row(
        Action::ZoomReset,
        "Usual size",
        "As large as at first",
        ctrl(Key::Num0),
    )
    .group(Group::Look),
    row(
        Action::NextArea,
        "Next area",
        "The keyboard goes to the next area",
        plain(Key::F6),
    ),
    row(
        Action::AreaBefore,
        "Area before",
        "The keyboard goes to the area before",
        Some(KeyboardShortcut::new(Modifiers::SHIFT, Key::F6)),
    ),
    row(
        Action::Help,
        "Help and keys",
        "How each place works, and all keys",
        plain(Key::F1),
    )
    .group(Group::End),
    row(Action::Quit, "Quit", "Close the window", ctrl(Key::Q)).group(Group::End),
];

/// Keys that belong to the area the keyboard is in; for the help.
pub const IN_AREAS: &[(&str, &str)] = &[
    ("Arrows", "go from one to the next"),
    ("Alt+arrows", "move the step or the row"),
    (
        "Shift+arrows",
        "on a board: choose several steps, which move and go together",
    ),
    ("Ctrl+A", "on a board: choose every step"),
    (
        "Ctrl+C and Ctrl+V",
        "on a board: copy what is chosen, and put it on any board",
    ),
    ("Enter", "in the symbols: add after the chosen step"),
    ("R", "on a step: swap it for a symbol"),
    ("F2", "on a step: change its words"),
    ("P", "on a step: a picture of their own in its place"),
    ("C", "on a step: offer a choice there"),
    ("T", "on what is not today: today after all"),
    ("I", "on what is not today: pick what comes instead"),
    (
        "Space and arrows",
        "on the paper of a drawing: put the pen down or lift it, move it",
    ),
    (
        "G",
        "on a standing change: with the group today, or as always",
    ),
    ("H", "on a card in turns: hold it in its turn, or let it go"),
    (
        "Page Up or Page Down",
        "the page before or after; in the help: scroll",
    ),
    ("Delete", "take it off"),
    ("Backspace", "on a step: back to the timetable"),
    (
        "Arrows, Space, A",
        "in Go through together: on and back, finished, the adult’s row",
    ),
    ("Escape held", "in Go through together: leave"),
    ("Escape", "leave, drop what was typed"),
];

const fn ctrl(key: Key) -> Option<KeyboardShortcut> {
    Some(KeyboardShortcut::new(Modifiers::COMMAND, key))
}

const fn ctrl_shift(key: Key) -> Option<KeyboardShortcut> {
    Some(KeyboardShortcut::new(
        Modifiers::COMMAND.plus(Modifiers::SHIFT),
        key,
    ))
}

const fn plain(key: Key) -> Option<KeyboardShortcut> {
    Some(KeyboardShortcut::new(Modifiers::NONE, key))
}

const fn row(
    action: Action,
    label: &'static str,
    tip: &'static str,
    key: Option<KeyboardShortcut>,
) -> Row {
    Row {
        action,
        label,
        tip,
        key,
        also: None,
        group: Group::None,
        while_typing: true,
    }
}

impl Row {
    const fn also(mut self, key: Option<KeyboardShortcut>) -> Self {
        self.also = key;
        self
    }

    const fn group(mut self, group: Group) -> Self {
        self.group = group;
        self
    }

    /// Typing has this key first.
    const fn yields(mut self) -> Self {
        self.while_typing = false;
        self
    }
}
