//! The story side of Boards: the page as it will be printed at the left, its sentences at the right,
//! and below them how they read, what is new since last time and the second language.

mod by_hand;
mod choose;
mod measures;
mod more;
mod page;
mod remarks;
mod second;
mod sentences;
mod since;

use egui::{Align2, Id, Key, Modifiers, Rect, Ui, Vec2, pos2, vec2};

use super::header;
use crate::model::ids::ParticipantId;
use crate::model::rewriting::{LineRef, PageRef};
use crate::ui::actions::Action;
use crate::ui::desk::Desk;
use crate::ui::icons::Icon;
use crate::ui::print::Pages;
use crate::ui::theme;
use crate::ui::widgets::card::plate;
use crate::ui::widgets::{form, within, words};
use crate::workbench::story::ToldStory;

/// Below this width what is chosen above stands among the sentences.
const ROOMY: f32 = 900.0;
/// Pictures of single lines that are kept.
const LINES: usize = 24;

/// What the side remembers.
pub struct StoryState {
    /// The page that is read.
    at: Option<PageRef>,
    /// Which of its leaves.
    leaf: usize,
    /// The page that is read from the next frame on, with the leaf: what is typed on this one counts
    /// first.
    turn: Option<(PageRef, usize)>,
    /// The sentence that gets the keyboard in this frame.
    focus: Option<LineRef>,
    /// The one that gets it in the next: a click elsewhere takes it away in its own frame.
    next_focus: Option<LineRef>,
    /// The sentence that had the keyboard last, whose leaf is shown.
    followed: Option<LineRef>,
    /// Whether a sentence is being added, and whether that begins in this frame.
    adding: Option<bool>,
    /// The sentence with all its remarks shown.
    more: Option<LineRef>,
    /// Whose story was last seen.
    whose: Option<ParticipantId>,
    pages: Pages,
    lines: Pages,
}

impl Default for StoryState {
    fn default() -> Self {
        Self {
            at: None,
            leaf: 0,
            turn: None,
            focus: None,
            next_focus: None,
            followed: None,
            adding: None,
            more: None,
            whose: None,
            pages: Pages::default(),
            lines: Pages::keeping(LINES),
        }
    }
}

impl StoryState {
    /// Reads a page from the next frame on.
    pub fn select(&mut self, at: PageRef) {
        self.turn = Some((at, 0));
    }

    /// The page that is read, counted from zero; the first where it is no longer told.
    fn settle(&mut self, told: &ToldStory) -> usize {
        if self.whose != Some(told.who) {
            let keeps = self.turn;
            (self.at, self.leaf) = (None, 0);
            (self.adding, self.more, self.followed) = (None, None, None);
            self.whose = Some(told.who);
            self.turn = keeps;
        }
        if let Some((at, leaf)) = self.turn.take().filter(|(at, _)| told.page(*at).is_some()) {
            if self.at != Some(at) {
                (self.adding, self.more, self.followed) = (None, None, None);
            }
            (self.at, self.leaf) = (Some(at), leaf);
        }
        self.focus = self.next_focus.take();
        let found = self.at.and_then(|at| told.page(at));
        let (i, page) = found.unwrap_or((0, &told.story.pages[0]));
        self.at = Some(page.at);
        let leaves = told.places.get(i).map_or(0, |(first, last)| last - first);
        self.leaf = self.leaf.min(leaves);
        i
    }

    /// Which of all leaves is shown.
    fn leaf_of(&self, told: &ToldStory, page: usize) -> usize {
        told.places.get(page).map_or(0, |(first, _)| *first) + self.leaf
    }

    /// Turns to a leaf, counted over the whole story.
    fn turn_to(&mut self, told: &ToldStory, leaf: usize) {
        if let Some(i) = told.page_of(leaf) {
            self.turn = Some((told.story.pages[i].at, leaf - told.places[i].0));
        }
    }
}

/// Shows the side.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut StoryState, rect: Rect) {
    let head = Rect::from_min_size(rect.min, vec2(rect.width(), theme::CONTROL));
    let Some(told) = desk.view.story.filter(|t| !t.story.pages.is_empty()) else {
        let soft = theme::of(ui.ctx()).col.soft;
        let says = "For everyone who comes, the story of their day is told here.";
        let g = words::lay(ui.painter(), says, theme::regular(16.0), soft, 420.0, 4);
        ui.painter().galley(rect.min + vec2(4.0, 8.0), g, soft);
        return;
    };
    let page = state.settle(told);
    page_keys(ui, state, told, page);
    within(ui, "story-head", head, |ui| above(ui, desk, told, head));
    let below = rect.with_min_y(head.bottom() + 10.0);
    let (left, right) = columns(below);
    within(ui, "story-page", left, |ui| {
        page::show(ui, desk, state, told, left)
    });
    let narrow = rect.width() < ROOMY;
    // Each page is scrolled for itself, so that a fresh one begins above.
    let salt = format!("story-words {:?} {:?}", told.who, state.at);
    within(ui, "story-words", right, |ui| {
        form::scroll(ui, &salt, right, |ui| {
            ui.set_max_width(ui.available_width() - 4.0);
            beside(ui, desk, state, (told, page), narrow);
        });
    });
}

