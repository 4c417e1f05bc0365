//! What has been changed and is not saved yet, kept so that a crash or an empty battery takes half a
//! minute of an evening and not the evening. One place for each running program, in a folder for this
//! person; it is emptied as soon as the club is saved or the changes are given up.

use std::fs::{File, OpenOptions};
use std::io::{Read as _, Seek as _, Write as _};
use std::path::{Path, PathBuf};

use etcetera::BaseStrategy as _;
use serde_json::{Value, json};

use super::club_file::{MAX_BYTES, Stamp, from_bytes, to_bytes};
use super::disk::{Disk as _, Real, replace};
use super::error::FileError;
use crate::model::club::Club;

/// How many programs of one person can keep something at once.
const PLACES: u32 = 9;
/// A path and two numbers are no more.
const MOST_ABOUT: u64 = 64 * 1024;

/// Of which file a club was opened, and what that file held then.
pub type Origin = (PathBuf, Stamp);

/// What a program left that came to an end without being closed.
#[derive(Clone, Debug)]
pub struct Left {
    /// The club as it was changed last.
    pub club: Club,
    /// Its file; none if it was never saved.
    pub origin: Option<Origin>,
}

/// A place of our own, for as long as this value lives: no other program keeps anything there or
/// takes it for left behind.
#[derive(Debug)]
pub struct Keeper {
    copy: PathBuf,
    /// Locked; holds the origin.
    about: File,
}

impl Keeper {
    /// A place in a folder, with what is found in it that nobody looks after any more. None where the
    /// folder cannot be written or no place is free: then nothing is kept.
    pub fn claim(folder: &Path) -> Option<(Self, Option<Left>)> {
        Real.create_folder(folder).ok()?;
        for_this_person_alone(folder);
        let mut free = Vec::new();
        for number in 1..=PLACES {
            let Some(mut keeper) = Self::place(folder, number) else {
                continue;
            };
            match keeper.left() {
                Some(Ok(left)) => return Some((keeper, Some(left))),
                // Something that cannot be read is left for someone who can.
                Some(Err(_)) => {}
                None => free.push(keeper),
            }
        }
        free.into_iter().next().map(|keeper| (keeper, None))
    }

    /// A place of a folder in which nothing is left.
    pub fn claim_empty(folder: &Path) -> Option<Self> {
        (1..=PLACES)
            .filter_map(|number| Self::place(folder, number))
            .find(|keeper| Real.kind(&keeper.copy).is_err())
    }

    fn place(folder: &Path, number: u32) -> Option<Self> {
        let about = OpenOptions::new()
            .read(true)
            .write(true)
            .create(true)
            .truncate(false)
            .open(folder.join(format!("{number}.lock")))
            .ok()?;
        about.try_lock().ok()?;
        let copy = folder.join(format!("{number}.{}", super::EXTENSION));
        Some(Self { copy, about })
    }

    fn left(&mut self) -> Option<Result<Left, FileError>> {
        Real.kind(&self.copy).ok()?;
        let read = Real
            .read(&self.copy, MAX_BYTES + 1)
            .map_err(|e| FileError::reading(&self.copy, &e));
        let club = read.and_then(|bytes| from_bytes(&self.copy, &bytes));
        Some(club.map(|loaded| Left {
            club: loaded.club,
            origin: self.origin(),
        }))
    }

    fn origin(&mut self) -> Option<Origin> {
        let mut text = String::new();
        self.about.rewind().ok()?;
        let read = (&self.about).take(MOST_ABOUT).read_to_string(&mut text);
        read.ok()?;
        let about: Value = serde_json::from_str(&text).ok()?;
        let path = PathBuf::from(about.get("file")?.as_str()?);
        let stamp = Stamp {
            bytes: about.get("bytes")?.as_u64()?,
            hash: about.get("hash")?.as_u64()?,
        };
        Some((path, stamp))
    }

    /// Keeps a club; what was kept before is replaced, whole or not at all.
    ///
    /// # Errors
    /// When it cannot be written.
    pub fn keep(&mut self, club: &Club, origin: Option<&Origin>) -> Result<(), FileError> {
        // A path that is not text cannot be written down: then the club comes back without it.
        let about = origin.and_then(|(path, stamp)| {
            let path = path.to_str()?;
            Some(json!({ "file": path, "bytes": stamp.bytes, "hash": stamp.hash }))
        });
        let about = about.map_or_else(String::new, |a| a.to_string());
        let bytes = to_bytes(&self.copy, club)?;
        let wrong = |e: std::io::Error| FileError::writing(&self.copy, &e);
        let note = || -> std::io::Result<()> {
            self.about.set_len(0)?;
            (&self.about).rewind()?;
            (&self.about).write_all(about.as_bytes())?;
            self.about.sync_data()
        };
        note().map_err(wrong)?;
        replace(&Real, &self.copy, &bytes, None, || ()).map_err(wrong)
    }

    /// Empties the place.
    pub fn forget(&mut self) {
        // Gone already is as good.
        let _ = Real.remove(&self.copy);
        let _ = self.about.set_len(0);
    }
}

impl Drop for Keeper {
    /// Closing alone would leave the lock to a program that is just being started.
    fn drop(&mut self) {
        let _ = self.about.unlock();
    }
}

/// Names of children are in it.
#[cfg(unix)]
fn for_this_person_alone(folder: &Path) {
    use std::os::unix::fs::PermissionsExt as _;
    // A disk without permissions is no reason to keep nothing.
    let _ = std::fs::set_permissions(folder, std::fs::Permissions::from_mode(0o700));
}

#[cfg(not(unix))]
fn for_this_person_alone(_folder: &Path) {}

/// Where this computer keeps such things for this person: `~/.local/state/daystrand/unsaved` on
/// Linux, and what is usual elsewhere. `None` when the system does not say.
pub fn usual_folder() -> Option<PathBuf> {
    let strategy = etcetera::base_strategy::choose_native_strategy().ok()?;
    let state = strategy.state_dir();
    let folder = state.unwrap_or_else(|| strategy.data_dir());
    Some(folder.join("daystrand").join("unsaved"))
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A program that is being started has our open files for a moment, until it is itself; the
    /// system counts their locks as held as long.
    #[test]
    fn a_place_given_up_is_free_while_another_program_is_being_started() {
        let folder = tempfile::tempdir().unwrap();
        let (keeper, _) = Keeper::claim(folder.path()).unwrap();
        let of_the_other = keeper.about.try_clone().unwrap();
        assert!(Keeper::place(folder.path(), 1).is_none());
        drop(keeper);
        assert!(Keeper::place(folder.path(), 1).is_some());
        drop(of_the_other);
    }
}
