//! A whole evening by keys alone, from the first page to files in a folder; and the ways through it:
//! the next thing, the list of what was done, the one field for everything.

use std::path::Path;
use std::time::Duration;

use daystrand::model::board::StepState;
use daystrand::ui::app::App;
use daystrand::workbench::command::{Command, Place, Theme};
use egui::{Event, Key, Modifiers, Vec2};
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT as _, Queryable};

use super::{
    click, drag, first_page, focused, key, labels, middle, press, type_words, window_with,
};

const SIZE: Vec2 = Vec2::new(1366.0, 768.0);

/// Hands that do nothing but press keys and type, and are counted.
struct Hands {
    window: Harness<'static, App>,
    actions: u32,
}

impl Hands {
    fn press(&mut self, modifiers: Modifiers, key: Key) {
        press(&mut self.window, modifiers, key);
        self.actions += 1;
    }

    fn key(&mut self, key: Key) {
        self.press(Modifiers::NONE, key);
    }

    /// Something typed in one go is one action, as it is for whoever counts an evening's work.
    fn types(&mut self, words: &str) {
        type_words(&mut self.window, words);
        self.actions += 1;
    }

    /// F6 until the keyboard is on something that is called so.
    fn goes_to(&mut self, name: &str) {
        for _ in 0..12 {
            if focused(&self.window).contains(name) {
                return;
            }
            self.key(Key::F6);
        }
        panic!("F6 never reaches {name}, only {}", focused(&self.window));
    }
}

const NAMES: &str = "Ada, Bo, Cy, Dee, Eli, Fay, Gus, Hal, Ivy, Jo, Kim, Lou";

#[test]
fn a_whole_evening_by_keys_alone_takes_at_most_forty_actions() {
    let dir = tempfile::tempdir().unwrap();
    let mut hands = Hands {
        window: first_page(SIZE),
        actions: 0,
    };
    assert_eq!(focused(&hands.window), "What the club is called");
    hands.types("Pebble Cove");
    hands.key(Key::Tab);
    hands.types(NAMES);
    hands.key(Key::Tab);
    hands.types("12.6.2027");
    hands.key(Key::Tab);
    assert_eq!(focused(&hands.window), "Begin");
    hands.key(Key::Enter);
    let view = hands.window.state().bench().view();
    assert_eq!(view.club.participants.len(), 12);
    assert_eq!(view.boards.len(), 12);
    assert_eq!(view.session.unwrap().timetable.len(), 8);

    // A swap on each of three boards, a step of their own on the last, and one thing not today.
    hands.press(Modifiers::COMMAND, Key::Num3);
    for _ in 0..2 {
        swap(&mut hands);
        hands.press(Modifiers::COMMAND, Key::PageDown);
    }
    swap(&mut hands);
    hands.key(Key::ArrowRight);
    hands.key(Key::Delete);
    hands.press(Modifiers::COMMAND, Key::F);
    hands.types("snack");
    hands.key(Key::Enter);
    hands.key(Key::Enter);
    assert_eq!(labels(&hands.window).len(), 9, "an own step");
    let board = |h: &Hands| h.window.state().bench().view().board().unwrap().clone();
    let steps = board(&hands).steps;
    assert!(steps.iter().any(|s| s.state == StepState::NotToday));

    // Into a file, and onto paper.
    hands.press(Modifiers::COMMAND, Key::S);
    let file = dir.path().join("cove.daystrand");
    replaced(&mut hands, &file);
    assert!(!hands.window.state().bench().view().modified);
    hands.press(Modifiers::COMMAND, Key::P);
    assert_eq!(hands.window.state().bench().view().place, Place::Print);
    let folder = dir.path().join("sheets");
    replaced(&mut hands, &folder);
    written(&mut hands.window);
    let files = std::fs::read_dir(&folder).unwrap().count();
    assert!(files > 40, "{files} files");
    println!("An evening by keys: {} actions.", hands.actions);
    assert!(hands.actions <= 40, "{} actions", hands.actions);
}

