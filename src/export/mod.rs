//! Finished pages to files: PDF, PNG, plain text; a story to one HTML file. Never sees a club.

pub mod html;
pub mod pdf;
pub mod png;
pub mod text;
