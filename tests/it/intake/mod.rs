//! Files that someone brings: what is taken, what is left behind, what is refused and in which words.

mod bad;
mod develop;
mod fuzz;
pub mod making;
mod many;
mod mask;
mod metadata;
mod pictures;
mod svg;
mod svg_bounds;

use std::fs;
use std::path::PathBuf;

use daystrand::intake::{Photo, Taken, take};

/// A file of `tests/cases/pictures`.
pub fn picture(name: &str) -> Vec<u8> {
    let dir = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("tests/cases/pictures");
    fs::read(dir.join(name)).unwrap()
}

/// A file that must be taken as a photograph.
pub fn photo(name: &str, bytes: &[u8]) -> Photo {
    match take(name, bytes) {
        Ok(Taken::Photo(photo)) => photo,
        other => panic!("{name}: {other:?}"),
    }
}

/// What is said of a file that must be refused.
pub fn refused(name: &str, bytes: &[u8]) -> String {
    match take(name, bytes) {
        Err(refusal) => refusal.to_string(),
        Ok(taken) => panic!("{name} was taken: {taken:?}"),
    }
}
