//! Flags, lines, and stopping.

/// The drawings of this file.
pub fn symbols() -> Vec<(&'static str, String)> {
    vec![]
}
