//! Several steps at once, steps that stand there once more, and steps for someone else.

use daystrand::model::board::StepState;
use daystrand::model::ids::ParticipantId;
use daystrand::workbench::command::Place;
use egui::{Event, Key, Modifiers, PointerButton, Pos2, TouchDeviceId, TouchId, TouchPhase, Vec2};
use egui_kittest::kittest::Queryable as _;

use super::{at, click, drag, focused, holding, key, labels, middle, press};

type Window = egui_kittest::Harness<'static, daystrand::ui::app::App>;

/// Somewhere that is no board.
fn beside(h: &Window) -> Pos2 {
    middle(h, "Look for a symbol") + Vec2::new(0.0, 60.0)
}

fn step(h: &Window, n: usize) -> Pos2 {
    middle(h, &format!("{}, step {}", labels(h)[n], n + 1))
}

/// What the boards of all say, by participant.
fn boards(h: &Window) -> Vec<(ParticipantId, Vec<String>)> {
    let view = h.state().bench().view();
    let all = view.boards.iter();
    all.map(|(who, b)| (*who, b.steps.iter().map(|s| s.label.clone()).collect()))
        .collect()
}

/// What the participant of a board is called.
fn name(h: &Window, board: usize) -> String {
    let view = h.state().bench().view();
    let person = view.club.participant(view.boards[board].0);
    person.expect("there").name.clone()
}

/// A place of the table, by what it is called.
fn cell(h: &Window, label: &str, who: &str) -> Pos2 {
    let here = |l: String| l.starts_with(&format!("{label}, ")) && l.ends_with(who);
    let found = h
        .query_all_by(|n| n.label().is_some_and(here))
        .next()
        .map(|n| n.rect().center());
    found.unwrap_or_else(|| panic!("{label} of {who}"))
}

fn undo(h: &Window) -> Option<String> {
    h.state().bench().view().undo.map(str::to_owned)
}

#[test]
fn by_keys_several_steps_are_chosen_moved_and_taken_off_as_one_change() {
    let mut h = at(Place::Boards);
    let before = labels(&h);
    let first = step(&h, 0);
    super::click_at(&mut h, first);
    press(&mut h, Modifiers::SHIFT, Key::ArrowRight);
    assert!(focused(&h).starts_with(&before[1]), "{}", focused(&h));
    press(&mut h, Modifiers::ALT, Key::ArrowRight);
    let moved = labels(&h);
    assert_eq!(moved[0], before[2]);
    assert_eq!(&moved[1..3], &before[0..2], "they stay together");
    let name = undo(&h).expect("a change");
    assert!(
        name.starts_with(&format!("Move {} and 1 more for", before[0])),
        "{name}"
    );

    key(&mut h, Key::Delete);
    let off = |h: &Window| {
        let view = h.state().bench().view();
        let steps = &view.board().expect("a board").steps;
        steps
            .iter()
            .filter(|s| s.state == StepState::NotToday)
            .count()
    };
    assert_eq!(off(&h), 2);
    press(&mut h, Modifiers::COMMAND, Key::Z);
    assert_eq!(off(&h), 0, "one change was both");
    press(&mut h, Modifiers::COMMAND, Key::Z);
    assert_eq!(labels(&h), before);
}

#[test]
fn escape_leaves_one_step_chosen_and_all_can_be_chosen() {
    let mut h = at(Place::Boards);
    let before = labels(&h);
    let first = step(&h, 1);
    super::click_at(&mut h, first);
    press(&mut h, Modifiers::COMMAND, Key::A);
    key(&mut h, Key::Escape);
    assert!(focused(&h).starts_with(&before[1]), "{}", focused(&h));
    press(&mut h, Modifiers::ALT, Key::ArrowLeft);
    let after = labels(&h);
    assert_eq!((&after[0], &after[1]), (&before[1], &before[0]));
}

#[test]
fn by_mouse_steps_chosen_with_ctrl_are_dragged_together() {
    let mut h = at(Place::Boards);
    let before = labels(&h);
    let (one, other) = (step(&h, 0), step(&h, 2));
    super::click_at(&mut h, one);
    holding(&mut h, Modifiers::COMMAND, |h| super::click_at(h, other));
    let to = step(&h, 4);
    drag(&mut h, one, to);
    let after = labels(&h);
    let at = after.iter().position(|l| *l == before[0]).expect("there");
    assert_eq!(after[at + 1], before[2], "{after:?}");
    assert_eq!(after.len(), before.len());
    assert_eq!(after[0], before[1]);
    press(&mut h, Modifiers::COMMAND, Key::Z);
    assert_eq!(labels(&h), before, "one change");
}

