//! Cards over the window: asking for a path, and the question that must be answered first.

use std::path::{Path, PathBuf};

use egui::{Align, Frame, Id, Key, Layout, Margin, Modal, Role, Ui, vec2};

use super::files::{Came, SystemDialog, Wanted};
use super::icons::Icon;
use super::theme;
use super::widgets::button::{Button, Weight};
use super::widgets::field::live;
use super::widgets::words;
use crate::model::set::Holds;
use crate::workbench::command::{Answer, Command, Question};
use crate::workbench::incoming::Purpose;

/// A path being asked for.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct PathDialog {
    wanted: Wanted,
    /// A table is to hold what helpers know.
    for_helpers: bool,
    /// For what pictures are brought.
    purpose: Purpose,
    /// What a set is to hold.
    holds: Holds,
    text: String,
    /// The field gets the keyboard in the next frame.
    focus: bool,
    /// What the system's dialog came back with, in words.
    note: String,
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

    const fn title(&self) -> &'static str {
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

    const fn go(&self) -> &'static str {
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

/// The folder a person calls home, as the environment names it.
fn home() -> PathBuf {
    std::env::var_os("HOME").map_or_else(|| PathBuf::from("."), PathBuf::from)
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
fn read_path(text: &str) -> Option<PathBuf> {
    let text = text.trim().trim_matches('"');
    match text.strip_prefix("~/") {
        Some(rest) => Some(home().join(rest)),
        None => (!text.is_empty()).then(|| PathBuf::from(text)),
    }
}

/// What came of showing the card.
pub enum Outcome {
    /// It stays.
    Stays,
    /// It was put away.
    Away,
    /// A command; the card goes.
    Go(Box<Command>),
}

/// A card over everything else; also says whether it was put away.
pub fn over<R>(ui: &Ui, id: &str, name: &str, add: impl FnOnce(&mut Ui) -> R) -> (R, bool) {
    over_wide(ui, id, (name, 620.0), add)
}

/// The same as wide as is said, where the window has room for it.
pub fn over_wide<R>(
    ui: &Ui,
    id: &str,
    (name, widest): (&str, f32),
    add: impl FnOnce(&mut Ui) -> R,
) -> (R, bool) {
    let t = theme::of(ui.ctx());
    let width = (ui.ctx().content_rect().width() - 48.0).min(widest);
    let frame = Frame::new()
        .fill(t.col.panel)
        .stroke(t.edge())
        .corner_radius(26)
        .shadow(t.lifted())
        .inner_margin(Margin::same(24));
    let area = Modal::default_area(Id::unique(id))
        .accessible_name(name)
        .role(Role::Dialog);
    let out = Modal::new(Id::unique(id))
        .area(area)
        .frame(frame)
        .backdrop_color(t.col.veil)
        .show(ui.ctx(), |ui| {
            ui.set_width(width - 48.0);
            add(ui)
        });
    let close = out.should_close();
    (out.inner, close)
}

/// Shows the card that asks for a path.
pub fn path(
    ui: &Ui,
    dialog: &mut PathDialog,
    system: &mut SystemDialog,
    recent: &[PathBuf],
) -> Outcome {
    let (out, close) = over(ui, "path-dialog", dialog.title(), |ui| {
        words::heading(ui, dialog.title(), 24.0);
        ui.add_space(4.0);
        let entered = path_field(ui, dialog);
        if !dialog.note.is_empty() {
            words::soft(ui, &dialog.note);
        }
        if dialog.wanted == Wanted::Open
            && let Some(path) = recent_list(ui, recent)
        {
            return Outcome::Go(Box::new(dialog.command(path)));
        }
        ui.add_space(8.0);
        buttons(ui, dialog, system, entered)
    });
    if close && matches!(out, Outcome::Stays) {
        Outcome::Away
    } else {
        out
    }
}

/// The field for the path; says whether Enter was pressed in it.
fn path_field(ui: &mut Ui, dialog: &mut PathDialog) -> bool {
    let (_, rect) = ui.allocate_space(vec2(ui.available_width(), theme::CONTROL));
    let label = match dialog.wanted {
        Wanted::Folder => "Folder",
        Wanted::Pictures => "File, or folder with pictures",
        _ => "File",
    };
    let r = live(
        ui,
        Id::unique("path-field"),
        rect,
        label,
        &mut dialog.text,
        0.0,
    );
    if std::mem::take(&mut dialog.focus) {
        r.request_focus();
    }
    r.lost_focus() && ui.input(|i| i.key_pressed(Key::Enter))
}

fn recent_list(ui: &mut Ui, recent: &[PathBuf]) -> Option<PathBuf> {
    if recent.is_empty() {
        return None;
    }
    ui.add_space(4.0);
    words::soft(ui, "Lately");
    ui.spacing_mut().item_spacing.y = 4.0;
    let mut picked = None;
    for path in recent.iter().take(5) {
        let words = path.display().to_string();
        let b = Button::new(("recent-file", path), &words)
            .icon(Icon::Folder)
            .weight(Weight::Quiet);
        if b.left().width(ui.available_width()).show(ui).clicked() {
            picked = Some(path.clone());
        }
    }
    picked
}

fn buttons(ui: &mut Ui, dialog: &PathDialog, system: &mut SystemDialog, entered: bool) -> Outcome {
    let mut out = Outcome::Stays;
    let path = read_path(&dialog.text);
    ui.horizontal(|ui| {
        let b = Button::new("browse", "Browse…")
            .icon(Icon::Folder)
            .enabled(!system.is_open());
        if b.tip("The system’s own file dialog").show(ui).clicked() {
            let name = path
                .as_ref()
                .and_then(|p| p.file_name())
                .map(|n| n.to_string_lossy().into_owned());
            system.ask(ui.ctx(), dialog.wanted, &name.unwrap_or_default());
        }
        ui.with_layout(Layout::right_to_left(Align::Center), |ui| {
            let b = Button::new("path-go", dialog.go())
                .weight(Weight::Main)
                .enabled(path.is_some());
            if (b.show(ui).clicked() || entered)
                && let Some(path) = path.clone()
            {
                out = Outcome::Go(Box::new(dialog.command(path)));
            }
            if Button::new("path-away", "Cancel").show(ui).clicked() {
                out = Outcome::Away;
            }
        });
    });
    out
}

/// Shows the question that must be answered first.
pub fn question(ui: &Ui, q: &Question) -> Option<Answer> {
    let (mut answer, close) = over(ui, "question", "Question", |ui| {
        words::heading(ui, &q.sentence, 20.0);
        ui.add_space(12.0);
        let mut answer = None;
        ui.horizontal_wrapped(|ui| {
            for (i, (a, words)) in q.answers.iter().enumerate() {
                let b = Button::new(("answer", i), words);
                let b = if i == 0 { b.weight(Weight::Main) } else { b };
                let r = b.show(ui);
                if r.clicked() {
                    answer = Some(*a);
                }
                let asked = Id::unique("question-asked");
                let fresh = ui
                    .data(|d| d.get_temp::<String>(asked))
                    .is_none_or(|s| s != q.sentence);
                if i == 0 && fresh {
                    r.request_focus();
                    ui.data_mut(|d| d.insert_temp(asked, q.sentence.clone()));
                }
            }
        });
        answer
    });
    if close && answer.is_none() && q.answers.iter().any(|(a, _)| *a == Answer::Stay) {
        answer = Some(Answer::Stay);
    }
    if answer.is_some() {
        ui.data_mut(|d| d.remove::<String>(Id::unique("question-asked")));
    }
    answer
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
}
