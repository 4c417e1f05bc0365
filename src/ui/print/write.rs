//! The button that writes the sheets, and how far writing has come.

use egui::{Align2, CornerRadius, Id, Rect, Role, Sense, StrokeKind, Ui, WidgetInfo, pos2, vec2};

use crate::ui::desk::Desk;
use crate::ui::theme;
use crate::ui::widgets::button::{Button, Weight};
use crate::ui::widgets::words;
use crate::workbench::command::Command;

/// The main button; gives the rectangle back while something is being written.
pub fn button(ui: &mut Ui, desk: &mut Desk<'_>, rect: Rect) -> Option<Rect> {
    if desk.view.job.is_some() {
        return Some(rect);
    }
    let pages: usize = desk.view.sheets.iter().map(|s| s.pages.len()).sum();
    let laying = desk.view.laying;
    let can = (pages > 0 || laying) && !desk.view.print.formats.is_empty();
    let words = match (pages, desk.view.print.formats.is_empty()) {
        (_, false) if laying => "Write…".to_owned(),
        (0, _) if desk.view.print.kinds.is_empty() => "Nothing chosen".to_owned(),
        (0, _) => "Nothing to print".to_owned(),
        (_, true) => "Choose a kind of file".to_owned(),
        (1, _) => "Write 1 page…".to_owned(),
        (n, _) => format!("Write {n} pages…"),
    };
    let b = Button::new("write", &words)
        .weight(Weight::Main)
        .enabled(can)
        .height(theme::MAIN);
    if b.tip("Into a folder, as files to print")
        .show_at(ui, rect)
        .clicked()
    {
        desk.ask(Command::AskPrintFolder);
    }
    None
}

/// How far writing has come, with a way to stop it.
pub fn progress(ui: &mut Ui, desk: &mut Desk<'_>, rect: Rect) {
    let Some(job) = desk.view.job else { return };
    let t = theme::of(ui.ctx());
    let stop = Rect::from_min_max(pos2(rect.right() - 96.0, rect.top()), rect.max);
    let bar = Rect::from_min_max(rect.min, pos2(stop.left() - 8.0, rect.bottom()));
    let r = ui.interact(bar, Id::unique("progress"), Sense::hover());
    let words = format!("{} of {}: {}", job.done, job.total, job.doing);
    r.widget_info(|| WidgetInfo::labeled(Role::ProgressIndicator, true, &words));
    let p = ui.painter();
    let corner = CornerRadius::same(theme::R_CONTROL);
    p.rect(bar, corner, t.col.panel, t.edge(), StrokeKind::Inside);
    let part = job.done as f32 / job.total.max(1) as f32;
    let done = Rect::from_min_size(
        bar.min,
        vec2(bar.width() * part.clamp(0.0, 1.0), bar.height()),
    );
    p.rect_filled(done.shrink(3.0), CornerRadius::same(9), t.col.tint);
    words::line(
        p,
        bar.shrink2(vec2(12.0, 0.0)),
        Align2::LEFT_CENTER,
        &words,
        theme::regular(15.0),
        t.col.ink,
    );
    if Button::new("stop-writing", "Stop")
        .height(theme::MAIN)
        .show_at(ui, stop)
        .clicked()
    {
        desk.ask(Command::CancelJob);
    }
}
