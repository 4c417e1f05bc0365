//! A disk that fails at any one of the things done to it, in any way: the old file is as it was, or
//! the new one is whole.

use std::cell::Cell;
use std::fs;
use std::io::{self, ErrorKind, Write as _};
use std::path::{Path, PathBuf};

use daystrand::model::club::Club;
use daystrand::storage::disk::{Disk, Kind, Real};
use daystrand::storage::{earlier_copies, load, save, save_on};

use crate::model::random;

/// The real disk, but the call of number `at` fails, or writes half of what it should first.
struct Failing {
    at: usize,
    kind: ErrorKind,
    calls: Cell<usize>,
}

impl Failing {
    fn fails_now(&self) -> io::Result<()> {
        let call = self.calls.get();
        self.calls.set(call + 1);
        if call == self.at {
            return Err(io::Error::from(self.kind));
        }
        Ok(())
    }
}

impl Disk for Failing {
    fn kind(&self, path: &Path) -> io::Result<Kind> {
        self.fails_now().and_then(|()| Real.kind(path))
    }
    fn read(&self, path: &Path, most: u64) -> io::Result<Vec<u8>> {
        self.fails_now().and_then(|()| Real.read(path, most))
    }
    fn write_new(&self, path: &Path, bytes: &[u8], like: Option<&Path>) -> io::Result<()> {
        if let Err(error) = self.fails_now() {
            // A full disk takes a part before it says so.
            fs::write(path, &bytes[..bytes.len() / 2])?;
            return Err(error);
        }
        Real.write_new(path, bytes, like)
    }
    fn keep(&self, from: &Path, to: &Path) -> io::Result<()> {
        self.fails_now().and_then(|()| Real.keep(from, to))
    }
    fn rename(&self, from: &Path, to: &Path) -> io::Result<()> {
        self.fails_now().and_then(|()| Real.rename(from, to))
    }
    fn remove(&self, path: &Path) -> io::Result<()> {
        self.fails_now().and_then(|()| Real.remove(path))
    }
    fn create_folder(&self, path: &Path) -> io::Result<()> {
        self.fails_now().and_then(|()| Real.create_folder(path))
    }
    fn sync_folder(&self, path: &Path) -> io::Result<()> {
        self.fails_now().and_then(|()| Real.sync_folder(path))
    }
    fn resolve(&self, path: &Path) -> io::Result<PathBuf> {
        self.fails_now().and_then(|()| Real.resolve(path))
    }
}

fn named(name: &str) -> Club {
    Club {
        name: name.into(),
        ..random::start()
    }
}

/// Names of all clubs in the folder of earlier copies.
fn copies(path: &Path) -> Vec<String> {
    let Ok(entries) = fs::read_dir(earlier_copies(path)) else {
        return vec![];
    };
    let mut names: Vec<String> = entries
        .map(|e| load(&e.unwrap().path()).unwrap().club.name)
        .collect();
    names.sort();
    names
}

#[test]
fn whatever_fails_the_old_file_or_the_new_one_is_there_whole() {
    let kinds = [
        ErrorKind::StorageFull,
        ErrorKind::PermissionDenied,
        ErrorKind::ReadOnlyFilesystem,
        ErrorKind::NotFound,
        ErrorKind::Other,
    ];
    let (mut failed, mut told) = (0, 0);
    for kind in kinds {
        for at in 0.. {
            let dir = tempfile::tempdir().unwrap();
            let path = dir.path().join("Lagoon.daystrand");
            for name in ["Oldest", "Older", "Old"] {
                save(&path, &named(name)).unwrap();
            }
            let disk = Failing {
                at,
                kind,
                calls: Cell::new(0),
            };
            let result = save_on(&disk, &path, &named("New"));
            let now = load(&path).unwrap().club.name;
            match &result {
                Ok(saved) => {
                    assert_eq!(now, "New");
                    told += saved.notes.len();
                }
                Err(error) => {
                    assert_eq!(now, "Old", "call {at}, {kind}");
                    assert!(error.hint.contains("Nothing is lost"), "{error}");
                    failed += 1;
                }
            }
            let kept = copies(&path);
            assert!(
                kept.contains(&"Oldest".into()) && kept.contains(&"Older".into()),
                "{kept:?}"
            );
            if disk.calls.get() <= at {
                assert!(result.is_ok_and(|s| s.notes.is_empty()));
                assert_eq!(kept, ["Old", "Older", "Oldest"]);
                break;
            }
        }
    }
    assert!(
        failed > 10 && told > 5,
        "failures were met: {failed}, {told}"
    );
}

