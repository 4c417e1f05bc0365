//! People, water and the place in the words of version 1: the club's rules, certificates, what is
//! decided for one date, and rows done in turns.

use std::collections::{BTreeMap, BTreeSet};

use jiff::civil::Time;
use serde::{Deserialize, Serialize};

use super::{Clock, Day, is_false};
use crate::model::ids::{AwardId, HelperId, ParticipantId, SlotId};
use crate::model::looks::Look;
use crate::model::{award, care, limits, looks, today, turns};

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Care {
    people_each: u32,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    watcher_for: Option<u32>,
    #[serde(default, skip_serializing_if = "is_zero")]
    fewest_adults: u32,
    look_again_minutes: u32,
    thunder_minutes: u32,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    sunscreen: Option<Sunscreen>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    drink_minutes: Option<u32>,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    rule: String,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    emergency: String,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    meeting_spot: String,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    recall: String,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    flags: Vec<Flag>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    not_looked_at: Vec<String>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    awards: Vec<Award>,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Sunscreen {
    before_minutes: u32,
    every_minutes: u32,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Flag {
    looks: String,
    means: String,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Award {
    id: u32,
    name: String,
    #[serde(default, skip_serializing_if = "is_false")]
    for_water: bool,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    lasts: Option<Lasts>,
    #[serde(default, skip_serializing_if = "is_false")]
    last_day_counts: bool,
}

#[derive(Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
enum Lasts {
    Months {
        months: u32,
        #[serde(default, skip_serializing_if = "is_false")]
        short_month_ends_later: bool,
    },
    Until {
        day: DayOfYear,
        #[serde(default, skip_serializing_if = "Option::is_none")]
        next_year_from: Option<DayOfYear>,
    },
}

/// A day of every year: `12-31`.
#[derive(Clone, Copy, Serialize, Deserialize)]
#[serde(try_from = "String", into = "String")]
struct DayOfYear(award::MonthDay);

impl TryFrom<String> for DayOfYear {
    type Error = String;
    fn try_from(text: String) -> Result<Self, String> {
        let parts = text.split_once('-');
        let numbers = parts.and_then(|(m, d)| Some((m.parse().ok()?, d.parse().ok()?)));
        let day = numbers.and_then(|(m, d)| award::MonthDay::new(m, d));
        day.map(Self)
            .ok_or_else(|| format!("“{text}” is no day of every year such as 12-31"))
    }
}

impl From<DayOfYear> for String {
    fn from(day: DayOfYear) -> Self {
        format!("{:02}-{:02}", day.0.month(), day.0.day())
    }
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Certificate {
    award: u32,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    gained: Option<Day>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    expires: Option<Day>,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    seen_by: String,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    seen_on: Option<Day>,
}

#[derive(Default, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Today {
    #[serde(default, skip_serializing_if = "Option::is_none")]
    water_lead: Option<u32>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    here: Vec<Here>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    watching: Vec<Watching>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    watched_by: Vec<WatchedBy>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pairs: Vec<Pair>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    held: Vec<Held>,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    meeting_spot: String,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    looks: Vec<Looked>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    thunder: Vec<At>,
}

/// A time of the day, as in the rest of the file.
#[derive(Clone, PartialEq, Serialize, Deserialize)]
#[serde(try_from = "String", into = "String")]
struct At(Time);

impl TryFrom<String> for At {
    type Error = String;
    fn try_from(text: String) -> Result<Self, String> {
        Clock::try_from(text).map(|c| Self(c.0))
    }
}

impl From<At> for String {
    fn from(at: At) -> Self {
        Self::from(Clock(at.0))
    }
}

#[derive(PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Here {
    helper: u32,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    from: Option<At>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    to: Option<At>,
}

#[derive(PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Watching {
    helper: u32,
    watches: bool,
}

#[derive(PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct WatchedBy {
    participant: u32,
    helper: u32,
}

#[derive(PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Pair {
    participant: u32,
    helper: u32,
    /// Together if possible, or never.
    together: bool,
}

#[derive(PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Held {
    slot: u32,
    participant: u32,
    helpers: Vec<u32>,
}

#[derive(PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Looked {
    look: String,
    at: At,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    by: String,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    seen: String,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    note: String,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Turns {
    stations: Vec<Station>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    waits: Vec<u32>,
    turns: u32,
    minutes: u32,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    places: Vec<Places>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    friends: Vec<(u32, u32)>,
    /// Participant and row.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    held: Vec<(u32, u32)>,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Station {
    slot: u32,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    capacity: Option<u32>,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Places {
    participant: u32,
    slots: Vec<Option<u32>>,
}

#[expect(
    clippy::trivially_copy_pass_by_ref,
    reason = "the shape serde asks for"
)]
const fn is_zero(n: &u32) -> bool {
    *n == 0
}

