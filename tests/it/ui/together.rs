//! Go through together: a whole day by keys alone, by one switch, by two; what is written down and
//! what is not; leaving only by holding; nothing that blinks.

use daystrand::model::edit::Edit;
use daystrand::model::ids::ParticipantId;
use daystrand::model::manner::{Finishing, Reach, Run};
use daystrand::model::privacy::Guarded;
use daystrand::model::record::{Answered, Record};
use daystrand::ui::app::App;
use daystrand::workbench::Workbench;
use daystrand::workbench::command::{Command, GoingThrough, Place, Scanning};
use egui::{Event, Key, Modifiers, Vec2};
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT as _, Queryable as _};

use super::people::tab_to;
use super::{click, focused, key, labels, middle, press, window_with};

type Window = Harness<'static, App>;

/// The first participant's day in full view, with something done to the club before.
fn day(size: Vec2, prepare: impl FnOnce(&mut Workbench)) -> Window {
    let mut h = window_with(size, |bench| {
        drop(bench.handle(Command::Show(Place::Boards)));
        prepare(bench);
    });
    key(&mut h, Key::F5);
    assert!(is_open(&mut h));
    h
}

fn large(prepare: impl FnOnce(&mut Workbench)) -> Window {
    day(Vec2::new(1366.0, 768.0), prepare)
}

fn is_open(h: &mut Window) -> bool {
    h.state_mut().state_mut().together.is_some()
}

fn who(bench: &Workbench) -> ParticipantId {
    bench.view().participant.expect("someone").id
}

/// Another participant, by mark, given the board in another way.
fn given(
    bench: &mut Workbench,
    mark: &str,
    change: impl FnOnce(&mut Reach, &mut Run, &mut Finishing),
) {
    let all = bench.view().club.participants.clone();
    let found = all
        .iter()
        .find(|p| p.mark.as_str() == mark)
        .expect("the mark");
    let mut next = found.as_ref().clone();
    let m = &mut next.manner;
    change(&mut m.reach, &mut m.run, &mut m.finishing);
    drop(bench.handle(Command::Edit(Edit::ChangeParticipant(next))));
    drop(bench.handle(Command::ChooseParticipant(found.id)));
}

/// What was written down about the participant in the chosen session.
fn record(h: &Window) -> Record {
    let view = h.state().bench().view();
    let who = view.participant.expect("someone").id;
    let records = &view.session.expect("a session").records;
    records
        .get(&who)
        .map(Guarded::for_owner)
        .cloned()
        .unwrap_or_default()
}

/// All that is painted.
fn seen(h: &Window) -> Vec<egui::epaint::ClippedShape> {
    h.output().shapes.clone()
}

/// Waits until scanning offers what has this name, then presses the switch.
fn take(h: &mut Window, name: &str, switch: Key) {
    for _ in 0..200 {
        let offered = |n: &egui_kittest::kittest::AccessKitNode<'_>| {
            n.is_selected() == Some(true) && n.label().is_some_and(|l| l.starts_with(name))
        };
        let found = h
            .root()
            .children_recursive()
            .any(|n| offered(&n.accesskit_node()));
        if found {
            return key(h, switch);
        }
        h.step();
    }
    panic!("{name} is never offered");
}

/// What a screen reader is told last.
fn status(h: &Window) -> String {
    let mut all = h.root().children_recursive();
    let node = all.find(|n| n.accesskit_node().role() == egui::accesskit::Role::Status);
    let node = node.expect("a status");
    node.accesskit_node().value().unwrap_or_default()
}

fn now(h: &Window) -> String {
    let said = status(h);
    let at = said.find("Now: ").map_or(0, |i| i + 5);
    said[at..].trim_end_matches('.').to_owned()
}

fn switch(h: &mut Window, scanning: Scanning, pace_ms: u32) {
    let going = GoingThrough {
        scanning,
        pace_ms,
        ..GoingThrough::default()
    };
    assert_eq!(h.state().bench().view().together, going);
}

fn scanning(scanning: Scanning, pace_ms: u32) -> impl FnOnce(&mut Workbench) {
    move |bench| {
        let going = GoingThrough {
            scanning,
            pace_ms,
            ..GoingThrough::default()
        };
        drop(bench.handle(Command::SetGoingThrough(going)));
    }
}

