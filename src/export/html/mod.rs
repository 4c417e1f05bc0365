//! A story as one HTML file for a family's telephone: drawings, letters, looks and script are inside,
//! and a policy in the file keeps it from fetching anything.
//!
//! Without its script it is a page to read from top to bottom; with it, one page of the story at a
//! time. It remembers nothing. Never sees a club: it is handed a story and its drawings.
//!
//! `drawing` writes drawings, `letters` cuts fonts down, `pages` and `frame` write what is read,
//! `policy` says what the file may do, `markup` keeps every word from being taken for markup.

mod drawing;
mod frame;
pub mod letters;
mod markup;
mod pages;
pub mod policy;

use std::collections::BTreeMap;
use std::fmt::Write as _;

use crate::assets;
use crate::story::Story;
use crate::symbols::library::Drawn;
use markup::{attribute, text};
use pages::Pages;

/// A story with all that is shown beside it.
#[derive(Clone, Debug)]
pub struct Book {
    /// The story.
    pub story: Story,
    /// Language of its words as a BCP 47 tag.
    pub lang: String,
    /// The participant's mark.
    pub mark: Drawn,
    /// What the mark is called.
    pub mark_words: String,
    /// What stands at the foot: code of the plan, day, mark.
    pub foot: String,
    /// What the finished place is called.
    pub finished: String,
    /// Every picture of the story.
    pub pictures: Vec<Picture>,
}

/// A picture of a story.
#[derive(Clone, Debug)]
pub struct Picture {
    /// The drawing.
    pub drawn: Drawn,
    /// What can be seen on it, in one sentence.
    pub shows: String,
}

/// The file. Pure: the same book gives the same bytes.
pub fn html(book: &Book) -> String {
    let pictures: BTreeMap<&str, &Picture> = book
        .pictures
        .iter()
        .map(|p| (p.drawn.id.as_str(), p))
        .collect();
    let pages = Pages::new(book, &pictures);
    let mut body = String::new();
    drawing::write_all(&mut body, book, pictures.values().copied());
    frame::header(&mut body, book);
    pages.write(&mut body);
    frame::footer(&mut body, book);
    frame::hold(&mut body, book, pages.has_steps());
    let style = format!("{}{}", letters::faces(&body), assets::PHONE_STYLE);
    let script = assets::PHONE_SCRIPT;
    let mut out = String::with_capacity(body.len() + style.len() + script.len() + 2048);
    let _ = write!(
        out,
        "<!DOCTYPE html>\n<html lang=\"{}\">\n<head>\n<meta charset=\"utf-8\">\n\
         <meta http-equiv=\"Content-Security-Policy\" content=\"{}\">\n\
         <meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n\
         <meta name=\"format-detection\" content=\"telephone=no, date=no, address=no, email=no\">\n\
         <meta name=\"color-scheme\" content=\"light dark\">\n\
         <title>{}</title>\n<!-- {} -->\n<style>{style}</style>\n<script>{script}</script>\n\
         </head>\n<body>\n{body}</body>\n</html>\n",
        attribute(&book.lang),
        attribute(&policy::policy(&style, script, body.contains("<image "))),
        text(&book.story.title),
        letters::LICENCE,
    );
    out
}
