//! Beside the story: what is new, the same and gone since the session the participant came to last.

use egui::text::{LayoutJob, TextFormat};
use egui::{Label, Ui};

use super::section;
use crate::story::when;
use crate::ui::theme;
use crate::ui::widgets::words;
use crate::workbench::story::ToldStory;

/// Shows it.
pub fn show(ui: &mut Ui, told: &ToldStory) {
    section(ui, "Compared with last time");
    let Some(last) = &told.last_time else {
        words::soft(ui, "This is their first session here: everything is new.");
        return;
    };
    let when = when::day(last.date);
    let says = match last.title.as_str() {
        "" => format!("Last time was {when}."),
        title => format!("Last time was {title}, {when}."),
    };
    words::soft(ui, &says);
    for (name, list) in [
        ("New", &last.new),
        ("Same", &last.same),
        ("Gone", &last.gone),
    ] {
        row(ui, name, list);
    }
}

fn row(ui: &mut Ui, name: &str, list: &[String]) {
    let col = theme::of(ui.ctx()).col;
    let mut job = LayoutJob::default();
    let bold = TextFormat::simple(theme::bold(15.0), col.ink);
    job.append(&format!("{name}: "), 0.0, bold);
    let all = match list {
        [] => "nothing".to_owned(),
        list => list.join(", "),
    };
    let plain = TextFormat::simple(theme::regular(15.0), col.ink);
    job.append(&all, 0.0, plain);
    ui.add(Label::new(job).wrap());
}
