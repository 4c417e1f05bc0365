//! Everything a person can do from anywhere, in one table: words, keys, when it is possible. The
//! menu, the buttons, the keys and the help all read it.

use egui::{Context, Key, KeyboardShortcut, Modifiers};

use crate::workbench::command::{Place, Theme};
use crate::workbench::view::View;

/// Something a person can do from anywhere.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Action {
    /// An empty club.
    New,
    /// Another file.
    Open,
    /// The demo club.
    Demo,
    /// Save.
    Save,
    /// Save to another file.
    SaveAs,
    /// Close the window.
    Quit,
    /// Take the last change back.
    Undo,
    /// Make it again.
    Redo,
    /// Go to a place.
    Go(Place),
    /// Go to where a symbol or a name is looked for.
    Search,
    /// One field for everything.
    Seek,
    /// What was done, to go back to.
    Past,
    /// What is to be done next.
    Next,
    /// The next participant.
    PersonAfter,
    /// The participant before.
    PersonBefore,
    /// Write the sheets.
    Write,
    /// All boards at once, or one.
    Group,
    /// The full-screen view for participant and parent.
    Together,
    /// The place where a picture is drawn.
    Draw,
    /// Larger.
    ZoomIn,
    /// Smaller.
    ZoomOut,
    /// As large as at first.
    ZoomReset,
    /// Other colours.
    Colours(Theme),
    /// Movement on or off.
    Still,
    /// The next area of the window.
    NextArea,
    /// The area before.
    AreaBefore,
    /// The help, and the keys.
    Help,
}

/// Where an action stands in the menu.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Group {
    /// The club's file.
    File,
    /// What can be made.
    Make,
    /// How the window looks.
    Look,
    /// The end.
    End,
    /// Not in the menu.
    None,
}

/// One row of the table.
pub struct Row {
    /// What is done.
    pub action: Action,
    /// On a button or in the menu.
    pub label: &'static str,
    /// One sentence more.
    pub tip: &'static str,
    /// The key.
    pub key: Option<KeyboardShortcut>,
    /// Another key for the same.
    pub also: Option<KeyboardShortcut>,
    /// Where in the menu.
    pub group: Group,
    /// Whether it also works while something is being typed.
    pub while_typing: bool,
}

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

    /// The key in words, such as "Ctrl+S".
    pub fn keys(&self) -> String {
        self.key.map_or_else(String::new, |k| key_words(&k))
    }
}

/// A key in words.
pub fn key_words(k: &KeyboardShortcut) -> String {
    let mut words = String::new();
    let m = k.modifiers;
    for (on, name) in [
        (m.command || m.ctrl, "Ctrl+"),
        (m.alt, "Alt+"),
        (m.shift, "Shift+"),
    ] {
        if on {
            words.push_str(name);
        }
    }
    words.push_str(match k.logical_key {
        Key::Plus => "+",
        Key::Minus => "-",
        Key::Slash => "/",
        other => other.name(),
    });
    words
}

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

/// The row of an action.
pub fn of(action: Action) -> Option<&'static Row> {
    TABLE.iter().find(|r| r.action == action)
}

/// Whether an action is possible now.
pub fn possible(action: Action, view: &View<'_>) -> bool {
    match action {
        Action::Undo => view.undo.is_some(),
        Action::Redo => view.redo.is_some(),
        Action::PersonAfter | Action::PersonBefore => view.club.participants.len() > 1,
        Action::Write => view.session.is_some() && view.job.is_none(),
        Action::Together => view.board().is_some_and(|b| !b.steps.is_empty()),
        _ => true,
    }
}

impl Action {
    /// Whether it makes the window's words larger or smaller: that is there whatever lies over it.
    pub const fn zooms(self) -> bool {
        matches!(self, Self::ZoomIn | Self::ZoomOut | Self::ZoomReset)
    }
}

/// The actions whose keys were pressed since the last frame, of those that are there now; the keys
/// are used up.
pub fn pressed(ctx: &Context, is_there: impl Fn(Action) -> bool) -> Vec<Action> {
    let typing = ctx.text_edit_focused();
    let mut found = Vec::new();
    // Longer combinations first: Ctrl+Z also fits Ctrl+Shift+Z.
    let mut rows: Vec<&Row> = TABLE.iter().collect();
    rows.sort_by_key(|r| !r.key.is_some_and(|k| k.modifiers.shift));
    for r in rows {
        if typing && !r.while_typing || !is_there(r.action) {
            continue;
        }
        for key in [r.key, r.also].into_iter().flatten() {
            if ctx.input_mut(|i| i.consume_shortcut(&key)) {
                found.push(r.action);
            }
        }
    }
    found
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn no_key_does_two_things() {
        let keys: Vec<KeyboardShortcut> = TABLE
            .iter()
            .flat_map(|r| [r.key, r.also])
            .flatten()
            .collect();
        for (i, k) in keys.iter().enumerate() {
            assert!(!keys[i + 1..].contains(k), "{} twice", key_words(k));
        }
    }

    #[test]
    fn every_row_says_what_it_does() {
        for r in TABLE {
            assert!(!r.label.is_empty() && !r.tip.is_empty(), "{:?}", r.action);
            assert!(!r.tip.ends_with('.'), "{}", r.label);
            if r.group == Group::None {
                assert!(
                    r.key.is_some(),
                    "{} is neither in the menu nor on a key",
                    r.label
                );
            }
        }
    }

    #[test]
    fn every_place_has_a_key() {
        for place in Place::ALL {
            let r = of(Action::Go(place)).expect("a row for each place");
            assert_eq!(r.label, place.label());
            assert!(r.key.is_some());
        }
    }

    #[test]
    fn keys_read_well() {
        assert_eq!(of(Action::SaveAs).expect("row").keys(), "Ctrl+Shift+S");
        assert_eq!(of(Action::ZoomIn).expect("row").keys(), "Ctrl++");
        assert_eq!(of(Action::Help).expect("row").keys(), "F1");
    }
}
