//! A participant's story as one file for a telephone, and as plain text.

use crate::export::html::{Book, Picture, html};
use crate::export::text;
use crate::layout::told::told;
use crate::layout::{Request, Sheet};
use crate::model::club::Club;

/// The words of a story's sheet; nothing for a sheet that is nobody's.
pub fn words(club: &Club, request: &Request, sheet: &Sheet) -> Option<String> {
    let told = told(club, request, sheet.participant?)?;
    Some(text::text(&told.story, &told.foot))
}

/// The file of a story's sheet; nothing for a sheet that is nobody's.
pub fn file(club: &Club, request: &Request, sheet: &Sheet) -> Option<String> {
    let told = told(club, request, sheet.participant?)?;
    let picture = |(drawn, shows)| Picture { drawn, shows };
    Some(html(&Book {
        story: told.story,
        lang: sheet.pages.first()?.lang.clone(),
        mark: told.mark,
        mark_words: told.mark_words,
        foot: told.foot,
        finished: told.finished,
        pictures: told.pictures.into_iter().map(picture).collect(),
    }))
}
