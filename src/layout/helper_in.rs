//! The private half of a helper's card: what is hard today, the note, what was written down for a
//! helper's eyes, and how the board is used. What is kept for the coordinator cannot be read here,
//! because the flow is a helper's. Health is never told: where there is a plan, the card says who
//! holds it.

use super::desk::{Desk, Person};
use super::flow::{Flow, Piece};
use super::words::{CLEAR, TIGHT, Words};
use super::writer::Helper;
use super::{helper_water, ink, of_today};
use crate::model::manner::{Finishing, Manner};
use crate::model::privacy::Guarded;
use crate::model::profile::{Field, Section};
use crate::page::Role;
use crate::story::voice::capitalised;
use crate::story::when;
use crate::text::Style;
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
/// Below a fact, and below a group of them besides.
const BELOW: Length = Length::um(2_200);
const BETWEEN: Length = Length::um(2_600);
/// Height of one line, in letter sizes.
const ONE_LINE: f64 = 1.04;
/// Letters of headings.
const HEADING_PT: f64 = 12.5;
const NAME_HEADING_PT: f64 = 16.0;

/// What a helper is told where there is a plan for someone's health: who holds it, nothing else.
const ALERT: &str =
    "There is a plan to know about. Follow this person’s plan, held by the coordinator.";

/// Adds everything, for a column.
pub(super) fn add(desk: &Desk<'_>, person: &Person<'_>, room: Rect, flow: &mut Flow<Helper>) {
    let column = Column(room);
    let mut first = vec![column.heading(person.who.name.trim(), NAME_HEADING_PT)];
    if text(person, Field::AlertMarker, flow).is_some() {
        first.extend(column.text(ALERT, &bold(PT)));
    }
    for hard in of_today::hard(desk, person, flow) {
        first.extend(column.text(&capitalised(&hard), &bold(PT)));
    }
    let note = shown(&person.who.helper_note, flow);
    first.extend(note.map_or_else(Vec::new, |note| column.text(&note, &regular())));
    let mut groups = vec![first];
    groups.extend(water(desk, person, &column, flow));
    for section in Section::ALL {
        let facts = facts(desk, person, section, flow);
        if !facts.is_empty() {
            let mut group = vec![column.heading(section.label(), HEADING_PT)];
            let facts = facts.iter();
            group.extend(facts.flat_map(|(name, value)| column.fact(name, value)));
            groups.push(group);
        }
    }
    groups.push(teaching(person, &column));
    for mut group in groups {
        if let Some(last) = group.last_mut() {
            last.height += BETWEEN;
        }
        for piece in group {
            flow.push(piece);
        }
    }
}

/// The minutes in the water, and what is agreed for them.
fn water(
    desk: &Desk<'_>,
    person: &Person<'_>,
    column: &Column,
    flow: &Flow<Helper>,
) -> Option<Vec<Piece>> {
    let minutes = helper_water::minutes(desk, person);
    let facts = helper_water::facts(desk, person, flow);
    if minutes.is_empty() && facts.is_empty() {
        return None;
    }
    let named = match minutes.is_empty() {
        true => "On the day",
        false => "In the water today",
    };
    let mut group = vec![column.heading(named, HEADING_PT)];
    let minutes = minutes.iter();
    group.extend(minutes.flat_map(|words| column.text(words, &bold(PT))));
    let facts = facts.iter();
    group.extend(facts.flat_map(|(name, value)| column.fact(name, value)));
    Some(group)
}

fn regular() -> Style {
    Style::regular(Length::pt(PT))
}

fn bold(pt: f64) -> Style {
    Style::bold(Length::pt(pt))
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
/// words. It is not torn apart.
fn teaching(person: &Person<'_>, column: &Column) -> Vec<Piece> {
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
    let steps = [
        "Give the cue. Go to the board together.".to_owned(),
        "Point to what was done, say its name, wait.".to_owned(),
        format!("If help is wanted, help to {finish}."),
        "Point to what is next, say its name, go there.".to_owned(),
    ];
    let rules = [
        format!("Only {name} {only}. Offer, point and wait."),
        "Use the board for every change, also when all is easy.".to_owned(),
        "Few words, always the same. Wait before you say them again.".to_owned(),
    ];
    let mut all = vec![column.heading("At every change", HEADING_PT)];
    let steps = steps.iter().enumerate();
    all.extend(steps.map(|(i, words)| column.item(&format!("{}.", i + 1), words)));
    for rule in &rules {
        all.extend(column.text(rule, &regular()));
    }
    let last = all.len() - 1;
    for piece in &mut all[..last] {
        piece.keep_with_next = true;
    }
    all
}

/// The column for which pieces are made.
struct Column(Rect);

impl Column {
    fn heading(&self, words: &str, pt: f64) -> Piece {
        let words = Words::wrapped(words, &bold(pt), self.0.w, TIGHT, 3);
        let at = Point::new(self.0.x, Length::ZERO);
        Piece::new(words.height() + Length::mm(1.8)).kept().with(
            Role::Heading(2),
            None,
            words.left(at, ink::INK),
        )
    }

    /// A fact: a short name with its text beside it, or the text below its name.
    fn fact(&self, name: &str, value: &str) -> Vec<Piece> {
        let room = self.0;
        let named = Words::line(name, &bold(NAME_PT), BESIDE - Length::mm(1.5));
        let x = room.x + BESIDE;
        let beside = Words::wrapped(value, &regular(), room.right() - x, CLEAR, usize::MAX);
        let fits = !named.cut && !beside.cut && beside.height() <= TALLEST;
        if fits && room.w >= NARROWEST_BESIDE {
            let down = Length::pt(PT - NAME_PT).scale(0.78);
            let piece = Piece::new(beside.height().max(named.height()) + BELOW)
                .words(named.left(Point::new(room.x, down), ink::SOFT))
                .words(beside.left(Point::new(x, Length::ZERO), ink::INK));
            return vec![piece];
        }
        let named = Words::wrapped(name, &bold(NAME_PT), room.w, TIGHT, 3);
        let at = Point::new(room.x, Length::ZERO);
        let named = Piece::new(named.height() + Length::mm(0.5))
            .kept()
            .words(named.left(at, ink::SOFT));
        let mut all = vec![named];
        all.extend(self.text(value, &regular()));
        all
    }

    /// A number with words beside it.
    fn item(&self, number: &str, words: &str) -> Piece {
        let indent = Length::mm(5.5);
        let words = Words::wrapped(words, &regular(), self.0.w - indent, CLEAR, 12);
        let number = Words::line(number, &bold(PT), indent);
        let at = |x: Length| Point::new(self.0.x + x, Length::ZERO);
        Piece::new(words.height() + BELOW)
            .words(number.left(at(Length::ZERO), ink::SOFT))
            .words(words.left(at(indent), ink::INK))
    }

    /// A text as wide as the column, in several pieces if it is long.
    fn text(&self, words: &str, style: &Style) -> Vec<Piece> {
        let mut words = Words::wrapped(words, style, self.0.w, CLEAR, usize::MAX);
        let mut pieces = Vec::new();
        while !words.is_empty() {
            let (now, later) = words.split_at_height(TALLEST.min(self.0.h));
            let below = match later.is_empty() {
                true => BELOW,
                false => style.size.scale(CLEAR - ONE_LINE),
            };
            let items = now.left(Point::new(self.0.x, Length::ZERO), ink::INK);
            pieces.push(Piece::new(now.height() + below).words(items));
            words = later;
        }
        pieces
    }
}