#[test]
fn a_whole_day_goes_forward_and_back_by_keys_alone() {
    let mut h = large(|_| {});
    let all = labels(&h);
    let choice = h
        .state()
        .bench()
        .view()
        .board()
        .expect("a board")
        .steps
        .iter()
        .position(|s| !s.options.is_empty());
    let choice = choice.expect("the demo offers a choice");
    for (i, label) in all.iter().enumerate() {
        if i == choice {
            assert!(focused(&h).starts_with("Choose "), "{}", focused(&h));
            // From one option to the next, then taken.
            key(&mut h, Key::ArrowRight);
            assert!(focused(&h).starts_with("Choose "), "{}", focused(&h));
            key(&mut h, Key::Enter);
            assert!(focused(&h).starts_with("Now: "), "{}", focused(&h));
        } else {
            assert!(
                focused(&h).starts_with(&format!("Now: {label}")),
                "{i}: {}",
                focused(&h)
            );
        }
        let onward = [
            Key::Space,
            Key::ArrowRight,
            Key::Enter,
            Key::PageDown,
            Key::ArrowDown,
        ][i % 5];
        key(&mut h, onward);
    }
    assert!(status(&h).ends_with("All finished."), "{}", status(&h));
    let picked = record(&h).picked;
    assert_eq!(picked.len(), 1);
    for (i, label) in all.iter().enumerate().rev() {
        // Among the options the arrows go from one to the next.
        let back = match i + 1 == choice {
            true => Key::Backspace,
            false => [Key::ArrowLeft, Key::Backspace, Key::PageUp, Key::ArrowUp][i % 4],
        };
        key(&mut h, back);
        if i == choice {
            assert!(
                focused(&h).starts_with("Now: "),
                "what was picked is still there"
            );
            key(&mut h, Key::PageUp);
            assert!(focused(&h).starts_with("Choose "), "{}", focused(&h));
            assert!(record(&h).picked.is_empty(), "and is open again");
        } else {
            assert!(
                focused(&h).starts_with(&format!("Now: {label}")),
                "{i}: {}",
                focused(&h)
            );
        }
    }
    assert!(is_open(&mut h), "nothing leaves by accident");
}

#[test]
fn arrows_go_round_a_choice_and_never_to_a_card_that_asks() {
    let mut h = large(|_| {});
    while !focused(&h).starts_with("Choose ") {
        key(&mut h, Key::ArrowRight);
    }
    let first = focused(&h);
    let mut seen = vec![first.clone()];
    for arrow in [Key::ArrowRight, Key::ArrowDown]
        .into_iter()
        .cycle()
        .take(20)
    {
        key(&mut h, arrow);
        let now = focused(&h);
        assert!(now.starts_with("Choose "), "{now}");
        if now == first {
            break;
        }
        seen.push(now);
    }
    assert!(seen.len() >= 4, "{seen:?}");
    key(&mut h, Key::ArrowLeft);
    assert_eq!(Some(&focused(&h)), seen.last());
    // To the cards leads the Tab key alone.
    key(&mut h, Key::Tab);
    assert!(!focused(&h).starts_with("Choose "), "{}", focused(&h));
}

#[test]
fn what_is_chosen_is_written_down_undone_and_seen_afterwards() {
    let mut h = large(|_| {});
    while !focused(&h).starts_with("Choose ") {
        key(&mut h, Key::ArrowRight);
    }
    click(&mut h, "Choose No thanks");
    let picked: Vec<String> = record(&h).picked.into_values().collect();
    assert_eq!(picked, ["No thanks"]);
    assert_eq!(status(&h), "No thanks is chosen.");
    leave_by_escape(&mut h);
    press(&mut h, Modifiers::COMMAND, Key::Num1);
    click(&mut h, "Afterwards");
    let line = h.query_all_by(|n| {
        n.value()
            .is_some_and(|v| v.starts_with("Chosen beforehand: No thanks"))
            || n.label()
                .is_some_and(|v| v.starts_with("Chosen beforehand: No thanks"))
    });
    assert_eq!(line.count(), 1);
    assert!(h.state().bench().view().undo.is_some());
    press(&mut h, Modifiers::COMMAND, Key::Z);
    assert!(record(&h).picked.is_empty());
}

