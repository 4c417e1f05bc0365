//! The pose kit: people for the picture symbols, built from poses. Same
//! program, same bytes. `main.rs` writes the files; a test may take this module
//! in by its path and compare.

pub mod arrival;
pub mod boats;
pub mod body;
pub mod cast;
pub mod caution;
pub mod close_ups;
pub mod clubs;
pub mod comfort;
pub mod dress;
pub mod feelings;
pub mod garden;
pub mod geom;
pub mod hair;
pub mod hall;
pub mod hands;
pub mod head;
pub mod in_water;
pub mod limb;
pub mod moving;
pub mod paint;
pub mod park;
pub mod people_a;
pub mod people_b;
pub mod people_c;
pub mod places;
pub mod pool;
pub mod props;
pub mod shore;
pub mod together;

/// Every symbol that the kit draws as its id and its SVG text.
pub fn symbols() -> Vec<(&'static str, String)> {
    [
        people_a::symbols(),
        people_b::symbols(),
        people_c::symbols(),
        arrival::symbols(),
        moving::symbols(),
        in_water::symbols(),
        shore::symbols(),
        pool::symbols(),
        boats::symbols(),
        feelings::symbols(),
        comfort::symbols(),
        together::symbols(),
        caution::symbols(),
        hall::symbols(),
        park::symbols(),
        clubs::symbols(),
        garden::symbols(),
        close_ups::symbols(),
        places::symbols(),
    ]
    .concat()
}
