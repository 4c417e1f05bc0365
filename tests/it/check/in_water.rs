//! The checks of water, people and turns: each with cases that make it speak and cases that leave it
//! quiet, on the demo's morning in turns.

use std::sync::Arc;

use daystrand::check;
use daystrand::model::club::Club;
use daystrand::model::finding::{Finding, Severity};
use daystrand::model::ids::{HelperId, ParticipantId};
use daystrand::model::people::Role;
use daystrand::model::profile::{Field, InWater};
use daystrand::model::session::Session;
use daystrand::model::today::Hours;
use daystrand::workbench::demo;
use jiff::civil::{date, time};

type Case = (&'static str, &'static str, usize, fn(&mut Club));

const CASES: &[Case] = &[
    ("in turns", "water.no_pairing", 0, |_| {}),
    ("all at once", "water.no_pairing", 1, |c| {
        wave(c).turns = None
    }),
    ("one does not come", "water.no_pairing", 2, |c| {
        let carmen = helper(c, "Carmen");
        wave(c).helpers_away.insert(carmen);
    }),
    ("nobody is in the water", "water.no_pairing", 0, |c| {
        wave(c).timetable.clear();
        wave(c).turns = None;
    }),
    ("as it is", "water.no_award", 0, |_| {}),
    ("no kind is needed in the water", "water.no_award", 1, |c| {
        for award in &mut c.rules.care.awards {
            award.for_water = false;
        }
    }),
    (
        "Hauke's ended with the year",
        "people.certificate",
        1,
        |_| {},
    ),
    ("a new one", "people.certificate", 0, |c| {
        let hauke = person(c, "Hauke");
        hauke.certificates[0].gained = Some(date(2026, 7, 1));
    }),
    ("gained a day too early", "people.certificate", 1, |c| {
        let hauke = person(c, "Hauke");
        hauke.certificates[0].gained = Some(date(2026, 6, 30));
    }),
    ("nothing entered", "people.certificate", 3, |c| {
        person(c, "Gesa").certificates.clear();
    }),
    (
        "not one who goes into the water",
        "people.certificate",
        0,
        |c| {
            person(c, "Hauke").roles.clear();
        },
    ),
    (
        "none ends within the season",
        "people.certificate_ends",
        0,
        |c| {
            person(c, "Hauke").certificates.clear();
        },
    ),
    (
        "one ends between two sessions",
        "people.certificate_ends",
        1,
        |c| {
            person(c, "Hauke").certificates.clear();
            person(c, "Gesa").certificates[1].gained = Some(date(2026, 6, 20));
        },
    ),
    ("as it is", "people.double_booked", 0, |_| {}),
    ("leads two rows in turns", "people.double_booked", 1, |c| {
        let asta = helper(c, "Asta");
        lead(c, "Find shells", asta);
    }),
    (
        "leads one after the other",
        "people.double_booked",
        0,
        |c| {
            let asta = helper(c, "Asta");
            lead(c, "Rinse", asta);
        },
    ),
    ("leads and comes later", "people.not_there", 1, |c| {
        let edda = helper(c, "Edda");
        let late = Hours {
            from: Some(time(10, 40, 0, 0)),
            to: None,
        };
        wave(c).today.here.insert(edda, late);
    }),
    ("as it is", "people.not_there", 0, |_| {}),
    ("leads and does not come", "people.lead_away", 2, |c| {
        let edda = helper(c, "Edda");
        wave(c).helpers_away.insert(edda);
    }),
    ("as it is", "people.few_adults", 0, |_| {}),
    ("one fewer than the rule", "people.few_adults", 1, |c| {
        c.rules.care.fewest_adults = c.helpers.len() as u32 + 1;
    }),
    ("no rule", "people.few_adults", 0, |c| {
        c.rules.care.fewest_adults = 0;
        wave(c).helpers_away = c.helpers.iter().map(|h| h.id).collect();
    }),
    ("one watcher for four", "water.no_watcher", 0, |_| {}),
    ("one watcher for three", "water.no_watcher", 2, |c| {
        c.rules.care.watcher_for = Some(3);
    }),
    ("the watcher does not come", "water.no_watcher", 2, |c| {
        let dario = helper(c, "Dario");
        wave(c).helpers_away.insert(dario);
    }),
    ("no rule", "water.no_watcher", 0, |c| {
        c.rules.care.watcher_for = None;
        let dario = helper(c, "Dario");
        wave(c).helpers_away.insert(dario);
    }),
    (
        "the watcher watches one alone",
        "water.no_watcher",
        1,
        |c| {
            let (dario, kite) = (helper(c, "Dario"), marked(c, "kite"));
            wave(c).today.watched_by.insert(kite, dario);
        },
    ),
    ("no alerts", "water.not_watched", 0, |_| {}),
    ("an alert", "water.not_watched", 1, |c| alert(c, "moon")),
    (
        "an alert of someone who is away",
        "water.not_watched",
        0,
        |c| {
            alert(c, "moon");
            let moon = marked(c, "moon");
            wave(c).away.insert(moon);
        },
    ),
    ("an alert, and someone named", "water.not_watched", 0, |c| {
        alert(c, "moon");
        let (moon, edda) = (marked(c, "moon"), helper(c, "Edda"));
        wave(c).today.watched_by.insert(moon, edda);
    }),
    (
        "whoever is named does not come",
        "water.watcher_busy",
        1,
        |c| {
            let (moon, edda) = (marked(c, "moon"), helper(c, "Edda"));
            wave(c).today.watched_by.insert(moon, edda);
            wave(c).helpers_away.insert(edda);
        },
    ),
    ("named for two", "water.watcher_busy", 1, |c| {
        let (moon, kite, edda) = (marked(c, "moon"), marked(c, "kite"), helper(c, "Edda"));
        wave(c).today.watched_by.insert(moon, edda);
        wave(c).today.watched_by.insert(kite, edda);
    }),
    ("named for one", "water.watcher_busy", 0, |c| {
        let (moon, dario) = (marked(c, "moon"), helper(c, "Dario"));
        wave(c).today.watched_by.insert(moon, dario);
    }),
    ("within what is agreed", "water.too_deep", 0, |_| {}),
    ("a centimetre too deep", "water.too_deep", 1, |c| {
        depth(c, "shell", 49)
    }),
    ("just as deep", "water.too_deep", 0, |c| {
        depth(c, "shell", 50)
    }),
    ("as it is", "water.no_lead", 0, |_| {}),
    ("nobody leads", "water.no_lead", 1, |c| {
        wave(c).today.water_lead = None
    }),
    ("whoever leads does not come", "water.lead_away", 1, |c| {
        let carmen = helper(c, "Carmen");
        wave(c).helpers_away.insert(carmen);
    }),
    ("a signal is entered", "water.no_visual_recall", 0, |_| {}),
    ("no signal", "water.no_visual_recall", 1, |c| {
        c.rules.care.recall.clear()
    }),
    ("no signal, all hear", "water.no_visual_recall", 0, |c| {
        c.rules.care.recall.clear();
        depth(c, "fish", 500);
    }),
    ("time to dry", "water.last", 0, |_| {}),
    ("nothing after the water", "water.last", 1, |c| {
        let rows = wave(c).turns.clone().unwrap();
        let last = rows.slots().last();
        let s = wave(c);
        let at = s.timetable.iter().position(|r| Some(r.id) == last).unwrap();
        s.timetable.truncate(at + 1);
        s.turns = None;
        s.timetable.rotate_left(at - 1);
        let splash = s
            .timetable
            .iter()
            .position(|r| Some(r.id) == rows.slots().next());
        let splash = s.timetable.remove(splash.unwrap());
        s.timetable.push(splash);
    }),
    ("as it is", "turns.broken", 0, |_| {}),
    ("someone has no turn at a station", "turns.broken", 1, |c| {
        let kite = marked(c, "kite");
        turns(c).places.get_mut(&kite).unwrap()[0] = None;
    }),
    ("a station is too full", "turns.broken", 1, |c| {
        let dig = turns(c).stations[1].slot;
        let leaf = marked(c, "leaf");
        let own = turns(c).places.get_mut(&leaf).unwrap();
        let at = own.iter().position(|s| *s == Some(dig)).unwrap();
        own.swap(at, 2);
    }),
    ("someone new, as the rows stand", "turns.broken", 1, |c| {
        let star = marked(c, "star");
        turns(c).places.remove(&star);
    }),
];

