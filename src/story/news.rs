//! The story of someone who was here before: what is the same, what is new, in three or four pages.
//! All steps of the day stand on one of them in small, in the order of the board.

use super::about;
use super::cards;
use super::page::{Line, PageKind, Small, StoryPage};
use super::pages::{asking, bring, card_of, ends, instead, plan_may_change, step_line};
use super::teller::{Teller, line, named, nth, page};
use crate::model::board::{Step, StepState};
use crate::model::ids::SymbolId;
use crate::model::rewriting::{About, LineRef, PageRef};
use crate::model::telling::Pages;
use crate::plan::clock::Moment;
use crate::plan::since::{Since, since};

/// The pages after the title; none for someone who comes for the first time, nor, where it is to be
/// as fits, for a day on which no more is the same than new.
pub(super) fn pages(t: &Teller<'_>) -> Option<Vec<StoryPage>> {
    let since = since(t.club, t.session, t.board)?;
    let fits = since.same.len() > since.new.len();
    if t.who.telling.pages == Pages::AsFits && !fits {
        return None;
    }
    let mut all = vec![same(t, &since)];
    all.extend(new(t, &since));
    all.push(ending(t));
    Some(all)
}

fn is_new(since: &Since<'_>, step: &Step) -> bool {
    step.state != StepState::NotToday && since.new.contains(&step.label)
}

/// The whole day in small.
fn same(t: &Teller<'_>, since: &Since<'_>) -> StoryPage {
    let mut lines = Vec::new();
    let (same, new) = (since.same.len(), since.new.len());
    let text = match (same, new) {
        (0, _) => None,
        (_, 0) => Some("All of this was on the plan last time too."),
        _ if same > new => Some("Most things are the same as last time."),
        _ => Some("Some things are the same as last time."),
    };
    lines.extend(text.map(|s| line(About::Same, s.to_owned())));
    let without_card = |(n, line): (usize, Line)| Line {
        at: match line.at {
            // Several pages number what may come instead anew; here all stand on one.
            LineRef::Told(about, _) => LineRef::Told(about, u32::try_from(n).unwrap_or(u32::MAX)),
            at => at,
        },
        card: None,
        ..line
    };
    lines.extend(bring(t).into_iter().enumerate().map(without_card));
    lines.extend(plan_may_change(t, &cards::change(t.club)));
    lines.extend(instead(t).into_iter().enumerate().map(without_card));
    let at = (PageRef::Same, PageKind::Same);
    let symbol = SymbolId::new("look_at_plan");
    let mut page = page(at, t.speaker.say("{My} plan"), symbol, lines);
    let small = t.board.steps.iter().map(|s| Small {
        step: s.at,
        card: card_of(s),
        new: is_new(since, s),
        off: s.state == StepState::NotToday,
    });
    page.small = small.collect();
    page
}

/// What is new: the place, the time, each step with its picture; what was there and is not.
fn new(t: &Teller<'_>, since: &Since<'_>) -> Option<StoryPage> {
    let mut lines: Vec<Line> = Vec::new();
    let place = t.session.place.trim();
    if since.other_place && !place.is_empty() {
        let text = format!("This time it is at {}.", named(place));
        lines.push(nth(About::New, 0, text));
    }
    if since.other_start {
        let text = format!("This time it starts at {}.", Moment::at(t.session.start));
        lines.push(nth(About::New, 1, t.speaker.say_with("{}", &text)));
    }
    lines.extend(gone(&since.gone).map(|text| line(About::Gone, text)));
    let mut seen: Vec<&str> = Vec::new();
    let mut symbol = None;
    for step in t.board.steps.iter().filter(|s| is_new(since, s)) {
        symbol = symbol.or(Some(&step.symbol));
        if seen.contains(&step.label.as_str()) {
            continue;
        }
        seen.push(&step.label);
        let mut text = about::in_short(t, step);
        if let Some(strong) = about::strong(t, step) {
            text = format!("{text} {strong}");
        }
        lines.push(step_line(step, text));
    }
    let symbol = symbol.cloned();
    let symbol = symbol.unwrap_or_else(|| SymbolId::new("change"));
    let at = (PageRef::New, PageKind::New);
    (!lines.is_empty()).then(|| page(at, "What is new".to_owned(), symbol, lines))
}

/// Most things that are named as gone; the day in small shows what there is anyway.
const GONE: usize = 3;

/// "Song and Dig are for another time."
fn gone(labels: &[String]) -> Option<String> {
    let labels: Vec<String> = labels.iter().map(|l| named(l)).collect();
    let words = match labels.as_slice() {
        [] => return None,
        [one] => return Some(format!("{one} is for another time.")),
        all if all.len() > GONE => return None,
        [rest @ .., last] => format!("{} and {last}", rest.join(", ")),
    };
    Some(format!("{words} are for another time."))
}

/// How to ask and how it ends, on one page.
fn ending(t: &Teller<'_>) -> StoryPage {
    let mut lines = ends(t);
    lines.truncate(2);
    lines.extend(asking(t));
    let at = (PageRef::Ending, PageKind::Ending);
    let heading = t.speaker.say("How {I} {ask} and how it ends");
    page(at, heading, SymbolId::new("go_home"), lines)
}
