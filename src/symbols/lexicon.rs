//! What the symbols are called, in each language: one file a language in `icons-src/labels/`.

use std::collections::BTreeMap;
use std::sync::OnceLock;

use serde::Deserialize;

use super::library::{Symbol, library};
use super::search::{Words, split, typed};
use crate::assets;
use crate::model::club::Club;
use crate::model::hand::Content;
use crate::model::ids::SymbolId;
use crate::model::language::{ENGLISH, Language};

/// One file of labels. A language that falls back to another need only hold what differs.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
struct File {
    tag: String,
    name: String,
    #[serde(default)]
    falls_back_to: Option<String>,
    #[serde(default)]
    groups: BTreeMap<String, String>,
    #[serde(default)]
    symbols: BTreeMap<String, Entry>,
    #[serde(default)]
    marks: BTreeMap<String, Entry>,
}

/// What one symbol or mark is called.
#[derive(Clone, Debug, Default, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Entry {
    /// What it is called, such as "Sunscreen".
    #[serde(default)]
    pub label: String,
    /// Other words someone would type to find it.
    #[serde(default)]
    pub words: Vec<String>,
}

/// The words of one language.
#[derive(Debug)]
pub struct Lexicon {
    /// Its language.
    pub language: Language,
    /// What people call it, such as "English (Australia)".
    pub name: String,
    groups: BTreeMap<String, String>,
    symbols: BTreeMap<SymbolId, (Entry, Words)>,
    marks: BTreeMap<SymbolId, (Entry, Words)>,
}

/// All languages that have words, British English first, the others by tag; and what is wrong with
/// their files.
#[derive(Debug, Default)]
struct All {
    lexicons: Vec<Lexicon>,
    faults: Vec<String>,
}

fn all() -> &'static All {
    static ALL: OnceLock<All> = OnceLock::new();
    ALL.get_or_init(All::read)
}

/// The languages that have words of their own, British English first.
pub fn lexicons() -> &'static [Lexicon] {
    &all().lexicons
}

/// What is wrong with the files of labels; empty in every program that passed its tests.
pub fn faults() -> &'static [String] {
    &all().faults
}

/// A symbol under its usual words; the club's own activity where there is one with this picture.
pub fn content(club: &Club, symbol: &SymbolId) -> Content {
    let own = club.activities.iter().find(|a| a.symbol == *symbol);
    own.map_or_else(
        || Content {
            activity: None,
            symbol: symbol.clone(),
            label: club.own_picture(symbol).map_or_else(
                || lexicon(&club.rules.words).label(symbol).to_owned(),
                |own| own.name.clone(),
            ),
        },
        |a| Content::of(a),
    )
}

/// The words of a language: those of this very tag, else of the same language elsewhere, else
/// British English.
pub fn lexicon(language: &Language) -> &'static Lexicon {
    static NONE: OnceLock<Lexicon> = OnceLock::new();
    let found = lexicons();
    let same = |l: &&Lexicon| l.language.tag().eq_ignore_ascii_case(language.tag());
    let near = |l: &&Lexicon| {
        l.language
            .primary()
            .eq_ignore_ascii_case(language.primary())
    };
    found
        .iter()
        .find(same)
        .or_else(|| found.iter().find(near))
        .or_else(|| found.first())
        .unwrap_or_else(|| NONE.get_or_init(Lexicon::empty))
}

impl All {
    fn read() -> Self {
        let mut all = Self::default();
        let mut files = Vec::new();
        for (name, json) in assets::labels() {
            match serde_json::from_str::<File>(json) {
                Ok(file) => files.push(file),
                Err(e) => all
                    .faults
                    .push(format!("The labels {name} cannot be read: {e}.")),
            }
        }
        files.sort_by_key(|f| (f.tag != ENGLISH, f.tag.clone()));
        for file in &files {
            let base = file.falls_back_to.as_deref().unwrap_or(ENGLISH);
            let base = files.iter().find(|f| f.tag == base && f.tag != file.tag);
            if file.falls_back_to.is_some() && base.is_none() {
                all.faults.push(format!(
                    "{} falls back to a language that has no file.",
                    file.tag
                ));
            }
            all.lexicons.push(Lexicon::new(file, base));
        }
        all
    }
}