fn leave_by_escape(h: &mut Window) {
    h.key_down(Key::Escape);
    for _ in 0..8 {
        h.step();
    }
    h.key_up(Key::Escape);
    h.run();
    assert!(!is_open(h));
}

#[test]
fn it_is_left_by_holding_and_by_nothing_else() {
    let mut h = large(|_| {});
    for k in [Key::Escape, Key::F5, Key::Enter, Key::Q, Key::X, Key::F4] {
        key(&mut h, k);
        assert!(is_open(&mut h), "{k:?}");
    }
    press(&mut h, Modifiers::COMMAND, Key::Num2);
    assert!(is_open(&mut h));
    click(&mut h, "Leave: hold");
    assert!(is_open(&mut h), "a click is no hold");
    h.key_down(Key::Escape);
    h.step();
    h.step();
    h.key_up(Key::Escape);
    h.run();
    assert!(is_open(&mut h), "half a second is not long enough");
    leave_by_escape(&mut h);
}

#[test]
fn letters_do_nothing_until_the_adult_opens_the_row() {
    let mut h = large(|_| {});
    let before = seen(&h);
    for k in [
        Key::S,
        Key::W,
        Key::P,
        Key::V,
        Key::N,
        Key::K,
        Key::M,
        Key::R,
    ] {
        key(&mut h, k);
    }
    assert_eq!(h.state().bench().view().together, GoingThrough::default());
    assert!(seen(&h) == before, "nothing is to be seen of it");
    key(&mut h, Key::A);
    assert_eq!(
        h.query_all_by(|n| n.label().is_some_and(|l| l == "Night, key K"))
            .count(),
        1
    );
    key(&mut h, Key::K);
    assert!(h.state().bench().view().together.night);
    key(&mut h, Key::K);
    assert!(!h.state().bench().view().together.night);
}

#[test]
fn a_key_that_is_held_finishes_one_step() {
    let mut h = large(|_| {});
    let all = labels(&h);
    for k in [Key::Space, Key::ArrowRight] {
        h.key_down(k);
        for _ in 0..12 {
            h.event(Event::Key {
                key: k,
                physical_key: None,
                pressed: true,
                repeat: true,
                modifiers: Modifiers::NONE,
            });
            h.step();
        }
        h.key_up(k);
        h.run();
    }
    assert_eq!(now(&h), all[2]);
}

#[test]
fn one_switch_goes_through_a_whole_day() {
    let mut h = large(scanning(Scanning::OneSwitch, 1000));
    switch(&mut h, Scanning::OneSwitch, 1000);
    let all = labels(&h);
    let steps = h
        .state()
        .bench()
        .view()
        .board()
        .expect("a board")
        .steps
        .clone();
    for step in &steps {
        if !step.options.is_empty() {
            let second = step.options[1].label.clone();
            take(&mut h, &format!("Choose {second}"), Key::Space);
            assert_eq!(status(&h), format!("{second} is chosen."));
        }
        take(&mut h, "Now: ", Key::Space);
    }
    assert!(
        status(&h).ends_with("All finished."),
        "{} of {all:?}",
        status(&h)
    );
    assert_eq!(record(&h).picked.len(), 1);
}

#[test]
fn one_switch_asks_for_help_and_comes_back() {
    let mut h = large(scanning(Scanning::OneSwitch, 1000));
    let all = labels(&h);
    take(&mut h, "Help", Key::Space);
    assert_eq!(status(&h), "Help");
    let shown = h.query_all_by(|n| n.label().is_some_and(|l| l == "Help: put away"));
    assert_eq!(shown.count(), 1);
    take(&mut h, "Help: put away", Key::Space);
    assert_eq!(now(&h), all[0], "the day is where it was");
}