#[test]
fn with_shift_a_click_chooses_all_between() {
    let mut h = at(Place::Boards);
    let before = labels(&h);
    let (one, other) = (step(&h, 1), step(&h, 3));
    super::click_at(&mut h, one);
    holding(&mut h, Modifiers::SHIFT, |h| super::click_at(h, other));
    let off = beside(&h);
    drag(&mut h, other, off);
    let view = h.state().bench().view();
    let steps = &view.board().expect("a board").steps;
    let not_today = |s: &&daystrand::model::board::Step| s.state == StepState::NotToday;
    let off: Vec<String> = steps
        .iter()
        .filter(not_today)
        .map(|s| s.label.clone())
        .collect();
    assert_eq!(off, before[1..4]);
}

#[test]
fn with_ctrl_a_step_that_is_dragged_stands_there_once_more() {
    let mut h = at(Place::Boards);
    let before = labels(&h);
    let (from, to) = (step(&h, 0), step(&h, 3));
    holding(&mut h, Modifiers::COMMAND, |h| drag(h, from, to));
    let after = labels(&h);
    assert_eq!(after.len(), before.len() + 1);
    assert_eq!((&after[0], &after[3]), (&before[0], &before[0]));
    let view = h.state().bench().view();
    assert_eq!(
        view.board().expect("a board").steps[3].state,
        StepState::Own
    );
    let name = undo(&h).expect("a change");
    assert!(name.contains("once more for"), "{name}");

    // Let go beside the board, nothing is copied and nothing is lost.
    let (from, off) = (step(&h, 1), beside(&h));
    holding(&mut h, Modifiers::COMMAND, |h| drag(h, from, off));
    assert_eq!(labels(&h), after);
}

#[test]
fn a_step_let_go_on_a_name_is_for_them_too() {
    let mut h = at(Place::Boards);
    let before = boards(&h);
    let other = h.state().bench().view().boards[2].0;
    let view = h.state().bench().view();
    let name = view.club.participant(other).expect("there").name.clone();
    let from = middle(&h, "Circle, symbol");
    let to = step(&h, 1);
    drag(&mut h, from, to);
    let from = middle(&h, "Circle, own step, step 2");
    let to = middle(&h, &format!("{name}, "));
    drag(&mut h, from, to);
    let after = boards(&h);
    assert_eq!(after[2].1.len(), before[2].1.len() + 1);
    assert_eq!(after[2].1[1], "Circle", "in the same place");
    assert_eq!(after[0].1[1], "Circle", "and it stays");
    let undone = undo(&h).expect("a change");
    assert_eq!(undone, format!("Circle for {name} too"));

    // With Shift it goes over.
    press(&mut h, Modifiers::COMMAND, Key::Z);
    let chosen = h.state().bench().view().participant.map(|p| p.name.clone());
    assert_ne!(chosen.as_deref(), Some(&*name));
    let from = middle(&h, "Circle, own step, step 2");
    holding(&mut h, Modifiers::SHIFT, |h| drag(h, from, to));
    let after = boards(&h);
    assert_eq!(after[0].1, before[0].1);
    assert_eq!(after[2].1[1], "Circle");
}

#[test]
fn steps_are_copied_and_pasted_on_another_board() {
    let mut h = at(Place::Boards);
    let before = labels(&h);
    let first = step(&h, 0);
    super::click_at(&mut h, first);
    press(&mut h, Modifiers::SHIFT, Key::ArrowRight);
    h.event(Event::Copy);
    h.run();
    press(&mut h, Modifiers::COMMAND, Key::PageDown);
    let theirs = labels(&h);
    let words = format!("{}, {}", before[0], before[1]);
    h.event(Event::Paste("something else".into()));
    h.run();
    assert_eq!(labels(&h), theirs, "only what was copied here comes");
    h.event(Event::Paste(words));
    h.run();
    let after = labels(&h);
    assert_eq!(after.len(), theirs.len() + 2);
    let own = after.windows(2).any(|w| w == &before[0..2]);
    assert!(own, "{after:?}");
}

