//! Cards, plates and panels: the surfaces things lie on.

use egui::{Color32, CornerRadius, Painter, Rect, Stroke, StrokeKind, pos2, vec2};

use crate::ui::icons;
use crate::ui::theme::{self, Theme};

/// How high a surface lies.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Lie {
    /// Flat, without a shadow.
    Flat,
    /// On the ground.
    Ground,
    /// In the hand.
    Lifted,
}

/// A tile as it will be printed: paper in a clear edge. Gives the rectangle of the paper.
pub fn tile(p: &Painter, t: &Theme, rect: Rect, lie: Lie) -> Rect {
    let outer = CornerRadius::same(theme::R_CARD);
    match lie {
        Lie::Flat => {}
        Lie::Ground => drop(p.add(t.shadow().as_shape(rect, outer))),
        Lie::Lifted => drop(p.add(t.lifted().as_shape(rect, outer))),
    }
    p.rect(rect, outer, t.col.seal, t.seal_line(), StrokeKind::Inside);
    let paper = rect.shrink(if rect.height() < 90.0 { 4.0 } else { 8.0 });
    let line = Stroke::new(1.0, t.col.seal_line.gamma_multiply(0.45));
    p.rect(
        paper,
        CornerRadius::same(theme::R_PAPER),
        t.col.card,
        line,
        StrokeKind::Inside,
    );
    paper
}

/// A tile lying face down: dashed edge, hatched back. Gives the plate its words stand on.
pub fn face_down(p: &Painter, t: &Theme, rect: Rect) -> Rect {
    let col = &t.col;
    p.rect_filled(rect, CornerRadius::same(theme::R_CARD), col.down);
    let inner = rect.shrink(9.0);
    icons::hatch(
        p,
        inner,
        11.0,
        Stroke::new(1.2, col.down_line.gamma_multiply(0.55)),
    );
    icons::dashed_rect(
        p,
        rect.shrink(1.0),
        14.0,
        Stroke::new(t.line() + 0.2, col.down_line),
        7.0,
        5.0,
    );
    let plate = Rect::from_center_size(
        rect.center(),
        vec2(
            rect.width() - 20.0,
            (rect.height() * 0.46).max(36.0).min(rect.height() - 12.0),
        ),
    );
    p.rect_filled(plate, CornerRadius::same(theme::R_PAPER), col.card);
    plate
}

/// A small light plate, such as under a mark.
pub fn plate(p: &Painter, t: &Theme, rect: Rect) {
    let r = CornerRadius::same(if rect.width() < 40.0 { 8 } else { 12 });
    p.rect(
        rect,
        r,
        t.col.card,
        Stroke::new(1.2, t.col.seal_line),
        StrokeKind::Inside,
    );
}

/// A raised panel.
pub fn panel(p: &Painter, t: &Theme, rect: Rect) {
    let r = CornerRadius::same(theme::R_PANEL);
    p.rect(
        rect,
        r,
        t.col.panel,
        Stroke::new(t.line(), t.col.rule),
        StrokeKind::Inside,
    );
}

/// A hollow.
pub fn well(p: &Painter, t: &Theme, rect: Rect) {
    let edge = if t.scheme == theme::Scheme::Contrast {
        t.edge()
    } else {
        Stroke::NONE
    };
    p.rect(
        rect,
        CornerRadius::same(theme::R_PANEL),
        t.col.well,
        edge,
        StrokeKind::Inside,
    );
}

/// The peg that says "you are here", at the left edge of a row.
pub fn here(p: &Painter, t: &Theme, row: Rect) {
    let mid = pos2(row.left() - 0.5, row.center().y);
    let rect = Rect::from_center_size(mid, vec2(9.0, 28.0));
    p.rect_filled(rect, CornerRadius::same(4), t.col.accent);
}

/// A peg on the rope with a number, or none.
pub fn peg(p: &Painter, mid: egui::Pos2, number: &str, fill: Color32, ink: Color32) {
    let rect = Rect::from_center_size(mid, vec2(28.0, 26.0));
    p.rect_filled(rect, CornerRadius::same(theme::R_PEG), fill);
    p.text(
        mid,
        egui::Align2::CENTER_CENTER,
        number,
        theme::bold(16.0),
        ink,
    );
}
