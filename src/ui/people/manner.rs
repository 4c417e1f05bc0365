//! How a participant's board is given: form with exceptions, length, direction, finishing.

use egui::{Id, Ui};

use super::parts::{add_activity, chip};
use super::readers;
use super::sketch::{Sketch, cards};
use crate::model::hand::Content;
use crate::model::ids::ActivityId;
use crate::model::manner::{Finishing, Form, Mixed, Reach, Run};
use crate::model::people::Participant;
use crate::model::privacy::Class;
use crate::ui::desk::Desk;
use crate::ui::pictures::Eyes;
use crate::ui::widgets::choose::select;
use crate::ui::widgets::field::Field;
use crate::ui::widgets::form::row;
use crate::ui::widgets::words;

/// Shows the page and puts what was changed into `next`.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>, person: &Participant, next: &mut Participant) {
    words::soft(
        ui,
        "Someone who knows the participant decides. Choose the form understood on a hard day.",
    );
    let m = &mut next.manner;
    choice(
        ui,
        "A step is shown as",
        &Form::ALL,
        Sketch::Form,
        &mut m.form,
    );
    exceptions(ui, desk, person, next);
    let m = &mut next.manner;
    choice(
        ui,
        "Shown at once",
        &Reach::ALL,
        Sketch::Reach,
        &mut m.reach,
    );
    choice(ui, "Steps run", &Run::ALL, Sketch::Run, &mut m.run);
    let name = "A finished step is";
    choice(
        ui,
        name,
        &Finishing::ALL,
        Sketch::Finishing,
        &mut m.finishing,
    );
}

fn choice<T: Copy + PartialEq>(
    ui: &mut Ui,
    name: &str,
    all: &[T],
    sketch: fn(T) -> Sketch,
    now: &mut T,
) {
    let width = ui.available_width();
    readers::name(ui, name, Class::Public, width);
    let sketches: Vec<Sketch> = all.iter().map(|x| sketch(*x)).collect();
    let at = all.iter().position(|x| x == now).unwrap_or(0);
    if let Some(i) = cards(ui, name, &sketches, at) {
        *now = all[i];
    }
    ui.add_space(6.0);
}

/// Activities in another form, each with the thing that stands for it.
fn exceptions(ui: &mut Ui, desk: &mut Desk<'_>, person: &Participant, next: &mut Participant) {
    let club = desk.view.club;
    let forms: Vec<String> = Form::ALL.iter().map(|f| f.label().to_owned()).collect();
    for (id, mixed) in &person.manner.mixed {
        let Some(activity) = club.activity(*id) else {
            continue;
        };
        let label = &activity.label;
        let field = |what: &str| Id::unique(("mixed", person.id, *id, what));
        row(ui, |ui| {
            let name = format!("As the others: {label}");
            let shows = Content::of(activity);
            if chip(ui, desk, field("chip"), (&shows, Eyes::of(person)), &name) {
                next.manner.mixed.remove(id);
            }
            let now = Form::ALL.iter().position(|f| *f == mixed.form);
            let name = format!("{label} is shown as");
            if let Some(i) = select(ui, field("form"), &name, &forms, now, 160.0) {
                change(next, *id, |m| m.form = Form::ALL[i]);
            }
            if mixed.form == Form::Object {
                let name = format!("The thing for {label}");
                let usual = activity.thing.as_str();
                let hint = if usual.is_empty() {
                    "such as: the blue cup"
                } else {
                    usual
                };
                let f = Field::new(field("thing"), &name, &mixed.thing).hint(hint);
                if let Some(thing) = f.show(ui, desk.drafts, 280.0) {
                    change(next, *id, |m| m.thing = thing);
                }
            }
        });
    }
    let id = Id::unique(("mixed-add", person.id));
    let name = "One activity in another form…";
    let taken = |a| person.manner.mixed.contains_key(&a);
    if let Some(id) = add_activity(ui, id, name, (club, 320.0), taken) {
        let form = match person.manner.form {
            Form::Object => Form::Drawing,
            _ => Form::Object,
        };
        let thing = String::new();
        next.manner.mixed.insert(id, Mixed { form, thing });
    }
    ui.add_space(10.0);
}

fn change(next: &mut Participant, id: ActivityId, how: impl FnOnce(&mut Mixed)) {
    if let Some(mixed) = next.manner.mixed.get_mut(&id) {
        how(mixed);
    }
}
