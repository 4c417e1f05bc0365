//! A participant's story as one file for a telephone.

use crate::export::html::{Book, Picture, html};
use crate::layout::told::told;
use crate::layout::{Request, Sheet};
use crate::model::club::Club;

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
