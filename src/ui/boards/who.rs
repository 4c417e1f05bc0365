//! The participants at the side: mark, name, and in words how their board differs.

use std::sync::Arc;

use egui::{
    Align2, CornerRadius, CursorIcon, DragAndDrop, Id, Rect, Role, ScrollArea, Stroke, StrokeKind,
    Ui, UiBuilder, WidgetInfo, pos2, vec2,
};

use super::held::{self, Held};
use super::{BoardsState, several};
use crate::model::board::{Board, Step, StepState};
use crate::model::edit::GiveAt;
use crate::model::ids::ParticipantId;
use crate::model::people::Participant;
use crate::ui::actions::Action;
use crate::ui::desk::Desk;
use crate::ui::icons::Icon;
use crate::ui::regions;
use crate::ui::theme;
use crate::ui::widgets::button::{Button, Weight};
use crate::ui::widgets::card::{Lie, here, plate, tile};
use crate::ui::widgets::choose::segments;
use crate::ui::widgets::{focus_ring, words};
use crate::workbench::command::Command;

const ROW: f32 = 62.0;

/// A participant with their board.
type Entry = (ParticipantId, Arc<Board>);

/// Shows the list.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut BoardsState, rect: Rect) {
    let narrow = rect.width() < 120.0;
    let top = Rect::from_min_size(rect.min, vec2(rect.width(), theme::CONTROL));
    let b = Button::new("whole-group", "Whole group").tip("All boards at once (Ctrl+G)");
    let b = if narrow {
        b.icon_only(Icon::Lines)
    } else {
        b.icon(Icon::Lines)
    };
    if b.show_at(ui, top).clicked() {
        desk.actions.push(Action::Group);
    }
    let sides = top.translate(vec2(0.0, theme::CONTROL + 8.0));
    switch(ui, desk, sides, narrow);
    let list = Rect::from_min_max(pos2(rect.left(), sides.bottom() + 10.0), rect.max);
    let boards = desk.view.boards;
    let id = Id::unique("find-board");
    let list = if narrow {
        state.find.typed.clear();
        list
    } else {
        state.find.above(ui, id, list, boards.len())
    };
    let club = desk.view.club;
    let fits = |who| club.participant(who).is_some_and(|p| state.find.shows(p));
    let shown: Vec<&Entry> = boards.iter().filter(|(who, _)| fits(*who)).collect();
    let chosen = desk.view.participant.map(|p| p.id);
    let at = shown.iter().position(|(id, _)| Some(*id) == chosen);
    let current = at.unwrap_or(0);
    if let Some((id, _)) = shown.get(current) {
        desk.regions.add(list, row_id(*id));
    }
    if let (true, Some((who, _))) = (std::mem::take(&mut state.find.go_on), shown.first()) {
        desk.ask(Command::ChooseParticipant(*who));
        ui.memory_mut(|m| m.request_focus(row_id(*who)));
    }
    let follow = chosen != state.listed;
    state.listed = chosen;
    let mut child = ui.new_child(UiBuilder::new().id_salt("who-list").max_rect(list));
    ScrollArea::vertical()
        .id_salt("who")
        .auto_shrink(false)
        .show(&mut child, |ui| {
            ui.spacing_mut().item_spacing.y = 0.0;
            let size = vec2(ui.available_width(), shown.len() as f32 * ROW);
            let (_, all) = ui.allocate_space(size);
            for (i, (id, board)) in shown.iter().enumerate() {
                let top = all.top() + i as f32 * ROW;
                let place = Rect::from_min_size(pos2(all.left(), top), vec2(all.width(), ROW));
                if at == Some(i) && follow {
                    ui.scroll_to_rect(place, None);
                }
                if i != current && !ui.is_rect_visible(place) {
                    continue;
                }
                let row = Row {
                    i,
                    who: *id,
                    board,
                    current: i == current,
                    narrow,
                    shown: &shown,
                };
                row.show(ui, desk, state, place);
            }
        });
    let says = match (boards.is_empty(), shown.is_empty()) {
        (true, _) => Some("Nobody comes yet. Say who comes in Session."),
        (_, true) => Some("Nobody’s name has these words."),
        _ => None,
    };
    if let Some(words) = says.filter(|_| !narrow) {
        let soft = theme::of(ui.ctx()).col.soft;
        let g = words::lay(
            ui.painter(),
            words,
            theme::regular(15.0),
            soft,
            rect.width() - 8.0,
            4,
        );
        ui.painter().galley(list.min + vec2(4.0, 8.0), g, soft);
    }
}

/// Board or story; in a narrow window one button for the story.
fn switch(ui: &mut Ui, desk: &mut Desk<'_>, rect: Rect, narrow: bool) {
    let story = desk.view.story_shown;
    if narrow {
        let b = Button::new("story-side", "Story").weight(Weight::Chosen(story));
        desk.regions.add(rect, Id::unique(("button", "story-side")));
        if b.show_at(ui, rect).clicked() {
            desk.ask(Command::ShowStory(!story));
        }
        return;
    }
    let now = usize::from(story);
    desk.regions.add(rect, Id::unique(("board-side", now)));
    if let Some(i) = segments(ui, "board-side", rect, &["Board", "Story"], now) {
        desk.ask(Command::ShowStory(i == 1));
    }
}

fn row_id(who: ParticipantId) -> Id {
    Id::unique(("board-of", who))
}

struct Row<'a> {
    i: usize,
    who: ParticipantId,
    board: &'a Board,
    current: bool,
    narrow: bool,
    shown: &'a [&'a Entry],
}

