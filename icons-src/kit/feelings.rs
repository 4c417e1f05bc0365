//! Faces and what is felt.

/// The drawings of this file.
pub fn symbols() -> Vec<(&'static str, String)> {
    vec![]
}
