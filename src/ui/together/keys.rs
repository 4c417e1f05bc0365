//! Keys and switches: on and back with the arrows, a switch wired as the space bar or Enter.

use egui::{Event, Key, Modifiers, Ui};

use super::cards::{Presses, id};
use super::scan::Switch;
use super::{Scene, Target, TogetherState};
use crate::ui::regions;
use crate::workbench::command::{GoingThrough, Scanning};

/// Reads the keys of a frame.
pub fn read(
    ui: &Ui,
    (going, mirrored): (GoingThrough, bool),
    state: &mut TogetherState,
    targets: &[Target],
    presses: &mut Presses,
) {
    // A key that is held, or a switch that sticks, counts once.
    ui.input_mut(|i| {
        i.events.retain(|e| {
            !matches!(
                e,
                Event::Key {
                    repeat: true,
                    pressed: true,
                    ..
                }
            )
        });
    });
    let pressed = |key| ui.input_mut(|i| i.consume_key(Modifiers::NONE, key));
    if going.scanning != Scanning::Off {
        switches(ui, going, state, targets, presses);
    }
    if state.card.is_some() && ui.input(|i| i.key_pressed(Key::Escape)) {
        presses.pressed.push(Target::Close);
        return;
    }
    let open = state.card.is_some();
    let several = |t: &Target| matches!(t, Target::Option(_) | Target::Answer(_));
    let choosing = targets.iter().any(|t| matches!(t, Target::Option(_)));
    // Where there is more than one thing to take, the arrows go from one to the other.
    let arrows = !open && !targets.iter().any(several);
    let (onward, backward) = match mirrored {
        false => (Key::ArrowRight, Key::ArrowLeft),
        true => (Key::ArrowLeft, Key::ArrowRight),
    };
    if !arrows && !open {
        let forth = pressed(onward) || pressed(Key::ArrowDown);
        let back = pressed(backward) || pressed(Key::ArrowUp);
        if forth != back {
            go_round(ui, targets, forth);
        }
    }
    let on = pressed(Key::PageDown) || arrows && (pressed(onward) || pressed(Key::ArrowDown));
    if on {
        // A choice that is left open is passed by, not made.
        let way = if choosing {
            Some(Target::Now)
        } else {
            first(targets)
        };
        presses.pressed.extend(way.filter(|_| !open));
    }
    let back = pressed(Key::PageUp)
        || pressed(Key::Backspace)
        || arrows && (pressed(backward) || pressed(Key::ArrowUp));
    if back && !open {
        go_back(state, targets, presses);
    }
}

/// From one thing to take to the next, round and round; from elsewhere to the first. Nobody gets from
/// a choice to a card that asks for something by one arrow too many.
fn go_round(ui: &Ui, targets: &[Target], forth: bool) {
    let several = |t: &&Target| matches!(t, Target::Option(_) | Target::Answer(_));
    let all: Vec<Target> = targets.iter().filter(several).copied().collect();
    let here = ui.memory(egui::Memory::focused);
    let at = all.iter().position(|t| here == Some(id(*t)));
    let n = all.len().max(1);
    let next = match (at, forth) {
        (Some(i), true) => (i + 1) % n,
        (Some(i), false) => (i + n - 1) % n,
        (None, _) => 0,
    };
    if let Some(next) = all.get(next) {
        // The toolkit would go one further by the same press where nothing had the keyboard.
        ui.memory_mut(|m| {
            m.move_focus(egui::FocusDirection::None);
            m.request_focus(id(*next));
        });
    }
}

fn first(targets: &[Target]) -> Option<Target> {
    let onward = |t: &&Target| matches!(t, Target::Now | Target::On);
    targets.iter().find(onward).copied()
}

fn go_back(state: &mut TogetherState, targets: &[Target], presses: &mut Presses) {
    match &mut state.scene {
        Scene::Day => {
            let back = targets.contains(&Target::Back).then_some(Target::Back);
            presses.pressed.extend(back);
        }
        Scene::Practise(p) => drop(p.back()),
        Scene::Asking(a) => drop(a.back()),
        Scene::Wait(_) => {}
    }
}

/// Space and Enter are the switches; they are used up.
fn switches(
    ui: &Ui,
    going: GoingThrough,
    state: &mut TogetherState,
    targets: &[Target],
    presses: &mut Presses,
) {
    let pressed = |key| ui.input_mut(|i| i.count_and_consume_key(Modifiers::NONE, key));
    let (one, other) = (pressed(Key::Space), pressed(Key::Enter));
    let all = std::iter::repeat_n(Switch::On, one).chain(std::iter::repeat_n(Switch::Take, other));
    for switch in all {
        let taken = state.scan.press(switch, going.scanning, targets.len());
        presses
            .pressed
            .extend(taken.and_then(|i| targets.get(i)).copied());
        ui.ctx().request_repaint();
    }
}

/// A question that was answered takes the keyboard along: it does not lie on the same answer to the
/// next.
pub fn leave_answer(ui: &Ui, given: Target) {
    if matches!(given, Target::Answer(_)) {
        ui.memory_mut(|m| m.surrender_focus(id(given)));
    }
}

/// The keyboard is always on something of this view; the arrows do what this view says and do not
/// wander.
pub fn keep_focus(ui: &Ui, targets: &[Target], scanning: bool) {
    let focused = ui.memory(egui::Memory::focused);
    match (focused, targets.first()) {
        // Nobody asks for help, or answers, by a press that was meant for nothing.
        (None, Some(Target::Card(_) | Target::Answer(_))) => {}
        (None, Some(first)) if !scanning => ui.memory_mut(|m| m.request_focus(id(*first))),
        (Some(at), _) => regions::keep_arrows(ui, at),
        _ => {}
    }
}
