//! Finished pages to files: PDF, PNG, plain text. Never sees a club.

pub mod pdf;
pub mod png;
pub mod text;
