//! All symbols and marks built into the program.

use std::collections::BTreeMap;
use std::sync::{Arc, OnceLock};

use serde::Deserialize;

use super::art::Art;
use super::parse::parse;
use super::placeholder::placeholder;
use super::variant::{Variant, has_skin, vary};
use crate::assets;
use crate::model::club::Club;
use crate::model::ids::SymbolId;
use crate::model::people::{Age, Skin};

/// The index of the marks, which stand for a participant instead of a name.
const MARKS: &str = "marks";

/// What the index says of one symbol or mark.
#[derive(Clone, Debug, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
struct Entry {
    id: String,
    #[serde(default)]
    shows: String,
    #[serde(default)]
    group: String,
    #[serde(default = "yes")]
    mirror: bool,
}

const fn yes() -> bool {
    true
}

/// A symbol or a mark. What it is called stands in the lexicon of a language.
#[derive(Clone, Debug)]
pub struct Symbol {
    /// Its name, also that of its file.
    pub id: SymbolId,
    /// What can be seen on it, in one sentence.
    pub shows: String,
    /// With which others it lies in the tray.
    pub group: String,
    /// Whether the drawing is still right when left and right are exchanged.
    pub mirrors: bool,
    /// The drawing for each age; a later one only where it differs from the child's.
    svg: [Option<&'static str>; 3],
    source: [OnceLock<Source>; 3],
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
        let older = |age: &str| assets::drawing(&format!("{folder}/{age}"), &entry.id);
        let svg = [Some(svg), older("teen"), older("adult")];
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
    fn new(entry: Entry, svg: [Option<&'static str>; 3]) -> Self {
        Self {
            id: SymbolId::new(&entry.id),
            shows: entry.shows,
            group: entry.group,
            mirrors: entry.mirror,
            svg,
            source: Default::default(),
            drawn: std::array::from_fn(|_| OnceLock::new()),
        }
    }

    /// The source drawing.
    pub fn svg(&self) -> &'static str {
        self.svg[0].unwrap_or_default()
    }

    /// The source drawing with people of that age, if it differs from the child's.
    pub fn svg_at(&self, age: Age) -> Option<&'static str> {
        self.svg[age as usize]
    }

    fn source(&self, age: Age) -> &Source {
        let svg = self.svg_at(age).unwrap_or_default();
        self.source[age as usize].get_or_init(|| match parse(svg) {
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

    /// The drawing in a variant. One that may not be mirrored stays as it is; one that is the same
    /// at every age is the child's.
    pub fn drawn(&self, variant: Variant) -> Drawn {
        let mut variant = variant;
        variant.mirrored &= self.mirrors;
        if self.svg_at(variant.figure.age).is_none() {
            variant.figure.age = Age::Child;
        }
        let source = self.source(variant.figure.age);
        if !source.known {
            return missing(&self.id);
        }
        if !source.has_skin {
            variant.figure.skin = Skin::default();
        }
        let kept = &self.drawn[variant.slot()];
        Drawn {
            id: self.id.clone(),
            variant: variant.name(source.has_skin),
            art: Arc::clone(kept.get_or_init(|| Arc::new(vary(&source.art, variant)))),
            known: true,
        }
    }
}

/// What stands for a symbol that there is not.
pub(super) fn missing(id: &SymbolId) -> Drawn {
    static ART: OnceLock<Arc<Art>> = OnceLock::new();
    Drawn {
        id: id.clone(),
        variant: "missing",
        art: Arc::clone(ART.get_or_init(|| Arc::new(placeholder()))),
        known: false,
    }
}

/// A mark that nobody in the club has yet, or the first when all are taken.
pub fn free_mark(club: &Club) -> SymbolId {
    let marks = library().marks();
    let taken = |id: &SymbolId| club.participants.iter().any(|p| p.mark == *id);
    let free = marks.iter().find(|m| !taken(&m.id)).or(marks.first());
    free.map_or_else(|| SymbolId::new("kite"), |m| m.id.clone())
}
