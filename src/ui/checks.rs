//! The place Checks: what should be looked at, as slips of paper; a click goes there.

use egui::{
    Align2, CornerRadius, CursorIcon, Id, Key, Modifiers, Pos2, Rect, Response, Role, ScrollArea,
    Sense, Stroke, StrokeKind, Ui, UiBuilder, WidgetInfo, pos2, vec2,
};

use super::desk::Desk;
use super::icons;
use super::regions;
use super::strand::{Rope, paint};
use super::theme;
use super::widgets::{focus_ring, words};
use crate::model::finding::{Finding, Severity, Spot};
use crate::workbench::command::{Command, Place};
use crate::workbench::view::View;

const GAP: f32 = 10.0;
/// Wider than this a line is hard to read.
const WIDEST: f32 = 1000.0;

/// The sign of a severity: filled diamond, hollow diamond, ring with a dot.
pub fn sign(ui: &Ui, at: Pos2, severity: Severity, number: Option<usize>) {
    let col = theme::of(ui.ctx()).col;
    let p = ui.painter();
    if severity == Severity::GoodToKnow {
        p.circle_stroke(at, 11.0, Stroke::new(2.0, col.ink));
        if number.is_none() {
            p.circle_filled(at, 3.2, col.ink);
        }
    } else {
        icons::diamond(
            p,
            at,
            14.0,
            severity == Severity::StopAndLook,
            col.ink,
            col.panel,
        );
    }
    if let Some(n) = number {
        let ink = if severity == Severity::StopAndLook {
            col.panel
        } else {
            col.ink
        };
        p.text(
            at,
            Align2::CENTER_CENTER,
            n.to_string(),
            theme::bold(14.0),
            ink,
        );
    }
}

/// A finding on one line, with its number and how many more there are; a click goes there.
pub fn slip(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    rect: Rect,
    f: &Finding,
    (number, more): (usize, usize),
) {
    let r = paper(ui, rect, Id::unique(("slip", number)), f);
    let t = theme::of(ui.ctx());
    sign(
        ui,
        rect.left_center() + vec2(24.0, 0.0),
        f.severity,
        Some(number),
    );
    let p = ui.painter();
    let mut room = Rect::from_min_max(rect.min + vec2(46.0, 0.0), rect.max - vec2(14.0, 0.0));
    let last = if more > 0 {
        format!("and {more} more")
    } else {
        go_words(f)
    };
    let took = words::line(
        p,
        room,
        Align2::RIGHT_CENTER,
        &last,
        theme::bold(16.0),
        t.col.accent,
    );
    p.hline(
        took.x_range(),
        took.bottom() - 1.0,
        Stroke::new(1.5, t.col.accent),
    );
    room.max.x = took.left() - 12.0;
    let took = words::line(
        p,
        room,
        Align2::LEFT_CENTER,
        f.severity.label(),
        theme::bold(16.0),
        t.col.ink,
    );
    let rest = room.with_min_x(took.right() + 10.0);
    words::line(
        p,
        rest,
        Align2::LEFT_CENTER,
        &f.sentence,
        theme::regular(16.0),
        t.col.ink,
    );
    if r.clicked() {
        desk.ask(if more > 0 {
            Command::Show(Place::Checks)
        } else {
            Command::GoTo(f.spot)
        });
    }
    r.on_hover_text(format!("{} {}", f.sentence, f.hint));
}

/// The paper of a slip, with its name.
fn paper(ui: &Ui, rect: Rect, id: Id, f: &Finding) -> Response {
    let t = theme::of(ui.ctx());
    let r = ui.interact(rect, id, Sense::click());
    r.widget_info(|| {
        let words = format!("{}: {} {}", f.severity.label(), f.sentence, f.hint);
        WidgetInfo::labeled(Role::Button, true, words)
    });
    let line = if r.hovered() {
        Stroke::new(2.0, t.col.ink)
    } else {
        t.edge()
    };
    ui.painter().rect(
        rect,
        CornerRadius::same(theme::R_CONTROL),
        t.col.panel,
        line,
        StrokeKind::Inside,
    );
    focus_ring(ui, &r, rect, theme::R_CONTROL);
    r.on_hover_cursor(CursorIcon::PointingHand)
}

/// What the link of a finding says.
fn go_words(f: &Finding) -> String {
    match f.spot {
        Spot::Club => "To the club",
        Spot::Activity(_) => "To the activity",
        Spot::Participant(_) | Spot::Helper(_) => "To the person",
        Spot::Picture(_) => "To the picture",
        Spot::Session(_) | Spot::Slot(..) => "To the timetable",
        Spot::Water(..) => "To people and water",
        Spot::Board(..) => "To the board",
        Spot::Step(..) => "To the step",
        Spot::Story(..) => "To the story",
    }
    .into()
}

/// Where a finding points, in words.
fn where_words(view: &View<'_>, f: &Finding) -> String {
    let club = view.club;
    let name = |id| club.participant(id).map_or("", |p| p.name.as_str());
    match f.spot {
        Spot::Club => "The club".into(),
        Spot::Activity(id) => club
            .activity(id)
            .map_or_else(String::new, |a| a.label.clone()),
        Spot::Participant(id) => name(id).to_owned(),
        Spot::Helper(id) => club.helper(id).map_or_else(String::new, |h| h.name.clone()),
        Spot::Picture(id) => club
            .picture(id)
            .map_or_else(String::new, |p| p.name.clone()),
        Spot::Session(id) | Spot::Water(id, None) => club
            .session(id)
            .map_or_else(String::new, |s| s.title.clone()),
        Spot::Slot(session, slot) | Spot::Water(session, Some(slot)) => club
            .session(session)
            .and_then(|s| s.slot(slot))
            .and_then(|s| club.activity(s.activity))
            .map_or_else(String::new, |a| a.label.clone()),
        Spot::Board(_, who) | Spot::Step(_, who, _) => format!("{}’s board", name(who)),
        Spot::Story(_, who, _) => format!("{}’s story", name(who)),
    }
}

