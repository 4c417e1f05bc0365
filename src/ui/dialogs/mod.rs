//! Cards over the window: asking for a path, and the question that must be answered first.

mod asked;

use std::path::PathBuf;

use egui::{Align, Frame, Id, Key, Layout, Margin, Modal, Role, Ui, vec2};

use super::files::{SystemDialog, Wanted};
use super::icons::Icon;
use super::theme;
use super::widgets::button::{Button, Weight};
use super::widgets::field::live;
use super::widgets::words;
use crate::workbench::command::{Answer, Command, Question};
use asked::read_path;
pub use asked::{Begins, PathDialog};

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
            system.ask(ui.ctx(), dialog.wanted, Begins::with(&dialog.text));
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
