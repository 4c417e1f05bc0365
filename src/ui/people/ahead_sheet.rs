//! The look ahead at certificates: how many remain at each session, and what has to be renewed
//! first. Each line leads to its helper.

use egui::{Align2, CornerRadius, CursorIcon, Id, Rect, Role, Sense, Stroke, StrokeKind, Ui};
use egui::{WidgetInfo, pos2, vec2};
use jiff::civil::Date;

use super::ahead::{Gap, covered, gaps, sessions};
use super::{PeopleState, certificates, held, helpers};
use crate::model::session::Session;
use crate::ui::dates;
use crate::ui::desk::Desk;
use crate::ui::icons::{self, Icon};
use crate::ui::theme;
use crate::ui::widgets::button::Button;
use crate::ui::widgets::form::{row, sheet};
use crate::ui::widgets::{focus_ring, words};

/// Shows it.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut PeopleState) {
    let club = desk.view.club;
    let ahead = sessions(club, desk.view.today);
    sheet(ui, |ui| {
        words::heading(ui, "Certificates ahead", 20.0);
        words::soft(
            ui,
            "The entered dates beside the dates of your sessions from today on. They say what was \
             entered and seen, not what anyone can do.",
        );
        ui.add_space(4.0);
        if club.rules.care.awards.is_empty() {
            words::body(ui, "There are no kinds of certificates yet.");
            let b = Button::new("ahead-kinds", "Enter them in The club");
            if b.icon(Icon::Right).show(ui).clicked() {
                certificates::to_kinds(ui, state);
            }
        } else if ahead.is_empty() {
            words::body(ui, "There is no session from today on.");
        } else {
            remain(ui, desk, &ahead);
            ui.add_space(10.0);
            list(ui, desk, state, &ahead);
        }
    });
}

/// How many people for the water remain at each session.
fn remain(ui: &mut Ui, desk: &Desk<'_>, ahead: &[&Session]) {
    let club = desk.view.club;
    let kinds = club.rules.care.awards.iter().filter(|a| a.for_water);
    let kinds: Vec<&str> = kinds.map(|a| a.name.trim()).collect();
    let all = covered(club, desk.view.today).1;
    if kinds.is_empty() || all == 0 {
        return;
    }
    words::heading(ui, "People for the water at each session", 17.0);
    let needed = kinds.join(", ");
    words::soft(
        ui,
        &format!(
            "Of {all}, those whose entered dates cover the day in all that you ask for in the water \
             ({needed}). Whoever is away on the day is not taken off."
        ),
    );
    row(ui, |ui| {
        ui.spacing_mut().item_spacing = vec2(8.0, 8.0);
        let mut before = None;
        for session in ahead {
            let (n, all) = covered(club, session.date);
            cell(ui, session, (n, all), before);
            before = Some(n);
        }
    });
}

/// One session with its number; where there are fewer than at the one before, it says so.
fn cell(ui: &mut Ui, session: &Session, (n, all): (usize, usize), before: Option<usize>) {
    let t = theme::of(ui.ctx());
    let (_, rect) = ui.allocate_space(vec2(112.0, 84.0));
    let fewer = before.and_then(|b| b.checked_sub(n)).filter(|f| *f > 0);
    let below = match fewer {
        Some(f) => format!("{f} fewer"),
        None => format!("of {all}"),
    };
    let r = ui.interact(rect, Id::unique(("remain", session.id)), Sense::hover());
    let date = dates::shortest(session.date);
    let told = fewer.map_or_else(String::new, |f| format!(", {f} fewer than before"));
    let name = format!("{date}, {}: {n} of {all}{told}", session.title);
    r.widget_info(|| WidgetInfo::labeled(Role::Label, true, &name));
    let p = ui.painter();
    let corner = CornerRadius::same(theme::R_CONTROL);
    let edge = match fewer {
        Some(_) => Stroke::new(2.5, t.col.ink),
        None => Stroke::new(t.line(), t.col.rule),
    };
    p.rect(rect, corner, t.col.panel, edge, StrokeKind::Inside);
    let line = |top: f32, height: f32| {
        Rect::from_min_size(
            pos2(rect.left() + 4.0, rect.top() + top),
            vec2(rect.width() - 8.0, height),
        )
    };
    let small = theme::regular(14.0);
    let mid = Align2::CENTER_CENTER;
    words::line(p, line(6.0, 20.0), mid, &date, small.clone(), t.col.soft);
    let number = n.to_string();
    words::line(
        p,
        line(26.0, 30.0),
        mid,
        &number,
        theme::bold(24.0),
        t.col.ink,
    );
    let (font, ink) = match fewer {
        Some(_) => (theme::bold(14.0), t.col.ink),
        None => (small, t.col.soft),
    };
    words::line(p, line(58.0, 20.0), mid, &below, font, ink);
    r.on_hover_text(&session.title);
}

