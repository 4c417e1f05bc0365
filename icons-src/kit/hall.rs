//! The gym hall and the running track.

/// The drawings of this file.
pub fn symbols() -> Vec<(&'static str, String)> {
    vec![]
}
