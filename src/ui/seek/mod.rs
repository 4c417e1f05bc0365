//! One field for everything: what can be done, who there is, where something stands.

mod found;

use std::rc::Rc;

use egui::{Align2, Id, Key, Modifiers, Rect, Ui, pos2, vec2};

use super::desk::Desk;
use super::dialogs;
use super::find;
use super::icons::{self, Icon};
use super::pictures::Eyes;
use super::theme;
use super::widgets::item::item;
use super::widgets::{card, focus_ring, words};
use crate::workbench::command::{Command, Place};
use crate::workbench::view::View;
pub use found::{Found, Goes};

/// Height of what was found.
const ROW: f32 = 48.0;

/// What is looked for.
#[derive(Clone, Debug)]
pub struct Seek {
    typed: String,
    chosen: usize,
    focus: bool,
    /// What was found for the words and the state of the club that stand beside it.
    found: Option<(String, u64, Rc<[Found]>)>,
}

impl Default for Seek {
    fn default() -> Self {
        Self {
            typed: String::new(),
            chosen: 0,
            focus: true,
            found: None,
        }
    }
}

impl Seek {
    /// What fits; it is looked for again only when words or club are others.
    fn found(&mut self, view: &View<'_>) -> Rc<[Found]> {
        let same = |(typed, revision, _): &&(String, u64, Rc<[Found]>)| {
            *typed == self.typed && *revision == view.revision
        };
        if let Some((_, _, found)) = self.found.as_ref().filter(same) {
            return Rc::clone(found);
        }
        let found: Rc<[Found]> = found::all(view, &self.typed).into();
        self.found = Some((self.typed.clone(), view.revision, Rc::clone(&found)));
        found
    }
}

/// What came of showing the card.
pub enum Went {
    /// It stays.
    Stays,
    /// It was put away.
    Away,
    /// Something was chosen; the card goes.
    To(Goes),
}

/// Shows the card.
pub fn show(ui: &Ui, desk: &mut Desk<'_>, seek: &mut Seek) -> Went {
    let (chosen, close) = dialogs::over(ui, "seek", "Find anything", |ui| body(ui, desk, seek));
    match chosen {
        Some(goes) => Went::To(goes),
        None if close => Went::Away,
        None => Went::Stays,
    }
}

fn body(ui: &mut Ui, desk: &mut Desk<'_>, seek: &mut Seek) -> Option<Goes> {
    let step = |key| ui.input_mut(|i| i.count_and_consume_key(Modifiers::NONE, key));
    let (down, up, enter) = (step(Key::ArrowDown), step(Key::ArrowUp), step(Key::Enter));
    let (_, rect) = ui.allocate_space(vec2(ui.available_width(), 52.0));
    let before = seek.typed.clone();
    let label = "A person, an activity, a symbol, or what you want to do";
    let r = find::field(ui, Id::unique("seek-field"), rect, label, &mut seek.typed);
    if std::mem::take(&mut seek.focus) {
        r.request_focus();
    }
    if seek.typed != before {
        seek.chosen = 0;
    }
    let all = seek.found(desk.view);
    let last = all.len().saturating_sub(1);
    seek.chosen = (seek.chosen + down).saturating_sub(up).min(last);
    ui.add_space(8.0);
    if all.is_empty() {
        words::soft(ui, "Nothing is called so. Try another word for it.");
        return None;
    }
    let room = (ui.ctx().content_rect().height() - 250.0).clamp(120.0, 10.0 * ROW);
    let mut went = None;
    egui::ScrollArea::vertical()
        .max_height(room)
        .min_scrolled_height(room)
        .auto_shrink([false, true])
        .show(ui, |ui| {
            ui.spacing_mut().item_spacing.y = 2.0;
            for (i, one) in all.iter().enumerate() {
                if row(
                    ui,
                    desk,
                    one,
                    (i, all.len(), i == seek.chosen),
                    down + up > 0,
                ) {
                    went = Some(i);
                }
            }
        });
    let by_key = (enter > 0).then_some(seek.chosen);
    went.or(by_key).map(|i| all[i].goes.clone())
}

fn row(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    one: &Found,
    (at, count, here): (usize, usize, bool),
    moved: bool,
) -> bool {
    let t = theme::of(ui.ctx());
    let name = format!("{}, {}, {} of {count}", one.label, one.kind, at + 1);
    let (r, rect) = item(ui, Id::unique(("seek-row", at)), ROW, here, &name);
    if here && moved {
        r.scroll_to_me(None);
    }
    let p = ui.painter();
    let square = Rect::from_min_size(rect.min + vec2(6.0, 4.0), vec2(40.0, 40.0));
    match &one.symbol {
        Some(symbol) => {
            card::plate(p, &t, square);
            let picture = square.shrink(3.0);
            desk.pictures.symbol(p, picture, symbol, Eyes::default());
        }
        None => {
            let sign = match one.goes {
                Goes::Do(_) => Icon::Right,
                _ => Icon::Search,
            };
            icons::paint(p, sign, icons::square(square.center(), 18.0), t.col.soft);
        }
    }
    let text = Rect::from_min_max(pos2(square.right() + 12.0, rect.top()), rect.max);
    let (left, right) = text.split_left_right_at_x(text.right() - 170.0);
    let ink = t.col.ink;
    words::line(
        p,
        left,
        Align2::LEFT_CENTER,
        &one.label,
        theme::bold(17.0),
        ink,
    );
    let right = right.with_max_x(right.right() - 10.0);
    let font = theme::regular(15.0);
    words::line(p, right, Align2::RIGHT_CENTER, &one.kind, font, t.col.soft);
    focus_ring(ui, &r, rect, theme::R_CONTROL);
    r.clicked()
}

/// What a choice asks of the workbench; what it asks of the window itself is done by the window.
pub fn commands(goes: &Goes) -> Vec<Command> {
    match goes {
        Goes::Do(_) => Vec::new(),
        Goes::To(spot) => vec![Command::GoTo(*spot)],
        Goes::Symbol(_) => vec![Command::ShowStory(false), Command::Show(Place::Boards)],
    }
}
