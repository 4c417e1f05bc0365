//! What makes a tile the tile it is, for the stock: picture, words, form, size, language, film,
//! fastener, and a code of the drawing.

use crate::layout::desk::{Desk, Person};
use crate::layout::plan_code::Fnv;
use crate::layout::tile_face::{Face, Shape};
use crate::model::ids::SymbolId;
use crate::model::manner::{Form, Run};
use crate::model::stock::TileFace;
use crate::symbols::library::library;
use crate::symbols::variant::{Ink, Variant};
use crate::units::Size;

/// The kind of a tile with one face.
pub(super) fn of_face(desk: &Desk<'_>, person: &Person<'_>, face: &Face, size: Size) -> TileFace {
    let form = match face.shape {
        Shape::Form(form) => form,
        Shape::Pointers | Shape::Number(_) => Form::Drawing,
    };
    let drawn = form == Form::Drawing;
    let symbol = match drawn {
        true => face.card.symbol.clone(),
        false => SymbolId::new(""),
    };
    let version = match drawn {
        true => version(desk, &[&face.card.symbol], person),
        false => String::new(),
    };
    plain(desk, symbol, face.card.label.clone(), form, size, version)
}

/// The kind of a card with several faces: all their pictures and words.
pub(super) fn of_several(
    desk: &Desk<'_>,
    person: &Person<'_>,
    faces: &[&Face],
    size: Size,
) -> TileFace {
    let labels: Vec<&str> = faces.iter().map(|f| f.card.label.as_str()).collect();
    let symbols: Vec<&SymbolId> = faces.iter().map(|f| &f.card.symbol).collect();
    let first = faces.first();
    let symbol = first.map_or_else(|| SymbolId::new(""), |f| f.card.symbol.clone());
    let form = match first.map(|f| f.shape) {
        Some(Shape::Form(form)) => form,
        _ => Form::Drawing,
    };
    let version = version(desk, &symbols, person);
    plain(desk, symbol, labels.join(", "), form, size, version)
}

/// The kind of a tile with nothing on it.
pub(super) fn blank(desk: &Desk<'_>, size: Size) -> TileFace {
    let symbol = SymbolId::new("");
    plain(desk, symbol, String::new(), Form::Word, size, String::new())
}

fn plain(
    desk: &Desk<'_>,
    symbol: SymbolId,
    label: String,
    form: Form,
    size: Size,
    version: String,
) -> TileFace {
    let rules = &desk.club.rules;
    TileFace {
        symbol,
        label,
        form,
        size: (size.w, size.h),
        language: rules.words.clone(),
        film: rules.film(),
        half: rules.craft.half,
        dot: rules.craft.dot,
        version,
    }
}

/// A code of some drawings as this participant has them, whatever the ink: another drawing under
/// the same name, or another figure, gives another code.
fn version(desk: &Desk<'_>, symbols: &[&SymbolId], person: &Person<'_>) -> String {
    let variant = Variant {
        mirrored: person.who.manner.run == Run::RightToLeft,
        ..Variant::new(person.who.figure, Ink::Colour)
    };
    let mut hash = Fnv::new();
    for id in symbols {
        let seen = desk.club.seen_by(person.who, id);
        if let Some(own) = desk.club.own_picture(&seen) {
            hash.words(own.hash());
            continue;
        }
        hash.words(library().art(id, variant).variant);
        let source = library().get(id);
        hash.words(source.map_or("", |s| {
            s.svg_at(person.who.figure.age).unwrap_or_else(|| s.svg())
        }));
    }
    hash.code()
}
