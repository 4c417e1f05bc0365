//! The page of a participant: typing is one edit, the preview shows no more than it may, and
//! everything is done with the keyboard alone.

use std::collections::BTreeMap;

use daystrand::model::conditions::{Condition, Known};
use daystrand::model::edit::Edit;
use daystrand::model::people::Participant;
use daystrand::model::privacy::{Class, Guarded};
use daystrand::model::profile::{Decision, Field, Papers};
use daystrand::model::standing::{Beside, Side};
use daystrand::ui::app::App;
use daystrand::ui::people::Page;
use daystrand::workbench::Workbench;
use daystrand::workbench::command::{Command, Place};
use egui::{Key, Modifiers, Shape, Vec2};
use egui_kittest::Harness;
use egui_kittest::kittest::NodeT as _;
use jiff::civil::date;

use super::{at, focused, key, labels, press, type_words, window_on};

type Window = Harness<'static, App>;

/// The demo club at a page of its first participant.
fn page(page: Page) -> Window {
    let mut h = at(Place::People);
    h.state_mut().state_mut().people.page = page;
    h.run();
    h
}

fn person(h: &Window) -> Participant {
    let view = h.state().bench().view();
    view.participant.expect("a participant").clone()
}

/// The demo club with its first participant filled, at People in a window of a size.
fn full_window(size: Vec2) -> Window {
    let mut bench = Workbench::new(date(2027, 6, 10));
    drop(bench.handle(Command::Demo));
    let first = bench.view().participant.expect("a participant").clone();
    drop(bench.handle(Command::Edit(Edit::ChangeParticipant(full(first)))));
    drop(bench.handle(Command::DismissNotice));
    let mut h = window_on(bench, size);
    press(&mut h, Modifiers::COMMAND, Key::Num2);
    assert_eq!(person(&h).profile.filled().count(), Field::ALL.len());
    h
}

/// Presses Tab until what has the keyboard has a name that begins so.
pub(super) fn tab_to(h: &mut Window, name: &str) {
    for _ in 0..120 {
        if focused(h).starts_with(name) {
            return;
        }
        key(h, Key::Tab);
    }
    panic!("Tab never comes to {name}");
}

/// All that is said in the window: names and values for a screen reader, and the words painted.
pub(super) fn everything(h: &Window) -> String {
    let mut all = String::new();
    for node in h.root().children_recursive() {
        let node = node.accesskit_node();
        for said in [node.label(), node.value(), node.description()] {
            all.push_str(&said.unwrap_or_default());
            all.push('\n');
        }
    }
    for shape in &h.output().shapes {
        painted(&shape.shape, &mut all);
    }
    all
}

fn painted(shape: &Shape, all: &mut String) {
    match shape {
        Shape::Text(t) => {
            all.push_str(t.galley.text());
            all.push('\n');
        }
        Shape::Vec(list) => list.iter().for_each(|s| painted(s, all)),
        _ => {}
    }
}

#[test]
fn a_field_typed_is_one_edit_and_one_undo() {
    let mut h = page(Page::Know);
    let before = person(&h);
    let revision = h.state().bench().view().revision;
    tab_to(&mut h, "Senses");
    key(&mut h, Key::Space);
    tab_to(&mut h, "Sight");
    for letter in ["the ", "sun ", "on ", "the ", "water"] {
        type_words(&mut h, letter);
    }
    assert_eq!(
        h.state().bench().view().revision,
        revision,
        "a draft is no edit"
    );
    key(&mut h, Key::Tab);
    let after = person(&h);
    assert_eq!(
        after.profile.for_owner(Field::Sight),
        "the sun on the water"
    );
    // Off the next field, where the keys for undo would be about its own words.
    key(&mut h, Key::F6);
    press(&mut h, Modifiers::COMMAND, Key::Z);
    assert_eq!(person(&h), before);
    assert_eq!(h.state().bench().view().undo, None, "it was one step");
}

#[test]
fn enter_enters_a_short_field_and_escape_drops_it() {
    let mut h = page(Page::Board);
    tab_to(&mut h, "Using the board");
    key(&mut h, Key::Enter);
    tab_to(&mut h, "How many items at once");
    type_words(&mut h, "three");
    key(&mut h, Key::Enter);
    assert_eq!(person(&h).profile.for_owner(Field::Attention), "three");
    tab_to(&mut h, "Follows an order");
    type_words(&mut h, "no");
    key(&mut h, Key::Escape);
    assert_eq!(person(&h).profile.for_owner(Field::Sequencing), "");
}

#[test]
fn dates_are_typed_and_what_is_no_date_is_said() {
    let mut h = page(Page::Sealed);
    tab_to(&mut h, "Delete all of it by");
    press(&mut h, Modifiers::COMMAND, Key::A);
    type_words(&mut h, "31.2.2028");
    key(&mut h, Key::Enter);
    assert!(everything(&h).contains("“31.2.2028” is no date"));
    let kept = person(&h).profile.papers().for_owner().delete_by;
    assert_eq!(kept, Some(date(2027, 12, 31)), "nothing was lost");
    tab_to(&mut h, "Delete all of it by");
    press(&mut h, Modifiers::COMMAND, Key::A);
    type_words(&mut h, "29.2.2028");
    key(&mut h, Key::Enter);
    let now = person(&h).profile.papers().for_owner().delete_by;
    assert_eq!(now, Some(date(2028, 2, 29)));
    // ISO 8601: 29 February 2028 is 2028-W09-2, a Tuesday.
    assert!(everything(&h).contains("Tuesday 29 February 2028"));
}

