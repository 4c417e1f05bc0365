//! What is said when the disk does not do what was asked: what, where, and what to do.

use std::fmt;
use std::io::{self, ErrorKind};
use std::path::{Path, PathBuf};

/// Why a file could not be read or written.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct FileError {
    /// The file or folder it is about.
    pub path: PathBuf,
    /// What happened and where.
    pub sentence: String,
    /// What to do.
    pub hint: String,
}

impl fmt::Display for FileError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} {}", self.sentence, self.hint)
    }
}

impl std::error::Error for FileError {}

impl FileError {
    /// From what happened and what to do.
    pub(super) fn new(path: &Path, sentence: impl Into<String>, hint: impl Into<String>) -> Self {
        Self {
            path: path.to_path_buf(),
            sentence: sentence.into(),
            hint: hint.into(),
        }
    }

    /// Reading failed.
    pub(super) fn reading(path: &Path, error: &io::Error) -> Self {
        let name = name(path);
        let (sentence, hint) = match error.kind() {
            ErrorKind::NotFound | ErrorKind::NotADirectory => (
                format!("“{name}” is not in {}.", folder(path)),
                "It may have been moved or renamed, or the drive it was on is not connected."
                    .to_owned(),
            ),
            ErrorKind::PermissionDenied => (
                format!("“{name}” in {} may not be read.", folder(path)),
                "Ask whoever looks after this computer to let you read it.".to_owned(),
            ),
            _ => (
                format!("“{name}” in {} could not be read: {error}.", folder(path)),
                "Try again; if it is on a stick or a network drive, check that it is connected."
                    .to_owned(),
            ),
        };
        Self::new(path, sentence, hint)
    }

    /// Writing failed; what was there before is still there.
    pub(super) fn writing(path: &Path, error: &io::Error) -> Self {
        let name = name(path);
        let place = folder(path);
        let (what, hint) = match error.kind() {
            ErrorKind::StorageFull | ErrorKind::QuotaExceeded => (
                format!("the disk is full in {place}"),
                "Free some space, or choose a folder on another disk.",
            ),
            ErrorKind::PermissionDenied | ErrorKind::ReadOnlyFilesystem => (
                format!("the folder {place} may not be written to"),
                "Choose another folder, such as your documents.",
            ),
            ErrorKind::NotFound | ErrorKind::NotADirectory => (
                format!("the folder {place} is not there"),
                "Connect the drive it was on, or choose another folder.",
            ),
            ErrorKind::IsADirectory => (
                format!("a folder of that name is in {place}"),
                "Choose another name.",
            ),
            ErrorKind::InvalidFilename | ErrorKind::FileTooLarge => (
                format!("the disk does not take it in {place} ({error})"),
                "Choose a shorter name or another folder.",
            ),
            _ => (
                format!("writing into {place} failed ({error})"),
                "Try again, or choose another folder.",
            ),
        };
        Self::new(path, format!("“{name}” was not written: {what}."), hint)
    }

    /// Says besides that nothing is lost.
    pub(super) fn nothing_lost(mut self) -> Self {
        self.hint += " Nothing is lost: your changes are still open here, and the file that was \
                      there before is as it was.";
        self
    }
}

/// The name of a file for a sentence.
pub(super) fn name(path: &Path) -> String {
    let name = path.file_name().unwrap_or(path.as_os_str());
    name.to_string_lossy().into_owned()
}

/// The folder of a file for a sentence.
pub(super) fn folder(path: &Path) -> String {
    match path.parent() {
        Some(p) if p.as_os_str().is_empty() => "this folder".to_owned(),
        Some(p) => p.display().to_string(),
        None => path.display().to_string(),
    }
}
