//! The pages of a story: who, where and when; each step or part of the day; what may come, what can
//! change, how to ask, how it ends.

use super::about;
use super::cards;
use super::page::{Line, PageKind, StoryPage};
use super::teller::{Teller, beside, line, named, nth, page};
use super::when;
use crate::model::board::{Step, StepState};
use crate::model::conditions::{Condition, Known};
use crate::model::ids::SymbolId;
use crate::model::people::{Age, Voice};
use crate::model::rewriting::{About, LineRef, PageRef};
use crate::model::telling::Ask;
use crate::plan::clock::Moment;
use crate::story::cards::Card;
use crate::story::voice::capitalised;

/// Cards on one page where the program chooses how many.
const CARDS: usize = 3;

/// Who, where, when, and who is beside them.
pub(super) fn title(t: &Teller<'_>) -> StoryPage {
    let mut lines = Vec::new();
    let name = t.who.name.trim();
    if !name.is_empty() && (t.is_full() || t.who.voice == Voice::Name) {
        lines.push(line(About::Name, t.speaker.introduce(name)));
    }
    let event = match t.session.title.trim() {
        "" => "It".to_owned(),
        title => title.to_owned(),
    };
    let day = when::day(t.session.date);
    lines.push(line(About::Event, format!("{event} is on {day}.")));
    let start = Moment::at(t.session.start);
    let text = match t.session.place.trim() {
        "" => format!("It starts at {start}."),
        place => format!("It starts at {start} at {place}."),
    };
    lines.push(line(About::Start, t.speaker.say_with("{}", &text)));
    lines.push(line(About::Helper, helper(t)));
    let at = (PageRef::Title, PageKind::Title);
    let heading = t.speaker.say_with("{My} {}", when::weekday(t.session.date));
    page(at, heading, SymbolId::new("arrive"), lines)
}

/// Plans are told as plans: whoever is beside them may be someone else on the day.
fn helper(t: &Teller<'_>) -> String {
    let beside = t.session.beside.get(&t.who.id);
    let beside = beside.filter(|h| !t.session.helpers_away.contains(h));
    let named = beside
        .and_then(|h| t.club.helper(*h))
        .map(|h| h.name.trim());
    match named.filter(|n| !n.is_empty()) {
        Some(name) => t.speaker.say_with("{} plans to be {my} helper.", name),
        None => t
            .speaker
            .say("{My} helper and {my} group are usually there."),
    }
}

/// What the day may bring, each with its picture.
pub(super) fn day(t: &Teller<'_>) -> Option<StoryPage> {
    let lines = bring(t);
    let symbol = t.session.conditions.iter().find_map(Condition::symbol);
    let symbol = symbol.unwrap_or_else(|| SymbolId::new("look_at_plan"));
    let heading = "What the day may bring".to_owned();
    let at = (PageRef::Day, PageKind::Day);
    (!lines.is_empty()).then(|| page(at, heading, symbol, lines))
}

/// A sentence for each thing that the day may bring.
pub(super) fn bring(t: &Teller<'_>) -> Vec<Line> {
    let one = |(i, c): (usize, &Condition)| {
        let told = nth(About::Weather, i, weather(c));
        match c.symbol() {
            Some(symbol) => {
                let label = c.label().to_owned();
                beside(Card { symbol, label }, told)
            }
            None => told,
        }
    };
    t.session.conditions.iter().enumerate().map(one).collect()
}

fn weather(condition: &Condition) -> String {
    let known = match condition {
        Condition::Known(known) => known,
        Condition::Words(words) => return format!("{}.", capitalised(&named(words))),
    };
    match known {
        Known::Windy => "It may be windy and loud.",
        Known::BigWaves => "The waves may be big.",
        Known::Seaweed => "Seaweed may lie on the sand or in the water.",
        Known::Stingers => "There may be jellyfish in the water.",
        Known::Hot => "It may be hot.",
        Known::Bright => "The light may be bright.",
        Known::HotSand => "The sand may be hot.",
        Known::Cold => "It may be cold.",
        Known::Rain => "Rain may fall.",
        Known::Thunder => "There may be thunder.",
        Known::Loud => "It may be loud.",
        Known::Crowded => "Many people may be there.",
    }
    .to_owned()
}

/// A page a step.
pub(super) fn steps(t: &Teller<'_>) -> Vec<StoryPage> {
    let one = |step: &Step| {
        let kind = match step.state {
            StepState::NotToday => PageKind::NotToday,
            _ => PageKind::Step,
        };
        let at = (PageRef::Step(step.at), kind);
        let lines = about::step(t, step);
        let mut page = page(at, step.label.clone(), step.symbol.clone(), lines);
        page.step = Some(step.at);
        page
    };
    t.board.steps.iter().map(one).collect()
}

/// A page a part of the day, with the picture of each step and what is said of it in short.
pub(super) fn parts(t: &Teller<'_>) -> Vec<StoryPage> {
    let mut pages: Vec<StoryPage> = Vec::new();
    for run in t.board.steps.chunk_by(|a, b| a.part == b.part) {
        let part = run[0].part;
        let of_part = |p: &&StoryPage| matches!(p.at, PageRef::Part(id, _) if id == part);
        let turn = pages.iter().filter(of_part).count();
        let turn = u32::try_from(turn).unwrap_or(u32::MAX);
        let name = t.club.part(part).map_or("", |p| p.name.trim());
        let heading = match (name, turn) {
            ("", _) => named(&run[0].label),
            (name, 0) => name.to_owned(),
            (name, _) => format!("{name} goes on"),
        };
        let lines = run.iter().map(|s| step_line(s, about::in_short(t, s)));
        let at = (PageRef::Part(part, turn), PageKind::Part);
        pages.push(page(at, heading, run[0].symbol.clone(), lines.collect()));
    }
    pages
}

