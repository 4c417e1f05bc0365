//! Everything a person can do from anywhere, in one table: words, keys, when it is possible. The
//! menu, the buttons, the keys and the help all read it.

mod table;

use egui::{Context, Key, KeyboardShortcut};

use crate::workbench::command::{Place, Theme};
use crate::workbench::view::View;

pub use table::{IN_AREAS, TABLE};

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

impl Row {
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
