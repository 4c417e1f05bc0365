//! The sentences of the page: each a field of its own, with what can be done to it and what there is
//! to say about it.

use egui::text::{LayoutJob, TextFormat};
use egui::{Align2, Id, Key, Label, Modifiers, Rect, Ui, pos2, vec2};

use super::{StoryState, by_hand, line_id, second};
use crate::model::rewriting::PageWords;
use crate::story::against::Mismatch;
use crate::story::measure::{Kind, Remark, page_length};
use crate::story::{Line, StoryPage};
use crate::ui::desk::Desk;
use crate::ui::icons::{self, Icon};
use crate::ui::theme;
use crate::ui::widgets::button::{Button, Weight};
use crate::ui::widgets::card::{peg, plate};
use crate::ui::widgets::field::Field;
use crate::ui::widgets::{form, words};
use crate::workbench::story::{ToldStory, has_sentences};

/// Remarks at a sentence that are shown at once.
const REMARKS: usize = 2;
/// Below this width the buttons of a sentence stand below it.
const ROOM: f32 = 480.0;
/// Between two buttons of a sentence.
const GAP: f32 = 2.0;

/// What every sentence of a page is shown with.
#[derive(Clone, Copy)]
struct On<'a> {
    told: &'a ToldStory,
    page: &'a StoryPage,
    index: usize,
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
    disagreements(ui, on);
    if !has_sentences(&told.story, page) {
        without(ui, on);
        return;
    }
    ui.add_space(4.0);
    for (i, line) in page.lines.iter().enumerate() {
        sentence(ui, desk, state, on, (i, line));
        ui.add_space(6.0);
    }
    if let Some(long) = page_length(page.lines.len()) {
        note(ui, "", &format!("{} {}", long.why, long.better));
    }
    hidden(ui, desk, page);
    adding(ui, desk, state, page);
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
            b.icon_only(Icon::Undo)
        } else {
            b.icon(Icon::Undo)
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

/// In what the page does not agree with the board.
fn disagreements(ui: &mut Ui, on: On<'_>) {
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

fn told_anywhere(told: &ToldStory, step: crate::model::ids::StepRef) -> bool {
    let mut pages = told.story.pages.iter();
    pages.any(|p| p.steps().any(|s| s == step))
}

/// A page of a story in pictures or single words.
fn without(ui: &mut Ui, on: On<'_>) {
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
    let (kinds, remarks) = each.and_then(|p| p.lines.get(i)).unwrap_or(&none);
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
        stale(ui, desk, on.page, line);
        absent(ui, on, line);
        remarked(ui, state, line, remarks);
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
    all.join(", ")
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
        .symbol(ui.painter(), inside, &card.symbol, person.figure);
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
        if tool(ui, "As told", Icon::Undo, &tip, true) {
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
fn small(ui: &mut Ui, indent: f32, says: &str) {
    if says.is_empty() {
        return;
    }
    let soft = theme::of(ui.ctx()).col.soft;
    let (_, rect) = ui.allocate_space(vec2(ui.available_width(), 18.0));
    let room = rect.with_min_x(rect.left() + indent);
    let font = theme::regular(14.0);
    words::line(ui.painter(), room, Align2::LEFT_CENTER, says, font, soft);
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
fn stale(ui: &mut Ui, desk: &mut Desk<'_>, page: &StoryPage, line: &Line) {
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
fn absent(ui: &mut Ui, on: On<'_>, line: &Line) {
    for m in &on.told.mismatches {
        if let Mismatch::NotOnBoard(page, at, label) = m
            && (*page, *at) == (on.page.at, line.at)
        {
            note(ui, label, "is not on the board today.");
        }
    }
}

/// Words a reader may trip over.
fn remarked(ui: &mut Ui, state: &mut StoryState, line: &Line, remarks: &[Remark]) {
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

/// Sentences that a person hid.
fn hidden(ui: &mut Ui, desk: &mut Desk<'_>, page: &StoryPage) {
    if page.hidden.is_empty() {
        return;
    }
    let t = theme::of(ui.ctx());
    small(ui, 2.0, "Hidden");
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
}

/// A field for one more sentence, or the buttons below.
fn adding(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut StoryState, page: &StoryPage) {
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
                state.focus = Some(by_hand::add(&mut words, page, &text));
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
