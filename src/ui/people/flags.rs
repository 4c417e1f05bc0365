//! Flags at the club's place and what they mean there.

use egui::{Id, Ui};

use crate::model::care::{Care, Flag};
use crate::ui::desk::Desk;
use crate::ui::icons::Icon;
use crate::ui::theme;
use crate::ui::widgets::button::{Button, Weight};
use crate::ui::widgets::field::Field;
use crate::ui::widgets::form::{block, row};
use crate::ui::widgets::words;

/// Shows the list and puts what was changed into `next`.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>, next: &mut Care) {
    words::heading(ui, "Flags at your place", 20.0);
    words::soft(
        ui,
        "Local practice comes first. A picture replaces no flag.",
    );
    let mut gone = None;
    for (at, flag) in desk.view.club.rules.care.flags.iter().enumerate() {
        if one(ui, desk, (at, flag), &mut next.flags[at]) {
            gone = Some(at);
        }
    }
    if let Some(at) = gone {
        next.flags.remove(at);
    }
    let b = Button::new("flag-add", "Add a flag").icon(Icon::Plus);
    if b.show(ui).clicked() {
        next.flags.push(Flag::default());
    }
}

/// One flag; says whether it is taken away.
fn one(ui: &mut Ui, desk: &mut Desk<'_>, (at, now): (usize, &Flag), next: &mut Flag) -> bool {
    let n = at + 1;
    row(ui, |ui| {
        for (what, hint, width, value) in [
            ("looks", "red over yellow", 240.0, &mut next.looks),
            ("means", "what it means here", 400.0, &mut next.means),
        ] {
            let name = format!("Flag {n} {what}");
            block(ui, &name, width, theme::CONTROL, |ui| {
                let shown = match what {
                    "looks" => &now.looks,
                    _ => &now.means,
                };
                let width = ui.available_width();
                let f = Field::new(Id::unique(("flag", at, what)), &name, shown).hint(hint);
                if let Some(text) = f.show(ui, desk.drafts, width) {
                    *value = text;
                }
            });
        }
        block(ui, "", theme::CONTROL, theme::CONTROL, |ui| {
            let name = format!("Remove flag {n}");
            let b = Button::new(("flag-remove", at), &name).icon_only(Icon::Bin);
            b.weight(Weight::Quiet).show(ui).clicked()
        })
    })
}
