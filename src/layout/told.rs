//! A story and all that is shown beside it, for those who show it elsewhere than on paper: the same
//! words, pictures and codes as on the printed one.

use super::Request;
use super::desk::Desk;
use crate::model::club::Club;
use crate::model::ids::{ParticipantId, SymbolId};
use crate::story::{Story, cards, tell};
use crate::symbols::library::{Drawn, library};

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
    for symbol in symbols(&story) {
        if pictures.iter().all(|(d, _)| d.id != *symbol) {
            let shows = library().get(symbol).map_or("", |s| s.shows.as_str());
            pictures.push((desk.drawn(symbol, &person), shows.to_owned()));
        }
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
