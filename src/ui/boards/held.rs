//! What is in the hand while dragging, and its ghost under the pointer.

use std::sync::Arc;

use egui::{
    Align2, Context, CornerRadius, CursorIcon, DragAndDrop, Id, LayerId, Order, Pos2, Rect, Stroke,
    StrokeKind, Ui, Vec2, vec2,
};

use super::face::face;
use crate::model::hand::Content;
use crate::model::ids::{ParticipantId, SlotId, StepRef};
use crate::ui::desk::Desk;
use crate::ui::pictures::Eyes;
use crate::ui::theme;
use crate::ui::widgets::card::{Lie, peg, tile};
use crate::ui::widgets::{way_back, words};
use crate::workbench::command::Place;

/// What is being dragged.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Held {
    /// A symbol from the tray.
    New(Content),
    /// Steps of someone's board, with what the one shows that was taken hold of.
    Steps(ParticipantId, Vec<StepRef>, Content),
    /// A row of the timetable, with what it shows.
    Slot(SlotId, Content),
}

impl Held {
    /// What it shows.
    const fn content(&self) -> &Content {
        match self {
            Self::New(c) | Self::Steps(_, _, c) | Self::Slot(_, c) => c,
        }
    }

    /// How many cards it is.
    const fn count(&self) -> usize {
        match self {
            Self::Steps(_, steps, _) => steps.len(),
            Self::New(_) | Self::Slot(..) => 1,
        }
    }
}

/// What is in the hand now, with the place of the pointer.
pub fn in_hand(ctx: &Context) -> Option<(Arc<Held>, Pos2)> {
    let held = DragAndDrop::payload::<Held>(ctx)?;
    let at = ctx
        .pointer_interact_pos()
        .or_else(|| ctx.pointer_latest_pos())?;
    Some((held, at))
}

/// How near the edge something held makes a list scroll.
const EDGE: f32 = 40.0;

/// Scrolls while something is held near the upper or lower edge of a list.
pub fn autoscroll(ui: &Ui, list: Rect, at: Option<Pos2>) {
    let Some(at) = at else { return };
    let by = if at.y < list.top() + EDGE {
        6.0
    } else if at.y > list.bottom() - EDGE {
        -6.0
    } else {
        return;
    };
    ui.scroll_with_delta_animation(vec2(0.0, by), egui::style::ScrollAnimation::none());
    ui.ctx().request_repaint();
}

/// The card that follows the pointer over a board or a timetable, with words for what letting go
/// here would do.
pub fn show(ui: &Ui, desk: &mut Desk<'_>, board: Rect) {
    let Some((held, at)) = in_hand(ui.ctx()) else {
        return ghost(ui, desk, None);
    };
    let swap = ui.input(|i| i.modifiers.shift);
    let again = copies(ui);
    let says = match (held.as_ref(), board.contains(at)) {
        (Held::New(_), true) if desk.view.place != Place::Boards => None,
        (Held::New(_), true) if swap => Some("swap it in"),
        (Held::New(_), true) => Some("own step"),
        (Held::Slot(..) | Held::Steps(..), true) if again => Some("once more"),
        (Held::Steps(..), false) if again => None,
        (Held::Slot(..), false) => Some("take it out"),
        (Held::Steps(_, steps, _), false) => Some(off(steps)),
        (Held::New(_), false) | (Held::Steps(..) | Held::Slot(..), true) => None,
    };
    ghost(ui, desk, says);
}

/// What becomes of steps that are let go beside the board.
pub fn off(steps: &[StepRef]) -> &'static str {
    let gone = |s: &StepRef| matches!(s, StepRef::Own(_) | StepRef::Instead(_));
    match (steps.iter().all(gone), steps.len()) {
        (true, 1) => "take it off",
        (true, _) => "take them off",
        _ => "not today",
    }
}

/// With Ctrl held what is dragged stays where it is, and another one of it is let go.
pub fn copies(ui: &Ui) -> bool {
    ui.input(|i| i.modifiers.command)
}

