//! What someone does who presses, clicks, drags and types at random, and how it is done to the window.

use daystrand::ui::app::App;
use daystrand::workbench::Workbench;
use daystrand::workbench::command::Command;
use egui::accesskit::Role;
use egui::{Event, Key, Modifiers, MouseWheelSource, MouseWheelUnit, Pos2, TouchPhase, Vec2};
use egui_kittest::kittest::{NodeT as _, Queryable as _};
use egui_kittest::{Harness, Node};

use super::dice::Dice;

/// Everything that happens on this window, and a little beyond it.
pub const SIZE: Vec2 = Vec2::new(1366.0, 768.0);

/// One thing done.
#[derive(Clone, Debug)]
pub enum Act {
    /// A key with others held.
    Press(Modifiers, Key),
    /// Words typed.
    Type(&'static str),
    /// A click, or two, with keys held.
    Click(Modifiers, Pos2, bool),
    /// From one place to another, with others held.
    Drag(Modifiers, Pos2, Pos2),
    /// A click on one of what a screen reader finds, counted round.
    On(usize, bool),
    /// From one of them to another.
    DragOn(Modifiers, usize, usize),
    /// The wheel.
    Scroll(Vec2),
    /// Escape held, as one leaves what two go through together; Cancel, where a picture is drawn.
    Leave,
    /// Another size of the window's words, by so many steps.
    Zoom(bool),
}

const PLAIN: [Key; 30] = [
    Key::ArrowLeft,
    Key::ArrowRight,
    Key::ArrowUp,
    Key::ArrowDown,
    Key::Enter,
    Key::Space,
    Key::Tab,
    Key::Tab,
    Key::Tab,
    Key::Escape,
    Key::Delete,
    Key::Backspace,
    Key::Home,
    Key::End,
    Key::PageUp,
    Key::PageDown,
    Key::F1,
    Key::F2,
    Key::F4,
    Key::F5,
    Key::F6,
    Key::F6,
    Key::A,
    Key::C,
    Key::G,
    Key::H,
    Key::I,
    Key::P,
    Key::R,
    Key::T,
];

const WITH_CTRL: [Key; 17] = [
    Key::Num1,
    Key::Num2,
    Key::Num3,
    Key::Num4,
    Key::Num5,
    Key::Z,
    Key::Z,
    Key::Y,
    Key::F,
    Key::G,
    Key::K,
    Key::H,
    Key::D,
    Key::A,
    Key::PageDown,
    Key::PageUp,
    Key::S,
];

const WORDS: [&str; 10] = [
    "dig",
    "Ada, Bo, Cy",
    "2027-06-12",
    "09:15",
    "12",
    "سباحة",
    "🏊‍♀️ e\u{301}",
    "   ",
    "a very long line of words that fits nowhere at all and goes on and on and on",
    "0",
];

fn point(dice: &mut Dice) -> Pos2 {
    let part = |dice: &mut Dice, side: f32| dice.below(side as usize + 20) as f32 - 10.0;
    Pos2::new(part(dice, SIZE.x), part(dice, SIZE.y))
}

/// The next thing someone does.
pub fn next(dice: &mut Dice) -> Act {
    let held = [
        Modifiers::NONE,
        Modifiers::SHIFT,
        Modifiers::COMMAND,
        Modifiers::ALT,
    ];
    match dice.below(100) {
        0..26 => Act::Press(Modifiers::NONE, *dice.one(&PLAIN)),
        26..36 => Act::Press(Modifiers::COMMAND, *dice.one(&WITH_CTRL)),
        36..40 => Act::Press(*dice.one(&held), *dice.one(&PLAIN)),
        40..48 => Act::Type(WORDS[dice.below(WORDS.len())]),
        48..54 => Act::Click(Modifiers::NONE, point(dice), dice.below(8) == 0),
        54..72 => Act::On(dice.below(1000), dice.below(8) == 0),
        72..76 => Act::Click(*dice.one(&held), point(dice), false),
        76..80 => Act::Drag(*dice.one(&held), point(dice), point(dice)),
        80..92 => Act::DragOn(*dice.one(&held), dice.below(1000), dice.below(1000)),
        92..95 => Act::Scroll(Vec2::new(0.0, dice.below(400) as f32 - 200.0)),
        95..99 => Act::Leave,
        _ => Act::Zoom(dice.below(2) == 0),
    }
}

/// Does it. What would touch the disk is put away at once.
pub fn perform(window: &mut Harness<'_, App>, act: &Act) {
    match act {
        Act::Press(held, key) => {
            window.key_press_modifiers(*held, *key);
        }
        Act::Type(words) => window.event(Event::Text((*words).into())),
        Act::Click(held, at, twice) => {
            window.event(Event::ModifiersChanged(*held));
            click(window, *at, *twice);
            window.event(Event::ModifiersChanged(Modifiers::NONE));
        }
        Act::On(n, twice) => click(window, place(window, *n), *twice),
        Act::Drag(held, from, to) => drag(window, *held, (*from, *to)),
        Act::DragOn(held, from, to) => {
            let way = (place(window, *from), place(window, *to));
            drag(window, *held, way);
        }
        Act::Scroll(by) => window.event(Event::MouseWheel {
            unit: MouseWheelUnit::Point,
            delta: *by,
            source: MouseWheelSource::Wheel,
            phase: TouchPhase::Move,
            modifiers: Modifiers::NONE,
        }),
        Act::Leave => {
            window.key_down(Key::Escape);
            window.run_steps(8);
            window.key_up(Key::Escape);
            // A card may lie over it with one of its own: the last is on top.
            let away = window.query_all_by_label("Cancel").last();
            if let Some(at) = away.map(|n| n.rect().center()) {
                click(window, at, false);
            }
        }
        Act::Zoom(in_) => {
            let key = if *in_ { Key::Plus } else { Key::Minus };
            window.key_press_modifiers(Modifiers::COMMAND, key);
        }
    }
    window.run_steps(2);
    keep_tame(window);
}

fn click(window: &Harness<'_, App>, at: Pos2, twice: bool) {
    for _ in 0..1 + u8::from(twice) {
        window.drag_at(at);
        window.drop_at(at);
    }
}

fn drag(window: &Harness<'_, App>, held: Modifiers, (from, to): (Pos2, Pos2)) {
    window.event(Event::ModifiersChanged(held));
    window.drag_at(from);
    window.hover_at(from + (to - from) * 0.5);
    window.hover_at(to);
    window.drop_at(to);
    window.event(Event::ModifiersChanged(Modifiers::NONE));
}

/// What can be pressed.
const PRESSED: [Role; 9] = [
    Role::Button,
    Role::CheckBox,
    Role::ComboBox,
    Role::ListBoxOption,
    Role::ListItem,
    Role::MultilineTextInput,
    Role::RadioButton,
    Role::Tab,
    Role::TextInput,
];

/// The middle of the n-th of them.
fn place(window: &Harness<'_, App>, n: usize) -> Pos2 {
    let pressed = |n: &Node<'_>| PRESSED.contains(&n.accesskit_node().role());
    let all: Vec<Pos2> = window
        .root()
        .children_recursive()
        .filter(pressed)
        .map(|n| n.rect().center())
        .collect();
    all.get(n % all.len().max(1)).copied().unwrap_or_default()
}

/// No card that asks for a file stays, so that nothing is written or opened.
fn keep_tame(window: &mut Harness<'_, App>) {
    window.state_mut().state_mut().dialog = None;
}

fn demo() -> Workbench {
    let mut bench = Workbench::new(jiff::civil::date(2027, 6, 10));
    drop(bench.handle(Command::Demo));
    bench
}

/// The demo club in a window.
pub fn window() -> Harness<'static, App> {
    Harness::builder()
        .with_size(SIZE)
        // Letters that no font has are drawn as boxes here, as they are in the window itself.
        .allow_missing_glyphs()
        .with_max_steps(60)
        .with_context_setup(App::prepare)
        .build_ui_state(
            |ui, app: &mut App| {
                app.logic(ui.ctx());
                app.show(ui);
            },
            App::new(demo()),
        )
}

/// Whether the window would begin to speak, and is better made anew.
pub fn speaks(window: &Harness<'_, App>) -> bool {
    window.state().bench().view().together.voice
}

/// Another window on the demo, in the toolkit that was used all along.
pub fn begin_anew(window: &mut Harness<'_, App>) {
    *window.state_mut() = App::new(demo());
    window.run_steps(6);
}

/// Where someone is, in a word.
pub fn place_now(window: &mut Harness<'_, App>) -> String {
    let place = window.state().bench().view().place.label();
    let people = window.state().bench().view().club.participants.len();
    let state = window.state_mut().state_mut();
    let over = match (state.together.is_some(), state.drawing.is_some()) {
        (true, _) => "going through together",
        (_, true) => "drawing",
        _ => place,
    };
    format!("{over}, {people} people")
}
