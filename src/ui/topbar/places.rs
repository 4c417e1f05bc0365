//! The five places on their strand, each with what is open there in words and number.

use egui::{Align2, CursorIcon, Id, Rect, Response, Role, Sense, Ui, WidgetInfo, pos2, vec2};

use crate::model::finding::Severity;
use crate::model::finding::Spot;
use crate::ui::actions::Action;
use crate::ui::desk::Desk;
use crate::ui::strand::Rope;
use crate::ui::strand::paint;
use crate::ui::theme;
use crate::ui::widgets::card::Lie;
use crate::ui::widgets::card::tile;
use crate::ui::widgets::focus_ring;
use crate::ui::widgets::words;
use crate::workbench::command::Place;
use crate::workbench::view::View;

pub(super) fn place_id(place: Place) -> Id {
    Id::unique(("place", place))
}

/// The five places on their strand.
pub(super) fn places(ui: &mut Ui, desk: &mut Desk<'_>, rect: Rect) {
    let t = theme::of(ui.ctx());
    let y = rect.top() + 21.0;
    let step = rect.width() / 5.0;
    let middle = |i: usize| rect.left() + (i as f32 + 0.5) * step;
    let mut rope = Rope {
        points: vec![pos2(rect.left(), y - 4.0)],
        arrows: Vec::new(),
    };
    for i in 0..5 {
        rope.sag_to(pos2(middle(i), y));
    }
    rope.sag_to(pos2(rect.right(), y - 4.0));
    paint::line(ui.painter(), &t, &rope.points, 4.0);
    let cell = |i| {
        Rect::from_min_max(
            pos2(middle(i) - step / 2.0 + 3.0, rect.top()),
            pos2(middle(i) + step / 2.0 - 3.0, rect.bottom()),
        )
    };
    let room = card_in(cell(0), y).width() - 2.0 * margin(cell(0));
    let size = name_size(ui.painter(), room);
    for (i, place) in Place::ALL.into_iter().enumerate() {
        let r = one_place(ui, desk, place, (cell(i), y), size);
        if r.clicked() {
            desk.actions.push(Action::Go(place));
        }
    }
}

/// In a low bar a place has its name alone.
fn is_low(cell: Rect) -> bool {
    cell.height() < 70.0
}

/// The card below the rope.
fn card_in(cell: Rect, y: f32) -> Rect {
    let width = (cell.width() - 4.0).min(144.0);
    let (top, high) = if is_low(cell) {
        (2.0, 36.0)
    } else {
        (4.0, 53.0)
    };
    let corner = pos2(cell.center().x - width / 2.0, y + top);
    Rect::from_min_size(corner, vec2(width, high))
}

/// How much of the card the words leave free on either side.
fn margin(cell: Rect) -> f32 {
    if is_low(cell) { 2.0 } else { 6.0 }
}

fn one_place(
    ui: &Ui,
    desk: &Desk<'_>,
    place: Place,
    (cell, y): (Rect, f32),
    size: f32,
) -> Response {
    let t = theme::of(ui.ctx());
    let current = desk.view.place == place;
    let (says, open) = open_in(desk.view, place);
    let (low, card) = (is_low(cell), card_in(cell, y));
    let hit = card.with_min_y(cell.top() + 6.0);
    let r = ui.interact(hit, place_id(place), Sense::click());
    r.widget_info(|| {
        WidgetInfo::selected(
            Role::Tab,
            true,
            current,
            format!("{}: {says}", place.label()),
        )
    });
    ui.ctx()
        .accesskit_node_builder(r.id, |node| node.set_selected(current));
    let p = ui.painter();
    let at = pos2(cell.center().x, y);
    let (ink, soft) = if current {
        (t.col.card_ink, t.col.card_soft)
    } else {
        (t.col.ink, t.col.soft)
    };
    if current {
        tile(p, &t, card, Lie::Ground);
        let peg = Rect::from_center_size(at, vec2(18.0, 20.0));
        p.rect_filled(peg, egui::CornerRadius::same(5), t.col.accent);
    } else {
        if r.hovered() {
            let corner = egui::CornerRadius::same(theme::R_CONTROL);
            p.rect_filled(
                card.shrink2(vec2(2.0, 0.0)).with_min_y(card.top() + 7.0),
                corner,
                t.col.panel,
            );
        }
        if open {
            paint::ring(p, &t.col, at, 7.0, t.col.ground);
        } else {
            paint::knot(p, &t, at, 8.0);
        }
    }
    let text = card.shrink2(vec2(margin(cell), 0.0));
    let name_top = card.top() + if low { 9.0 } else { 8.0 };
    let font = if current {
        theme::bold(size)
    } else {
        theme::regular(size)
    };
    let name = Rect::from_min_size(pos2(text.left(), name_top), vec2(text.width(), 24.0));
    words::line(p, name, Align2::CENTER_CENTER, place.label(), font, ink);
    if !low {
        let below =
            Rect::from_min_size(pos2(text.left(), name_top + 21.0), vec2(text.width(), 18.0));
        words::line(
            p,
            below,
            Align2::CENTER_CENTER,
            &says,
            theme::regular(14.0),
            soft,
        );
    }
    focus_ring(ui, &r, card, theme::R_CARD);
    let r = r.on_hover_cursor(CursorIcon::PointingHand);
    if low { r.on_hover_text(says) } else { r }
}

/// The size at which the name of every place stands in this width.
fn name_size(p: &egui::Painter, width: f32) -> f32 {
    let fit = |size: &f32| {
        Place::ALL
            .iter()
            .all(|place| words::fits(p, place.label(), *size, width))
    };
    [18.0, 16.0, 14.0].into_iter().find(fit).unwrap_or(12.5)
}

/// What is open in a place, in words, and whether anything is.
pub fn open_in(view: &View<'_>, place: Place) -> (String, bool) {
    let count = |f: fn(&Spot) -> bool| {
        view.findings
            .iter()
            .filter(|x| x.severity <= Severity::Look && f(&x.spot))
            .count()
    };
    let open = |n: usize, words: &str, closed: String| {
        if n == 0 {
            (closed, false)
        } else {
            (format!("{n} to {words}"), true)
        }
    };
    match place {
        Place::Session if view.session.is_none() => ("none yet".into(), true),
        Place::Session => {
            let n = count(|s| {
                let of_rows = matches!(s, Spot::Slot(..) | Spot::Activity(_));
                of_rows || matches!(s, Spot::Session(_) | Spot::Water(..))
            });
            open(n, "look at", "ready".into())
        }
        Place::People => {
            let n = count(|s| {
                let of_people = matches!(s, Spot::Participant(_) | Spot::Helper(_));
                of_people || matches!(s, Spot::Club | Spot::Picture(_))
            });
            open(n, "look at", format!("{} come", view.boards.len()))
        }
        Place::Boards => {
            let n = count(|s| matches!(s, Spot::Board(..) | Spot::Step(..)));
            open(n, "look over", format!("{} boards", view.boards.len()))
        }
        Place::Checks => open(count(|_| true), "look at", "nothing open".into()),
        Place::Print => match (
            view.print.kinds.len(),
            view.sheets.iter().map(|s| s.pages.len()).sum(),
        ) {
            (0, _) => ("nothing chosen".into(), true),
            (_, 1) => ("1 page".into(), true),
            (1, 0) => ("1 kind".into(), true),
            (n, 0) => (format!("{n} kinds"), true),
            (_, n) => (format!("{n} pages"), true),
        },
    }
}