/// A sentence beside a step's own tile.
pub(super) fn step_line(step: &Step, text: String) -> Line {
    Line {
        step: Some(step.at),
        off: step.state == StepState::NotToday,
        ..beside(card_of(step), Line::told(LineRef::Step(step.at), text))
    }
}

/// The tile of a step.
pub(super) fn card_of(step: &Step) -> Card {
    Card {
        symbol: step.symbol.clone(),
        label: step.label.clone(),
    }
}

/// What the change tile looks like.
pub(super) fn change(t: &Teller<'_>) -> StoryPage {
    let card = cards::change(t.club);
    let mut lines = plan_may_change(t, &card);
    let text = "One tile comes off and a new tile goes on.".to_owned();
    lines.push(line(About::Swap, text));
    let at = (PageRef::Change, PageKind::Change);
    page(at, "What can change".to_owned(), card.symbol, lines)
}

/// That the plan may change, and which tile says so.
pub(super) fn plan_may_change(t: &Teller<'_>, card: &Card) -> Vec<Line> {
    let tile = t.speaker.say_with(
        "Then {my} helper can show {me} the tile {}.",
        card.label.trim(),
    );
    vec![
        line(About::Plan, "The plan may change.".to_owned()),
        line(About::Tile, tile),
    ]
}

/// Pages that show what may come instead of each activity in the water.
pub(super) fn dry(t: &Teller<'_>) -> Vec<StoryPage> {
    let all = instead(t);
    let one = |(i, lines): (usize, &[Line])| {
        let number = u32::try_from(i).unwrap_or(u32::MAX);
        let at = (PageRef::Dry(number), PageKind::Dry);
        let symbol = lines
            .iter()
            .find_map(|l| Some(l.card.as_ref()?.symbol.clone()));
        let symbol = symbol.unwrap_or_else(|| SymbolId::new("change"));
        page(at, "If we stay dry".to_owned(), symbol, lines.to_vec())
    };
    all.chunks(CARDS).enumerate().map(one).collect()
}

/// A sentence for each tile that may come instead of an activity in the water.
pub(super) fn instead(t: &Teller<'_>) -> Vec<Line> {
    let all = cards::dry_replacements(t.club, t.board);
    let one = |(n, p): (usize, cards::Replacement)| {
        let words = [p.dry.label.trim(), p.instead_of.trim()];
        let text = t
            .speaker
            .say_all("The tile {} may come instead of {}.", &words);
        beside(p.dry.clone(), nth(About::Dry, n % CARDS, text))
    };
    all.into_iter().enumerate().map(one).collect()
}

/// How to ask, in the participant's own way where the family said it.
pub(super) fn ask(t: &Teller<'_>) -> StoryPage {
    let mut lines = vec![line(
        About::AnyTime,
        t.speaker.say("{I} {can} ask at any time."),
    )];
    lines.extend(asking(t));
    let at = (PageRef::Ask, PageKind::Ask);
    page(
        at,
        t.speaker.say("{I} {can} ask"),
        SymbolId::new("my_helper"),
        lines,
    )
}

/// A sentence for each card that can be asked with. Not everyone points: only the family says how.
pub(super) fn asking(t: &Teller<'_>) -> Vec<Line> {
    let one = |(n, ask): (usize, Ask)| {
        let card = cards::of_ask(t.club, ask);
        let text = match t.who.telling.asks.get(&ask) {
            Some(words) => {
                let words = words.trim().trim_end_matches('.');
                t.speaker
                    .say(&format!("{{I}} {{can}} {words} {}.", ask.purpose()))
            }
            None => format!("The card {} asks {}.", card.label.trim(), ask.purpose()),
        };
        beside(card, nth(About::Ask, n, text))
    };
    Ask::ALL.into_iter().enumerate().map(one).collect()
}

/// How it ends and who collects.
pub(super) fn ending(t: &Teller<'_>) -> StoryPage {
    let at = (PageRef::Ending, PageKind::Ending);
    let heading = "How it ends".to_owned();
    page(at, heading, SymbolId::new("go_home"), ends(t))
}

/// When it ends, who collects, who waits.
pub(super) fn ends(t: &Teller<'_>) -> Vec<Line> {
    let mut lines = Vec::new();
    if let Some(end) = when::about_end(t.session, &t.club.rules) {
        let text = format!("It usually ends at about {end}.");
        lines.push(line(About::Ends, t.speaker.say_with("{}", &text)));
    }
    let collects = match (t.who.telling.collects.trim(), t.who.figure.age) {
        ("", Age::Child) => t.speaker.say("A trusted grown-up collects {me}."),
        ("", Age::Teen) => t.speaker.say("A trusted adult collects {me}."),
        ("", Age::Adult) => t.speaker.say("Someone {I} {know} meets {me} at the end."),
        (name, Age::Adult) => t
            .speaker
            .say_with("{} plans to meet {me} at the end.", name),
        (name, _) => t.speaker.say_with("{} plans to collect {me}.", name),
    };
    lines.push(line(About::Collects, collects));
    let text = t.speaker.say("{My} helper can wait with {me} until then.");
    lines.push(line(About::Wait, text));
    lines
}
