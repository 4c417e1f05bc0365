//! The whole group and the lines above a board: edited, sorted, filtered and answered by keys.

use std::sync::Arc;

use daystrand::model::board::StepState;
use daystrand::model::club::Club;
use daystrand::model::edit::{BoardEdit, Edit, TimetableEdit, apply};
use daystrand::model::hand::Content;
use daystrand::model::ids::{ParticipantId, StepRef, SymbolId};
use daystrand::model::people::Participant;
use daystrand::ui::app::App;
use daystrand::workbench::command::{Command, Place};
use daystrand::workbench::view::View;
use egui::{Key, Modifiers, Vec2};
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT as _, Queryable};

use super::{at, click, drag, focused, key, middle, press, type_words, window_with};

type Window = Harness<'static, App>;

fn view<'a>(h: &'a Window) -> View<'a> {
    h.state().bench().view()
}

/// The names of the rows that are shown, from above.
fn names(h: &Window) -> Vec<String> {
    let club = view(h).club;
    let rows = h.query_all_by(|n| {
        n.label()
            .and_then(|l| l.split_once(", ").map(|(who, _)| who.to_owned()))
            .is_some_and(|who| club.participants.iter().any(|p| p.name == who))
    });
    let mut found: Vec<(f32, String)> = rows
        .map(|n| {
            let label = n.accesskit_node().label().unwrap_or_default();
            let who = label.split(", ").next().unwrap_or_default().to_owned();
            (n.rect().top(), who)
        })
        .collect();
    found.sort_by(|a, b| a.0.total_cmp(&b.0));
    found.into_iter().map(|(_, n)| n).collect()
}

/// The demo's boards all at once.
fn group() -> Window {
    let mut h = window_with(Vec2::new(1366.0, 1000.0), |bench| {
        drop(bench.handle(Command::Show(Place::Boards)));
    });
    press(&mut h, Modifiers::COMMAND, Key::G);
    h
}

/// The demo with some edits made before the window opens; the first edit gets the club.
fn changed(edits: impl Fn(&Club) -> Vec<Edit>) -> Window {
    window_with(Vec2::new(1366.0, 768.0), |bench| {
        let edits = edits(bench.view().club);
        for e in edits {
            drop(bench.handle(Command::Edit(e)));
        }
        drop(bench.handle(Command::Show(Place::Boards)));
    })
}

#[test]
fn a_question_about_a_row_that_is_gone_is_answered_by_keys_alone() {
    let drum = Content {
        activity: None,
        symbol: SymbolId::new("drum"),
        label: "Drum".into(),
    };
    let mut h = window_with(Vec2::new(1366.0, 768.0), |bench| {
        drop(bench.handle(Command::Show(Place::Boards)));
        let v = bench.view();
        let session = v.session.expect("a session");
        let who = v.participant.expect("someone").id;
        let slot = session.timetable[1].id;
        let swap = BoardEdit::Replace(StepRef::Slot(slot), drum.clone());
        let swap = Edit::Board(session.id, who, swap);
        let gone = Edit::Timetable(session.id, TimetableEdit::Remove(slot));
        drop(bench.handle(Command::Edit(swap)));
        drop(bench.handle(Command::Edit(gone)));
    });
    let asked = |h: &Window| {
        let v = h.state().bench().view();
        let who = v.participant.expect("someone").id;
        let hand = v.session.expect("a session").hand_of(who);
        hand.map_or(0, |h| h.asked.len())
    };
    assert_eq!(asked(&h), 1);
    for _ in 0..10 {
        if focused(&h) == "Keep Drum as own step" {
            break;
        }
        key(&mut h, Key::F6);
    }
    assert_eq!(
        focused(&h),
        "Keep Drum as own step",
        "F6 reaches the question"
    );
    key(&mut h, Key::Enter);
    assert_eq!(asked(&h), 0);
    let v = view(&h);
    let board = v.board().expect("a board");
    let kept = board.steps.iter().find(|s| s.label == "Drum");
    assert!(matches!(kept.expect("kept").at, StepRef::Own(_)));
}

