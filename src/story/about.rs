//! What is said about one step: what happens, who is there, what may be strong, what helps, why and
//! how long, as much of it as the depth asks for.

use super::bank;
use super::page::Line;
use super::teller::{Teller, line, named, nth};
use crate::model::board::{Step, StepState};
use crate::model::club::{Activity, Club};
use crate::model::ids::StepRef;
use crate::model::people::{Age, Participant};
use crate::model::rewriting::{About, LineRef};
use crate::story::voice::Speaker;

/// Everything that can be said about a step, as templates.
#[derive(Default)]
struct Sayings<'a> {
    happens: Vec<&'a str>,
    who: Option<&'a str>,
    strong: Vec<&'a str>,
    helps: Option<&'a str>,
    why: Option<&'a str>,
    /// Whether the club wrote what happens: then all of it is said.
    own: bool,
}

fn some(text: &str) -> Option<&str> {
    Some(text).filter(|t| !t.trim().is_empty())
}

/// The club's own sentences, else ours for that picture and label; nothing for a step that can only
/// be named.
fn sayings<'a>(club: &'a Club, step: &Step) -> Option<Sayings<'a>> {
    let activity = step.activity.and_then(|id| club.activity(id));
    let bank = bank::phrases(&step.symbol, &step.label);
    if let Some(own) = activity.and_then(|a| of_club(a)) {
        // Why something is done is the same in every club.
        let why = own.why.or_else(|| some(bank?.why));
        return Some(Sayings { why, ..own });
    }
    let bank = bank?;
    Some(Sayings {
        happens: bank.happens.to_vec(),
        who: some(bank.who),
        strong: bank.strong.to_vec(),
        helps: some(bank.helps),
        why: some(bank.why),
        own: false,
    })
}

fn of_club(a: &Activity) -> Option<Sayings<'_>> {
    let happens: Vec<&str> = a.sentences.iter().filter_map(|s| some(s)).collect();
    let around = &a.around;
    let all = Sayings {
        own: true,
        who: some(&around.who),
        strong: some(&around.strong).into_iter().collect(),
        helps: some(&around.helps),
        why: some(&around.why),
        happens,
    };
    let said = !all.happens.is_empty() || all.strong.len() + usize::from(all.helps.is_some()) > 0;
    said.then_some(all)
}

/// The sentences of a step's page.
pub(super) fn step(t: &Teller<'_>, step: &Step) -> Vec<Line> {
    let mut all = Vec::new();
    if step.state == StepState::NotToday {
        return not_today(t, step);
    }
    if let StepState::Swapped { instead_of: of } | StepState::Instead { of } = &step.state {
        let of = of.trim();
        if !of.is_empty() && of != step.label.trim() {
            let text = format!("Today {} comes instead of {of}.", named(&step.label));
            all.push(line(About::Instead, text));
        }
    }
    if !step.options.is_empty() {
        all.push(line(About::Choice, choice(t, step)));
        let text = t.speaker.say("{I} {can} point to the one {I} {choose}.");
        all.push(line(About::Helps, text));
        return all;
    }
    let Some(sayings) = sayings(t.club, step) else {
        let text = format!("The tile shows {}.", named(&step.label));
        all.push(line(About::Happens, text));
        let text = t.speaker.say("{I} {can} try it with {my} helper.");
        all.push(line(About::Helps, text));
        return all;
    };
    all.extend(match t.is_full() {
        true => full(t, step, &sayings),
        false => short(&t.speaker, &sayings),
    });
    all
}

/// One to three: what happens, what may be strong, what helps; more of what happens where the others
/// leave room.
fn short(speaker: &Speaker, s: &Sayings<'_>) -> Vec<Line> {
    let strong = s.strong.first();
    let others = usize::from(strong.is_some()) + usize::from(s.helps.is_some());
    let happens = if s.own { s.happens.len() } else { 3 - others };
    let told = s.happens.iter().take(happens).enumerate();
    let mut all: Vec<Line> = told
        .map(|(i, h)| nth(About::Happens, i, speaker.say(h)))
        .collect();
    all.extend(strong.map(|s| line(About::Strong, speaker.say(s))));
    all.extend(s.helps.map(|h| line(About::Helps, speaker.say(h))));
    all
}

