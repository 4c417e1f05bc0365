//! For whom: those who come, each with a tick; a field to find a name where there are many.

use egui::{Id, Rect, Ui, pos2, vec2};

use crate::model::ids::ParticipantId;
use crate::model::people::Participant;
use crate::ui::desk::Desk;
use crate::ui::find::{FEW, Find};
use crate::ui::session::face;
use crate::ui::theme;
use crate::ui::widgets::button::{Button, Weight};
use crate::ui::widgets::words;
use crate::workbench::command::PrintChoice;
use crate::workbench::view::View;

/// Height of a face, and between two.
const FACE: f32 = 96.0;
const GAP: f32 = 8.0;
/// Least width of a face.
const NARROWEST: f32 = 78.0;

/// Who is chosen of those who come, in the order of the list.
pub fn chosen(view: &View<'_>, choice: &PrintChoice) -> Vec<ParticipantId> {
    let all = view.boards.iter().map(|(id, _)| *id);
    let wanted = |id: &ParticipantId| choice.participants.as_ref().is_none_or(|c| c.contains(id));
    all.filter(wanted).collect()
}

/// Shows the part.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>, find: &mut Find, next: &mut PrintChoice) {
    let view = desk.view;
    let before = chosen(view, next);
    words::heading(ui, "For whom", 20.0);
    ui.spacing_mut().item_spacing.y = 6.0;
    let count = format!("{} of {} who come", before.len(), view.boards.len());
    words::soft(ui, &count);
    let mut after = before.clone();
    if view.boards.len() > FEW {
        all_or_none(ui, view, &mut after);
        let (_, rect) = ui.allocate_space(vec2(ui.available_width(), theme::CONTROL));
        if find.focus {
            ui.scroll_to_rect(rect, Some(egui::Align::Min));
        }
        find.above(ui, Id::unique("find-print"), rect, view.boards.len());
    }
    let comes = view.boards.iter();
    let people = comes.filter_map(|(id, _)| view.club.participant(*id));
    let shown: Vec<&Participant> = people
        .map(AsRef::as_ref)
        .filter(|p: &&Participant| view.boards.len() <= FEW || find.shows(p))
        .collect();
    if shown.is_empty() && !view.boards.is_empty() {
        words::soft(ui, "Nobody’s name has these words.");
    }
    if let (true, Some(p)) = (std::mem::take(&mut find.go_on), shown.first()) {
        ui.memory_mut(|m| m.request_focus(face_id(p.id)));
    }
    faces(ui, desk, &shown, &mut after);
    if after != before {
        let all = view.boards.iter().map(|(id, _)| *id);
        let wanted: Vec<_> = all.filter(|id| after.contains(id)).collect();
        next.participants = (wanted.len() < view.boards.len()).then_some(wanted);
    }
}

fn face_id(who: ParticipantId) -> Id {
    Id::unique(("print-for", who))
}

fn all_or_none(ui: &mut Ui, view: &View<'_>, after: &mut Vec<ParticipantId>) {
    ui.horizontal(|ui| {
        ui.spacing_mut().item_spacing.x = 6.0;
        let mut press = |words: &str, enabled| {
            let b = Button::new(("print-for", words.to_owned()), words).weight(Weight::Plain);
            b.enabled(enabled).show(ui).clicked()
        };
        if press("Everyone", after.len() < view.boards.len()) {
            *after = view.boards.iter().map(|(id, _)| *id).collect();
        }
        if press("Nobody", !after.is_empty()) {
            after.clear();
        }
    });
}

/// Those in sight, with a row more on either side for the Tab key.
fn faces(ui: &mut Ui, desk: &mut Desk<'_>, shown: &[&Participant], after: &mut Vec<ParticipantId>) {
    let width = ui.available_width();
    let columns = ((width + GAP) / (NARROWEST + GAP)).floor().max(1.0);
    let cell = ((width - (columns - 1.0) * GAP) / columns).floor();
    let rows = shown.len().div_ceil(columns as usize);
    let height = (rows as f32 * (FACE + GAP) - GAP).max(0.0);
    let (_, all) = ui.allocate_space(vec2(width, height));
    let sight = ui.clip_rect().expand2(vec2(0.0, FACE + GAP));
    for (i, p) in shown.iter().enumerate() {
        let (row, column) = (i / columns as usize, i % columns as usize);
        let at = pos2(
            all.left() + column as f32 * (cell + GAP),
            all.top() + row as f32 * (FACE + GAP),
        );
        let rect = Rect::from_min_size(at, vec2(cell, FACE));
        let id = face_id(p.id);
        if !sight.intersects(rect) && !ui.memory(|m| m.has_focus(id)) {
            continue;
        }
        let on = after.contains(&p.id);
        if face(ui, desk, rect, id, p, on).clicked() {
            if on {
                after.retain(|x| *x != p.id);
            } else {
                after.push(p.id);
            }
        }
    }
}
