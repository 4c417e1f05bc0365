//! Help inside the window: a card with pages on a rope at the left, text at the right, and a field
//! that finds words on all pages.

mod find;
mod keys;
mod list;
mod page;
mod pictures;
mod results;
pub mod text;
mod words;

use egui::{Context, Event, Frame, Id, Key, Margin, Modal, Modifiers, Rect, Role, Ui, pos2, vec2};

use self::find::Hit;
use self::pictures::Pictures;
use super::actions::Action;
use super::find as field;
use super::icons::Icon;
use super::people::Pane;
use super::regions::Regions;
use super::theme;
use super::widgets::button::{Button, Weight};
use super::widgets::choose::select_at;
use crate::workbench::command::Place;
use crate::workbench::view::View;

pub use self::keys::MOUSE;

/// Largest size of the card.
const LARGEST: egui::Vec2 = vec2(1160.0, 760.0);
/// Below this width the list of pages becomes a chooser above the text.
const FOLDS: f32 = 820.0;
/// Width of the list.
const LIST: f32 = 326.0;

/// The help while it is open.
#[derive(Default)]
pub struct HelpState {
    /// The page that is read.
    page: usize,
    /// What is looked for.
    typed: String,
    /// What was found is shown, not a page.
    looking: bool,
    /// The marked one of what was found.
    hit: usize,
    /// What gets the keyboard in the next frame.
    focus: Option<Id>,
    /// The line to bring into sight.
    to_line: Option<usize>,
    /// The page is to be shown from its beginning.
    top: bool,
    /// Areas for F6.
    regions: Regions,
    /// What had the keyboard before.
    before: Option<Id>,
    pictures: Pictures,
}

/// The page of the help that belongs to where one is.
pub fn page_of(view: &View<'_>, pane: Pane, drawing: bool) -> &'static str {
    match view.place {
        _ if drawing => "pictures",
        Place::People if pane == Pane::Pictures => "pictures",
        Place::Boards if view.story_shown => "story",
        Place::Session => "session",
        Place::People => "people",
        Place::Boards => "boards",
        Place::Checks => "checks",
        Place::Print => "print",
    }
}

impl HelpState {
    /// Opens at a page.
    pub fn at(ctx: &Context, page: &str) -> Self {
        let page = text::at(page);
        Self {
            page,
            focus: Some(list::row_id(page)),
            top: true,
            before: ctx.memory(egui::Memory::focused),
            ..Self::default()
        }
    }

    /// The name of the page that is read.
    pub fn page(&self) -> &'static str {
        text::ORDER[self.page]
    }

    /// Whether the window carries this action out as always; the rest waits, or is the help's own.
    pub fn passes(&mut self, ctx: &Context, action: Action) -> bool {
        match action {
            Action::Search => self.focus = Some(field_id()),
            Action::NextArea => self.regions.step(ctx, false),
            Action::AreaBefore => self.regions.step(ctx, true),
            _ => {}
        }
        matches!(
            action,
            Action::Help
                | Action::ZoomIn
                | Action::ZoomOut
                | Action::ZoomReset
                | Action::Colours(_)
                | Action::Still
        )
    }

    /// Gives the keyboard back to what had it.
    pub fn leave(&self, ctx: &Context) {
        if let Some(id) = self.before {
            ctx.memory_mut(|m| m.request_focus(id));
        }
    }

    /// Reads a page from its beginning.
    fn read(&mut self, page: usize) {
        self.page = page;
        self.looking = false;
        self.top = true;
    }

    /// Reads the page with what was found.
    fn go(&mut self, hit: Hit) {
        self.read(hit.page);
        self.top = hit.line.is_none();
        self.to_line = hit.line;
        self.focus = Some(page::id());
    }
}

fn field_id() -> Id {
    Id::unique("help-find")
}

/// Shows the help over the window; says whether it was put away.
pub fn show(ui: &Ui, state: &mut HelpState) -> bool {
    let ctx = ui.ctx();
    let t = theme::of(ctx);
    let window = ctx.content_rect().size();
    let low = window.y < 520.0;
    let (beyond, inside) = if low { (8.0, 12_i8) } else { (20.0, 24) };
    let outer = (window - vec2(2.0 * beyond, 2.0 * beyond)).min(LARGEST);
    let size = outer - vec2(2.0, 2.0) * f32::from(inside);
    let frame = Frame::new()
        .fill(t.col.panel)
        .stroke(t.edge())
        .corner_radius(if low { 16 } else { 26 })
        .shadow(t.lifted())
        .inner_margin(Margin::same(inside));
    let area = Modal::default_area(Id::unique("help"))
        .accessible_name("Help")
        .role(Role::Dialog);
    let out = Modal::new(Id::unique("help"))
        .area(area)
        .frame(frame)
        .backdrop_color(t.col.veil)
        .show(ctx, |ui| {
            let (_, rect) = ui.allocate_space(size);
            card(ui, state, rect)
        });
    out.should_close() || out.inner
}

