//! What is known about the people of the demo club: how each board is given, what always differs,
//! and what was written down. All of it is invented.

use std::collections::BTreeMap;
use std::sync::Arc;

use jiff::civil::Date;

use super::{Numbers, content, second, with_symbol};
use crate::model::club::Club;
use crate::model::conditions::{Condition, Known};
use crate::model::ids::{ActivityId, StandingId};
use crate::model::manner::{Finishing, Form, Manner, Mixed, Reach, Run};
use crate::model::people::Participant;
use crate::model::profile::{Decision, Field, Papers, PhotoConsent};
use crate::model::standing::{Beside, Side, StandingStep};
use crate::model::telling::{Ask, Depth, Pages, Pronouns, Telling};

/// What is known about one participant, said with symbols.
#[derive(Default)]
struct Person {
    mark: &'static str,
    form: Form,
    /// Activities in another form, and the thing that stands for each.
    mixed: &'static [(&'static str, Form, &'static str)],
    reach: Reach,
    run: Run,
    finishing: Finishing,
    swaps: &'static [(&'static str, &'static str)],
    left_out: &'static [&'static str],
    /// What, on which side, beside which activity (or each in the water), and whether a support.
    own: &'static [(&'static str, Side, &'static str, bool)],
    cards: &'static [&'static str],
    /// What to do while waiting, for a card.
    waiting: Option<&'static str>,
    countdown: bool,
    favourites: &'static [&'static str],
    hard: &'static [(Known, &'static str)],
    texts: &'static [(Field, &'static str)],
    warn_of_changes: bool,
    surprises: bool,
    photos: PhotoConsent,
    depth: Depth,
    pages: Pages,
    letters: Option<u32>,
    pronouns: Pronouns,
    asks: &'static [(Ask, &'static str)],
    collects: &'static str,
    /// Whether the story stands in Arabic beside the English.
    arabic: bool,
}

/// Beside each activity in the water.
const WATER: &str = "water";

fn all() -> [Person; 8] {
    [
        Person {
            mark: "kite",
            favourites: &["canoe", "find_shells"],
            hard: &[(Known::Loud, "ear muffs; a walk along the reeds")],
            texts: &[
                (Field::Cue, "The tile in the open hand"),
                (Field::ExactWords, "Look. What is next?"),
                (Field::SaysHere, "Lifts the kite card"),
                (Field::SaysYes, "Looks up"),
                (Field::SaysNo, "Turns the head away"),
                (Field::SaysHelp, "Gives the help card"),
                (
                    Field::HowToTalk,
                    "Few words, name first, then wait for ten seconds",
                ),
                (Field::DecidedBy, "Mila’s mother with Benno"),
            ],
            surprises: true,
            pronouns: Pronouns::She,
            asks: &[(Ask::Help, "give the help card")],
            collects: "Mum",
            ..Person::default()
        },
        Person {
            mark: "boat",
            form: Form::Photograph,
            reach: Reach::FirstThen,
            run: Run::LeftToRight,
            finishing: Finishing::Pouch,
            favourites: &["dig", "feet_in"],
            texts: &[
                (Field::Attention, "2, when it is calm"),
                (Field::BoardLives, "In the helper’s pocket, on a ring"),
                (Field::SaysHere, "Taps the board twice"),
                (Field::SaysStop, "A flat hand"),
            ],
            photos: PhotoConsent::OwnTiles,
            depth: Depth::Word,
            pronouns: Pronouns::He,
            ..Person::default()
        },
        Person {
            mark: "leaf",
            reach: Reach::Three,
            swaps: &[("song", "drum")],
            favourites: &["drum", "find_shells"],
            hard: &[(Known::Loud, "ear muffs, they hang on the bag")],
            texts: &[
                (
                    Field::Sound,
                    "Singing in a group is too loud; the drum is good",
                ),
                (Field::SaysFinished, "Both hands turned over"),
            ],
            pages: Pages::News,
            pronouns: Pronouns::She,
            ..Person::default()
        },
        Person {
            mark: "fish",
            form: Form::Word,
            finishing: Finishing::TurnedOver,
            favourites: &["canoe", "splash"],
            texts: &[
                (Field::SaysHere, "Says it"),
                (Field::Warnings, "How many steps are left, after each step"),
                (Field::Likes, "Lists, lighthouses, turning tiles over"),
            ],
            depth: Depth::Full,
            pronouns: Pronouns::He,
            collects: "Uncle Piet",
            ..Person::default()
        },
        Person {
            mark: "moon",
            mixed: &[
                ("sunscreen", Form::Object, "the empty yellow bottle"),
                ("find_shells", Form::Object, "a flat shell"),
                ("bye", Form::Object, "the key of the car"),
            ],
            reach: Reach::One,
            finishing: Finishing::Pouch,
            favourites: &["find_shells"],
            hard: &[
                (Known::Bright, "the cap with the wide brim"),
                (Known::Windy, "the back to the wind; name who speaks"),
            ],
            texts: &[(Field::HearingVision, "Sees best close up and in the shade")],
            letters: Some(36),
            pronouns: Pronouns::She,
            warn_of_changes: true,
            ..Person::default()
        },
        Person {
            mark: "shell",
            reach: Reach::Part,
            run: Run::RightToLeft,
            finishing: Finishing::Tick,
            own: &[("walking_frame", Side::Before, "walk_to_water", true)],
            favourites: &["dig", "feet_in"],
            texts: &[
                (
                    Field::Moving,
                    "Walks with a frame on the mat path; ask before touching it",
                ),
                (Field::FamilyReading, "Arabic and English"),
            ],
            arabic: true,
            pronouns: Pronouns::He,
            ..Person::default()
        },
        Person {
            mark: "star",
            form: Form::Sentence,
            finishing: Finishing::Tick,
            favourites: &["canoe", "rinse"],
            texts: &[
                (Field::SaysHere, "A small wave; may take a while"),
                (Field::SaysNo, "Shakes the head"),
            ],
            ..Person::default()
        },
        Person {
            mark: "feather",
            left_out: &["song"],
            own: &[("quiet_place", Side::After, WATER, true)],
            cards: &["too_loud"],
            waiting: Some("find_shells"),
            countdown: true,
            favourites: &["canoe", "find_shells"],
            hard: &[(
                Known::Windy,
                "the tent by the willow; sit beside, not opposite",
            )],
            texts: &[
                (Field::SignsRising, "Goes quiet; a break is needed then"),
                (
                    Field::Transitions,
                    "Out of the water is hard: count down, then the tent",
                ),
            ],
            warn_of_changes: true,
            depth: Depth::Full,
            pages: Pages::News,
            asks: &[(Ask::Break, "show the feather card")],
            ..Person::default()
        },
    ]
}

