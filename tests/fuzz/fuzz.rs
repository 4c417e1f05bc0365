//! Files changed at random, brought in by the hundred thousand: nothing may panic, take more than a
//! second or more than 256 MB.
//!
//! `cargo bench --bench fuzz -- TARGET SECONDS [SEED]` with a target of `targets.rs`: `png`, `jpeg`,
//! `webp`, `svg`, `drawing`, `set`. The same start gives the same files. Without a target each runs for two seconds.
//! A file that fails is written to `target/fuzz-TARGET-NUMBER`, and the run ends with exit code 1;
//! mend the fault and put the file, made small, among the cases of `tests/it/intake`. So it is with
//! one that never comes to an end, which `watch.rs` sees.
//!
//! `mutate.rs` changes bytes, `png.rs`, `jpeg.rs`, `svg.rs`, `drawing.rs` and `sets.rs` know the
//! formats, `targets.rs` says what is read and done. `cargo test` runs a few hundred files of each target.

mod dice;
mod drawing;
mod jpeg;
mod mutate;
mod png;
mod sets;
mod svg;
mod targets;
mod watch;

use std::cell::Cell;
use std::path::PathBuf;
use std::process::ExitCode;
use std::sync::OnceLock;
use std::time::{Duration, Instant};

use peak_alloc::PeakAlloc;

use dice::Dice;
use targets::{Outcome, TARGETS, Target};
use watch::{Watch, keep};

#[global_allocator]
static MEMORY: PeakAlloc = PeakAlloc;

const LONGEST: Duration = Duration::from_secs(1);
const MOST_MEGABYTES: f32 = 256.0;
/// After so many failures the rest is likely the same fault.
const MOST_FAILURES: usize = 20;

thread_local! {
    static PANICKED: Cell<bool> = const { Cell::new(false) };
}

fn main() -> ExitCode {
    let words: Vec<String> = std::env::args()
        .skip(1)
        .filter(|a| !a.starts_with('-'))
        .collect();
    let number = |i: usize| words.get(i).and_then(|w| w.parse::<u64>().ok());
    let before = std::panic::take_hook();
    std::panic::set_hook(Box::new(move |info| {
        PANICKED.set(true);
        before(info);
    }));
    let chosen: Vec<&Target> = match words.first() {
        Some(name) => TARGETS.iter().filter(|t| t.name == name).collect(),
        None => TARGETS.iter().collect(),
    };
    if chosen.is_empty() {
        let names: Vec<_> = TARGETS.iter().map(|t| t.name).collect();
        eprintln!(
            "There is no such target; choose one of {}.",
            names.join(", ")
        );
        return ExitCode::from(2);
    }
    let time = Duration::from_secs(number(1).unwrap_or(2));
    let failures: usize = chosen
        .iter()
        .map(|t| run(t, time, number(2).unwrap_or(1)))
        .sum();
    ExitCode::from(u8::from(failures > 0))
}

/// Runs a target; how many files failed.
fn run(target: &Target, time: Duration, start: u64) -> usize {
    let originals = (target.originals)();
    let mut dice = Dice::new(start);
    let mut counts = [0_u64; 4];
    let (mut failures, mut slowest, mut largest) = (0, Duration::ZERO, 0.0_f32);
    let kept_as = |name: &str| {
        let folder = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("target");
        folder.join(format!("fuzz-{}-{name}", target.name))
    };
    let watch = Watch::over(target.name, kept_as("hangs"));
    let begin = Instant::now();
    let mut told = 0;
    while begin.elapsed() < time && failures < MOST_FAILURES {
        let file = (target.change)(&originals, &mut dice);
        watch.begins(&file);
        let tried = attempt(target, &file);
        counts[tried.outcome as usize] += 1;
        slowest = slowest.max(tried.time);
        largest = largest.max(tried.megabytes);
        if let Some(fault) = tried.fault() {
            let path = kept_as(&failures.to_string());
            keep(target.name, &fault, &path, &file);
            failures += 1;
        }
        let minutes = begin.elapsed().as_secs() / 60;
        if minutes > told {
            told = minutes;
            report(target, &counts, begin.elapsed(), slowest, largest, failures);
        }
    }
    report(target, &counts, begin.elapsed(), slowest, largest, failures);
    failures
}

fn report(
    target: &Target,
    counts: &[u64; 4],
    time: Duration,
    slowest: Duration,
    largest: f32,
    failures: usize,
) {
    println!(
        "{}: {} files in {:.0} s: {} photographs, {} drawings, {} sets, {} refused; slowest {:.3} s, \
         most memory {largest:.1} MB, failures {failures}",
        target.name,
        counts.iter().sum::<u64>(),
        time.as_secs_f64(),
        counts[Outcome::Photo as usize],
        counts[Outcome::Drawing as usize],
        counts[Outcome::Set as usize],
        counts[Outcome::Refused as usize],
        slowest.as_secs_f64(),
    );
}

struct Tried {
    outcome: Outcome,
    panicked: bool,
    /// The longest step and its name.
    time: Duration,
    step: &'static str,
    megabytes: f32,
}

impl Tried {
    fn fault(&self) -> Option<String> {
        if self.panicked {
            return Some("panicked".to_owned());
        }
        if self.time > LONGEST {
            return Some(format!(
                "{} took {:.2} s",
                self.step,
                self.time.as_secs_f64()
            ));
        }
        (self.megabytes > MOST_MEGABYTES).then(|| format!("took {:.0} MB", self.megabytes))
    }
}

/// One file; one that is slow gets two more tries, for the machine may be busy.
fn attempt(target: &Target, file: &[u8]) -> Tried {
    let mut best = once(target, file);
    for _ in 0..2 {
        if best.time > LONGEST {
            let again = once(target, file);
            if again.time < best.time {
                best = again;
            }
        }
    }
    best
}

fn once(target: &Target, file: &[u8]) -> Tried {
    PANICKED.set(false);
    let before = MEMORY.current_usage_as_mb();
    MEMORY.reset_peak_usage();
    let (mut begin, mut longest) = (now(), (Duration::ZERO, "take"));
    let caught = std::panic::catch_unwind(std::panic::AssertUnwindSafe(|| {
        (target.bring)(file, &mut |name| {
            let end = now();
            longest = longest.max((end.saturating_sub(begin), name));
            begin = end;
        })
    }));
    Tried {
        outcome: caught.unwrap_or(Outcome::Refused),
        panicked: PANICKED.get(),
        time: longest.0,
        step: longest.1,
        megabytes: MEMORY.peak_usage_as_mb() - before,
    }
}

/// The time this thread has worked, where the system tells (Linux), so that a busy machine fails
/// nothing; by the clock elsewhere.
fn now() -> Duration {
    static BEGIN: OnceLock<Instant> = OnceLock::new();
    let told = std::fs::read_to_string("/proc/thread-self/schedstat");
    let worked = told.ok().and_then(|t| t.split(' ').next()?.parse().ok());
    match worked {
        Some(nanoseconds) => Duration::from_nanos(nanoseconds),
        None => BEGIN.get_or_init(Instant::now).elapsed(),
    }
}
