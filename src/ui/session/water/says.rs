//! The sentences above the time line: how much there is in the water, and what is missing, each a
//! way to the place it is about.

use egui::{
    CornerRadius, CursorIcon, Id, Rect, Role, Sense, Stroke, StrokeKind, Ui, WidgetInfo, vec2,
};

use super::{At, WaterState, change, hands};
use crate::model::edit::TodayEdit;
use crate::model::finding::{Finding, Spot};
use crate::model::session::Session;
use crate::plan::water::WaterDay;
use crate::story::said;
use crate::ui::checks;
use crate::ui::desk::Desk;
use crate::ui::theme;
use crate::ui::widgets::button::Button;
use crate::ui::widgets::{focus_ring, words};
use crate::workbench::command::Command;

/// Sentences shown before one asks for the rest.
const FEW: usize = 2;
/// What checks of the water say that is about the timetable, not about people.
const OF_THE_TIMETABLE: [&str; 3] = [
    "water.no_dry_replacement",
    "water.nothing_instead",
    "water.wet_replacement",
];

/// Shows them.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut WaterState, session: &Session) {
    let about = |f: &&Finding| f.code.starts_with("water.") && !OF_THE_TIMETABLE.contains(&f.code);
    let found: Vec<&Finding> = desk.view.findings.iter().filter(about).collect();
    let water = desk.view.water;
    title(ui, desk, state, session, found.len());
    if beside_all(water) {
        words::body(
            ui,
            "Every one in the water has someone beside them, by what is entered. Local codes, \
             lifeguards and the person in charge of water safety decide.",
        );
    }
    let most = if state.all_says {
        found.len()
    } else {
        FEW.min(found.len())
    };
    for (i, f) in found[..most].iter().enumerate() {
        if slip(ui, i, f).clicked() {
            hands::used_up(ui);
            go(desk, state, f);
        }
    }
    ui.add_space(2.0);
}

/// How much there is in the water, and the buttons that hold all pairs or let them go.
fn title(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    state: &mut WaterState,
    session: &Session,
    found: usize,
) {
    let (water, t) = (desk.view.water, theme::of(ui.ctx()));
    let says = moments(water);
    let (_, rect) = ui.allocate_space(vec2(ui.available_width(), theme::CONTROL));
    let (mut left, mut next) = (rect.right(), None);
    let mut button = |ui: &mut Ui, label: &str, tip: &str| {
        let b = Button::new(("water-all", label), label).tip(tip);
        let at = Rect::from_min_max(
            egui::pos2(left - b.needs(ui), rect.top()),
            egui::pos2(left, rect.bottom()),
        );
        left = at.left() - 8.0;
        b.show_at(ui, at).clicked()
    };
    let held = &session.today.held;
    let as_held = water.as_held();
    if !held.is_empty() && button(ui, "Let all go", "The program pairs everyone again") {
        next = Some(Default::default());
    }
    let tip = "They stay as they are, whatever else changes";
    if *held != as_held && !as_held.is_empty() && button(ui, "Hold these pairs", tip) {
        next = Some(as_held);
    }
    let (few, more) = (
        state.all_says,
        format!("{} more to look at", found.saturating_sub(FEW)),
    );
    let label = if few { "Fewer to look at" } else { &more };
    if found > FEW && button(ui, label, "What the checks say of the water") {
        state.all_says = !few;
    }
    let text = rect.with_max_x(left - 8.0);
    let r = ui.interact(text, Id::unique("water-title"), Sense::hover());
    r.widget_info(|| WidgetInfo::labeled(Role::Label, true, &says));
    let g = words::lay(
        ui.painter(),
        &says,
        theme::bold(18.0),
        t.col.ink,
        text.width(),
        2,
    );
    let at = egui::pos2(text.left(), text.center().y - g.size().y / 2.0);
    ui.painter().galley(at, g, t.col.ink);
    if let Some(all) = next {
        change(desk, TodayEdit::HoldAll(all));
    }
}

/// How much there is in the water.
fn moments(water: &WaterDay) -> String {
    let (first, last) = match (water.moments.first(), water.moments.last()) {
        (Some(first), Some(last)) => (first.stretch.from, last.stretch.to),
        _ => return "Nobody is in the water in this session.".to_owned(),
    };
    match water.moments.len() {
        1 => format!("One moment in the water, {first} to {last}."),
        n => {
            let number = said::sentence(&said::number(n));
            let number = number.trim_end_matches('.');
            format!("{number} moments in the water, from {first} to {last}.")
        }
    }
}

/// Whether everyone who is in the water has the people the club's rule asks for.
fn beside_all(water: &WaterDay) -> bool {
    let full = |v: &crate::plan::water::Together| v.people.len() >= v.asked as usize;
    !water.is_dry() && water.moments.iter().all(|m| m.visits.iter().all(full))
}

