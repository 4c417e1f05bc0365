//! The words that stand for a choice on the command line: the reader of command lines, help, the
//! manual page and what a shell completes all take them from here.

use crate::layout::{InkChoice, SheetKind, Turn};
use crate::model::club::Paper;
use crate::model::people::{Age, Skin};
use crate::symbols::lexicon::lexicons;
use crate::symbols::variant::Ink;
use crate::workbench::command::Format;

/// A word that can be chosen, and what it means where that is not plain.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Word {
    /// As typed.
    pub word: &'static str,
    /// What it means; empty where the word is plain.
    pub said: &'static str,
}

/// Papers.
pub const PAPERS: [(&str, Paper); 4] = [
    ("A4", Paper::A4),
    ("A3", Paper::A3),
    ("A5", Paper::A5),
    ("Letter", Paper::Letter),
];

/// Which way up a sheet is.
pub const TURNS: [(&str, Turn); 3] = [
    ("as-suits", Turn::AsSuits),
    ("portrait", Turn::Portrait),
    ("landscape", Turn::Landscape),
];

/// Inks of sheets.
pub const INKS: [(&str, InkChoice); 3] = [
    ("colour", InkChoice::Colour),
    ("grey", InkChoice::Grey),
    ("outline", InkChoice::Outline),
];

/// Forms of files.
pub const FORMATS: [(&str, Format); 4] = [
    ("pdf", Format::Pdf),
    ("png", Format::Png),
    ("text", Format::Text),
    ("html", Format::Html),
];

/// Inks of contact sheets.
pub const SYMBOL_INKS: [(&str, Ink); 4] = [
    ("colour", Ink::Colour),
    ("grey", Ink::Grey),
    ("outline", Ink::Outline),
    ("on-dark", Ink::OnDark),
];

/// Ages of people in pictures.
pub const AGES: [(&str, Age); 3] = [
    ("child", Age::Child),
    ("teen", Age::Teen),
    ("adult", Age::Adult),
];

/// Skins of the main person in a picture.
pub const SKINS: [(&str, Skin); 4] = [
    ("light", Skin::Light),
    ("warm", Skin::Warm),
    ("tan", Skin::Tan),
    ("deep", Skin::Deep),
];

/// Kinds of sheets by their words; `None` is all that an evening usually takes.
pub fn sheets() -> Vec<(&'static str, Option<SheetKind>)> {
    let kinds = SheetKind::ALL.iter().map(|k| (k.word(), Some(*k)));
    kinds.chain([("all", None)]).collect()
}

/// The languages that there are words in.
pub fn languages() -> Vec<&'static str> {
    lexicons().iter().map(|l| l.language.tag()).collect()
}

/// Words that explain themselves.
pub fn plain<T>(choices: &[(&'static str, T)]) -> Vec<Word> {
    let word = |(word, _): &(&'static str, T)| Word { word, said: "" };
    choices.iter().map(word).collect()
}

/// The sheets with what they are called in the window.
pub fn sheets_said() -> Vec<Word> {
    let said = |(word, kind): &(&'static str, Option<SheetKind>)| Word {
        word,
        said: kind.map_or("All that an evening usually takes", SheetKind::label),
    };
    sheets().iter().map(said).collect()
}

/// The formats with what they are.
pub fn formats_said() -> Vec<Word> {
    let said = |(word, format): &(&'static str, Format)| Word {
        word,
        said: match format {
            Format::Pdf => "PDF, for printing",
            Format::Png => "a picture for each page",
            Format::Text => "the words of a story",
            Format::Html => "a story as one page for a telephone",
        },
    };
    FORMATS.iter().map(said).collect()
}

/// Words as a choice: "a, b or c".
pub fn or<S: AsRef<str>>(words: &[S]) -> String {
    let words: Vec<&str> = words.iter().map(AsRef::as_ref).collect();
    match words.as_slice() {
        [] => String::new(),
        [one] => (*one).to_owned(),
        [all @ .., last] => format!("{} or {last}", all.join(", ")),
    }
}
