//! The only place that touches the disk: the club file, files written for printing, preferences.
//!
//! A club is one file of readable JSON that ends in `.daystrand`. Saving writes the new file beside
//! the old one, waits until it is on the disk, keeps the old one as an earlier copy (`earlier`), and
//! only then puts the new one in its place: whatever fails on the way, the old file is as it was.
//! Opening checks everything before anything of it is used.
//!
//! Reading order: `error` (what is said when it fails), `disk` (the few things done to a disk),
//! `v1` (the words of the file), `pretty` (how it is set out), `club_file`, `earlier`, `forget` (removed
//! pictures), `output`,
//! `pictures` (that someone brings),
//! `preferences`, `set` (given to another club), `table`, `unsaved` (kept until it is saved).

mod club_file;
pub mod disk;
mod earlier;
mod error;
mod forget;
pub mod output;
pub mod pictures;
pub mod preferences;
mod pretty;
pub mod set;
pub mod table;
pub mod unsaved;
mod v1;

use std::path::Path;

use crate::model::club::Club;

pub use club_file::{EXTENSION, Loaded, MAX_BYTES, Saved, Stamp, from_bytes, save_on, to_bytes};
pub use earlier::{KEPT, folder as earlier_copies};
pub use error::FileError;

/// Opens a club file. Notes tell what was mended on the way; without notes the club is exactly what
/// was saved.
///
/// # Errors
/// When there is no such file, it cannot be read, or it is not a whole club file. Nothing is
/// changed on the disk, ever.
pub fn load(path: &Path) -> Result<Loaded, FileError> {
    club_file::load_on(&disk::Real, path)
}

/// Saves a club file; the file that was there is kept as an earlier copy.
///
/// # Errors
/// When it cannot be written. The file that was there is as it was.
pub fn save(path: &Path, club: &Club) -> Result<Saved, FileError> {
    club_file::save_on(&disk::Real, path, club)
}

/// Whether the file holds something else than what was read or written here last, because another
/// window or another computer saved it meanwhile. A file that is gone or cannot be read counts as
/// not changed: saving will say what is wrong.
pub fn changed_elsewhere(path: &Path, stamp: &Stamp) -> bool {
    club_file::changed_on(&disk::Real, path, stamp)
}
