//! Computations about the day and its pieces, from published numbers and the club's own rules:
//! `clock` (when each slot begins and ends), `small_parts` (which pieces fit the gauge for small
//! parts). Knows nothing of boards, paper or screens.

pub mod clock;
pub mod small_parts;
