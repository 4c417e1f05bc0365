//! A tray of symbols below the line: found by word, dragged up, or added with Enter.

use egui::scroll_area::ScrollSource;
use egui::{
    Align2, CornerRadius, CursorIcon, Id, Key, Modifiers, Rect, Response, Role, ScrollArea, Stroke,
    StrokeKind, Ui, UiBuilder, WidgetInfo, pos2, vec2,
};

use super::boards::held::Held;
use super::desk::Desk;
use super::find;
use super::icons::Icon;
use super::regions;
use super::theme;
use super::widgets::button::{Button, Weight};
use super::widgets::card::well;
use super::widgets::choose::select_at;
use super::widgets::{focus_ring, within, words};
use crate::model::club::Club;
use crate::model::hand::Content;
use crate::model::ids::{ParticipantId, SymbolId};
use crate::symbols::lexicon::lexicon;
use crate::symbols::library::library;
use crate::symbols::own;
use crate::ui::pictures::Eyes;

const GAP: f32 = 6.0;
/// In a place lower than this a tray lies folded until it is asked for.
const FOLDS: f32 = 400.0;

/// What a tray remembers.
#[derive(Clone, Debug, Default)]
pub struct TrayState {
    /// What is looked for.
    pub search: String,
    /// Which group is looked at; all when none.
    pub group: Option<String>,
    /// Which item the keyboard is on.
    at: usize,
    /// Put the keyboard into the search field in this frame.
    pub focus_search: bool,
    /// In a low window, where the rest needs the room: it lies open.
    pub open: bool,
    /// Whether it is folded away when it is not asked for.
    folds: bool,
}

/// Whether a tray is folded away unless it is asked for, in a place of a height.
pub fn folds(height: f32) -> bool {
    height < FOLDS
}

/// The button that opens a tray and folds it away; what is below has to do with `name`.
pub fn folder(ui: &mut Ui, state: &mut TrayState, name: &str, place: Rect) {
    let b = Button::new((name, "fold"), "Symbols below").icon_only(Icon::Search);
    let b = b.weight(Weight::Chosen(state.open));
    let b = b.tip("Show the symbols, or leave the room to the rest");
    if b.show_at(ui, place).clicked() {
        state.open = !state.open;
    }
}

/// What lies in a tray and what it says.
pub struct Tray<'a> {
    /// Tells it from other trays.
    pub name: &'a str,
    /// What lies in it.
    pub items: Vec<Content>,
    /// How many of the first are the club's own.
    pub own: usize,
    /// A click alone picks.
    pub eager: bool,
    /// What a pick does, in words.
    pub does: String,
    /// How the main person is drawn.
    pub figure: Eyes,
}

/// What was picked.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Pick {
    /// To be added.
    Add(Content),
    /// To take the chosen one's place.
    Swap(Content),
}

/// The club's own activities that fit the words, in the order of the club.
pub fn activities(club: &Club, state: &TrayState) -> Vec<Content> {
    let wanted = state.search.trim().to_lowercase();
    let found = lexicon(&club.rules.words).search(&wanted);
    let by_symbol = |id: &SymbolId| found.iter().any(|s| s.id == *id);
    club.activities
        .iter()
        .filter(|a| a.label.to_lowercase().contains(&wanted) || by_symbol(&a.symbol))
        .filter(|a| state.shows(&a.symbol))
        .map(|a| Content {
            activity: Some(a.id),
            symbol: a.symbol.clone(),
            label: a.label.clone(),
        })
        .collect()
}

/// Pictures of the club's own that someone, or the group, may see, then symbols that fit the words
/// and that no activity of the club has.
pub fn others(club: &Club, who: Option<ParticipantId>, state: &TrayState) -> Vec<Content> {
    let words = lexicon(&club.rules.words);
    let own = own::search(club, who, &state.search).into_iter();
    let own = own.map(|p| Content {
        activity: None,
        symbol: p.symbol(),
        label: p.name.clone(),
    });
    let own = own.filter(|_| state.group.is_none());
    let built_in = words
        .search(state.search.trim())
        .into_iter()
        .filter(|s| state.shows(&s.id))
        .filter(|s| !club.activities.iter().any(|a| a.symbol == s.id))
        .map(|s| Content {
            activity: None,
            symbol: s.id.clone(),
            label: words.label(&s.id).to_owned(),
        });
    own.chain(built_in).collect()
}

impl TrayState {
    /// Whether it is shown: folded away it comes when it is looked for, or when one is to be picked.
    pub fn shows_up(&mut self, folds: bool, picking: bool) -> bool {
        self.folds = folds;
        self.open |= folds && self.focus_search;
        !folds || self.open || picking
    }

    /// Whether a symbol is in the group that is looked at.
    fn shows(&self, id: &SymbolId) -> bool {
        let group = library().get(id).map(|s| s.group.as_str());
        self.group.is_none() || self.group.as_deref() == group
    }
}

