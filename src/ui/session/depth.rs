//! How long an activity takes, and its water: whether it is done in it, how deep, what instead.

use std::sync::Arc;

use egui::{Id, Ui};

use crate::model::club::Activity;
use crate::ui::desk::Desk;
use crate::ui::theme;
use crate::ui::widgets::choose::{select, tick};
use crate::ui::widgets::form::block;
use crate::ui::widgets::steps::{Maybe, Steps, maybe, stepper};

/// Deepest water that can be entered, in centimetres.
const DEEPEST: u32 = 3_000;

/// Usual minutes, and the water: how deep, and what is done when it is not possible.
pub fn time_and_water(ui: &mut Ui, desk: &mut Desk<'_>, a: &Activity, next: &mut Activity) {
    let id = |what: &str| Id::unique(("activity-field", a.id, what));
    block(ui, "Usual minutes", 176.0, theme::CONTROL, |ui| {
        let s = Steps {
            id: id("minutes"),
            label: "Usual minutes",
            unit: "min",
            range: 1..=240,
            step: 1,
        };
        if let Some(m) = stepper(ui, desk.drafts, &s, a.minutes) {
            next.minutes = m;
        }
    });
    block(ui, "Water", 170.0, theme::CONTROL, |ui| {
        if tick(ui, id("water"), a.in_water, "In the water", "").clicked() {
            next.in_water = !a.in_water;
        }
    });
    if a.in_water {
        depth(ui, desk, a, next);
        dry(ui, desk, a, next);
    }
}

fn depth(ui: &mut Ui, desk: &mut Desk<'_>, a: &Activity, next: &mut Activity) {
    block(ui, "How deep the water is", 224.0, theme::CONTROL, |ui| {
        let s = Steps {
            id: Id::unique(("activity-field", a.id, "depth")),
            label: "How deep the water is",
            unit: "cm",
            range: 0..=DEEPEST,
            step: 10,
        };
        let m = Maybe {
            value: a.depth_cm,
            none: "not entered",
            first: 60,
            width: 220.0,
        };
        if let Some(depth) = maybe(ui, desk.drafts, &s, &m) {
            next.depth_cm = depth;
        }
    });
}

fn dry(ui: &mut Ui, desk: &Desk<'_>, a: &Activity, next: &mut Activity) {
    block(
        ui,
        "When the water is not possible",
        240.0,
        theme::CONTROL,
        |ui| {
            let dry: Vec<&Arc<Activity>> = desk
                .view
                .club
                .activities
                .iter()
                .filter(|x| !x.in_water && x.id != a.id)
                .collect();
            let mut names = vec!["Nothing yet".to_owned()];
            names.extend(dry.iter().map(|x| x.label.clone()));
            let now = a
                .dry_replacement
                .and_then(|d| dry.iter().position(|x| x.id == d))
                .map_or(0, |i| i + 1);
            let width = ui.available_width();
            if let Some(i) = select(
                ui,
                Id::unique(("activity-field", a.id, "dry")),
                "Dry replacement",
                &names,
                Some(now),
                width,
            ) {
                next.dry_replacement = i.checked_sub(1).map(|i| dry[i].id);
            }
        },
    );
}
