//! One card on the strand: how it hangs, how it is drawn, and its words while they are changed.

use egui::{CursorIcon, Key, Rect, Role, Ui, WidgetInfo, pos2, vec2};

use super::{Strip, card_id};
use crate::model::board::Step;
use crate::model::edit::BoardEdit;
use crate::ui::boards::card::{self, Look};
use crate::ui::boards::{BoardsState, slips};
use crate::ui::desk::Desk;
use crate::ui::pictures::Eyes;
use crate::ui::regions;
use crate::ui::strand::{HANG, LOWER, paint};
use crate::ui::theme;
use crate::ui::widgets::card::peg;
use crate::ui::widgets::field::Field;
use crate::ui::widgets::focus_ring;

/// A card on the strand.
pub struct Hangs<'s> {
    /// The step.
    pub step: &'s Step,
    /// Its place in the board.
    pub place: usize,
    /// The number on its peg; another one while something is held before it.
    pub number: usize,
    /// Where it belongs.
    pub home: Rect,
    /// Where it is on its way there.
    pub rect: Rect,
    /// What is in the hand would take its place.
    pub under: bool,
    /// How many hang side by side.
    pub per_row: usize,
}

impl Hangs<'_> {
    /// How much lower it hangs because it differs.
    fn lower(&self) -> f32 {
        if self.step.differs() { LOWER } else { 0.0 }
    }
}

impl Strip<'_> {
    /// A card: what it says, how it looks, what is done to it.
    pub fn card(
        &self,
        ui: &mut Ui,
        desk: &mut Desk<'_>,
        state: &mut BoardsState,
        mut hangs: Hangs<'_>,
    ) {
        let (step, place) = (hangs.step, hangs.place);
        let low = vec2(0.0, hangs.lower());
        hangs.home = hangs.home.translate(low);
        hangs.rect = hangs.rect.translate(low);
        let (home, rect, under) = (hangs.home, hangs.rect, hangs.under);
        let current = place == self.at;
        let sense = regions::one_stop(ui, card_id(self.person.id, step.at), current, true);
        let r = ui.interact(home, card_id(self.person.id, step.at), sense);
        let chosen = self.chosen.contains(&step.at);
        let count = self.board.steps.len();
        r.widget_info(|| {
            WidgetInfo::selected(
                Role::ListBoxOption,
                true,
                chosen,
                card::spoken(step, place, count),
            )
        });
        // Before the card, so that its tab and peg lie over the ring.
        focus_ring(ui, &r, rect, theme::R_CARD);
        if ui.is_rect_visible(rect.expand(30.0)) {
            let look = Look {
                step,
                figure: Eyes::of(self.person),
                chosen,
                swapping: under || state.swap == Some(step.at),
                finding: slips::about(&self.findings, step.at),
            };
            self.draw(ui, desk, &hangs, &look);
        }
        if state.relabel == Some(step.at) {
            self.relabel(ui, desk, state, rect, step);
        } else {
            self.act(ui, desk, state, &r, &hangs);
        }
        r.on_hover_cursor(CursorIcon::Grab);
    }

    fn draw(&self, ui: &Ui, desk: &mut Desk<'_>, hangs: &Hangs<'_>, look: &Look<'_>) {
        let (rect, lower) = (hangs.rect, hangs.lower());
        let t = theme::of(ui.ctx());
        let p = ui.painter();
        let at = pos2(rect.center().x, rect.top() - HANG - lower);
        if lower > 0.0 {
            paint::cord(p, &t, at, rect);
        }
        card::paint(p, desk.pictures, rect, look);
        let (fill, ink) = if look.chosen {
            (t.col.accent, t.col.on_accent)
        } else {
            (t.col.peg, t.col.on_peg)
        };
        peg(p, at, &hangs.number.to_string(), fill, ink);
    }

    /// The words of a step while they are being changed.
    fn relabel(
        &self,
        ui: &mut Ui,
        desk: &mut Desk<'_>,
        state: &mut BoardsState,
        rect: Rect,
        step: &Step,
    ) {
        let id = card_id(self.person.id, step.at).with("words");
        let place = Rect::from_min_max(
            pos2(rect.left() - 8.0, rect.bottom() - 48.0),
            rect.max + vec2(8.0, -4.0),
        );
        let begun = ui.ctx().read_response(id).is_some();
        let entered = Field::new(id, "Words under the picture", &step.label)
            .centred()
            .show_at(ui, desk.drafts, place);
        if !begun {
            ui.memory_mut(|m| m.request_focus(id));
        } else if !ui.memory(|m| m.has_focus(id)) {
            state.relabel = None;
            state.focus_step =
                ui.input(|i| i.key_pressed(Key::Enter) || i.key_pressed(Key::Escape));
        }
        let entered = entered
            .map(|w| w.trim().to_owned())
            .filter(|w| !w.is_empty());
        if let Some(label) = entered {
            desk.board(self.person.id, BoardEdit::Relabel(step.at, label));
        }
    }
}
