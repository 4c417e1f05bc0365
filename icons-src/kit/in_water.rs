//! In and at the water.

/// The drawings of this file.
pub fn symbols() -> Vec<(&'static str, String)> {
    vec![]
}
