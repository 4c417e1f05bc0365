//! One helper at the side: when they are there, whether they watch or lead in the water, what the
//! entered dates of their certificates say of the day, and with whom they are.

use egui::{Id, Ui, vec2};
use jiff::civil::Time;

use super::{WaterState, change};
use crate::model::edit::TodayEdit;
use crate::model::ids::HelperId;
use crate::model::people::{Helper, Role};
use crate::model::session::Session;
use crate::model::today::Hours;
use crate::plan::water::{certificates_on, watches};
use crate::story::said;
use crate::ui::dates;
use crate::ui::desk::Desk;
use crate::ui::icons::Icon;
use crate::ui::theme;
use crate::ui::widgets::button::{Button, Weight};
use crate::ui::widgets::choose::tick;
use crate::ui::widgets::field::Field;
use crate::ui::widgets::form::{block, row};
use crate::ui::widgets::words;

/// A heading with a cross that leads back to the date.
pub fn heading(ui: &mut Ui, state: &mut WaterState, typing: bool, says: &str) {
    let t = theme::of(ui.ctx());
    let (_, rect) = ui.allocate_space(vec2(ui.available_width(), theme::CONTROL));
    let close = rect.with_min_x(rect.right() - theme::CONTROL);
    let text = rect.with_max_x(close.left() - 6.0);
    let r = ui.interact(text, Id::unique("water-side-name"), egui::Sense::hover());
    r.widget_info(|| egui::WidgetInfo::labeled(egui::Role::Label, true, says));
    let g = words::lay(
        ui.painter(),
        says,
        theme::bold(19.0),
        t.col.ink,
        text.width(),
        2,
    );
    let at = egui::pos2(text.left(), text.center().y - g.size().y / 2.0);
    ui.painter().galley(at, g, t.col.ink);
    let b = Button::new("water-side-close", "Back to the date").icon_only(Icon::Cross);
    // While something is typed or a list lies open, Escape is for that.
    let other = typing || egui::Popup::is_any_open(ui.ctx());
    let escape = |i: &mut egui::InputState| i.consume_key(egui::Modifiers::NONE, egui::Key::Escape);
    let escape = !other && ui.input_mut(escape);
    if b.weight(Weight::Quiet).show_at(ui, close).clicked() || escape {
        state.focus_line = true;
        state.open = None;
    }
}

/// Shows it.
pub fn show(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    state: &mut WaterState,
    session: &Session,
    id: HelperId,
) {
    let view = *desk.view;
    let Some(helper) = view.club.helper(id) else {
        return;
    };
    heading(ui, state, desk.drafts.is_open(), &helper.name);
    let roles: Vec<&str> = helper.roles.iter().map(|r| r.label()).collect();
    if !roles.is_empty() {
        words::soft(ui, &roles.join(", "));
    }
    if session.helpers_away.contains(&id) {
        words::body(ui, "Does not come. Change that at Who comes.");
        return;
    }
    hours(ui, desk, session, helper);
    watching(ui, desk, session, helper);
    let leads = session.today.water_lead == Some(id);
    if tick(
        ui,
        Id::unique(("water-lead", id)),
        leads,
        "Leads in the water",
        "",
    )
    .clicked()
    {
        change(desk, TodayEdit::WaterLead((!leads).then_some(id)));
    }
    ui.add_space(4.0);
    certificates(ui, desk, session, helper);
    places(ui, desk, helper);
}

/// Whether someone watches on this date.
pub fn watching(ui: &mut Ui, desk: &mut Desk<'_>, session: &Session, helper: &Helper) {
    watching_as(ui, desk, session, helper, "Watches, with no other job");
}

/// The same under other words.
pub fn watching_as(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    session: &Session,
    helper: &Helper,
    label: &str,
) {
    let on = watches(session, helper);
    let role = |r| helper.roles.contains(&r);
    let usual = role(Role::Watcher) && !role(Role::WaterSafety);
    let id = Id::unique(("water-watches", helper.id));
    if tick(ui, id, on, label, "").clicked() {
        let next = (usual == on).then_some(!on);
        change(desk, TodayEdit::Watches(helper.id, next));
    }
}

/// From when until when they are there.
fn hours(ui: &mut Ui, desk: &mut Desk<'_>, session: &Session, helper: &Helper) {
    let now = session
        .today
        .here
        .get(&helper.id)
        .copied()
        .unwrap_or_default();
    let mut next = now;
    row(ui, |ui| {
        next.from = time(ui, desk, ("There from", "the start", helper.id), now.from);
        next.to = time(ui, desk, ("Until", "the end", helper.id), now.to);
    });
    if next != now {
        let hours = (next != Hours::default()).then_some(next);
        change(desk, TodayEdit::Here(helper.id, hours));
    }
}

/// A time that can be left empty; what cannot be read leaves it as it is.
fn time(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    (name, none, of): (&str, &str, HelperId),
    now: Option<Time>,
) -> Option<Time> {
    let shown = now.map_or_else(String::new, dates::clock);
    let id = Id::unique(("water-hours", of, name));
    let typed = block(ui, name, 136.0, theme::CONTROL, |ui| {
        let label = format!("{name}, as 09:30");
        let f = Field::new(id, &label, &shown).hint(none);
        f.show(ui, desk.drafts, 136.0)
    });
    match typed {
        None => now,
        Some(words) if words.trim().is_empty() => None,
        Some(words) => dates::read_time(&words).or(now),
    }
}

/// What the entered dates of their certificates say of the day.
fn certificates(ui: &mut Ui, desk: &Desk<'_>, session: &Session, helper: &Helper) {
    if !helper.roles.contains(&Role::WaterSafety) {
        return;
    }
    let club = desk.view.club;
    for (award, standing) in certificates_on(club, helper, session.date) {
        let name = club.rules.care.award(award).map_or("", |a| a.name.trim());
        let words = said::certificate(&helper.name, name, standing, session.date);
        words::soft(ui, &said::sentence(&words));
    }
}

/// With whom they are, and when.
fn places(ui: &mut Ui, desk: &Desk<'_>, helper: &Helper) {
    for (moment, own) in desk.view.water.with(helper.id) {
        let who = said::participant(desk.view.club, own.who);
        let s = &moment.stretch;
        words::body(ui, &format!("{} to {}: with {who}.", s.from, s.to));
    }
}