fn wave(club: &mut Club) -> &mut Session {
    let found = club.sessions.iter_mut().find(|s| s.title == "Wave morning");
    Arc::make_mut(found.unwrap())
}

fn turns(club: &mut Club) -> &mut daystrand::model::turns::Turns {
    wave(club).turns.as_deref_mut().unwrap()
}

fn helper(club: &Club, name: &str) -> HelperId {
    club.helpers.iter().find(|h| h.name == name).unwrap().id
}

fn person<'a>(club: &'a mut Club, name: &str) -> &'a mut daystrand::model::people::Helper {
    Arc::make_mut(club.helpers.iter_mut().find(|h| h.name == name).unwrap())
}

fn marked(club: &Club, mark: &str) -> ParticipantId {
    let mut all = club.participants.iter();
    all.find(|p| p.mark.as_str() == mark).unwrap().id
}

fn alert(club: &mut Club, mark: &str) {
    let p = club
        .participants
        .iter_mut()
        .find(|p| p.mark.as_str() == mark);
    let p = Arc::make_mut(p.unwrap());
    p.profile
        .set(Field::AlertMarker, "a plan, held by Edda".into());
}

fn depth(club: &mut Club, mark: &str, depth_cm: u32) {
    let p = club
        .participants
        .iter_mut()
        .find(|p| p.mark.as_str() == mark);
    Arc::make_mut(p.unwrap()).profile.set_in_water(InWater {
        depth_cm: Some(depth_cm),
        without_hearing: false,
    });
}