/// Nothing when all is as usual.
pub(super) fn write_care(c: &care::Care) -> Option<Care> {
    let award = |a: &award::Award| Award {
        id: a.id.0,
        name: a.name.clone(),
        for_water: a.for_water,
        lasts: write_validity(a.validity),
        last_day_counts: a.last_day_counts,
    };
    let flag = |f: &care::Flag| Flag {
        looks: f.looks.clone(),
        means: f.means.clone(),
    };
    (*c != care::Care::default()).then(|| Care {
        people_each: c.people_each,
        watcher_for: c.watcher_for,
        fewest_adults: c.fewest_adults,
        look_again_minutes: c.look_again_minutes,
        thunder_minutes: c.thunder_minutes,
        sunscreen: c.sunscreen.map(|s| Sunscreen {
            before_minutes: s.before_minutes,
            every_minutes: s.every_minutes,
        }),
        drink_minutes: c.drink_minutes,
        rule: c.rule.clone(),
        emergency: c.emergency.clone(),
        meeting_spot: c.meeting_spot.clone(),
        recall: c.recall.clone(),
        flags: c.flags.iter().map(flag).collect(),
        not_looked_at: words(&c.not_looked_at),
        awards: c.awards.iter().map(award).collect(),
    })
}

fn words(looks: &BTreeSet<Look>) -> Vec<String> {
    looks.iter().map(|l| l.word().to_owned()).collect()
}

fn write_validity(v: award::Validity) -> Option<Lasts> {
    match v {
        award::Validity::AsWritten => None,
        award::Validity::Months { months, short } => Some(Lasts::Months {
            months,
            short_month_ends_later: short == award::ShortMonth::FirstOfNext,
        }),
        award::Validity::FixedDay { until, boundary } => Some(Lasts::Until {
            day: DayOfYear(until),
            next_year_from: boundary.map(DayOfYear),
        }),
    }
}

fn read_validity(l: Option<Lasts>) -> award::Validity {
    match l {
        None => award::Validity::AsWritten,
        Some(Lasts::Months {
            months,
            short_month_ends_later,
        }) => award::Validity::Months {
            months,
            short: match short_month_ends_later {
                true => award::ShortMonth::FirstOfNext,
                false => award::ShortMonth::LastDay,
            },
        },
        Some(Lasts::Until {
            day,
            next_year_from,
        }) => award::Validity::FixedDay {
            until: day.0,
            boundary: next_year_from.map(|d| d.0),
        },
    }
}

/// # Errors
/// When a word is no point of the check list.
pub(super) fn read_care(c: Care) -> Result<care::Care, String> {
    let award = |a: Award| award::Award {
        id: AwardId(a.id),
        name: a.name,
        for_water: a.for_water,
        validity: read_validity(a.lasts),
        last_day_counts: a.last_day_counts,
    };
    let flag = |f: Flag| care::Flag {
        looks: f.looks,
        means: f.means,
    };
    let not_looked_at = c.not_looked_at.iter().map(|w| look(w));
    Ok(limits::care::tidy(&care::Care {
        people_each: c.people_each,
        watcher_for: c.watcher_for,
        fewest_adults: c.fewest_adults,
        look_again_minutes: c.look_again_minutes,
        thunder_minutes: c.thunder_minutes,
        sunscreen: c.sunscreen.map(|s| care::Sunscreen {
            before_minutes: s.before_minutes,
            every_minutes: s.every_minutes,
        }),
        drink_minutes: c.drink_minutes,
        rule: c.rule,
        emergency: c.emergency,
        meeting_spot: c.meeting_spot,
        recall: c.recall,
        flags: c.flags.into_iter().map(flag).collect(),
        not_looked_at: not_looked_at.collect::<Result<_, _>>()?,
        awards: c.awards.into_iter().map(award).collect(),
    }))
}

fn look(word: &str) -> Result<Look, String> {
    Look::from_word(word).ok_or_else(|| format!("the check list has no point “{word}”"))
}

pub(super) fn write_certificate(c: &award::Certificate) -> Certificate {
    Certificate {
        award: c.award.0,
        gained: c.gained.map(Day),
        expires: c.expires.map(Day),
        seen_by: c.seen_by.clone(),
        seen_on: c.seen_on.map(Day),
    }
}

pub(super) fn read_certificate(c: Certificate) -> award::Certificate {
    award::Certificate {
        award: AwardId(c.award),
        gained: c.gained.map(|d| d.0),
        expires: c.expires.map(|d| d.0),
        seen_by: c.seen_by,
        seen_on: c.seen_on.map(|d| d.0),
    }
}

