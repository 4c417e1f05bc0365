//! What is looked at in the place: the club's points by group, each with its last look and a small
//! form for a new one; thunder; flags.

use egui::{Id, Ui};
use jiff::civil::Time;

use crate::model::edit::{Edit, TodayEdit};
use crate::model::ids::SessionId;
use crate::model::looks::{Look, LookGroup, Looked};
use crate::model::session::Session;
use crate::plan::weather::WindUnit;
use crate::ui::dates;
use crate::ui::desk::Desk;
use crate::ui::icons::Icon;
use crate::ui::theme;
use crate::ui::widgets::button::{Button, Weight};
use crate::ui::widgets::choose::segments_here;
use crate::ui::widgets::field::Field;
use crate::ui::widgets::form::{block, column, row, slip};
use crate::ui::widgets::words;
use crate::workbench::looked::{self, Point};

/// What the section remembers.
#[derive(Default)]
pub struct LookedState {
    /// What is being written down.
    form: Option<Form>,
    /// Who wrote something down last.
    by: String,
}

/// A look that is being written down.
struct Form {
    session: SessionId,
    /// The place in the session's list of one that is corrected.
    again: Option<usize>,
    look: Look,
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

/// What the clock says, on the day of the session; on other days the time is typed.
fn now(desk: &Desk<'_>, session: &Session) -> Option<Time> {
    let clock = desk.view.clock.filter(|_| desk.view.today == session.date);
    clock.map(|clock| clock())
}

/// Shows the points that are looked at.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut LookedState, session: &Session) {
    words::heading(ui, "Looked at", 20.0);
    words::soft(
        ui,
        "Who looked, when, and what was seen. Numbers get their names; nothing is decided by them.",
    );
    if state.form.as_ref().is_some_and(|f| f.session != session.id) {
        state.form = None;
    }
    let points = looked::points(desk.view.club, session);
    for group in LookGroup::ALL {
        let here: Vec<&Point<'_>> = points.iter().filter(|p| p.look.group() == group).collect();
        if here.is_empty() {
            continue;
        }
        ui.add_space(8.0);
        words::heading(ui, group.label(), 17.0);
        for point in here {
            line(ui, desk, state, session, point);
            if point.look == Look::Flags {
                flags(ui, desk);
            }
            if point.look == Look::Storm {
                thunder(ui, desk, session);
            }
        }
    }
    // Where the club looks at neither, both are still there.
    let looks = |l: Look| points.iter().any(|p| p.look == l);
    if !looks(Look::Flags) {
        flags(ui, desk);
    }
    if !looks(Look::Storm) {
        thunder(ui, desk, session);
    }
}

/// A point with its last look, or the form.
fn line(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    state: &mut LookedState,
    session: &Session,
    point: &Point<'_>,
) {
    let open = state.form.as_ref().is_some_and(|f| f.look == point.look);
    ui.horizontal_top(|ui| {
        ui.spacing_mut().item_spacing.x = 12.0;
        let wide = (ui.available_width() - 152.0).max(160.0);
        column(ui, wide, |ui| {
            ui.spacing_mut().item_spacing.y = 1.0;
            words::body(ui, point.look.label());
            last(ui, point);
        });
        column(ui, 140.0, |ui| {
            ui.spacing_mut().item_spacing.y = 2.0;
            at_point(ui, desk, state, session, point);
        });
    });
    if open {
        slip(ui, |ui| form(ui, desk, state, session));
    }
}

