//! A number on a line: a knob to drag, arrows to turn, a double click to put it back.

use egui::{Align2, CursorIcon, Id, Key, Modifiers, Sense, Stroke, Ui, WidgetInfo, pos2, vec2};

use super::{focus_ring, words};
use crate::ui::{regions, theme};

/// What a slider needs to know.
pub struct Slide<'a> {
    /// Its id.
    pub id: Id,
    /// Its name.
    pub label: &'a str,
    /// What stands after the number.
    pub unit: &'a str,
    /// Least and greatest.
    pub range: (f32, f32),
    /// Where a double click puts it.
    pub rest: f32,
}

/// Room for the name before the line, and for the number behind it.
const NAME: f32 = 92.0;
const NUMBER: f32 = 56.0;

/// A slider as wide as is left; gives the new number.
pub fn slider(ui: &mut Ui, s: &Slide<'_>, value: f32) -> Option<f32> {
    let t = theme::of(ui.ctx());
    let (_, rect) = ui.allocate_space(vec2(ui.available_width(), theme::CONTROL));
    let r = ui.interact(rect, s.id, Sense::click_and_drag());
    let (least, most) = s.range;
    r.widget_info(|| WidgetInfo::slider(true, f64::from(value), s.label));
    let left = rect.left() + NAME;
    let line = left..=rect.right() - NUMBER;
    let (from, to) = (*line.start() + 10.0, *line.end() - 10.0);
    let mut next = value;
    if let Some(at) = r
        .interact_pointer_pos()
        .filter(|_| r.dragged() || r.clicked())
    {
        next = least + (at.x - from) / (to - from).max(1.0) * (most - least);
    }
    if r.double_clicked() {
        next = s.rest;
    }
    if r.has_focus() {
        regions::keep_arrows(ui, r.id);
        let press = |key| ui.input_mut(|i| i.count_and_consume_key(Modifiers::NONE, key)) as f32;
        let step = (most - least) / 100.0;
        next += (press(Key::ArrowRight) + press(Key::ArrowUp)) * step;
        next -= (press(Key::ArrowLeft) + press(Key::ArrowDown)) * step;
    }
    // Near its rest it stays there.
    if (next - s.rest).abs() < (most - least) / 250.0 {
        next = s.rest;
    }
    let next = next.clamp(least, most);
    let p = ui.painter();
    let name = rect.with_max_x(left);
    let font = theme::bold(15.0);
    words::line(p, name, Align2::LEFT_CENTER, s.label, font, t.col.soft);
    let y = rect.center().y;
    let place = |v: f32| from + (v - least) / (most - least) * (to - from);
    p.hline(from..=to, y, Stroke::new(2.0, t.col.rule));
    p.vline(
        place(s.rest),
        y - 6.0..=y + 6.0,
        Stroke::new(2.0, t.col.rule),
    );
    let knob = pos2(place(next), y);
    let fill = if r.hovered() || r.dragged() {
        t.col.accent
    } else {
        t.col.peg
    };
    p.circle(knob, 10.0, fill, Stroke::new(2.0, t.col.panel));
    let number = format!("{next:.0}{}", s.unit);
    let end = rect.with_min_x(*line.end());
    let font = theme::regular(15.0);
    words::line(p, end, Align2::RIGHT_CENTER, &number, font, t.col.ink);
    focus_ring(ui, &r, rect, theme::R_CONTROL);
    let _ = r.on_hover_cursor(CursorIcon::PointingHand);
    (next != value).then_some(next)
}
