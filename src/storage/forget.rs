//! Pictures that were removed go from the earlier copies as well: whoever asks for a photograph to be
//! deleted means all of it.

use std::collections::BTreeSet;
use std::path::Path;

use super::club_file::{MAX_BYTES, from_bytes, to_bytes};
use super::disk::{Disk, Kind, replace};
use super::earlier;
use crate::model::club::Club;
use crate::model::edit::{Edit, apply};
use crate::model::ids::PictureId;

/// Takes out of the earlier copies of a club file what the file held before and the club no longer
/// has. What was done, in a sentence.
///
/// # Errors
/// Which copies could not be changed.
pub(super) fn pictures(
    disk: &dyn Disk,
    path: &Path,
    before: &[u8],
    club: &Club,
) -> Result<Option<&'static str>, String> {
    let kept: BTreeSet<&str> = club.pictures.iter().map(|p| p.hash()).collect();
    let gone = club_in(path, before).is_some_and(|old| !removed(&old, &kept).is_empty());
    if !gone {
        return Ok(None);
    }
    let mut failed = Vec::new();
    for copy in earlier::copies(path) {
        let Ok(Kind::File { .. }) = disk.kind(&copy) else {
            continue;
        };
        if !without(disk, &copy, &kept) {
            let name = copy.file_name().unwrap_or_default().to_string_lossy();
            failed.push(format!("“{name}”"));
        }
    }
    if failed.is_empty() {
        return Ok(Some(
            "Removed pictures are gone from the file and from its earlier copies.",
        ));
    }
    let list = failed.join(", ");
    Err(format!(
        "Removed pictures may still be in these earlier copies, which could not be changed: {list}. \
         Delete them by hand."
    ))
}

/// The club in a file, if it has pictures.
fn club_in(path: &Path, content: &[u8]) -> Option<Club> {
    const PICTURES: &[u8] = b"\"pictures\"";
    let some = content.windows(PICTURES.len()).any(|w| w == PICTURES);
    let loaded = some.then(|| from_bytes(path, content).ok()).flatten();
    loaded.map(|l| l.club)
}

fn removed(club: &Club, kept: &BTreeSet<&str>) -> Vec<PictureId> {
    let gone = club.pictures.iter().filter(|p| !kept.contains(p.hash()));
    gone.map(|p| p.id).collect()
}

/// Writes a copy without the pictures that are not kept; whether it holds none of them now.
fn without(disk: &dyn Disk, copy: &Path, kept: &BTreeSet<&str>) -> bool {
    let Ok(content) = disk.read(copy, MAX_BYTES + 1) else {
        return false;
    };
    let Some(mut club) = club_in(copy, &content) else {
        // One without pictures is as wanted; one that cannot be read has to be looked at.
        return from_bytes(copy, &content).is_ok();
    };
    let gone = removed(&club, kept);
    if gone.is_empty() {
        return true;
    }
    for id in gone {
        match apply(&club, &Edit::RemovePicture(id)) {
            Ok((next, _)) => club = next,
            Err(_) => return false,
        }
    }
    let bytes = to_bytes(copy, &club);
    bytes.is_ok_and(|bytes| replace(disk, copy, &bytes, Some(copy), || ()).is_ok())
}
