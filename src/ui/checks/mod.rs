//! The place Checks: what should be looked at, tied along a rope as slips of paper; a click goes
//! there.

mod slip;

use egui::{Align2, Id, Key, Modifiers, Rect, ScrollArea, Ui, UiBuilder, pos2, vec2};

use super::desk::Desk;
use super::icons;
use super::regions;
use super::strand::{Rope, paint};
use super::theme;
use super::widgets::words;
use crate::model::finding::{Finding, Severity, Spot};
use crate::workbench::command::Command;
use crate::workbench::view::View;

use slip::{go_words, paper, way};
pub use slip::{sign, slip};

const GAP: f32 = 10.0;
/// Wider than this a line is hard to read.
const WIDEST: f32 = 1046.0;
/// Where the rope hangs down, and where the papers beside it begin.
const ROPE: f32 = 24.0;
const PAPER: f32 = 54.0;
/// How high a heading is.
const HEADING: f32 = 38.0;

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
                    kind(ui, f.severity, i == 0);
                }
                row(ui, desk, i, f);
            }
            if n > 0 {
                stopper(ui);
            }
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

/// A stretch of the rope beside what comes next, up to what came before.
fn stretch(ui: &Ui, rect: Rect, first: bool) {
    let t = theme::of(ui.ctx());
    let x = rect.left() + ROPE;
    let top = if first {
        rect.center().y
    } else {
        rect.top() - GAP
    };
    let ends = [pos2(x, top), pos2(x, rect.bottom())];
    paint::line(ui.painter(), &t, &ends, theme::ROPE);
}

/// A knot, and what all that follows have in common.
fn kind(ui: &mut Ui, severity: Severity, first: bool) {
    let t = theme::of(ui.ctx());
    let (_, rect) = ui.allocate_space(vec2(ui.available_width(), HEADING));
    stretch(ui, rect, first);
    paint::knot(
        ui.painter(),
        &t,
        pos2(rect.left() + ROPE, rect.center().y),
        9.0,
    );
    let place = rect
        .with_min_x(rect.left() + PAPER)
        .with_min_y(rect.top() + 6.0);
    let mut child = ui.new_child(UiBuilder::new().max_rect(place));
    words::heading(&mut child, group_words(severity), 18.0);
}

/// The end of the rope: a knot with loose ends.
fn stopper(ui: &mut Ui) {
    let t = theme::of(ui.ctx());
    let (_, rect) = ui.allocate_space(vec2(ui.available_width(), 44.0));
    let at = pos2(rect.left() + ROPE, rect.top() + 6.0);
    let p = ui.painter();
    paint::line(p, &t, &[at - vec2(0.0, 6.0 + GAP), at], theme::ROPE);
    paint::hanging_stopper(p, &t, at, 9.0, 20.0);
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

/// Room for the words that lead to the place of a finding, beside it or, in a narrow window, below.
const LINK: f32 = 196.0;
const LINK_BELOW: f32 = 30.0;
const NARROW: f32 = 620.0;

fn row_id(i: usize) -> Id {
    Id::unique(("check", i))
}

fn row(ui: &mut Ui, desk: &mut Desk<'_>, i: usize, f: &Finding) {
    let t = theme::of(ui.ctx());
    let width = ui.available_width();
    let narrow = width < NARROW;
    let (beside, below) = if narrow {
        (24.0, LINK_BELOW)
    } else {
        (LINK, 0.0)
    };
    let room = width - PAPER - 20.0 - beside;
    let lay = |words: &str, font, ink| words::lay(ui.painter(), words, font, ink, room, 4);
    let spot = lay(&where_words(desk.view, f), theme::regular(14.0), t.col.soft);
    let sentence = lay(&f.sentence, theme::bold(16.0), t.col.ink);
    let hint = lay(&f.hint, theme::regular(15.0), t.col.soft);
    let height = (spot.size().y + sentence.size().y + hint.size().y + 22.0 + below).max(64.0);
    let (_, rect) = ui.allocate_space(vec2(width, height));
    stretch(ui, rect, false);
    let place = Rect::from_min_max(
        pos2(rect.left() + PAPER, rect.top()),
        rect.max - vec2(4.0, 0.0),
    );
    let r = paper(ui, place, row_id(i), f);
    let on_rope = pos2(rect.left() + ROPE, rect.center().y);
    // The sign stands clear of the rope, whatever colours there are.
    let ground = t.col.ground;
    icons::diamond(ui.painter(), on_rope, 20.0, true, ground, ground);
    sign(ui, on_rope, f.severity, None);
    let p = ui.painter();
    let mut at = pos2(place.left() + 20.0, rect.top() + 10.0);
    for (g, ink) in [
        (spot, t.col.soft),
        (sentence, t.col.ink),
        (hint, t.col.soft),
    ] {
        let y = g.size().y;
        p.galley(at, g, ink);
        at.y += y;
    }
    let link = if narrow {
        Rect::from_min_max(at, rect.max - vec2(20.0, 8.0))
    } else {
        Rect::from_min_max(
            pos2(rect.right() - LINK, rect.top()),
            rect.max - vec2(20.0, 0.0),
        )
    };
    way(p, link, &go_words(f));
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