#[test]
fn in_the_table_a_step_goes_to_another_row() {
    let mut h = at(Place::Boards);
    let from = middle(&h, "Circle, symbol");
    let to = step(&h, 1);
    drag(&mut h, from, to);
    press(&mut h, Modifiers::COMMAND, Key::G);
    let before = boards(&h);
    let from = middle(&h, &format!("Circle, own step, {}", name(&h, 0)));
    let to = middle(&h, &format!("{}, ", name(&h, 1)));
    drag(&mut h, from, to);
    let after = boards(&h);
    assert_eq!(after[1].1.last().map(String::as_str), Some("Circle"));
    assert_eq!(after[0].1, before[0].1, "it stays");
    press(&mut h, Modifiers::COMMAND, Key::Z);
    assert_eq!(boards(&h), before);
}

#[test]
fn in_the_table_a_choice_goes_to_the_same_row_of_another() {
    let mut h = at(Place::Boards);
    press(&mut h, Modifiers::COMMAND, Key::G);
    let choice = |h: &Window, who: usize| {
        let view = h.state().bench().view();
        let steps = &view.boards[who].1.steps;
        let step = steps.iter().find(|s| !s.options.is_empty());
        step.map(|s| (s.label.clone(), s.options.clone()))
    };
    let (label, options) = choice(&h, 0).expect("the demo has a choice there");
    assert_eq!(choice(&h, 3), None);
    let other = name(&h, 3);
    let from = h
        .query_all_by(|n| {
            n.label()
                .is_some_and(|l| l.starts_with(&format!("{label}, choice")))
        })
        .next()
        .expect("its place")
        .rect()
        .center();
    let to = cell(&h, &label, &other);
    drag(&mut h, from, to);
    assert_eq!(choice(&h, 3), Some((label, options)));
    let done = undo(&h).expect("a change");
    assert!(done.ends_with(&format!("for {other} too")), "{done}");
    press(&mut h, Modifiers::COMMAND, Key::Z);
    assert_eq!(choice(&h, 3), None);
}

#[test]
fn with_a_finger_a_symbol_is_dragged_up() {
    let mut h = at(Place::Boards);
    let before = labels(&h);
    let (from, to) = (middle(&h, "Circle, symbol"), step(&h, 2));
    // As a window system tells of a finger: touches, and the pointer that follows the first of them.
    let touch = |phase, pos| Event::Touch {
        device_id: TouchDeviceId(1),
        id: TouchId(1),
        phase,
        pos,
        force: None,
    };
    let button = |pos, pressed| Event::PointerButton {
        pos,
        button: PointerButton::Primary,
        pressed,
        modifiers: Modifiers::NONE,
    };
    let frame = |h: &mut Window, events: Vec<Event>| {
        h.input_mut().events.extend(events);
        h.step();
    };
    let down = vec![
        touch(TouchPhase::Start, from),
        Event::PointerMoved(from),
        button(from, true),
    ];
    frame(&mut h, down);
    for part in [0.1, 0.4, 0.7, 1.0] {
        let at = from + (to - from) * part;
        frame(
            &mut h,
            vec![touch(TouchPhase::Move, at), Event::PointerMoved(at)],
        );
    }
    let up = vec![
        touch(TouchPhase::End, to),
        button(to, false),
        Event::PointerGone,
    ];
    frame(&mut h, up);
    h.run();
    let after = labels(&h);
    assert_eq!(after.len(), before.len() + 1);
    assert_eq!(after[2], "Circle");
}

#[test]
fn with_ctrl_a_row_of_the_timetable_stands_there_once_more() {
    let mut h = at(Place::Session);
    let rows = |h: &Window| {
        let view = h.state().bench().view();
        let rows = &view.session.expect("a session").timetable;
        rows.iter().map(|r| r.activity).collect::<Vec<_>>()
    };
    let before = rows(&h);
    let label = {
        let view = h.state().bench().view();
        view.club.activity(before[0]).expect("there").label.clone()
    };
    let from = middle(&h, &format!("{label} "));
    let to = from + Vec2::new(0.0, 150.0);
    holding(&mut h, Modifiers::COMMAND, |h| drag(h, from, to));
    let after = rows(&h);
    assert_eq!(after.len(), before.len() + 1);
    assert_eq!(after[0], before[0]);
    assert_eq!(after.iter().filter(|a| **a == before[0]).count(), 2);
}

#[test]
fn a_plain_click_chooses_one_alone_again() {
    let mut h = at(Place::Boards);
    let (one, other) = (step(&h, 0), step(&h, 2));
    super::click_at(&mut h, one);
    holding(&mut h, Modifiers::COMMAND, |h| super::click_at(h, other));
    super::click_at(&mut h, one);
    click(&mut h, "Not today");
    let view = h.state().bench().view();
    let steps = &view.board().expect("a board").steps;
    let off = steps.iter().filter(|s| s.state == StepState::NotToday);
    assert_eq!(off.count(), 1);
}

