//! What is known about a participant, a section at a time, each field with who will see it.

use egui::{Id, Ui, vec2};

use super::{PeopleState, readers};
use crate::model::club::Activity;
use crate::model::conditions::{Condition, Known};
use crate::model::people::Participant;
use crate::model::privacy::Class;
use crate::model::profile::{Field as Fact, PhotoConsent, Section};
use crate::ui::dates;
use crate::ui::desk::Desk;
use crate::ui::icons::Icon;
use crate::ui::theme;
use crate::ui::widgets::button::{Button, Weight};
use crate::ui::widgets::choose::{segments_here, select, tick};
use crate::ui::widgets::field::Field;
use crate::ui::widgets::form::{block, row};
use crate::ui::widgets::words;
use jiff::civil::Date;

/// Shows the page and puts what was changed into `next`.
pub fn show(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    state: &mut PeopleState,
    person: &Participant,
    next: &mut Participant,
) {
    favourites(ui, desk, person, next);
    hard(ui, desk, person, next);
    for section in Section::ALL {
        let filled = section
            .fields()
            .filter(|f| !person.profile.for_owner(*f).is_empty());
        let (filled, all) = (filled.count(), section.fields().count());
        let open = state.open.contains(&section);
        let label = format!("{}: {filled} of {all}", section.label());
        let icon = if open { Icon::Up } else { Icon::Down };
        let width = ui.available_width();
        let b = Button::new(("section", section.label()), &label)
            .icon(icon)
            .left()
            .width(width);
        if b.weight(Weight::Quiet).show(ui).clicked() {
            if open {
                state.open.remove(&section);
            } else {
                state.open.insert(section);
            }
        }
        if open {
            // Two columns where there is room; a long text has a row of its own.
            let half = (ui.available_width() - 16.0) / 2.0;
            let width = if half < 280.0 {
                ui.available_width()
            } else {
                half
            };
            row(ui, |ui| {
                for field in section.fields() {
                    text(ui, desk, person, next, (field, width));
                }
            });
            if section == Section::Board {
                decision(ui, desk, person, next);
            }
            if section == Section::Sealed {
                papers(ui, desk, person, next);
            }
            ui.add_space(8.0);
        }
    }
}

fn text(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    person: &Participant,
    next: &mut Participant,
    (field, width): (Fact, f32),
) {
    let now = person.profile.for_owner(field);
    let long = now.chars().count() > 42 || now.contains('\n');
    let (rows, width) = if long {
        (2, ui.max_rect().width())
    } else {
        (1, width)
    };
    ui.vertical(|ui| {
        ui.set_width(width);
        ui.spacing_mut().item_spacing.y = 2.0;
        readers::name(ui, field.label(), field.class(), width);
        let id = Id::unique(("profile", person.id, field.word()));
        let f = Field::new(id, field.label(), now).rows(rows);
        if let Some(text) = f.show(ui, desk.drafts, width) {
            next.profile.set(field, text);
        }
    });
}

fn favourites(ui: &mut Ui, desk: &mut Desk<'_>, person: &Participant, next: &mut Participant) {
    let club = desk.view.club;
    let width = ui.available_width();
    readers::name(ui, "Favourites, as they showed", Class::Public, width);
    row(ui, |ui| {
        for id in &person.profile.favourites {
            let label = club.activity(*id).map_or("", |a| a.label.as_str());
            let name = format!("{label} ×");
            let b = Button::new(("favourite", person.id, *id), &name);
            if b.tip("No longer a favourite").show(ui).clicked() {
                next.profile.favourites.remove(id);
            }
        }
        let free: Vec<&Activity> = club
            .activities
            .iter()
            .map(AsRef::as_ref)
            .filter(|a| !person.profile.favourites.contains(&a.id))
            .collect();
        let names: Vec<String> = free.iter().map(|a| a.label.clone()).collect();
        let id = Id::unique(("favourite-add", person.id));
        if let Some(i) = select(ui, id, "Add a favourite", &names, None, 240.0) {
            next.profile.favourites.insert(free[i].id);
        }
    });
    ui.add_space(8.0);
}

