//! Where everything lies, and leaving.

use egui::{Align2, CornerRadius, Id, Rect, Ui, pos2, vec2};

use super::{DrawingState, Use, fields, keep, keys, paper, preview, tools};
use crate::symbols::lexicon::lexicon;
use crate::ui::desk::Desk;
use crate::ui::dialogs::over;
use crate::ui::picker::{For, Picked};
use crate::ui::theme;
use crate::ui::widgets::button::{Button, Weight};
use crate::ui::widgets::{form, words};

/// What came of showing the place.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Went {
    /// It stays open.
    Stays,
    /// It was left.
    Away,
}

/// Where the parts lie.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Places {
    pub head: Rect,
    pub tools: Rect,
    pub paper: Rect,
    pub side: Rect,
}

impl Places {
    pub fn of(window: Rect) -> Self {
        let inner = window.shrink2(vec2(theme::MARGIN, 10.0));
        let (head, rest) = inner.split_top_bottom_at_y(inner.top() + 52.0);
        let rest = rest.with_min_y(rest.top() + 8.0);
        let gap = 14.0;
        let (tools, rest) = rest.split_left_right_at_x(rest.left() + tools::WIDTH);
        let rest = rest.with_min_x(rest.left() + gap);
        let least = if window.width() < 900.0 { 208.0 } else { 300.0 };
        let paper = rest.height().min(rest.width() - gap - least).max(120.0);
        // Beside a large paper there is room left over: the side does not grow without end.
        let side_width = (rest.width() - gap - paper).min(460.0);
        let spare = (rest.width() - paper - gap - side_width).max(0.0);
        let min = pos2(rest.left() + spare / 2.0, rest.top());
        let side = Rect::from_min_max(pos2(rest.right() - side_width, rest.top()), rest.max);
        Self {
            head,
            tools,
            paper: Rect::from_min_size(min, vec2(paper, paper)),
            side,
        }
    }
}

/// Shows the place over the whole window; while another card covers it, keys are that card's.
pub fn show(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    state: &mut DrawingState,
    (window, covered): (Rect, bool),
) -> Went {
    if !state.ready {
        state.prepare(desk.view.club);
        desk.pictures.forget_sketches();
    }
    let t = theme::of(ui.ctx());
    ui.painter()
        .rect_filled(window, CornerRadius::ZERO, t.col.ground);
    let places = Places::of(window);
    let mut went = Went::Stays;
    let modal = covered || state.picker.is_some() || state.leaving;
    if !modal {
        keys::tools(ui, state);
    }
    if head(ui, desk, state, places.head) {
        went = Went::Away;
    }
    desk.regions.add(places.tools, tools::first());
    desk.regions.add(places.paper, paper::id());
    desk.regions.add(places.side, fields::first());
    form::scroll(ui, "draw-tools", places.tools, |ui| {
        tools::show(ui, desk, state)
    });
    paper::show(ui, desk, state, places.paper);
    form::scroll(ui, "draw-side", places.side, |ui| {
        preview::show(ui, desk, state);
        fields::show(ui, desk, state);
    });
    picker(ui, desk, state);
    if !modal && keys::leaves(ui, state) {
        went = leave(state, went);
    }
    if state.leaving {
        match asks(ui) {
            Some(true) => went = Went::Away,
            Some(false) => state.leaving = false,
            None => {}
        }
    }
    went
}

