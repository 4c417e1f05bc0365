//! The tiles that are ready whatever the plan: change, the always-there cards, dry replacements.
//! Story and paper take them from here, so that words and pictures are the same everywhere.

use crate::model::board::{Board, shown};
use crate::model::club::Club;
use crate::model::ids::{ActivityId, SymbolId};
use crate::model::people::Participant;
use crate::model::telling::Ask;

/// A picture with its words.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Card {
    /// The picture.
    pub symbol: SymbolId,
    /// The words.
    pub label: String,
}

/// A dry replacement ready for an activity in the water.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Replacement {
    /// What is done instead.
    pub activity: ActivityId,
    /// Its tile.
    pub dry: Card,
    /// The words of the step on the board that it stands in for; the first one of several.
    pub instead_of: String,
}

/// Words of the program for pictures with one meaning; a club's own words go before these.
const CHANGE: (&str, &str) = ("change", "Change");
const FINISHED: (&str, &str) = ("finished", "Finished");
const WAIT: (&str, &str) = ("wait", "Wait");
const COUNTDOWN: (&str, &str) = ("countdown", "Count down");
const SURPRISE: (&str, &str) = ("surprise", "Surprise");
const CHOOSE: (&str, &str) = ("choose", "Choose");
const ASKING: [(&str, &str); 3] = [("help", "Help"), ("stop", "Stop"), ("break", "Break")];
const PLACES: [(&str, &str); 2] = [("toilet", "Toilet"), ("quiet_place", "Quiet place")];

/// The tile that shows that something changes.
pub fn change(club: &Club) -> Card {
    card(club, CHANGE)
}

/// What stands at the finished place.
pub fn finished(club: &Club) -> Card {
    card(club, FINISHED)
}

/// The question at the head of a choice card.
pub fn choose(club: &Club) -> Card {
    card(club, CHOOSE)
}

/// What says that something is waited for.
pub fn wait(club: &Club) -> Card {
    card(club, WAIT)
}

/// A piece to count down with; the words for a list.
pub fn countdown(club: &Club, number: usize) -> Card {
    let all = card(club, COUNTDOWN);
    Card {
        label: format!("{} {number}", all.label),
        ..all
    }
}

/// The card to ask with.
pub fn of_ask(club: &Club, ask: Ask) -> Card {
    card(club, (ask.symbol(), ask.label()))
}

/// Help, stop and break: what can be asked for at any time.
pub fn asking(club: &Club) -> Vec<Card> {
    ASKING.map(|c| card(club, c)).to_vec()
}

/// The always-there cards: help and stop first, break, toilet, quiet place, finished.
pub fn always_there(club: &Club) -> Vec<Card> {
    let all = ASKING.iter().chain(&PLACES).chain([&FINISHED]);
    all.map(|c| card(club, *c)).collect()
}

/// The cards that are always there for one participant: those of everyone, the surprise where the
/// family agreed to it, then their own, each once.
pub fn always_there_for(club: &Club, who: &Participant) -> Vec<Card> {
    let mut all = always_there(club);
    if who.profile.surprise_tile() {
        all.push(card(club, SURPRISE));
    }
    for content in &who.standing.cards {
        let shown = shown(club, content);
        let card = Card {
            symbol: shown.symbol,
            label: shown.label,
        };
        if !all.contains(&card) {
            all.push(card);
        }
    }
    all
}

/// What is ready for the activities in the water that are still on, each replacement once, in the
/// order of the board.
pub fn dry_replacements(club: &Club, board: &Board) -> Vec<Replacement> {
    let mut found: Vec<Replacement> = Vec::new();
    for step in board.done() {
        let activity = step.activity.and_then(|id| club.activity(id));
        let Some(activity) = activity.filter(|a| a.in_water) else {
            continue;
        };
        let dry = activity.dry_replacement.and_then(|id| club.activity(id));
        let Some(dry) = dry.filter(|d| found.iter().all(|f| f.activity != d.id)) else {
            continue;
        };
        found.push(Replacement {
            activity: dry.id,
            dry: Card {
                symbol: dry.symbol.clone(),
                label: dry.label.clone(),
            },
            instead_of: step.label.clone(),
        });
    }
    found
}

/// One picture has one meaning and one word: what the club calls it, if it has an activity with
/// that picture.
fn card(club: &Club, (symbol, label): (&str, &str)) -> Card {
    let own = club
        .activities
        .iter()
        .find(|a| a.symbol.as_str() == symbol && !a.label.trim().is_empty());
    Card {
        symbol: SymbolId::new(symbol),
        label: own.map_or_else(|| label.to_owned(), |a| a.label.clone()),
    }
}