fn lead(club: &mut Club, label: &str, who: HelperId) {
    let id = club
        .activities
        .iter()
        .find(|a| a.label == label)
        .unwrap()
        .id;
    let rows = &mut wave(club).timetable;
    let row = rows.iter_mut().find(|r| r.activity == id).unwrap();
    row.leads.insert(who);
}

fn findings(club: &Club, code: &str) -> Vec<Finding> {
    let session = club.sessions.iter().find(|s| s.title == "Wave morning");
    let mut all = check::run(club, session.map(|s| &**s));
    all.retain(|f| f.code == code);
    all
}

#[test]
fn each_check_speaks_when_it_should_and_is_quiet_otherwise() {
    for (case, code, times, change) in CASES {
        let mut club = demo::club();
        change(&mut club);
        let found = findings(&club, code);
        assert_eq!(found.len(), *times, "{code}, {case}: {found:#?}");
        for f in found {
            assert!(f.sentence.ends_with('.') && f.hint.ends_with('.'), "{f:?}");
        }
    }
}

/// Who is short, who is free, and why another is not, in one sentence.
#[test]
fn a_shortage_names_people_and_the_certificate_that_ended() {
    let mut club = demo::club();
    wave(&mut club).turns = None;
    let found = findings(&club, "water.no_pairing");
    assert_eq!(found[0].severity, Severity::StopAndLook);
    let said = found[0].sentence.replace('\u{a0}', " ");
    assert_eq!(
        said,
        "At 10:35 eight are in the water and four people are free for them: Benno, Carmen, Farid \
         and Gesa; “Water rescue” of Hauke ended with 31 December 2026."
    );
    let hint = &found[0].hint;
    assert!(hint.contains("in turns"), "{hint}");
}

/// Someone with an alert and nobody named: not complete, and neither safe nor unsafe.
#[test]
fn an_alert_without_a_watcher_is_not_complete_and_says_nothing_of_what_it_is() {
    let mut club = demo::club();
    alert(&mut club, "moon");
    let found = findings(&club, "water.not_watched");
    let said = format!("{} {}", found[0].sentence, found[0].hint).to_lowercase();
    assert!(said.starts_with("not complete"), "{said}");
    assert!(said.contains("moon"), "{said}");
    assert!(
        !said.contains("safe") && !said.contains("held by edda"),
        "{said}"
    );
    assert_eq!(found[0].severity, Severity::StopAndLook);
}

/// Whoever goes into the water and watches by their roles goes into the water.
#[test]
fn nobody_counts_twice() {
    let mut club = demo::club();
    person(&mut club, "Gesa").roles.insert(Role::Watcher);
    club.rules.care.watcher_for = Some(2);
    // Four in the water need all four people; two watchers are asked for, one is left.
    assert_eq!(findings(&club, "water.no_pairing").len(), 0);
    assert_eq!(findings(&club, "water.no_watcher").len(), 2);
}
