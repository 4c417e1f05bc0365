//! The symbols: drawings parsed once, found by word, varied by skin, grey and outline.

pub mod art;
