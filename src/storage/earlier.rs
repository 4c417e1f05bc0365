//! Earlier copies of a club file: the last five, in a folder beside it.
//!
//! Beside `Lagoon.daystrand` stands `Lagoon (earlier copies)` with `Lagoon 1.daystrand`, the newest,
//! to `Lagoon 5.daystrand`. The folder is not hidden and the copies keep their ending: they hold
//! the names of people, so whoever deletes the club must see them, and opening one is opening a file.

use std::ffi::OsString;
use std::io;
use std::path::{Path, PathBuf};

use super::club_file::{EXTENSION, MAX_BYTES};
use super::disk::Disk;

/// How many earlier copies are kept.
pub const KEPT: usize = 5;

/// The folder with the earlier copies of a club file; it need not exist.
pub fn folder(path: &Path) -> PathBuf {
    let mut name = stem(path);
    name.push(" (earlier copies)");
    path.with_file_name(name)
}

fn stem(path: &Path) -> OsString {
    path.file_stem().unwrap_or_default().to_os_string()
}

fn copy(path: &Path, number: usize) -> PathBuf {
    let mut name = stem(path);
    name.push(format!(" {number}.{EXTENSION}"));
    folder(path).join(name)
}

/// Where the earlier copies of a club file are, the newest first; they need not be there.
pub(super) fn copies(path: &Path) -> impl Iterator<Item = PathBuf> {
    (1..=KEPT).map(move |number| copy(path, number))
}

/// Keeps the file at `path` as the newest copy and lets the oldest go. The file itself stays where
/// it is. When it was kept already (saving failed after that), nothing is moved on.
pub(super) fn keep(disk: &dyn Disk, path: &Path) -> io::Result<()> {
    let newest = copy(path, 1);
    match disk.read(&newest, MAX_BYTES) {
        Ok(kept) if kept == disk.read(path, MAX_BYTES)? => return Ok(()),
        Ok(_) => {
            for number in (1..KEPT).rev() {
                move_on(disk, &copy(path, number), &copy(path, number + 1))?;
            }
        }
        Err(error) if error.kind() == io::ErrorKind::NotFound => {}
        // It may be there all the same: it must not be written over.
        Err(error) => return Err(error),
    }
    disk.create_folder(&folder(path))?;
    disk.keep(path, &newest)
}

/// Makes room at `from`. A copy that is missing leaves a gap, which is filled in time; but the next
/// one may only take its place when it is missing indeed.
fn move_on(disk: &dyn Disk, from: &Path, to: &Path) -> io::Result<()> {
    match disk.rename(from, to) {
        Err(error) if error.kind() == io::ErrorKind::NotFound && disk.kind(from).is_err() => Ok(()),
        result => result,
    }
}
