//! The board on the strand: cards to choose, drag, relabel, and the gap for what is in the hand.

use egui::{
    Align2, CursorIcon, DragAndDrop, Id, Key, Modifiers, Pos2, Rect, Response, Role, ScrollArea,
    Ui, UiBuilder, WidgetInfo, pos2, vec2,
};

use super::card::{self, Look};
use super::held::{self, Held};
use super::{BoardsState, slips};
use crate::model::board::{Board, By, Step, StepState};
use crate::model::club::Club;
use crate::model::edit::BoardEdit;
use crate::model::finding::Finding;
use crate::model::hand::Content;
use crate::model::ids::{ParticipantId, StepRef};
use crate::model::people::Participant;
use crate::ui::desk::Desk;
use crate::ui::regions;
use crate::ui::strand::{Grid, HANG, LOWER, paint};
use crate::ui::theme;
use crate::ui::widgets::card::peg;
use crate::ui::widgets::field::Field;
use crate::ui::widgets::{focus_ring, words};
use crate::workbench::command::Command;

/// The name of a step's card to the toolkit.
pub fn card_id(who: ParticipantId, step: StepRef) -> Id {
    Id::unique(("step-card", who, step))
}

/// Shows the board of the chosen participant.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut BoardsState, rect: Rect) {
    let view = desk.view;
    let (Some(person), Some(board)) = (view.participant, view.board()) else {
        nothing(
            ui,
            rect,
            "Nobody comes to this session yet.",
            "Say who comes in Session.",
        );
        return;
    };
    let at = view.step.and_then(|s| board.position(s)).unwrap_or(0);
    if let Some(step) = board.steps.get(at) {
        desk.regions.add(rect, card_id(person.id, step.at));
        if std::mem::take(&mut state.focus_step) {
            desk.ask(Command::ChooseStep(Some(step.at)));
            ui.memory_mut(|m| m.request_focus(card_id(person.id, step.at)));
        }
    }
    let hand = held::in_hand(ui.ctx());
    let findings = slips::of(view);
    let strip = Strip {
        club: view.club,
        person,
        board,
        at,
        rect,
        hand,
        findings,
    };
    let mut child = ui.new_child(UiBuilder::new().id_salt(("line", person.id)).max_rect(rect));
    ScrollArea::vertical()
        .id_salt("strand")
        .auto_shrink(false)
        .scroll_source(
            egui::scroll_area::ScrollSource::SCROLL_BAR
                | egui::scroll_area::ScrollSource::MOUSE_WHEEL,
        )
        .show(&mut child, |ui| strip.show(ui, desk, state));
    if board.steps.is_empty() && strip.hand.is_none() {
        let lower = rect.with_min_y(rect.top() + 60.0);
        nothing(
            ui,
            lower,
            "Nothing hangs here yet.",
            "Drag a symbol here, or fill the timetable in Session.",
        );
    }
    strip.drop(ui, desk, state.gap, rect);
}

fn nothing(ui: &mut Ui, rect: Rect, first: &str, second: &str) {
    let t = theme::of(ui.ctx());
    let (upper, lower) = rect.shrink(20.0).split_top_bottom_at_y(rect.top() + 70.0);
    let p = ui.painter();
    words::line(
        p,
        upper,
        Align2::CENTER_BOTTOM,
        first,
        theme::bold(20.0),
        t.col.ink,
    );
    let g = words::lay_centred(
        p,
        second,
        theme::regular(16.0),
        t.col.soft,
        lower.width(),
        3,
    );
    p.galley(pos2(lower.center().x, lower.top() + 4.0), g, t.col.soft);
}

/// One frame of the strand.
struct Strip<'a> {
    club: &'a Club,
    person: &'a Participant,
    board: &'a Board,
    /// Which step the keyboard is on or would be.
    at: usize,
    rect: Rect,
    hand: Option<(std::sync::Arc<Held>, Pos2)>,
    findings: Vec<&'a Finding>,
}

/// A card on the strand.
struct Hangs<'s> {
    step: &'s Step,
    /// Its place in the board.
    place: usize,
    /// The number on its peg; another one while something is held before it.
    number: usize,
    /// Where it belongs.
    home: Rect,
    /// Where it is on its way there.
    rect: Rect,
    /// What is in the hand would take its place.
    under: bool,
    per_row: usize,
}

impl Hangs<'_> {
    /// How much lower it hangs because it differs.
    fn lower(&self) -> f32 {
        if self.step.differs() { LOWER } else { 0.0 }
    }
}

