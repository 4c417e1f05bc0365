//! Certificates in the window: entered by keys, told in the words of what was entered, reckoned by
//! the club's own rule, and looked ahead at.

use daystrand::model::award::{Award, Certificate, MonthDay, Validity};
use daystrand::model::club::Club;
use daystrand::model::edit::{Edit, SessionDetails};
use daystrand::ui::app::App;
use daystrand::ui::people::Pane;
use daystrand::workbench::Workbench;
use daystrand::workbench::command::Command;
use egui::{Key, Modifiers, Vec2};
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT as _, Queryable as _};
use jiff::civil::date;

use super::people::{everything, tab_to};
use super::{click, focused, key, press, type_words, window_with};

type Window = Harness<'static, App>;

/// A pane of People in a window so high that all of it is seen.
fn pane(pane: Pane, prepare: impl FnOnce(&mut Workbench)) -> Window {
    let mut h = window_with(Vec2::new(1100.0, 4800.0), prepare);
    press(&mut h, Modifiers::COMMAND, Key::Num2);
    h.state_mut().state_mut().people.pane = pane;
    h.run();
    h
}

fn club(h: &Window) -> &Club {
    h.state().bench().view().club
}

/// Puts words into a field that the Tab key comes to.
fn enter(h: &mut Window, field: &str, words: &str) {
    tab_to(h, field);
    press(h, Modifiers::COMMAND, Key::A);
    type_words(h, words);
    key(h, Key::Enter);
}

/// Chooses one of a list that opens, by keys.
fn choose(h: &mut Window, list: &str, one: &str) {
    tab_to(h, list);
    key(h, Key::Enter);
    tab_to(h, one);
    key(h, Key::Enter);
}

/// What the named helper holds.
fn held(h: &Window, name: &str) -> Vec<Certificate> {
    let all = &club(h).helpers;
    let helper = all.iter().find(|h| h.name == name).expect("a helper");
    helper.certificates.clone()
}

#[test]
fn a_certificate_is_entered_by_keys_and_only_what_was_entered_is_said() {
    let mut h = pane(Pane::Helpers, |_| {});
    let name = club(&h).helpers[0].name.clone();
    assert!(held(&h, &name).is_empty());
    choose(&mut h, "Add a certificate…", "Water rescue");
    assert!(everything(&h).contains("nobody has seen it yet"));
    enter(&mut h, "Gained: Water rescue", "1.7.2026");
    enter(&mut h, "Seen by: Water rescue", "Edda");
    enter(&mut h, "Seen on: Water rescue", "3.5.2027");
    let one = held(&h, &name)[0].clone();
    assert_eq!(one.gained, Some(date(2026, 7, 1)));
    assert_eq!((one.expires, one.seen_by.as_str()), (None, "Edda"));
    // The demo's own rule: until 31 December, a year more from 1 July on.
    let says = "Runs until 31 December 2027, by the club’s rule; seen by Edda on 3 May 2027.";
    assert!(everything(&h).contains(says));
    // A day from the paper goes before the rule; the window's day is 10 June 2027.
    enter(&mut h, "Expires: Water rescue", "1.6.2027");
    let says = "Ended with 1 June 2027, as entered; seen by Edda on 3 May 2027.";
    assert!(everything(&h).contains(says));
    enter(&mut h, "Expires: Water rescue", "31.6.2027");
    assert!(everything(&h).contains("“31.6.2027” is no date"));
    assert_eq!(held(&h, &name)[0].expires, Some(date(2027, 6, 1)));
    assert!(!everything(&h).contains("valid"));
    click(&mut h, "Take away: Water rescue");
    assert!(held(&h, &name).is_empty());
}

#[test]
fn a_new_kind_is_entered_where_the_club_is() {
    let mut h = pane(Pane::Helpers, |_| {});
    choose(&mut h, "Add a certificate…", "New kind, in The club");
    assert_eq!(h.state_mut().state_mut().people.pane, Pane::Club);
    assert_eq!(focused(&h), "Add a kind of certificate");
    key(&mut h, Key::Enter);
    let kinds = &club(&h).rules.care.awards;
    let new = kinds.last().expect("a kind").clone();
    assert_eq!((kinds.len(), new.name.as_str()), (3, "Certificate 3"));
    let helpers = &club(&h).helpers;
    assert!(helpers.iter().all(|h| h.certificates.len() < 3));
}