#[test]
fn a_choice_is_offered_with_something_else_and_no_thanks() {
    let mut h = at(Place::Boards);
    let label = {
        let v = view(&h);
        v.board().expect("a board").steps[2].label.clone()
    };
    click(&mut h, &format!("{label}, step 3"));
    key(&mut h, Key::C);
    click(&mut h, "Something else");
    click(&mut h, "No thanks");
    let v = view(&h);
    let step = &v.board().expect("a board").steps[2];
    let offered: Vec<_> = step
        .options
        .iter()
        .map(|o| (o.symbol.as_str(), o.label.as_str()))
        .collect();
    assert_eq!(offered.len(), 2);
    assert_eq!(offered[0].0, "something_else");
    assert_eq!(offered[1], ("no", "No thanks"));
}

#[test]
fn a_row_that_is_left_out_is_shown_and_taken_with_the_group() {
    let mut h = changed(|club| {
        let v = club.sessions.last().expect("a session");
        let who = club.attending(v).next().expect("someone");
        let mut p = who.as_ref().clone();
        p.standing.swaps.clear();
        p.standing.left_out = [v.timetable[2].activity].into_iter().collect();
        vec![Edit::ChangeParticipant(p)]
    });
    let (label, slot) = {
        let v = view(&h);
        let slot = v.session.expect("a session").timetable[2].clone();
        let label = v.club.activity(slot.activity).expect("known").label.clone();
        (label, slot.id)
    };
    assert!(
        view(&h).board().is_some_and(|b| b.left_out.contains(&slot)),
        "{label} is left out"
    );
    press(&mut h, Modifiers::COMMAND, Key::G);
    let gap = format!("{label}, left out, ");
    assert!(middle(&h, &gap).x > 0.0, "the gap is seen in the group");
    press(&mut h, Modifiers::COMMAND, Key::G);
    click(&mut h, "With the group today");
    let v = view(&h);
    let board = v.board().expect("a board");
    assert!(!board.left_out.contains(&slot));
    assert!(board.position(StepRef::Slot(slot)).is_some());
}

#[test]
fn a_filter_shows_whom_it_asks_for() {
    let mut h = group();
    let all = names(&h);
    assert!(all.len() > 4, "{all:?}");
    let water: Vec<String> = {
        let v = view(&h);
        let wet = |b: &daystrand::model::board::Board| {
            let mut done = b.done().filter_map(|s| v.club.activity(s.activity?));
            done.any(|a| a.in_water)
        };
        let who = v.boards.iter().filter(|(_, b)| wet(b));
        who.filter_map(|(id, _)| Some(v.club.participant(*id)?.name.clone()))
            .collect()
    };
    click(&mut h, "Which boards");
    click(&mut h, "Who goes in the water?");
    assert_eq!(names(&h), water);
    click(&mut h, "Which boards");
    click(&mut h, "Who has open questions?");
    assert!(names(&h).is_empty());
    click(&mut h, "Which boards");
    click(&mut h, "Everyone");
    assert_eq!(names(&h), all);
    click(&mut h, "Order of the boards");
    click(&mut h, "By name");
    let mut sorted = all;
    sorted.sort_by_key(|n| n.to_lowercase());
    assert_eq!(names(&h), sorted);
}

