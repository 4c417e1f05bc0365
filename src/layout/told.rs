//! A story and all that is shown beside it, for those who show it elsewhere than on paper: the same
//! words, pictures and codes as on the printed one.

use super::desk::Desk;
use super::{Request, apart};
use crate::model::club::Club;
use crate::model::ids::{ParticipantId, SymbolId};
use crate::model::picture::Place;
use crate::story::{Story, cards, tell};
use crate::symbols::library::Drawn;

/// A story with its pictures.
#[derive(Clone, Debug)]
pub struct Told {
    /// The story.
    pub story: Story,
    /// The participant's mark.
    pub mark: Drawn,
    /// What the mark is called.
    pub mark_words: String,
    /// Code of the plan, day and mark, as at the foot of a printed page.
    pub foot: String,
    /// What the finished place is called.
    pub finished: String,
    /// Every picture of the story once, in the wanted ink, with what can be seen on it.
    pub pictures: Vec<(Drawn, String)>,
}

/// The story of a participant who comes to a session.
pub fn told(club: &Club, request: &Request, who: ParticipantId) -> Option<Told> {
    let session = club.session(request.session)?;
    let desk = Desk::new(club, session, request);
    let person = desk.person(club.participant(who)?);
    let story = tell(club, session, &person.board, person.who);
    let mut pictures: Vec<(Drawn, String)> = Vec::new();
    let words = words(&story);
    for symbol in symbols(&story) {
        if pictures.iter().any(|(d, _)| d.id == *symbol) {
            continue;
        }
        let seen = club.seen_by(person.who, symbol);
        let seen = apart::in_story(club, &words, &seen).unwrap_or(seen);
        let shows = desk.shows(&seen, Place::Own(who));
        // Known by the name the story has for it, whatever is seen there.
        let drawn = Drawn {
            id: symbol.clone(),
            ..desk.drawn_as(&seen, &person)
        };
        pictures.push((drawn, shows.to_owned()));
    }
    Some(Told {
        story,
        foot: desk.footer(&person, String::new()).plan,
        finished: cards::finished(club).label,
        pictures,
        mark: person.mark,
        mark_words: person.mark_words,
    })
}

/// All that is read, for the names in it.
fn words(story: &Story) -> String {
    let headings = story.pages.iter().map(|p| p.heading.as_str());
    let lines = story.pages.iter().flat_map(|p| &p.lines);
    let all = lines.map(|l| l.text.as_str()).chain(headings);
    all.fold(story.title.clone(), |words, more| words + "\n" + more)
}

fn symbols(story: &Story) -> impl Iterator<Item = &SymbolId> {
    story.pages.iter().flat_map(|page| {
        let lines = page.lines.iter().filter_map(|l| l.card.as_ref());
        let small = page.small.iter().map(|s| &s.card);
        let alone = (!page.has_cards()).then_some(&page.symbol);
        alone
            .into_iter()
            .chain(lines.chain(small).map(|c| &c.symbol))
    })
}