#[test]
fn two_switches_go_on_and_take() {
    let mut h = large(scanning(Scanning::TwoSwitches, 1000));
    for _ in 0..40 {
        h.step();
    }
    key(&mut h, Key::Space);
    key(&mut h, Key::Space);
    key(&mut h, Key::Enter);
    assert_eq!(status(&h), "Stop");
    key(&mut h, Key::Enter);
    key(&mut h, Key::Enter);
    assert_eq!(now(&h), labels(&h)[1]);
}

#[test]
fn questions_are_written_down_only_when_the_adult_says_so() {
    for keep in [false, true] {
        let mut h = large(|_| {});
        key(&mut h, Key::A);
        key(&mut h, Key::Q);
        click(&mut h, "Not sure");
        key(&mut h, Key::P);
        let last = labels(&h).last().expect("one").clone();
        // Pointing: the second question's own picture, whatever it is; then on.
        let asked = status(&h);
        assert!(asked.starts_with("What comes after "), "{asked}");
        key(&mut h, Key::ArrowRight);
        key(&mut h, Key::Enter);
        assert!(status(&h).starts_with("Here it is: "), "{}", status(&h));
        key(&mut h, Key::Enter);
        key(&mut h, Key::H);
        assert_eq!(status(&h), format!("Show me: {last}"));
        click(&mut h, "Showed it");
        assert!(record(&h).answered.is_empty(), "nothing yet");
        key(&mut h, if keep { Key::R } else { Key::D });
        let answered: Vec<Answered> = record(&h).answered.into_values().collect();
        if keep {
            assert_eq!(answered.len(), 3);
            assert!(answered.contains(&Answered::NotSure));
            assert!(answered.contains(&Answered::Showed));
        } else {
            assert_eq!(answered, []);
        }
    }
}

/// Who presses once more than they meant to has not answered what comes next.
#[test]
fn no_answer_lies_ready_when_a_question_comes() {
    let mut h = large(|_| {});
    key(&mut h, Key::A);
    key(&mut h, Key::Q);
    let first = status(&h);
    for switch in [Key::Space, Key::Enter] {
        key(&mut h, switch);
        assert_eq!(status(&h), first);
    }
    key(&mut h, Key::ArrowRight);
    let answer = focused(&h);
    key(&mut h, Key::Space);
    let second = status(&h);
    assert_ne!(second, first);
    assert_eq!(focused(&h), "", "{answer} is not given twice");
    key(&mut h, Key::Space);
    assert_eq!(status(&h), second);
    key(&mut h, Key::ArrowRight);
    assert_eq!(focused(&h), answer);
}

#[test]
fn a_change_is_practised_and_the_board_stays_as_it_is() {
    let mut h = large(|_| {});
    let before = h.state().bench().view().revision;
    key(&mut h, Key::A);
    key(&mut h, Key::P);
    assert!(status(&h).starts_with("What if "), "{}", status(&h));
    key(&mut h, Key::ArrowRight);
    assert!(status(&h).starts_with("Not today: "), "{}", status(&h));
    key(&mut h, Key::Space);
    assert!(status(&h).starts_with("Instead: "), "{}", status(&h));
    key(&mut h, Key::Space);
    assert_eq!(now(&h), labels(&h)[0]);
    assert_eq!(h.state().bench().view().revision, before);
}

#[test]
fn waiting_ends_by_itself_and_then_goes_on() {
    let mut h = large(|_| {});
    key(&mut h, Key::A);
    key(&mut h, Key::W);
    key(&mut h, Key::Space);
    assert_eq!(status(&h), "Wait", "a press does not shorten it");
    // A minute of frames, and one more that was given.
    for _ in 0..200 {
        h.step();
    }
    key(&mut h, Key::M);
    for _ in 0..200 {
        h.step();
    }
    let over = |h: &Window| {
        h.query_all_by(|n| {
            n.label()
                .is_some_and(|l| l.starts_with("Waiting is finished"))
        })
        .count()
    };
    assert_eq!(over(&h), 0);
    for _ in 0..100 {
        h.step();
    }
    assert_eq!(over(&h), 1);
    key(&mut h, Key::Space);
    assert_eq!(now(&h), labels(&h)[0]);
}

