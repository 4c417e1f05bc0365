//! What others see of a participant: exactly what pages for readers of a class can be given, and
//! nothing else. Built by asking for every field as such a page would.

use egui::{Ui, vec2};

use super::PeopleState;
use crate::model::board::StepState;
use crate::model::people::Participant;
use crate::model::privacy::Class;
use crate::model::profile::Field;
use crate::ui::desk::Desk;
use crate::ui::theme;
use crate::ui::widgets::card::plate;
use crate::ui::widgets::choose::segments_here;
use crate::ui::widgets::words;

const CLASSES: [Class; 2] = [Class::Public, Class::Helper];

/// Shows the page.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut PeopleState, person: &Participant) {
    let names = ["As seen by others", "As seen by their helper"];
    let at = CLASSES
        .iter()
        .position(|c| *c == state.seen_by)
        .unwrap_or(0);
    if let Some(i) = segments_here(ui, "seen-by", &names, at) {
        state.seen_by = CLASSES[i];
    }
    ui.add_space(8.0);
    board(ui, desk, person);
    for (label, text) in facts(person, state.seen_by) {
        words::soft(ui, &label);
        words::body(ui, &text);
    }
}

/// Name, mark and the words on the board: seen by everyone.
fn board(ui: &mut Ui, desk: &mut Desk<'_>, person: &Participant) {
    let t = theme::of(ui.ctx());
    ui.horizontal(|ui| {
        let (_, mark) = ui.allocate_space(vec2(56.0, 56.0));
        plate(ui.painter(), &t, mark);
        desk.pictures
            .mark(ui.painter(), mark.shrink(10.0), &person.mark);
        ui.vertical(|ui| words::heading(ui, &person.name, 22.0));
    });
    let mut boards = desk.view.boards.iter();
    let Some((_, board)) = boards.find(|(id, _)| *id == person.id) else {
        words::soft(ui, "Does not come to the chosen session.");
        return;
    };
    words::soft(ui, "On the board");
    let steps: Vec<String> = board
        .steps
        .iter()
        .map(|s| match s.state {
            StepState::NotToday => format!("{} (not today)", s.label),
            _ => s.label.clone(),
        })
        .collect();
    words::body(ui, &steps.join(" · "));
}

/// What a page for readers of this class can be given, in words.
pub fn facts(person: &Participant, class: Class) -> Vec<(String, String)> {
    let mut all: Vec<(String, String)> = Field::ALL
        .into_iter()
        .filter_map(|f| {
            Some((
                f.label().to_owned(),
                person.profile.for_page(f, class)?.to_owned(),
            ))
        })
        .filter(|(_, text)| !text.is_empty())
        .collect();
    if let Some(hard) = person.profile.hard().for_page(class) {
        let hard = hard.iter();
        all.extend(hard.map(|(c, helps)| (format!("Hard: {}", c.label()), helps.clone())));
    }
    if let Some(note) = person.helper_note.for_page(class).filter(|n| !n.is_empty()) {
        all.push(("What the helper needs to know".to_owned(), note.clone()));
    }
    all
}
