//! Who will see a field: a sign of shape and words, never colour alone.

use egui::{Align2, CornerRadius, Rect, Stroke, StrokeKind, Ui, Vec2, vec2};

use crate::model::privacy::Class;
use crate::ui::theme;
use crate::ui::widgets::words;

/// The words beside a field.
pub const fn words_of(class: Class) -> &'static str {
    match class {
        Class::Public => "others can see it",
        Class::Helper => "one helper sees it",
        Class::Coordinator => "only you see it",
    }
}

/// The name of a field with the sign and words of its readers at the right.
pub fn name(ui: &mut Ui, label: &str, class: Class, width: f32) {
    let t = theme::of(ui.ctx());
    let (_, rect) = ui.allocate_space(vec2(width, 24.0));
    let p = ui.painter();
    let soft = t.col.soft;
    let right = words::line(
        p,
        rect,
        Align2::RIGHT_CENTER,
        words_of(class),
        theme::regular(14.0),
        soft,
    );
    let sign = Rect::from_center_size(
        egui::pos2(right.left() - 14.0, rect.center().y),
        Vec2::splat(14.0),
    );
    paint(ui, sign, class);
    let room = rect.with_max_x(sign.left() - 8.0);
    words::line(
        ui.painter(),
        room,
        Align2::LEFT_CENTER,
        label,
        theme::bold(15.0),
        soft,
    );
}

/// An open ring, a folded sheet, a closed square.
fn paint(ui: &Ui, r: Rect, class: Class) {
    let t = theme::of(ui.ctx());
    let (p, line) = (ui.painter(), Stroke::new(2.0, t.col.soft));
    match class {
        Class::Public => {
            p.circle_stroke(r.center(), 6.0, line);
        }
        Class::Helper => {
            let (left, right) = r.split_left_right_at_fraction(0.5);
            p.rect_filled(left, CornerRadius::ZERO, t.col.soft);
            p.rect_stroke(right, CornerRadius::ZERO, line, StrokeKind::Inside);
        }
        Class::Coordinator => {
            p.rect_filled(r, CornerRadius::same(2), t.col.soft);
        }
    }
}
