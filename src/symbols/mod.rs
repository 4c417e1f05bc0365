//! The symbols: drawings parsed once, found by word, varied by skin, grey and outline.
//!
//! Reading order: `art` (what a drawing is), `palette`, `parse` (from SVG), `variant`, `library`
//! (all of them, by name), `lexicon` (what they are called, by word), `own` (the club's own pictures)
//! with `pixels` (of photographs).

pub mod art;
pub mod lexicon;
pub mod library;
pub mod own;
pub mod palette;
pub mod parse;
pub mod pixels;
mod placeholder;
mod search;
pub mod variant;
