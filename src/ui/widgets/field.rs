//! A field to type in. What is typed is a draft until Enter or until the field is left; Escape
//! drops it. There is one draft at a time, kept outside the toolkit.

use egui::text::CCursor;
use egui::text_edit::TextEditState;
use egui::{
    Align2, Color32, CornerRadius, Frame, Id, Key, Margin, Modifiers, Rect, Response, Stroke,
    StrokeKind, TextEdit, Ui, UiBuilder, vec2,
};

use super::keyboard_led;
use crate::ui::theme;

/// What is being typed, and where.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Drafts {
    at: Option<Id>,
    text: String,
    dropped: bool,
    /// What was typed in a field that a click on another one left: it is entered when that field is
    /// shown again.
    left: Option<(Id, String)>,
}

impl Drafts {
    /// Forgets what is being typed.
    pub fn clear(&mut self) {
        self.at = None;
        self.text.clear();
        self.left = None;
    }

    /// Begins in a field; what is open in another one is kept until that is shown again.
    fn begin(&mut self, id: Id, text: &str) {
        let text = text.to_owned();
        let was = std::mem::replace(&mut self.text, text);
        let dropped = std::mem::take(&mut self.dropped);
        let other = self.at.replace(id).filter(|at| *at != id && !dropped);
        if let Some(other) = other {
            self.left = Some((other, was));
        }
    }

    /// What is being typed in a field, while it is.
    pub fn typed(&self, id: Id) -> Option<&str> {
        let left = self.left.as_ref().filter(|(at, _)| *at == id);
        let open = (self.at == Some(id)).then_some(self.text.as_str());
        open.or_else(|| left.map(|(_, text)| text.as_str()))
    }

    /// Whether something is being typed.
    pub const fn is_open(&self) -> bool {
        self.at.is_some()
    }
}

/// A field to be shown.
pub struct Field<'a> {
    id: Id,
    label: &'a str,
    value: &'a str,
    hint: &'a str,
    unit: &'a str,
    rows: usize,
    centred: bool,
    wraps: bool,
    flush_right: bool,
    inset: f32,
}

impl<'a> Field<'a> {
    /// A field with a name for screen readers and the value that counts now.
    pub const fn new(id: Id, label: &'a str, value: &'a str) -> Self {
        Self {
            id,
            label,
            value,
            hint: "",
            unit: "",
            rows: 1,
            centred: false,
            wraps: false,
            flush_right: false,
            inset: 0.0,
        }
    }

    /// With soft words while it is empty.
    pub const fn hint(mut self, hint: &'a str) -> Self {
        self.hint = hint;
        self
    }

    /// With a unit after the value.
    pub const fn unit(mut self, unit: &'a str) -> Self {
        self.unit = unit;
        self
    }

    /// With several lines; Enter then begins a new one.
    pub const fn rows(mut self, rows: usize) -> Self {
        self.rows = rows;
        self
    }

    /// With its words in the middle.
    pub const fn centred(mut self) -> Self {
        self.centred = true;
        self
    }

    /// For a sentence: long words go on in the next line, and Enter still enters.
    pub const fn wraps(mut self) -> Self {
        self.wraps = true;
        self
    }

    /// With its words at the right, for what runs from right to left.
    pub const fn flush_right(mut self, flush: bool) -> Self {
        self.flush_right = flush;
        self
    }

    /// How high a field that wraps must be for what is in it now.
    pub fn wrapped_height(&self, ui: &Ui, drafts: &Drafts, width: f32) -> f32 {
        let text = drafts.typed(self.id).unwrap_or(self.value);
        let text = if text.is_empty() { self.hint } else { text };
        let font = theme::regular(16.0);
        let room = width - 24.0;
        let g = ui
            .painter()
            .layout(text.to_owned(), font, Color32::PLACEHOLDER, room);
        (g.size().y + 20.0).ceil().max(theme::CONTROL)
    }

    /// Shows it where the layout stands; gives the new value once, when it was entered.
    pub fn show(self, ui: &mut Ui, drafts: &mut Drafts, width: f32) -> Option<String> {
        let height = if self.rows > 1 {
            20.0 + 24.0 * self.rows as f32
        } else {
            theme::CONTROL
        };
        let (_, rect) = ui.allocate_space(vec2(width, height));
        self.show_at(ui, drafts, rect)
    }

    /// The same in a rectangle.
    pub fn show_at(self, ui: &mut Ui, drafts: &mut Drafts, rect: Rect) -> Option<String> {
        let had = drafts.at == Some(self.id);
        let mut text = if had {
            drafts.text.clone()
        } else {
            self.value.to_owned()
        };
        let r = edit(ui, &self, rect, &mut text);
        let enters = self.wraps && r.has_focus();
        if enters && ui.input_mut(|i| i.consume_key(Modifiers::NONE, Key::Enter)) {
            r.surrender_focus();
        }
        if r.has_focus() {
            if !had {
                drafts.begin(self.id, &text);
            }
            drafts.text.clone_from(&text);
            drafts.dropped |= ui.input(|i| i.key_pressed(Key::Escape));
            return None;
        }
        if !had {
            let left = drafts.left.take_if(|(id, _)| *id == self.id);
            return left.map(|(_, text)| text).filter(|t| t != self.value);
        }
        let dropped = drafts.dropped || ui.input(|i| i.key_pressed(Key::Escape));
        drafts.at = None;
        drafts.text.clear();
        (!dropped && text != self.value).then_some(text)
    }
}

