//! Files with pictures that someone brings: which ones, and their bytes. The files are left as they
//! are.

use std::fs;
use std::path::{Path, PathBuf};

use super::disk::{Disk, Kind, Real};
use super::error::{FileError, name};

/// Largest picture that is read.
pub const MAX_PICTURE_BYTES: u64 = 64 * 1024 * 1024;
/// Most files that are taken at once.
pub const AT_ONCE: usize = 500;

/// The files that paths name, in order; a folder stands for the files in it, by name, without the
/// folders in it and without hidden files.
///
/// # Errors
/// When a folder cannot be read.
pub fn files(paths: &[PathBuf]) -> Result<Vec<PathBuf>, FileError> {
    let mut all = Vec::new();
    for path in paths {
        if Real.kind(path).is_ok_and(|k| k == Kind::Folder) {
            all.extend(in_folder(path)?);
        } else {
            all.push(path.clone());
        }
    }
    all.truncate(AT_ONCE);
    Ok(all)
}

fn in_folder(folder: &Path) -> Result<Vec<PathBuf>, FileError> {
    let entries = fs::read_dir(folder).map_err(|e| FileError::reading(folder, &e))?;
    let paths = entries.filter_map(|e| Some(e.ok()?.path()));
    let hidden = |p: &PathBuf| name(p).starts_with('.');
    let is_file = |p: &PathBuf| matches!(Real.kind(p), Ok(Kind::File { .. }));
    let mut files: Vec<PathBuf> = paths.filter(|p| !hidden(p) && is_file(p)).collect();
    files.sort();
    Ok(files)
}

/// Reads a whole file.
///
/// # Errors
/// When it is not there, cannot be read, is no ordinary file or larger than
/// [`MAX_PICTURE_BYTES`].
pub fn read(path: &Path) -> Result<Vec<u8>, FileError> {
    match Real.kind(path).map_err(|e| FileError::reading(path, &e))? {
        Kind::File { bytes, .. } if bytes <= MAX_PICTURE_BYTES => {}
        Kind::File { .. } => {
            return Err(FileError::new(
                path,
                format!("“{}” is larger than 64 MB.", name(path)),
                "Save it smaller, or as JPEG, and bring that.",
            ));
        }
        Kind::Folder | Kind::Other => {
            return Err(FileError::new(
                path,
                format!("“{}” is not an ordinary file.", name(path)),
                "Choose the picture itself.",
            ));
        }
    }
    Real.read(path, MAX_PICTURE_BYTES)
        .map_err(|e| FileError::reading(path, &e))
}
