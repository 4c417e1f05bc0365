//! Who there is: the list of participants.

use egui::{Align2, CornerRadius, CursorIcon, Id, Rect, Role, Ui, Vec2, WidgetInfo, pos2, vec2};

use super::PeopleState;
use crate::model::club::Club;
use crate::model::edit::Edit;
use crate::model::ids::ParticipantId;
use crate::model::people::Participant;
use crate::symbols::library::free_mark;
use crate::ui::desk::Desk;
use crate::ui::icons::Icon;
use crate::ui::regions;
use crate::ui::theme;
use crate::ui::widgets::button::Button;
use crate::ui::widgets::card::{Lie, here, plate, tile};
use crate::ui::widgets::form::scroll;
use crate::ui::widgets::{focus_ring, words};
use crate::workbench::command::Command;

fn row_id(id: ParticipantId) -> Id {
    Id::unique(("participant", id))
}

/// Shows the list, with a button to add someone.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut PeopleState, rect: Rect) {
    let club = desk.view.club;
    let top = rect.with_max_y(rect.top() + theme::CONTROL);
    if Button::new("participant-add", "Add a participant")
        .icon(Icon::Plus)
        .show_at(ui, top)
        .clicked()
    {
        desk.edit(Edit::AddParticipant(fresh(club)));
        state.find.typed.clear();
    }
    let below = rect.with_min_y(top.bottom() + 8.0);
    let id = Id::unique("find-participant");
    let below = state.find.above(ui, id, below, club.participants.len());
    let all: Vec<&Participant> = club.participants.iter().map(AsRef::as_ref).collect();
    let shown: Vec<(usize, &Participant)> = all
        .into_iter()
        .enumerate()
        .filter(|(_, p)| state.find.shows(p))
        .collect();
    if shown.is_empty() && state.find.narrows() {
        nobody(ui, below);
    }
    let now = desk.view.participant.map(|p| p.id);
    let at = shown.iter().position(|(_, p)| Some(p.id) == now);
    if let Some((_, p)) = shown.get(at.unwrap_or(0)) {
        desk.regions.add(below, row_id(p.id));
    }
    if let (true, Some((_, p))) = (std::mem::take(&mut state.find.go_on), shown.first()) {
        desk.ask(Command::ChooseParticipant(p.id));
        ui.memory_mut(|m| m.request_focus(row_id(p.id)));
    }
    let follow = now != state.listed;
    state.listed = now;
    scroll(ui, "participant-list", below, |ui| {
        ui.spacing_mut().item_spacing.y = 0.0;
        let size = vec2(ui.available_width(), shown.len() as f32 * ROW);
        let (_, all) = ui.allocate_space(size);
        for (n, (i, p)) in shown.iter().enumerate() {
            let top = all.top() + n as f32 * ROW;
            let place = Rect::from_min_size(pos2(all.left(), top), vec2(all.width(), ROW));
            let stop = n == at.unwrap_or(0);
            if at == Some(n) && follow {
                ui.scroll_to_rect(place, None);
            }
            if stop || ui.is_rect_visible(place) {
                let row = Row {
                    n,
                    shown: &shown,
                    // Among fewer than all there is no order to change.
                    moves: (!state.find.narrows()).then_some(*i),
                    current: at == Some(n),
                    stop,
                };
                row.show(ui, desk, place.shrink2(vec2(5.0, 3.0)), p);
            }
        }
    });
}

fn nobody(ui: &Ui, rect: Rect) {
    let soft = theme::of(ui.ctx()).col.soft;
    let p = ui.painter();
    let says = "Nobody’s name has these words.";
    let g = words::lay(p, says, theme::regular(15.0), soft, rect.width() - 8.0, 3);
    p.galley(rect.min + vec2(4.0, 8.0), g, soft);
}

/// Height of a row.
const ROW: f32 = 60.0;

/// One row of the list.
struct Row<'a> {
    /// Its place among those shown.
    n: usize,
    /// Who is shown, with the place among all.
    shown: &'a [(usize, &'a Participant)],
    /// Its place among all, if it can be moved.
    moves: Option<usize>,
    /// Whether it is the one whose pages lie open.
    current: bool,
    /// Whether the Tab key stops here.
    stop: bool,
}

impl Row<'_> {
    fn show(&self, ui: &mut Ui, desk: &mut Desk<'_>, rect: Rect, person: &Participant) {
        let id = row_id(person.id);
        let sense = regions::one_stop(ui, id, self.stop, false);
        let r = ui.interact(rect, id, sense);
        r.widget_info(|| {
            let words = format!("{}, {} of {}", person.name, self.n + 1, self.shown.len());
            WidgetInfo::selected(Role::ListBoxOption, true, self.current, words)
        });
        paint(ui, desk, rect, person, self.current);
        focus_ring(ui, &r, rect, theme::R_CARD);
        if r.clicked() {
            desk.ask(Command::ChooseParticipant(person.id));
            r.request_focus();
        }
        if r.has_focus() {
            self.keys(ui, desk, person);
        }
        r.on_hover_cursor(CursorIcon::PointingHand);
    }

    fn keys(&self, ui: &Ui, desk: &mut Desk<'_>, person: &Participant) {
        regions::keep_arrows(ui, row_id(person.id));
        let count = self.shown.len();
        if let Some(i) = self.moves
            && let Some(to) = regions::alt_arrows(ui, i, count, 1)
        {
            desk.edit(Edit::MoveParticipant(person.id, to));
        }
        if let Some(to) = regions::arrows(ui, self.n, count, 1) {
            let next = self.shown[to].1.id;
            desk.ask(Command::ChooseParticipant(next));
            ui.memory_mut(|m| m.request_focus(row_id(next)));
        }
        if ui.input_mut(|i| i.consume_key(egui::Modifiers::NONE, egui::Key::Delete)) {
            desk.edit(Edit::RemoveParticipant(person.id));
        }
    }
}

/// Mark and name, on a card if it is the current one.
fn paint(ui: &Ui, desk: &mut Desk<'_>, rect: Rect, person: &Participant, current: bool) {
    let t = theme::of(ui.ctx());
    let p = ui.painter();
    if current {
        tile(p, &t, rect, Lie::Ground);
        here(p, &t, rect);
    } else if ui.rect_contains_pointer(rect) {
        p.rect_filled(rect, CornerRadius::same(theme::R_CARD), t.col.panel);
    }
    let mark = Rect::from_center_size(pos2(rect.left() + 34.0, rect.center().y), Vec2::splat(42.0));
    plate(p, &t, mark);
    desk.pictures.mark(p, mark.shrink(8.0), &person.mark);
    let ink = if current { t.col.card_ink } else { t.col.ink };
    let left = pos2(mark.right() + 12.0, rect.top());
    let text = Rect::from_min_max(left, rect.max - vec2(8.0, 0.0));
    let font = theme::bold(17.0);
    words::line(p, text, Align2::LEFT_CENTER, &person.name, font, ink);
}

/// A new participant with the first mark that nobody has.
fn fresh(club: &Club) -> Participant {
    Participant::new("New participant", free_mark(club), club.rules.tile)
}
