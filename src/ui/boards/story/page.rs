//! The page as it will be printed, and below it the rope with a place for each page.

use egui::{Align2, CursorIcon, Id, Key, Modifiers, Rect, Role, Sense, Ui, WidgetInfo, pos2, vec2};

use super::{StoryState, line_id};
use crate::page::{Page, Role as Part, Source, hit};
use crate::story::{Line, StoryPage};
use crate::ui::desk::Desk;
use crate::ui::icons::Icon;
use crate::ui::print;
use crate::ui::regions;
use crate::ui::strand::paint;
use crate::ui::theme;
use crate::ui::widgets::button::{Button, Weight};
use crate::ui::widgets::card::{peg, well};
use crate::ui::widgets::{focus_ring, words};
use crate::units::Point;
use crate::workbench::story::ToldStory;

/// Height of the rope below the page.
pub const FOOT: f32 = 56.0;
/// Widest texture, in pixels.
const WIDEST: u32 = 2400;
/// Below this width the rope is too short for a place a page.
const ROPE: f32 = 230.0;
/// Below this distance only the page that is read has a sign on the rope.
const CLOSE: f32 = 10.0;

/// Shows page and rope.
pub fn show(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    state: &mut StoryState,
    told: &ToldStory,
    rect: Rect,
) {
    let t = theme::of(ui.ctx());
    well(ui.painter(), &t, rect);
    let Some(page) = state.at.and_then(|at| told.page(at)) else {
        return;
    };
    follow(ui, state, told, page);
    let leaf = state.leaf_of(told, page.0);
    desk.regions.add(rect, Id::unique("story-page"));
    let desk_of = rect.with_max_y(rect.bottom() - FOOT).shrink(10.0);
    let foot = Rect::from_min_max(
        pos2(rect.left() + 8.0, rect.bottom() - FOOT + 2.0),
        rect.max - vec2(8.0, 8.0),
    );
    if let Some(shown) = told.leaves.get(leaf) {
        picture(ui, state, (told, page, leaf), shown, desk_of);
    }
    rope(ui, state, told, leaf, foot);
}

/// The leaf of the sentence that is being written.
fn follow(ui: &Ui, state: &mut StoryState, told: &ToldStory, (i, page): (usize, &StoryPage)) {
    let focused = ui.memory(egui::Memory::focused);
    let line = page
        .lines
        .iter()
        .find(|l| focused == Some(line_id(page.at, l.at)));
    let now = line.map(|l| l.at);
    if now.is_some() && now != state.followed {
        let (first, last) = told.places[i];
        let holds = |leaf: &usize| line.is_some_and(|l| holds(&told.leaves[*leaf], &l.text));
        if let Some(leaf) = (first..=last).find(holds) {
            state.leaf = leaf - first;
        }
    }
    state.followed = now;
}

fn holds(leaf: &Page, sentence: &str) -> bool {
    leaf.blocks.iter().any(|b| says(b, sentence))
}

/// Whether a block of a page says a sentence.
pub fn says(block: &crate::page::Block, sentence: &str) -> bool {
    if !matches!(block.role, Part::Paragraph | Part::Heading(_)) {
        return false;
    }
    let read = |item: &crate::page::Item| match item {
        crate::page::Item::Text { line, .. } => Some(line.text.trim().to_owned()),
        _ => None,
    };
    let lines: Vec<String> = block.items.iter().filter_map(read).collect();
    // Blanks that hold words together on paper are like any other here.
    let plain = |text: &str| text.split_whitespace().collect::<Vec<_>>().join(" ");
    !lines.is_empty() && plain(&lines.join(" ")) == plain(sentence)
}