/// What stands beside the page, from above to below.
fn beside(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    state: &mut StoryState,
    (told, page): (&ToldStory, usize),
    narrow: bool,
) {
    sentences::show(ui, desk, state, told, page);
    if narrow {
        section(ui, "How it is told");
        choose::blocks(ui, desk);
    }
    measures::show(ui, told, page);
    since::show(ui, told);
    second::show(ui, desk, told);
    ui.add_space(12.0);
}

/// A quiet heading after a thin line.
fn section(ui: &mut Ui, name: &str) {
    let t = theme::of(ui.ctx());
    ui.add_space(10.0);
    let (_, rect) = ui.allocate_space(vec2(ui.available_width(), 1.0));
    let line = egui::Stroke::new(t.line(), t.col.rule);
    ui.painter().hline(rect.x_range(), rect.center().y, line);
    ui.add_space(4.0);
    words::heading(ui, name, 18.0);
}

/// The page as wide as its height allows, the sentences in what is left.
fn columns(rect: Rect) -> (Rect, Rect) {
    let tall = (rect.height() - page::FOOT - 24.0) / 1.414 + 28.0;
    let most = (rect.width() * 0.4).min(560.0);
    let width = tall.min(most).max(192.0);
    let left = Rect::from_min_size(rect.min, vec2(width, rect.height()));
    let gap = if rect.width() < ROOMY { 12.0 } else { 20.0 };
    let right = Rect::from_min_max(pos2(left.right() + gap, rect.top()), rect.max);
    (left, right)
}

/// Page keys turn the pages wherever the keyboard is; what is being typed counts first.
fn page_keys(ui: &Ui, state: &mut StoryState, told: &ToldStory, page: usize) {
    let pressed = |key| ui.input_mut(|i| i.consume_key(Modifiers::NONE, key));
    let (on, back) = (pressed(Key::PageDown), pressed(Key::PageUp));
    if on == back {
        return;
    }
    let last = told.leaves.len().saturating_sub(1);
    let leaf = state.leaf_of(told, page);
    let to = if on {
        (leaf + 1).min(last)
    } else {
        leaf.saturating_sub(1)
    };
    if to != leaf {
        state.turn_to(told, to);
        page::take_keyboard(ui, to);
        ui.ctx().request_repaint();
    }
}

/// Above: whose story it is, how it is told, undo and redo.
fn above(ui: &mut Ui, desk: &mut Desk<'_>, told: &ToldStory, rect: Rect) {
    let Some(person) = desk.view.participant else {
        return;
    };
    let mut right = rect.right();
    for (action, icon) in [(Action::Redo, Icon::Redo), (Action::Undo, Icon::Undo)] {
        right = header::undo_button(ui, desk, action, icon, true, (right, rect.top())) - 8.0;
    }
    if rect.width() >= ROOMY {
        right = choose::line(ui, desk, (right - 8.0, rect.top()));
    }
    let t = theme::of(ui.ctx());
    let mark = Rect::from_min_size(rect.min, Vec2::splat(theme::CONTROL));
    plate(ui.painter(), &t, mark);
    desk.pictures
        .mark(ui.painter(), mark.shrink(8.0), &person.mark);
    let text = Rect::from_min_max(
        pos2(mark.right() + 12.0, rect.top() - 4.0),
        pos2(right - 12.0, rect.bottom() + 2.0),
    );
    if text.width() < 40.0 {
        return;
    }
    let (upper, lower) = text.split_top_bottom_at_fraction(0.6);
    let name = header::possessive(&person.name, "story");
    let (bold, regular) = (theme::bold(24.0), theme::regular(15.0));
    let p = ui.painter();
    words::line(p, upper, Align2::LEFT_CENTER, &name, bold, t.col.ink);
    let how = summary(told);
    words::line(p, lower, Align2::LEFT_CENTER, &how, regular, t.col.soft);
}

/// "12 pages, 2 of them changed by hand".
fn summary(told: &ToldStory) -> String {
    let n = told.leaves.len();
    let by_hand = told.story.pages.iter().filter(|p| p.is_rewritten()).count();
    let pages = if n == 1 { "page" } else { "pages" };
    match by_hand {
        0 => format!("{n} {pages}, as told"),
        k => format!("{n} {pages}, {k} changed by hand"),
    }
}

/// The identity of a sentence's field.
fn line_id(at: PageRef, line: LineRef) -> Id {
    Id::unique(("story-line", at, line))
}