impl Lexicon {
    fn new(own: &File, base: Option<&File>) -> Self {
        let marks = base.map(|b| &b.marks);
        let symbols = base.map(|b| &b.symbols);
        let mut groups = base.map(|b| b.groups.clone()).unwrap_or_default();
        groups.extend(own.groups.clone());
        let more = |id: &SymbolId| {
            let group = |g: &'static str| groups.get(g).map_or(g, String::as_str).to_owned();
            let s = library().get(id)?;
            Some((group(&s.group), s.shows.as_str()))
        };
        Self {
            language: Language::new(&own.tag),
            name: own.name.clone(),
            symbols: joined(&own.symbols, symbols, &more),
            marks: joined(&own.marks, marks, &|_| None),
            groups,
        }
    }

    fn empty() -> Self {
        Self {
            language: Language::default(),
            name: String::new(),
            groups: BTreeMap::new(),
            symbols: BTreeMap::new(),
            marks: BTreeMap::new(),
        }
    }

    /// What a symbol is called; its name when the language has no word for it.
    pub fn label<'a>(&'a self, id: &'a SymbolId) -> &'a str {
        self.symbols
            .get(id)
            .map_or(id.as_str(), |(e, _)| e.label.as_str())
    }

    /// What a mark is called; its name when the language has no word for it.
    pub fn mark<'a>(&'a self, id: &'a SymbolId) -> &'a str {
        self.marks
            .get(id)
            .map_or(id.as_str(), |(e, _)| e.label.as_str())
    }

    /// What a group is called.
    pub fn group<'a>(&'a self, group: &'a str) -> &'a str {
        self.groups.get(group).map_or(group, String::as_str)
    }

    /// The words a symbol is found by, beside its label.
    pub fn words(&self, id: &SymbolId) -> &[String] {
        self.symbols
            .get(id)
            .map_or(&[], |(e, _)| e.words.as_slice())
    }

    /// Symbols that fit all of the words, best first. A word fits by the start of a word of the
    /// label, the synonyms, the group or the description, whatever its case, accents and ending; a word that
    /// fits nothing that way may have a letter or two wrong. No words: all, in the order of the
    /// index.
    pub fn search(&self, words: &str) -> Vec<&'static Symbol> {
        find(library().all(), &self.symbols, words)
    }

    /// Marks that fit all of the words, in the same way.
    pub fn search_marks(&self, words: &str) -> Vec<&'static Symbol> {
        find(library().marks(), &self.marks, words)
    }
}

fn find(
    all: &'static [Symbol],
    known: &BTreeMap<SymbolId, (Entry, Words)>,
    wanted: &str,
) -> Vec<&'static Symbol> {
    let wanted = split(wanted);
    let each: Vec<(&Symbol, &Words)> = all
        .iter()
        .filter_map(|s| Some((s, &known.get(&s.id)?.1)))
        .collect();
    let wanted = typed(&wanted, || each.iter().map(|(_, w)| *w));
    let rank = |(s, words): &(&'static Symbol, &Words)| {
        let long = if wanted.is_empty() { 0 } else { words.long() };
        Some(((words.rank(&wanted)?, long), *s))
    };
    let mut found: Vec<((u32, usize), &Symbol)> = each.iter().filter_map(rank).collect();
    found.sort_by_key(|(rank, _)| *rank);
    found.into_iter().map(|(_, s)| s).collect()
}

/// What is said here goes before what the other language says; the other's words still find.
fn joined(
    own: &BTreeMap<String, Entry>,
    base: Option<&BTreeMap<String, Entry>>,
    more: &dyn Fn(&SymbolId) -> Option<(String, &'static str)>,
) -> BTreeMap<SymbolId, (Entry, Words)> {
    let none = BTreeMap::new();
    let base = base.unwrap_or(&none);
    let ids = own
        .keys()
        .chain(base.keys().filter(|id| !own.contains_key(*id)));
    let entry = |id: &String| {
        let mut e = own.get(id).cloned().unwrap_or_default();
        if let Some(b) = base.get(id) {
            if e.label.is_empty() {
                e.label.clone_from(&b.label);
            } else if !e.label.eq_ignore_ascii_case(&b.label) {
                e.words.push(b.label.clone());
            }
            e.words.extend(b.words.iter().cloned());
        }
        let mut seen = Vec::new();
        e.words.retain(|w| {
            let new = !seen.contains(w) && !w.eq_ignore_ascii_case(&e.label);
            seen.push(w.clone());
            new
        });
        let id = SymbolId::new(id);
        let (group, shows) = more(&id).unwrap_or_default();
        let words = Words::new(&e.label, &e.words, &group, shows);
        (id, (e, words))
    };
    ids.map(entry).collect()
}
