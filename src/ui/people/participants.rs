//! The participants: who there is at the left, and the pages of the one that is chosen.

use egui::{Id, Rect, Ui, pos2, vec2};

use super::{
    PAGES, Page, PeopleState, in_water, list, looks, manner, profile, seen, standing, telling,
};
use crate::model::edit::Edit;
use crate::model::people::Participant;
use crate::model::profile::Section;
use crate::ui::desk::Desk;
use crate::ui::icons::Icon;
use crate::ui::theme;
use crate::ui::widgets::button::{Button, Weight};
use crate::ui::widgets::choose::{segments, select_at};
use crate::ui::widgets::form::{scroll, sheet};
use crate::ui::widgets::words;
use crate::workbench::command::{Command, Place};

/// Shows the pane.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut PeopleState, rect: Rect) {
    let side = if rect.width() < 800.0 { 200.0 } else { 260.0 };
    let left = Rect::from_min_size(rect.min, vec2(side, rect.height()));
    list::show(ui, desk, state, left);
    let right = Rect::from_min_max(pos2(left.right() + 20.0, rect.top()), rect.max);
    let Some(person) = desk.view.participant else {
        scroll(ui, "no-participant", right, |ui| {
            words::heading(ui, "There is nobody yet.", 20.0);
            words::body(ui, "Add the first participant with the button at the left.");
        });
        return;
    };
    let wide = right.width().min(WIDEST);
    let tabs = Rect::from_min_size(right.min, vec2(wide - 16.0, theme::CONTROL));
    pages(ui, desk, state, person, tabs);
    let below = right.with_min_y(tabs.bottom() + 10.0);
    // A page of its own for each: what was scrolled down on one is not scrolled on another.
    let salt = format!("participant-form {:?}", state.page);
    scroll(ui, &salt, below, |ui| {
        ui.set_max_width(ui.available_width().min(WIDEST - 16.0));
        sheet(ui, |ui| form(ui, desk, state, person));
        ui.add_space(16.0);
    });
}

/// Widest a participant's page gets.
const WIDEST: f32 = 1100.0;

/// Which page of the participant: tabs, or a list where they have no room. Each says how much is
/// there.
fn pages(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    state: &mut PeopleState,
    person: &Participant,
    rect: Rect,
) {
    let counts = PAGES.map(|(page, name)| match filled(person, page) {
        0 => name.to_owned(),
        n => format!("{name} · {n}"),
    });
    let now = PAGES.iter().position(|(p, _)| *p == state.page);
    let now = now.unwrap_or(0);
    let chosen = if rect.width() < 900.0 {
        let id = Id::unique("participant-page");
        desk.regions.add(rect, id);
        select_at(ui, id, rect, "Page of the participant", &counts, Some(now))
    } else {
        desk.regions
            .add(rect, Id::unique(("participant-page", now)));
        let names = counts.each_ref().map(String::as_str);
        segments(ui, "participant-page", rect, &names, now)
    };
    if let Some(i) = chosen {
        state.page = PAGES[i].0;
        // The tabs were painted before the page changed.
        ui.ctx().request_repaint();
    }
}

/// How much is said on a page.
fn filled(person: &Participant, page: Page) -> usize {
    let facts = |of: &[Section]| {
        let all = of.iter().flat_map(|s| s.fields());
        all.filter(|f| !person.profile.for_owner(*f).is_empty())
            .count()
    };
    match page {
        Page::Always => {
            let s = &person.standing;
            s.swaps.len() + s.left_out.len() + s.own.len() + s.cards.len()
        }
        Page::Know => {
            let more = person.profile.favourites.len() + person.profile.hard().for_owner().len();
            let agreed = in_water::gist(*person.profile.in_water().for_owner());
            facts(&profile::KNOW) + more + agreed.len()
        }
        Page::Sealed => facts(&[Section::Sealed]),
        Page::Looks | Page::Board | Page::Story | Page::Seen => 0,
    }
}

fn form(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut PeopleState, person: &Participant) {
    let mut next = person.clone();
    match state.page {
        Page::Looks => looks::show(ui, desk, state, person, &mut next),
        Page::Board => {
            manner::show(ui, desk, person, &mut next);
            profile::board(ui, desk, state, person, &mut next);
        }
        Page::Story => telling::show(ui, desk, state, person, &mut next),
        Page::Always => standing::show(ui, desk, state, person, &mut next),
        Page::Know => profile::show(ui, desk, state, person, &mut next),
        Page::Sealed => profile::sealed(ui, desk, state, person, &mut next),
        Page::Seen => seen::show(ui, desk, state, person),
    }
    if next != *person {
        desk.edit(Edit::ChangeParticipant(next));
    }
    ui.add_space(6.0);
    ui.horizontal(|ui| {
        let comes = desk.view.boards.iter().any(|(id, _)| *id == person.id);
        let b = Button::new("to-board", "To the board")
            .icon(Icon::Right)
            .enabled(comes);
        if b.show(ui).clicked() {
            desk.ask(Command::Show(Place::Boards));
        }
        let b = Button::new(("participant-remove", person.id), "Remove")
            .icon(Icon::Bin)
            .weight(Weight::Quiet);
        if b.tip("With all hand changes; Undo brings them back")
            .show(ui)
            .clicked()
        {
            desk.edit(Edit::RemoveParticipant(person.id));
        }
    });
}
