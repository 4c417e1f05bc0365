//! The window without a display: driven by keys and mouse events, read through what a screen
//! reader reads, painted in software.

mod boards;
mod certificates;
mod dragging;
mod drawing;
mod evening;
mod find;
mod group;
mod help;
mod looks;
mod making;
mod painter;
mod people;
mod pictures;
mod places;
mod season;
mod songs;
mod sort;
mod story;
mod together;
mod turns;
mod wandering;
mod water;

use daystrand::model::edit::Edit;
use daystrand::model::ids::PictureId;
use daystrand::ui::app::App;
use daystrand::ui::start::StartState;
use daystrand::workbench::Workbench;
use daystrand::workbench::command::{Command, Place};
use egui::{Event, Key, Modifiers, Pos2, Rect, Vec2};
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT as _, Queryable};
use jiff::civil::date;

/// The demo club in a window of a size.
fn window_of(size: Vec2) -> Harness<'static, App> {
    window_with(size, |_| {})
}

/// The same, with something done to it before the window opens.
fn window_with(size: Vec2, prepare: impl FnOnce(&mut Workbench)) -> Harness<'static, App> {
    let mut bench = demo();
    prepare(&mut bench);
    window_on(bench, size)
}

/// The demo club, without a word about it.
fn demo() -> Workbench {
    let mut bench = Workbench::new(date(2027, 6, 10));
    drop(bench.handle(Command::Demo));
    drop(bench.handle(Command::DismissNotice));
    bench
}

/// Takes away the picture that a child of the demo club drew.
pub fn no_pictures(bench: &mut Workbench) {
    let all: Vec<PictureId> = bench.club().pictures.iter().map(|p| p.id).collect();
    for id in all {
        drop(bench.handle(Command::Edit(Edit::RemovePicture(id))));
    }
    drop(bench.handle(Command::DismissNotice));
}

/// A workbench in a window of a size.
fn window_on(bench: Workbench, size: Vec2) -> Harness<'static, App> {
    let mut harness = Harness::builder()
        .with_size(size)
        .with_max_steps(40)
        .with_context_setup(App::prepare)
        .renderer(painter::Painter::default())
        .build_ui_state(
            |ui, app: &mut App| {
                app.logic(ui.ctx());
                app.show(ui);
            },
            App::new(bench),
        );
    harness.run();
    harness
}

/// The demo club in the window as it opens.
fn window() -> Harness<'static, App> {
    window_of(Vec2::new(1366.0, 768.0))
}

/// The demo club at a place.
fn at(place: Place) -> Harness<'static, App> {
    let mut h = window();
    let digit = [Key::Num1, Key::Num2, Key::Num3, Key::Num4, Key::Num5][place as usize];
    press(&mut h, Modifiers::COMMAND, digit);
    assert_eq!(h.state().bench().view().place, place);
    h
}

fn press(h: &mut Harness<'_, App>, modifiers: Modifiers, key: Key) {
    h.key_press_modifiers(modifiers, key);
    h.run();
}

fn key(h: &mut Harness<'_, App>, key: Key) {
    press(h, Modifiers::NONE, key);
}

/// Does something while keys are held.
fn holding(
    h: &mut Harness<'static, App>,
    keys: Modifiers,
    then: impl FnOnce(&mut Harness<'static, App>),
) {
    h.event(Event::ModifiersChanged(keys));
    h.step();
    then(h);
    h.event(Event::ModifiersChanged(Modifiers::NONE));
    h.run();
}

fn type_words(h: &mut Harness<'_, App>, words: &str) {
    h.event(Event::Text(words.into()));
    h.run();
}

/// A program that was just started, on its first page.
fn first_page(size: Vec2) -> Harness<'static, App> {
    let mut h = window_on(Workbench::new(date(2027, 6, 10)), size);
    h.state_mut().state_mut().start = Some(StartState::default());
    h.run();
    h
}

/// What has the keyboard, by the name a screen reader says.
fn focused(h: &Harness<'_, App>) -> String {
    let node = h.root().children_recursive().find(|n| n.is_focused());
    node.and_then(|n| n.accesskit_node().label())
        .unwrap_or_default()
}

/// The labels of the chosen board, in order.
fn labels(h: &Harness<'_, App>) -> Vec<String> {
    let view = h.state().bench().view();
    let board = view.board().expect("a board");
    board.steps.iter().map(|s| s.label.clone()).collect()
}

/// The middle of what carries exactly this name, or else a name beginning so.
fn middle(h: &Harness<'_, App>, name: &str) -> Pos2 {
    place_of(h, name).center()
}

/// Where it is.
fn place_of(h: &Harness<'_, App>, name: &str) -> Rect {
    let exact = h
        .query_all_by(|n| n.label().is_some_and(|l| l == name))
        .next();
    let begins = || {
        h.query_all_by(|n| n.label().is_some_and(|l| l.starts_with(name)))
            .next()
    };
    let node = exact.or_else(begins);
    node.unwrap_or_else(|| panic!("nothing is called {name}…"))
        .rect()
}

/// Presses with the mouse in the middle of what is called so (see [`middle`]).
fn click(h: &mut Harness<'_, App>, name: &str) {
    let at = middle(h, name);
    click_at(h, at);
}

/// Presses with the mouse at a point.
fn click_at(h: &mut Harness<'_, App>, at: Pos2) {
    h.drag_at(at);
    h.step();
    h.drop_at(at);
    h.run();
}

/// Drags with the mouse through some points.
fn drag(h: &mut Harness<'_, App>, from: Pos2, to: Pos2) {
    h.drag_at(from);
    h.step();
    for part in [0.2, 0.5, 0.8, 1.0] {
        h.hover_at(from + (to - from) * part);
        h.step();
    }
    h.run_ok();
    h.drop_at(to);
    h.run();
}
