//! The sentences of the page: each a field of its own, with what can be done to it and what there is
//! to say about it.

use egui::{Align2, Id, Key, Label, Modifiers, Rect, Ui, pos2, vec2};

use super::{StoryState, by_hand, line_id, more, remarks, second};
use crate::model::rewriting::PageWords;
use crate::story::measure::{Kind, page_length};
use crate::story::{Line, StoryPage};
use crate::ui::desk::Desk;
use crate::ui::icons::Icon;
use crate::ui::pictures::Eyes;
use crate::ui::theme;
use crate::ui::widgets::button::{Button, Weight};
use crate::ui::widgets::card::{peg, plate};
use crate::ui::widgets::field::Field;
use crate::ui::widgets::words;
use crate::workbench::story::{ToldStory, has_sentences};

/// Below this width the buttons of a sentence stand below it.
const ROOM: f32 = 480.0;
/// Between two buttons of a sentence.
const GAP: f32 = 2.0;

/// What every sentence of a page is shown with.
#[derive(Clone, Copy)]
pub struct On<'a> {
    /// The story.
    pub told: &'a ToldStory,
    /// The page.
    pub page: &'a StoryPage,
    /// Which of the pages, counted from zero.
    pub index: usize,
}

/// Shows them.
pub fn show(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    state: &mut StoryState,
    told: &ToldStory,
    index: usize,
) {
    let page = &told.story.pages[index];
    let on = On { told, page, index };
    ui.spacing_mut().item_spacing.y = 4.0;
    if let Some(line) = page.lines.first() {
        let area = ui.max_rect();
        desk.regions.add(area, line_id(page.at, line.at));
    }
    heading(ui, desk, on);
    second::heading(ui, desk, told, page);
    remarks::disagreements(ui, on);
    ui.add_space(4.0);
    if !has_sentences(&told.story, page) {
        more::without(ui, on);
        return;
    }
    for (i, line) in page.lines.iter().enumerate() {
        sentence(ui, desk, state, on, (i, line));
        // What belongs together stands closer than what does not.
        ui.add_space(if told.story.second.is_some() {
            16.0
        } else {
            6.0
        });
    }
    // Sentences beside a card each are a list; someone with fuller text takes in more.
    let plain = page.plain().count();
    let long = page_length(plain).filter(|_| plain > told.story.depth.most());
    if let Some(long) = long {
        remarks::note(ui, "", &format!("{} {}", long.why, long.better));
    }
    more::hidden(ui, desk, page);
    more::adding(ui, desk, state, page);
}

/// The peg of the page, its words as on the board, and back to how it is told.
fn heading(ui: &mut Ui, desk: &mut Desk<'_>, on: On<'_>) {
    let t = theme::of(ui.ctx());
    let width = ui.available_width();
    let (_, rect) = ui.allocate_space(vec2(width, theme::CONTROL));
    let first = on.told.places.get(on.index).map_or(0, |(first, _)| *first);
    let middle = pos2(rect.left() + 15.0, rect.center().y);
    let number = (first + 1).to_string();
    peg(ui.painter(), middle, &number, t.col.peg, t.col.on_peg);
    let mut room = rect.with_min_x(rect.left() + 40.0);
    if on.page.is_rewritten() {
        let b = Button::new("page-as-told", "This page as told")
            .weight(Weight::Quiet)
            .tip("Takes back all that was changed by hand on this page");
        let b = if width < 420.0 {
            b.icon_only(Icon::AsMade)
        } else {
            b.icon(Icon::AsMade)
        };
        let place = rect.with_min_x(rect.right() - b.needs(ui));
        if b.show_at(ui, place).clicked() {
            by_hand::put(desk, on.page.at, PageWords::default());
        }
        room.max.x = place.left() - 8.0;
    }
    let mut child = ui.new_child(egui::UiBuilder::new().max_rect(room));
    child.set_clip_rect(room.intersect(ui.clip_rect()));
    child.horizontal_centered(|ui| {
        let text = egui::RichText::new(&on.page.heading)
            .font(theme::bold(20.0))
            .color(t.col.ink);
        ui.add(Label::new(text).truncate());
    });
}

