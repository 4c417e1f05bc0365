//! What values of the club's own pictures may be.

use super::{TEXT_CHARS, filled, text, tidy_line, tidy_text};
use crate::model::club::Club;
use crate::model::edit::Refused;
use crate::model::picture::{Made, Picture};
use crate::model::privacy::Guarded;

/// Most pixels of a photograph on a side: 300 dots an inch across the longer side of A4.
pub const SIDE: u32 = 4_000;
/// Most bytes of one photograph.
pub const PHOTO_BYTES: usize = 12 * 1024 * 1024;
/// Most bytes of one drawing.
pub const DRAWING_BYTES: usize = 2 * 1024 * 1024;
/// Most bytes of all photographs together: as text in a file they take a third more, and the file
/// stays under what is opened.
pub const ALL_BYTES: usize = 40 * 1024 * 1024;
/// Most words to find a picture by.
pub const WORDS: usize = 50;

/// Tidies every text of a picture; empty words go.
pub(crate) fn tidy(p: &Picture) -> Picture {
    let words = p.words.iter().map(|w| tidy_line(w));
    Picture {
        name: tidy_line(&p.name),
        words: words.filter(|w| !w.is_empty()).collect(),
        wish: Guarded::new(p.wish.class(), tidy_text(p.wish.for_owner())),
        source: tidy_line(&p.source),
        licence: tidy_line(&p.licence),
        ..p.clone()
    }
}

/// Refuses a picture without a name, too large, or with a text too long.
pub fn check(p: &Picture) -> Result<(), Refused> {
    filled("The name of the picture", &p.name)?;
    super::count("words for a picture", p.words.len(), WORDS)?;
    for word in &p.words {
        text("A word", word)?;
    }
    text("What they say about the picture", p.wish.for_owner())?;
    text("Where the picture is from", &p.source)?;
    text("The licence", &p.licence)?;
    let stands_for = p.stands_for.as_ref().map_or("", |s| s.as_str());
    if stands_for.len() > TEXT_CHARS || p.stands_for.as_ref().is_some_and(|s| s.own().is_some()) {
        return Err(Refused::new(
            "A picture can only stand for a symbol.",
            "Choose a symbol that is no picture of your own.",
        ));
    }
    match &p.made {
        Made::Photo(photo) => {
            let [w, h] = photo.size();
            let sides = 1..=SIDE;
            if !(sides.contains(&w) && sides.contains(&h)) || photo.bytes().len() > PHOTO_BYTES {
                return Err(Refused::new(
                    format!("{} is larger than a picture can be.", p.name),
                    "Make it smaller.",
                ));
            }
        }
        Made::Drawing(d) if d.svg().len() > DRAWING_BYTES => {
            return Err(Refused::new(
                format!("{} has more in it than a drawing can have.", p.name),
                "Draw it with fewer strokes.",
            ));
        }
        Made::Drawing(_) => {}
    }
    Ok(())
}

/// Refuses photographs that do not go into one file.
pub fn together(club: &Club) -> Result<(), Refused> {
    if club.photo_bytes() <= ALL_BYTES {
        return Ok(());
    }
    Err(Refused::new(
        "The photographs of this club take more room than its file has.",
        "Remove pictures that are no longer needed.",
    ))
}
