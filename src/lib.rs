//! Daystrand: from one group timetable to a picture schedule for each participant.
//!
//! The modules in reading order; each uses only those above it. The map with all rules is in
//! `DEVELOPERS.md`.

pub mod units;

pub mod assets;

pub mod model;

pub mod symbols;

pub mod drawing;

pub mod text;

pub mod intake;

pub mod plan;

pub mod roster;

pub mod story;

pub mod page;

pub mod layout;

pub mod check;

pub mod raster;

pub mod export;

pub mod storage;

pub mod workbench;

pub mod ui;

pub mod cli;
