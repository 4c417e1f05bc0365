//! Frame time of the Boards place without painting, one board and the whole group, with the demo's
//! eight participants, with 40 and with 200: at rest, while the mouse moves over the cards, while
//! rows are scrolled, and while a symbol is dragged over them; then the first frame of the window,
//! and every place: come to, changed in (an edit undone), and at rest. `cargo bench --bench frames` prints tables.

use std::time::{Duration, Instant};

use daystrand::model::edit::Edit;
use daystrand::ui::actions::Action;
use daystrand::ui::app::App;
use daystrand::workbench::Workbench;
use daystrand::workbench::command::{Command, Place};
use egui::{Event, Modifiers, MouseWheelSource, MouseWheelUnit, Pos2, TouchPhase, Ui, Vec2};
use egui_kittest::Harness;
use jiff::civil::date;

const FRAMES: usize = 200;

fn main() {
    println!(
        "{:>7} {:>6} {:>10} {:>10} {:>10} {:>10} {:>10}",
        "people", "view", "rest ms", "moving ms", "scroll ms", "drag ms", "worst ms"
    );
    let counts = [8, 40, 200];
    for (people, group) in [false, true]
        .into_iter()
        .flat_map(|g| counts.map(|n| (n, g)))
    {
        let mut window = window(people);
        window.state_mut().state_mut().boards.group = group;
        window.run();
        let rest = frames(&mut window, |_, _| {});
        let moving = frames(&mut window, |w, i| w.event(Event::PointerMoved(over(i))));
        let scroll = frames(&mut window, |w, i| {
            let down = if i < FRAMES / 2 { -40.0 } else { 40.0 };
            w.event(Event::MouseWheel {
                unit: MouseWheelUnit::Point,
                delta: Vec2::new(0.0, down),
                source: MouseWheelSource::Wheel,
                phase: TouchPhase::Move,
                modifiers: Modifiers::NONE,
            });
        });
        // From the symbols below onto the rows, and about among them.
        window.drag_at(Pos2::new(420.0, 680.0));
        window.step();
        let drag = frames(&mut window, |w, i| w.event(Event::PointerMoved(over(i))));
        let worst = [&moving, &scroll, &drag].map(|t| t.last().copied().unwrap_or_default());
        println!(
            "{people:>7} {:>6} {:>10.2} {:>10.2} {:>10.2} {:>10.2} {:>10.2}",
            if group { "group" } else { "one" },
            millis(middle(&rest)),
            millis(middle(&moving)),
            millis(middle(&scroll)),
            millis(middle(&drag)),
            millis(worst.into_iter().max().unwrap_or_default()),
        );
    }
    println!("\n{:>7} {:>10} {:>10}", "people", "first ms", "second ms");
    for people in counts {
        let (first, second) = opening(people);
        println!(
            "{people:>7} {:>10.1} {:>10.1}",
            millis(first),
            millis(second)
        );
    }
    println!(
        "\n{:>7} {:>10} {:>10} {:>10} {:>10}",
        "people", "place", "come ms", "edit ms", "rest ms"
    );
    for people in counts {
        let mut window = window(people);
        for place in Place::ALL {
            let come = after(&mut window, Action::Go(place));
            let edit = after(&mut window, Action::Undo);
            after(&mut window, Action::Redo);
            let rest = frames(&mut window, |_, _| {});
            println!(
                "{people:>7} {:>10} {:>10.2} {:>10.2} {:>10.2}",
                place.label(),
                millis(come),
                millis(edit),
                millis(middle(&rest))
            );
        }
    }
}

/// What one waits after an action: that itself and the slowest of the frames after it.
fn after(window: &mut Harness<'_, App>, action: Action) -> Duration {
    let ctx = window.ctx.clone();
    let began = Instant::now();
    window.state_mut().act(&ctx, action);
    window.step();
    let first = began.elapsed();
    let frame = |_| {
        let began = Instant::now();
        window.step();
        began.elapsed()
    };
    (0..20).map(frame).max().unwrap_or_default().max(first)
}

/// How long the first frame of a window takes, fonts and all, and the one after it.
fn opening(people: usize) -> (Duration, Duration) {
    let bench = bench(people);
    let began = Instant::now();
    let mut window = Harness::builder()
        .with_size(Vec2::new(1366.0, 768.0))
        .with_context_setup(App::prepare)
        .with_max_steps(1)
        .build_ui_state(frame, App::new(bench));
    let first = began.elapsed();
    let began = Instant::now();
    window.step();
    (first, began.elapsed())
}

fn frame(ui: &mut Ui, app: &mut App) {
    app.logic(ui.ctx());
    app.show(ui);
}

/// Where the mouse is in a frame.
fn over(i: usize) -> Pos2 {
    Pos2::new(250.0 + (i * 5) as f32, 300.0 + (i % 50) as f32 * 6.0)
}

/// The demo club with so many participants, at Boards.
fn bench(people: usize) -> Workbench {
    let mut bench = Workbench::new(date(2027, 6, 10));
    drop(bench.handle(Command::Demo));
    let pattern = bench.view().club.participants.clone();
    for i in pattern.len()..people {
        let one = pattern[i % pattern.len()].as_ref().clone();
        drop(bench.handle(Command::Edit(Edit::AddParticipant(one))));
    }
    assert_eq!(bench.view().club.participants.len(), people);
    drop(bench.handle(Command::Edit(Edit::ClubName("Reed Bay".into()))));
    drop(bench.handle(Command::Show(Place::Boards)));
    bench
}

/// The same in a window of the size it opens in.
fn window(people: usize) -> Harness<'static, App> {
    let mut window = Harness::builder()
        .with_size(Vec2::new(1366.0, 768.0))
        .with_max_steps(60)
        .with_context_setup(App::prepare)
        .build_ui_state(frame, App::new(bench(people)));
    window.run();
    window
}

/// The times of single frames, shortest first.
fn frames(
    window: &mut Harness<'_, App>,
    mut before: impl FnMut(&mut Harness<'_, App>, usize),
) -> Vec<Duration> {
    let mut times: Vec<Duration> = (0..FRAMES)
        .map(|i| {
            before(window, i);
            let began = Instant::now();
            window.step();
            began.elapsed()
        })
        .collect();
    times.sort();
    times
}

fn middle(times: &[Duration]) -> Duration {
    times[times.len() / 2]
}

fn millis(time: Duration) -> f64 {
    time.as_secs_f64() * 1000.0
}
