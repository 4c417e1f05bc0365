//! All boards at once, row by row: what is as in the timetable is a small plate, what differs is a
//! large card with its words.

use egui::{
    Align2, CornerRadius, CursorIcon, Id, Key, Modifiers, Painter, Pos2, Rect, Role, ScrollArea,
    Stroke, StrokeKind, Ui, UiBuilder, Vec2, WidgetInfo, pos2, vec2,
};

use super::BoardsState;
use super::who::differs;
use crate::model::board::{Board, Step, StepState};
use crate::model::ids::{ParticipantId, StepRef};
use crate::model::people::Participant;
use crate::model::session::Session;
use crate::ui::actions::Action;
use crate::ui::desk::Desk;
use crate::ui::icons::{self, Icon};
use crate::ui::regions;
use crate::ui::strand::{Rope, paint};
use crate::ui::theme::{self, Theme};
use crate::ui::widgets::button::Button;
use crate::ui::widgets::card::{Lie, face_down, peg, plate, tile};
use crate::ui::widgets::choose::segments;
use crate::ui::widgets::{focus_ring, words};
use crate::workbench::command::Command;

const ROW: f32 = 58.0;
const HEAD: f32 = 152.0;
const NAMES: f32 = 192.0;

/// Shows the place.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut BoardsState, rect: Rect) {
    header(
        ui,
        desk,
        state,
        rect.with_max_y(rect.top() + theme::CONTROL),
    );
    let Some(session) = desk.view.session else {
        return;
    };
    let area = rect.with_min_y(rect.top() + theme::CONTROL + 4.0);
    state.group_at = state.group_at.min(desk.view.boards.len().saturating_sub(1));
    let mut child = ui.new_child(UiBuilder::new().id_salt("group").max_rect(area));
    ScrollArea::both()
        .id_salt("group")
        .auto_shrink(false)
        .show(&mut child, |ui| {
            let n = session.timetable.len().max(1) as f32;
            let column = ((ui.available_width() - NAMES - 30.0) / n)
                .clamp(96.0, 140.0)
                .floor();
            let rows = desk.view.boards.len() as f32;
            let size = vec2(NAMES + n * column + 30.0, HEAD + rows * ROW + 6.0);
            let (_, place) = ui.allocate_space(size);
            let table = Table {
                session,
                origin: place.min,
                column,
            };
            table.head(ui, desk);
            for i in 0..desk.view.boards.len() {
                table.row(ui, desk, state, i);
            }
        });
    if let Some((who, _)) = desk.view.boards.get(state.group_at) {
        desk.regions.add(area, row_id(*who));
    }
}

fn row_id(who: ParticipantId) -> Id {
    Id::unique(("group-row", who))
}

fn header(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut BoardsState, rect: Rect) {
    let t = theme::of(ui.ctx());
    let back = Button::new("one-board", "One board").tip("Back to one board (Ctrl+G)");
    let width = back.needs(ui);
    let right = Rect::from_min_max(pos2(rect.right() - width, rect.top()), rect.max);
    let pair = Rect::from_min_max(
        pos2(right.left() - 272.0, rect.top()),
        pos2(right.left() - 12.0, rect.bottom()),
    );
    let chosen = usize::from(state.differs_only);
    if let Some(i) = segments(
        ui,
        "group-what",
        pair,
        &["All steps", "Differs only"],
        chosen,
    ) {
        state.differs_only = i == 1;
    }
    if back.show_at(ui, right).clicked() {
        desk.actions.push(Action::Group);
    }
    let p = ui.painter();
    let text = rect.with_max_x(pair.left() - 10.0);
    let took = words::line(
        p,
        text,
        Align2::LEFT_CENTER,
        "Whole group",
        theme::bold(24.0),
        t.col.ink,
    );
    let boards = desk.view.boards.len();
    let all: usize = desk.view.boards.iter().map(|(_, b)| b.differences()).sum();
    let says = match all {
        0 => format!("{boards} boards, all as the timetable"),
        1 => format!("{boards} boards, 1 place differs from the timetable"),
        n => format!("{boards} boards, {n} places differ from the timetable"),
    };
    let rest = text.with_min_x(took.right() + 16.0);
    words::line(
        p,
        rest,
        Align2::LEFT_CENTER,
        &says,
        theme::regular(16.0),
        t.col.soft,
    );
}

