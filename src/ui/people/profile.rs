//! What is known about a participant, a section at a time, each field with who will see it.

use std::collections::BTreeMap;

use egui::{Align2, Id, Rect, Ui, vec2};

use super::parts::{Fold, activity_chips, add_activity, add_one, day, long_field};
use super::{PeopleState, in_water, readers};
use crate::model::conditions::{Condition, Known};
use crate::model::people::Participant;
use crate::model::privacy::Class;
use crate::model::profile::{Field as Fact, PhotoConsent, Section};
use crate::ui::desk::Desk;
use crate::ui::icons::{self, Icon};
use crate::ui::pictures::Eyes;
use crate::ui::theme;
use crate::ui::widgets::button::{Button, Weight};
use crate::ui::widgets::card::plate;
use crate::ui::widgets::choose::{segments_here, tick};
use crate::ui::widgets::field::{Field, live};
use crate::ui::widgets::form::row;
use crate::ui::widgets::words;

/// The sections on the page of what is good to know.
pub const KNOW: [Section; 7] = [
    Section::Saying,
    Section::Talking,
    Section::Senses,
    Section::Helping,
    Section::Changes,
    Section::Body,
    Section::Water,
];

/// Shows what is good to know and puts what was changed into `next`.
pub fn show(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    state: &mut PeopleState,
    person: &Participant,
    next: &mut Participant,
) {
    favourites(ui, desk, person, next);
    hard(ui, desk, state, person, next);
    for section in KNOW {
        fold(ui, desk, state, (person, &mut *next), section);
    }
    ui.add_space(8.0);
}

/// Shows how the board is used and who decided it.
pub fn board(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    state: &mut PeopleState,
    person: &Participant,
    next: &mut Participant,
) {
    ui.add_space(8.0);
    fold(ui, desk, state, (person, &mut *next), Section::Board);
    ui.add_space(8.0);
    decision(ui, desk, state, person, next);
}

/// Shows what only the coordinator sees.
pub fn sealed(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    state: &mut PeopleState,
    person: &Participant,
    next: &mut Participant,
) {
    words::soft(
        ui,
        "Only what the session needs. No page for others or for a helper can hold any of it.",
    );
    ui.add_space(4.0);
    papers(ui, desk, state, person, next);
    ui.add_space(8.0);
    fields(ui, desk, person, next, Section::Sealed);
}

/// A section that folds open; closed, one line says what is in it.
fn fold(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    state: &mut PeopleState,
    (person, next): (&Participant, &mut Participant),
    section: Section,
) {
    let said: Vec<(Fact, &str)> = section
        .fields()
        .map(|f| (f, person.profile.for_owner(f)))
        .filter(|(_, text)| !text.is_empty())
        .collect();
    let mut gist: Vec<String> = said
        .iter()
        .map(|(f, text)| format!("{}: {}", f.label(), text.replace('\n', " ")))
        .collect();
    let (mut filled, mut all) = (said.len(), section.fields().count());
    if section == Section::Water {
        let agreed = in_water::gist(*person.profile.in_water().for_owner());
        (filled, all) = (filled + agreed.len(), all + 2);
        gist.splice(0..0, agreed);
    }
    let open = state.open.contains(&section);
    let row = Fold {
        id: Id::unique(("section", section.label())),
        title: section.label(),
        filled: (filled, all),
        gist: &gist.join("  ·  "),
        open,
    };
    if row.show(ui) {
        if open {
            state.open.remove(&section);
        } else {
            state.open.insert(section);
        }
    }
    if open {
        if section == Section::Water {
            in_water::show(ui, desk, person, next);
        }
        fields(ui, desk, person, next, section);
        ui.add_space(10.0);
    }
}

/// The fields of a section, in two columns where there is room.
fn fields(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    person: &Participant,
    next: &mut Participant,
    section: Section,
) {
    let all: Vec<Fact> = section.fields().collect();
    let full = ui.available_width();
    let two = full > 640.0;
    let width = if two { (full - 20.0) / 2.0 } else { full };
    for pair in all.chunks(if two { 2 } else { 1 }) {
        ui.horizontal_top(|ui| {
            ui.spacing_mut().item_spacing.x = 20.0;
            for field in pair {
                text(ui, desk, person, next, (*field, width));
            }
        });
    }
}

