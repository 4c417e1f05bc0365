//! Below the sentences of a page: those that were hidden, one more to add; or, in a story without
//! sentences, the words of the page.

use egui::{Align2, Id, Rect, Ui, pos2, vec2};

use super::sentences::{On, small};
use super::{StoryState, by_hand};
use crate::story::StoryPage;
use crate::ui::desk::Desk;
use crate::ui::icons::Icon;
use crate::ui::theme;
use crate::ui::widgets::button::{Button, Weight};
use crate::ui::widgets::field::Field;
use crate::ui::widgets::{form, words};

/// A page of a story in pictures or single words.
pub fn without(ui: &mut Ui, on: On<'_>) {
    let depth = on.told.story.depth.label().to_lowercase();
    let says = format!("This story is told in {depth}: it has no sentences here.");
    words::soft(ui, &says);
    let labels = on.page.lines.iter().filter_map(|l| l.card.as_ref());
    let small = on.page.small.iter().map(|s| &s.card);
    let all: Vec<&str> = small.chain(labels).map(|c| c.label.as_str()).collect();
    if all.is_empty() {
        words::body(ui, &format!("Its words: {}", on.page.heading));
    } else {
        words::body(ui, &format!("Its words: {}", all.join(", ")));
    }
}

/// Sentences that a person hid.
pub fn hidden(ui: &mut Ui, desk: &mut Desk<'_>, page: &StoryPage) {
    if page.hidden.is_empty() {
        return;
    }
    let t = theme::of(ui.ctx());
    small(ui, 2.0, "Hidden on this page");
    for line in &page.hidden {
        let width = ui.available_width();
        let (_, row) = ui.allocate_space(vec2(width, theme::CONTROL));
        let name = format!("Show: {}", line.text);
        let b = Button::new(("show", page.at, line.at), "Show")
            .name(&name)
            .icon(Icon::Plus)
            .weight(Weight::Quiet);
        let place = row.with_min_x(row.right() - b.needs(ui));
        let room = Rect::from_min_max(
            row.min + vec2(13.0, 0.0),
            pos2(place.left() - 8.0, row.bottom()),
        );
        form::dashed(ui, row.with_max_x(place.left() - 4.0));
        let font = theme::regular(16.0);
        let soft = t.col.soft;
        words::line(
            ui.painter(),
            room,
            Align2::LEFT_CENTER,
            &line.text,
            font,
            soft,
        );
        if b.show_at(ui, place).clicked() {
            let mut words = by_hand::words(desk, page.at);
            words.hidden.remove(&line.at);
            by_hand::put(desk, page.at, words);
        }
    }
    ui.add_space(4.0);
}

/// A field for one more sentence, or the buttons below.
pub fn adding(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut StoryState, page: &StoryPage) {
    let id = Id::unique(("story-added", page.at));
    if let Some(begins) = state.adding {
        let width = ui.available_width();
        let hint = "A sentence of your own; Enter adds it";
        let field = Field::new(id, "A sentence of your own", "")
            .hint(hint)
            .wraps();
        let height = field.wrapped_height(ui, desk.drafts, width);
        let (_, place) = ui.allocate_space(vec2(width, height));
        if begins {
            ui.memory_mut(|m| m.request_focus(id));
            state.adding = Some(false);
        }
        if let Some(text) = field.show_at(ui, desk.drafts, place) {
            if !text.trim().is_empty() {
                let mut words = by_hand::words(desk, page.at);
                state.next_focus = Some(by_hand::add(&mut words, page, &text));
                by_hand::put(desk, page.at, words);
            }
            state.adding = None;
        } else if !ui.memory(|m| m.has_focus(id)) {
            state.adding = None;
        }
        return;
    }
    ui.horizontal_wrapped(|ui| {
        let b = Button::new("add-sentence", "Add a sentence").icon(Icon::Plus);
        if b.show(ui).clicked() {
            state.adding = Some(true);
            ui.ctx().request_repaint();
        }
        if desk.view.story.is_some_and(|t| t.story.is_rewritten()) {
            let b = Button::new("story-as-told", "Whole story as told")
                .weight(Weight::Quiet)
                .tip("Takes back all that was changed by hand in this story");
            if b.show(ui).clicked() {
                by_hand::all_as_told(desk);
            }
        }
    });
}