fn edit(ui: &mut Ui, f: &Field<'_>, rect: Rect, text: &mut String) -> Response {
    let t = theme::of(ui.ctx());
    let focused = ui.memory(|m| m.has_focus(f.id));
    let over = ui.rect_contains_pointer(rect);
    frame(ui, rect, focused, over);
    let unit_width = if f.unit.is_empty() {
        0.0
    } else {
        let g = ui
            .painter()
            .layout_no_wrap(f.unit.to_owned(), theme::regular(15.0), t.col.soft);
        let at = egui::pos2(
            rect.right() - 10.0 - g.size().x,
            rect.center().y - g.size().y / 2.0,
        );
        let w = g.size().x + 4.0;
        ui.painter().galley(at, g, t.col.soft);
        w
    };
    let inner = Rect::from_min_max(
        rect.min + vec2(f.inset, 0.0),
        rect.max - vec2(unit_width, 0.0),
    );
    let mut child = ui.new_child(UiBuilder::new().max_rect(inner));
    child.set_clip_rect(inner.intersect(ui.clip_rect()));
    if ui.memory(|m| m.has_focus(f.id)) {
        cursor_within(ui, f.id, text);
    }
    let edit = if f.wraps {
        TextEdit::multiline(text).return_key(None)
    } else if f.rows > 1 {
        TextEdit::multiline(text)
    } else {
        TextEdit::singleline(text)
    };
    let align = match (f.rows > 1, f.centred) {
        _ if f.flush_right => Align2::RIGHT_CENTER,
        (true, _) => Align2::LEFT_TOP,
        (false, true) => Align2::CENTER_CENTER,
        (false, false) => Align2::LEFT_CENTER,
    };
    let margin = Margin::symmetric(12, if f.rows > 1 { 8 } else { 10 });
    let out = edit
        .id(f.id)
        .frame(Frame::NONE.inner_margin(margin))
        .background_color(Color32::TRANSPARENT)
        .font(theme::regular(16.0))
        .text_color(t.col.ink)
        .hint_text(
            egui::RichText::new(f.hint)
                .font(theme::regular(16.0))
                .color(t.col.soft),
        )
        .min_size(inner.size())
        .desired_width(inner.width() - 24.0)
        .desired_rows(f.rows)
        .align(align)
        .show(&mut child);
    out.response.response.accessible_name(f.label)
}

/// The toolkit counts places between the signs that are painted, of which some scripts have more than
/// letters: what lies behind the last letter is brought back to it, since deleting from there fails.
fn cursor_within(ui: &Ui, id: Id, text: &str) {
    let Some(mut state) = TextEditState::load(ui.ctx(), id) else {
        return;
    };
    let Some(range) = state.cursor.char_range() else {
        return;
    };
    let end = CCursor::end_of_str(text);
    if range.primary.index > end.index || range.secondary.index > end.index {
        let mut within = range;
        within.primary.index = range.primary.index.min(end.index);
        within.secondary.index = range.secondary.index.min(end.index);
        state.cursor.set_char_range(Some(within));
        state.store(ui.ctx(), id);
    }
}

fn frame(ui: &Ui, rect: Rect, focused: bool, over: bool) {
    let t = theme::of(ui.ctx());
    let p = ui.painter();
    let r = CornerRadius::same(theme::R_CONTROL);
    let edge = if focused {
        Stroke::new(2.0, t.col.accent)
    } else if over {
        Stroke::new(2.0, t.col.ink)
    } else {
        t.edge()
    };
    p.rect(rect, r, t.col.panel, edge, StrokeKind::Inside);
    if focused && keyboard_led(ui.ctx()) {
        let ring = Stroke::new(3.0, t.col.accent);
        p.rect_stroke(
            rect.expand(2.0),
            CornerRadius::same(theme::R_CONTROL + 2),
            ring,
            StrokeKind::Outside,
        );
    }
}

/// A search field: its words count at once, its name is its hint, Escape empties it. `inset` is
/// room for a sign before the words.
pub fn live(
    ui: &mut Ui,
    id: Id,
    rect: Rect,
    label: &str,
    text: &mut String,
    inset: f32,
) -> Response {
    let mut f = Field::new(id, label, "").hint(label);
    f.inset = inset;
    let was_full = !text.is_empty();
    let r = edit(ui, &f, rect, text);
    if r.lost_focus() && was_full && ui.input(|i| i.key_pressed(Key::Escape)) {
        text.clear();
        r.request_focus();
    }
    r
}