type Shown<'a> = (&'a ToldStory, (usize, &'a StoryPage), usize);

fn picture(
    ui: &mut Ui,
    state: &mut StoryState,
    (told, page, leaf): Shown<'_>,
    shown: &Page,
    room: Rect,
) {
    let (w, h) = (shown.size.w.to_mm() as f32, shown.size.h.to_mm() as f32);
    if w <= 0.0 || h <= 0.0 || room.height() < 20.0 {
        return;
    }
    let width = room.width().min(room.height() * w / h);
    let place = Rect::from_center_size(room.center(), vec2(width, width * h / w));
    let scale = ui.ctx().pixels_per_point();
    let px = ((width * scale).round() as u32).clamp(16, WIDEST);
    let key = (told.times, leaf, 0, px);
    if let Some(texture) = state.pages.get(ui.ctx(), key, shown) {
        print::paint(ui, place, &texture);
    }
    let r = ui.interact(place, Id::unique("story-page"), Sense::click());
    let count = told.leaves.len();
    let name = format!("Page {} of {count}: {}", leaf + 1, page.1.heading);
    r.widget_info(|| WidgetInfo::labeled(Role::Image, true, &name));
    focus_ring(ui, &r, place, 2);
    let at = r.hover_pos().map(|at| {
        let (x, y) = (at.x - place.left(), at.y - place.top());
        let mm = f64::from(w / width);
        Point::mm(f64::from(x) * mm, f64::from(y) * mm)
    });
    let under = at.and_then(|at| under(told, page, shown, at));
    if r.clicked() {
        match under {
            Some(Under::Line(line)) => state.next_focus = Some(line.at),
            Some(Under::Page(to, line)) => {
                state.select(to.at);
                state.next_focus = line.map(|l| l.at);
            }
            None => r.request_focus(),
        }
        ui.ctx().request_repaint();
    }
    if r.has_focus() {
        keys(ui, state, told, leaf, r.id);
    }
    if under.is_some() {
        r.on_hover_cursor(CursorIcon::PointingHand);
    }
}

/// What lies under the mouse.
enum Under<'a> {
    /// A sentence of this page.
    Line(&'a Line),
    /// The picture or words of a step that is told on another page, and the sentence about it where
    /// that page is about several.
    Page(&'a StoryPage, Option<&'a Line>),
}

fn under<'a>(
    told: &'a ToldStory,
    (_, page): (usize, &'a StoryPage),
    shown: &Page,
    at: Point,
) -> Option<Under<'a>> {
    let blocks = shown.blocks.iter();
    let mut here = blocks.filter(|b| hit::block_box(b).is_some_and(|r| r.contains(at)));
    let line = here.find_map(|b| {
        let said = |l: &&Line| {
            let second = l.second.as_deref();
            says(b, &l.text) || second.is_some_and(|s| says(b, s))
        };
        page.lines.iter().find(said)
    });
    if let Some(line) = line {
        return Some(Under::Line(line));
    }
    let Some(Source::Step(step)) = hit::hit(shown, at) else {
        return None;
    };
    let others = || told.story.pages.iter().filter(|p| p.at != page.at);
    if let Some(own) = others().find(|p| p.step == Some(step)) {
        return Some(Under::Page(own, None));
    }
    let line = |p: &'a StoryPage| p.lines.iter().find(|l| l.step == Some(step));
    others().find_map(|p| Some(Under::Page(p, Some(line(p)?))))
}

/// Arrow keys, Home and End turn the pages.
fn keys(ui: &Ui, state: &mut StoryState, told: &ToldStory, leaf: usize, id: Id) {
    regions::keep_arrows(ui, id);
    if let Some(to) = regions::arrows(ui, leaf, told.leaves.len(), 1) {
        state.turn_to(told, to);
        ui.ctx().request_repaint();
    }
    let enter = ui.input_mut(|i| i.consume_key(Modifiers::NONE, Key::Enter));
    let page = state.at.and_then(|at| told.page(at));
    if let (true, Some((_, page))) = (enter, page) {
        state.next_focus = page.lines.first().map(|l| l.at);
        ui.ctx().request_repaint();
    }
}

