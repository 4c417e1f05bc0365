//! All integration tests in one binary: each further binary would link the whole window again.

#![allow(
    clippy::unwrap_used,
    reason = "a helper of a test that cannot go on fails the test"
)]

mod chance;
mod check;
mod cli;
mod desktop;
#[path = "../fuzz/dice.rs"]
mod dice;
mod drawing;
mod export;
mod fixture;
mod house;
mod house_words;
mod intake;
mod kit_fresh;
mod layout;
mod model;
mod page;
mod pdf;
mod plan;
mod published;
mod raster;
mod roster;
mod storage;
mod story;
mod story_measure;
mod symbols;
mod telling;
mod text;
mod ui;
mod workbench;
