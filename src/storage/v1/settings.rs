//! The words of version 1 for what is known about a participant: how the board is given, what always
//! differs, the profile. Each part is left out of the file when it says nothing.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};

use super::{Day, Shown, is_false};
use crate::model::conditions;
use crate::model::ids::{ActivityId, PartId, StandingId};
use crate::model::{manner, profile, standing};

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Manner {
    form: Form,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    mixed: Vec<Mixed>,
    shows: Reach,
    runs: Run,
    finished: Finishing,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Mixed {
    activity: u32,
    form: Form,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    thing: String,
}

macro_rules! words {
    ($name:ident = $model:path { $($word:ident),* }) => {
        #[derive(Clone, Copy, serde::Serialize, serde::Deserialize)]
        #[serde(rename_all = "kebab-case")]
        pub(super) enum $name { $($word),* }

        impl From<$name> for $model {
            fn from(word: $name) -> Self {
                match word { $($name::$word => Self::$word),* }
            }
        }

        impl From<$model> for $name {
            fn from(word: $model) -> Self {
                match word { $(<$model>::$word => Self::$word),* }
            }
        }
    };
}

pub(super) use words;

words!(
    Form = manner::Form {
        Object,
        Photograph,
        Drawing,
        Word,
        Sentence
    }
);
words!(
    Reach = manner::Reach {
        One,
        FirstThen,
        NowNext,
        Three,
        Part,
        Whole
    }
);
words!(
    Run = manner::Run {
        Down,
        LeftToRight,
        RightToLeft
    }
);
words!(
    Finishing = manner::Finishing {
        Pouch,
        TurnedOver,
        FinishedRow,
        Tick
    }
);
words!(Side = standing::Side { Before, After });
words!(
    Photos = profile::PhotoConsent {
        None,
        OwnTiles,
        Group,
        ClubMedia
    }
);
words!(
    Used = crate::model::record::Used {
        Alone,
        Pointing,
        Help,
        NotAtAll
    }
);
words!(
    Answered = crate::model::record::Answered {
        ThumbUp,
        NotSure,
        NotGood,
        Pointed,
        PointedElsewhere,
        Showed,
        DidNotShow
    }
);

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Standing {
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    swaps: Vec<Swap>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    left_out: Vec<u32>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    own: Vec<Own>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    cards: Vec<Shown>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    waiting: Option<Shown>,
    #[serde(default, skip_serializing_if = "is_false")]
    countdown: bool,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Swap {
    instead_of: u32,
    shown: Shown,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Own {
    id: u32,
    side: Side,
    beside: Beside,
    shown: Shown,
    #[serde(default, skip_serializing_if = "is_false")]
    support: bool,
}

#[derive(Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
enum Beside {
    Activity(u32),
    Part(u32),
    Water,
}

#[derive(Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub(super) enum Condition {
    Known(String),
    Words(String),
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Profile {
    #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
    texts: BTreeMap<String, String>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    favourites: Vec<u32>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    hard: Vec<Hard>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    decided_on: Option<Day>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    review_on: Option<Day>,
    #[serde(default, skip_serializing_if = "is_false")]
    warn_of_changes: bool,
    #[serde(default, skip_serializing_if = "is_false")]
    surprises: bool,
    #[serde(default, skip_serializing_if = "is_false")]
    small_parts: bool,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    depth_cm: Option<u32>,
    #[serde(default, skip_serializing_if = "is_false")]
    without_hearing: bool,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    agreed_on: Option<Day>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    delete_by: Option<Day>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    photos: Option<Photos>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    photos_on: Option<Day>,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Hard {
    when: Condition,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    helps: String,
}

impl From<Manner> for manner::Manner {
    fn from(m: Manner) -> Self {
        let mixed = |x: Mixed| {
            let form = x.form.into();
            (
                ActivityId(x.activity),
                manner::Mixed {
                    form,
                    thing: x.thing,
                },
            )
        };
        Self {
            form: m.form.into(),
            mixed: m.mixed.into_iter().map(mixed).collect(),
            reach: m.shows.into(),
            run: m.runs.into(),
            finishing: m.finished.into(),
        }
    }
}

/// Nothing when all is as usual.
pub(super) fn write_manner(m: &manner::Manner) -> Option<Manner> {
    let mixed = m.mixed.iter().map(|(id, x)| Mixed {
        activity: id.0,
        form: x.form.into(),
        thing: x.thing.clone(),
    });
    (*m != manner::Manner::default()).then(|| Manner {
        form: m.form.into(),
        mixed: mixed.collect(),
        shows: m.reach.into(),
        runs: m.run.into(),
        finished: m.finishing.into(),
    })
}

impl From<Standing> for standing::Standing {
    fn from(s: Standing) -> Self {
        let own = |o: Own| standing::StandingStep {
            id: StandingId(o.id),
            content: o.shown.into(),
            side: o.side.into(),
            beside: match o.beside {
                Beside::Activity(id) => standing::Beside::Activity(ActivityId(id)),
                Beside::Part(id) => standing::Beside::Part(PartId(id)),
                Beside::Water => standing::Beside::Water,
            },
            support: o.support,
        };
        let swap = |x: Swap| (ActivityId(x.instead_of), x.shown.into());
        Self {
            swaps: s.swaps.into_iter().map(swap).collect(),
            left_out: s.left_out.into_iter().map(ActivityId).collect(),
            own: s.own.into_iter().map(own).collect(),
            cards: s.cards.into_iter().map(Into::into).collect(),
            waiting: s.waiting.map(Into::into),
            countdown: s.countdown,
        }
    }
}

/// Nothing when nothing differs.
pub(super) fn write_standing(s: &standing::Standing) -> Option<Standing> {
    let own = |o: &standing::StandingStep| Own {
        id: o.id.0,
        side: o.side.into(),
        beside: match o.beside {
            standing::Beside::Activity(id) => Beside::Activity(id.0),
            standing::Beside::Part(id) => Beside::Part(id.0),
            standing::Beside::Water => Beside::Water,
        },
        shown: Shown::from(&o.content),
        support: o.support,
    };
    let swaps = s.swaps.iter().map(|(id, c)| Swap {
        instead_of: id.0,
        shown: Shown::from(c),
    });
    (!s.is_empty()).then(|| Standing {
        swaps: swaps.collect(),
        left_out: s.left_out.iter().map(|a| a.0).collect(),
        own: s.own.iter().map(own).collect(),
        cards: s.cards.iter().map(Shown::from).collect(),
        waiting: s.waiting.as_ref().map(Shown::from),
        countdown: s.countdown,
    })
}

/// # Errors
/// When a word is not one of the known conditions.
pub(super) fn read_condition(c: Condition) -> Result<conditions::Condition, String> {
    match c {
        Condition::Words(words) => Ok(conditions::Condition::Words(words)),
        Condition::Known(word) => conditions::Known::from_word(&word)
            .map(conditions::Condition::Known)
            .ok_or_else(|| format!("“{word}” is no known condition")),
    }
}

pub(super) fn write_condition(c: &conditions::Condition) -> Condition {
    match c {
        conditions::Condition::Known(known) => Condition::Known(known.word().to_owned()),
        conditions::Condition::Words(words) => Condition::Words(words.clone()),
    }
}

/// # Errors
/// When a word is no field of a profile or no condition.
pub(super) fn read_profile(p: Profile) -> Result<profile::Profile, String> {
    let mut profile = profile::Profile::default();
    for (word, text) in p.texts {
        let field = profile::Field::ALL.into_iter().find(|f| f.word() == word);
        let field = field.ok_or_else(|| format!("a profile has no text “{word}”"))?;
        profile.set(field, text);
    }
    profile.favourites = p.favourites.into_iter().map(ActivityId).collect();
    let mut hard = BTreeMap::new();
    for h in p.hard {
        hard.insert(read_condition(h.when)?, h.helps);
    }
    profile.set_hard(hard);
    profile.set_decision(profile::Decision {
        on: p.decided_on.map(|d| d.0),
        review: p.review_on.map(|d| d.0),
        warn_of_changes: p.warn_of_changes,
        surprises: p.surprises,
        small_parts: p.small_parts,
    });
    profile.set_in_water(profile::InWater {
        depth_cm: p.depth_cm,
        without_hearing: p.without_hearing,
    });
    profile.set_papers(profile::Papers {
        agreed: p.agreed_on.map(|d| d.0),
        delete_by: p.delete_by.map(|d| d.0),
        photos: p.photos.map_or_else(Default::default, Into::into),
        photos_on: p.photos_on.map(|d| d.0),
    });
    Ok(profile)
}

/// Nothing when nothing was written down.
pub(super) fn write_profile(p: &profile::Profile) -> Option<Profile> {
    if p.is_empty() {
        return None;
    }
    let (decision, papers) = (p.decision().for_owner(), p.papers().for_owner());
    let texts = p.filled();
    let hard = p.hard().for_owner().iter().map(|(c, helps)| Hard {
        when: write_condition(c),
        helps: helps.clone(),
    });
    Some(Profile {
        texts: texts
            .map(|(f, t)| (f.word().to_owned(), t.for_owner().clone()))
            .collect(),
        favourites: p.favourites.iter().map(|a| a.0).collect(),
        hard: hard.collect(),
        decided_on: decision.on.map(Day),
        review_on: decision.review.map(Day),
        warn_of_changes: decision.warn_of_changes,
        surprises: decision.surprises,
        small_parts: decision.small_parts,
        depth_cm: p.in_water().for_owner().depth_cm,
        without_hearing: p.in_water().for_owner().without_hearing,
        agreed_on: papers.agreed.map(Day),
        delete_by: papers.delete_by.map(Day),
        photos: (papers.photos != profile::PhotoConsent::None).then(|| papers.photos.into()),
        photos_on: papers.photos_on.map(Day),
    })
}
