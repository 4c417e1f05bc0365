//! What others see of a participant: exactly what pages for readers of a class can be given, and
//! nothing else. Everything is asked for as such a page would ask, through a reader of one class.

use egui::{Id, Rect, Role, Sense, Ui, Vec2, WidgetInfo, vec2};

use super::{PeopleState, in_water, readers};
use crate::model::board::{Board, StepState};
use crate::model::club::Club;
use crate::model::hand::Content;
use crate::model::ids::SymbolId;
use crate::model::people::Participant;
use crate::model::privacy::Class;
use crate::model::profile::Field;
use crate::ui::boards::face::{self, Until, face};
use crate::ui::dates;
use crate::ui::desk::Desk;
use crate::ui::pictures::Eyes;
use crate::ui::theme;
use crate::ui::widgets::card::{Lie, plate, tile};
use crate::ui::widgets::choose::segments_here;
use crate::ui::widgets::form::row;
use crate::ui::widgets::words;

const CLASSES: [Class; 2] = [Class::Public, Class::Helper];

/// Side of a small tile.
const TILE: f32 = 112.0;

/// A participant as pages for some readers can be given them. There is no other way to their facts
/// from here on.
struct Reader<'a> {
    person: &'a Participant,
    class: Class,
}

impl<'a> Reader<'a> {
    /// What anyone may know.
    fn open(&self) -> (&'a str, &'a SymbolId, Eyes) {
        let p = self.person;
        (&p.name, &p.mark, Eyes::of(p))
    }

    /// Favourites and always-there cards, as shown.
    fn contents(&self, club: &Club) -> (Vec<Content>, Vec<Content>) {
        let favourites = self.person.profile.favourites.iter();
        let favourites = favourites.filter_map(|id| club.activity(*id));
        let cards = self.person.standing.cards.iter();
        let cards = cards.map(|c| crate::model::board::shown(club, c));
        (
            favourites.map(|a| Content::of(a)).collect(),
            cards.collect(),
        )
    }

    /// Everything written down that these readers may see, each under its name.
    fn facts(&self) -> Vec<(String, String)> {
        let profile = &self.person.profile;
        let texts = Field::ALL.into_iter().filter_map(|f| {
            let text = profile.for_page(f, self.class)?;
            Some((f.label().to_owned(), text.to_owned()))
        });
        let note = self.person.helper_note.for_page(self.class);
        let mut all: Vec<(String, String)> = note
            .map(|n| ("What the helper needs to know".to_owned(), n.clone()))
            .into_iter()
            .chain(texts)
            .filter(|(_, text)| !text.is_empty())
            .collect();
        if let Some(hard) = profile.hard().for_page(self.class) {
            let hard = hard.iter();
            all.extend(hard.map(|(c, helps)| (format!("Hard: {}", c.label()), helps.clone())));
        }
        if let Some(agreed) = profile.in_water().for_page(self.class) {
            let agreed = in_water::gist(*agreed).into_iter();
            all.extend(agreed.map(|said| ("In the water".to_owned(), said)));
        }
        if let Some(d) = profile.decision().for_page(self.class) {
            let mut say = |name: &str, text: String| all.push((name.to_owned(), text));
            if let Some(date) = d.on {
                say("Decided on", dates::long(date));
            }
            if let Some(date) = d.review {
                say("Look at it again on", dates::long(date));
            }
            if d.warn_of_changes {
                say("Changes", "Tell of them apart and earlier".to_owned());
            }
            if d.surprises {
                say("Surprises", "The family agreed to them".to_owned());
            }
            if d.small_parts {
                say(
                    "Small parts",
                    "Look for loose dots and torn film".to_owned(),
                );
            }
        }
        all
    }
}

/// What a page for readers of this class can be given, in words.
pub fn facts(person: &Participant, class: Class) -> Vec<(String, String)> {
    Reader { person, class }.facts()
}

