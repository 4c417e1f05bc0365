//! The words of version 1 for the club's own pictures. Photographs stand apart from the pictures that
//! show them, each once, under the sum of their bytes.

use std::collections::BTreeMap;
use std::sync::Arc;

use base64::Engine as _;
use base64::engine::general_purpose::STANDARD;
use serde::{Deserialize, Serialize};

use super::{Day, is_false, settings};
use crate::model::ids::{ParticipantId, PictureId, SymbolId};
use crate::model::picture::{self, Made};
use crate::model::privacy::{Class, Guarded};
use crate::model::{club, limits};

/// A picture; one of `photo` and `drawing` says what is seen.
#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Picture {
    id: u32,
    pub(super) name: String,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    words: Vec<String>,
    /// The sum of the bytes of a photograph.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    photo: Option<String>,
    /// The lines of an SVG.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    drawing: Option<Vec<String>>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    whose: Option<u32>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    stands_for: Option<String>,
    #[serde(default, skip_serializing_if = "is_false")]
    person: bool,
    consent: settings::Photos,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    said_on: Option<Day>,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    wish: String,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    source: String,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    licence: String,
}

/// A photograph: its file in Base64 (RFC 4648), and its sum.
#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Photo {
    sha256: String,
    kind: Kind,
    width: u32,
    height: u32,
    base64: String,
}

settings::words!(Kind = picture::PhotoKind { Jpeg, Png });

pub(super) fn write(p: &picture::Picture) -> Picture {
    let (photo, drawing) = match &p.made {
        Made::Photo(photo) => (Some(photo.hash().to_owned()), None),
        Made::Drawing(d) => (None, Some(d.svg().lines().map(str::to_owned).collect())),
    };
    Picture {
        id: p.id.0,
        name: p.name.clone(),
        words: p.words.clone(),
        photo,
        drawing,
        whose: p.whose.map(|w| w.0),
        stands_for: p.stands_for.as_ref().map(ToString::to_string),
        person: p.person,
        consent: p.consent.into(),
        said_on: p.said_on.map(Day),
        wish: p.wish.for_owner().clone(),
        source: p.source.clone(),
        licence: p.licence.clone(),
    }
}

/// Every photograph once, in the order of their sums.
pub(super) fn write_photos(club: &club::Club) -> Vec<Photo> {
    let photos = club.pictures.iter().filter_map(|p| p.photo());
    let once: BTreeMap<&str, &Arc<picture::Photo>> = photos.map(|p| (p.hash(), p)).collect();
    let all = once.into_values().map(|photo| {
        let [width, height] = photo.size();
        Photo {
            sha256: photo.hash().to_owned(),
            kind: photo.kind().into(),
            width,
            height,
            base64: STANDARD.encode(photo.bytes()),
        }
    });
    all.collect()
}

/// Photographs by their sums.
pub(super) type Photos = BTreeMap<String, Arc<picture::Photo>>;

/// The photographs of a file.
///
/// # Errors
/// Which of them is damaged.
pub(super) fn read_photos(all: Vec<Photo>) -> Result<Photos, String> {
    let mut photos = Photos::new();
    for (i, p) in all.into_iter().enumerate() {
        let bytes = STANDARD.decode(&p.base64).unwrap_or_default();
        let photo = picture::Photo::new(p.kind.into(), [p.width, p.height], bytes);
        if photo.hash() != p.sha256 {
            let number = i + 1;
            return Err(format!("photographs, number {number}: it is damaged."));
        }
        photos.insert(p.sha256, Arc::new(photo));
    }
    Ok(photos)
}

/// A picture of a file.
///
/// # Errors
/// When nothing is to be seen on it.
pub(super) fn read(p: Picture, photos: &Photos) -> Result<Arc<picture::Picture>, String> {
    let made = match (p.photo, p.drawing) {
        (Some(sum), None) => Made::Photo(Arc::clone(
            photos
                .get(&sum)
                .ok_or("its photograph is not in the file")?,
        )),
        (None, Some(lines)) => Made::Drawing(Arc::new(picture::Drawing::new(&lines.join("\n")))),
        _ => return Err("it needs either a photograph or a drawing".to_owned()),
    };
    Ok(Arc::new(limits::picture::tidy(&picture::Picture {
        id: PictureId(p.id),
        name: p.name,
        words: p.words,
        made,
        whose: p.whose.map(ParticipantId),
        stands_for: p.stands_for.map(|s| SymbolId::new(&s)),
        person: p.person,
        consent: p.consent.into(),
        said_on: p.said_on.map(|d| d.0),
        wish: Guarded::new(Class::Coordinator, p.wish),
        source: p.source,
        licence: p.licence,
    })))
}
