//! Who there is: the list of participants.

use egui::{Align2, CursorIcon, Id, Rect, Role, Ui, Vec2, WidgetInfo, pos2, vec2};

use crate::model::club::Club;
use crate::model::edit::Edit;
use crate::model::ids::{ParticipantId, SymbolId};
use crate::model::people::Participant;
use crate::symbols::library::library;
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
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>, rect: Rect) {
    let club = desk.view.club;
    let top = rect.with_max_y(rect.top() + theme::CONTROL);
    if Button::new("participant-add", "Add a participant")
        .icon(Icon::Plus)
        .show_at(ui, top)
        .clicked()
    {
        desk.edit(Edit::AddParticipant(fresh(club)));
    }
    let below = rect.with_min_y(top.bottom() + 8.0);
    let now = desk.view.participant.map(|p| p.id);
    let at = club
        .participants
        .iter()
        .position(|p| Some(p.id) == now)
        .unwrap_or(0);
    if let Some(p) = club.participants.get(at) {
        desk.regions.add(below, row_id(p.id));
    }
    scroll(ui, "participant-list", below, |ui| {
        ui.spacing_mut().item_spacing.y = 0.0;
        for (i, p) in club.participants.iter().enumerate() {
            let (_, place) = ui.allocate_space(vec2(ui.available_width(), 60.0));
            item(ui, desk, place.shrink2(vec2(5.0, 3.0)), p, (i, i == at));
        }
    });
}

fn item(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    rect: Rect,
    person: &Participant,
    (i, current): (usize, bool),
) {
    let t = theme::of(ui.ctx());
    let all = &desk.view.club.participants;
    let sense = regions::one_stop(ui, row_id(person.id), current, false);
    let r = ui.interact(rect, row_id(person.id), sense);
    r.widget_info(|| {
        let words = format!("{}, {} of {}", person.name, i + 1, all.len());
        WidgetInfo::selected(Role::ListBoxOption, true, current, words)
    });
    let p = ui.painter();
    if current {
        tile(p, &t, rect, Lie::Ground);
        here(p, &t, rect);
    }
    let mark = Rect::from_center_size(pos2(rect.left() + 34.0, rect.center().y), Vec2::splat(42.0));
    plate(p, &t, mark);
    desk.pictures.mark(p, mark.shrink(8.0), &person.mark);
    let ink = if current { t.col.card_ink } else { t.col.ink };
    let text = Rect::from_min_max(
        pos2(mark.right() + 12.0, rect.top()),
        rect.max - vec2(8.0, 0.0),
    );
    words::line(
        p,
        text,
        Align2::LEFT_CENTER,
        &person.name,
        theme::bold(17.0),
        ink,
    );
    focus_ring(ui, &r, rect, theme::R_CARD);
    if r.clicked() {
        desk.ask(Command::ChooseParticipant(person.id));
        r.request_focus();
    }
    if r.has_focus() {
        regions::keep_arrows(ui, r.id);
        if let Some(to) = regions::alt_arrows(ui, i, all.len(), 1) {
            desk.edit(Edit::MoveParticipant(person.id, to));
        }
        if let Some(to) = regions::arrows(ui, i, all.len(), 1) {
            desk.ask(Command::ChooseParticipant(all[to].id));
            ui.memory_mut(|m| m.request_focus(row_id(all[to].id)));
        }
        if ui.input_mut(|i| i.consume_key(egui::Modifiers::NONE, egui::Key::Delete)) {
            desk.edit(Edit::RemoveParticipant(person.id));
        }
    }
    r.on_hover_cursor(CursorIcon::PointingHand);
}

/// A new participant with the first mark that nobody has.
fn fresh(club: &Club) -> Participant {
    let taken = |id: &SymbolId| club.participants.iter().any(|p| p.mark == *id);
    let mark = library()
        .marks()
        .iter()
        .map(|m| &m.id)
        .find(|id| !taken(id));
    let mark = mark.cloned().unwrap_or_else(|| SymbolId::new("kite"));
    Participant::new("New participant", mark, club.rules.tile)
}
