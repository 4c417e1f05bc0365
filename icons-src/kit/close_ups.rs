//! Close-ups of hands and feet.

/// The drawings of this file.
pub fn symbols() -> Vec<(&'static str, String)> {
    vec![]
}