impl Row<'_> {
    fn show(&self, ui: &mut Ui, desk: &mut Desk<'_>, state: &mut BoardsState, place: Rect) {
        let Some(person) = desk.view.club.participant(self.who) else {
            return;
        };
        let rect = place.shrink2(vec2(5.0, 3.0));
        let sense = regions::one_stop(ui, row_id(self.who), self.current, false);
        let r = ui.interact(rect, row_id(self.who), sense);
        let how = differs(self.board);
        let count = self.shown.len();
        r.widget_info(|| {
            let label = format!("{}, {how}, {} of {count}", person.name, self.i + 1);
            WidgetInfo::selected(Role::ListBoxOption, true, self.current, label)
        });
        let gets = self.gets(ui, desk, state, rect);
        if ui.is_rect_visible(rect) {
            self.paint(ui, desk, rect, person, &how);
            if gets {
                let line = Stroke::new(2.5, theme::of(ui.ctx()).col.accent);
                let round = CornerRadius::same(theme::R_CARD);
                ui.painter()
                    .rect_stroke(rect, round, line, StrokeKind::Inside);
            }
            focus_ring(ui, &r, rect, theme::R_CARD);
        }
        if r.clicked() {
            desk.ask(Command::ChooseParticipant(self.who));
            r.request_focus();
        }
        if r.has_focus() {
            self.keys(ui, desk, state, r.id);
        }
        let r = r.on_hover_cursor(CursorIcon::PointingHand);
        if self.narrow {
            r.on_hover_text(format!("{}: {how}", person.name));
        }
    }

    /// Whether steps of someone else are held over this name; let go, they are theirs too, in the
    /// place they have on the other board.
    fn gets(&self, ui: &Ui, desk: &mut Desk<'_>, state: &mut BoardsState, rect: Rect) -> bool {
        let Some((held, at)) = held::in_hand(ui.ctx()) else {
            return false;
        };
        let Held::Steps(from, steps, _) = held.as_ref() else {
            return false;
        };
        if *from == self.who || !ui.clip_rect().contains(at) || !rect.contains(at) {
            return false;
        }
        let who = desk.view.club.participant(self.who);
        let who = who.map_or("them", |p| p.name.as_str());
        state.over_name = Some(match several::moves_over(ui) {
            true => format!("over to {who}"),
            false => format!("for {who} too"),
        });
        if ui.input(|i| i.pointer.any_released()) {
            DragAndDrop::clear_payload(ui.ctx());
            let board = desk.view.boards.iter().find(|(id, _)| id == from);
            let first = steps.first().copied();
            let place = board.and_then(|(_, b)| b.position(first?));
            let place = place.unwrap_or(self.board.steps.len());
            several::give(
                ui,
                desk,
                (*from, steps),
                (self.who, GiveAt::Position(place)),
            );
        }
        true
    }

    fn paint(&self, ui: &Ui, desk: &mut Desk<'_>, rect: Rect, person: &Participant, how: &str) {
        let t = theme::of(ui.ctx());
        let p = ui.painter();
        let chosen = desk.view.participant.is_some_and(|p| p.id == self.who);
        if chosen {
            tile(p, &t, rect, Lie::Ground);
            here(p, &t, rect);
        } else if ui.rect_contains_pointer(rect) {
            p.rect_filled(rect, CornerRadius::same(theme::R_CARD), t.col.panel);
        }
        let side = 44.0;
        let left = if self.narrow {
            rect.center().x - side / 2.0
        } else {
            rect.left() + 10.0
        };
        let at = Rect::from_min_size(pos2(left, rect.center().y - side / 2.0), vec2(side, side));
        plate(p, &t, at);
        desk.pictures.mark(p, at.shrink(8.0), &person.mark);
        if self.narrow {
            return;
        }
        let text = Rect::from_min_max(
            pos2(at.right() + 10.0, rect.top()),
            rect.max - vec2(8.0, 0.0),
        );
        let (ink, soft) = if chosen {
            (t.col.card_ink, t.col.card_soft)
        } else {
            (t.col.ink, t.col.soft)
        };
        let (upper, lower) = text.split_top_bottom_at_fraction(0.49);
        words::line(
            p,
            upper,
            Align2::LEFT_BOTTOM,
            &person.name,
            theme::bold(16.0),
            ink,
        );
        words::line(p, lower, Align2::LEFT_TOP, how, theme::regular(14.0), soft);
    }

    fn keys(&self, ui: &Ui, desk: &mut Desk<'_>, state: &mut BoardsState, id: Id) {
        regions::keep_arrows(ui, id);
        if let Some(to) = regions::arrows(ui, self.i, self.shown.len(), 1) {
            let who = self.shown[to].0;
            desk.ask(Command::ChooseParticipant(who));
            ui.memory_mut(|m| m.request_focus(row_id(who)));
        }
        if ui.input_mut(|i| i.consume_key(egui::Modifiers::NONE, egui::Key::Enter)) {
            state.focus_step = true;
        }
    }
}

/// How a board differs from the timetable, in a few words.
pub fn differs(board: &Board) -> String {
    let count = |f: fn(&Step) -> bool| board.steps.iter().filter(|s| f(s)).count();
    let own = count(|s| s.state == StepState::Own);
    let off = count(|s| s.state == StepState::NotToday && s.differs());
    match board.differences() {
        0 => "as the timetable".into(),
        n if n == own => format!("{n} own step{}", if n == 1 { "" } else { "s" }),
        n if n == off => format!("{n} not today"),
        1 => "1 differs".into(),
        n => format!("{n} differ"),
    }
}