#[test]
fn what_is_let_go_where_it_cannot_be_slides_back() {
    let mut h = at(Place::Boards);
    let before = labels(&h);
    // From the symbols onto the menu, where nothing comes of it.
    let (from, to) = (middle(&h, "Circle, symbol"), middle(&h, "Menu"));
    h.drag_at(from);
    h.step();
    for part in [0.3, 0.7, 1.0] {
        h.hover_at(from + (to - from) * part);
        h.step();
    }
    h.drop_at(to);
    h.run();
    assert_eq!(labels(&h), before);
    assert_eq!(undo(&h), None);
    let resting = |h: &Window| h.output().shapes.len();
    let shapes = resting(&h);
    h.run();
    assert_eq!(resting(&h), shapes, "it has come to rest");
}

#[test]
fn with_shift_between_two_cards_a_symbol_is_not_lost_without_a_word() {
    let mut h = at(Place::Boards);
    let before = labels(&h);
    let from = middle(&h, "Circle, symbol");
    let between = step(&h, 0).lerp(step(&h, 1), 0.5);
    let mut seen = 0;
    holding(&mut h, Modifiers::SHIFT, |h| {
        h.drag_at(from);
        h.step();
        for part in [0.3, 0.7, 1.0] {
            h.hover_at(from + (between - from) * part);
            h.step();
        }
        h.event(Event::PointerButton {
            pos: between,
            button: PointerButton::Primary,
            pressed: false,
            modifiers: Modifiers::SHIFT,
        });
        h.step();
        seen = h.output().shapes.len();
    });
    let rests = h.output().shapes.len();
    assert!(seen > rests, "it was seen on its way back: {seen}, {rests}");
    assert_eq!(labels(&h), before);
    assert_eq!(undo(&h), None);
}

#[test]
fn in_the_table_several_steps_of_a_row_are_chosen_moved_and_given() {
    let mut h = at(Place::Boards);
    press(&mut h, Modifiers::COMMAND, Key::G);
    let before = boards(&h);
    let (me, other) = (name(&h, 3), name(&h, 1));
    let mine = before[3].1.clone();
    let first = cell(&h, &mine[0], &me);
    super::click_at(&mut h, first);
    press(&mut h, Modifiers::SHIFT, Key::ArrowRight);
    press(&mut h, Modifiers::ALT, Key::ArrowRight);
    let moved = boards(&h)[3].1.clone();
    assert_eq!(moved[0], mine[2]);
    assert_eq!(&moved[1..3], &mine[0..2], "they stay together");

    // Both are dragged behind another step of the row, in one change.
    press(&mut h, Modifiers::COMMAND, Key::Z);
    let (from, to) = (cell(&h, &mine[0], &me), cell(&h, &mine[3], &me));
    drag(&mut h, from, to);
    let moved = boards(&h)[3].1.clone();
    assert_eq!(moved[..2], mine[2..4]);
    assert_eq!(moved[2..4], mine[0..2]);
    press(&mut h, Modifiers::COMMAND, Key::Z);
    assert_eq!(boards(&h), before);

    // And given to someone else, with a click and Ctrl.
    let (first, third) = (cell(&h, &mine[0], &me), cell(&h, &mine[2], &me));
    super::click_at(&mut h, first);
    holding(&mut h, Modifiers::COMMAND, |h| super::click_at(h, third));
    let to = middle(&h, &format!("{other}, "));
    let from = cell(&h, &mine[0], &me);
    drag(&mut h, from, to);
    let after = boards(&h);
    assert_eq!(after[3], before[3], "they stay");
    let n = before[1].1.len();
    assert_eq!(after[1].1[..n], before[1].1[..]);
    assert_eq!(after[1].1[n..], [mine[0].clone(), mine[2].clone()]);
}

#[test]
fn in_the_table_what_is_let_go_on_itself_stays() {
    let mut h = at(Place::Boards);
    press(&mut h, Modifiers::COMMAND, Key::G);
    let before = boards(&h);
    let me = name(&h, 3);
    let from = cell(&h, &before[3].1[1], &me);
    drag(&mut h, from, from + Vec2::new(9.0, 4.0));
    assert_eq!(boards(&h), before);
    assert_eq!(undo(&h), None);
}
