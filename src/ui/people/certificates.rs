//! The certificates of a helper as entered from the papers: kind, dates, who saw it and when; below
//! each what its dates say.

use egui::{Id, Ui};

use super::parts::{add_one, day_field};
use super::{Pane, PeopleState, held};
use crate::model::award::{Award, Certificate};
use crate::model::ids::AwardId;
use crate::model::people::Helper;
use crate::ui::desk::Desk;
use crate::ui::icons::Icon;
use crate::ui::theme;
use crate::ui::widgets::button::{Button, Weight};
use crate::ui::widgets::choose::select;
use crate::ui::widgets::field::Field;
use crate::ui::widgets::form::{block, row, slip};
use crate::ui::widgets::words;

/// What stands at the end of a list of kinds.
const NEW_KIND: &str = "New kind, in The club";

/// Shows them and puts what was changed into `next`.
pub fn show(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    state: &mut PeopleState,
    helper: &Helper,
    next: &mut Helper,
) {
    words::heading(ui, "Certificates", 18.0);
    words::soft(
        ui,
        "As entered from the papers, with who saw them. Daystrand compares dates and knows nothing \
         more.",
    );
    let mut gone = None;
    for (at, certificate) in helper.certificates.iter().enumerate() {
        let changed = &mut next.certificates[at];
        if slip(ui, |ui| {
            one(ui, desk, state, (helper, at, certificate), changed)
        }) {
            gone = Some(at);
        }
        ui.add_space(4.0);
    }
    if let Some(at) = gone {
        next.certificates.remove(at);
    }
    let kinds = &desk.view.club.rules.care.awards;
    let id = Id::unique(("certificate-add", helper.id));
    match add_one(ui, id, "Add a certificate…", &names(kinds), 280.0) {
        Some(i) if i < kinds.len() => next.certificates.push(fresh(kinds[i].id)),
        Some(_) => to_kinds(ui, state),
        None => {}
    }
}

/// The kinds by name, and the way to a new one.
fn names(kinds: &[Award]) -> Vec<String> {
    let known = kinds.iter().map(|a| a.name.clone());
    known.chain([NEW_KIND.to_owned()]).collect()
}

const fn fresh(award: AwardId) -> Certificate {
    Certificate {
        award,
        gained: None,
        expires: None,
        seen_by: String::new(),
        seen_on: None,
    }
}

/// Leads to the kinds of certificates.
pub fn to_kinds(ui: &Ui, state: &mut PeopleState) {
    state.pane = Pane::Club;
    state.to_kinds = true;
    // What was painted before the pane changed is painted anew.
    ui.ctx().request_repaint();
}

/// One certificate; says whether it is taken away.
fn one(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    state: &mut PeopleState,
    (helper, at, now): (&Helper, usize, &Certificate),
    next: &mut Certificate,
) -> bool {
    let club = desk.view.club;
    let kinds = &club.rules.care.awards;
    let kind = club.rules.care.award(now.award);
    let name = kind.map_or("Certificate", |a| a.name.trim());
    let id = |what: &str| Id::unique(("certificate", helper.id, at, what));
    let gone = row(ui, |ui| {
        block(ui, "Kind", 236.0, theme::CONTROL, |ui| {
            let chosen = kinds.iter().position(|a| a.id == now.award);
            let (label, width) = (format!("Kind of {name}"), ui.available_width());
            match select(ui, id("kind"), &label, &names(kinds), chosen, width) {
                Some(i) if i < kinds.len() => next.award = kinds[i].id,
                Some(_) => to_kinds(ui, state),
                None => {}
            }
        });
        let day = |ui: &mut Ui, desk: &mut Desk<'_>, state: &mut PeopleState, what: &str, date| {
            block(ui, what, 176.0, theme::CONTROL, |ui| {
                let (label, width) = (format!("{what}: {name}"), ui.available_width());
                day_field(ui, desk, state, (id(what), &label, width), date);
            });
        };
        day(ui, desk, state, "Gained", &mut next.gained);
        day(ui, desk, state, "Expires", &mut next.expires);
        block(ui, "Seen by", 236.0, theme::CONTROL, |ui| {
            let (label, width) = (format!("Seen by: {name}"), ui.available_width());
            let f = Field::new(id("seen-by"), &label, &now.seen_by).hint("who saw the paper");
            if let Some(by) = f.show(ui, desk.drafts, width) {
                next.seen_by = by;
            }
        });
        day(ui, desk, state, "Seen on", &mut next.seen_on);
        block(ui, "", 132.0, theme::CONTROL, |ui| {
            let label = format!("Take away: {name}");
            let b = Button::new(id("away"), "Take away").name(&label);
            b.icon(Icon::Bin).weight(Weight::Quiet).show(ui).clicked()
        })
    });
    if let Some(kind) = kind {
        words::body(ui, &held::says(kind, now, desk.view.today));
    }
    gone
}