/// The title, Cancel and Keep; says whether the place is left.
fn head(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut DrawingState, rect: Rect) -> bool {
    let t = theme::of(ui.ctx());
    let rect = rect.with_max_y(rect.top() + theme::CONTROL);
    let title = if state.of.is_some() {
        "Change a picture"
    } else {
        "Draw a picture"
    };
    let missing = keep::missing(desk, state);
    let keep = Button::new("draw-keep", "Keep")
        .weight(Weight::Main)
        .enabled(missing.is_none())
        .tip(missing.unwrap_or("It is put among the club’s pictures"));
    let cancel = Button::new("draw-cancel", "Cancel");
    let right = Rect::from_min_size(
        pos2(rect.right() - keep.needs(ui), rect.top()),
        vec2(keep.needs(ui), theme::CONTROL),
    );
    let left = Rect::from_min_size(
        pos2(right.left() - 10.0 - cancel.needs(ui), rect.top()),
        vec2(cancel.needs(ui), theme::CONTROL),
    );
    let room = rect.with_max_x(left.left() - 12.0);
    let id = Id::unique("draw-title");
    let r = ui.interact(room, id, egui::Sense::hover());
    r.widget_info(|| egui::WidgetInfo::labeled(egui::Role::Heading, true, title));
    let (font, p) = (theme::bold(24.0), ui.painter());
    let took = words::line(p, room, Align2::LEFT_CENTER, title, font, t.col.ink);
    let says = state.trouble.as_deref().or(missing);
    if let Some(says) = says {
        let rest = room.with_min_x(took.right() + 18.0);
        fields::says(ui, rest, says, state.trouble.is_some());
    }
    if keep.show_at(ui, right).clicked() {
        return keep::keep(desk, state);
    }
    cancel.show_at(ui, left).clicked() && leave(state, Went::Stays) == Went::Away
}

/// Leaves, or asks first when something would be lost.
fn leave(state: &mut DrawingState, went: Went) -> Went {
    if state.is_changed() {
        state.leaving = true;
        went
    } else {
        Went::Away
    }
}

/// Whether to leave without keeping; nothing while it is not answered.
fn asks(ui: &Ui) -> Option<bool> {
    let (answer, close) = over(ui, "draw-leave", "Question", |ui| {
        words::heading(ui, "The drawing has not been kept. Leave it?", 20.0);
        ui.add_space(12.0);
        let mut answer = None;
        ui.horizontal_wrapped(|ui| {
            let stay = Button::new("draw-stay", "Go on drawing").weight(Weight::Main);
            let r = stay.show(ui);
            if ui.memory(|m| m.focused().is_none()) {
                r.request_focus();
            }
            if r.clicked() {
                answer = Some(false);
            }
            let b = Button::new("draw-away", "Leave without keeping");
            if b.show(ui).clicked() {
                answer = Some(true);
            }
        });
        answer
    });
    answer.or(close.then_some(false))
}

/// A symbol being picked, to be seen below or to be stood for.
fn picker(ui: &Ui, desk: &mut Desk<'_>, state: &mut DrawingState) {
    let Some(picker) = &mut state.picker else {
        return;
    };
    let club = desk.view.club;
    match picker.show(ui, desk.pictures, club) {
        Picked::Not => {}
        Picked::Away => state.picker = None,
        Picked::This(id) => {
            match picker.target {
                For::Drawing(Use::Below) => state.below = Some(id),
                _ => {
                    if state.facts.name.trim().is_empty() {
                        let names = lexicon(&club.rules.words);
                        names.label(&id).clone_into(&mut state.facts.name);
                    }
                    state.facts.stands_for = Some(id);
                }
            }
            state.picker = None;
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use egui::Pos2;

    #[test]
    fn nothing_overlaps_in_any_window() {
        for (w, h) in [
            (1366.0, 768.0),
            (683.0, 384.0),
            (640.0, 380.0),
            (1920.0, 1080.0),
            (900.0, 700.0),
        ] {
            let p = Places::of(Rect::from_min_size(Pos2::ZERO, vec2(w, h)));
            assert!(p.tools.right() <= p.paper.left(), "{w}x{h}");
            assert!(p.paper.right() <= p.side.left(), "{w}x{h}");
            assert!(p.head.bottom() <= p.paper.top(), "{w}x{h}");
            assert!(p.paper.bottom() <= h && p.side.right() <= w, "{w}x{h}");
            assert!(
                p.paper.width() >= 200.0 && p.side.width() >= 200.0,
                "{w}x{h}"
            );
        }
    }
}
