//! The private half of a helper's card: what is hard today, the note, what was written down for a
//! helper's eyes, and how the board is used. What is kept for the coordinator cannot be read here,
//! because the flow is a helper's. Health is never told: where there is a plan, the card says who
//! holds it.

use super::desk::{Desk, Person};
use super::flow::{Flow, Piece};
use super::session_sheet::heading_below;
use super::words::{CLEAR, TIGHT, Words};
use super::writer::Helper;
use super::{ink, of_today};
use crate::model::manner::{Finishing, Manner};
use crate::model::privacy::Guarded;
use crate::model::profile::{Field, Section};
use crate::story::voice::capitalised;
use crate::story::when;
use crate::text::Style;
use crate::units::colour::Rgb;
use crate::units::{Length, Point, Rect};

/// Letters of the card, and of the names of facts.
const PT: f64 = 11.0;
const NAME_PT: f64 = 10.0;
/// Width of a short name with its text beside it.
const BESIDE: Length = Length::um(19_000);
/// Narrower columns have every text below its name.
const NARROWEST_BESIDE: Length = Length::um(46_000);
/// Longer texts are told in several pieces.
const TALLEST: Length = Length::um(50_000);
/// Below a fact, and above a heading.
const BELOW: Length = Length::um(1_500);
const ABOVE: Length = Length::um(4_000);

/// What a helper is told where there is a plan for someone's health: who holds it, nothing else.
const ALERT: &str = "There is a plan to know about: see the plan held by the coordinator.";

/// Adds everything, for a column.
pub(super) fn add(desk: &Desk<'_>, person: &Person<'_>, room: Rect, flow: &mut Flow<Helper>) {
    let name = Words::wrapped(person.who.name.trim(), &bold(15.0), room.w, TIGHT, 3);
    flow.push(Piece::new(name.height() + Length::mm(2.0)).kept().with(
        crate::page::Role::Heading(2),
        None,
        name.left(Point::new(room.x, Length::ZERO), ink::INK),
    ));
    let alert = text(person, Field::AlertMarker, flow).is_some();
    if alert {
        add_text(ALERT, &bold(PT), ink::INK, room, flow);
    }
    for hard in of_today::hard(desk, person, flow) {
        add_text(&capitalised(&hard), &bold(PT), ink::INK, room, flow);
    }
    let note = shown(&person.who.helper_note, flow);
    if let Some(note) = note {
        add_text(&note, &regular(), ink::INK, room, flow);
    }
    for section in Section::ALL {
        let facts = facts(desk, person, section, flow);
        if !facts.is_empty() {
            flow.push(heading(section.label(), room));
            for (name, value) in facts {
                add_fact(&name, &value, room, flow);
            }
        }
    }
    flow.push(heading("At every change", room));
    for line in teaching(person) {
        add_text(&line, &regular(), ink::INK, room, flow);
    }
}

fn regular() -> Style {
    Style::regular(Length::pt(PT))
}

fn bold(pt: f64) -> Style {
    Style::bold(Length::pt(pt))
}

fn heading(words: &str, room: Rect) -> Piece {
    heading_below(ABOVE, words, room)
}

/// A text, if a helper may see it and there is one.
fn shown(guarded: &Guarded<String>, flow: &Flow<Helper>) -> Option<String> {
    let text = flow.may_show(guarded)?.trim();
    (!text.is_empty()).then(|| text.to_owned())
}

fn text(person: &Person<'_>, field: Field, flow: &Flow<Helper>) -> Option<String> {
    shown(person.who.profile.guarded(field)?, flow)
}

/// The facts of a section, with their names. What stands outside is not said again.
fn facts(
    desk: &Desk<'_>,
    person: &Person<'_>,
    section: Section,
    flow: &Flow<Helper>,
) -> Vec<(String, String)> {
    use Field::{AlertMarker, BoardLives, Cue, DecidedBy, ExactWords};
    let elsewhere = [Cue, ExactWords, BoardLives, DecidedBy, AlertMarker];
    let mut all = Vec::new();
    if section == Section::Board {
        all.push(("How it is given".to_owned(), manner(&person.who.manner)));
    }
    for field in section.fields().filter(|f| !elsewhere.contains(f)) {
        all.extend(text(person, field, flow).map(|t| (field.label().to_owned(), t)));
    }
    match section {
        Section::Board => all.extend(decided(person, flow)),
        Section::Helping => all.extend(favourites(desk, person)),
        Section::Changes => {
            let decision = flow.may_show(person.who.profile.decision());
            if decision.is_some_and(|d| d.warn_of_changes) {
                let early = "Told apart from the others and earlier".to_owned();
                all.insert(0, ("When the plan changes".to_owned(), early));
            }
        }
        _ => {}
    }
    all
}

