//! The date at the side: who leads in the water, who watches, who is named for whom, and where all
//! meet.

use egui::{Id, Ui};

use super::{change, person};
use crate::model::edit::TodayEdit;
use crate::model::people::{Helper, Role};
use crate::model::session::Session;
use crate::plan::water::{has_alert, watches};
use crate::ui::desk::Desk;
use crate::ui::theme;
use crate::ui::widgets::choose::select;
use crate::ui::widgets::field::Field;
use crate::ui::widgets::form::block;
use crate::ui::widgets::words;

/// Its first control.
pub fn first(session: &Session) -> Id {
    Id::unique(("water-lead-of", session.id))
}

/// Shows it.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>, session: &Session) {
    words::heading(ui, "On this date", 20.0);
    lead(ui, desk, session);
    spot(ui, desk, session);
    watchers(ui, desk, session);
    named(ui, desk, session);
    words::soft(
        ui,
        "Choose a moment in the water to say who is with whom, or a person to say when they are \
         there.",
    );
}

/// Helpers who come, with a first line for nobody.
fn who_comes<'a>(
    desk: &Desk<'a>,
    session: &Session,
    nobody: &str,
) -> (Vec<&'a Helper>, Vec<String>) {
    let club = desk.view.club;
    let comes = |h: &&Helper| !session.helpers_away.contains(&h.id);
    let all: Vec<&Helper> = club
        .helpers
        .iter()
        .map(AsRef::as_ref)
        .filter(comes)
        .collect();
    let mut names = vec![nobody.to_owned()];
    names.extend(all.iter().map(|h| h.name.clone()));
    (all, names)
}

fn lead(ui: &mut Ui, desk: &mut Desk<'_>, session: &Session) {
    let (all, names) = who_comes(desk, session, "Nobody named");
    let now = session.today.water_lead;
    let at = match now {
        None => Some(0),
        Some(id) => all.iter().position(|h| h.id == id).map(|i| i + 1),
    };
    let width = ui.available_width();
    block(ui, "Leads in the water", width, theme::CONTROL, |ui| {
        let id = first(session);
        if let Some(i) = select(ui, id, "Leads in the water", &names, at, width) {
            let lead = i.checked_sub(1).map(|i| all[i].id);
            change(desk, TodayEdit::WaterLead(lead));
        }
    });
}

fn spot(ui: &mut Ui, desk: &mut Desk<'_>, session: &Session) {
    let usual = desk.view.club.rules.care.meeting_spot.as_str();
    let hint = if usual.is_empty() {
        "not entered"
    } else {
        usual
    };
    let width = ui.available_width();
    let name = "Where all meet if someone is missing";
    block(ui, name, width, theme::CONTROL, |ui| {
        let id = Id::unique(("water-spot", session.id));
        let f = Field::new(id, name, &session.today.meeting_spot).hint(hint);
        if let Some(words) = f.show(ui, desk.drafts, width) {
            change(desk, TodayEdit::MeetingSpot(words));
        }
    });
}

/// Whoever could watch, each a switch.
fn watchers(ui: &mut Ui, desk: &mut Desk<'_>, session: &Session) {
    words::heading(ui, "Watch, with no other job", 16.0);
    let could = |h: &&Helper| {
        let role = |r| h.roles.contains(&r);
        role(Role::Watcher) || role(Role::WaterSafety) || watches(session, h)
    };
    let (all, _) = who_comes(desk, session, "");
    let all: Vec<&Helper> = all.into_iter().filter(could).collect();
    if all.is_empty() {
        words::soft(ui, "Nobody who comes is entered as a watcher.");
    }
    for helper in all {
        person::watching_as(ui, desk, session, helper, &helper.name);
    }
}

/// Whoever has an alert, and who is named to watch them. What the alert says stays where it is.
fn named(ui: &mut Ui, desk: &mut Desk<'_>, session: &Session) {
    let club = desk.view.club;
    let with_alert = |p: &&std::sync::Arc<crate::model::people::Participant>| has_alert(p);
    let people: Vec<_> = club.attending(session).filter(with_alert).collect();
    if people.is_empty() {
        return;
    }
    words::heading(ui, "Named watchers", 16.0);
    let (all, names) = who_comes(desk, session, "Nobody named");
    let width = ui.available_width();
    for p in people {
        let name = crate::story::said::called(p);
        let now = session.today.watched_by.get(&p.id);
        let at = match now {
            None => Some(0),
            Some(id) => all.iter().position(|h| h.id == *id).map(|i| i + 1),
        };
        let label = format!("Watches {name}");
        block(ui, &name, width, theme::CONTROL, |ui| {
            let id = Id::unique(("water-watched", p.id));
            if let Some(i) = select(ui, id, &label, &names, at, width) {
                let by = i.checked_sub(1).map(|i| all[i].id);
                change(desk, TodayEdit::WatchedBy(p.id, by));
            }
        });
    }
}
