//! The pose kit: people for the picture symbols, built from poses. Same
//! program, same bytes. `main.rs` writes the files; a test may take this module
//! in by its path and compare.

pub mod body;
pub mod dress;
pub mod geom;
pub mod hair;
pub mod hands;
pub mod head;
pub mod limb;
pub mod paint;
pub mod people_a;
pub mod people_b;
pub mod people_c;
pub mod props;

/// Every symbol with people as its id and its SVG text.
pub fn symbols() -> Vec<(&'static str, String)> {
    let mut all = people_a::symbols();
    all.extend(people_b::symbols());
    all.extend(people_c::symbols());
    all
}