/// "Drawing; first, then; left to right; finished steps: into a pouch".
fn manner(m: &Manner) -> String {
    let parts = [
        m.form.label().to_owned(),
        m.reach.label().to_lowercase(),
        m.run.label().to_lowercase(),
        format!("finished: {}", m.finishing.label().to_lowercase()),
    ];
    parts.join("; ")
}

/// Who decided how the board is given, when, and when to look at it again.
fn decided(person: &Person<'_>, flow: &Flow<Helper>) -> Option<(String, String)> {
    let mut facts: Vec<String> = text(person, Field::DecidedBy, flow).into_iter().collect();
    if let Some(decision) = flow.may_show(person.who.profile.decision()) {
        facts.extend(decision.on.map(when::full_date));
        let review = decision.review.map(when::full_date);
        facts.extend(review.map(|d| format!("look at it again {d}")));
    }
    let name = Field::DecidedBy.label().to_owned();
    (!facts.is_empty()).then(|| (name, facts.join("; ")))
}

fn favourites(desk: &Desk<'_>, person: &Person<'_>) -> Option<(String, String)> {
    let all = person.who.profile.favourites.iter();
    let labels = all.filter_map(|id| desk.club.activity(*id));
    let labels: Vec<&str> = labels.map(|a| a.label.trim()).collect();
    let name = "Favourites so far".to_owned();
    (!labels.is_empty()).then(|| (name, labels.join(", ")))
}

/// How the board is used at every change: common practice in teaching visual schedules, in our own
/// words.
fn teaching(person: &Person<'_>) -> Vec<String> {
    let name = person.who.name.trim();
    let (finish, only) = match person.who.manner.finishing {
        Finishing::Pouch => (
            "take the tile off and put it in the pouch",
            "moves the tiles",
        ),
        Finishing::TurnedOver => ("turn the tile over", "turns the tiles"),
        Finishing::FinishedRow => (
            "take the tile off and put it in the finished place",
            "moves the tiles",
        ),
        Finishing::Tick => ("tick it", "ticks"),
    };
    vec![
        "1. Give the cue. Go to the board together.".to_owned(),
        "2. Point to what was done, say its name, wait.".to_owned(),
        format!("3. If help is wanted, help to {finish}."),
        "4. Point to what is next, say its name, go there.".to_owned(),
        format!("Only {name} {only}. Offer, point and wait."),
        "Use the board for every change, also when all is easy.".to_owned(),
        "Few words, always the same. Wait before you say them again.".to_owned(),
    ]
}

/// A fact: a short name with its text beside it, or the text below its name.
fn add_fact(name: &str, value: &str, room: Rect, flow: &mut Flow<Helper>) {
    let named = Words::line(name, &bold(NAME_PT), BESIDE - Length::mm(1.5));
    let x = room.x + BESIDE;
    let beside = Words::wrapped(value, &regular(), room.right() - x, CLEAR, usize::MAX);
    let fits = !named.cut && !beside.cut && beside.height() <= TALLEST;
    if fits && room.w >= NARROWEST_BESIDE {
        let down = Length::pt(PT - NAME_PT).scale(0.78);
        let piece = Piece::new(beside.height().max(named.height()) + BELOW)
            .words(named.left(Point::new(room.x, down), ink::SOFT))
            .words(beside.left(Point::new(x, Length::ZERO), ink::INK));
        return flow.push(piece);
    }
    let named = Words::wrapped(name, &bold(NAME_PT), room.w, TIGHT, 3);
    let at = Point::new(room.x, Length::ZERO);
    flow.push(
        Piece::new(named.height() + Length::mm(0.5))
            .kept()
            .words(named.left(at, ink::SOFT)),
    );
    add_text(value, &regular(), ink::INK, room, flow);
}

/// A text as wide as the column, in several pieces if it is long.
fn add_text(words: &str, style: &Style, colour: Rgb, room: Rect, flow: &mut Flow<Helper>) {
    let mut words = Words::wrapped(words, style, room.w, CLEAR, usize::MAX);
    while !words.is_empty() {
        let (now, later) = words.split_at_height(TALLEST.min(room.h));
        let below = match later.is_empty() {
            true => BELOW,
            false => style.size.scale(CLEAR - 1.04),
        };
        let items = now.left(Point::new(room.x, Length::ZERO), colour);
        flow.push(Piece::new(now.height() + below).words(items));
        words = later;
    }
}
