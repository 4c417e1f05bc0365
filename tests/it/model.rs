//! The club: edits keep every invariant, boards follow, undo gives back what was.

mod asked;
mod boards;
mod demo;
mod history;
pub mod random;
pub mod random_care;
mod refusals;
mod songs;