#[test]
fn failing_again_and_again_does_not_use_up_the_copies() {
    let dir = tempfile::tempdir().unwrap();
    let path = dir.path().join("Lagoon.daystrand");
    for name in ["A", "B", "C"] {
        save(&path, &named(name)).unwrap();
    }
    for i in 0..10 {
        // The last rename is the one that puts the new file in its place.
        let disk = RenameFails {
            target: path.clone(),
        };
        save_on(&disk, &path, &named(&format!("New {i}"))).unwrap_err();
    }
    assert_eq!(load(&path).unwrap().club.name, "C");
    assert_eq!(copies(&path), ["A", "B", "C"]);
    save(&path, &named("D")).unwrap();
    assert_eq!(copies(&path), ["A", "B", "C"]);
}

struct RenameFails {
    target: PathBuf,
}

impl Disk for RenameFails {
    fn kind(&self, path: &Path) -> io::Result<Kind> {
        Real.kind(path)
    }
    fn read(&self, path: &Path, most: u64) -> io::Result<Vec<u8>> {
        Real.read(path, most)
    }
    fn write_new(&self, path: &Path, bytes: &[u8], like: Option<&Path>) -> io::Result<()> {
        Real.write_new(path, bytes, like)
    }
    fn keep(&self, from: &Path, to: &Path) -> io::Result<()> {
        Real.keep(from, to)
    }
    fn rename(&self, from: &Path, to: &Path) -> io::Result<()> {
        if to.file_name() == self.target.file_name() {
            return Err(io::Error::from(ErrorKind::PermissionDenied));
        }
        Real.rename(from, to)
    }
    fn remove(&self, path: &Path) -> io::Result<()> {
        Real.remove(path)
    }
    fn create_folder(&self, path: &Path) -> io::Result<()> {
        Real.create_folder(path)
    }
    fn sync_folder(&self, path: &Path) -> io::Result<()> {
        Real.sync_folder(path)
    }
    fn resolve(&self, path: &Path) -> io::Result<PathBuf> {
        Real.resolve(path)
    }
}

/// The error a full disk really gives (`/dev/full`, Linux) is the one the sentence is about.
#[cfg(target_os = "linux")]
#[test]
fn a_really_full_disk_is_said_to_be_full() {
    let mut full = fs::OpenOptions::new()
        .write(true)
        .open("/dev/full")
        .unwrap();
    let error = full.write_all(b"x").unwrap_err();
    let dir = tempfile::tempdir().unwrap();
    let path = dir.path().join("Lagoon.daystrand");
    // Calls: resolve, kind, write.
    let disk = Failing {
        at: 2,
        kind: error.kind(),
        calls: Cell::new(0),
    };
    let said = save_on(&disk, &path, &named("New")).unwrap_err();
    let place = dir.path().display();
    assert_eq!(
        said.sentence,
        format!("“Lagoon.daystrand” was not written: the disk is full in {place}.")
    );
    assert_eq!(
        fs::read_dir(dir.path()).unwrap().count(),
        0,
        "nothing is left behind"
    );
}

/// A file left by a run that was cut off is no obstacle.
#[test]
fn leftovers_are_no_obstacle() {
    let dir = tempfile::tempdir().unwrap();
    let path = dir.path().join("Lagoon.daystrand");
    let left = format!(".Lagoon.daystrand.writing-{}", std::process::id());
    fs::write(dir.path().join(left), b"half").unwrap();
    save(&path, &named("New")).unwrap();
    assert_eq!(load(&path).unwrap().club.name, "New");
    assert_eq!(fs::read_dir(dir.path()).unwrap().count(), 1);
}
