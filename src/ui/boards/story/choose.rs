//! How the story is told: how much of it, in what pages, and who is beside the participant.

use egui::{Align2, Color32, Id, Rect, Ui, pos2, vec2};

use crate::model::edit::Edit;
use crate::model::ids::HelperId;
use crate::model::people::Participant;
use crate::model::telling::{Depth, Pages, Telling};
use crate::ui::desk::Desk;
use crate::ui::theme;
use crate::ui::widgets::choose::{select, select_at};
use crate::ui::widgets::{form, words};

/// One of the three choices.
struct Choice {
    id: Id,
    name: &'static str,
    options: Vec<String>,
    chosen: Option<usize>,
    set: fn(&mut Desk<'_>, usize),
}

const fn short(pages: Pages) -> &'static str {
    match pages {
        Pages::AsFits => "Pages as fits",
        other => other.label(),
    }
}

fn depth(person: &Participant) -> Choice {
    Choice {
        id: Id::unique("story-depth"),
        name: "How much is written",
        options: Depth::ALL.iter().map(|d| d.label().to_owned()).collect(),
        chosen: Depth::ALL.iter().position(|d| *d == person.telling.depth),
        set: |desk, i| telling(desk, |t| t.depth = Depth::ALL[i]),
    }
}

fn pages(person: &Participant) -> Choice {
    Choice {
        id: Id::unique("story-pages"),
        name: "What stands on a page",
        options: Pages::ALL.iter().map(|p| short(*p).to_owned()).collect(),
        chosen: Pages::ALL.iter().position(|p| *p == person.telling.pages),
        set: |desk, i| telling(desk, |t| t.pages = Pages::ALL[i]),
    }
}

fn with(desk: &Desk<'_>, person: &Participant) -> Choice {
    let there = helpers(desk);
    let now = desk.view.session.and_then(|s| s.beside.get(&person.id));
    let mut options = vec!["nobody named".to_owned()];
    options.extend(there.iter().map(|(_, name)| name.clone()));
    let at = now.and_then(|h| there.iter().position(|(id, _)| id == h));
    Choice {
        id: Id::unique("story-beside"),
        name: "Beside them on the day",
        options,
        chosen: Some(at.map_or(0, |i| i + 1)),
        set: |desk, i| {
            let chosen = helpers(desk);
            let helper = i.checked_sub(1).and_then(|i| chosen.get(i)).map(|h| h.0);
            if let (Some(s), Some(p)) = (desk.view.session, desk.view.participant) {
                desk.edit(Edit::Beside(s.id, p.id, helper));
            }
        },
    }
}

/// The helpers who come.
fn helpers(desk: &Desk<'_>) -> Vec<(HelperId, String)> {
    let Some(session) = desk.view.session else {
        return Vec::new();
    };
    let all = desk.view.club.helpers.iter();
    all.filter(|h| !session.helpers_away.contains(&h.id))
        .map(|h| (h.id, h.name.clone()))
        .collect()
}

/// Changes how the chosen participant's story is told.
pub fn telling(desk: &mut Desk<'_>, change: impl FnOnce(&mut Telling)) {
    if let Some(person) = desk.view.participant {
        let mut next = person.clone();
        change(&mut next.telling);
        desk.edit(Edit::ChangeParticipant(next));
    }
}

/// The three in one line that ends at a place; gives its left edge.
pub fn line(ui: &mut Ui, desk: &mut Desk<'_>, (mut right, top): (f32, f32)) -> f32 {
    let Some(person) = desk.view.participant else {
        return right;
    };
    let soft = theme::of(ui.ctx()).col.soft;
    let all = [
        ("told in", 166.0, depth(person)),
        ("", 196.0, pages(person)),
        ("beside", 176.0, with(desk, person)),
    ];
    for (before, width, choice) in all.into_iter().rev() {
        let place = Rect::from_min_size(pos2(right - width, top), vec2(width, theme::CONTROL));
        let (id, name) = (choice.id, choice.name);
        if let Some(i) = select_at(ui, id, place, name, &choice.options, choice.chosen) {
            (choice.set)(desk, i);
        }
        right = place.left() - 8.0;
        if !before.is_empty() {
            let font = theme::regular(15.0);
            let g =
                ui.painter()
                    .layout_no_wrap(before.to_owned(), font.clone(), Color32::PLACEHOLDER);
            let room = place
                .with_max_x(right)
                .with_min_x(right - g.size().x.ceil() - 1.0);
            words::line(ui.painter(), room, Align2::RIGHT_CENTER, before, font, soft);
            right = room.left() - 12.0;
        }
    }
    right
}

/// The three under their names, side by side as the width allows.
pub fn blocks(ui: &mut Ui, desk: &mut Desk<'_>) {
    let Some(person) = desk.view.participant else {
        return;
    };
    let all = [depth(person), pages(person), with(desk, person)];
    form::row(ui, |ui| {
        for choice in all {
            form::block(ui, choice.name, 240.0, theme::CONTROL, |ui| {
                let width = ui.available_width();
                let (id, name) = (choice.id, choice.name);
                if let Some(i) = select(ui, id, name, &choice.options, choice.chosen, width) {
                    (choice.set)(desk, i);
                }
            });
        }
    });
}
