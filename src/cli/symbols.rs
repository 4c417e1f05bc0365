//! `symbols`: what is asked of it, and the pictures that fit some words, all pictures and marks, or
//! contact sheets of them.

use std::io::Write;
use std::path::PathBuf;

use lexopt::Parser;

use super::args::{Request, Rest, list, one_of, options, path, text};
use super::table::Topic;
use super::words::{AGES, PAPERS, SKINS, SYMBOL_INKS, languages, or};
use super::{DONE, Outcome, Trouble, say};
use crate::layout::contact::Contact;
use crate::model::club::Paper;
use crate::model::language::Language;
use crate::model::people::Figure;
use crate::symbols::lexicon::lexicon;
use crate::symbols::library::{Symbol, library};
use crate::symbols::variant::Ink;
use crate::workbench::contact;

/// What is wanted of the symbols.
#[derive(Debug, Default)]
pub struct SymbolsWish {
    /// Words to find them by.
    pub find: Vec<String>,
    /// The language of the words.
    pub words: Language,
    /// Where contact sheets go; listed on the screen otherwise.
    pub to: Option<PathBuf>,
    /// Inks of the contact sheets.
    pub inks: Vec<Ink>,
    /// Paper of the contact sheets.
    pub paper: Option<Paper>,
    /// How people are drawn on them.
    pub figure: Figure,
    /// Left and right exchanged.
    pub mirrored: bool,
}

/// The request in the words after `symbols`.
pub fn parse(parser: &mut Parser) -> Result<Request, Trouble> {
    let mut wish = SymbolsWish::default();
    let mut contact_only = None;
    let rest = options(parser, Topic::Symbols, |name, parser| {
        match name {
            "to" => wish.to = Some(path(parser, name)?),
            "words" => wish.words = language(&text(parser, name)?)?,
            "paper" => wish.paper = Some(one_of(&text(parser, name)?, "paper", &PAPERS)?),
            "people" => wish.figure.age = one_of(&text(parser, name)?, "age", &AGES)?,
            "skin" => wish.figure.skin = one_of(&text(parser, name)?, "skin", &SKINS)?,
            "mirrored" => wish.mirrored = true,
            "ink" => {
                for word in list(&text(parser, name)?) {
                    wish.inks.push(one_of(&word, "ink", &SYMBOL_INKS)?);
                }
            }
            _ => return Ok(false),
        }
        if !["to", "words"].contains(&name) {
            contact_only = Some(name.to_owned());
        }
        Ok(true)
    })?;
    let Rest::Files(find) = rest else {
        return Ok(Request::Help(Topic::Symbols));
    };
    wish.find = find
        .iter()
        .map(|w| w.to_string_lossy().into_owned())
        .collect();
    match (&wish.to, contact_only) {
        (None, Some(option)) => Err(Trouble::new(
            format!("--{option} is for contact sheets, and it is not said where they go."),
            "Name a folder with --to DIR.",
        )),
        (Some(_), _) if !wish.find.is_empty() => Err(Trouble::new(
            "Contact sheets hold all symbols.",
            "Leave out the words, or leave out --to to list what fits them.",
        )),
        _ => {
            if wish.inks.is_empty() {
                wish.inks = vec![Ink::Colour, Ink::Grey, Ink::Outline];
            }
            Ok(Request::Symbols(wish))
        }
    }
}

/// A language that there are words in.
fn language(tag: &str) -> Result<Language, Trouble> {
    let known = languages();
    let found = known.iter().find(|t| t.eq_ignore_ascii_case(tag));
    found.map(|t| Language::new(t)).ok_or_else(|| {
        Trouble::new(
            format!("There are no words in “{tag}”."),
            format!("Choose {}.", or(&known)),
        )
    })
}

/// Lists, or writes contact sheets and says what was written.
pub fn run(wish: &SymbolsWish, out: &mut dyn Write) -> Result<Outcome, Trouble> {
    match &wish.to {
        Some(to) => {
            let one = |ink: &Ink| Contact {
                paper: wish.paper.unwrap_or(Paper::A4),
                ink: *ink,
                figure: wish.figure,
                mirrored: wish.mirrored,
                words: wish.words.clone(),
            };
            let wishes: Vec<Contact> = wish.inks.iter().map(one).collect();
            let written = contact::write(&wishes, to).map_err(|notice| Trouble::from(&notice))?;
            for path in &written {
                say(out, &path.display().to_string());
            }
        }
        None => write_list(wish, out),
    }
    Ok(Outcome::code(DONE))
}

/// Name, label and what can be seen, a picture a line.
fn write_list(wish: &SymbolsWish, out: &mut dyn Write) {
    let words = lexicon(&wish.words);
    let find = wish.find.join(" ");
    let found = words.search(&find);
    if found.is_empty() {
        say(
            out,
            &format!("No picture fits “{find}”. Try one word, or the start of one."),
        );
        return;
    }
    let row = |label: &str, s: &Symbol| (s.id.to_string(), label.to_owned(), s.shows.clone());
    let mut rows: Vec<_> = found.iter().map(|s| row(words.label(&s.id), s)).collect();
    if find.trim().is_empty() {
        let marks = library().marks().iter();
        rows.extend(marks.map(|s| row(words.mark(&s.id), s)));
    }
    let widest = |text: &dyn Fn(&(String, String, String)) -> usize| {
        rows.iter().map(text).max().unwrap_or(0)
    };
    let ids = widest(&|r| r.0.chars().count());
    let labels = widest(&|r| r.1.chars().count());
    for (id, label, shows) in &rows {
        let line = format!("{id:ids$}  {label:labels$}  {shows}");
        say(out, line.trim_end());
    }
}