impl Tray<'_> {
    fn search_id(&self) -> Id {
        Id::unique((self.name, "search"))
    }

    fn item_id(&self, c: &Content) -> Id {
        Id::unique((self.name, c.activity, &c.symbol))
    }

    /// Shows the tray; gives what was picked.
    pub fn show(
        &self,
        ui: &mut Ui,
        desk: &mut Desk<'_>,
        state: &mut TrayState,
        rect: Rect,
    ) -> Option<Pick> {
        let t = theme::of(ui.ctx());
        well(ui.painter(), &t, rect);
        state.at = state.at.min(self.items.len().saturating_sub(1));
        let side = if rect.width() < 700.0 { 190.0 } else { 252.0 };
        let tall = rect.height() > 110.0;
        let inset = vec2(14.0, if tall { 8.0 } else { 12.0 });
        let mut field = Rect::from_min_size(rect.min + inset, vec2(side, theme::CONTROL));
        if state.folds && state.open {
            let away = Rect::from_min_size(field.min, vec2(theme::CONTROL, theme::CONTROL));
            let b = Button::new((self.name, "away"), "Fold the symbols away");
            if b.icon_only(Icon::Cross).show_at(ui, away).clicked() {
                state.open = false;
            }
            field.min.x = away.right() + 6.0;
        }
        self.find(ui, desk, state, field);
        let mut above = field;
        if tall {
            above = field.translate(vec2(0.0, theme::CONTROL + 4.0));
            self.groups(ui, desk, state, above);
        }
        let below = Rect::from_min_max(
            above.left_bottom() + vec2(2.0, if tall { 2.0 } else { 6.0 }),
            pos2(field.right(), rect.bottom() - if tall { 2.0 } else { 8.0 }),
        );
        if below.height() > 15.0 {
            self.says(ui, state, below);
        }
        let right = Rect::from_min_max(
            pos2(field.right() + 16.0, rect.top() + 7.0),
            rect.max - vec2(10.0, 3.0),
        );
        within(ui, self.name, right, |ui| self.row(ui, desk, state, right))
    }

    fn find(&self, ui: &mut Ui, desk: &mut Desk<'_>, state: &mut TrayState, rect: Rect) {
        desk.regions.add(rect, self.search_id());
        let before = state.search.clone();
        let (id, label) = (self.search_id(), "Look for a symbol");
        let r = find::field(ui, id, rect, label, &mut state.search);
        if std::mem::take(&mut state.focus_search) {
            r.request_focus();
        }
        if state.search != before {
            state.at = 0;
        }
        let down =
            r.has_focus() && ui.input_mut(|i| i.consume_key(Modifiers::NONE, Key::ArrowDown));
        let enter = r.lost_focus() && ui.input_mut(|i| i.consume_key(Modifiers::NONE, Key::Enter));
        if let (true, Some(item)) = (down || enter, self.items.get(state.at)) {
            ui.memory_mut(|m| m.request_focus(self.item_id(item)));
        }
    }

    /// Below the field: which group is looked at.
    fn groups(&self, ui: &mut Ui, desk: &mut Desk<'_>, state: &mut TrayState, rect: Rect) {
        let names = lexicon(&desk.view.club.rules.words);
        let groups = library().groups();
        let mut options = vec!["All groups".to_owned()];
        options.extend(groups.iter().map(|g| names.group(g).to_owned()));
        let now = groups.iter().position(|g| state.group.as_ref() == Some(g));
        let id = Id::unique((self.name, "group"));
        let chosen = now.map_or(0, |i| i + 1);
        if let Some(i) = select_at(ui, id, rect, "Group of symbols", &options, Some(chosen)) {
            state.group = i.checked_sub(1).map(|i| groups[i].clone());
            state.at = 0;
        }
    }

    /// Below the field: how many were found, and what a pick does.
    fn says(&self, ui: &Ui, state: &TrayState, rect: Rect) {
        let t = theme::of(ui.ctx());
        let low = rect.height() < 38.0;
        let (upper, lower) = rect.split_top_bottom_at_fraction(if low { 1.0 } else { 0.5 });
        let (n, search) = (self.items.len(), state.search.trim());
        let first = match (search.is_empty(), self.own == n) {
            (false, _) => format!("{n} for “{search}”"),
            (true, false) => format!("{n} symbols, yours first"),
            (true, true) => format!("{n} activities"),
        };
        let p = ui.painter();
        words::line(
            p,
            upper,
            Align2::LEFT_CENTER,
            &first,
            theme::bold(15.0),
            t.col.ink,
        );
        if low {
            return;
        }
        words::line(
            p,
            lower,
            Align2::LEFT_CENTER,
            &self.does,
            theme::regular(14.0),
            t.col.soft,
        );
    }

    fn row(
        &self,
        ui: &mut Ui,
        desk: &mut Desk<'_>,
        state: &mut TrayState,
        rect: Rect,
    ) -> Option<Pick> {
        let Some(now) = self.items.get(state.at) else {
            let t = theme::of(ui.ctx());
            let words = match state.group {
                Some(_) => "Nothing in this group fits. Try all groups.",
                None => "Nothing fits these words. Try another word for it.",
            };
            words::line(
                ui.painter(),
                rect,
                Align2::LEFT_CENTER,
                words,
                theme::regular(16.0),
                t.col.ink,
            );
            return None;
        };
        desk.regions.add(rect, self.item_id(now));
        let height = rect.height() - 14.0;
        let width = (height * 0.84).clamp(82.0, 92.0);
        let mut picked = None;
        let mut child = ui.new_child(UiBuilder::new().id_salt("items").max_rect(rect));
        ScrollArea::horizontal()
            .id_salt(self.name)
            .auto_shrink(false)
            .scroll_source(ScrollSource::SCROLL_BAR | ScrollSource::MOUSE_WHEEL)
            .show(&mut child, |ui| {
                let all = self.items.len() as f32 * (width + GAP) + 16.0;
                let (_, strip) = ui.allocate_space(vec2(all, height));
                let seen = ui.clip_rect().expand2(vec2(3.0 * width, 0.0));
                for i in 0..self.items.len() {
                    let shift = if i >= self.own && self.own > 0 {
                        16.0
                    } else {
                        0.0
                    };
                    let x = strip.left() + i as f32 * (width + GAP) + shift;
                    let place = Rect::from_min_size(pos2(x, strip.top()), vec2(width, height));
                    if place.intersects(seen) || i == state.at {
                        picked = self.item(ui, desk, state, i, place).or(picked.take());
                    }
                }
                self.divider(ui, strip, width);
            });
        picked
    }

    /// Parts the club's own from the others.
    fn divider(&self, ui: &Ui, strip: Rect, width: f32) {
        if self.own > 0 && self.own < self.items.len() {
            let t = theme::of(ui.ctx());
            let x = strip.left() + self.own as f32 * (width + GAP) + 5.0;
            let ys = strip.shrink2(vec2(0.0, 12.0)).y_range();
            ui.painter().vline(x, ys, Stroke::new(1.5, t.col.rule));
        }
    }

    fn item(
        &self,
        ui: &mut Ui,
        desk: &mut Desk<'_>,
        state: &mut TrayState,
        i: usize,
        rect: Rect,
    ) -> Option<Pick> {
        let content = &self.items[i];
        let sense = regions::one_stop(ui, self.item_id(content), i == state.at, true);
        let r = ui.interact(rect, self.item_id(content), sense);
        let n = self.items.len();
        r.widget_info(|| {
            let words = format!("{}, symbol {} of {n}", content.label, i + 1);
            WidgetInfo::labeled(Role::Button, true, words)
        });
        if ui.is_rect_visible(rect) {
            self.paint(ui, desk, rect, content, r.hovered());
            focus_ring(ui, &r, rect, 10);
        }
        if r.drag_started() {
            r.dnd_set_drag_payload(Held::New(content.clone()));
        }
        if r.clicked() {
            state.at = i;
            r.request_focus();
        }
        let pressed = |key| r.has_focus() && ui.input_mut(|i| i.consume_key(Modifiers::NONE, key));
        if pressed(Key::Enter) || r.double_clicked() || (self.eager && r.clicked()) {
            return Some(Pick::Add(content.clone()));
        }
        if pressed(Key::R) {
            return Some(Pick::Swap(content.clone()));
        }
        if r.has_focus() {
            self.arrows(ui, state, &r, i);
        }
        r.on_hover_cursor(CursorIcon::Grab);
        None
    }

    fn paint(&self, ui: &Ui, desk: &mut Desk<'_>, rect: Rect, content: &Content, over: bool) {
        let t = theme::of(ui.ctx());
        let p = ui.painter();
        let line = if over {
            Stroke::new(2.0, t.col.ink)
        } else {
            Stroke::new(1.2, t.col.seal_line)
        };
        p.rect(
            rect,
            CornerRadius::same(10),
            t.col.card,
            line,
            StrokeKind::Inside,
        );
        let inner = rect.shrink2(vec2(4.0, 5.0));
        let text_height = if rect.height() > 92.0 { 36.0 } else { 20.0 };
        let (picture, text) = inner.split_top_bottom_at_y(inner.bottom() - text_height);
        desk.pictures
            .symbol(p, picture.shrink(1.0), &content.symbol, self.figure);
        let rows = if text_height > 30.0 { 2 } else { 1 };
        words::label(p, text, &content.label, &[14.0, 13.0], rows, t.col.card_ink);
    }

    fn arrows(&self, ui: &Ui, state: &mut TrayState, r: &Response, i: usize) {
        regions::keep_arrows(ui, r.id);
        if let Some(to) = regions::arrows(ui, i, self.items.len(), 1) {
            state.at = to;
            ui.memory_mut(|m| m.request_focus(self.item_id(&self.items[to])));
        }
    }
}
