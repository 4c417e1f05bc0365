//! Sets of pictures and activities that one club gives to another: JSON in the words of the club file,
//! under a name of its own, without any person.

use std::path::Path;

use super::club_file::{self, MAX_BYTES};
use super::disk::{Disk, Kind, Real, replace};
use super::error::{FileError, name};
use crate::model::club::Club;

/// What the name of a set ends in.
pub const SET_EXTENSION: &str = "daystrand-set";

/// Reads a set.
///
/// # Errors
/// When it is not there, cannot be read, or is no whole set.
pub fn read(path: &Path) -> Result<Club, FileError> {
    match Real.kind(path).map_err(|e| FileError::reading(path, &e))? {
        Kind::File { bytes, .. } if bytes <= MAX_BYTES => {}
        _ => {
            return Err(FileError::new(
                path,
                format!("“{}” is not a set of pictures or activities.", name(path)),
                format!("Choose a file that ends in .{SET_EXTENSION}."),
            ));
        }
    }
    let content = Real
        .read(path, MAX_BYTES)
        .map_err(|e| FileError::reading(path, &e))?;
    from_bytes(path, &content)
}

/// The set in the content of a file. `path` is for what is said; nothing is read.
///
/// # Errors
/// When the content is not a whole set, or has people in it.
pub fn from_bytes(path: &Path, content: &[u8]) -> Result<Club, FileError> {
    let set = club_file::set_from_bytes(path, content)?;
    let people = set.participants.len() + set.helpers.len() + set.sessions.len();
    if people > 0 || set.pictures.iter().any(|p| p.whose.is_some()) {
        return Err(FileError::new(
            path,
            format!("“{}” has people in it, which a set never has.", name(path)),
            "It was changed by hand; ask for another copy.",
        ));
    }
    Ok(set)
}

/// The content of a file for a set. `path` is for what is said.
///
/// # Errors
/// When there is too much in it to be read again.
pub fn to_bytes(path: &Path, set: &Club) -> Result<Vec<u8>, FileError> {
    club_file::set_to_bytes(path, set)
}

/// Writes a set; one of that name is replaced, whole or not at all.
///
/// # Errors
/// When it cannot be written. What was there is as it was.
pub fn write(path: &Path, set: &Club) -> Result<(), FileError> {
    if Real.kind(path).is_ok_and(|k| k == Kind::Folder) {
        return Err(FileError::new(
            path,
            format!("“{}” was not written: a folder has that name.", name(path)),
            "Choose another name.",
        ));
    }
    let bytes = to_bytes(path, set)?;
    replace(&Real, path, &bytes, None, || ()).map_err(|e| FileError::writing(path, &e))
}
