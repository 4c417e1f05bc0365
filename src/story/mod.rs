//! The story to go through before the day: one page a step, in the words, pictures and order of
//! the board.
//!
//! It says who, where, when, what may be strong and what helps, what can change, how to ask and
//! how it ends. Nothing in it promises sea, weather or people, guesses a feeling, or orders:
//! "may", "usually", "can try". Sentences a club wrote are kept as they are but for the words in
//! braces, which follow the participant's voice (see [`voice`]).

pub mod cards;
mod usual;
mod verbs;
pub mod voice;
pub mod when;

use crate::model::board::{self, Board, Step, StepState};
use crate::model::club::{Activity, Club};
use crate::model::ids::{StepRef, SymbolId};
use crate::model::people::Participant;
use crate::model::session::Session;
use crate::plan::clock::Moment;
use cards::Card;
use voice::Speaker;

/// Sentences on one page at most where the program chooses them: guidance asks for one to three.
const SENTENCES: usize = 3;

/// One participant's story for one session.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Story {
    /// What stands on its first page.
    pub title: String,
    /// The pages in order.
    pub pages: Vec<StoryPage>,
}

/// One page of a story.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct StoryPage {
    /// What the page is about.
    pub kind: PageKind,
    /// The words above, those of the board for a step.
    pub heading: String,
    /// The picture beside the sentences.
    pub symbol: SymbolId,
    /// The sentences in order, all of them.
    pub sentences: Vec<String>,
    /// Tiles shown beside the last sentences: as many sentences from the end as there are cards,
    /// in the same order.
    pub cards: Vec<Card>,
    /// The step it tells of.
    pub step: Option<StepRef>,
}

impl StoryPage {
    /// The sentences that stand beside the large picture.
    pub fn beside_picture(&self) -> &[String] {
        &self.sentences[..self.sentences.len().saturating_sub(self.cards.len())]
    }

    /// Each card with its sentence.
    pub fn beside_cards(&self) -> impl Iterator<Item = (&Card, &String)> {
        let from = self.sentences.len().saturating_sub(self.cards.len());
        self.cards.iter().zip(&self.sentences[from..])
    }
}

/// What a page of a story is about.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum PageKind {
    /// Who, where and when.
    Title,
    /// A step of the board.
    Step,
    /// A step that is not done today.
    NotToday,
    /// What the change tile looks like.
    Change,
    /// What may come instead of an activity in the water.
    Dry,
    /// How to ask.
    Ask,
    /// How it ends and who collects.
    Ending,
}

/// The story of a participant for a session; `board` is theirs for that session. Pure.
pub fn tell(club: &Club, session: &Session, board: &Board, who: &Participant) -> Story {
    let speaker = Speaker::of(who);
    let mut pages = vec![title_page(session, who, &speaker)];
    pages.extend(
        board
            .steps
            .iter()
            .map(|s| step_page(club, session, board, s, &speaker)),
    );
    pages.push(change_page(club, &speaker));
    pages.extend(dry_pages(club, board, &speaker));
    pages.push(ask_page(club, &speaker));
    pages.push(ending_page(club, session, &speaker));
    Story {
        title: title(session, &speaker),
        pages,
    }
}

/// The story of a participant, with the board derived on the way.
pub fn tell_for(club: &Club, session: &Session, who: &Participant) -> Story {
    tell(club, session, &board::derive(club, session, who.id), who)
}

fn title(session: &Session, speaker: &Speaker) -> String {
    let day = speaker.say(&format!("{{My}} {}", when::weekday(session.date)));
    match session.title.trim() {
        "" => day,
        name => format!("{day}: {name}"),
    }
}

fn page(kind: PageKind, heading: String, symbol: &str, sentences: Vec<String>) -> StoryPage {
    StoryPage {
        kind,
        heading,
        symbol: SymbolId::new(symbol),
        sentences,
        cards: Vec::new(),
        step: None,
    }
}

fn title_page(session: &Session, who: &Participant, speaker: &Speaker) -> StoryPage {
    let mut sentences = Vec::new();
    let name = who.name.trim();
    if !name.is_empty() {
        sentences.push(speaker.introduce(name));
    }
    let event = match session.title.trim() {
        "" => "It".to_owned(),
        title => title.to_owned(),
    };
    let day = when::day(session.date);
    let start = Moment::at(session.start);
    sentences.push(format!("{event} is on {day}."));
    sentences.push(match session.place.trim() {
        "" => format!("It starts at {start}."),
        place => format!("It starts at {start} at {place}."),
    });
    sentences.push(speaker.say("{My} helper and {my} group are usually there."));
    page(
        PageKind::Title,
        speaker.say(&format!("{{My}} {}", when::weekday(session.date))),
        "arrive",
        sentences,
    )
}

fn step_page(
    club: &Club,
    session: &Session,
    board: &Board,
    step: &Step,
    speaker: &Speaker,
) -> StoryPage {
    let activity = step.activity.and_then(|id| club.activity(id));
    let (kind, sentences) = match &step.state {
        StepState::NotToday => (
            PageKind::NotToday,
            not_today(club, session, board, step, speaker),
        ),
        StepState::Swapped { instead_of } | StepState::Instead { of: instead_of } => {
            let mut all = Vec::new();
            if !instead_of.trim().is_empty() && instead_of.trim() != step.label.trim() {
                all.push(format!(
                    "Today {} comes instead of {}.",
                    named(&step.label),
                    instead_of.trim()
                ));
            }
            all.extend(about(step, activity.map(|a| &**a), speaker));
            (PageKind::Step, all)
        }
        StepState::AsTimetable | StepState::Own => {
            (PageKind::Step, about(step, activity.map(|a| &**a), speaker))
        }
    };
    StoryPage {
        kind,
        heading: step.label.clone(),
        symbol: step.symbol.clone(),
        sentences,
        cards: Vec::new(),
        step: Some(step.at),
    }
}

