//! A path that is asked for: for what, what was typed, where the system's own dialog begins.

use std::path::{Path, PathBuf};

use crate::model::set::Holds;
use crate::ui::files::{Came, Wanted};
use crate::workbench::command::Command;
use crate::workbench::incoming::Purpose;

/// A path being asked for.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct PathDialog {
    pub(super) wanted: Wanted,
    /// A table is to hold what helpers know.
    for_helpers: bool,
    /// For what pictures are brought.
    purpose: Purpose,
    /// What a set is to hold.
    holds: Holds,
    pub(super) text: String,
    /// The field gets the keyboard in the next frame.
    pub(super) focus: bool,
    /// What the system's dialog came back with, in words.
    pub(super) note: String,
}

impl PathDialog {
    /// Asks for a file to open, beginning with the folder of the file that is open.
    pub fn open(beside: Option<&Path>) -> Self {
        let folder = beside
            .and_then(Path::parent)
            .map(|p| format!("{}/", p.display()));
        Self::new(Wanted::Open, folder.unwrap_or_default())
    }

    /// Asks for a file to save to, beside the file that is open.
    pub fn save(beside: Option<&Path>, suggested: &str) -> Self {
        let folder = beside
            .and_then(Path::parent)
            .map_or_else(home, Path::to_path_buf);
        Self::new(Wanted::Save, folder.join(suggested).display().to_string())
    }

    /// Asks for a folder for the sheets.
    pub fn folder(last: Option<&Path>, beside: Option<&Path>) -> Self {
        let beside = beside.and_then(Path::parent).map(|p| p.join("sheets"));
        let folder = last.map(Path::to_path_buf).or(beside);
        let folder = folder.unwrap_or_else(|| home().join("sheets"));
        Self::new(Wanted::Folder, folder.display().to_string())
    }

    /// Asks for a table to take in.
    pub fn table(beside: Option<&Path>) -> Self {
        Self {
            wanted: Wanted::Table,
            ..Self::open(beside)
        }
    }

    /// Asks for a set to take in.
    pub fn set(beside: Option<&Path>) -> Self {
        Self {
            wanted: Wanted::Set,
            ..Self::open(beside)
        }
    }

    /// Asks where to write a set.
    pub fn write_set(beside: Option<&Path>, suggested: &str, holds: Holds) -> Self {
        Self {
            wanted: Wanted::WriteSet,
            holds,
            ..Self::save(beside, suggested)
        }
    }

    /// Asks for pictures to take in.
    pub fn pictures(beside: Option<&Path>, purpose: Purpose) -> Self {
        Self {
            wanted: Wanted::Pictures,
            purpose,
            ..Self::open(beside)
        }
    }

    /// Asks where to write a table.
    pub fn write_table(beside: Option<&Path>, suggested: &str, for_helpers: bool) -> Self {
        Self {
            wanted: Wanted::WriteTable,
            for_helpers,
            ..Self::save(beside, suggested)
        }
    }

    fn new(wanted: Wanted, text: String) -> Self {
        Self {
            wanted,
            for_helpers: false,
            purpose: Purpose::default(),
            holds: Holds::Both,
            text,
            focus: true,
            note: String::new(),
        }
    }

    pub(super) const fn title(&self) -> &'static str {
        match self.wanted {
            Wanted::Open => "Open a club",
            Wanted::Save => "Save the club as",
            Wanted::Folder => "Write the sheets into a folder",
            Wanted::Pictures => "Take in pictures",
            Wanted::Set => "Take in what another club gives",
            Wanted::WriteSet => "Give out to another club",
            Wanted::Table => "Take in a table of participants",
            Wanted::WriteTable => "Write the participants as a table",
        }
    }

    pub(super) const fn go(&self) -> &'static str {
        match self.wanted {
            Wanted::Open => "Open",
            Wanted::Save => "Save",
            Wanted::Folder | Wanted::WriteTable | Wanted::WriteSet => "Write",
            Wanted::Pictures | Wanted::Table | Wanted::Set => "Take in",
        }
    }

    /// The command that a path leads to.
    pub fn command(&self, path: PathBuf) -> Command {
        match self.wanted {
            Wanted::Pictures => Command::TakePictures(vec![path], self.purpose.clone()),
            Wanted::Set => Command::TakeSet(path),
            Wanted::WriteSet => Command::WriteSet(path, self.holds),
            Wanted::Open => Command::Open(path),
            Wanted::Save => Command::SaveAs(with_ending(path)),
            Wanted::Folder => Command::WriteSheets(path),
            Wanted::Table => Command::TakeIn(path),
            Wanted::WriteTable => Command::WriteTable(path, self.for_helpers),
        }
    }

    /// Takes in what the system's dialog came back with; nothing leaves the field to type in.
    pub fn came(&mut self, came: Came) -> Option<Command> {
        match came {
            Came::Paths(paths) if self.wanted == Wanted::Pictures => {
                Some(Command::TakePictures(paths, self.purpose.clone()))
            }
            Came::Paths(paths) => paths.into_iter().next().map(|path| self.command(path)),
            Came::Nothing => {
                self.focus = true;
                self.note = "Nothing was picked. You can type the place here.".into();
                None
            }
        }
    }
}

