//! What is looked at in the place: the club's points by group, each with its last look and a small
//! form for a new one; thunder; flags.

mod form;

use egui::{Id, Ui};
use jiff::civil::Time;

use crate::model::edit::{Edit, TodayEdit};
use crate::model::looks::{Look, LookGroup};
use crate::model::session::Session;
use crate::ui::dates;
use crate::ui::desk::Desk;
use crate::ui::icons::Icon;
use crate::ui::theme;
use crate::ui::widgets::button::{Button, Weight};
use crate::ui::widgets::field::Field;
use crate::ui::widgets::form::{block, column, row, slip};
use crate::ui::widgets::words;
use crate::workbench::looked::{self, Point};
use form::{Form, again, form, fresh};

/// What the section remembers.
#[derive(Default)]
pub struct LookedState {
    /// What is being written down.
    form: Option<Form>,
    /// Who wrote something down last.
    by: String,
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
