//! Rows in turns by keys: worked out, used, taken back, a place moved; and a look written down.

use std::time::{Duration, Instant};

use daystrand::model::edit::{Edit, TurnsEdit};
use daystrand::model::ids::{ParticipantId, SessionId, SlotId};
use daystrand::model::looks::Look;
use daystrand::model::session::Session;
use daystrand::ui::app::App;
use daystrand::ui::session::Pane;
use daystrand::workbench::Workbench;
use daystrand::workbench::command::{Command, Place};
use daystrand::workbench::turns::Arranging;
use egui::{Key, Modifiers, Vec2};
use egui_kittest::Harness;
use egui_kittest::kittest::Queryable as _;
use jiff::civil::time;

use super::{drag, focused, key, middle, press, type_words, window_with};

type Window = Harness<'static, App>;

const LARGE: Vec2 = Vec2::new(1366.0, 768.0);

/// Chooses the demo's session in turns.
fn choose(bench: &mut Workbench) -> SessionId {
    let club = bench.view().club;
    let id = club
        .sessions
        .iter()
        .find(|s| s.turns.is_some())
        .expect("one")
        .id;
    drop(bench.handle(Command::ChooseSession(id)));
    drop(bench.handle(Command::Show(Place::Session)));
    id
}

fn wave() -> Window {
    window_with(LARGE, |bench| {
        choose(bench);
    })
}

/// The same without turns.
fn plain() -> Window {
    window_with(LARGE, |bench| {
        let id = choose(bench);
        drop(bench.handle(Command::Edit(Edit::Turns(id, TurnsEdit::Off))));
    })
}

fn session(h: &Window) -> &Session {
    h.state().bench().view().session.expect("a session")
}

/// Presses Tab until the keyboard is on what begins with these words.
fn tab_to(h: &mut Window, words: &str) {
    let mut seen = Vec::new();
    for _ in 0..120 {
        let now = focused(h);
        if now.starts_with(words) {
            return;
        }
        seen.push(now);
        key(h, Key::Tab);
    }
    panic!("no way by Tab to {words}: {seen:?}");
}

fn wait(h: &mut Window) {
    let began = Instant::now();
    let working =
        |h: &Window| matches!(h.state().bench().view().turns, Some(Arranging::Working(_)));
    while working(h) {
        h.run_ok();
        assert!(began.elapsed() < Duration::from_secs(60), "no answer comes");
        std::thread::sleep(Duration::from_millis(2));
    }
    h.run();
}

#[test]
fn turns_are_worked_out_by_keys_and_used_and_taken_back() {
    let mut h = plain();
    tab_to(&mut h, "In turns…");
    key(&mut h, Key::Enter);
    assert_eq!(focused(&h), "Back to the timetable");
    tab_to(&mut h, "Work it out");
    key(&mut h, Key::Enter);
    wait(&mut h);
    assert_eq!(focused(&h), "Use these turns");
    assert!(session(&h).turns.is_none());
    key(&mut h, Key::Enter);
    let turns = session(&h).turns.clone().expect("turns");
    assert_eq!(turns.count, 2);
    // The keyboard goes on in the table.
    assert!(focused(&h).contains("turn 1"), "{}", focused(&h));
    press(&mut h, Modifiers::COMMAND, Key::Z);
    assert!(session(&h).turns.is_none());
    tab_to(&mut h, "Back to the timetable");
    key(&mut h, Key::Enter);
    assert_eq!(focused(&h), "In turns…");
}

/// Name and id of the first participant, with the places.
fn first(h: &Window) -> (ParticipantId, Vec<Option<SlotId>>) {
    let view = h.state().bench().view();
    let who = view.boards[0].0;
    let turns = session(h).turns.as_ref().expect("turns");
    (who, turns.of(who))
}

fn name(h: &Window, who: ParticipantId) -> String {
    let club = h.state().bench().view().club;
    club.participant(who).expect("someone").name.clone()
}

fn open(h: &mut Window) {
    tab_to(h, "In turns…");
    key(h, Key::Enter);
}

#[test]
fn a_place_is_moved_by_a_key_and_by_the_menu_and_by_the_mouse() {
    let mut h = wave();
    open(&mut h);
    let (who, before) = first(&h);
    let name = name(&h, who);
    tab_to(&mut h, &name);
    press(&mut h, Modifiers::ALT, Key::ArrowRight);
    let swapped = vec![before[1], before[0], before[2]];
    assert_eq!(first(&h).1, swapped);
    assert!(focused(&h).starts_with(&name) && focused(&h).contains("turn 2"));
    press(&mut h, Modifiers::COMMAND, Key::Z);
    assert_eq!(first(&h).1, before);
    // Arrow keys go from place to place without moving anything.
    key(&mut h, Key::ArrowDown);
    assert!(!focused(&h).starts_with(&name), "{}", focused(&h));
    key(&mut h, Key::ArrowUp);
    assert!(focused(&h).starts_with(&name), "{}", focused(&h));
    assert_eq!(first(&h).1, before);
    // By the menu.
    let turn = |h: &Window, n: usize| {
        let begins = format!("turn {n},");
        let all = h.query_all_by(|node| {
            let label = node.label().unwrap_or_default();
            label.starts_with(&name) && label.contains(&begins)
        });
        all.into_iter().next().expect("a place").rect().center()
    };
    let at = turn(&h, 1);
    h.drag_at(at);
    h.step();
    h.drop_at(at);
    h.run();
    let item = middle(&h, "Move to turn 3");
    h.drag_at(item);
    h.step();
    h.drop_at(item);
    h.run();
    assert_eq!(first(&h).1, [before[2], before[1], before[0]]);
    press(&mut h, Modifiers::COMMAND, Key::Z);
    // By the mouse.
    let (from, to) = (turn(&h, 1), turn(&h, 2));
    drag(&mut h, from, to);
    assert_eq!(first(&h).1, swapped);
}

