//! The timetable above the rows, on the strand: when, a number, a picture, and who leads; a click
//! chooses who.

use egui::{
    Align2, CursorIcon, Id, Popup, PopupCloseBehavior, Rect, Role, Sense, Stroke, Ui, WidgetInfo,
    pos2, vec2,
};

use super::Line;
use super::columns::Column;
use crate::model::edit::TimetableEdit;
use crate::model::ids::SlotId;
use crate::model::session::Slot;
use crate::story::said;
use crate::ui::desk::Desk;
use crate::ui::icons;
use crate::ui::strand::{Rope, paint};
use crate::ui::theme;
use crate::ui::widgets::card::{face_down, peg, plate};
use crate::ui::widgets::choose::tick;
use crate::ui::widgets::{focus_ring, words};

/// How high it is.
pub const HEIGHT: f32 = 156.0;
/// No name goes further than this beyond its column.
const BEYOND: f32 = 14.0;
/// From its top to the rope.
const ROPE: f32 = 38.0;

/// Lines down through the rows where a column begins that has someone in the water.
pub fn rules(p: &egui::Painter, line: &Line<'_>) {
    let t = theme::of(p.ctx());
    let top = line.row(0).top();
    let bottom = line.person(line.helpers.len()).top();
    let mut edges: Vec<f32> = Vec::new();
    for c in line.columns.iter().filter(|c| c.wet) {
        edges.push(c.left);
        edges.push(c.left + c.width);
    }
    edges.dedup();
    for x in edges {
        let x = line.left() + x;
        p.vline(x, top..=bottom, Stroke::new(1.0, t.col.rule));
    }
}

/// Shows it.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>, line: &Line<'_>) {
    let t = theme::of(ui.ctx());
    let top = if line.sticks {
        let last = line.person(line.helpers.len()).top() - HEIGHT;
        line.seen
            .top()
            .clamp(line.origin.y, last.max(line.origin.y))
    } else {
        line.origin.y
    };
    let all = Rect::from_min_size(
        pos2(line.origin.x, top),
        vec2(line.names + line.wide() + 12.0, HEIGHT),
    );
    if !ui.is_rect_visible(all) {
        return;
    }
    let p = ui.painter().clone();
    p.rect_filled(all.expand2(vec2(4.0, 0.0)), 0, t.col.ground);
    let y = top + ROPE;
    let mut rope = Rope {
        points: vec![pos2(line.left() - 6.0, y)],
        arrows: Vec::new(),
    };
    for c in &line.columns {
        rope.sag_to(pos2(line.left() + c.middle(), y));
    }
    let end = pos2(line.left() + line.wide() + 6.0, y);
    rope.sag_to(end);
    paint::rope(&p, &t, &rope);
    paint::knot(&p, &t, end, 8.0);
    paint::ring(&p, &t.col, pos2(line.left() - 6.0, y), 6.0, t.col.ground);
    for (i, c) in line.columns.iter().enumerate() {
        column(ui, desk, line, (i, c), top);
    }
    let corner = Rect::from_min_max(
        pos2(line.names_at() - 4.0, top),
        pos2(line.names_at() + line.names - 18.0, top + HEIGHT),
    );
    p.rect_filled(corner, 0, t.col.ground);
    let date = crate::ui::dates::short(line.session.date);
    let upper = Rect::from_min_size(
        pos2(line.names_at(), y + 14.0),
        vec2(line.names - 20.0, 26.0),
    );
    words::line(
        &p,
        upper,
        Align2::LEFT_CENTER,
        "The day",
        theme::bold(18.0),
        t.col.ink,
    );
    let lower = upper.translate(vec2(0.0, 24.0));
    words::line(
        &p,
        lower,
        Align2::LEFT_CENTER,
        &date,
        theme::regular(15.0),
        t.col.soft,
    );
}

/// The rows of the timetable in a column that take place.
fn slots<'a>(line: &Line<'a>, c: &Column) -> Vec<&'a Slot> {
    let ids = c.stretch.rows.iter();
    ids.filter_map(|id| line.session.slot(*id)).collect()
}