/// What is said about an activity: the club's own sentences, else ours for that picture and
/// label, else one that names it.
fn about(step: &Step, activity: Option<&Activity>, speaker: &Speaker) -> Vec<String> {
    let own: Vec<String> = activity
        .map(|a| a.sentences.as_slice())
        .unwrap_or_default()
        .iter()
        .filter(|s| !s.trim().is_empty())
        .map(|s| speaker.say(s))
        .collect();
    if !own.is_empty() {
        return own;
    }
    match usual::sentences(&step.symbol, &step.label) {
        Some(usual) => usual.iter().map(|s| speaker.say(s)).collect(),
        None => vec![
            format!("The tile shows {}.", named(&step.label)),
            speaker.say("{I} {can} try it with {my} helper."),
        ],
    }
}

/// The first sentence of a step's page in the participant's voice, where there is one to say; none
/// for a step that is only named.
pub fn sentence(club: &Club, step: &Step, who: &Participant) -> Option<String> {
    let speaker = Speaker::of(who);
    let activity = step.activity.and_then(|id| club.activity(id));
    let own = activity.map(|a| a.sentences.as_slice()).unwrap_or_default();
    let own = own.iter().find(|s| !s.trim().is_empty());
    let usual = || {
        usual::sentences(&step.symbol, &step.label)?
            .first()
            .copied()
    };
    let first = own.map(String::as_str).or_else(usual)?;
    Some(speaker.say(first))
}

/// "… is not today". What comes instead has a page of its own; where nothing does, what can be done
/// when something is ready.
fn not_today(
    club: &Club,
    session: &Session,
    board: &Board,
    step: &Step,
    speaker: &Speaker,
) -> Vec<String> {
    let mut all = vec![format!("{} is not today.", named(&step.label))];
    let StepRef::Slot(slot) = step.at else {
        return all;
    };
    if board.position(StepRef::Instead(slot)).is_some() {
        return all;
    }
    let of_slot = session.slot(slot).map(|s| s.activity);
    let instead = [step.activity, of_slot]
        .into_iter()
        .flatten()
        .filter_map(|id| club.activity(id)?.dry_replacement)
        .find_map(|id| club.activity(id))
        .filter(|a| !a.label.trim().is_empty() && a.label != step.label);
    if let Some(a) = instead {
        all.push(speaker.say_with("{I} {can} do {} instead.", a.label.trim()));
    }
    all
}

fn change_page(club: &Club, speaker: &Speaker) -> StoryPage {
    let card = cards::change(club);
    page(
        PageKind::Change,
        "What can change".to_owned(),
        card.symbol.as_str(),
        vec![
            "The plan may change.".to_owned(),
            speaker.say_with(
                "Then {my} helper can show {me} the tile {}.",
                card.label.trim(),
            ),
            "One tile comes off and a new tile goes on.".to_owned(),
        ],
    )
}

/// Pages that show what may come instead of each activity in the water.
fn dry_pages(club: &Club, board: &Board, speaker: &Speaker) -> Vec<StoryPage> {
    let pairs = cards::dry_replacements(club, board);
    pairs
        .chunks(SENTENCES)
        .map(|pairs| {
            let sentences = pairs
                .iter()
                .map(|p| {
                    speaker.say_all(
                        "{I} {can} do {} instead of {}.",
                        &[p.dry.label.trim(), p.instead_of.trim()],
                    )
                })
                .collect();
            let mut page = page(
                PageKind::Dry,
                "If we stay dry".to_owned(),
                pairs[0].dry.symbol.as_str(),
                sentences,
            );
            page.cards = pairs.iter().map(|p| p.dry.clone()).collect();
            page
        })
        .collect()
}

fn ask_page(club: &Club, speaker: &Speaker) -> StoryPage {
    let asks = cards::asking(club);
    let mut sentences = vec![speaker.say("{I} {can} ask at any time.")];
    sentences.extend(
        asks.iter()
            .map(|c| speaker.say_with("{I} {can} point to {}.", c.label.trim())),
    );
    let mut page = page(
        PageKind::Ask,
        speaker.say("{I} {can} ask"),
        "my_helper",
        sentences,
    );
    page.cards = asks;
    page
}

fn ending_page(club: &Club, session: &Session, speaker: &Speaker) -> StoryPage {
    let mut sentences = Vec::new();
    if let Some(end) = when::about_end(session, &club.rules) {
        sentences.push(format!("It usually ends at about {end}."));
    }
    sentences.push(speaker.say("A trusted grown-up collects {me}."));
    sentences.push(speaker.say("{My} helper can wait with {me} until then."));
    page(
        PageKind::Ending,
        "How it ends".to_owned(),
        "go_home",
        sentences,
    )
}

/// A label as part of a sentence: trimmed, without a full stop at its end; "This" for none.
fn named(label: &str) -> String {
    match label.trim().trim_end_matches('.').trim_end() {
        "" => "This".to_owned(),
        l => l.to_owned(),
    }
}
