//! A finding on paper: its sign, its words and where a click leads.

use egui::{
    Align2, CornerRadius, CursorIcon, Id, Painter, Pos2, Rect, Response, Role, Sense, Stroke,
    StrokeKind, Ui, WidgetInfo, vec2,
};

use crate::model::finding::{Finding, Severity, Spot};
use crate::ui::desk::Desk;
use crate::ui::icons;
use crate::ui::theme;
use crate::ui::widgets::{focus_ring, words};
use crate::workbench::command::{Command, Place};

/// The sign of a severity: filled diamond, hollow diamond, ring with a dot.
pub fn sign(ui: &Ui, at: Pos2, severity: Severity, number: Option<usize>) {
    let col = theme::of(ui.ctx()).col;
    let p = ui.painter();
    let stop = severity == Severity::StopAndLook;
    match (severity, number) {
        (Severity::GoodToKnow, _) => {
            p.circle_stroke(at, 11.0, Stroke::new(2.0, col.ink));
            match number {
                Some(n) => icons::number(p, at, n, col.ink),
                None => {
                    p.circle_filled(at, 3.2, col.ink);
                }
            }
        }
        (_, Some(n)) => icons::numbered(p, at, n, stop, col.ink, col.panel),
        (_, None) => icons::diamond(p, at, 14.0, stop, col.ink, col.panel),
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
    let took = way(p, room, &last);
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
pub(super) fn paper(ui: &Ui, rect: Rect, id: Id, f: &Finding) -> Response {
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

/// Words that lead somewhere, at the right of a rectangle; gives the place they took.
pub(super) fn way(p: &Painter, rect: Rect, says: &str) -> Rect {
    let accent = theme::of(p.ctx()).col.accent;
    let font = theme::bold(16.0);
    let took = words::line(p, rect, Align2::RIGHT_CENTER, says, font, accent);
    let under = took.bottom() - 1.0;
    p.hline(took.x_range(), under, Stroke::new(1.5, accent));
    took
}

/// What the link of a finding says.
pub(super) fn go_words(f: &Finding) -> String {
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
