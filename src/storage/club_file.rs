//! Opening and saving a club file.

use std::io;
use std::path::{Path, PathBuf};

use serde::Deserialize;
use serde_json::error::Category;

use super::disk::{Disk, Kind, replace};
use super::error::{FileError, folder, name};
use super::{earlier, forget, pretty, v1};
use crate::model::club::Club;

/// What the name of a club file ends in.
pub const EXTENSION: &str = "daystrand";

/// The largest file that is opened: 64 MB. A club of twenty people and a hundred sessions has about
/// one.
pub const MAX_BYTES: u64 = 64 * 1024 * 1024;

/// A club that was opened.
#[derive(Debug)]
pub struct Loaded {
    /// The club.
    pub club: Club,
    /// What was mended, a sentence each. If there are any, the club differs from the file.
    pub notes: Vec<String>,
    /// What the file held, for [`super::changed_elsewhere`].
    pub stamp: Stamp,
}

/// A club that was saved.
#[derive(Debug)]
pub struct Saved {
    /// What could not be done besides, a sentence each, such as keeping an earlier copy.
    pub notes: Vec<String>,
    /// What was done besides, in a sentence.
    pub told: Option<&'static str>,
    /// What the file holds now, for [`super::changed_elsewhere`].
    pub stamp: Stamp,
}

/// Stands for the content of a file; tells two contents apart, not who wrote them.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Stamp {
    pub(super) bytes: u64,
    pub(super) hash: u64,
}

impl Stamp {
    /// FNV-1a, 64 bit: offset basis and prime from draft-eastlake-fnv, section 5.
    fn of(content: &[u8]) -> Self {
        let hash = content.iter().fold(0xcbf2_9ce4_8422_2325, |hash, byte| {
            (hash ^ u64::from(*byte)).wrapping_mul(0x0000_0100_0000_01b3)
        });
        Self {
            bytes: content.len() as u64,
            hash,
        }
    }
}

/// Opens a club file on a disk.
///
/// # Errors
/// See [`super::load`].
pub(super) fn load_on(disk: &dyn Disk, path: &Path) -> Result<Loaded, FileError> {
    let kind = disk.kind(path).map_err(|e| FileError::reading(path, &e))?;
    let name = name(path);
    match kind {
        Kind::Folder => Err(FileError::new(
            path,
            format!("“{name}” is a folder, not a club file."),
            format!("Open a file in it that ends in .{EXTENSION}."),
        )),
        Kind::Other => Err(FileError::new(
            path,
            format!("“{name}” is not an ordinary file."),
            format!("Open a file that ends in .{EXTENSION}."),
        )),
        Kind::File { bytes, .. } if bytes > MAX_BYTES => Err(too_large(path)),
        Kind::File { .. } => {
            let content = disk
                .read(path, MAX_BYTES + 1)
                .map_err(|e| FileError::reading(path, &e))?;
            from_bytes(path, &content).map_err(|e| point_to_earlier(disk, e))
        }
    }
}

/// A damaged file is less of a blow when earlier copies are there.
fn point_to_earlier(disk: &dyn Disk, mut error: FileError) -> FileError {
    let copies = earlier::folder(&error.path);
    if disk.kind(&copies).is_ok_and(|k| k == Kind::Folder) {
        error.hint += &format!(" Earlier copies are in the folder “{}”.", name(&copies));
    }
    error
}

fn too_large(path: &Path) -> FileError {
    FileError::new(
        path,
        format!("“{}” is larger than any club file can be.", name(path)),
        format!("Open a file that ends in .{EXTENSION}; none has more than 64 MB."),
    )
}

/// The club in the content of a file. `path` is for what is said; nothing is read.
///
/// # Errors
/// When the content is not a whole club file of a version known here.
pub fn from_bytes(path: &Path, content: &[u8]) -> Result<Loaded, FileError> {
    read_as(v1::FORMAT, path, content)
}

/// The set in the content of a file.
///
/// # Errors
/// When the content is not a whole set.
pub(super) fn set_from_bytes(path: &Path, content: &[u8]) -> Result<Club, FileError> {
    read_as(v1::SET_FORMAT, path, content).map(|loaded| loaded.club)
}

fn read_as(format: &str, path: &Path, content: &[u8]) -> Result<Loaded, FileError> {
    if content.len() as u64 > MAX_BYTES {
        return Err(too_large(path));
    }
    let text = text_of(path, content)?;
    check_head(format, path, text)?;
    let file: v1::File = serde_json::from_str(text).map_err(|e| damaged(path, &e))?;
    let read = v1::read(file).map_err(|what| {
        FileError::new(
            path,
            format!("“{}” cannot be opened: {what}", name(path)),
            "Nothing was changed. The file was edited by hand or by another program; put that \
             place right or open another copy.",
        )
    })?;
    Ok(Loaded {
        club: read.club,
        notes: read.notes,
        stamp: Stamp::of(content),
    })
}