impl Strip<'_> {
    /// Cards are smaller where a whole row of large ones would not be seen.
    fn card_side(&self) -> f32 {
        if self.rect.height() < 230.0 {
            theme::CARD_LOW
        } else {
            theme::CARD
        }
    }

    /// The step that is in the hand, if it is one of this board.
    fn held_step(&self) -> Option<StepRef> {
        match self.hand.as_ref().map(|(h, _)| h.as_ref()) {
            Some(Held::Step(s, _)) => Some(*s),
            _ => None,
        }
    }

    /// The steps that lie on the line, each with its place in the board.
    fn lying(&self) -> Vec<(usize, &Step)> {
        let held = self.held_step();
        let all = self.board.steps.iter().enumerate();
        all.filter(|(_, s)| Some(s.at) != held).collect()
    }

    /// Shift with a new symbol in the hand means: swap it for the card under it.
    fn swaps(&self, ui: &Ui) -> bool {
        let new = matches!(
            self.hand.as_ref().map(|(h, _)| h.as_ref()),
            Some(Held::New(_))
        );
        new && ui.input(|i| i.modifiers.shift)
    }

    fn over(&self) -> Option<Pos2> {
        self.hand
            .as_ref()
            .map(|(_, at)| *at)
            .filter(|at| self.rect.contains(*at))
    }

    fn show(&self, ui: &mut Ui, desk: &mut Desk<'_>, state: &mut BoardsState) {
        let lying = self.lying();
        let closed = Grid::fit(
            ui.cursor().min,
            ui.available_width(),
            self.card_side(),
            lying.len(),
        );
        let gap = self
            .over()
            .filter(|_| !self.swaps(ui))
            .map(|at| closed.place_at(at));
        state.gap = gap;
        let grid = closed.with_count(lying.len() + usize::from(gap.is_some()));
        ui.allocate_space(vec2(ui.available_width(), grid.height()));
        let t = theme::of(ui.ctx());
        paint::rope(ui.painter(), &t, state.rope(&grid));
        let cell = |i: usize| i + usize::from(gap.is_some_and(|g| i >= g));
        self.parts(ui, &grid, &lying, cell);
        self.ends(ui, &grid);
        if let Some(g) = gap {
            let number = (g + 1).to_string();
            paint::gap(
                ui.painter(),
                &t,
                grid.card(g),
                "goes here",
                &number,
                grid.peg(g),
            );
            if let Some(held) = self.held_step() {
                self.slide(ui, held, grid.card(g), &grid);
            }
        }
        let target = self.over().filter(|_| self.swaps(ui));
        for (i, (place, step)) in lying.iter().enumerate() {
            let home = grid.card(cell(i));
            let rect = self.slide(ui, step.at, home, &grid);
            let under = target.is_some_and(|at| home.contains(at));
            let hangs = Hangs {
                step,
                place: *place,
                number: cell(i) + 1,
                home,
                rect,
                under,
                per_row: grid.per_row,
            };
            self.card(ui, desk, state, hangs);
        }
        held::autoscroll(ui, self.rect, self.over());
    }

    /// Knots and names where a part of the day begins.
    fn parts(&self, ui: &Ui, grid: &Grid, lying: &[(usize, &Step)], cell: impl Fn(usize) -> usize) {
        let t = theme::of(ui.ctx());
        let mut before = None;
        let starts: Vec<usize> = (0..lying.len())
            .filter(|&i| {
                let part = lying[i].1.part;
                before.replace(part) != Some(part)
            })
            .collect();
        for (n, &i) in starts.iter().enumerate() {
            let first = cell(i);
            let row_end = (first / grid.per_row + 1) * grid.per_row;
            let next = starts.get(n + 1).map_or(row_end, |&j| cell(j).min(row_end));
            let room = (next - first) as f32 * (grid.card + grid.gap) - 14.0;
            let knot = grid.knot(first);
            paint::knot(ui.painter(), &t, knot, 9.0);
            self.part_name(ui, knot, room, lying[i].1);
        }
    }

    fn part_name(&self, ui: &Ui, knot: Pos2, room: f32, step: &Step) {
        let t = theme::of(ui.ctx());
        if let Some(part) = self.club.part(step.part) {
            paint::name(ui.painter(), &t, knot, room, &part.name);
        }
    }

    /// The ring where the day begins and the stopper where it ends.
    fn ends(&self, ui: &Ui, grid: &Grid) {
        let t = theme::of(ui.ctx());
        let p = ui.painter();
        paint::ring(p, &t.col, grid.ring(), 9.0, t.col.ground);
        let stopper = grid.stopper();
        paint::stopper(p, &t, stopper);
        let right = (stopper.x + 44.0).min(self.rect.right() - 2.0);
        let place = Rect::from_min_max(
            pos2(right - 110.0, stopper.y - 41.0),
            pos2(right, stopper.y - 15.0),
        );
        words::line(
            p,
            place,
            Align2::RIGHT_CENTER,
            "Finished",
            theme::bold(18.0),
            t.col.ink,
        );
    }

    /// Where a card is on its way to `home`.
    fn slide(&self, ui: &Ui, step: StepRef, home: Rect, grid: &Grid) -> Rect {
        let t = theme::of(ui.ctx());
        let id = card_id(self.person.id, step);
        let goal = home.min - grid.origin;
        let ctx = ui.ctx();
        let x = ctx.animate_value_with_time(id.with("x"), goal.x, t.slide());
        let y = ctx.animate_value_with_time(id.with("y"), goal.y, t.slide());
        Rect::from_min_size(grid.origin + vec2(x, y), home.size())
    }

    fn card(
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
        let chosen = desk.view.step == Some(step.at);
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
                figure: self.person.figure,
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

    fn act(
        &self,
        ui: &Ui,
        desk: &mut Desk<'_>,
        state: &mut BoardsState,
        r: &Response,
        hangs: &Hangs<'_>,
    ) {
        let step = hangs.step;
        if r.drag_started() {
            let content = Content {
                activity: step.activity,
                symbol: step.symbol.clone(),
                label: step.label.clone(),
            };
            r.dnd_set_drag_payload(Held::Step(step.at, content));
            desk.ask(Command::ChooseStep(Some(step.at)));
        }
        if r.clicked() {
            desk.ask(Command::ChooseStep(Some(step.at)));
            r.request_focus();
        }
        if r.double_clicked() {
            state.relabel = Some(step.at);
        }
        if r.has_focus() {
            regions::keep_arrows(ui, r.id);
            self.keys(ui, desk, state, step, hangs.per_row);
        }
    }

    /// Keys on the card that has the keyboard.
    fn keys(
        &self,
        ui: &Ui,
        desk: &mut Desk<'_>,
        state: &mut BoardsState,
        step: &Step,
        per_row: usize,
    ) {
        let (who, n) = (self.person.id, self.board.steps.len());
        let Some(at) = self.board.position(step.at) else {
            return;
        };
        if desk.view.step != Some(step.at) {
            desk.ask(Command::ChooseStep(Some(step.at)));
        }
        if let Some(to) = regions::alt_arrows(ui, at, n, per_row) {
            desk.board(who, BoardEdit::Move(step.at, to));
        }
        if let Some(to) = regions::arrows(ui, at, n, per_row) {
            let next = self.board.steps[to].at;
            desk.ask(Command::ChooseStep(Some(next)));
            ui.memory_mut(|m| m.request_focus(card_id(who, next)));
        }
        let pressed = |key| ui.input_mut(|i| i.consume_key(Modifiers::NONE, key));
        if pressed(Key::Delete) {
            let next = self
                .board
                .steps
                .get(at + 1)
                .or_else(|| at.checked_sub(1).map(|b| &self.board.steps[b]));
            if let (StepRef::Own(_), Some(next)) = (step.at, next) {
                desk.ask(Command::ChooseStep(Some(next.at)));
                ui.memory_mut(|m| m.request_focus(card_id(who, next.at)));
            }
            super::take_off(desk, who, self.board, step.at);
        }
        let off = step.state == StepState::NotToday;
        if off && pressed(Key::T) {
            desk.board(who, BoardEdit::DoToday(step.at));
        }
        if off && matches!(step.at, StepRef::Slot(_)) && pressed(Key::I) {
            state.begin_instead(step.at);
        }
        if !off && pressed(Key::C) {
            state.begin_choice(step.at);
        }
        if pressed(Key::Backspace) && !matches!(step.at, StepRef::Own(_)) {
            desk.board(who, BoardEdit::Restore(step.at));
        }
        if let StepRef::Slot(slot) = step.at
            && pressed(Key::G)
        {
            let hand = desk.view.session.and_then(|s| s.hand_of(who));
            let with = hand.is_some_and(|h| h.with_group.contains(&slot));
            if with || step.by == By::Standing {
                desk.board(who, BoardEdit::WithGroup(slot, !with));
            }
        }
        if pressed(Key::F2) {
            state.relabel = Some(step.at);
        }
        if pressed(Key::R) {
            state.swap = Some(step.at);
            state.tray.focus_search = true;
        }
    }

    /// Lets go of what is in the hand.
    fn drop(&self, ui: &Ui, desk: &mut Desk<'_>, gap: Option<usize>, rect: Rect) {
        if !ui.input(|i| i.pointer.any_released()) {
            return;
        }
        let Some((held, at)) = self.hand.clone() else {
            return;
        };
        DragAndDrop::clear_payload(ui.ctx());
        let who = self.person.id;
        if !rect.contains(at) {
            if let Held::Step(step, _) = held.as_ref() {
                super::take_off(desk, who, self.board, *step);
            }
            return;
        }
        let under = |s: &&Step| {
            ui.ctx()
                .read_response(card_id(who, s.at))
                .is_some_and(|r| r.rect.contains(at))
        };
        if self.swaps(ui) {
            if let (Held::New(content), Some(step)) =
                (held.as_ref(), self.board.steps.iter().find(under))
            {
                desk.board(who, BoardEdit::Replace(step.at, content.clone()));
            }
            return;
        }
        let Some(place) = gap else { return };
        match held.as_ref() {
            Held::New(content) => desk.board(who, BoardEdit::Insert(content.clone(), place)),
            Held::Slot(..) => {}
            Held::Step(step, _) => {
                if self.board.position(*step) != Some(place) {
                    desk.board(who, BoardEdit::Move(*step, place));
                }
            }
        }
    }
}