/// A sentence with all that belongs to it.
fn sentence(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    state: &mut StoryState,
    on: On<'_>,
    (i, line): (usize, &Line),
) {
    let id = line_id(on.page.at, line.at);
    let none = (Vec::new(), Vec::new());
    let each = on.told.each.get(on.index);
    let (kinds, found) = each.and_then(|p| p.lines.get(i)).unwrap_or(&none);
    if state.focus == Some(line.at) {
        state.focus = None;
        ui.memory_mut(|m| m.request_focus(id));
    }
    let moved = keys(ui, id, (i, on.page.lines.len()));
    let name = name(on.page, (i, line), kinds);
    let width = ui.available_width();
    let beside = width >= ROOM;
    let count = if line.told.is_some() && line.is_rewritten() {
        4.0
    } else {
        3.0
    };
    let buttons = count * theme::CONTROL + (count - 1.0) * GAP;
    let picture = if line.card.is_some() { 52.0 } else { 0.0 };
    let field_width = width - picture - if beside { buttons + 8.0 } else { 0.0 };
    let field = Field::new(id, &name, &line.text).wraps();
    let height = field.wrapped_height(ui, desk.drafts, field_width);
    let below = if beside { 0.0 } else { theme::CONTROL + 2.0 };
    let (_, all) = ui.allocate_space(vec2(width, height + below));
    if let Some(card) = &line.card {
        card_at(ui, desk, all, card);
    }
    let place = Rect::from_min_size(all.min + vec2(picture, 0.0), vec2(field_width, height));
    let typed = desk.drafts.typed(id).map(str::to_owned);
    if let Some(text) = field.show_at(ui, desk.drafts, place) {
        let mut words = by_hand::words(desk, on.page.at);
        by_hand::reword(&mut words, line, &text);
        by_hand::put(desk, on.page.at, words);
    } else if let Some(to) = moved {
        shift(desk, on.page, line, (i, to), typed);
    }
    let top = if beside {
        all.top()
    } else {
        place.bottom() + 2.0
    };
    let row = Rect::from_min_size(
        pos2(all.right() - buttons, top),
        vec2(buttons, theme::CONTROL),
    );
    tools(ui, desk, on.page, (i, line), row);
    let says = said_of(line, kinds);
    if beside {
        small(ui, picture + 2.0, &says);
    } else {
        let room = Rect::from_min_max(
            pos2(all.left() + 2.0, top),
            pos2(row.left() - 4.0, row.bottom()),
        );
        let soft = theme::of(ui.ctx()).col.soft;
        let font = theme::regular(14.0);
        words::line(ui.painter(), room, Align2::LEFT_CENTER, &says, font, soft);
    }
    ui.indent_by(picture, |ui| {
        remarks::stale(ui, desk, on.page, line);
        remarks::absent(ui, on, line);
        remarks::remarked(ui, state, line, found);
        second::line(ui, desk, state, on.told, on.page, line);
    });
}

/// Room at the left for what belongs to a sentence beside a picture.
trait Indent {
    fn indent_by(&mut self, by: f32, add: impl FnOnce(&mut Ui));
}

impl Indent for Ui {
    fn indent_by(&mut self, by: f32, add: impl FnOnce(&mut Ui)) {
        let frame = egui::Frame::new().inner_margin(egui::Margin {
            left: by as i8,
            ..egui::Margin::ZERO
        });
        frame.show(self, |ui| {
            ui.spacing_mut().item_spacing.y = 4.0;
            add(ui);
        });
    }
}

/// "Sentence 2 of 3, directing, edited".
fn name(page: &StoryPage, (i, line): (usize, &Line), kinds: &[Kind]) -> String {
    let says = said_of(line, kinds);
    format!("Sentence {} of {}: {says}", i + 1, page.lines.len())
}

/// Its kind, and whose words they are.
fn said_of(line: &Line, kinds: &[Kind]) -> String {
    let mut all: Vec<&str> = kinds.iter().map(|k| k.label()).collect();
    match &line.told {
        None => all.push("added by hand"),
        Some(_) if line.is_rewritten() => all.push("edited"),
        Some(_) => {}
    }
    let mut says = all.join(", ").to_lowercase();
    if let Some(first) = says.get_mut(..1) {
        first.make_ascii_uppercase();
    }
    says
}

