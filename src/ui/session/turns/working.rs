//! How far working turns out has come.

use egui::{Id, Key, Modifiers, Rect, Role, Sense, Ui, WidgetInfo, vec2};

use super::focus;
use crate::ui::desk::Desk;
use crate::ui::theme;
use crate::ui::widgets::button::Button;
use crate::ui::widgets::form::row;
use crate::ui::widgets::words;
use crate::workbench::command::Command;
use crate::workbench::turns::Arranging;

/// How far working out has come, with a way to stop it; false while nothing is worked out.
pub fn working(ui: &mut Ui, desk: &mut Desk<'_>) -> bool {
    let Some(Arranging::Working(done)) = desk.view.turns else {
        return false;
    };
    row(ui, |ui| {
        let wide = (ui.available_width() - 120.0).clamp(160.0, 420.0);
        let (_, bar) = ui.allocate_space(vec2(wide, theme::CONTROL));
        progress(ui, bar, done);
        let stopped = Button::new("turns-stop", "Cancel").show(ui).clicked();
        let escape = ui.input_mut(|i| i.consume_key(Modifiers::NONE, Key::Escape));
        if stopped || escape {
            desk.ask(Command::DropTurns);
            focus(ui, "turns-back");
        }
    });
    true
}

fn progress(ui: &Ui, bar: Rect, done: f32) {
    let t = theme::of(ui.ctx());
    let says = format!("Working it out: {:.0} %", done.clamp(0.0, 1.0) * 100.0);
    let r = ui.interact(bar, Id::unique("turns-progress"), Sense::hover());
    r.widget_info(|| WidgetInfo::labeled(Role::ProgressIndicator, true, &says));
    let p = ui.painter();
    let corner = egui::CornerRadius::same(theme::R_CONTROL);
    p.rect(bar, corner, t.col.panel, t.edge(), egui::StrokeKind::Inside);
    let full = bar.shrink(3.0);
    let part = full.with_max_x(full.left() + full.width() * done.clamp(0.0, 1.0));
    p.rect_filled(part, egui::CornerRadius::same(9), t.col.tint);
    let room = bar.shrink2(vec2(12.0, 0.0));
    let left = egui::Align2::LEFT_CENTER;
    words::line(p, room, left, &says, theme::regular(15.0), t.col.ink);
}
