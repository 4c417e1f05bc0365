//! What was let go where nothing comes of it slides back to where it was taken.

use egui::{Context, Pos2};

use crate::ui::theme;

/// Where something is now that was let go at a place at a time and is on its way to another;
/// nothing once it is there, and nothing where the window is still.
pub fn way_back(ctx: &Context, since: f64, from: Pos2, to: Pos2) -> Option<Pos2> {
    let time = f64::from(theme::of(ctx).slide());
    let gone = (ctx.input(|i| i.time) - since) / time.max(f64::EPSILON);
    if gone >= 1.0 {
        return None;
    }
    ctx.request_repaint();
    // Fast away from the hand, and gently down.
    let part = 1.0 - (1.0 - gone as f32).powi(2);
    Some(from.lerp(to, part))
}
