//! How a participant's story is told: voice and pronouns, how much of it, in what pages and letters,
//! how they ask, who collects, and in a second language.

use egui::{Id, Ui};

use super::PeopleState;
use crate::model::people::{Participant, Voice};
use crate::model::telling::{Ask, Depth, LETTERS, OwnPronouns, Pages, Pronouns, Second, Telling};
use crate::ui::desk::Desk;
use crate::ui::people::standing::title;
use crate::ui::theme;
use crate::ui::widgets::choose::{segments_here, select, tick};
use crate::ui::widgets::field::Field;
use crate::ui::widgets::form::{block, row};
use crate::ui::widgets::steps::{Steps, stepper};

/// Letters offered first where none were chosen yet.
const FIRST_LETTERS: u32 = 24;

/// Shows the page.
pub fn show(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    _state: &mut PeopleState,
    person: &Participant,
    next: &mut Participant,
) {
    let what =
        "The words of the family. What is written here may be read by whoever sees the story.";
    title(ui, "How the story speaks", what);
    row(ui, |ui| voice(ui, desk, person, next));
    row(ui, |ui| {
        depth(ui, person, next);
        pages(ui, person, next);
    });
    letters(ui, desk, person, next);
    ui.add_space(12.0);
    let what = "In the story: “I can press my button for help”. Write {my} for my, your or a name’s. Left empty, the story names the card.";
    title(ui, "How they ask", what);
    row(ui, |ui| {
        for ask in Ask::ALL {
            asks(ui, desk, person, next, ask);
        }
    });
    row(ui, |ui| collects(ui, desk, person, next));
    ui.add_space(12.0);
    let what = "Each sentence is written beside the first at Boards, Story.";
    title(ui, "A second language", what);
    second(ui, desk, person, next);
}

fn id(person: &Participant, what: &str) -> Id {
    Id::unique(("telling", person.id, what))
}

fn voice(ui: &mut Ui, desk: &mut Desk<'_>, person: &Participant, next: &mut Participant) {
    block(ui, "The story speaks as", 330.0, theme::CONTROL, |ui| {
        let names = ["I", "You", "By name"];
        let now = Voice::ALL.iter().position(|v| *v == person.voice);
        if let Some(i) = segments_here(ui, "voice", &names, now.unwrap_or(0)) {
            next.voice = Voice::ALL[i];
        }
    });
    let own = || match &person.telling.pronouns {
        Pronouns::Own(own) => own.clone(),
        _ => Box::default(),
    };
    let choices = [
        Pronouns::They,
        Pronouns::She,
        Pronouns::He,
        Pronouns::Own(own()),
    ];
    let kind = std::mem::discriminant(&person.telling.pronouns);
    block(ui, "Pronouns", 260.0, theme::CONTROL, |ui| {
        let mut options: Vec<String> = choices[..3].iter().map(Pronouns::label).collect();
        options.push("In the family’s own words".to_owned());
        let at = choices
            .iter()
            .position(|c| std::mem::discriminant(c) == kind);
        let width = ui.available_width();
        if let Some(i) = select(ui, id(person, "pronouns"), "Pronouns", &options, at, width) {
            next.telling.pronouns = choices[i].clone();
        }
    });
    if let Pronouns::Own(own) = &person.telling.pronouns {
        own_pronouns(ui, desk, person, own, next);
    }
}

fn own_pronouns(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    person: &Participant,
    own: &OwnPronouns,
    next: &mut Participant,
) {
    type Get = fn(&mut OwnPronouns) -> &mut String;
    let fields: [(&str, &str, Get); 4] = [
        ("They walk", "they", |o| &mut o.subject),
        ("For them", "them", |o| &mut o.object),
        ("Their hat", "their", |o| &mut o.possessive),
        ("By themselves", "themselves", |o| &mut o.reflexive),
    ];
    for (label, hint, get) in fields {
        block(ui, label, 130.0, theme::CONTROL, |ui| {
            let now = get(&mut own.clone()).clone();
            let width = ui.available_width();
            let f = Field::new(id(person, label), label, &now).hint(hint);
            if let Some(word) = f.show(ui, desk.drafts, width) {
                let mut changed = own.clone();
                *get(&mut changed) = word;
                next.telling.pronouns = Pronouns::Own(Box::new(changed));
            }
        });
    }
}

fn depth(ui: &mut Ui, person: &Participant, next: &mut Participant) {
    block(ui, "How much is written", 560.0, theme::CONTROL, |ui| {
        let names = Depth::ALL.map(Depth::label);
        let now = Depth::ALL.iter().position(|d| *d == person.telling.depth);
        if let Some(i) = segments_here(ui, "depth", &names, now.unwrap_or(0)) {
            next.telling.depth = Depth::ALL[i];
        }
    });
}

