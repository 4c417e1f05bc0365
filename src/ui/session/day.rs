//! What the day may bring, and what is called off because of it: conditions, everything in the water
//! at once, and whose boards that touches. Beside it, or below, what is looked at.

use std::sync::Arc;

use egui::{Id, Rect, Ui, pos2};

use super::looked::{self, LookedState};
use crate::model::conditions::{Condition, Known};
use crate::model::edit::{Edit, TimetableEdit};
use crate::model::session::Session;
use crate::plan::changes::{Changes, changes};
use crate::ui::desk::Desk;
use crate::ui::icons::Icon;
use crate::ui::theme;
use crate::ui::widgets::button::{Button, Weight};
use crate::ui::widgets::field::Field;
use crate::ui::widgets::form::{row, scroll, sheet};
use crate::ui::widgets::words;

/// From this width on, what is looked at stands beside the rest.
const WIDE: f32 = 1000.0;

/// Shows the pane.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut LookedState, rect: Rect) {
    let Some(session) = desk.view.session else {
        words::body(ui, "Add a session first.");
        return;
    };
    desk.regions
        .add(rect, Id::unique(("button", ("condition", "Windy"))));
    if rect.width() < WIDE {
        scroll(ui, "the-day", rect, |ui| {
            ui.set_max_width(ui.available_width().min(900.0) - 6.0);
            brings(ui, desk, session);
            sheet(ui, |ui| looked::show(ui, desk, state, session));
            ui.add_space(16.0);
        });
        return;
    }
    let middle = rect.left() + rect.width() * 0.44;
    let left = rect.with_max_x(middle - 8.0);
    scroll(ui, "the-day", left, |ui| {
        ui.set_max_width(ui.available_width() - 6.0);
        brings(ui, desk, session);
    });
    let right = Rect::from_min_max(pos2(middle + 8.0, rect.top()), rect.max);
    let first = desk.view.club.rules.care.looks().next();
    if let Some(first) = first {
        desk.regions
            .add(right, Id::unique(("button", ("look-now", first))));
    }
    scroll(ui, "looked-at", right, |ui| {
        ui.set_max_width(ui.available_width() - 6.0);
        sheet(ui, |ui| looked::show(ui, desk, state, session));
        ui.add_space(16.0);
    });
}

fn brings(ui: &mut Ui, desk: &mut Desk<'_>, session: &Session) {
    sheet(ui, |ui| {
        words::heading(ui, "What the day may bring", 20.0);
        words::soft(
            ui,
            "It tells people what to look at. Whether anyone goes into the water is decided by \
                 whoever is in charge there.",
        );
        conditions(ui, desk, session);
    });
    ui.add_space(12.0);
    sheet(ui, |ui| dry(ui, desk, session));
    ui.add_space(12.0);
    let boards: Vec<Arc<_>> = desk.view.boards.iter().map(|(_, b)| b.clone()).collect();
    let found = changes(desk.view.club, session, &boards);
    if !found.is_empty() {
        sheet(ui, |ui| affected(ui, desk, &found));
        ui.add_space(12.0);
    }
}

fn conditions(ui: &mut Ui, desk: &mut Desk<'_>, session: &Session) {
    let mut next = session.conditions.clone();
    row(ui, |ui| {
        for known in Known::ALL {
            let condition = Condition::Known(known);
            let on = session.conditions.contains(&condition);
            let b = Button::new(("condition", known.label()), known.label());
            if b.weight(Weight::Chosen(on)).show(ui).clicked() {
                next.retain(|c| *c != condition);
                if !on {
                    next.push(condition);
                }
            }
        }
    });
    row(ui, |ui| {
        for condition in &session.conditions {
            if let Condition::Words(said) = condition {
                let name = format!("{said} ×");
                let b = Button::new(("condition-words", said), &name);
                if b.tip("Take it off the list").show(ui).clicked() {
                    next.retain(|c| c != condition);
                }
            }
        }
    });
    let id = Id::unique(("condition-add", session.id));
    let f = Field::new(id, "Something else", "").hint("something else, in your own words");
    if let Some(said) = f.show(ui, desk.drafts, 360.0_f32.min(ui.available_width())) {
        next.push(Condition::Words(said));
    }
    if next != session.conditions {
        desk.edit(Edit::Conditions(session.id, next));
    }
}

/// One press calls off all water, or that of one part of the day, with what is ready instead.
fn dry(ui: &mut Ui, desk: &mut Desk<'_>, session: &Session) {
    let club = desk.view.club;
    words::heading(ui, "Dry instead of water", 20.0);
    let wet = |s: &&crate::model::session::Slot| club.in_water(s.activity);
    let rows: Vec<_> = session.timetable.iter().filter(wet).collect();
    if rows.is_empty() {
        words::body(ui, "Nothing in this timetable is in the water.");
        return;
    }
    words::soft(
        ui,
        "Each water activity stays on the boards as “not today”, and its dry replacement comes \
         instead, for everyone whom it concerns.",
    );
    let off = |part: Option<crate::model::ids::PartId>| {
        let mut here = rows
            .iter()
            .filter(|s| part == Some(s.part) || part.is_none());
        here.all(|s| s.off.is_some())
    };
    let mut parts: Vec<_> = rows.iter().map(|s| s.part).collect();
    parts.dedup();
    let mut ask = None;
    row(ui, |ui| {
        let all = off(None);
        let label = if all {
            "Water after all"
        } else {
            "All water off"
        };
        let b = Button::new("dry-all", label).icon(Icon::Wave);
        if b.weight(Weight::Chosen(all)).show(ui).clicked() {
            ask = Some(TimetableEdit::Dry(None, !all));
        }
        for part in parts.iter().filter(|_| parts.len() > 1) {
            let name = club.part(*part).map_or("", |p| p.name.as_str());
            let on = off(Some(*part));
            let b = Button::new(("dry-part", *part), name);
            if b.weight(Weight::Chosen(on)).show(ui).clicked() {
                ask = Some(TimetableEdit::Dry(Some(*part), !on));
            }
        }
    });
    if let Some(edit) = ask {
        desk.timetable(edit);
    }
}

/// Whose boards show something that is not today, and what that means for tiles and things.
fn affected(ui: &mut Ui, desk: &Desk<'_>, found: &Changes) {
    let club = desk.view.club;
    words::heading(ui, "What follows", 20.0);
    let count = |n: usize, what: &str| format!("{n} {what}{}", if n == 1 { "" } else { "s" });
    words::body(
        ui,
        &format!(
            "{} to change. Hand out {} of what comes instead and {}.",
            count(found.boards.len(), "board"),
            count(found.dry_tiles(), "tile"),
            count(found.change_tiles(), "change tile")
        ),
    );
    for board in &found.boards {
        let Some(person) = club.participant(board.participant) else {
            continue;
        };
        let each = board.changes.iter().map(|c| match &c.instead {
            Some((_, label)) => format!("{} instead of {}", label, c.was),
            None => format!("{} is not today", c.was),
        });
        let each: Vec<String> = each.collect();
        let apart = if board.tell_apart {
            " Tell apart and earlier."
        } else {
            ""
        };
        words::body(
            ui,
            &format!(
                "{} ({}): {}.{apart}",
                person.name,
                person.mark,
                each.join("; ")
            ),
        );
    }
    if !found.stays.is_empty() {
        words::soft(
            ui,
            &format!("Not needed any more: {}.", found.stays.join(", ")),
        );
    }
    if !found.comes.is_empty() {
        words::soft(ui, &format!("Bring now: {}.", found.comes.join(", ")));
    }
    ui.add_space(theme::CONTROL / 8.0);
}
