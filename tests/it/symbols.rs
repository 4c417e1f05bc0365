//! The symbols: what drawings may hold, that every one is there and can be seen and told from the
//! others, what they are called and how they are found, variants.

mod alike;
mod grey;
mod library;
mod lint;
mod paint;
mod parse;
mod reader;
mod reference;
mod refusals;
mod signs;
mod words;
