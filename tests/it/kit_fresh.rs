//! The symbols with people are built by the pose kit; what is committed must be what it builds.

use std::fs;
use std::path::Path;

#[path = "../../icons-src/kit/mod.rs"]
mod kit;

#[test]
fn committed_symbols_are_what_the_kit_builds() {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("icons-src/svg");
    let built = kit::symbols();
    assert!(
        built.len() >= 28,
        "the kit builds {} symbols only",
        built.len()
    );
    let stale: Vec<_> = built
        .iter()
        .filter(|(id, svg)| {
            fs::read_to_string(folder.join(format!("{id}.svg")))
                .ok()
                .as_ref()
                != Some(svg)
        })
        .map(|(id, _)| id.as_str())
        .collect();
    assert!(
        stale.is_empty(),
        "run `cargo run --example draw-symbols`, then look: {stale:?}"
    );
}