/// Whether a field is usually a few words: Enter then enters it.
const fn is_short(field: Fact) -> bool {
    let few = matches!(field.section(), Section::Board | Section::Saying);
    few || matches!(field, Fact::Surname | Fact::Born)
}

fn text(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    person: &Participant,
    next: &mut Participant,
    (field, width): (Fact, f32),
) {
    let now = person.profile.for_owner(field);
    let label = field.label();
    let id = Id::unique(("profile", person.id, field.word()));
    let fits = now.chars().count() < 44 && !now.contains('\n');
    let typed = ui.vertical(|ui| {
        ui.set_width(width);
        ui.spacing_mut().item_spacing.y = 2.0;
        readers::name(ui, label, field.class(), width);
        if is_short(field) && fits {
            Field::new(id, label, now).show(ui, desk.drafts, width)
        } else {
            long_field(ui, desk, (id, label), now, (2, width))
        }
    });
    if let Some(text) = typed.inner {
        next.profile.set(field, text);
    }
}

fn favourites(ui: &mut Ui, desk: &mut Desk<'_>, person: &Participant, next: &mut Participant) {
    let width = ui.available_width();
    readers::name(ui, "Favourites, as they showed", Class::Public, width);
    let favourites = &person.profile.favourites;
    row(ui, |ui| {
        let words = ("favourite", "No longer a favourite");
        if let Some(id) = activity_chips(ui, desk, person, favourites, words) {
            next.profile.favourites.remove(&id);
        }
        let id = Id::unique(("favourite-add", person.id));
        let (from, taken) = ((desk.view.club, 240.0), |a| favourites.contains(&a));
        if let Some(id) = add_activity(ui, id, "Add a favourite…", from, taken) {
            next.profile.favourites.insert(id);
        }
    });
    ui.add_space(12.0);
}

/// Conditions that are hard, each with what helps.
fn hard(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    state: &mut PeopleState,
    person: &Participant,
    next: &mut Participant,
) {
    let width = ui.available_width();
    let name = "Hard on some days, and what helps then";
    readers::name(ui, name, Class::Helper, width);
    let now = person.profile.hard().for_owner();
    let mut changed = now.clone();
    for (condition, helps) in now {
        condition_row(ui, desk, person, (condition, helps), &mut changed);
    }
    row(ui, |ui| {
        let known = Known::ALL.into_iter().map(Condition::Known);
        let sessions = desk.view.club.sessions.iter();
        let of_sessions = sessions.flat_map(|s| s.conditions.iter().cloned());
        let mut free: Vec<Condition> = known
            .chain(of_sessions)
            .filter(|c| !now.contains_key(c))
            .collect();
        free.sort();
        free.dedup();
        let names: Vec<String> = free.iter().map(|c| c.label().to_owned()).collect();
        let id = Id::unique(("hard-add", person.id));
        if let Some(i) = add_one(ui, id, "Add what is hard…", &names, 240.0) {
            changed.insert(free[i].clone(), String::new());
        }
        let (_, rect) = ui.allocate_space(vec2(280.0, theme::CONTROL));
        let id = Id::unique("hard-words");
        let label = "Or in other words, then Enter";
        let r = live(ui, id, rect, label, &mut state.condition, 0.0);
        if r.lost_focus() && ui.input(|i| i.key_pressed(egui::Key::Enter)) {
            let words = std::mem::take(&mut state.condition).trim().to_owned();
            if !words.is_empty() {
                changed.entry(Condition::Words(words)).or_default();
            }
        }
    });
    if changed != *now {
        next.profile.set_hard(changed);
    }
    ui.add_space(14.0);
}