fn pages(ui: &mut Ui, person: &Participant, next: &mut Participant) {
    block(ui, "On a page", 300.0, theme::CONTROL, |ui| {
        let options = Pages::ALL.map(|p| p.label().to_owned());
        let now = Pages::ALL.iter().position(|p| *p == person.telling.pages);
        let width = ui.available_width();
        if let Some(i) = select(ui, id(person, "pages"), "On a page", &options, now, width) {
            next.telling.pages = Pages::ALL[i];
        }
    });
}

fn letters(ui: &mut Ui, desk: &mut Desk<'_>, person: &Participant, next: &mut Participant) {
    row(ui, |ui| {
        let chosen = person.telling.letters;
        let words = "Letters of the story as chosen here";
        let r = tick(ui, id(person, "letters-own"), chosen.is_some(), words, "");
        let r = r.on_hover_text("Otherwise they follow the large print of the board");
        if r.clicked() {
            next.telling.letters = match chosen {
                Some(_) => None,
                None => Some(FIRST_LETTERS),
            };
        }
        if let Some(pt) = chosen {
            block(ui, "Letters of the story", 176.0, theme::CONTROL, |ui| {
                let s = Steps {
                    id: id(person, "letters"),
                    label: "Letters of the story",
                    unit: "pt",
                    range: LETTERS,
                    step: 2,
                };
                if let Some(pt) = stepper(ui, desk.drafts, &s, pt) {
                    next.telling.letters = Some(pt);
                }
            });
        }
    });
}

fn asks(ui: &mut Ui, desk: &mut Desk<'_>, person: &Participant, next: &mut Participant, ask: Ask) {
    let label = match ask {
        Ask::Help => "For help I can …",
        Ask::Stop => "To stop I can …",
        Ask::Break => "For a break I can …",
        Ask::Toilet => "For the toilet I can …",
    };
    block(ui, label, 234.0, theme::CONTROL, |ui| {
        let now = person.telling.asks.get(&ask).map_or("", String::as_str);
        let width = ui.available_width();
        let f = Field::new(id(person, label), label, now).hint("press {my} button");
        if let Some(words) = f.show(ui, desk.drafts, width) {
            next.telling.asks.insert(ask, words);
        }
    });
}

fn collects(ui: &mut Ui, desk: &mut Desk<'_>, person: &Participant, next: &mut Participant) {
    block(
        ui,
        "Who collects, in the story",
        250.0,
        theme::CONTROL,
        |ui| {
            let width = ui.available_width();
            let now = &person.telling.collects;
            let f = Field::new(id(person, "collects"), "Who collects, in the story", now);
            if let Some(words) = f.hint("a trusted grown-up").show(ui, desk.drafts, width) {
                next.telling.collects = words;
            }
        },
    );
}

fn second(ui: &mut Ui, desk: &mut Desk<'_>, person: &Participant, next: &mut Participant) {
    row(ui, |ui| {
        let telling: &Telling = &person.telling;
        let on = telling.second.is_some();
        if tick(ui, id(person, "second"), on, "Beside the first", "").clicked() {
            // Taken out and put back by Undo; the words go with it.
            next.telling.second = match on {
                true => None,
                false => Some(Second::default()),
            };
        }
        let Some(second) = &telling.second else {
            return;
        };
        let mut changed = second.clone();
        block(ui, "Its tag, such as ar", 176.0, theme::CONTROL, |ui| {
            let width = ui.available_width();
            let f = Field::new(
                id(person, "tag"),
                "Tag of the second language",
                &second.language,
            );
            if let Some(tag) = f.hint("ar").show(ui, desk.drafts, width) {
                changed.language = tag;
            }
        });
        block(ui, "It stands", 260.0, theme::CONTROL, |ui| {
            let now = usize::from(second.first);
            if let Some(i) = segments_here(ui, "second-first", &["Below", "Above"], now) {
                changed.first = i == 1;
            }
        });
        block(ui, "Read through by", 250.0, theme::CONTROL, |ui| {
            let width = ui.available_width();
            let f = Field::new(id(person, "reader"), "Read through by", &second.checked_by);
            let f = f.hint("not yet checked by a reader");
            if let Some(name) = f.show(ui, desk.drafts, width) {
                changed.checked_by = name;
            }
        });
        if changed != *second {
            next.telling.second = Some(changed);
        }
    });
}