/// Nothing when nothing was decided.
pub(super) fn write_today(t: &today::Today) -> Option<Today> {
    let here = t.here.iter().map(|(h, hours)| Here {
        helper: h.0,
        from: hours.from.map(At),
        to: hours.to.map(At),
    });
    let watching = t.watching.iter().map(|(h, watches)| Watching {
        helper: h.0,
        watches: *watches,
    });
    let watched_by = t.watched_by.iter().map(|(p, h)| WatchedBy {
        participant: p.0,
        helper: h.0,
    });
    let pairs = t.pairs.iter().map(|((p, h), pair)| Pair {
        participant: p.0,
        helper: h.0,
        together: *pair == today::Pair::Wanted,
    });
    let held = t.held.iter().map(|((slot, p), with)| Held {
        slot: slot.0,
        participant: p.0,
        helpers: with.iter().map(|h| h.0).collect(),
    });
    let looks = t.looks.iter().map(|l| Looked {
        look: l.look.word().to_owned(),
        at: At(l.at),
        by: l.by.clone(),
        seen: l.seen.clone(),
        note: l.note.clone(),
    });
    let written = Today {
        water_lead: t.water_lead.map(|h| h.0),
        here: here.collect(),
        watching: watching.collect(),
        watched_by: watched_by.collect(),
        pairs: pairs.collect(),
        held: held.collect(),
        meeting_spot: t.meeting_spot.clone(),
        looks: looks.collect(),
        thunder: t.thunder.iter().map(|t| At(*t)).collect(),
    };
    (written != Today::default()).then_some(written)
}

/// # Errors
/// When a word is no point of the check list.
pub(super) fn read_today(t: Today) -> Result<today::Today, String> {
    let looked = |l: Looked| -> Result<looks::Looked, String> {
        Ok(limits::care::tidy_looked(&looks::Looked {
            look: look(&l.look)?,
            at: l.at.0,
            by: l.by,
            seen: l.seen,
            note: l.note,
        }))
    };
    let hours = |h: &Here| {
        limits::care::tidy_hours(today::Hours {
            from: h.from.as_ref().map(|t| t.0),
            to: h.to.as_ref().map(|t| t.0),
        })
    };
    let pair = |together: bool| match together {
        true => today::Pair::Wanted,
        false => today::Pair::Never,
    };
    let whose = |p: u32, h: u32| (ParticipantId(p), HelperId(h));
    let held = |h: Held| {
        let with: BTreeSet<HelperId> = h.helpers.into_iter().map(HelperId).collect();
        ((SlotId(h.slot), ParticipantId(h.participant)), with)
    };
    let here = t.here.iter().map(|h| (HelperId(h.helper), hours(h)));
    let watching = t.watching.iter().map(|w| (HelperId(w.helper), w.watches));
    let watched = t.watched_by.iter().map(|w| whose(w.participant, w.helper));
    let pairs = t.pairs.iter();
    Ok(today::Today {
        water_lead: t.water_lead.map(HelperId),
        here: here.collect(),
        watching: watching.collect(),
        watched_by: watched.collect(),
        pairs: pairs
            .map(|p| (whose(p.participant, p.helper), pair(p.together)))
            .collect(),
        held: t.held.into_iter().map(held).collect(),
        meeting_spot: limits::tidy_line(&t.meeting_spot),
        looks: t.looks.into_iter().map(looked).collect::<Result<_, _>>()?,
        thunder: t.thunder.iter().map(|t| limits::tidy_start(t.0)).collect(),
    })
}

pub(super) fn write_turns(t: &turns::Turns) -> Turns {
    let station = |s: &turns::Station| Station {
        slot: s.slot.0,
        capacity: s.capacity,
    };
    let places = |(p, slots): (&ParticipantId, &Vec<Option<SlotId>>)| Places {
        participant: p.0,
        slots: slots.iter().map(|s| s.map(|s| s.0)).collect(),
    };
    Turns {
        stations: t.stations.iter().map(station).collect(),
        waits: t.waits.iter().map(|s| s.0).collect(),
        turns: t.count,
        minutes: t.minutes,
        places: t.places.iter().map(places).collect(),
        friends: t.friends.iter().map(|(a, b)| (a.0, b.0)).collect(),
        held: t.held.iter().map(|(p, s)| (p.0, s.0)).collect(),
    }
}

pub(super) fn read_turns(t: Turns) -> turns::Turns {
    let station = |s: &Station| turns::Station {
        slot: SlotId(s.slot),
        capacity: s.capacity,
    };
    let places = |p: Places| {
        let slots = p.slots.into_iter().map(|s| s.map(SlotId));
        (ParticipantId(p.participant), slots.collect())
    };
    let held = |(p, s): (u32, u32)| (ParticipantId(p), SlotId(s));
    let pair = |(a, b): (u32, u32)| (ParticipantId(a.min(b)), ParticipantId(a.max(b)));
    turns::Turns {
        stations: t.stations.iter().map(station).collect(),
        waits: t.waits.into_iter().map(SlotId).collect(),
        count: t.turns,
        minutes: t.minutes,
        places: t.places.into_iter().map(places).collect::<BTreeMap<_, _>>(),
        friends: t.friends.into_iter().map(pair).collect(),
        held: t.held.into_iter().map(held).collect(),
    }
}