/// What does not cover a session, under the first session of which that is so.
fn list(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut PeopleState, ahead: &[&Session]) {
    words::heading(ui, "To be renewed, by the first session", 17.0);
    let gaps = gaps(desk.view.club, ahead);
    if gaps.is_empty() {
        let last = ahead
            .last()
            .map_or_else(String::new, |s| dates::long(s.date));
        let says = format!("No entered date ends before your last session, on {last}.");
        words::body(ui, &says);
    }
    let mut under = None;
    for (i, gap) in gaps.iter().enumerate() {
        if under != Some(gap.first.id) {
            under = Some(gap.first.id);
            ui.add_space(6.0);
            let day = dates::long(gap.first.date);
            words::heading(ui, &format!("{day}: {}", gap.first.title), 16.0);
        }
        if line(ui, gap, (i, ahead.len()), desk.view.today) {
            state.helper = Some(gap.helper.id);
            state.ahead = false;
            let id = helpers::row_id(gap.helper.id);
            ui.memory_mut(|m| m.request_focus(id));
            ui.ctx().request_repaint();
        }
    }
}

/// One certificate; says whether it was pressed.
fn line(ui: &mut Ui, gap: &Gap<'_>, (i, sessions): (usize, usize), today: Date) -> bool {
    let t = theme::of(ui.ctx());
    let (_, rect) = ui.allocate_space(vec2(ui.available_width(), 60.0));
    let r = ui.interact(rect, Id::unique(("gap", i)), Sense::click());
    let who = format!("{}: {}", gap.helper.name.trim(), gap.award.name.trim());
    let what = held::standing(gap.standing, today);
    let many = match (gap.sessions, sessions) {
        (1, 1) => "not covered at the one session ahead".to_owned(),
        (n, all) => format!("not covered at {n} of {all} sessions"),
    };
    r.widget_info(|| WidgetInfo::labeled(Role::Button, true, format!("{who} {what}, {many}")));
    let p = ui.painter();
    let corner = CornerRadius::same(theme::R_CONTROL);
    let edge = if r.hovered() {
        Stroke::new(2.0, t.col.ink)
    } else {
        t.edge()
    };
    p.rect(rect, corner, t.col.panel, edge, StrokeKind::Inside);
    let mid = pos2(rect.left() + 24.0, rect.center().y);
    icons::diamond(p, mid, 8.0, false, t.col.ink, t.col.panel);
    let on = icons::square(rect.right_center() - vec2(22.0, 0.0), 18.0);
    icons::paint(p, Icon::Right, on, t.col.ink);
    let room = Rect::from_min_max(
        pos2(rect.left() + 46.0, rect.top()),
        pos2(rect.right() - 40.0, rect.bottom()),
    );
    let (upper, lower) = room.split_top_bottom_at_fraction(0.52);
    let says = format!("{what}; {many}");
    words::line(
        p,
        upper,
        Align2::LEFT_BOTTOM,
        &who,
        theme::bold(16.0),
        t.col.ink,
    );
    words::line(
        p,
        lower,
        Align2::LEFT_TOP,
        &says,
        theme::regular(14.0),
        t.col.soft,
    );
    focus_ring(ui, &r, rect, theme::R_CONTROL);
    r.on_hover_cursor(CursorIcon::PointingHand).clicked()
}
