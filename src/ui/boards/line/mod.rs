//! The board on the strand: where its cards hang, and the gap for what is in the hand.

mod hands;
mod hangs;

use egui::{Align2, Id, Pos2, Rect, ScrollArea, Ui, UiBuilder, pos2, vec2};

use self::hangs::Hangs;
use super::held::{self, Held};
use super::{BoardsState, slips};
use crate::model::board::{Board, Step};
use crate::model::club::Club;
use crate::model::finding::Finding;
use crate::model::ids::{ParticipantId, StepRef};
use crate::model::people::Participant;
use crate::ui::desk::Desk;
use crate::ui::strand::{Grid, paint};
use crate::ui::theme;
use crate::ui::widgets::words;
use crate::workbench::command::Command;

/// Below this height cards are smaller if the whole day is seen then.
const LOW: f32 = 420.0;
/// So much of the drawing is only room below the last cards.
const SPARE: f32 = 20.0;

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
    if state.several.escaped(ui) {
        state.focus_step = true;
    }
    let chosen = state.several.all(board, view.step);
    let strip = Strip {
        club: view.club,
        person,
        board,
        at,
        rect,
        hand,
        chosen,
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
    /// Every step that is chosen, in the order of the board.
    chosen: Vec<StepRef>,
    findings: Vec<&'a Finding>,
}

impl Strip<'_> {
    /// Cards are smaller where a whole row of large ones would not be seen, or where two rows of
    /// small ones show the whole day and large ones do not.
    fn card_side(&self) -> f32 {
        let (room, n) = (self.rect.size(), self.board.steps.len());
        let whole = |side| Grid::fit(Pos2::ZERO, room.x, side, n).height() <= room.y + SPARE;
        let small = !whole(theme::CARD) && whole(theme::CARD_LOW);
        if room.y < 230.0 || (room.y < LOW && small) {
            theme::CARD_LOW
        } else {
            theme::CARD
        }
    }

    /// The steps that are in the hand.
    fn held_steps(&self) -> &[StepRef] {
        match self.hand.as_ref().map(|(h, _)| h.as_ref()) {
            Some(Held::Steps(_, steps, _)) => steps,
            _ => &[],
        }
    }

    /// The steps that lie on the line, each with its place in the board; what is copied stays there.
    fn lying(&self, ui: &Ui) -> Vec<(usize, &Step)> {
        let held = if held::copies(ui) {
            &[]
        } else {
            self.held_steps()
        };
        let all = self.board.steps.iter().enumerate();
        all.filter(|(_, s)| !held.contains(&s.at)).collect()
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
        let lying = self.lying(ui);
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
        let wide = gap.map_or(0, |_| self.held_steps().len().max(1));
        let grid = closed.with_count(lying.len() + wide);
        ui.allocate_space(vec2(ui.available_width(), grid.height()));
        let t = theme::of(ui.ctx());
        paint::rope(ui.painter(), &t, state.rope(&grid));
        let cell = |i: usize| i + if gap.is_some_and(|g| i >= g) { wide } else { 0 };
        self.parts(ui, &grid, &lying, cell);
        self.ends(ui, &grid);
        if let Some(g) = gap {
            self.gap(ui, &grid, g, wide);
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

    /// The places that are free for what is in the hand.
    fn gap(&self, ui: &Ui, grid: &Grid, first: usize, wide: usize) {
        let t = theme::of(ui.ctx());
        for place in first..first + wide {
            let words = match (place == first, wide) {
                (true, 1) => "goes here",
                (true, _) => "go here",
                _ => "",
            };
            let number = (place + 1).to_string();
            let card = grid.card(place);
            paint::gap(ui.painter(), &t, card, words, &number, grid.peg(place));
        }
        if !held::copies(ui) {
            for (i, held) in self.held_steps().iter().enumerate() {
                self.slide(ui, *held, grid.card(first + i), grid);
            }
        }
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
}
