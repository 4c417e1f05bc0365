//! The symbols: what drawings may hold, that every one is there and can be seen, search, variants.

mod library;
mod lint;
mod paint;
mod parse;