#[test]
fn the_table_is_edited_with_the_keys_of_one_board() {
    let mut h = group();
    for _ in 0..8 {
        if names(&h)
            .iter()
            .any(|n| focused(&h).starts_with(n.as_str()))
        {
            break;
        }
        key(&mut h, Key::F6);
    }
    let first = names(&h)[0].clone();
    assert!(focused(&h).starts_with(&first), "{}", focused(&h));
    key(&mut h, Key::ArrowRight);
    key(&mut h, Key::ArrowRight);
    let now = focused(&h);
    assert!(now.ends_with(&first), "on a step of the first row: {now}");
    let step = view(&h).step.expect("chosen");
    key(&mut h, Key::Delete);
    let state = |h: &Window| {
        let v = h.state().bench().view();
        let b = v.board().expect("a board");
        b.position(step).map(|i| b.steps[i].state.clone())
    };
    assert_eq!(state(&h), Some(StepState::NotToday));
    key(&mut h, Key::T);
    assert_ne!(state(&h), Some(StepState::NotToday));
    key(&mut h, Key::ArrowDown);
    let second = names(&h)[1].clone();
    assert!(focused(&h).ends_with(&second), "{}", focused(&h));
    key(&mut h, Key::R);
    assert_eq!(focused(&h), "Look for a symbol");
    type_words(&mut h, "drum");
    key(&mut h, Key::Enter);
    key(&mut h, Key::Enter);
    assert!(focused(&h).ends_with(&second), "back: {}", focused(&h));
    let v = view(&h);
    let board = v.board().expect("a board");
    assert!(board.steps.iter().any(|s| s.label == "Drum"));
    key(&mut h, Key::Enter);
    assert!(focused(&h).contains("step "), "one board: {}", focused(&h));
}

#[test]
fn a_symbol_dropped_on_a_place_of_the_table_is_swapped_in() {
    let mut h = group();
    let (name, who, label) = {
        let v = view(&h);
        let (id, board) = &v.boards[1];
        let name = v.club.participant(*id).expect("known").name.clone();
        let plain = board.steps.iter().find(|s| !s.differs()).expect("a step");
        (name, *id, plain.label.clone())
    };
    let from = middle(&h, "Circle, symbol");
    let to = middle(&h, &format!("{label}, as the timetable, {name}"));
    drag(&mut h, from, to);
    let v = view(&h);
    let board = &v.boards.iter().find(|(id, _)| *id == who).expect("there").1;
    let swapped = board
        .steps
        .iter()
        .find(|s| s.label == "Circle" && s.differs());
    assert_eq!(
        swapped.map(|s| s.state.clone()),
        Some(StepState::Swapped { instead_of: label })
    );
}

#[test]
fn of_200_boards_only_rows_in_sight_are_laid_out() {
    let mut h = window_with(Vec2::new(1366.0, 768.0), |bench| {
        let club = bench.view().club.clone();
        let many = crowd(&club, 200);
        let fresh = many.participants.iter().skip(club.participants.len());
        let fresh = fresh.map(|p| Participant {
            id: ParticipantId(0),
            ..p.as_ref().clone()
        });
        drop(bench.handle(Command::Edit(Edit::TakeIn(fresh.collect()))));
        drop(bench.handle(Command::Show(Place::Boards)));
    });
    press(&mut h, Modifiers::COMMAND, Key::G);
    assert!(view(&h).boards.len() >= 200);
    let shown = names(&h).len();
    assert!((4..=14).contains(&shown), "{shown} rows are laid out");
    let club = view(&h).club;
    let rows = club.participants.len();
    for _ in 0..rows / 8 + 1 {
        if names(&h)
            .iter()
            .any(|n| focused(&h).starts_with(n.as_str()))
        {
            break;
        }
        key(&mut h, Key::F6);
    }
    for _ in 0..rows / 8 + 1 {
        key(&mut h, Key::PageDown);
    }
    let last = view(&h)
        .club
        .participants
        .last()
        .expect("someone")
        .name
        .clone();
    assert!(focused(&h).starts_with(&last), "{}", focused(&h));
    assert!(names(&h).contains(&last), "the last row is in sight");
    assert!(names(&h).len() <= 15);
}

/// As many participants as asked for, each like one of the club's.
fn crowd(club: &Club, count: usize) -> Club {
    let mut all = club.clone();
    for i in club.participants.len()..count {
        let like = &club.participants[i % club.participants.len()];
        let mut p = like.as_ref().clone();
        p.name = format!("{} {i}", p.name);
        all = apply(&all, &Edit::AddParticipant(p)).expect("applies").0;
    }
    all.sessions = all.sessions.iter().map(Arc::clone).collect();
    all
}