/// The third step of the board that is shown, swapped for a drum.
fn swap(hands: &mut Hands) {
    hands.goes_to("step ");
    hands.key(Key::R);
    hands.types("drum");
    hands.key(Key::Enter);
    hands.key(Key::Enter);
    assert!(labels(&hands.window).contains(&"Drum".to_owned()));
}

/// Hands that press with the mouse, drag and type, and are counted; the keyboard only writes words.
struct Mouse {
    window: Harness<'static, App>,
    actions: u32,
}

impl Mouse {
    fn click(&mut self, name: &str) {
        click(&mut self.window, name);
        self.actions += 1;
    }

    fn types(&mut self, words: &str) {
        type_words(&mut self.window, words);
        self.actions += 1;
    }

    /// From what is called one way onto what is called another, with keys held.
    fn drags(&mut self, held: Modifiers, from: &str, to: &str) {
        let way = (middle(&self.window, from), middle(&self.window, to));
        self.window.event(Event::ModifiersChanged(held));
        self.window.step();
        drag(&mut self.window, way.0, way.1);
        self.window.event(Event::ModifiersChanged(Modifiers::NONE));
        self.window.run();
        self.actions += 1;
    }

    fn label(&self, step: usize) -> String {
        format!("{}, step {}", labels(&self.window)[step], step + 1)
    }

    /// The path that is suggested, replaced by another, and on with it.
    fn replaces(&mut self, path: &Path, on: &str) {
        press(&mut self.window, Modifiers::COMMAND, Key::A);
        self.types(&path.display().to_string());
        self.click(on);
        self.actions += 1;
    }
}

#[test]
fn a_whole_evening_by_mouse_takes_at_most_forty_actions() {
    let dir = tempfile::tempdir().unwrap();
    let mut hands = Mouse {
        window: first_page(SIZE),
        actions: 0,
    };
    hands.types("Pebble Cove");
    hands.click("First names, with commas between");
    hands.types(NAMES);
    hands.click("Day of the next session");
    hands.types("12.6.2027");
    hands.click("Begin");
    assert_eq!(hands.window.state().bench().view().boards.len(), 12);

    // A swap on each of three boards, a step of their own on the last, and one thing not today.
    hands.click("Boards");
    for name in ["Ada, ", "Bo, ", "Cy, "] {
        hands.click(name);
        let third = hands.label(2);
        hands.drags(Modifiers::SHIFT, "Drum, symbol", &third);
        assert!(labels(&hands.window).contains(&"Drum".to_owned()));
    }
    let fourth = hands.label(3);
    hands.drags(Modifiers::NONE, &fourth, "Look for a symbol");
    hands.click("Look for a symbol");
    hands.types("snack");
    let first = hands.label(0);
    hands.drags(Modifiers::NONE, "Snack, symbol", &first);
    assert_eq!(labels(&hands.window).len(), 9, "an own step");
    let view = hands.window.state().bench().view();
    let steps = &view.board().unwrap().steps;
    assert!(steps.iter().any(|s| s.state == StepState::NotToday));

    // Into a file, and onto paper.
    let saves = hands
        .window
        .query_all_by(|n| n.label().is_some_and(|l| l.ends_with(". Save")));
    let at = saves.last().unwrap();
    let name = at.accesskit_node().label().unwrap();
    hands.click(&name);
    hands.replaces(&dir.path().join("cove.daystrand"), "Save");
    assert!(!hands.window.state().bench().view().modified);
    hands.click("Print");
    hands.click("Write");
    let folder = dir.path().join("sheets");
    hands.replaces(&folder, "Write");
    written(&mut hands.window);
    let files = std::fs::read_dir(&folder).unwrap().count();
    assert!(files > 40, "{files} files");
    println!("An evening by mouse: {} actions.", hands.actions);
    assert!(hands.actions <= 40, "{} actions", hands.actions);
}

/// The path that is suggested, replaced by another, and on with it.
fn replaced(hands: &mut Hands, path: &Path) {
    press(&mut hands.window, Modifiers::COMMAND, Key::A);
    hands.types(&path.display().to_string());
    hands.key(Key::Enter);
}

