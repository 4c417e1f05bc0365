//! The demo's people in the water: kinds of certificates, what helpers hold, the club's rules, and a
//! third session, solved in turns for eight participants and five water-safety people of whom one's
//! certificate has ended.

use std::collections::BTreeMap;
use std::sync::Arc;

use jiff::civil::{Date, Time};

use super::{Numbers, helper, marked, session, with_symbol};
use crate::model::award::{Award, Certificate, MonthDay, ShortMonth, Validity};
use crate::model::care::{Care, Flag};
use crate::model::club::{Activity, Club};
use crate::model::ids::{AwardId, HelperId, ParticipantId, SlotId};
use crate::model::looks::{Look, Looked};
use crate::model::people::Role;
use crate::model::profile::InWater;
use crate::model::session::Session;
use crate::model::today::Pair;
use crate::model::turns::{Station, Turns};

/// Helpers who are there besides those of the first sessions.
const MORE: [(&str, &[Role]); 2] = [
    ("Gesa", &[Role::WaterSafety]),
    ("Hauke", &[Role::WaterSafety]),
];

/// Who holds what: name, rescue gained, resuscitation gained.
const HELD: [(&str, Date, Date); 5] = [
    (
        "Benno",
        Date::constant(2026, 8, 15),
        Date::constant(2027, 4, 10),
    ),
    (
        "Carmen",
        Date::constant(2027, 2, 6),
        Date::constant(2027, 2, 6),
    ),
    (
        "Farid",
        Date::constant(2026, 9, 5),
        Date::constant(2026, 9, 5),
    ),
    (
        "Gesa",
        Date::constant(2027, 3, 20),
        Date::constant(2027, 3, 20),
    ),
    (
        "Hauke",
        Date::constant(2026, 5, 9),
        Date::constant(2027, 4, 10),
    ),
];

/// How deep it is, in centimetres.
const DEPTHS: [(&str, u32); 2] = [("splash", 50), ("feet_in", 20)];

const SESSION: super::SessionRow = (
    "Wave morning",
    Date::constant(2027, 6, 26),
    Time::constant(10, 0, 0, 0),
    &[
        ("say_hello", 5),
        ("welcome_circle", 7),
        ("sunscreen", 5),
        ("copy_me", 5),
        ("walk_to_water", 3),
        ("splash", 10),
        ("dig", 10),
        ("find_shells", 10),
        ("rinse", 4),
        ("pack_up", 5),
        ("bye", 3),
    ],
);

/// Who is where in the three turns of the wave morning.
const ROUND: [(&str, [&str; 3]); 8] = [
    ("kite", ["splash", "dig", "find_shells"]),
    ("boat", ["splash", "dig", "find_shells"]),
    ("leaf", ["dig", "splash", "find_shells"]),
    ("fish", ["dig", "splash", "find_shells"]),
    ("moon", ["find_shells", "splash", "dig"]),
    ("shell", ["splash", "find_shells", "dig"]),
    ("star", ["splash", "find_shells", "dig"]),
    ("feather", ["find_shells", "splash", "dig"]),
];

/// Adds all of it. Numbers are given after those of the rest, which stay as they were.
pub(super) fn add(next: &mut Numbers, club: &mut Club) {
    let more: Vec<_> = MORE.iter().map(|row| helper(next, row)).collect();
    club.helpers.extend(more);
    let (rescue, breath) = awards(next, club);
    for (name, rescued, breathed) in HELD {
        let Some(h) = club.helpers.iter_mut().find(|h| h.name == name) else {
            continue;
        };
        let certificate = |award, gained| Certificate {
            award,
            gained: Some(gained),
            expires: None,
            seen_by: "Asta".into(),
            seen_on: Some(Date::constant(2027, 5, 8)),
        };
        let held = vec![certificate(rescue, rescued), certificate(breath, breathed)];
        Arc::make_mut(h).certificates = held;
    }
    for (name, mark) in [("Benno", "kite"), ("Farid", "shell")] {
        let who = marked(club, mark);
        if let Some(h) = club.helpers.iter_mut().find(|h| h.name == name) {
            Arc::make_mut(h).trains.extend(who);
        }
    }
    for a in club.activities.iter_mut() {
        let depth = DEPTHS.iter().find(|(s, _)| a.symbol.as_str() == *s);
        if let Some((_, depth)) = depth {
            Arc::make_mut(a).depth_cm = Some(*depth);
        }
    }
    agreed(club);
    for session in &mut club.sessions {
        let lead = club.helpers.iter().find(|h| h.name == "Carmen");
        Arc::make_mut(session).today.water_lead = lead.map(|h| h.id);
    }
    let mut wave = session(next, club, &SESSION);
    settle(club, &mut wave);
    club.sessions.push(Arc::new(wave));
}

