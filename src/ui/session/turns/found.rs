//! What is found and lost of turns, beside their table.

use egui::{Ui, vec2};

use crate::model::finding::{Finding, Spot};
use crate::model::session::Session;
use crate::ui::checks;
use crate::ui::desk::Desk;
use crate::ui::widgets::button::{Button, Weight};
use crate::ui::widgets::form::slip;
use crate::ui::widgets::words;
use crate::workbench::command::{Command, Place};

/// Findings shown above the table; the rest are in Checks.
const FINDINGS: usize = 3;

/// What is lost of the wishes.
pub fn lost(ui: &mut Ui, all: &[String]) {
    ui.add_space(4.0);
    if all.is_empty() {
        words::body(ui, "No wish is lost.");
        return;
    }
    words::heading(ui, "What is lost of the wishes", 17.0);
    for sentence in all {
        words::body(ui, sentence);
    }
}

/// What the checks say of turns and water in this session.
pub fn found(desk: &Desk<'_>, session: &Session) -> Vec<Finding> {
    let here = |f: &&Finding| {
        let family = f.code.starts_with("turns.") || f.code.starts_with("water.");
        let elsewhere = match f.spot {
            Spot::Session(id) | Spot::Slot(id, _) | Spot::Water(id, _) => id != session.id,
            Spot::Step(id, ..) | Spot::Board(id, _) => id != session.id,
            _ => false,
        };
        family && !elsewhere
    };
    // Those of the turns first: the table below can mend them.
    let (mut all, water): (Vec<&Finding>, Vec<&Finding>) = desk
        .view
        .findings
        .iter()
        .filter(here)
        .partition(|f| f.code.starts_with("turns."));
    all.extend(water);
    all.into_iter().cloned().collect()
}

/// The first of them; the rest are in Checks.
pub fn findings(ui: &mut Ui, desk: &mut Desk<'_>, all: &[Finding]) {
    for f in all.iter().take(FINDINGS) {
        slip(ui, |ui| one_finding(ui, f));
    }
    let more = all.len().saturating_sub(FINDINGS);
    if more > 0 {
        let label = format!("{more} more in Checks");
        let b = Button::new("turns-checks", &label).weight(Weight::Quiet);
        if b.show(ui).clicked() {
            desk.ask(Command::Show(Place::Checks));
        }
    }
}

fn one_finding(ui: &mut Ui, f: &Finding) {
    ui.horizontal(|ui| {
        let (_, at) = ui.allocate_space(vec2(30.0, 30.0));
        checks::sign(ui, at.center(), f.severity, None);
        ui.vertical(|ui| {
            ui.spacing_mut().item_spacing.y = 2.0;
            let says = format!("{}: {}", f.severity.label(), f.sentence);
            words::body(ui, &says);
            words::soft(ui, &f.hint);
        });
    });
}
