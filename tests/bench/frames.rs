//! Frame time of the Boards place without painting, with the demo's eight participants and with 200,
//! at rest and while the mouse moves over the cards. `cargo bench --bench frames` prints a table.

use std::time::{Duration, Instant};

use daystrand::model::edit::Edit;
use daystrand::ui::app::App;
use daystrand::workbench::Workbench;
use daystrand::workbench::command::{Command, Place};
use egui::{Event, Pos2, Vec2};
use egui_kittest::Harness;
use jiff::civil::date;

const FRAMES: usize = 200;

fn main() {
    println!(
        "{:>7} {:>14} {:>14} {:>14}",
        "people", "rest ms", "moving ms", "worst ms"
    );
    for people in [8, 200] {
        let mut window = window(people);
        let rest = frames(&mut window, |_, _| {});
        let moving = frames(&mut window, |w, i| {
            let at = Pos2::new(250.0 + (i * 5) as f32, 200.0 + (i % 50) as f32 * 6.0);
            w.event(Event::PointerMoved(at));
        });
        println!(
            "{people:>7} {:>14.2} {:>14.2} {:>14.2}",
            millis(middle(&rest)),
            millis(middle(&moving)),
            millis(*moving.last().unwrap_or(&Duration::ZERO)),
        );
    }
}

/// The demo club with so many participants, at Boards, at the size the window opens in.
fn window(people: usize) -> Harness<'static, App> {
    let mut bench = Workbench::new(date(2027, 6, 10));
    drop(bench.handle(Command::Demo));
    let pattern = bench.view().club.participants.clone();
    for i in pattern.len()..people {
        let one = pattern[i % pattern.len()].as_ref().clone();
        drop(bench.handle(Command::Edit(Edit::AddParticipant(one))));
    }
    assert_eq!(bench.view().club.participants.len(), people);
    drop(bench.handle(Command::Show(Place::Boards)));
    let mut window = Harness::builder()
        .with_size(Vec2::new(1366.0, 768.0))
        .with_max_steps(60)
        .with_context_setup(App::prepare)
        .build_ui_state(
            |ui, app: &mut App| {
                app.logic(ui.ctx());
                app.show(ui);
            },
            App::new(bench),
        );
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
