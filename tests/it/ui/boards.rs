//! A board changed by keys alone and by mouse alone.

use daystrand::model::board::StepState;
use daystrand::workbench::command::Place;
use egui::{Key, Modifiers, Vec2};
use egui_kittest::kittest::Queryable as _;

use super::{at, drag, focused, key, labels, middle, press, type_words};

/// The step that is chosen.
fn chosen(h: &egui_kittest::Harness<'_, daystrand::ui::app::App>) -> Option<String> {
    let view = h.state().bench().view();
    let (board, step) = (view.board()?, view.step?);
    Some(board.steps[board.position(step)?].label.clone())
}

#[test]
fn by_keys_alone_a_step_is_moved_relabelled_taken_off_and_all_is_undone() {
    let mut h = at(Place::Boards);
    let before = labels(&h);
    for _ in 0..8 {
        if focused(&h).contains("step 1 of") {
            break;
        }
        key(&mut h, Key::F6);
    }
    assert!(
        focused(&h).contains(", step 1 of"),
        "F6 reaches the strand: {}",
        focused(&h)
    );
    key(&mut h, Key::ArrowRight);
    assert_eq!(chosen(&h).as_deref(), Some(before[1].as_str()));

    press(&mut h, Modifiers::ALT, Key::ArrowRight);
    let moved = labels(&h);
    assert_eq!((&moved[1], &moved[2]), (&before[2], &before[1]));
    assert!(
        focused(&h).starts_with(&before[1]),
        "the keyboard stays on the step"
    );

    key(&mut h, Key::F2);
    press(&mut h, Modifiers::COMMAND, Key::A);
    type_words(&mut h, "Round seats");
    key(&mut h, Key::Enter);
    assert_eq!(labels(&h)[2], "Round seats");
    assert!(
        focused(&h).starts_with("Round seats"),
        "back on the step: {}",
        focused(&h)
    );

    key(&mut h, Key::Delete);
    let view = h.state().bench().view();
    assert_eq!(
        view.board().expect("a board").steps[2].state,
        StepState::NotToday
    );

    for _ in 0..3 {
        press(&mut h, Modifiers::COMMAND, Key::Z);
    }
    assert_eq!(labels(&h), before);
    assert_eq!(h.state().bench().view().undo, None);
    press(&mut h, Modifiers::COMMAND | Modifiers::SHIFT, Key::Z);
    assert_eq!(labels(&h), moved);
}

#[test]
fn a_symbol_is_found_by_word_and_added_after_the_chosen_step() {
    let mut h = at(Place::Boards);
    let before = labels(&h);
    h.click_on(&format!("{}, step 3", before[2]));
    press(&mut h, Modifiers::COMMAND, Key::F);
    assert_eq!(focused(&h), "Look for a symbol");
    type_words(&mut h, "toilet");
    key(&mut h, Key::Enter);
    assert!(
        focused(&h).starts_with("Toilet, symbol 1 of"),
        "{}",
        focused(&h)
    );
    key(&mut h, Key::Enter);
    let after = labels(&h);
    assert_eq!(after.len(), before.len() + 1);
    assert_eq!(after[3], "Toilet");
    assert!(
        focused(&h).starts_with("Toilet, symbol"),
        "the keyboard stays in the tray"
    );
}

#[test]
fn a_symbol_is_swapped_in_with_r() {
    let mut h = at(Place::Boards);
    let before = labels(&h);
    h.click_on(&format!("{}, step 4", before[3]));
    key(&mut h, Key::R);
    assert_eq!(focused(&h), "Look for a symbol");
    type_words(&mut h, "drum");
    key(&mut h, Key::Enter);
    key(&mut h, Key::Enter);
    let view = h.state().bench().view();
    let step = &view.board().expect("a board").steps[3];
    assert_eq!(
        step.state,
        StepState::Swapped {
            instead_of: before[3].clone()
        }
    );
    assert_eq!(step.label, "Drum");
}

#[test]
fn escape_drops_words_that_were_typed() {
    let mut h = at(Place::Boards);
    let before = labels(&h);
    h.click_on(&format!("{}, step 1", before[0]));
    key(&mut h, Key::F2);
    type_words(&mut h, "xyz");
    key(&mut h, Key::Escape);
    assert_eq!(labels(&h), before);
    assert_eq!(h.state().bench().view().undo, None);
}

