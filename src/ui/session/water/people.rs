//! The rows of the helpers: what they do, what keeps them out of the water today, and where they
//! are. Whoever goes into the water can be dragged to someone who is in it.

use egui::{
    Align2, CornerRadius, CursorIcon, Painter, Rect, Role as Kind, Stroke, StrokeKind, Ui,
    WidgetInfo, pos2, vec2,
};

use super::rows::group;
use super::{At, GROUP, Line, WaterState, hands, lane};
use crate::model::people::{Helper, Role};
use crate::plan::water::{Reason, certificates_on, watches};
use crate::story::said;
use crate::ui::desk::Desk;
use crate::ui::icons;
use crate::ui::regions;
use crate::ui::theme;
use crate::ui::widgets::{focus_ring, words};

/// Shows the rows in sight.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut WaterState, line: &Line<'_>) {
    let top = line.person(0).top() - GROUP;
    let more = "drag one to a moment in the water";
    group(ui.painter(), line, top, "People", more);
    for (i, helper) in line.helpers.iter().enumerate() {
        let rect = line.person(i);
        let seen = ui.is_rect_visible(rect);
        if seen {
            lane::show(ui, desk, line, rect, helper);
        }
        if seen || state.at == Some(At::Person(helper.id)) {
            name(ui, state, line, rect, helper);
        }
    }
}

/// What keeps someone out of the water on this date, in a few words; their certificates first.
pub fn all_day(line: &Line<'_>, helper: &Helper) -> Option<String> {
    let (club, session) = (line.club, line.session);
    if session.helpers_away.contains(&helper.id) {
        return Some(said::why_short(club, session, Reason::Away));
    }
    if !helper.roles.contains(&Role::WaterSafety) {
        return None;
    }
    let held = certificates_on(club, helper, session.date);
    let (award, standing) = held.into_iter().find(|(_, s)| !s.is_covered())?;
    let reason = Reason::Certificate(award, standing);
    Some(said::why_short(club, session, reason))
}

/// What someone does on this date, in a few words.
fn does(line: &Line<'_>, helper: &Helper) -> String {
    let mut all: Vec<&str> = Vec::new();
    let leads = line.session.today.water_lead == Some(helper.id);
    if leads {
        all.push("Leads in the water");
    }
    let more = |r: &&Role| **r != Role::Watcher && !(leads && **r == Role::WaterSafety);
    let shown = helper.roles.iter().filter(more);
    all.extend(shown.map(|r| r.label()));
    if watches(line.session, helper) {
        all.push("Watches");
    }
    all.join(", ")
}

/// What a screen reader says of a helper: what they do, what keeps them, with whom they are when.
fn spoken(line: &Line<'_>, helper: &Helper) -> String {
    let mut all = vec![helper.name.clone(), does(line, helper)];
    all.extend(all_day(line, helper));
    for (moment, own) in line.water.with(helper.id) {
        let who = line.club.participant(own.who);
        let who = who.map_or("", |p| p.name.as_str());
        all.push(format!("{} with {who}", moment.stretch.from));
    }
    all.retain(|w| !w.is_empty());
    all.join(", ")
}

/// Who it is; over what is scrolled below it.
fn name(ui: &mut Ui, state: &mut WaterState, line: &Line<'_>, row: Rect, helper: &Helper) {
    let t = theme::of(ui.ctx());
    let left = line.names_at();
    let rect = Rect::from_min_max(
        pos2(left + 1.0, row.top() + 3.0),
        pos2(left + line.names - 16.0, row.bottom() - 3.0),
    );
    let at = At::Person(helper.id);
    let id = hands::id(at);
    let goes = helper.roles.contains(&Role::WaterSafety);
    let sense = regions::one_stop(ui, id, state.at == Some(at), goes);
    let r = ui.interact(rect, id, sense);
    let said = spoken(line, helper);
    r.widget_info(|| WidgetInfo::selected(Kind::Button, true, state.open == Some(at), &said));
    let p = ui.painter();
    p.rect_filled(rect.expand2(vec2(5.0, 3.0)), 0, t.col.ground);
    let edge = match (state.open == Some(at), r.hovered()) {
        (true, _) => Stroke::new(2.5, t.col.accent),
        (false, true) => Stroke::new(2.0, t.col.ink),
        (false, false) => Stroke::new(1.2, t.col.rule),
    };
    let corner = CornerRadius::same(theme::R_CONTROL);
    p.rect(rect, corner, t.col.panel, edge, StrokeKind::Inside);
    if goes {
        grip(p, pos2(rect.left() + 13.0, rect.center().y), t.col.edge);
    }
    let text = rect.with_min_x(rect.left() + 26.0).shrink2(vec2(2.0, 3.0));
    let (upper, mut lower) = text.split_top_bottom_at_y(text.top() + 25.0);
    let kept = all_day(line, helper);
    let more = match &kept {
        Some(kept) if !lane::says(line, helper) => kept.clone(),
        _ => does(line, helper),
    };
    let left = Align2::LEFT_CENTER;
    words::line(p, upper, left, &helper.name, theme::bold(16.0), t.col.ink);
    if kept.is_some() {
        let sign = icons::square(lower.left_center() + vec2(7.0, -1.0), 13.0);
        icons::paint(p, icons::Icon::Cross, sign, t.col.ink);
        lower.min.x += 18.0;
    }
    let font = theme::regular(13.5);
    words::line(p, lower, left, &more, font, t.col.soft);
    focus_ring(ui, &r, rect, theme::R_CONTROL);
    if goes && r.drag_started() {
        r.dnd_set_drag_payload(hands::Carried(helper.id));
        state.refused = None;
    }
    hands::act(ui, state, line, at, &r);
    let icon = if goes {
        CursorIcon::Grab
    } else {
        CursorIcon::PointingHand
    };
    if line.held.is_none() {
        r.on_hover_cursor(icon).on_hover_text(said);
    }
}

/// Dots that say: this can be picked up.
fn grip(p: &Painter, at: egui::Pos2, colour: egui::Color32) {
    for x in [-3.0, 3.0] {
        for y in [-7.0, 0.0, 7.0] {
            p.circle_filled(at + vec2(x, y), 1.8, colour);
        }
    }
}
