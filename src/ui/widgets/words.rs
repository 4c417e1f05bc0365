//! Words painted at fixed places: cut off with an ellipsis, or broken into few lines.

use std::sync::Arc;

use egui::text::{LayoutJob, TextFormat, TextWrapping};
use egui::{Align, Align2, Color32, FontId, Galley, Painter, Pos2, Rect, RichText, Ui};

use crate::ui::theme;

/// Words laid out from the left in at most `rows` lines of a width, the last cut off with an
/// ellipsis.
pub fn lay(
    p: &Painter,
    words: &str,
    font: FontId,
    colour: Color32,
    width: f32,
    rows: usize,
) -> Arc<Galley> {
    p.layout_job(job(words, font, colour, width, rows))
}

/// The same, each line centred on where it is painted.
pub fn lay_centred(
    p: &Painter,
    words: &str,
    font: FontId,
    colour: Color32,
    width: f32,
    rows: usize,
) -> Arc<Galley> {
    let mut job = job(words, font, colour, width, rows);
    job.halign = Align::Center;
    p.layout_job(job)
}

fn job(words: &str, font: FontId, colour: Color32, width: f32, rows: usize) -> LayoutJob {
    let mut job = LayoutJob::single_section(words.to_owned(), TextFormat::simple(font, colour));
    job.break_on_newline = rows > 1;
    job.wrap = TextWrapping {
        max_width: width.max(8.0),
        max_rows: rows,
        break_anywhere: rows == 1,
        overflow_character: Some('…'),
    };
    job
}

/// One line of words in a rectangle, cut off where it ends; gives the place it took.
pub fn line(
    p: &Painter,
    rect: Rect,
    align: Align2,
    words: &str,
    font: FontId,
    colour: Color32,
) -> Rect {
    let galley = lay(p, words, font, colour, rect.width(), 1);
    let place = align.align_size_within_rect(galley.size(), rect);
    p.galley(place.min, galley, colour);
    place
}

/// Words centred under one another in a rectangle: large if they fit, else smaller, else cut off.
pub fn label(p: &Painter, rect: Rect, words: &str, sizes: &[f32], rows: usize, colour: Color32) {
    let mut last = None;
    for &size in sizes {
        let g = lay_centred(p, words, theme::bold(size), colour, rect.width(), rows);
        let good =
            !g.elided && g.size().y <= rect.height() + 1.0 && fits(p, words, size, rect.width());
        last = Some(g);
        if good {
            break;
        }
    }
    if let Some(g) = last {
        let top = rect.center().y - g.size().y / 2.0;
        p.galley(Pos2::new(rect.center().x, top), g, colour);
    }
}

/// Whether every single word in bold is no wider than this.
pub fn fits(p: &Painter, words: &str, size: f32, width: f32) -> bool {
    words.split_whitespace().all(|w| {
        p.layout_no_wrap(w.to_owned(), theme::bold(size), Color32::PLACEHOLDER)
            .size()
            .x
            <= width
    })
}

/// How many lines these words need at a size and width.
pub fn rows_needed(p: &Painter, words: &str, font: FontId, width: f32) -> usize {
    lay_centred(p, words, font, Color32::PLACEHOLDER, width, 3)
        .rows
        .len()
}

/// A heading that a screen reader finds.
pub fn heading(ui: &mut Ui, words: &str, size: f32) {
    let t = theme::of(ui.ctx());
    ui.label(
        RichText::new(words)
            .font(theme::bold(size))
            .color(t.col.ink),
    );
}

/// A paragraph in soft ink.
pub fn soft(ui: &mut Ui, words: &str) {
    let t = theme::of(ui.ctx());
    ui.label(
        RichText::new(words)
            .font(theme::regular(15.0))
            .color(t.col.soft),
    );
}

/// A paragraph in full ink.
pub fn body(ui: &mut Ui, words: &str) {
    let t = theme::of(ui.ctx());
    ui.label(
        RichText::new(words)
            .font(theme::regular(16.0))
            .color(t.col.ink),
    );
}
