//! What is known of one helper: name, what they do, whose trainer they are, what they hold.

use egui::{Align2, Id, Ui, vec2};

use super::parts::add_one;
use super::{PeopleState, certificates};
use crate::model::edit::Edit;
use crate::model::people::{Helper, Role};
use crate::ui::desk::Desk;
use crate::ui::icons::Icon;
use crate::ui::theme;
use crate::ui::widgets::button::{Button, Weight};
use crate::ui::widgets::choose::tick_at;
use crate::ui::widgets::field::Field;
use crate::ui::widgets::form::{block, row};
use crate::ui::widgets::words;

/// Shows the form.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut PeopleState, h: &Helper) {
    let mut next = h.clone();
    block(ui, "Name", 300.0, theme::CONTROL, |ui| {
        let width = ui.available_width();
        let f = Field::new(Id::unique(("helper-name", h.id)), "Name", &h.name);
        if let Some(name) = f.show(ui, desk.drafts, width) {
            next.name = name;
        }
    });
    words::heading(ui, "Does", 18.0);
    roles(ui, h, &mut next);
    words::soft(
        ui,
        "As the club entered it. Daystrand does not know who is qualified.",
    );
    ui.add_space(6.0);
    trains(ui, desk, h, &mut next);
    ui.add_space(6.0);
    certificates::show(ui, desk, state, h, &mut next);
    if next != *h {
        desk.edit(Edit::ChangeHelper(next));
    }
    ui.add_space(6.0);
    let b = Button::new(("helper-remove", h.id), "Remove")
        .icon(Icon::Bin)
        .weight(Weight::Quiet);
    if b.show(ui).clicked() {
        desk.edit(Edit::RemoveHelper(h.id));
    }
}

/// What a role means, in a line.
const fn means(role: Role) -> &'static str {
    match role {
        Role::Lead => "Leads the group through the day",
        Role::Trainer => "Trains participants they know well",
        Role::WaterSafety => "Goes into the water beside a participant",
        Role::Watcher => "Watches from the side and has no other job",
        Role::FirstAid => "Holds the first-aid kit",
    }
}

fn roles(ui: &mut Ui, h: &Helper, next: &mut Helper) {
    let wide = ui.available_width() > 500.0;
    for role in Role::ALL {
        let on = h.roles.contains(&role);
        let id = Id::unique(("role", h.id, role.label()));
        let (_, rect) = ui.allocate_space(vec2(ui.available_width(), theme::CONTROL));
        if tick_at(ui, id, rect, on, role.label(), "").clicked() {
            if on {
                next.roles.remove(&role);
            } else {
                next.roles.insert(role);
            }
        }
        if wide {
            let soft = theme::of(ui.ctx()).col.soft;
            let beside = rect.with_min_x(rect.left() + 170.0);
            let (p, font) = (ui.painter(), theme::regular(15.0));
            words::line(p, beside, Align2::LEFT_CENTER, means(role), font, soft);
        } else {
            words::soft(ui, means(role));
        }
    }
}

/// Whose trainer they are.
fn trains(ui: &mut Ui, desk: &Desk<'_>, h: &Helper, next: &mut Helper) {
    let club = desk.view.club;
    words::heading(ui, "Trainer of", 18.0);
    let (theirs, others): (Vec<_>, Vec<_>) = club
        .participants
        .iter()
        .partition(|p| h.trains.contains(&p.id));
    row(ui, |ui| {
        for p in &theirs {
            let name = format!("No longer trainer of {}", p.name);
            let b = Button::new(("trains", h.id, p.id), &p.name).name(&name);
            if b.icon(Icon::Cross).tip(&name).show(ui).clicked() {
                next.trains.remove(&p.id);
            }
        }
        let names: Vec<String> = others.iter().map(|p| p.name.clone()).collect();
        let id = Id::unique(("trains-add", h.id));
        if let Some(i) = add_one(ui, id, "Add a participant…", &names, 240.0) {
            next.trains.insert(others[i].id);
        }
    });
}