/// What a row is called.
fn label<'a>(line: &Line<'a>, slot: &Slot) -> &'a str {
    let activity = line.club.activity(slot.activity);
    activity.map_or("", |a| a.label.as_str())
}

/// What a column is called: its row, or its turn.
pub fn called(line: &Line<'_>, c: &Column) -> String {
    match (c.stretch.turn, slots(line, c).first()) {
        (Some(turn), _) => format!("Turn {}", turn + 1),
        (None, Some(slot)) => label(line, slot).to_owned(),
        (None, None) => String::new(),
    }
}

/// Who leads in a column, in a row.
fn leads(line: &Line<'_>, c: &Column) -> String {
    let mut all: Vec<String> = Vec::new();
    for slot in slots(line, c) {
        for h in &slot.leads {
            let name = said::helper(line.club, *h);
            if !all.contains(&name) {
                all.push(name);
            }
        }
    }
    said::list(&all)
}

fn column(ui: &mut Ui, desk: &mut Desk<'_>, line: &Line<'_>, (i, c): (usize, &Column), top: f32) {
    let t = theme::of(ui.ctx());
    let (x, y) = (line.left() + c.middle(), top + ROPE);
    let cell = Rect::from_min_max(
        pos2(line.left() + c.left + 1.0, top + 1.0),
        pos2(line.left() + c.left + c.width - 1.0, top + HEIGHT - 3.0),
    );
    let id = Id::unique(("water-column", i));
    let r = ui.interact(cell, id, Sense::click());
    let (name, who) = (called(line, c), leads(line, c));
    let from_to = format!("{} to {}", c.stretch.from, c.stretch.to);
    let led = if who.is_empty() { "nobody named" } else { &who };
    let rows = slots(line, c);
    let off = !rows.is_empty() && rows.iter().all(|s| s.off.is_some());
    let off = if off { ", not today" } else { "" };
    let spoken = format!("{name}, {from_to}{off}. Who leads: {led}");
    r.widget_info(|| WidgetInfo::labeled(Role::Button, true, &spoken));
    let p = ui.painter().clone();
    if r.hovered() {
        p.rect_stroke(cell, 12, t.edge(), egui::StrokeKind::Inside);
    }
    let time = Rect::from_min_max(cell.min, pos2(cell.right(), y - 12.0));
    let from = c.stretch.from.to_string();
    words::line(
        &p,
        time,
        Align2::CENTER_CENTER,
        &from,
        theme::regular(14.0),
        t.col.soft,
    );
    let mid = pos2(x, y);
    match c.stretch.turn {
        None => peg(&p, mid, &number(line, c), t.col.peg, t.col.on_peg),
        Some(turn) => turn_peg(&p, mid, turn + 1),
    }
    pictures(&p, desk, line, c, pos2(x, y + 38.0));
    let text = Rect::from_min_max(pos2(cell.left(), y + 62.0), pos2(cell.right(), y + 96.0));
    let narrow = !has_room(&p, &name, text.width());
    let more = if narrow { beyond(&p, line, i) } else { 0.0 };
    let text = text.expand2(vec2(more, 0.0));
    if !narrow || has_room(&p, &name, text.width()) {
        let sizes: &[f32] = if narrow { &[13.0] } else { &[14.0, 13.0] };
        words::label(&p, text, &name, sizes, 2, t.col.ink);
    }
    if !who.is_empty() {
        let foot = Rect::from_min_max(pos2(cell.left() + 2.0, cell.bottom() - 20.0), cell.max);
        words::line(
            &p,
            foot,
            Align2::CENTER_CENTER,
            &who,
            theme::regular(13.5),
            t.col.soft,
        );
    }
    focus_ring(ui, &r, cell.shrink(3.0), theme::R_CONTROL);
    choose(desk, line, c, &r);
    r.on_hover_cursor(CursorIcon::PointingHand)
        .on_hover_text(format!("{spoken}. Choose who leads."));
}

/// Whether a name stands in two lines of this width.
fn has_room(p: &egui::Painter, name: &str, width: f32) -> bool {
    let rows = words::rows_needed(p, name, theme::bold(13.0), width);
    rows < 3 && words::fits(p, name, 13.0, width)
}

