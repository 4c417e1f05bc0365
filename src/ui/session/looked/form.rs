//! A look being written down, or corrected: who looked, when, what was seen.

use egui::{Id, Ui};
use jiff::civil::Time;

use super::{LookedState, now};
use crate::model::edit::{Edit, TodayEdit};
use crate::model::ids::SessionId;
use crate::model::looks::{Look, Looked};
use crate::model::session::Session;
use crate::plan::weather::WindUnit;
use crate::ui::dates;
use crate::ui::desk::Desk;
use crate::ui::icons::Icon;
use crate::ui::theme;
use crate::ui::widgets::button::{Button, Weight};
use crate::ui::widgets::choose::segments_here;
use crate::ui::widgets::field::Field;
use crate::ui::widgets::form::{block, row};
use crate::ui::widgets::words;
use crate::workbench::looked;

/// A look that is being written down.
pub struct Form {
    pub session: SessionId,
    /// The place in the session's list of one that is corrected.
    again: Option<usize>,
    pub look: Look,
    at: Option<Time>,
    by: String,
    seen: String,
    note: String,
    unit: WindUnit,
}

impl Form {
    fn looked(&self) -> Option<Looked> {
        let typed = looked::number(&self.seen);
        let bare = typed.is_some_and(|(_, rest)| rest.trim().is_empty());
        let seen = match self.look {
            Look::Wind if bare => format!("{} {}", self.seen.trim(), self.unit.label()),
            _ => self.seen.clone(),
        };
        Some(Looked {
            look: self.look,
            at: self.at?,
            by: self.by.clone(),
            seen,
            note: self.note.clone(),
        })
    }
}

/// A new look.
pub fn fresh(desk: &Desk<'_>, state: &LookedState, session: &Session, look: Look) -> Form {
    let before = session.today.looks.last().map(|l| l.by.clone());
    let by = match state.by.as_str() {
        "" => before.unwrap_or_default(),
        by => by.to_owned(),
    };
    Form {
        session: session.id,
        again: None,
        look,
        at: now(desk, session),
        by,
        seen: String::new(),
        note: String::new(),
        unit: WindUnit::default(),
    }
}

/// A look that was written down, to be corrected.
pub fn again(session: SessionId, at: usize, looked: &Looked) -> Form {
    let unit = looked::number(&looked.seen).and_then(|(_, rest)| looked::unit(rest));
    Form {
        session,
        again: Some(at),
        look: looked.look,
        at: Some(looked.at),
        by: looked.by.clone(),
        seen: looked.seen.clone(),
        note: looked.note.clone(),
        unit: unit.unwrap_or_default(),
    }
}

/// The form of a look.
pub fn form(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut LookedState, session: &Session) {
    let Some(f) = &mut state.form else { return };
    let look = f.look;
    let id = |what: &str| Id::unique(("look", look, what));
    row(ui, |ui| {
        block(ui, "Who looked", 170.0, theme::CONTROL, |ui| {
            let width = ui.available_width();
            let field = Field::new(id("by"), "Who looked", &f.by);
            if let Some(by) = field.show(ui, desk.drafts, width) {
                f.by = by;
            }
        });
        block(ui, "When", 100.0, theme::CONTROL, |ui| {
            let shown = f.at.map_or_else(String::new, dates::clock);
            let field = Field::new(id("at"), "When", &shown).hint("HH:MM");
            if let Some(typed) = field.show(ui, desk.drafts, 100.0) {
                f.at = dates::read_time(&typed).or(f.at);
            }
        });
        block(ui, seen_label(f.look), 300.0, theme::CONTROL, |ui| {
            seen(ui, desk, f)
        });
        block(ui, "Note", 260.0, theme::CONTROL, |ui| {
            let width = ui.available_width();
            let field = Field::new(id("note"), "Note", &f.note);
            if let Some(note) = field.show(ui, desk.drafts, width) {
                f.note = note;
            }
        });
    });
    buttons(ui, desk, state, session);
}

const fn seen_label(look: Look) -> &'static str {
    match look {
        Look::Uv => "UV Index, as reported",
        Look::Wind => "Speed of the wind",
        _ => "What was seen",
    }
}

/// Yes, no, or words; the wind has a unit.
fn seen(ui: &mut Ui, desk: &mut Desk<'_>, f: &mut Form) {
    ui.horizontal(|ui| {
        ui.spacing_mut().item_spacing.x = 6.0;
        let yes_no = !matches!(f.look, Look::Uv | Look::Wind);
        let width = match f.look {
            Look::Wind => 84.0,
            Look::Uv => 120.0,
            _ => 164.0,
        };
        let id = Id::unique(("look", f.look, "seen"));
        let field = Field::new(id, seen_label(f.look), &f.seen);
        if let Some(typed) = field.show(ui, desk.drafts, width) {
            if let Some(unit) = looked::number(&typed).and_then(|(_, rest)| looked::unit(rest)) {
                f.unit = unit;
            }
            f.seen = typed;
        }
        if f.look == Look::Wind {
            let names = WindUnit::ALL.map(WindUnit::label);
            let at = WindUnit::ALL.iter().position(|u| *u == f.unit).unwrap_or(0);
            if let Some(i) = segments_here(ui, "look-unit", &names, at) {
                f.unit = WindUnit::ALL[i];
                // A unit that was typed gives way to the one that is chosen.
                if let Some((n, _)) = looked::number(&f.seen) {
                    f.seen = n.to_string();
                }
            }
        }
        for word in ["yes", "no"].into_iter().filter(|_| yes_no) {
            let label = if word == "yes" { "Yes" } else { "No" };
            let b = Button::new(("look-seen", word), label);
            if b.weight(Weight::Chosen(f.seen == word)).show(ui).clicked() {
                f.seen = word.to_owned();
            }
        }
    });
}

fn buttons(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut LookedState, session: &Session) {
    let Some(f) = &state.form else { return };
    let (looked, again, look) = (f.looked(), f.again, f.look);
    let mut done = false;
    row(ui, |ui| {
        let b = Button::new("look-write", "Write it down").icon(Icon::Tick);
        let b = b.weight(Weight::Main).enabled(looked.is_some());
        if b.show(ui).clicked()
            && let Some(looked) = looked
        {
            state.by.clone_from(&looked.by);
            let edit = match again {
                Some(at) => TodayEdit::LookAgain(at, looked),
                None => TodayEdit::Look(looked),
            };
            desk.edit(Edit::Today(session.id, edit));
            done = true;
        }
        if let Some(at) = again {
            let b = Button::new("look-out", "Take it out").icon(Icon::Bin);
            if b.show(ui).clicked() {
                desk.edit(Edit::Today(session.id, TodayEdit::Unlook(at)));
                done = true;
            }
        }
        let b = Button::new("look-not", "Not now").weight(Weight::Quiet);
        done |= b.show(ui).clicked();
        if state.form.as_ref().is_some_and(|f| f.at.is_none()) {
            words::soft(ui, "Say when it was looked at.");
        }
    });
    if done {
        state.form = None;
        let id = Id::unique(("button", ("look-now", look)));
        ui.memory_mut(|m| m.request_focus(id));
    }
}
