//! What is ready whatever the plan, in the form a participant understands: dry replacements, the
//! change tile and the always-there cards, and the real things to pack for those that are things.

use super::desk::{Desk, Person};
use crate::model::board::shown;
use crate::model::finding::Spot;
use crate::model::hand::Content;
use crate::model::ids::ActivityId;
use crate::model::manner::Form;
use crate::story::cards::{self, Card};

/// A tile or card that is no step.
#[derive(Clone, Debug)]
pub(super) struct Ready {
    pub card: Card,
    pub form: Form,
    pub spot: Spot,
    /// The activity it shows, if it is one.
    activity: Option<ActivityId>,
}

/// The tiles: dry replacements, then change.
pub(super) fn tiles(desk: &Desk<'_>, person: &Person<'_>) -> Vec<Ready> {
    let manner = &person.who.manner;
    let replacements = cards::dry_replacements(desk.club, &person.board);
    let dry = replacements.into_iter().map(|ready| Ready {
        card: ready.dry,
        form: with_tile(manner.form_of(Some(ready.activity))),
        spot: Spot::Activity(ready.activity),
        activity: Some(ready.activity),
    });
    let change = Ready {
        card: cards::change(desk.club),
        form: own_or_drawn(manner.form),
        spot: desk.board_spot(person),
        activity: None,
    };
    dry.chain([change]).collect()
}

/// The always-there cards. Those of everyone say what must be understood at once, by whoever is
/// near: they keep their picture beside the word, but for a participant who has words alone.
pub(super) fn cards(desk: &Desk<'_>, person: &Person<'_>) -> Vec<Ready> {
    let manner = &person.who.manner;
    let everyones = cards::always_there(desk.club).len();
    let all = cards::always_there_for(desk.club, person.who);
    let ready = |(i, card): (usize, Card)| {
        let own = (i >= everyones)
            .then(|| own_card(desk, person, &card))
            .flatten();
        let activity = own.and_then(|c| c.activity);
        Ready {
            form: match (i < everyones, manner.form) {
                (true, Form::Word) => Form::Word,
                (true, _) => Form::Drawing,
                (false, _) => own_or_drawn(manner.form_of(activity)),
            },
            spot: desk.board_spot(person),
            activity,
            card,
        }
    };
    all.into_iter().enumerate().map(ready).collect()
}

/// What a card of the participant's own shows.
fn own_card<'a>(desk: &Desk<'_>, person: &'a Person<'_>, card: &Card) -> Option<&'a Content> {
    let shows = |content: &&Content| {
        let shown = shown(desk.club, content);
        shown.symbol == card.symbol && shown.label == card.label
    };
    person.who.standing.cards.iter().find(shows)
}

/// The real things to pack for what is ready: the thing, empty where nobody said which, and what it
/// stands for.
pub(super) fn things(desk: &Desk<'_>, person: &Person<'_>) -> Vec<(String, String)> {
    let manner = &person.who.manner;
    let all = tiles(desk, person).into_iter().chain(cards(desk, person));
    let objects = all.filter(|r| r.form == Form::Object);
    objects
        .map(|r| {
            let usual = r.activity.and_then(|id| desk.club.activity(id));
            let usual = usual.map_or("", |a| a.thing.as_str());
            let thing = manner.thing_of(r.activity).unwrap_or(usual);
            (thing.to_owned(), r.card.label)
        })
        .collect()
}

/// A sentence has no tile of its own where nothing is told: a drawing stands for it.
const fn with_tile(form: Form) -> Form {
    match form {
        Form::Sentence => Form::Drawing,
        form => form,
    }
}

/// The same where there is no photograph to be had either.
const fn own_or_drawn(form: Form) -> Form {
    match form {
        Form::Sentence | Form::Photograph => Form::Drawing,
        form => form,
    }
}
