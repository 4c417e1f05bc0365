//! Pictures of the club's own, drawn like symbols: the same variants where they are drawings; where
//! they are photographs, in colour and in grey.

use std::collections::BTreeMap;
use std::sync::{Arc, Mutex, PoisonError, Weak};

use super::art::{Art, CANVAS, Node};
use super::library::{Drawn, library, missing};
use super::parse::parse;
use super::pixels::Pixels;
use super::variant::{Ink, Variant, has_skin, vary};
use crate::model::club::Club;
use crate::model::ids::{ParticipantId, SymbolId};
use crate::model::people::{Age, Skin};
use crate::model::picture::{Made, Photo, Picture, Place};

/// A symbol as a club has it: one of its own pictures, or a built-in one.
pub fn drawn(club: &Club, id: &SymbolId, variant: Variant) -> Drawn {
    if id.own().is_none() {
        return library().art(id, variant);
    }
    let picture = club.own_picture(id);
    picture.map_or_else(|| missing(id), |p| of_picture(p, variant))
}

/// Whether there is such a symbol, built in or of the club's own.
pub fn is_known(club: &Club, id: &SymbolId) -> bool {
    library().get(id).is_some() || club.own_picture(id).is_some()
}

/// The pictures of its own that a club shows to someone, or in what the group has in common, and
/// that fit some words; what stands for a symbol is found under that one.
pub fn search<'a>(club: &'a Club, who: Option<ParticipantId>, typed: &str) -> Vec<&'a Picture> {
    let wanted: Vec<String> = words(typed).collect();
    let place = who.map_or(Place::Group, Place::Own);
    let fits = |p: &&Picture| {
        let known: Vec<String> = p
            .words
            .iter()
            .chain([&p.name])
            .flat_map(|w| words(w))
            .collect();
        let begun = |w: &String| known.iter().any(|k| k.starts_with(w.as_str()));
        wanted.iter().all(begun)
    };
    let seen = club.pictures.iter().map(|p| &**p);
    let seen = seen.filter(|p| p.stands_for.is_none() && p.may_be_seen(club, place));
    let theirs = seen.filter(|p| p.whose.is_none() || p.whose == who);
    theirs.filter(fits).collect()
}

fn words(text: &str) -> impl Iterator<Item = String> {
    let parts = text.split(|c: char| !c.is_alphanumeric());
    parts.filter(|w| !w.is_empty()).map(str::to_lowercase)
}

/// An own picture in a variant.
pub fn of_picture(picture: &Picture, variant: Variant) -> Drawn {
    // Equal names must have equal art, and a picture may be changed.
    let name = format!("{}-{}", picture.symbol(), &picture.hash()[..12]);
    let id = SymbolId::new(&name);
    let found = match &picture.made {
        Made::Photo(photo) => Some(of_photo(&name, photo, variant.ink)),
        Made::Drawing(drawing) => of_drawing(&name, drawing.svg(), variant),
    };
    let Some((variant, art)) = found else {
        return missing(&id);
    };
    Drawn {
        id,
        variant,
        art,
        known: true,
    }
}

fn of_photo(name: &str, photo: &Arc<Photo>, ink: Ink) -> (&'static str, Arc<Art>) {
    let (grey, variant) = match ink {
        Ink::Colour | Ink::OnDark => (false, "photo"),
        Ink::Grey | Ink::Outline => (true, "photo-grey"),
    };
    let art = kept((name, variant), || photo_art(photo, grey));
    (variant, art)
}

/// The photograph as large as the canvas allows, in its middle.
fn photo_art(photo: &Arc<Photo>, grey: bool) -> Art {
    let [w, h] = photo.size().map(|side| side.max(1) as f32);
    let scale = CANVAS / w.max(h);
    let (w, h) = (w * scale, h * scale);
    Art {
        nodes: vec![Node::Pixels {
            at: [(CANVAS - w) / 2.0, (CANVAS - h) / 2.0, w, h],
            pixels: Arc::new(Pixels::new(Arc::clone(photo), grey)),
        }],
    }
}

fn of_drawing(name: &str, svg: &str, mut variant: Variant) -> Option<(&'static str, Arc<Art>)> {
    variant.figure.age = Age::Child;
    let source = kept((name, "source"), || parse(svg).unwrap_or_default());
    if source.nodes.is_empty() {
        return None;
    }
    let skin = has_skin(&source);
    if !skin {
        variant.figure.skin = Skin::default();
    }
    let word = variant.name(skin);
    let art = kept((name, word), || vary(&source, variant));
    Some((word, art))
}

/// Lately made drawings, for as long as someone shows them, and the last few of them beyond that.
#[derive(Default)]
struct Kept {
    all: BTreeMap<(String, &'static str), Weak<Art>>,
    last: Vec<Arc<Art>>,
}

/// How many are held although nobody shows them just now: what is on a board in the window.
const LAST: usize = 64;

fn kept((name, variant): (&str, &'static str), make: impl FnOnce() -> Art) -> Arc<Art> {
    static KEPT: Mutex<Option<Kept>> = Mutex::new(None);
    let key = (name.to_owned(), variant);
    let find = |kept: &Kept| kept.all.get(&key).and_then(Weak::upgrade);
    if let Some(kept) = &*KEPT.lock().unwrap_or_else(PoisonError::into_inner)
        && let Some(art) = find(kept)
    {
        return art;
    }
    let art = Arc::new(make());
    let mut kept = KEPT.lock().unwrap_or_else(PoisonError::into_inner);
    let kept = kept.get_or_insert_default();
    kept.all.retain(|_, art| art.strong_count() > 0);
    kept.all.insert(key, Arc::downgrade(&art));
    if kept.last.len() == LAST {
        kept.last.remove(0);
    }
    kept.last.push(Arc::clone(&art));
    art
}
