//! What is agreed about a participant in the water, where it can be compared with the day: how deep,
//! and whether they hear.

use egui::{Id, Ui};

use super::readers;
use crate::model::people::Participant;
use crate::model::privacy::Class;
use crate::model::profile::InWater;
use crate::ui::desk::Desk;
use crate::ui::widgets::choose::tick;
use crate::ui::widgets::form::row;
use crate::ui::widgets::steps::{Maybe, Steps, maybe};

/// Deepest water that can be agreed, in centimetres.
const DEEPEST: u32 = 3_000;

/// In words, for a line that says what is there.
pub fn gist(agreed: InWater) -> Vec<String> {
    let depth = agreed.depth_cm.map(|cm| format!("Depth agreed: {cm} cm"));
    let hears = agreed
        .without_hearing
        .then(|| "Does not hear in the water".to_owned());
    depth.into_iter().chain(hears).collect()
}

/// Shows both and puts what was changed into `next`.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>, person: &Participant, next: &mut Participant) {
    let now = *person.profile.in_water().for_owner();
    let mut changed = now;
    row(ui, |ui| {
        let width = 308.0_f32.min(ui.max_rect().width());
        ui.vertical(|ui| {
            ui.set_width(width);
            ui.spacing_mut().item_spacing.y = 2.0;
            readers::name(ui, "Depth agreed", Class::Helper, width);
            let s = Steps {
                id: Id::unique(("agreed-depth", person.id)),
                label: "Depth agreed",
                unit: "cm",
                range: 0..=DEEPEST,
                step: 10,
            };
            let m = Maybe {
                value: now.depth_cm,
                none: "none",
                first: 60,
                width: 220.0,
            };
            if let Some(depth) = maybe(ui, desk.drafts, &s, &m) {
                changed.depth_cm = depth;
            }
        });
        ui.vertical(|ui| {
            let width = 420.0_f32.min(ui.max_rect().width());
            ui.set_width(width);
            ui.spacing_mut().item_spacing.y = 2.0;
            readers::name(ui, "Hearing", Class::Helper, width);
            let id = Id::unique(("without-hearing", person.id));
            let name = "Does not hear in the water (aids stay dry)";
            if tick(ui, id, now.without_hearing, name, "").clicked() {
                changed.without_hearing = !now.without_hearing;
            }
        });
    });
    if changed != now {
        next.profile.set_in_water(changed);
    }
}