fn written(h: &mut Harness<'_, App>) {
    for _ in 0..2400 {
        if h.state().bench().view().written {
            return;
        }
        std::thread::sleep(Duration::from_millis(25));
        h.run_ok();
    }
    panic!("nothing was written: {:?}", h.state().bench().view().notice);
}

#[test]
fn the_next_thing_leads_through_the_evening() {
    let mut h = first_page(SIZE);
    type_words(&mut h, "Pebble Cove");
    click(&mut h, "Begin");
    // Nobody takes part yet.
    click(&mut h, "Next: Add who takes part");
    assert_eq!(h.state().bench().view().place, Place::People);
    let mut h = window_with(SIZE, |_| {});
    let open = h.state().bench().view().findings.len();
    let mut seen = Vec::new();
    for _ in 0..open + 4 {
        let next = h.get_by(|n| n.label().is_some_and(|l| l.starts_with("Next: ")));
        seen.push(next.accesskit_node().label().unwrap_or_default());
        if seen.last().is_some_and(|s| s.contains("Save")) {
            break;
        }
        key(&mut h, Key::F4);
    }
    let last = seen.last().unwrap();
    assert_eq!(last, "Next: Save the club", "{seen:?}");
    assert!(seen.len() > 2 && seen[0].contains("to settle"), "{seen:?}");
}

#[test]
fn what_was_done_is_gone_back_to_and_forth() {
    let mut h = window_with(SIZE, |bench| {
        for name in ["One", "Two", "Three"] {
            let edit = daystrand::model::edit::Edit::ClubName(name.into());
            drop(bench.handle(Command::Edit(edit)));
            // Another field in between, so that each is a change of its own.
            drop(bench.handle(Command::DismissNotice));
        }
    });
    let name = |h: &Harness<'_, App>| h.state().bench().view().club.name.clone();
    press(&mut h, Modifiers::COMMAND, Key::H);
    click(&mut h, "As it was opened");
    assert_eq!(name(&h), "Reedwater Paddle and Play");
    let redo = h.query_all_by(|n| n.label().is_some_and(|l| l.contains(", taken back, ")));
    assert_eq!(redo.count(), 3);
    let rows = h.query_all_by(|n| n.label().is_some_and(|l| l.contains(", 1 of 4")));
    let first = rows.last().unwrap().accesskit_node().label().unwrap();
    click(&mut h, &first);
    assert_eq!(name(&h), "Three");
    key(&mut h, Key::Escape);
    assert!(!h.state_mut().state_mut().past);
}

#[test]
fn one_field_finds_people_commands_activities_and_symbols() {
    let mut h = window_with(SIZE, |_| {});
    let find = |h: &mut Harness<'static, App>, words: &str| {
        press(h, Modifiers::COMMAND, Key::K);
        type_words(h, words);
        key(h, Key::Enter);
        assert!(h.state_mut().state_mut().seek.is_none());
    };
    find(&mut h, "jonas");
    let view = h.state().bench().view();
    assert_eq!(view.place, Place::Boards);
    assert_eq!(view.participant.unwrap().name, "Jonas");
    find(&mut h, "print");
    assert_eq!(h.state().bench().view().place, Place::Print);
    find(&mut h, "snack");
    assert_eq!(h.state().bench().view().place, Place::Boards);
    find(&mut h, "dark");
    assert_eq!(h.state().bench().view().theme, Theme::Dark);
    find(&mut h, "high contrast");
    assert_eq!(h.state().bench().view().theme, Theme::HighContrast);
    let before = h.state().bench().view().theme;
    press(&mut h, Modifiers::COMMAND, Key::K);
    type_words(&mut h, "qqqqqq");
    key(&mut h, Key::Enter);
    h.get_by_label("Nothing is called so. Try another word for it.");
    key(&mut h, Key::Escape);
    key(&mut h, Key::Escape);
    assert_eq!(h.state().bench().view().theme, before);
}