/// What is on the card; says whether it was put away.
fn card(ui: &mut Ui, state: &mut HelpState, rect: Rect) -> bool {
    let folded = rect.width() < FOLDS;
    // The card is measured before it is shown, and nothing can have the keyboard then.
    if !ui.is_sizing_pass()
        && let Some(id) = state.focus.take()
    {
        let in_list = folded && id == list::row_id(state.page);
        let id = if in_list { page::id() } else { id };
        ui.memory_mut(|m| m.request_focus(id));
    }
    typing(ui, state);
    state.regions.clear();
    let bar = rect.with_max_y(rect.top() + theme::CONTROL);
    let left = if folded { rect.width() * 0.46 } else { LIST };
    let first = bar.with_max_x(bar.left() + left - 12.0);
    let end = bar.with_min_x(bar.right() - theme::CONTROL);
    let middle = Rect::from_min_max(
        pos2(bar.left() + left, bar.top()),
        pos2(
            (end.left() - 12.0).min(bar.left() + left + 460.0),
            bar.bottom(),
        ),
    );
    if folded {
        chooser(ui, state, first);
    } else {
        let at = Rect::from_min_max(first.min + vec2(4.0, 4.0), first.max);
        let mut child = ui.new_child(egui::UiBuilder::new().max_rect(at));
        words::heading(&mut child, "Help", 24.0, &[]);
    }
    let entered = search(ui, state, middle);
    let close = Button::new("help-away", "Close the help").icon_only(Icon::Cross);
    let away = close.weight(Weight::Quiet).show_at(ui, end).clicked();
    let below = rect.with_min_y(bar.bottom() + if folded { 8.0 } else { 16.0 });
    let by = (!state.looking)
        .then(|| page::keys(ui, below.height()))
        .flatten();
    let reading = if folded {
        below
    } else {
        list::show(ui, state, below.with_max_x(below.left() + left - 20.0));
        below.with_min_x(below.left() + left - 8.0)
    };
    right(ui, state, reading, (entered, by));
    away
}

/// The page, scrolled by the keys, or what was found.
fn right(ui: &mut Ui, state: &mut HelpState, rect: Rect, (entered, by): (bool, Option<f32>)) {
    if !state.looking {
        state.regions.add(rect, page::id());
        return page::show(ui, state, rect, by);
    }
    let wanted = find::wanted(&state.typed);
    let hits = find::all(text::pages(), &wanted);
    let mut go = results::show(ui, state, rect, (&hits, &wanted));
    if entered {
        go = hits.get(state.hit).copied();
    }
    if let Some(hit) = go {
        state.go(hit);
        ui.ctx().request_repaint();
    }
}

/// The pages in one control, where there is no room for a list.
fn chooser(ui: &mut Ui, state: &mut HelpState, rect: Rect) {
    let titles: Vec<String> = text::pages().iter().map(|p| p.title.to_owned()).collect();
    let id = Id::unique("help-chooser");
    state.regions.add(rect, id);
    if let Some(page) = select_at(ui, id, rect, "Page", &titles, Some(state.page)) {
        state.read(page);
        state.focus = Some(page::id());
    }
}

/// The field; says whether Enter was pressed in it.
fn search(ui: &mut Ui, state: &mut HelpState, rect: Rect) -> bool {
    let id = field_id();
    state.regions.add(rect, id);
    let before = state.typed.clone();
    let r = field::field(ui, id, rect, "Find in the help", &mut state.typed);
    if state.typed != before {
        state.looking = !state.typed.trim().is_empty();
        state.hit = 0;
    }
    let pressed = |key| ui.input_mut(|i| i.consume_key(Modifiers::NONE, key));
    let emptied = state.typed.is_empty() && !before.is_empty();
    if emptied && pressed(Key::Escape) {
        // The first Escape empties the field, the next one closes.
        return false;
    }
    if state.looking && r.has_focus() && pressed(Key::ArrowDown) {
        state.focus = Some(results::hit_id(state.hit));
    }
    r.lost_focus() && pressed(Key::Enter)
}

/// What is typed anywhere goes into the field.
fn typing(ui: &Ui, state: &mut HelpState) {
    if ui.ctx().text_edit_focused() {
        return;
    }
    let typed: String = ui.input_mut(|i| {
        let mut typed = String::new();
        i.events.retain(|e| match e {
            // A slash is a key that goes to the field.
            Event::Text(words) if !words.trim().is_empty() && words != "/" => {
                typed.push_str(words);
                false
            }
            _ => true,
        });
        typed
    });
    if typed.is_empty() {
        return;
    }
    state.typed.push_str(&typed);
    state.looking = true;
    state.hit = 0;
    let (id, ctx) = (field_id(), ui.ctx());
    let end = egui::text::CCursor::new(state.typed.chars().count());
    let mut cursor = egui::widgets::text_edit::TextEditState::load(ctx, id).unwrap_or_default();
    let range = egui::text::CCursorRange::one(end);
    cursor.cursor.set_char_range(Some(range));
    cursor.store(ctx, id);
    ui.memory_mut(|m| m.request_focus(id));
    ui.ctx().request_repaint();
}
