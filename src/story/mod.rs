//! The story to go through before the day, in the words, pictures and order of the board.
//!
//! It says who, where, when, what may be strong and what helps, what can change, how to ask and
//! how it ends. Nothing in it promises sea, weather or people, guesses a feeling, or orders:
//! "may", "usually", "can try". Sentences a club wrote are kept as they are but for the words in
//! braces, which follow the participant's voice (see [`voice`]).
//!
//! `page` says what a story is made of, `bank` what can be said about pictures, `about` what is said
//! about a step, `pages` and `news` the pages, `by_hand` what a person changed in them, `against`
//! whether story and board agree, `measure` how long and how hard its words are. `said` has words that
//! the checks and the window share.

mod about;
pub mod against;
pub mod bank;
mod by_hand;
pub mod cards;
pub mod measure;
mod news;
mod page;
mod pages;
pub mod said;
mod teller;
mod verbs;
pub mod voice;
pub mod when;

use crate::model::board::{self, Board};
use crate::model::club::Club;
use crate::model::people::Participant;
use crate::model::session::Session;
use crate::model::telling::{Depth, Pages};
use teller::Teller;
use voice::Speaker;

pub use crate::model::ids::StepRef;
pub use about::sentence;
pub use page::{Line, PageKind, SecondShown, Small, Story, StoryPage};

/// The story of a participant for a session; `board` is theirs for that session. Pure.
pub fn tell(club: &Club, session: &Session, board: &Board, who: &Participant) -> Story {
    let t = Teller {
        club,
        session,
        board,
        who,
        speaker: Speaker::of(who),
    };
    let mut pages = told(&t);
    if let Some(words) = session.stories.get(&who.id) {
        let apply = |p: StoryPage| match words.page(p.at) {
            Some(words) => by_hand::apply(p, words),
            None => p,
        };
        pages = pages.into_iter().map(apply).collect();
    }
    for page in &mut pages {
        in_depth(page, t.depth());
    }
    let mut story = Story {
        title: title(session, &t.speaker),
        title_second: None,
        depth: t.depth(),
        pages,
        second: None,
    };
    in_second(&mut story, who);
    story
}

/// The story of a participant, with the board derived on the way.
pub fn tell_for(club: &Club, session: &Session, who: &Participant) -> Story {
    tell(club, session, &board::derive(club, session, who.id), who)
}

/// The pages as the program tells them.
fn told(t: &Teller<'_>) -> Vec<StoryPage> {
    let news = || news::pages(t);
    let middle = match t.who.telling.pages {
        Pages::AsFits | Pages::News => news(),
        Pages::Steps | Pages::Parts => None,
    };
    let mut all = vec![pages::title(t)];
    if let Some(middle) = middle {
        all.extend(middle);
        return all;
    }
    all.extend(pages::day(t));
    all.extend(match t.who.telling.pages {
        Pages::Parts => pages::parts(t),
        _ => pages::steps(t),
    });
    all.push(pages::change(t));
    all.extend(pages::dry(t));
    all.push(pages::ask(t));
    all.push(pages::ending(t));
    all
}

fn title(session: &Session, speaker: &Speaker) -> String {
    let day = speaker.say(&format!("{{My}} {}", when::weekday(session.date)));
    match session.title.trim() {
        "" => day,
        name => format!("{day}: {name}"),
    }
}

/// Where no sentences are wanted, pictures and their words stay. The first page keeps its sentences:
/// they tell whoever holds the story which day it is about.
fn in_depth(page: &mut StoryPage, depth: Depth) {
    if depth.has_sentences() || page.kind == PageKind::Title {
        return;
    }
    page.lines.retain(|l| l.card.is_some());
    page.hidden.clear();
    for line in &mut page.lines {
        line.text = match (depth, &line.card) {
            (Depth::Word, Some(card)) => card.label.clone(),
            _ => String::new(),
        };
        line.told = Some(line.text.clone());
        line.stale = false;
    }
}

/// The second language beside the first, sentence by sentence.
fn in_second(story: &mut Story, who: &Participant) {
    let Some(second) = &who.telling.second else {
        return;
    };
    let of = |text: &str| second.of(text).map(str::to_owned);
    let mut missing = 0;
    story.title_second = of(&story.title);
    for page in &mut story.pages {
        page.heading_second = of(&page.heading);
        missing += usize::from(page.heading_second.is_none());
        for line in page.lines.iter_mut().filter(|l| !l.text.is_empty()) {
            line.second = of(&line.text);
            missing += usize::from(line.second.is_none());
        }
    }
    story.second = Some(SecondShown {
        language: second.language.clone(),
        first: second.first,
        checked_by: second.checked_by.trim().to_owned(),
        missing,
    });
}