/// The buttons of a point: a new look, and the last one corrected.
fn at_point(
    ui: &mut Ui,
    desk: &Desk<'_>,
    state: &mut LookedState,
    session: &Session,
    point: &Point<'_>,
) {
    let open = state.form.as_ref().is_some_and(|f| f.look == point.look);
    let label = point.look.label();
    let name = format!("Looked now: {label}");
    let b = Button::new(("look-now", point.look), "Looked now").name(&name);
    if b.weight(Weight::Chosen(open)).show(ui).clicked() {
        state.form = (!open).then(|| fresh(desk, state, session, point.look));
    }
    if let (false, Some((at, looked))) = (open, point.last) {
        let name = format!("Correct the last look: {label}");
        let b = Button::new(("look-correct", point.look), "Correct").name(&name);
        let b = b.icon(Icon::Pen).weight(Weight::Quiet);
        if b.show(ui).clicked() {
            state.form = Some(again(session.id, at, looked));
        }
    }
}

/// The last look in words.
fn last(ui: &mut Ui, point: &Point<'_>) {
    let Some((_, looked)) = point.last else {
        return words::soft(ui, &point.age);
    };
    let by = match looked.by.trim() {
        "" => String::new(),
        by => format!(" by {by}"),
    };
    words::soft(
        ui,
        &format!("{}{by}, {}", dates::clock(looked.at), point.age),
    );
    let both = [looked.seen.trim(), looked.note.trim()];
    let both: Vec<&str> = both.into_iter().filter(|w| !w.is_empty()).collect();
    if !both.is_empty() {
        words::body(ui, &both.join("; "));
    }
    if let Some(named) = &point.named {
        words::soft(ui, named);
    }
    if let Some(older) = &point.older {
        words::heading(ui, older, 15.0);
    }
}

fn fresh(desk: &Desk<'_>, state: &LookedState, session: &Session, look: Look) -> Form {
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

fn again(session: SessionId, at: usize, looked: &Looked) -> Form {
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
fn form(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut LookedState, session: &Session) {
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

/// When thunder was heard, and the club's wait after it.
fn thunder(ui: &mut Ui, desk: &mut Desk<'_>, session: &Session) {
    let heard = &session.today.thunder;
    let mut next = heard.clone();
    row(ui, |ui| {
        block(ui, "Thunder heard at", 150.0, theme::CONTROL, |ui| {
            let id = Id::unique(("thunder", session.id));
            let f = Field::new(id, "Thunder heard at", "").hint("HH:MM");
            if let Some(typed) = f.show(ui, desk.drafts, 150.0) {
                next.extend(dates::read_time(&typed));
            }
        });
        if let Some(time) = now(desk, session) {
            block(ui, "or", 190.0, theme::CONTROL, |ui| {
                let b = Button::new("thunder-now", "Thunder heard now");
                if b.show(ui).clicked() {
                    next.insert(time);
                }
            });
        }
        if !heard.is_empty() {
            let wide = 96.0 * heard.len() as f32;
            block(ui, "Written down", wide, theme::CONTROL, |ui| {
                row(ui, |ui| {
                    for time in heard {
                        let at = dates::clock(*time);
                        let name = format!("No thunder at {at}");
                        let label = format!("{at} ×");
                        let b = Button::new(("thunder", *time), &label).name(&name);
                        if b.tip("Take it out").show(ui).clicked() {
                            next.remove(time);
                        }
                    }
                });
            });
        }
    });
    if let Some(until) = looked::thunder(desk.view.club, session) {
        words::heading(ui, &until, 16.0);
    }
    if next != *heard {
        desk.edit(Edit::Today(session.id, TodayEdit::Thunder(next)));
    }
}

/// Flags at the place, as the club entered them.
fn flags(ui: &mut Ui, desk: &Desk<'_>) {
    let flags = &desk.view.club.rules.care.flags;
    if flags.is_empty() {
        return;
    }
    ui.horizontal(|ui| {
        ui.add_space(theme::CONTROL / 2.0);
        ui.vertical(|ui| {
            ui.spacing_mut().item_spacing.y = 2.0;
            for flag in flags {
                words::body(ui, &format!("{}: {}", flag.looks.trim(), flag.means.trim()));
            }
            words::soft(
                ui,
                "Local practice comes first. A picture replaces no flag.",
            );
        });
    });
}
