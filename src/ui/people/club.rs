//! What the club decided once: its name, its own rules, how tiles are made, the parts of its day.

use egui::{Id, Rect, Ui, vec2};

use super::{PeopleState, craft, songs, water};
use crate::model::club::{Paper, Part, Rules};
use crate::model::edit::Edit;
use crate::symbols::lexicon::{lexicon, lexicons};
use crate::ui::desk::Desk;
use crate::ui::icons::Icon;
use crate::ui::theme;
use crate::ui::widgets::button::{Button, Weight};
use crate::ui::widgets::choose::{segments_here, select};
use crate::ui::widgets::field::Field;
use crate::ui::widgets::form::{block, row, scroll, sheet};
use crate::ui::widgets::steps::{Steps, stepper};
use crate::ui::widgets::words;
use crate::units::Length;

/// Shows the pane.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut PeopleState, rect: Rect) {
    desk.regions.add(rect, Id::unique("club-name"));
    scroll(ui, "club", rect, |ui| {
        ui.set_max_width(ui.available_width().min(900.0));
        sheet(ui, |ui| {
            block(ui, "Name of the club", 380.0, theme::CONTROL, |ui| {
                let width = ui.available_width();
                let f = Field::new(
                    Id::unique("club-name"),
                    "Name of the club",
                    &desk.view.club.name,
                );
                if let Some(name) = f.show(ui, desk.drafts, width) {
                    desk.edit(Edit::ClubName(name));
                }
            });
            rules(ui, desk);
        });
        ui.add_space(12.0);
        water::show(ui, desk, state);
        ui.add_space(12.0);
        sheet(ui, |ui| craft::show(ui, desk));
        ui.add_space(12.0);
        sheet(ui, |ui| parts(ui, desk));
        ui.add_space(12.0);
        sheet(ui, |ui| songs::show(ui, desk));
        ui.add_space(16.0);
    });
}

fn rules(ui: &mut Ui, desk: &mut Desk<'_>) {
    let now = &desk.view.club.rules;
    let mut next = now.clone();
    let mut number = |ui: &mut Ui,
                      name: &str,
                      unit: &str,
                      range: std::ops::RangeInclusive<u32>,
                      step: u32,
                      value: u32| {
        block(ui, name, 200.0, theme::CONTROL, |ui| {
            let s = Steps {
                id: Id::unique(("rule", name)),
                label: name,
                unit,
                range,
                step,
            };
            stepper(ui, desk.drafts, &s, value)
        })
    };
    row(ui, |ui| {
        if let Some(m) = number(
            ui,
            "Minutes between two rows",
            "min",
            0..=30,
            1,
            now.transition_minutes,
        ) {
            next.transition_minutes = m;
        }
        if let Some(m) = number(
            ui,
            "Minutes of a session",
            "min",
            15..=480,
            5,
            now.session_minutes,
        ) {
            next.session_minutes = m;
        }
        let mm = |l: Length| (l.to_mm().round() as u32).max(1);
        if let Some(side) = number(
            ui,
            "Tiles of a new participant",
            "mm",
            30..=120,
            5,
            mm(now.tile),
        ) {
            next.tile = Length::mm(f64::from(side));
        }
        block(ui, "Paper in the printer", 300.0, theme::CONTROL, |ui| {
            let names = Paper::ALL.map(Paper::label);
            let at = Paper::ALL.iter().position(|p| *p == now.paper).unwrap_or(0);
            if let Some(i) = segments_here(ui, "club-paper", &names, at) {
                next.paper = Paper::ALL[i];
            }
        });
        block(
            ui,
            "Words that come with the pictures",
            300.0,
            theme::CONTROL,
            |ui| {
                language(ui, &mut next);
            },
        );
    });
    if next != *now {
        desk.edit(Edit::Rules(next));
    }
}

/// Which of the languages that there are words in.
fn language(ui: &mut Ui, next: &mut Rules) {
    let all = lexicons();
    let used = &lexicon(&next.words).language;
    let at = all.iter().position(|l| l.language == *used).unwrap_or(0);
    let names: Vec<String> = all.iter().map(|l| l.name.clone()).collect();
    let (id, width) = (Id::unique("club-words"), ui.available_width());
    let label = "Language of the words that come with the pictures";
    if let Some(i) = select(ui, id, label, &names, Some(at), width) {
        next.words = all[i].language.clone();
    }
}

fn parts(ui: &mut Ui, desk: &mut Desk<'_>) {
    words::heading(ui, "Parts of the day", 20.0);
    words::soft(
        ui,
        "In the order of a day. Their names stand above the strand and on paper.",
    );
    let all = &desk.view.club.parts;
    for (i, part) in all.iter().enumerate() {
        part_row(ui, desk, part, (i, all.len()));
    }
    if Button::new("part-add", "Add a part")
        .icon(Icon::Plus)
        .show(ui)
        .clicked()
    {
        desk.edit(Edit::AddPart(format!("Part {}", all.len() + 1)));
    }
}

fn part_row(ui: &mut Ui, desk: &mut Desk<'_>, part: &Part, (i, n): (usize, usize)) {
    ui.horizontal(|ui| {
        ui.spacing_mut().item_spacing = vec2(6.0, 6.0);
        let id = Id::unique(("part", part.id));
        let label = format!("Part {} of the day", i + 1);
        if let Some(name) = Field::new(id, &label, &part.name).show(ui, desk.drafts, 260.0) {
            desk.edit(Edit::RenamePart(part.id, name));
        }
        let small = |ui: &mut Ui, what: &str, icon: Icon, enabled: bool| {
            let name = format!("{what}: {}", part.name);
            let b = Button::new((id, what), &name)
                .icon_only(icon)
                .enabled(enabled)
                .weight(Weight::Quiet);
            b.show(ui).clicked()
        };
        let up = small(ui, "Earlier", Icon::Up, i > 0);
        let down = small(ui, "Later", Icon::Down, i + 1 < n);
        let bin = small(ui, "Remove", Icon::Bin, true);
        if up {
            desk.edit(Edit::MovePart(part.id, i - 1));
        }
        if down {
            desk.edit(Edit::MovePart(part.id, i + 1));
        }
        if bin {
            desk.edit(Edit::RemovePart(part.id));
        }
    });
}
