//! At the right of the bar: the next thing of the evening, and whether all is saved.

use egui::{Align2, CursorIcon, Id, Rect, Role, Sense, Ui, WidgetInfo, vec2};

use super::Bar;
use crate::ui::actions::Action;
use crate::ui::desk::Desk;
use crate::ui::icons;
use crate::ui::icons::Icon;
use crate::ui::strand::paint;
use crate::ui::theme;
use crate::ui::widgets::focus_ring;
use crate::ui::widgets::words;
use crate::workbench::next::next_thing;

/// The next thing of the evening, as the end of the strand: a press leads there.
pub(super) fn show_next(ui: &mut Ui, desk: &mut Desk<'_>, bar: &Bar<'_>, rect: Rect, small: bool) {
    let t = theme::of(ui.ctx());
    let next = next_thing(desk.view, bar.led_to);
    let r = ui.interact(rect, Id::unique("next-thing"), Sense::click());
    let name = format!("Next: {}", next.says);
    r.widget_info(|| WidgetInfo::labeled(Role::Button, true, &name));
    let p = ui.painter();
    let corner = egui::CornerRadius::same(theme::R_CONTROL);
    let fill = if r.hovered() { t.col.tint } else { t.col.panel };
    p.rect(rect, corner, fill, t.edge(), egui::StrokeKind::Inside);
    if small {
        icons::paint(
            p,
            Icon::Right,
            icons::square(rect.center(), 20.0),
            t.col.accent,
        );
    } else {
        let text = rect.shrink2(vec2(11.0, 3.0));
        let (upper, lower) = text.split_top_bottom_at_fraction(0.46);
        let soft = theme::regular(14.0);
        words::line(p, upper, Align2::LEFT_CENTER, "Next (F4)", soft, t.col.soft);
        let fits = |s: &f32| words::rows_needed(p, &next.says, theme::bold(*s), lower.width()) < 2;
        let size = [16.0, 15.0].into_iter().find(fits).unwrap_or(14.0);
        let sign = icons::square(upper.right_center() - vec2(7.0, 0.0), 14.0);
        icons::paint(p, Icon::Right, sign, t.col.accent);
        words::line(
            p,
            lower,
            Align2::LEFT_CENTER,
            &next.says,
            theme::bold(size),
            t.col.ink,
        );
    }
    focus_ring(ui, &r, rect, theme::R_CONTROL);
    let r = r.on_hover_cursor(CursorIcon::PointingHand);
    if r.on_hover_text(format!("{name} (F4)")).clicked() {
        desk.actions.push(Action::Next);
    }
}

/// Whether everything is saved, as a knot or an open ring with words.
pub(super) fn show_saved(ui: &mut Ui, desk: &mut Desk<'_>, rect: Rect, small: bool) {
    let t = theme::of(ui.ctx());
    let modified = desk.view.modified;
    let (first, second) = match (modified, desk.view.path) {
        (true, Some(_)) => ("Not saved", "Ctrl+S"),
        (true, None) => ("Not saved", "no file yet"),
        (false, Some(_)) => ("Saved", "all of it"),
        (false, None) => ("No file", "yet"),
    };
    let r = ui.interact(rect, Id::unique("saved"), Sense::click());
    r.widget_info(|| WidgetInfo::labeled(Role::Button, true, format!("{first}: {second}. Save")));
    let p = ui.painter();
    if r.hovered() {
        p.rect(
            rect,
            egui::CornerRadius::same(theme::R_CONTROL),
            t.col.panel,
            t.edge(),
            egui::StrokeKind::Inside,
        );
    }
    let at = if small {
        rect.center()
    } else {
        rect.left_center() + vec2(14.0, 0.0)
    };
    if modified {
        paint::ring(p, &t.col, at, 7.0, t.col.ground);
    } else {
        paint::knot(p, &t, at, 8.0);
    }
    if !small {
        let text = rect.with_min_x(rect.left() + 30.0);
        let (upper, lower) = text.split_top_bottom_at_fraction(0.5);
        words::line(
            p,
            upper,
            Align2::LEFT_BOTTOM,
            first,
            theme::bold(15.0),
            t.col.ink,
        );
        words::line(
            p,
            lower,
            Align2::LEFT_TOP,
            second,
            theme::regular(14.0),
            t.col.soft,
        );
    }
    focus_ring(ui, &r, rect, theme::R_CONTROL);
    let r = r.on_hover_text(format!("{first}. Save the club (Ctrl+S)"));
    if r.clicked() {
        desk.actions.push(Action::Save);
    }
}
