//! How a participant's board is given: form with exceptions, length, direction, finishing.

use egui::{Id, Ui};

use crate::model::club::Activity;
use crate::model::ids::ActivityId;
use crate::model::manner::{Finishing, Form, Mixed, Reach, Run};
use crate::model::people::Participant;
use crate::ui::desk::Desk;
use crate::ui::icons::Icon;
use crate::ui::theme;
use crate::ui::widgets::button::{Button, Weight};
use crate::ui::widgets::choose::{segments_here, select};
use crate::ui::widgets::field::Field;
use crate::ui::widgets::form::{block, row};
use crate::ui::widgets::words;

/// Shows the page and puts what was changed into `next`.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>, person: &Participant, next: &mut Participant) {
    words::soft(
        ui,
        "Someone who knows the participant decides. Choose the form understood on a hard day.",
    );
    choice(
        ui,
        "A step is shown as",
        "form",
        &Form::ALL,
        Form::label,
        &mut next.manner.form,
    );
    exceptions(ui, desk, person, next);
    choice(
        ui,
        "Shown at once",
        "reach",
        &Reach::ALL,
        Reach::label,
        &mut next.manner.reach,
    );
    choice(
        ui,
        "Steps run",
        "run",
        &Run::ALL,
        Run::label,
        &mut next.manner.run,
    );
    choice(
        ui,
        "A finished step is",
        "finishing",
        &Finishing::ALL,
        Finishing::label,
        &mut next.manner.finishing,
    );
}

fn choice<T: Copy + PartialEq>(
    ui: &mut Ui,
    name: &str,
    id: &str,
    all: &[T],
    label: fn(T) -> &'static str,
    now: &mut T,
) {
    let names: Vec<&str> = all.iter().map(|x| label(*x)).collect();
    let at = all.iter().position(|x| x == now).unwrap_or(0);
    let width = ui.available_width();
    block(ui, name, width, theme::CONTROL, |ui| {
        if let Some(i) = segments_here(ui, id, &names, at) {
            *now = all[i];
        }
    });
}

/// Activities in another form, each with the thing that stands for it.
fn exceptions(ui: &mut Ui, desk: &mut Desk<'_>, person: &Participant, next: &mut Participant) {
    let club = desk.view.club;
    let forms: Vec<String> = Form::ALL.iter().map(|f| f.label().to_owned()).collect();
    for (id, mixed) in &person.manner.mixed {
        let label = club.activity(*id).map_or("", |a| a.label.as_str());
        let field = |what: &str| Id::unique(("mixed", person.id, *id, what));
        row(ui, |ui| {
            let now = Form::ALL.iter().position(|f| *f == mixed.form);
            block(
                ui,
                &format!("{label} is shown as"),
                240.0,
                theme::CONTROL,
                |ui| {
                    let width = ui.available_width();
                    if let Some(i) = select(ui, field("form"), label, &forms, now, width) {
                        change(next, *id, |m| m.form = Form::ALL[i]);
                    }
                },
            );
            if mixed.form == Form::Object {
                block(
                    ui,
                    "The thing, as they know it",
                    280.0,
                    theme::CONTROL,
                    |ui| {
                        let width = ui.available_width();
                        let f = Field::new(field("thing"), "The thing", &mixed.thing);
                        if let Some(thing) = f.hint("the blue cup").show(ui, desk.drafts, width) {
                            change(next, *id, |m| m.thing = thing);
                        }
                    },
                );
            }
            block(ui, "", 110.0, theme::CONTROL, |ui| {
                let name = format!("As the others: {label}");
                let b = Button::new(field("remove"), &name).icon_only(Icon::Cross);
                if b.weight(Weight::Quiet).show(ui).clicked() {
                    next.manner.mixed.remove(id);
                }
            });
        });
    }
    let free: Vec<&Activity> = club
        .activities
        .iter()
        .map(AsRef::as_ref)
        .filter(|a| !person.manner.mixed.contains_key(&a.id))
        .collect();
    let names: Vec<String> = free.iter().map(|a| a.label.clone()).collect();
    block(
        ui,
        "One activity in another form",
        280.0,
        theme::CONTROL,
        |ui| {
            let id = Id::unique(("mixed-add", person.id));
            let width = ui.available_width();
            if let Some(i) = select(ui, id, "Add one in another form", &names, None, width) {
                let form = match person.manner.form {
                    Form::Object => Form::Drawing,
                    _ => Form::Object,
                };
                let thing = String::new();
                next.manner.mixed.insert(free[i].id, Mixed { form, thing });
            }
        },
    );
}

fn change(next: &mut Participant, id: ActivityId, how: impl FnOnce(&mut Mixed)) {
    if let Some(mixed) = next.manner.mixed.get_mut(&id) {
        how(mixed);
    }
}
