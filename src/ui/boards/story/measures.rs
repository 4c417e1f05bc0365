//! How the story reads, in numbers and plain words. A help for the writer; nothing is ever stopped.

use egui::{Align2, Id, Rect, Role, Sense, Ui, WidgetInfo, pos2, vec2};

use super::{remarks, section};
use crate::ui::theme;
use crate::ui::widgets::{focus_ring, words};
use crate::workbench::story::{Measures, ToldStory};

/// Height of a row of numbers.
const ROW: f32 = 27.0;
/// Below this width the names stand above the numbers.
const STACKED: f32 = 420.0;

/// A measure: its name, what it means and where it comes from, how it is said of some sentences.
type Row = (&'static str, &'static str, fn(&Measures) -> String);

const ROWS: [Row; 6] = [
    (
        "Words",
        "All words of the sentences, without headings.",
        |m| m.counts.words.to_string(),
    ),
    (
        "Sentences",
        "Guidance on stories of this kind asks for one to three on a page (common practice).",
        |m| m.counts.sentences.to_string(),
    ),
    (
        "Words a sentence",
        "On average. Short sentences with one idea each are easier to take in.",
        |m| one(m.counts.words_per_sentence()),
    ),
    (
        "Reading ease",
        "Flesch’s formula of 1948 on the length of sentences and words: the higher, the easier; 90 \
         and more is very easy. It was made for longer texts, so a short story can pass 100.",
        |m| one(m.counts.reading_ease()),
    ),
    (
        "School grade",
        "The grade in a school of the United States that could read it, by Flesch and Kincaid, \
         1975. It was made for longer texts, so a short story can fall below 0.",
        |m| one(m.counts.grade()),
    ),
    (
        "Describe to direct",
        "Sentences that tell what happens, to those that say what to do. An early rule (usually \
         given to Gray and Garand, 1993) asks for 2 to 5 for each; later handbooks for at least 2.",
        describe,
    ),
];

fn one(value: Option<f64>) -> String {
    value.map_or_else(|| "–".to_owned(), |v| format!("{v:.1}"))
}

fn describe(m: &Measures) -> String {
    let b = m.balance;
    match b.ratio() {
        Some(ratio) => format!("{} to {} ({ratio:.1})", b.describing, b.directing),
        None => format!("{} to {}", b.describing, b.directing),
    }
}

/// Shows them.
pub fn show(ui: &mut Ui, told: &ToldStory, page: usize) {
    if told.measures.counts.sentences == 0 {
        return;
    }
    section(ui, "How it reads");
    let here = told
        .each
        .get(page)
        .map_or_else(Measures::default, |p| p.measures);
    if let Some(band) = told.measures.counts.band() {
        words::soft(ui, &format!("The whole story is {band}."));
    }
    ui.spacing_mut().item_spacing.y = 0.0;
    let width = ui.available_width().min(560.0);
    let (_, top) = ui.allocate_space(vec2(width, ROW));
    let soft = theme::of(ui.ctx()).col.soft;
    for (place, says) in [(1, "This page"), (2, "Whole story")] {
        let cell = cell(top, place);
        let font = theme::bold(14.0);
        words::line(ui.painter(), cell, Align2::LEFT_CENTER, says, font, soft);
    }
    for (name, means, of) in ROWS {
        row(ui, width, (name, means), [&of(&here), &of(&told.measures)]);
    }
    ui.spacing_mut().item_spacing.y = 4.0;
    ui.add_space(6.0);
    balance(ui, told);
    for two in &told.two_words {
        let found = two.words.join("”, “");
        remarks::note(ui, &found, &format!("{} {}", two.why, two.better));
    }
}

/// What the two rules on describing and directing say.
fn balance(ui: &mut Ui, told: &ToldStory) {
    let b = told.measures.balance;
    let mut notes = b.notes().into_iter();
    let Some(counts) = notes.next() else {
        return;
    };
    let kept = b.keeps_earlier_rule() && b.keeps_later_rule();
    let rest: Vec<String> = notes.collect();
    let says = match kept {
        true => format!("{counts} Both published rules about that are kept."),
        false => format!("{counts} {}", rest.join(" ")),
    };
    words::soft(ui, &says);
}

/// The first column for the name, two for numbers; in little room the name stands above them.
fn cell(row: Rect, place: usize) -> Rect {
    let stacked = row.width() < STACKED;
    if stacked && place == 0 {
        return row.with_max_y(row.top() + ROW);
    }
    let (row, name) = match stacked {
        true => (row.with_min_y(row.bottom() - ROW), 0.0),
        false => (row, (row.width() * 0.36).min(190.0)),
    };
    let each = (row.width() - name) / 2.0;
    match place {
        0 => row.with_max_x(row.left() + name),
        n => {
            let left = row.left() + name + each * (n - 1) as f32;
            Rect::from_min_size(pos2(left, row.top()), vec2(each - 6.0, row.height()))
        }
    }
}

fn row(ui: &mut Ui, width: f32, (name, means): (&str, &str), values: [&str; 2]) {
    let t = theme::of(ui.ctx());
    let high = if width < STACKED {
        ROW * 2.0 - 5.0
    } else {
        ROW
    };
    let (_, rect) = ui.allocate_space(vec2(width, high));
    let r = ui.interact(rect, Id::unique(("measure", name)), Sense::hover());
    let says = format!("{name}: this page {}, whole story {}", values[0], values[1]);
    r.widget_info(|| WidgetInfo::labeled(Role::Label, true, &says));
    focus_ring(ui, &r, rect, theme::R_PEG);
    let p = ui.painter();
    let (font, bold) = (theme::regular(15.0), theme::bold(15.0));
    words::line(
        p,
        cell(rect, 0),
        Align2::LEFT_CENTER,
        name,
        font,
        t.col.soft,
    );
    for (i, value) in values.into_iter().enumerate() {
        let at = cell(rect, i + 1);
        words::line(p, at, Align2::LEFT_CENTER, value, bold.clone(), t.col.ink);
    }
    r.on_hover_text(means);
}
