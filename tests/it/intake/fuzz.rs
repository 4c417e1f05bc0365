//! A few hundred changed files of each kind; `cargo bench --bench fuzz` runs for as long as wanted.

#[path = "../../fuzz/drawing.rs"]
mod drawing;
#[path = "../../fuzz/jpeg.rs"]
mod jpeg;
#[path = "../../fuzz/mutate.rs"]
mod mutate;
#[path = "../../fuzz/png.rs"]
mod png;
#[path = "../../fuzz/sets.rs"]
mod sets;
#[path = "../../fuzz/svg.rs"]
mod svg;
#[path = "../../fuzz/targets.rs"]
mod targets;

use std::cell::Cell;

use crate::dice;
use dice::Dice;
use targets::TARGETS;

thread_local! {
    static PANICKED: Cell<bool> = const { Cell::new(false) };
}

#[test]
fn changed_files_are_taken_or_refused_and_nothing_panics() {
    // A panic of a decoder is caught and becomes a refusal; here it is to be seen.
    let before = std::panic::take_hook();
    std::panic::set_hook(Box::new(move |info| {
        PANICKED.set(true);
        before(info);
    }));
    for target in &TARGETS {
        let originals = (target.originals)();
        assert!(originals.len() >= 3, "{}", target.name);
        let mut dice = Dice::new(7);
        // Painting takes its time.
        let count = if target.name == "svg" { 100 } else { 300 };
        for number in 0..count {
            let file = (target.change)(&originals, &mut dice);
            (target.bring)(&file, &mut |_| {});
            assert!(!PANICKED.get(), "{} {number}", target.name);
        }
    }
}