#[test]
fn from_right_to_left_the_arrows_go_the_other_way() {
    let mut h = large(|b| given(b, "shell", |_, _, _| {}));
    let all = labels(&h);
    key(&mut h, Key::ArrowLeft);
    assert_eq!(now(&h), all[1]);
    key(&mut h, Key::ArrowRight);
    assert_eq!(now(&h), all[0]);
    let (card, help) = (middle(&h, "Now: "), middle(&h, "Help"));
    assert!(help.x < card.x);
}

#[test]
fn every_reach_run_and_finishing_goes_through_in_every_window() {
    let mut n = 0;
    for reach in Reach::ALL {
        for (run, finishing) in Run::ALL.into_iter().chain([Run::Down]).zip(Finishing::ALL) {
            let size = [(1366.0, 768.0), (683.0, 384.0), (640.0, 380.0)][n % 3];
            n += 1;
            let mut h = day(Vec2::from(size), |b| {
                given(b, "feather", |r, way, f| {
                    (*r, *way, *f) = (reach, run, finishing)
                });
            });
            let all = labels(&h);
            for label in &all {
                assert!(
                    now(&h).is_empty() || &now(&h) == label,
                    "{reach:?} {run:?}: {} {label}",
                    now(&h)
                );
                key(&mut h, Key::PageDown);
            }
            assert!(status(&h).ends_with("All finished."), "{}", status(&h));
            // The finished place takes the last one back.
            click(&mut h, "Take back ");
            assert_eq!(&now(&h), all.last().expect("one"));
        }
    }
}

#[test]
fn the_tab_key_comes_to_every_card_and_back() {
    let mut h = large(|_| {});
    key(&mut h, Key::ArrowRight);
    for name in [
        "Help",
        "Stop",
        "Break",
        "Toilet",
        "Quiet place",
        "Finished",
        "Take back ",
        "For the adult",
        "Leave: hold",
        "Now: ",
    ] {
        tab_to(&mut h, name);
    }
}

/// WCAG 2.2, 2.3.1 and 2.3.2: nothing flashes more than three times a second. Here nothing flashes at
/// all: as long as nobody presses anything, no two frames differ but for what scanning offers and the
/// water that sinks.
#[test]
fn nothing_blinks() {
    let mut h = day(Vec2::new(683.0, 384.0), |_| {});
    let quiet = |h: &mut Window, what: &str| {
        let first = seen(h);
        for i in 0..12 {
            h.step();
            assert!(seen(h) == first, "{what} changes in frame {i}");
        }
    };
    quiet(&mut h, "the day");
    key(&mut h, Key::ArrowRight);
    quiet(&mut h, "the day, one step on");
    click(&mut h, "Help");
    quiet(&mut h, "a large card");
    key(&mut h, Key::Escape);
    key(&mut h, Key::A);
    key(&mut h, Key::P);
    quiet(&mut h, "practising");
    key(&mut h, Key::D);
    key(&mut h, Key::Q);
    quiet(&mut h, "a question");
    key(&mut h, Key::D);
    // In a still window waiting stands still as well, but for its few steps.
    h.state_mut().state_mut().still = true;
    h.run();
    key(&mut h, Key::W);
    let mut changes = 0;
    let mut before = seen(&h);
    for _ in 0..40 {
        h.step();
        let next = seen(&h);
        changes += usize::from(next != before);
        before = next;
    }
    assert!(changes <= 2, "{changes} changes in ten seconds");
}

#[test]
fn a_question_of_the_window_is_seen_and_answered_over_it() {
    let mut h = large(|b| {
        let id = who(b);
        drop(b.handle(Command::Edit(Edit::MoveParticipant(id, 1))));
    });
    assert!(h.state().bench().view().modified);
    h.input_mut()
        .viewports
        .entry(egui::ViewportId::ROOT)
        .or_default()
        .events
        .push(egui::ViewportEvent::Close);
    h.run();
    assert!(h.state().bench().view().question.is_some());
    let before = status(&h);
    key(&mut h, Key::ArrowRight);
    assert_eq!(status(&h), before, "nothing reacts below it");
    key(&mut h, Key::Escape);
    assert!(h.state().bench().view().question.is_none());
    assert!(is_open(&mut h));
}