/// Writes all of it into the club.
pub(super) fn settle(next: &mut Numbers, club: &mut Club) {
    let activities = club.clone();
    for known in all() {
        let mut people = club.participants.iter_mut();
        if let Some(p) = people.find(|p| p.mark.as_str() == known.mark) {
            one(next, &activities, Arc::make_mut(p), &known);
        }
    }
}

fn one(next: &mut Numbers, club: &Club, p: &mut Participant, known: &Person) {
    let id = |symbol: &str| with_symbol(club, symbol).map(|a| a.id);
    let ids = |symbols: &[&str]| symbols.iter().filter_map(|s| id(s)).collect::<Vec<_>>();
    let mixed = known.mixed.iter().filter_map(|(symbol, form, thing)| {
        let thing = (*thing).into();
        Some((id(symbol)?, Mixed { form: *form, thing }))
    });
    p.manner = Manner {
        form: known.form,
        mixed: mixed.collect::<BTreeMap<ActivityId, Mixed>>(),
        reach: known.reach,
        run: known.run,
        finishing: known.finishing,
    };
    let swaps = known.swaps.iter();
    let swaps = swaps.filter_map(|(from, to)| Some((id(from)?, content(club, to))));
    p.standing.swaps = swaps.collect();
    p.standing.left_out = ids(known.left_out).into_iter().collect();
    for (symbol, side, beside, support) in known.own {
        let beside = match (*beside, id(beside)) {
            (WATER, _) => Beside::Water,
            (_, Some(id)) => Beside::Activity(id),
            (_, None) => continue,
        };
        p.standing.own.push(StandingStep {
            id: StandingId(next.next()),
            content: content(club, symbol),
            side: *side,
            beside,
            support: *support,
        });
    }
    p.standing.waiting = known.waiting.map(|s| content(club, s));
    p.standing.countdown = known.countdown;
    p.standing.cards = known.cards.iter().map(|s| content(club, s)).collect();
    *p.telling = Telling {
        depth: known.depth,
        pages: known.pages,
        letters: known.letters,
        pronouns: known.pronouns.clone(),
        asks: known.asks.iter().map(|(a, w)| (*a, (*w).into())).collect(),
        collects: known.collects.into(),
        second: known.arabic.then(second::arabic),
    };
    profile(p, ids(known.favourites), known);
}

fn profile(p: &mut Participant, favourites: Vec<ActivityId>, known: &Person) {
    for (field, text) in known.texts {
        p.profile.set(*field, (*text).into());
    }
    p.profile.favourites = favourites.into_iter().collect();
    let hard = known.hard.iter();
    let hard = hard.map(|(when, helps)| (Condition::Known(*when), (*helps).to_owned()));
    p.profile.set_hard(hard.collect());
    p.profile.set_decision(Decision {
        on: Some(Date::constant(2027, 4, 10)),
        review: Some(Date::constant(2027, 10, 10)),
        warn_of_changes: known.warn_of_changes,
        surprises: known.surprises,
        small_parts: false,
    });
    p.profile.set_papers(Papers {
        agreed: Some(Date::constant(2027, 4, 10)),
        delete_by: Some(Date::constant(2027, 12, 31)),
        photos: known.photos,
        photos_on: (known.photos != PhotoConsent::None).then_some(Date::constant(2027, 4, 10)),
    });
}