struct Table<'a> {
    session: &'a Session,
    origin: Pos2,
    column: f32,
}

impl Table<'_> {
    fn middle(&self, column: usize) -> f32 {
        self.origin.x + NAMES + (column as f32 + 0.5) * self.column
    }

    /// The timetable along the top, as cards on the strand.
    fn head(&self, ui: &Ui, desk: &mut Desk<'_>) {
        let t = theme::of(ui.ctx());
        let p = ui.painter();
        let y = self.origin.y + 38.0;
        let n = self.session.timetable.len();
        let mut rope = Rope {
            points: vec![pos2(self.origin.x + NAMES - 4.0, y)],
            arrows: Vec::new(),
        };
        for i in 0..n {
            rope.sag_to(pos2(self.middle(i), y));
        }
        rope.sag_to(pos2(
            self.origin.x + NAMES + n as f32 * self.column + 6.0,
            y,
        ));
        paint::rope(p, &t, &rope);
        self.parts(p, &t, desk, y);
        let left = Rect::from_min_size(pos2(self.origin.x, y + 22.0), vec2(NAMES - 16.0, 56.0));
        let (upper, lower) = left.split_top_bottom_at_fraction(0.5);
        words::line(
            p,
            upper,
            Align2::LEFT_BOTTOM,
            "Timetable",
            theme::bold(18.0),
            t.col.ink,
        );
        let steps = format!("{n} steps");
        words::line(
            p,
            lower,
            Align2::LEFT_TOP,
            &steps,
            theme::regular(15.0),
            t.col.soft,
        );
        for (i, slot) in self.session.timetable.iter().enumerate() {
            let Some(activity) = desk.view.club.activity(slot.activity) else {
                continue;
            };
            let card = Rect::from_min_size(
                pos2(
                    self.middle(i) - (self.column - 10.0).min(110.0) / 2.0,
                    y + 8.0,
                ),
                vec2((self.column - 10.0).min(110.0), 102.0),
            );
            let paper = tile(p, &t, card, Lie::Ground).shrink(3.0);
            let (picture, text) = paper.split_top_bottom_at_y(paper.bottom() - 36.0);
            desk.pictures
                .symbol(p, picture, &activity.symbol, Default::default());
            words::label(
                p,
                text,
                &activity.label,
                &[15.0, 14.0, 13.0],
                2,
                t.col.card_ink,
            );
            peg(
                p,
                pos2(self.middle(i), y),
                &(i + 1).to_string(),
                t.col.peg,
                t.col.on_peg,
            );
        }
    }

    fn parts(&self, p: &Painter, t: &Theme, desk: &Desk<'_>, y: f32) {
        let slots = &self.session.timetable;
        let bottom = self.origin.y + HEAD + desk.view.boards.len() as f32 * ROW;
        for i in 0..slots.len() {
            if i > 0 && slots[i - 1].part == slots[i].part {
                continue;
            }
            let run = slots[i..]
                .iter()
                .take_while(|s| s.part == slots[i].part)
                .count();
            let x = self.middle(i) - self.column / 2.0;
            let room = run as f32 * self.column - 12.0;
            if i > 0 {
                p.vline(x, (y + 16.0)..=bottom, Stroke::new(1.0, t.col.rule));
            }
            paint::knot(p, t, pos2(x, y), 8.0);
            if let Some(part) = desk.view.club.part(slots[i].part) {
                paint::name(p, t, pos2(x, y + 1.0), room, &part.name);
            }
        }
    }

    fn row(&self, ui: &mut Ui, desk: &mut Desk<'_>, state: &mut BoardsState, i: usize) {
        let (who, board) = &desk.view.boards[i];
        let Some(person) = desk.view.club.participant(*who) else {
            return;
        };
        let n = self.session.timetable.len();
        let top = self.origin.y + HEAD + i as f32 * ROW;
        let width = NAMES + n as f32 * self.column + 24.0;
        let rect =
            Rect::from_min_size(pos2(self.origin.x, top), vec2(width, ROW)).shrink2(vec2(2.0, 1.0));
        let sense = regions::one_stop(ui, row_id(*who), i == state.group_at, false);
        let r = ui.interact(rect, row_id(*who), sense);
        let how = differs(board);
        r.widget_info(|| WidgetInfo::labeled(Role::Button, true, spoken(person, board, &how)));
        let t = theme::of(ui.ctx());
        let chosen = desk.view.participant.is_some_and(|p| p.id == *who);
        if ui.is_rect_visible(rect) {
            let p = ui.painter().clone();
            if chosen || r.hovered() {
                let line = Stroke::new(1.2, t.col.rule);
                p.rect(
                    rect,
                    CornerRadius::same(theme::R_CARD),
                    t.col.panel,
                    line,
                    StrokeKind::Inside,
                );
            }
            self.name(&p, desk, person, &how, top);
            self.thread(
                &p,
                desk,
                (person, board),
                state.differs_only,
                top + ROW / 2.0,
            );
            focus_ring(ui, &r, rect, theme::R_CARD);
        }
        let at = ui.ctx().pointer_interact_pos();
        let enter = r.has_focus() && ui.input_mut(|i| i.consume_key(Modifiers::NONE, Key::Enter));
        if r.clicked() || enter {
            desk.ask(Command::ChooseParticipant(*who));
            if let Some(step) = at
                .filter(|_| r.clicked_by(egui::PointerButton::Primary))
                .and_then(|at| self.step_at(board, at.x))
            {
                desk.ask(Command::ChooseStep(Some(step)));
            }
            desk.actions.push(Action::Group);
        }
        if r.has_focus() {
            regions::keep_arrows(ui, r.id);
            if let Some(to) = regions::arrows(ui, i, desk.view.boards.len(), 1) {
                state.group_at = to;
                ui.memory_mut(|m| m.request_focus(row_id(desk.view.boards[to].0)));
            }
        }
        r.on_hover_cursor(CursorIcon::PointingHand);
    }

    fn name(&self, p: &Painter, desk: &mut Desk<'_>, person: &Participant, how: &str, top: f32) {
        let t = theme::of(p.ctx());
        let mark = Rect::from_min_size(pos2(self.origin.x + 10.0, top + 9.0), Vec2::splat(42.0));
        plate(p, &t, mark);
        desk.pictures.mark(p, mark.shrink(7.0), &person.mark);
        let text = Rect::from_min_size(
            pos2(mark.right() + 9.0, top + 7.0),
            vec2(NAMES - 74.0, 46.0),
        );
        let (upper, lower) = text.split_top_bottom_at_fraction(0.52);
        words::line(
            p,
            upper,
            Align2::LEFT_BOTTOM,
            &person.name,
            theme::bold(16.0),
            t.col.ink,
        );
        words::line(
            p,
            lower,
            Align2::LEFT_TOP,
            how,
            theme::regular(14.0),
            t.col.soft,
        );
    }

    /// The thread of one board with its plates and cards.
    fn thread(
        &self,
        p: &Painter,
        desk: &mut Desk<'_>,
        (person, board): (&Participant, &Board),
        differs_only: bool,
        y: f32,
    ) {
        let t = theme::of(p.ctx());
        let n = self.session.timetable.len();
        let left = pos2(self.origin.x + NAMES + 2.0, y);
        let right = pos2(
            self.middle(n.saturating_sub(1)) + self.column / 2.0 + 4.0,
            y,
        );
        paint::line(p, &t, &[left, right], 3.5);
        paint::ring(p, &t.col, left, 5.0, t.col.ground);
        p.circle_filled(right, 5.0, t.col.rope);
        for pass in [false, true] {
            for (step, at) in self.places(board) {
                if step.differs() != pass || (differs_only && !pass) {
                    continue;
                }
                self.step(p, desk, step, person, pos2(at, y));
            }
        }
    }

    /// Every step with the middle of its place: timetable steps in their column, own steps on the
    /// line after the column they follow.
    fn places<'b>(&self, board: &'b Board) -> Vec<(&'b Step, f32)> {
        let column = |s: &Step| match s.at {
            StepRef::Slot(id) => self.session.timetable.iter().position(|x| x.id == id),
            _ => None,
        };
        let mut edge = self.origin.x + NAMES + 8.0;
        let mut all = Vec::with_capacity(board.steps.len());
        for s in &board.steps {
            if let Some(c) = column(s) {
                all.push((s, self.middle(c)));
                edge = self.middle(c) + self.column / 2.0;
            } else {
                let crowded = all.last().is_some_and(|(b, _): &(&Step, f32)| b.differs());
                all.push((s, edge + if crowded { 9.0 } else { 0.0 }));
                edge += 30.0;
            }
        }
        all
    }

    fn step_at(&self, board: &Board, x: f32) -> Option<StepRef> {
        let near = |(s, at): &(&Step, f32)| {
            let half = if !matches!(s.at, StepRef::Slot(_)) {
                28.0
            } else {
                self.column / 2.0
            };
            (x - at).abs() <= half
        };
        let places = self.places(board);
        let own = places
            .iter()
            .filter(|p| near(p))
            .find(|(s, _)| !matches!(s.at, StepRef::Slot(_)));
        own.or_else(|| places.iter().find(|p| near(p)))
            .map(|(s, _)| s.at)
    }

    fn step(&self, p: &Painter, desk: &mut Desk<'_>, s: &Step, person: &Participant, at: Pos2) {
        let t = &theme::of(p.ctx());
        if !s.differs() {
            let rect = Rect::from_center_size(at, Vec2::splat(44.0));
            plate(p, t, rect);
            desk.pictures
                .symbol(p, rect.shrink(4.0), &s.symbol, person.figure);
            return;
        }
        let own = !matches!(s.at, StepRef::Slot(_));
        let width = if own {
            48.0
        } else {
            (self.column - 4.0).min(112.0)
        };
        let rect = Rect::from_center_size(at, vec2(width, 54.0));
        if s.state == StepState::NotToday {
            let back = face_down(p, t, rect).shrink2(vec2(2.0, 0.0));
            words::label(p, back, "Not today", &[14.0, 13.0], 2, t.col.card_ink);
            return;
        }
        let paper = tile(p, t, rect, Lie::Ground).shrink(1.0);
        if own {
            let (picture, text) = paper.split_top_bottom_at_y(paper.bottom() - 15.0);
            desk.pictures.symbol(p, picture, &s.symbol, person.figure);
            words::line(
                p,
                text,
                Align2::CENTER_CENTER,
                "own",
                theme::bold(13.0),
                t.col.card_ink,
            );
        } else {
            beside(p, desk, paper, s, person);
        }
        let icon = if own {
            Icon::Plus
        } else if s.relabelled && s.state == StepState::AsTimetable {
            Icon::Pen
        } else {
            Icon::Swap
        };
        let badge = rect.left_top() + vec2(3.0, 3.0);
        p.circle_filled(badge, 10.0, t.col.peg);
        icons::paint(p, icon, icons::square(badge, 13.0), t.col.on_peg);
    }
}