/// One condition: its picture and words, what helps, and a cross.
fn condition_row(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    person: &Participant,
    (condition, helps): (&Condition, &str),
    changed: &mut BTreeMap<Condition, String>,
) {
    let t = theme::of(ui.ctx());
    let label = condition.label();
    ui.horizontal(|ui| {
        let (_, name) = ui.allocate_space(vec2(196.0, 48.0));
        let mid = name.left_center() + vec2(24.0, 0.0);
        let picture = Rect::from_center_size(mid, vec2(44.0, 44.0));
        plate(ui.painter(), &t, picture);
        if let Some(symbol) = condition.symbol() {
            let inner = picture.shrink(3.0);
            desk.pictures
                .symbol(ui.painter(), inner, &symbol, Eyes::of(person));
        } else {
            icons::paint(
                ui.painter(),
                Icon::Pen,
                picture.shrink(11.0),
                t.col.card_ink,
            );
        }
        let room = name.with_min_x(picture.right() + 10.0);
        let font = theme::bold(16.0);
        words::line(
            ui.painter(),
            room,
            Align2::LEFT_CENTER,
            label,
            font,
            t.col.ink,
        );
        let id = Id::unique(("hard", person.id, label));
        let named = format!("{label}: what helps");
        let f = Field::new(id, &named, helps).hint("what helps then");
        let width = (ui.available_width() - 64.0).max(120.0);
        if let Some(text) = f.show(ui, desk.drafts, width) {
            changed.insert(condition.clone(), text);
        }
        let name = format!("{label} is not hard");
        let b = Button::new(("hard-remove", person.id, label), &name).icon_only(Icon::Cross);
        if b.weight(Weight::Quiet).show(ui).clicked() {
            changed.remove(condition);
        }
    });
}

fn decision(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    state: &mut PeopleState,
    person: &Participant,
    next: &mut Participant,
) {
    let now = *person.profile.decision().for_owner();
    let mut changed = now;
    let field = |what: &str| Id::unique(("day", person.id, what));
    row(ui, |ui| {
        for (name, due, date) in [
            ("Decided on", false, &mut changed.on),
            ("Look at it again on", true, &mut changed.review),
        ] {
            day(
                ui,
                desk,
                state,
                (field(name), name, Class::Helper),
                due,
                date,
            );
        }
    });
    let id = |what: &str| Id::unique(("decision", person.id, what));
    let r = tick(
        ui,
        id("warn"),
        now.warn_of_changes,
        "Tell of changes apart and earlier",
        "",
    );
    if r.clicked() {
        changed.warn_of_changes = !now.warn_of_changes;
    }
    let r = tick(
        ui,
        id("surprises"),
        now.surprises,
        "The family agreed to surprises",
        "",
    );
    if r.clicked() {
        changed.surprises = !now.surprises;
    }
    let r = tick(
        ui,
        id("small-parts"),
        now.small_parts,
        "Tell whoever prints of small parts",
        "",
    );
    if r.clicked() {
        changed.small_parts = !now.small_parts;
    }
    if changed != now {
        next.profile.set_decision(changed);
    }
}

fn papers(
    ui: &mut Ui,
    desk: &mut Desk<'_>,
    state: &mut PeopleState,
    person: &Participant,
    next: &mut Participant,
) {
    let now = *person.profile.papers().for_owner();
    let mut changed = now;
    let class = Class::Coordinator;
    let field = |what: &str| Id::unique(("day", person.id, what));
    row(ui, |ui| {
        for (name, due, date) in [
            ("Family agreed on", false, &mut changed.agreed),
            ("Delete all of it by", true, &mut changed.delete_by),
        ] {
            day(ui, desk, state, (field(name), name, class), due, date);
        }
    });
    row(ui, |ui| {
        let width = 660.0_f32.min(ui.max_rect().width());
        ui.vertical(|ui| {
            ui.set_width(width);
            ui.spacing_mut().item_spacing.y = 2.0;
            readers::name(ui, "Photographs may be used", class, width);
            let names = PhotoConsent::ALL.map(PhotoConsent::label);
            let at = PhotoConsent::ALL.iter().position(|c| *c == now.photos);
            if let Some(i) = segments_here(ui, "photos", &names, at.unwrap_or(0)) {
                changed.photos = PhotoConsent::ALL[i];
            }
        });
        let name = "Said on";
        let date = &mut changed.photos_on;
        day(ui, desk, state, (field(name), name, class), false, date);
    });
    if changed != now {
        next.profile.set_papers(changed);
    }
}
