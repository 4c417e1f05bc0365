//! Words of the help laid out: names bold, keys on a small ground, what is looked for marked.

use std::sync::Arc;

use egui::text::{LayoutJob, TextFormat};
use egui::{Galley, Painter, Role, Sense, Stroke, Ui, WidgetInfo, vec2};

use super::find::plain;
use super::text::{Means, Run};
use crate::ui::theme::{self, Theme};

/// Size of what is read.
pub const BODY: f32 = 17.0;

/// Runs of words broken into lines of a width.
pub fn lay(p: &Painter, t: &Theme, runs: &[Run], wanted: &[String], width: f32) -> Arc<Galley> {
    let mut job = LayoutJob::default();
    for run in runs {
        let format = match run.means {
            Means::Words => simple(t, theme::regular(BODY)),
            Means::Name => simple(t, theme::bold(BODY)),
            Means::Key => TextFormat {
                background: t.col.well,
                expand_bg: 3.0,
                ..simple(t, theme::bold(BODY - 1.0))
            },
        };
        append(&mut job, t, run.words, &format, wanted);
    }
    job.wrap.max_width = width;
    p.layout_job(job)
}

/// The same of words that are meant in one way.
pub fn lay_plain(
    p: &Painter,
    t: &Theme,
    (words, font): (&str, egui::FontId),
    wanted: &[String],
    width: f32,
) -> Arc<Galley> {
    let mut job = LayoutJob::default();
    append(&mut job, t, words, &simple(t, font), wanted);
    job.wrap.max_width = width;
    p.layout_job(job)
}

fn simple(t: &Theme, font: egui::FontId) -> TextFormat {
    TextFormat::simple(font, t.col.ink)
}

/// Words with those that are looked for marked.
fn append(job: &mut LayoutJob, t: &Theme, words: &str, format: &TextFormat, wanted: &[String]) {
    for word in words.split_inclusive(' ') {
        let (bare, after) = match word.strip_suffix(' ') {
            Some(bare) => (bare, " "),
            None => (word, ""),
        };
        let looked_for = !wanted.is_empty() && {
            let bare = plain(bare);
            wanted.iter().any(|w| bare.contains(w.as_str()))
        };
        if looked_for {
            let marked = TextFormat {
                color: t.col.accent,
                background: t.col.tint,
                underline: Stroke::new(1.5, t.col.accent),
                ..format.clone()
            };
            job.append(bare, 0.0, marked);
            job.append(after, 0.0, format.clone());
        } else {
            job.append(word, 0.0, format.clone());
        }
    }
}

/// A heading that a screen reader finds.
pub fn heading(ui: &mut Ui, words: &str, size: f32, wanted: &[String]) {
    let t = theme::of(ui.ctx());
    let width = ui.available_width();
    let g = lay_plain(ui.painter(), &t, (words, theme::bold(size)), wanted, width);
    let (rect, r) = ui.allocate_exact_size(vec2(width, g.size().y), Sense::hover());
    r.widget_info(|| WidgetInfo::labeled(Role::Heading, true, words));
    ui.painter().galley(rect.min, g, t.col.ink);
}