/// Picture and words side by side; one above the other where a word is too long for that.
fn beside(p: &Painter, desk: &mut Desk<'_>, paper: Rect, s: &Step, person: &Participant) {
    let ink = theme::of(p.ctx()).col.card_ink;
    let (picture, text) = paper.split_left_right_at_x(paper.left() + 42.0);
    let text = text.expand2(vec2(1.0, 2.0));
    if words::fits(p, &s.label, 13.0, text.width()) {
        desk.pictures.symbol(p, picture, &s.symbol, person.figure);
        words::label(p, text, &s.label, &[14.0, 13.0], 2, ink);
    } else {
        let (picture, text) = paper.split_top_bottom_at_y(paper.bottom() - 16.0);
        desk.pictures.symbol(p, picture, &s.symbol, person.figure);
        words::label(
            p,
            text.expand2(vec2(0.0, 2.0)),
            &s.label,
            &[13.5, 12.5],
            1,
            ink,
        );
    }
}

/// What a screen reader says of a row.
fn spoken(person: &Participant, board: &Board, how: &str) -> String {
    let mut all = format!("{}, {how}", person.name);
    for s in board.steps.iter().filter(|s| s.differs()) {
        let says = super::card::says(s).map_or_else(|| "not today".to_owned(), |(_, w, _)| w);
        all.push_str(&format!("; {} {says}", s.label));
    }
    all
}