fn card_at(ui: &Ui, desk: &mut Desk<'_>, all: Rect, card: &crate::story::cards::Card) {
    let Some(person) = desk.view.participant else {
        return;
    };
    let t = theme::of(ui.ctx());
    let at = Rect::from_min_size(all.min, vec2(theme::CONTROL, theme::CONTROL));
    plate(ui.painter(), &t, at);
    let inside = at.shrink(4.0);
    desk.pictures
        .symbol(ui.painter(), inside, &card.symbol, Eyes::of(person));
}

/// Where Alt with an arrow moves the sentence that has the keyboard.
fn keys(ui: &Ui, id: Id, (i, count): (usize, usize)) -> Option<usize> {
    if !ui.memory(|m| m.has_focus(id)) {
        return None;
    }
    let pressed = |key| ui.input_mut(|input| input.consume_key(Modifiers::ALT, key));
    let to = match (pressed(Key::ArrowUp), pressed(Key::ArrowDown)) {
        (true, false) => i.checked_sub(1)?,
        (false, true) => i + 1,
        _ => return None,
    };
    (to < count).then_some(to)
}

/// Moves a sentence; what was typed in it so far counts too.
fn shift(
    desk: &mut Desk<'_>,
    page: &StoryPage,
    line: &Line,
    (from, to): (usize, usize),
    typed: Option<String>,
) {
    let mut words = by_hand::words(desk, page.at);
    let typed = typed.filter(|t| !t.trim().is_empty() && *t != line.text);
    if let Some(text) = typed {
        by_hand::reword(&mut words, line, &text);
    }
    by_hand::shift(&mut words, page, from, to);
    by_hand::put(desk, page.at, words);
}

/// Back to as told, up, down, hide.
fn tools(ui: &mut Ui, desk: &mut Desk<'_>, page: &StoryPage, (i, line): (usize, &Line), row: Rect) {
    let mut left = row.left();
    let mut tool = |ui: &mut Ui, what: &str, icon: Icon, tip: &str, enabled: bool| {
        let place =
            Rect::from_min_size(pos2(left, row.top()), vec2(theme::CONTROL, theme::CONTROL));
        left = place.right() + GAP;
        let name = format!("{what}: sentence {}", i + 1);
        let b = Button::new(("line", what, page.at, line.at), &name)
            .icon_only(icon)
            .weight(Weight::Quiet)
            .tip(tip)
            .enabled(enabled);
        b.show_at(ui, place).clicked()
    };
    let mut words = by_hand::words(desk, page.at);
    let told = line.told.as_ref().filter(|_| line.is_rewritten());
    let mut changed = false;
    if let Some(told) = told {
        let tip = format!("Edited. Back to what the program says: “{told}”");
        if tool(ui, "As told", Icon::AsMade, &tip, true) {
            words.take_back(line.at);
            changed = true;
        }
    }
    let last = page.lines.len().saturating_sub(1);
    if tool(ui, "Up", Icon::Up, "Further up (Alt + up)", i > 0) {
        by_hand::shift(&mut words, page, i, i - 1);
        changed = true;
    }
    if tool(
        ui,
        "Down",
        Icon::Down,
        "Further down (Alt + down)",
        i < last,
    ) {
        by_hand::shift(&mut words, page, i, i + 1);
        changed = true;
    }
    if line.told.is_none() {
        if tool(ui, "Take away", Icon::Bin, "Takes this sentence away", true) {
            words.take_back(line.at);
            changed = true;
        }
    } else if tool(
        ui,
        "Hide",
        Icon::Cross,
        "Hides it; it stays below to show again",
        true,
    ) {
        words.hidden.insert(line.at);
        changed = true;
    }
    if changed {
        by_hand::put(desk, page.at, words);
    }
}

/// A line of small soft words.
pub fn small(ui: &mut Ui, indent: f32, says: &str) {
    if says.is_empty() {
        return;
    }
    let soft = theme::of(ui.ctx()).col.soft;
    let (_, rect) = ui.allocate_space(vec2(ui.available_width(), 18.0));
    let room = rect.with_min_x(rect.left() + indent);
    let font = theme::regular(14.0);
    words::line(ui.painter(), room, Align2::LEFT_CENTER, says, font, soft);
}