/// Surf Life Saving Australia publishes that an award gained after 30 June runs to 31 December of
/// the following year (from memory).
#[test]
fn a_rule_is_typed_and_worked_through_beside_it() {
    let mut h = pane(Pane::Club, |_| {});
    click(&mut h, "Add a kind of certificate");
    let kind = |h: &Window| -> Award { club(h).rules.care.awards[2].clone() };
    assert_eq!(kind(&h).validity, Validity::AsWritten);
    click(&mut h, "How long Certificate 3 lasts");
    click(&mut h, "Until a day of the year");
    assert!(everything(&h).contains("Gained 1 July 2027: until 31 December 2027."));
    let field = "Certificate 3: a year more when gained on or after";
    click(&mut h, field);
    type_words(&mut h, "30 February");
    key(&mut h, Key::Enter);
    assert!(everything(&h).contains("“30 February” is no day of every year"));
    click(&mut h, field);
    press(&mut h, Modifiers::COMMAND, Key::A);
    type_words(&mut h, "1 July");
    key(&mut h, Key::Enter);
    let boundary = MonthDay::new(7, 1);
    let until = MonthDay::new(12, 31).expect("a day");
    assert_eq!(kind(&h).validity, Validity::FixedDay { until, boundary });
    let both = "Gained 30 June 2027: until 31 December 2027. \
                Gained 1 July 2027: until 31 December 2028.";
    assert!(everything(&h).contains(both));
    click(&mut h, "Its last day still counts: Certificate 3");
    assert!(everything(&h).contains("Gained 1 July 2027: until 30 December 2028."));
}

#[test]
fn a_kind_that_someone_holds_is_not_removed_and_it_is_said_why() {
    let mut h = pane(Pane::Club, |_| {});
    let before = club(&h).rules.clone();
    click(&mut h, "Remove the kind Water rescue");
    assert_eq!(club(&h).rules, before);
    assert!(everything(&h).contains("Take it from these helpers first."));
}

/// What the look ahead lists, from above: whose lines lead to their helpers.
fn lines(h: &Window) -> Vec<String> {
    let all = h.query_all_by(|n| n.label().is_some_and(|l| l.contains("not covered at")));
    let mut all: Vec<(f32, String)> = all
        .map(|n| {
            (
                n.rect().top(),
                n.accesskit_node().label().unwrap_or_default(),
            )
        })
        .collect();
    all.sort_by(|a, b| a.0.total_cmp(&b.0));
    all.into_iter().map(|(_, said)| said).collect()
}

#[test]
fn the_look_ahead_begins_with_what_ended_and_counts_who_remains() {
    let mut h = pane(Pane::Helpers, |bench| {
        // A session in September, after Farid's resuscitation: gained 5 September 2026, twelve months.
        let first = bench.view().club.sessions[0].clone();
        let details = SessionDetails {
            title: "Last morning".into(),
            date: date(2027, 9, 11),
            start: first.start,
            place: first.place.clone(),
        };
        drop(bench.handle(Command::Edit(Edit::CopySession(first.id, details))));
        drop(bench.handle(Command::DismissNotice));
    });
    click(&mut h, "Certificates ahead");
    // Gained 9 May 2026, before the demo's boundary day: until the end of that year.
    assert_eq!(
        lines(&h),
        [
            "Hauke: Water rescue ended with 31 December 2026, not covered at 4 of 4 sessions",
            "Farid: Resuscitation ends with 5 September 2027, not covered at 1 of 4 sessions",
        ]
    );
    let says = |n: &egui_kittest::kittest::AccessKitNode<'_>, words: &str| {
        let said = [n.label(), n.value()];
        said.iter().flatten().any(|s| s.starts_with(words))
    };
    let top = |words: &str| {
        let mut found = h.root().children_recursive();
        let node = found.find(|n| says(&n.accesskit_node(), words));
        node.expect("it is there").rect().top()
    };
    let order = [
        "Saturday 12 June 2027: Boat morning",
        "Hauke: Water rescue",
        "Saturday 11 September 2027: Last morning",
        "Farid: Resuscitation",
    ];
    let tops = order.map(top);
    assert!(tops.is_sorted(), "{tops:?}");
    let cells = [
        "Sat 12 June, Boat morning: 4 of 5",
        "Sat 26 June, Wave morning: 4 of 5",
        "Sat 11 September, Last morning: 3 of 5, 1 fewer than before",
    ];
    for cell in cells {
        assert!(everything(&h).contains(cell), "{cell}");
    }
    click(&mut h, "Hauke: Water rescue");
    let hauke = club(&h).helpers.iter().find(|h| h.name == "Hauke");
    let hauke = hauke.map(|h| h.id);
    let people = &h.state_mut().state_mut().people;
    assert_eq!(people.helper, hauke);
    assert!(!people.ahead);
    assert!(everything(&h).contains("Ended with 31 December 2026, by the club’s rule"));
}