/// Conditions that are hard, each with what helps.
fn hard(ui: &mut Ui, desk: &mut Desk<'_>, person: &Participant, next: &mut Participant) {
    let width = ui.available_width();
    readers::name(
        ui,
        "Hard on some days, and what helps then",
        Class::Helper,
        width,
    );
    let now = person.profile.hard().for_owner();
    let mut changed = now.clone();
    for (condition, helps) in now {
        let label = condition.label();
        ui.horizontal(|ui| {
            let (_, name) = ui.allocate_space(vec2(150.0, theme::CONTROL));
            words::line(
                ui.painter(),
                name,
                egui::Align2::LEFT_CENTER,
                label,
                theme::bold(16.0),
                theme::of(ui.ctx()).col.ink,
            );
            let id = Id::unique(("hard", person.id, label));
            let f = Field::new(id, label, helps).hint("what helps then");
            let width = (ui.available_width() - 64.0).max(120.0);
            if let Some(text) = f.show(ui, desk.drafts, width) {
                changed.insert(condition.clone(), text);
            }
            let name = format!("{label} is not hard");
            let b = Button::new(("hard-remove", person.id, label), &name).icon_only(Icon::Cross);
            if b.weight(Weight::Quiet).show(ui).clicked() {
                changed.remove(condition);
            }
        });
    }
    let known = Known::ALL.into_iter().map(Condition::Known);
    let of_sessions = desk
        .view
        .club
        .sessions
        .iter()
        .flat_map(|s| s.conditions.clone());
    let mut free: Vec<Condition> = known
        .chain(of_sessions)
        .filter(|c| !now.contains_key(c))
        .collect();
    free.sort();
    free.dedup();
    let names: Vec<String> = free.iter().map(|c| c.label().to_owned()).collect();
    let id = Id::unique(("hard-add", person.id));
    if let Some(i) = select(ui, id, "Add a condition that is hard", &names, None, 280.0) {
        changed.insert(free[i].clone(), String::new());
    }
    if changed != *now {
        next.profile.set_hard(changed);
    }
    ui.add_space(8.0);
}

fn decision(ui: &mut Ui, desk: &mut Desk<'_>, person: &Participant, next: &mut Participant) {
    let now = *person.profile.decision().for_owner();
    let mut changed = now;
    row(ui, |ui| {
        day(
            ui,
            desk,
            person,
            ("Decided on", Class::Helper),
            &mut changed.on,
        );
        day(
            ui,
            desk,
            person,
            ("Look at it again on", Class::Helper),
            &mut changed.review,
        );
    });
    let id = |what: &str| Id::unique(("decision", person.id, what));
    let r = tick(
        ui,
        id("warn"),
        now.warn_of_changes,
        "Tell of changes apart and earlier",
        "",
    );
    if r.clicked() {
        changed.warn_of_changes = !now.warn_of_changes;
    }
    let r = tick(
        ui,
        id("surprises"),
        now.surprises,
        "The family agreed to surprises",
        "",
    );
    if r.clicked() {
        changed.surprises = !now.surprises;
    }
    if changed != now {
        next.profile.set_decision(changed);
    }
}

fn papers(ui: &mut Ui, desk: &mut Desk<'_>, person: &Participant, next: &mut Participant) {
    let now = *person.profile.papers().for_owner();
    let mut changed = now;
    let class = Class::Coordinator;
    row(ui, |ui| {
        day(
            ui,
            desk,
            person,
            ("Family agreed on", class),
            &mut changed.agreed,
        );
        day(
            ui,
            desk,
            person,
            ("Delete by", class),
            &mut changed.delete_by,
        );
        day(
            ui,
            desk,
            person,
            ("About photographs on", class),
            &mut changed.photos_on,
        );
    });
    let width = ui.available_width();
    block(ui, "Photographs may be used", width, theme::CONTROL, |ui| {
        let names = PhotoConsent::ALL.map(PhotoConsent::label);
        let at = PhotoConsent::ALL
            .iter()
            .position(|c| *c == now.photos)
            .unwrap_or(0);
        if let Some(i) = segments_here(ui, "photos", &names, at) {
            changed.photos = PhotoConsent::ALL[i];
        }
    });
    if changed != now {
        next.profile.set_papers(changed);
    }
}

/// A day that can be typed or left empty.
fn day(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    person: &Participant,
    (name, class): (&str, Class),
    now: &mut Option<Date>,
) {
    let shown = now.map_or_else(String::new, dates::typed);
    ui.vertical(|ui| {
        ui.set_width(300.0);
        readers::name(ui, name, class, 300.0);
        let f = Field::new(Id::unique(("day", person.id, name)), name, &shown);
        if let Some(typed) = f.hint("2027-06-12").show(ui, desk.drafts, 300.0) {
            if typed.trim().is_empty() {
                *now = None;
            } else if let Some(date) = dates::read_date(&typed) {
                *now = Some(date);
            }
        }
    });
}
