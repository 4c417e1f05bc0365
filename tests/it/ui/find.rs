//! A long list is looked through by name, and keeps to its place; what is hard today stands beside
//! the name of the board.

use std::collections::BTreeMap;

use daystrand::model::conditions::{Condition, Known};
use daystrand::model::edit::Edit;
use daystrand::ui::app::App;
use daystrand::workbench::Workbench;
use daystrand::workbench::command::{Command, Place};
use egui::{Key, Modifiers, Vec2};
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT as _, Queryable};

use super::{middle, press, type_words, window_with};

const SIZE: Vec2 = Vec2::new(1366.0, 768.0);

/// The demo with forty participants, of whom one has a name that nobody else has.
fn many(bench: &mut Workbench) {
    let pattern = bench.view().club.participants.clone();
    for i in pattern.len()..40 {
        let mut one = pattern[i % pattern.len()].as_ref().clone();
        one.name = if i == 33 {
            "Zenobia".into()
        } else {
            format!("Somebody {i}")
        };
        drop(bench.handle(Command::Edit(Edit::AddParticipant(one))));
    }
}

/// What the rows of the list say.
fn rows(h: &Harness<'static, App>) -> Vec<String> {
    let all = h.query_all_by(|n| {
        n.label()
            .is_some_and(|l| l.contains(" of ") && l.contains(", "))
    });
    all.filter_map(|n| n.accesskit_node().label()).collect()
}

#[test]
fn a_name_is_found_among_forty_by_keys_alone() {
    let mut h = window_with(SIZE, |bench| {
        many(bench);
        drop(bench.handle(Command::Show(Place::People)));
    });
    let before = rows(&h);
    assert!(before.iter().any(|r| r.ends_with("of 40")), "{before:?}");
    assert!(
        before.len() < 20,
        "only rows in sight are laid out: {before:?}"
    );
    press(&mut h, Modifiers::COMMAND, Key::F);
    type_words(&mut h, "zeno");
    assert_eq!(rows(&h), ["Zenobia, 1 of 1"]);
    press(&mut h, Modifiers::NONE, Key::ArrowDown);
    let chosen = h.state().bench().view().participant.map(|p| p.name.clone());
    assert_eq!(chosen.as_deref(), Some("Zenobia"));
}

#[test]
fn whoever_is_chosen_elsewhere_is_in_sight_in_the_list() {
    let mut h = window_with(SIZE, |bench| {
        many(bench);
        let who = bench.view().club.participants[33].id;
        drop(bench.handle(Command::ChooseParticipant(who)));
        drop(bench.handle(Command::Show(Place::People)));
    });
    let near = |h: &Harness<'static, App>| rows(h).iter().any(|r| r.starts_with("Somebody 32, "));
    assert!(near(&h), "{:?}", rows(&h));
    press(&mut h, Modifiers::COMMAND, Key::Num3);
    assert!(near(&h), "{:?}", rows(&h));
}

#[test]
fn what_is_hard_today_stands_beside_the_name_and_moves_no_card() {
    let window = |windy: bool| {
        window_with(SIZE, |bench| {
            let club = bench.view().club.clone();
            let session = bench.view().session.map(|s| s.id).expect("a session");
            let mut person = club.participants[0].as_ref().clone();
            let hard = [(
                Condition::Known(Known::Windy),
                "sit behind the hut".to_owned(),
            )];
            person.profile.set_hard(BTreeMap::from(hard));
            drop(bench.handle(Command::ChooseParticipant(person.id)));
            drop(bench.handle(Command::Edit(Edit::ChangeParticipant(person))));
            if windy {
                let today = vec![Condition::Known(Known::Windy)];
                drop(bench.handle(Command::Edit(Edit::Conditions(session, today))));
            }
            drop(bench.handle(Command::Show(Place::Boards)));
        })
    };
    let (calm, windy) = (window(false), window(true));
    let says = "Hard today: Windy. What helps: sit behind the hut.";
    assert!(calm.query_by_label(says).is_none());
    let (chip, undo) = (middle(&windy, says), middle(&windy, "Undo"));
    assert!((chip.y - undo.y).abs() < 4.0, "{chip:?} {undo:?}");
    let card = |h: &Harness<'static, App>| {
        let found = h.query_all_by(|n| n.label().is_some_and(|l| l.contains(", step 1 of ")));
        found.map(|n| n.rect()).next().expect("a card")
    };
    assert_eq!(card(&calm), card(&windy));
}