#[test]
fn by_mouse_a_symbol_is_dragged_up_a_step_along_and_off() {
    let mut h = at(Place::Boards);
    let before = labels(&h);
    let (from, to) = (
        middle(&h, "Circle, symbol"),
        middle(&h, &format!("{}, step 3", before[2])),
    );
    drag(&mut h, from, to);
    let added = labels(&h);
    assert_eq!(added.len(), before.len() + 1);
    assert_eq!(added[2], "Circle");

    let (from, to) = (
        middle(&h, "Circle, own step, step 3"),
        middle(&h, &format!("{}, step 1", before[0])),
    );
    drag(&mut h, from, to);
    assert_eq!(labels(&h)[0], "Circle");

    let from = middle(&h, "Circle, own step, step 1");
    let off = middle(&h, "Look for a symbol") + Vec2::new(0.0, 60.0);
    drag(&mut h, from, off);
    assert_eq!(labels(&h), before);
}

#[test]
fn a_step_of_the_timetable_dragged_off_stays_as_not_today() {
    let mut h = at(Place::Boards);
    let before = labels(&h);
    let from = middle(&h, &format!("{}, step 2", before[1]));
    let off = middle(&h, "Look for a symbol") + Vec2::new(0.0, 60.0);
    drag(&mut h, from, off);
    let view = h.state().bench().view();
    let step = &view.board().expect("a board").steps[1];
    assert_eq!(
        (step.label.as_str(), &step.state),
        (before[1].as_str(), &StepState::NotToday)
    );
}

#[test]
fn a_drag_let_go_with_escape_changes_nothing() {
    let mut h = at(Place::Boards);
    let before = labels(&h);
    let from = middle(&h, &format!("{}, step 1", before[0]));
    h.drag_at(from);
    h.step();
    h.hover_at(from + Vec2::new(300.0, 10.0));
    h.step();
    key(&mut h, Key::Escape);
    h.drop_at(from + Vec2::new(300.0, 10.0));
    h.run();
    assert_eq!(labels(&h), before);
}

#[test]
fn the_whole_group_opens_the_board_of_a_row() {
    let mut h = at(Place::Boards);
    press(&mut h, Modifiers::COMMAND, Key::G);
    let view = h.state().bench().view();
    let last = view.boards[3].0;
    let name = view
        .club
        .participant(last)
        .expect("a participant")
        .name
        .clone();
    let row = middle(&h, &format!("{name}, "));
    h.drag_at(row);
    h.step();
    h.drop_at(row);
    h.run();
    assert_eq!(
        h.state().bench().view().participant.map(|p| p.id),
        Some(last)
    );
    assert!(
        middle(&h, "Look for a symbol").y > 600.0,
        "one board is shown again"
    );
}

/// Clicking by name, for tests that go on by keys.
trait Click {
    fn click_on(&mut self, name: &str);
}

impl Click for egui_kittest::Harness<'_, daystrand::ui::app::App> {
    fn click_on(&mut self, name: &str) {
        let at = middle(self, name);
        self.drag_at(at);
        self.step();
        self.drop_at(at);
        self.run();
    }
}

/// Whose board it is stays to be seen beside all that can be done with a step, in words where there
/// is room and as signs where there is not.
#[test]
fn what_can_be_done_with_a_step_leaves_room_for_whose_board_it_is() {
    for (width, in_words) in [
        (1400.0, true),
        (1280.0, false),
        (1024.0, false),
        (900.0, false),
    ] {
        let mut h = super::window_of(Vec2::new(width, 768.0));
        press(&mut h, Modifiers::COMMAND, Key::Num3);
        let third = middle(&h, &format!("{}, step 3", labels(&h)[2]));
        super::click_at(&mut h, third);
        press(&mut h, Modifiers::ALT, Key::ArrowRight);
        let rect = |name| super::place_of(&h, name);
        let (all, words, back) = (rect("Whole group"), rect("Words"), rect("As timetable"));
        let name = words.left() - all.right();
        assert!(name > 44.0 + 80.0, "{width}: {name} for mark and name");
        assert!(back.right() < rect("All dry today").left(), "{width}");
        assert_eq!(words.width() > 60.0, in_words, "{width}");
    }
}

/// What is always different for a participant is not of tonight: there is nothing to take back, only
/// the group's own to be done for once.
#[test]
fn back_to_the_timetable_is_offered_only_for_what_was_changed_tonight() {
    let mut h = super::window_of(Vec2::new(1600.0, 768.0));
    press(&mut h, Modifiers::COMMAND, Key::Num3);
    super::click(&mut h, "Noor");
    let drum = labels(&h).iter().position(|l| l == "Drum").unwrap();
    let at = middle(&h, "Drum, instead of Song, step ");
    super::click_at(&mut h, at);
    assert!(h.query_by_label("With the group").is_some());
    assert!(h.query_by_label("As timetable").is_none());
    press(&mut h, Modifiers::ALT, Key::ArrowRight);
    assert!(h.query_by_label("As timetable").is_some());
    super::click(&mut h, "As timetable");
    assert_eq!(labels(&h)[drum], "Drum");
    assert!(h.query_by_label("As timetable").is_none());
}
