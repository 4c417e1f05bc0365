//! What was looked at, in words: how old it is, what a number is called, the wait after thunder.

use daystrand::model::conditions::Condition;
use daystrand::model::edit::{Edit, TodayEdit};
use daystrand::model::ids::SessionId;
use daystrand::model::looks::{Look, Looked};
use daystrand::plan::clock::clock;
use daystrand::workbench::Workbench;
use daystrand::workbench::looked::{named, points, thunder};
use jiff::civil::{Time, time};

use super::{demo, edit};

fn look(bench: &mut Workbench, look: Look, at: Time, seen: &str) {
    let looked = Looked {
        look,
        at,
        by: "Carmen".into(),
        seen: seen.into(),
        note: String::new(),
    };
    let id = chosen(bench);
    edit(bench, Edit::Today(id, TodayEdit::Look(looked)));
}

fn chosen(bench: &Workbench) -> SessionId {
    bench.view().session.unwrap().id
}

/// Age and what is older of a point.
fn of(bench: &Workbench, look: Look) -> (String, Option<String>) {
    let view = bench.view();
    let all = points(view.club, view.session.unwrap());
    let point = all.into_iter().find(|p| p.look == look).unwrap();
    (point.age, point.older)
}

#[test]
fn the_age_of_a_look_is_told_at_the_start_and_at_the_next_water() {
    let mut bench = demo();
    assert_eq!(of(&bench, Look::Waves), ("Not looked at yet".into(), None));
    let session = bench.view().session.unwrap();
    let start = session.start;
    let minutes = |n: i64| start - jiff::SignedDuration::from_mins(n);
    let club = bench.view().club;
    let times = clock(session, &club.rules);
    let wet = session.timetable.iter().find(|s| club.in_water(s.activity));
    let water = times.row(wet.unwrap().id).unwrap().from;
    let after = water.since(times.start);
    let limit = club.rules.care.look_again_minutes;
    // Half an hour to the minute is not older than half an hour.
    let edge = i64::from(limit) - i64::from(after);
    look(&mut bench, Look::Waves, minutes(edge), "low");
    assert_eq!(of(&bench, Look::Waves).1, None);
    look(&mut bench, Look::Depth, minutes(edge + 1), "");
    let (age, older) = of(&bench, Look::Depth);
    let older = older.unwrap();
    assert!(older.contains(&format!("{} min old", limit + 1)), "{older}");
    assert!(
        older.contains(&format!("the club’s {limit} minutes")),
        "{older}"
    );
    assert!(
        age.contains(&format!("the start at {}", times.start)),
        "{age}"
    );
    // The latest look counts, in whatever order they were written down.
    look(&mut bench, Look::Depth, minutes(25), "");
    let before = of(&bench, Look::Depth).0;
    look(&mut bench, Look::Depth, minutes(40), "");
    assert_eq!(of(&bench, Look::Depth).0, before);
}

#[test]
fn points_that_the_club_does_not_look_at_are_not_listed() {
    let mut bench = demo();
    let mut rules = bench.view().club.rules.clone();
    rules.care.not_looked_at.insert(Look::Weed);
    edit(&mut bench, Edit::Rules(rules));
    let view = bench.view();
    let all = points(view.club, view.session.unwrap());
    assert_eq!(all.len(), Look::ALL.len() - 1);
    assert!(all.iter().all(|p| p.look != Look::Weed));
}

/// Bands and forces themselves are checked against their sources in `published`.
#[test]
fn numbers_get_their_names_and_nothing_else_does() {
    let uv = |seen| named(Look::Uv, seen);
    assert!(uv("2").unwrap().starts_with("UV Index 2: low."));
    assert!(uv("5.5 at noon").unwrap().starts_with("UV Index 6: high."));
    assert!(uv("5,4").unwrap().starts_with("UV Index 5: moderate."));
    assert!(!uv("2").unwrap().contains("protection"));
    assert!(uv("3").unwrap().contains("protection"));
    let wind = |seen| named(Look::Wind, seen);
    assert_eq!(wind("4 m/s").as_deref(), Some("Beaufort 3, gentle breeze."));
    assert_eq!(wind("4 km/h").as_deref(), Some("Beaufort 1, light air."));
    assert_eq!(
        wind("12 Knots, gusts").as_deref(),
        Some("Beaufort 4, moderate breeze.")
    );
    for nothing in ["", "a lot", "4", "4 miles", "-3 m/s"] {
        assert_eq!(wind(nothing), None, "{nothing}");
    }
    assert_eq!(uv("high"), None);
    assert_eq!(named(Look::Waves, "3"), None);
}

#[test]
fn each_new_thunder_starts_the_wait_again() {
    let mut bench = demo();
    let id = chosen(&bench);
    let says = |bench: &Workbench| {
        let view = bench.view();
        thunder(view.club, view.session.unwrap())
    };
    assert_eq!(says(&bench), None);
    let heard = [time(10, 12, 0, 0), time(10, 2, 0, 0)];
    edit(
        &mut bench,
        Edit::Today(id, TodayEdit::Thunder(heard.into())),
    );
    // 30 minutes are what weather services ask for.
    assert!(says(&bench).unwrap().contains("until 10:42"));
    edit(
        &mut bench,
        Edit::Conditions(id, vec![Condition::Words("hail".into())]),
    );
    assert!(says(&bench).unwrap().contains("until 10:42"));
}
