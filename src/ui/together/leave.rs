//! The way out: a ring that fills while it is held, with the mouse, a finger, or the Escape key.
//! A click or a tap alone never leaves.

use egui::{
    Align2, Color32, CornerRadius, Id, Key, Painter, Pos2, Role, Sense, Shape, Stroke, Ui,
    WidgetInfo, pos2, vec2,
};

use super::places::Places;
use crate::ui::icons::{self, Icon};
use crate::ui::theme;
use crate::ui::widgets::{focus_ring, words};

/// Seconds to hold.
const HOLD: f64 = 1.0;

/// Since when it is held.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Hold {
    since: Option<f64>,
}

impl Hold {
    /// How much of the time it has been held, from 0 to 1; at 1 it is left.
    pub fn part(&mut self, held: bool, now: f64) -> f64 {
        if !held {
            self.since = None;
            return 0.0;
        }
        let since = *self.since.get_or_insert(now);
        ((now - since) / HOLD).clamp(0.0, 1.0)
    }
}

/// The ring; true when it was held long enough.
pub fn show(ui: &Ui, hold: &mut Hold, places: &Places, with_words: bool) -> bool {
    let t = theme::of(ui.ctx());
    let rect = places.leave;
    let r = ui.interact(rect, Id::unique("together-leave"), Sense::click_and_drag());
    r.widget_info(|| {
        WidgetInfo::labeled(
            Role::Button,
            true,
            "Leave: hold this, or hold the Escape key",
        )
    });
    let key = ui.input(|i| i.key_down(Key::Escape));
    let touched = r.is_pointer_button_down_on() && r.contains_pointer();
    // Space and Enter held on the ring do the same.
    let typed = r.has_focus() && ui.input(|i| i.key_down(Key::Space) || i.key_down(Key::Enter));
    let now = ui.input(|i| i.time);
    let part = hold.part(key || touched || typed, now);
    if part > 0.0 && part < 1.0 || hold.since.is_some() && part == 0.0 {
        ui.ctx().request_repaint();
    }
    let p = ui.painter();
    let at = rect.center();
    p.circle(at, 18.0, t.col.panel, Stroke::new(3.0, t.col.rule));
    if part > 0.0 {
        arc(p, at, 18.0, part as f32, t.col.accent);
    }
    icons::paint(p, Icon::Cross, icons::square(at, 17.0), t.col.soft);
    focus_ring(ui, &r, rect, 22);
    if with_words || part > 0.0 {
        let wide = 112.0;
        let (left, align) = match places.mirrored {
            false => (places.fold.left() - wide - 6.0, Align2::RIGHT_CENTER),
            true => (places.fold.right() + 6.0, Align2::LEFT_CENTER),
        };
        let room = egui::Rect::from_min_size(pos2(left, rect.top()), vec2(wide, rect.height()));
        if part > 0.0 {
            p.rect_filled(room, CornerRadius::same(8), t.col.ground);
        }
        let font = theme::regular(15.0);
        words::line(p, room, align, "hold to leave", font, t.col.soft);
    }
    // A screen reader presses without a pointer and cannot hold.
    let spoken = ui.input(|i| i.has_accesskit_action_request(r.id, egui::accesskit::Action::Click));
    part >= 1.0 || spoken
}

fn arc(p: &Painter, at: Pos2, radius: f32, part: f32, colour: Color32) {
    let steps = (40.0 * part).ceil() as usize;
    let pts = (0..=steps).map(|i| {
        let a = -std::f32::consts::FRAC_PI_2
            + std::f32::consts::TAU * part * i as f32 / steps.max(1) as f32;
        at + radius * vec2(a.cos(), a.sin())
    });
    p.add(Shape::line(pts.collect(), Stroke::new(5.0, colour)));
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_holding_on_leaves_and_letting_go_begins_anew() {
        let mut hold = Hold::default();
        assert_eq!(hold.part(true, 5.0), 0.0);
        assert!(hold.part(true, 5.0 + HOLD * 0.9) < 1.0);
        assert_eq!(hold.part(false, 5.0 + HOLD * 0.95), 0.0);
        assert_eq!(hold.part(true, 5.0 + HOLD), 0.0);
        assert_eq!(hold.part(true, 5.0 + HOLD * 2.0), 1.0);
    }
}
