//! How long symbols take: reading each drawing, and finding by word. `cargo bench --bench symbols`
//! prints a table; nothing here is a test.

use std::hint::black_box;
use std::time::{Duration, Instant};

use daystrand::model::language::Language;
use daystrand::model::people::Age;
use daystrand::symbols::lexicon::lexicon;
use daystrand::symbols::library::library;
use daystrand::symbols::parse::parse;

fn main() {
    let mut times: Vec<(Duration, String)> = Vec::new();
    for s in library().all().iter().chain(library().marks()) {
        for age in Age::ALL {
            if let Some(svg) = s.svg_at(age) {
                let time = best(|| drop(black_box(parse(svg))));
                times.push((time, format!("{} ({})", s.id, age.label())));
            }
        }
    }
    times.sort();
    let all: Duration = times.iter().map(|(t, _)| *t).sum();
    println!("reading {} drawings, best of ten each:", times.len());
    println!("  mean {:>8.3} ms", millis(all) / times.len().max(1) as f64);
    for (time, name) in times.iter().rev().take(5) {
        println!("  {:>13.3} ms {name}", millis(*time));
    }
    println!(
        "\nfinding among {} symbols, best of ten:",
        library().all().len()
    );
    let words = lexicon(&Language::default());
    for typed in ["", "w", "water", "suncreen", "walk to the water"] {
        let time = best(|| drop(black_box(words.search(typed))));
        println!("  {:>13.3} ms {typed:?}", millis(time));
    }
}

fn best(run: impl Fn()) -> Duration {
    let once = |_| {
        let start = Instant::now();
        run();
        start.elapsed()
    };
    (0..10).map(once).min().unwrap_or_default()
}

fn millis(time: Duration) -> f64 {
    time.as_secs_f64() * 1e3
}