/// Why a person was not put where they were dropped, over the foot of the line, wherever that is
/// scrolled to; spoken too.
pub fn refused(ui: &mut Ui, state: &mut WaterState, area: Rect) {
    let Some(why) = state.refused.clone() else {
        return;
    };
    let t = theme::of(ui.ctx());
    let room = (area.width() - 24.0).min(900.0);
    let font = theme::regular(16.0);
    let g = words::lay(ui.painter(), &why, font, t.col.on_peg, room - 90.0, 4);
    let size = vec2(room, (g.size().y + 16.0).max(theme::CONTROL));
    let rect = Rect::from_min_size(area.left_bottom() - vec2(0.0, size.y + 8.0), size);
    let r = ui.interact(rect, Id::unique("water-refused"), Sense::hover());
    r.widget_info(|| WidgetInfo::labeled(Role::Status, true, &why));
    ui.ctx().accesskit_node_builder(r.id, |node| {
        node.set_live(egui::accesskit::Live::Polite);
        node.set_value(why.as_str());
    });
    let p = ui.painter();
    p.rect_filled(rect, CornerRadius::same(theme::R_CONTROL), t.col.peg);
    let at = egui::pos2(rect.left() + 16.0, rect.center().y - g.size().y / 2.0);
    p.galley(at, g, t.col.on_peg);
    let away = Rect::from_min_max(rect.right_top() - vec2(theme::CONTROL, 0.0), rect.max);
    let away = Rect::from_center_size(away.center(), egui::Vec2::splat(theme::CONTROL));
    let b = Button::new("water-refused-away", "Put this away");
    let b = b.icon_only(crate::ui::icons::Icon::Cross);
    let b = b.weight(crate::ui::widgets::button::Weight::Chosen(true));
    if b.show_at(ui, away).clicked() {
        state.refused = None;
    }
}

/// A finding on its slip of paper, in as many lines as it needs.
fn slip(ui: &mut Ui, i: usize, f: &Finding) -> egui::Response {
    let t = theme::of(ui.ctx());
    let room = ui.available_width();
    let font = theme::regular(16.0);
    let g = words::lay(ui.painter(), &f.sentence, font, t.col.ink, room - 62.0, 6);
    let (_, rect) = ui.allocate_space(vec2(room, (g.size().y + 14.0).max(theme::CONTROL)));
    let r = ui.interact(rect, Id::unique(("water-slip", i)), Sense::click());
    let spoken = format!("{}: {} {}", f.severity.label(), f.sentence, f.hint);
    r.widget_info(|| WidgetInfo::labeled(Role::Button, true, &spoken));
    let line = match r.hovered() {
        true => Stroke::new(2.0, t.col.ink),
        false => t.edge(),
    };
    let p = ui.painter();
    let corner = CornerRadius::same(theme::R_CONTROL);
    p.rect(rect, corner, t.col.panel, line, StrokeKind::Inside);
    checks::sign(ui, rect.left_center() + vec2(24.0, 0.0), f.severity, None);
    let at = egui::pos2(rect.left() + 48.0, rect.center().y - g.size().y / 2.0);
    p.galley(at, g, t.col.ink);
    focus_ring(ui, &r, rect, theme::R_CONTROL);
    r.on_hover_cursor(CursorIcon::PointingHand)
        .on_hover_text(format!("{}. {}", f.severity.label(), f.hint))
}

/// Goes to the place a finding is about: a moment in the water, the date, or another part of the
/// program.
fn go(desk: &mut Desk<'_>, state: &mut WaterState, f: &Finding) {
    let water = desk.view.water;
    let block = match f.spot {
        Spot::Slot(_, slot) | Spot::Water(_, Some(slot)) => short_at(water, slot),
        Spot::Participant(who) | Spot::Step(_, who, _) => {
            let first = water.of(who).next();
            first.map(|(_, own)| At::Block(who, own.slot))
        }
        _ => None,
    };
    match (block, f.code, f.spot) {
        (
            _,
            "water.no_lead" | "water.lead_away" | "water.not_watched" | "water.watcher_busy",
            _,
        ) => {
            state.open = None;
            state.to_side = true;
            state.focus_side = true;
        }
        (Some(at), _, Spot::Slot(..) | Spot::Water(..) | Spot::Participant(_)) => {
            state.at = Some(at);
            state.focus_line = true;
            hands::open(state, at);
        }
        (_, "water.no_award", _) => desk.ask(Command::GoTo(Spot::Club)),
        _ => desk.ask(Command::GoTo(f.spot)),
    }
}

/// Whoever is short of people at the moment of a row, else whoever is in it.
fn short_at(water: &WaterDay, slot: crate::model::ids::SlotId) -> Option<At> {
    let of = |m: &&crate::plan::water::InWater| m.visits.iter().any(|v| v.slot == slot);
    let moment = water.moments.iter().find(of)?;
    let without = moment.visits.iter().find(|v| v.people.is_empty());
    let visit = without.or(moment.visits.iter().find(|v| v.slot == slot))?;
    Some(At::Block(visit.who, visit.slot))
}
