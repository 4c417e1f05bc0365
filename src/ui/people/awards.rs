//! Kinds of certificates, each with the club's own rule, and a line that works the rule through.

use egui::{Id, Ui};

use super::{PeopleState, held};
use crate::model::award::{Award, MonthDay, ShortMonth, Validity};
use crate::model::care::Care;
use crate::model::ids::AwardId;
use crate::ui::dates;
use crate::ui::desk::Desk;
use crate::ui::icons::Icon;
use crate::ui::theme;
use crate::ui::widgets::button::{Button, Weight};
use crate::ui::widgets::choose::{segments_here, select, tick_at};
use crate::ui::widgets::field::Field;
use crate::ui::widgets::form::{block, row, slip};
use crate::ui::widgets::steps::{Steps, stepper};
use crate::ui::widgets::words;

/// Shows the list and puts what was changed into `next`.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut PeopleState, next: &mut Care) {
    if std::mem::take(&mut state.to_kinds) {
        ui.scroll_to_cursor(Some(egui::Align::Min));
        ui.memory_mut(|m| m.request_focus(Id::unique(("button", "award-add"))));
    }
    words::heading(ui, "Kinds of certificates", 20.0);
    words::soft(
        ui,
        "How long one lasts is your club’s rule; bodies differ and rules change. A day of expiry \
         entered from the paper goes before any rule.",
    );
    let mut gone = None;
    for (at, award) in desk.view.club.rules.care.awards.iter().enumerate() {
        let changed = &mut next.awards[at];
        if slip(ui, |ui| one(ui, desk, state, award, changed)) {
            gone = Some(at);
        }
        ui.add_space(4.0);
    }
    if let Some(at) = gone {
        next.awards.remove(at);
    }
    let b = Button::new("award-add", "Add a kind of certificate").icon(Icon::Plus);
    if b.show(ui).clicked() {
        next.awards.push(fresh(next.awards.len() + 1));
    }
}

fn fresh(n: usize) -> Award {
    Award {
        id: AwardId::NEW,
        name: format!("Certificate {n}"),
        for_water: true,
        validity: Validity::AsWritten,
        last_day_counts: true,
    }
}

/// One kind; says whether it is taken away.
fn one(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    state: &mut PeopleState,
    now: &Award,
    next: &mut Award,
) -> bool {
    let id = |what: &str| Id::unique(("award", now.id, what));
    let name = now.name.trim();
    let gone = row(ui, |ui| {
        block(ui, "Name", 280.0, theme::CONTROL, |ui| {
            let (label, width) = (format!("Name of {name}"), ui.available_width());
            if let Some(text) =
                Field::new(id("name"), &label, &now.name).show(ui, desk.drafts, width)
            {
                next.name = text;
            }
        });
        block(ui, "Lasts", 250.0, theme::CONTROL, |ui| {
            let names = ["As written on it", "Some months", "Until a day of the year"];
            let names = names.map(str::to_owned);
            let at = match now.validity {
                Validity::AsWritten => 0,
                Validity::Months { .. } => 1,
                Validity::FixedDay { .. } => 2,
            };
            let (label, width) = (format!("How long {name} lasts"), ui.available_width());
            if let Some(i) = select(ui, id("lasts"), &label, &names, Some(at), width) {
                next.validity = first_of(i);
            }
        });
        block(ui, "", 132.0, theme::CONTROL, |ui| {
            let label = format!("Remove the kind {name}");
            let b = Button::new(id("away"), "Remove").name(&label);
            b.icon(Icon::Bin).weight(Weight::Quiet).show(ui).clicked()
        })
    });
    row(ui, |ui| lasts(ui, desk, state, now, next));
    ticks(ui, now, next);
    words::body(ui, &held::worked(now, desk.view.today));
    gone
}

/// Where a rule of another sort begins. Twelve months and the last day of the year are only what is
/// usual; each is typed over.
fn first_of(sort: usize) -> Validity {
    match (sort, MonthDay::new(12, 31)) {
        (1, _) => Validity::Months {
            months: 12,
            short: ShortMonth::default(),
        },
        (2, Some(until)) => Validity::FixedDay {
            until,
            boundary: None,
        },
        _ => Validity::AsWritten,
    }
}

/// What the rule of this sort needs to know.
fn lasts(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut PeopleState, now: &Award, next: &mut Award) {
    let name = now.name.trim();
    let id = |what: &str| Id::unique(("award", now.id, what));
    match &mut next.validity {
        Validity::AsWritten => {}
        Validity::Months { months, short } => {
            block(ui, "Months", 180.0, theme::CONTROL, |ui| {
                let label = format!("Months of {name}");
                let s = Steps {
                    id: id("months"),
                    label: &label,
                    unit: "",
                    range: 1..=600,
                    step: 1,
                };
                if let Some(n) = stepper(ui, desk.drafts, &s, *months) {
                    *months = n;
                }
            });
            block(
                ui,
                "Where the month is shorter",
                420.0,
                theme::CONTROL,
                |ui| {
                    let at = ShortMonth::ALL.iter().position(|s| s == short);
                    let names = ["Its last day", "First of the next"];
                    let salt = format!("short-month-{}", now.id.0);
                    if let Some(i) = segments_here(ui, &salt, &names, at.unwrap_or(0)) {
                        *short = ShortMonth::ALL[i];
                    }
                },
            );
        }
        Validity::FixedDay { until, boundary } => {
            let mut day = Some(*until);
            let label = format!("{name} until");
            let what = ("Until", label.as_str(), "31 December");
            of_the_year(ui, desk, state, (id("until"), what), &mut day);
            *until = day.unwrap_or(*until);
            let label = format!("{name}: a year more when gained on or after");
            let what = (
                "A year more when gained on or after",
                label.as_str(),
                "no such day",
            );
            of_the_year(ui, desk, state, (id("boundary"), what), boundary);
        }
    }
}

/// A day of the year that can be typed or left empty.
fn of_the_year(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    state: &mut PeopleState,
    (id, (name, label, hint)): (Id, (&str, &str, &str)),
    day: &mut Option<MonthDay>,
) {
    block(ui, name, 280.0, theme::CONTROL, |ui| {
        let shown = day.map_or_else(String::new, dates::of_the_year);
        let width = ui.available_width().min(220.0);
        let f = Field::new(id, label, &shown).hint(hint);
        if let Some(typed) = f.show(ui, desk.drafts, width) {
            let read = dates::read_of_the_year(&typed);
            let empty = typed.trim().is_empty();
            state.no_date = (read.is_none() && !empty).then_some((id, typed));
            if read.is_some() || empty {
                *day = read;
            }
        }
        if let Some(typed) = super::parts::no_date(state, id) {
            let says = format!("“{typed}” is no day of every year. Type it like 31 December.");
            words::soft(ui, &says);
        }
    });
}

fn ticks(ui: &mut Ui, now: &Award, next: &mut Award) {
    let name = now.name.trim();
    row(ui, |ui| {
        for (what, width, on) in [
            ("Needed in the water", 240.0, &mut next.for_water),
            (
                "Its last day still counts",
                260.0,
                &mut next.last_day_counts,
            ),
        ] {
            let width = f32::min(width, ui.max_rect().width());
            let (_, rect) = ui.allocate_space(egui::vec2(width, theme::CONTROL));
            let id = Id::unique(("award", now.id, what));
            let r = tick_at(ui, id, rect, *on, what, "");
            r.ctx
                .accesskit_node_builder(r.id, |node| node.set_label(format!("{what}: {name}")));
            if r.clicked() {
                *on = !*on;
            }
        }
    });
}