/// How far a name may go beyond its narrow column on either side: as far as the names beside it
/// leave room.
fn beyond(p: &egui::Painter, line: &Line<'_>, i: usize) -> f32 {
    let free = |c: &Column| {
        let name = called(line, c);
        let cell = c.width - 2.0;
        if !has_room(p, &name, cell) {
            return 0.0;
        }
        let ink = egui::Color32::PLACEHOLDER;
        let words = words::lay_centred(p, &name, theme::bold(14.0), ink, cell, 2);
        (cell - words.size().x) / 2.0 - 3.0
    };
    let beside = [i.checked_sub(1), Some(i + 1)].into_iter().flatten();
    let beside = beside.filter_map(|j| line.columns.get(j)).map(free);
    beside.fold(BEYOND, f32::min).max(0.0)
}

/// The number of a row of the timetable.
fn number(line: &Line<'_>, c: &Column) -> String {
    let place = |id: &SlotId| line.session.timetable.iter().position(|s| s.id == *id);
    let place = c.stretch.rows.first().and_then(place);
    place.map_or_else(String::new, |i| (i + 1).to_string())
}

/// The peg of a turn: light, for it is no row of its own.
fn turn_peg(p: &egui::Painter, mid: egui::Pos2, number: usize) {
    let t = theme::of(p.ctx());
    peg(p, mid, &number.to_string(), t.col.card, t.col.card_ink);
    let rect = Rect::from_center_size(mid, vec2(28.0, 26.0));
    let edge = Stroke::new(2.0, t.col.peg);
    p.rect_stroke(rect, theme::R_PEG, edge, egui::StrokeKind::Inside);
}

/// The picture of the row; of rows in turns up to three small ones.
fn pictures(p: &egui::Painter, desk: &mut Desk<'_>, line: &Line<'_>, c: &Column, mid: egui::Pos2) {
    let t = theme::of(p.ctx());
    let all = slots(line, c);
    let side = if all.len() > 1 { 32.0 } else { 42.0 };
    let n = all.len().min(3);
    if n > 1 && c.width < n as f32 * (side + 2.0) {
        return;
    }
    let left = mid.x - (n as f32 - 1.0) * (side + 2.0) / 2.0;
    for (i, slot) in all.into_iter().take(n).enumerate() {
        let Some(activity) = line.club.activity(slot.activity) else {
            continue;
        };
        let at = pos2(left + i as f32 * (side + 2.0), mid.y);
        let rect = Rect::from_center_size(at, vec2(side, side));
        if slot.off.is_some() {
            face_down(p, &t, rect);
            let cross = icons::square(rect.center(), 18.0);
            icons::paint(p, icons::Icon::Cross, cross, t.col.card_ink);
            continue;
        }
        plate(p, &t, rect);
        desk.pictures
            .symbol(p, rect.shrink(3.0), &activity.symbol, Default::default());
    }
}

/// The list of helpers that opens below a column; several can lead.
fn choose(desk: &mut Desk<'_>, line: &Line<'_>, c: &Column, r: &egui::Response) {
    let mut asked = Vec::new();
    Popup::menu(r)
        .width(280.0)
        .close_behavior(PopupCloseBehavior::CloseOnClickOutside)
        .accessible_name("Who leads")
        .show(|ui| {
            let room = (ui.ctx().content_rect().height() - 120.0).clamp(120.0, 420.0);
            egui::ScrollArea::vertical()
                .max_height(room)
                .show(ui, |ui| {
                    for slot in slots(line, c) {
                        words::heading(ui, &format!("Who leads {}", label(line, slot)), 16.0);
                        for h in &line.helpers {
                            let on = slot.leads.contains(&h.id);
                            let id = Id::unique(("water-leads", slot.id, h.id));
                            let away = line.session.helpers_away.contains(&h.id);
                            let trailing = if away { "does not come" } else { "" };
                            if tick(ui, id, on, &h.name, trailing).clicked() {
                                let mut next = slot.leads.clone();
                                if !next.remove(&h.id) {
                                    next.insert(h.id);
                                }
                                asked.push(TimetableEdit::Leads(slot.id, next));
                            }
                        }
                    }
                });
        });
    for edit in asked {
        desk.timetable(edit);
    }
}