/// Turning by keys from a field: the keyboard goes to the rope or the page.
pub fn take_keyboard(ui: &Ui, _leaf: usize) {
    ui.memory_mut(|m| m.request_focus(Id::unique("story-page")));
}

/// Back, the rope, on.
fn rope(ui: &mut Ui, state: &mut StoryState, told: &ToldStory, leaf: usize, rect: Rect) {
    let count = told.leaves.len();
    let side = vec2(theme::CONTROL, theme::CONTROL);
    let back = Rect::from_min_size(rect.min, side);
    let on = Rect::from_min_size(pos2(rect.right() - theme::CONTROL, rect.top()), side);
    let b = Button::new("story-back", "Page before")
        .icon_only(Icon::Left)
        .tip("Page before (Page Up)")
        .weight(Weight::Quiet)
        .enabled(leaf > 0);
    if b.show_at(ui, back).clicked() {
        state.turn_to(told, leaf.saturating_sub(1));
    }
    let b = Button::new("story-on", "Next page")
        .icon_only(Icon::Right)
        .tip("Next page (Page Down)")
        .weight(Weight::Quiet)
        .enabled(leaf + 1 < count);
    if b.show_at(ui, on).clicked() {
        state.turn_to(told, leaf + 1);
    }
    let between = Rect::from_min_max(
        pos2(back.right() + 6.0, back.top()),
        pos2(on.left() - 6.0, back.bottom()),
    );
    if between.width() < ROPE {
        let ink = theme::of(ui.ctx()).col.ink;
        let says = format!("{} of {count}", leaf + 1);
        let font = theme::bold(16.0);
        words::line(
            ui.painter(),
            between,
            Align2::CENTER_CENTER,
            &says,
            font,
            ink,
        );
        return;
    }
    places(ui, state, told, leaf, between);
}

/// A place on the rope for each page: rings behind, open ones ahead, a peg where one is.
fn places(ui: &mut Ui, state: &mut StoryState, told: &ToldStory, leaf: usize, rect: Rect) {
    let t = theme::of(ui.ctx());
    let count = told.leaves.len().max(1);
    let step = rect.width() / count as f32;
    let y = rect.center().y;
    let middle = |i: usize| pos2(rect.left() + (i as f32 + 0.5) * step, y);
    let ends = [pos2(rect.left(), y), pos2(rect.right(), y)];
    paint::line(ui.painter(), &t, &ends, 4.0);
    for i in 0..told.leaves.len() {
        let cell = Rect::from_center_size(middle(i), vec2(step, rect.height()));
        let id = Id::unique(("story-place", i));
        let r = ui.interact(cell, id, regions::one_stop(ui, id, i == leaf, false));
        let page = told.page_of(i).map(|p| &told.story.pages[p]);
        let heading = page.map_or("", |p| p.heading.as_str());
        let name = format!("{heading}, page {} of {count}", i + 1);
        r.widget_info(|| WidgetInfo::selected(Role::ListBoxOption, true, i == leaf, &name));
        if i != leaf && step >= CLOSE {
            let inside = if i < leaf { t.col.rope } else { t.col.well };
            let radius = if r.hovered() { 6.5 } else { 5.0 };
            paint::ring(ui.painter(), &t.col, middle(i), radius, inside);
        }
        focus_ring(ui, &r, cell.shrink2(vec2(0.0, 6.0)), theme::R_PEG);
        if r.clicked() {
            state.turn_to(told, i);
            r.request_focus();
        }
        if r.has_focus() {
            regions::keep_arrows(ui, id);
            if let Some(to) = regions::arrows(ui, i, count, 1) {
                state.turn_to(told, to);
                ui.memory_mut(|m| m.request_focus(Id::unique(("story-place", to))));
            }
        }
        r.on_hover_cursor(CursorIcon::PointingHand)
            .on_hover_text(format!("{} {heading}", i + 1));
    }
    let number = (leaf + 1).to_string();
    peg(
        ui.painter(),
        middle(leaf),
        &number,
        t.col.accent,
        t.col.on_accent,
    );
}