/// The folder a person calls home, as the system names it.
fn home() -> PathBuf {
    std::env::home_dir().unwrap_or_else(|| PathBuf::from("."))
}

/// A club's file ends in `.daystrand`.
fn with_ending(path: PathBuf) -> PathBuf {
    if path.extension().is_some() {
        path
    } else {
        path.with_extension("daystrand")
    }
}

/// A path from what was typed: without blanks around it, `~` for home.
pub(super) fn read_path(text: &str) -> Option<PathBuf> {
    let text = text.trim().trim_matches('"');
    match text.strip_prefix("~/") {
        Some(rest) => Some(home().join(rest)),
        None => (!text.is_empty()).then(|| PathBuf::from(text)),
    }
}

/// Where the system's dialog begins.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Begins {
    /// In this folder.
    pub folder: PathBuf,
    /// With this name for the file, if one is to be written.
    pub name: String,
}

impl Begins {
    /// With what stands in the field; at home where nothing does.
    pub(super) fn with(text: &str) -> Self {
        let path = read_path(text).unwrap_or_default();
        let folder = text.trim_end().ends_with(['/', '\\']);
        let (folder, name) = if folder {
            (Some(path.as_path()), None)
        } else {
            (path.parent(), path.file_name())
        };
        // The system's dialog knows nothing of the folder this program was started in.
        let folder = folder.and_then(|f| std::path::absolute(f).ok());
        Self {
            folder: folder.unwrap_or_else(home),
            name: name.map_or_else(String::new, |n| n.to_string_lossy().into_owned()),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_club_gets_its_ending_once() {
        assert_eq!(with_ending("/a/b".into()), PathBuf::from("/a/b.daystrand"));
        assert_eq!(
            with_ending("/a/b.daystrand".into()),
            PathBuf::from("/a/b.daystrand")
        );
        assert_eq!(with_ending("/a/b.json".into()), PathBuf::from("/a/b.json"));
    }

    #[test]
    fn nothing_picked_leaves_the_field_to_type_in() {
        let mut d = PathDialog::open(None);
        d.focus = false;
        assert_eq!(d.came(Came::Nothing), None);
        assert!(d.focus && !d.note.is_empty());
    }

    #[test]
    fn blanks_and_quotes_round_a_path_are_dropped() {
        assert_eq!(
            read_path("  \"/tmp/a b.daystrand\" "),
            Some("/tmp/a b.daystrand".into())
        );
        assert_eq!(read_path("   "), None);
    }

    #[test]
    fn the_system_begins_where_the_field_points() {
        let begins = |text| {
            let b = Begins::with(text);
            (b.folder, b.name)
        };
        assert_eq!(
            begins("/clubs/a.daystrand"),
            ("/clubs".into(), "a.daystrand".into())
        );
        assert_eq!(begins("/clubs/"), ("/clubs".into(), String::new()));
        let here = std::path::absolute("clubs").unwrap();
        assert_eq!(begins("clubs/"), (here.clone(), String::new()));
        assert_eq!(begins("clubs/a.daystrand"), (here, "a.daystrand".into()));
        assert_eq!(begins(""), (home(), String::new()));
        assert_eq!(begins("a.daystrand"), (home(), "a.daystrand".into()));
    }
}