fn text_of<'a>(path: &Path, content: &'a [u8]) -> Result<&'a str, FileError> {
    // Some editors put a byte order mark before the text.
    let content = content.strip_prefix(b"\xef\xbb\xbf").unwrap_or(content);
    if content.iter().all(u8::is_ascii_whitespace) {
        return Err(FileError::new(
            path,
            format!("“{}” is empty.", name(path)),
            "Nothing can be read from it; open another copy.",
        ));
    }
    std::str::from_utf8(content).map_err(|error| {
        let good = std::str::from_utf8(&content[..error.valid_up_to()]).unwrap_or_default();
        match (looks_like_ours(good), error.error_len()) {
            (true, None) => cut_off(path, good.lines().count()),
            (true, Some(_)) => FileError::new(
                path,
                format!(
                    "“{}” is damaged: line {} holds bytes that are no text.",
                    name(path),
                    good.lines().count().max(1)
                ),
                "Nothing was changed; open another copy.",
            ),
            (false, _) if content.starts_with(b"\xff\xfe") || content.starts_with(b"\xfe\xff") => {
                FileError::new(
                    path,
                    format!("“{}” is text, but not in UTF-8.", name(path)),
                    "Another program saved it in its own way; save it there as UTF-8.",
                )
            }
            (false, _) => foreign(path),
        }
    })
}

/// Whether text begins as a club file does.
fn looks_like_ours(text: &str) -> bool {
    let start = text.trim_start();
    let begins: String = start.chars().take(200).collect();
    start.starts_with('{')
        && begins.contains("\"format\"")
        && [v1::FORMAT, v1::SET_FORMAT]
            .iter()
            .any(|f| begins.contains(f))
}

fn foreign(path: &Path) -> FileError {
    FileError::new(
        path,
        format!("“{}” is not a Daystrand club.", name(path)),
        format!("Open a file that was saved by Daystrand; its name ends in .{EXTENSION}."),
    )
}

/// One of ours, but of another kind.
fn other(path: &Path, kind: &str, hint: &str) -> FileError {
    FileError::new(path, format!("“{}” is {kind}.", name(path)), hint)
}

fn cut_off(path: &Path, line: usize) -> FileError {
    FileError::new(
        path,
        format!(
            "“{}” is cut off: it ends in the middle of line {}.",
            name(path),
            line.max(1)
        ),
        "It was not copied or downloaded completely; copy it again or open another copy.",
    )
}

/// What every version begins with.
#[derive(Deserialize)]
struct Head {
    format: Option<serde_json::Value>,
    version: Option<serde_json::Value>,
}

fn check_head(format: &str, path: &Path, text: &str) -> Result<(), FileError> {
    let head: Head = match serde_json::from_str(text) {
        Ok(head) => head,
        Err(error) if looks_like_ours(text) => return Err(damaged(path, &error)),
        Err(_) => return Err(foreign(path)),
    };
    let is = head.format.as_ref().and_then(|f| f.as_str());
    if is != Some(format) {
        return Err(match is {
            Some(v1::FORMAT) => other(path, "a club", "Open it with “Open…”."),
            Some(v1::SET_FORMAT) => {
                let hint = "Take it in at People, Pictures.";
                other(path, "a set of pictures or activities", hint)
            }
            _ => foreign(path),
        });
    }
    let version = head.version.as_ref().and_then(serde_json::Value::as_u64);
    match version {
        Some(v) if v == u64::from(v1::VERSION) => Ok(()),
        Some(v) if v > u64::from(v1::VERSION) => Err(FileError::new(
            path,
            format!(
                "“{}” was saved by a newer Daystrand (file version {v}; this one reads {}).",
                name(path),
                v1::VERSION
            ),
            "Open it on the computer where it was saved, or install the newer program.",
        )),
        _ => Err(FileError::new(
            path,
            format!("“{}” does not say which file version it is.", name(path)),
            "Nothing was changed; open another copy.",
        )),
    }
}

fn damaged(path: &Path, error: &serde_json::Error) -> FileError {
    if error.classify() == Category::Eof {
        return cut_off(path, error.line());
    }
    let said = error.to_string();
    // The place is said in our own words, and so is what stands there, as far as it is known.
    let what = said.split(" at line ").next().unwrap_or_default();
    let what = what
        .replace("floating point", "number")
        .replace("integer", "number")
        .replace("string", "text")
        .replace("expected u32", "expected a whole number from 0 up")
        .replace("expected f64", "expected a number")
        .replace("unknown variant", "unknown word")
        .replace("invalid type: ", "")
        .replace("invalid value: ", "");
    let what = shortened(&what);
    FileError::new(
        path,
        format!(
            "“{}” is damaged in line {}, column {}: {what}.",
            name(path),
            error.line(),
            error.column()
        ),
        "Nothing was changed; put that place right or open another copy.",
    )
}

/// At most so much of what is in the way as one reads: whole words of a long list.
fn shortened(what: &str) -> String {
    const MOST: usize = 160;
    if what.chars().nth(MOST).is_none() {
        return what.to_owned();
    }
    let kept: String = what.chars().take(MOST).collect();
    let end = kept.rfind(", ").unwrap_or(kept.len());
    format!("{} and others", &kept[..end])
}