/// A word that stands nowhere else, for each field.
fn word(field: Field) -> String {
    format!("zq{}qz", field.word().replace('-', ""))
}

/// A participant with everything filled.
fn full(mut p: Participant) -> Participant {
    for field in Field::ALL {
        p.profile.set(field, word(field));
    }
    p.helper_note = Guarded::new(Class::Helper, "zqnoteqz".into());
    p.profile.set_hard(BTreeMap::from([
        (Condition::Known(Known::Thunder), "zqthunderqz".into()),
        (Condition::Words("zqroadqz".into()), "zqroadhelpsqz".into()),
    ]));
    p.profile.set_decision(Decision {
        on: Some(date(2031, 1, 7)),
        review: Some(date(2032, 2, 8)),
        warn_of_changes: true,
        surprises: true,
        small_parts: true,
    });
    p.profile.set_papers(Papers {
        agreed: Some(date(2033, 3, 9)),
        delete_by: Some(date(2034, 4, 10)),
        photos_on: Some(date(2035, 5, 11)),
        ..Papers::default()
    });
    p
}

#[test]
fn the_preview_holds_nothing_above_its_readers() {
    // High enough that nothing is scrolled out of sight.
    let mut h = full_window(Vec2::new(1366.0, 4000.0));
    h.state_mut().state_mut().people.page = Page::Seen;
    h.run();
    let others = everything(&h);
    let first = labels(&h)[0].clone();
    assert!(others.contains(&first), "the board is there");
    assert!(!others.contains("zq"), "{}", lines_with(&others, "zq"));
    for year in 2031..=2035 {
        assert!(!others.contains(&year.to_string()), "{year}");
    }
    tab_to(&mut h, "As seen by their helper");
    key(&mut h, Key::Space);
    let helper = everything(&h);
    for field in Field::ALL {
        let may = field.class() <= Class::Helper;
        assert_eq!(helper.contains(&word(field)), may, "{field:?}");
    }
    for said in ["zqnoteqz", "zqthunderqz", "zqroadqz", "2031", "2032"] {
        assert!(helper.contains(said), "{said}");
    }
    for year in 2033..=2035 {
        assert!(!helper.contains(&year.to_string()), "{year}");
    }
}

fn lines_with(all: &str, what: &str) -> String {
    all.lines()
        .filter(|l| l.contains(what))
        .collect::<Vec<_>>()
        .join("; ")
}

#[test]
fn an_own_step_for_always_is_added_by_keyboard_and_is_on_the_board() {
    let mut h = page(Page::Always);
    let before = labels(&h);
    tab_to(&mut h, "Add an own step");
    key(&mut h, Key::Enter);
    assert_eq!(focused(&h), "Look for it by word");
    type_words(&mut h, "quiet");
    key(&mut h, Key::ArrowDown);
    key(&mut h, Key::Enter);
    let added = person(&h).standing.own[0].clone();
    assert_eq!((added.side, added.beside), (Side::After, Beside::Water));
    let water = {
        let view = h.state().bench().view();
        let rows = &view.session.expect("a session").timetable;
        let wet = |id| view.club.activity(id).is_some_and(|a| a.in_water);
        rows.iter().filter(|s| wet(s.activity)).count()
    };
    let after = labels(&h);
    assert!(water > 0);
    assert_eq!(after.len(), before.len() + water);
    let shown = after.iter().filter(|l| **l == added.content.label);
    assert_eq!(shown.count(), water);
    press(&mut h, Modifiers::COMMAND, Key::Z);
    assert_eq!(labels(&h), before, "one step back");
}

#[test]
fn what_is_not_picked_is_not_added() {
    let mut h = page(Page::Always);
    let before = person(&h);
    for name in ["Add an own step", "Add a card"] {
        tab_to(&mut h, name);
        key(&mut h, Key::Enter);
        key(&mut h, Key::Escape);
        assert_eq!(person(&h), before, "{name}");
    }
}

#[test]
fn every_page_comes_to_rest_in_every_size_of_window() {
    for size in [Vec2::new(1366.0, 768.0), Vec2::new(683.0, 384.0)] {
        let mut h = full_window(size);
        for page in [
            Page::Looks,
            Page::Board,
            Page::Always,
            Page::Know,
            Page::Sealed,
            Page::Seen,
        ] {
            h.state_mut().state_mut().people.page = page;
            h.run();
            for _ in 0..6 {
                key(&mut h, Key::Tab);
                assert!(!focused(&h).is_empty(), "{page:?} at {size:?}");
            }
        }
    }
}