/// Shows the place.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>, rect: Rect) {
    let rect = rect.with_max_x(rect.right().min(rect.left() + WIDEST));
    let top = rect.with_max_y(rect.top() + theme::CONTROL);
    let n = desk.view.findings.len();
    heading(ui, top, n);
    let list = rect.with_min_y(top.bottom() + 6.0);
    let mut child = ui.new_child(UiBuilder::new().id_salt("checks").max_rect(list));
    ScrollArea::vertical()
        .id_salt("checks")
        .auto_shrink(false)
        .show(&mut child, |ui| {
            ui.spacing_mut().item_spacing.y = GAP;
            let mut before = None;
            for (i, f) in desk.view.findings.iter().enumerate() {
                if before.replace(f.severity) != Some(f.severity) {
                    words::heading(ui, group_words(f.severity), 18.0);
                }
                row(ui, desk, i, f);
            }
            ui.add_space(16.0);
        });
    if n > 0 {
        desk.regions.add(list, row_id(0));
    } else {
        calm(ui, list);
    }
}

/// A closed knot on a short rope: nothing is open.
fn calm(ui: &Ui, rect: Rect) {
    let t = theme::of(ui.ctx());
    let (p, mid) = (
        ui.painter(),
        pos2(rect.center().x, rect.top() + rect.height() * 0.36),
    );
    let mut rope = Rope::default();
    rope.points.push(mid - vec2(220.0, 6.0));
    rope.sag_to(mid);
    rope.sag_to(mid + vec2(220.0, -6.0));
    paint::rope(p, &t, &rope);
    paint::knot(p, &t, mid, 24.0);
    let below = mid + vec2(0.0, 62.0);
    p.text(
        below,
        Align2::CENTER_CENTER,
        "Nothing open",
        theme::bold(20.0),
        t.col.ink,
    );
}

const fn group_words(s: Severity) -> &'static str {
    match s {
        Severity::StopAndLook => "Stop and look before printing",
        Severity::Look => "Look when there is time",
        Severity::GoodToKnow => "Good to know",
    }
}

fn heading(ui: &Ui, rect: Rect, n: usize) {
    let t = theme::of(ui.ctx());
    let p = ui.painter();
    let took = words::line(
        p,
        rect,
        Align2::LEFT_CENTER,
        "Checks",
        theme::bold(24.0),
        t.col.ink,
    );
    let says = match n {
        0 => "Nothing found. You know the day better than any check.".to_owned(),
        1 => "1 thing found. You decide what to do about it.".to_owned(),
        n => format!("{n} things found. You decide what to do about each."),
    };
    let rest = rect.with_min_x(took.right() + 16.0);
    words::line(
        p,
        rest,
        Align2::LEFT_CENTER,
        &says,
        theme::regular(16.0),
        t.col.soft,
    );
}

/// Room for the words that lead to the place of a finding.
const LINK: f32 = 196.0;

fn row_id(i: usize) -> Id {
    Id::unique(("check", i))
}

fn row(ui: &mut Ui, desk: &mut Desk<'_>, i: usize, f: &Finding) {
    let t = theme::of(ui.ctx());
    let width = ui.available_width();
    let room = width - 46.0 - LINK;
    let lay = |words: &str, font, ink| words::lay(ui.painter(), words, font, ink, room, 4);
    let place = lay(&where_words(desk.view, f), theme::regular(14.0), t.col.soft);
    let sentence = lay(&f.sentence, theme::bold(16.0), t.col.ink);
    let hint = lay(&f.hint, theme::regular(15.0), t.col.soft);
    let height = (place.size().y + sentence.size().y + hint.size().y + 22.0).max(64.0);
    let (_, rect) = ui.allocate_space(vec2(width, height));
    let r = paper(ui, rect.shrink2(vec2(4.0, 0.0)), row_id(i), f);
    sign(
        ui,
        pos2(rect.left() + 30.0, rect.center().y),
        f.severity,
        None,
    );
    let p = ui.painter();
    let mut at = pos2(rect.left() + 56.0, rect.top() + 10.0);
    for (g, ink) in [
        (place, t.col.soft),
        (sentence, t.col.ink),
        (hint, t.col.soft),
    ] {
        let y = g.size().y;
        p.galley(at, g, ink);
        at.y += y;
    }
    let link = Rect::from_min_max(
        pos2(rect.right() - LINK, rect.top()),
        rect.max - vec2(20.0, 0.0),
    );
    let took = words::line(
        p,
        link,
        Align2::RIGHT_CENTER,
        &go_words(f),
        theme::bold(16.0),
        t.col.accent,
    );
    p.hline(
        took.x_range(),
        took.bottom() - 1.0,
        Stroke::new(1.5, t.col.accent),
    );
    let enter = r.has_focus() && ui.input_mut(|i| i.consume_key(Modifiers::NONE, Key::Enter));
    if r.clicked() || enter {
        desk.ask(Command::GoTo(f.spot));
    }
    if r.has_focus() {
        regions::keep_arrows(ui, r.id);
        if let Some(to) = regions::arrows(ui, i, desk.view.findings.len(), 1) {
            ui.memory_mut(|m| m.request_focus(row_id(to)));
        }
    }
}
