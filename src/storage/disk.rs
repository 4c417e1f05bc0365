//! The few things done to a disk, so that every one of them can be made to fail in a test.

use std::fs::{self, File};
use std::io::{self, Read, Write};
use std::path::{Path, PathBuf};

/// What stands at a path.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Kind {
    /// An ordinary file.
    File {
        /// Its size in bytes.
        bytes: u64,
        /// Whether it is marked as not to be written.
        read_only: bool,
    },
    /// A folder.
    Folder,
    /// A device or the like.
    Other,
}

/// A disk. Every function fails with the error of the system.
pub trait Disk {
    /// What stands at a path, links followed.
    fn kind(&self, path: &Path) -> io::Result<Kind>;
    /// All bytes of a file, but never more than `most`.
    fn read(&self, path: &Path, most: u64) -> io::Result<Vec<u8>>;
    /// Writes a file that was not there and waits until it is on the disk; with the permissions of
    /// `like`.
    fn write_new(&self, path: &Path, bytes: &[u8], like: Option<&Path>) -> io::Result<()>;
    /// Gives a file a second name, or copies it where that is not possible. Fails when something has
    /// that name already.
    fn keep(&self, from: &Path, to: &Path) -> io::Result<()>;
    /// Renames a file; one of that name is replaced in the same moment.
    fn rename(&self, from: &Path, to: &Path) -> io::Result<()>;
    /// Removes a file.
    fn remove(&self, path: &Path) -> io::Result<()>;
    /// Makes a folder and those it stands in.
    fn create_folder(&self, path: &Path) -> io::Result<()>;
    /// Waits until new names in a folder are on the disk.
    fn sync_folder(&self, path: &Path) -> io::Result<()>;
    /// The path with all links followed.
    fn resolve(&self, path: &Path) -> io::Result<PathBuf>;
}

/// The disk of this computer.
#[derive(Clone, Copy, Debug)]
pub struct Real;

impl Disk for Real {
    fn kind(&self, path: &Path) -> io::Result<Kind> {
        let meta = fs::metadata(path)?;
        Ok(if meta.is_dir() {
            Kind::Folder
        } else if meta.is_file() {
            Kind::File {
                bytes: meta.len(),
                read_only: meta.permissions().readonly(),
            }
        } else {
            Kind::Other
        })
    }

    fn read(&self, path: &Path, most: u64) -> io::Result<Vec<u8>> {
        let mut bytes = Vec::new();
        File::open(path)?.take(most).read_to_end(&mut bytes)?;
        Ok(bytes)
    }

    fn write_new(&self, path: &Path, bytes: &[u8], like: Option<&Path>) -> io::Result<()> {
        let mut file = File::create_new(path)?;
        if let Some(like) = like {
            // Who may read the file stays as it was; a disk without permissions is no reason to fail.
            let _ = fs::metadata(like).and_then(|m| file.set_permissions(m.permissions()));
        }
        file.write_all(bytes)?;
        file.sync_all()
    }

    fn keep(&self, from: &Path, to: &Path) -> io::Result<()> {
        match fs::hard_link(from, to) {
            Err(error) if error.kind() != io::ErrorKind::AlreadyExists => copy_new(from, to),
            linked => linked,
        }
    }

    fn rename(&self, from: &Path, to: &Path) -> io::Result<()> {
        fs::rename(from, to)
    }

    fn remove(&self, path: &Path) -> io::Result<()> {
        fs::remove_file(path)
    }

    fn create_folder(&self, path: &Path) -> io::Result<()> {
        fs::create_dir_all(path)
    }

    #[cfg(unix)]
    fn sync_folder(&self, path: &Path) -> io::Result<()> {
        File::open(path)?.sync_all()
    }

    #[cfg(not(unix))]
    fn sync_folder(&self, _path: &Path) -> io::Result<()> {
        Ok(())
    }

    fn resolve(&self, path: &Path) -> io::Result<PathBuf> {
        fs::canonicalize(path)
    }
}

fn copy_new(from: &Path, to: &Path) -> io::Result<()> {
    let mut source = File::open(from)?;
    let mut copy = File::create_new(to)?;
    let copied = io::copy(&mut source, &mut copy).and_then(|_| copy.sync_all());
    if copied.is_err() {
        // Half a copy is worse than none.
        let _ = fs::remove_file(to);
    }
    copied
}

/// Writes `bytes` beside `target` under a name of its own and puts it in the place of `target` in
/// one moment. `last` is called in between, when the new file is safely on the disk.
pub(super) fn replace(
    disk: &dyn Disk,
    target: &Path,
    bytes: &[u8],
    like: Option<&Path>,
    last: impl FnOnce(),
) -> io::Result<()> {
    let beside = beside(target);
    let written = disk
        .write_new(&beside, bytes, like)
        .or_else(|error| match error.kind() {
            // Left behind by a run of the same number that was cut off.
            io::ErrorKind::AlreadyExists => {
                disk.remove(&beside)?;
                disk.write_new(&beside, bytes, like)
            }
            _ => Err(error),
        })
        .and_then(|()| {
            last();
            disk.rename(&beside, target)
        });
    if let Err(error) = written {
        // What failed matters; that the rest could not be swept up does not.
        let _ = disk.remove(&beside);
        return Err(error);
    }
    if let Some(folder) = target.parent() {
        // Some network drives cannot; the file itself is on the disk already.
        let _ = disk.sync_folder(folder);
    }
    Ok(())
}

/// A name beside a file for the time of writing; hidden where a dot hides.
fn beside(target: &Path) -> PathBuf {
    let mut name = std::ffi::OsString::from(".");
    name.push(target.file_name().unwrap_or_default());
    name.push(format!(".writing-{}", std::process::id()));
    target.with_file_name(name)
}
