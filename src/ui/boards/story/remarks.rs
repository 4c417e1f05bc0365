//! What there is to say about a page and its sentences: where they do not agree with board or plan,
//! and words a reader may trip over. Thoughts for whoever writes; nothing is stopped.

use egui::text::{LayoutJob, TextFormat};
use egui::{Label, Ui, vec2};

use super::sentences::On;
use super::{StoryState, by_hand};
use crate::model::ids::StepRef;
use crate::story::against::Mismatch;
use crate::story::measure::Remark;
use crate::story::{Line, StoryPage};
use crate::ui::desk::Desk;
use crate::ui::icons;
use crate::ui::theme;
use crate::ui::widgets::button::{Button, Weight};
use crate::ui::widgets::{form, words};
use crate::workbench::story::ToldStory;

/// Remarks at a sentence that are shown at once.
const REMARKS: usize = 2;

/// In what the page does not agree with the board.
pub fn disagreements(ui: &mut Ui, on: On<'_>) {
    let about = |step: &_| on.page.steps().any(|s| s == *step);
    for m in &on.told.mismatches {
        let says = match m {
            Mismatch::Missing(step) if on.index == 0 && !told_anywhere(on.told, *step) => {
                "A step of the board has no page in this story."
            }
            Mismatch::Extra(step) if about(step) => "This step is not on the board.",
            Mismatch::Order(step) if about(step) => "On the board this step stands elsewhere.",
            Mismatch::Words(step) if about(step) => "The board has other words for this step.",
            Mismatch::Picture(step) if about(step) => {
                "The board has another picture for this step."
            }
            _ => continue,
        };
        note(ui, "", says);
    }
}

fn told_anywhere(told: &ToldStory, step: StepRef) -> bool {
    let mut pages = told.story.pages.iter();
    pages.any(|p| p.steps().any(|s| s == step))
}

/// A thought for whoever writes: a hollow diamond, words found, what to say of them.
pub fn note(ui: &mut Ui, found: &str, says: &str) {
    let t = theme::of(ui.ctx());
    ui.horizontal_top(|ui| {
        ui.spacing_mut().item_spacing.x = 8.0;
        let (_, at) = ui.allocate_space(vec2(18.0, 20.0));
        let (ink, ground) = (t.col.soft, t.col.ground);
        icons::diamond(ui.painter(), at.center(), 7.0, false, ink, ground);
        let mut job = LayoutJob::default();
        if !found.is_empty() {
            let bold = TextFormat::simple(theme::bold(15.0), t.col.ink);
            job.append(&format!("“{found}” "), 0.0, bold);
        }
        let plain = TextFormat::simple(theme::regular(15.0), t.col.soft);
        job.append(says, 0.0, plain);
        ui.add(Label::new(job).wrap());
    });
}

/// What the program says now, where the plan has changed since someone wrote.
pub fn stale(ui: &mut Ui, desk: &mut Desk<'_>, page: &StoryPage, line: &Line) {
    let Some(told) = line.told.as_ref().filter(|_| line.stale) else {
        return;
    };
    let says =
        format!("The plan has changed since this was written. The program says now: “{told}”");
    form::slip(ui, |ui| {
        words::body(ui, &says);
        ui.horizontal_wrapped(|ui| {
            let b = Button::new(("take", page.at, line.at), "Take it")
                .name("Take what the program says now");
            if b.show(ui).clicked() {
                let mut words = by_hand::words(desk, page.at);
                words.take_back(line.at);
                by_hand::put(desk, page.at, words);
            }
            let b = Button::new(("keep", page.at, line.at), "Keep mine")
                .weight(Weight::Quiet)
                .tip("It still fits");
            if b.show(ui).clicked() {
                let mut words = by_hand::words(desk, page.at);
                by_hand::keep(&mut words, line);
                by_hand::put(desk, page.at, words);
            }
        });
    });
}

/// An activity that a sentence names and the board does not show.
pub fn absent(ui: &mut Ui, on: On<'_>, line: &Line) {
    for m in &on.told.mismatches {
        if let Mismatch::NotOnBoard(page, at, label) = m
            && (*page, *at) == (on.page.at, line.at)
        {
            note(ui, label, "is not on the board today.");
        }
    }
}

/// Words a reader may trip over.
pub fn remarked(ui: &mut Ui, state: &mut StoryState, line: &Line, remarks: &[Remark]) {
    let open = state.more == Some(line.at);
    let shown = if open { remarks.len() } else { REMARKS };
    for r in remarks.iter().take(shown) {
        note(ui, &r.words, &format!("{} {}", r.why, r.better));
    }
    let more = remarks.len().saturating_sub(REMARKS);
    if more == 0 {
        return;
    }
    let label = if open {
        "Fewer".to_owned()
    } else {
        format!("{more} more")
    };
    let b = Button::new(("remarks", line.at), &label)
        .name("All that there is to say about this sentence")
        .weight(Weight::Quiet);
    if b.show(ui).clicked() {
        state.more = (!open).then_some(line.at);
    }
}
