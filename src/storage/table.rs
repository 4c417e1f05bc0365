//! Tables of participants: plain files that come from a spreadsheet and go to one.

use std::path::Path;

use super::disk::{Disk, Kind, Real, replace};
use super::error::{FileError, name};

/// Largest table that is read: far more than any club's people fill.
pub const MAX_TABLE_BYTES: u64 = 8 * 1024 * 1024;

/// Reads a whole table.
///
/// # Errors
/// When it is not there, cannot be read, is no ordinary file or larger than [`MAX_TABLE_BYTES`].
pub fn read(path: &Path) -> Result<Vec<u8>, FileError> {
    match Real.kind(path).map_err(|e| FileError::reading(path, &e))? {
        Kind::File { bytes, .. } if bytes <= MAX_TABLE_BYTES => {}
        Kind::File { .. } => {
            return Err(FileError::new(
                path,
                format!("“{}” is too large for a table of people.", name(path)),
                "Check that it is the right file.",
            ));
        }
        Kind::Folder | Kind::Other => {
            return Err(FileError::new(
                path,
                format!("“{}” is no file.", name(path)),
                "Choose the table itself.",
            ));
        }
    }
    Real.read(path, MAX_TABLE_BYTES)
        .map_err(|e| FileError::reading(path, &e))
}

/// Writes a table; one of that name is replaced, whole or not at all.
///
/// # Errors
/// When it cannot be written. What was there is as it was.
pub fn write(path: &Path, bytes: &[u8]) -> Result<(), FileError> {
    if Real.kind(path).is_ok_and(|k| k == Kind::Folder) {
        return Err(FileError::new(
            path,
            format!("“{}” was not written: a folder has that name.", name(path)),
            "Choose another name.",
        ));
    }
    replace(&Real, path, bytes, None, || ()).map_err(|e| FileError::writing(path, &e))
}
