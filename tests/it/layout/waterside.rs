//! The sheets for the water's edge: the session sheet on one page, the helper's minutes in the water,
//! what to look at, and the sealed slips.

use std::sync::Arc;

use daystrand::layout::{Request, Sheet, SheetKind};
use daystrand::model::board::derive;
use daystrand::model::club::{Club, Paper};
use daystrand::model::ids::ParticipantId;
use daystrand::model::looks::{Look, Looked};
use daystrand::model::profile::{Field, InWater};
use daystrand::model::session::Session;
use daystrand::page::dump::dump;
use daystrand::plan::clock::clock;
use daystrand::plan::water::{self, WaterDay};
use daystrand::units::Length;
use jiff::civil::time;

use super::{all, blocks, check, lay_out, texts, words_on};
use crate::fixture;

/// The demo club's session in turns, with so many participants: more of them have the turns of those
/// before.
fn crowd(people: usize) -> (Club, usize) {
    let mut club = fixture::club();
    let at = club
        .sessions
        .iter()
        .position(|s| s.turns.is_some())
        .unwrap();
    let had = club.participants.len();
    for i in had..people {
        let mut p = (*club.participants[i % had]).clone();
        let like = p.id;
        p.id = ParticipantId(60_000 + i as u32);
        p.name = format!("Name{i}");
        let session = Arc::make_mut(&mut club.sessions[at]);
        let turns = session.turns.as_mut().unwrap();
        let places = turns.of(like);
        turns.places.insert(p.id, places);
        club.participants.push(Arc::new(p));
    }
    (club, at)
}

fn sheets(club: &Club, session: usize, kind: SheetKind, paper: Paper) -> Vec<Sheet> {
    let request = Request {
        session: club.sessions[session].id,
        kinds: vec![kind],
        paper,
        ..all(club)
    };
    let laid = lay_out(club, &request);
    check(club, &request, &laid, kind.word());
    laid.sheets
}

fn flat(words: &str) -> String {
    words.split_whitespace().collect::<Vec<_>>().join(" ")
}

fn water(club: &Club, session: &Session) -> WaterDay {
    let all = club.attending(session);
    let boards: Vec<_> = all.map(|p| Arc::new(derive(club, session, p.id))).collect();
    water::day(club, session, &boards)
}

/// Twelve participants in turns: the whole day is on the first page, in letters of 10 points and
/// more (but for the small ones beside them); what is to be known of each is on the next.
#[test]
fn the_day_of_twelve_is_one_page() {
    for people in [8, 12] {
        let (club, at) = crowd(people);
        for session in 0..club.sessions.len() {
            for paper in [Paper::A4, Paper::Letter] {
                let sheet = &sheets(&club, session, SheetKind::SessionSheet, paper)[0];
                let first = flat(&dump(&sheet.pages[0]));
                for words in ["Head counts", "Before leaving", "participants", "Sunscreen"] {
                    assert!(first.contains(words), "{paper:?}: {words} in {first}");
                }
                assert!(!first.contains("As the timetable"), "notes are on the next");
                let next = flat(&dump(&sheet.pages[1]));
                assert!(next.contains("Participants"), "{paper:?}: {next}");
                assert!(session != at || first.contains("Turn 3"));
                let foot = sheet.pages[0].size.h - Length::mm(24.0);
                for block in &sheet.pages[0].blocks {
                    for (place, pt, words) in texts(block) {
                        let small = place.y > foot || pt >= 8.5;
                        assert!(small, "{words} at {pt}");
                    }
                }
            }
        }
    }
}