#[test]
fn a_place_is_held_by_a_key_and_let_go_by_the_menu() {
    let mut h = wave();
    open(&mut h);
    let (who, before) = first(&h);
    let name = name(&h, who);
    tab_to(&mut h, &name);
    key(&mut h, Key::H);
    let slot = before[0].expect("a station");
    let held = |h: &Window| session(h).turns.as_ref().expect("turns").holds(who, slot);
    assert!(held(&h));
    assert!(
        focused(&h).ends_with("held in this turn"),
        "{}",
        focused(&h)
    );
    // Nothing changes places with it.
    key(&mut h, Key::ArrowRight);
    press(&mut h, Modifiers::ALT, Key::ArrowLeft);
    assert_eq!(first(&h).1, before);
    key(&mut h, Key::ArrowLeft);
    // The menu closes by Escape, and the keyboard is where it was.
    key(&mut h, Key::Enter);
    middle(&h, "Let it go from turn 1");
    key(&mut h, Key::Escape);
    assert!(
        focused(&h).ends_with("held in this turn"),
        "{}",
        focused(&h)
    );
    key(&mut h, Key::Enter);
    let item = middle(&h, "Let it go from turn 1");
    h.drag_at(item);
    h.step();
    h.drop_at(item);
    h.run();
    assert!(!held(&h));
    press(&mut h, Modifiers::COMMAND, Key::Z);
    assert!(held(&h));
}

/// Puts the first participant into the water when four others are there.
fn fifth(bench: &mut Workbench) {
    let id = choose(bench);
    let view = bench.view();
    let (session, who) = (view.session.expect("a session"), view.boards[0].0);
    let places = session.turns.as_ref().expect("turns").of(who);
    let wet = |s: &&Option<SlotId>| {
        let row = s.and_then(|s| session.slot(s));
        row.is_some_and(|r| view.club.in_water(r.activity))
    };
    let wet = places.iter().find(wet).copied().flatten();
    let there = |s: &Option<SlotId>| *s == wet;
    let turn = places.iter().position(there).map_or(0, |t| 1 - t.min(1));
    let edit = TurnsEdit::Place(who, turn, wet.expect("water"));
    drop(bench.handle(Command::Edit(Edit::Turns(id, edit))));
}

#[test]
fn findings_about_turns_stand_above_the_table() {
    let mut h = window_with(LARGE, fifth);
    open(&mut h);
    let found = h.query_all_by(|n| {
        let says = n.label().or(n.value()).unwrap_or_default();
        says.contains("are in the water and four people are free")
    });
    assert_eq!(found.count(), 1);
}

#[test]
fn a_look_is_written_down_by_keys_and_thunder_is_heard() {
    let mut h = wave();
    h.state_mut().state_mut().session.pane = Pane::TheDay;
    h.run();
    let label = Look::Waves.label();
    let before = session(&h).today.looks.len();
    tab_to(&mut h, &format!("Looked now: {label}"));
    key(&mut h, Key::Enter);
    tab_to(&mut h, "Who looked");
    press(&mut h, Modifiers::COMMAND, Key::A);
    type_words(&mut h, "Gesa");
    key(&mut h, Key::Tab);
    assert_eq!(focused(&h), "When");
    type_words(&mut h, "9:41");
    key(&mut h, Key::Tab);
    type_words(&mut h, "low, long");
    tab_to(&mut h, "Write it down");
    key(&mut h, Key::Enter);
    let looks = &session(&h).today.looks;
    assert_eq!(looks.len(), before + 1);
    let last = looks.last().expect("a look");
    assert_eq!((last.look, last.at), (Look::Waves, time(9, 41, 0, 0)));
    assert_eq!(
        (last.by.as_str(), last.seen.as_str()),
        ("Gesa", "low, long")
    );
    assert_eq!(focused(&h), format!("Looked now: {label}"));
    tab_to(&mut h, "Thunder heard at");
    type_words(&mut h, "10:12");
    key(&mut h, Key::Enter);
    assert!(session(&h).today.thunder.contains(&time(10, 12, 0, 0)));
    let until = h.query_all_by(|n| {
        let says = n.label().or(n.value()).unwrap_or_default();
        says.contains("until 10:42 at the earliest")
    });
    assert_eq!(until.count(), 1);
}

#[test]
fn turns_and_looks_come_to_rest_in_every_size_of_window() {
    for size in [LARGE, Vec2::new(683.0, 384.0), Vec2::new(1920.0, 1080.0)] {
        let mut h = window_with(size, |bench| {
            choose(bench);
        });
        h.state_mut().state_mut().session.pane = Pane::TheDay;
        h.run();
        h.state_mut().state_mut().session.pane = Pane::Timetable;
        h.run();
        open(&mut h);
        tab_to(&mut h, "Other rows");
        key(&mut h, Key::Enter);
        key(&mut h, Key::Escape);
    }
}