/// Shows the page.
pub fn show(ui: &mut Ui, desk: &mut Desk<'_>, state: &mut PeopleState, person: &Participant) {
    let names = ["As seen by others", "As seen by their helper"];
    let at = CLASSES.iter().position(|c| *c == state.seen_by);
    if let Some(i) = segments_here(ui, "seen-by", &names, at.unwrap_or(0)) {
        state.seen_by = CLASSES[i];
    }
    let class = state.seen_by;
    let reader = Reader { person, class };
    ui.add_space(4.0);
    words::soft(
        ui,
        match class {
            Class::Public => {
                "All that boards, tiles and stories can be given. Nothing else that was written \
                 down reaches a page that others can see."
            }
            _ => "The same, and what the card in the helper’s hand can be given.",
        },
    );
    ui.add_space(8.0);
    open(ui, desk, &reader);
    let facts = reader.facts();
    if class == Class::Helper {
        ui.add_space(14.0);
        let width = ui.available_width();
        readers::name(ui, "On the helper’s card", Class::Helper, width);
        if facts.is_empty() {
            words::body(ui, "Nothing yet.");
        }
    }
    two_columns(ui, &facts);
}

/// Facts under their names, in two columns where there is room.
fn two_columns(ui: &mut Ui, facts: &[(String, String)]) {
    let full = ui.available_width();
    let two = full > 640.0;
    let width = if two { (full - 24.0) / 2.0 } else { full };
    for pair in facts.chunks(if two { 2 } else { 1 }) {
        ui.horizontal_top(|ui| {
            ui.spacing_mut().item_spacing.x = 24.0;
            for (label, text) in pair {
                ui.vertical(|ui| {
                    ui.set_width(width);
                    ui.spacing_mut().item_spacing.y = 0.0;
                    words::soft(ui, label);
                    words::body(ui, text);
                });
            }
        });
    }
}

/// What is seen by everyone: name, mark, the board, cards, favourites.
fn open(ui: &mut Ui, desk: &mut Desk<'_>, reader: &Reader<'_>) {
    let t = theme::of(ui.ctx());
    let (name, mark, figure) = reader.open();
    ui.horizontal(|ui| {
        let (_, rect) = ui.allocate_space(Vec2::splat(64.0));
        plate(ui.painter(), &t, rect);
        desk.pictures.mark(ui.painter(), rect.shrink(12.0), mark);
        words::heading(ui, name, 26.0);
    });
    ui.add_space(6.0);
    let (favourites, cards) = reader.contents(desk.view.club);
    let boards = desk.view.boards;
    let board = boards.iter().find(|(id, _)| *id == reader.person.id);
    let title = desk.view.session.map_or("", |s| s.title.as_str());
    caption(ui, &format!("On the board of {title}"));
    match board {
        Some((_, board)) => steps(ui, desk, board, figure),
        None => words::body(ui, "Does not come to this session."),
    }
    for (name, what, list) in [
        ("Always-there cards of their own", "card", cards),
        (
            "Favourites, where a sheet shows them",
            "favourite",
            favourites,
        ),
    ] {
        if list.is_empty() {
            continue;
        }
        ui.add_space(8.0);
        caption(ui, name);
        row(ui, |ui| {
            for (i, c) in list.iter().enumerate() {
                let rect = place(ui, (what, i), &c.label);
                let paper = tile(ui.painter(), &t, rect, Lie::Flat);
                let p = ui.painter();
                face(p, desk.pictures, paper, &c.symbol, &c.label, figure);
            }
        });
    }
}

fn caption(ui: &mut Ui, words: &str) {
    let width = ui.available_width();
    readers::name(ui, words, Class::Public, width);
}

/// Room for a tile that a screen reader finds.
fn place(ui: &mut Ui, at: (&str, usize), name: &str) -> Rect {
    let (_, rect) = ui.allocate_space(Vec2::splat(TILE));
    let id = Id::unique(("seen", at));
    let r = ui.interact(rect, id, Sense::hover());
    r.widget_info(|| WidgetInfo::labeled(Role::Image, true, name));
    rect
}

/// The steps as they are printed for this participant: each in its form.
fn steps(ui: &mut Ui, desk: &mut Desk<'_>, board: &Board, figure: Eyes) {
    row(ui, |ui| {
        ui.spacing_mut().item_spacing = vec2(12.0, 12.0);
        for (i, step) in board.steps.iter().enumerate() {
            let name = match step.state {
                StepState::NotToday => format!("{}, not today", step.label),
                _ => format!("{}, {}", step.label, step.form.label()),
            };
            let rect = place(ui, ("step", i), &name);
            let (p, at) = (ui.painter(), (rect, Lie::Flat));
            face::step(p, desk.pictures, at, step, figure, Until::Words);
        }
    });
}