/// The sheet is as the pairing gives it: each pair of each stretch of time once, and whoever has
/// nobody in a box.
#[test]
fn every_pair_stands_on_the_sheet_once_a_turn() {
    for people in [8, 12] {
        let (club, at) = crowd(people);
        let session = &club.sessions[at];
        let sheet = &sheets(&club, at, SheetKind::SessionSheet, Paper::A4)[0];
        let text = flat(&dump(&sheet.pages[0]));
        let day = water(&club, session);
        let mut pairs = Vec::new();
        for (moment, visit) in day
            .moments
            .iter()
            .flat_map(|m| m.visits.iter().map(move |v| (m, v)))
        {
            let p = club.participant(visit.who).unwrap();
            let name = format!("{} ({})", p.name, p.mark.as_str());
            let people: Vec<_> = visit
                .people
                .iter()
                .map(|h| &club.helper(*h).unwrap().name)
                .collect();
            match people.as_slice() {
                [] => assert!(
                    text.contains("Nobody free for"),
                    "{name} at {}",
                    moment.stretch.from
                ),
                [one] => pairs.push(format!("{name} – {one}")),
                _ => panic!("the club asks for one"),
            }
        }
        assert!(!pairs.is_empty());
        for pair in &pairs {
            let wanted = pairs.iter().filter(|p| *p == pair).count();
            assert_eq!(
                text.matches(pair.as_str()).count(),
                wanted,
                "{pair} in {text}"
            );
        }
        assert_eq!(
            text.matches(" – ").count(),
            pairs.len(),
            "no other pairs in {text}"
        );
        let times = clock(session, &club.rules);
        for (from, to) in &times.turns {
            assert!(
                text.contains(&format!("{from}–{to} Turn")),
                "{from} in {text}"
            );
        }
    }
}

#[test]
fn who_has_nobody_and_who_has_no_named_watcher_is_told_in_a_box() {
    let (mut club, at) = crowd(8);
    let p = Arc::make_mut(&mut club.participants[0]);
    p.profile.set(Field::Alerts, "zqsealedq".into());
    let all: Vec<_> = club.helpers.iter().map(|h| h.id).collect();
    let session = Arc::make_mut(&mut club.sessions[at]);
    session.helpers_away.extend(all);
    let sheet = &sheets(&club, at, SheetKind::SessionSheet, Paper::A4)[0];
    let text = flat(&words_on(sheet));
    for words in [
        "Nobody free for",
        "Not complete: no named watcher for mark kite",
        "Nobody is named to lead in the water.",
        "Meeting spot the blue boat house",
        "Emergency number 112",
        "of 8",
    ] {
        assert!(text.contains(words), "{words} in {text}");
    }
    assert!(
        !text.contains("zqsealedq"),
        "what an alert says stays sealed"
    );
    for word in ["safe ", "safe.", "sufficient", "qualified", "compliant"] {
        assert!(!text.to_lowercase().contains(word), "{word} in {text}");
    }
    let session = Arc::make_mut(&mut club.sessions[at]);
    session.helpers_away.clear();
    let by = club.helpers[0].id;
    let who = club.participants[0].id;
    Arc::make_mut(&mut club.sessions[at])
        .today
        .watched_by
        .insert(who, by);
    let sheet = &sheets(&club, at, SheetKind::SessionSheet, Paper::A4)[0];
    let text = flat(&words_on(sheet));
    assert!(text.contains("watches Mila (kite), nothing else"), "{text}");
    assert!(!text.contains("Not complete"), "{text}");
}

/// Whatever the names, the sheets are sound on every paper.
#[test]
fn long_names_and_many_people_stay_on_the_paper() {
    let (mut club, at) = crowd(40);
    for p in club.participants.iter_mut() {
        let p = Arc::make_mut(p);
        p.name = format!("{} Wilhelmina-Konstanze von der Landungsbrücke", p.name);
    }
    for h in club.helpers.iter_mut() {
        Arc::make_mut(h).name += " Maximiliane-Theodora Achterdeckshausen";
    }
    club.rules.care.rule = "A rule in many words, as clubs have them. ".repeat(30);
    club.rules.care.meeting_spot = "under the big tree behind the house ".repeat(4);
    for paper in Paper::ALL {
        for kind in [
            SheetKind::SessionSheet,
            SheetKind::HelperCard,
            SheetKind::TodaySlip,
            SheetKind::LookList,
            SheetKind::Roll,
        ] {
            assert!(!sheets(&club, at, kind, paper).is_empty(), "{kind:?}");
        }
    }
}