/// What was let go where nothing comes of it, on its way back.
#[derive(Clone)]
struct Back {
    held: Arc<Held>,
    from: Pos2,
    to: Pos2,
    since: f64,
}

const BACK: &str = "held-back";
const TAKEN: &str = "held-taken";

/// Lets what is in the hand slide back to where it was taken: nothing comes of letting go here.
pub fn goes_back(ui: &Ui, held: &Arc<Held>, from: Pos2) {
    let to = ui.data(|d| d.get_temp(Id::unique(TAKEN)));
    let back = Back {
        held: Arc::clone(held),
        from,
        to: to.unwrap_or(from),
        since: ui.input(|i| i.time),
    };
    ui.data_mut(|d| d.insert_temp(Id::unique(BACK), back));
    ui.ctx().request_repaint();
}

/// The card that slides back, if one does.
fn on_its_way_back(ctx: &Context) -> Option<(Arc<Held>, Pos2)> {
    let back: Back = ctx.data(|d| d.get_temp(Id::unique(BACK)))?;
    let at = way_back(ctx, back.since, back.from, back.to);
    if at.is_none() {
        ctx.data_mut(|d| d.remove::<Back>(Id::unique(BACK)));
    }
    Some((back.held, at?))
}

/// The card that follows the pointer, with words on a tab below it.
pub fn ghost(ui: &Ui, desk: &mut Desk<'_>, says: Option<&str>) {
    let ctx = ui.ctx();
    if let Some((held, at)) = in_hand(ctx) {
        ctx.set_cursor_icon(CursorIcon::Grabbing);
        if let Some(taken) = ctx.input(|i| i.pointer.press_origin()) {
            ctx.data_mut(|d| d.insert_temp(Id::unique(TAKEN), taken));
        }
        card(ctx, desk, &held, at, says);
    } else if let Some((held, at)) = on_its_way_back(ctx) {
        card(ctx, desk, &held, at, None);
    }
}

fn card(ctx: &Context, desk: &mut Desk<'_>, held: &Held, at: Pos2, says: Option<&str>) {
    let t = theme::of(ctx);
    let rect = Rect::from_center_size(at + vec2(10.0, 26.0), Vec2::splat(theme::CARD));
    let p = ctx.layer_painter(LayerId::new(Order::Tooltip, Id::unique("held")));
    for below in (1..held.count().min(3)).rev() {
        let by = Vec2::splat(6.0 * below as f32);
        tile(&p, &t, rect.translate(by), Lie::Ground);
    }
    let paper = tile(&p, &t, rect, Lie::Lifted);
    let figure = desk.view.participant.map_or(Eyes::default(), Eyes::of);
    let content = held.content();
    face(
        &p,
        desk.pictures,
        paper,
        &content.symbol,
        &content.label,
        figure,
    );
    if held.count() > 1 {
        let number = held.count().to_string();
        peg(
            &p,
            rect.center_top(),
            &number,
            t.col.accent,
            t.col.on_accent,
        );
    }
    let Some(words) = says else { return };
    let font = theme::bold(14.5);
    let g = p.layout_no_wrap(words.to_owned(), font.clone(), t.col.ink);
    let size = vec2((g.size().x + 16.0).max(126.0), 26.0);
    let below = Rect::from_center_size(rect.center_bottom() + vec2(0.0, 10.0), size);
    // At the lower edge of the window it stands above.
    let fits = below.bottom() <= ctx.content_rect().bottom();
    let above = Rect::from_center_size(rect.center_top() - vec2(0.0, 30.0), size);
    let tab = if fits { below } else { above };
    p.rect(
        tab,
        CornerRadius::same(5),
        t.col.panel,
        Stroke::new(2.0, t.col.ink),
        StrokeKind::Inside,
    );
    words::line(
        &p,
        tab.shrink(4.0),
        Align2::CENTER_CENTER,
        words,
        font,
        t.col.ink,
    );
}
