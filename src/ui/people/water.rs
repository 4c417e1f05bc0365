//! The club's own rules for people, water and the place. None is built in, and none is advice.

use egui::{Id, Ui, vec2};

use super::parts::long_field;
use super::{PeopleState, awards, flags, looked};
use crate::model::care::{Care, Sunscreen};
use crate::model::edit::Edit;
use crate::ui::desk::Desk;
use crate::ui::theme;
use crate::ui::widgets::choose::tick;
use crate::ui::widgets::field::{Drafts, Field};
use crate::ui::widgets::form::{block, row, sheet};
use crate::ui::widgets::steps::{Maybe, Steps, maybe, stepper_at};
use crate::ui::widgets::words;

/// Width of a block with a number, and of the number with its steps.
const NUMBER: f32 = 250.0;
const STEPPER: f32 = 212.0;

/// Shows the sheets and enters what was changed.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut PeopleState) {
    let now = &desk.view.club.rules;
    let mut next = now.clone();
    let care = &mut *next.care;
    sheet(ui, |ui| rules(ui, desk, care));
    ui.add_space(12.0);
    sheet(ui, |ui| awards::show(ui, desk, state, care));
    ui.add_space(12.0);
    sheet(ui, |ui| flags::show(ui, desk, care));
    ui.add_space(12.0);
    sheet(ui, |ui| looked::show(ui, desk, state, care));
    if next != *now {
        desk.edit(Edit::Rules(next));
    }
}

fn rules(ui: &mut Ui, desk: &mut Desk<'_>, next: &mut Care) {
    words::heading(ui, "People and water", 20.0);
    words::soft(
        ui,
        "These are your club’s rules. Published ones differ from place to place; none is built in.",
    );
    row(ui, |ui| people(ui, desk.drafts, next));
    let now = &desk.view.club.rules.care;
    let width = ui.available_width();
    words::soft(ui, "Your club’s rule for the water, in its own words");
    let id = Id::unique("care-rule");
    let label = "Your club’s rule for the water, in its own words";
    if let Some(text) = long_field(ui, desk, (id, label), &now.rule, (3, width)) {
        next.rule = text;
    }
    ui.add_space(6.0);
    row(ui, |ui| texts(ui, desk, next));
    row(ui, |ui| minutes(ui, desk.drafts, next));
    sunscreen(ui, desk.drafts, next);
}

/// How many people.
fn people(ui: &mut Ui, drafts: &mut Drafts, next: &mut Care) {
    let each = "People beside each in the water";
    number(ui, drafts, (each, ""), (1, 6, 1), &mut next.people_each);
    block(
        ui,
        "In the water to one watcher",
        NUMBER,
        theme::CONTROL,
        |ui| {
            let s = steps("In the water to one watcher", "", (1, 100, 1));
            let m = Maybe {
                value: next.watcher_for,
                none: "no rule",
                first: 6,
                width: STEPPER,
            };
            if let Some(n) = maybe(ui, drafts, &s, &m) {
                next.watcher_for = n;
            }
        },
    );
    let adults = "Fewest adults at a session";
    number(
        ui,
        drafts,
        (adults, ""),
        (0, 200, 1),
        &mut next.fewest_adults,
    );
}

/// What is said and where all meet.
fn texts(ui: &mut Ui, desk: &mut Desk<'_>, next: &mut Care) {
    type Get = fn(&mut Care) -> &mut String;
    let fields: [(&str, &str, f32, Get); 3] = [
        ("Emergency number", "as dialled here", 180.0, |c| {
            &mut c.emergency
        }),
        (
            "Where all meet when someone is missing",
            "the big tree at the steps",
            320.0,
            |c| &mut c.meeting_spot,
        ),
        (
            "Signal to come out that can be seen",
            "a flag held up high",
            320.0,
            |c| &mut c.recall,
        ),
    ];
    for (name, hint, width, get) in fields {
        block(ui, name, width, theme::CONTROL, |ui| {
            let value = get(next);
            let width = ui.available_width();
            let now = value.clone();
            let f = Field::new(Id::unique(("care", name)), name, &now).hint(hint);
            if let Some(text) = f.show(ui, desk.drafts, width) {
                *value = text;
            }
        });
    }
}

/// What comes again after a time.
fn minutes(ui: &mut Ui, drafts: &mut Drafts, next: &mut Care) {
    let look = "Look at the place again after";
    let value = &mut next.look_again_minutes;
    number(ui, drafts, (look, "min"), (1, 1440, 5), value);
    let thunder = "Out of the water after thunder";
    let value = &mut next.thunder_minutes;
    number(ui, drafts, (thunder, "min"), (1, 1440, 5), value);
    block(ui, "Drinks after", NUMBER, theme::CONTROL, |ui| {
        let s = steps("Drinks after", "min", (5, 1440, 5));
        let m = Maybe {
            value: next.drink_minutes,
            none: "no reminder",
            first: 30,
            width: STEPPER,
        };
        if let Some(n) = maybe(ui, drafts, &s, &m) {
            next.drink_minutes = n;
        }
    });
}

fn sunscreen(ui: &mut Ui, drafts: &mut Drafts, next: &mut Care) {
    let (id, on) = (Id::unique("care-sunscreen"), next.sunscreen.is_some());
    if tick(ui, id, on, "Remind of sunscreen", "").clicked() {
        next.sunscreen = (!on).then(Sunscreen::default);
    }
    if let Some(s) = &mut next.sunscreen {
        row(ui, |ui| {
            let value = &mut s.before_minutes;
            let name = "Sunscreen before the start";
            number(ui, drafts, (name, "min"), (0, 120, 5), value);
            let value = &mut s.every_minutes;
            let name = "Sunscreen again after";
            number(ui, drafts, (name, "min"), (5, 1440, 5), value);
        });
    }
}

fn steps<'a>(label: &'a str, unit: &'a str, (from, to, step): (u32, u32, u32)) -> Steps<'a> {
    Steps {
        id: Id::unique(("care", label.to_owned())),
        label,
        unit,
        range: from..=to,
        step,
    }
}

/// A number under its name. One out of the usual range, from a file, stays until it is changed.
fn number(
    ui: &mut Ui,
    drafts: &mut Drafts,
    (name, unit): (&str, &str),
    range: (u32, u32, u32),
    value: &mut u32,
) {
    block(ui, name, NUMBER, theme::CONTROL, |ui| {
        let (_, rect) = ui.allocate_space(vec2(STEPPER, theme::CONTROL));
        if let Some(n) = stepper_at(ui, drafts, &steps(name, unit, range), *value, rect) {
            *value = n;
        }
    });
}
