//! The club: edits keep every invariant, boards follow, undo gives back what was.

mod asked;
mod boards;
mod demo;
mod give;
mod history;
mod pictures;
pub mod random;
pub mod random_care;
pub mod random_pictures;
mod refusals;
mod songs;
