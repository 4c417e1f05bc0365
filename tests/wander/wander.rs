//! A window used at random: nothing may panic, and memory may not grow. `cargo bench --bench wander -- SECONDS [SEED]`; without seconds ten of them.
//!
//! What is done comes from `acts.rs`, the same for the same seed; `cargo test` does some hundred
//! things. Every minute what is held is told, in use and with the demo opened anew: pictures
//! and glyphs that were needed once are kept, so it grows at first and then no more.

mod acts;
#[path = "../fuzz/dice.rs"]
mod dice;

use std::panic::{AssertUnwindSafe, catch_unwind};
use std::process::ExitCode;
use std::time::{Duration, Instant};

use daystrand::ui::app::App;
use egui_kittest::Harness;
use peak_alloc::PeakAlloc;

use acts::Act;
use dice::Dice;

#[global_allocator]
static MEMORY: PeakAlloc = PeakAlloc;

const ROUND: Duration = Duration::from_secs(60);
/// What takes longer is told.
const LONG: Duration = Duration::from_millis(500);

fn main() -> ExitCode {
    let numbers: Vec<u64> = std::env::args()
        .skip(1)
        .filter_map(|a| a.parse().ok())
        .collect();
    let seconds = numbers.first().copied().unwrap_or(10);
    let seed = numbers.get(1).copied().unwrap_or(1);
    let (end, mut dice) = (
        Instant::now() + Duration::from_secs(seconds),
        Dice::new(seed),
    );
    let mut window = acts::window();
    let (mut done, mut round) = (0_u64, Instant::now());
    println!(
        "{:>9} {:>10} {:>10} {:>10}",
        "done", "in use MB", "anew MB", "slowest ms"
    );
    let mut slowest = Duration::ZERO;
    while Instant::now() < end {
        let act = acts::next(&mut dice);
        let began = Instant::now();
        if !went_well(&mut window, &act) {
            println!("after {done} things, seed {seed}: {act:?}");
            return ExitCode::FAILURE;
        }
        let took = began.elapsed();
        if took > LONG {
            println!(
                "{:.1} s at {}: {act:?}",
                took.as_secs_f64(),
                acts::place_now(&mut window)
            );
        }
        slowest = slowest.max(took);
        done += 1;
        if acts::speaks(&window) {
            window = acts::window();
        }
        if round.elapsed() > ROUND || Instant::now() >= end {
            let in_use = MEMORY.current_usage_as_mb();
            acts::begin_anew(&mut window);
            let anew = MEMORY.current_usage_as_mb();
            let slowest_ms = slowest.as_secs_f64() * 1000.0;
            println!("{done:>9} {in_use:>10.1} {anew:>10.1} {slowest_ms:>10.1}");
            (round, slowest) = (Instant::now(), Duration::ZERO);
        }
    }
    ExitCode::SUCCESS
}

fn went_well(window: &mut Harness<'static, App>, act: &Act) -> bool {
    catch_unwind(AssertUnwindSafe(|| acts::perform(window, act))).is_ok()
}
