//! Beside the story: what is new, the same and gone since the session the participant came to last.

use egui::text::{LayoutJob, TextFormat};
use egui::{Label, Ui};

use super::section;
use crate::plan::since::since;
use crate::story::when;
use crate::ui::desk::Desk;
use crate::ui::theme;
use crate::ui::widgets::words;

/// Shows it.
pub fn show(ui: &mut Ui, desk: &Desk<'_>) {
    let view = desk.view;
    let (Some(session), Some(board)) = (view.session, view.board()) else {
        return;
    };
    section(ui, "Compared with last time");
    let Some(since) = since(view.club, session, board) else {
        words::soft(ui, "This is their first session here: everything is new.");
        return;
    };
    let last = since.last;
    let title = last.title.trim();
    let what = if title.is_empty() { "a session" } else { title };
    let when = when::day(last.date);
    words::soft(ui, &format!("Last time was {what}, {when}."));
    let mut new = since.new.clone();
    if since.other_place {
        new.push("the place".to_owned());
    }
    if since.other_start {
        new.push("the time it begins".to_owned());
    }
    for (name, list) in [("New", &new), ("Same", &since.same), ("Gone", &since.gone)] {
        row(ui, name, list);
    }
}

fn row(ui: &mut Ui, name: &str, list: &[String]) {
    let col = theme::of(ui.ctx()).col;
    let mut job = LayoutJob::default();
    let bold = TextFormat::simple(theme::bold(15.0), col.ink);
    job.append(&format!("{name}: "), 0.0, bold);
    let all = if list.is_empty() {
        "nothing".to_owned()
    } else {
        list.join(", ")
    };
    let plain = TextFormat::simple(theme::regular(15.0), col.ink);
    job.append(&all, 0.0, plain);
    ui.add(Label::new(job).wrap());
}