#[test]
fn a_helpers_card_tells_the_minutes_of_its_participant_in_the_water() {
    let (mut club, at) = crowd(8);
    for p in club.participants.iter_mut() {
        Arc::make_mut(p).profile.set_in_water(InWater {
            depth_cm: Some(60),
            without_hearing: true,
        });
    }
    let day = water(&club, &club.sessions[at]);
    let mut told = 0;
    for sheet in sheets(&club, at, SheetKind::HelperCard, Paper::A4) {
        let text = flat(&words_on(&sheet).replace('\u{a0}', " "));
        for (moment, visit) in day.of(sheet.participant.unwrap()) {
            let slot = club.sessions[at].slot(visit.slot).unwrap();
            let activity = visit.activity.unwrap_or(slot.activity);
            let label = &club.activity(activity).unwrap().label;
            let (from, to) = (moment.stretch.from, moment.stretch.to);
            let with = match visit.people.as_slice() {
                [] => "nobody is free yet".to_owned(),
                [one] => format!("with {}", club.helper(*one).unwrap().name),
                _ => panic!("the club asks for one"),
            };
            let words = format!("{from} to {to} {label}: {with}");
            assert!(text.contains(&words), "{words} in {text}");
            assert!(text.contains("60 cm") && text.contains("Does not hear in the water"));
            assert!(text.contains("An orange flag held up high"), "{text}");
            told += 1;
        }
        assert!(text.contains("the blue boat house"), "{text}");
    }
    assert!(told >= 8, "{told}");
}

/// Values are those of the World Health Organization's guide to the UV Index (3 to 5 is moderate) and
/// of the Beaufort scale (12 to 19 km/h is a gentle breeze); 30 minutes after 10:25 is 10:55.
#[test]
fn what_to_look_at_has_the_last_entry_and_names_of_values() {
    let mut club = fixture::club();
    let at = |h, m| time(h, m, 0, 0);
    let looked = |look, at, seen: &str| Looked {
        look,
        at,
        by: "Zora".into(),
        seen: seen.into(),
        note: String::new(),
    };
    club.rules.care.not_looked_at.insert(Look::Weed);
    let session = fixture::session_mut(&mut club);
    session.today.looks = vec![
        looked(Look::Uv, at(9, 40), "UV 5"),
        looked(Look::Uv, at(9, 10), "1"),
        looked(Look::Wind, at(9, 5), "12 km/h"),
    ];
    session.today.thunder = [at(10, 5), at(10, 25)].into();
    let text = flat(&words_on(
        &sheets(&club, 0, SheetKind::LookList, Paper::A4)[0],
    ));
    for words in [
        "UV Index 5 is called moderate",
        "Beaufort 3, gentle breeze",
        "Zora 09:40 UV 5",
        "last heard at 10:25",
        "before 10:55",
        "Local practice comes first",
        "every 30 min",
    ] {
        assert!(text.contains(words), "{words} in {text}");
    }
    assert!(!text.contains("09:10"), "only the last");
    for look in Look::ALL {
        let here = look != Look::Weed;
        assert_eq!(text.contains(look.label()), here, "{look:?} in {text}");
    }
}

#[test]
fn a_slip_shows_the_mark_outside_and_all_else_behind_the_folds() {
    let club = fixture::club();
    let sheet = &sheets(&club, 0, SheetKind::TodaySlip, Paper::A4)[0];
    let text = flat(&words_on(sheet));
    for p in &club.participants {
        let same = club.participants.iter().filter(|o| o.name == p.name);
        let found = text.matches(&format!("{} Wears", p.name)).count();
        assert_eq!(found, same.count(), "{text}");
    }
    let n = club.participants.len();
    for words in [
        "sealed: description of today",
        "Call 112 at once",
        "Cap colour",
        "Flotation",
    ] {
        assert_eq!(text.matches(words).count(), n, "{words} in {text}");
    }
    for (page, block) in blocks(sheet) {
        let fold = Length::mm(12.0) + (page.size.w - Length::mm(24.0)) / 3;
        for (at, _, words) in texts(block) {
            let outside =
                at.x < fold && at.y > Length::mm(30.0) && at.y < page.size.h - Length::mm(24.0);
            let fine = !outside || "sealed: description of today".contains(words.trim());
            assert!(fine, "{words} is seen outside");
        }
    }
}