/// Kinds of certificates, and the rest of the club's rules.
fn awards(next: &mut Numbers, club: &mut Club) -> (AwardId, AwardId) {
    let (rescue, breath) = (AwardId(next.next()), AwardId(next.next()));
    let until = MonthDay::new(12, 31);
    let validity = until.map_or(Validity::AsWritten, |until| Validity::FixedDay {
        until,
        boundary: MonthDay::new(7, 1),
    });
    let flag = |looks: &str, means: &str| Flag {
        looks: looks.into(),
        means: means.into(),
    };
    *club.rules.care = Care {
        watcher_for: Some(4),
        fewest_adults: 3,
        drink_minutes: Some(30),
        rule: "One water-safety person beside each of us in the water. One watcher on the side for every four, with no other job.".into(),
        emergency: "112".into(),
        meeting_spot: "the blue boat house".into(),
        recall: "An orange flag held up high".into(),
        flags: vec![
            flag("Red over yellow", "The lifeguards of the lagoon are there"),
            flag("Red", "Nobody goes into the water"),
        ],
        awards: vec![
            Award {
                id: rescue,
                name: "Water rescue".into(),
                for_water: true,
                validity,
                last_day_counts: true,
            },
            Award {
                id: breath,
                name: "Resuscitation".into(),
                for_water: true,
                validity: Validity::Months {
                    months: 12,
                    short: ShortMonth::LastDay,
                },
                last_day_counts: true,
            },
        ],
        ..Care::default()
    };
    (rescue, breath)
}

/// What is agreed about the water with some families.
fn agreed(club: &mut Club) {
    let mut change = |mark: &str, in_water: InWater| {
        let mut found = club.participants.iter_mut();
        if let Some(p) = found.find(|p| p.mark.as_str() == mark) {
            Arc::make_mut(p).profile.set_in_water(in_water);
        }
    };
    let deep = |depth_cm| InWater {
        depth_cm,
        without_hearing: false,
    };
    change("shell", deep(Some(60)));
    let aids = InWater {
        without_hearing: true,
        ..InWater::default()
    };
    change("fish", aids);
}

/// Turns, who leads, who is wanted with whom, and what was looked at for the wave morning.
fn settle(club: &Club, wave: &mut Session) {
    let slot = |wave: &Session, symbol: &str| {
        let id = with_symbol(club, symbol).map(|a: &Arc<Activity>| a.id);
        wave.timetable
            .iter()
            .find(|s| Some(s.activity) == id)
            .map(|s| s.id)
    };
    let person = |name: &str| club.helpers.iter().find(|h| h.name == name).map(|h| h.id);
    let stations: Vec<Station> = [("splash", None), ("dig", Some(4)), ("find_shells", Some(4))]
        .iter()
        .filter_map(|(symbol, capacity)| {
            Some(Station {
                slot: slot(wave, symbol)?,
                capacity: *capacity,
            })
        })
        .collect();
    let places: BTreeMap<ParticipantId, Vec<Option<SlotId>>> = ROUND
        .iter()
        .filter_map(|(mark, row)| {
            let row = row.iter().map(|s| slot(wave, s)).collect();
            Some((marked(club, mark)?, row))
        })
        .collect();
    wave.turns = Some(Box::new(Turns {
        stations,
        waits: Vec::new(),
        count: 3,
        minutes: 10,
        places,
        friends: std::iter::once(marked(club, "kite").zip(marked(club, "boat")))
            .flatten()
            .collect(),
        held: Default::default(),
    }));
    leads(wave, &slot, &person);
    let today = &mut wave.today;
    today.water_lead = person("Carmen");
    if let (Some(who), Some(with)) = (marked(club, "leaf"), person("Gesa")) {
        today.pairs.insert((who, with), Pair::Wanted);
    }
    let looked = |look, seen: &str, note: &str| Looked {
        look,
        at: Time::constant(9, 20, 0, 0),
        by: "Carmen".into(),
        seen: seen.into(),
        note: note.into(),
    };
    today.looks = vec![
        looked(Look::Wind, "4 m/s", "from the reeds, towards the landing"),
        looked(Look::Uv, "5", "highest at one o’clock"),
        looked(Look::Clarity, "the bottom can be seen", ""),
    ];
}

fn leads(
    wave: &mut Session,
    slot: &dyn Fn(&Session, &str) -> Option<SlotId>,
    person: &dyn Fn(&str) -> Option<HelperId>,
) {
    const LEADS: [(&str, &str); 5] = [
        ("welcome_circle", "Asta"),
        ("copy_me", "Asta"),
        ("dig", "Asta"),
        ("find_shells", "Edda"),
        ("pack_up", "Edda"),
    ];
    for (symbol, name) in LEADS {
        let id = slot(wave, symbol);
        let row = wave.timetable.iter_mut().find(|s| Some(s.id) == id);
        if let Some(row) = row {
            row.leads.extend(person(name));
        }
    }
}
