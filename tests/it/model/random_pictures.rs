//! Random edits of the club's own pictures, and pictures to test with.

use std::io::Cursor;
use std::sync::Arc;

use daystrand::model::club::Club;
use daystrand::model::edit::{BoardEdit, Edit};
use daystrand::model::hand::Content;
use daystrand::model::ids::{PictureId, SymbolId};
use daystrand::model::picture::{Drawing, Made, Photo, PhotoKind, Picture};
use daystrand::model::privacy::{Class, Guarded};
use daystrand::model::profile::PhotoConsent;
use image::{ImageFormat, Rgb, RgbImage};

use super::random::Seed;

/// A photograph of one tone with a stripe, as JPEG or as PNG.
pub fn photo(kind: PhotoKind, [w, h]: [u32; 2], tone: u8) -> Arc<Photo> {
    let image = RgbImage::from_fn(w, h, |x, y| {
        if x / 4 == y / 4 {
            Rgb([250, 240, 20])
        } else {
            Rgb([tone, 90, 255 - tone])
        }
    });
    let format = match kind {
        PhotoKind::Jpeg => ImageFormat::Jpeg,
        PhotoKind::Png => ImageFormat::Png,
    };
    let mut bytes = Vec::new();
    image
        .write_to(&mut Cursor::new(&mut bytes), format)
        .unwrap();
    Arc::new(Photo::new(kind, [w, h], bytes))
}

/// A drawing of one square.
pub fn drawing(side: usize) -> Arc<Drawing> {
    Arc::new(Drawing::new(&format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 240 240\">\n<path \
         d=\"M20 20h{side}v{side}h-{side}z\" fill=\"#16323A\"/>\n</svg>\n"
    )))
}

/// An edit of the pictures, or one that shows one of them on a board.
pub fn edit(club: &Club, seed: &Seed) -> Edit {
    let old = club.pictures.get(seed.a % (club.pictures.len() + 1));
    let id = old.map_or(PictureId(77), |p| p.id);
    let who = club.participants.get(seed.b % 4).map(|p| p.id);
    let made = match seed.at % 3 {
        0 => Made::Photo(photo(PhotoKind::Png, [9, 5], seed.a as u8)),
        _ => Made::Drawing(drawing(20 + seed.at % 9)),
    };
    let picture = Picture {
        id,
        words: vec![seed.words.clone(), " ".into()],
        whose: who.filter(|_| seed.flag),
        stands_for: (seed.b.is_multiple_of(3)).then(|| SymbolId::new("dig")),
        person: seed.b.is_multiple_of(5),
        consent: PhotoConsent::ALL[seed.at % 4],
        wish: Guarded::new(Class::Coordinator, seed.words.clone()),
        source: seed.words.clone(),
        ..Picture::new(&seed.words, made)
    };
    match seed.kind % 5 {
        0 | 1 => Edit::AddPicture(picture),
        2 => Edit::ChangePicture(picture),
        3 => Edit::RemovePicture(id),
        _ => {
            let shown = Content {
                activity: None,
                symbol: picture.symbol(),
                label: "Ours".into(),
            };
            let session = club.sessions.first().map(|s| s.id);
            let who = who.or_else(|| club.participants.first().map(|p| p.id));
            match session.zip(who) {
                Some((s, who)) => Edit::Board(s, who, BoardEdit::Insert(shown, seed.at)),
                None => Edit::RemovePicture(id),
            }
        }
    }
}