/// As much as a reader takes in on one page, the least needed left out first.
fn full(t: &Teller<'_>, step: &Step, s: &Sayings<'_>) -> Vec<Line> {
    let say = |text: &str| t.speaker.say(text);
    let mut all: Vec<Line> = Vec::new();
    let happens = s.happens.iter().enumerate();
    all.extend(happens.map(|(i, h)| nth(About::Happens, i, say(h))));
    all.extend(s.who.map(|w| line(About::Who, say(w))));
    let strong = s.strong.iter().enumerate();
    all.extend(strong.map(|(i, h)| nth(About::Strong, i, say(h))));
    all.extend(s.helps.map(|h| line(About::Helps, say(h))));
    all.extend(s.why.map(|w| line(About::Why, say(w))));
    all.extend(favourite(t, step).map(|f| line(About::Favourite, f)));
    all.extend(how_long(t, step).map(|l| line(About::Long, l)));
    if s.own {
        return all;
    }
    const LEAST_NEEDED: [About; 4] = [About::Why, About::Favourite, About::Who, About::Long];
    for about in LEAST_NEEDED {
        if all.len() > t.depth().most() {
            all.retain(|l| !matches!(l.at, LineRef::Told(a, _) if a == about));
        }
    }
    all
}

fn favourite(t: &Teller<'_>, step: &Step) -> Option<String> {
    let shown = step
        .activity
        .is_some_and(|id| t.who.profile.favourites.contains(&id));
    let words = t.speaker.say("one of {my} favourites");
    shown.then(|| format!("{} is {words}.", named(&step.label)))
}

/// In plain terms for a child; for others about the minutes. Said where it is long or short: the same
/// sentence on every page would be read by nobody.
fn how_long(t: &Teller<'_>, step: &Step) -> Option<String> {
    let minutes = step.minutes.filter(|m| matches!(m, 1..=4 | 10..))?;
    if t.who.figure.age != Age::Child {
        let text = format!("It usually takes about {minutes} minutes.");
        return Some(t.speaker.say(&text)).filter(|_| minutes > 1);
    }
    let text = match minutes {
        ..=4 => "It usually takes a short time.",
        5..=20 => "It usually takes a while.",
        _ => "It usually takes a long while.",
    };
    Some(text.to_owned())
}

/// "I can choose Dig or Ball."
fn choice(t: &Teller<'_>, step: &Step) -> String {
    let labels: Vec<String> = step.options.iter().map(|o| named(&o.label)).collect();
    let words = match labels.as_slice() {
        [one] => one.clone(),
        [rest @ .., last] => format!("{} or {last}", rest.join(", ")),
        [] => String::new(),
    };
    t.speaker.say_with("{I} {can} choose {}.", &words)
}

/// "… is not today". What comes instead has a page of its own; where nothing does, what can be done
/// when something is ready.
fn not_today(t: &Teller<'_>, step: &Step) -> Vec<Line> {
    let text = format!("{} is not today.", named(&step.label));
    let mut all = vec![line(About::NotToday, text)];
    let StepRef::Slot(slot) = step.at else {
        return all;
    };
    if t.board.position(StepRef::Instead(slot)).is_some() {
        return all;
    }
    let of_slot = t.session.slot(slot).map(|s| s.activity);
    let instead = [step.activity, of_slot]
        .into_iter()
        .flatten()
        .filter_map(|id| t.club.activity(id)?.dry_replacement)
        .find_map(|id| t.club.activity(id))
        .filter(|a| !a.label.trim().is_empty() && a.label != step.label);
    if let Some(a) = instead {
        let text = t
            .speaker
            .say_with("The tile {} may come instead.", a.label.trim());
        all.push(line(About::Dry, text));
    }
    all
}

/// The first sentence of a step's page in the participant's voice, where there is one to say; none
/// for a step that is only named.
pub fn sentence(club: &Club, step: &Step, who: &Participant) -> Option<String> {
    let sayings = sayings(club, step)?;
    let first = sayings.happens.first().or(sayings.strong.first())?;
    Some(Speaker::of(who).say(first))
}

/// What is said of a step in one breath, beside its picture on a page of several.
pub(super) fn in_short(t: &Teller<'_>, step: &Step) -> String {
    if step.state == StepState::NotToday {
        return format!("{} is not today.", named(&step.label));
    }
    if !step.options.is_empty() {
        return choice(t, step);
    }
    let told = sentence(t.club, step, t.who);
    told.unwrap_or_else(|| format!("The tile shows {}.", named(&step.label)))
}

/// What may be strong about a step that is new, in one sentence.
pub(super) fn strong(t: &Teller<'_>, step: &Step) -> Option<String> {
    let sayings = sayings(t.club, step).filter(|_| step.options.is_empty())?;
    Some(t.speaker.say(sayings.strong.first()?))
}