/// The content of the file that holds a club: the same club always gives the same bytes.
///
/// # Errors
/// When the club is larger than a file may be.
pub fn to_bytes(path: &Path, club: &Club) -> Result<Vec<u8>, FileError> {
    written(path, &v1::write(club))
}

/// The content of the file that holds a set.
///
/// # Errors
/// When it is larger than a file may be.
pub(super) fn set_to_bytes(path: &Path, set: &Club) -> Result<Vec<u8>, FileError> {
    written(path, &v1::write_set(set))
}

fn written(path: &Path, file: &v1::File) -> Result<Vec<u8>, FileError> {
    let text = pretty::text(file)
        .map_err(|e| FileError::writing(path, &io::Error::other(e)).nothing_lost())?;
    if text.len() as u64 > MAX_BYTES {
        return Err(FileError::new(
            path,
            format!(
                "“{}” was not written: it would be larger than 64 MB.",
                name(path)
            ),
            "Remove sessions that are long past.",
        )
        .nothing_lost());
    }
    Ok(text.into_bytes())
}

/// Saves a club file on a disk.
///
/// # Errors
/// See [`super::save`].
pub fn save_on(disk: &dyn Disk, path: &Path, club: &Club) -> Result<Saved, FileError> {
    // A link stays a link: what it points to is replaced. A new file has nothing to follow.
    let target = disk.resolve(path).unwrap_or_else(|_| path.to_path_buf());
    let bytes = to_bytes(path, club)?;
    let stamp = Stamp::of(&bytes);
    let mut notes = Vec::new();
    let there = what_is_there(disk, path, &target)?;
    if let There::File(old) = &there
        && Stamp::of(old) == stamp
    {
        return Ok(Saved {
            notes,
            told: None,
            stamp,
        });
    }
    let like = matches!(there, There::File(_)).then_some(&*target);
    let keep_old = || {
        if like.is_some()
            && let Err(error) = earlier::keep(disk, &target)
        {
            notes.push(no_copy(&target, &error));
        }
    };
    replace(disk, &target, &bytes, like, keep_old)
        .map_err(|e| FileError::writing(&target, &e).nothing_lost())?;
    let mut told = None;
    if let There::File(old) = &there {
        match forget::pictures(disk, &target, old, club) {
            Ok(done) => told = done,
            Err(note) => notes.push(note),
        }
    }
    Ok(Saved { notes, told, stamp })
}

fn no_copy(target: &Path, error: &io::Error) -> String {
    format!(
        "“{}” is saved, but no earlier copy could be kept in {}: {error}.",
        name(target),
        folder(target)
    )
}

enum There {
    Nothing,
    /// What the file holds.
    File(Vec<u8>),
}

/// Looks at what a save would replace, and refuses what must not be replaced.
fn what_is_there(disk: &dyn Disk, path: &Path, target: &Path) -> Result<There, FileError> {
    if target.file_name().is_none() {
        return Err(FileError::new(
            path,
            format!("“{}” is no name for a file.", path.display()),
            format!("Choose a name that ends in .{EXTENSION}."),
        )
        .nothing_lost());
    }
    let said =
        |sentence: String, hint: &str| Err(FileError::new(path, sentence, hint).nothing_lost());
    let name = name(target);
    match disk.kind(target) {
        Err(e) if e.kind() == io::ErrorKind::NotFound => Ok(There::Nothing),
        Err(e) => Err(FileError::writing(target, &e).nothing_lost()),
        Ok(Kind::Folder) => said(
            format!(
                "“{name}” was not written: a folder of that name is in {}.",
                folder(target)
            ),
            "Choose another name.",
        ),
        Ok(Kind::Other) => said(
            format!("“{name}” was not written: it is not an ordinary file."),
            "Choose another name.",
        ),
        Ok(Kind::File {
            read_only: true, ..
        }) => said(
            format!(
                "“{name}” in {} was not written: it is marked as read-only.",
                folder(target)
            ),
            "Save under another name, or take the mark off.",
        ),
        Ok(Kind::File { .. }) => match disk.read(target, MAX_BYTES) {
            Ok(old) => Ok(There::File(old)),
            Err(e) => Err(FileError::reading(target, &e).nothing_lost()),
        },
    }
}

/// See [`super::changed_elsewhere`].
pub(super) fn changed_on(disk: &dyn Disk, path: &Path, stamp: &Stamp) -> bool {
    let path: PathBuf = disk.resolve(path).unwrap_or_else(|_| path.to_path_buf());
    disk.read(&path, MAX_BYTES + 1)
        .is_ok_and(|content| Stamp::of(&content) != *stamp)
}

#[cfg(test)]
mod tests {
    use super::Stamp;

    /// Test vectors of the FNV draft (draft-eastlake-fnv, appendix C), quoted from memory.
    #[test]
    fn stamps_are_fnv_1a() {
        for (text, hash) in [
            ("", 0xcbf2_9ce4_8422_2325),
            ("a", 0xaf63_dc4c_8601_ec8c),
            ("foobar", 0x8594_4171_f739_67e8),
        ] {
            assert_eq!(Stamp::of(text.as_bytes()).hash, hash);
        }
    }
}
