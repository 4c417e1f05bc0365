//! All symbols and marks built into the program.

use std::collections::BTreeMap;
use std::sync::{Arc, OnceLock};

use serde::Deserialize;

use super::art::Art;
use super::parse::parse;
use super::placeholder::placeholder;
use super::search::{Words, split};
use super::variant::{Variant, has_skin, vary};
use crate::assets;
use crate::model::ids::SymbolId;

/// The index of the marks, which stand for a participant instead of a name.
const MARKS: &str = "marks";

/// What the index says of one symbol or mark.
#[derive(Clone, Debug, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
struct Entry {
    id: String,
    label: String,
    #[serde(default)]
    words: Vec<String>,
    #[serde(default)]
    shows: String,
    #[serde(default)]
    group: String,
}

/// A symbol or a mark.
#[derive(Clone, Debug)]
pub struct Symbol {
    /// Its name, also that of its file.
    pub id: SymbolId,
    /// What it is called, such as "Sunscreen".
    pub label: String,
    /// Other words someone would type to find it.
    pub words: Vec<String>,
    /// What can be seen on it, in one sentence.
    pub shows: String,
    /// With which others it lies in the tray.
    pub group: String,
    find: Words,
    svg: &'static str,
    source: OnceLock<Source>,
    drawn: [OnceLock<Arc<Art>>; Variant::COUNT],
}

/// A parsed source.
#[derive(Clone, Debug)]
struct Source {
    art: Art,
    has_skin: bool,
    known: bool,
}

/// A symbol ready to paint.
#[derive(Clone, Debug, PartialEq)]
pub struct Drawn {
    /// Which symbol.
    pub id: SymbolId,
    /// Which variant, in a few letters. Equal id and variant mean equal art.
    pub variant: &'static str,
    /// The drawing.
    pub art: Arc<Art>,
    /// Whether there is such a symbol; otherwise the art is the empty dashed square.
    pub known: bool,
}

/// All symbols and marks. Drawings are parsed when first asked for, and kept.
#[derive(Debug, Default)]
pub struct Library {
    symbols: Vec<Symbol>,
    by_id: BTreeMap<SymbolId, usize>,
    marks: Vec<Symbol>,
    mark_by_id: BTreeMap<SymbolId, usize>,
    groups: Vec<String>,
    faults: Vec<String>,
}

/// The one library, read when first asked for.
pub fn library() -> &'static Library {
    static LIBRARY: OnceLock<Library> = OnceLock::new();
    LIBRARY.get_or_init(Library::read)
}

impl Library {
    fn read() -> Self {
        let mut lib = Self::default();
        for (name, json) in assets::indexes() {
            let entries: Vec<Entry> = serde_json::from_str(json).unwrap_or_else(|e| {
                lib.faults
                    .push(format!("The index {name} cannot be read: {e}."));
                Vec::new()
            });
            let folder = if name == MARKS { "marks" } else { "svg" };
            for entry in entries {
                lib.add(entry, folder);
            }
        }
        lib
    }

    fn add(&mut self, entry: Entry, folder: &str) {
        let Some(svg) = assets::drawing(folder, &entry.id) else {
            self.faults
                .push(format!("{} is in the index and has no drawing.", entry.id));
            return;
        };
        let (list, by_id) = if folder == "svg" {
            (&mut self.symbols, &mut self.by_id)
        } else {
            (&mut self.marks, &mut self.mark_by_id)
        };
        let symbol = Symbol::new(entry, svg);
        if by_id.contains_key(&symbol.id) {
            self.faults
                .push(format!("{} is in the index twice.", symbol.id));
            return;
        }
        if folder == "svg" && !self.groups.contains(&symbol.group) {
            self.groups.push(symbol.group.clone());
        }
        by_id.insert(symbol.id.clone(), list.len());
        list.push(symbol);
    }

    /// All symbols in the order of the index.
    pub fn all(&self) -> &[Symbol] {
        &self.symbols
    }

    /// The groups of the tray in the order of the index.
    pub fn groups(&self) -> &[String] {
        &self.groups
    }

    /// What is wrong with the built-in index; empty in every program that passed its tests.
    pub fn faults(&self) -> &[String] {
        &self.faults
    }

    /// The symbol of that name.
    pub fn get(&self, id: &SymbolId) -> Option<&Symbol> {
        self.by_id.get(id).map(|&i| &self.symbols[i])
    }

    /// The drawing of that name in a variant; the empty dashed square when there is none.
    pub fn art(&self, id: &SymbolId, variant: Variant) -> Drawn {
        self.get(id)
            .map_or_else(|| missing(id), |s| s.drawn(variant))
    }

    /// Symbols that fit all of the words, best first. A word fits by the start of a word of the
    /// label, the synonyms or the description, whatever its case and accents. No words: all, in
    /// the order of the index.
    pub fn search(&self, words: &str) -> Vec<&Symbol> {
        let wanted = split(words);
        let mut found: Vec<(u32, &Symbol)> = self
            .symbols
            .iter()
            .filter_map(|s| Some((s.find.rank(&wanted)?, s)))
            .collect();
        found.sort_by_key(|(rank, _)| *rank);
        found.into_iter().map(|(_, s)| s).collect()
    }

    /// All marks in the order of the index.
    pub fn marks(&self) -> &[Symbol] {
        &self.marks
    }

    /// The mark of that name.
    pub fn mark(&self, id: &SymbolId) -> Option<&Symbol> {
        self.mark_by_id.get(id).map(|&i| &self.marks[i])
    }

    /// The drawing of a mark; the empty dashed square when there is none.
    pub fn mark_art(&self, id: &SymbolId) -> Drawn {
        let drawn = self.mark(id).map(|m| m.drawn(Variant::default()));
        drawn.map_or_else(
            || missing(id),
            |d| Drawn {
                variant: "mark",
                ..d
            },
        )
    }
}

impl Symbol {
    fn new(entry: Entry, svg: &'static str) -> Self {
        Self {
            find: Words::new(&entry.label, &entry.words, &entry.shows),
            id: SymbolId::new(&entry.id),
            label: entry.label,
            words: entry.words,
            shows: entry.shows,
            group: entry.group,
            svg,
            source: OnceLock::new(),
            drawn: Default::default(),
        }
    }

    /// The source drawing.
    pub fn svg(&self) -> &'static str {
        self.svg
    }

    fn source(&self) -> &Source {
        self.source.get_or_init(|| match parse(self.svg) {
            Ok(art) => Source {
                has_skin: has_skin(&art),
                art,
                known: true,
            },
            Err(_) => Source {
                art: placeholder(),
                has_skin: false,
                known: false,
            },
        })
    }

    /// The drawing in a variant.
    pub fn drawn(&self, variant: Variant) -> Drawn {
        let source = self.source();
        if !source.known {
            return missing(&self.id);
        }
        let kept = &self.drawn[variant.slot(source.has_skin)];
        Drawn {
            id: self.id.clone(),
            variant: variant.name(source.has_skin),
            art: Arc::clone(kept.get_or_init(|| Arc::new(vary(&source.art, variant)))),
            known: true,
        }
    }
}

fn missing(id: &SymbolId) -> Drawn {
    static ART: OnceLock<Arc<Art>> = OnceLock::new();
    Drawn {
        id: id.clone(),
        variant: "missing",
        art: Arc::clone(ART.get_or_init(|| Arc::new(placeholder()))),
        known: false,
    }
}
